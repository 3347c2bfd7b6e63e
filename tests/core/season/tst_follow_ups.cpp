// What still wants an answer: incidents and bad readings, until somebody says what was done.
#include "core/patterns/reading_compare.h"
#include "core/season/follow_ups.h"
#include "tests/support/hand_made.h"

#include <QTest>

using namespace laneward;
using namespace support;

namespace {

const Instant now = handAt(20, 0);

Incident spill(const QString& id, Instant at) {
    return {{id}, IncidentKind::Spill, at, 3, {"m1"}, {"ada"}, "Oil on the approach"};
}

Incident answer(const QString& id, const QString& to, Instant at) {
    Incident made = spill(id, at);
    made.text = "Wiped up";
    made.answers = OperationId{to};
    return made;
}

QStringList openIn(const std::vector<Incident>& incidents, const std::vector<TapeReading>& broken = {}) {
    SeasonState season = handSeason();
    season.incidents = incidents;
    QStringList ids;
    for (const FollowUp& open : openFollowUps(season, broken, now))
        ids += open.id.value;
    return ids;
}

/// `units` on every board at 10 ft, of a pattern that lays the same on each.
TapeReading reading(const QString& id, std::int64_t milliUnits) {
    TapeReading made;
    made.id = {id};
    made.at = handAt(18, 0);
    made.pattern = {"reed"};
    made.machine = {"m1"};
    made.lane = 5;
    made.distance = feet(10);
    made.milliUnits.fill(milliUnits);
    return made;
}

}  // namespace

class FollowUpsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void incidentsStayOpenUntilTheyAreAnswered();
    void answersAreNoIncidents();
    void takenBackAnswersOpenItAgain();
    void correctedIncidentsStayAnswered();
    void oldOnesRest();
    void theNewestComesFirst();
    void badReadingsWantAnAnswer();
    void onlyChecksThatCount();
    void theVersionThatWasRunIsJudged();
    void outagesOfALane();
};

void FollowUpsTest::incidentsStayOpenUntilTheyAreAnswered() {
    QCOMPARE(openIn({spill("a", handAt(17, 0))}), QStringList{"a"});
    QCOMPARE(openIn({spill("a", handAt(17, 0)), answer("b", "a", handAt(17, 20))}), QStringList{});
    QCOMPARE(openIn({spill("a", handAt(17, 0)), answer("b", "other", handAt(17, 20))}), QStringList{"a"});
}

void FollowUpsTest::answersAreNoIncidents() {
    const std::vector<Incident> incidents{spill("a", handAt(17, 0)), answer("c", "a", handAt(18, 0)),
                                          answer("b", "a", handAt(17, 20))};
    const std::vector<Incident> answers = answersTo(incidents, {"a"});
    QCOMPARE(answers.size(), size_t(2));
    QCOMPARE(answers.front().id.value, QString("b"));
    QVERIFY(answersTo(incidents, {"b"}).empty());
}

void FollowUpsTest::takenBackAnswersOpenItAgain() {
    Incident back = answer("c", "a", handAt(17, 30));
    back.corrects = OperationId{"b"};
    back.text.clear();
    QCOMPARE(openIn({spill("a", handAt(17, 0)), answer("b", "a", handAt(17, 20)), back}), QStringList{"a"});
}

void FollowUpsTest::correctedIncidentsStayAnswered() {
    Incident right = spill("c", handAt(17, 0));
    right.corrects = OperationId{"a"};
    right.text = "Oil on lane 4";
    QCOMPARE(openIn({spill("a", handAt(17, 0)), right}), QStringList{"c"});
    QCOMPARE(openIn({spill("a", handAt(17, 0)), answer("b", "a", handAt(17, 20)), right}), QStringList{});
}

void FollowUpsTest::oldOnesRest() {
    QCOMPARE(openIn({spill("a", now - hours(24 * followUpDays))}), QStringList{"a"});
    QCOMPARE(openIn({spill("a", now - hours(24 * followUpDays) - Seconds{1})}), QStringList{});
    QCOMPARE(openIn({spill("a", now + Seconds{1})}), QStringList{});
}

void FollowUpsTest::theNewestComesFirst() {
    QCOMPARE(openIn({spill("a", handAt(16, 0)), spill("b", handAt(18, 30))}, {reading("r", 0)}), QStringList({"b", "r", "a"}));
}

void FollowUpsTest::badReadingsWantAnAnswer() {
    SeasonState season = handSeason();
    season.centre.facts.readingLimits.lowestMilliUnits = 4'000;
    const std::vector<TapeReading> readings{reading("bad", 3'900), reading("good", 4'000)};
    const std::vector<TapeReading> broken = brokenReadings(readings, {}, season);
    QCOMPARE(broken.size(), size_t(1));
    const std::vector<FollowUp> open = openFollowUps(season, broken, now);
    QCOMPARE(open.size(), size_t(1));
    QVERIFY(open.front().isReading);
    QCOMPARE(open.front().lane, 5);
    QCOMPARE(open.front().text, QString("Reed 38"));
    QCOMPARE(openIn({answer("b", "bad", handAt(19, 0))}, broken), QStringList{});
    // A reading that was withdrawn is none.
    TapeReading withdrawn = reading("w", 0);
    withdrawn.milliUnits = {};
    withdrawn.corrects = OperationId{"bad"};
    QVERIFY(brokenReadings({readings[0], withdrawn}, {}, season).empty());
}

void FollowUpsTest::onlyChecksThatCount() {
    // Below three units everywhere: the published rule is suspended, and the centre asks nothing.
    QVERIFY(brokenReadings({reading("low", 1'000)}, {}, handSeason()).empty());
}

void FollowUpsTest::theVersionThatWasRunIsJudged() {
    SeasonState season = handSeason();
    season.centre.facts.readingLimits.largestErrorMilliUnits = 2'000;
    season.patterns[0].edition = 2;
    const double computed = compare(reading("x", 0), season.patterns[0], Micrometres{0}).computed[19];
    QVERIFY(computed > 5);  // else both readings below would hold
    TapeReading right = reading("right", std::int64_t(computed * 1'000));
    right.milliUnits[0] = right.milliUnits[38] = std::nullopt;  // dry
    right.patternVersion = 1;
    PatternVersion first{season.patterns[0], handAt(0, 0), {}};
    first.pattern.edition = 1;
    for (Stroke& stroke : first.pattern.strokes)
        stroke.laps *= 3;
    QCOMPARE(brokenReadings({right}, {first}, season).size(), size_t(1));
    right.patternVersion = 2;
    QVERIFY(brokenReadings({right}, {first, {season.patterns[0], handAt(1, 0), {}}}, season).empty());
    QVERIFY(brokenReadings({right}, {}, season).empty());  // the pattern as it is now says the same
}

void FollowUpsTest::outagesOfALane() {
    Centre centre = handSeason().centre;
    centre.outages = {{{"o"}, {3, 4}, {}, handAt(17, 0), handAt(21, 0), "Sticky", 0}};
    QVERIFY(outageOf(centre, 3, now));
    QVERIFY(!outageOf(centre, 5, now));
    QVERIFY(!outageOf(centre, 3, handAt(16, 59)));
    QVERIFY(!outageOf(centre, 3, handAt(21, 0)));
    centre.outages[0].end.reset();
    QVERIFY(outageOf(centre, 3, now + hours(9'999)));
}

QTEST_GUILESS_MAIN(FollowUpsTest)
#include "tst_follow_ups.moc"
