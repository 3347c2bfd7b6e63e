#include "core/storage/migrations.h"

#include "core/storage/run_work.h"

#include <QFile>

namespace laneward {
namespace {

constexpr std::array scripts{":/migrations/0001_first.sql", ":/migrations/0002_readings.sql", ":/migrations/0003_supplies.sql",
                             ":/migrations/0004_service.sql", ":/migrations/0005_weights.sql"};

/// Tables of records, and the version that brought them.
struct RecordTable {
    int version;
    const char* name;
};
constexpr std::array recordTables{RecordTable{1, "operations"},          RecordTable{1, "runs"},
                                  RecordTable{1, "run_lanes"},           RecordTable{1, "incidents"},
                                  RecordTable{1, "hand_overs"},          RecordTable{1, "level_readings"},
                                  RecordTable{2, "tape_readings"},       RecordTable{2, "inspections"},
                                  RecordTable{2, "pattern_versions"},    RecordTable{3, "movements"},
                                  RecordTable{3, "movement_entries"},    RecordTable{3, "stock_counts"},
                                  RecordTable{4, "service_records"},     RecordTable{4, "meter_readings"},
                                  RecordTable{4, "pack_readings"},       RecordTable{4, "attachments"},
                                  RecordTable{4, "attachment_contents"}, RecordTable{3, "kept_forecasts"}};

QString scriptText(const char* name) {
    QFile file(QString::fromLatin1(name));
    const bool opened = file.open(QIODevice::ReadOnly);
    Q_ASSERT_X(opened, "migrations", name);
    return QString::fromUtf8(file.readAll());
}

Outcome storeVersion(Database& database, int version) {
    QStringList statements;
    if (database.dialect() == Dialect::Sqlite)  // these two take no bound value; both are numbers of ours
        statements << QStringLiteral("PRAGMA application_id = %1").arg(applicationId)
                   << QStringLiteral("PRAGMA user_version = %1").arg(version);
    else
        statements << QStringLiteral("CREATE TABLE IF NOT EXISTS laneward_schema (version bigint NOT NULL)")
                   << QStringLiteral("DELETE FROM laneward_schema")
                   << QStringLiteral("INSERT INTO laneward_schema VALUES (%1)").arg(version);
    for (const QString& statement : statements)
        if (const auto done = database.change(statement); !done) return done.error();
    return Nothing{};
}

/// The work of runs that are older than the table for it.
Outcome workOfOldRuns(Database& database) {
    const Result<std::vector<Row>> centres = database.rows(QStringLiteral("SELECT id FROM centres"));
    if (!centres) return centres.error();
    for (const Row& row : *centres) {
        if (const Outcome made = rebuildWork(database, {row.value(0).toString()}); !made) return made;
    }
    return Nothing{};
}

Outcome applied(Database& database, const Migration& migration) {
    for (const QString& statement : migration.statements)
        if (const auto done = database.change(statement); !done) return done.error();
    return storeVersion(database, migration.version);
}

}  // namespace

QStringList statementsOf(const QString& script) {
    QStringList lines = script.split(u'\n');
    lines.removeIf([](const QString& line) { return line.startsWith(QLatin1StringView("--")); });
    QStringList statements;
    for (const QString& part : lines.join(u'\n').split(QLatin1StringView(";\n")))
        if (!part.trimmed().isEmpty()) statements << part.trimmed();
    return statements;
}

std::vector<Migration> knownMigrations(Dialect dialect) {
    std::vector<Migration> all;
    for (const char* script : scripts) {
        QStringList statements = statementsOf(scriptText(script));
        if (dialect == Dialect::Postgres) statements.replaceInStrings(QStringLiteral(" blob "), QStringLiteral(" bytea "));
        all.push_back({int(all.size()) + 1, statements});
    }
    for (const RecordTable& table : recordTables)
        all.at(size_t(table.version - 1)).statements += appendOnlyStatements(dialect, QString::fromLatin1(table.name));
    return all;
}

int currentSchema() { return int(scripts.size()); }

Result<int> schemaVersion(Database& database) {
    if (database.dialect() == Dialect::Sqlite) {
        const Result<QVariant> version = database.value(QStringLiteral("PRAGMA user_version"));
        return version ? Result<int>(version->toInt()) : version.error();
    }
    const Result<QVariant> table = database.value(QStringLiteral("SELECT to_regclass('laneward_schema')::text"));
    if (!table) return table.error();
    if (table->isNull()) return 0;
    const Result<QVariant> version = database.value(QStringLiteral("SELECT max(version) FROM laneward_schema"));
    return version ? Result<int>(version->toInt()) : version.error();
}

Outcome migrate(Database& database, const std::vector<Migration>& migrations) {
    Result<Transaction> writing = Transaction::begin(database, Isolation::Writing);
    if (!writing) return writing.error();
    const Result<int> stored = schemaVersion(database);
    if (!stored) return stored.error();
    if (*stored > migrations.back().version) return fault(ErrorKind::Refused, "store.newer-schema", database.shown());
    for (const Migration& migration : migrations) {
        if (migration.version <= *stored) continue;
        if (const Outcome done = applied(database, migration); !done) return done;
    }
    constexpr int bringsWork = 4;
    if (*stored > 0 && *stored < bringsWork && migrations.back().version >= bringsWork) {
        if (const Outcome made = workOfOldRuns(database); !made) return made;
    }
    return writing->commit();
}

}  // namespace laneward
