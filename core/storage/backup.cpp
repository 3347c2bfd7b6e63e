#include "core/storage/centre_file.h"
#include "core/storage/open_database.h"
#include "core/storage/store_parts.h"

#include <QBuffer>
#include <QDateTime>
#include <QDir>
#include <QFile>

#include <unistd.h>

namespace laneward {
namespace {

/// A file name of our own making: nothing of a centre's name can lead out of the folder.
QString stemOf(const QString& centre, Instant now) {
    QString name;
    for (const QChar c : centre.left(60))
        name += c.isLetterOrNumber() && !c.isSurrogate() ? c : QChar(u'-');
    const QString time = QDateTime::fromSecsSinceEpoch(now.seconds, Qt::UTC).toString(QStringLiteral("yyyyMMdd-HHmmss"));
    return QStringLiteral("%1-%2Z").arg(name.isEmpty() ? QStringLiteral("centre") : name, time);
}

Outcome writtenFile(const QString& path, const CentreFile& contents) {
    QFile file(path);
    if (!makePrivateFile(path) || !file.open(QIODevice::WriteOnly))
        return fault(ErrorKind::Io, "file.cannot-write", path, {file.errorString()});
    if (const Outcome written = writeCentreFile(file, contents); !written) return written;
    if (file.flush() && ::fsync(file.handle()) == 0) return Nothing{};
    return fault(ErrorKind::Io, "file.cannot-write", path, {file.errorString()});
}

/// A copy counts when it has been opened, found sound and read to its end, and is not older than what was asked for.
Outcome verifiedDatabase(const QString& path, std::int64_t change) {
    Location location;
    location.path = path;
    const auto copy = Store::open(location, Access::ReadOnly);
    if (!copy) return copy.error();
    const Result<CentreFile> read = exported(**copy);
    if (!read) return read.error();
    const Result<std::int64_t> copied = (*copy)->changeCounter();
    if (!copied) return copied.error();
    return *copied >= change ? Outcome(Nothing{}) : Outcome(fault(ErrorKind::Io, "backup.differs", path));
}

/// A centre file counts when what is read from it would be written as the same bytes.
Outcome verifiedFile(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return fault(ErrorKind::Io, "file.cannot-read", path, {file.errorString()});
    const Result<CentreFile> read = readCentreFile(file, path);
    if (!read) return read.error();
    QBuffer again;
    again.open(QIODevice::WriteOnly);
    if (const Outcome written = writeCentreFile(again, *read); !written) return written;
    const bool same = file.seek(0) && file.readAll() == again.data();
    return same ? Outcome(Nothing{}) : Outcome(fault(ErrorKind::Io, "backup.differs", path));
}

Outcome copiedTo(Store& store, const QString& path) {
    if (store.database().dialect() == Dialect::Sqlite) {
        const Result<std::int64_t> change = store.changeCounter();
        if (!change) return change.error();
        const Outcome copied = copyInto(store.database(), path);
        return copied ? verifiedDatabase(path, *change) : copied;
    }
    const Result<CentreFile> contents = exported(store);
    if (!contents) return contents.error();
    const Outcome written = writtenFile(path, *contents);
    return written ? verifiedFile(path) : written;
}

Result<QString> centreName(Database& database) {
    const Result<QVariant> name = database.value(QStringLiteral("SELECT name FROM centres ORDER BY id LIMIT 1"));
    return name ? Result<QString>(name->toString()) : name.error();
}

}  // namespace

Result<QString> Store::backup(const QString& directory, Instant now) {
    const bool sqlite = m_parts->location.kind == Location::Kind::Sqlite;
    if (!QDir(directory).exists()) return fault(ErrorKind::Io, "file.no-directory", directory);
    const Result<QString> name = centreName(*m_parts->database);
    if (!name) return name.error();
    const QString stem = QDir(directory).filePath(stemOf(*name, now));
    const QString path = freePath(stem, sqlite ? QStringLiteral("laneward") : QStringLiteral("json"));
    const QString partial = freePath(path, QStringLiteral("partial"));
    Outcome done = copiedTo(*this, partial);
    if (done && !QFile::rename(partial, path)) done = fault(ErrorKind::Io, "file.cannot-write", path);
    if (done) return path;
    QFile::remove(partial);
    return done.error();
}

}  // namespace laneward
