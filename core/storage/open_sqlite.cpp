#include "core/storage/migrations.h"
#include "core/storage/open_database.h"

#include <QFile>
#include <QFileInfo>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace laneward {
namespace {

using Opened = Result<std::unique_ptr<Database>>;

Opened connected(const QString& path, const QString& parameters, const QString& shown, bool writable) {
    Database::Target target;
    target.name = sqliteUri(path, parameters);
    target.options = QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=5000");
    if (parameters.startsWith(QLatin1StringView("mode=ro"))) target.options += QStringLiteral(";QSQLITE_OPEN_READONLY");
    target.writable = writable;
    target.shown = shown;
    return Database::connect(target);
}

qint64 journalSize(const QString& path) { return QFileInfo(path + QStringLiteral("-wal")).size(); }

/// The kind of file, by its name only: opening and closing it here would drop the locks that another connection of this
/// program holds on it, and opening a pipe would wait for ever.
Outcome looksLikeOurs(const QString& path) {
    struct stat found {};
    if (::stat(QFile::encodeName(path).constData(), &found) != 0) {
        const bool hidden = errno == EACCES;
        return fault(ErrorKind::Io, hidden ? "store.unreachable" : "store.missing", path,
                     {QString::fromLocal8Bit(strerror(errno))});
    }
    if (!S_ISREG(found.st_mode) || found.st_size == 0) return fault(ErrorKind::Io, "store.not-a-database", path);
    return Nothing{};
}

/// A database in a folder that we may not write, with a journal that was never merged: read through a private copy of both.
Opened copied(const QString& path, const QString& shown) {
    auto directory = std::make_unique<QTemporaryDir>();
    const QString copy = directory->filePath(QStringLiteral("copy"));
    const QString journal = QStringLiteral("-wal");
    if (!directory->isValid() || !QFile::copy(path, copy) || !QFile::copy(path + journal, copy + journal))
        return fault(ErrorKind::Io, "store.unreachable", shown);
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    QFile::setPermissions(copy + journal, QFile::ReadOwner | QFile::WriteOwner);
    Opened opened = connected(copy, QStringLiteral("mode=ro"), shown, false);
    if (opened) (*opened)->keep(std::move(directory));
    return opened;
}

bool isForLackOfRights(const Error& error) {
    return error.finding.rule == "store.unreachable" || error.finding.rule == "edit.read-only";
}

/// A connection that has read something, or why it could not.
Opened tried(const QString& path, const QString& parameters, const QString& shown) {
    Opened opened = connected(path, parameters, shown, false);
    if (!opened) return opened;
    const Result<QVariant> read = (*opened)->value(QStringLiteral("SELECT count(*) FROM sqlite_master"));
    if (!read) return read.error();
    return opened;
}

Opened readable(const QString& path, const QString& shown) {
    Opened live = tried(path, QStringLiteral("mode=ro"), shown);
    if (live || !isForLackOfRights(live.error())) return live;
    return journalSize(path) > 0 ? copied(path, shown) : connected(path, QStringLiteral("mode=ro&immutable=1"), shown, false);
}

/// Every page is read.
Outcome pagesOf(Database& database) {
    const Result<QVariant> check = database.value(QStringLiteral("PRAGMA quick_check(1)"));
    if (!check) return check.error();
    if (check->toString() != QLatin1StringView("ok"))
        return fault(ErrorKind::Io, "store.damaged", database.shown(), {check->toString()});
    return Nothing{};
}

bool isOlder(int version) { return version < currentSchema(); }

/// An older schema is about to be written over: its pages are always read.
Outcome soundness(Database& database, bool pages) {
    const Result<QVariant> id = database.value(QStringLiteral("PRAGMA application_id"));
    if (!id) return id.error();
    if (id->toInt() != applicationId) return fault(ErrorKind::Io, "store.not-a-database", database.shown());
    const Result<int> version = schemaVersion(database);
    if (!version) return version.error();
    if (*version < 0) return fault(ErrorKind::Io, "store.damaged", database.shown(), {QStringLiteral("schema version")});
    if (*version > currentSchema()) return fault(ErrorKind::Refused, "store.newer-schema", database.shown());
    return pages || isOlder(*version) ? pagesOf(database) : Outcome(Nothing{});
}

/// A file shorter than its pages, or with a part of a page, was cut; SQLite itself takes missing bytes of the last page for
/// zeros.
Outcome wholeness(Database& database, const QString& path) {
    const Result<QVariant> size = database.value(QStringLiteral("PRAGMA page_size"));
    const Result<QVariant> count = size ? database.value(QStringLiteral("PRAGMA page_count")) : size;
    if (!count) return count.error();
    const qint64 bytes = QFileInfo(path).size();
    const bool whole = bytes % size->toLongLong() == 0 && bytes >= size->toLongLong() * count->toLongLong();
    return whole ? Outcome(Nothing{})
                 : Outcome(fault(ErrorKind::Io, "store.damaged", database.shown(), {QStringLiteral("cut short")}));
}

/// Looks before anything may write: without a journal the file alone is the whole truth and is read without leaving a trace.
Outcome examined(const QString& path, const QString& shown, bool pages) {
    if (journalSize(path) == 0) {
        const Opened still = connected(path, QStringLiteral("mode=ro&immutable=1"), shown, false);
        Outcome alone = still ? soundness(**still, pages) : Outcome(still.error());
        if (alone) alone = wholeness(**still, path);
        if (alone || journalSize(path) == 0) return alone;  // else another program began to write while we read
    }
    const Opened live = readable(path, shown);
    return live ? soundness(**live, pages) : Outcome(live.error());
}

/// A connection belongs to its thread.
Outcome examinedElsewhere(const QString& path, const QString& shown) {
    const Opened live = readable(path, shown);
    return live ? pagesOf(**live) : Outcome(live.error());
}

/// SQLite opens a file that it may not write without a word; only the attempt tells. Nothing reaches the disk.
Result<bool> canWrite(Database& database) {
    Result<Transaction> writing = Transaction::begin(database, Isolation::Writing);
    if (!writing) return writing.error();
    const QString same = QStringLiteral("PRAGMA application_id = %1").arg(applicationId);
    const Result<int> attempt = database.change(same);
    if (attempt) return true;
    return isForLackOfRights(attempt.error()) ? Result<bool>(false) : attempt.error();
}

Opened writable(const QString& path, const QString& shown) {
    Opened opened = connected(path, QStringLiteral("mode=rw"), shown, true);
    const Result<bool> can = opened ? canWrite(**opened) : Result<bool>(opened.error());
    if (!can && !isForLackOfRights(can.error())) return can.error();
    return can && *can ? std::move(opened) : readable(path, shown);
}

/// With the right to write, the last reader also clears the journal away when it closes.
Opened readOnly(const QString& path, const QString& shown) {
    Opened opened = tried(path, QStringLiteral("mode=rw"), shown);
    return opened || !isForLackOfRights(opened.error()) ? std::move(opened) : readable(path, shown);
}

/// Brought up to date; before that a copy beside it, which keeps the old version and is no use when nothing was changed.
Outcome raised(Database& database, const QString& path, int version) {
    const QFileInfo file(path);
    const QString stem = file.absolutePath() + u'/' + file.completeBaseName() + QStringLiteral("-schema-%1").arg(version);
    const QString copy = freePath(stem, QStringLiteral("laneward"));
    if (const Outcome copied = copyInto(database, copy); !copied) return copied;
    Outcome migrated = migrate(database, knownMigrations(Dialect::Sqlite));
    if (!migrated) QFile::remove(copy);
    return migrated;
}

Outcome upToDate(Database& database, const QString& path) {
    const Result<int> stored = schemaVersion(database);
    if (!stored) return stored.error();
    const bool older = isOlder(*stored);
    if (!database.isWritable())
        return older ? Outcome(fault(ErrorKind::Refused, "store.older-schema", database.shown())) : Outcome(Nothing{});
    if (const Outcome done = older ? raised(database, path, *stored) : Outcome(Nothing{}); !done) return done;
    Result<QVariant> mode = database.value(QStringLiteral("PRAGMA journal_mode"));
    if (mode && mode->toString() != QLatin1StringView("wal")) {
        // Changing it writes to the first page, and whoever examines meanwhile has not looked yet.
        if (Outcome sound = pagesOf(database); !sound) return sound;
        mode = database.value(QStringLiteral("PRAGMA journal_mode = WAL"));
    }
    return mode ? Outcome(Nothing{}) : Outcome(mode.error());
}

Opened created(const QString& path, const QString& shown) {
    if (QFileInfo::exists(path) || QFileInfo(path).isSymLink()) return fault(ErrorKind::Refused, "store.exists", shown);
    if (!makePrivateFile(path))
        return fault(ErrorKind::Io, "store.unreachable", shown, {QString::fromLocal8Bit(strerror(errno))});
    Opened opened = connected(path, QStringLiteral("mode=rw"), shown, true);
    Outcome made = opened ? Outcome(Nothing{}) : Outcome(opened.error());
    if (made) {
        const Result<QVariant> mode = (*opened)->value(QStringLiteral("PRAGMA journal_mode = WAL"));
        made = mode ? migrate(**opened, knownMigrations(Dialect::Sqlite)) : Outcome(mode.error());
    }
    if (made) return opened;
    opened = made.error();  // closed before its file goes away
    QFile::remove(path);
    return opened;
}

}  // namespace

Opened openSqlite(const Location& location, Access access, Examination examination) {
    const QString path = location.path;
    const QString shown = location.shown();
    if (access == Access::Create) return created(path, shown);
    if (const Outcome ours = looksLikeOurs(path); !ours) return ours.error();
    if (const Outcome sound = examined(path, shown, examination == Examination::First); !sound) return sound.error();
    Opened opened = access == Access::ReadWrite ? writable(path, shown) : readOnly(path, shown);
    if (!opened) return opened;
    if (const Outcome ready = upToDate(**opened, path); !ready) return ready.error();
    if (examination == Examination::Meanwhile) (*opened)->examineLater([=] { return examinedElsewhere(path, shown); });
    return opened;
}

}  // namespace laneward
