// Packs and waste tanks of a small house: what was learned of them, tonight's chance, the outlet, and what planning is told.
#include "core/season/pack_outlook.h"
#include "core/season/waste_past.h"
#include "tests/support/planning_builders.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace laneward;
using namespace support;

namespace {

const MachineId m1{"m1"};

ServiceItem pack(const char* id) {
    ServiceItem item{{id}, m1, ItemKind::Pack, id, {}, {}, false, 1};
    item.pack = PackLimits{{Chemistry::FloodedLeadAcid, Millivolts{24'000}},
                           {Millivolts{25'200}, VoltageState::Rested},
                           {Millivolts{24'400}, VoltageState::Rested},
                           {Millivolts{24'000}, VoltageState::Rested}};
    return item;
}

/// Eight lanes are treated for 18:00 today.
SeasonState season() {
    const State made = house();
    SeasonState state;
    state.centre = made.centre;
    state.patterns = made.patterns;
    state.series = {eventOf("e0", 0, {18, 0}, 120, LaneSet::range(1, 8)), eventOf("e1", 1, {18, 0}, 120, LaneSet::range(1, 8))};
    state.items = {pack("p1")};
    return state;
}

RunLog ran(int n, Instant end, int lanes) {
    RunLog run;
    run.id = {QString("run%1").arg(n)};
    run.machine = m1;
    run.time = {end - minutes(40), end};
    for (int lane = 1; lane <= lanes; ++lane)
        run.lanes.push_back({lane, run.time});
    run.treatment = Treatment::CleanAndCondition;
    run.use.laneRuns = lanes;
    run.use.cleaner = millilitres(100) * lanes;
    run.use.conditioner[0] = millilitres(20) * lanes;
    return run;
}

PackReading read(int n, Instant when, const char* id, PackDeed deed, bool spent = false) {
    PackReading reading{{QString("pack%1").arg(n)}, when, {"ada"}, {id}, deed};
    reading.spent = spent;
    return reading;
}

/// Charged each morning and run until it is done each night, on the days before today.
void logNights(SeasonState& state, const char* id, const std::vector<int>& lanes) {
    for (size_t n = 0; n < lanes.size(); ++n) {
        const int day = int(n) - int(lanes.size());
        state.packReadings.push_back(read(int(3 * n), at(day, 6), id, PackDeed::Charged));
        state.runs.push_back(ran(int(n), at(day, 18), lanes[n]));
        state.packReadings.push_back(read(int(3 * n + 1), at(day, 22), id, PackDeed::OnCharge, true));
    }
    state.packReadings.push_back(read(900, at(0, 6), id, PackDeed::Charged));
}

Plan planOf(const SeasonState& state, Instant now) { return plan(planningState(state, now), now, {day0, day0.addDays(1)}); }

MachineLimits limitsOf(const SeasonState& state) { return planningState(state, at(0, 9)).limits.front(); }
MachineLevels levelsOf(const SeasonState& state) { return planningState(state, at(0, 9)).levels.front(); }

}  // namespace

class PackOutlookTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void nobodyKeepsALog();
    void tonightByTheLog();
    void tonightByVolts();
    void planningGoesByWhatWasLearned();
    void aHalfUsedChargeIsTold();
    void theOutletServesTheSpareFirst();
    void wasteIsLearned();
    void tooLittleWasMeasured();
};

void PackOutlookTest::nobodyKeepsALog() {
    const SeasonState state = season();
    const PackOutlook outlook = packOutlook(state, planOf(state, at(0, 9)), at(0, 9));
    QCOMPARE(outlook.packs.size(), size_t(1));
    const PackLine& line = outlook.packs.front();
    QVERIFY(line.state.onMachine && !line.finishes && !line.left && line.charges == 0);
    QVERIFY(line.tonight >= 8);
    QCOMPARE(limitsOf(state).lanesPerCharge, limitsFromSettings(state.centre.machines.front()).lanesPerCharge);
}

void PackOutlookTest::tonightByTheLog() {
    SeasonState state = season();
    logNights(state, "p1", std::vector<int>(12, 30));
    const Plan ahead = planOf(state, at(0, 9));
    const PackLine line = packOutlook(state, ahead, at(0, 9)).packs.front();
    QCOMPARE(line.charges, 12);
    QVERIFY2(std::abs(line.usual - 30) < 1, qPrintable(QString::number(line.usual)));
    QVERIFY(line.sure < line.usual && line.sure > 20);
    QVERIFY(line.finishes && *line.finishes > 0.99);
    QVERIFY(std::abs(*line.left - line.usual) < 0.1);
    // With 28 lanes run since, eight more hardly go.
    state.runs.push_back(ran(500, at(0, 8), 28));
    const PackLine used = packOutlook(state, ahead, at(0, 9)).packs.front();
    QVERIFY2(*used.finishes < 0.3, qPrintable(QString::number(*used.finishes)));
    QVERIFY(*used.left < 6 && *used.left > 0);
}

void PackOutlookTest::tonightByVolts() {
    SeasonState state = season();
    logNights(state, "p1", std::vector<int>(12, 30));
    PackReading volts = read(901, at(0, 8), "p1", PackDeed::Read);
    volts.volts = Millivolts{24'480};  // half full by the table of rested flooded packs (12.24 V of 12)
    state.packReadings.push_back(volts);
    const PackLine line = packOutlook(state, planOf(state, at(0, 9)), at(0, 9)).packs.front();
    QVERIFY(line.charge && std::abs(line.charge->share - 0.5) < 0.01);
    QVERIFY2(*line.left > 12 && *line.left < 18, qPrintable(QString::number(*line.left)));
    // Volts of before it was charged say nothing now.
    state.packReadings.back().at = at(0, 5);
    QVERIFY(!packOutlook(state, planOf(state, at(0, 9)), at(0, 9)).packs.front().charge);
}

void PackOutlookTest::planningGoesByWhatWasLearned() {
    SeasonState state = season();
    logNights(state, "p1", {30, 29, 31, 30});
    QCOMPARE(limitsOf(state).lanesPerCharge, limitsFromSettings(state.centre.machines.front()).lanesPerCharge);
    state = season();
    logNights(state, "p1", {30, 29, 31, 30, 30, 29, 31, 30});
    const int learned = limitsOf(state).lanesPerCharge;
    QVERIFY2(learned >= 20 && learned < 30, qPrintable(QString::number(learned)));
    // The weakest of a machine's packs decides; one that nobody knows leaves it to the settings.
    state.items.push_back(pack("p2"));
    QCOMPARE(limitsOf(state).lanesPerCharge, limitsFromSettings(state.centre.machines.front()).lanesPerCharge);
}

void PackOutlookTest::aHalfUsedChargeIsTold() {
    SeasonState state = season();
    state.packReadings = {read(1, at(-1, 6), "p1", PackDeed::Charged)};
    state.runs = {ran(1, at(-1, 18), 12)};  // and nobody charged it after that
    const int full = limitsFromSettings(state.centre.machines.front()).lanesPerCharge;
    QCOMPARE(levelsOf(state).lanesLeft, full - 12);
    state.packReadings.push_back(read(2, at(0, 5), "p1", PackDeed::Charged));
    QCOMPARE(levelsOf(state).lanesLeft, full);
    // A log that ended days ago is no longer kept: the day starts charged.
    state.packReadings = {read(1, at(-9, 6), "p1", PackDeed::Charged)};
    state.runs = {ran(1, at(-8, 18), 12)};
    QCOMPARE(levelsOf(state).lanesLeft, full);
    // Who measures knows best.
    LevelReading reading{{"l1"}, {"ada"}, fullLevels(state.centre.machines.front(), limitsOf(state), at(0, 8)), {}, {}};
    reading.levels.lanesLeft = 5;
    state.readings = {reading};
    state.packReadings = {read(1, at(0, 6), "p1", PackDeed::Charged)};
    QCOMPARE(levelsOf(state).lanesLeft, 5);
}

void PackOutlookTest::theOutletServesTheSpareFirst() {
    SeasonState state = season();
    state.items.push_back(pack("p2"));
    state.packReadings = {read(1, at(0, 6), "p1", PackDeed::Charged), read(2, at(-1, 22), "p2", PackDeed::Charged),
                          read(3, at(0, 7), "p2", PackDeed::OnCharge)};
    const Plan ahead = planOf(state, at(0, 9));
    const PackOutlook outlook = packOutlook(state, ahead, at(0, 9));
    QVERIFY(!outlook.turns.empty());
    QCOMPARE(outlook.turns.front().pack.value, QString("p2"));  // there now; the other is out tonight
    QCOMPARE(outlook.turns.front().time.begin, at(0, 9));
    QCOMPARE(outlook.turns.front().time.length(), state.centre.machines.front().times.charge - hours(2));
    const Job& last = *std::max_element(ahead.jobs.begin(), ahead.jobs.end(), [](const Job& a, const Job& b) {
        return std::pair(a.date == day0, a.time.end) < std::pair(b.date == day0, b.time.end);
    });
    QCOMPARE(outlook.turns.back().pack.value, QString("p1"));
    QVERIFY(outlook.turns.back().time.begin >= last.time.end);
}

void PackOutlookTest::wasteIsLearned() {
    SeasonState state = season();
    const Machine& machine = state.centre.machines.front();
    // Each night 40 lanes: 4 L of cleaner, of which 60 % come back, and 0.8 L of conditioner.
    for (int n = 0; n < 6; ++n) {
        const int day = n - 6;
        state.runs.push_back(ran(n, at(day, 18), 40));
        LevelReading reading{
            {QString("l%1").arg(n)}, {"ada"}, fullLevels(machine, limitsFromSettings(machine), at(day, 23)), {}, {}};
        if (n > 0) reading.emptied = millilitres(2'400 + 800);
        state.readings.push_back(reading);
    }
    const WasteTank tank = learnedWasteTank(state, machine);
    QCOMPARE(tank.emptyings(), 5);  // what the first held is not known
    QVERIFY2(std::abs(tank.share().centre - 0.6) < 0.05, qPrintable(QString::number(tank.share().centre)));
    // The same by hand, of a regression through the origin whose share does not drift (conjugate normal and inverse gamma, as in
    // Gelman et al., Bayesian Data Analysis, ch. 14; from memory). In tanks of 9 L, five nights lay down x = 4/9 of cleaner each
    // and 0.6 x come back. Believed before: a share of 0.85, worth (0.05 / 0.1)^2 = 1/4 of a tank, and a noise of 0.05 with 3
    // degrees of freedom. Then the share is (0.85 / 4 + 5 x 0.6) / P with P = 1/4 + 5 x = 2.472, so 0.6253, and the squared noise
    // (3 * 0.05^2 + 0.85^2 / 4 + 5 x 0.6^2 - 0.6253^2 P) / 8 = 0.002693 with 8 degrees. A tank's work is 90 lanes of 100 mL, X =
    // 1 tank: it recovers 0.6253 more than once in a hundred times by 2.896 (Student's t of 8 degrees, 99 %, any table) times
    // sqrt(0.002693 (X + X^2 / P)) = 0.0615, so 0.8034 tanks, 80.3 mL a lane; and 20 mL are stripped.
    constexpr double byHand = 100.3;
    // The share drifts by 0.03^2 / 0.97 = 0.0009 a tank, which over the six nights and the tank ahead adds some 0.003 to a
    // variance of 1 + 1 / P = 1.4, so 0.1 % to the 17.8 mL that are above the mean, and moves the mean as little.
    constexpr double byDrift = 0.2;
    const Microlitres lane = limitsOf(state).wastePerLane;
    QVERIFY2(std::abs(double(lane.value) / 1'000 - byHand) < byDrift, qPrintable(QString::number(lane.value)));
    // A corrected measurement does not count twice.
    LevelReading right = state.readings.back();
    right.id = {"again"};
    right.corrects = state.readings.back().id;
    state.readings.push_back(right);
    QCOMPARE(learnedWasteTank(state, machine).emptyings(), 5);
    // The more is done until it is emptied, the likelier it overflows.
    const Plan ahead = planOf(state, at(0, 9));
    const std::vector<Cleaning> work(30, cleaningOf(ahead.jobs.front().use, ahead.jobs.front().treatment));
    const std::vector<double> chances = tank.overflowChances({levelsOf(state).waste, {}}, work);
    QCOMPARE(chances.size(), work.size());
    QVERIFY(chances.front() < 0.01 && chances.back() > 0.99);
    QVERIFY(std::is_sorted(chances.begin(), chances.end()));
}

void PackOutlookTest::tooLittleWasMeasured() {
    SeasonState state = season();
    const Machine& machine = state.centre.machines.front();
    QCOMPARE(limitsOf(state).wastePerLane, limitsFromSettings(machine).wastePerLane);
    state.runs = {ran(1, at(-2, 18), 40)};
    LevelReading reading{{"l1"}, {"ada"}, fullLevels(machine, limitsFromSettings(machine), at(-2, 23)), {}, {}};
    reading.emptied = millilitres(5'000);
    state.readings = {reading};
    QCOMPARE(learnedWasteTank(state, machine).emptyings(), 0);  // not seen empty before
    QCOMPARE(limitsOf(state).wastePerLane, limitsFromSettings(machine).wastePerLane);
}

QTEST_GUILESS_MAIN(PackOutlookTest)
#include "tst_pack_outlook.moc"
