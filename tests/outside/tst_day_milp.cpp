// One day's search against a general solver of mixed integer linear programs: HiGHS, compiled to WebAssembly as the npm package
// highs 1.15.3 (MIT). Random evenings of 4 to 12 runs on two machines, with tanks that never run out and a person for every
// machine (the program states neither); see tests/support/day_program.h. The solver minimises outings, changes, crossed lanes and
// freshness in this order over plans that keep runs whole, meet every target and stay in paid time.
//
// Where both prove their plan, every component is equal. Where the solver stops at its limit, ours lies within its bounds. Where
// the search proves that there is no plan without trouble, the program has none, and where it has one with fewer outings or where
// the program has none, some run is divided.
#include "tests/support/day_program.h"
#include "tests/support/random_evening.h"
#include "tests/support/small_day.h"

#include "core/planning/day_search.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTest>

#include <algorithm>
#include <ctime>

using namespace laneward::planning;

namespace {

enum : size_t { Unmet, Late, Treatments, Overtime, Tight, Outings };

constexpr std::int64_t nodes = 20'000;

struct Day {
    unsigned seed = 0;
    DayProblem problem;
    support::DayProgram program;
    DaySolution ours;
    double seconds = 0;  ///< of processor time, for ours
};

struct Answer {
    QString status;
    std::optional<Sec> value;
    Sec bound = 0;
};

struct Tally {
    int days = 0;
    int oursProven = 0;
    int bothProven = 0;
    int equal = 0;     ///< in every component, the solver's proven
    int within = 0;    ///< the solver's bounds, where one of the two stopped
    int divided = 0;   ///< ours has fewer outings, or whole runs have no plan
    int troubled = 0;  ///< no plan keeps every target, by both
    std::vector<double> oursMs, theirsMs, ratios;
};

double processorSeconds() { return double(std::clock()) / CLOCKS_PER_SEC; }

/// Repeated until it can be measured.
void solveTimed(Day& day) {
    const double begin = processorSeconds();
    int times = 0;
    do {
        day.ours = solveDay(day.problem, nodes, {});
        ++times;
    } while (processorSeconds() - begin < 0.01);
    day.seconds = (processorSeconds() - begin) / times;
}

/// The first `count` evenings that have as many runs as asked.
std::vector<Day> daysOf(int runs, int count) {
    std::vector<Day> days;
    for (unsigned seed = 1; int(days.size()) < count; ++seed) {
        Day day;
        day.seed = seed;
        day.problem = support::withPlenty(support::problemOf(support::randomEvening(seed, {runs, 2, 3})));
        const auto program = support::programOf(day.problem);
        if (!program || program->runs != runs) continue;
        day.program = *program;
        solveTimed(day);
        days.push_back(std::move(day));
    }
    return days;
}

bool isTroubled(const Score& score) { return score[Unmet] + score[Late] + score[Overtime] + score[Tight] > 0; }

/// Whether some run is worked in more than one go; a block may hold several runs.
bool isDivided(const Day& day) {
    const std::vector<int> runs = support::runOf(day.problem);
    int parts = 0;
    for (const BlockTimes& block : day.ours.placement.blocks) {
        int last = -1;
        for (int task : block.tasks) {
            parts += runs[size_t(task)] != last ? 1 : 0;
            last = runs[size_t(task)];
        }
    }
    return parts > day.program.runs;
}

/// One list of answers a day; empty when the solver could not be run.
std::vector<QJsonArray> solved(const std::vector<Day>& days, double limit) {
    QByteArray input;
    for (const Day& day : days) {
        const QJsonObject line{{"limit", limit}, {"lp", day.program.rows}, {"objectives", day.program.objectives}};
        input += QJsonDocument(line).toJson(QJsonDocument::Compact) + '\n';
    }
    QProcess process;
    process.start(QStringLiteral("node"), {qEnvironmentVariable("LANEWARD_SOURCE") + "/tests/outside/tools/solve_programs.js",
                                           qEnvironmentVariable("LANEWARD_BINARY") + "/npm"});
    process.write(input);
    process.closeWriteChannel();
    if (!process.waitForFinished(300'000) || process.exitCode() != 0) {
        qWarning("solve_programs.js: %s", process.readAllStandardError().constData());
        return {};
    }
    std::vector<QJsonArray> answers;
    for (const QByteArray& text : process.readAllStandardOutput().trimmed().split('\n'))
        answers.push_back(QJsonDocument::fromJson(text).array());
    return answers;
}

Answer answerOf(const Day& day, const QJsonArray& list, qsizetype k) {
    const QJsonObject object = list[k].toObject();
    Answer answer{object["status"].toString(), std::nullopt, 0};
    const Sec constant = day.program.constants[size_t(k)];
    if (object.contains("value")) answer.value = Sec(object["value"].toDouble()) + constant;
    answer.bound = Sec(object["bound"].toDouble()) + constant;
    return answer;
}

/// What one component says about ours; empty = it agrees.
QString wrong(const Answer& theirs, Sec ours, bool proven) {
    const QString numbers = QString("ours %1%2, theirs %3 [%4, %5]")
                                .arg(ours)
                                .arg(proven ? " proven" : "", theirs.status)
                                .arg(theirs.bound)
                                .arg(theirs.value ? QString::number(*theirs.value) : QString("-"));
    if (ours < theirs.bound) return numbers;
    if (proven && theirs.value && ours > *theirs.value) return numbers;
    return {};
}

void compare(const Day& day, const QJsonArray& list, Tally& tally) {
    const Score& score = day.ours.placement.score;
    const QString name = QString("evening %1 of %2 runs: ").arg(day.seed).arg(day.program.runs);
    double seconds = 0;
    for (const QJsonValue& answer : list)
        seconds += answer.toObject()["seconds"].toDouble();
    ++tally.days;
    tally.oursProven += day.ours.proven() ? 1 : 0;
    if (isTroubled(score)) {
        const Answer answer = answerOf(day, list, 0);
        QVERIFY2(!answer.value || !day.ours.proven(), qPrintable(name + "a plan without trouble exists"));
        tally.troubled += answer.status == "infeasible" ? 1 : 0;
        return;
    }
    const Answer outings = answerOf(day, list, 0);
    if (outings.status == "infeasible" || score[Outings] < outings.bound) {
        const QString fault = QString("%1 outings against %2 %3, but whole runs");
        QVERIFY2(isDivided(day), qPrintable(name + fault.arg(score[Outings]).arg(outings.status).arg(outings.bound)));
        ++tally.divided;
        return;
    }
    bool equal = list.size() == qsizetype(support::programObjectives);
    for (qsizetype k = 0; k < list.size(); ++k) {
        const Answer answer = answerOf(day, list, k);
        const Sec ours = score[Outings + size_t(k)];
        const QString fault = wrong(answer, ours, day.ours.proven());
        QVERIFY2(fault.isEmpty(), qPrintable(name + QString("component %1: ").arg(Outings + size_t(k)) + fault));
        equal = equal && answer.status == "optimal" && ours == answer.value;
        if (ours != answer.value) break;  // what follows is no measure for ours
    }
    tally.equal += equal ? 1 : 0;
    const bool both = equal && day.ours.proven();
    ++(both ? tally.bothProven : tally.within);
    if (!both) return;
    tally.oursMs.push_back(1e3 * day.seconds);
    tally.theirsMs.push_back(1e3 * seconds);
    tally.ratios.push_back(seconds / day.seconds);
}

double median(std::vector<double> values) {
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

}  // namespace

class tst_day_milp : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void evenings_data();
    void evenings();
    void cleanupTestCase();

private:
    std::vector<double> m_ratios;
};

void tst_day_milp::evenings_data() {
    QTest::addColumn<int>("runs");
    QTest::addColumn<int>("count");
    QTest::addColumn<double>("limit");
    QTest::addColumn<int>("leastProven");
    QTest::newRow("4 runs") << 4 << 20 << 20.0 << 10;
    QTest::newRow("6 runs") << 6 << 8 << 10.0 << 2;
    QTest::newRow("8 runs") << 8 << 4 << 5.0 << 0;
    QTest::newRow("10 runs") << 10 << 3 << 5.0 << 0;
    QTest::newRow("12 runs") << 12 << 3 << 5.0 << 0;
}

void tst_day_milp::evenings() {
    QFETCH(int, runs);
    QFETCH(int, count);
    QFETCH(double, limit);
    QFETCH(int, leastProven);
    const std::vector<Day> days = daysOf(runs, count);
    const std::vector<QJsonArray> answers = solved(days, limit);
    QVERIFY2(answers.size() == days.size(),
             "node and the package highs are needed: npm ci with tests/outside/tools/package.json");
    Tally tally;
    for (size_t i = 0; i < days.size(); ++i) {
        compare(days[i], answers[i], tally);
        if (QTest::currentTestFailed()) return;
    }
    qInfo("%d runs: %d days, %d proven by ours; proven by both and equal %d, within bounds %d, divided %d, no plan by both %d",
          runs, tally.days, tally.oursProven, tally.bothProven, tally.within, tally.divided, tally.troubled);
    qInfo("%d runs: equal to the solver's proven plan in every component: %d", runs, tally.equal);
    if (!tally.ratios.empty())
        qInfo("%d runs: median of those that both prove: ours %.2f ms, general solver %.0f ms, general solver / ours %.0f", runs,
              median(tally.oursMs), median(tally.theirsMs), median(tally.ratios));
    m_ratios.insert(m_ratios.end(), tally.ratios.begin(), tally.ratios.end());
    QVERIFY(tally.bothProven >= leastProven);
}

void tst_day_milp::cleanupTestCase() {
    qInfo("general solver / ours, median of %zu days that both prove: %.0f (processor time)", m_ratios.size(), median(m_ratios));
}

QTEST_GUILESS_MAIN(tst_day_milp)
#include "tst_day_milp.moc"
