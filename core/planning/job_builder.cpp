#include "core/planning/job_builder.h"

#include <algorithm>

namespace laneward::planning {

namespace {

struct NamedStep {
    StepBits bit;
    StepKind kind;
};

// Charging comes first: the machine is in its bay and nobody has to be with it.
constexpr std::array stepOrder{NamedStep{ChargeBit, StepKind::Charge}, NamedStep{RefillBit, StepKind::Refill},
                               NamedStep{EmptyBit, StepKind::EmptyWaste}, NamedStep{SwapBit, StepKind::SwapPack},
                               NamedStep{DutyBit, StepKind::Duty}};

Seconds timeOf(StepKind kind, const MachineTimes& times) {
    switch (kind) {
        case StepKind::Refill:
            return times.refill;
        case StepKind::EmptyWaste:
            return times.emptyWaste;
        case StepKind::SwapPack:
            return times.swapPack;
        case StepKind::Charge:
            return times.charge;
        case StepKind::Duty:
            return times.duty;
        case StepKind::LeaveBay:
            return times.leaveBay;
        case StepKind::ReturnToBay:
            return times.returnToBay;
        case StepKind::FirstPairTwice:
        case StepKind::Treat:
            break;
    }
    return {};
}

void add(JobUse& sum, const JobUse& lane, std::int64_t runs) {
    for (size_t slot = 0; slot < sum.conditioner.size(); ++slot)
        sum.conditioner[slot] += lane.conditioner[slot] * runs;
    sum.cleaner += lane.cleaner * runs;
    sum.waste += lane.waste * runs;
    sum.laneRuns += int(lane.laneRuns * runs);
}

/// Many ids are written, and a format would take most of the time for it.
QString digits(int number, int count) {
    QString text(count, u'0');
    for (auto digit = text.rbegin(); digit != text.rend(); ++digit, number /= 10)
        *digit = QChar(char16_t(u'0' + number % 10));
    return text;
}

}  // namespace

QString dateInId(QDate date) {
    if (date.year() < 0 || date.year() > 9'999) return date.toString(Qt::ISODate);
    return digits(date.year(), 4) + u'-' + digits(date.month(), 2) + u'-' + digits(date.day(), 2);
}

bool comesBefore(const Job& a, const Job& b) {
    const int firstA = a.lanes.empty() ? 0 : a.lanes.front().lane;
    const int firstB = b.lanes.empty() ? 0 : b.lanes.front().lane;
    return std::tie(a.time.begin, a.machine, firstA, a.id) < std::tie(b.time.begin, b.machine, firstB, b.id);
}

void addNeed(std::vector<Need>& needs, const Occurrence& occurrence, Instant playBegins, int lane) {
    const auto same = std::find_if(needs.begin(), needs.end(), [&](const Need& n) {
        return n.series == occurrence.series && n.original == occurrence.original && n.playBegins == playBegins;
    });
    if (same != needs.end()) {
        same->lanes.insert(lane);
        return;
    }
    Need need{occurrence.series, occurrence.original, occurrence.title, playBegins, {}};
    need.lanes.insert(lane);
    const auto place = std::upper_bound(needs.begin(), needs.end(), need, [](const Need& a, const Need& b) {
        return std::tie(a.playBegins, a.title, a.series) < std::tie(b.playBegins, b.title, b.series);
    });
    needs.insert(place, std::move(need));
}

std::vector<Job> JobBuilder::jobsOf(const SolvedDay& solved, int day) {
    if (m_ids.empty()) {
        for (const Job& job : m_ground.state.committed) {
            m_ids.insert(job.id);
            m_outings[{job.date, job.machine}].insert(job.outing);
        }
    }
    m_begin = m_ground.days[size_t(day)];
    m_jobs.clear();
    const QDate date = m_ground.range.first.addDays(day);
    for (const Trip& trip : solved.solution.placement.trips) {
        addTrip(solved, trip, day, freeOuting(m_ground.machines[size_t(trip.machine)]->id, date));
    }
    std::sort(m_jobs.begin(), m_jobs.end(), comesBefore);
    for (Job& job : m_jobs)
        job.id = idFor(job);
    return std::move(m_jobs);
}

int JobBuilder::freeOuting(const MachineId& machine, QDate date) {
    std::set<int>& taken = m_outings[{date, machine}];
    int number = 1;
    while (taken.contains(number))
        ++number;
    taken.insert(number);
    return number;
}

JobId JobBuilder::idFor(const Job& job) {
    const QTime begins = zoneOf(m_ground.state.centre).toLocal(job.time.begin).time;
    const QString stem =
        dateInId(job.date) + u'-' + job.machine.value + u'-' + digits(begins.hour(), 2) + digits(begins.minute(), 2);
    JobId id{stem};
    for (int n = 2; m_ids.contains(id); ++n)
        id.value = stem + u'-' + QString::number(n);
    m_ids.insert(id);
    return id;
}

void JobBuilder::addTrip(const SolvedDay& solved, const Trip& trip, int day, int outing) {
    m_machine = m_ground.machines[size_t(trip.machine)];
    const size_t firstJob = m_jobs.size();
    for (size_t k = 0; k < trip.blocks.size(); ++k) {
        addBlock(solved, trip.blocks[k], k == 0);
        m_jobs.back().outing = outing;
        m_jobs.back().date = m_ground.range.first.addDays(day);
    }
    finishTrip(trip, firstJob);
}

/// A block that goes on where the one before ended, with nothing in between but the move, is the same job; unless only the later
/// one wants the first pair worked twice, because then the job would seem to want it too.
void JobBuilder::addBlock(const SolvedDay& solved, int block, bool first) {
    const BlockTimes& times = solved.solution.placement.blocks[size_t(block)];
    const PlannedTreatment& what = solved.treatments[size_t(times.tasks.front())].what;
    const bool wantsTwice =
        std::any_of(times.tasks.begin(), times.tasks.end(), [&](int t) { return solved.problem.tasks[size_t(t)].twice; });
    // Nor is it the same job when it would complete a pair of which only the first lane was worked twice.
    const bool halfPair =
        !first && m_wantsTwice && m_jobs.back().lanes.size() == 1 && pairPartner(what.lane) == m_jobs.back().lanes[0].lane;
    if (!first && times.steps == NoStep && (m_wantsTwice || !wantsTwice) && !halfPair) {
        Job& last = m_jobs.back();
        const Instant next = last.time.end + moveTime(*m_machine, last.lanes.back().lane, what.lane);
        if (last.treatment == what.treatment && last.pattern == what.pattern && at(times.begins.front()) == next) {
            addLanes(last, solved, times);
            return;
        }
    }
    m_wantsTwice = wantsTwice;
    Job job;
    job.machine = m_machine->id;
    job.treatment = what.treatment;
    job.pattern = what.pattern;
    job.time.begin = at(times.begins.front());
    job.window = {{INT64_MIN}, {INT64_MAX}};
    addSteps(job, times, first);
    addLanes(job, solved, times);
    m_jobs.push_back(std::move(job));
}

/// Puts the steps in front of the first lane, the last one ending where the work begins.
void JobBuilder::addSteps(Job& job, const BlockTimes& times, bool first) {
    std::vector<Step> steps;
    for (const NamedStep& named : stepOrder) {
        if (times.steps & named.bit) steps.push_back({named.kind, {{}, {timeOf(named.kind, m_machine->times).value}}, {}});
    }
    if (first) steps.push_back({StepKind::LeaveBay, {{}, {m_machine->times.leaveBay.value}}, {}});
    if (times.twice > 0) steps.push_back({StepKind::FirstPairTwice, {{}, {times.twice}}, {}});
    Instant end = at(times.begins.front());
    for (auto step = steps.rbegin(); step != steps.rend(); ++step) {
        step->time = {end - step->time.length(), end};
        end = step->time.begin;
    }
    job.time.begin = end;
    job.steps = std::move(steps);
}

void JobBuilder::addLanes(Job& job, const SolvedDay& solved, const BlockTimes& times) {
    const MachineLimits& limits =
        m_ground
            .limits[size_t(std::find(m_ground.machines.begin(), m_ground.machines.end(), m_machine) - m_ground.machines.begin())];
    const Pattern* pattern = job.pattern ? findPattern(m_ground.state.patterns, *job.pattern) : nullptr;
    add(job.use, laneUse(*m_machine, limits, job.treatment, pattern), std::int64_t(times.tasks.size()) + times.twiceLanes);
    for (size_t i = 0; i < times.tasks.size(); ++i) {
        const PlannedTreatment& what = solved.treatments[size_t(times.tasks[i])].what;
        const Instant begin = at(times.begins[i]);
        job.lanes.push_back({what.lane, {begin, begin + Seconds{times.lane}}});
        addNeeds(job, what);
    }
    for (Step& step : job.steps) {
        for (int i = 0; step.kind == StepKind::FirstPairTwice && i < times.twiceLanes; ++i) {
            step.lanes.insert(job.lanes[size_t(i)].lane);
        }
    }
    job.time.end = job.lanes.back().time.end;
    addWindow(job, solved, times);
}

void JobBuilder::addNeeds(Job& job, const PlannedTreatment& what) {
    for (size_t d : what.serves) {
        const Demand& demand = m_demands.demands[d];
        addNeed(job.neededBy, m_ground.occupancy.occurrences[demand.occurrence], demand.playBegins, what.lane);
    }
}

/// Room of the whole job: the least room of its lanes, each between the moment it is free and its target.
void JobBuilder::addWindow(Job& job, const SolvedDay& solved, const BlockTimes& times) {
    for (size_t i = 0; i < times.tasks.size(); ++i) {
        const DayTask& task = solved.problem.tasks[size_t(times.tasks[i])];
        const Sec begin = times.begins[i];
        for (int s = task.firstSlot; s < task.firstSlot + task.slotCount; ++s) {
            const Slot& slot = solved.problem.slots[size_t(s)];
            if (slot.begin > begin || begin + times.lane > slot.end) continue;
            const Seconds earlier{begin - slot.begin};
            const Seconds later{std::min(slot.end, task.target) - begin - times.lane};
            const Instant from = job.lanes.front().time.begin - earlier;
            job.window.begin = std::max(job.window.begin, from);
            // Kept relative to the end while lanes are added; finishTrip() makes an instant of it.
            job.window.end = std::min(job.window.end, Instant{later.value});
            const Seconds late{std::max<Sec>(0, begin + times.lane - task.due)};
            if (task.scored) job.late += late;
        }
    }
}

void JobBuilder::finishTrip(const Trip& trip, size_t firstJob) {
    for (size_t j = firstJob; j < m_jobs.size(); ++j) {
        Job& job = m_jobs[j];
        job.slack = {job.window.end.seconds};
        job.window.end = job.time.end + job.slack;
        const LaneSet lanes = job.laneSet();
        job.steps.push_back({StepKind::Treat, {job.lanes.front().time.begin, job.time.end}, lanes});
    }
    Job& last = m_jobs.back();
    last.steps.push_back({StepKind::ReturnToBay, {last.time.end, at(trip.time.end)}, {}});
}

}  // namespace laneward::planning
