#include "app/edits/job_move.h"

#include <algorithm>

namespace laneward {

namespace {

bool has(const Job& job, StepKind kind) {
    return std::any_of(job.steps.begin(), job.steps.end(), [kind](const Step& step) { return step.kind == kind; });
}

int freeOuting(const Job& job, const State& state) {
    int number = 1;
    for (const Job& other : state.committed) {
        if (other.date == job.date && other.machine == job.machine) number = std::max(number, other.outing + 1);
    }
    return number;
}

/// Steps before the first lane keep their order; leaving the bay comes before all of them.
void makeOuting(Job& job, const MachineTimes& times) {
    if (!has(job, StepKind::LeaveBay)) {
        const Span leaving{job.time.begin - times.leaveBay, job.time.begin};
        job.steps.insert(job.steps.begin(), Step{StepKind::LeaveBay, leaving, {}});
        job.time.begin = leaving.begin;
    }
    if (!has(job, StepKind::ReturnToBay)) {
        job.steps.push_back({StepKind::ReturnToBay, {job.time.end, job.time.end + times.returnToBay}, {}});
    }
}

}  // namespace

Job confirmedElsewhere(const Job& job, Seconds by, const State& state) {
    const auto move = [by](Span& span) { span = {span.begin + by, span.end + by}; };
    Job moved = job;
    moved.id = {QStringLiteral("asked:") + job.id.value};
    moved.state = JobState::Confirmed;
    move(moved.time);
    for (LaneTime& lane : moved.lanes)
        move(lane.time);
    for (Step& step : moved.steps)
        move(step.time);
    if (const Machine* machine = findMachine(state.centre, job.machine)) makeOuting(moved, machine->times);
    if (!moved.lanes.empty()) moved.date = dateOf(state.centre, moved.lanes.front().time.begin);
    moved.outing = freeOuting(moved, state);
    return moved;
}

}  // namespace laneward
