// What must hold of every plan, tried on random centres: the order of the input does not matter, nor the date; a confirmed plan
// is planned around and not changed, and less to do is never worse.
#include "core/planning/fewest.h"
#include "core/planning/plan.h"
#include "tests/support/random_centre.h"

#include <QTest>

#include <algorithm>

using namespace laneward;

namespace {

constexpr std::int64_t nodes = 300;

struct Task {
    State state;
    Instant now;
    DateRange range;
    Plan made() const { return plan(state, now, range, nodes); }
};

Task taskOf(unsigned seed) {
    std::mt19937 generator(seed);
    Task task{support::randomCentre(seed), {}, {support::randomBegins(), support::randomBegins()}};
    task.range.last = task.range.first.addDays(support::between(generator, 0, 1));
    task.now = dayOf(task.state.centre, task.range.first).begin + minutes(support::between(generator, 0, 600));
    return task;
}

template <class T>
void shuffle(std::vector<T>& rows, std::mt19937& generator) {
    for (size_t i = rows.size(); i > 1; --i)
        std::swap(rows[i - 1], rows[size_t(support::between(generator, 0, int(i) - 1))]);
}

bool sameJobs(const Plan& a, const Plan& b) { return a.jobs == b.jobs && a.objective() == b.objective(); }

/// Three weeks, which are planned in two stretches.
Task longTaskOf(unsigned seed) {
    Task task = taskOf(seed);
    task.range.last = task.range.first.addDays(20);
    return task;
}

/// Everything `days` later. In UTC no day is longer than another.
Task shifted(Task task, int days) {
    const Seconds by = hours(24) * days;
    const auto later = [&](LocalTime& t) { t.date = t.date.addDays(days); };
    for (Series& series : task.state.series) {
        later(series.start);
        std::for_each(series.extraDates.begin(), series.extraDates.end(), later);
        std::for_each(series.excludedDates.begin(), series.excludedDates.end(), later);
    }
    for (Outage& outage : task.state.centre.outages) {
        outage.begin = outage.begin + by;
        if (outage.end) outage.end = *outage.end + by;
    }
    for (LaneTreatment& treatment : task.state.history)
        treatment.end = treatment.end + by;
    for (MachineLevels& levels : task.state.levels)
        levels.at = levels.at + by;
    task.now = task.now + by;
    task.range = {task.range.first.addDays(days), task.range.last.addDays(days)};
    return task;
}

Task inUtc(Task task) {
    task.now = task.now + zoneOf(task.state.centre).offsetAt(task.now);
    task.state.centre.facts.zone = "UTC";
    for (Series& series : task.state.series)
        series.zone = "UTC";
    return task;
}

bool isShifted(const Job& a, const Job& b, int days) {
    const Seconds by = hours(24) * days;
    const auto later = [&](Span s) { return Span{s.begin + by, s.end + by}; };
    const auto sameLane = [&](const LaneTime& x, const LaneTime& y) { return x.lane == y.lane && later(x.time) == y.time; };
    const auto sameStep = [&](const Step& x, const Step& y) {
        return x.kind == y.kind && x.lanes == y.lanes && later(x.time) == y.time;
    };
    return a.date.addDays(days) == b.date && later(a.time) == b.time && a.machine == b.machine && a.outing == b.outing &&
           a.treatment == b.treatment && a.pattern == b.pattern && a.slack == b.slack && a.late == b.late && a.use == b.use &&
           std::equal(a.lanes.begin(), a.lanes.end(), b.lanes.begin(), b.lanes.end(), sameLane) &&
           std::equal(a.steps.begin(), a.steps.end(), b.steps.begin(), b.steps.end(), sameStep);
}

bool isShifted(const Plan& a, const Plan& b, int days) {
    const auto sameDay = [&](const DayPlan& x, const DayPlan& y) {
        return x.date.addDays(days) == y.date && x.objective == y.objective && x.bound == y.bound && x.proven == y.proven;
    };
    return std::equal(a.jobs.begin(), a.jobs.end(), b.jobs.begin(), b.jobs.end(),
                      [&](const Job& x, const Job& y) { return isShifted(x, y, days); }) &&
           std::equal(a.days.begin(), a.days.end(), b.days.begin(), b.days.end(), sameDay);
}

std::array<std::int64_t, 3> worth(const Objective& o) { return {o.unmet, o.late_s, o.treatments}; }

}  // namespace

class PlanProperties : public QObject {
    Q_OBJECT

    /// Plans, confirms all of it, plans again: nothing may change. How many jobs were confirmed.
    static size_t confirmedStays(Task task, unsigned seed) {
        const Plan first = task.made();
        for (Job job : first.jobs) {
            job.state = JobState::Confirmed;
            task.state.committed.push_back(job);
        }
        const Plan again = task.made();
        const QString which = QString("seed %1").arg(seed);
        const auto holds = [&](bool held) {
            return QTest::qVerify(held, "confirmed plan stays", qPrintable(which), __FILE__, __LINE__);
        };
        bool held = holds(again.jobs == task.state.committed) && holds(again.objective() == first.objective()) &&
                    holds(violationsOf(task.state, again).empty());
        for (const DayPlan& day : again.days)
            held = held && holds(objectiveOf(task.state, again, day.date) == day.objective);
        return held ? first.jobs.size() : 0;
    }

private Q_SLOTS:
    void orderOfInputDoesNotMatter() {
        for (unsigned seed = 1; seed <= 120; ++seed) {
            const Task task = taskOf(seed);
            Task other = task;
            std::mt19937 generator(seed);
            shuffle(other.state.series, generator);
            shuffle(other.state.patterns, generator);
            shuffle(other.state.centre.machines, generator);
            shuffle(other.state.centre.shifts, generator);
            shuffle(other.state.history, generator);
            shuffle(other.state.levels, generator);
            QVERIFY2(sameJobs(task.made(), other.made()), qPrintable(QString("seed %1").arg(seed)));
        }
    }

    void shiftedInputShiftsThePlan() {
        size_t jobs = 0;
        for (unsigned seed = 1; seed <= 60; ++seed) {
            const Task task = inUtc(seed % 4 == 0 ? longTaskOf(seed) : taskOf(seed));
            const Plan made = task.made();
            for (int days : {1, 7, 113, -400}) {
                QVERIFY2(isShifted(made, shifted(task, days).made(), days),
                         qPrintable(QString("seed %1, %2 days").arg(seed).arg(days)));
            }
            jobs += made.jobs.size();
        }
        QVERIFY(jobs > 200);
    }

    void confirmedLongPlanStays() {
        size_t confirmed = 0;
        for (unsigned seed = 1; seed <= 25; ++seed)
            confirmed += confirmedStays(longTaskOf(seed), seed);
        QVERIFY(confirmed > 500);
    }

    void sameInputGivesTheSamePlan() {
        for (unsigned seed = 1; seed <= 40; ++seed)
            QVERIFY(sameJobs(taskOf(seed).made(), taskOf(seed).made()));
    }

    void confirmedPlanStays() {
        size_t confirmed = 0;
        for (unsigned seed = 1; seed <= 200; ++seed)
            confirmed += confirmedStays(taskOf(seed), seed);
        QVERIFY(confirmed > 500);
    }

    void planningGoesAroundWhatIsConfirmed() {
        int kept = 0;
        int added = 0;
        for (unsigned seed = 1; seed <= 200; ++seed) {
            Task task = taskOf(seed);
            const Plan first = task.made();
            for (const Job& job : first.jobs) {
                if (job.outing != 1) continue;
                task.state.committed.push_back(job);
                task.state.committed.back().state = JobState::Confirmed;
            }
            const Plan again = task.made();
            for (const Job& job : task.state.committed) {
                QVERIFY(std::find(again.jobs.begin(), again.jobs.end(), job) != again.jobs.end());
            }
            const std::vector<Finding> violations = violationsOf(task.state, again);
            QVERIFY2(violations.empty(),
                     qPrintable(QString("seed %1: %2")
                                    .arg(seed)
                                    .arg(QString::fromLatin1(violations.empty() ? QByteArray() : violations.front().rule))));
            kept += int(task.state.committed.size());
            added += int(again.jobs.size() - task.state.committed.size());
        }
        QVERIFY(kept > 200 && added > 50);
    }

    void objectiveIsWhatTheDaysSay() {
        for (unsigned seed = 1; seed <= 60; ++seed) {
            const Task task = taskOf(seed);
            const Plan made = task.made();
            for (const DayPlan& day : made.days) {
                QCOMPARE(objectiveOf(task.state, made, day.date) <=> day.objective, std::strong_ordering::equal);
                QVERIFY(day.bound <= day.objective);
                QCOMPARE(day.proven, day.bound == day.objective);
            }
        }
    }

    /// Not a law for a search that is cut short: how often it is broken is measured and kept small.
    void lessToDoIsNotWorse() {
        int tried = 0;
        int worse = 0;
        for (unsigned seed = 1; seed <= 120; ++seed) {
            Task task = taskOf(seed);
            const Plan before = task.made();
            if (!before.occupancy.conflicts.empty()) continue;
            const std::vector<Series> all = task.state.series;
            for (size_t i = 0; i < all.size(); ++i) {
                if (all[i].kind == EventKind::Closure) continue;
                task.state.series = all;
                task.state.series.erase(task.state.series.begin() + std::ptrdiff_t(i));
                ++tried;
                if (worth(task.made().objective()) > worth(before.objective())) {
                    ++worse;
                    qInfo("seed %u without %s is worse", seed, qPrintable(all[i].title));
                }
            }
        }
        qInfo("%d of %d removals made a plan worse", worse, tried);
        QVERIFY(tried > 50);
        QCOMPARE(worse, 0);
    }

    /// How far crowding costs demands beyond those that no lane alone could meet.
    void unmetBeyondTheLanesOwn() {
        std::int64_t unmet = 0;
        std::int64_t alone = 0;
        for (unsigned seed = 1; seed <= 200; ++seed) {
            const Task task = taskOf(seed);
            const Plan made = task.made();
            const DemandSet demands = demandsOf(task.state, made.occupancy, task.now, task.range);
            const Fewest fewest = fewestTreatments(task.state, demands, made.occupancy, task.now);
            unmet += made.objective().unmet;
            alone += fewest.unmet;
            QVERIFY(made.objective().unmet >= fewest.unmet);
        }
        qInfo("%lld demands unmet, %lld of them on the lanes' own account", static_cast<long long>(unmet),
              static_cast<long long>(alone));
    }
};

QTEST_GUILESS_MAIN(PlanProperties)
#include "tst_plan_properties.moc"
