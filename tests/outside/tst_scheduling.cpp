// Published instances of machine scheduling through one day's search: every job is one lane with a recipe of its own, nothing
// takes time between lanes, and a job's release and due date are when its lane is free and when it is due.
//
//   SC01  1|r|Lmax      as a bound: with due dates Lmax later nobody is late, one second less and somebody is
//   SC02  1|r,q|Cmax    the same, due dates being the end less the job's tail
//   SC03  1||sum T      the sum of late seconds
//   SC04  1||sum U      a lane that is free only until its due date is late by not being done: the unmet demands
//   SC05  P4||Cmax      as a bound: all jobs due at the makespan; that a second less is too little is not proven
//
// The numbers are those of Pinedo, Scheduling, ch. 3 (SC01, SC03, SC04) and ch. 5 (SC05, Graham's worst case for the longest
// first) and Carlier, One-machine scheduling problem, EJOR 11 (1982) (SC02), from memory; each optimum was recomputed by
// enumeration. Also 1||sum T on jobs drawn at random, against the recursion over subsets of Held and Karp (1962), from memory:
// up to five jobs all are proven, with six the search's steps often do not suffice, and what is not proven may be later.
//
// Cannot be expressed: earliness and tardiness with weights about a common due date (OR-Library schinfo) and weighted tardiness
// (OR-Library wtinfo): a late second counts the same whatever the lane, and comes before a second that is too early.
#include "core/planning/day_search.h"

#include <QTest>

#include <algorithm>
#include <limits>
#include <numeric>
#include <random>

using namespace laneward;
using namespace laneward::planning;

namespace {

enum : size_t { Unmet, Late };

constexpr std::int64_t nodes = 20'000;
constexpr Sec horizon = 10'000;
// A machine waits less than going home and leaving again takes. With one second for that, it never waits, and any pause is a way
// home; everything begins a second later.
constexpr Sec leave = 1;

struct Jobs {
    std::vector<Sec> lengths;
    std::vector<Sec> releases;  ///< empty = 0
    std::vector<Sec> due;
};

/// `last` = a lane's time ends with its due date.
DayProblem dayOf(const Jobs& jobs, int machines, bool last = false) {
    DayProblem day;
    day.length = horizon;
    for (size_t j = 0; j < jobs.lengths.size(); ++j) {
        DayTask task;
        task.lane = int(j) + 1;
        task.recipe = int(j);
        task.firstSlot = int(j);
        task.slotCount = 1;
        task.target = task.due = leave + jobs.due[j];
        task.play = horizon;
        task.scored = true;
        task.onlyHere = true;
        day.tasks.push_back(task);
        day.slots.push_back({leave + (jobs.releases.empty() ? 0 : jobs.releases[j]), last ? task.due : horizon});
        day.recipes.push_back({Treatment::CleanAndCondition, 0});
    }
    DayMachine machine;
    machine.leave = leave;
    machine.lane = jobs.lengths;
    machine.use.resize(jobs.lengths.size());
    machine.full.fill(endless);
    machine.begin = machine.full;
    day.machines.assign(size_t(machines), machine);
    day.shifts.push_back({{0, horizon}, {0, horizon}, machines});
    return day;
}

/// Whether the plan is a schedule: jobs while they are free, one at a time on each machine.
bool isSchedule(const DayProblem& day, const Placement& plan) {
    std::vector<std::vector<Slot>> busy(day.machines.size());
    for (const Trip& trip : plan.trips) {
        for (int b : trip.blocks) {
            const BlockTimes& block = plan.blocks[size_t(b)];
            for (size_t i = 0; i < block.tasks.size(); ++i) {
                const DayTask& task = day.tasks[size_t(block.tasks[i])];
                const Slot& free = day.slots[size_t(task.firstSlot)];
                const Slot work{block.begins[i], block.begins[i] + day.machines[0].lane[size_t(task.recipe)]};
                if (work.begin < free.begin || work.end > free.end) return false;
                for (const Slot& other : busy[size_t(trip.machine)]) {
                    if (other.overlaps(work)) return false;
                }
                busy[size_t(trip.machine)].push_back(work);
            }
        }
    }
    return true;
}

Score solved(const DayProblem& day) {
    const DaySolution found = solveDay(day, nodes, {});
    if (!isSchedule(day, found.placement)) qFatal("not a schedule");
    qInfo("%s: unmet %lld, late %lld", found.proven() ? "proven" : "not proven", qlonglong(found.placement.score[Unmet]),
          qlonglong(found.placement.score[Late]));
    return found.placement.score;
}

std::vector<Sec> plus(std::vector<Sec> values, Sec more) {
    for (Sec& value : values)
        value += more;
    return values;
}

/// Lengths from 1 to 100, due dates spread up to the sum of the lengths.
Jobs randomJobs(std::mt19937& generator, int count) {
    const auto pick = [&](Sec low, Sec high) { return low + Sec(generator() % std::uint32_t(high - low + 1)); };
    Jobs jobs;
    for (int j = 0; j < count; ++j)
        jobs.lengths.push_back(pick(1, 100));
    const Sec sum = std::accumulate(jobs.lengths.begin(), jobs.lengths.end(), Sec{0});
    for (int j = 0; j < count; ++j)
        jobs.due.push_back(pick(sum / 5, sum));
    return jobs;
}

/// The least sum of late seconds of one machine: the last of every set of jobs ends when all of them are done.
Sec leastTardiness(const Jobs& jobs) {
    const size_t n = jobs.lengths.size();
    std::vector<Sec> least(size_t{1} << n, std::numeric_limits<Sec>::max());
    least[0] = 0;
    for (size_t set = 1; set < least.size(); ++set) {
        Sec end = 0;
        for (size_t j = 0; j < n; ++j)
            end += (set >> j & 1) != 0 ? jobs.lengths[j] : 0;
        for (size_t j = 0; j < n; ++j) {
            if ((set >> j & 1) == 0) continue;
            least[set] = std::min(least[set], least[set & ~(size_t{1} << j)] + std::max<Sec>(0, end - jobs.due[j]));
        }
    }
    return least.back();
}

}  // namespace

class tst_scheduling : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void maximumLatenessWithReleases();
    void tails();
    void totalTardiness();
    void lateJobs();
    void makespanOfFour();
    void totalTardinessOfRandomJobs_data();
    void totalTardinessOfRandomJobs();
};

void tst_scheduling::maximumLatenessWithReleases() {
    const Jobs jobs{{4, 2, 6, 5}, {0, 1, 3, 5}, {8, 12, 11, 10}};
    QCOMPARE(solved(dayOf({jobs.lengths, jobs.releases, plus(jobs.due, 5)}, 1))[Late], Sec{0});
    const Score less = solved(dayOf({jobs.lengths, jobs.releases, plus(jobs.due, 4)}, 1));
    QCOMPARE(less[Unmet], Sec{0});
    QVERIFY(less[Late] > 0);
}

void tst_scheduling::tails() {
    const std::vector<Sec> releases{10, 13, 11, 20, 30, 0, 30};
    const std::vector<Sec> lengths{5, 6, 7, 4, 3, 6, 2};
    const std::vector<Sec> tails{7, 26, 24, 21, 8, 17, 0};
    for (Sec end : {50, 49}) {
        Jobs jobs{lengths, releases, {}};
        for (Sec tail : tails)
            jobs.due.push_back(end - tail);
        const Score score = solved(dayOf(jobs, 1));
        QCOMPARE(score[Unmet], Sec{0});
        QCOMPARE(score[Late] > 0, end < 50);
    }
}

void tst_scheduling::totalTardiness() {
    const Jobs jobs{{121, 79, 147, 83, 130}, {}, {260, 266, 266, 336, 337}};
    QCOMPARE(leastTardiness(jobs), Sec{370});
    const Score score = solved(dayOf(jobs, 1));
    QCOMPARE(score[Unmet], Sec{0});
    QCOMPARE(score[Late], Sec{370});
}

void tst_scheduling::lateJobs() {
    const Jobs jobs{{7, 8, 4, 6, 6}, {}, {9, 17, 18, 19, 21}};
    const Score score = solved(dayOf(jobs, 1, true));
    QCOMPARE(score[Unmet], Sec{2});
    QCOMPARE(score[Late], Sec{0});
}

void tst_scheduling::makespanOfFour() {
    const std::vector<Sec> lengths{7, 7, 6, 6, 5, 5, 4, 4, 4};
    QCOMPARE(solved(dayOf({lengths, {}, std::vector<Sec>(9, 12)}, 4))[Late], Sec{0});
    QVERIFY(solved(dayOf({lengths, {}, std::vector<Sec>(9, 11)}, 4))[Late] > 0);
}

void tst_scheduling::totalTardinessOfRandomJobs_data() {
    QTest::addColumn<int>("jobs");
    QTest::addColumn<int>("instances");
    for (int jobs : {3, 4, 5, 6})
        QTest::addRow("%d jobs", jobs) << jobs << 40;
}

void tst_scheduling::totalTardinessOfRandomJobs() {
    QFETCH(int, jobs);
    QFETCH(int, instances);
    std::mt19937 generator(40);
    int proven = 0;
    int equal = 0;
    int late = 0;
    for (int i = 0; i < instances; ++i) {
        const Jobs drawn = randomJobs(generator, jobs);
        const DayProblem day = dayOf(drawn, 1);
        const DaySolution found = solveDay(day, nodes, {});
        QVERIFY(isSchedule(day, found.placement));
        const Sec least = leastTardiness(drawn);
        const Sec ours = found.placement.score[Late];
        QVERIFY(ours >= least && found.bound[Late] <= least);
        QVERIFY(ours == least || !found.proven());
        proven += found.proven() ? 1 : 0;
        equal += ours == least ? 1 : 0;
        late += least > 0 ? 1 : 0;
    }
    qInfo("%d jobs: %d instances, %d of them late, %d equal, %d proven", jobs, instances, late, equal, proven);
    QVERIFY(late > instances / 2);
    if (jobs <= 5) QCOMPARE(proven, instances);
}

QTEST_APPLESS_MAIN(tst_scheduling)
#include "tst_scheduling.moc"
