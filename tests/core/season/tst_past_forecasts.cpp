// Known use from a ledger, fills and counts, worked out by hand; what is kept of a day's forecast, and when.
#include "core/season/past_forecasts.h"
#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

namespace {

using Kind = Place::Kind;

SeasonState seasonOfTwo() {
    SeasonState season;
    season.centre = house().centre;
    season.centre.machines.push_back(machineOf("m2"));
    for (Machine& machine : season.centre.machines)
        machine.conditioners[0] = "Amber";
    season.patterns = house().patterns;
    Supply amber{{"amber"}, "Amber"};
    amber.container = Amount{5'000'000};
    Supply approach{{"approach"}, "Approach", SupplyKind::ApproachCleaner};
    approach.basis = UseBasis::PerDay;
    approach.usualUse = Amount{300'000};
    approach.container = Amount{5'000'000};
    Supply blades{{"blades"}, "Blades", SupplyKind::Part};
    blades.basis = UseBasis::WhenServiced;
    blades.container = Amount{1};
    season.supplies = {amber, approach, blades};
    return season;
}

Movement took(const char* supply, Instant when, std::int64_t amount, Kind to = Kind::Lane) {
    Movement m;
    m.id = {QString("%1 %2 %3").arg(supply).arg(when.seconds).arg(amount)};
    m.kind = MovementKind::Used;
    m.at = when;
    m.entries = {{{{supply}, {Kind::Open, {}, 0}, {}, {}}, Amount{-amount}}, {{{supply}, {to, {}, 0}, {}, {}}, Amount{amount}}};
    return m;
}

LevelReading filled(const char* machine, Instant when, bool toLine = true) {
    LevelReading reading;
    reading.id = {QString("%1 fill %2").arg(machine).arg(when.seconds)};
    reading.levels.machine = {machine};
    reading.levels.at = when;
    reading.poured = Poured{{Microlitres{1'000}, {}}, {}, toLine};
    return reading;
}

RunLog ran(const char* machine, Instant when) {
    RunLog run;
    run.id = {QString("%1 run %2").arg(machine).arg(when.seconds)};
    run.machine = {machine};
    run.time = {when - minutes(30), when};
    run.pattern = PatternId{"p1"};
    run.use.laneRuns = 4;
    return run;
}

SupplyHistory historyOf(std::vector<Movement> movements, std::vector<LevelReading> readings, std::vector<RunLog> runs) {
    SupplyHistory history;
    history.stock.movements = std::move(movements);
    history.stock.runs = runs;
    history.drift.runs = std::move(runs);
    history.drift.readings = std::move(readings);
    history.days = {day0, day0.addDays(60)};
    return history;
}

bool is(const KnownUse& known, int day, std::int64_t used) {
    return known.day == day0.addDays(day) && known.used == Amount{used};
}

KeptForecast constant(int day, std::int64_t aDay) {
    KeptSupply supply{{"amber"}, {}};
    for (const int days : {7, 14, 28})
        supply.horizons.push_back({days,
                                   {Amount{aDay * days / 2}, Amount{aDay * days * 8 / 10}, Amount{aDay * days},
                                    Amount{aDay * days * 12 / 10}, Amount{aDay * days * 15 / 10}}});
    return {day0.addDays(day), {supply}};
}

OutlookQuestion questionOf(const SeasonState& season, const Plan& ahead, const SupplyLearning& learned, Instant now) {
    static const std::vector<Movement> none;
    return {season, ahead, learned, none, now};
}

}  // namespace

class PastForecastsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void useIsKnownWhenEachMachineWasFilled();
    void aMachineThatStoodStillIsKnown();
    void runsBetweenAFillAndTheDayAreTold();
    void toppingUpTellsNothing();
    void countsTellTheRest();
    void partsAreNotScored();
    void keptOnesAreScored();
    void aDayIsKeptWhole();
    void aDayThatHasBegunIsNot();
    void faultsOfKeptOnes();
};

/// m1 at its line on days 1 evening and 8, m2 on days 3 and 9; both run all the time.
void PastForecastsTest::useIsKnownWhenEachMachineWasFilled() {
    std::vector<Movement> movements;
    std::vector<RunLog> runs;
    for (int day = 0; day < 12; ++day) {
        movements.push_back(took("amber", at(day, 16), 100 + day));
        movements.push_back(took("approach", at(day, 16), 7));
        runs.push_back(ran("m1", at(day, 15)));
        runs.push_back(ran("m2", at(day, 16)));
    }
    movements.push_back(took("amber", at(4, 12), 50, Kind::Loss));
    movements.push_back(took("amber", at(5, 12), -20, Kind::Loss));
    movements.push_back(took("amber", at(6, 12), 5'000, Kind::Supplier));  // sent back
    const SupplyHistory history = historyOf(
        movements, {filled("m2", at(9, 20)), filled("m1", at(1, 20)), filled("m2", at(3, 20)), filled("m1", at(8, 20))}, runs);
    const SeasonState season = seasonOfTwo();
    const std::vector<KnownUse> known = knownUse(season, history, season.supplies[0]);
    QCOMPARE(known.size(), size_t{2});
    QVERIFY(is(known[0], 4, 0));  // in the evening of day 3
    QVERIFY2(is(known[1], 10, 104 + 105 + 106 + 107 + 108 + 109 + 50 - 20), qPrintable(QString::number(known[1].used.value)));
}

void PastForecastsTest::aMachineThatStoodStillIsKnown() {
    std::vector<Movement> movements;
    std::vector<RunLog> runs{ran("m2", at(1, 16))};
    for (int day = 0; day < 12; ++day) {
        movements.push_back(took("amber", at(day, 16), 10));
        runs.push_back(ran("m1", at(day, 15)));
    }
    const SeasonState season = seasonOfTwo();
    SupplyHistory history = historyOf(
        movements, {filled("m1", at(1, 8)), filled("m2", at(2, 8)), filled("m1", at(5, 20)), filled("m1", at(9, 8))}, runs);
    std::vector<KnownUse> known = knownUse(season, history, season.supplies[0]);
    // At 8 on day 1 m2 had not run yet; day 2 needs m1, which ran since; a morning stands for the day that begins.
    QCOMPARE(known.size(), size_t{3});
    QVERIFY(is(known[0], 1, 0));
    QVERIFY(is(known[1], 6, 50));
    QVERIFY(is(known[2], 9, 30));
    history.days.first = day0.addDays(5);  // the ledger began then
    known = knownUse(season, history, season.supplies[0]);
    QCOMPARE(known.size(), size_t{2});
    QVERIFY(is(known[0], 6, 0));
}

/// Filled at 10 after a run at 9: that run is of the day that had begun at 5. Filled at 20: a run at 22 is still of that day.
void PastForecastsTest::runsBetweenAFillAndTheDayAreTold() {
    SeasonState season = seasonOfTwo();
    season.centre.machines.pop_back();
    std::vector<Movement> movements{took("amber", at(1, 3), 5), took("amber", at(4, 9), 40), took("amber", at(10, 16), 300),
                                    took("amber", at(10, 22), 60), took("amber", at(11, 9), 1'000)};
    for (Movement& movement : movements)
        movement.source = MovementSource::Run;
    movements.push_back(took("amber", at(4, 10), 7));  // what the fill found
    const SupplyHistory history = historyOf(movements, {filled("m1", at(4, 10)), filled("m1", at(10, 20))}, {});
    const std::vector<KnownUse> known = knownUse(season, history, season.supplies[0]);
    QCOMPARE(known.size(), size_t{2});
    QVERIFY(is(known[0], 4, 0));
    QVERIFY2(is(known[1], 11, 40 + 300 + 60), qPrintable(QString::number(known[1].used.value)));
}

void PastForecastsTest::toppingUpTellsNothing() {
    const SeasonState season = seasonOfTwo();
    const SupplyHistory history = historyOf({took("amber", at(1, 16), 10)}, {filled("m1", at(1, 20), false)}, {});
    QVERIFY(knownUse(season, history, season.supplies[0]).empty());
    QVERIFY(knownUse(season, historyOf({}, {filled("m1", at(1, 20))}, {}), season.supplies[0]).empty());
}

void PastForecastsTest::countsTellTheRest() {
    const SeasonState season = seasonOfTwo();
    SupplyHistory history = historyOf({took("approach", at(1, 9), 100), took("approach", at(9, 9), 700, Kind::Loss),
                                       took("approach", at(20, 16), 1'000), took("amber", at(3, 9), 9)},
                                      {}, {});
    for (const int day : {1, 9, 20}) {
        StockCount count{{QString("c%1").arg(day)}, at(day, day == 20 ? 20 : 9), {}, {}, {}, {}};
        count.lines = {{{{"approach"}, {Kind::Open, {}, 0}, {}, {}}, Amount{1}}};
        history.stock.counts.push_back(count);
    }
    StockCount other{{"other"}, at(4, 9), {}, {{{{"amber"}, {Kind::Shelf, {}, 0}, {}, {}}, Amount{1}}}, {}, {}};
    history.stock.counts.push_back(other);
    const std::vector<KnownUse> known = knownUse(season, history, season.supplies[1]);
    QCOMPARE(known.size(), size_t{3});
    QVERIFY(is(known[0], 1, 0));
    QVERIFY(is(known[1], 9, 700));
    QVERIFY(is(known[2], 21, 1'000));
}

void PastForecastsTest::partsAreNotScored() {
    const SeasonState season = seasonOfTwo();
    const SupplyHistory history = historyOf({took("blades", at(1, 9), 1)}, {}, {});
    QVERIFY(knownUse(season, history, season.supplies[2]).empty());
    const auto scores = scoresOf(season, history, {});
    QCOMPARE(scores.size(), size_t{2});
    QVERIFY(!scores.contains({"blades"}));
}

/// 100 a day are used; forecasts of 100, 130 and 40 a day: within both, within the wide one, within none.
void PastForecastsTest::keptOnesAreScored() {
    SeasonState season = seasonOfTwo();
    season.centre.machines.pop_back();
    std::vector<Movement> movements;
    std::vector<LevelReading> readings;
    for (int day = 0; day < 42; ++day)
        movements.push_back(took("amber", at(day, 16), 100));
    for (int day = 0; day <= 42; day += 7)
        readings.push_back(filled("m1", at(day, 6)));
    const SupplyHistory history = historyOf(movements, readings, {});
    const std::vector<KeptForecast> kept{constant(0, 100), constant(7, 130), constant(21, 40), constant(22, 100),
                                         constant(35, 100)};
    const ForecastScore score = scoresOf(season, history, kept).at({"amber"});
    QCOMPARE(score.most.spans, 4);
    QCOMPARE(score.missing, 2);  // days 14 and 28
    QCOMPARE(score.half.inside, 2);
    QCOMPARE(score.most.inside, 3);
}

void PastForecastsTest::aDayIsKeptWhole() {
    const SeasonState season = seasonOfTwo();
    Plan ahead;
    ahead.range = {day0, day0.addDays(keptHorizons.back() - 1)};
    Job job;
    job.id = {"j"};
    job.date = day0.addDays(2);
    job.machine = {"m1"};
    job.pattern = PatternId{"p1"};
    job.use.laneRuns = 100;
    ahead.jobs = {job};
    const SupplyLearning learned = learnSupplies(season, historyOf({}, {}, {}));
    const auto forecast = forecastToKeep(questionOf(season, ahead, learned, at(0, 6)));
    QVERIFY(forecast);
    QCOMPARE(forecast->day, day0);
    QCOMPARE(forecast->supplies.size(), season.supplies.size());
    QVERIFY(faultsOf(*forecast).empty());
    const KeptSupply& amber = forecast->supplies[0];
    QCOMPARE(amber.supply, SupplyId{"amber"});
    QCOMPARE(amber.horizons.size(), keptHorizons.size());
    // 390 µL times 10 on 100 lanes: nothing of it is used before the third day.
    const double planned =
        double(nominalUse(season.centre.machines[0], 0, Treatment::CleanAndCondition, &season.patterns[0], 100).value);
    QVERIFY(amber.horizons[1].use[2] < Amount{std::int64_t(planned / 10)});
    QCOMPARE(amber.horizons[2].days, 3);
    QVERIFY(std::abs(double(amber.horizons[2].use[2].value) / planned - 1) < 0.1);
    QVERIFY(*forecast == *forecastToKeep(questionOf(season, ahead, learned, at(0, 6))));
    QVERIFY(!forecastToKeep(questionOf(season, ahead, learned, at(0, 6)), keptRule(), [] { return true; }));
    ahead.range.last = ahead.range.last.addDays(-1);
    QVERIFY(!forecastToKeep(questionOf(season, ahead, learned, at(0, 6))));
}

/// What was run today already would be missing in a forecast of today.
void PastForecastsTest::aDayThatHasBegunIsNot() {
    SeasonState season = seasonOfTwo();
    Plan ahead;
    ahead.range = {day0, day0.addDays(keptHorizons.back() - 1)};
    const SupplyLearning learned = learnSupplies(season, historyOf({}, {}, {}));
    season.runs = {ran("m1", at(-1, 23)), ran("m1", at(0, 4))};  // of yesterday: the day begins at 5
    QVERIFY(forecastToKeep(questionOf(season, ahead, learned, at(0, 6))));
    season.runs.push_back(ran("m1", at(0, 15)));
    QVERIFY(!forecastToKeep(questionOf(season, ahead, learned, at(0, 16))));
    season.runs.clear();
    season.supplies.clear();
    QVERIFY(!forecastToKeep(questionOf(season, ahead, learned, at(0, 6))));
}

void PastForecastsTest::faultsOfKeptOnes() {
    const auto rulesOf = [](auto spoil) {
        KeptForecast forecast = constant(0, 100);
        spoil(forecast);
        QByteArrayList rules;
        for (const Finding& finding : faultsOf(forecast))
            rules << finding.rule;
        return rules;
    };
    QCOMPARE(rulesOf([](KeptForecast&) {}), QByteArrayList());
    QCOMPARE(rulesOf([](KeptForecast& f) { f.day = {}; }), QByteArrayList{"forecast.day"});
    QCOMPARE(rulesOf([](KeptForecast& f) { f.supplies.push_back(f.supplies[0]); }), QByteArrayList{"forecast.supplies"});
    QCOMPARE(rulesOf([](KeptForecast& f) { f.supplies[0].supply = {}; }), QByteArrayList{"forecast.supplies"});
    QCOMPARE(rulesOf([](KeptForecast& f) { std::swap(f.supplies[0].horizons[0], f.supplies[0].horizons[1]); }),
             QByteArrayList{"forecast.horizons"});
    QCOMPARE(rulesOf([](KeptForecast& f) { f.supplies[0].horizons[0].use[0] = Amount{1'000'000}; }),
             QByteArrayList{"forecast.quantiles"});
}

QTEST_APPLESS_MAIN(PastForecastsTest)
#include "tst_past_forecasts.moc"
