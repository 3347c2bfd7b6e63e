// What falls short says why, how much is missing and what would help; a remedy that is called verified really helps.
#include "tests/support/planning_builders.h"
#include "tests/support/random_centre.h"

#include <QTest>

#include <algorithm>

using namespace support;

namespace {

/// 24 lanes between two events: too many for one machine and one person.
State crowded() {
    State s = house(24);
    s.series = {eventOf("before", 0, {13, 0}, 250, LaneSet::range(1, 24)), eventOf("a", 0, {18, 0}, 60, LaneSet::range(1, 24))};
    s.series[0].demands[0].kind = DemandKind::AsItIs;
    return s;
}

constexpr int evenings = 6;

/// Evenings that fall short, each in its own way.
State shortEvening(int n) {
    State s = crowded();
    switch (n) {
        case 0:
            break;
        case 1:  // a second machine, but nobody for it
            s.centre.machines.push_back(machineOf("m2"));
            break;
        case 2:  // a second person, but no machine
            s.centre.shifts[0].people = 2;
            break;
        case 3:  // before anybody is there
            s = house(2);
            s.centre.shifts[0].overtimeBefore = Seconds{0};
            s.series = {eventOf("a", 0, {9, 5}, 60, {1, 2})};
            break;
        case 4:  // after everybody has left
            s = house(4);
            s.centre.shifts[0].end = QTime(17, 0);
            s.centre.shifts[0].overtimeAfter = Seconds{0};
            s.series = {eventOf("before", 0, {15, 0}, 110, LaneSet::range(1, 4)),
                        eventOf("a", 0, {18, 0}, 60, LaneSet::range(1, 4))};
            s.series[0].demands[0].kind = DemandKind::AsItIs;
            break;
        default:  // a little late
            s = house(2);
            s.series = {eventOf("before", 0, {15, 0}, 60, {1, 2}), eventOf("a", 0, {18, 0}, 60, {1, 2})};
            s.series[0].demands[0].kind = DemandKind::AsItIs;
            s.series[0].duration = at(0, 17, 45) - Seconds{190} - minutes(10) - at(0, 15);
            lastTreated(s, {1, 2}, at(-1, 20));
    }
    return s;
}

/// Few nodes: many evenings are planned, and none of them is hard to place.
Plan quickPlan(const State& s) { return plan(s, at(0, 6), {day0, day0}, 1'000); }

/// What a remedy says, done by hand.
State changedBy(State s, const Shortfall& shortfall, const Remedy& r) {
    Series& series = *std::find_if(s.series.begin(), s.series.end(), [&](const Series& e) { return e.id == shortfall.series; });
    if (r.what.rule == "remedy.overtime") {
        s.centre.shifts[0].overtimeBefore += r.by;
        s.centre.shifts[0].overtimeAfter += r.by;
    } else if (r.what.rule == "remedy.second-machine") {
        s.centre.machines.push_back(machineOf("further"));
    } else if (r.what.rule == "remedy.second-person") {
        s.centre.shifts[0].people = int(std::get<std::int64_t>(r.what.values.front()));
    } else if (r.what.rule == "remedy.shorter-treatment") {
        series.demands[0].least = Treatment(std::get<std::int64_t>(r.what.values.front()));
    } else if (r.what.rule == "remedy.fewer-lanes") {
        series.lanes = *LaneSet::parse(std::get<QString>(r.what.values[1]));
        series.demands[0].lanes = series.lanes;
    } else if (r.what.rule == "remedy.move-event") {
        series.start = shifted(series.start, r.by);
    } else {
        qFatal("unknown remedy %s", r.what.rule.constData());
    }
    return s;
}

/// The same for an event that recurs, in a centre with several shifts.
State changedOnce(State s, const Shortfall& shortfall, const Remedy& r) {
    const bool ofShift = r.what.rule == "remedy.overtime" || r.what.rule == "remedy.second-person";
    for (Shift& shift : s.centre.shifts) {
        if (!ofShift || shift.name != r.what.subject) continue;
        shift.overtimeBefore += r.by;
        shift.overtimeAfter += r.by;
        shift.people += r.what.rule == "remedy.second-person" ? 1 : 0;
    }
    if (r.what.rule == "remedy.second-machine") {
        s.centre.machines.push_back(s.centre.machines.front());
        s.centre.machines.back().id.value += "+";
    }
    for (Series& series : s.series) {
        if (series.id != shortfall.series) continue;
        Override change;
        change.original = shortfall.original;
        for (const Override& old : series.overrides) {
            if (old.original == shortfall.original) change = old;
        }
        std::erase_if(series.overrides, [&](const Override& old) { return old.original == shortfall.original; });
        if (r.what.rule == "remedy.move-event") change.start = shifted(change.start.value_or(change.original), r.by);
        if (r.what.rule == "remedy.fewer-lanes") {
            change.lanes = *LaneSet::parse(std::get<QString>(r.what.values[1]));
            for (SurfaceDemand& demand : series.demands)
                demand.lanes = demand.lanes & *change.lanes;
        }
        for (SurfaceDemand& demand : series.demands) {
            if (r.what.rule == "remedy.shorter-treatment" && demand.kind == DemandKind::Fresh)
                demand.least = std::max(demand.least, Treatment::ConditionOnly);
        }
        series.overrides.push_back(change);
    }
    return s;
}

const Remedy* remedy(const Plan& p, const char* rule) {
    for (const Shortfall& s : p.unmet) {
        for (const Remedy& r : s.remedies) {
            if (r.what.rule == rule) return &r;
        }
    }
    return nullptr;
}

}  // namespace

class TestShortfalls : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void crowdedGap() {
        const State s = crowded();
        const Plan p = planDay(s);
        QVERIFY(!p.unmet.empty());
        int lanes = 0;
        for (const Shortfall& shortfall : p.unmet) {
            QVERIFY(shortfall.missing > Seconds{0});
            QCOMPARE(shortfall.title, QString("Event a"));
            lanes += shortfall.unmet ? shortfall.lanes.count() : 0;
        }
        QCOMPARE(p.objective().unmet, lanes);
        QVERIFY(violationsOf(s, p).empty());
    }

    void movingTheEventHelpsAsSaid() {
        const State s = crowded();
        const Plan p = planDay(s);
        const Remedy* r = remedy(p, "remedy.move-event");
        QVERIFY(r && r->verified);
        // Clear at 17:20, 24 x 100 + 23 x 20 s of work: ready at 18:07:40, settled at 18:22:40.
        QCOMPARE(r->by, minutes(25));
        State moved = s;
        moved.series[1].start = shifted(moved.series[1].start, r->by);
        QCOMPARE(planDay(moved).objective().unmet, 0);
        QCOMPARE(planDay(moved).objective().late_s, 0);
    }

    void secondMachineNeedsASecondPerson() {
        State s = crowded();
        QVERIFY(!remedy(planDay(s), "remedy.second-machine"));
        QVERIFY(!remedy(planDay(s), "remedy.second-person"));
        s.centre.shifts[0].people = 2;
        const Remedy* machine = nullptr;
        const Plan withPerson = planDay(s);
        machine = remedy(withPerson, "remedy.second-machine");
        QVERIFY(machine && machine->verified);
        s.centre.shifts[0].people = 1;
        s.centre.machines.push_back(machineOf("m2"));
        const Plan withMachine = planDay(s);
        QVERIFY(remedy(withMachine, "remedy.second-person"));
    }

    void fewerLanesAreThoseThatFit() {
        const State s = crowded();
        const Plan p = planDay(s);
        const Remedy* r = remedy(p, "remedy.fewer-lanes");
        QVERIFY(r && r->verified);
        // 25 minutes from 17:20 to 17:45 are enough for 12 lanes (1,420 s) and not for 13 (1,540 s).
        QCOMPARE(std::get<std::int64_t>(r->what.values.front()), 12);
    }

    void whatIsCalledVerifiedHelps_data() {
        QTest::addColumn<int>("evening");
        for (int n = 0; n < evenings; ++n)
            QTest::newRow(qPrintable(QString::number(n))) << n;
    }

    void whatIsCalledVerifiedHelps() {
        QFETCH(int, evening);
        const State s = shortEvening(evening);
        const Plan p = quickPlan(s);
        QVERIFY(!p.unmet.empty());
        int verified = 0;
        for (const Shortfall& shortfall : p.unmet) {
            for (const Remedy& r : shortfall.remedies) {
                if (!r.verified) continue;
                ++verified;
                const Plan then = quickPlan(changedBy(s, shortfall, r));
                for (const Shortfall& left : then.unmet)
                    QVERIFY2(left.series != shortfall.series, r.what.rule.constData());
                QVERIFY2(std::pair(then.objective().unmet, then.objective().late_s) <
                             std::pair(p.objective().unmet, p.objective().late_s),
                         r.what.rule.constData());
            }
        }
        QVERIFY(verified > 0);
    }

    /// The same by chance: centres with odd shifts, bars, outages and several machines, and events that recur.
    void whatIsCalledVerifiedHelpsByChance() {
        constexpr std::int64_t nodes = 120;
        int verified = 0;
        for (unsigned seed = 1; seed <= 120; ++seed) {
            const State s = randomCentre(seed);
            const DateRange day{randomBegins(), randomBegins()};
            const Instant now = dayOf(s.centre, day.first).begin;
            const Plan p = plan(s, now, day, nodes);
            for (const Shortfall& shortfall : p.unmet) {
                for (const Remedy& r : shortfall.remedies) {
                    if (!r.verified) continue;
                    ++verified;
                    const Plan then = plan(changedOnce(s, shortfall, r), now, day, nodes);
                    const bool meets = std::none_of(then.unmet.begin(), then.unmet.end(), [&](const Shortfall& left) {
                        return left.series == shortfall.series && left.original == shortfall.original;
                    });
                    QVERIFY2(meets, qPrintable(QString("seed %1: %2").arg(seed).arg(QString(r.what.rule))));
                }
            }
        }
        QVERIFY2(verified > 20, qPrintable(QString::number(verified)));
    }

    void cheapestFirst() {
        static const QList<QByteArray> order{"remedy.overtime",    "remedy.shorter-treatment", "remedy.move-event",
                                             "remedy.fewer-lanes", "remedy.second-person",     "remedy.second-machine"};
        for (int n = 0; n < evenings; ++n) {
            for (const Shortfall& shortfall : quickPlan(shortEvening(n)).unmet) {
                qsizetype last = -1;
                for (const Remedy& r : shortfall.remedies) {
                    QVERIFY(order.indexOf(r.what.rule) > last);
                    last = order.indexOf(r.what.rule);
                }
            }
        }
    }

    void nothingSmallerHelps() {
        // Five minutes less overtime, and an event moved by five minutes less, do not do.
        for (int n = 0; n < evenings; ++n) {
            const State s = shortEvening(n);
            const Plan p = quickPlan(s);
            for (const Shortfall& shortfall : p.unmet) {
                for (Remedy r : shortfall.remedies) {
                    if (!r.verified || r.by <= minutes(5)) continue;
                    r.by = r.by - minutes(5);
                    const Plan then = quickPlan(changedBy(s, shortfall, r));
                    const bool meets = std::none_of(then.unmet.begin(), then.unmet.end(),
                                                    [&](const Shortfall& left) { return left.series == shortfall.series; });
                    QVERIFY2(!meets, qPrintable(QString("%1 in evening %2").arg(QString(r.what.rule)).arg(n)));
                }
            }
        }
    }

    void overtimeWhenNobodyIsThere() {
        State s = house(2);
        s.centre.shifts[0].overtimeBefore = Seconds{0};
        s.series = {eventOf("a", 0, {9, 5}, 60, {1, 2})};
        const Plan p = planDay(s);
        QVERIFY(has(p.unmet[0].reasons, "short.no-staff") || has(p.unmet[0].reasons, "short.no-time"));
        const Remedy* r = remedy(p, "remedy.overtime");
        QVERIFY(r && r->verified);
        // Due at 8:50; 5 min from the bay and 2 x 100 + 20 s of work: begun at 8:41:20, 18 min 40 s before the shift.
        QCOMPARE(r->by, minutes(20));
        s.centre.shifts[0].overtimeBefore = r->by;
        QCOMPARE(planDay(s).objective().unmet, 0);
        QCOMPARE(planDay(s).objective().late_s, 0);
        s.centre.shifts[0].overtimeBefore = minutes(15);
        QVERIFY(planDay(s).objective().late_s > 0 || planDay(s).objective().unmet > 0);
    }

    void shorterTreatment() {
        // Two lanes, 200 s of room behind play on each side: conditioning alone fits twice, cleaning as well does not.
        State s = house(2);
        s.series = {eventOf("before", 0, {15, 0}, 60, {1, 2}), eventOf("a", 0, {18, 0}, 60, {1, 2})};
        s.series[0].demands[0].kind = DemandKind::AsItIs;
        s.series[0].duration = at(0, 17, 45) - Seconds{190} - minutes(10) - at(0, 15);
        lastTreated(s, {1, 2}, at(-1, 20));
        const Plan p = planDay(s);
        QVERIFY(p.objective().late_s > 0);
        const Remedy* r = remedy(p, "remedy.shorter-treatment");
        QVERIFY(r && r->verified);
    }

    void causesAreTold() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1, 2})};
        s.centre.machines.clear();
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.no-machine"));
        QVERIFY(has(planDay(s).findings, "plan.no-machine"));
        s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1, 2})};
        s.series[0].demands[0].pattern = PatternId{"gone"};
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.pattern-unknown"));
        QVERIFY(has(planDay(s).findings, "plan.pattern-unknown"));
        s.series[0].demands[0].pattern = PatternId{"p1"};
        s.centre.shifts.clear();
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.no-staff"));
        QVERIFY(has(planDay(s).findings, "plan.no-shift"));
        s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1, 2})};
        s.centre.outages.push_back({{"o"}, {1}, {}, at(0, 5), at(0, 18), {}, 0});
        const Plan out = planDay(s);
        QCOMPARE(out.unmet.size(), size_t(1));
        QCOMPARE(out.unmet[0].lanes, LaneSet{1});
        QVERIFY(has(out.unmet[0].reasons, "short.out-of-service"));
        s.centre.outages[0].end.reset();
        QVERIFY(has(planDay(s).findings, "plan.lane-out-of-service"));
        QVERIFY(planDay(s).unmet.empty());
    }

    void conditionOnlyWithoutAnythingBelow() {
        State s = house(1);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1})};
        s.series[0].demands[0].least = Treatment::ConditionOnly;
        s.centre.machines[0].bars.treatments = {Treatment::CleanAndCondition};
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.condition-only"));
        s.centre.machines[0].bars.treatments = {Treatment::CleanAndCondition, Treatment::ConditionOnly};
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.barred"));
    }

    void tanksTooSmallForALane() {
        State s = house(1);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1})};
        s.centre.machines[0].capacity.conditioner[0] = Microlitres{3'000};
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.too-big"));
    }
};

QTEST_GUILESS_MAIN(TestShortfalls)
#include "tst_shortfalls.moc"
