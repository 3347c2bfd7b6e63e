// What comes back into the waste tank, with answers worked out by hand. Calibration: tests/outside/tst_waste_tank.cpp.
#include "core/service/waste_tank.h"

#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

Cleaning work(std::int64_t cleaner, std::int64_t stripped = 0) { return {millilitres(cleaner), millilitres(stripped)}; }

bool near(double a, double b, double tolerance) {
    if (std::abs(a - b) <= tolerance) return true;
    qWarning("%.12g instead of %.12g", a, b);
    return false;
}

WasteRule still() {
    WasteRule rule;
    rule.discount = rule.scaleDiscount = 1;
    return rule;
}

}  // namespace

class WasteTankTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void beliefAlone();
    void conjugatePosterior();
    void learnsTheShare();
    void leavesOutWhatCannotBe();
    void perLaneIsCautious();
    void chancesRiseJobByJob();
    void emptyBeforeTheJobThatOverflows();
};

void WasteTankTest::beliefAlone() {
    const WasteTank tank;
    QVERIFY(near(tank.share().centre, 0.85, 1e-12) && near(tank.share().scale, 0.1, 1e-12));
    QCOMPARE(tank.share().freedom, 3.0);
    const Student waste = tank.wasteOf(work(4'500, 300));
    QVERIFY(near(waste.centre, 4'125'000, 1e-6));
    // Half a tank: share 0.1, noise 0.05 of the root, and little drift.
    const double spread = std::sqrt(0.25 * 0.01 + 0.5 * 0.0025) * 9e6;
    QVERIFY(waste.scale >= spread && waste.scale < 1.001 * spread);
    QCOMPARE(tank.wasteOf({}).scale, 0.0);
}

// One unknown: precision-weighted mean, sums of squares, freedom by one each (normal-inverse-gamma, written out).
void WasteTankTest::conjugatePosterior() {
    WasteTank tank(still());
    const double cleaner[] = {0.8, 0.5, 0.9, 0.7};
    const double back[] = {0.66, 0.42, 0.72, 0.59};
    double precision = 0.0025 / 0.01;
    double weighted = 0.85 * precision;
    double squares = 0.85 * 0.85 * precision + 3 * 0.0025;
    for (int i = 0; i < 4; ++i) {
        QVERIFY(tank.learn({work(std::int64_t(9'000 * cleaner[i]), 200), millilitres(std::int64_t(9'000 * back[i]) + 200)}));
        precision += cleaner[i];  // x^2 / (s x)
        weighted += back[i];
        squares += back[i] * back[i] / cleaner[i];
    }
    const double mean = weighted / precision;
    const double scale = (squares - mean * mean * precision) / 7;
    QVERIFY(near(tank.share().centre, mean, 1e-9));
    QVERIFY(near(tank.share().scale, std::sqrt(scale / precision), 1e-9));
    QCOMPARE(tank.share().freedom, 7.0);
    QCOMPARE(tank.emptyings(), 4);
}

void WasteTankTest::learnsTheShare() {
    WasteTank tank;
    for (int i = 0; i < 40; ++i)
        QVERIFY(tank.learn({work(6'000 + 100 * (i % 5), 500), millilitres(4'200 + 70 * (i % 5) + 500 + (i % 2 ? 60 : -60))}));
    QVERIFY(near(tank.share().centre, 0.7, 0.01));
    QVERIFY(tank.share().scale < 0.01);
}

void WasteTankTest::leavesOutWhatCannotBe() {
    WasteTank tank;
    QVERIFY(!tank.learn({work(0, 300), millilitres(300)}));
    QVERIFY(!tank.learn({work(-5), millilitres(300)}));
    QVERIFY(!tank.learn({work(5'000, -1), millilitres(300)}));
    QVERIFY(!tank.learn({work(5'000, 300), millilitres(0)}));
    QVERIFY(!tank.learn({work(5'000, 300), millilitres(300)}));
    QVERIFY(!tank.learn({work(1'000), millilitres(9'000)}));
    QCOMPARE(tank.leftOut(), 6);
    QCOMPARE(tank.emptyings(), 0);
    QVERIFY(near(tank.share().centre, 0.85, 1e-12));
}

void WasteTankTest::perLaneIsCautious() {
    WasteTank tank;
    for (int i = 0; i < 30; ++i)
        tank.learn({work(7'000, 400), millilitres(5'600 + 400 + 40 * (i % 3 - 1))});
    const Cleaning lane = work(110, 8);
    const double usual = 0.8 * 110'000 + 8'000;
    const auto many = double(tank.perLane(lane, 60).value);
    const auto few = double(tank.perLane(lane, 5).value);
    QVERIFY(many > usual && many < 1.1 * usual);
    QVERIFY(few > many);  // chance evens out over many lanes
    QVERIFY(double(tank.perLane(lane, 60, 0.5).value) < many);
    QVERIFY(near(1 - tank.wasteOf({lane.cleaner * 60, lane.stripped * 60}).below(many * 60), 0.01, 1e-4));
    QVERIFY(tank.perLane({}, 3).value == 0);
}

void WasteTankTest::chancesRiseJobByJob() {
    const WasteTank tank;
    const std::vector<Cleaning> jobs(8, work(1'500, 100));
    const auto chances = tank.overflowChances({Microlitres{0}, {}}, jobs);
    QCOMPARE(chances.size(), size_t(8));
    QVERIFY(std::is_sorted(chances.begin(), chances.end()));
    QVERIFY(chances.front() < 1e-4 && chances.back() > 0.85);
    // The same water under the bridge: measured, or not yet measured, which is less certain.
    const auto later = tank.overflowChances({Microlitres{0}, work(4'500, 300)}, std::span(jobs).subspan(3));
    for (size_t i = 0; i < later.size(); ++i)
        QVERIFY(near(later[i], chances[i + 3], 1e-12));
    const auto measured = tank.overflowChances({millilitres(4'125), {}}, std::span(jobs).first(3));
    QVERIFY(measured[1] < later[1]);
    QVERIFY(near(tank.overflowChances({millilitres(9'001), {}}, std::span(jobs).first(1))[0], 1, 0));
    QVERIFY(tank.overflowChances({millilitres(9'000), {}}, std::vector<Cleaning>{Cleaning{}})[0] == 0);
    QVERIFY(tank.overflowChances({}, {}).empty());
}

void WasteTankTest::emptyBeforeTheJobThatOverflows() {
    const WasteTank tank;
    const std::vector<Cleaning> jobs(8, work(1'500, 100));
    const auto chances = tank.overflowChances({}, jobs);
    const auto first = tank.emptyBefore({}, jobs);
    QVERIFY(first && *first > 0);
    QVERIFY(chances[*first] > 0.01 && chances[*first - 1] <= 0.01);
    QVERIFY(!tank.emptyBefore({}, std::span(jobs).first(*first)));
    QCOMPARE(*tank.emptyBefore({millilitres(8'900), {}}, jobs), size_t(0));
}

QTEST_GUILESS_MAIN(WasteTankTest)
#include "tst_waste_tank.moc"
