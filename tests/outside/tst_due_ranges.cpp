// Due days on simulated centres whose truth is known: machines that were each seen for 35 days (what was not done for 7), with a
// plan that is kept but for what comes besides and what is not done. Does a duty that counts lanes fall due within its range as
// often as promised, within three standard errors (binomial) of 1,000 machines? Levels of lanes are held against 20,000, so that
// what is printed is how far they are off and not chance: about 1 in 100 at either end, since what is believed beforehand is not
// how these machines were drawn. A level of whole days has no more than its share before it and no less up to it.
#include "core/season/work_ahead.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace laneward;

namespace {

constexpr int machines = 1'000;
constexpr int manyMachines = 20'000;
constexpr int firstSeed = 50'000;  // what is believed beforehand was chosen while looking at others
constexpr int horizon = 112;

constexpr int planned = 8;  // lanes a day
const MachineId heron{"heron"};
const QDate today(2026, 11, 26);

struct Truth {
    double besides = 0;  ///< a day
    double missed = 0;
    int pairs = 1;  ///< at most, of a run besides the plan
};

class House {
public:
    explicit House(int seed) : m_dice(unsigned(seed) * 7'919 + 5) {
        m_truth = {between(0.05, 0.6), between(0, 0.08), 1 + int(between(0, 6))};
        m_besides = events(m_truth.besides, openWindowDays);
        m_missed = events(m_truth.missed, openJobDays);
    }

    StrayRates rates() const {
        return {strayWork(m_besides, openWindowDays, besidesPrior), strayWork(m_missed, openJobDays, missedPrior)};
    }

    /// What the program has seen of it: runs besides the plan, and runs of confirmed jobs that left lanes out.
    SeasonState season() const {
        SeasonState season;
        season.centre.machines.push_back({});
        season.centre.machines.back().id = heron;
        const auto ran = [&](int lanes, const JobId& job) {
            RunLog run;
            run.id = {QString("run %1").arg(season.runs.size())};
            run.machine = heron;
            run.job = job;
            run.lanes = {{1, {}}};
            run.use.laneRuns = lanes;
            season.runs.push_back(run);
        };
        for (std::int64_t lanes : m_besides)
            ran(int(lanes), {});
        for (std::int64_t lanes : m_missed) {
            Job job;
            job.id = {QString("job %1").arg(season.confirmed.size())};
            job.machine = heron;
            job.use.laneRuns = 20;
            season.confirmed.push_back(job);
            ran(20 - int(lanes), job.id);
        }
        return season;
    }

    /// Lanes by the end of each day ahead, less what the plan has.
    std::vector<double> stray() {
        std::vector<double> sums;
        double sum = 0;
        for (int day = 0; day < horizon; ++day) {
            for (std::int64_t lanes : events(m_truth.besides, 1))
                sum += double(lanes);
            for (std::int64_t lanes : events(m_truth.missed, 1))
                sum -= double(lanes);
            sums.push_back(sum);
        }
        return sums;
    }

    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(m_dice); }

private:
    std::vector<std::int64_t> events(double rate, int days) {
        std::vector<std::int64_t> sizes;
        for (int n = std::poisson_distribution<int>(rate * days)(m_dice); n > 0; --n)
            sizes.push_back(2 * std::uniform_int_distribution<int>(1, m_truth.pairs)(m_dice));
        return sizes;
    }

    std::mt19937 m_dice;
    Truth m_truth;
    std::vector<std::int64_t> m_besides;
    std::vector<std::int64_t> m_missed;
};

struct Share {
    int inside = 0;
    int all = 0;
    double share() const { return double(inside) / all; }
    static double error(double promised) { return std::sqrt(promised * (1 - promised) / machines); }
};

}  // namespace

class DueRangesTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void lanesReached_data();
    void lanesReached();
    void dueDays();
};

void DueRangesTest::lanesReached_data() {
    QTest::addColumn<int>("days");
    for (int days : {14, 28, 56, 84})
        QTest::newRow(qPrintable(QString("%1 days").arg(days))) << days;
}

/// The levels of what comes besides the plan.
void DueRangesTest::lanesReached() {
    QFETCH(int, days);
    Share early, likely, late;
    for (int seed = 0; seed < manyMachines; ++seed) {
        House house(firstSeed + seed);
        const double there = house.stray()[size_t(days) - 1];
        const auto count = [&](Share& share, double level) {
            ++share.all;
            // Lumps are of two lanes: a value on the level itself is on either side by chance.
            share.inside += there - 1 + house.between(0, 2) <= strayQuantile(house.rates(), days, level);
        };
        count(early, 0.05);
        count(likely, 0.5);
        count(late, 0.95);
    }
    qInfo("%d days: below the 5 %% level %.1f %% (+- %.1f), the 50 %% level %.1f %% (+- %.1f), the 95 %% level %.1f %% (+- %.1f)",
          days, 100 * early.share(), 100 * early.error(0.05), 100 * likely.share(), 100 * likely.error(0.5), 100 * late.share(),
          100 * late.error(0.95));
    QVERIFY(std::abs(early.share() - 0.05) < 3 * early.error(0.05));
    QVERIFY(std::abs(likely.share() - 0.5) < 3 * likely.error(0.5));
    QVERIFY(std::abs(late.share() - 0.95) < 3 * late.error(0.95));
}

/// From runs, jobs and a plan to the days on which 400 lanes are reached.
void DueRangesTest::dueDays() {
    Plan ahead;
    ahead.range = {today, today.addDays(horizon - 1)};
    for (int day = 0; day < horizon; ++day) {
        Job job;
        job.machine = heron;
        job.date = today.addDays(day);
        job.lanes = {{1, {}}};
        job.use.laneRuns = planned;
        ahead.jobs.push_back(job);
    }
    Duty duty;
    duty.triggers = {{MeterKind::Lanes, 400}};
    Share beforeEarly, untilEarly, beforeLikely, untilLikely, fromLate, afterLate;
    double width = 0;
    for (int seed = 0; seed < machines; ++seed) {
        House house(firstSeed + seed);
        const WorkAhead work = workAhead(house.season(), ahead, heron, today);
        const DueRange due = dueOf(duty, LastDone{}, {{}, &work, today});
        const std::vector<double> stray = house.stray();
        int day = 0;
        while (day < horizon && stray[size_t(day)] + planned * (day + 1) < 400)
            ++day;
        const QDate really = today.addDays(day);
        QVERIFY(due.early && due.likely && due.late && day < horizon);
        const auto count = [](Share& share, bool is) { ++share.all, share.inside += is; };
        count(beforeEarly, really < *due.early);
        count(untilEarly, really <= *due.early);
        count(beforeLikely, really < *due.likely);
        count(untilLikely, really <= *due.likely);
        count(fromLate, really >= *due.late);
        count(afterLate, really > *due.late);
        width += double(due.early->daysTo(*due.late)) / machines;
    }
    qInfo(
        "400 lanes: %.1f %% before the early day, %.1f %% up to it; %.1f %% before the likely day, %.1f %% up to it; %.1f %% "
        "after "
        "the late day, %.1f %% from it on; ranges are %.1f days wide on average",
        100 * beforeEarly.share(), 100 * untilEarly.share(), 100 * beforeLikely.share(), 100 * untilLikely.share(),
        100 * afterLate.share(), 100 * fromLate.share(), width);
    const auto brackets = [](const Share& less, double level, const Share& more) {
        return less.share() < level + 3 * less.error(level) && more.share() > level - 3 * more.error(level);
    };
    QVERIFY(brackets(beforeEarly, 0.05, untilEarly));
    QVERIFY(brackets(beforeLikely, 0.5, untilLikely));
    QVERIFY(brackets(afterLate, 0.05, fromLate));
}

QTEST_GUILESS_MAIN(DueRangesTest)
#include "tst_due_ranges.moc"
