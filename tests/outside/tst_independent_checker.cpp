// Whole plans against a second checker that shares no code with planning (tests/support/plan_checker.h). Source of the rules: the
// product's own definition of a valid plan.
#include "core/planning/plan.h"
#include "tests/support/plan_checker.h"
#include "tests/support/random_centre.h"

#include <QTest>

using namespace laneward;

namespace {

QString text(const std::vector<Finding>& findings) {
    QStringList rules;
    for (const Finding& f : findings)
        rules << QString::fromLatin1(f.rule);
    return rules.join(", ");
}

Plan planOf(const State& state, unsigned seed) {
    std::mt19937 generator(seed);
    const DateRange range{support::randomBegins(), support::randomBegins().addDays(support::between(generator, 0, 2))};
    const Instant now = dayOf(state.centre, range.first).begin + minutes(support::between(generator, 0, 600));
    return plan(state, now, range, 300);
}

/// Spoils one thing of one job.
void spoil(Plan& plan, std::mt19937& generator) {
    Job& job = plan.jobs[size_t(support::between(generator, 0, int(plan.jobs.size()) - 1))];
    const Seconds by{support::between(generator, -5'400, 5'400)};
    switch (support::between(generator, 0, 7)) {
        case 0:
        case 1:
            job.time = {job.time.begin + by, job.time.end + by};
            for (LaneTime& lane : job.lanes)
                lane.time = {lane.time.begin + by, lane.time.end + by};
            for (Step& step : job.steps)
                step.time = {step.time.begin + by, step.time.end + by};
            break;
        case 2:
            job.lanes.back().time.end = job.lanes.back().time.end - Seconds{support::between(generator, 1, 60)};
            break;
        case 3:
            job.lanes.front().lane += support::between(generator, 0, 1) ? 1 : -1;
            break;
        case 4:
            job.steps.erase(job.steps.begin());
            break;
        case 5:
            job.treatment = job.pattern ? Treatment::ConditionOnly : Treatment::CleanAndCondition;
            break;
        case 6:
            if (job.pattern) job.pattern = PatternId{QString("p%1").arg(support::between(generator, 0, 3))};
            break;
        default:
            plan.jobs.push_back(job);
            plan.jobs.back().id.value += u"-again";
            plan.jobs.back().outing += 100;
            break;
    }
}

}  // namespace

class IndependentChecker : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void plansOfRandomCentresAreValid() {
        int jobs = 0;
        int unmet = 0;
        for (unsigned seed = 1; seed <= 500; ++seed) {
            const State state = support::randomCentre(seed);
            const Plan made = planOf(state, seed);
            const QStringList faults = support::faultsOf(state, made);
            QVERIFY2(faults.isEmpty(), qPrintable(QString("seed %1: %2").arg(seed).arg(faults.join(", "))));
            const QString violations = text(violationsOf(state, made));
            QVERIFY2(violations.isEmpty(), qPrintable(QString("seed %1: %2").arg(seed).arg(violations)));
            jobs += int(made.jobs.size());
            unmet += int(made.objective().unmet);
        }
        qInfo("500 centres: %d jobs, %d demands unmet", jobs, unmet);
        QVERIFY(jobs > 1'000);
    }

    void bothNoticePlantedFaults() {
        int spoiled = 0;
        int noticed = 0;
        for (unsigned seed = 1; seed <= 150; ++seed) {
            const State state = support::randomCentre(seed);
            const Plan made = planOf(state, seed);
            std::mt19937 generator(seed);
            for (int k = 0; k < 12 && !made.jobs.empty(); ++k) {
                Plan bad = made;
                spoil(bad, generator);
                const QStringList faults = support::faultsOf(state, bad);
                const std::vector<Finding> violations = violationsOf(state, bad);
                const QString message = QString("seed %1, change %2: checker [%3], violations [%4]")
                                            .arg(seed)
                                            .arg(k)
                                            .arg(faults.join(", "), text(violations));
                QVERIFY2(faults.isEmpty() == violations.empty(), qPrintable(message));
                ++spoiled;
                noticed += faults.isEmpty() ? 0 : 1;
            }
        }
        qInfo("%d of %d changes break a plan; both checkers agree on each", noticed, spoiled);
        QVERIFY(noticed > spoiled / 2);
    }
};

QTEST_GUILESS_MAIN(IndependentChecker)
#include "tst_independent_checker.moc"
