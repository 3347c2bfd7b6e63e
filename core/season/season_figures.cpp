#include "core/season/season_figures.h"

#include <algorithm>
#include <map>

namespace laneward {

namespace {

bool isHardly(const WorkFigures& a, const WorkFigures& b) {
    constexpr Seconds plenty{INT64_MAX};
    return std::tuple(-a.unmet, -a.late, a.spare.value_or(plenty)) < std::tuple(-b.unmet, -b.late, b.spare.value_or(plenty));
}

std::optional<Seconds> lesser(std::optional<Seconds> a, std::optional<Seconds> b) {
    if (!a || !b) return a ? a : b;
    return std::min(*a, *b);
}

/// Room of one outing, of which these are all jobs.
struct Room {
    Seconds earlier{INT64_MAX};
    Seconds later{INT64_MAX};

    void add(const Job& job) {
        later = std::min(later, job.slack);
        if (!job.lanes.empty()) earlier = std::min(earlier, job.lanes.front().time.begin - job.window.begin);
    }
    Seconds spare() const { return later < Seconds{0} ? later : std::max(Seconds{0}, earlier) + later; }
};

/// What is over needs no room any more, and a job that was printed by hand has no window.
bool hasRoom(const Job& job) {
    return !job.window.isEmpty() && !job.neededBy.empty() &&
           (job.state == JobState::Proposed || job.state == JobState::Confirmed);
}

void addJob(const Job& job, WorkFigures& work) {
    ++work.jobs;
    work.conditioner += job.use.conditionerTotal();
    work.cleaner += job.use.cleaner;
    if (hasRoom(job)) work.leastSlack = lesser(work.leastSlack, job.slack);
}

std::vector<size_t> hardestFirst(const SeasonFigures& season) {
    std::vector<size_t> order(season.days.size());
    for (size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::stable_sort(order.begin(), order.end(),
                     [&](size_t a, size_t b) { return isHardly(season.days[a].work, season.days[b].work); });
    return order;
}

}  // namespace

void WorkFigures::add(const WorkFigures& more) {
    jobs += more.jobs;
    outings += more.outings;
    treatments += more.treatments;
    conditioner += more.conditioner;
    cleaner += more.cleaner;
    machineTime += more.machineTime;
    overtime += more.overtime;
    unmet += more.unmet;
    late += more.late;
    lateBy += more.lateBy;
    tightBy += more.tightBy;
    leastSlack = lesser(leastSlack, more.leastSlack);
    spare = lesser(spare, more.spare);
    days += more.days;
    proven += more.proven;
}

SeasonFigures seasonFigures(const State& state, const Plan& plan) {
    SeasonFigures season;
    for (const DayPlan& day : plan.days) {
        WorkFigures work;
        work.days = 1;
        work.proven = day.proven ? 1 : 0;
        work.treatments = day.objective.treatments;
        work.unmet = day.objective.unmet;
        work.lateBy = {day.objective.late_s};
        work.tightBy = {day.objective.tight_s};
        work.overtime = {day.objective.overtime_s};
        work.outings = int(day.outings.size());
        for (const Outing& outing : day.outings)
            work.machineTime += outing.time.length();
        season.days.push_back({day.date, work});
    }
    const auto of = [&](QDate date) -> WorkFigures* {
        const qint64 day = plan.range.first.daysTo(date);
        return day >= 0 && day < qint64(season.days.size()) ? &season.days[size_t(day)].work : nullptr;
    };
    std::map<std::tuple<QDate, MachineId, int>, Room> rooms;
    for (const Job& job : plan.jobs) {
        WorkFigures* work = of(job.date);
        if (!work || job.state == JobState::Dropped) continue;
        addJob(job, *work);
        if (hasRoom(job)) rooms[{job.date, job.machine, job.outing}].add(job);
    }
    for (const auto& [key, room] : rooms) {
        WorkFigures* work = of(std::get<0>(key));
        work->spare = lesser(work->spare, room.spare());
    }
    for (const Shortfall& s : plan.unmet) {
        WorkFigures* work = of(dateOf(state.centre, s.demand == DemandKind::Stripped ? s.playBegins - Seconds{1} : s.playBegins));
        if (work && !s.unmet) ++work->late;
    }
    for (const SeasonDay& day : season.days) {
        const QDate monday = day.date.addDays(1 - day.date.dayOfWeek());
        if (season.weeks.empty() || season.weeks.back().first.addDays(1 - season.weeks.back().first.dayOfWeek()) != monday)
            season.weeks.push_back({day.date, day.date.weekNumber(), 0, {}});
        season.weeks.back().work.add(day.work);
        season.weeks.back().tightDays += day.work.isTight() ? 1 : 0;
        season.total.add(day.work);
    }
    season.tight = hardestFirst(season);
    std::erase_if(season.tight, [&](size_t i) { return !season.days[i].work.isTight(); });
    return season;
}

std::vector<size_t> narrowestDays(const SeasonFigures& season, size_t count) {
    std::vector<size_t> order = hardestFirst(season);
    std::erase_if(order, [&](size_t i) { return !season.days[i].work.isTight() && !season.days[i].work.spare; });
    if (order.size() > count) order.resize(count);
    return order;
}

}  // namespace laneward
