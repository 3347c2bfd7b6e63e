#include "app/edits/backup_keeper.h"

#include "core/storage/kept_backups.h"

#include <QDir>
#include <QTimer>

namespace laneward {

namespace {

constexpr std::chrono::minutes between{30};  // between two looks
constexpr Seconds oldest = hours(24);

Result<QString> backedUp(const Beside::Question& question, const Location& location, const QString& folder, Instant now) {
    const Result<Store*> store = question.store(location);
    if (!store) return store.error();
    Result<QString> made = (*store)->backup(folder, now);
    question.closeStore();  // it is needed once a day
    if (!made) return made;
    for (const KeptBackup& old : overtaken(backupsIn(folder)))
        QFile::remove(old.path);
    return made;
}

}  // namespace

BackupKeeper::BackupKeeper(Session& session, QString folder, std::chrono::milliseconds after, QObject* parent)
    : QObject(parent), m_session(session), m_folder(std::move(folder)), m_timer(new QTimer(this)) {
    connect(m_timer, &QTimer::timeout, this, &BackupKeeper::look);
    m_timer->start(after);
}

void BackupKeeper::look() {
    m_timer->setInterval(between);
    const std::vector<KeptBackup> backups = backupsIn(m_folder);
    const Instant now = m_session.now();
    const bool isFresh = !backups.empty() && backups.front().made > now - oldest;
    if (!m_session.hasRead() || isFresh || m_beside.isBusy()) {
        Q_EMIT looked();
        return;
    }
    QDir().mkpath(m_folder);
    m_beside.ask([this, location = m_session.store().location(), folder = m_folder, now](const Beside::Question& question) {
        const Result<QString> made = backedUp(question, location, folder, now);
        question.answer([this, made] { heard(made); });
    });
}

void BackupKeeper::heard(const Result<QString>& made) {
    if (made) {
        Q_EMIT kept(*made);
    } else if (!m_failed) {
        Q_EMIT m_session.problem(tr("The daily backup was not made: %1").arg(text(made.error(), m_session.speech())));
    }
    m_failed = !made;
    Q_EMIT looked();
}

}  // namespace laneward
