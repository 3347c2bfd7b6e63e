// Records: appended once, never changed, found by range; on SQLite and on PostgreSQL.
#include "tests/support/two_databases.h"

#include "core/storage/centre_file.h"
#include "core/storage/database.h"
#include "core/storage/operations.h"

#include <QTest>

using namespace laneward;
using namespace support;

namespace {

QByteArray ruleOf(const auto& result) { return result ? QByteArray() : result.error().finding.rule; }

/// A run of one lane that ended `ago` before the season's now.
RunLog runOf(int n, Seconds ago, int lane, Treatment treatment = Treatment::CleanAndCondition, const char* pattern = "house") {
    RunLog run;
    run.id = operation(n);
    run.machine = MachineId{"m1"};
    run.person = PersonId{"ben"};
    run.treatment = treatment;
    if (conditions(treatment)) run.pattern = PatternId{pattern};
    run.time = {fullSeasonNow - ago - minutes(2), fullSeasonNow - ago};
    run.lanes = {{lane, run.time}};
    run.result = RunResult::Unplanned;
    run.recordedAt = run.time.end;
    return run;
}

std::vector<Record> asRecords(const std::vector<RunLog>& runs) { return {runs.begin(), runs.end()}; }

}  // namespace

class TestRecords : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { m_databases = std::make_unique<TwoDatabases>(); }
    void cleanupTestCase() { m_databases.reset(); }
    void everyKindIsKept_data() { TwoDatabases::rows(); }
    void everyKindIsKept();
    void theSameAgainHasNoEffect_data() { TwoDatabases::rows(); }
    void theSameAgainHasNoEffect();
    void allOrNothing_data() { TwoDatabases::rows(); }
    void allOrNothing();
    void impossibleRecordsAreRefused_data() { TwoDatabases::rows(); }
    void impossibleRecordsAreRefused();
    void nothingChangesARecord_data() { TwoDatabases::rows(); }
    void nothingChangesARecord();
    void rangesTakeCorrectionsAlong_data() { TwoDatabases::rows(); }
    void rangesTakeCorrectionsAlong();
    void theWindowAndWhatWasBeforeIt_data() { TwoDatabases::rows(); }
    void theWindowAndWhatWasBeforeIt();
    void oldReadingsOfIdleMachinesStay_data() { TwoDatabases::rows(); }
    void oldReadingsOfIdleMachinesStay();
    void anUnclearCommitIsReadBack_data() { TwoDatabases::rows(); }
    void anUnclearCommitIsReadBack();
    void aReplacementKeepsNothing_data() { TwoDatabases::rows(); }
    void aReplacementKeepsNothing();
    void aRestartedServerIsFoundAgain();

private:
    std::unique_ptr<Store> filled(bool withHistory = true) {
        std::unique_ptr<Store> store = m_databases->fresh();
        HistorySlice versions;
        versions.patternVersions = fullHistory().patternVersions;
        const Outcome done = store->replaceAll(fullSeason(), withHistory ? fullHistory() : versions, {}, fullSeasonNow);
        if (!done) qFatal("%s", done.error().finding.rule.constData());
        return store;
    }
    static HistorySlice everythingIn(Store& store) {
        Result<HistorySlice> all = store.history({Instant{0}, fullSeasonNow + hours(10'000)});
        if (!all) qFatal("%s", all.error().finding.rule.constData());
        return *std::move(all);
    }

    std::unique_ptr<TwoDatabases> m_databases;
};

void TestRecords::everyKindIsKept() {
    const std::unique_ptr<Store> store = filled(false);
    const HistorySlice history = fullHistory();
    std::vector<Record> records = asRecords(history.runs);
    records.insert(records.end(), history.incidents.begin(), history.incidents.end());
    records.insert(records.end(), history.handOvers.begin(), history.handOvers.end());
    records.insert(records.end(), history.readings.begin(), history.readings.end());
    records.insert(records.end(), history.tapes.begin(), history.tapes.end());
    records.insert(records.end(), history.inspections.begin(), history.inspections.end());
    records.insert(records.end(), history.movements.begin(), history.movements.end());
    records.insert(records.end(), history.counts.begin(), history.counts.end());
    records.insert(records.end(), history.services.begin(), history.services.end());
    records.insert(records.end(), history.counters.begin(), history.counters.end());
    records.insert(records.end(), history.packReadings.begin(), history.packReadings.end());
    records.insert(records.end(), history.attachments.begin(), history.attachments.end());
    QVERIFY(store->append(records));
    HistorySlice expected = history;
    expected.jobs.clear();
    expected.forecasts.clear();
    QVERIFY(everythingIn(*store) == expected);
    QVERIFY(store->check() && store->check()->empty());
}

void TestRecords::theSameAgainHasNoEffect() {
    const std::unique_ptr<Store> store = filled(false);
    const RunLog run = runOf(1, minutes(10), 1);
    QVERIFY(store->append({run}));
    const auto counter = store->changeCounter();
    QVERIFY(store->append({run}));
    QVERIFY(store->append({run, run}));
    QCOMPARE(*store->changeCounter(), *counter);
    RunLog other = run;
    other.lanes[0].time.end = other.lanes[0].time.end + Seconds{1};
    QCOMPARE(ruleOf(store->append({other})), QByteArray("record.id-taken"));
    HandOver note{run.id, QDate(2026, 11, 12), fullSeasonNow, PersonId{"ada"}, "x", {}};
    QCOMPARE(ruleOf(store->append({note})), QByteArray("record.id-taken"));
    QVERIFY(store->append({runOf(2, minutes(5), 2), run}));
    QCOMPARE(everythingIn(*store).runs.size(), size_t{2});
}

void TestRecords::allOrNothing() {
    const std::unique_ptr<Store> store = filled();
    const HistorySlice before = everythingIn(*store);
    QCOMPARE(ruleOf(store->append({runOf(50, minutes(10), 1), runOf(51, minutes(9), 2), runOf(52, minutes(8), 9)})),
             QByteArray("record.unknown-lane"));
    QVERIFY(everythingIn(*store) == before);
}

void TestRecords::impossibleRecordsAreRefused() {
    const std::unique_ptr<Store> store = filled();
    const HistorySlice before = everythingIn(*store);
    RunLog stranger = runOf(60, minutes(10), 1);
    stranger.person = PersonId{"nobody"};
    RunLog pattern = runOf(61, minutes(10), 1, Treatment::CleanAndCondition, "none such");
    RunLog backwards = runOf(62, minutes(10), 1);
    std::swap(backwards.time.begin, backwards.time.end);
    RunLog orphan = runOf(63, minutes(10), 1);
    orphan.corrects = operation(999);
    RunLog second = runOf(64, minutes(10), 5);
    second.corrects = operation(4);
    RunLog unnamed = runOf(65, minutes(10), 5);
    unnamed.id = {};
    const Incident lane{operation(66), IncidentKind::Jam, fullSeasonNow, 9, {}, PersonId{"ada"}, "x", {}};
    const Incident unheard{operation(67), IncidentKind::Jam, fullSeasonNow, 0, {}, PersonId{"ada"}, "x", {}, operation(999)};
    const std::vector<std::pair<Record, QByteArray>> bad{
        {stranger, "record.unknown-reference"}, {pattern, "record.unknown-reference"}, {backwards, "record.ends-before-start"},
        {orphan, "record.unknown-reference"},   {second, "record.already-corrected"},  {unnamed, "record.unstorable"},
        {lane, "record.unknown-lane"},          {unheard, "record.unknown-reference"},
    };
    for (const auto& [record, rule] : bad)
        QCOMPARE(ruleOf(store->append({record})), rule);
    QVERIFY(everythingIn(*store) == before);
}

void TestRecords::nothingChangesARecord() {
    const std::unique_ptr<Store> store = filled();
    const HistorySlice before = everythingIn(*store);
    for (const char* table : {"operations", "runs", "run_lanes", "incidents", "hand_overs", "level_readings", "tape_readings",
                              "inspections", "pattern_versions", "movements", "movement_entries", "stock_counts",
                              "service_records", "meter_readings", "kept_forecasts"})
        for (const char* sql : {"UPDATE %1 SET centre_id = centre_id", "DELETE FROM %1"})
            QVERIFY2(!store->database().change(QString(sql).arg(table)), table);
    QVERIFY(everythingIn(*store) == before);
}

void TestRecords::rangesTakeCorrectionsAlong() {
    const std::unique_ptr<Store> store = filled(false);
    RunLog mistake = runOf(1, hours(48), 1);
    RunLog correction = runOf(2, hours(24), 2);
    correction.corrects = mistake.id;
    const RunLog other = runOf(3, hours(1), 3);
    QVERIFY(store->append({mistake, correction, other}));
    const Span day{mistake.time.begin - hours(1), mistake.time.end + hours(1)};
    const Result<HistorySlice> slice = store->history(day);
    QVERIFY(slice);
    QVERIFY((slice->runs == std::vector<RunLog>{mistake, correction}));
    QVERIFY(standing(slice->runs).front().id == correction.id);
    QVERIFY(store->history({mistake.time.end, mistake.time.end + Seconds{1}})->runs.size() == 2);
    QVERIFY(store->history({mistake.time.end + Seconds{1}, mistake.time.end + hours(1)})->runs.empty());
}

void TestRecords::theWindowAndWhatWasBeforeIt() {
    const std::unique_ptr<Store> store = filled(false);
    const Seconds day = hours(24);
    std::vector<RunLog> runs{
        runOf(1, day * 60, 1),
        runOf(2, day * 50, 1, Treatment::ConditionOnly, "short"),
        runOf(3, day * 60, 2),
        runOf(4, day * 50, 2, Treatment::CleanOnly),
        runOf(5, day * 60, 3),
        runOf(6, day * 50, 3, Treatment::CleanAndCondition, "short"),
        runOf(7, day * 50, 4, Treatment::ConditionOnly),
        runOf(8, day * 36, 5),
        runOf(9, day * 60, 6),
        runOf(10, day * 50, 6, Treatment::CleanAndCondition, "short"),
        runOf(11, day * 34, 1),
        runOf(12, day, 2),
    };
    RunLog undone = runs[5];
    undone.id = operation(20);
    undone.corrects = runs[5].id;
    undone.result = RunResult::Void;
    RunLog corrected = runs[9];
    corrected.id = operation(21);
    corrected.corrects = runs[9].id;
    corrected.lanes[0].lane = 7;
    runs.push_back(undone);
    runs.push_back(corrected);
    QVERIFY(store->append(asRecords(runs)));
    const Result<SeasonState> season = store->load(fullSeasonNow);
    QVERIFY(season);
    const Instant from = fullSeasonNow - day * openWindowDays;
    QVERIFY(season->before == lastTreatments(standing(runs), from));
    QCOMPARE(season->before.size(), size_t{7});
    std::vector<OperationId> window;
    for (const RunLog& run : season->runs)
        window.push_back(run.id);
    QVERIFY((window == std::vector{operation(11), operation(12)}));
}

void TestRecords::oldReadingsOfIdleMachinesStay() {
    const std::unique_ptr<Store> store = filled(false);
    const auto reading = [](int n, const char* machine, Seconds ago) {
        LevelReading r{operation(n), PersonId{"ada"}, {}, {}};
        r.levels = {MachineId{machine}, fullSeasonNow - ago, {millilitres(n), {}}, {}, {}, n, {}};
        return r;
    };
    const Seconds day = hours(24);
    const std::vector<LevelReading> all{reading(1, "m1", day * 90), reading(2, "m2", day * 80), reading(3, "m2", day * 70),
                                        reading(4, "m1", day * 3), reading(5, "m1", day)};
    LevelReading taken = reading(6, "m2", day * 70);
    taken.corrects = all[2].id;
    std::vector<Record> records(all.begin(), all.end());
    records.push_back(taken);
    QVERIFY(store->append(records));
    const Result<SeasonState> season = store->load(fullSeasonNow);
    QVERIFY(season);
    QVERIFY((standing(season->readings) == std::vector<LevelReading>{taken, all[3], all[4]}));
}

void TestRecords::anUnclearCommitIsReadBack() {
    const std::unique_ptr<Store> store = filled(false);
    for (const bool persisted : {true, false}) {
        const int n = persisted ? 1 : 2;
        store->database().commitFails = [persisted](bool after) { return after == persisted; };
        const Outcome appended = store->append({runOf(n, minutes(10), 1)});
        const Person person{PersonId{QString("p%1").arg(n)}, QString("P%1").arg(n), Role::Operator, true, 0};
        const Edit edit{operation(100 + n), {}, fullSeasonNow, "Add", {RowChange<Person>{{}, person}}};
        const Result<Edit> applied = store->apply(edit);
        QCOMPARE(bool(appended), persisted);
        QCOMPARE(bool(applied), persisted);
        if (!persisted) QCOMPARE(ruleOf(applied), QByteArray("store.unreachable"));
        store->database().commitFails = {};
        QVERIFY(store->append({runOf(n, minutes(10), 1)}));
        QCOMPARE(ruleOf(store->apply(edit)), persisted ? QByteArray("edit.already-done") : QByteArray());
    }
    QCOMPARE(everythingIn(*store).runs.size(), size_t{2});
    QCOMPARE(store->load(fullSeasonNow)->centre.people.size(), size_t{4});
    QVERIFY(store->check()->empty());
}

void TestRecords::aReplacementKeepsNothing() {
    const std::unique_ptr<Store> store = filled();
    const std::int64_t counter = *store->changeCounter();
    const Series stale = store->load(fullSeasonNow)->series.front();
    SeasonState other = fullSeason();
    other.centre.facts.id = CentreId{"other"};
    other.series.resize(1);
    const std::vector<Job> jobs = fullHistory().jobs;
    other.confirmed = jobs;
    other.runs = {runOf(70, minutes(20), 1), runOf(71, minutes(10), 2)};
    HistorySlice history;
    history.jobs = jobs;
    history.runs = {other.runs[0]};
    QVERIFY(store->replaceAll(other, history, PersonId{"ada"}, fullSeasonNow));
    QCOMPARE(*store->changeCounter(), counter + 1);
    const Result<SeasonState> read = store->load(fullSeasonNow);
    QVERIFY(read);
    SeasonState expected = other;
    expected.patterns[0].edition = 1;  // the file knew no versions: what it says is the first
    QVERIFY(withoutVersions(*read) == expected);
    QVERIFY(read->series.front().version > stale.version);
    QVERIFY(store->check()->empty());
    other.series.push_back(other.series.front());
    QCOMPARE(ruleOf(store->replaceAll(other, {}, {}, fullSeasonNow)), QByteArray("import.id-twice"));
    other.series.pop_back();
    SeasonState orphaned = other;
    orphaned.runs[1].corrects = operation(999);
    QCOMPARE(ruleOf(store->replaceAll(orphaned, {}, {}, fullSeasonNow)), QByteArray("import.unknown-reference"));
    SeasonState unanswered = other;
    unanswered.incidents = {{operation(80), IncidentKind::Jam, fullSeasonNow, 0, {}, {}, "x", {}, operation(999)}};
    QCOMPARE(ruleOf(store->replaceAll(unanswered, {}, {}, fullSeasonNow)), QByteArray("import.unknown-reference"));
    other.runs[1].machine = MachineId{"nowhere"};
    QCOMPARE(ruleOf(store->replaceAll(other, {}, {}, fullSeasonNow)), QByteArray("import.unknown-reference"));
    QVERIFY(*store->load(fullSeasonNow) == *read);
}

void TestRecords::aRestartedServerIsFoundAgain() {
    const std::unique_ptr<Store> store = opened(m_databases->server().newDatabase(), Access::Create);
    QVERIFY(store->replaceAll(fullSeason(), {}, {}, fullSeasonNow));
    m_databases->server().stop("immediate");
    QCOMPARE(ruleOf(store->append({runOf(1, minutes(10), 1)})), QByteArray("store.unreachable"));
    QCOMPARE(ruleOf(Store::open(store->location(), Access::ReadWrite)), QByteArray("store.unreachable"));
    m_databases->server().start();
    QVERIFY(store->append({runOf(1, minutes(10), 1)}));
    QCOMPARE(everythingIn(*store).runs.size(), size_t{1});
}

QTEST_GUILESS_MAIN(TestRecords)
#include "tst_records.moc"
