#include "app/window/centre_making.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace laneward {

namespace {

QString dataFile(const QString& name) {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(name);
}

const QString lastCentre = QStringLiteral("window/centre");

bool isDemo(const Location& location) {
    return QFileInfo(location.path).absoluteFilePath() == QFileInfo(demoCentrePath()).absoluteFilePath();
}

}  // namespace

QString ownCentrePath() { return dataFile(QStringLiteral("centre.laneward")); }

QString demoCentrePath() { return dataFile(QStringLiteral("demo.laneward")); }

std::optional<Location> keptCentre() {
    const Result<Location> kept = Location::parse(QSettings().value(lastCentre).toString());
    if (!kept || (kept->kind == Location::Kind::Sqlite && !QFileInfo::exists(kept->path))) return std::nullopt;
    return *kept;
}

void keepCentre(const Location& location) {
    if (location.kind == Location::Kind::Postgres)
        QSettings().setValue(lastCentre, location.server.toString(QUrl::FullyEncoded));
    else if (!isDemo(location))
        QSettings().setValue(lastCentre, QFileInfo(location.path).absoluteFilePath());
}

std::optional<QString> backupFolderOf(const Location& location) {
    const QFileInfo file(location.path);
    if (location.kind != Location::Kind::Sqlite || isDemo(location)) return std::nullopt;
    // Two files of one name are two centres.
    const QByteArray place = QCryptographicHash::hash(file.canonicalFilePath().toUtf8(), QCryptographicHash::Sha256).toHex();
    return dataFile(QStringLiteral("backups/%1-%2").arg(file.completeBaseName(), QString::fromLatin1(place.left(8))));
}

Outcome makeCentre(const Location& location, const CentreFile& content, Instant now) {
    if (location.kind == Location::Kind::Sqlite) QDir().mkpath(QFileInfo(location.path).absolutePath());
    Result<std::unique_ptr<Store>> store = Store::open(location, Access::Create);
    if (!store) return store.error();
    const std::vector<Person>& people = content.season.centre.people;
    const PersonId person = people.empty() ? PersonId{} : people.front().id;
    Outcome filled = (*store)->replaceAll(content.season, content.history, person, now);
    if (!filled && location.kind == Location::Kind::Sqlite) {
        store = fault(ErrorKind::Io, "store.missing", location.shown());  // closes the file
        for (const char* suffix : {"", "-wal", "-shm"})
            QFile::remove(location.path + QLatin1StringView(suffix));
    }
    return filled;
}

}  // namespace laneward
