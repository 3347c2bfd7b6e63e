#include "core/storage/check_ledger.h"
#include "core/storage/closing_balances.h"
#include "core/storage/kept_forecasts.h"
#include "core/storage/pattern_versions.h"
#include "core/storage/records.h"
#include "core/storage/store_parts.h"

#include <QSet>
#include <QUuid>

#include <utility>

namespace laneward {
namespace {

/// Children before those they name.
constexpr std::array tables{"run_work",
                            "pack_readings",
                            "attachments",
                            "attachment_contents",
                            "service_records",
                            "meter_readings",
                            "service_items",
                            "closing_balances",
                            "movement_entries",
                            "movements",
                            "stock_counts",
                            "orders",
                            "offers",
                            "suppliers",
                            "supplies",
                            "run_lanes",
                            "runs",
                            "incidents",
                            "hand_overs",
                            "level_readings",
                            "tape_readings",
                            "inspections",
                            "jobs",
                            "outages",
                            "series",
                            "shifts",
                            "people",
                            "machines",
                            "patterns",
                            "centres",
                            "edited_rows",
                            "operations",
                            "pattern_versions",
                            "kept_forecasts"};

Outcome cleared(Database& database, const CentreId& centre) {
    const auto run = [&](const QString& sql) { return database.change(sql, {centre.value}); };
    QStringList statements{QStringLiteral("INSERT INTO replacing (centre_id) VALUES (?)")};
    for (const char* table : tables)
        statements << QStringLiteral("DELETE FROM %1 WHERE centre_id = ?").arg(QLatin1StringView(table));
    statements << QStringLiteral("DELETE FROM replacing WHERE centre_id = ?");
    for (const QString& statement : statements)
        if (const Result<int> done = run(statement); !done) return done.error();
    return Nothing{};
}

/// The number of this change, larger than any that the old centre's rows carry.
Result<std::int64_t> succeeding(Database& database, const CentreId& old, const CentreId& centre) {
    if (!old.isEmpty() && old != centre) {
        const Result<int> renamed =
            database.change(QStringLiteral("UPDATE changes SET centre_id = ? WHERE centre_id = ?"), {centre.value, old.value});
        if (!renamed) return renamed.error();
    }
    return nextChange(database, centre);
}

/// Writes rows of one kind after another; the first failure stays.
class Filling {
public:
    Filling(Database& database, CentreId centre, std::int64_t change)
        : m_database(database), m_centre(std::move(centre)), m_change(change) {}

    template <class T>
    void rows(const std::vector<T>& all) {
        for (const T& row : all) {
            if (!m_outcome) return;
            const std::optional<QString> field = row.id.isEmpty() ? QStringLiteral("id") : unstorable(row);
            if (field)
                refuse<T>("import.unstorable", row.id.value, *field);
            else
                take<T>(insertRow(m_database, m_centre, row, m_change), row.id.value);
        }
    }

    /// Both lists may hold the same record, but not two of one id.
    template <class T>
    void records(const std::vector<T>& history, const std::vector<T>& window) {
        std::map<OperationId, const T*> seen;
        for (const auto* list : {&history, &window})
            for (const T& record : *list) {
                const auto [known, isNew] = seen.emplace(record.id, &record);
                if (!m_outcome || (!isNew && *known->second == record)) continue;
                const std::optional<QString> field = !isNew || record.id.isEmpty() ? QStringLiteral("id") : unstorable(record);
                if (field)
                    refuse<T>("import.unstorable", record.id.value, *field);
                else
                    take<T>(insertRecord(m_database, m_centre, record, m_change), record.id.value);
            }
    }

    /// Each pattern becomes the version that says the same, or the next one.
    void patterns(std::vector<Pattern> all, const std::vector<PatternVersion>& versions, Instant at, const PersonId& person) {
        for (const PatternVersion& version : versions) {
            const PatternId& id = version.pattern.id;
            if (!m_outcome) return;
            const bool numbered = !id.isEmpty() && version.pattern.edition > 0;
            const std::optional<QString> field = numbered ? unstorable(version) : QStringLiteral("edition");
            if (field)
                refuse<PatternVersion>("import.unstorable", id.value, *field);
            else
                take<PatternVersion>(insertVersion(m_database, m_centre, version), id.value);
        }
        for (Pattern& pattern : all)
            if (m_outcome && !unstorable(pattern)) m_outcome = settleEdition(m_database, m_centre, pattern, at, person);
        rows(all);
    }

    /// Records may only name versions that are there, and follow up what is there.
    void references() {
        if (!m_outcome) return;
        const Result<QVariant> unknown = m_database.value(QLatin1StringView(recordsOfUnknownVersions));
        if (!unknown)
            m_outcome = unknown.error();
        else if (unknown->isValid())
            refuse<PatternVersion>("import.unknown-reference", unknown->toString(), {});
        if (!m_outcome) return;
        const Result<QVariant> unanswered = m_database.value(QLatin1StringView(incidentsOfUnknownAnswers));
        if (!unanswered)
            m_outcome = unanswered.error();
        else if (unanswered->isValid())
            refuse<Incident>("import.unknown-reference", unanswered->toString(), {});
    }

    void forecasts(const std::vector<KeptForecast>& all) {
        for (const KeptForecast& forecast : all) {
            if (!m_outcome) return;
            const QString day = forecast.day.toString(Qt::ISODate);
            if (const std::optional<QString> field = unstorable(forecast))
                return refuse<KeptForecast>("import.unstorable", day, *field);
            const std::vector<Finding> faults = faultsOf(forecast);
            const Result<bool> isNew = faults.empty() ? insertForecast(m_database, m_centre, forecast)
                                                      : Result<bool>(Error{ErrorKind::Invalid, faults.front()});
            if (!isNew)
                m_outcome = isNew.error();
            else if (!*isNew)
                refuse<KeptForecast>("import.id-twice", day, {});
        }
    }

    /// The ledger must hold, as it would have to if it had grown here.
    void ledger() {
        if (m_outcome) m_outcome = rebuildBalances(m_database, m_centre);
        if (!m_outcome) return;
        const Result<std::vector<Finding>> faults = ledgerFaults(m_database, m_centre);
        if (!faults)
            m_outcome = faults.error();
        else if (!faults->empty())
            m_outcome = Error{ErrorKind::Invalid, faults->front()};
    }

    Outcome outcome() const { return m_outcome; }

private:
    template <class T>
    void refuse(const char* rule, const QString& id, const QString& field) {
        const QString subject = QLatin1StringView(tableOf<T>) + QStringLiteral(" ") + id.left(limits::nameLength);
        m_outcome = fault(ErrorKind::Invalid, rule, subject, {field});
    }

    template <class T>
    void take(const Outcome& done, const QString& id) {
        if (done) return;
        const QByteArray& rule = done.error().finding.rule;
        if (rule == brokenReference)
            refuse<T>("import.unknown-reference", id, {});
        else if (rule == duplicateKey)
            refuse<T>("import.id-twice", id, {});
        else
            m_outcome = done;
    }

    Database& m_database;
    CentreId m_centre;
    std::int64_t m_change;
    Outcome m_outcome = Nothing{};
};

/// Jobs of the history and of the window, each once.
std::vector<Job> jobsOf(const SeasonState& season, const HistorySlice& history) {
    std::vector<Job> jobs = history.jobs;
    QSet<JobId> known;
    for (const Job& job : jobs)
        known.insert(job.id);
    for (const Job& job : season.confirmed)
        if (!known.contains(job.id)) jobs.push_back(job);
    return jobs;
}

Outcome filled(Database& database, const SeasonState& season, const HistorySlice& history, const Operation& operation) {
    Filling filling(database, season.centre.facts.id, operation.counter);
    filling.rows(std::vector{season.centre.facts});
    filling.rows(season.centre.machines);
    filling.rows(season.centre.people);
    filling.rows(season.centre.shifts);
    filling.patterns(season.patterns, history.patternVersions, operation.at, operation.person);
    filling.rows(season.centre.outages);
    filling.rows(season.series);
    filling.rows(jobsOf(season, history));
    filling.rows(season.supplies);
    filling.rows(season.suppliers);
    filling.rows(season.offers);
    filling.rows(season.orders);
    filling.rows(season.items);
    filling.records(history.runs, season.runs);
    filling.records(history.incidents, season.incidents);
    filling.records(history.handOvers, season.handOvers);
    filling.records(history.readings, season.readings);
    filling.records(history.tapes, {});
    filling.records(history.inspections, {});
    filling.records(history.movements, {});
    filling.records(history.counts, {});
    filling.records(history.services, season.services);
    filling.records(history.counters, season.counters);
    filling.records(history.packReadings, season.packReadings);
    filling.records(history.attachments, {});
    filling.forecasts(history.forecasts);
    filling.references();
    filling.ledger();
    return filling.outcome();
}

}  // namespace

Outcome Store::replaceAll(const SeasonState& season, const HistorySlice& history, PersonId person, Instant at) {
    Database& database = *m_parts->database;
    const CentreId centre = season.centre.facts.id;
    if (isReadOnly()) return fault(ErrorKind::Refused, "edit.read-only", m_parts->location.shown());
    Result<Transaction> writing = Transaction::begin(database, Isolation::Writing);
    if (!writing) return writing.error();
    const Result<CentreId> old = storedCentre(database);
    if (!old) return old.error();
    const Result<std::int64_t> change = succeeding(database, *old, centre);
    if (!change) return change.error();
    if (const Outcome empty = old->isEmpty() ? Outcome(Nothing{}) : cleared(database, *old); !empty) return empty;
    const OperationId id{QUuid::createUuid().toString(QUuid::WithoutBraces)};
    const Operation operation{id, QStringLiteral("replace"), std::move(person), at, {}, *change};
    if (const Outcome logged = logOperation(database, centre, operation); !logged) return logged;
    if (const Outcome written = filled(database, season, history, operation); !written) return written;
    const Outcome done = committed(*writing, database, centre, id);
    if (done || done.error().finding.rule != brokenReference) return done;
    return fault(ErrorKind::Invalid, "import.unknown-reference", season.centre.facts.name);  // a correction of nothing
}

}  // namespace laneward
