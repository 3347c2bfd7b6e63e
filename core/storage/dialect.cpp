#include "core/storage/dialect.h"

namespace laneward {
namespace {

// A plain BEGIN takes the write lock at the first write, after the reads: two such transactions then deny each other at once,
// whatever the busy timeout. IMMEDIATE waits at the start instead.
constexpr auto sqliteWrite = "BEGIN IMMEDIATE";
constexpr auto sqliteRead = "BEGIN DEFERRED";
constexpr auto postgresWrite = "BEGIN ISOLATION LEVEL READ COMMITTED READ WRITE";
constexpr auto postgresRead = "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY";

Error sqliteError(const QSqlError& error, const QString& subject) {
    const int code = error.nativeErrorCode().toInt();
    constexpr int shortRead = 522;
    if (code == 1555 || code == 2067) return fault(ErrorKind::Invalid, duplicateKey, subject);
    if (code == 787) return fault(ErrorKind::Invalid, brokenReference, subject);
    if (code == shortRead) return fault(ErrorKind::Io, "store.damaged", subject, {error.databaseText()});
    switch (code & 0xff) {
        case 5:  // busy
        case 6:  // locked
            return fault(ErrorKind::Io, "store.locked", subject);
        case 8:  // read-only
            return fault(ErrorKind::Refused, "edit.read-only", subject);
        case 11:  // corrupt
            return fault(ErrorKind::Io, "store.damaged", subject, {error.databaseText()});
        case 13:
            return fault(ErrorKind::Io, "store.disk-full", subject);
        case 19:
            return fault(ErrorKind::Invalid, brokenRule, subject);
        case 26:
            return fault(ErrorKind::Io, "store.not-a-database", subject);
        case 1:  // a table or column that must be there is not
            return fault(ErrorKind::Io, "store.damaged", subject, {error.databaseText()});
        default:
            return fault(ErrorKind::Io, "store.unreachable", subject, {error.databaseText()});
    }
}

Error postgresError(const QSqlError& error, const QString& subject) {
    const QString state = error.nativeErrorCode();
    if (state == QLatin1StringView("23505")) return fault(ErrorKind::Invalid, duplicateKey, subject);
    if (state == QLatin1StringView("23503")) return fault(ErrorKind::Invalid, brokenReference, subject);
    if (state.startsWith(QLatin1StringView("23"))) return fault(ErrorKind::Invalid, brokenRule, subject);
    if (state == QLatin1StringView("25006") || state == QLatin1StringView("42501"))
        return fault(ErrorKind::Refused, "edit.read-only", subject);
    if (state == QLatin1StringView("55P03") || state == QLatin1StringView("57014") || state.startsWith(QLatin1StringView("40")))
        return fault(ErrorKind::Io, "store.locked", subject);
    if (state.startsWith(QLatin1StringView("42"))) return fault(ErrorKind::Io, "store.damaged", subject, {error.databaseText()});
    if (state.startsWith(QLatin1StringView("53"))) return fault(ErrorKind::Io, "store.disk-full", subject);
    return fault(ErrorKind::Io, "store.unreachable", subject, {error.databaseText().trimmed()});
}

}  // namespace

QString beginStatement(Dialect dialect, Isolation isolation) {
    const bool writing = isolation == Isolation::Writing;
    if (dialect == Dialect::Sqlite) return QLatin1StringView(writing ? sqliteWrite : sqliteRead);
    return QLatin1StringView(writing ? postgresWrite : postgresRead);
}

QStringList sessionStatements(Dialect dialect, bool writable) {
    if (dialect == Dialect::Postgres) {
        QStringList all{QStringLiteral("SET lock_timeout = '5s'"), QStringLiteral("SET statement_timeout = '60s'"),
                        QStringLiteral("SET standard_conforming_strings = on"),
                        QStringLiteral("SET client_min_messages = warning")};
        if (!writable) all << QStringLiteral("SET default_transaction_read_only = on");
        return all;
    }
    // The file may come from anybody: nothing in its schema is trusted, its cells are checked, and no page is mapped into memory.
    QStringList all{QStringLiteral("PRAGMA busy_timeout = 5000"),  QStringLiteral("PRAGMA foreign_keys = ON"),
                    QStringLiteral("PRAGMA trusted_schema = OFF"), QStringLiteral("PRAGMA cell_size_check = ON"),
                    QStringLiteral("PRAGMA mmap_size = 0"),        QStringLiteral("PRAGMA synchronous = FULL")};
    if (!writable) all << QStringLiteral("PRAGMA query_only = ON");
    return all;
}

QStringList appendOnlyStatements(Dialect dialect, const QString& table) {
    QStringList all;
    if (dialect == Dialect::Sqlite) {
        for (const auto* event : {"UPDATE", "DELETE"})
            all << QStringLiteral(
                       "CREATE TRIGGER %1_keep_%2 BEFORE %3 ON %1 WHEN NOT EXISTS (SELECT 1 FROM replacing WHERE "
                       "centre_id = OLD.centre_id) BEGIN SELECT RAISE(ABORT, 'records are kept'); END")
                       .arg(table, QString::fromLatin1(event).toLower(), QString::fromLatin1(event));
        return all;
    }
    all << QStringLiteral(
               "CREATE OR REPLACE FUNCTION keep_records() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN IF NOT EXISTS "
               "(SELECT 1 FROM replacing WHERE centre_id = OLD.centre_id) THEN RAISE EXCEPTION 'records are kept' "
               "USING ERRCODE = '23000'; END IF; IF TG_OP = 'DELETE' THEN RETURN OLD; END IF; RETURN NEW; END $$")
        << QStringLiteral("CREATE TRIGGER %1_keep BEFORE UPDATE OR DELETE ON %1 FOR EACH ROW EXECUTE FUNCTION keep_records()")
               .arg(table);
    return all;
}

Error errorOf(Dialect dialect, const QSqlError& error, const QString& subject) {
    return dialect == Dialect::Sqlite ? sqliteError(error, subject) : postgresError(error, subject);
}

}  // namespace laneward
