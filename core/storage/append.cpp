#include "core/storage/closing_balances.h"
#include "core/storage/ledger_writing.h"
#include "core/storage/pattern_versions.h"
#include "core/storage/records.h"
#include "core/storage/store_parts.h"

namespace laneward {
namespace {

Error invalid(const char* rule, const Record& record, std::vector<Value> values = {}) {
    return fault(ErrorKind::Invalid, rule, operationOf(record).value.left(limits::nameLength), std::move(values));
}

Outcome lanesExist(const Record& record, int laneCount) {
    const auto exists = [laneCount](int lane) { return lane >= 1 && lane <= laneCount; };
    const auto unknown = [&](int lane) {
        return invalid("record.unknown-lane", record, {std::int64_t{lane}, std::int64_t{laneCount}});
    };
    if (const auto* run = std::get_if<RunLog>(&record))
        for (const LaneTime& lane : run->lanes)
            if (!exists(lane.lane)) return unknown(lane.lane);
    if (const auto* incident = std::get_if<Incident>(&record); incident && incident->lane != 0 && !exists(incident->lane))
        return unknown(incident->lane);
    return Nothing{};
}

/// What a record corrects must be there and not be corrected yet: two corrections of one record would both stand.
Outcome correctsOnce(Database& database, const CentreId& centre, const Record& record) {
    const auto corrects = std::visit([](const auto& r) { return r.corrects; }, record);
    if (!corrects) return Nothing{};
    const auto idsWhere = [&](const QString& where) {
        return database.rows(selectStatement(tableOfRecord(record), {QLatin1StringView("id")}, false, where),
                             {centre.value, corrects->value});
    };
    const auto corrected = idsWhere(QStringLiteral("AND id = ?"));
    if (!corrected) return corrected.error();
    if (corrected->empty()) return invalid("record.unknown-reference", record);
    const auto others = idsWhere(QStringLiteral("AND corrects = ?"));
    if (!others) return others.error();
    if (others->empty()) return Nothing{};
    return fault(ErrorKind::Refused, "record.already-corrected", corrects->value);
}

/// What a follow-up answers must be there: an incident or a tape reading.
Outcome answersSomething(Database& database, const CentreId& centre, const Record& record) {
    const auto* incident = std::get_if<Incident>(&record);
    if (!incident || !incident->answers) return Nothing{};
    for (const char* table : {tableOf<Incident>, tableOf<TapeReading>}) {
        const auto found = database.rows(selectStatement(table, {QLatin1StringView("id")}, false, QStringLiteral("AND id = ?")),
                                         {centre.value, incident->answers->value});
        if (!found) return found.error();
        if (!found->empty()) return Nothing{};
    }
    return invalid("record.unknown-reference", record);
}

/// A version of a pattern that nobody knows says nothing about the lane.
Outcome versionExists(Database& database, const CentreId& centre, const Record& record) {
    Result<bool> known = true;
    if (const auto* run = std::get_if<RunLog>(&record))
        known = knowsVersion(database, centre, run->pattern.value_or(PatternId{}), run->patternVersion);
    if (const auto* reading = std::get_if<TapeReading>(&record))
        known = knowsVersion(database, centre, reading->pattern, reading->patternVersion);
    if (!known) return known.error();
    return *known ? Outcome(Nothing{}) : Outcome(invalid("record.unknown-reference", record));
}

/// What was measured must be something that can be computed with.
Outcome measuredWell(const Record& record, int lanes) {
    std::vector<Finding> faults;
    if (const auto* reading = std::get_if<TapeReading>(&record)) faults = faultsOf(*reading, lanes);
    if (const auto* inspection = std::get_if<Inspection>(&record)) faults = faultsOf(*inspection, lanes);
    return faults.empty() ? Outcome(Nothing{}) : Outcome(Error{ErrorKind::Invalid, faults.front()});
}

/// A file belongs to a service record or an incident, and is what it says. Bytes that are here already need not come again.
Outcome attachedWell(Database& database, const CentreId& centre, const Record& record) {
    const auto* attachment = std::get_if<Attachment>(&record);
    if (!attachment) return Nothing{};
    if (std::vector<Finding> faults = faultsOf(*attachment); !faults.empty()) return Error{ErrorKind::Invalid, faults.front()};
    const Result<QString> kind = operationKind(database, centre, attachment->record);
    if (!kind) return kind.error();
    const bool takes = *kind == QLatin1StringView(tableOf<ServiceRecord>) || *kind == QLatin1StringView(tableOf<Incident>);
    if (!takes) return fault(ErrorKind::Invalid, "attachment.no-record", attachment->name.left(limits::nameLength));
    if (attachment->withdrawn || !attachment->content.isEmpty()) return Nothing{};
    const Result<QVariant> known =
        database.value(QStringLiteral("SELECT 1 FROM attachment_contents WHERE centre_id = ? AND sha256 = ?"),
                       {centre.value, attachment->sha256});
    if (!known) return known.error();
    return known->isValid()
               ? Outcome(Nothing{})
               : Outcome(fault(ErrorKind::Invalid, "attachment.no-content", attachment->name.left(limits::nameLength)));
}

/// What is booked must be covered; other records book nothing by themselves.
Outcome mayBook(LedgerWriting& ledger, const Record& record) {
    if (const auto* movement = std::get_if<Movement>(&record)) return ledger.mayBook(*movement);
    if (const auto* count = std::get_if<StockCount>(&record)) return ledger.mayBook(*count);
    return Nothing{};
}

/// A service must be one of its item, a counter must not run backwards. Their time is judged by those who know the clock.
Outcome servicedWell(Database& database, const CentreId& centre, const Record& record) {
    std::vector<Finding> faults;
    if (const auto* service = std::get_if<ServiceRecord>(&record)) {
        const auto item = rowOf<ServiceItem>(database, centre, service->item.value);
        if (!item) return item.error();
        faults = faultsOf(*service, *item ? &**item : nullptr, service->at);
    }
    if (const auto* reading = std::get_if<MeterReading>(&record); reading && !reading->withdrawn) {
        const auto counters = rowsOf<MeterReading>(database, centre, QStringLiteral("AND machine = ?"), {reading->machine.value});
        if (!counters) return counters.error();
        faults = faultsOf(*reading, standing(*counters), reading->at);
    }
    if (const auto* reading = std::get_if<PackReading>(&record)) {
        const auto item = rowOf<ServiceItem>(database, centre, reading->pack.value);
        if (!item) return item.error();
        faults = faultsOf(*reading, *item ? &**item : nullptr, reading->at);
    }
    return faults.empty() ? Outcome(Nothing{}) : Outcome(Error{ErrorKind::Invalid, faults.front()});
}

Outcome endsAfterStart(const Record& record) {
    const auto* run = std::get_if<RunLog>(&record);
    const bool backwards = run && run->time.end < run->time.begin;
    return backwards ? Outcome(invalid("record.ends-before-start", record)) : Outcome(Nothing{});
}

Error meaning(const Error& error, const Record& record) {
    const QByteArray& rule = error.finding.rule;
    if (rule == brokenReference) return invalid("record.unknown-reference", record);
    if (rule == brokenRule || rule == duplicateKey) return invalid("record.unstorable", record, {QString()});
    return error;
}

struct Appending {
    Database& database;
    CentreId centre;
    int lanes = 0;
    std::int64_t change = 0;
    LedgerWriting ledger;
};

/// False when the same record was there already.
Result<bool> appended(Appending& to, const Record& record) {
    const std::optional<QString> field = std::visit([](const auto& r) { return unstorable(r); }, record);
    if (field || operationOf(record).isEmpty())
        return invalid("record.unstorable", record, {field.value_or(QStringLiteral("id"))});
    const Result<QString> kind = operationKind(to.database, to.centre, operationOf(record));
    if (!kind) return kind.error();
    if (!kind->isEmpty()) {
        const Result<bool> same = holdsSame(to.database, to.centre, record);
        if (!same) return same.error();
        if (*same) return false;
        return fault(ErrorKind::Refused, "record.id-taken", operationOf(record).value);
    }
    if (const Outcome lanes = lanesExist(record, to.lanes); !lanes) return lanes.error();
    if (const Outcome well = measuredWell(record, to.lanes); !well) return well.error();
    if (const Outcome well = servicedWell(to.database, to.centre, record); !well) return well.error();
    if (const Outcome well = attachedWell(to.database, to.centre, record); !well) return well.error();
    if (const Outcome order = endsAfterStart(record); !order) return order.error();
    if (const Outcome version = versionExists(to.database, to.centre, record); !version) return version.error();
    if (const Outcome once = correctsOnce(to.database, to.centre, record); !once) return once.error();
    if (const Outcome known = answersSomething(to.database, to.centre, record); !known) return known.error();
    if (const Outcome covered = mayBook(to.ledger, record); !covered) return covered.error();
    if (const Outcome done = insertRecord(to.database, to.centre, record, to.change); !done) return meaning(done.error(), record);
    const auto* movement = std::get_if<Movement>(&record);
    const Outcome booked = movement ? to.ledger.booked(*movement) : Outcome(Nothing{});
    return booked ? Result<bool>(true) : booked.error();
}

Result<Appending> begun(Database& database) {
    const Result<CentreId> centre = storedCentre(database);
    if (!centre) return centre.error();
    if (centre->isEmpty()) return fault(ErrorKind::Invalid, "store.no-centre", database.shown());
    const Result<std::int64_t> change = nextChange(database, *centre);
    if (!change) return change.error();
    const auto facts = rowOf<CentreFacts>(database, *centre, centre->value);
    if (!facts) return facts.error();
    return Appending{database, *centre, (*facts)->lanes, *change, LedgerWriting(database, *centre)};
}

}  // namespace

Outcome Store::append(const std::vector<Record>& records) {
    Database& database = *m_parts->database;
    if (isReadOnly()) return fault(ErrorKind::Refused, "edit.read-only", m_parts->location.shown());
    Result<Transaction> transaction = Transaction::begin(database, Isolation::Writing);
    if (!transaction) return transaction.error();
    Result<Appending> to = begun(database);
    if (!to) return to.error();
    std::optional<OperationId> last;
    for (const Record& record : records) {
        const Result<bool> isNew = appended(*to, record);
        if (!isNew) return isNew.error();
        if (*isNew) last = operationOf(record);
    }
    return last ? committed(*transaction, database, to->centre, *last) : Outcome(Nothing{});
}

Outcome Store::rebuildClosingBalances() {
    Database& database = *m_parts->database;
    if (isReadOnly()) return fault(ErrorKind::Refused, "edit.read-only", m_parts->location.shown());
    Result<Transaction> transaction = Transaction::begin(database, Isolation::Writing);
    if (!transaction) return transaction.error();
    const Result<Appending> to = begun(database);
    if (!to) return to.error();
    const Outcome rebuilt = rebuildBalances(database, to->centre);
    return rebuilt ? transaction->commit() : rebuilt;
}

}  // namespace laneward
