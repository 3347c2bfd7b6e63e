// What falls due in a small house with a plan, where it fits, and what planning is told. Values by hand.
#include "core/season/service_difference.h"
#include "core/season/service_visits.h"
#include "tests/support/planning_builders.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace laneward;
using namespace support;

namespace {

const MachineId m1{"m1"};
const SupplyId brush{"brush"};

Duty duty(const QString& id, MeterKind meter, std::int64_t every, int minutes = 20, bool opensUp = true) {
    Duty made;
    made.id = {id};
    made.name = id;
    made.triggers = {{meter, every}};
    made.minutes = minutes;
    made.opensUp = opensUp;
    return made;
}

ServiceItem item(const QString& id, std::vector<Duty> duties, const MachineId& machine = m1) {
    return {{id}, machine, ItemKind::CushionBrush, "Item " + id, std::move(duties), {}, false, 1};
}

ServiceRecord doneAt(const char* id, Instant at, const QString& itemId, const QString& dutyId, const Meters& meters) {
    ServiceRecord record;
    record.id = {id};
    record.at = at;
    record.item = {itemId};
    record.duty = {dutyId};
    record.meters = meters;
    return record;
}

/// Eight lanes are treated for 18:00 on each of 20 days.
SeasonState season() {
    const State made = house();
    SeasonState state;
    state.centre = made.centre;
    state.patterns = made.patterns;
    for (int day = 0; day < 20; ++day)
        state.series.push_back(eventOf(QString("e%1").arg(day), day, {18, 0}, 120, LaneSet::range(1, 8)));
    return state;
}

Plan planOf(const SeasonState& state, Instant now, int days = 20) {
    return plan(planningState(state, now), now, {day0, day0.addDays(days - 1)});
}

const DutyDue& dueOf(const ServiceOutlook& outlook, const QString& id) {
    return *std::find_if(outlook.due.begin(), outlook.due.end(), [&](const DutyDue& d) { return d.duty.value == id; });
}

const ServiceVisit* visitFor(const ServiceOutlook& outlook, const QString& id) {
    for (const ServiceVisit& visit : outlook.visits)
        if (std::any_of(visit.duties.begin(), visit.duties.end(), [&](const DutyId& d) { return d.value == id; })) return &visit;
    return nullptr;
}

}  // namespace

class ServiceOutlookTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void dueByThePlan();
    void aDayWithoutPlayMovesIt();
    void metersFollowRunsAndCorrections();
    void visitBeforeTheDaysOuting();
    void dueSoonJoins();
    void noShiftNoVisit();
    void partsAreReserved();
    void partsAreNeededWhenDue();
    void partsFollowAPlainCount();
    void planningIsTold();
    void retiredItemsAreQuiet();
    void freeTimeIsWhereSomebodyIs();
};

void ServiceOutlookTest::dueByThePlan() {
    SeasonState state = season();
    state.items = {item("a", {duty("turn", MeterKind::Lanes, 100)})};
    state.services = {doneAt("s1", at(-1, 12), "a", "turn", {})};
    const Plan ahead = planOf(state, at(0, 9));
    const ServiceOutlook outlook = serviceOutlook({state, ahead, at(0, 9)}, {});
    const DueRange& due = dueOf(outlook, "turn").due;
    // 8 lanes a day and now and then some more: 100 are reached on the 13th day of the plan alone.
    QVERIFY(*due.early <= *due.likely && *due.likely <= *due.late);
    QVERIFY2(*due.likely >= day0.addDays(11) && *due.likely <= day0.addDays(12), qPrintable(due.likely->toString(Qt::ISODate)));
    QVERIFY(*due.late <= day0.addDays(13));
    QCOMPARE(due.left, 100);
}

void ServiceOutlookTest::aDayWithoutPlayMovesIt() {
    SeasonState state = season();
    state.items = {item("a", {duty("turn", MeterKind::Lanes, 100)})};
    state.services = {doneAt("s1", at(-1, 12), "a", "turn", {})};
    const QDate before = *dueOf(serviceOutlook({state, planOf(state, at(0, 9)), at(0, 9)}, {}), "turn").due.likely;
    state.series.erase(state.series.begin() + 2, state.series.begin() + 5);
    const QDate after = *dueOf(serviceOutlook({state, planOf(state, at(0, 9)), at(0, 9)}, {}), "turn").due.likely;
    QVERIFY(after >= before.addDays(2) && after <= before.addDays(4));
    ServiceOutlook now, then;
    now.due = {{{"a"}, {"turn"}, m1, {{}, before, {}}, {}}, {{"a"}, {"clean"}, m1, {{}, before, {}}, {}}};
    then.due = {{{"a"}, {"clean"}, m1, {{}, before, {}}, {}}, {{"a"}, {"turn"}, m1, {{}, after, {}}, {}}};
    QCOMPARE(serviceDifference(now, then), (std::vector<DutyShift>{{{"a"}, {"turn"}, before, after}}));
}

void ServiceOutlookTest::metersFollowRunsAndCorrections() {
    SeasonState state = season();
    RunLog run;
    run.id = {"r1"};
    run.machine = m1;
    run.time = {at(-1, 17), at(-1, 18)};
    run.lanes = {{1, {at(-1, 17), at(-1, 17, 2)}}, {2, {at(-1, 17, 3), at(-1, 17, 5)}}};
    run.use.laneRuns = 3;  // the first pair's first lane twice
    run.use.conditioner[0] = millilitres(20);
    state.runs = {run};
    state.workBefore = {{m1, at(-40, 0), {1'000, 100, minutes(2'000), millilitres(30'000)}}};
    QCOMPARE(metersNow(state, m1, at(0, 9)), (Meters{1'003, 101, minutes(2'005), millilitres(30'020)}));
    RunLog gone = run;
    gone.id = {"r2"};
    gone.corrects = run.id;
    gone.result = RunResult::Void;
    state.runs.push_back(gone);
    QCOMPARE(metersNow(state, m1, at(0, 9)).lanes, 1'000);
}

void ServiceOutlookTest::visitBeforeTheDaysOuting() {
    SeasonState state = season();
    state.items = {item("a", {duty("clean", MeterKind::Days, 5, 30)})};
    state.services = {doneAt("s1", at(-1, 12), "a", "clean", {})};
    const Plan ahead = planOf(state, at(0, 9));
    const ServiceOutlook outlook = serviceOutlook({state, ahead, at(0, 9)}, {});
    QCOMPARE(*dueOf(outlook, "clean").due.likely, day0.addDays(4));
    QCOMPARE(outlook.visits.size(), size_t(1));
    const ServiceVisit& visit = outlook.visits.front();
    const auto outing = std::find_if(ahead.days.begin(), ahead.days.end(), [](const DayPlan& d) {
                            return d.date == day0.addDays(4);
                        })->outings.front();
    QCOMPARE(visit.time.end, outing.time.begin);
    QCOMPARE(visit.time.length(), minutes(45));  // and opening it
    QVERIFY(!visit.isLate);
}

void ServiceOutlookTest::dueSoonJoins() {
    SeasonState state = season();
    state.items = {item("a", {duty("clean", MeterKind::Days, 10, 30), duty("check", MeterKind::Days, 12, 10),
                              duty("overhaul", MeterKind::Days, 25, 240)})};
    state.services = {doneAt("s1", at(-1, 12), "a", "clean", {}), doneAt("s2", at(-1, 12), "a", "check", {}),
                      doneAt("s3", at(-1, 12), "a", "overhaul", {})};
    const ServiceOutlook outlook = serviceOutlook({state, planOf(state, at(0, 9)), at(0, 9)}, {});
    // A check loses 2 of 12 days of 10 minutes' work; the overhaul would lose 15 of 25 days of four hours' work.
    QCOMPARE(visitFor(outlook, "check"), visitFor(outlook, "clean"));
    QVERIFY(visitFor(outlook, "overhaul") && visitFor(outlook, "overhaul") != visitFor(outlook, "clean"));
    state.items.front().duties[1].parts = {{brush, {1}}};  // a part would lose more than a tenth
    const ServiceOutlook apart = serviceOutlook({state, planOf(state, at(0, 9)), at(0, 9)}, {});
    QVERIFY(visitFor(apart, "check") != visitFor(apart, "clean"));
}

void ServiceOutlookTest::noShiftNoVisit() {
    SeasonState state = season();
    state.items = {item("a", {duty("clean", MeterKind::Days, 5, 30)})};
    state.services = {doneAt("s1", at(-1, 12), "a", "clean", {})};
    const Plan ahead = planOf(state, at(0, 9));
    state.centre.shifts.clear();
    const ServiceOutlook outlook = serviceOutlook({state, ahead, at(0, 9)}, {});
    QVERIFY(outlook.visits.empty());
    QCOMPARE(outlook.findings.size(), size_t(1));
    QCOMPARE(outlook.findings.front().rule, QByteArray("service.no-window"));
    QCOMPARE(outlook.findings.front().subject, QString("Item a"));
}

void ServiceOutlookTest::partsAreReserved() {
    SeasonState state = season();
    Duty first = duty("first", MeterKind::Days, 5);
    Duty second = duty("second", MeterKind::Days, 9);
    first.parts = second.parts = {{brush, {2}}};
    state.items = {item("a", {second, first})};
    state.services = {doneAt("s1", at(-1, 12), "a", "first", {}), doneAt("s2", at(-1, 12), "a", "second", {})};
    Movement received;
    received.entries = {{{brush, {Place::Kind::Shelf, {}, 0}, {}, {}}, {3}}};
    state.stock.add(received);
    const ServiceOutlook outlook = serviceOutlook({state, planOf(state, at(0, 9)), at(0, 9)}, {});
    QVERIFY(dueOf(outlook, "first").missing.empty());  // due before, so it has them
    QCOMPARE(dueOf(outlook, "second").missing, (std::vector<PartNeed>{{brush, {1}}}));
}

void ServiceOutlookTest::partsAreNeededWhenDue() {
    SeasonState state = season();
    Duty weekly = duty("weekly", MeterKind::Days, 7);
    weekly.parts = {{brush, Amount{2}}};
    Duty worn = duty("worn", MeterKind::Lanes, 36);
    worn.parts = {{brush, Amount{1}}};
    Duty never = duty("never", MeterKind::Days, 7);
    never.parts = {{brush, Amount{100}}};
    ServiceItem gone = item("b", {never});
    gone.retired = true;
    state.items = {item("a", {weekly, worn}), gone};
    state.services = {doneAt("s1", at(-1, 12), "a", "weekly", {}), doneAt("s2", at(-1, 12), "a", "worn", {})};
    const Plan ahead = planOf(state, at(0, 9));
    const auto taken = partsAhead({state, ahead, at(0, 9)}, 20);
    QCOMPARE(taken.size(), size_t(1));
    // Every seven days from the day before today on: the days 6 and 13. By lanes, eight are done each day: four days make 32, and
    // the fifth would pass 36. So it is done before the first outing of day 4, counts the 32 until then and again passes 36 on
    // the fifth day after: 8, 12, 16. Work that nobody planned is small beside the 4 lanes that are between 36 and either number
    // of days: before any was seen, 0.5 / 35.5 runs a day of 4 lanes come besides and 1 / 32 of 4 lanes are missed, 0.07 lanes
    // less a day, 1.4 in the 20 days.
    const WorkAhead work = workAhead(state, ahead, m1, day0);
    QVERIFY(std::abs(work.reached[size_t(MeterKind::Lanes)].back()[1] - 20 * 8) < 4);
    std::vector<Amount> expected(20, Amount{0});
    for (const int day : {6, 13})
        expected[size_t(day)] += Amount{2};
    for (const int day : {4, 8, 12, 16})
        expected[size_t(day)] += Amount{1};
    QCOMPARE(taken.at(brush), expected);
    QVERIFY(partsAhead({state, ahead, at(0, 9)}, 6).at(brush).size() == 6);
    // What is overdue is taken today.
    state.services.front().at = at(-30, 12);
    QVERIFY(partsAhead({state, ahead, at(0, 9)}, 20).at(brush)[0] >= Amount{2});
}

/// Against going through the days one by one, on a plan of uneven days.
void ServiceOutlookTest::partsFollowAPlainCount() {
    SeasonState state = season();
    for (const int day : {2, 3, 7, 11, 12, 13, 18})
        state.series[size_t(day)] = eventOf(QString("e%1").arg(day), day, {18, 0}, 120, LaneSet::range(1, day % 2 == 0 ? 2 : 6));
    state.series.erase(state.series.begin() + 15);
    const Plan ahead = planOf(state, at(0, 9));
    const auto reached = workAhead(state, ahead, m1, day0).reached[size_t(MeterKind::Lanes)];
    for (std::int64_t every = 1; every <= 70; ++every) {
        Duty worn = duty("worn", MeterKind::Lanes, every);
        worn.parts = {{brush, Amount{1}}};
        state.items = {item("a", {worn})};
        state.services = {doneAt("s", at(-1, 12), "a", "worn", {})};
        std::vector<Amount> expected(20, Amount{0});
        double counted = 0;  // lanes at the last service
        for (size_t day = 0; day < expected.size(); ++day) {
            if (reached[day][1] - counted < double(every)) continue;
            expected[day] = Amount{1};
            counted = day == 0 ? 0 : std::ceil(reached[day - 1][1]);  // it is done before the day's first outing
        }
        const auto taken = partsAhead({state, ahead, at(0, 9)}, 20);
        QCOMPARE(taken.at(brush), expected);
    }
}

void ServiceOutlookTest::planningIsTold() {
    SeasonState state = season();
    state.items = {item("a", {duty("turn", MeterKind::Lanes, 100), duty("look", MeterKind::Lanes, 60)})};
    state.workBefore = {{m1, at(-40, 0), {1'000, 100, {}, {}}}};
    state.services = {doneAt("s1", at(-40, 12), "a", "turn", {950, 0, {}, {}}),
                      doneAt("s2", at(-40, 12), "a", "look", {980, 0, {}, {}})};
    QCOMPARE(*lanesUntilDuty(state, m1, at(0, 9)), 40);
    QCOMPARE(*planningState(state, at(0, 9)).limits.front().lanesUntilDuty, 40);
    state.services.back().meters.lanes = 900;  // overdue
    QCOMPARE(*lanesUntilDuty(state, m1, at(0, 9)), 0);
    const Plan ahead = planOf(state, at(0, 9), 1);
    const auto isDuty = [](const Step& step) { return step.kind == StepKind::Duty; };
    QVERIFY(std::any_of(ahead.jobs.front().steps.begin(), ahead.jobs.front().steps.end(), isDuty));
    QVERIFY(!lanesUntilDuty(state, {"other"}, at(0, 9)));
}

void ServiceOutlookTest::retiredItemsAreQuiet() {
    SeasonState state = season();
    state.items = {item("a", {duty("turn", MeterKind::Lanes, 1)})};
    state.items.front().retired = true;
    QVERIFY(serviceOutlook({state, planOf(state, at(0, 9)), at(0, 9)}, {}).due.empty());
    QVERIFY(!lanesUntilDuty(state, m1, at(0, 9)));
}

void ServiceOutlookTest::freeTimeIsWhereSomebodyIs() {
    const SeasonState state = season();
    const Plan ahead = planOf(state, at(0, 9), 1);
    const Span out = ahead.days.front().outings.front().time;
    const std::vector<Span> bay = freeTime(state.centre, ahead, m1, day0);
    QCOMPARE(bay, (std::vector<Span>{{at(0, 9), out.begin}, {out.end, at(0, 23)}}));
    // The only person is with the machine.
    QCOMPARE(freeTime(state.centre, ahead, {}, day0), bay);
    Centre two = state.centre;
    two.shifts.front().people = 2;
    QCOMPARE(freeTime(two, ahead, {}, day0), (std::vector<Span>{{at(0, 9), at(0, 23)}}));
}

QTEST_GUILESS_MAIN(ServiceOutlookTest)
#include "tst_service_outlook.moc"
