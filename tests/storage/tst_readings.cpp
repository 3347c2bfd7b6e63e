// Tape readings, inspections and the versions of patterns: kept for ever, found by range; on SQLite and on PostgreSQL.
#include "tests/support/two_databases.h"

#include "core/storage/centre_file.h"
#include "core/storage/database.h"
#include "core/storage/migrations.h"
#include "core/storage/rows.h"

#include <QSet>
#include <QTest>

using namespace laneward;
using namespace support;

namespace {

QByteArray ruleOf(const auto& result) { return result ? QByteArray() : result.error().finding.rule; }

TapeReading tape(int n, Seconds ago, int lane = 3) {
    TapeReading r{operation(n),
                  fullSeasonNow - ago,
                  PersonId{"ada"},
                  MachineId{"m1"},
                  PatternId{"house"},
                  2,
                  lane,
                  0,
                  feet(22),
                  {},
                  "",
                  {}};
    r.milliUnits.fill(12'345);
    return r;
}

Inspection inspection(int n, Seconds ago, int lane = 3) {
    return {
        operation(n), fullSeasonNow - ago, PersonId{"ben"}, lane, {{GeometryFeature::Crown, feet(30), Micrometres{250}}}, "", {}};
}

Pattern patternNamed(Store& store, const char* id) {
    const Result<SeasonState> season = store.load(fullSeasonNow);
    for (const Pattern& pattern : season->patterns)
        if (pattern.id.value == id) return pattern;
    qFatal("no pattern %s", id);
}

std::vector<std::int64_t> editionsOf(Store& store, const char* id) {
    std::vector<std::int64_t> editions;
    for (const PatternVersion& version : *store.patternVersions(PatternId{id}))
        editions.push_back(version.pattern.edition);
    return editions;
}

/// Columns that the first schema did not have yet.
bool isNew(QLatin1StringView column) {
    static const QSet<QString> names{"carry_length_um", "reading_limits", "edition", "pattern_version",
                                     "poured",          "emptied_ul",     "weight_g"};
    return names.contains(QString(column));
}

/// Puts a row into a database of the first schema.
template <class T>
void insertOld(Database& database, const T& row, bool versioned) {
    ColumnNames names;
    ColumnWriter values;
    describe(names, row);
    describe(values, row);
    std::vector<QLatin1StringView> columns;
    std::vector<QVariant> bound{QString("full")};
    for (size_t i = 0; i < names.names.size(); ++i) {
        if (isNew(names.names[i])) continue;
        columns.push_back(names.names[i]);
        bound.push_back(values.values[i]);
        if (names.names[i] == QLatin1StringView("settings"))  // the currency came later
            bound.back() = bound.back().toString().remove("\"currency\":\"GBP\",");
    }
    if (versioned) bound.push_back(qint64{1});
    const auto done = database.change(insertStatement(tableOf<T>, columns, versioned), bound);
    if (!done) qFatal("%s: %s", tableOf<T>, done.error().finding.rule.constData());
}

void insertOldRecords(Database& database, const HistorySlice& history) {
    const auto operation = [&](const OperationId& id, const char* kind) {
        const auto done = database.change(
            "INSERT INTO operations (centre_id, id, kind, person, happened_at, name, counter) VALUES ('full', ?, ?, 'ada', ?, "
            "'', 1)",
            {id.value, QString(kind), qint64{fullSeasonNow.seconds - 1'000}});
        if (!done) qFatal("operation");
    };
    for (const RunLog& run : history.runs) {
        operation(run.id, "runs");
        insertOld(database, run, false);
        for (size_t place = 0; place < run.lanes.size(); ++place) {
            const LaneTime& lane = run.lanes[place];
            if (!database.change(
                    "INSERT INTO run_lanes (centre_id, run_id, place, lane, begins, ends) VALUES ('full', ?, ?, ?, ?, ?)",
                    {run.id.value, qint64(place), lane.lane, qint64{lane.time.begin.seconds}, qint64{lane.time.end.seconds}}))
                qFatal("lane");
        }
    }
    for (const LevelReading& reading : history.readings) {
        operation(reading.id, "level_readings");
        insertOld(database, reading, false);
    }
}

/// Makes the store's database one of the first schema, with the full season as far as it knew it.
void lower(Store& store) {
    Database& database = store.database();
    const bool sqlite = database.dialect() == Dialect::Sqlite;
    QStringList statements{"DROP SCHEMA public CASCADE", "CREATE SCHEMA public"};
    if (sqlite) {
        statements = {"PRAGMA foreign_keys = OFF"};
        const auto tables = database.rows("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%'");
        for (const Row& table : *tables)
            statements << QString("DROP TABLE %1").arg(table.value(0).toString());
        statements << "PRAGMA user_version = 0"
                   << "PRAGMA foreign_keys = ON";
    }
    for (const QString& statement : statements)
        if (!database.change(statement)) qFatal("%s", qPrintable(statement));
    if (!migrate(database, {knownMigrations(database.dialect()).front()})) qFatal("not lowered");
    if (!database.change("INSERT INTO changes VALUES ('full', 1)")) qFatal("no counter");
    const SeasonState season = fullSeason();
    insertOld(database, season.centre.facts, true);
    for (const Machine& row : season.centre.machines)
        insertOld(database, row, true);
    for (const Person& row : season.centre.people)
        insertOld(database, row, true);
    for (const Pattern& row : season.patterns)
        insertOld(database, row, true);
    insertOldRecords(database, fullHistory());
}

}  // namespace

class TestReadings : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { m_databases = std::make_unique<TwoDatabases>(); }
    void cleanupTestCase() { m_databases.reset(); }
    void rangesTakeCorrectionsAlong_data() { TwoDatabases::rows(); }
    void rangesTakeCorrectionsAlong();
    void badMeasurementsAreRefused_data() { TwoDatabases::rows(); }
    void badMeasurementsAreRefused();
    void aNewRecipeIsANewVersion_data() { TwoDatabases::rows(); }
    void aNewRecipeIsANewVersion();
    void versionsOutliveTheirPattern_data() { TwoDatabases::rows(); }
    void versionsOutliveTheirPattern();
    void recordsNameKnownVersions_data() { TwoDatabases::rows(); }
    void recordsNameKnownVersions();
    void importedVersionsMustBeSound_data() { TwoDatabases::rows(); }
    void importedVersionsMustBeSound();
    void theFirstSchemaIsRaised_data() { TwoDatabases::rows(); }
    void theFirstSchemaIsRaised();

private:
    std::unique_ptr<Store> filled() {
        std::unique_ptr<Store> store = m_databases->fresh();
        fill(*store);
        return store;
    }
    Pattern edited(Store& store, const Pattern& before, const Pattern& after) {
        const Edit edit{
            operation(20'000 + ++m_edits), PersonId{"ben"}, fullSeasonNow, "Edit", {RowChange<Pattern>{before, after}}};
        const Result<Edit> done = store.apply(edit);
        if (!done) qFatal("%s", done.error().finding.rule.constData());
        return *std::get<RowChange<Pattern>>(done->changes.front()).before;
    }

    std::unique_ptr<TwoDatabases> m_databases;
    int m_edits = 0;
};

void TestReadings::rangesTakeCorrectionsAlong() {
    const std::unique_ptr<Store> store = filled();
    const TapeReading wrong = tape(100, hours(240));
    TapeReading right = tape(101, hours(20));
    right.corrects = wrong.id;
    const Inspection measured = inspection(102, hours(240));
    Inspection withdrawn = inspection(103, hours(20));
    withdrawn.corrects = measured.id;
    withdrawn.values.clear();
    QVERIFY(store->append({wrong, right, measured, withdrawn}));
    const Span thatDay{wrong.at, wrong.at + Seconds{1}};
    QVERIFY((*store->tapes(thatDay) == std::vector{wrong, right}));
    QVERIFY((standing(*store->tapes(thatDay)) == std::vector{right}));
    QVERIFY((*store->inspections(thatDay) == std::vector{measured, withdrawn}));
    QVERIFY(standing(*store->inspections(thatDay)).empty());
    QVERIFY(store->tapes({wrong.at + Seconds{1}, wrong.at + hours(1)})->empty());
    QCOMPARE(store->levelReadings({fullSeasonNow - hours(24), fullSeasonNow})->size(), size_t{2});
    TapeReading again = tape(104, hours(10));
    again.corrects = wrong.id;
    QCOMPARE(ruleOf(store->append({again})), QByteArray("record.already-corrected"));
    again.corrects = operation(999);
    QCOMPARE(ruleOf(store->append({again})), QByteArray("record.unknown-reference"));
    again.corrects = measured.id;  // another kind of record
    QCOMPARE(ruleOf(store->append({again})), QByteArray("record.unknown-reference"));
    QVERIFY(store->append({right, measured}));
    QCOMPARE(ruleOf(store->append({tape(101, hours(20))})), QByteArray("record.id-taken"));
    QVERIFY(store->check()->empty());
}

void TestReadings::badMeasurementsAreRefused() {
    const std::unique_ptr<Store> store = filled();
    const HistorySlice before = *store->history({Instant{0}, fullSeasonNow + hours(1)});
    const auto bad = [](auto record, const auto& spoil) {
        spoil(record);
        return Record(record);
    };
    const TapeReading t = tape(200, hours(1));
    const Inspection i = inspection(201, hours(1));
    const std::vector<std::pair<Record, QByteArray>> all{
        {bad(t, [](TapeReading& r) { r.lane = 0; }), "reading.lane"},
        {bad(t, [](TapeReading& r) { r.lane = 9; }), "reading.lane"},
        {bad(t, [](TapeReading& r) { r.distance = feet(60) + Micrometres{1}; }), "reading.distance"},
        {bad(t, [](TapeReading& r) { r.distance = Micrometres{-1}; }), "reading.distance"},
        {bad(t, [](TapeReading& r) { r.milliUnits[38] = -1; }), "reading.film"},
        {bad(t, [](TapeReading& r) { r.milliUnits[0] = 500'001; }), "reading.film"},
        {bad(t, [](TapeReading& r) { r.milliUnits = {}; }), "reading.nothing"},
        {bad(t, [](TapeReading& r) { r.laneOfRun = -1; }), "reading.lane-of-run"},
        {bad(t, [](TapeReading& r) { r.machine = MachineId{"nowhere"}; }), "record.unknown-reference"},
        {bad(t, [](TapeReading& r) { r.pattern = PatternId{"none such"}; }), "record.unknown-reference"},
        {bad(t, [](TapeReading& r) { r.person = PersonId{"nobody"}; }), "record.unknown-reference"},
        {bad(t, [](TapeReading& r) { r.note = QString(10'001, 'x'); }), "record.unstorable"},
        {bad(i, [](Inspection& r) { r.lane = 9; }), "inspection.lane"},
        {bad(i, [](Inspection& r) { r.values.clear(); }), "inspection.nothing"},
        {bad(i, [](Inspection& r) { r.values[0].distance = feet(61); }), "inspection.distance"},
        {bad(i, [](Inspection& r) { r.values[0].departure = Micrometres{-50'001}; }), "inspection.departure"},
    };
    for (const auto& [record, rule] : all) {
        QCOMPARE(ruleOf(store->append({tape(202, hours(2)), record})), rule);
        QVERIFY(*store->history({Instant{0}, fullSeasonNow + hours(1)}) == before);
    }
    QVERIFY(store->append({t, i}));
}

void TestReadings::aNewRecipeIsANewVersion() {
    const std::unique_ptr<Store> store = filled();
    const Pattern house = patternNamed(*store, "house");
    QCOMPARE(house.edition, std::int64_t{2});
    Pattern more = house;
    more.strokes[0].dose = Microlitres{60};
    more.edition = 77;  // not for the edit to say
    const Pattern third = edited(*store, house, more);
    QCOMPARE(third.edition, std::int64_t{3});
    QVERIFY(patternNamed(*store, "house") == third);
    QVERIFY((editionsOf(*store, "house") == std::vector<std::int64_t>{1, 2, 3}));
    const PatternVersion kept = store->patternVersions(PatternId{"house"})->back();
    QVERIFY(sameRecipe(kept.pattern, third));
    QCOMPARE(kept.person.value, QString("ben"));
    QCOMPARE(kept.since.seconds, fullSeasonNow.seconds);
    Pattern retired = third;
    retired.retired = true;
    QCOMPARE(edited(*store, third, retired).edition, std::int64_t{3});
    // What says the same as an earlier version is that version again: undo makes no new one.
    Pattern back = house;
    back.version = patternNamed(*store, "house").version;
    QCOMPARE(edited(*store, patternNamed(*store, "house"), back).edition, std::int64_t{2});
    QCOMPARE(editionsOf(*store, "house").size(), size_t{3});
    Pattern fourth = patternNamed(*store, "house");
    fourth.end = feet(39);
    QCOMPARE(edited(*store, patternNamed(*store, "house"), fourth).edition, std::int64_t{4});
    QCOMPARE(editionsOf(*store, "short").size(), size_t{1});
    QVERIFY(store->check()->empty());
    const Result<CentreFile> file = exported(*store);
    QCOMPARE(file->history.patternVersions.size(), size_t{5});
}

void TestReadings::versionsOutliveTheirPattern() {
    const std::unique_ptr<Store> store = filled();
    Pattern made = patternNamed(*store, "house");
    made.id = PatternId{"copy"};
    made.edition = 2;
    const auto edit = [](int n, RowChange<Pattern> change) {
        return Edit{operation(30'000 + n), PersonId{"ben"}, fullSeasonNow, "Edit", {std::move(change)}};
    };
    Result<Edit> undo = store->apply(edit(1, {{}, made}));
    QVERIFY(undo);
    QCOMPARE(patternNamed(*store, "copy").edition, std::int64_t{1});
    undo->id = operation(30'002);
    Result<Edit> redo = store->apply(*undo);
    QVERIFY2(redo, ruleOf(redo).constData());
    QVERIFY((editionsOf(*store, "copy") == std::vector<std::int64_t>{1}));
    QVERIFY(store->check()->empty());
    redo->id = operation(30'003);
    QVERIFY(store->apply(*redo));
    QCOMPARE(patternNamed(*store, "copy").edition, std::int64_t{1});
}

void TestReadings::recordsNameKnownVersions() {
    const std::unique_ptr<Store> store = filled();
    TapeReading reading = tape(300, hours(1));
    for (const std::int64_t unknown : {3, -1, 1'000}) {
        reading.patternVersion = unknown;
        QCOMPARE(ruleOf(store->append({reading})), QByteArray("record.unknown-reference"));
    }
    RunLog run = fullHistory().runs.front();
    run.id = operation(301);
    run.patternVersion = 3;
    QCOMPARE(ruleOf(store->append({run})), QByteArray("record.unknown-reference"));
    run.pattern.reset();
    run.patternVersion = 1;
    QCOMPARE(ruleOf(store->append({run})), QByteArray("record.unknown-reference"));
    run.pattern = PatternId{"house"};
    reading.patternVersion = 0;
    QVERIFY(store->append({run, reading}));
}

void TestReadings::importedVersionsMustBeSound() {
    const std::unique_ptr<Store> store = filled();
    const CentreFile before = *exported(*store);
    const auto refused = [&](const auto& spoil, const char* rule) {
        HistorySlice history = fullHistory();
        spoil(history);
        QCOMPARE(ruleOf(store->replaceAll(fullSeason(), history, {}, fullSeasonNow)), QByteArray(rule));
    };
    refused([](HistorySlice& h) { h.patternVersions.push_back(h.patternVersions.front()); }, "import.id-twice");
    refused([](HistorySlice& h) { h.patternVersions[0].pattern.edition = 0; }, "import.unstorable");
    refused([](HistorySlice& h) { h.patternVersions[0].pattern.id = {}; }, "import.unstorable");
    refused([](HistorySlice& h) { h.patternVersions[0].pattern.edition = 9; }, "import.unknown-reference");  // of a run
    refused([](HistorySlice& h) { h.tapes[0].patternVersion = 9; }, "import.unknown-reference");
    refused([](HistorySlice& h) { h.tapes[1].corrects = operation(999); }, "import.unknown-reference");
    refused([](HistorySlice& h) { h.inspections[1].id = h.inspections[0].id; }, "import.unstorable");
    QVERIFY(*exported(*store) == before);
}

void TestReadings::theFirstSchemaIsRaised() {
    QFETCH(bool, postgres);
    std::unique_ptr<Store> store = m_databases->fresh();
    const Location location = store->location();
    lower(*store);
    store.reset();
    QCOMPARE(ruleOf(Store::open(location, Access::ReadOnly)), QByteArray("store.older-schema"));
    store = opened(location, Access::ReadWrite);
    QCOMPARE(*schemaVersion(store->database()), knownMigrations(Dialect::Sqlite).back().version);
    SeasonState expected = fullSeason();
    expected.centre.facts.readingLimits = {};
    expected.centre.facts.settings.currency = "EUR";
    expected.centre.machines[0].carryLength = {};
    expected.centre.machines[0].weight = {};
    expected.patterns[0].edition = 1;
    const SeasonState season = withoutVersions(*store->load(fullSeasonNow));
    QVERIFY(season.centre.facts == expected.centre.facts && season.centre.machines == expected.centre.machines);
    QVERIFY(season.patterns == expected.patterns);
    HistorySlice history = fullHistory();
    for (RunLog& run : history.runs)
        run.patternVersion = 0;
    for (LevelReading& reading : history.readings)
        reading.poured.reset(), reading.emptied.reset();
    const HistorySlice read = *store->history({Instant{0}, fullSeasonNow});
    QVERIFY(read.runs == history.runs && read.readings == history.readings && read.tapes.empty() && read.inspections.empty());
    const std::vector<PatternVersion> versions = *store->patternVersions();
    QCOMPARE(versions.size(), size_t{2});
    QVERIFY(sameRecipe(versions[0].pattern, expected.patterns[0]) && versions[0].pattern.edition == 1);
    QCOMPARE(versions[0].since.seconds, fullSeasonNow.seconds - 1'000);
    QVERIFY(store->append({[] {
        TapeReading reading = tape(400, hours(1));
        reading.patternVersion = 1;
        return reading;
    }()}));
    QVERIFY(!store->database().change("DELETE FROM pattern_versions"));
    QVERIFY(store->check()->empty());
    if (!postgres) QVERIFY(QFile::exists(QString(location.path).replace(".laneward", "-schema-1.laneward")));
}

QTEST_GUILESS_MAIN(TestReadings)
#include "tst_readings.moc"
