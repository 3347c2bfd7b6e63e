// What every store promises, asked of SQLite and of PostgreSQL alike.
#include "tests/support/hostile_texts.h"
#include "tests/support/two_databases.h"

#include "core/storage/centre_file.h"
#include "core/storage/database.h"
#include "core/storage/migrations.h"

#include <QTest>

using namespace laneward;
using namespace support;

namespace {

OperationId editId(int n) { return operation(10'000 + n); }

Edit edit(int n, std::vector<Change> changes) {
    return {editId(n), PersonId{"ben"}, fullSeasonNow + minutes(n), QString("Edit %1").arg(n), std::move(changes)};
}

const Series& seriesNamed(const SeasonState& season, const char* id) {
    for (const Series& series : season.series)
        if (series.id.value == id) return series;
    qFatal("no series %s", id);
}

SeasonState loaded(Store& store) {
    Result<SeasonState> season = store.load(fullSeasonNow);
    if (!season) qFatal("%s", season.error().finding.rule.constData());
    return *std::move(season);
}

Edit applied(Store& store, const Edit& e) {
    Result<Edit> counter = store.apply(e);
    if (!counter) qFatal("%s %s", counter.error().finding.rule.constData(), qPrintable(counter.error().finding.subject));
    return *std::move(counter);
}

QByteArray ruleOf(const auto& result) { return result ? QByteArray() : result.error().finding.rule; }

/// Everything by which a schema could be told from another.
QString schemaOf(Store& store) {
    Database& db = store.database();
    const auto rows =
        db.dialect() == Dialect::Sqlite
            ? db.rows("SELECT type, name, coalesce(sql, '') FROM sqlite_master ORDER BY type, name")
            : db.rows(
                  "SELECT table_name::text, column_name::text, data_type::text FROM information_schema.columns WHERE "
                  "table_schema = 'public' ORDER BY 1, 2");
    if (!rows || rows->empty()) qFatal("no schema");
    QStringList all;
    for (const Row& row : *rows)
        for (int i = 0; i < 3; ++i)
            all << row.value(i).toString();
    return all.join('|');
}

}  // namespace

class TestContract : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { m_databases = std::make_unique<TwoDatabases>(); }
    void cleanupTestCase() { m_databases.reset(); }
    void everyFieldComesBack_data() { TwoDatabases::rows(); }
    void everyFieldComesBack();
    void anEmptyStoreIsFounded_data() { TwoDatabases::rows(); }
    void anEmptyStoreIsFounded();
    void everyKindIsEditedAndUndone_data() { TwoDatabases::rows(); }
    void everyKindIsEditedAndUndone();
    void undoOfARemovalBringsBackANewVersion_data() { TwoDatabases::rows(); }
    void undoOfARemovalBringsBackANewVersion();
    void conflictsNameWhoAndWhen_data() { TwoDatabases::rows(); }
    void conflictsNameWhoAndWhen();
    void noUpdateIsLostInEitherOrder_data() { TwoDatabases::rows(); }
    void noUpdateIsLostInEitherOrder();
    void anEditHappensOnce_data() { TwoDatabases::rows(); }
    void anEditHappensOnce();
    void refusedEditsChangeNothing_data() { TwoDatabases::rows(); }
    void refusedEditsChangeNothing();
    void hostileTextsStayText_data() { TwoDatabases::rows(); }
    void hostileTextsStayText();
    void unstorableTextsAreRefused_data() { TwoDatabases::rows(); }
    void unstorableTextsAreRefused();
    void aNewerSchemaIsRefused_data() { TwoDatabases::rows(); }
    void aNewerSchemaIsRefused();
    void createRefusesACentre_data() { TwoDatabases::rows(); }
    void createRefusesACentre();
    void readOnlyRefusesEdits_data() { TwoDatabases::rows(); }
    void readOnlyRefusesEdits();

private:
    std::unique_ptr<Store> filled() {
        std::unique_ptr<Store> store = m_databases->fresh();
        fill(*store);
        return store;
    }
    template <class T>
    void editAndUndo(Store& store, const T& stored, const T& changed, int n);

    std::unique_ptr<TwoDatabases> m_databases;
};

void TestContract::everyFieldComesBack() {
    const std::unique_ptr<Store> store = filled();
    const SeasonState read = withoutVersions(loaded(*store));
    const SeasonState expected = fullSeason();
    HistorySlice history = fullHistory();
    QVERIFY(*store->keptForecasts({QDate(2026, 1, 1), QDate(2027, 1, 1)}) == history.forecasts);
    history.forecasts.clear();  // a range of history has none
    QVERIFY(read.centre == expected.centre);
    QVERIFY(read.series == expected.series);
    QVERIFY(read.patterns == expected.patterns);
    QVERIFY(read.confirmed == history.jobs);
    const Result<HistorySlice> all = store->history({fullSeasonNow - hours(24 * 365), fullSeasonNow + hours(24)});
    QVERIFY(all);
    QVERIFY(withoutVersions(*all) == history);
    const Result<std::vector<Finding>> findings = store->check();
    QVERIFY(findings);
    QVERIFY2(findings->empty(), findings->empty() ? "" : findings->front().rule.constData());
}

void TestContract::anEmptyStoreIsFounded() {
    const std::unique_ptr<Store> store = m_databases->fresh();
    QVERIFY(loaded(*store).centre.facts.id.isEmpty());
    QCOMPARE(ruleOf(store->append({fullHistory().readings.front()})), QByteArray("store.no-centre"));
    QCOMPARE(ruleOf(exported(*store)), QByteArray("store.no-centre"));
    const Result<std::vector<Finding>> findings = store->check();
    QVERIFY(findings && findings->size() == 1 && findings->front().rule == "store.no-centre");
    applied(*store, edit(1, {RowChange<CentreFacts>{{}, fullSeason().centre.facts}}));
    SeasonState season = loaded(*store);
    QCOMPARE(season.centre.facts.version, std::int64_t{1});
    QCOMPARE(season.centre.facts.name, QString("Quillmarsh Bowl"));
    const Edit second = edit(2, {RowChange<CentreFacts>{season.centre.facts, {}}});
    QCOMPARE(ruleOf(store->apply(second)), QByteArray("edit.centre-stays"));
}

template <class T>
void TestContract::editAndUndo(Store& store, const T& stored, const T& changed, int n) {
    const Result<std::int64_t> before = store.changeCounter();
    const Edit counter = applied(store, edit(n, {RowChange<T>{stored, changed}}));
    const Result<std::int64_t> after = store.changeCounter();
    QVERIFY(before && after && *after > *before);
    const auto& back = std::get<RowChange<T>>(counter.changes.front());
    QVERIFY(*back.after == stored);
    T expected = changed;
    expected.version = back.before->version;
    if constexpr (std::is_same_v<T, Pattern>) expected.edition = back.before->edition;
    QVERIFY(*back.before == expected);
    QVERIFY(expected.version > stored.version);
    Edit undo = counter;
    undo.id = editId(n + 1);
    const Edit redo = applied(store, undo);
    const auto& again = std::get<RowChange<T>>(redo.changes.front());
    T restored = stored;
    restored.version = again.before->version;
    QVERIFY(*again.before == restored);
}

void TestContract::everyKindIsEditedAndUndone() {
    const std::unique_ptr<Store> store = filled();
    const SeasonState before = loaded(*store);
    const auto renamed = [](auto row) {
        row.name += " again";
        return row;
    };
    editAndUndo(*store, before.centre.facts, renamed(before.centre.facts), 100);
    editAndUndo(*store, before.centre.machines[0], renamed(before.centre.machines[0]), 102);
    editAndUndo(*store, before.centre.people[0], renamed(before.centre.people[0]), 104);
    editAndUndo(*store, before.centre.shifts[0], renamed(before.centre.shifts[0]), 106);
    Outage outage = before.centre.outages[0];
    outage.end.reset();
    editAndUndo(*store, before.centre.outages[0], outage, 108);
    editAndUndo(*store, before.patterns[0], renamed(before.patterns[0]), 110);
    Series series = before.series[1];
    series.overrides.clear();
    editAndUndo(*store, before.series[1], series, 112);
    Job job = before.confirmed[0];
    job.state = JobState::Dropped;
    editAndUndo(*store, before.confirmed[0], job, 114);
    QVERIFY(withoutVersions(loaded(*store)) == withoutVersions(before));
}

void TestContract::undoOfARemovalBringsBackANewVersion() {
    const std::unique_ptr<Store> store = filled();
    const Series stale = seriesNamed(loaded(*store), "league");
    Edit undo = applied(*store, edit(1, {RowChange<Series>{stale, {}}}));
    undo.id = editId(2);
    applied(*store, undo);
    const Series back = seriesNamed(loaded(*store), "league");
    QVERIFY(back.version > stale.version);
    Series late = stale;
    late.title = "Written by somebody who never saw the removal";
    QCOMPARE(ruleOf(store->apply(edit(3, {RowChange<Series>{stale, late}}))), QByteArray("edit.conflict"));
    QCOMPARE(seriesNamed(loaded(*store), "league").title, stale.title);
}

void TestContract::conflictsNameWhoAndWhen() {
    const std::unique_ptr<Store> store = filled();
    const Series league = seriesNamed(loaded(*store), "league");
    Series mine = league;
    mine.title = "Mine";
    applied(*store, edit(7, {RowChange<Series>{league, mine}}));
    Series theirs = league;
    theirs.title = "Theirs";
    const auto conflict = [&](const Edit& e) {
        const Result<Edit> result = store->apply(e);
        QCOMPARE(ruleOf(result), QByteArray("edit.conflict"));
        QCOMPARE(result.error().kind, ErrorKind::Refused);
        const std::vector<Value> whoAndWhen{QString("Ben"), fullSeasonNow + minutes(7)};
        QVERIFY(result.error().finding.values == whoAndWhen);
    };
    conflict(edit(8, {RowChange<Series>{league, theirs}}));
    conflict(edit(9, {RowChange<Series>{league, {}}}));
    const Series now = seriesNamed(loaded(*store), "league");
    QCOMPARE(now.title, QString("Mine"));
    const Result<Edit> twice = store->apply(edit(10, {RowChange<Series>{{}, now}}));
    QCOMPARE(ruleOf(twice), QByteArray("edit.conflict"));
    applied(*store, edit(11, {RowChange<Series>{now, {}}}));
    const Result<Edit> gone = store->apply(edit(12, {RowChange<Series>{now, theirs}}));
    QCOMPARE(ruleOf(gone), QByteArray("edit.conflict"));
    QVERIFY(gone.error().finding.values.back() == Value(fullSeasonNow + minutes(11)));
}

void TestContract::noUpdateIsLostInEitherOrder() {
    const std::unique_ptr<Store> first = filled();
    const std::unique_ptr<Store> second = opened(first->location(), Access::ReadWrite);
    for (int n = 0; n < 40; ++n) {
        const Series stored = seriesNamed(loaded(*first), "league");
        Store* order[2] = {n % 2 ? first.get() : second.get(), n % 2 ? second.get() : first.get()};
        Series quick = stored;
        quick.players = 1000 + n;
        Series slow = stored;
        slow.players = 2000 + n;
        applied(*order[0], edit(200 + 2 * n, {RowChange<Series>{stored, quick}}));
        QCOMPARE(ruleOf(order[1]->apply(edit(201 + 2 * n, {RowChange<Series>{stored, slow}}))), QByteArray("edit.conflict"));
        QCOMPARE(seriesNamed(loaded(*second), "league").players, 1000 + n);
    }
}

void TestContract::anEditHappensOnce() {
    const std::unique_ptr<Store> store = filled();
    const Person cleo{PersonId{"cleo"}, "Cleo", Role::Operator, true, 0};
    const Edit once = edit(1, {RowChange<Person>{{}, cleo}});
    applied(*store, once);
    QCOMPARE(ruleOf(store->apply(once)), QByteArray("edit.already-done"));
    QCOMPARE(loaded(*store).centre.people.size(), size_t{3});
}

void TestContract::refusedEditsChangeNothing() {
    const std::unique_ptr<Store> store = filled();
    const SeasonState before = loaded(*store);
    const Person cleo{PersonId{"cleo"}, "Cleo", Role::Operator, true, 0};
    const RowChange<Person> good{{}, cleo};
    Outage lost = before.centre.outages[1];
    lost.machine = MachineId{"nowhere"};
    Person noId = cleo;
    noId.id = {};
    Shift noTime = before.centre.shifts[0];
    noTime.begin = QTime();
    const std::vector<std::pair<Change, QByteArray>> bad{
        {RowChange<Machine>{before.centre.machines[0], {}}, "edit.still-used"},
        {RowChange<Outage>{before.centre.outages[1], lost}, "edit.unknown-reference"},
        {RowChange<Person>{{}, noId}, "edit.unstorable"},
        {RowChange<Shift>{before.centre.shifts[0], noTime}, "edit.unstorable"},
        {RowChange<Person>{before.centre.people[0], before.centre.people[1]}, "edit.other-row"},
        {RowChange<Person>{}, "edit.empty"},
    };
    int n = 1;
    for (const auto& [change, rule] : bad)
        QCOMPARE(ruleOf(store->apply(edit(n++, {good, change}))), rule);
    Edit unnamed = edit(50, {good});
    unnamed.id = {};
    QCOMPARE(ruleOf(store->apply(unnamed)), QByteArray("edit.unstorable"));
    QVERIFY(loaded(*store) == before);
}

void TestContract::hostileTextsStayText() {
    const std::unique_ptr<Store> store = filled();
    const QString schema = schemaOf(*store);
    const Series closure = seriesNamed(loaded(*store), "closure");
    std::vector<Series> series;
    std::vector<HandOver> notes;
    for (const QString& text : hostileTexts()) {
        const QString id = QString("%1 ").arg(notes.size()) + text.left(50);
        Series one = closure;
        one.id = {id};
        one.uid = one.title = one.note = text;
        one.overrides = {{one.start, false, {}, {}, text, {}}};
        const Person person{PersonId{id}, text, Role::Operator, true, 0};
        const Edit counter =
            applied(*store, {{id}, {text}, fullSeasonNow, text, {RowChange<Person>{{}, person}, RowChange<Series>{{}, one}}});
        one.version = std::get<RowChange<Series>>(counter.changes.front()).before->version;
        series.push_back(one);
        notes.push_back({{id + '+'}, QDate(2026, 11, 12), fullSeasonNow, person.id, text, {}});
    }
    QVERIFY(store->append({notes.begin(), notes.end()}));
    const SeasonState season = loaded(*store);
    const auto holds = [](const auto& all, const auto& one) { return std::find(all.begin(), all.end(), one) != all.end(); };
    for (size_t i = 0; i < notes.size(); ++i)
        QVERIFY(holds(season.series, series[i]) && holds(season.handOvers, notes[i]));
    QVERIFY(notes.size() >= 40);
    QCOMPARE(season.centre.people.size(), notes.size() + 2);
    QCOMPARE(schemaOf(*store), schema);
}

void TestContract::unstorableTextsAreRefused() {
    const std::unique_ptr<Store> store = filled();
    const SeasonState before = loaded(*store);
    const QString withNul = QString("a") + QChar(0) + "b";
    const QString halfPair = QString("a") + QChar(0xd800);
    int n = 1;
    for (const QString& text : {withNul, halfPair, QString(10'001, 'x')}) {
        const Person person{PersonId{"p"}, text, Role::Operator, true, 0};
        QCOMPARE(ruleOf(store->apply(edit(n++, {RowChange<Person>{{}, person}}))), QByteArray("edit.unstorable"));
        const HandOver note{operation(500), QDate(2026, 11, 12), fullSeasonNow, PersonId{"ada"}, text, {}};
        QCOMPARE(ruleOf(store->append({note})), QByteArray("record.unstorable"));
        SeasonState season = fullSeason();
        season.centre.people[0].name = text;
        QCOMPARE(ruleOf(store->replaceAll(season, {}, {}, fullSeasonNow)), QByteArray("import.unstorable"));
    }
    QVERIFY(loaded(*store) == before);
}

void TestContract::aNewerSchemaIsRefused() {
    std::unique_ptr<Store> store = filled();
    const Location location = store->location();
    const bool sqlite = location.kind == Location::Kind::Sqlite;
    for (const int newer : {knownMigrations(Dialect::Sqlite).back().version + 1, 100}) {
        const auto raised = store
                                ? store->database().change(sqlite ? QString("PRAGMA user_version = %1").arg(newer)
                                                                  : QString("UPDATE laneward_schema SET version = %1").arg(newer))
                                : Result<int>(0);
        QVERIFY(raised);
        store.reset();
        const QByteArray before = sqlite ? bytesOf(location.path) : QByteArray();
        for (const Access access : {Access::ReadWrite, Access::ReadOnly}) {
            const auto refused = Store::open(location, access);
            QCOMPARE(ruleOf(refused), QByteArray("store.newer-schema"));
            QCOMPARE(refused.error().kind, ErrorKind::Refused);
        }
        if (!sqlite) return;
        QCOMPARE(bytesOf(location.path), before);
        QVERIFY(!QFile::exists(location.path + "-wal"));
    }
}

void TestContract::createRefusesACentre() {
    const std::unique_ptr<Store> store = filled();
    QCOMPARE(ruleOf(Store::open(store->location(), Access::Create)), QByteArray("store.exists"));
    QVERIFY(loaded(*store).centre == loaded(*opened(store->location(), Access::ReadOnly)).centre);
}

void TestContract::readOnlyRefusesEdits() {
    const std::unique_ptr<Store> store = filled();
    const std::unique_ptr<Store> reader = opened(store->location(), Access::ReadOnly);
    QVERIFY(reader->isReadOnly());
    QVERIFY(!store->isReadOnly());
    QCOMPARE(ruleOf(reader->apply(edit(1, {}))), QByteArray("edit.read-only"));
    QCOMPARE(ruleOf(reader->append({})), QByteArray("edit.read-only"));
    QCOMPARE(ruleOf(reader->replaceAll(fullSeason(), {}, {}, fullSeasonNow)), QByteArray("edit.read-only"));
    const auto raw = reader->database().change("DELETE FROM series WHERE centre_id = 'full'");
    QCOMPARE(ruleOf(raw), QByteArray("edit.read-only"));
    QVERIFY(loaded(*reader) == loaded(*store));
}

QTEST_GUILESS_MAIN(TestContract)
#include "tst_contract.moc"
