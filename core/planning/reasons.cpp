#include "core/planning/job_builder.h"

#include "core/planning/outcomes.h"

#include <algorithm>

namespace laneward::planning {

namespace {

struct StepReason {
    StepKind kind;
    const char* rule;
};

constexpr std::array stepReasons{
    StepReason{StepKind::Refill, "job.refill-before"}, StepReason{StepKind::EmptyWaste, "job.empty-before"},
    StepReason{StepKind::SwapPack, "job.swap-before"}, StepReason{StepKind::Charge, "job.charge-before"},
    StepReason{StepKind::Duty, "job.duty-before"}};

class Explainer {
public:
    Explainer(const Ground& ground, const DemandSet& demands, const std::vector<Job>& jobs)
        : m_ground(ground), m_demands(demands), m_outings(outingsOf(ground.state, jobs)) {}

    std::vector<Finding> explain(const Job& job) const {
        std::vector<Finding> reasons;
        for (const Need& need : job.neededBy) {
            const bool sameDay = dateOf(m_ground.state.centre, need.playBegins) == job.date;
            reasons.push_back(
                {Severity::Note, sameDay ? "job.needed" : "job.needed-later", need.title, {need.playBegins, need.lanes.text()}});
        }
        addSteps(job, reasons);
        addEnd(job, reasons);
        addBegin(job, reasons);
        addOvertime(job, reasons);
        return reasons;
    }

private:
    QString machineName(const Job& job) const { return findMachine(m_ground.state.centre, job.machine)->name; }

    const JobOuting* outingOf(const Job& job) const {
        const auto found = std::find_if(m_outings.begin(), m_outings.end(), [&](const JobOuting& o) {
            return o.date == job.date && o.number == job.outing && o.machine && o.machine->id == job.machine;
        });
        return found == m_outings.end() ? nullptr : &*found;
    }

    /// The gap in which `lane` is worked.
    const Gap* gapOf(const LaneTime& lane) const {
        const auto& gaps = m_demands.gaps[size_t(lane.lane - 1)];
        const auto gap =
            std::lower_bound(gaps.begin(), gaps.end(), lane.time.end, [](const Gap& g, Instant t) { return g.time.end < t; });
        return gap == gaps.end() || lane.time.begin < gap->time.begin ? nullptr : &*gap;
    }

    const Demand* demandAfter(const LaneTime& lane) const {
        const Gap* gap = gapOf(lane);
        return gap && gap->demand ? &m_demands.demands[*gap->demand] : nullptr;
    }

    void addSteps(const Job& job, std::vector<Finding>& reasons) const {
        for (const Step& step : job.steps) {
            for (const StepReason& reason : stepReasons) {
                if (step.kind != reason.kind) continue;
                reasons.push_back({Severity::Note, reason.rule, machineName(job), {step.time.length()}});
            }
            if (step.kind != StepKind::FirstPairTwice) continue;
            const Need* asks = nullptr;
            for (const Need& need : job.neededBy) {
                for (const Occurrence& o : m_ground.occupancy.occurrences) {
                    const bool same = o.series == need.series && o.original == need.original;
                    if (!asks && same && o.firstPairTwice) asks = &need;
                }
            }
            if (asks) reasons.push_back({Severity::Note, "job.first-pair-twice", asks->title, {step.lanes.text()}});
        }
    }

    /// Why it cannot end later.
    void addEnd(const Job& job, std::vector<Finding>& reasons) const {
        const LaneTime* tightest = nullptr;
        Seconds least;
        for (const LaneTime& lane : job.lanes) {
            const Demand* demand = demandAfter(lane);
            if (!demand) continue;
            const Seconds room = demand->target - lane.time.end;
            if (!tightest || room < least) {
                tightest = &lane;
                least = room;
            }
        }
        if (!tightest) return;
        const Demand& demand = *demandAfter(*tightest);
        const Occurrence& o = m_ground.occupancy.occurrences[demand.occurrence];
        if (demand.kind == DemandKind::Stripped) {
            reasons.push_back({Severity::Note, "job.fixed-by-closing", o.title, {demand.playBegins}});
        } else if (least <= Seconds{0} || job.slack > Seconds{0}) {
            reasons.push_back({Severity::Note,
                               "job.fixed-by-settle",
                               o.title,
                               {demand.target, o.settle, m_ground.state.centre.facts.settings.reserve}});
        }
        if (demand.kind != DemandKind::Stripped && demand.kind != DemandKind::AsItIs && least < Seconds{0}) {
            const Seconds late = tightest->time.end - demand.due;
            if (late > Seconds{0}) reasons.push_back({Severity::Warning, "job.late", o.title, {late}});
            if (late <= Seconds{0}) reasons.push_back({Severity::Warning, "job.tight", o.title, {-least}});
        }
        if (job.slack > Seconds{0}) addFollower(job, reasons);
        if (job.slack == Seconds{0} && least > Seconds{0}) addBlocker(job, reasons);
    }

    /// The machine's or the person's next work, or the end of the shift.
    void addFollower(const Job& job, std::vector<Finding>& reasons) const {
        const JobOuting* outing = outingOf(job);
        if (!outing) return;
        for (const JobOuting& other : m_outings) {
            if (other.machine != outing->machine) continue;
            for (const Job* next : other.jobs) {
                const bool follows = next->time.begin >= job.time.end && next->time.begin < endOfSteps(job) + minutes(15);
                if (!follows) continue;
                reasons.push_back({Severity::Note, "job.fixed-by-machine", machineName(job), {next->time.begin}});
                return;
            }
        }
        for (const ShiftSpan& shift : m_ground.shifts) {
            const bool atEnd = outing->attended.end == shift.work.end || outing->attended.end == shift.allowance.end;
            if (!outing->attended.isEmpty() && atEnd) {
                reasons.push_back({Severity::Note, "job.fixed-by-shift", shiftName(shift), {outing->attended.end}});
                return;
            }
        }
        for (const JobOuting& other : m_outings) {
            if (other.machine == outing->machine || other.attended.isEmpty() || other.attended.begin != outing->attended.end)
                continue;
            reasons.push_back({Severity::Note, "job.fixed-by-person", shiftNameAt(other.attended), {other.attended.begin}});
            return;
        }
    }

    /// Some lane is taken, by its pair partner's play or an outage, the moment it is done.
    void addBlocker(const Job& job, std::vector<Finding>& reasons) const {
        for (const LaneTime& lane : job.lanes) {
            const int partner = pairPartner(lane.lane);
            if (partner <= m_ground.state.centre.facts.lanes && m_ground.state.centre.facts.settings.pairPartnerRule) {
                const LanePlays& plays = m_ground.plays[size_t(partner - 1)];
                const auto play = std::lower_bound(plays.begin(), plays.end(), lane.time.end,
                                                   [](const Play& p, Instant t) { return p.booked.begin < t; });
                if (play != plays.end() && play->booked.begin == lane.time.end) {
                    const QString& title = m_ground.occupancy.occurrences[play->occurrence].title;
                    reasons.push_back({Severity::Note, "job.fixed-by-partner", title, {play->booked.begin}});
                    return;
                }
            }
            for (const Outage& outage : m_ground.state.centre.outages) {
                if (!outage.lanes.contains(lane.lane) || outage.begin != lane.time.end) continue;
                reasons.push_back({Severity::Note, "job.fixed-by-outage", outage.lanes.text(), {outage.begin}});
                return;
            }
        }
    }

    /// Why it cannot begin earlier.
    void addBegin(const Job& job, std::vector<Finding>& reasons) const {
        for (const LaneTime& lane : job.lanes) {
            const LanePlays& plays = m_ground.plays[size_t(lane.lane - 1)];
            const auto after = std::upper_bound(plays.begin(), plays.end(), lane.time.begin,
                                                [](Instant t, const Play& p) { return t < p.booked.begin; });
            if (after == plays.begin() || std::prev(after)->cleared != lane.time.begin) continue;
            const QString& title = m_ground.occupancy.occurrences[std::prev(after)->occurrence].title;
            reasons.push_back({Severity::Note, "job.fixed-by-play-before", title, {lane.time.begin}});
            return;
        }
        if (job.time.begin == m_ground.now)
            reasons.push_back({Severity::Note, "job.fixed-by-now", machineName(job), {m_ground.now}});
        for (const ShiftSpan& shift : m_ground.shifts) {
            if (job.time.begin != shift.work.begin && job.time.begin != shift.allowance.begin) continue;
            reasons.push_back({Severity::Note, "job.fixed-by-shift", shiftName(shift), {job.time.begin}});
            return;
        }
    }

    void addOvertime(const Job& job, std::vector<Finding>& reasons) const {
        const JobOuting* outing = outingOf(job);
        if (!outing || outing->attended.isEmpty()) return;
        const auto overtime = leastOvertime({outing->attended}, m_ground.shifts);
        if (overtime && *overtime > Seconds{0}) {
            reasons.push_back({Severity::Warning, "job.overtime", shiftNameAt(outing->attended), {*overtime}});
        }
    }

    QString shiftName(const ShiftSpan& span) const {
        const auto& shifts = m_ground.state.centre.shifts;
        const auto found = std::find_if(shifts.begin(), shifts.end(), [&](const Shift& s) { return s.id == span.shift; });
        return found == shifts.end() ? span.shift.value : found->name;
    }

    QString shiftNameAt(const Span& time) const {
        for (const ShiftSpan& shift : m_ground.shifts) {
            if (shift.allowance.begin <= time.begin && time.end <= shift.allowance.end) return shiftName(shift);
        }
        return {};
    }

    const Ground& m_ground;
    const DemandSet& m_demands;
    std::vector<JobOuting> m_outings;
};

}  // namespace

void explainJobs(const Ground& ground, const DemandSet& demands, std::vector<Job>& jobs) {
    // Each day on its own keeps this linear in the length of the range.
    for (size_t begin = 0; begin < jobs.size();) {
        size_t end = begin;
        while (end < jobs.size() && jobs[end].date == jobs[begin].date)
            ++end;
        const std::vector<Job> day(jobs.begin() + std::ptrdiff_t(begin), jobs.begin() + std::ptrdiff_t(end));
        const Explainer explainer(ground, demands, day);
        for (size_t j = begin; j < end; ++j) {
            if (jobs[j].state == JobState::Proposed) jobs[j].reasons = explainer.explain(jobs[j]);
        }
        begin = end;
    }
}

}  // namespace laneward::planning
