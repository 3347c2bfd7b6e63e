#include "core/storage/store.h"

#include "core/storage/open_database.h"
#include "core/storage/store_parts.h"

#include <QDir>

namespace laneward {

// A text with "://" is a server; anything else is a file, whatever its name looks like.
Result<Location> Location::parse(const QString& fileOrUrl) {
    const Error unreadable = fault(ErrorKind::Usage, "location.unreadable", fileOrUrl);
    if (fileOrUrl.isEmpty() || fileOrUrl.contains(QChar(0))) return unreadable;
    if (!fileOrUrl.contains(QLatin1StringView("://"))) return Location{Kind::Sqlite, fileOrUrl, {}};
    const QUrl url(fileOrUrl, QUrl::StrictMode);
    const QString scheme = url.scheme();
    const bool known = scheme == QLatin1StringView("postgresql") || scheme == QLatin1StringView("postgres");
    if (!url.password().isEmpty() || url.query().contains(QLatin1StringView("password"), Qt::CaseInsensitive))
        return fault(ErrorKind::Usage, "location.password", url.toDisplayString(QUrl::RemovePassword | QUrl::RemoveQuery));
    if (!url.isValid() || !known || url.path().size() < 2) return unreadable;
    return Location{Kind::Postgres, {}, url};
}

QString Location::shown() const { return kind == Kind::Sqlite ? path : server.toDisplayString(); }

Store::Store(std::unique_ptr<Database> database, Location location)
    : m_parts(new Parts{std::move(database), std::move(location)}) {}

Store::~Store() = default;

Result<std::unique_ptr<Store>> Store::open(const Location& location, Access access, Examination examination) {
    Result<std::unique_ptr<Database>> database =
        location.kind == Location::Kind::Sqlite ? openSqlite(location, access, examination) : openPostgres(location, access);
    if (!database) return database.error();
    return std::unique_ptr<Store>(new Store(*std::move(database), location));
}

const Location& Store::location() const { return m_parts->location; }

bool Store::isReadOnly() const { return !m_parts->database->isWritable(); }

std::optional<Error> Store::damage() { return m_parts->database->damage(); }

Database& Store::database() { return *m_parts->database; }

}  // namespace laneward
