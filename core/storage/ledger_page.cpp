#include "core/storage/ledger_page.h"

#include "core/storage/database.h"
#include "core/storage/movements.h"

#include <algorithm>

namespace laneward {

namespace {

Instant monthBegin(Instant t) {
    const QDate day = QDateTime::fromSecsSinceEpoch(t.seconds, Qt::UTC).date();
    return {QDate(day.year(), day.month(), 1).startOfDay(Qt::UTC).toSecsSinceEpoch()};
}

Result<Amount> sumOf(Database& database, const QString& sql, const std::vector<QVariant>& values) {
    const Result<QVariant> sum = database.value(sql, values);
    if (!sum) return sum.error();
    return Amount{sum->toLongLong()};
}

/// At the end of the month before.
Result<Amount> closedBefore(Database& database, const CentreId& centre, const SupplyId& supply, std::int64_t month) {
    return sumOf(
        database,
        QStringLiteral("SELECT COALESCE(CAST(SUM(amount) AS bigint), 0) FROM closing_balances WHERE centre_id = ? AND supply = ? "
                       "AND month = (SELECT MAX(month) FROM closing_balances WHERE centre_id = ? AND month < ?)"),
        {centre.value, supply.value, centre.value, qint64{month}});
}

/// Of what was moved inside.
Result<Amount> movedWithin(Database& database, const CentreId& centre, const SupplyId& supply, const Span& time) {
    return sumOf(database,
                 QStringLiteral("SELECT COALESCE(CAST(SUM(e.amount) AS bigint), 0) FROM movements m JOIN movement_entries e ON "
                                "e.centre_id = m.centre_id AND e.movement_id = m.id WHERE m.centre_id = ? AND m.happened_at >= ? "
                                "AND m.happened_at < ? AND e.supply = ? AND e.place IN ('shelf', 'open', 'tank', 'waste-tank')"),
                 {centre.value, qint64{time.begin.seconds}, qint64{time.end.seconds}, supply.value});
}

}  // namespace

Result<LedgerPage> ledgerPage(Store& store, const CentreId& centre, const SupplyId& supply, const Span& time) {
    const Result<Amount> closed = closedBefore(store.database(), centre, supply, monthOf(time.begin));
    if (!closed) return closed.error();
    const Result<Amount> since = movedWithin(store.database(), centre, supply, {monthBegin(time.begin), time.begin});
    if (!since) return since.error();
    // A correction has the time of what it corrects, so it lies within the same range.
    const QString within = QStringLiteral(
        "AND happened_at >= ? AND happened_at < ? AND EXISTS (SELECT 1 FROM movement_entries e WHERE e.centre_id = "
        "movements.centre_id AND e.movement_id = movements.id AND e.supply = ?)");
    Result<std::vector<Movement>> read =
        movementsWhere(store.database(), centre, within, {qint64{time.begin.seconds}, qint64{time.end.seconds}, supply.value});
    if (!read) return read.error();
    std::stable_sort(read->begin(), read->end(), [](const Movement& a, const Movement& b) {
        return std::pair(a.at, a.recordedAt) < std::pair(b.at, b.recordedAt);
    });
    return LedgerPage{*std::move(read), *closed + *since};
}

}  // namespace laneward
