#include "app/pages/today/follow_up_list.h"

#include "app/edits/plain_label.h"

#include <QCoreApplication>
#include <QFrame>
#include <QPushButton>
#include <QVBoxLayout>

namespace laneward {

std::vector<FollowUp> openFollowUps(Session& session) {
    const Instant now = session.now();
    std::vector<TapeReading> broken;
    Result<std::vector<TapeReading>> tapes = session.store().tapes({now - hours(24 * followUpDays), now + Seconds{1}});
    if (tapes && !tapes->empty()) {
        if (const auto versions = session.store().patternVersions()) broken = brokenReadings(*tapes, *versions, session.season());
    }
    return openFollowUps(session.season(), broken, now);
}

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FollowUps)

public:
    static QString line(const FollowUp& open, const Speech& speech) {
        const QString when = dateTimeText(open.at, speech);
        if (open.isReading)
            return tr("%1: the tape reading of lane %2 (%3) is outside its check").arg(when).arg(open.lane).arg(shown(open.text));
        const QString lane = open.lane > 0 ? tr(" on lane %1").arg(open.lane) : QString();
        return tr("%1, %2%3: %4", "when, kind, on lane: text").arg(when, text(open.kind), lane, open.text);
    }
};

}  // namespace

QString lineOf(const FollowUp& open, const Speech& speech) { return Words::line(open, speech); }

FollowUpList::FollowUpList(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout(this)) {
    m_column->setContentsMargins(0, 0, 0, 0);
}

void FollowUpList::show(const std::vector<FollowUp>& open, bool writable, const Speech& speech) {
    if (open == m_open && writable == m_writable && m_column->count() > 0) return;  // the keyboard stays where it is
    m_open = open;
    m_writable = writable;
    while (QLayoutItem* item = m_column->takeAt(0)) {
        if (item->widget()) item->widget()->deleteLater();
        delete item;
    }
    setVisible(!open.empty());
    if (open.empty()) return;
    m_column->addWidget(headingLabel(tr("! To be followed up"), this));
    for (const FollowUp& one : open)
        m_column->addWidget(entry(one, writable, speech));
}

QWidget* FollowUpList::entry(const FollowUp& open, bool writable, const Speech& speech) {
    auto* frame = new QFrame(this);
    frame->setFrameShape(QFrame::StyledPanel);
    auto* column = new QVBoxLayout(frame);
    column->setContentsMargins(8, 6, 8, 6);
    const QString line = lineOf(open, speech);
    column->addWidget(proseLabel(line, frame));
    auto* answer = new QPushButton(tr("Follow up…"), frame);
    answer->setObjectName("followUp");
    answer->setAccessibleName(tr("Follow up: %1").arg(line));
    answer->setEnabled(writable);
    connect(answer, &QPushButton::clicked, this, [this, open] { Q_EMIT answerWanted(open); });
    column->addWidget(answer, 0, Qt::AlignTrailing);
    return frame;
}

}  // namespace laneward
