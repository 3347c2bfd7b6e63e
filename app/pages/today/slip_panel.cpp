#include "app/pages/today/slip_panel.h"

#include "app/edits/plain_label.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSpinBox>

#include <algorithm>

namespace laneward {

std::vector<Occurrence> eventsThatMaySlip(const Occupancy& occupancy, Instant now) {
    std::vector<Occurrence> on;
    for (const Occurrence& occurrence : occupancy.occurrences) {
        const bool near = occurrence.booked.begin <= now + hours(1) && now - hours(1) <= occurrence.cleared;
        if (near && occurrence.kind != EventKind::Closure) on.push_back(occurrence);
    }
    std::stable_sort(on.begin(), on.end(), [](const Occurrence& a, const Occurrence& b) { return a.booked.end < b.booked.end; });
    return on;
}

SlipPanel::SlipPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) { build(); }

void SlipPanel::build() {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    auto* label = plainLabel(tr("Still pla&ying:"), this);
    m_event = new QComboBox(this);
    m_event->setAccessibleName(tr("Event that is still playing"));
    m_event->setMinimumContentsLength(12);
    m_event->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    label->setBuddy(m_event);
    row->addWidget(label);
    row->addWidget(m_event, 1);
    row->addWidget(plainLabel(tr("slips by"), this));
    for (int by : {10, 20, 30}) {
        auto* button = new QPushButton(tr("+%1 min").arg(by), this);
        button->setObjectName(QString("slip%1").arg(by));
        button->setMaximumWidth(fontMetrics().horizontalAdvance(button->text()) + 24);
        button->setAccessibleName(tr("The event plays %1 minutes longer").arg(by));
        connect(button, &QPushButton::clicked, this, [this, by] { slipBy(by); });
        row->addWidget(button);
        m_needEvent.append(button);
    }
    m_other = new QSpinBox(this);
    m_other->setRange(1, 240);
    m_other->setValue(45);
    m_other->setSuffix(tr(" min", "suffix"));
    m_other->setAccessibleName(tr("Other number of minutes"));
    auto* other = new QPushButton(tr("S&lip"), this);
    other->setObjectName("slipOther");
    connect(other, &QPushButton::clicked, this, [this] { slipBy(m_other->value()); });
    row->addWidget(m_other);
    row->addWidget(other);
    m_needEvent.append({m_event, m_other, other});
}

void SlipPanel::refresh() {
    const int chosen = m_event->currentIndex();
    const SeriesId before = chosen >= 0 && size_t(chosen) < m_on.size() ? m_on[size_t(chosen)].series : SeriesId{};
    const QDate today = m_session.today();
    m_on = eventsThatMaySlip(m_session.occupancyOf({today.addDays(-1), today}), m_session.now());
    m_event->clear();
    for (const Occurrence& o : m_on) {
        m_event->addItem(
            tr("%1, until %2, lanes %3").arg(shown(o.title), clockTime(o.booked.end, m_session.speech()), o.lanes.text()));
        if (o.series == before) m_event->setCurrentIndex(m_event->count() - 1);
    }
    if (m_on.empty()) m_event->addItem(tr("no event is on now"));
    for (QWidget* widget : std::as_const(m_needEvent))
        widget->setEnabled(!m_on.empty() && !m_session.isReadOnly());
}

void SlipPanel::slipBy(int byMinutes) {
    const int chosen = m_event->currentIndex();
    if (chosen < 0 || size_t(chosen) >= m_on.size()) return;
    const Occurrence occurrence = m_on[size_t(chosen)];
    m_session.slip(occurrence.series, occurrence.original, minutes(byMinutes));
}

}  // namespace laneward
