// Input that no centre would plan on purpose: a valid plan with findings that name it, and every demand accounted for.
#include "tests/support/planning_builders.h"

#include <QTest>

#include <algorithm>

using namespace support;

namespace {

const Finding* find(const std::vector<Finding>& findings, const char* rule) {
    const auto found = std::find_if(findings.begin(), findings.end(), [&](const Finding& f) { return f.rule == rule; });
    return found == findings.end() ? nullptr : &*found;
}

int lanesShort(const Plan& p) {
    int lanes = 0;
    for (const Shortfall& s : p.unmet)
        lanes += s.unmet ? s.lanes.count() : 0;
    return lanes;
}

/// A confirmed job on one lane of machine m1.
Job confirmed(const QString& id, int lane, Instant begin) {
    Job job;
    job.id = {id};
    job.state = JobState::Confirmed;
    job.date = day0;
    job.machine = {"m1"};
    job.outing = id == "x" ? 1 : 2;
    job.pattern = PatternId{"p1"};
    job.time = {begin - minutes(5), begin + Seconds{100}};
    job.lanes = {{lane, {begin, begin + Seconds{100}}}};
    LaneSet lanes;
    lanes.insert(lane);
    job.steps = {{StepKind::LeaveBay, {begin - minutes(5), begin}, {}}, {StepKind::Treat, job.lanes[0].time, lanes}};
    return job;
}

}  // namespace

class HardInput : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void contradictingConfirmedJobs() {
        State s = house(8);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2, 3, 4})};
        // One machine on two lanes at one time, and one of them while people play there.
        s.committed = {confirmed("x", 7, at(0, 16)), confirmed("y", 8, at(0, 16))};
        s.series.push_back(eventOf("b", 0, {15, 0}, 90, {7, 8}));
        const Plan p = planDay(s);
        const Finding* broken = find(p.findings, "plan.confirmed-breaks");
        QVERIFY(broken);
        QCOMPARE(broken->subject, QString("Machine m1"));
        for (const Job& job : s.committed)
            QVERIFY(std::find(p.jobs.begin(), p.jobs.end(), job) != p.jobs.end());
        QVERIFY((LaneSet{1, 2, 3, 4}).isSubsetOf(lanesOf(p)));
    }

    void nobodyWorks() {
        State s = house(4);
        s.centre.shifts.clear();
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2})};
        const Plan p = planDay(s);
        QVERIFY(p.jobs.empty());
        QVERIFY(find(p.findings, "plan.no-shift"));
        QCOMPARE(lanesShort(p), 2);
        QCOMPARE(p.objective().unmet, 2);
    }

    void lanesOutForMonths() {
        State s = house(4);
        s.centre.outages.push_back({{"o"}, {1, 2}, {}, at(-90, 0), at(90, 0), {}, 0});
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2, 3, 4})};
        const Plan p = planDay(s);
        const Finding* out = find(p.findings, "plan.lane-out-of-service");
        QVERIFY(out);
        QCOMPARE(out->subject, QString("Event a"));
        QCOMPARE(out->values[0], Value{QString("1-2")});
        QCOMPARE(lanesOf(p), (LaneSet{3, 4}));
        QVERIFY(violationsOf(s, p).empty());
    }

    void anEventLongerThanADay() {
        State s = house(4);
        s.series = {eventOf("a", 0, {18, 0}, 30 * 60, {1, 2}), eventOf("b", 2, {18, 0}, 60, {1, 2})};
        const Plan p = planDay(s, at(0, 6), 3);
        QCOMPARE(p.objective().unmet, 0);
        QCOMPARE(p.objective().treatments, 4);
        QVERIFY(violationsOf(s, p).empty());
    }

    void twoHundredEventsOnOneDay() {
        State s = house(64);
        for (int e = 0; e < 200; ++e)
            s.series.push_back(eventOf(QString("e%1").arg(e), 0, QTime(10 + e / 20, e % 4 * 15), 30, {e % 64 + 1}));
        const Plan p = planDay(s);
        QVERIFY(violationsOf(s, p).empty());
        // Whatever is not met is listed, and nothing is met twice.
        QCOMPARE(p.objective().unmet, lanesShort(p));
        const DemandSet demands = demandsOf(s, p.occupancy, p.now, p.range);
        QVERIFY(p.objective().unmet > 0 && p.objective().unmet < std::int64_t(demands.demands.size()));
        QVERIFY(p.objective().treatments > 0);
    }

    void twoEventsOnOneLane() {
        State s = house(4);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2}), eventOf("b", 0, {18, 30}, 60, {2, 3})};
        const Plan p = planDay(s);
        const Finding* conflict = find(p.findings, "calendar.conflict");
        QVERIFY(conflict);
        QCOMPARE(conflict->subject, QString("Event a"));
        QCOMPARE(conflict->values[0], Value{QString("Event b")});
        QVERIFY((LaneSet{1, 2, 3}).isSubsetOf(lanesOf(p)));
    }
};

QTEST_GUILESS_MAIN(HardInput)
#include "tst_hard_input.moc"
