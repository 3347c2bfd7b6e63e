#include "app/edits/busy_bar.h"

#include "app/edits/plain_label.h"

#include <QHBoxLayout>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>

namespace laneward {

namespace {

constexpr int least = 28;      // height of what is clicked
constexpr int patience = 200;  // ms: anything longer shows progress
constexpr int fullProgress = 100;

}  // namespace

BusyBar::BusyBar(const QString& what, const QString& again, QWidget* parent) : QWidget(parent) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    m_progress = new QProgressBar(this);
    m_progress->setAccessibleName(what);
    m_cancel = new QPushButton(tr("Cancel (Esc)"), this);
    m_cancel->setObjectName("cancelWork");
    m_cancel->setAccessibleName(tr("Cancel: %1", "what is worked out").arg(what));
    m_why = proseLabel({}, this);
    m_why->setObjectName("whyStopped");
    m_again = new QPushButton(again, this);
    m_again->setObjectName("workAgain");
    for (QPushButton* button : {m_cancel, m_again})
        button->setMinimumHeight(least);
    row->addWidget(m_progress, 1);
    row->addWidget(m_cancel);
    row->addWidget(m_why, 1, Qt::AlignVCenter);
    row->addWidget(m_again);
    m_slow = new QTimer(this);
    m_slow->setSingleShot(true);
    m_slow->setInterval(patience);
    connect(m_slow, &QTimer::timeout, this, &BusyBar::look);
    connect(m_cancel, &QPushButton::clicked, this, &BusyBar::cancel);
    connect(m_again, &QPushButton::clicked, this, &BusyBar::againWanted);
    look();
}

void BusyBar::begin() {
    m_isWorking = true;
    m_why->clear();
    m_progress->setRange(0, 0);
    if (m_progress->isHidden() && !m_slow->isActive()) m_slow->start();  // what begins again while it is shown stays shown
    look();
}

void BusyBar::setDone(double done) {
    m_progress->setRange(0, fullProgress);
    m_progress->setValue(int(done * fullProgress));
}

void BusyBar::end() {
    m_isWorking = false;
    m_slow->stop();
    look();
}

void BusyBar::stop(const QString& why) {
    m_why->setText(why);
    end();
}

QString BusyBar::why() const { return m_why->text(); }

bool BusyBar::cancel() {
    if (!m_isWorking) return false;
    Q_EMIT cancelled();
    return true;
}

void BusyBar::look() {
    const bool shows = m_isWorking && !m_slow->isActive();
    m_progress->setVisible(shows);
    m_cancel->setVisible(shows);
    m_why->setVisible(!m_isWorking && !m_why->text().isEmpty());
    m_again->setVisible(!m_isWorking && !m_why->text().isEmpty());
    setVisible(shows || !m_why->isHidden());
}

}  // namespace laneward
