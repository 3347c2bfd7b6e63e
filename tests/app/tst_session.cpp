// The session: edits and records with undo and redo, conflicts, locks, the person, and the plan that follows.
#include "core/season/recording.h"
#include "core/storage/centre_file.h"
#include "tests/support/evening_session.h"
#include "tests/support/planning_builders.h"
#include "tests/support/random_evening.h"
#include "tests/support/temporary_centre.h"

#include <QSignalSpy>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTest>

using namespace laneward;

namespace {

/// Versions grow with every write, undoing included; everything else must come back.
SeasonState withoutVersions(SeasonState season) {
    season.centre.facts.version = 0;
    for (Machine& m : season.centre.machines)
        m.version = 0;
    for (Person& p : season.centre.people)
        p.version = 0;
    for (Shift& s : season.centre.shifts)
        s.version = 0;
    for (Outage& o : season.centre.outages)
        o.version = 0;
    for (Pattern& p : season.patterns)
        p.version = 0;
    for (Series& s : season.series)
        s.version = 0;
    for (Job& j : season.confirmed)
        j.version = 0;
    season.runs = standing(std::move(season.runs));
    for (RunLog& run : season.runs) {
        run.id = {};
        run.corrects.reset();
        run.recordedAt = {};
    }
    return season;
}

const Series& seriesOf(const Session& session, const QString& id) {
    for (const Series& series : session.season().series) {
        if (series.id.value == id) return series;
    }
    qFatal("no series %s", qPrintable(id));
}

bool rename(Session& session, const QString& id, const QString& title) {
    const Series before = seriesOf(session, id);
    Series after = before;
    after.title = title;
    return session.apply("Rename", {RowChange<Series>{before, after}});
}

/// A crowded evening of twelve runs of lanes, which takes a long search.
class HardEvening {
public:
    HardEvening() {
        const State state = support::randomEvening(hardSeed, {});
        CentreFile file;
        file.season.centre = state.centre;
        file.season.centre.facts.id = {"hard"};
        file.season.centre.people = {{{"ada"}, "Ada Fenwick", Role::Manager, true, 0}};
        file.season.series = state.series;
        file.season.patterns = state.patterns;
        auto store = support::opened({Location::Kind::Sqlite, m_directory.filePath("hard.laneward"), {}}, Access::Create);
        if (!store->replaceAll(file.season, {}, PersonId{"ada"}, clock.now())) qFatal("not stored");
        session = std::make_unique<Session>(std::move(store), clock);
        session->setPerson({"ada"});
    }

    /// Searched without any session.
    Plan searched() const {
        return plan(laneward::planningState(session->season(), clock.now()), clock.now(), {support::day0, support::day0});
    }

private:
    static constexpr unsigned hardSeed = 3;
    QTemporaryDir m_directory;

public:
    FixedClock clock{support::at(0, 12)};
    std::unique_ptr<Session> session;
};

}  // namespace

class SessionTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void editsCanBeUndoneAndRedone();
    void manyEditsOfOneRowComeBackInOrder();
    void aRowThatIsMadeGoesAndComesBack();
    void aConflictIsSaidAndLeavesTheStack();
    void undoOverSomebodyElsesChangeIsRefused();
    void aLockedDatabaseCanBeTriedAgain();
    void aReadOnlyFileRefusesEdits();
    void thePersonIsAskedOnce();
    void aSinglePersonIsNotAsked();
    void recordsAreUndoneByCounterRecords();
    void aReadingIsUndone();
    void measurementsAreUndone();
    void confirmingTheDayStoresTheVersion();
    void slippingPlansTonightAgain();
    void slippingReleasesConfirmedJobsInTheWay();
    void otherPcsAreNoticed();
    void thePlanIsMadeAgainWhenItsStartHasPassed();
    void theFirstPlanIsFollowedByTheSearch();
    void whoWaitsGetsTheLastWord();
    void anEditEndsTheSearch();
};

void SessionTest::editsCanBeUndoneAndRedone() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    QSignalSpy changed(session.get(), &Session::changed);
    const SeasonState before = withoutVersions(session->season());
    QVERIFY(rename(*session, "league", "Friday Fours"));
    QCOMPARE(changed.size(), 1);
    const SeasonState after = withoutVersions(session->season());
    QVERIFY(before != after);
    QCOMPARE(session->undoStack().undoText(), QString("Rename"));
    session->undoStack().undo();
    QVERIFY(withoutVersions(session->season()) == before);
    session->undoStack().redo();
    QVERIFY(withoutVersions(session->season()) == after);
}

void SessionTest::manyEditsOfOneRowComeBackInOrder() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    std::vector<SeasonState> states{withoutVersions(session->season())};
    for (const char* title : {"A", "B", "C", "D"}) {
        QVERIFY(rename(*session, "league", title));
        states.push_back(withoutVersions(session->season()));
    }
    for (int round = 0; round < 3; ++round) {
        for (int i = 3; i >= 0; --i) {
            session->undoStack().undo();
            QVERIFY2(withoutVersions(session->season()) == states[size_t(i)], qPrintable(QString("undo to %1").arg(i)));
        }
        for (int i = 1; i <= 4; ++i) {
            session->undoStack().redo();
            QVERIFY2(withoutVersions(session->season()) == states[size_t(i)], qPrintable(QString("redo to %1").arg(i)));
        }
    }
}

void SessionTest::aRowThatIsMadeGoesAndComesBack() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    const SeasonState before = withoutVersions(session->season());
    Series made = seriesOf(*session, "league");
    made.id = {"new"};
    made.uid = "new";
    made.version = 0;
    QVERIFY(session->apply("Add", {RowChange<Series>{std::nullopt, made}}));
    QVERIFY(rename(*session, "new", "Other"));
    const SeasonState after = withoutVersions(session->season());
    for (int round = 0; round < 3; ++round) {
        session->undoStack().undo();
        session->undoStack().undo();
        QVERIFY(withoutVersions(session->season()) == before);
        session->undoStack().redo();
        session->undoStack().redo();
        QVERIFY(withoutVersions(session->season()) == after);
    }
}

void SessionTest::aConflictIsSaidAndLeavesTheStack() {
    support::Evening evening;
    const auto mine = support::sessionOn(evening);
    const auto theirs = support::sessionOn(evening);
    theirs->setPerson({"ben"});
    QSignalSpy problem(mine.get(), &Session::problem);
    QVERIFY(rename(*theirs, "league", "Theirs"));
    QVERIFY(!rename(*mine, "league", "Mine"));
    QCOMPARE(problem.size(), 1);
    QVERIFY(problem.front().front().toString().contains("Ben"));
    QCOMPARE(mine->undoStack().count(), 0);
    QCOMPARE(seriesOf(*mine, "league").title, QString("Theirs"));
}

void SessionTest::undoOverSomebodyElsesChangeIsRefused() {
    support::Evening evening;
    const auto mine = support::sessionOn(evening);
    QVERIFY(rename(*mine, "open", "Open"));
    QVERIFY(rename(*mine, "league", "Mine"));
    const auto theirs = support::sessionOn(evening);
    QVERIFY(rename(*theirs, "league", "Theirs"));
    QSignalSpy problem(mine.get(), &Session::problem);
    mine->undoStack().undo();
    QCOMPARE(problem.size(), 1);
    QCOMPARE(mine->undoStack().count(), 1);
    QCOMPARE(seriesOf(*mine, "league").title, QString("Theirs"));
    mine->undoStack().undo();
    QCOMPARE(seriesOf(*mine, "open").title, QString("Open play"));
}

namespace {

/// Another program that is in the middle of writing.
class Writer {
public:
    explicit Writer(const QString& path) : m_db(QSqlDatabase::addDatabase("QSQLITE", "writer")) {
        m_db.setDatabaseName(path);
        if (!m_db.open() || !QSqlQuery(m_db).exec("BEGIN IMMEDIATE")) qFatal("the writer cannot lock");
    }
    ~Writer() {
        release();
        m_db.close();
        m_db = {};
        QSqlDatabase::removeDatabase("writer");
    }
    void release() {
        if (m_held && !QSqlQuery(m_db).exec("ROLLBACK")) qFatal("the writer cannot let go");
        m_held = false;
    }

private:
    QSqlDatabase m_db;
    bool m_held = true;
};

}  // namespace

void SessionTest::aLockedDatabaseCanBeTriedAgain() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    QVERIFY(rename(*session, "league", "A"));
    QSignalSpy problem(session.get(), &Session::problem);
    Writer writer(evening.path());
    QVERIFY(!rename(*session, "league", "B"));
    QCOMPARE(problem.size(), 1);
    session->undoStack().undo();
    QCOMPARE(problem.size(), 2);
    QCoreApplication::processEvents();
    QCOMPARE(session->undoStack().index(), 1);
    QCOMPARE(seriesOf(*session, "league").title, QString("A"));
    writer.release();
    session->undoStack().undo();
    QCOMPARE(seriesOf(*session, "league").title, QString("Thursday Fours"));
    session->undoStack().redo();
    QCOMPARE(seriesOf(*session, "league").title, QString("A"));
    QVERIFY(rename(*session, "league", "B"));
}

void SessionTest::aReadOnlyFileRefusesEdits() {
    support::Evening evening;
    Session session(evening.store(Access::ReadOnly), evening.clock);
    session.setPerson({"ada"});
    QVERIFY(session.isReadOnly());
    QSignalSpy problem(&session, &Session::problem);
    QVERIFY(!rename(session, "league", "A"));
    QCOMPARE(problem.size(), 1);
    QCOMPARE(session.undoStack().count(), 0);
    QCOMPARE(session.planOf(session.today()).jobs.size(), size_t(1));
}

void SessionTest::thePersonIsAskedOnce() {
    support::Evening evening;
    Session session(evening.store(), evening.clock);
    QSignalSpy problem(&session, &Session::problem);
    int asked = 0;
    PersonId answer;
    session.setPersonChooser([&] {
        ++asked;
        return answer;
    });
    QVERIFY(!rename(session, "league", "A"));
    QCOMPARE(asked, 1);
    QCOMPARE(problem.size(), 1);
    answer = {"ben"};
    QVERIFY(rename(session, "league", "A"));
    QVERIFY(session.record("Note", {HandOver{{}, session.today(), session.now(), {}, "Pin 7 sticks", {}}}));
    QVERIFY(rename(session, "league", "B"));
    QCOMPARE(asked, 2);
    QCOMPARE(session.season().handOvers.front().person.value, QString("ben"));
}

void SessionTest::aSinglePersonIsNotAsked() {
    support::Evening evening;
    Session session(evening.store(), evening.clock);
    session.setPerson({"ada"});
    Person gone = session.season().centre.people[1];
    gone.active = false;
    QVERIFY(session.apply("Retire", {RowChange<Person>{session.season().centre.people[1], gone}}));
    Session alone(evening.store(), evening.clock);
    alone.setPersonChooser([]() -> PersonId { qFatal("asked"); });
    QVERIFY(rename(alone, "league", "A"));
    QCOMPARE(alone.person()->name, QString("Ada Fenwick"));
}

void SessionTest::recordsAreUndoneByCounterRecords() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    const SeasonState before = withoutVersions(session->season());
    const Job job = confirmedAs(session->planOf(session->today()).jobs.front(), {"j"}, 0, {"ada"});
    QVERIFY(session->perform({"Done", {RowChange<Job>{std::nullopt, job}}, {asPlanned(job, session->now())}}));
    QVERIFY(session->record("Spill", {Incident{{}, IncidentKind::Spill, session->now(), 3, {"m1"}, {}, "oil", {}}}));
    QVERIFY(session->record("Note", {HandOver{{}, session->today(), session->now(), {}, "Pin 7 sticks", {}}}));
    const SeasonState after = withoutVersions(session->season());
    QCOMPARE(after.runs.size(), size_t(1));
    QCOMPARE(session->planOf(session->today()).jobs.front().state, JobState::Done);
    for (int round = 0; round < 2; ++round) {
        for (int i = 0; i < 3; ++i)
            session->undoStack().undo();
        QVERIFY(withoutVersions(session->season()) == before);
        QCOMPARE(session->planOf(session->today()).jobs.front().state, JobState::Proposed);
        for (int i = 0; i < 3; ++i)
            session->undoStack().redo();
        const SeasonState again = withoutVersions(session->season());
        QVERIFY(again.runs == after.runs);
        QVERIFY(again.confirmed == after.confirmed);
        QCOMPARE(again.incidents.size(), size_t(1));
        QCOMPARE(again.handOvers.size(), size_t(1));
    }
}

void SessionTest::aReadingIsUndone() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    const MachineLevels before = session->planningState().levels.front();
    MachineLevels measured = before;
    measured.conditioner[0] = millilitres(300);
    measured.volts = Millivolts{24'100};
    QVERIFY(session->record("Reading", {LevelReading{{}, {}, measured, {}}}));
    QCOMPARE(session->planningState().levels.front().conditioner[0].value, millilitres(300).value);
    session->undoStack().undo();
    QVERIFY(session->planningState().levels.front() == before);
    session->undoStack().redo();
    QCOMPARE(session->planningState().levels.front().conditioner[0].value, millilitres(300).value);
}

void SessionTest::measurementsAreUndone() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    TapeReading tape{{}, session->now(), {}, {"m1"}, session->season().patterns.front().id, 0, 3, 0, feet(22), {}, {}, {}};
    tape.milliUnits[19] = 48'000;
    const Inspection inspection{{}, session->now(), {}, 3, {{GeometryFeature::Tilt, feet(20), Micrometres{300}}}, {}, {}};
    QVERIFY(session->record("Measured", {tape, inspection}));
    const auto tapes = [&] { return standing(*session->store().tapes(allRecords)).size(); };
    const auto inspections = [&] { return standing(*session->store().inspections(allRecords)).size(); };
    for (int round = 0; round < 2; ++round) {
        QVERIFY(tapes() == 1 && inspections() == 1);
        session->undoStack().undo();
        QVERIFY(tapes() == 0 && inspections() == 0);
        session->undoStack().redo();
    }
    QCOMPARE(session->store().tapes(allRecords)->front().person.value, QString("ada"));
}

void SessionTest::confirmingTheDayStoresTheVersion() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    QCOMPARE(session->confirmDay(session->today()), 1);
    QCOMPARE(session->confirmDay(session->today()), 1);
    QCOMPARE(session->undoStack().count(), 1);
    const Job& job = session->planOf(session->today()).jobs.front();
    QCOMPARE(job.state, JobState::Confirmed);
    QCOMPARE(job.planVersion, 1);
    QCOMPARE(job.person.value, QString("ada"));
    session->undoStack().undo();
    QCOMPARE(session->planOf(session->today()).jobs.front().state, JobState::Proposed);
}

void SessionTest::slippingPlansTonightAgain() {
    support::Evening evening;
    evening.clock.set(support::eveningNow - minutes(20));
    const auto session = support::sessionOn(evening);
    const SeasonState before = withoutVersions(session->season());
    const LocalTime original{QDate(2026, 11, 12), QTime(14, 0)};
    QVERIFY(session->slip({"open"}, original, minutes(20)));
    QVERIFY(session->slip({"open"}, original, minutes(20)));
    const auto& occurrences = session->occupancyOf({session->today(), session->today()}).occurrences;
    QCOMPARE(occurrences.front().booked.length().value, minutes(190).value);
    const Plan& plan = session->planOf(session->today());
    for (const Job& job : plan.jobs)
        QVERIFY(job.time.end <= occurrences.front().booked.begin || job.lanes.front().time.begin >= occurrences.front().cleared);
    session->undoStack().undo();
    session->undoStack().undo();
    QVERIFY(withoutVersions(session->season()) == before);
}

void SessionTest::slippingReleasesConfirmedJobsInTheWay() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    QCOMPARE(session->confirmDay(session->today()), 1);
    const Job confirmed = session->planOf(session->today()).jobs.front();
    // Open play goes on until the very minute at which the confirmed job works its lanes.
    const LocalTime original{QDate(2026, 11, 12), QTime(14, 0)};
    const Seconds by =
        confirmed.time.begin - session->occupancyOf({session->today(), session->today()}).occurrences.front().booked.end;
    QVERIFY(session->slip({"open"}, original, by));
    QVERIFY(session->season().confirmed.empty());
    for (const Job& job : session->planOf(session->today()).jobs)
        QCOMPARE(job.state, JobState::Proposed);
    session->undoStack().undo();
    QCOMPARE(session->season().confirmed.size(), size_t(1));
    QVERIFY(session->season().confirmed.front().time == confirmed.time);
}

void SessionTest::otherPcsAreNoticed() {
    support::Evening evening;
    const auto mine = support::sessionOn(evening);
    const auto theirs = support::sessionOn(evening);
    QSignalSpy changed(mine.get(), &Session::changed);
    mine->lookForOthers();
    QCOMPARE(changed.size(), 0);
    QVERIFY(rename(*theirs, "league", "Theirs"));
    mine->lookForOthers();
    QCOMPARE(changed.size(), 1);
    QCOMPARE(seriesOf(*mine, "league").title, QString("Theirs"));
}

void SessionTest::thePlanIsMadeAgainWhenItsStartHasPassed() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    const Instant start = session->planOf(session->today()).jobs.front().time.begin;
    QSignalSpy changed(session.get(), &Session::changed);
    evening.clock.set(start - minutes(2));
    session->tick();
    QCOMPARE(changed.size(), 0);
    evening.clock.set(start + minutes(3));
    session->tick();
    QCOMPARE(changed.size(), 1);
    QVERIFY(session->planOf(session->today()).jobs.front().time.begin >= start + minutes(3));
}

void SessionTest::theFirstPlanIsFollowedByTheSearch() {
    const HardEvening evening;
    Session& session = *evening.session;
    QSignalSpy planned(&session, &Session::planned);
    const Plan first = session.planAtOnce(support::day0);
    QVERIFY(!isLastWord(first));
    QVERIFY(session.isSearching());
    QTRY_VERIFY_WITH_TIMEOUT(!session.isSearching(), 60'000);
    const Plan last = evening.searched();
    QVERIFY(session.planAtOnce(support::day0) == last);
    QTRY_COMPARE(planned.size(), first == last ? 0 : 1);
    QVERIFY(&session.planOf(support::day0) == &session.planAtOnce(support::day0));
    QCoreApplication::processEvents();
    QVERIFY(!session.isSearching());
}

void SessionTest::whoWaitsGetsTheLastWord() {
    const HardEvening evening;
    Session& session = *evening.session;
    session.planAtOnce(support::day0);
    QVERIFY(session.isSearching());
    QVERIFY(session.planOf(support::day0) == evening.searched());
    QTRY_VERIFY(!session.isSearching());
    QVERIFY(session.planAtOnce(support::day0) == evening.searched());
}

void SessionTest::anEditEndsTheSearch() {
    const HardEvening evening;
    Session& session = *evening.session;
    session.planAtOnce(support::day0);
    QVERIFY(session.isSearching());
    QVERIFY(rename(session, session.season().series.front().id.value, "Renamed"));
    QVERIFY(!session.isSearching());
    session.planAtOnce(support::day0);
    QTRY_VERIFY_WITH_TIMEOUT(!session.isSearching(), 60'000);
    QVERIFY(session.planAtOnce(support::day0) == evening.searched());
}

QTEST_MAIN(SessionTest)
#include "tst_session.moc"
