// The plan at once: where it says that it is the last word it is the searched plan; elsewhere it is honest about its gap.
#include "core/planning/plan_memo.h"
#include "tests/support/planning_builders.h"
#include "tests/support/random_evening.h"

#include <QTest>

using namespace support;

class TestFirstPlan : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theLastWordIsThePlan_data() {
        QTest::addColumn<EveningSize>("size");
        QTest::addColumn<unsigned>("seeds");
        QTest::newRow("small") << EveningSize{3, 1, 2} << 60U;
        QTest::newRow("usual") << EveningSize{6, 2, 3} << 30U;
        QTest::newRow("large") << EveningSize{12, 2, 3} << 20U;
    }

    void theLastWordIsThePlan() {
        QFETCH(EveningSize, size);
        QFETCH(unsigned, seeds);
        int lastWords = 0;
        int others = 0;
        for (unsigned seed = 1; seed <= seeds; ++seed) {
            const State state = randomEvening(seed, size);
            const PlanTask task{state, at(0, 6), {day0, day0}};
            PlanMemo memo;
            const Plan first = firstPlan(task, memo);
            PlanMemo searched;
            const Plan last = plan(task, searched);
            QVERIFY2(violationsOf(state, first).empty(), qPrintable(QString::number(seed)));
            QVERIFY(last.objective() <= first.objective());
            QVERIFY(first.days.front().bound <= last.objective());
            isLastWord(first) ? ++lastWords : ++others;
            if (isLastWord(first)) QVERIFY2(first == last, qPrintable(QString::number(seed)));
            // What was searched before is known at once, but for the remedies.
            Plan again = firstPlan(task, memo, &searched);
            QCOMPARE(again.unmet.size(), last.unmet.size());
            for (size_t i = 0; i < last.unmet.size(); ++i)
                again.unmet[i].remedies = last.unmet[i].remedies;
            QVERIFY2(again == last, qPrintable(QString::number(seed)));
        }
        qInfo("%d last words, %d other first plans", lastWords, others);
        QVERIFY(lastWords > 0 || size.runs > 6);
        QVERIFY(others > 0);
    }

    void nothingIsProvenOfWhatAsksForRemedies() {
        State state = house();
        state.series = {eventOf("early", 0, QTime(6, 30), 60, LaneSet::range(1, 8))};
        PlanMemo memo;
        const Plan first = firstPlan({state, at(0, 6), {day0, day0}}, memo);
        QVERIFY(!first.unmet.empty());
        QVERIFY(!isLastWord(first));
    }
};

QTEST_GUILESS_MAIN(TestFirstPlan)
#include "tst_first_plan.moc"
