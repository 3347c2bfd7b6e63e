#include "core/season/season.h"
#include "tests/support/hand_made.h"

#include <QTest>

using namespace laneward;
using namespace support;

namespace {

RunLog logOf(const Job& job, const QString& id) {
    RunLog log;
    log.id = {id};
    log.job = job.id;
    log.planVersion = job.planVersion;
    log.machine = job.machine;
    log.person = {"ada"};
    log.time = job.time;
    log.treatment = job.treatment;
    log.pattern = job.pattern;
    log.lanes = job.lanes;
    log.use = job.use;
    return log;
}

Job confirmed(Job job) {
    job.state = JobState::Confirmed;
    job.planVersion = 1;
    return job;
}

LevelReading reading(const QString& id, Instant at, int conditionerMl) {
    LevelReading made{{id}, {"ada"}, {}, {}};
    made.levels.machine = {"m1"};
    made.levels.at = at;
    made.levels.conditioner[0] = millilitres(conditionerMl);
    made.levels.cleaner = millilitres(3'000);
    made.levels.waste = millilitres(500);
    made.levels.lanesLeft = 30;
    made.levels.volts = Millivolts{25'000};
    return made;
}

}  // namespace

class SeasonTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void levelsAreFullAtTheBeginOfADay();
    void levelsFollowTheLastReadingAndTheRunsSince();
    void readingsOfYesterdayTomorrowOrTakenBackDoNotCount();
    void levelsNeverFallBelowNothing();
    void confirmedJobsJoinTheirRunLogs();
    void aVoidedLogLeavesTheJobConfirmed();
    void droppedProposedAndOldJobsAreNotCommitted();
    void conditionOnlyKeepsThePatternFromBeforeTheWindow();
    void lanesKnowTheirTreatmentAndThePlaySince();
    void lanesInPlayAndOutOfService();
    void readinessSumsWhatIsStillToRun();
    void readinessSaysWhatIsShort();
    void readinessLooksAtVolts();
    void aMovedJobIsNeitherAddedNorRemoved();
    void differencesInProductAndJobs();
};

void SeasonTest::levelsAreFullAtTheBeginOfADay() {
    const State state = planningState(handSeason(), handAt(15, 0));
    QCOMPARE(state.levels.size(), size_t(1));
    QCOMPARE(state.levels[0].conditioner[0].value, 2'000'000);
    QCOMPARE(state.levels[0].waste.value, 0);
    QCOMPARE(state.levels[0].lanesLeft, 40);
    QCOMPARE(state.levels[0].at, handAt(15, 0));
    QCOMPARE(state.limits.size(), size_t(1));
}

void SeasonTest::levelsFollowTheLastReadingAndTheRunsSince() {
    SeasonState season = handSeason();
    season.readings = {reading("r2", handAt(10, 0), 900), reading("r1", handAt(9, 0), 700)};
    RunLog before = logOf(handJob(), "a");
    before.time = {handAt(9, 0), handAt(9, 30)};
    RunLog after = logOf(handJob(), "b");
    after.time = {handAt(11, 0), handAt(11, 30)};
    season.runs = {before, after};
    const MachineLevels levels = planningState(season, handAt(15, 0)).levels[0];
    QCOMPARE(levels.conditioner[0].value, 900'000 - 160'000);
    QCOMPARE(levels.cleaner.value, 3'000'000 - 880'000);
    QCOMPARE(levels.waste.value, 500'000 + 800'000);
    QCOMPARE(levels.lanesLeft, 22);
    // A run that ends later has not yet taken anything.
    QCOMPARE(planningState(season, handAt(11, 29)).levels[0].conditioner[0].value, 900'000);
}

void SeasonTest::readingsOfYesterdayTomorrowOrTakenBackDoNotCount() {
    SeasonState season = handSeason();
    LevelReading correction = reading("r3", handAt(12, 0), 800);
    correction.corrects = OperationId{"r2"};
    season.readings = {reading("r1", handAt(4, 59), 100), reading("r2", handAt(13, 0), 200), correction,
                       reading("r4", handAt(16, 0), 300)};
    QCOMPARE(planningState(season, handAt(15, 0)).levels[0].conditioner[0].value, 800'000);
    QCOMPARE(planningState(season, handAt(11, 0)).levels[0].conditioner[0].value, 2'000'000);
}

void SeasonTest::levelsNeverFallBelowNothing() {
    SeasonState season = handSeason();
    season.readings = {reading("r1", handAt(9, 0), 10)};
    season.readings[0].levels.lanesLeft = 3;
    season.readings[0].levels.cleaner = millilitres(1);
    RunLog run = logOf(handJob(), "a");
    run.time = {handAt(11, 0), handAt(11, 30)};
    season.runs = {run};
    const MachineLevels levels = planningState(season, handAt(15, 0)).levels[0];
    QCOMPARE(levels.conditioner[0].value, 0);
    QCOMPARE(levels.cleaner.value, 0);
    QCOMPARE(levels.lanesLeft, 0);
}

void SeasonTest::confirmedJobsJoinTheirRunLogs() {
    SeasonState season = handSeason();
    season.confirmed = {confirmed(handJob()), confirmed(handSecondJob())};
    RunLog run = logOf(season.confirmed[0], "a");
    run.result = RunResult::CutShort;
    run.lanes.resize(3);
    run.time.end = run.lanes.back().time.end;
    season.runs = {run};
    const State state = planningState(season, handAt(18, 0));
    QCOMPARE(state.committed.size(), size_t(2));
    QCOMPARE(state.committed[0].state, JobState::CutShort);
    QCOMPARE(state.committed[0].laneSet().text(), QString("1-3"));
    QCOMPARE(state.committed[1].state, JobState::Confirmed);
    // The log of another version of the sheet is not this job's.
    season.runs[0].planVersion = 2;
    QCOMPARE(planningState(season, handAt(18, 0)).committed[0].state, JobState::Confirmed);
}

void SeasonTest::aVoidedLogLeavesTheJobConfirmed() {
    SeasonState season = handSeason();
    season.confirmed = {confirmed(handJob())};
    RunLog run = logOf(season.confirmed[0], "a");
    RunLog nothing = run;
    nothing.id = {"b"};
    nothing.corrects = run.id;
    nothing.result = RunResult::Void;
    season.runs = {run};
    QCOMPARE(planningState(season, handAt(18, 0)).committed[0].state, JobState::Done);
    season.runs = {run, nothing};
    QCOMPARE(planningState(season, handAt(18, 0)).committed[0].state, JobState::Confirmed);
    QVERIFY(planningState(season, handAt(18, 0)).history.empty());
}

void SeasonTest::droppedProposedAndOldJobsAreNotCommitted() {
    SeasonState season = handSeason();
    Job dropped = confirmed(handJob());
    dropped.state = JobState::Dropped;
    Job old = confirmed(handJob());
    old.date = QDate(2026, 11, 10);
    season.confirmed = {dropped, handSecondJob(), old};
    QVERIFY(planningState(season, handAt(18, 0)).committed.empty());
    season.confirmed[2].date = QDate(2026, 11, 11);
    QCOMPARE(planningState(season, handAt(18, 0)).committed.size(), size_t(1));
}

void SeasonTest::conditionOnlyKeepsThePatternFromBeforeTheWindow() {
    SeasonState season = handSeason();
    season.before = {{1, Treatment::CleanAndCondition, PatternId{"reed"}, handAt(-900, 0)},
                     {2, Treatment::CleanAndCondition, PatternId{"reed"}, handAt(-900, 0)}};
    RunLog run = logOf(handJob(), "a");
    run.treatment = Treatment::ConditionOnly;
    run.pattern = PatternId{"reed"};
    run.lanes.resize(1);
    season.runs = {run};
    const std::vector<LaneTreatment> last = treatmentsUntil(season, handAt(23, 0));
    QCOMPARE(last.size(), size_t(2));
    QCOMPARE(last[0].treatment, Treatment::ConditionOnly);
    QVERIFY(last[0].pattern == PatternId{"reed"});
    QCOMPARE(last[1].treatment, Treatment::CleanAndCondition);
    QCOMPARE(last[1].end, handAt(-900, 0));
}

void SeasonTest::lanesKnowTheirTreatmentAndThePlaySince() {
    SeasonState season = handSeason();
    season.runs = {logOf(handJob(), "a")};
    const Plan plan = handPlan();
    const std::vector<LaneNow> early = lanesAt(season, plan.occupancy, handAt(19, 0));
    QCOMPARE(early.size(), size_t(12));
    QVERIFY(early[0].condition.treated);
    QCOMPARE(early[0].condition.playedSince.value, 30 * 60);
    QVERIFY(!early[8].condition.treated);
    QCOMPARE(lanesAt(season, plan.occupancy, handAt(23, 0))[0].condition.playedSince.value, 150 * 60);
    QVERIFY(!lanesAt(season, plan.occupancy, handAt(17, 0))[0].condition.treated);
}

void SeasonTest::lanesInPlayAndOutOfService() {
    SeasonState season = handSeason();
    Outage outage;
    outage.lanes = {3};
    outage.begin = handAt(12, 0);
    season.centre.outages = {outage};
    Plan plan = handPlan();
    const auto at = [&](Instant t) { return lanesAt(season, plan.occupancy, t); };
    QVERIFY(at(handAt(18, 30))[0].inPlay);
    QVERIFY(at(handAt(21, 9, 59))[0].inPlay);
    QVERIFY(!at(handAt(21, 10))[0].inPlay);
    QVERIFY(!at(handAt(18, 30))[8].inPlay);
    QVERIFY(at(handAt(12, 0))[2].outOfService);
    QVERIFY(!at(handAt(11, 59))[2].outOfService);
    season.centre.outages[0].end = handAt(13, 0);
    QVERIFY(!at(handAt(13, 0))[2].outOfService);
    plan.occupancy.occurrences[0].kind = EventKind::Closure;
    QVERIFY(!at(handAt(18, 30))[0].inPlay);
}

void SeasonTest::readinessSumsWhatIsStillToRun() {
    const std::vector<Readiness> before = readinessOf(handSeason(), handPlan(), handAt(15, 0));
    QCOMPARE(before.size(), size_t(1));
    QCOMPARE(before[0].tonight.laneRuns, 12);
    QCOMPARE(before[0].tonight.conditionerTotal().value, 160'000);
    QCOMPARE(before[0].emptyings, 1);
    QCOMPARE(before[0].refills, 0);
    QCOMPARE(before[0].findings.size(), size_t(1));
    QCOMPARE(before[0].findings[0].rule, QByteArray("readiness.not-measured"));
    const std::vector<Readiness> later = readinessOf(handSeason(), handPlan(), handAt(17, 45));
    QCOMPARE(later[0].tonight.laneRuns, 4);
    QCOMPARE(later[0].emptyings, 0);
}

void SeasonTest::readinessSaysWhatIsShort() {
    SeasonState season = handSeason();
    season.readings = {reading("r1", handAt(9, 0), 100)};
    season.readings[0].levels.cleaner = millilitres(100);
    season.readings[0].levels.waste = millilitres(8'900);
    season.readings[0].levels.lanesLeft = 5;
    season.readings[0].levels.volts.reset();
    Plan plan = handPlan();
    plan.jobs[1].steps.erase(plan.jobs[1].steps.begin());
    Outage outage;
    outage.machine = MachineId{"m1"};
    outage.begin = handAt(14, 0);
    season.centre.outages = {outage};
    QByteArrayList rules;
    const std::vector<Readiness> ready = readinessOf(season, plan, handAt(15, 0));
    for (const Finding& finding : ready[0].findings)
        rules += finding.rule;
    QCOMPARE(rules, (QByteArrayList{"readiness.out-of-service", "readiness.short-conditioner", "readiness.short-cleaner",
                                    "readiness.overflow", "readiness.short-charge"}));
    // A tank that hardly overflows, but has less room than planning wants to see.
    season.readings[0].levels.waste = millilitres(5'000);
    plan.jobs[0].use.waste = millilitres(4'000);
    rules.clear();
    const std::vector<Readiness> fuller = readinessOf(season, plan, handAt(15, 0));
    for (const Finding& finding : fuller[0].findings)
        rules += finding.rule;
    QVERIFY2(rules.contains("readiness.short-waste") && !rules.contains("readiness.overflow"), rules.join(' ').constData());
}

void SeasonTest::readinessLooksAtVolts() {
    SeasonState season = handSeason();
    season.readings = {reading("r1", handAt(9, 0), 1'000)};
    const auto ruleAt = [&season](int millivolts) {
        season.readings[0].levels.volts = Millivolts{millivolts};
        const std::vector<Finding> findings = readinessOf(season, handPlan(), handAt(15, 0))[0].findings;
        return findings.empty() ? QByteArray() : findings[0].rule;
    };
    QCOMPARE(ruleAt(25'600), QByteArray());
    QCOMPARE(ruleAt(25'599), QByteArray("readiness.not-full"));
    QCOMPARE(ruleAt(24'200), QByteArray("readiness.not-full"));
    QCOMPARE(ruleAt(24'199), QByteArray("readiness.attach-spare"));
}

void SeasonTest::aMovedJobIsNeitherAddedNorRemoved() {
    const Plan before = handPlan();
    Plan after = before;
    after.jobs[0].time = {handAt(17, 0), handAt(17, 21)};
    const PlanDifference difference = laneward::difference(before, after);
    QVERIFY(difference.added.empty());
    QVERIFY(difference.removed.empty());
    QCOMPARE(difference.moved.size(), size_t(1));
    QCOMPARE(difference.moved[0].first.time, before.jobs[0].time);
    QCOMPARE(difference.moved[0].second.time, after.jobs[0].time);
    QCOMPARE(laneward::difference(before, before).moved.size(), size_t(0));
}

void SeasonTest::differencesInProductAndJobs() {
    const Plan before = handPlan();
    Plan after = before;
    after.jobs.erase(after.jobs.begin());
    after.days[0].objective.treatments = 4;
    Job other = handJob();
    other.lanes.resize(2);
    other.use = handUse(2);
    after.jobs.push_back(other);
    const PlanDifference difference = laneward::difference(before, after);
    QCOMPARE(difference.removed.size(), size_t(1));
    QCOMPARE(difference.added.size(), size_t(1));
    QCOMPARE(difference.conditioner.value, -120'000);
    QCOMPARE(difference.cleaner.value, -660'000);
    QCOMPARE(difference.before.treatments, 12);
    QCOMPARE(difference.after.treatments, 4);
}

QTEST_GUILESS_MAIN(SeasonTest)
#include "tst_season.moc"
