// Backs the open centre up once a day, whatever page is open: a while after the start when the last backup is older than a day,
// and again when a day has passed. Nobody waits for it, and it is only spoken of when it fails. What later ones have overtaken
// is removed (core/storage/kept_backups.h).
#pragma once

#include "app/edits/beside.h"
#include "app/edits/session.h"

#include <chrono>

class QTimer;

namespace laneward {

class BackupKeeper : public QObject {
    Q_OBJECT

public:
    /// `folder` is for the backups of this centre alone; it is made when it is needed.
    BackupKeeper(Session& session, QString folder, std::chrono::milliseconds after = std::chrono::seconds(20),
                 QObject* parent = nullptr);

    const QString& folder() const { return m_folder; }

Q_SIGNALS:
    void kept(const QString& path);
    void looked();  ///< whatever came of it

private:
    void look();
    void heard(const Result<QString>& made);

    Session& m_session;
    QString m_folder;
    QTimer* m_timer;
    bool m_failed = false;  ///< said already
    Beside m_beside;
};

}  // namespace laneward
