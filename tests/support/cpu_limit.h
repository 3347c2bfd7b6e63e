// A limit on processor time, for tests that something never hangs: a busy machine does not use it up.
#pragma once

#include <ctime>

namespace laneward::build {

class CpuLimit {
public:
    explicit CpuLimit(double seconds) : m_end(std::clock() + std::clock_t(seconds * CLOCKS_PER_SEC)) {}
    bool isExceeded() const { return std::clock() > m_end; }

private:
    std::clock_t m_end;
};

}  // namespace laneward::build
