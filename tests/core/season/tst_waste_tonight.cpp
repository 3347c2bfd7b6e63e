// Tonight's chance that the waste tank overflows, what was typed as emptied, and what readiness says of both.
#include "core/season/waste_past.h"
#include "tests/support/planning_builders.h"

#include <QTest>

#include <algorithm>

using namespace laneward;
using namespace support;

namespace {

const MachineId m1{"m1"};

SeasonState season() {
    const State made = house();
    SeasonState state;
    state.centre = made.centre;
    state.patterns = made.patterns;
    state.series = {eventOf("e0", 0, {18, 0}, 60, LaneSet::range(1, 8)), eventOf("e1", 0, {21, 0}, 60, LaneSet::range(1, 8))};
    return state;
}

Plan planOf(const SeasonState& state, Instant now) { return plan(planningState(state, now), now, {day0, day0}); }

LevelReading emptiedAt(const char* id, Instant when, std::optional<Microlitres> measured) {
    LevelReading reading;
    reading.id = {id};
    reading.levels.machine = m1;
    reading.levels.at = when;
    reading.emptied = measured;
    return reading;
}

RunLog ran(const char* id, Instant end, int lanes, Microlitres cleanerPerLane = millilitres(100)) {
    RunLog run;
    run.id = {id};
    run.machine = m1;
    run.time = {end - minutes(40), end};
    run.use.laneRuns = lanes;
    run.use.cleaner = cleanerPerLane * lanes;
    run.use.waste = millilitres(100) * lanes;
    return run;
}

bool has(const Readiness& ready, const char* rule) {
    return std::any_of(ready.findings.begin(), ready.findings.end(), [rule](const Finding& f) { return f.rule == rule; });
}

}  // namespace

class WasteTonightTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void eachJobHasItsChance() {
        const SeasonState state = season();
        const Machine& machine = state.centre.machines.front();
        const Plan ahead = planOf(state, at(0, 12));
        const auto chances = overflowTonight(state, machine, ahead, at(0, 12));
        QCOMPARE(chances.size(), ahead.jobs.size());
        QVERIFY(chances.size() >= 2);
        for (size_t n = 0; n < chances.size(); ++n)
            QCOMPARE(chances[n].job.value, ahead.jobs[n].id.value);
        QVERIFY(chances.back().chance < worthSaying);  // 16 lanes in a tank for 90
        QVERIFY(overflowFindings(chances, ahead, "Otter").empty());
        // The same as the tank itself says of the same work.
        std::vector<Cleaning> work;
        for (const Job& job : ahead.jobs)
            work.push_back(cleaningOf(job.use, job.treatment));
        const auto plain = learnedWasteTank(state, machine).overflowChances({}, work);
        QCOMPARE(plain.size(), chances.size());
        for (size_t n = 0; n < plain.size(); ++n)
            QCOMPARE(chances[n].chance, plain[n]);
    }

    void whatWasCleanedSinceIsNotCertain() {
        SeasonState state = season();
        const Machine& machine = state.centre.machines.front();
        state.runs = {ran("r1", at(0, 10), 60)};
        state.readings = {emptiedAt("l1", at(0, 6), std::nullopt)};
        const WasteLevel level = wasteLevel(state, machine, at(0, 12));
        QCOMPARE(level.measured.value, std::int64_t{0});
        QCOMPARE(level.since.cleaner.value, millilitres(6'000).value);
        // What was measured afterwards is known, and the runs before it count no more.
        state.readings.push_back(emptiedAt("l2", at(0, 11), std::nullopt));
        state.readings.back().levels.waste = millilitres(4'700);
        QCOMPARE(wasteLevel(state, machine, at(0, 12)).measured.value, millilitres(4'700).value);
        QVERIFY(wasteLevel(state, machine, at(0, 12)).since == Cleaning{});
        // Of another day nothing is left: closing down empties it.
        QVERIFY(wasteLevel(state, machine, at(1, 12)).since == Cleaning{});
    }

    void theFirstJobTooManyIsNamed() {
        SeasonState state = season();
        const Machine& machine = state.centre.machines.front();
        const Plan ahead = planOf(state, at(0, 12));
        state.readings = {emptiedAt("l1", at(0, 12), std::nullopt)};
        state.readings.back().levels.waste = machine.capacity.waste - millilitres(1'600);
        const auto chances = overflowTonight(state, machine, ahead, at(0, 12));
        QVERIFY2(chances.front().chance < 0.01 && chances.back().chance > 0.2,
                 qPrintable(QString("%1 %2").arg(chances.front().chance).arg(chances.back().chance)));
        const auto findings = overflowFindings(chances, ahead, "Otter");
        QCOMPARE(findings.size(), size_t(1));
        QCOMPARE(findings.front().rule, QByteArray("readiness.overflow"));
        const auto risky = std::find_if(chances.begin(), chances.end(), [](const auto& c) { return c.chance > worthSaying; });
        const size_t n = size_t(risky - chances.begin());
        QVERIFY(std::get<Instant>(findings.front().values[0]) == ahead.jobs[n].time.begin);
        QCOMPARE(std::get<std::int64_t>(findings.front().values[1]), std::int64_t(std::llround(risky->chance * 100)));
        QCOMPARE(std::get<QString>(findings.front().values[2]), ahead.jobs[n].laneSet().text());
        // Readiness says the same, for this plan which knows nothing of the tank.
        QVERIFY(has(readinessOf(state, ahead, at(0, 12)).front(), "readiness.overflow"));
        // A plan that sees too little room puts an emptying in, and nothing is left to say.
        state.readings.back().levels.waste = machine.capacity.waste - millilitres(700);
        const Plan better = planOf(state, at(0, 12));
        const bool empties = std::any_of(better.jobs.begin(), better.jobs.end(), [](const Job& job) {
            return std::any_of(job.steps.begin(), job.steps.end(), [](const Step& s) { return s.kind == StepKind::EmptyWaste; });
        });
        QVERIFY(empties);
        QVERIFY(!has(readinessOf(state, better, at(0, 12)).front(), "readiness.overflow"));
    }

    void anOverfullTankIsSaidBeforeTheFirstJob() {
        SeasonState state = season();
        const Machine& machine = state.centre.machines.front();
        const Plan ahead = planOf(state, at(0, 12));
        state.readings = {emptiedAt("l1", at(0, 12), std::nullopt)};
        state.readings.back().levels.waste = machine.capacity.waste + millilitres(1);
        const auto findings = overflowFindings(overflowTonight(state, machine, ahead, at(0, 12)), ahead, "Otter");
        QCOMPARE(std::get<std::int64_t>(findings.front().values[1]), std::int64_t{100});
        QVERIFY(std::get<Instant>(findings.front().values[0]) == ahead.jobs.front().time.begin);
    }

    void whatHardlyCanBeIsFlagged_data() {
        QTest::addColumn<int>("ml");
        QTest::addColumn<QByteArray>("rule");
        QTest::newRow("nothing") << 0 << QByteArray();
        QTest::newRow("full") << 9'000 << QByteArray();
        QTest::newRow("up to the brim") << 11'250 << QByteArray();
        QTest::newRow("more than it holds") << 11'251 << QByteArray("waste.beyond-tank");
        QTest::newRow("negative") << -1 << QByteArray("waste.negative");
    }

    void whatHardlyCanBeIsFlagged() {
        QFETCH(int, ml);
        QFETCH(QByteArray, rule);
        const auto findings = emptiedFindings(millilitres(ml), house().centre.machines.front());
        QCOMPARE(findings.empty() ? QByteArray() : findings.front().rule, rule);
        if (ml > 0 && !findings.empty()) QVERIFY(findings.front().severity == Severity::Warning);
    }

    void whatIsFlaggedStaysAndTeachesNothing() {
        SeasonState state = season();
        const Machine& machine = state.centre.machines.front();
        // 12.5 L of 15 L of cleaner came back by what was typed: the share would be likely, the tank cannot hold it.
        state.readings = {emptiedAt("l1", at(0, 6), std::nullopt), emptiedAt("l2", at(0, 11), millilitres(12'500))};
        state.runs = {ran("r1", at(0, 10), 60, millilitres(250))};
        QCOMPARE(learnedWasteTank(state, machine).emptyings(), 0);
        const Plan ahead = planOf(state, at(0, 12));
        QVERIFY(has(readinessOf(state, ahead, at(0, 12)).front(), "waste.beyond-tank"));
        state.readings.back().emptied = millilitres(9'000);
        QCOMPARE(learnedWasteTank(state, machine).emptyings(), 1);
        QVERIFY(!has(readinessOf(state, ahead, at(0, 12)).front(), "waste.beyond-tank"));
    }

    void theOutlookTellsEveryMachine() {
        SeasonState state = season();
        state.runs = {ran("r1", at(0, 10), 20)};
        const auto lines = wasteOutlook(state, planOf(state, at(0, 12)), at(0, 12));
        QCOMPARE(lines.size(), state.centre.machines.size());
        QCOMPARE(lines.front().emptyings, 0);
        // 2 L of cleaner, of which 85 % come back before anything is known.
        QCOMPARE(lines.front().level.value, millilitres(1'700).value);
        QVERIFY(lines.front().overflow.size() >= 2);
    }
};

QTEST_GUILESS_MAIN(WasteTonightTest)
#include "tst_waste_tonight.moc"
