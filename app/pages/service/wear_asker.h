// Reads all service records beside the window: lives of parts are as old as the centre. The newest question wins.
//
// A thread of its own keeps a second store open on the same centre, read-only.
//
//     connect(&asker, &WearAsker::answered, this, &WearPanel::take);
//     asker.ask(session.store().location());
#pragma once

#include "core/storage/store.h"

#include <QObject>
#include <QThread>

#include <atomic>

namespace laneward {

class WearAsker : public QObject {
    Q_OBJECT

public:
    using Records = std::shared_ptr<const std::vector<ServiceRecord>>;

    explicit WearAsker(QObject* parent = nullptr);
    ~WearAsker() override;

    /// The answer comes on this thread, later.
    void ask(const Location& location);
    void leave();
    bool isBusy() const { return m_busy; }

Q_SIGNALS:
    void answered(const laneward::WearAsker::Records& records);  ///< all that were made, corrections included
    void failed(const laneward::Error& why);

private:
    class Worker;

    void take(quint64 question, const Result<Records>& records);

    QThread m_thread;
    Worker* m_worker;  ///< lives there
    std::atomic<quint64> m_newest = 0;
    bool m_busy = false;
};

}  // namespace laneward
