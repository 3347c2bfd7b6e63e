#include "app/pages/supplies/ledger_rows.h"

#include "core/storage/ledger_page.h"

#include <QHash>

#include <algorithm>

namespace laneward {

namespace {

constexpr int pieceDays = 28;

std::vector<LedgerRow> rowsOf(const LedgerPage& page, const SupplyId& supply) {
    std::vector<LedgerRow> rows;
    QHash<QString, size_t> places;
    Amount onHand = page.before;
    for (const Movement& movement : page.movements) {
        LedgerRow row{movement, {}, {}, {}, {}};
        for (const Entry& entry : movement.entries) {
            if (entry.key.supply != supply) continue;
            if (entry.amount > Amount{}) row.moved += entry.amount;
            if (entry.key.place.isInside()) row.change += entry.amount;
        }
        row.onHand = onHand += row.change;
        places.insert(movement.id.value, rows.size());
        rows.push_back(std::move(row));
    }
    for (const LedgerRow& row : std::vector(rows)) {
        if (!row.movement.corrects) continue;
        const auto corrected = places.find(row.movement.corrects->value);
        if (corrected != places.end()) rows[*corrected].back = row.movement.id;
    }
    std::reverse(rows.begin(), rows.end());
    return rows;
}

}  // namespace

LedgerReading readLedger(Session& session, const SupplyId& supply, const DateRange& days, size_t most) {
    LedgerReading reading;
    reading.from = days.last.addDays(1);
    const Centre& centre = session.season().centre;
    while (reading.from > days.first) {
        if (reading.rows.size() >= most) {
            reading.isWhole = false;
            break;
        }
        const QDate first = std::max(days.first, reading.from.addDays(-pieceDays));
        const Span time{dayOf(centre, first).begin, dayOf(centre, reading.from).begin};
        const Result<LedgerPage> page = ledgerPage(session.store(), centre.facts.id, supply, time);
        if (!page) {
            reading.why = page.error();
            break;
        }
        std::vector<LedgerRow> rows = rowsOf(*page, supply);
        reading.rows.insert(reading.rows.end(), std::make_move_iterator(rows.begin()), std::make_move_iterator(rows.end()));
        reading.from = first;
    }
    return reading;
}

}  // namespace laneward
