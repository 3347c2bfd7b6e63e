// The clock is passed in: nothing below app/ asks for the time by itself.
#pragma once

#include "core/base/quantities.h"

#include <QDateTime>

namespace laneward {

class Clock {
public:
    virtual ~Clock() = default;
    virtual Instant now() const = 0;
};

class SystemClock final : public Clock {
public:
    Instant now() const override { return {QDateTime::currentSecsSinceEpoch()}; }
};

/// Stands still until told otherwise: for `--now`, demonstrations and tests.
class FixedClock final : public Clock {
public:
    explicit FixedClock(Instant t) : m_now(t) {}
    Instant now() const override { return m_now; }
    void set(Instant t) { m_now = t; }

private:
    Instant m_now;
};

}  // namespace laneward
