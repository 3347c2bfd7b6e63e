#include "core/storage/ledger_writing.h"

#include "core/storage/closing_balances.h"
#include "core/storage/movements.h"
#include "core/storage/operations.h"

namespace laneward {
namespace {

/// Amounts of each place together, times `sign`.
std::map<StockKey, Amount> amountsOf(const Movement& movement, int sign) {
    std::map<StockKey, Amount> amounts;
    for (const Entry& entry : movement.entries)
        amounts[entry.key] += entry.amount * sign;
    return amounts;
}

Error unknownReference(const OperationId& id) {
    return fault(ErrorKind::Invalid, "record.unknown-reference", id.value.left(limits::nameLength));
}

}  // namespace

Outcome LedgerWriting::prepare() {
    if (m_supplies) return Nothing{};
    Result<std::vector<Supply>> supplies = rowsOf<Supply>(m_database, m_centre);
    if (!supplies) return supplies.error();
    Result<Balances> stock = storedBalances(m_database, m_centre);
    if (!stock) return stock.error();
    m_supplies = *std::move(supplies);
    m_stock = *std::move(stock);
    return Nothing{};
}

Outcome LedgerWriting::mayBook(const Movement& movement) {
    if (const Outcome ready = prepare(); !ready) return ready;
    if (const std::vector<Finding> faults = faultsOf(movement, *m_supplies); !faults.empty())
        return Error{ErrorKind::Invalid, faults.front()};
    if (const Outcome known = sourceExists(movement); !known) return known;
    if (const Outcome opposite = isOpposite(movement); !opposite) return opposite;
    const std::vector<Finding> faults = faultsOf(movement, m_stock, *m_supplies);
    return faults.empty() ? Outcome(Nothing{}) : Outcome(Error{ErrorKind::Refused, faults.front()});
}

Outcome LedgerWriting::mayBook(const StockCount& count) {
    if (const Outcome ready = prepare(); !ready) return ready;
    const std::vector<Finding> faults = faultsOf(count, *m_supplies);
    if (!faults.empty()) return Error{ErrorKind::Invalid, faults.front()};
    // The lines are text to the database, which therefore cannot see what machines they name.
    for (const CountLine& line : count.lines) {
        const MachineId& machine = line.key.place.machine;
        if (machine.isEmpty()) continue;
        const auto there = rowOf<Machine>(m_database, m_centre, machine.value);
        if (!there) return there.error();
        if (!*there) return unknownReference(count.id);
    }
    return Nothing{};
}

Outcome LedgerWriting::booked(const Movement& movement) {
    m_stock.add(movement);
    return close(m_database, m_centre, movement);
}

Outcome LedgerWriting::sourceExists(const Movement& movement) {
    if (movement.sourceId.isEmpty()) return Nothing{};
    Result<bool> known = true;
    if (movement.source == MovementSource::Order) {
        const auto order = rowOf<Order>(m_database, m_centre, movement.sourceId);
        known = order ? Result<bool>(order->has_value()) : order.error();
    } else if (movement.source != MovementSource::Person && movement.source != MovementSource::Service) {
        const Result<QString> kind = operationKind(m_database, m_centre, {movement.sourceId});
        known = kind ? Result<bool>(!kind->isEmpty()) : kind.error();
    }
    if (!known) return known.error();
    return *known ? Outcome(Nothing{}) : Outcome(unknownReference(movement.id));
}

Outcome LedgerWriting::isOpposite(const Movement& movement) {
    if (!movement.corrects) return Nothing{};
    const auto corrected = movementsWhere(m_database, m_centre, QStringLiteral("AND id = ?"), {movement.corrects->value});
    if (!corrected) return corrected.error();
    if (corrected->empty()) return unknownReference(movement.id);
    if (amountsOf(corrected->front(), -1) == amountsOf(movement, 1)) return Nothing{};
    return fault(ErrorKind::Invalid, "ledger.not-opposite", movement.id.value);
}

}  // namespace laneward
