#include "app/demo/demo_parts.h"

#include "core/season/output_drift.h"

#include <algorithm>
#include <cmath>

namespace laneward::demo {

namespace {

constexpr std::uint64_t seed = 0xf111;
constexpr int driftDays = 60;        // Heron puts out more and more Amber since then …
constexpr double driftAtEnd = 0.09;  // … up to so much more
constexpr int lineErrorMl = 12;      // the line is met within
constexpr double lineAt = 0.6;       // of a tank; below it nobody bothers to fill

double outputOf(const QString& machine, int product) {
    if (product == cleanerProduct) return 0.97;
    return machine == "heron" ? 1.04 : 1.02;
}

/// What the lanes since the last full line took of one product, by the recipe and really.
struct Taken {
    double nominal = 0;
    double real = 0;
    double lineError = 0;  ///< of the last fill
};

/// One machine's tanks through the year.
class Tanks {
public:
    Tanks(const Machine& machine, Instant driftBegins, Instant driftEnds)
        : m_machine(machine), m_begins(driftBegins), m_ends(driftEnds), m_dice(machine.id.value == "heron" ? seed : seed + 1) {}

    void take(const RunLog& run, const Pattern* pattern) {
        for (int product = 0; product < products; ++product) {
            const double nominal = nominalOf(run, pattern, product);
            m_taken[size_t(product)].nominal += nominal;
            m_taken[size_t(product)].real += nominal * (outputOf(m_machine.id.value, product) + drift(run.time.end, product));
        }
        m_lanes += run.use.laneRuns;
    }

    bool wantsFilling() const {
        return m_taken[0].nominal > lineAt * double(m_machine.capacity.conditioner[0].value) ||
               m_taken[cleanerProduct].nominal > 0.8 * double(m_machine.capacity.cleaner.value);
    }

    LevelReading fill(const OperationId& id, const PersonId& person, Instant at) {
        LevelReading reading{id, person, fullLevels(m_machine, limitsFromSettings(m_machine), at), Poured{}, {}};
        for (int product = 0; product < conditionerSlots; ++product)
            reading.poured->conditioner[size_t(product)] = pour(product, lineAt * 0.8 * double(tank(product).value));
        reading.poured->cleaner = pour(cleanerProduct, lineAt * 0.8 * double(m_machine.capacity.cleaner.value));
        reading.levels.lanesLeft = std::max(0, reading.levels.lanesLeft - m_lanes);
        return reading;
    }

    void startDay() { m_lanes = 0; }

private:
    Microlitres tank(int slot) const { return m_machine.capacity.conditioner[size_t(slot)]; }

    double nominalOf(const RunLog& run, const Pattern* pattern, int product) const {
        const bool cleans = run.treatment != Treatment::ConditionOnly;
        if (product == cleanerProduct) return cleans ? double(m_machine.capacity.cleanerPerLane.value * run.use.laneRuns) : 0;
        return pattern ? double(volumes(*pattern).bySlot[size_t(product)].value * run.use.laneRuns) : 0;
    }

    double drift(Instant t, int product) const {
        if (m_machine.id.value != "heron" || product != 0 || t < m_begins) return 0;
        return driftAtEnd * double((t - m_begins).value) / double((m_ends - m_begins).value);
    }

    /// What it takes to reach the line, read from a jug to 5 mL; nothing when there is hardly any room.
    Microlitres pour(int product, double least) {
        Taken& taken = m_taken[size_t(product)];
        if (taken.nominal <= least) return {};
        const double lineError = 1'000.0 * (m_dice.below(2 * lineErrorMl + 1) - lineErrorMl);
        const double amount = taken.real + lineError - taken.lineError;
        taken = {0, 0, lineError};
        return millilitres(5 * std::llround(std::max(amount, 5'000.0) / 5'000.0));
    }

    const Machine& m_machine;
    Instant m_begins;
    Instant m_ends;
    Dice m_dice;
    std::array<Taken, products> m_taken{};
    int m_lanes = 0;
};

std::vector<const RunLog*> runsOf(const HistorySlice& records, const Machine& machine) {
    std::vector<const RunLog*> runs;
    for (const RunLog& run : records.runs)
        if (run.machine == machine.id) runs.push_back(&run);
    std::sort(runs.begin(), runs.end(), [](const RunLog* a, const RunLog* b) { return a->time.end < b->time.end; });
    return runs;
}

}  // namespace

void addFills(HistorySlice& records, const SeasonState& season, QDate today) {
    const Instant ends = dayOf(season.centre, today).begin;
    for (const Machine& machine : season.centre.machines) {
        Tanks tanks(machine, ends - hours(24) * driftDays, ends);
        const std::vector<const RunLog*> runs = runsOf(records, machine);
        QDate day;
        for (size_t n = 0; n < runs.size(); ++n) {
            const RunLog& run = *runs[n];
            if (const QDate date = dateOf(season.centre, run.time.end); date != day) tanks.startDay(), day = date;
            tanks.take(run, run.pattern ? versionOf(records.patternVersions, *run.pattern, run.patternVersion) : nullptr);
            const Instant at = run.time.end + minutes(4);
            const bool pause = n + 1 == runs.size() || runs[n + 1]->time.begin > at + minutes(2);
            if (!pause || !tanks.wantsFilling()) continue;
            records.readings.push_back(tanks.fill(operation("fill " + run.id.value), run.person, at));
        }
    }
    std::stable_sort(records.readings.begin(), records.readings.end(),
                     [](const LevelReading& a, const LevelReading& b) { return a.levels.at < b.levels.at; });
}

}  // namespace laneward::demo
