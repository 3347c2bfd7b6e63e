#include "app/demo/demo_centre.h"
#include "core/patterns/reading_compare.h"
#include "core/season/past_forecasts.h"
#include "core/season/service_outlook.h"

#include <QTest>

#include <set>

using namespace laneward;

namespace {

/// 2026-11-09T15:00Z, a Monday, and `days` later.
Instant day(int days) { return {1'794'236'400 + days * 86'400}; }

SeasonState opened(const CentreFile& file) {
    SeasonState season = file.season;
    season.runs = file.history.runs;
    season.readings = file.history.readings;
    season.handOvers = file.history.handOvers;
    season.services = file.history.services;
    season.counters = standing(file.history.counters);
    return season;
}

}  // namespace

class DemoTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theSameDateGivesTheSameCentre();
    void holdsWhatItPromises();
    void everythingIsSound();
    void nothingConflicts();
    void everyEveningIsBusy_data();
    void everyEveningIsBusy();
    void recordsReachBackAYear();
    void theHousePatternHasVersions();
    void tapesAgreeWithTheFilm();
    void lanesWereInspected();
    void forecastsWereKept();
    void aYearOfService();
    void dutiesAreDue_data();
    void dutiesAreDue();
    void oneMachineDrifts_data();
    void oneMachineDrifts();
};

void DemoTest::theSameDateGivesTheSameCentre() {
    const CentreFile noon = demoCentre(day(0));
    const CentreFile night = demoCentre({day(0).seconds + 8 * 3'600});
    QCOMPARE(noon.season, night.season);
    QCOMPARE(noon.history.runs, night.history.runs);
    QCOMPARE(noon.history.jobs, night.history.jobs);
    QCOMPARE(noon.history.incidents, night.history.incidents);
    QCOMPARE(noon.history.readings, night.history.readings);
    QCOMPARE(noon.history.handOvers, night.history.handOvers);
    QCOMPARE(noon.history.tapes, night.history.tapes);
    QCOMPARE(noon.history.inspections, night.history.inspections);
    QCOMPARE(noon.history.patternVersions, night.history.patternVersions);
    QCOMPARE(noon.history.services, night.history.services);
    QCOMPARE(noon.history.counters, night.history.counters);
    QCOMPARE(noon.history.forecasts, night.history.forecasts);
    QVERIFY(!(noon.season == demoCentre(day(1)).season));
}

void DemoTest::holdsWhatItPromises() {
    const SeasonState season = demoCentre(day(3)).season;
    QCOMPARE(season.centre.facts.name, QString("Quillmarsh Bowl"));
    QCOMPARE(season.centre.facts.lanes, 24);
    QCOMPARE(season.centre.machines.size(), size_t(2));
    QVERIFY(season.series.size() >= 25);
    std::set<EventKind> kinds;
    std::set<DemandKind> demands;
    bool cancelled = false;
    bool moved = false;
    bool twoPatternsOnAPair = false;
    for (const Series& series : season.series) {
        kinds.insert(series.kind);
        for (const SurfaceDemand& demand : series.demands) {
            demands.insert(demand.kind);
            for (int lane : demand.lanes.lanes()) {
                for (const SurfaceDemand& other : series.demands) {
                    twoPatternsOnAPair |= other.lanes.contains(pairPartner(lane)) && other.pattern != demand.pattern;
                }
            }
        }
        for (const Override& one : series.overrides) {
            cancelled |= one.cancelled;
            moved |= one.start.has_value();
        }
    }
    QCOMPARE(kinds.size(), size_t(8));
    QCOMPARE(demands.size(), size_t(5));
    QVERIFY(cancelled);
    QVERIFY(moved);
    QVERIFY(twoPatternsOnAPair);
    for (const Pattern& pattern : season.patterns) {
        const Microlitres lane = volumes(pattern).lane;
        QVERIFY2(lane >= millilitres(15) && lane <= millilitres(30), qPrintable(pattern.name));
    }
}

void DemoTest::everythingIsSound() {
    const CentreFile file = demoCentre(day(3));
    QVERIFY(faultsOf(file.season.centre).empty());
    for (const Pattern& pattern : file.season.patterns)
        QVERIFY2(faultsOf(pattern).empty(), qPrintable(pattern.name));
    for (const Series& series : file.season.series) {
        QVERIFY2(faultsOf(series, 24).empty(), qPrintable(series.title));
        for (const SurfaceDemand& demand : series.demands)
            QVERIFY(!demand.pattern || findPattern(file.season.patterns, *demand.pattern));
    }
    std::set<QString> ids;
    for (const RunLog& run : file.history.runs)
        QVERIFY2(ids.insert(run.id.value).second, qPrintable(run.id.value));
    for (const Incident& incident : file.history.incidents)
        QVERIFY(ids.insert(incident.id.value).second);
    for (const HandOver& note : file.history.handOvers)
        QVERIFY(ids.insert(note.id.value).second);
    for (const LevelReading& reading : file.history.readings)
        QVERIFY(ids.insert(reading.id.value).second);
    for (const TapeReading& reading : file.history.tapes) {
        QVERIFY(ids.insert(reading.id.value).second);
        QVERIFY(faultsOf(reading, 24).empty() && reading.at < day(3));
    }
    for (const Inspection& inspection : file.history.inspections) {
        QVERIFY(ids.insert(inspection.id.value).second);
        QVERIFY(faultsOf(inspection, 24).empty() && inspection.at < day(3));
    }
    for (const LevelReading& reading : file.history.readings)
        QVERIFY(reading.levels.at < day(3));
}

void DemoTest::nothingConflicts() {
    const SeasonState season = demoCentre(day(3)).season;
    const QDate today = dateOf(season.centre, day(3));
    const Occupancy occupancy = occupancyOf(season.series, season.centre, {today.addDays(-364), today.addDays(120)});
    QStringList conflicts;
    for (const Conflict& conflict : occupancy.conflicts) {
        conflicts += occupancy.occurrences[conflict.first].title + " / " + occupancy.occurrences[conflict.second].title;
    }
    QVERIFY2(conflicts.isEmpty(), qPrintable(conflicts.join('\n')));
}

void DemoTest::everyEveningIsBusy_data() {
    QTest::addColumn<int>("days");
    // Each weekday, both changes of the clocks, a leap day and the turn of the year.
    for (int days : {0, 1, 2, 3, 4, 5, 6, -15, 139, 52, 841})
        QTest::addRow("%+d days", days) << days;
}

void DemoTest::everyEveningIsBusy() {
    QFETCH(int, days);
    const SeasonState season = opened(demoCentre(day(days)));
    const QDate today = dateOf(season.centre, day(days));
    const Plan tonight = plan(planningState(season, day(days)), day(days), {today, today});
    int lanes = 0;
    std::set<QString> patterns;
    for (const Job& job : tonight.jobs) {
        if (job.state != JobState::Proposed) continue;
        lanes += int(job.lanes.size());
        if (job.pattern) patterns.insert(job.pattern->value);
    }
    QVERIFY2(lanes >= 24, qPrintable(QString::number(lanes)));
    QVERIFY(patterns.size() >= 3);
    QVERIFY(violationsOf(planningState(season, day(days)), tonight).empty());
    QVERIFY2(tonight.unmet.empty(), tonight.unmet.empty() ? "" : qPrintable(tonight.unmet.front().title));
}

void DemoTest::recordsReachBackAYear() {
    const CentreFile file = demoCentre(day(3));
    QVERIFY(file.history.runs.size() > 800);
    QCOMPARE(dateOf(file.season.centre, file.history.runs.front().time.begin), QDate(2025, 11, 13));
    bool cutShort = false;
    for (const RunLog& run : file.history.runs) {
        QVERIFY(run.time.end < day(3));
        QVERIFY(!run.lanes.empty() && run.use.laneRuns > 0);
        cutShort |= run.result == RunResult::CutShort;
    }
    QVERIFY(cutShort);
    QVERIFY(file.history.incidents.size() >= 10);
    const auto answered = std::count_if(file.history.incidents.begin(), file.history.incidents.end(),
                                        [](const Incident& incident) { return incident.answers.has_value(); });
    QVERIFY(answered >= 5);
    QVERIFY(file.history.handOvers.size() >= 30);
    for (const Job& job : file.history.jobs)
        QVERIFY(job.date < QDate(2026, 11, 12));
}

void DemoTest::theHousePatternHasVersions() {
    const CentreFile file = demoCentre(day(3));
    std::map<QString, std::vector<PatternVersion>> versions;
    for (const PatternVersion& version : file.history.patternVersions)
        versions[version.pattern.id.value].push_back(version);
    QCOMPARE(versions.size(), size_t(7));
    for (const Pattern& pattern : file.season.patterns) {
        const std::vector<PatternVersion>& own = versions[pattern.id.value];
        QCOMPARE(own.size(), size_t(pattern.id.value == "wren-36" ? 3 : 1));
        QVERIFY(own.back().pattern == pattern);
        for (const PatternVersion& version : own)
            QVERIFY(faultsOf(version.pattern).empty());
    }
    std::set<std::int64_t> run;
    for (const RunLog& log : file.history.runs) {
        QVERIFY(!log.pattern || log.patternVersion > 0);
        if (log.pattern && log.pattern->value == "wren-36") run.insert(log.patternVersion);
    }
    QVERIFY((run == std::set<std::int64_t>{1, 2, 3}));
}

void DemoTest::tapesAgreeWithTheFilm() {
    const CentreFile file = demoCentre(day(3));
    QVERIFY(file.history.tapes.size() >= 50 && file.history.tapes.size() <= 70);
    std::set<QString> machines;
    for (const TapeReading& reading : file.history.tapes) {
        const Machine* machine = findMachine(file.season.centre, reading.machine);
        QVERIFY(machine && machine->carryLength > Micrometres{0});
        machines.insert(machine->id.value);
        for (const PatternVersion& version : file.history.patternVersions) {
            if (version.pattern.id != reading.pattern || version.pattern.edition != reading.patternVersion) continue;
            const ReadingComparison seen = compare(reading, version.pattern, machine->carryLength);
            QCOMPARE(seen.count, 39);
            QVERIFY2(std::abs(seen.meanError) < 0.3 && std::abs(seen.largest) < 0.7, qPrintable(reading.id.value));
        }
    }
    QCOMPARE(machines.size(), size_t(2));
}

void DemoTest::lanesWereInspected() {
    const CentreFile file = demoCentre(day(3));
    std::map<int, int> inspections;
    for (const Inspection& inspection : file.history.inspections)
        ++inspections[inspection.lane];
    QCOMPARE(inspections.size(), size_t(4));
    for (const auto& [lane, count] : inspections)
        QVERIFY(count >= 8);
    QCOMPARE(dateOf(file.season.centre, file.history.inspections.front().at), QDate(2024, 11, 14));
}

/// Each of the last weeks' days has the forecast that could be made then, and they held about as often as they say.
void DemoTest::forecastsWereKept() {
    const CentreFile file = demoCentre(day(3));
    const QDate today = dateOf(file.season.centre, day(3));
    const std::vector<KeptForecast>& kept = file.history.forecasts;
    QVERIFY(kept.size() >= 80);
    QCOMPARE(kept.back().day, today.addDays(-1));
    for (size_t n = 0; n < kept.size(); ++n) {
        QCOMPARE(kept[n].day, today.addDays(qint64(n) - qint64(kept.size())));
        QVERIFY(faultsOf(kept[n]).empty());
        QCOMPARE(kept[n].supplies.size(), file.season.supplies.size());
    }
    SupplyHistory history;
    history.stock = {file.history.movements, file.history.counts, standing(file.history.runs)};
    history.drift = {file.history.runs, file.history.readings, file.history.patternVersions, file.season.patterns};
    history.days = {kept.front().day, today.addDays(-1)};
    for (const auto& [supply, score] : scoresOf(file.season, history, kept)) {
        qInfo("%-11s %2d spans, %d missing: 50 %% held %d, 90 %% held %d", qPrintable(supply.value), score.most.spans,
              score.missing, score.half.inside, score.most.inside);
        if (supply.value == "amber") QVERIFY(score.most.spans >= 8);
    }
}

void DemoTest::aYearOfService() {
    const CentreFile file = demoCentre(day(3));
    for (const ServiceItem& item : file.season.items) {
        QVERIFY2(faultsOf(item, "GBP").empty(), qPrintable(item.id.value));
        for (const Duty& duty : item.duties)
            for (const PartNeed& part : duty.parts)
                QVERIFY(findSupply(file.season.supplies, part.supply));
    }
    std::set<QString> ids;
    int failures = 0;
    int corrections = 0;
    for (const ServiceRecord& record : file.history.services) {
        QVERIFY(ids.insert(record.id.value).second);
        QVERIFY(faultsOf(record, findItem(file.season.items, record.item), day(3)).empty());
        failures += record.result == ServiceResult::Failed;
        corrections += record.corrects.has_value();
    }
    QVERIFY2(failures >= 2 && failures < 20, qPrintable(QString::number(failures)));
    QCOMPARE(corrections, 1);
    QVERIFY(file.history.services.size() > 300);
    std::vector<MeterReading> before;
    for (const MeterReading& reading : file.history.counters) {
        QVERIFY(faultsOf(reading, before, day(3)).empty());
        before.push_back(reading);
    }
    // Meters stand as the counters said: each record's are those of its time, never less than the ones before.
    std::map<MachineId, Meters> highest;
    for (const ServiceRecord& record : file.history.services) {
        const ServiceItem* item = findItem(file.season.items, record.item);
        if (item->machine.isEmpty() || record.corrects) continue;
        QVERIFY(record.meters.lanes >= highest[item->machine].lanes);
        highest[item->machine] = record.meters;
    }
    QVERIFY(highest.at({"heron"}).lanes > 41'230 + 1'000);
    int taken = 0;
    for (const Movement& movement : file.history.movements) {
        if (movement.source != MovementSource::Service) continue;
        ++taken;
        QVERIFY2(!movement.flagged, qPrintable(movement.id.value));
    }
    QVERIFY(taken >= 3);
}

void DemoTest::dutiesAreDue_data() {
    QTest::addColumn<int>("days");
    for (int days : {0, 3, 5, 52, 139})
        QTest::addRow("%+d days", days) << days;
}

void DemoTest::dutiesAreDue() {
    QFETCH(int, days);
    const SeasonState season = opened(demoCentre(day(days)));
    const QDate today = dateOf(season.centre, day(days));
    const Plan ahead = plan(planningState(season, day(days)), day(days), {today, today.addDays(6)});
    const auto duty = [](const Job& job) {
        return std::any_of(job.steps.begin(), job.steps.end(), [](const Step& s) { return s.kind == StepKind::Duty; });
    };
    QVERIFY(std::any_of(ahead.jobs.begin(), ahead.jobs.end(), [&](const Job& job) { return job.date == today && duty(job); }));
    QCOMPARE(laneDuties(season, {"grebe"}, day(days)).front().duty.value, QString("grebe-squeegee-turn"));
    const ServiceOutlook outlook = serviceOutlook({season, ahead, day(days)}, {});
    int over = 0;
    for (const DutyDue& due : outlook.due) {
        QVERIFY2(!due.due.neverDone, qPrintable(due.duty.value));
        if (due.due.left < 0) ++over;
        if (due.duty.value == "heron-filter-clean") QCOMPARE(due.due.left, std::int64_t{-4});
    }
    QCOMPARE(over, 1);
    QVERIFY(!outlook.visits.empty());
}

void DemoTest::oneMachineDrifts_data() { everyEveningIsBusy_data(); }

void DemoTest::oneMachineDrifts() {
    QFETCH(int, days);
    const CentreFile file = demoCentre(day(days));
    const DriftHistory history{file.history.runs, file.history.readings, file.history.patternVersions, file.season.patterns};
    for (const Machine& machine : file.season.centre.machines) {
        for (int product = 0; product < products; ++product) {
            const OutputDrift drift = outputDrift(history, machine, product);
            const bool drifts = machine.id.value == "heron" && product == 0;
            if (!drifts) {
                QVERIFY2(drift.signals.empty(), qPrintable(machine.name + QString::number(product)));
                continue;
            }
            QVERIFY(drift.isJudged() && drift.points.size() > 60);
            std::set<DriftChart> now;
            for (const DriftSignal& signal : drift.signals) {
                QVERIFY(signal.high && !signal.runs.empty());
                QVERIFY(signal.finding.values[1] > Value(day(days) - hours(24 * 65)));
                if (signal.isNow) now.insert(signal.chart);
            }
            QVERIFY(now.contains(DriftChart::Average) && now.contains(DriftChart::Sum));
        }
    }
}

QTEST_GUILESS_MAIN(DemoTest)
#include "tst_demo.moc"
