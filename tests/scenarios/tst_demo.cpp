#include "app/demo/demo_centre.h"

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
    QVERIFY(file.history.incidents.size() >= 5);
    QVERIFY(file.history.handOvers.size() >= 30);
    for (const Job& job : file.history.jobs)
        QVERIFY(job.date < QDate(2026, 11, 12));
}

QTEST_GUILESS_MAIN(DemoTest)
#include "tst_demo.moc"
