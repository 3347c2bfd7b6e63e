#include "tests/support/plan_checker.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace support {

using namespace laneward;

namespace {

using Time = std::int64_t;

bool overlap(Time a, Time b, Time c, Time d) { return a < d && c < b; }

struct Outing {
    const Machine* machine;
    QDate date;
    std::vector<const Job*> jobs;
    Time begin;
    Time end;
    Time bound;  ///< a person is with it from here
};

class Checker {
public:
    Checker(const State& state, const Plan& plan) : s(state), p(plan) {}

    QStringList faults() {
        collectOutings();
        for (const Job& job : p.jobs)
            checkJob(job);
        for (const Outing& o : outings)
            checkOuting(o);
        checkPairs();
        checkPeople();
        checkTanks();
        checkConditionOnly();
        return found;
    }

private:
    void say(const QString& text) { found << text; }

    static Time steps(const Job& job, StepKind kind) {
        Time sum = 0;
        for (const Step& step : job.steps)
            sum += step.kind == kind ? step.time.end.seconds - step.time.begin.seconds : 0;
        return sum;
    }

    const Machine* machineOf(const Job& job) const {
        for (const Machine& m : s.centre.machines) {
            if (m.id == job.machine) return &m;
        }
        return nullptr;
    }

    const Pattern* patternOf(const Job& job) const {
        for (const Pattern& x : s.patterns) {
            if (job.pattern && x.id == *job.pattern) return &x;
        }
        return nullptr;
    }

    void collectOutings() {
        std::map<std::tuple<QDate, QString, int>, std::vector<const Job*>> map;
        for (const Job& job : p.jobs)
            map[{job.date, job.machine.value, job.outing}].push_back(&job);
        for (auto& [key, jobs] : map) {
            std::sort(jobs.begin(), jobs.end(), [](auto a, auto b) { return a->time.begin < b->time.begin; });
            Outing o{machineOf(*jobs[0]), jobs[0]->date, jobs, jobs[0]->time.begin.seconds, 0, 0};
            bool back = false;
            for (const Job* job : jobs) {
                o.end = std::max(o.end, job->time.end.seconds);
                for (const Step& step : job->steps) {
                    back = back || step.kind == StepKind::ReturnToBay;
                    o.begin = std::min(o.begin, step.time.begin.seconds);
                    o.end = std::max(o.end, step.time.end.seconds);
                }
            }
            if (!back && o.machine) o.end += o.machine->times.returnToBay.value;
            o.bound = o.begin;
            for (const Step& step : jobs[0]->steps) {
                if (step.kind == StepKind::Charge) o.bound = step.time.end.seconds;
            }
            outings.push_back(o);
        }
    }

    /// By the definition: the treatment's time for 40 ft, and for each 10 ft more its share, rounded up.
    static Time laneSeconds(const Machine& m, Treatment t, const Pattern* pattern) {
        Time time = m.times.lane[size_t(t)].value;
        if (t == Treatment::CleanOnly || !pattern) return time;
        const double share = double(m.times.perTenFeet.value) * double(pattern->end.value - 40 * 304800) / (10.0 * 304800);
        return time + Time(std::ceil(share - 1e-9));
    }

    static Time moving(const Machine& m, int a, int b) {
        const int apart = a > b ? a - b : b - a;
        return apart == 0 ? 0 : m.times.nextLane.value + (apart - 1) * m.times.crossLane.value;
    }

    void checkJob(const Job& job) {
        const Machine* m = machineOf(job);
        const Pattern* pattern = patternOf(job);
        if (!m || (job.pattern && !pattern) || (job.treatment == Treatment::CleanOnly) == job.pattern.has_value()) {
            say("unknown");
            return;
        }
        if (job.state == JobState::Proposed && job.time.begin < p.now) say("before now");
        for (Treatment t : m->bars.treatments) {
            if (t == job.treatment) say("barred treatment");
        }
        for (const PatternId& x : m->bars.patterns) {
            if (job.pattern == x) say("barred pattern");
        }
        Time ready = job.time.begin.seconds;
        for (size_t i = 0; i < job.lanes.size(); ++i) {
            const LaneTime& lane = job.lanes[i];
            if (i > 0) ready += moving(*m, job.lanes[i - 1].lane, lane.lane);
            if (lane.time.begin.seconds < ready || lane.time.end.seconds > job.time.end.seconds) say("lane outside its turn");
            if (lane.time.end.seconds - lane.time.begin.seconds < laneSeconds(*m, job.treatment, pattern)) say("lane too short");
            ready = lane.time.end.seconds;
            checkLane(job, lane.lane, lane.time.begin.seconds, lane.time.end.seconds);
        }
        checkSteps(job, *m);
    }

    void checkSteps(const Job& job, const Machine& m) {
        const std::vector<std::pair<StepKind, Time>> least{
            {StepKind::LeaveBay, m.times.leaveBay.value},      {StepKind::Refill, m.times.refill.value},
            {StepKind::EmptyWaste, m.times.emptyWaste.value},  {StepKind::SwapPack, m.times.swapPack.value},
            {StepKind::Charge, m.times.charge.value},          {StepKind::Duty, m.times.duty.value},
            {StepKind::ReturnToBay, m.times.returnToBay.value}};
        Time ready = job.time.begin.seconds;
        const Time firstLane = job.lanes.empty() ? ready : job.lanes.front().time.begin.seconds;
        const Time lastLane = job.lanes.empty() ? ready : job.lanes.back().time.end.seconds;
        for (const Step& step : job.steps) {
            if (step.time.begin.seconds < ready) say("steps at one time");
            ready = step.time.end.seconds;
            for (const auto& [kind, time] : least) {
                if (step.kind == kind && ready - step.time.begin.seconds < time) say("step too short");
            }
            if (step.kind == StepKind::FirstPairTwice) {
                for (int lane : step.lanes.lanes())
                    checkLane(job, lane, step.time.begin.seconds, step.time.end.seconds);
            }
            if (step.kind == StepKind::ReturnToBay && step.time.begin.seconds < lastLane) say("back before the work is done");
            if (step.kind == StepKind::Treat || step.kind == StepKind::ReturnToBay) continue;
            if (step.time.end.seconds > firstLane) say("step behind the first lane");
        }
    }

    bool outOfService(int lane, Time t) const {
        for (const Outage& o : s.centre.outages) {
            if (!o.machine && o.lanes.contains(lane) && o.begin.seconds <= t && (!o.end || t < o.end->seconds)) return true;
        }
        return false;
    }

    bool played(int lane, Time a, Time b) const {
        for (const Occurrence& o : p.occupancy.occurrences) {
            if (o.kind == EventKind::Closure || !o.lanes.contains(lane) || outOfService(lane, o.booked.begin.seconds)) continue;
            if (overlap(a, b, o.booked.begin.seconds, std::max(o.cleared.seconds, o.booked.end.seconds))) return true;
        }
        return false;
    }

    void checkLane(const Job& job, int lane, Time a, Time b) {
        if (lane < 1 || lane > s.centre.facts.lanes) return say("no such lane");
        const Machine* m = machineOf(job);
        if (m->bars.lanes.contains(lane)) say("barred lane");
        if (played(lane, a, b)) say("lane in play");
        const int partner = lane % 2 ? lane + 1 : lane - 1;
        if (s.centre.facts.settings.pairPartnerRule && partner <= s.centre.facts.lanes && played(partner, a, b))
            say("partner in play");
        for (const Outage& o : s.centre.outages) {
            if (o.machine || !o.lanes.contains(lane)) continue;
            if (o.begin.seconds < b && (!o.end || a < o.end->seconds)) say("lane out of service");
        }
        for (const Occurrence& o : p.occupancy.occurrences) {
            if (o.kind != EventKind::Closure || !o.noStaff || !o.lanes.contains(lane)) continue;
            if (overlap(a, b, o.booked.begin.seconds, o.booked.end.seconds)) say("closed");
        }
    }

    void checkOuting(const Outing& o) {
        if (!o.machine) return;
        bool leaves = false;
        for (const Step& step : o.jobs[0]->steps)
            leaves = leaves || step.kind == StepKind::LeaveBay;
        if (!leaves) say("never leaves the bay");
        for (size_t i = 1; i < o.jobs.size(); ++i) {
            Time ready = o.jobs[i - 1]->time.end.seconds;
            for (const Step& step : o.jobs[i - 1]->steps)
                ready = std::max(ready, step.time.end.seconds);
            if (!o.jobs[i - 1]->lanes.empty() && !o.jobs[i]->lanes.empty()) {
                const LaneTime& last = o.jobs[i - 1]->lanes.back();
                ready = std::max(ready, last.time.end.seconds + moving(*o.machine, last.lane, o.jobs[i]->lanes.front().lane));
            }
            if (o.jobs[i]->time.begin.seconds < ready) say("no time to move on");
        }
        for (const Outage& out : s.centre.outages) {
            if (out.machine != o.machine->id) continue;
            if (out.begin.seconds < o.end && (!out.end || o.begin < out.end->seconds)) say("machine out of service");
        }
        for (const Occurrence& c : p.occupancy.occurrences) {
            if (c.kind != EventKind::Closure || !c.noStaff || c.lanes.count() < s.centre.facts.lanes) continue;
            if (overlap(o.begin, o.end, c.booked.begin.seconds, c.booked.end.seconds)) say("nobody in the house");
        }
        checkFirstPair(o);
    }

    void checkFirstPair(const Outing& o) {
        const Job& job = *o.jobs[0];
        bool asked = false;
        for (const Need& need : job.neededBy) {
            for (const Series& series : s.series)
                asked = asked || (series.id == need.series && series.firstPairTwice);
        }
        if (!asked || job.lanes.empty()) return;
        const int lane = job.lanes[0].lane;
        const bool two = job.lanes.size() > 1 && job.lanes[1].lane == (lane % 2 ? lane + 1 : lane - 1);
        Time least = laneSeconds(*o.machine, job.treatment, patternOf(job)) * (two ? 2 : 1);
        if (two) least += 2 * moving(*o.machine, lane, job.lanes[1].lane);
        for (const Step& step : job.steps) {
            if (step.kind == StepKind::FirstPairTwice && step.lanes.contains(lane) &&
                (!two || step.lanes.contains(job.lanes[1].lane)) && step.time.end.seconds - step.time.begin.seconds >= least) {
                return;
            }
        }
        say("first pair not worked twice");
    }

    void checkPairs() {
        for (size_t i = 0; i < outings.size(); ++i) {
            for (size_t j = i + 1; j < outings.size(); ++j) {
                const Outing& a = outings[i];
                const Outing& b = outings[j];
                if (a.machine && a.machine == b.machine && overlap(a.begin, a.end, b.begin, b.end)) say("machine in two places");
                for (const Job* x : a.jobs) {
                    for (const Job* y : b.jobs) {
                        for (const LaneTime& l : x->lanes) {
                            for (const LaneTime& k : y->lanes) {
                                const bool same = l.lane == k.lane && overlap(l.time.begin.seconds, l.time.end.seconds,
                                                                              k.time.begin.seconds, k.time.end.seconds);
                                if (same) say("two machines on a lane");
                            }
                        }
                    }
                }
            }
        }
    }

    /// Tries every way to give outings to shifts.
    bool canAttend(const std::vector<const Outing*>& list, size_t next, std::vector<int>& given,
                   const std::vector<ShiftSpan>& shifts) {
        if (next == list.size()) return true;
        for (size_t k = 0; k < shifts.size(); ++k) {
            if (list[next]->bound < shifts[k].allowance.begin.seconds || list[next]->end > shifts[k].allowance.end.seconds)
                continue;
            int busy = 0;
            for (size_t i = 0; i < next; ++i)
                busy += given[i] == int(k) && list[i]->end > list[next]->bound ? 1 : 0;
            if (busy >= shifts[k].people) continue;
            given[next] = int(k);
            if (canAttend(list, next + 1, given, shifts)) return true;
        }
        return false;
    }

    void checkPeople() {
        std::map<QDate, std::vector<const Outing*>> byDate;
        for (const Outing& o : outings) {
            if (o.machine && o.machine->attended) byDate[o.date].push_back(&o);
        }
        for (auto& [date, list] : byDate) {
            std::sort(list.begin(), list.end(), [](auto a, auto b) { return a->bound < b->bound; });
            std::vector<ShiftSpan> shifts;
            for (int d : {-1, 0, 1}) {
                for (const ShiftSpan& shift : shiftsOn(s.centre, date.addDays(d)))
                    shifts.push_back(shift);
            }
            std::vector<int> given(list.size(), -1);
            if (!canAttend(list, 0, given, shifts)) say("nobody to attend");
        }
    }

    static Time ceilOf(Time a, Time b) { return (a + b - 1) / b; }

    void checkTanks() {
        for (const Machine& m : s.centre.machines) {
            std::vector<const Job*> jobs;
            for (const Job& job : p.jobs) {
                if (job.machine == m.id) jobs.push_back(&job);
            }
            std::sort(jobs.begin(), jobs.end(), [](auto a, auto b) { return a->time.begin < b->time.begin; });
            Time c0 = 0, c1 = 0, cleaner = 0, waste = 0, pack = 0;
            Time duty = m.capacity.lanesUntilDuty.value_or(1000000000);
            int swaps = 0;
            QDate date;
            for (const Job* job : jobs) {
                if (job->date != date) {
                    date = job->date;
                    c0 = m.capacity.conditioner[0].value;
                    c1 = m.capacity.conditioner[1].value;
                    cleaner = m.capacity.cleaner.value;
                    waste = 0;
                    pack = m.capacity.lanesPerCharge;
                    swaps = 0;
                    for (const MachineLevels& l : s.levels) {
                        if (l.machine != m.id || date != dateOf(s.centre, p.now)) continue;
                        c0 = l.conditioner[0].value;
                        c1 = l.conditioner[1].value;
                        cleaner = l.cleaner.value;
                        waste = l.waste.value;
                        pack = l.lanesLeft;
                    }
                }
                if (steps(*job, StepKind::Refill) > 0) {
                    c0 = m.capacity.conditioner[0].value;
                    c1 = m.capacity.conditioner[1].value;
                    cleaner = m.capacity.cleaner.value;
                }
                if (steps(*job, StepKind::EmptyWaste) > 0) waste = 0;
                if (steps(*job, StepKind::SwapPack) > 0 || steps(*job, StepKind::Charge) > 0) pack = m.capacity.lanesPerCharge;
                if (steps(*job, StepKind::SwapPack) > 0 && ++swaps > m.capacity.sparePacks) say("no spare pack");
                if (steps(*job, StepKind::Duty) > 0) duty = m.capacity.lanesUntilDuty.value_or(1000000000);
                Time runs = Time(job->lanes.size());
                for (const Step& step : job->steps)
                    runs += step.kind == StepKind::FirstPairTwice ? step.lanes.count() : 0;
                if (const Pattern* pattern = patternOf(*job)) {
                    Time v[2] = {0, 0};
                    for (const Stroke& k : pattern->strokes)
                        v[k.slot] += k.dose.value * k.laps * (k.lastBoard - k.firstBoard + 1);
                    c0 -= runs * ceilOf(v[0] * m.capacity.conditionerPermille, 1000);
                    c1 -= runs * ceilOf(v[1] * m.capacity.conditionerPermille, 1000);
                }
                if (job->treatment != Treatment::ConditionOnly) {
                    cleaner -= runs * m.capacity.cleanerPerLane.value;
                    waste += runs * m.capacity.wastePerLane.value;
                }
                pack -= runs;
                duty -= runs;
                if (c0 < 0 || c1 < 0) say("conditioner ran out");
                if (cleaner < 0) say("cleaner ran out");
                if (waste > m.capacity.waste.value) say("waste overflowed");
                if (pack < 0) say("pack empty");
                if (duty < 0) say("duty passed");
            }
        }
    }

    void checkConditionOnly() {
        struct Done {
            Time end;
            Treatment treatment;
            std::optional<PatternId> pattern;
        };
        std::map<int, std::vector<Done>> lanes;
        for (const LaneTreatment& t : s.history)
            lanes[t.lane].push_back({t.end.seconds, Treatment::CleanAndCondition, t.pattern});
        for (const Job& job : p.jobs) {
            for (const LaneTime& l : job.lanes)
                lanes[l.lane].push_back({l.time.end.seconds, job.treatment, job.pattern});
        }
        for (auto& [lane, list] : lanes) {
            std::stable_sort(list.begin(), list.end(), [](const Done& a, const Done& b) { return a.end < b.end; });
            std::optional<PatternId> on;
            for (const Done& d : list) {
                if (d.treatment == Treatment::ConditionOnly && (!on || on != d.pattern))
                    say("condition only over another pattern");
                if (d.treatment != Treatment::ConditionOnly) on = d.pattern;
            }
        }
    }

    const State& s;
    const Plan& p;
    std::vector<Outing> outings;
    QStringList found;
};

}  // namespace

QStringList faultsOf(const State& state, const Plan& plan) { return Checker(state, plan).faults(); }

}  // namespace support
