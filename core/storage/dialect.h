// All that differs between SQLite and PostgreSQL. The tables, queries and values are the same standard SQL on both.
#pragma once

#include "core/base/result.h"

#include <QSqlError>
#include <QString>
#include <QStringList>

namespace laneward {

enum class Dialect { Sqlite, Postgres };

enum class Isolation {
    Reading,  ///< one unchanging view of everything
    Writing,  ///< waits for other writers now, never in the middle (SQLite); READ COMMITTED (PostgreSQL)
};

QString beginStatement(Dialect dialect, Isolation isolation);

/// Statements for each new connection; `writable` false also makes the server refuse writes.
QStringList sessionStatements(Dialect dialect, bool writable);

/// Statements that make a table refuse UPDATE and DELETE, except while `replacing` has a row for the centre.
QStringList appendOnlyStatements(Dialect dialect, const QString& table);

/// What went wrong, by the driver's code and never by its text. `subject` is the place as shown to people.
Error errorOf(Dialect dialect, const QSqlError& error, const QString& subject);

/// Rules that errorOf() gives to broken constraints; callers turn them into what they mean for the row at hand.
inline constexpr auto duplicateKey = "sql.duplicate";
inline constexpr auto brokenReference = "sql.reference";
inline constexpr auto brokenRule = "sql.constraint";

}  // namespace laneward
