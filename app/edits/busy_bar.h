// Says above a page that something is worked out beside the window, once it takes longer than one notices, and lets it be
// cancelled. Then it says what came of that, and offers to begin again.
//
//     connect(m_busy, &BusyBar::cancelled, this, [this] { m_asker.leave(); m_busy->stop(tr("Stopped. …")); });
//     m_busy->begin(); …  m_busy->end();
#pragma once

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;
class QTimer;

namespace laneward {

class BusyBar : public QWidget {
    Q_OBJECT

public:
    /// `what` is said to those who do not see the bar; `again` stands on the button.
    BusyBar(const QString& what, const QString& again, QWidget* parent = nullptr);

    void begin();
    /// 0 to 1; until something is told the bar only moves.
    void setDone(double done);
    void end();
    /// Why there is no answer, or none that is new.
    void stop(const QString& why);
    bool isWorking() const { return m_isWorking; }
    /// What stop() has said last; empty since it began again.
    QString why() const;
    /// As the button does, when there is something to cancel.
    bool cancel();

Q_SIGNALS:
    void cancelled();
    void againWanted();

private:
    void look();

    bool m_isWorking = false;
    QTimer* m_slow;
    QProgressBar* m_progress;
    QPushButton* m_cancel;
    QLabel* m_why;
    QPushButton* m_again;
};

}  // namespace laneward
