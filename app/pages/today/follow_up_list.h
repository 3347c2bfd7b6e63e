// Incidents and bad readings of the last days that nobody has answered yet.
#pragma once

#include "app/edits/session.h"
#include "core/season/follow_ups.h"

#include <QWidget>

class QVBoxLayout;

namespace laneward {

/// Asks the store for the readings of the last days; only incidents when it cannot be read.
std::vector<FollowUp> openFollowUps(Session& session);
/// "Tue 17:40, spill on lane 3: oil on the approach".
QString lineOf(const FollowUp& open, const Speech& speech);

class FollowUpList : public QWidget {
    Q_OBJECT

public:
    explicit FollowUpList(QWidget* parent = nullptr);

    void show(const std::vector<FollowUp>& open, bool writable, const Speech& speech);

Q_SIGNALS:
    void answerWanted(const laneward::FollowUp& open);

private:
    QWidget* entry(const FollowUp& open, bool writable, const Speech& speech);

    std::vector<FollowUp> m_open;
    bool m_writable = false;
    QVBoxLayout* m_column = nullptr;
};

}  // namespace laneward
