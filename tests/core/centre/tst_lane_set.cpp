// Sets of lanes as people write them.
#include "core/centre/lane_set.h"
#include "core/centre/treatment.h"

#include <QTest>

using namespace laneward;

class TestLaneSet : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void reads_data();
    void reads();
    void refuses_data();
    void refuses();
    void combines();
    void emptySetHasNoEnds();
    void knowsPairPartners();
    void treatmentsCompare();
};

void TestLaneSet::reads_data() {
    QTest::addColumn<QString>("written");
    QTest::addColumn<QString>("read");
    QTest::newRow("range") << "1-12"
                           << "1-12";
    QTest::newRow("mixed") << "1-4, 7; 9 -10"
                           << "1-4, 7, 9-10";
    QTest::newRow("unordered") << "9,3,4"
                               << "3-4, 9";
    QTest::newRow("overlapping") << "1-5 3-8"
                                 << "1-8";
    QTest::newRow("en dash") << QString::fromUtf8("5–6") << "5-6";
    QTest::newRow("nothing") << ""
                             << "";
    QTest::newRow("last lane") << "200"
                               << "200";
}

void TestLaneSet::reads() {
    QFETCH(QString, written);
    QFETCH(QString, read);
    const Result<LaneSet> set = LaneSet::parse(written);
    QVERIFY(bool(set));
    QCOMPARE(set->text(), read);
    QVERIFY(*LaneSet::parse(set->text()) == *set);
}

void TestLaneSet::refuses_data() {
    QTest::addColumn<QString>("written");
    QTest::addColumn<QByteArray>("rule");
    QTest::newRow("word") << "all" << QByteArray("lanes.unreadable");
    QTest::newRow("negative") << "-3" << QByteArray("lanes.unreadable");
    QTest::newRow("zero") << "0" << QByteArray("lanes.out-of-range");
    QTest::newRow("too high") << "201" << QByteArray("lanes.out-of-range");
    QTest::newRow("backwards") << "9-3" << QByteArray("lanes.out-of-range");
    QTest::newRow("huge") << "1-99999999999" << QByteArray("lanes.unreadable");
}

void TestLaneSet::refuses() {
    QFETCH(QString, written);
    QFETCH(QByteArray, rule);
    const Result<LaneSet> set = LaneSet::parse(written);
    QVERIFY(!set);
    QCOMPARE(set.error().finding.rule, rule);
}

void TestLaneSet::combines() {
    const LaneSet a = LaneSet::range(1, 4);
    const LaneSet b{3, 4, 5};
    QCOMPARE((a | b).text(), QStringLiteral("1-5"));
    QCOMPARE((a & b).text(), QStringLiteral("3-4"));
    QCOMPARE((a - b).text(), QStringLiteral("1-2"));
    QVERIFY(a.intersects(b));
    QVERIFY(!a.isSubsetOf(b));
    QVERIFY((a & b).isSubsetOf(a));
    LaneSet c = a;
    c.remove(1);
    c.insert(0);
    c.insert(201);
    QCOMPARE(c.count(), 3);
    QVERIFY(!c.contains(201));
    QCOMPARE(c.lanes(), (std::vector<int>{2, 3, 4}));
    QCOMPARE(c.first(), 2);
    QCOMPARE(c.last(), 4);
}

void TestLaneSet::emptySetHasNoEnds() {
    QCOMPARE(LaneSet().first(), 0);
    QCOMPARE(LaneSet().last(), 0);
    QVERIFY(LaneSet().isEmpty());
}

void TestLaneSet::knowsPairPartners() {
    QCOMPARE(pairPartner(1), 2);
    QCOMPARE(pairPartner(2), 1);
    QCOMPARE(pairPartner(23), 24);
}

void TestLaneSet::treatmentsCompare() {
    QVERIFY(isAtLeast(Treatment::CleanAndCondition, Treatment::ConditionOnly));
    QVERIFY(isAtLeast(Treatment::CleanAndCondition, Treatment::CleanOnly));
    QVERIFY(!isAtLeast(Treatment::ConditionOnly, Treatment::CleanAndCondition));
    QVERIFY(!isAtLeast(Treatment::CleanOnly, Treatment::ConditionOnly));
    QVERIFY(cleans(Treatment::CleanOnly) && !cleans(Treatment::ConditionOnly));
    QVERIFY(conditions(Treatment::ConditionOnly) && !conditions(Treatment::CleanOnly));
}

QTEST_GUILESS_MAIN(TestLaneSet)
#include "tst_lane_set.moc"
