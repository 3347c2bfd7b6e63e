// What a week takes, in words.
#include "core/documents/supply_words.h"

#include <QTest>

using namespace laneward;

class WeekWordsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// A median of nothing a week says nothing of a part that wears out twice a year.
    void partsThatAreRarelyNeeded() {
        const Speech speech{QLocale::c(), Zone(), UnitSystem::Metric};
        SupplyLine line;
        line.chancePerDay = 2.0 / 364;
        QCOMPARE(weekText(line, SupplyKind::Part, speech), QString("about 1 in 26 weeks"));
        line.chancePerDay = 1.0 / 8;
        QCOMPARE(weekText(line, SupplyKind::Part, speech), QString("about 1"));
        line.chancePerDay = 1.0 / 1'000;
        QCOMPARE(weekText(line, SupplyKind::Pack, speech), QString("under 1 in 2 years"));
        line.chancePerDay = 0;
        QCOMPARE(weekText(line, SupplyKind::Part, speech), QString("0"));
        line.chancePerDay = 0.5;
        line.aWeek = {3};
        QCOMPARE(weekText(line, SupplyKind::Part, speech), QString("3"));
        line.aWeek = {1'900'000};
        QCOMPARE(weekText(line, SupplyKind::Conditioner, speech), QString("1.9 L"));
    }
};

QTEST_GUILESS_MAIN(WeekWordsTest)
#include "tst_week_words.moc"
