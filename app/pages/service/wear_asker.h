// Reads all service records beside the window: lives of parts are as old as the centre. The newest question wins.
//
//     connect(&asker, &WearAsker::answered, this, &WearPanel::take);
//     asker.ask(session.store().location());
#pragma once

#include "app/edits/beside.h"

#include <QObject>

namespace laneward {

class WearAsker : public QObject {
    Q_OBJECT

public:
    using Records = std::shared_ptr<const std::vector<ServiceRecord>>;

    explicit WearAsker(QObject* parent = nullptr);

    /// The answer comes on this thread, later.
    void ask(const Location& location);
    void leave() { m_beside.leave(); }
    bool isBusy() const { return m_beside.isBusy(); }

Q_SIGNALS:
    void answered(const laneward::WearAsker::Records& records);  ///< all that were made, corrections included
    void failed(const laneward::Error& why);

private:
    Beside m_beside;
};

}  // namespace laneward
