#include "core/season/supply_outlook.h"

#include <QSet>

#include <algorithm>
#include <map>

namespace laneward {

namespace {

// What one such event is usually about, before there is a history; common practice, no source.
constexpr double usualLossOfContainer = 0.02;
constexpr double piecesAtOnce = 1;

RatePrior priorFor(const Supply& supply) {
    RatePrior prior;
    const bool pieces = unitOf(supply.kind) == BaseUnit::Piece;
    prior.size = pieces ? piecesAtOnce : std::max(1.0, usualLossOfContainer * double(supply.container.value));
    if (pieces) prior = {0.5, 180, piecesAtOnce};
    return prior;
}

/// Into `kind` in one movement; negative = it came from there.
Amount into(const Movement& movement, const SupplyId& supply, Place::Kind kind) {
    Amount sum;
    for (const Entry& entry : movement.entries) {
        if (entry.key.supply == supply && entry.key.place.kind == kind) sum += entry.amount;
    }
    return sum;
}

bool isTakenBack(const Movement& movement, const std::vector<Movement>& all) {
    return movement.corrects ||
           std::any_of(all.begin(), all.end(), [&](const Movement& other) { return other.corrects == movement.id; });
}

/// What went by chance, by the day: spills and what counts found missing, and for parts what services took: where duties plan a
/// part, only what was taken because something had failed.
class Chances {
public:
    Chances(const SeasonState& season, const StockHistory& history, int days)
        : m_centre(season.centre), m_history(history), m_days(days) {
        for (const ServiceItem& item : season.items) {
            for (const Duty& duty : item.retired ? std::vector<Duty>{} : item.duties) {
                for (const PartNeed& part : duty.parts)
                    m_planned.insert(part.supply);
            }
        }
    }

    std::vector<LearnedRate> of(const Supply& supply) const {
        std::vector<LearnedRate> rates;
        const bool counted = supply.basis == UseBasis::PerDay || supply.basis == UseBasis::PerLaneCleaned;
        if (supply.basis == UseBasis::WhenServiced) rates.push_back(rate(supply, Place::Kind::Lane, false));
        if (counted) return rates;  // what counts find is in the usage that they teach
        rates.push_back(rate(supply, Place::Kind::Loss, false));
        const LearnedRate found = rate(supply, Place::Kind::Loss, true);
        if (found.events > 0) {
            rates.push_back(found);
            rates.back().comesIn = true;
        }
        return rates;
    }

private:
    LearnedRate rate(const Supply& supply, Place::Kind kind, bool comesIn) const {
        std::vector<DatedAmount> events;
        for (const Movement& movement : m_history.movements) {
            const Amount amount = into(movement, supply.id, kind);
            if (amount == Amount{0} || (amount < Amount{0}) != comesIn || isTakenBack(movement, m_history.movements)) continue;
            if (kind == Place::Kind::Lane && m_planned.contains(supply.id) && isPlanned(movement)) continue;
            events.push_back({dateOf(m_centre, movement.at), comesIn ? -amount : amount});
        }
        return learnRate(events, m_days, priorFor(supply));
    }

    bool isPlanned(const Movement& movement) const {
        const auto& failures = m_history.failures;
        return movement.source == MovementSource::Service &&
               std::find(failures.begin(), failures.end(), OperationId{movement.sourceId}) == failures.end();
    }

    const Centre& m_centre;
    const StockHistory& m_history;
    int m_days;
    QSet<SupplyId> m_planned;  ///< parts of duties
};

/// Work that no plan had: re-treatments and extra events, in what their recipes take.
std::vector<DatedAmount> unplannedWork(const SeasonState& season, const std::vector<RunLog>& runs, const Supply& supply) {
    std::vector<DatedAmount> events;
    for (const RunLog& run : runs) {
        const Machine* machine = findMachine(season.centre, run.machine);
        if (!machine || run.result != RunResult::Unplanned) continue;
        Amount sum;
        for (int product = 0; product < products; ++product) {
            if (productName(*machine, product) != supply.name) continue;
            const Microlitres used = product == cleanerProduct ? run.use.cleaner : run.use.conditioner[size_t(product)];
            sum += Amount{used.value / (1 + supply.waterParts)};
        }
        if (sum > Amount{0}) events.push_back({dateOf(season.centre, run.time.end), sum});
    }
    return events;
}

Amount missingOf(const Order& order, const std::vector<Movement>& movements, size_t line) {
    const std::vector<Amount> received = receivedOf(order, movements);
    return order.lines[line].pack * order.lines[line].packs - received[line];
}

std::optional<Instant> completedAt(const Order& order, const std::vector<Movement>& movements) {
    std::optional<Instant> last;
    for (const Movement& movement : movements) {
        const bool own = movement.source == MovementSource::Order && movement.sourceId == order.id.value && !movement.corrects;
        if (own && (!last || movement.at > *last)) last = movement.at;
    }
    for (size_t line = 0; line < order.lines.size(); ++line) {
        if (missingOf(order, movements, line) > Amount{0}) return std::nullopt;
    }
    return last;
}

}  // namespace

std::vector<Amount> receivedOf(const Order& order, const std::vector<Movement>& movements) {
    std::map<SupplyId, Amount> arrived;
    for (const Movement& movement : movements) {
        if (movement.source != MovementSource::Order || movement.sourceId != order.id.value) continue;
        for (const Entry& entry : movement.entries) {
            if (entry.key.place.isInside()) arrived[entry.key.supply] += entry.amount;
        }
    }
    // Packs of two sizes are two lines of one supply: the first is filled first, the last takes what is too much.
    std::vector<Amount> received(order.lines.size());
    for (size_t n = 0; n < order.lines.size(); ++n) {
        const OrderLine& line = order.lines[n];
        const bool last = std::none_of(order.lines.begin() + std::ptrdiff_t(n) + 1, order.lines.end(),
                                       [&](const OrderLine& other) { return other.supply == line.supply; });
        Amount& left = arrived[line.supply];
        received[n] = last ? left : std::min(left, line.pack * line.packs);
        left -= received[n];
    }
    return received;
}

SupplyLearning learnSupplies(const SeasonState& season, const SupplyHistory& history) {
    SupplyLearning learned;
    learned.machines = usageOf(history.drift, season.centre);
    const Chances chances(season, history.stock, std::max(0, history.days.days()));
    for (const Supply& supply : season.supplies) {
        SupplyLearned one{supply.id, {}, chances.of(supply)};
        if (supply.basis == UseBasis::PerDay || supply.basis == UseBasis::PerLaneCleaned)
            one.counted = usageFromCounts(supply, history.stock);
        if (supply.basis == UseBasis::Machine) {
            const auto extra = unplannedWork(season, history.stock.runs, supply);
            one.chance.push_back(learnRate(extra, std::max(0, history.days.days()), priorFor(supply)));
        }
        learned.supplies.push_back(std::move(one));
    }
    for (const Supplier& supplier : season.suppliers) {
        SupplierLearned one{supplier.id, {}};
        for (const Order& order : season.orders) {
            if (order.supplier != supplier.id || !order.placedOn) continue;
            if (const auto completed = completedAt(order, history.stock.movements))
                one.leadDays.push_back(int(order.placedOn->daysTo(dateOf(season.centre, *completed))));
        }
        learned.suppliers.push_back(std::move(one));
    }
    return learned;
}

std::vector<OpenOrder> openOrders(const SeasonState& season, const SupplyLearning& learned,
                                  const std::vector<Movement>& movements, QDate today) {
    std::vector<OpenOrder> open;
    for (const Order& order : season.orders) {
        if (order.state != OrderState::Placed || !order.placedOn) continue;
        OpenOrder one{order.id, order.supplier, *order.placedOn, {}, {}, {}};
        for (size_t line = 0; line < order.lines.size(); ++line) {
            const Amount missing = missingOf(order, movements, line);
            if (missing > Amount{0}) one.missing.push_back({order.lines[line].supply, missing});
        }
        if (one.missing.empty()) continue;
        const auto supplier = std::find_if(season.suppliers.begin(), season.suppliers.end(),
                                           [&](const Supplier& s) { return s.id == order.supplier; });
        const auto known = std::find_if(learned.suppliers.begin(), learned.suppliers.end(),
                                        [&](const SupplierLearned& s) { return s.supplier == order.supplier; });
        const int usual = supplier == season.suppliers.end() ? 7 : supplier->usualLeadDays;
        const DayChances lead = leadTimes(known == learned.suppliers.end() ? std::vector<int>{} : known->leadDays, usual);
        one.arrival = arrivalOf(lead, int(order.placedOn->daysTo(today)));
        one.likely = today.addDays(one.arrival.at(0.5));
        open.push_back(std::move(one));
    }
    return open;
}

}  // namespace laneward
