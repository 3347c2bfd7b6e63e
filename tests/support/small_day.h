// Small days made of whole numbers, and the best plan of each found by trying everything: every order of the lanes on every
// machine, every way to part them into outings, every step, and every second at which a lane could begin. Shares no code with the
// search: only the statement of the problem.
#pragma once

#include "core/planning/placement.h"

namespace support {

/// Up to `lanes` lanes in a few runs, two machines, a day of a minute or so.
laneward::planning::DayProblem smallDay(unsigned seed, int lanes);

/// The lexicographically least score of all plans that place every lane; nothing when there is none. Lanes that belong to one run
/// (see runOf) are worked in one go, unless `dividing`.
std::optional<laneward::planning::Score> bestByTrying(const laneward::planning::DayProblem& problem, bool dividing);

/// By task: the index of its run, that is of adjacent lanes that are asked for the same.
std::vector<int> runOf(const laneward::planning::DayProblem& problem);

}  // namespace support
