#include "core/storage/movements.h"
#include "core/storage/operations.h"
#include "core/storage/pattern_versions.h"
#include "core/storage/store_parts.h"

namespace laneward {
namespace {

QString nameOf(const CentreFacts& c) { return c.name; }
QString nameOf(const Machine& m) { return m.name; }
QString nameOf(const Person& p) { return p.name; }
QString nameOf(const Shift& s) { return s.name; }
QString nameOf(const Outage& o) { return o.lanes.isEmpty() && o.machine ? o.machine->value : o.lanes.text(); }
QString nameOf(const Pattern& p) { return p.name; }
QString nameOf(const Series& s) { return s.title; }
QString nameOf(const Job& j) { return j.laneSet().text(); }
QString nameOf(const Supply& s) { return s.name; }
QString nameOf(const Supplier& s) { return s.name; }
QString nameOf(const Offer& o) { return o.article.isEmpty() ? o.id.value : o.article; }
QString nameOf(const ServiceItem& i) { return i.name; }
QString nameOf(const Order& o) { return o.number.isEmpty() ? o.id.value : o.number; }

/// One edit on its way into the database.
struct Writing {
    Database& database;
    CentreId centre;
    std::int64_t change = 0;
    const Edit& edit;
};

/// Who wrote the row last, and when: an edit of it, or a replacement of everything.
Error conflict(const Writing& to, const char* table, const QString& id, const QString& name) {
    const auto last = to.database.rows(
        QStringLiteral(
            "SELECT COALESCE(p.name, o.person, ''), o.happened_at FROM operations o LEFT JOIN people p ON "
            "p.centre_id = o.centre_id AND p.id = o.person WHERE o.centre_id = ? AND (o.kind = 'replace' OR EXISTS "
            "(SELECT 1 FROM edited_rows e WHERE e.centre_id = o.centre_id AND e.operation_id = o.id AND e.kind = ? AND "
            "e.row_id = ?)) ORDER BY o.counter DESC LIMIT 1"),
        {to.centre.value, QString::fromLatin1(table), id});
    if (!last) return last.error();
    const bool known = !last->empty();
    const QString who = known ? last->front().value(0).toString() : QString();
    const Instant when{known ? last->front().value(1).toLongLong() : 0};
    return fault(ErrorKind::Refused, "edit.conflict", name, {who, when});
}

/// What a broken constraint means for this row.
Error meaning(const Error& error, const QString& name, bool removing) {
    const QByteArray& rule = error.finding.rule;
    if (rule == brokenReference && removing) return fault(ErrorKind::Refused, "edit.still-used", name);
    if (rule == brokenReference) return fault(ErrorKind::Invalid, "edit.unknown-reference", name);
    if (rule == brokenRule) return fault(ErrorKind::Invalid, "edit.unstorable", name, {QString()});
    return error;
}

template <class T>
Outcome validity(const RowChange<T>& change) {
    if (!change.before && !change.after) return fault(ErrorKind::Invalid, "edit.empty", {});
    const T& row = change.after ? *change.after : *change.before;
    if (change.before && change.after && change.before->id != change.after->id)
        return fault(ErrorKind::Invalid, "edit.other-row", nameOf(row));
    if (!change.after) return Nothing{};
    const std::optional<QString> field = row.id.isEmpty() ? QStringLiteral("id") : unstorable(row);
    return field ? Outcome(fault(ErrorKind::Invalid, "edit.unstorable", nameOf(row).left(limits::nameLength), {*field}))
                 : Outcome(Nothing{});
}

Outcome keepsCentre(const RowChange<CentreFacts>& change, const CentreId& centre) {
    const bool keeps = change.after && change.after->id == centre;
    return keeps ? Outcome(Nothing{})
                 : Outcome(fault(ErrorKind::Refused, "edit.centre-stays", change.before ? change.before->name : QString()));
}
template <class T>
Outcome keepsCentre(const RowChange<T>&, const CentreId&) {
    return Nothing{};
}

Outcome unless(const Result<bool>& isNamed, const char* rule, const QString& name) {
    if (!isNamed) return isNamed.error();
    return *isNamed ? Outcome(fault(ErrorKind::Refused, rule, name)) : Outcome(Nothing{});
}

/// What the ledger names stays, in the unit in which it was moved; no constraint of the database says so.
Outcome keepsLedger(const Writing& to, const RowChange<Supply>& change) {
    if (!change.before) return Nothing{};
    const Supply& before = *change.before;
    if (change.after && unitOf(change.after->kind) == unitOf(before.kind)) return Nothing{};
    const char* rule = change.after ? "edit.unit-stays" : "edit.still-used";
    return unless(isMoved(to.database, to.centre, before.id), rule, before.name);
}
Outcome keepsLedger(const Writing& to, const RowChange<Order>& change) {
    if (change.after) return Nothing{};
    return unless(isReceived(to.database, to.centre, change.before->id), "edit.still-used", nameOf(*change.before));
}
template <class T>
Outcome keepsLedger(const Writing&, const RowChange<T>&) {
    return Nothing{};
}

/// Writes the row; false when its version is not the expected one, or a new row is there already.
template <class T>
Result<bool> written(const Writing& to, const RowChange<T>& change) {
    if (!change.after) return deleteRow(to.database, to.centre, *change.before, change.before->version);
    if (change.before) return updateRow(to.database, to.centre, *change.after, change.before->version, to.change);
    const auto there = rowOf<T>(to.database, to.centre, change.after->id.value);
    if (!there) return there.error();
    if (*there) return false;
    const Outcome inserted = insertRow(to.database, to.centre, *change.after, to.change);
    return inserted ? Result<bool>(true) : inserted.error();
}

/// A pattern's edition is given here and by nobody else.
Outcome settle(const Writing& to, RowChange<Pattern>& change) {
    if (!change.after) return Nothing{};
    return settleEdition(to.database, to.centre, *change.after, to.edit.at, to.edit.person);
}
template <class T>
Outcome settle(const Writing&, RowChange<T>&) {
    return Nothing{};
}

template <class T>
Result<Change> counterOf(const Writing& to, RowChange<T> change) {
    if (const Outcome valid = validity(change); !valid) return valid.error();
    if (const Outcome keeps = keepsCentre(change, to.centre); !keeps) return keeps.error();
    if (const Outcome keeps = keepsLedger(to, change); !keeps) return keeps.error();
    if (const Outcome settled = settle(to, change); !settled) return settled.error();
    const T& row = change.after ? *change.after : *change.before;
    const Result<bool> done = written(to, change);
    if (!done) return meaning(done.error(), nameOf(row), !change.after);
    if (!*done) return conflict(to, tableOf<T>, row.id.value, nameOf(row));
    if (const Outcome logged = logEditedRow(to.database, to.centre, to.edit.id, tableOf<T>, row.id.value); !logged)
        return logged.error();
    RowChange<T> counter{change.after, change.before};
    if (counter.before) counter.before->version = to.change;
    return Change(std::move(counter));
}

/// The centre that the edit is about: the stored one, or the one that it founds.
CentreId centreOf(const CentreId& stored, const Edit& edit) {
    if (!stored.isEmpty()) return stored;
    for (const Change& change : edit.changes)
        if (const auto* facts = std::get_if<RowChange<CentreFacts>>(&change); facts && facts->after) return facts->after->id;
    return {};
}

Result<Writing> begun(Database& database, const Edit& edit) {
    const Result<CentreId> stored = storedCentre(database);
    if (!stored) return stored.error();
    const CentreId centre = centreOf(*stored, edit);
    if (centre.isEmpty()) return fault(ErrorKind::Invalid, "store.no-centre", database.shown());
    const Result<std::int64_t> change = nextChange(database, centre);
    if (!change) return change.error();
    const Result<QString> before = operationKind(database, centre, edit.id);
    if (!before) return before.error();
    if (!before->isEmpty()) return fault(ErrorKind::Refused, "edit.already-done", edit.name);
    const Operation operation{edit.id, QStringLiteral("edit"), edit.person, edit.at, edit.name, *change};
    if (const Outcome logged = logOperation(database, centre, operation); !logged)
        return meaning(logged.error(), edit.name, false);
    return Writing{database, centre, *change, edit};
}

}  // namespace

Result<Edit> Store::apply(const Edit& edit) {
    Database& database = *m_parts->database;
    if (isReadOnly()) return fault(ErrorKind::Refused, "edit.read-only", m_parts->location.shown());
    if (unstorable(edit.name) || unstorable(edit.id) || edit.id.isEmpty())
        return fault(ErrorKind::Invalid, "edit.unstorable", {}, {QString()});
    Result<Transaction> transaction = Transaction::begin(database, Isolation::Writing);
    if (!transaction) return transaction.error();
    const Result<Writing> to = begun(database, edit);
    if (!to) return to.error();
    Edit counter{{}, edit.person, edit.at, edit.name, {}};
    for (const Change& change : edit.changes) {
        const Result<Change> back = std::visit([&](const auto& row) { return counterOf(*to, row); }, change);
        if (!back) return back.error();
        counter.changes.insert(counter.changes.begin(), *back);
    }
    const Outcome done = committed(*transaction, database, to->centre, edit.id);
    return done ? Result<Edit>(std::move(counter)) : done.error();
}

}  // namespace laneward
