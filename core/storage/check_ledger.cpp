#include "core/storage/check_ledger.h"

#include "core/storage/closing_balances.h"
#include "core/storage/movements.h"

#include <QDateTime>
#include <QTimeZone>

namespace laneward {
namespace {

using Findings = std::vector<Finding>;

void add(Findings& findings, const char* rule, const QString& subject, std::vector<Value> values = {}) {
    findings.push_back({Severity::Fault, rule, subject, std::move(values)});
}

struct Rule {
    const char* rule;
    const char* sql;
};

constexpr std::array rules{
    Rule{
        "check.entry-without-movement",
        "SELECT DISTINCT movement_id FROM movement_entries e WHERE centre_id = ? AND NOT EXISTS (SELECT 1 FROM movements m WHERE "
        "m.centre_id = e.centre_id AND m.id = e.movement_id)"},
    Rule{"check.not-opposite",
         "SELECT id FROM movements m WHERE centre_id = ? AND corrects IS NOT NULL AND EXISTS (SELECT 1 FROM movement_entries e "
         "WHERE e.centre_id = m.centre_id AND e.movement_id IN (m.id, m.corrects) GROUP BY supply, place, machine, slot, "
         "container, "
         "lot HAVING SUM(amount) <> 0)"},
    Rule{
        "check.unknown-source",
        "SELECT id FROM movements m WHERE centre_id = ? AND source_id <> '' AND ((source = 'order' AND NOT EXISTS (SELECT 1 FROM "
        "orders o WHERE o.centre_id = m.centre_id AND o.id = m.source_id)) OR (source IN ('run', 'level', 'count') AND NOT "
        "EXISTS "
        "(SELECT 1 FROM operations p WHERE p.centre_id = m.centre_id AND p.id = m.source_id)))"},
    Rule{"check.below-zero",
         "SELECT DISTINCT supply FROM (SELECT e.supply FROM movement_entries e JOIN movements m ON m.centre_id = e.centre_id AND "
         "m.id = e.movement_id WHERE e.centre_id = ? AND e.place IN ('shelf', 'open', 'tank', 'waste-tank') GROUP BY e.supply, "
         "e.place, e.machine, e.slot, e.container, e.lot HAVING SUM(e.amount) < 0 AND MAX(CASE WHEN m.flagged = 1 AND e.amount < "
         "0 "
         "THEN 1 ELSE 0 END) = 0) s"},
};

Outcome held(Database& database, const CentreId& centre, Findings& findings) {
    for (const Rule& rule : rules) {
        const auto rows = database.rows(QLatin1StringView(rule.sql), {centre.value});
        if (!rows) return rows.error();
        for (const Row& row : *rows)
            add(findings, rule.rule, row.value(0).toString());
    }
    const Result<std::vector<QString>> wrong = wrongBalances(database, centre);
    if (!wrong) return wrong.error();
    for (const QString& place : *wrong)
        add(findings, "check.closing-balance", place);
    return Nothing{};
}

/// The UTC month of `t`.
Span monthWith(Instant t) {
    const QDate date = QDateTime::fromSecsSinceEpoch(t.seconds, Qt::UTC).date();
    const QDate first(date.year(), date.month(), 1);
    return {{first.startOfDay(Qt::UTC).toSecsSinceEpoch()}, {first.addMonths(1).startOfDay(Qt::UTC).toSecsSinceEpoch()}};
}

struct Reading {
    Database& database;
    const CentreId& centre;
    const std::vector<Supply>& supplies;
    Findings& findings;

    /// The month of the next movement from `from` on.
    Result<std::optional<Span>> next(Instant from) {
        const Result<QVariant> first =
            database.value(QStringLiteral("SELECT MIN(happened_at) FROM movements WHERE centre_id = ? AND happened_at >= ?"),
                           {centre.value, qint64{from.seconds}});
        if (!first) return first.error();
        return first->isNull() ? std::optional<Span>() : monthWith({first->toLongLong()});
    }

    Outcome movements(const Span& month) {
        const std::vector<QVariant> range{qint64{month.begin.seconds}, qint64{month.end.seconds}};
        const auto all = movementsWhere(database, centre, QStringLiteral("AND happened_at >= ? AND happened_at < ?"), range);
        if (!all) return all.error();
        for (const Movement& movement : *all)
            for (const Finding& finding : faultsOf(movement, supplies)) {
                const bool open = finding.rule == "ledger.unbalanced";
                add(findings, open ? "check.unbalanced" : "check.movement", movement.id.value,
                    {open ? finding.subject : QString::fromLatin1(finding.rule)});
            }
        const auto elsewhere = database.rows(
            QStringLiteral(
                "SELECT DISTINCT m.id FROM movements m JOIN movement_entries e ON e.centre_id = m.centre_id AND "
                "e.movement_id = m.id WHERE m.centre_id = ? AND m.happened_at >= ? AND m.happened_at < ? AND e.month <> ?"),
            {centre.value, range[0], range[1], qint64{monthOf(month.begin)}});
        if (!elsewhere) return elsewhere.error();
        for (const Row& row : *elsewhere)
            add(findings, "check.entry-month", row.value(0).toString());
        return Nothing{};
    }
};

}  // namespace

Result<std::vector<Finding>> ledgerFaults(Database& database, const CentreId& centre) {
    Findings findings;
    if (const Outcome done = held(database, centre, findings); !done) return done.error();
    const Result<std::vector<Supply>> supplies = rowsOf<Supply>(database, centre);
    if (!supplies) return supplies.error();
    Reading reading{database, centre, *supplies, findings};
    Result<std::optional<Span>> month = reading.next(allRecords.begin);
    while (month && *month) {
        if (const Outcome read = reading.movements(**month); !read) return read.error();
        month = reading.next((*month)->end);
    }
    return month ? Result<Findings>(std::move(findings)) : month.error();
}

}  // namespace laneward
