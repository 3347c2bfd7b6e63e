// The schema's versions: numbered SQL files in resources/migrations, applied forward in one transaction.
//
// SQLite keeps the version in user_version beside our application_id, PostgreSQL in the table laneward_schema. A database with
// a higher version than we know is refused; one with a lower version is first copied (SQLite), then brought up to date.
#pragma once

#include "core/storage/database.h"

namespace laneward {

inline constexpr int applicationId = 0x4c4e5744;  ///< "LNWD", in the header of our SQLite files

struct Migration {
    int version = 0;
    QStringList statements;
};

/// All we know, ascending, for one dialect; the last one's version is the current schema.
std::vector<Migration> knownMigrations(Dialect dialect);
/// That version alone, which every opening asks for.
int currentSchema();
/// Splits a script at semicolons that end a line; comment lines are left out.
QStringList statementsOf(const QString& script);

/// 0 = no schema yet.
Result<int> schemaVersion(Database& database);
/// Applies those above the stored version, all or none. Errors: Refused "store.newer-schema".
Outcome migrate(Database& database, const std::vector<Migration>& migrations);

}  // namespace laneward
