// The due list of a large centre: 6 machines with 40 duties each over two years of plan, with a year of services and runs behind
// it. Limit: 50 ms.
#include "core/season/service_outlook.h"
#include "tests/bench/ratio.h"

using namespace laneward;

namespace {

constexpr double limitMs = 50;
constexpr int machines = 6;
constexpr int duties = 40;
constexpr int days = 730;
const QDate today(2026, 11, 26);
constexpr Instant now{1'795'694'400};

Instant noon(int day) { return now + hours(24) * day; }

Job jobOn(int day, int machine) {
    Job job;
    job.machine = {QString("machine %1").arg(machine)};
    job.date = today.addDays(day);
    job.time = {noon(day), noon(day) + minutes(40)};
    for (int lane = 1; lane <= 12; ++lane)
        job.lanes.push_back({lane, {noon(day) + minutes(3 * lane), noon(day) + minutes(3 * lane + 2)}});
    job.use.laneRuns = 12 + day % 5;
    return job;
}

Plan twoYears() {
    Plan plan;
    plan.range = {today, today.addDays(days - 1)};
    for (int day = 0; day < days; ++day) {
        plan.days.push_back({today.addDays(day), {}, false, {}, 0, {}});
        for (int machine = 0; machine < machines; ++machine) {
            plan.jobs.push_back(jobOn(day, machine));
            Outing outing;
            outing.machine = plan.jobs.back().machine;
            outing.time = plan.jobs.back().time;
            plan.days.back().outings.push_back(outing);
        }
    }
    return plan;
}

SeasonState centre() {
    SeasonState season;
    Shift shift;
    shift.people = 3;
    season.centre.shifts = {shift};
    for (int m = 0; m < machines; ++m) {
        Machine machine;
        machine.id = {QString("machine %1").arg(m)};
        season.centre.machines.push_back(machine);
        for (int d = 0; d < duties; ++d) {
            const QString id = QString("%1/%2").arg(m).arg(d);
            Duty duty{{id}, DutyKind::Clean, id};
            duty.triggers = {{MeterKind::Lanes, 200 + 150 * d}, {MeterKind::Days, 20 + 10 * d}};
            duty.opensUp = d % 2 == 0;
            season.items.push_back({{id}, machine.id, ItemKind::Other, id, {duty}, {}, false, 1});
            ServiceRecord record;
            record.id = {id};
            record.at = noon(-d * 5 - 1);
            record.item = {id};
            record.duty = {id};
            record.meters.lanes = 4'000 - 60 * d;
            season.services.push_back(record);
        }
        season.workBefore.push_back({machine.id, noon(-40), {3'600, 300, minutes(9'000), {}}});
        for (int day = -35; day < 0; ++day) {
            RunLog run;
            run.id = {QString("run %1/%2").arg(m).arg(day)};
            run.machine = machine.id;
            run.time = {noon(day), noon(day) + minutes(40)};
            run.lanes = {{1, {noon(day), noon(day) + minutes(30)}}};
            run.use.laneRuns = 12;
            if (day % 5 != 0) run.job = {run.id.value};
            season.runs.push_back(run);
        }
    }
    return season;
}

void dueList(benchmark::State& state) {
    const SeasonState season = centre();
    const Plan ahead = twoYears();
    for (auto step : state) {
        const ServiceOutlook outlook = serviceOutlook({season, ahead, now}, {});
        benchmark::DoNotOptimize(outlook.due.size() + outlook.visits.size());
    }
}

BENCHMARK(dueList)->Unit(benchmark::kMillisecond)->Repetitions(3)->ReportAggregatesOnly();

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    const ServiceOutlook outlook = serviceOutlook({centre(), twoYears(), now}, {});
    std::printf("bench due list: %zu duties, %zu visits in four weeks, %zu without room\n", outlook.due.size(),
                outlook.visits.size(), outlook.findings.size());
    return bench::withinLimit(times, "dueList", limitMs) ? 0 : 1;
}
