#include "core/storage/closing_balances.h"

#include "core/storage/movements.h"

#include <QStringList>

namespace laneward {
namespace {

constexpr auto keyColumns = "supply, place, machine, slot, container, lot";

/// What was moved inside in each month, place by place.
constexpr auto moved =
    "SELECT month, supply, place, COALESCE(machine, '') AS machine, slot, container, lot, SUM(amount) AS amount FROM "
    "movement_entries WHERE centre_id = ? AND place IN ('shelf', 'open', 'tank', 'waste-tank') GROUP BY month, supply, place, "
    "COALESCE(machine, ''), slot, container, lot";

/// Balances at the end of each month: the sums of all months until then.
QString closings() {
    return QStringLiteral(
               "WITH moved AS (%1), months AS (SELECT DISTINCT month FROM moved) SELECT CAST(? AS text) AS centre_id, e.month, "
               "m.supply, m.place, m.machine, m.slot, m.container, m.lot, CAST(SUM(m.amount) AS bigint) AS amount FROM months e "
               "JOIN moved m ON m.month <= e.month GROUP BY e.month, m.supply, m.place, m.machine, m.slot, m.container, m.lot "
               "HAVING SUM(m.amount) <> 0 OR MAX(m.month) = e.month")
        .arg(QLatin1StringView(moved));
}

std::vector<QVariant> columnsOf(const StockKey& key) {
    ColumnWriter writer;
    describe(writer, key);
    writer.values.at(2) = toColumn(key.place.machine.value);  // never NULL here
    return writer.values;
}

/// A new month begins with what the one before it ended with.
Outcome open(Database& database, const CentreId& centre, std::int64_t month) {
    const Result<QVariant> known =
        database.value(QStringLiteral("SELECT month FROM closing_balances WHERE centre_id = ? AND month = ? LIMIT 1"),
                       {centre.value, qint64{month}});
    if (!known) return known.error();
    if (known->isValid()) return Nothing{};
    const QString carry =
        QStringLiteral(
            "INSERT INTO closing_balances (centre_id, month, %1, amount) SELECT centre_id, CAST(? AS bigint), %1, "
            "amount FROM closing_balances WHERE centre_id = ? AND amount <> 0 AND month = (SELECT MAX(month) FROM "
            "closing_balances WHERE centre_id = ? AND month < ?)")
            .arg(QLatin1StringView(keyColumns));
    const Result<int> done = database.change(carry, {qint64{month}, centre.value, centre.value, qint64{month}});
    return done ? Outcome(Nothing{}) : Outcome(done.error());
}

Outcome addTo(Database& database, const CentreId& centre, std::int64_t month, const Entry& entry) {
    const std::vector<QVariant> key = columnsOf(entry.key);
    const auto run = [&](const QString& sql, const std::vector<QVariant>& values) -> Outcome {
        const Result<int> done = database.change(sql, values);
        return done ? Outcome(Nothing{}) : Outcome(done.error());
    };
    const auto with = [&](std::vector<QVariant> before, const std::vector<QVariant>& after) {
        before.insert(before.end(), key.begin(), key.end());
        before.insert(before.end(), after.begin(), after.end());
        return before;
    };
    const QString own = QStringLiteral(
                            "INSERT INTO closing_balances (centre_id, month, %1, amount) VALUES (?, ?, ?, ?, ?, ?, ?, ?, 0) ON "
                            "CONFLICT DO NOTHING")
                            .arg(QLatin1StringView(keyColumns));
    const QString later =
        QStringLiteral(
            "INSERT INTO closing_balances (centre_id, month, %1, amount) SELECT DISTINCT centre_id, month, CAST(? "
            "AS text), CAST(? AS text), CAST(? AS text), CAST(? AS bigint), CAST(? AS text), CAST(? AS text), 0 "
            "FROM closing_balances WHERE centre_id = ? AND month > ? ON CONFLICT DO NOTHING")
            .arg(QLatin1StringView(keyColumns));
    const auto sum = QStringLiteral(
        "UPDATE closing_balances SET amount = amount + ? WHERE centre_id = ? AND month >= ? AND supply = ? AND place = ? AND "
        "machine = ? AND slot = ? AND container = ? AND lot = ?");
    if (const Outcome done = run(own, with({centre.value, qint64{month}}, {})); !done) return done;
    if (const Outcome done = run(later, with({}, {centre.value, qint64{month}})); !done) return done;
    return run(sum, with({toColumn(entry.amount), centre.value, qint64{month}}, {}));
}

/// A key with an amount, as columns of a row from `at` on.
std::optional<Entry> entryIn(const Row& row, int at) {
    ColumnReader<Row> reader(row, at);
    Entry entry;
    describe(reader, entry);
    return reader.isGood() ? std::optional(entry) : std::nullopt;
}

Error damaged(const Database& database) {
    return fault(ErrorKind::Io, "store.damaged", database.shown(), {QStringLiteral("closing_balances")});
}

}  // namespace

Result<Balances> storedBalances(Database& database, const CentreId& centre) {
    const auto rows = database.rows(
        QStringLiteral(
            "SELECT %1, amount FROM closing_balances WHERE centre_id = ? AND amount <> 0 AND month = (SELECT MAX(month) "
            "FROM closing_balances WHERE centre_id = ?)")
            .arg(QLatin1StringView(keyColumns)),
        {centre.value, centre.value});
    if (!rows) return rows.error();
    std::map<StockKey, Amount> amounts;
    for (const Row& row : *rows) {
        const std::optional<Entry> entry = entryIn(row, 0);
        if (!entry) return damaged(database);
        amounts.emplace(entry->key, entry->amount);
    }
    return Balances(std::move(amounts));
}

Outcome close(Database& database, const CentreId& centre, const Movement& movement) {
    const std::int64_t month = monthOf(movement.at);
    bool isOpen = false;
    for (const Entry& entry : movement.entries) {
        if (!entry.key.place.isInside()) continue;
        if (const Outcome opened = isOpen ? Outcome(Nothing{}) : open(database, centre, month); !opened) return opened;
        isOpen = true;
        if (const Outcome added = addTo(database, centre, month, entry); !added) return added;
    }
    return Nothing{};
}

Outcome rebuildBalances(Database& database, const CentreId& centre) {
    const Result<int> gone = database.change(QStringLiteral("DELETE FROM closing_balances WHERE centre_id = ?"), {centre.value});
    if (!gone) return gone.error();
    const QString sql = QStringLiteral("INSERT INTO closing_balances (centre_id, month, %1, amount) %2")
                            .arg(QLatin1StringView(keyColumns), closings());
    const Result<int> done = database.change(sql, {centre.value, centre.value});
    return done ? Outcome(Nothing{}) : Outcome(done.error());
}

Result<std::vector<QString>> wrongBalances(Database& database, const CentreId& centre) {
    const QString sql = QStringLiteral(
                            "SELECT month, supply FROM (SELECT centre_id, month, %1, amount FROM (%2) made UNION ALL SELECT "
                            "centre_id, month, %1, "
                            "-amount FROM closing_balances WHERE centre_id = ?) both_of GROUP BY month, %1 HAVING SUM(amount) <> "
                            "0 ORDER BY month, "
                            "supply")
                            .arg(QLatin1StringView(keyColumns), closings());
    const auto rows = database.rows(sql, {centre.value, centre.value, centre.value});
    if (!rows) return rows.error();
    std::vector<QString> wrong;
    for (const Row& row : *rows)
        wrong.push_back(row.value(0).toString() + u' ' + row.value(1).toString());
    return wrong;
}

}  // namespace laneward
