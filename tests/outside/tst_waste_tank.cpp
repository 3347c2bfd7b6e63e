// The chance that the waste tank overflows against simulation: the posterior drawn lane by lane, and whole histories in which
// what was forecast either came true or did not.
#include "core/service/waste_tank.h"
#include "core/statistics/random_numbers.h"

#include <QTest>

#include <array>
#include <cmath>

using namespace laneward;

namespace {

constexpr double capacity = 9e6;

std::int64_t whole(double x) { return std::llround(x); }
Cleaning work(double tanks, double stripped = 0) { return {{whole(tanks * capacity)}, {whole(stripped * capacity)}}; }

/// Nonnegative waste of x tanks of cleaner: gamma of mean share x and variance s x, so that a level never falls.
double drawnWaste(double share, double s, double x, Draws& draws) { return draws.gamma(share * share * x / s) * s / share; }

}  // namespace

class WasteTankSimulationTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void posteriorDrawnLaneByLane();
    void forecastsComeTrue();
};

// No drift. s and the share are drawn from what is believed, then the waste of every lane; a tank overflows when its level passes
// the capacity at any lane.
void WasteTankSimulationTest::posteriorDrawnLaneByLane() {
    WasteRule rule;
    rule.discount = rule.scaleDiscount = 1;
    WasteTank tank(rule);
    for (double back : {0.60, 0.68, 0.63, 0.66, 0.61, 0.65})
        QVERIFY(tank.learn({work(0.8, 0.05), {whole((back + 0.05) * capacity)}}));
    const std::vector<Cleaning> jobs{work(0.3, 0.02), work(0.25, 0.02), work(0.2), work(0.15, 0.01), work(0.15, 0.01)};
    const WasteLevel now{{whole(0.1 * capacity)}, work(0.05)};
    const std::vector<double> chances = tank.overflowChances(now, jobs);

    constexpr int paths = 100'000;
    constexpr int lanes = 12;
    std::array<int, 5> over{};
    Draws draws(31);
    const Student believed = tank.share();
    for (int path = 0; path < paths; ++path) {
        // t = normal / sqrt(chi-squared / n): the same chi-squared is that of s.
        const double n = believed.freedom;
        const double inflation = n / (2 * draws.gamma(n / 2));
        const double share = believed.centre + believed.scale * std::sqrt(inflation) * draws.normal();
        // The scale of noise: what predictions of one tank have beyond that of the share.
        const double all = tank.wasteOf(work(1)).scale / capacity;
        const double s = (all * all - believed.scale * believed.scale) * inflation;
        double level = 0.1 + drawnWaste(share, s, 0.05, draws);
        bool isOver = false;
        for (size_t job = 0; job < jobs.size(); ++job) {
            const double x = double(jobs[job].cleaner.value) / capacity / lanes;
            for (int lane = 0; lane < lanes; ++lane) {
                level += drawnWaste(share, s, x, draws) + double(jobs[job].stripped.value) / capacity / lanes;
                isOver = isOver || level > 1;
            }
            over[job] += isOver;
        }
    }
    for (size_t job = 0; job < jobs.size(); ++job) {
        const double simulated = double(over[job]) / paths;
        const double error = std::sqrt(std::max(chances[job], 1e-4) * (1 - chances[job]) / paths);
        qInfo("before job %zu: overflow %.4f, simulated %.4f", job + 1, chances[job], simulated);
        // Gamma for normal: 0.003 is what the shape of the noise makes.
        QVERIFY(std::abs(simulated - chances[job]) <= 3 * error + 0.003);
    }
}

// Centres whose share and noise differ, as is believed before the first emptying, and whose share drifts: forecasts of an
// overflow, sorted by their chance, against how many came true. No scale is forgotten, for none changes.
void WasteTankSimulationTest::forecastsComeTrue() {
    Draws draws(32);
    WasteRule rule;
    rule.scaleDiscount = 1;
    rule.weight = 12;  // with the usual 3 some centres are so wild that emptyings are left out as slips of the pen
    const auto waste = [&](double k, double s, double x) { return k * x + std::sqrt(s * x) * draws.normal(); };
    constexpr int centres = 20'000;
    std::array<double, 4> said{};
    std::array<double, 4> variance{};
    std::array<int, 4> came{};
    std::array<int, 4> count{};
    int beyondLimit = 0;
    for (int centre = 0; centre < centres; ++centre) {
        WasteTank tank(rule);
        const double s = 0.0025 * 12 / (2 * draws.gamma(6));
        double share = 0.85 + 2 * std::sqrt(s) * draws.normal();  // 0.1 is twice 0.05: both are wider when s is greater
        const double drift = s * 0.03 * 0.03 / 0.97;
        for (int i = 0; i < 12; ++i) {
            const double x = 0.5 + 0.4 * draws.uniform();
            share += std::sqrt(drift * x) * draws.normal();
            tank.learn({work(x), {whole(waste(share, s, x) * capacity)}});
        }
        const double next = 0.8 + 0.7 * draws.uniform();
        const double chance = tank.overflowChances({}, std::array{work(next)}).front();
        const double now = share + std::sqrt(drift * next / 3) * draws.normal();
        const bool overflows = waste(now, s, next) > 1;
        const size_t bin = chance < 0.02 ? 0 : chance < 0.3 ? 1 : chance < 0.8 ? 2 : 3;
        ++count[bin];
        said[bin] += chance;
        variance[bin] += chance * (1 - chance);
        came[bin] += overflows;
        const int lanes = 60;
        const Microlitres perLane = tank.perLane(work(next / lanes), lanes);
        beyondLimit += waste(now, s, next) * capacity > double(perLane.value) * lanes;
    }
    for (size_t bin = 0; bin < 4; ++bin) {
        QVERIFY(count[bin] > 500);
        qInfo("%5d forecasts: said %.4f, came %.4f", count[bin], said[bin] / count[bin], double(came[bin]) / count[bin]);
        QVERIFY(std::abs(came[bin] - said[bin]) <= 3 * std::sqrt(variance[bin]));
    }
    qInfo("beyond the 99 %% quantile per lane: %.2f %%", 100.0 * beyondLimit / centres);
    QVERIFY(std::abs(double(beyondLimit) / centres - 0.01) <= 3 * std::sqrt(0.01 * 0.99 / centres));
}

QTEST_GUILESS_MAIN(WasteTankSimulationTest)
#include "tst_waste_tank.moc"
