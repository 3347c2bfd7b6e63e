// Average run lengths against those of the R package spc 0.6.7 (xcusum.arl, xewma.arl; the shape of NIST/SEMATECH e-Handbook
// 6.3.2.3.1) in data/spc.json, the published designs of Lucas and Saccucci (1990) among them, and against runs drawn at random.
#include "core/statistics/run_lengths.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

#include <cmath>
#include <random>

using namespace laneward;

namespace {

double relative(double ours, double theirs) { return std::abs(ours / theirs - 1); }

}  // namespace

class RunLengthsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void limitsOfThreeSigma();
    void cusum_data();
    void cusum();
    void limitOfCusum();
    void ewma();
    void drawnRuns();

private:
    QJsonObject m_cusum;
    QJsonObject m_ewma;
};

void RunLengthsTest::initTestCase() {
    QFile file(qEnvironmentVariable("LANEWARD_SOURCE") + "/tests/outside/data/spc.json");
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QJsonObject data = QJsonDocument::fromJson(file.readAll()).object();
    m_cusum = data["cusum_arl"].toObject();
    m_ewma = data["ewma_arl"].toObject();
}

void RunLengthsTest::limitsOfThreeSigma() {
    const QJsonArray shifts = m_cusum["shift_sigma"].toArray();
    const QJsonArray lengths = m_cusum["shewhart_3sigma"].toArray();
    QCOMPARE(lengths.size(), 10);
    for (int i = 0; i < lengths.size(); ++i)
        QVERIFY(std::abs(runLengthOfLimits(3, shifts[i].toDouble()) - lengths[i].toDouble()) <= 1e-3);
}

void RunLengthsTest::cusum_data() {
    QTest::addColumn<double>("h");
    QTest::addColumn<QString>("key");
    QTest::newRow("h 4, one side") << 4.0 << "h4_one_sided";
    QTest::newRow("h 4, both sides") << 4.0 << "h4_two_sided";
    QTest::newRow("h 5, one side") << 5.0 << "h5_one_sided";
    QTest::newRow("h 5, both sides") << 5.0 << "h5_two_sided";
}

void RunLengthsTest::cusum() {
    QFETCH(double, h);
    QFETCH(QString, key);
    const CusumRule rule{m_cusum["k"].toDouble(), h};
    const QJsonArray shifts = m_cusum["shift_sigma"].toArray();
    const QJsonArray lengths = m_cusum[key].toArray();
    QCOMPARE(lengths.size(), 10);
    double largest = 0;
    for (int i = 0; i < lengths.size(); ++i) {
        const double shift = shifts[i].toDouble();
        const double ours = key.endsWith("one_sided") ? runLengthOfOneSidedCusum(rule, shift) : runLengthOfCusum(rule, shift);
        largest = std::max(largest, relative(ours, lengths[i].toDouble()));
    }
    qInfo("CUSUM, %s: at most %.1e off (0.5 %% allowed)", QTest::currentDataTag(), largest);
    QVERIFY(largest <= m_cusum["rel_tol"].toDouble());
}

void RunLengthsTest::limitOfCusum() {
    const double h = cusumLimitFor(370, m_cusum["k"].toDouble());
    QVERIFY(std::abs(h - m_cusum["h_for_two_sided_arl0_370"].toDouble()) <= 1e-3);
    QVERIFY(std::abs(h - CusumRule().h) <= 1e-5);
}

void RunLengthsTest::ewma() {
    const QJsonArray rows = m_ewma["rows"].toArray();
    QCOMPARE(rows.size(), 5);
    double largest = 0;
    for (const QJsonValue& value : rows) {
        const QJsonObject row = value.toObject();
        const EwmaRule rule{row["lambda"].toDouble(), row["L"].toDouble(), true};
        for (const auto& [shift, key] : {std::pair{0.0, "arl0"}, {0.5, "arl_0.5"}, {1.0, "arl_1"}, {2.0, "arl_2"}})
            largest = std::max(largest, relative(runLengthOfEwma(rule, shift), row[QLatin1String(key)].toDouble()));
    }
    qInfo("EWMA, five designs: at most %.1e off (0.5 %% allowed)", largest);
    QVERIFY(largest <= m_ewma["rel_tol"].toDouble());
}

/// The chart itself takes as long as its run length says, within three standard errors.
void RunLengthsTest::drawnRuns() {
    constexpr int runs = 4'000;
    constexpr double shift = 1;
    std::mt19937 generator(20261);
    std::normal_distribution<double> normal(shift, 1);
    double sum = 0;
    double squares = 0;
    for (int run = 0; run < runs; ++run) {
        std::vector<double> values(400);
        for (double& value : values)
            value = normal(generator);
        const CusumChart chart = cusumChart(values, {0, 1});
        QVERIFY(!chart.highSignals.empty());
        size_t first = chart.highSignals.front();
        if (!chart.lowSignals.empty()) first = std::min(first, chart.lowSignals.front());
        sum += double(first + 1);
        squares += double(first + 1) * double(first + 1);
    }
    const double mean = sum / runs;
    const double error = std::sqrt((squares / runs - mean * mean) / runs);
    qInfo("CUSUM at a shift of 1 sigma: %.2f values by the equation, %.2f +- %.2f drawn", runLengthOfCusum({}, shift), mean,
          error);
    QVERIFY(std::abs(mean - runLengthOfCusum({}, shift)) <= 3 * error);
}

QTEST_GUILESS_MAIN(RunLengthsTest)
#include "tst_run_lengths.moc"
