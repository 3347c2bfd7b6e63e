// 'Still playing, slips by …': one press lengthens the event that is on and plans tonight again.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QComboBox;
class QSpinBox;

namespace laneward {

class SlipPanel : public QWidget {
    Q_OBJECT

public:
    explicit SlipPanel(Session& session, QWidget* parent = nullptr);

    void refresh();  ///< keeps the chosen event

private:
    void build();
    void slipBy(int byMinutes);

    Session& m_session;
    QComboBox* m_event = nullptr;
    QSpinBox* m_other = nullptr;
    std::vector<Occurrence> m_on;
    QList<QWidget*> m_needEvent;
};

/// Events that are on, or that ended less than an hour ago, or that begin within the next hour; those that end first stand first.
std::vector<Occurrence> eventsThatMaySlip(const Occupancy& occupancy, Instant now);

}  // namespace laneward
