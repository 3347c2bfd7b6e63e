// An answer to 'what if' is the difference of two whole plans, whatever was asked before; and what planning remembers changes
// nothing. Tried on random centres with one edit after the other.
#include "core/calendar/recurrence.h"
#include "core/planning/plan_memo.h"
#include "core/season/what_if.h"
#include "tests/support/planning_builders.h"
#include "tests/support/random_centre.h"

#include <QTest>

#include <algorithm>

using namespace laneward;

namespace {

const DateRange range{support::randomBegins(), support::randomBegins().addDays(27)};
constexpr std::int64_t nodes = 28 * 8;

class Editor {
public:
    explicit Editor(unsigned seed) : m_generator(seed) {}

    State edited(const State& state, int kind) {
        State changed = state;
        Series& series = changed.series[size_t(pick(0, int(changed.series.size()) - 1))];
        switch (kind) {
            case 0: {
                Override& change = someOverride(series);
                change.start = LocalTime{change.original.date, change.original.time.addSecs(1'800)};
                break;
            }
            case 1:
                someOverride(series).duration = series.duration + minutes(45);
                break;
            case 2:
                someOverride(series).cancelled = true;
                break;
            case 3:
                series.start.time = series.start.time.addSecs(-1'200);
                break;
            case 4:
                changed.centre.outages.push_back(someOutage(changed.centre));
                break;
            case 5:
                changed.series.push_back(newSeries(changed));
                break;
            case 6:
                series.cancelled = true;
                break;
            default:
                changed.series.push_back(newClosure(changed));
                break;
        }
        return changed;
    }
    static constexpr int kinds = 8;

private:
    int pick(int low, int high) { return support::between(m_generator, low, high); }
    QDate someDay() { return range.first.addDays(pick(0, 27)); }

    Override& someOverride(Series& series) {
        const Result<Dates> found = startsOf(series, range);
        const Dates dates = found ? *found : Dates{};
        const LocalTime original =
            dates.starts.empty() ? series.start : dates.starts[size_t(pick(0, int(dates.starts.size()) - 1))];
        series.overrides.push_back({});
        series.overrides.back().original = original;
        return series.overrides.back();
    }

    Outage someOutage(const Centre& centre) {
        Outage outage;
        outage.id = {"more"};
        outage.machine = centre.machines.front().id;
        outage.begin = dayOf(centre, someDay()).begin + hours(8);
        outage.end = outage.begin + hours(pick(4, 40));
        return outage;
    }

    Series newSeries(const State& state) {
        Series series;
        series.id = {"new"};
        series.uid = "new";
        series.title = "New";
        series.zone = state.centre.facts.zone;
        series.start = {someDay(), QTime(pick(10, 20), 0)};
        series.rule = pick(0, 1) == 0 ? "" : "FREQ=WEEKLY";
        series.lanes = LaneSet::range(1, std::min(state.centre.facts.lanes, 4));
        series.demands = {{series.lanes, DemandKind::Fresh, PatternId{"p1"}}};
        return series;
    }

    Series newClosure(const State& state) {
        Series closure;
        closure.id = {"shut"};
        closure.uid = "shut";
        closure.title = "Shut";
        closure.kind = EventKind::Closure;
        closure.zone = state.centre.facts.zone;
        closure.start = {someDay(), QTime(12, 0)};
        closure.duration = hours(pick(3, 30));
        closure.noStaff = pick(0, 1) == 0;
        return closure;
    }

    std::mt19937 m_generator;
};

Instant nowFor(const State& state) { return dayOf(state.centre, range.first).begin + hours(7); }

std::vector<Shortfall> withoutRemedies(std::vector<Shortfall> shortfalls) {
    for (Shortfall& s : shortfalls)
        s.remedies.clear();
    return shortfalls;
}

bool sameDifference(const PlanDifference& a, const PlanDifference& b) {
    return a.added == b.added && a.removed == b.removed && a.moved == b.moved && a.before == b.before && a.after == b.after &&
           a.conditioner == b.conditioner && a.cleaner == b.cleaner;
}

bool sameAnswer(const WhatIfAnswer& a, const WhatIfAnswer& b) {
    return sameDifference(a.difference, b.difference) && a.bound == b.bound && a.proven == b.proven &&
           withoutRemedies(a.shortfalls) == withoutRemedies(b.shortfalls) && a.days == b.days && a.cancelled == b.cancelled;
}

Objective boundOf(const Plan& plan) {
    Objective sum;
    for (const DayPlan& day : plan.days)
        sum = sum + day.bound;
    return sum;
}

}  // namespace

class TestWhatIf : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void answersAreDifferencesOfWholePlans() {
        int changes = 0;
        for (unsigned seed = 1; seed <= 20; ++seed) {
            const State state = support::randomCentre(seed);
            const Instant now = nowFor(state);
            WhatIf season(state, now, range, nodes);
            const Plan before = plan(state, now, range, nodes);
            QVERIFY(season.before() == before);
            Editor editor(seed);
            for (int kind = 0; kind < Editor::kinds; ++kind) {
                const QByteArray where = QString("seed %1, edit %2").arg(seed).arg(kind).toLatin1();
                const State changed = editor.edited(state, kind);
                const WhatIfAnswer answer = season.ask(changed, Effort::Proven);
                const Plan after = plan(changed, now, range, nodes);
                QVERIFY2(sameDifference(answer.difference, difference(before, after)), where.constData());
                QVERIFY2(answer.bound == boundOf(after), where.constData());
                QVERIFY(!answer.cancelled);
                for (const Shortfall& s : answer.shortfalls) {
                    const auto same = [&](const Shortfall& o) {
                        return o.series == s.series && o.original == s.original && o.lanes == s.lanes && o.unmet == s.unmet;
                    };
                    QVERIFY2(std::any_of(after.unmet.begin(), after.unmet.end(), same), where.constData());
                    QVERIFY2(std::none_of(before.unmet.begin(), before.unmet.end(), same), where.constData());
                }
                changes += int(answer.days.size());
            }
        }
        qInfo("%d days changed", changes);
        QVERIFY(changes > 200);
    }

    void rememberedPlansAreTheSame() {
        for (unsigned seed = 21; seed <= 36; ++seed) {
            State state = support::randomCentre(seed);
            PlanMemo memo;
            Editor editor(seed);
            for (int kind = 0; kind < Editor::kinds; ++kind) {
                PlanMemo nothing(PlanMemo::Keeps::Nothing);
                const PlanTask task{state, nowFor(state), range, nodes};
                QVERIFY2(plan(task, memo) == plan(task, nothing), qPrintable(QString("seed %1, edit %2").arg(seed).arg(kind)));
                state = editor.edited(state, kind);
            }
        }
    }

    /// Ten weeks that are alike, over the change from summer time: most are not planned but shifted.
    void weeksThatAreAlikeArePlannedOnceAndTheSame() {
        State state = support::house(8);
        state.centre.facts.zone = "Europe/Berlin";
        state.series = {support::eventOf("a", -63, {18, 0}, 120, {1, 2, 3, 4}),
                        support::eventOf("b", -61, {19, 0}, 120, {3, 4, 5})};
        for (Series& series : state.series)
            series.rule = "FREQ=WEEKLY";
        const QDate first = support::day0.addDays(-63);
        const PlanTask task{state, dayOf(state.centre, first).begin, {first, first.addDays(69)}, nodes};
        PlanMemo memo;
        PlanMemo nothing(PlanMemo::Keeps::Nothing);
        const Plan remembered = plan(task, memo);
        QVERIFY(remembered.jobs.size() >= 20);
        QVERIFY(remembered == plan(task, nothing));
    }

    void orderOfQuestionsDoesNotMatter() {
        for (unsigned seed = 41; seed <= 46; ++seed) {
            const State state = support::randomCentre(seed);
            Editor editor(seed);
            std::vector<State> edits;
            for (int kind = 0; kind < Editor::kinds; ++kind)
                edits.push_back(editor.edited(state, kind));
            WhatIf season(state, nowFor(state), range, nodes);
            std::vector<WhatIfAnswer> first;
            for (const State& edit : edits)
                first.push_back(season.ask(edit, Effort::First));
            for (size_t i = edits.size(); i-- > 0;) {
                WhatIf alone(state, nowFor(state), range, nodes);
                const WhatIfAnswer proven = alone.ask(edits[i], Effort::Proven);
                QVERIFY(sameAnswer(season.ask(edits[i], Effort::Proven), proven));
                QVERIFY(sameAnswer(alone.ask(edits[i], Effort::First), first[i]));
            }
        }
    }

    void noEditIsNoDifference() {
        const State state = support::randomCentre(5);
        WhatIf season(state, nowFor(state), range, nodes);
        for (Effort effort : {Effort::First, Effort::Proven}) {
            const WhatIfAnswer answer = season.ask(state, effort);
            QVERIFY(answer.days.empty() && answer.shortfalls.empty() && answer.proven);
            QVERIFY(answer.difference.after == season.before().objective());
        }
    }

    void cancelledQuestionLeavesItUsable() {
        int cancelled = 0;
        for (unsigned seed = 51; seed <= 56; ++seed) {
            const State state = support::randomCentre(seed);
            const State changed = Editor(seed).edited(state, 3);
            WhatIf season(state, nowFor(state), range, nodes);
            const WhatIfAnswer whole = WhatIf(state, nowFor(state), range, nodes).ask(changed, Effort::Proven);
            for (int patience : {0, 1, 5, 50}) {
                int asked = 0;
                const WhatIfAnswer answer = season.ask(changed, Effort::Proven, [&] { return asked++ >= patience; });
                QVERIFY(answer.cancelled == (asked > patience));
                cancelled += answer.cancelled ? 1 : 0;
            }
            QVERIFY(sameAnswer(season.ask(changed, Effort::Proven), whole));
        }
        QVERIFY(cancelled >= 12);
    }
};

QTEST_GUILESS_MAIN(TestWhatIf)
#include "tst_what_if.moc"
