// Quantities, spans, results and ids.
#include "core/base/clock.h"
#include "core/base/dates.h"
#include "core/base/ids.h"
#include "core/base/result.h"

#include <QTest>

using namespace laneward;

class TestValues : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void countsInBaseUnits();
    void spansAreHalfOpen();
    void resultHoldsValueOrError();
    void idsOrderByCodePoint();
    void rangesCountDays();
    void clockStandsStill();
};

void TestValues::countsInBaseUnits() {
    QCOMPARE(feet(40).value, 12'192'000);  // 40 ft = 12.192 m, from 1 ft = 0.3048 m exactly (16 CFR 500.19)
    QCOMPARE((millilitres(2) * 3 - Microlitres{1}).value, 5'999);
    QVERIFY(minutes(61) > hours(1));
    Seconds s = minutes(1);
    s += Seconds{5};
    s -= Seconds{2};
    QCOMPARE((-s).value, -63);
    QCOMPARE((Instant{100} - Instant{40}).value, 60);
}

void TestValues::spansAreHalfOpen() {
    const Span a{{0}, {10}};
    QVERIFY(a.contains({0}));
    QVERIFY(!a.contains({10}));
    QVERIFY(!a.overlaps({{10}, {20}}));
    QVERIFY(a.overlaps({{9}, {20}}));
    QCOMPARE(a.length().value, 10);
    QVERIFY((Span{{5}, {5}}).isEmpty());
}

void TestValues::resultHoldsValueOrError() {
    const Result<int> good = 7;
    QVERIFY(bool(good));
    QCOMPARE(*good, 7);
    const Result<int> bad = fault(ErrorKind::Refused, "some.rule", "subject", {std::int64_t{3}});
    QVERIFY(!bad);
    QCOMPARE(bad.error().kind, ErrorKind::Refused);
    QCOMPARE(bad.error().finding.subject, QStringLiteral("subject"));
}

void TestValues::idsOrderByCodePoint() {
    QVERIFY(MachineId{"B"} < MachineId{"a"});
    QVERIFY(MachineId{"a"} == MachineId{"a"});
    QVERIFY(MachineId{}.isEmpty());
    QCOMPARE(qHash(MachineId{"a"}), qHash(QStringLiteral("a")));
}

void TestValues::rangesCountDays() {
    const DateRange week{QDate(2026, 12, 28), QDate(2027, 1, 3)};
    QCOMPARE(week.days(), 7);
    QVERIFY(week.contains(QDate(2027, 1, 3)));
    QVERIFY(!week.contains(QDate(2027, 1, 4)));
    QCOMPARE((DateRange{QDate(2026, 1, 2), QDate(2026, 1, 1)}).days(), 0);
}

void TestValues::clockStandsStill() {
    FixedClock clock({5});
    QCOMPARE(clock.now().seconds, 5);
    clock.set({9});
    QCOMPARE(clock.now().seconds, 9);
    QVERIFY(SystemClock().now() > (Instant{1'700'000'000}));
}

QTEST_GUILESS_MAIN(TestValues)
#include "tst_values.moc"
