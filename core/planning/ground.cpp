#include "core/planning/ground.h"

#include <algorithm>
#include <map>

namespace laneward::planning {

namespace {

Instant endOr(const std::optional<Instant>& end, Instant otherwise) { return end ? *end : otherwise; }

bool wholeCentre(const Occurrence& o, const Centre& centre) { return o.lanes.isEmpty() || allLanes(centre).isSubsetOf(o.lanes); }

bool closesWithoutStaff(const Occurrence& o) { return o.kind == EventKind::Closure && o.noStaff; }

Spans timesOf(const LanePlays& plays) {
    Spans times;
    times.reserve(plays.size());
    for (const Play& play : plays)
        times.push_back({play.booked.begin, play.cleared});
    return times;
}

/// Without its own play, its pair partner's, outages and closures without staff.
Spans laneFree(const Ground& ground, int lane, Span whole) {
    const Centre& centre = ground.state.centre;
    Spans taken = timesOf(ground.plays[size_t(lane - 1)]);
    const int partner = pairPartner(lane);
    if (centre.facts.settings.pairPartnerRule && partner <= centre.facts.lanes) {
        // Most pairs are played on together.
        const Spans others = timesOf(ground.plays[size_t(partner - 1)]);
        if (others != taken) taken.insert(taken.end(), others.begin(), others.end());
    }
    for (const Outage& outage : centre.outages) {
        if (!outage.machine && outage.lanes.contains(lane)) taken.push_back({outage.begin, endOr(outage.end, whole.end)});
    }
    for (const Occurrence& o : ground.occupancy.occurrences) {
        if (closesWithoutStaff(o) && (o.lanes.contains(lane) || wholeCentre(o, centre))) taken.push_back(o.booked);
    }
    return without({whole}, merged(std::move(taken)));
}

std::vector<ShiftSpan> shiftsOver(const Centre& centre, const DateRange& range) {
    std::vector<ShiftSpan> shifts;
    for (QDate date = range.first.addDays(-1); date <= range.last; date = date.addDays(1)) {
        for (ShiftSpan& shift : shiftsOn(centre, date)) {
            if (shift.people > 0) shifts.push_back(std::move(shift));
        }
    }
    std::stable_sort(shifts.begin(), shifts.end(), [](const ShiftSpan& a, const ShiftSpan& b) {
        return a.work.begin != b.work.begin ? a.work.begin < b.work.begin : a.shift < b.shift;
    });
    return shifts;
}

Spans machineUp(const Ground& ground, size_t m, Span whole) {
    Spans taken = ground.nobody;
    for (const Outage& outage : ground.state.centre.outages) {
        if (outage.machine == ground.machines[m]->id) taken.push_back({outage.begin, endOr(outage.end, whole.end)});
    }
    for (const CommittedOuting& outing : ground.outings) {
        if (outing.machine == m) taken.push_back(outing.time);
    }
    return without({whole}, merged(std::move(taken)));
}

/// Leaving the bay comes before the first lane and the way back after the last.
Spans shrunk(Spans spans, const Machine& machine) {
    for (Span& s : spans)
        s = {s.begin + machine.times.leaveBay, s.end - machine.times.returnToBay};
    return merged(std::move(spans));
}

Spans workable(const Ground& ground, size_t m, Span ShiftSpan::*tier) {
    const Machine& machine = *ground.machines[m];
    if (!machine.attended) return shrunk(ground.machinesUp[m], machine);
    Spans staffed;
    for (const ShiftSpan& shift : ground.shifts)
        staffed.push_back(shift.*tier);
    return shrunk(common(ground.machinesUp[m], merged(std::move(staffed))), machine);
}

CommittedOuting outingFrom(const Ground& ground, size_t machine, std::vector<const Job*> jobs) {
    std::sort(jobs.begin(), jobs.end(),
              [](const Job* a, const Job* b) { return a->time != b->time ? a->time < b->time : a->id < b->id; });
    CommittedOuting outing{machine, jobs.front()->date, jobs.front()->outing, jobs.front()->time, {}, jobs};
    for (const Job* job : jobs)
        outing.time.end = std::max(outing.time.end, endOfSteps(*job));
    const auto& steps = jobs.back()->steps;
    const bool comesBack = std::any_of(steps.begin(), steps.end(), [](const Step& s) { return s.kind == StepKind::ReturnToBay; });
    if (!comesBack) outing.time.end = outing.time.end + ground.machines[machine]->times.returnToBay;
    const bool over = std::all_of(jobs.begin(), jobs.end(), [](const Job* job) {
        return job->state == JobState::Done || job->state == JobState::CutShort;
    });
    if (!ground.machines[machine]->attended || (over && outing.time.end <= ground.now)) return outing;
    outing.attended = outing.time;
    for (const Step& step : jobs.front()->steps) {
        if (step.kind == StepKind::Charge) outing.attended.begin = std::max(outing.attended.begin, step.time.end);
    }
    return outing;
}

std::vector<CommittedOuting> committedOutings(const Ground& ground) {
    std::map<std::tuple<QDate, size_t, int>, std::vector<const Job*>> byOuting;
    for (const Job& job : ground.state.committed) {
        if (job.state == JobState::Dropped || job.state == JobState::Proposed) continue;
        const auto machine =
            std::find_if(ground.machines.begin(), ground.machines.end(), [&](const Machine* m) { return m->id == job.machine; });
        if (machine == ground.machines.end()) continue;
        byOuting[{job.date, size_t(machine - ground.machines.begin()), job.outing}].push_back(&job);
    }
    std::vector<CommittedOuting> outings;
    for (auto& [key, jobs] : byOuting)
        outings.push_back(outingFrom(ground, std::get<1>(key), std::move(jobs)));
    return outings;
}

void addMachines(Ground& ground) {
    const State& state = ground.state;
    for (const Machine& machine : state.centre.machines)
        ground.machines.push_back(&machine);
    std::sort(ground.machines.begin(), ground.machines.end(), [](const Machine* a, const Machine* b) { return a->id < b->id; });
    for (const Machine* machine : ground.machines) {
        const auto own = std::find_if(state.limits.begin(), state.limits.end(),
                                      [&](const MachineLimits& l) { return l.machine == machine->id; });
        ground.limits.push_back(own == state.limits.end() ? limitsFromSettings(*machine) : *own);
    }
}

}  // namespace

size_t Ground::dayOf(Instant t) const { return size_t(std::upper_bound(days.begin(), days.end(), t) - days.begin()) - 1; }

Instant endOfSteps(const Job& job) {
    Instant end = job.time.end;
    for (const Step& step : job.steps)
        end = std::max(end, step.time.end);
    return end;
}

bool mayDo(const Machine& machine, int lane, const Recipe& recipe) {
    const Bars& bars = machine.bars;
    return !bars.lanes.contains(lane) && std::count(bars.treatments.begin(), bars.treatments.end(), recipe.treatment) == 0 &&
           (!recipe.pattern || std::count(bars.patterns.begin(), bars.patterns.end(), *recipe.pattern) == 0);
}

Ground groundOf(const State& state, const Occupancy& occupancy, Instant now, const DateRange& range) {
    Ground ground{state,
                  occupancy,
                  now,
                  range,
                  dayBounds(state.centre, range),
                  playsOf(state, occupancy),
                  fixedTreatments(state),
                  {},
                  {},
                  {},
                  {},
                  {},
                  {},
                  {},
                  {},
                  {}};
    const Span whole{ground.begin(), ground.days.back()};
    for (const Occurrence& o : occupancy.occurrences) {
        if (closesWithoutStaff(o) && wholeCentre(o, state.centre)) ground.nobody.push_back(o.booked);
    }
    ground.nobody = merged(std::move(ground.nobody));
    for (int lane = 1; lane <= state.centre.facts.lanes; ++lane)
        ground.lanesFree.push_back(laneFree(ground, lane, whole));
    ground.shifts = shiftsOver(state.centre, range);
    addMachines(ground);
    ground.outings = committedOutings(ground);
    for (size_t m = 0; m < ground.machines.size(); ++m) {
        ground.machinesUp.push_back(machineUp(ground, m, whole));
        ground.byWork.push_back(workable(ground, m, &ShiftSpan::work));
        ground.byAllowance.push_back(workable(ground, m, &ShiftSpan::allowance));
    }
    return ground;
}

}  // namespace laneward::planning
