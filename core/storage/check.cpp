#include "core/storage/check_ledger.h"
#include "core/storage/contents.h"
#include "core/storage/pattern_versions.h"
#include "core/storage/records.h"
#include "core/storage/run_work.h"
#include "core/storage/store_parts.h"

#include <QSet>

namespace laneward {
namespace {

using Findings = std::vector<Finding>;

void add(Findings& findings, const char* rule, const QString& subject, std::vector<Value> values = {}) {
    findings.push_back({Severity::Fault, rule, subject, std::move(values)});
}

/// A count of rows that must not exist: what it would mean, and how to find them.
struct Rule {
    const char* rule;
    const char* sql;
};

constexpr std::array rules{
    Rule{"check.centres", "SELECT id FROM centres WHERE (SELECT COUNT(*) FROM centres) > 1"},
    Rule{
        "check.operation-without-record",
        "SELECT id FROM operations o WHERE "
        "(kind = 'runs' AND NOT EXISTS (SELECT 1 FROM runs r WHERE r.centre_id = o.centre_id AND r.id = o.id)) "
        "OR (kind = 'incidents' AND NOT EXISTS (SELECT 1 FROM incidents r WHERE r.centre_id = o.centre_id AND r.id = o.id)) "
        "OR (kind = 'hand_overs' AND NOT EXISTS (SELECT 1 FROM hand_overs r WHERE r.centre_id = o.centre_id AND r.id = o.id)) "
        "OR (kind = 'level_readings' AND NOT EXISTS (SELECT 1 FROM level_readings r WHERE r.centre_id = o.centre_id AND r.id = "
        "o.id)) "
        "OR (kind = 'tape_readings' AND NOT EXISTS (SELECT 1 FROM tape_readings r WHERE r.centre_id = o.centre_id AND r.id = "
        "o.id)) "
        "OR (kind = 'movements' AND NOT EXISTS (SELECT 1 FROM movements r WHERE r.centre_id = o.centre_id AND r.id = o.id)) "
        "OR (kind = 'stock_counts' AND NOT EXISTS (SELECT 1 FROM stock_counts r WHERE r.centre_id = o.centre_id AND r.id = "
        "o.id)) "
        "OR (kind = 'service_records' AND NOT EXISTS (SELECT 1 FROM service_records r WHERE r.centre_id = o.centre_id AND r.id = "
        "o.id)) "
        "OR (kind = 'meter_readings' AND NOT EXISTS (SELECT 1 FROM meter_readings r WHERE r.centre_id = o.centre_id AND r.id = "
        "o.id)) "
        "OR (kind = 'pack_readings' AND NOT EXISTS (SELECT 1 FROM pack_readings r WHERE r.centre_id = o.centre_id AND r.id = "
        "o.id)) "
        "OR (kind = 'attachments' AND NOT EXISTS (SELECT 1 FROM attachments r WHERE r.centre_id = o.centre_id AND r.id = o.id)) "
        "OR (kind = 'inspections' AND NOT EXISTS (SELECT 1 FROM inspections r WHERE r.centre_id = o.centre_id AND r.id = o.id))"},
    Rule{"check.record-without-operation",
         "SELECT id FROM (SELECT centre_id, id, 'runs' AS kind FROM runs "
         "UNION ALL SELECT centre_id, id, 'incidents' FROM incidents "
         "UNION ALL SELECT centre_id, id, 'hand_overs' FROM hand_overs "
         "UNION ALL SELECT centre_id, id, 'level_readings' FROM level_readings "
         "UNION ALL SELECT centre_id, id, 'tape_readings' FROM tape_readings "
         "UNION ALL SELECT centre_id, id, 'movements' FROM movements "
         "UNION ALL SELECT centre_id, id, 'stock_counts' FROM stock_counts "
         "UNION ALL SELECT centre_id, id, 'service_records' FROM service_records "
         "UNION ALL SELECT centre_id, id, 'meter_readings' FROM meter_readings "
         "UNION ALL SELECT centre_id, id, 'pack_readings' FROM pack_readings "
         "UNION ALL SELECT centre_id, id, 'attachments' FROM attachments "
         "UNION ALL SELECT centre_id, id, 'inspections' FROM inspections) r "
         "WHERE NOT EXISTS (SELECT 1 FROM operations o WHERE o.centre_id = r.centre_id AND o.id = r.id AND o.kind = r.kind)"},
    Rule{"check.unknown-pattern-version", recordsOfUnknownVersions},
    Rule{"check.unknown-answered", incidentsOfUnknownAnswers},
    Rule{"check.run-work", wrongWork},
    Rule{"check.attachment-of-nothing",
         "SELECT id FROM attachments a WHERE NOT EXISTS (SELECT 1 FROM operations o WHERE o.centre_id = a.centre_id AND o.id = "
         "a.record AND o.kind IN ('service_records', 'incidents'))"},
    Rule{"check.content-of-nothing",
         "SELECT sha256 FROM attachment_contents c WHERE NOT EXISTS (SELECT 1 FROM attachments a WHERE a.centre_id = c.centre_id "
         "AND a.sha256 = c.sha256)"},
    Rule{"check.pattern-without-version",
         "SELECT id FROM patterns p WHERE NOT EXISTS (SELECT 1 FROM pattern_versions v WHERE v.centre_id = p.centre_id AND "
         "v.pattern = p.id AND v.edition = p.edition)"},
    Rule{"check.lane-without-run",
         "SELECT run_id FROM run_lanes l WHERE NOT EXISTS (SELECT 1 FROM runs r WHERE r.centre_id = l.centre_id AND r.id = "
         "l.run_id)"},
    Rule{"check.version-ahead",
         "SELECT id FROM (SELECT centre_id, id, version FROM centres UNION ALL SELECT centre_id, id, version FROM machines UNION "
         "ALL "
         "SELECT centre_id, id, version FROM people UNION ALL SELECT centre_id, id, version FROM shifts UNION ALL SELECT "
         "centre_id, id, "
         "version FROM patterns UNION ALL SELECT centre_id, id, version FROM outages UNION ALL SELECT centre_id, id, version "
         "FROM series "
         "UNION ALL SELECT centre_id, id, version FROM jobs UNION ALL SELECT centre_id, id, version FROM supplies UNION ALL "
         "SELECT "
         "centre_id, id, version FROM suppliers UNION ALL SELECT centre_id, id, version FROM offers UNION ALL SELECT centre_id, "
         "id, "
         "version FROM orders UNION ALL SELECT centre_id, id, version FROM service_items UNION ALL SELECT centre_id, id, counter "
         "FROM operations) v WHERE "
         "version > "
         "(SELECT counter FROM changes c WHERE c.centre_id = v.centre_id) OR NOT EXISTS (SELECT 1 FROM changes c WHERE "
         "c.centre_id = "
         "v.centre_id)"},
};

Outcome file(Database& database, Findings& findings) {
    if (database.dialect() != Dialect::Sqlite) return Nothing{};
    const auto integrity = database.rows(QStringLiteral("PRAGMA integrity_check(100)"));
    if (!integrity) return integrity.error();
    for (const Row& row : *integrity)
        if (const QString line = row.value(0).toString(); line != QLatin1StringView("ok"))
            add(findings, "check.integrity", database.shown(), {line});
    const auto references = database.rows(QStringLiteral("PRAGMA foreign_key_check"));
    if (!references) return references.error();
    for (const Row& row : *references)
        add(findings, "check.reference", row.value(0).toString(), {row.value(2).toString()});
    return Nothing{};
}

Outcome operations(Database& database, Findings& findings) {
    for (const Rule& rule : rules) {
        const auto rows = database.rows(QLatin1StringView(rule.sql));
        if (!rows) return rows.error();
        for (const Row& row : *rows)
            add(findings, rule.rule, row.value(0).toString());
    }
    return Nothing{};
}

/// Patterns that series and machines name inside their lists, where the database keeps no reference.
void references(const CentreFile& contents, Findings& findings) {
    QSet<PatternId> patterns;
    for (const Pattern& pattern : contents.season.patterns)
        patterns.insert(pattern.id);
    for (const Series& series : contents.season.series)
        for (const SurfaceDemand& demand : series.demands)
            if (demand.pattern && !patterns.contains(*demand.pattern))
                add(findings, "check.unknown-pattern", series.title, {demand.pattern->value});
    for (const Machine& machine : contents.season.centre.machines)
        for (const PatternId& pattern : machine.bars.patterns)
            if (!patterns.contains(pattern)) add(findings, "check.unknown-pattern", machine.name, {pattern.value});
}

/// Supplies, prices, orders and counts, and supplies that are named inside lists.
void stock(const CentreFile& contents, Findings& findings) {
    const auto take = [&](const Findings& more) { findings.insert(findings.end(), more.begin(), more.end()); };
    const SeasonState& season = contents.season;
    const QByteArray& currency = season.centre.facts.settings.currency;
    take(faultsOf(season.supplies));
    for (const Supplier& supplier : season.suppliers)
        take(faultsOf(supplier, currency));
    for (const Offer& offer : season.offers)
        take(faultsOf(offer, currency));
    for (const Order& order : season.orders) {
        take(faultsOf(order, currency));
        for (const OrderLine& line : order.lines)
            if (!findSupply(season.supplies, line.supply))
                add(findings, "check.unknown-supply", order.number, {line.supply.value});
    }
    for (const StockCount& count : contents.history.counts)
        take(faultsOf(count, season.supplies));
    for (const KeptForecast& forecast : contents.history.forecasts)
        take(faultsOf(forecast));
}

/// Items, and supplies that their duties name.
void service(const CentreFile& contents, Findings& findings) {
    for (const ServiceItem& item : contents.season.items) {
        const Findings faults = faultsOf(item, contents.season.centre.facts.settings.currency);
        findings.insert(findings.end(), faults.begin(), faults.end());
        for (const Duty& duty : item.duties)
            for (const PartNeed& part : duty.parts)
                if (!findSupply(contents.season.supplies, part.supply))
                    add(findings, "check.unknown-supply", duty.name, {part.supply.value});
    }
}

/// What is kept of files is what was added: one after another, as each may be megabytes. What is not here is not wrong.
Outcome filesOf(Database& database, const CentreId& centre, const CentreFile& contents, Findings& findings) {
    QSet<QString> seen;
    for (Attachment attachment : contents.history.attachments) {
        if (attachment.withdrawn || seen.contains(attachment.sha256)) continue;
        seen.insert(attachment.sha256);
        const Result<QVariant> content =
            database.value(QStringLiteral("SELECT content FROM attachment_contents WHERE centre_id = ? AND sha256 = ?"),
                           {centre.value, attachment.sha256});
        if (!content) return content.error();
        attachment.content = content->toByteArray();
        const Findings faults = faultsOf(attachment);
        findings.insert(findings.end(), faults.begin(), faults.end());
    }
    return Nothing{};
}

/// What the rooms themselves say about their values.
void values(const CentreFile& contents, Findings& findings) {
    const auto take = [&](const Findings& more) { findings.insert(findings.end(), more.begin(), more.end()); };
    take(faultsOf(contents.season.centre));
    for (const Pattern& pattern : contents.season.patterns)
        take(faultsOf(pattern));
    for (const Series& series : contents.season.series)
        take(faultsOf(series, contents.season.centre.facts.lanes));
    for (const RunLog& run : contents.history.runs)
        for (const LaneTime& lane : run.lanes)
            if (lane.lane < 1 || lane.lane > contents.season.centre.facts.lanes)
                add(findings, "check.unknown-lane", run.id.value, {std::int64_t{lane.lane}});
    for (const TapeReading& reading : contents.history.tapes)
        take(faultsOf(reading, contents.season.centre.facts.lanes));
    for (const Inspection& inspection : contents.history.inspections)
        take(faultsOf(inspection, contents.season.centre.facts.lanes));
    stock(contents, findings);
    service(contents, findings);
}

}  // namespace

Result<std::vector<Finding>> Store::check() {
    Database& database = *m_parts->database;
    Result<Transaction> reading = Transaction::begin(database, Isolation::Reading);
    if (!reading) return reading.error();
    Findings findings;
    if (const Outcome sound = file(database, findings); !sound) return sound.error();
    if (const Outcome whole = operations(database, findings); !whole) return whole.error();
    const Result<CentreId> centre = storedCentre(database);
    if (!centre) return centre.error();
    if (centre->isEmpty()) {
        add(findings, "store.no-centre", database.shown());
        return findings;
    }
    const Result<CentreFile> contents = everything(database, *centre, Ledger::Without);
    if (contents) {
        references(*contents, findings);
        values(*contents, findings);
        if (const Outcome read = filesOf(database, *centre, *contents, findings); !read) return read.error();
    } else {
        findings.push_back(contents.error().finding);
    }
    const Result<Findings> ledger = ledgerFaults(database, *centre);
    if (ledger)
        findings.insert(findings.end(), ledger->begin(), ledger->end());
    else
        findings.push_back(ledger.error().finding);
    return findings;
}

}  // namespace laneward
