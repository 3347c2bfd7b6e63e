// The carry length found again in tapes that were made from it: readings of a known brush with normal noise, fitted a thousand
// times. The 95 % interval must hold the truth as often as it says, within three standard errors of a binomial share.
#include "core/patterns/carry_fit.h"
#include "core/patterns/film.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace laneward;

namespace {

constexpr int repeats = 1'000;

/// Wide and short strokes, out and back.
Pattern made() {
    constexpr Direction out = Direction::Out;
    constexpr Direction back = Direction::Back;
    Pattern pattern;
    pattern.id = {"made"};
    pattern.name = "Made";
    pattern.end = feet(41);
    const auto add = [&pattern](Direction direction, int boardsFrom, int laps, int from, int to) {
        pattern.strokes.push_back(
            {direction, boardsFrom, boards + 1 - boardsFrom, laps, Microlitres{50}, feet(from), feet(to), 0});
    };
    add(out, 2, 2, 0, 9);
    add(out, 7, 3, 9, 20);
    add(out, 10, 3, 20, 31);
    add(out, 2, 1, 31, 39);
    add(back, 9, 3, 20, 33);
    add(back, 12, 3, 7, 20);
    return pattern;
}

struct Truth {
    double carryFeet;
    double factor;
    double noise;  ///< units
};

std::vector<MeasuredFilm> tapes(const Truth& truth, std::mt19937& generator) {
    std::normal_distribution<double> noise(0, truth.noise);
    std::vector<MeasuredFilm> measured;
    const Micrometres carry{std::llround(truth.carryFeet * 304'800)};
    for (const auto& [distance, lane] : {std::pair{8, 0}, {21, 0}, {34, 2}, {40, 5}}) {
        MeasuredFilm one{{}, made()};
        one.reading.distance = feet(distance);
        one.reading.laneOfRun = lane;
        const BoardValues units = tapeFilm(one.pattern, {carry, lane}, one.reading.distance);
        for (size_t b = 0; b < units.size(); ++b)
            one.reading.milliUnits[b] = std::llround((truth.factor * units[b] + noise(generator)) * 1'000);
        measured.push_back(one);
    }
    return measured;
}

}  // namespace

class CarryFitTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void exactTapes();
    void intervalsHoldTheTruth_data();
    void intervalsHoldTheTruth();
};

void CarryFitTest::exactTapes() {
    std::mt19937 generator(1);
    for (double feetOfCarry : {0.2, 1.0, 2.5, 7.0, 25.0}) {
        const Result<CarryFit> fit = fitCarry(tapes({feetOfCarry, 0.93, 0}, generator));
        QVERIFY(fit);
        // Readings are rounded to thousandths of a unit.
        QVERIFY2(std::abs(toFeet(fit->carry) - feetOfCarry) < 0.002 * feetOfCarry,
                 qPrintable(QString::number(toFeet(fit->carry))));
        QVERIFY(std::abs(fit->factor - 0.93) < 1e-3);
        QVERIFY(fit->deviation < 1e-3);
    }
}

void CarryFitTest::intervalsHoldTheTruth_data() {
    QTest::addColumn<double>("carry");
    QTest::addColumn<double>("noise");
    QTest::newRow("2.5 ft, noise 1 unit") << 2.5 << 1.0;
    QTest::newRow("6 ft, noise 2 units") << 6.0 << 2.0;
}

void CarryFitTest::intervalsHoldTheTruth() {
    QFETCH(double, carry);
    QFETCH(double, noise);
    const Truth truth{carry, 0.96, noise};
    std::mt19937 generator(99);
    int held = 0;
    int factorHeld = 0;
    double sum = 0;
    double width = 0;
    for (int repeat = 0; repeat < repeats; ++repeat) {
        const Result<CarryFit> fit = fitCarry(tapes(truth, generator));
        QVERIFY(fit);
        QVERIFY(fit->carryLow <= fit->carry && fit->carry <= fit->carryHigh);
        held += toFeet(fit->carryLow) <= carry && carry <= toFeet(fit->carryHigh);
        factorHeld += fit->factorInterval.contains(truth.factor);
        sum += toFeet(fit->carry);
        width += toFeet(fit->carryHigh - fit->carryLow);
    }
    const double allowed = 3 * std::sqrt(0.95 * 0.05 / repeats);
    const double share = double(held) / repeats;
    const double factorShare = double(factorHeld) / repeats;
    qInfo(
        "carry length of %g ft: on average %.3f ft, interval %.2f ft wide; holds the truth in %.1f %% (95 +- %.1f), the factor's "
        "in "
        "%.1f %%",
        carry, sum / repeats, width / repeats, share * 100, allowed * 100, factorShare * 100);
    QVERIFY(std::abs(share - 0.95) <= allowed);
    QVERIFY(std::abs(factorShare - 0.95) <= allowed);
    QVERIFY(std::abs(sum / repeats - carry) < 0.05 * carry);
}

QTEST_GUILESS_MAIN(CarryFitTest)
#include "tst_carry_fit.moc"
