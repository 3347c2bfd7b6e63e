// Shifts, days and faults of a centre.
#include "core/centre/centre.h"

#include <QTest>

#include <functional>

using namespace laneward;

namespace {

Centre soundCentre() {
    Centre centre;
    centre.facts = {CentreId{"c"}, "Alder Bowl", "Europe/Berlin", 12, {}, 0};
    centre.machines = {Machine{MachineId{"m1"}, "Otter"}};
    centre.people = {Person{PersonId{"p1"}, "Ada"}};
    centre.shifts = {Shift{ShiftId{"s1"}, "Evening"}};
    return centre;
}

}  // namespace

class TestCentre : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void dayRunsFromItsBeginning();
    void shiftCrossesMidnight();
    void exceptionsWin();
    void soundCentreHasNoFault();
    void findsFaults_data();
    void findsFaults();
    void findsRows();
};

void TestCentre::dayRunsFromItsBeginning() {
    const Centre centre = soundCentre();
    const Span spring = dayOf(centre, QDate(2026, 3, 28));  // the night of the change to summer time
    QCOMPARE(spring.length().value, 23 * 3600);
    const Zone zone = zoneOf(centre);
    QCOMPARE(dateOf(centre, zone.toInstant({QDate(2026, 6, 2), QTime(1, 0)})), QDate(2026, 6, 1));
    QCOMPARE(dateOf(centre, zone.toInstant({QDate(2026, 6, 2), QTime(5, 0)})), QDate(2026, 6, 2));
}

void TestCentre::shiftCrossesMidnight() {
    Centre centre = soundCentre();
    centre.shifts[0].begin = QTime(18, 0);
    centre.shifts[0].end = QTime(2, 0);
    const std::vector<ShiftSpan> spans = shiftsOn(centre, QDate(2026, 6, 1));
    QCOMPARE(spans.size(), size_t{1});
    QCOMPARE(spans[0].work.length().value, 8 * 3600);
    QCOMPARE(spans[0].allowance.length().value, 10 * 3600);
}

void TestCentre::exceptionsWin() {
    Centre centre = soundCentre();
    centre.shifts[0].weekdays = 1;  // Mondays
    centre.shifts[0].daysOff = {QDate(2026, 6, 8)};
    centre.shifts[0].extraDays = {QDate(2026, 6, 9)};
    QCOMPARE(shiftsOn(centre, QDate(2026, 6, 1)).size(), size_t{1});
    QCOMPARE(shiftsOn(centre, QDate(2026, 6, 2)).size(), size_t{0});
    QCOMPARE(shiftsOn(centre, QDate(2026, 6, 8)).size(), size_t{0});
    QCOMPARE(shiftsOn(centre, QDate(2026, 6, 9)).size(), size_t{1});
}

void TestCentre::soundCentreHasNoFault() { QVERIFY(faultsOf(soundCentre()).empty()); }

void TestCentre::findsFaults_data() {
    QTest::addColumn<std::function<void(Centre&)>>("spoil");
    QTest::addColumn<QByteArray>("rule");
    const auto row = [](const char* rule, std::function<void(Centre&)> spoil) {
        QTest::newRow(rule) << spoil << QByteArray(rule);
    };
    row("centre.lane-count", [](Centre& c) { c.facts.lanes = 201; });
    row("centre.no-name", [](Centre& c) { c.facts.name = " "; });
    row("centre.no-id", [](Centre& c) { c.facts.id = {}; });
    row("zone.unknown", [](Centre& c) { c.facts.zone = "Mars/Olympus"; });
    row("centre.setting-time", [](Centre& c) { c.facts.settings.reserve = Seconds{-1}; });
    row("centre.day-begins", [](Centre& c) { c.facts.settings.dayBegins = QTime(); });
    row("centre.id-twice", [](Centre& c) { c.people.push_back({PersonId{"p1"}, "Bo"}); });
    row("centre.name-twice", [](Centre& c) { c.people.push_back({PersonId{"p2"}, "Ada"}); });
    row("centre.name-too-long", [](Centre& c) { c.people[0].name = QString(201, 'x'); });
    row("machine.times", [](Centre& c) { c.machines[0].times.lane[1] = Seconds{0}; });
    row("machine.capacity", [](Centre& c) { c.machines[0].capacity.waste = Microlitres{1}; });
    row("centre.reading-limits", [](Centre& c) { c.facts.readingLimits = {{}, {}, 2'001, 2'000}; });
    row("machine.carry", [](Centre& c) { c.machines[0].carryLength = longestCarry + Micrometres{1}; });
    row("machine.weight", [](Centre& c) { c.machines[0].weight = Grams{0}; });
    row("machine.weight", [](Centre& c) { c.machines[0].weight = heaviestMachine + Grams{1}; });
    row("machine.volts", [](Centre& c) { c.machines[0].attachSpareAt = Millivolts{30'000}; });
    row("shift.no-time", [](Centre& c) { c.shifts[0].begin = QTime(); });
    row("shift.people", [](Centre& c) { c.shifts[0].people = -1; });
    row("shift.overtime", [](Centre& c) { c.shifts[0].overtimeAfter = hours(13); });
    row("outage.end-before-begin", [](Centre& c) { c.outages = {{OutageId{"o"}, {1}, {}, {10}, Instant{5}}}; });
    row("outage.lane-unknown", [](Centre& c) { c.outages = {{OutageId{"o"}, {13}, {}, {10}, {}}}; });
    row("outage.machine-unknown", [](Centre& c) { c.outages = {{OutageId{"o"}, {}, MachineId{"m9"}, {10}, {}}}; });
}

void TestCentre::findsFaults() {
    QFETCH(std::function<void(Centre&)>, spoil);
    QFETCH(QByteArray, rule);
    Centre centre = soundCentre();
    spoil(centre);
    const std::vector<Finding> faults = faultsOf(centre);
    QCOMPARE(faults.size(), size_t{1});
    QCOMPARE(faults[0].rule, rule);
    QCOMPARE(faults[0].severity, Severity::Fault);
}

void TestCentre::findsRows() {
    const Centre centre = soundCentre();
    QVERIFY(findMachine(centre, MachineId{"m1"}));
    QVERIFY(!findMachine(centre, MachineId{"m2"}));
    QVERIFY(findPerson(centre, PersonId{"p1"}));
    QCOMPARE(allLanes(centre).text(), QStringLiteral("1-12"));
}

QTEST_GUILESS_MAIN(TestCentre)
#include "tst_centre.moc"
