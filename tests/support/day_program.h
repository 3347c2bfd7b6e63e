// A day's problem as a mixed integer linear program, for a general solver: whole runs of lanes, each in one go by one machine, in
// the order and the outings that make every target within paid time. Shares no code with the search: only the statement of the
// problem. Written for days that leave out what only some have: machines there all through one shift, a person for each, tanks
// that never run out, one treatment a lane.
#pragma once

#include "core/planning/placement.h"

#include <QJsonArray>
#include <QString>

namespace support {

/// Objectives in the order of the score, from outings on, are minimised one after the other.
inline constexpr size_t programObjectives = 4;

struct DayProgram {
    QString rows;           ///< LP format
    QJsonArray objectives;  ///< {variable: whole number}
    std::array<laneward::planning::Sec, programObjectives> constants{};
    int runs = 0;
};

/// The same day without what the program leaves out: endless tanks and a person for every machine.
laneward::planning::DayProblem withPlenty(laneward::planning::DayProblem problem);

/// Nothing when the day has what the program leaves out.
std::optional<DayProgram> programOf(const laneward::planning::DayProblem& problem);

}  // namespace support
