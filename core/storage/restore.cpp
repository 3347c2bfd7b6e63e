#include "core/storage/centre_file.h"
#include "core/storage/open_database.h"

#include <QDateTime>
#include <QFile>
#include <QFileInfo>

namespace laneward {
namespace {

QString beside(const QString& path, const char* what) { return path + QLatin1StringView(what); }

/// The backup's content in a new private file beside its place, opened and read to its end.
Result<QString> prepared(const QString& backupFile, const QString& target) {
    Location from;
    from.path = backupFile;
    const auto backup = Store::open(from, Access::ReadOnly);
    if (!backup) return backup.error();
    const QString fresh = freePath(target, QStringLiteral("restoring"));
    if (const Outcome copied = copyInto((*backup)->database(), fresh); !copied) return copied.error();
    Location copy;
    copy.path = fresh;
    const auto opened = Store::open(copy, Access::ReadOnly);
    const Result<CentreFile> read = opened ? exported(**opened) : Result<CentreFile>(opened.error());
    if (read) return fresh;
    QFile::remove(fresh);
    return read.error();
}

// Leaving write-ahead mode merges the journal into the file and succeeds only when nobody else has the file open: a program that
// went on writing into the replaced file would lose its work. What cannot be opened, because it is damaged, has no such user.
Outcome settled(const QString& path) {
    Location location;
    location.path = path;
    const auto store = Store::open(location, Access::ReadWrite);
    if (!store) return store.error().finding.rule == "store.locked" ? Outcome(store.error()) : Outcome(Nothing{});
    const Result<QVariant> mode = (*store)->database().value(QStringLiteral("PRAGMA journal_mode = DELETE"));
    return mode ? Outcome(Nothing{}) : Outcome(mode.error());
}

/// Moves the file away with its journal, if it still has one.
bool kept(const QString& path, const QString& keptPath) {
    for (const char* part : {"-wal", "-shm"})
        if (QFileInfo::exists(beside(path, part)) && !QFile::rename(beside(path, part), beside(keptPath, part))) return false;
    return QFile::rename(path, keptPath);
}

}  // namespace

Outcome restore(const QString& backupFile, const Location& location, Instant now) {
    if (location.kind != Location::Kind::Sqlite) return fault(ErrorKind::Usage, "restore.files-only", location.shown());
    const QFileInfo link(location.path);
    const QString target = link.isSymLink() ? link.symLinkTarget() : location.path;
    const Result<QString> fresh = prepared(backupFile, target);
    if (!fresh) return fresh.error();
    Outcome done = Nothing{};
    if (QFileInfo::exists(target)) {
        const QString time = QDateTime::fromSecsSinceEpoch(now.seconds, Qt::UTC).toString(QStringLiteral("yyyyMMdd-HHmmss"));
        const QFileInfo file(target);
        const QString stem = QStringLiteral("%1/%2-replaced-%3Z").arg(file.absolutePath(), file.completeBaseName(), time);
        done = settled(target);
        if (done && !kept(target, freePath(stem, QStringLiteral("laneward"))))
            done = fault(ErrorKind::Io, "file.cannot-write", target);
    }
    if (done && !QFile::rename(*fresh, target)) done = fault(ErrorKind::Io, "file.cannot-write", target);
    if (!done) QFile::remove(*fresh);
    return done;
}

}  // namespace laneward
