// The parts that demoCentre() puts together.
#pragma once

#include "core/season/season.h"
#include "core/storage/store.h"

#include <cstdint>

namespace laneward::demo {

inline constexpr int historyDays = 364;  ///< whole weeks, so that weekdays stay what they are

/// splitmix64 (Steele, Lea, Flood 2014, figure 1): tiny, and the same everywhere, which std distributions are not.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_state(seed) {}
    std::uint64_t next();
    /// 0 .. n-1.
    int below(int n) { return int(next() % std::uint64_t(n)); }
    bool oneIn(int n) { return below(n) == 0; }

private:
    std::uint64_t m_state;
};

Centre house(QDate today);
std::vector<Pattern> patterns();
/// What returns every week or day: leagues of a last and a present season, and what goes on all the year round.
std::vector<Series> diary(QDate today);
/// The diary with all that is out of the ordinary; no two events claim a lane at one time.
std::vector<Series> events(QDate today);
/// Records of the year before `today`; `season` holds centre, series and patterns.
HistorySlice yearOfRecords(const SeasonState& season, QDate today);

}  // namespace laneward::demo
