// A season as figures: what each day takes and how much time it has to spare, by day, by week and in all.
//
//     SeasonFigures season = seasonFigures(state, plan);
//     season.days[season.tight.front()]        // the day that is hardest to keep
//
// Amounts in microlitres, times in seconds. Exact sums of the plan's own jobs, done and proposed; dropped jobs do not count.
#pragma once

#include "core/season/season.h"

namespace laneward {

/// A day with less to spare than this is tight: the reserve that is kept behind every job, once more.
inline constexpr Seconds tightBelow = minutes(10);

struct WorkFigures {
    int jobs = 0;
    int outings = 0;
    std::int64_t treatments = 0;  ///< lanes treated
    Microlitres conditioner;
    Microlitres cleaner;
    Seconds machineTime;  ///< outings, from leaving the bay to being back
    Seconds overtime;
    std::int64_t unmet = 0;             ///< demands
    std::int64_t late = 0;              ///< events that end late, however many lanes
    Seconds lateBy;                     ///< summed over demands
    Seconds tightBy;                    ///< inside the reserve, summed over demands
    std::optional<Seconds> leastSlack;  ///< of its jobs
    /// How long play before it may overrun, or work take longer, with every demand still met beyond the reserve: the least over
    /// the outings of how far one can move within its jobs' windows, earlier and later together. Negative as leastSlack is when a
    /// job is tight or late. Does not see two machines that share one person.
    std::optional<Seconds> spare;
    int days = 0;
    int proven = 0;  ///< of those days

    bool isTight() const { return unmet > 0 || late > 0 || (spare && *spare < tightBelow); }
    void add(const WorkFigures& more);
    friend bool operator==(const WorkFigures&, const WorkFigures&) = default;
};

struct SeasonDay {
    QDate date;
    WorkFigures work;
};

/// Weeks are those of ISO 8601: from Monday on, cut where the range begins and ends.
struct SeasonWeek {
    QDate first;
    int number = 0;  ///< 1..53
    int tightDays = 0;
    WorkFigures work;
};

struct SeasonFigures {
    std::vector<SeasonDay> days;
    std::vector<SeasonWeek> weeks;
    WorkFigures total;
    std::vector<size_t> tight;  ///< tight days, indexes into `days`: by unmet, events late, spare, date
};

SeasonFigures seasonFigures(const State& state, const Plan& plan);

/// The days of a plan with least to spare, tight or not, in the order of SeasonFigures::tight; at most `count`.
std::vector<size_t> narrowestDays(const SeasonFigures& season, size_t count);

}  // namespace laneward
