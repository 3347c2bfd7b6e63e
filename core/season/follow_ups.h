// What happened lately and still wants an answer: incidents, and tape readings outside a check that counts.
//
// An answer is an incident that names what it answers; it is no incident itself. Checks that are suspended are history, and
// nothing follows from them.
//
//     for (const FollowUp& open : openFollowUps(season, brokenReadings(tapes, versions, season), now)) …
#pragma once

#include "core/season/season.h"

namespace laneward {

/// Days after which nobody is reminded any more; common practice, no source.
inline constexpr int followUpDays = 14;

struct FollowUp {
    OperationId id;
    bool isReading = false;  ///< a tape reading, not an incident
    IncidentKind kind = IncidentKind::Fault;
    Instant at;
    int lane = 0;
    MachineId machine;
    PersonId person;
    QString text;  ///< of an incident; of a reading its pattern's name
    friend bool operator==(const FollowUp&, const FollowUp&) = default;
};

/// Of the readings that stand, those that break a check in force or one of the centre's own.
std::vector<TapeReading> brokenReadings(const std::vector<TapeReading>& readings, const std::vector<PatternVersion>& versions,
                                        const SeasonState& season);
/// Those of the last days that nothing answers, the newest first.
std::vector<FollowUp> openFollowUps(const SeasonState& season, const std::vector<TapeReading>& broken, Instant now);
/// What was said about it, the first first.
std::vector<Incident> answersTo(const std::vector<Incident>& incidents, const OperationId& id);

/// A lane that is out of service at `now`: the outage that says so.
const Outage* outageOf(const Centre& centre, int lane, Instant now);

}  // namespace laneward
