#include "core/planning/violations.h"

#include "core/planning/day_problem.h"
#include "core/planning/recursion.h"

#include <algorithm>
#include <map>

namespace laneward::planning {

namespace {

/// The lanes that a job works a first time, as its steps say.
int lanesTwice(const Job& job) {
    int lanes = 0;
    for (const Step& step : job.steps)
        lanes += step.kind == StepKind::FirstPairTwice ? step.lanes.count() : 0;
    return lanes;
}

struct Work {
    int lane;
    Span time;
    const Job* job;
};

}  // namespace

/// Where a series asks for it, the first lane of its outing (with its pair partner, if that comes next) is worked twice.
void Breaches::checkFirstPair(const JobOuting& outing) {
    const Job& first = *outing.jobs.front();
    if (!isChecked(first) || first.lanes.empty()) return;
    const bool asked = std::any_of(first.neededBy.begin(), first.neededBy.end(), [&](const Need& need) {
        return std::any_of(m_plan.occupancy.occurrences.begin(), m_plan.occupancy.occurrences.end(), [&](const Occurrence& o) {
            return o.firstPairTwice && o.series == need.series && o.original == need.original;
        });
    });
    if (!asked) return;
    const int lane = first.lanes.front().lane;
    const bool pair = first.lanes.size() > 1 && first.lanes[1].lane == pairPartner(lane);
    const Pattern* pattern = first.pattern ? findPattern(m_state.patterns, *first.pattern) : nullptr;
    Seconds needed = laneTime(*outing.machine, first.treatment, pattern) * (pair ? 2 : 1);
    if (pair) needed += moveTime(*outing.machine, lane, pairPartner(lane)) * 2;
    for (const Step& step : first.steps) {
        if (step.kind != StepKind::FirstPairTwice || !step.lanes.contains(lane)) continue;
        if (step.time.length() >= needed && (!pair || step.lanes.contains(pairPartner(lane)))) return;
    }
    add("violation.too-short", first, {std::int64_t{lane}, first.time.begin});
}

/// Nobody is there during a closure without staff: no outing when it is for the whole centre, else not on its lanes.
void Breaches::checkClosed(const JobOuting& outing) {
    for (const Occurrence& o : m_plan.occupancy.occurrences) {
        if (o.kind != EventKind::Closure || !o.noStaff || !o.booked.overlaps(outing.time)) continue;
        const bool all = o.lanes.isEmpty() || allLanes(m_state.centre).isSubsetOf(o.lanes);
        const bool hit = all || std::any_of(outing.jobs.begin(), outing.jobs.end(), [&](const Job* job) {
                             return std::any_of(job->lanes.begin(), job->lanes.end(), [&](const LaneTime& l) {
                                 return o.lanes.contains(l.lane) && o.booked.overlaps(l.time);
                             });
                         });
        if (hit) add("violation.closed", *outing.jobs.front(), {outing.jobs.front()->time.begin});
    }
}

/// One machine is in one place, and one lane has one machine.
void Breaches::checkOverlaps() {
    for (size_t i = 0; i < m_outings.size(); ++i) {
        for (size_t j = i + 1; j < m_outings.size(); ++j) {
            const JobOuting& a = m_outings[i];
            const JobOuting& b = m_outings[j];
            if (!a.machine || a.machine != b.machine || !a.time.overlaps(b.time) || (a.over && b.over)) continue;
            add("violation.machine-twice", *b.jobs.front(), {a.time.begin, b.time.begin});
        }
    }
    std::vector<Work> work;
    for (const Job& job : m_plan.jobs) {
        if (job.state == JobState::Dropped) continue;
        for (const LaneTime& lane : job.lanes)
            work.push_back({lane.lane, lane.time, &job});
    }
    std::sort(work.begin(), work.end(),
              [](const Work& a, const Work& b) { return a.lane != b.lane ? a.lane < b.lane : a.time < b.time; });
    for (size_t i = 1; i < work.size(); ++i) {
        const bool twice = work[i].lane == work[i - 1].lane && work[i].time.overlaps(work[i - 1].time);
        if (twice && (isChecked(*work[i].job) || isChecked(*work[i - 1].job))) {
            add("violation.lane-twice", *work[i].job, {std::int64_t{work[i].lane}, work[i].job->time.begin});
        }
    }
}

/// Names the first outing, by time, that nobody can attend any more.
void Breaches::checkStaff(QDate date) {
    std::vector<ShiftSpan> shifts;
    for (int offset : {-1, 0, 1}) {
        const std::vector<ShiftSpan> more = shiftsOn(m_state.centre, date.addDays(offset));
        shifts.insert(shifts.end(), more.begin(), more.end());
    }
    std::vector<const JobOuting*> outings;
    for (const JobOuting& o : m_outings) {
        if (o.date == date && !o.over && !o.attended.isEmpty()) outings.push_back(&o);
    }
    std::sort(outings.begin(), outings.end(), [](const JobOuting* a, const JobOuting* b) { return a->attended < b->attended; });
    std::vector<Span> attended;
    for (const JobOuting* outing : outings) {
        attended.push_back(outing->attended);
        if (leastOvertime(attended, shifts)) continue;
        attended.pop_back();
        const bool checked = std::any_of(outing->jobs.begin(), outing->jobs.end(), [](const Job* j) { return isChecked(*j); });
        if (checked) add("violation.no-staff", *outing->jobs.front(), {outing->attended.begin});
    }
}

/// Condition only goes on top of the same pattern.
void Breaches::checkConditionOnly() {
    std::map<int, std::optional<PatternId>> on;
    std::map<int, Instant> since;
    for (const LaneTreatment& t : m_state.history) {
        if (since.contains(t.lane) && since[t.lane] >= t.end) continue;
        on[t.lane] = t.pattern;
        since[t.lane] = t.end;
    }
    std::vector<Work> work;
    for (const Job& job : m_plan.jobs) {
        if (job.state == JobState::Dropped) continue;
        for (const LaneTime& lane : job.lanes)
            work.push_back({lane.lane, lane.time, &job});
    }
    std::stable_sort(work.begin(), work.end(), [](const Work& a, const Work& b) { return a.time.end < b.time.end; });
    for (const Work& w : work) {
        if (since.contains(w.lane) && w.time.end <= since[w.lane]) continue;
        if (w.job->treatment == Treatment::ConditionOnly) {
            if (isChecked(*w.job) && (!on[w.lane] || on[w.lane] != w.job->pattern)) {
                add("violation.other-pattern", *w.job, {std::int64_t{w.lane}, w.job->time.begin});
            }
        } else {
            on[w.lane] = w.job->treatment == Treatment::CleanOnly ? std::nullopt : w.job->pattern;
        }
    }
}

/// Runs the machine's jobs in order of time, from what is in it, and lets every day begin as closing down leaves it.
void Breaches::checkStocks(const Machine& machine) {
    const auto own = std::find_if(m_state.limits.begin(), m_state.limits.end(),
                                  [&](const MachineLimits& l) { return l.machine == machine.id; });
    const MachineLimits limits = own == m_state.limits.end() ? limitsFromSettings(machine) : *own;
    static constexpr std::array rules{"violation.conditioner", "violation.conditioner", "violation.cleaner",
                                      "violation.waste",       "violation.pack",        "violation.duty"};
    static_assert(rules.size() == stockCount);
    std::vector<const Job*> jobs;
    for (const Job& job : m_plan.jobs) {
        const bool inLevels = job.state == JobState::Done || job.state == JobState::CutShort || job.state == JobState::Dropped;
        if (job.machine == machine.id && !inLevels) jobs.push_back(&job);
    }
    std::stable_sort(jobs.begin(), jobs.end(), [](const Job* a, const Job* b) { return a->time < b->time; });
    const Stock full = fullStock(machine, limits);
    std::int64_t dutyLeft = limits.lanesUntilDuty ? std::int64_t{*limits.lanesUntilDuty} : endless;
    Stock stock = full;
    QDate date;
    int swaps = 0;
    for (const Job* job : jobs) {
        if (job->date != date) {
            if (date.isValid()) dutyLeft = stock[dutyStock];
            date = job->date;
            swaps = 0;
            stock = full;
            for (const MachineLevels& levels : m_state.levels) {
                if (levels.machine == machine.id && date == dateOf(m_state.centre, m_plan.now))
                    stock = stockOf(machine, levels, 0);
            }
            stock[dutyStock] = dutyLeft;
        }
        const unsigned steps = stepBits(*job);
        restore(stock, full, steps);
        swaps += (steps & SwapBit) ? 1 : 0;
        if (swaps > machine.capacity.sparePacks && (steps & SwapBit)) add("violation.pack", *job, {job->time.begin});
        const Pattern* pattern = job->pattern ? findPattern(m_state.patterns, *job->pattern) : nullptr;
        const Stock lane = useOf(laneUse(machine, limits, job->treatment, pattern));
        const std::int64_t runs = std::int64_t(job->lanes.size()) + lanesTwice(*job);
        for (size_t s = 0; s < stockCount; ++s) {
            stock[s] -= lane[s] * runs;
            if (stock[s] < 0 && isChecked(*job)) add(rules[s], *job, {job->time.begin});
        }
    }
}

}  // namespace laneward::planning
