#include "core/planning/fewest.h"
#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

namespace {

Fewest fewestFor(const State& s, Instant now = at(0, 6), int days = 1) {
    const DateRange range{day0, day0.addDays(days - 1)};
    const Occupancy occupancy = occupancyOf(s.series, s.centre, {day0.addDays(-1), range.last});
    return fewestTreatments(s, demandsOf(s, occupancy, now, range), occupancy, now);
}

}  // namespace

class TestFewest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void oneTreatmentServesMany() {
        State s = house(1);
        s.series = {eventOf("a", 0, {10, 0}, 60, {1}), eventOf("b", 0, {13, 0}, 60, {1}), eventOf("c", 0, {18, 0}, 60, {1})};
        s.series[1].demands[0].kind = DemandKind::Recent;
        s.series[2].demands[0].kind = DemandKind::Pattern;
        const Fewest f = fewestFor(s);
        QCOMPARE(f.treatments, 1);
        QCOMPARE(f.unmet, 0);
        QCOMPARE(f.chosen.front().gap, size_t(0));
        QCOMPARE(f.chosen.front().serves.size(), size_t(3));
    }

    void latestAmongEquals() {
        State s = house(1);
        s.series = {eventOf("a", 0, {10, 0}, 60, {1}), eventOf("b", 0, {18, 0}, 60, {1})};
        s.series[0].demands[0].kind = DemandKind::AsItIs;
        s.series[1].demands[0].kind = DemandKind::Pattern;
        QCOMPARE(fewestFor(s).chosen.front().gap, size_t(1));
    }

    void historyMaySaveIt() {
        State s = house(1);
        s.series = {eventOf("a", 0, {10, 0}, 60, {1})};
        s.series[0].demands[0].kind = DemandKind::Recent;
        lastTreated(s, {1}, at(0, 1));
        QCOMPARE(fewestFor(s).treatments, 0);
        s.history[0].end = at(-1, 21);
        QCOMPARE(fewestFor(s).treatments, 1);
    }

    void playBeforeNowCounts() {
        State s = house(1);
        s.series = {eventOf("a", -1, {19, 0}, 181, {1}), eventOf("b", 0, {8, 0}, 60, {1})};
        s.series[1].demands[0].kind = DemandKind::Recent;
        s.series[1].demands[0].longestAge = hours(24);
        lastTreated(s, {1}, at(-1, 18));
        QCOMPARE(fewestFor(s).treatments, 1);
        s.series[0].duration = minutes(180);
        QCOMPARE(fewestFor(s).treatments, 0);
    }

    void conditionOnlyNeedsItsPattern() {
        State s = house(1);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1})};
        s.series[0].demands[0].least = Treatment::ConditionOnly;
        lastTreated(s, {1}, at(-1, 10), "p1");
        QCOMPARE(fewestFor(s).chosen.front().treatment, Treatment::ConditionOnly);
        s.history[0].pattern = PatternId{"p2"};
        QCOMPARE(fewestFor(s).chosen.front().treatment, Treatment::CleanAndCondition);
        s.centre.machines[0].bars.treatments = {Treatment::CleanAndCondition};
        QCOMPARE(fewestFor(s).unmet, 1);
    }

    void neverUndoesAnother() {
        // Play follows at once on b, which needs the pattern that is there: freshening a with another pattern would only trade.
        State s = house(1);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1}), eventOf("b", 0, {19, 0}, 60, {1})};
        s.series[0].clearing = Seconds{0};
        s.series[0].demands[0].pattern = PatternId{"p2"};
        s.series[1].demands[0].kind = DemandKind::Pattern;
        lastTreated(s, {1}, at(-1, 10), "p1");
        const Fewest f = fewestFor(s);
        QCOMPARE(f.unmet, 1);
        QCOMPARE(f.treatments, 0);
    }

    void aGapTooShortIsNone() {
        State s = house(1);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1}), eventOf("b", 0, {19, 11}, 60, {1})};
        QCOMPARE(fewestFor(s).unmet, 1);
        s.series[1].start.time = QTime(19, 11, 40);
        QCOMPARE(fewestFor(s).unmet, 0);
    }

    void strippedTakesOneMore() {
        State s = house(1);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1})};
        s.series[0].demands.push_back(asks(DemandKind::Stripped, {1}, nullptr));
        QCOMPARE(fewestFor(s).treatments, 2);
        s.series.push_back(eventOf("b", 1, {10, 0}, 60, {1}));
        QCOMPARE(fewestFor(s, at(0, 6), 2).treatments, 3);
    }

    void unknownPatternIsUnmet() {
        State s = house(1);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1})};
        s.series[0].demands[0].pattern = PatternId{"gone"};
        QCOMPARE(fewestFor(s).unmet, 1);
        QCOMPARE(fewestFor(s).treatments, 0);
    }

    void committedTreatmentsCount() {
        State s = house(1);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1})};
        Job job;
        job.state = JobState::Confirmed;
        job.machine = {"m1"};
        job.pattern = PatternId{"p1"};
        job.lanes = {{1, {at(0, 17), at(0, 17, 2)}}};
        s.committed = {job};
        QCOMPARE(fewestFor(s).treatments, 0);
        s.committed[0].state = JobState::Dropped;
        QCOMPARE(fewestFor(s).treatments, 1);
    }
};

QTEST_GUILESS_MAIN(TestFewest)
#include "tst_fewest.moc"
