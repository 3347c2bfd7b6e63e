// Opening what a Location names: looked at first, opened for use only when it is ours, sound and not newer than we are.
#pragma once

#include "core/storage/database.h"

namespace laneward {

Result<std::unique_ptr<Database>> openSqlite(const Location& location, Access access, Examination examination);
Result<std::unique_ptr<Database>> openPostgres(const Location& location, Access access);

/// The SQLite URI of a file, with parameters such as "mode=ro".
QString sqliteUri(const QString& path, const QString& parameters);
/// A new file that only its owner may read and write, whatever the umask. False when it exists or cannot be made.
bool makePrivateFile(const QString& path);
/// Where a copy with this stem can be put without replacing anything: "stem.suffix", "stem-2.suffix", …
QString freePath(const QString& stem, const QString& suffix);
/// A whole, private copy of a SQLite database; the new file must not exist.
Outcome copyInto(Database& database, const QString& path);

}  // namespace laneward
