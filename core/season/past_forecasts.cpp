#include "core/season/past_forecasts.h"

#include <algorithm>
#include <set>

namespace laneward {

namespace {

/// When one machine's tank was at its line again.
struct AtLine {
    Instant at;
    MachineId machine;
};

QDate nearestDay(const Centre& centre, Instant at) {
    const QDate date = dateOf(centre, at);
    const Span day = dayOf(centre, date);
    return at - day.begin <= day.end - at ? date : date.addDays(1);
}

bool isAtLine(const LevelReading& reading, int product) {
    if (!reading.poured || !reading.poured->toLine) return false;
    const Poured& poured = *reading.poured;
    return (product == cleanerProduct ? poured.cleaner : poured.conditioner[size_t(product)]) > Microlitres{0};
}

/// Moments at which all that machines took of one product was known.
class Fills {
public:
    Fills(const SeasonState& season, const SupplyHistory& history, const Supply& supply) : m_runs(history.stock.runs) {
        const std::vector<LevelReading> readings = standing(history.drift.readings);
        for (const Machine& machine : season.centre.machines) {
            for (int product = 0; product < products; ++product) {
                if (productName(machine, product) != supply.name) continue;
                m_machines.insert(machine.id);
                for (const LevelReading& reading : readings) {
                    if (reading.levels.machine == machine.id && isAtLine(reading, product))
                        m_lines.push_back({reading.levels.at, machine.id});
                }
            }
        }
        std::stable_sort(m_lines.begin(), m_lines.end(), [](const AtLine& a, const AtLine& b) { return a.at < b.at; });
    }

    std::vector<Instant> knownFrom(Instant begin) const {
        std::vector<Instant> known;
        Instant last = begin;
        std::set<MachineId> filled;
        for (const AtLine& line : m_lines) {
            if (line.at < begin) continue;
            filled.insert(line.machine);
            const auto isKnown = [&](const MachineId& m) { return filled.contains(m) || !ran(m, {last, line.at}); };
            if (!std::all_of(m_machines.begin(), m_machines.end(), isKnown)) continue;
            known.push_back(line.at);
            last = line.at;
            filled.clear();
        }
        return known;
    }

private:
    bool ran(const MachineId& machine, const Span& time) const {
        return std::any_of(m_runs.begin(), m_runs.end(), [&](const RunLog& run) {
            return run.machine == machine && time.begin < run.time.end && run.time.end <= time.end;
        });
    }

    const std::vector<RunLog>& m_runs;
    std::set<MachineId> m_machines;
    std::vector<AtLine> m_lines;
};

/// What the ledger says has gone.
class Gone {
public:
    Gone(const std::vector<Movement>& movements, const SupplyId& supply) {
        for (const Movement& movement : movements) {
            const Amount amount = goneIn(movement, supply);
            if (amount != Amount{0}) m_parts.push_back({movement.at, amount, movement.source == MovementSource::Run});
        }
    }

    /// All until `begin`, as far as it was known at `at`, near it. A fill or count tells of everything before it: where the day
    /// begins earlier, only what runs took since is not of that day; where it begins later, what went until then belongs to it.
    Amount asOf(Instant begin, Instant at) const {
        Amount sum;
        for (const Part& part : m_parts) {
            const bool before = part.at <= (part.isRun ? begin : std::max(begin, at));
            if (before) sum += part.amount;
        }
        return sum;
    }

private:
    struct Part {
        Instant at;
        Amount amount;
        bool isRun = false;
    };
    std::vector<Part> m_parts;
};

std::vector<Instant> countedAt(const SupplyHistory& history, const Supply& supply, Instant begin) {
    std::vector<Instant> times;
    for (const StockCount* count : countsOf(supply, history.stock.counts)) {
        if (count->at >= begin) times.push_back(count->at);
    }
    return times;
}

}  // namespace

std::vector<KnownUse> knownUse(const SeasonState& season, const SupplyHistory& history, const Supply& supply) {
    if (unitOf(supply.kind) == BaseUnit::Piece || history.stock.movements.empty()) return {};
    const Instant begin = dayOf(season.centre, history.days.first).begin;
    const std::vector<Instant> times =
        supply.basis == UseBasis::Machine ? Fills(season, history, supply).knownFrom(begin) : countedAt(history, supply, begin);
    const Gone gone(history.stock.movements, supply.id);
    std::vector<KnownUse> known;
    Amount before;
    for (const Instant at : times) {
        const QDate day = nearestDay(season.centre, at);
        if (!known.empty() && known.back().day >= day) continue;
        const Amount sum = gone.asOf(dayOf(season.centre, day).begin, at);
        known.push_back({day, known.empty() ? Amount{0} : sum - before});
        before = sum;
    }
    return known;
}

std::map<SupplyId, ForecastScore> scoresOf(const SeasonState& season, const SupplyHistory& history,
                                           std::span<const KeptForecast> kept) {
    std::map<SupplyId, ForecastScore> scores;
    for (const Supply& supply : season.supplies) {
        if (supply.retired || unitOf(supply.kind) == BaseUnit::Piece) continue;
        scores.emplace(supply.id, scoreForecasts(kept, supply.id, knownUse(season, history, supply)));
    }
    return scores;
}

}  // namespace laneward
