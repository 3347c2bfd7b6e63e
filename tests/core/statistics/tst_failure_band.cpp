// The band of a Weibull plot: on the fit, by a delta method done in numbers, and as often right as it says.
#include "core/statistics/failure_band.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace laneward;

namespace {

const std::vector<Life> rivets{{30, true}, {49, true},  {82, true},  {90, true},
                               {96, true}, {10, false}, {45, false}, {100, false}};

std::vector<Life> drawn(std::mt19937_64& random, const Weibull& law, int lives, double seenUntil) {
    std::vector<Life> all;
    for (int n = 0; n < lives; ++n) {
        const double u = double(random() >> 11) / double(1ULL << 53);
        const double age = law.quantile(u);
        all.push_back({std::max(1e-9, std::min(age, seenUntil)), age <= seenUntil});
    }
    return all;
}

}  // namespace

class FailureBandTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void fitLiesInItsBand();
    void slopesAreThoseOfTheHeight();
    void heightsTurnTheLawIntoALine();
    void holdsAsOftenAsItSays();
};

void FailureBandTest::fitLiesInItsBand() {
    const auto fit = fitWeibull(rivets);
    QVERIFY(bool(fit));
    const std::vector<BandPoint> band = failureBand(*fit, {20, 160}, 29);
    QCOMPARE(band.size(), size_t(29));
    QVERIFY(std::abs(band.front().age - 20) < 1e-9 && std::abs(band.back().age - 160) < 1e-9);
    for (size_t n = 0; n < band.size(); ++n) {
        QVERIFY(std::abs(band[n].likely - fit->law.below(band[n].age)) < 1e-12);
        QVERIFY(0 <= band[n].low && band[n].low < band[n].likely && band[n].likely < band[n].high && band[n].high <= 1);
        if (n > 0) QVERIFY(std::abs(band[n].age / band[n - 1].age - std::pow(8, 1.0 / 28)) < 1e-9);  // equal steps of ln age
    }
}

/// The reach on the plot is 1.96 times what small steps of ln shape and ln scale along the covariance give.
void FailureBandTest::slopesAreThoseOfTheHeight() {
    const auto fit = fitWeibull(rivets);
    const double age = 55;
    const auto height = [&](double dShape, double dScale) {
        const double shape = fit->law.shape * std::exp(dShape);
        return shape * (std::log(age) - std::log(fit->law.scale) - dScale);
    };
    const double step = 1e-6;
    const double byShape = (height(step, 0) - height(-step, 0)) / (2 * step);
    const double byScale = (height(0, step) - height(0, -step)) / (2 * step);
    const LogCovariance& c = fit->covariance;
    const double deviation =
        std::sqrt(byShape * byShape * c.shape + byScale * byScale * c.scale + 2 * byShape * byScale * c.both);
    const BandPoint point = failureBand(*fit, {age, 2 * age}, 2).front();
    QVERIFY(std::abs(plotHeight(point.high) - plotHeight(point.likely) - 1.959963984540054 * deviation) < 1e-6);
    QVERIFY(std::abs(plotHeight(point.likely) - plotHeight(point.low) - 1.959963984540054 * deviation) < 1e-6);
}

void FailureBandTest::heightsTurnTheLawIntoALine() {
    const Weibull law{2.5, 800};
    QVERIFY(std::abs(plotHeight(1 - std::exp(-1.0))) < 1e-12);  // 63.2 % at the scale
    QVERIFY(std::abs(plotHeight(law.below(400)) - 2.5 * std::log(0.5)) < 1e-12);
    QVERIFY(std::abs(plotHeight(law.below(1'600)) - 2.5 * std::log(2)) < 1e-9);
}

/// 60 lives, some 40 failures: at each of three ages the truth is within in 92 to 98 of 100 samples.
void FailureBandTest::holdsAsOftenAsItSays() {
    std::mt19937_64 random(20'261'126);
    const Weibull law{2.2, 1'000};
    constexpr int samples = 600;
    std::array<int, 3> held{};
    for (int sample = 0; sample < samples; ++sample) {
        const auto fit = fitWeibull(drawn(random, law, 60, 1'050));
        QVERIFY(bool(fit));
        const std::vector<BandPoint> band = failureBand(*fit, {400, 1'600}, 3);
        for (size_t n = 0; n < band.size(); ++n) {
            const double truth = law.below(band[n].age);
            held[n] += band[n].low <= truth && truth <= band[n].high;
        }
    }
    for (const int times : held) {
        qInfo("held in %.1f of 100", 100.0 * times / samples);
        QVERIFY(times > 0.92 * samples && times < 0.98 * samples);
    }
}

QTEST_GUILESS_MAIN(FailureBandTest)
#include "tst_failure_band.moc"
