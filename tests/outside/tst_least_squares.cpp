// Least squares against the certified values of the NIST Statistical Reference Dataset Misra1a (y = b1 (1 - exp(-b2 x)),
// Misra 1978; data and values from memory: only the right ones agree to all digits) and Student's t against NIST/SEMATECH
// e-Handbook 1.3.6.7.2 (from memory).
#include "core/statistics/least_squares.h"

#include <QTest>

#include <cmath>

using namespace laneward;

class LeastSquaresTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void quantilesOfStudentsT();
    void certifiedValues();
};

void LeastSquaresTest::quantilesOfStudentsT() {
    for (const auto& [freedom, printed] : {std::pair{1, 12.706}, {2, 4.303}, {5, 2.571}, {10, 2.228}, {30, 2.042}, {100, 1.984}})
        QVERIFY(std::abs(studentQuantile(0.975, freedom) - printed) <= 5.1e-4);
    QVERIFY(std::abs(studentQuantile(0.95, 10) - 1.812) <= 5.1e-4);
}

void LeastSquaresTest::certifiedValues() {
    const std::vector<double> y{10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78};
    const std::vector<double> x{77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0};
    const auto shape = [&x](double b2) {
        std::vector<double> f;
        for (double one : x)
            f.push_back(-std::expm1(-b2 * one));
        return f;
    };
    const ScaledFit fit = fitScaled(y, shape, {0, 0.01});
    const auto near = [](double ours, double certified) { return std::abs(ours / certified - 1); };
    qInfo("Misra1a: b1 %.10g, b2 %.10g, residual sum of squares %.10g", fit.k, fit.t, fit.sumOfSquares);
    QVERIFY(near(fit.k, 2.3894212918e+02) <= 1e-6);
    QVERIFY(near(fit.t, 5.5015643181e-04) <= 1e-6);
    QVERIFY(near(fit.kDeviation, 2.7070075241e+00) <= 1e-4);
    QVERIFY(near(fit.tDeviation, 7.2668688436e-06) <= 1e-4);
    QVERIFY(near(fit.sumOfSquares, 1.2455138894e-01) <= 1e-9);
    QVERIFY(near(fit.deviation, 1.0187876330e-01) <= 1e-9);
    QCOMPARE(fit.values, 14);
}

QTEST_GUILESS_MAIN(LeastSquaresTest)
#include "tst_least_squares.moc"
