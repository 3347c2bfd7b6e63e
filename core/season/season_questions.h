// Questions about a whole season as changed states: pure functions whose answer is the difference that planning them makes.
// Nothing is stored.
//
//     const State more = withTournaments(state, {4, 6, LaneSet::range(1, 24), PatternId{"bittern"}}, range).state;
//     const SeasonFigures then = seasonFigures(more, plan(more, now, range));
#pragma once

#include "core/season/season_figures.h"

namespace laneward {

struct TournamentQuestion {
    int count = 1;
    int weekday = 6;  ///< 1 = Monday … 7 = Sunday
    LaneSet lanes;
    std::optional<PatternId> pattern;  ///< none = any pattern
    QTime begins{10, 0};
    Seconds length = hours(6);
};

/// A state with what was asked for, and how much of it found room.
struct Supposed {
    State state;
    int count = 0;
};

/// One-off tournaments that ask for fresh lanes, spread evenly over the range's days of that weekday on which nothing but open
/// play is booked on those lanes and no closure lasts. Open play gives way: it loses those lanes on those dates. Fewer than asked
/// where there are fewer such days.
Supposed withTournaments(const State& state, const TournamentQuestion& question, const DateRange& range);

/// A question to begin with: one for which there is room in the eight weeks ahead, all lanes and the weekend before others. Just
/// the defaults where nothing has room.
TournamentQuestion suggestedTournament(const State& state, const DateRange& range);

/// The machine out of service for `days` of the centre's days.
Supposed withMachineOut(const State& state, const MachineId& machine, QDate from, int days);

/// What open play asks for fresh or recent is asked for only every `days` days: a treatment of at most that age serves, however
/// much was played on it. The count is that of the series that asked for more.
Supposed withOpenPlayEvery(const State& state, int days);

/// Longest interval that withOpenPlayEvery() takes: planning looks no further back.
inline constexpr int longestInterval = 28;

}  // namespace laneward
