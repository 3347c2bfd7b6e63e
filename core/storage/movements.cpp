#include "core/storage/movements.h"

#include <QDateTime>
#include <QHash>
#include <QSet>
#include <QStringList>

namespace laneward {
namespace {

constexpr auto entryColumns = "supply, place, machine, slot, container, lot, amount";

Outcome joinEntries(Database& database, const std::vector<Row>& rows, std::vector<Movement>& movements) {
    QHash<QString, Movement*> byId;
    for (Movement& movement : movements)
        byId.insert(movement.id.value, &movement);
    QSet<QString> texts;  // those that stand in many entries are kept once
    for (const Row& row : rows) {
        Movement* movement = byId.value(row.value(0).toString());
        ColumnReader<Row> reader(row, 1);
        Entry entry;
        describe(reader, entry);
        if (!movement || !reader.isGood())
            return fault(ErrorKind::Io, "store.damaged", database.shown(),
                         {QStringLiteral("movement_entries ") + row.value(0).toString()});
        for (QString* text : {&entry.key.supply.value, &entry.key.place.machine.value, &entry.key.container, &entry.key.lot})
            *text = *texts.insert(*text);
        movement->entries.push_back(std::move(entry));
    }
    return Nothing{};
}

Result<bool> hasRow(Database& database, const char* sql, const std::vector<QVariant>& values) {
    const Result<QVariant> found = database.value(QLatin1StringView(sql), values);
    return found ? Result<bool>(found->isValid()) : found.error();
}

}  // namespace

std::int64_t monthOf(Instant t) {
    const QDate date = QDateTime::fromSecsSinceEpoch(t.seconds, Qt::UTC).date();
    return std::int64_t{date.year()} * 100 + date.month();
}

Result<std::vector<Movement>> movementsWhere(Database& database, const CentreId& centre, const QString& where,
                                             const std::vector<QVariant>& values) {
    Result<std::vector<Movement>> movements = rowsOf<Movement>(database, centre, where, values);
    if (!movements) return movements;
    std::vector<QVariant> bound{centre.value, centre.value};
    bound.insert(bound.end(), values.begin(), values.end());
    const QString sql =
        QStringLiteral(
            "SELECT movement_id, %1 FROM movement_entries WHERE centre_id = ? AND movement_id IN (%2) ORDER BY movement_id, line")
            .arg(QLatin1StringView(entryColumns), selectStatement("movements", {QLatin1StringView("id")}, false, where));
    const Result<std::vector<Row>> rows = database.rows(sql, bound);
    if (!rows) return rows.error();
    if (const Outcome joined = joinEntries(database, *rows, *movements); !joined) return joined.error();
    std::sort(movements->begin(), movements->end(),
              [](const Movement& a, const Movement& b) { return std::tie(a.at, a.id) < std::tie(b.at, b.id); });
    return movements;
}

Outcome insertEntries(Database& database, const CentreId& centre, const Movement& movement) {
    if (movement.entries.empty()) return Nothing{};
    const QString sql =
        QStringLiteral(
            "INSERT INTO movement_entries (centre_id, movement_id, line, month, %1) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
            .arg(QLatin1StringView(entryColumns));
    for (size_t i = 0; i < movement.entries.size(); ++i) {
        ColumnWriter writer;
        describe(writer, movement.entries[i]);
        std::vector<QVariant> values{centre.value, movement.id.value, qint64(i), qint64{monthOf(movement.at)}};
        values.insert(values.end(), writer.values.begin(), writer.values.end());
        if (const Result<int> done = database.change(sql, values); !done) return done.error();
    }
    return Nothing{};
}

Result<bool> isMoved(Database& database, const CentreId& centre, const SupplyId& supply) {
    return hasRow(database, "SELECT line FROM movement_entries WHERE centre_id = ? AND supply = ? LIMIT 1",
                  {centre.value, supply.value});
}

Result<bool> isReceived(Database& database, const CentreId& centre, const OrderId& order) {
    return hasRow(database, "SELECT id FROM movements WHERE centre_id = ? AND source_id = ? AND source = 'order' LIMIT 1",
                  {centre.value, order.value});
}

}  // namespace laneward
