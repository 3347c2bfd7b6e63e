// Jobs: what a machine is to do, or did, on a set of lanes.
#pragma once

#include "core/base/finding.h"
#include "core/base/ids.h"
#include "core/calendar/occurrences.h"
#include "core/centre/treatment.h"

#include <optional>
#include <vector>

namespace laneward {

enum class JobState { Proposed, Confirmed, UnderWay, Done, CutShort, Dropped };

enum class StepKind {
    LeaveBay,  ///< ready the machine and bring it to the lanes
    Refill,    ///< conditioner and cleaner
    EmptyWaste,
    SwapPack,
    Charge,          ///< a break to charge the pack
    Duty,            ///< a service duty that falls due here
    FirstPairTwice,  ///< the outing's first pair, a first time
    Treat,           ///< all lanes of the job in order
    ReturnToBay,     ///< after the last job of an outing
};

struct Step {
    StepKind kind = StepKind::Treat;
    Span time;
    LaneSet lanes;  ///< Treat and FirstPairTwice only
    friend bool operator==(const Step&, const Step&) = default;
};

/// When each lane of a job is worked, in working order.
struct LaneTime {
    int lane = 0;
    Span time;
    friend bool operator==(const LaneTime&, const LaneTime&) = default;
};

/// An occurrence that needs the job.
struct Need {
    SeriesId series;
    LocalTime original;
    QString title;
    Instant playBegins;
    LaneSet lanes;
    friend bool operator==(const Need&, const Need&) = default;
};

struct JobUse {
    std::array<Microlitres, conditionerSlots> conditioner;
    Microlitres cleaner;
    Microlitres waste;
    int laneRuns = 0;  ///< lanes worked, the first pair twice counted twice: what the pack and the meters see
    Microlitres conditionerTotal() const { return conditioner[0] + conditioner[1]; }
    friend bool operator==(const JobUse&, const JobUse&) = default;
};

struct Job {
    JobId id;  ///< of a proposed job: made from date, machine and start; not stable
    JobState state = JobState::Proposed;
    QDate date;  ///< the centre's day
    MachineId machine;
    int outing = 0;  ///< 1.. within the day and machine
    Span time;       ///< from its first step (leaving the bay, refilling …) to its last lane's end; without ReturnToBay
    Treatment treatment = Treatment::CleanAndCondition;
    std::optional<PatternId> pattern;  ///< none for clean only
    std::vector<LaneTime> lanes;       ///< in working order
    std::vector<Step> steps;
    std::vector<Need> neededBy;    ///< by start of play, then title
    std::vector<Finding> reasons;  ///< what fixes its place; see wording of "job.…"
    Span window;                   ///< earliest possible start of work and latest end that meets every demand beyond the reserve
    Seconds slack;  ///< how much later it could end with every demand still met beyond the reserve; negative = tight or late
    Seconds late;   ///< summed over its demands
    JobUse use;
    int planVersion = 0;  ///< of the printed sheet that confirmed it; 0 = not confirmed
    PersonId person;      ///< who confirmed it, or runs it
    std::int64_t version = 0;

    LaneSet laneSet() const;
    friend bool operator==(const Job&, const Job&) = default;
};

/// Still to be done, or being done.
bool isAhead(const Job& job);

}  // namespace laneward
