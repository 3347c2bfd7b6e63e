#include "core/storage/migrations.h"
#include "core/storage/open_database.h"

#include <QDir>
#include <QUrlQuery>

namespace laneward {
namespace {

constexpr int usualPort = 5432;

/// Host names of this machine, where there is no network to protect against.
bool isHere(const QString& host) {
    return host.isEmpty() || host.startsWith(u'/') || host == QLatin1StringView("localhost") ||
           host == QLatin1StringView("127.0.0.1") || host == QLatin1StringView("::1");
}

Database::Target targetOf(const Location& location, Access access) {
    const QUrlQuery query(location.server);
    const QString directory = query.queryItemValue(QStringLiteral("host"), QUrl::FullyDecoded);
    Database::Target target;
    target.dialect = Dialect::Postgres;
    target.host = directory.isEmpty() ? location.server.host() : directory;
    target.port = location.server.port(usualPort);
    target.user = location.server.userName();
    target.name = location.server.path().mid(1);
    target.writable = access != Access::ReadOnly;
    target.shown = location.shown();
    target.options = QStringLiteral("connect_timeout=5;application_name=laneward");
    // libpq's default would accept a server that nobody has checked.
    if (!isHere(target.host) && !qEnvironmentVariableIsSet("PGSSLMODE")) target.options += QStringLiteral(";sslmode=verify-full");
    return target;
}

Outcome prepare(Database& database, Access access) {
    const std::vector<Migration> known = knownMigrations(Dialect::Postgres);
    const Result<int> stored = schemaVersion(database);
    if (!stored) return stored.error();
    if (*stored > known.back().version) return fault(ErrorKind::Refused, "store.newer-schema", database.shown());
    if (*stored == 0 && access != Access::Create) return fault(ErrorKind::Io, "store.missing", database.shown());
    if (*stored == known.back().version) return Nothing{};
    if (access == Access::ReadOnly) return fault(ErrorKind::Refused, "store.older-schema", database.shown());
    return migrate(database, known);
}

Result<bool> holdsCentre(Database& database) {
    const Result<QVariant> centre = database.value(QStringLiteral("SELECT id FROM centres LIMIT 1"));
    return centre ? Result<bool>(centre->isValid()) : centre.error();
}

}  // namespace

Result<std::unique_ptr<Database>> openPostgres(const Location& location, Access access) {
    Result<std::unique_ptr<Database>> opened = Database::connect(targetOf(location, access));
    if (!opened) return opened;
    Database& database = **opened;
    const Result<QVariant> standby = database.value(QStringLiteral("SELECT pg_is_in_recovery()"));
    if (!standby) return standby.error();
    if (standby->toBool() && access == Access::ReadWrite) return openPostgres(location, Access::ReadOnly);
    if (const Outcome prepared = prepare(database, access); !prepared) return prepared.error();
    if (access != Access::Create) return opened;
    const Result<bool> taken = holdsCentre(database);
    if (!taken) return taken.error();
    if (*taken) return fault(ErrorKind::Refused, "store.exists", location.shown());
    return opened;
}

}  // namespace laneward
