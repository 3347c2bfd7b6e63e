// The log of operations: who changed the centre, when, and with which id; and the counter that orders all changes.
//
// The number of the change is also the version of the rows that it writes: versions never repeat, even when a row goes away
// and comes back. Taking the next number is the first write of every transaction, so that writers queue there.
#pragma once

#include "core/storage/database.h"

namespace laneward {

struct Operation {
    OperationId id;
    QString kind;  ///< "edit", "replace" or the table of a record
    PersonId person;
    Instant at;
    QString name;
    std::int64_t counter = 0;
};

/// The centre kept in this database; an empty id when there is none yet.
Result<CentreId> storedCentre(Database& database);
Result<std::int64_t> currentChange(Database& database, const CentreId& centre);
Result<std::int64_t> nextChange(Database& database, const CentreId& centre);

Outcome logOperation(Database& database, const CentreId& centre, const Operation& operation);
/// The kind of a stored operation; empty when there is none.
Result<QString> operationKind(Database& database, const CentreId& centre, const OperationId& id);
Outcome logEditedRow(Database& database, const CentreId& centre, const OperationId& id, const char* table, const QString& row);

/// Commits. If that fails, looks the operation up on a new connection: found means done after all.
Outcome committed(Transaction& writing, Database& database, const CentreId& centre, const OperationId& id);

}  // namespace laneward
