#include "core/storage/open_database.h"

#include <QFile>
#include <QFileInfo>
#include <QUrl>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace laneward {

QString sqliteUri(const QString& path, const QString& parameters) {
    const QByteArray encoded = QUrl::toPercentEncoding(QFileInfo(path).absoluteFilePath(), "/");
    return QStringLiteral("file:") + QString::fromLatin1(encoded) + u'?' + parameters;
}

bool makePrivateFile(const QString& path) {
    constexpr mode_t ownerOnly = S_IRUSR | S_IWUSR;
    const int file = ::open(QFile::encodeName(path).constData(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, ownerOnly);
    if (file < 0) return false;
    const bool set = ::fchmod(file, ownerOnly) == 0;  // a strict umask may have taken our own rights
    return ::close(file) == 0 && set;
}

QString freePath(const QString& stem, const QString& suffix) {
    QString path = stem + u'.' + suffix;
    for (int i = 2; QFileInfo::exists(path); ++i)
        path = QStringLiteral("%1-%2.%3").arg(stem, QString::number(i), suffix);
    return path;
}

// VACUUM INTO reads one transaction of the live database; a plain copy of the file would miss its journal or tear a page. It
// accepts an existing file if that is empty, which is how the copy gets its permissions.
Outcome copyInto(Database& database, const QString& path) {
    if (!makePrivateFile(path)) return fault(ErrorKind::Io, "store.unreachable", path, {QString::fromLocal8Bit(strerror(errno))});
    // query_only would also refuse to write the copy; the database itself is only read by this statement.
    const Result<int> allowed = database.change(QStringLiteral("PRAGMA query_only = OFF"));
    const Result<int> copied = allowed ? database.change(QStringLiteral("VACUUM INTO ?"), {path}) : allowed;
    const Result<int> again = database.isWritable() ? copied : database.change(QStringLiteral("PRAGMA query_only = ON"));
    if (copied && again) return Nothing{};
    QFile::remove(path);
    return copied ? again.error() : copied.error();
}

}  // namespace laneward
