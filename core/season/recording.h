// From what people say about a run to the run log that is kept.
//
// 'As planned' takes everything from the job. Anything else is an account: which machine, what, where, when; amounts then follow
// from the machine's settings, lane by lane.
//
//     RunLog log = asPlanned(job, now);
//     RunLog other = runLog(state, RunAccount{job, ...});
#pragma once

#include "core/season/season.h"

namespace laneward {

/// A run in the words of the person who ran it.
struct RunAccount {
    std::optional<Job> job;  ///< the planned one, if it was planned
    MachineId machine;
    Treatment treatment = Treatment::CleanAndCondition;
    std::optional<PatternId> pattern;  ///< none for clean only
    LaneSet lanes;                     ///< intended
    int lastLane = 0;                  ///< stopped after this one; 0 = all done
    Span time;
    QString note;
};

/// The job as it was planned. One that ended before its planned end ran earlier by as much: a log never ends in the future.
/// Id, person and recordedAt are left empty.
RunLog asPlanned(const Job& job, Instant now);

/// Lanes in working order, times shared evenly, amounts by the machine's settings, result told apart by comparing with the job.
/// Id, person and recordedAt are left empty. The account's machine and pattern must exist; else nothing is booked as used.
RunLog runLog(const State& state, const RunAccount& account);

/// What such a run usually takes, for a first guess at its beginning.
Seconds usualLength(const State& state, const RunAccount& account);

/// A job that was only proposed becomes a confirmed one under `id`, so that a log can name it.
Job confirmedAs(const Job& job, const JobId& id, int planVersion, const PersonId& person);
/// The job as it is under way since `now`: moved there as a whole.
Job begunAt(const Job& job, Instant now);
/// The highest plan version among the confirmed jobs of a day; 0 = none.
int planVersionOf(const SeasonState& season, QDate day);

/// Confirmed jobs that cannot stay where they are when `occurrence` plays until `cleared`: those on its lanes or their pair
/// partners in that time, and what follows them on the same machine. Only jobs that begin at `now` or later.
std::vector<Job> overtakenJobs(const SeasonState& season, const Occurrence& occurrence, Instant cleared, Instant now);

}  // namespace laneward
