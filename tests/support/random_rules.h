// Random recurrence rules, the same on every machine for the same seed.
#pragma once

#include "core/base/dates.h"

#include <QStringList>

#include <optional>

namespace laneward::build {

struct RuleCase {
    QByteArray zone;
    LocalTime start;
    QStringList parts;               ///< without COUNT and UNTIL
    int count = 0;                   ///< 0 = none
    std::optional<LocalTime> until;  ///< wall time
    DateRange range;                 ///< to be compared

    bool has(const char* part) const;
    QString value(const char* part) const;
};

class RandomRules {
public:
    explicit RandomRules(unsigned seed) : m_state(seed) {}
    RuleCase next();
    int number(int least, int most);
    bool chance(int percent) { return number(1, 100) <= percent; }

private:
    QString numbers(int least, int most, int howMany, bool fromTheEnd);
    QString weekdays(const RuleCase& rule);
    void addDays(RuleCase& rule);
    void addEnd(RuleCase& rule);

    std::uint64_t m_state;
};

}  // namespace laneward::build
