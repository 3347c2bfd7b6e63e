// When duties fall due. Values by hand.
#include "core/service/due_dates.h"

#include <QTest>

using namespace laneward;

namespace {

const QDate today(2026, 11, 26);

/// So many lanes a day: `much`, `expected` and `little`, for 100 days; a run for every ten.
WorkAhead lanesADay(double much, double expected, double little) {
    WorkAhead ahead{{"heron"}, today, {}};
    for (int day = 1; day <= 100; ++day) {
        ahead.reached[size_t(MeterKind::Lanes)].push_back({much * day, expected * day, little * day});
        ahead.reached[size_t(MeterKind::Runs)].push_back({much * day / 10, expected * day / 10, little * day / 10});
    }
    return ahead;
}

Duty duty(std::vector<Trigger> triggers) {
    Duty made;
    made.id = {"turn"};
    made.name = "Turn it";
    made.triggers = std::move(triggers);
    return made;
}

LastDone doneOn(QDate day, std::int64_t lanes) { return {{}, day, {lanes, lanes / 10, {}, {}}}; }

bool has(const std::vector<Finding>& faults, const char* rule) {
    return std::any_of(faults.begin(), faults.end(), [&](const Finding& f) { return f.rule == rule; });
}

}  // namespace

class DueDatesTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void byWork();
    void whicheverComesFirst();
    void overdue();
    void neverDone();
    void fixedDates();
    void beyondWhatIsAhead();
    void lanesForPlanning();
    void whatCannotBe();
};

void DueDatesTest::byWork() {
    const WorkAhead ahead = lanesADay(30, 20, 12.5);
    const DueRange due =
        dueOf(duty({{MeterKind::Lanes, 1'000}}), doneOn(today.addDays(-10), 5'000), {{5'400, 540, {}, {}}, &ahead, today});
    // 600 are left: on the 20th, 30th and 48th day.
    QCOMPARE(*due.early, today.addDays(19));
    QCOMPARE(*due.likely, today.addDays(29));
    QCOMPARE(*due.late, today.addDays(47));
    QCOMPARE(due.left, 600);
    QCOMPARE(due.used, 0.4);
    QCOMPARE(due.by, MeterKind::Lanes);
    QVERIFY(!due.isDue(today.addDays(28)) && due.isDue(today.addDays(29)));
}

void DueDatesTest::whicheverComesFirst() {
    const WorkAhead ahead = lanesADay(30, 20, 12.5);
    const DueQuestion question{{5'400, 540, {}, {}}, &ahead, today};
    const LastDone last = doneOn(today.addDays(-10), 5'000);
    const DueRange due = dueOf(duty({{MeterKind::Lanes, 1'000}, {MeterKind::Days, 35}}), last, question);
    QCOMPARE(*due.early, today.addDays(19));
    QCOMPARE(*due.likely, today.addDays(25));  // the calendar
    QCOMPARE(*due.late, today.addDays(25));
    const DueRange runs = dueOf(duty({{MeterKind::Lanes, 1'000}, {MeterKind::Runs, 50}}), last, question);
    QCOMPARE(runs.by, MeterKind::Runs);  // 40 of 50 are over
    QCOMPARE(*runs.likely, today.addDays(4));
}

void DueDatesTest::overdue() {
    const WorkAhead ahead = lanesADay(30, 20, 12.5);
    const DueRange due =
        dueOf(duty({{MeterKind::Lanes, 300}}), doneOn(today.addDays(-10), 5'000), {{5'400, 540, {}, {}}, &ahead, today});
    QVERIFY(due.early == today && due.likely == today && due.late == today);
    QCOMPARE(due.left, -100);
    QVERIFY(due.used > 1.33 && due.used < 1.34);
}

void DueDatesTest::neverDone() {
    const DueRange days = dueOf(duty({{MeterKind::Days, 90}}), {}, {{}, nullptr, today});
    QVERIFY(days.neverDone && days.isDue(today));
    const WorkAhead ahead = lanesADay(30, 20, 12.5);
    const DueRange lanes = dueOf(duty({{MeterKind::Lanes, 1'000}}), {}, {{400, 40, {}, {}}, &ahead, today});
    QVERIFY(lanes.neverDone);
    QCOMPARE(lanes.left, 600);  // as if new at nothing
}

void DueDatesTest::fixedDates() {
    Duty yearly = duty({});
    yearly.dates = {QDate(2026, 9, 1), QDate(2027, 9, 1)};
    QVERIFY(dueOf(yearly, doneOn(QDate(2026, 8, 1), 0), {{}, nullptr, today}).isDue(today));
    const DueRange next = dueOf(yearly, doneOn(QDate(2026, 9, 3), 0), {{}, nullptr, today});
    QCOMPARE(*next.likely, QDate(2027, 9, 1));
    QVERIFY(!dueOf(yearly, doneOn(QDate(2026, 9, 3), 0), {{}, nullptr, today, 100}).likely);
}

void DueDatesTest::beyondWhatIsAhead() {
    const WorkAhead ahead = lanesADay(30, 20, 12.5);
    const DueRange due = dueOf(duty({{MeterKind::Lanes, 2'500}}), doneOn(today, 0), {{}, &ahead, today});
    QCOMPARE(*due.early, today.addDays(83));
    QVERIFY(!due.likely && !due.late);
}

void DueDatesTest::lanesForPlanning() {
    const Duty both = duty({{MeterKind::Days, 30}, {MeterKind::Lanes, 1'000}});
    QCOMPARE(*lanesLeft(both, doneOn(today, 5'000), {5'400, 0, {}, {}}), 600);
    QVERIFY(!lanesLeft(duty({{MeterKind::Days, 30}}), {}, {}));
}

void DueDatesTest::whatCannotBe() {
    ServiceItem item;
    item.name = "Cushion brush";
    item.machine = {"heron"};
    item.duties = {duty({{MeterKind::Lanes, 1'000}})};
    QVERIFY(faultsOf(item, "GBP").empty());
    item.machine = {};
    QVERIFY(has(faultsOf(item, "GBP"), "service.no-meter"));
    item.machine = {"heron"};
    item.duties.push_back(item.duties.front());
    QVERIFY(has(faultsOf(item, "GBP"), "service.duty-twice"));
    item.duties = {duty({})};
    QVERIFY(has(faultsOf(item, "GBP"), "service.never-due"));
    item.duties = {duty({{MeterKind::Lanes, 0}, {MeterKind::Lanes, 5}})};
    QVERIFY(has(faultsOf(item, "GBP"), "service.interval") && has(faultsOf(item, "GBP"), "service.meter-twice"));
    item.duties = {duty({{MeterKind::Lanes, 10}})};
    item.duties.front().planned = {500, "EUR"};
    item.duties.front().parts = {{{}, {1}}};
    QVERIFY(has(faultsOf(item, "GBP"), "price.currency") && has(faultsOf(item, "GBP"), "service.part"));

    ServiceRecord record;
    record.item = item.id;
    record.at = {100};
    QVERIFY(has(faultsOf(record, nullptr, {200}), "service.unknown-item"));
    QVERIFY(has(faultsOf(record, &item, {200}), "service.says-nothing"));
    QVERIFY(has(faultsOf(record, &item, {50}), "service.in-future"));
    record.duty = {"other"};
    QVERIFY(has(faultsOf(record, &item, {200}), "service.unknown-duty"));
    record.duty = {"turn"};
    QVERIFY(faultsOf(record, &item, {200}).empty());
}

QTEST_GUILESS_MAIN(DueDatesTest)
#include "tst_due_dates.moc"
