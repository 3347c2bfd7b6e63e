// Lot sizes of one supply and joint orders of several against a general solver of mixed integer linear programs: HiGHS, compiled
// to WebAssembly as the npm package highs 1.15.3 (MIT), on the program of tests/support/order_program.h. Where both prove their
// plan the costs are equal; where one stops, each lies within the other's bounds. Both find that there is no plan in the same
// cases.
#include "tests/support/random_orders.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QProcess>
#include <QTest>

#include <algorithm>
#include <ctime>

using namespace laneward::ordering;
using support::OrderCase;

namespace {

constexpr std::int64_t effort = 400'000'000;

double processorSeconds() { return double(std::clock()) / CLOCKS_PER_SEC; }

struct Solved {
    OrderCase given;
    JointPlan ours;
    double seconds = 0;  ///< of processor time
};

JointPlan planned(const OrderCase& given) {
    if (given.orderCosts.empty()) return bestOrders(given.problem, effort, {});
    const auto lots = bestLots(given.problem.supplies.front(), given.orderCosts);
    if (!lots) return {{}, impossible, impossible, false};
    return {{lots->lots}, lots->cost, lots->cost, false};
}

/// Repeated until it can be measured.
Solved solvedTimed(const OrderCase& given) {
    Solved solved{given, {}, 0};
    const double begin = processorSeconds();
    int times = 0;
    do {
        solved.ours = planned(given);
        ++times;
    } while (processorSeconds() - begin < 0.005);
    solved.seconds = (processorSeconds() - begin) / times;
    return solved;
}

/// One answer a case; empty when the solver could not be run.
std::vector<QJsonObject> answers(const std::vector<Solved>& cases, double limit) {
    QByteArray input;
    for (const Solved& solved : cases) {
        const support::OrderProgram program = programOf(solved.given);
        const QJsonObject line{{"limit", limit}, {"lp", program.rows}, {"objectives", QJsonArray{program.objective}}};
        input += QJsonDocument(line).toJson(QJsonDocument::Compact) + '\n';
    }
    QProcess process;
    process.start(QStringLiteral("node"), {qEnvironmentVariable("LANEWARD_SOURCE") + "/tests/outside/tools/solve_programs.js",
                                           qEnvironmentVariable("LANEWARD_BINARY") + "/npm"});
    process.write(input);
    process.closeWriteChannel();
    if (!process.waitForFinished(600'000) || process.exitCode() != 0) {
        qWarning("solve_programs.js: %s", process.readAllStandardError().constData());
        return {};
    }
    std::vector<QJsonObject> answers;
    for (const QByteArray& text : process.readAllStandardOutput().trimmed().split('\n'))
        answers.push_back(QJsonDocument::fromJson(text).array().at(0).toObject());
    return answers;
}

double median(std::vector<double> values) {
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

}  // namespace

class JointOrdersMilpTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void randomCases_data();
    void randomCases();
};

void JointOrdersMilpTest::randomCases_data() {
    QTest::addColumn<int>("supplies");
    QTest::addColumn<int>("periods");
    QTest::addColumn<int>("packs");
    QTest::addColumn<int>("count");
    QTest::addColumn<double>("limit");
    QTest::addColumn<int>("leastEqual");
    QTest::newRow("1 supply, 8 periods") << 1 << 8 << 12 << 60 << 20.0 << 60;
    QTest::newRow("1 supply, 20 periods") << 1 << 20 << 30 << 40 << 20.0 << 38;
    QTest::newRow("2 supplies, 6 periods") << 2 << 6 << 10 << 50 << 20.0 << 48;
    QTest::newRow("3 supplies, 8 periods") << 3 << 8 << 12 << 40 << 10.0 << 38;
    QTest::newRow("4 supplies, 12 periods") << 4 << 12 << 16 << 10 << 5.0 << 6;
}

void JointOrdersMilpTest::randomCases() {
    QFETCH(int, supplies);
    QFETCH(int, periods);
    QFETCH(int, packs);
    QFETCH(int, count);
    QFETCH(double, limit);
    QFETCH(int, leastEqual);
    std::vector<Solved> cases;
    for (int i = 0; i < count; ++i)
        cases.push_back(solvedTimed(support::randomOrders(unsigned(1000 * supplies + i), {supplies, periods, packs})));
    const std::vector<QJsonObject> found = answers(cases, limit);
    QVERIFY2(found.size() == cases.size(), "node and the package highs are needed: npm ci with tests/outside/tools/package.json");
    int proven = 0, equal = 0, none = 0, within = 0;
    std::vector<double> oursMs, theirsMs, ratios;
    for (size_t i = 0; i < cases.size(); ++i) {
        const JointPlan& ours = cases[i].ours;
        const QString status = found[i]["status"].toString();
        const QString name = QString("case %1: ours %2 [%3], theirs %4 %5")
                                 .arg(i)
                                 .arg(ours.cost)
                                 .arg(ours.lowerBound)
                                 .arg(status)
                                 .arg(found[i]["value"].toDouble(-1), 0, 'f', 0);
        proven += ours.isProven() ? 1 : 0;
        if (status == "infeasible") {
            QVERIFY2(!ours.isFound() && ours.isProven(), qPrintable(name));
            ++none;
            continue;
        }
        if (found[i].contains("value")) QVERIFY2(ours.lowerBound <= Cost(found[i]["value"].toDouble()), qPrintable(name));
        QVERIFY2(ours.cost >= Cost(found[i]["bound"].toDouble()), qPrintable(name));
        QVERIFY2(!ours.isFound() || ours.cost == costOf(cases[i].given.problem, ours.lots) || supplies == 1, qPrintable(name));
        if (status != "optimal" || !ours.isProven()) {
            ++within;
            continue;
        }
        QVERIFY2(ours.cost == Cost(found[i]["value"].toDouble()), qPrintable(name));
        ++equal;
        oursMs.push_back(1e3 * cases[i].seconds);
        theirsMs.push_back(1e3 * found[i]["seconds"].toDouble());
        ratios.push_back(theirsMs.back() / oursMs.back());
    }
    qInfo("%d supplies, %d periods: %d cases, proven by ours %d; same cost by both %d, no plan by both %d, within bounds %d",
          supplies, periods, count, proven, equal, none, within);
    qInfo("%d supplies, %d periods: median ours %.3f ms, general solver %.1f ms, general solver / ours %.0f", supplies, periods,
          median(oursMs), median(theirsMs), median(ratios));
    QVERIFY(equal + none >= leastEqual);
}

QTEST_GUILESS_MAIN(JointOrdersMilpTest)
#include "tst_joint_orders_milp.moc"
