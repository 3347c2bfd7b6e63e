#include "core/storage/operations.h"

#include "core/storage/column_values.h"

namespace laneward {

Result<CentreId> storedCentre(Database& database) {
    const Result<QVariant> id = database.value(QStringLiteral("SELECT id FROM centres ORDER BY id LIMIT 1"));
    return id ? Result<CentreId>(CentreId{id->toString()}) : id.error();
}

Result<std::int64_t> currentChange(Database& database, const CentreId& centre) {
    const Result<QVariant> counter =
        database.value(QStringLiteral("SELECT counter FROM changes WHERE centre_id = ?"), {centre.value});
    return counter ? Result<std::int64_t>(counter->toLongLong()) : counter.error();
}

Result<std::int64_t> nextChange(Database& database, const CentreId& centre) {
    const Result<int> counted =
        database.change(QStringLiteral("INSERT INTO changes (centre_id, counter) VALUES (?, 1) ON CONFLICT "
                                       "(centre_id) DO UPDATE SET counter = changes.counter + 1"),
                        {centre.value});
    return counted ? currentChange(database, centre) : counted.error();
}

Outcome logOperation(Database& database, const CentreId& centre, const Operation& operation) {
    const Result<int> done =
        database.change(QStringLiteral("INSERT INTO operations (centre_id, id, kind, person, happened_at, name, counter) "
                                       "VALUES (?, ?, ?, ?, ?, ?, ?)"),
                        {centre.value, toColumn(operation.id), operation.kind, toColumn(operation.person), toColumn(operation.at),
                         toColumn(operation.name), toColumn(operation.counter)});
    return done ? Outcome(Nothing{}) : Outcome(done.error());
}

Result<QString> operationKind(Database& database, const CentreId& centre, const OperationId& id) {
    const Result<QVariant> kind =
        database.value(QStringLiteral("SELECT kind FROM operations WHERE centre_id = ? AND id = ?"), {centre.value, id.value});
    return kind ? Result<QString>(kind->toString()) : kind.error();
}

Outcome logEditedRow(Database& database, const CentreId& centre, const OperationId& id, const char* table, const QString& row) {
    const Result<int> done = database.change(
        QStringLiteral(
            "INSERT INTO edited_rows (centre_id, operation_id, kind, row_id) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING"),
        {centre.value, id.value, QString::fromLatin1(table), row});
    return done ? Outcome(Nothing{}) : Outcome(done.error());
}

// A commit that reported failure may have reached the disk or the server all the same; doing it again would do it twice.
Outcome committed(Transaction& writing, Database& database, const CentreId& centre, const OperationId& id) {
    Outcome done = writing.commit();
    if (done || done.error().kind != ErrorKind::Io) return done;
    if (const Outcome again = database.reconnect(); !again) return done;
    const Result<QString> kind = operationKind(database, centre, id);
    return kind && !kind->isEmpty() ? Outcome(Nothing{}) : done;
}

}  // namespace laneward
