#include "app/pages/calendar/week_view.h"

#include "app/widgets/time_formats.h"

#include <QFontMetricsF>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double gripHeight = 7;
constexpr double lowestHour = 22;
constexpr double highestHour = 180;

}  // namespace

WeekView::WeekView(QWidget* parent) : DiaryView(parent) { setAccessibleName(tr("Events by day and time")); }

double WeekView::headHeight() const { return std::ceil(QFontMetricsF(font()).height() * 1.7 + 6); }

QRectF WeekView::toViewport(const QRectF& content) const {
    return content.translated(0, headHeight() - verticalScrollBar()->value());
}

void WeekView::prepare() {
    m_ink.shades = shadesOf(palette());
    m_ink.font = font();
    m_ink.bold = font();
    m_ink.bold.setBold(true);
    m_ink.mirrored = mirrored();
    m_ink.now = m_data.now;
    const QFontMetricsF metrics(m_ink.bold);
    WeekMetrics room;
    room.width = viewport()->width() - 2;
    room.gutter = metrics.horizontalAdvance(clockText(QTime(22, 0), m_speech.locale)) + 16;
    room.hourHeight = m_hourHeight;
    room.lineHeight = metrics.height();
    room.mirrored = m_ink.mirrored;
    room.jobStrip = m_days.days() == 1 ? std::min(260.0, room.width * 0.3) : 16;
    m_layout = WeekLayout(m_data, m_days, m_begins, room);
    const double seen = viewport()->height() - headHeight();
    verticalScrollBar()->setRange(0, qMax(0, int(m_layout.height() - seen)));
    verticalScrollBar()->setPageStep(qMax(1, int(seen)));
    horizontalScrollBar()->setRange(0, 0);
    prepareBlocks();
}

void WeekView::prepareBlocks() {
    std::vector<Block> blocks;
    std::vector<int> items;
    for (const bool background : {true, false}) {
        for (size_t i = 0; i < m_data.items.size(); ++i) {
            const WeekLayout::Placed& place = m_layout.items()[i];
            if (place.parts.empty() || place.background != background) continue;
            const HouseItem& item = m_data.items[i];
            const QString day = longDay(m_data.zone.toLocal(item.time.begin).date, m_speech.locale);
            blocks.push_back({item.key, place.parts.front(), tr("%1: %2").arg(day, item.spoken), item.spoken});
            items.push_back(int(i));
        }
    }
    setItemBlocks(std::move(blocks), std::move(items));
}

void WeekView::scrollToBusyPart() {
    double top = 14 * m_hourHeight;  // an evening's work when nothing is booked
    for (const WeekLayout::Placed& place : m_layout.items()) {
        for (const QRectF& part : place.background ? std::vector<QRectF>() : place.parts)
            top = std::min(top, part.top());
    }
    const double seen = viewport()->height() - headHeight();
    const LocalTime now = m_data.zone.toLocal(m_data.now);
    const int day = m_layout.dayOf(now);
    if (day >= 0 && day < m_days.days()) top = std::max(top, m_layout.y(now, day) - seen * 0.4);
    verticalScrollBar()->setValue(int(top - m_hourHeight / 2));
}

Grip WeekView::gripAt(int index, const QPoint& point) const {
    const QRect rect = blockRect(index);
    if (rect.height() < 3 * gripHeight) return Grip::Whole;
    if (point.y() > rect.bottom() - gripHeight) return Grip::End;
    return point.y() < rect.top() + gripHeight ? Grip::Begin : Grip::Whole;
}

LocalTime WeekView::timeAt(const QPoint& point) const {
    return m_layout.timeAt(QPointF(point.x(), point.y() - headHeight() + verticalScrollBar()->value()));
}

void WeekView::reveal(int index) {
    const QRectF rect = block(index).rect;
    const double seen = viewport()->height() - headHeight();
    QScrollBar* bar = verticalScrollBar();
    if (rect.top() < bar->value() || rect.height() > seen)
        bar->setValue(int(rect.top()) - 8);
    else if (rect.bottom() > bar->value() + seen)
        bar->setValue(int(rect.bottom() - seen) + 8);
}

void WeekView::revealGhost() {
    if (!ghost()) return;
    const QRectF rect = m_layout.rectOf(ghost()->start, ghost()->duration);
    const double seen = viewport()->height() - headHeight();
    QScrollBar* bar = verticalScrollBar();
    if (rect.top() < bar->value())
        bar->setValue(int(rect.top()) - 8);
    else if (rect.top() > bar->value() + seen - 40)
        bar->setValue(int(rect.top() - seen) + 60);
}

/// With its job strip, so that the panel beside it leaves the jobs in sight.
QRectF WeekView::ghostRect() const {
    if (!ghost()) return {};
    QRectF rect = m_layout.rectOf(ghost()->start, ghost()->duration);
    const QRectF column = m_layout.column(m_layout.dayOf(ghost()->start));
    rect.setLeft(column.left());
    rect.setRight(column.right());
    return toViewport(rect);
}

void WeekView::wheelEvent(QWheelEvent* event) {
    if (!(event->modifiers() & Qt::ControlModifier)) {
        DiaryView::wheelEvent(event);
        return;
    }
    const double anchor = event->position().y() - headHeight();
    const double held = (anchor + verticalScrollBar()->value()) / m_hourHeight;
    m_hourHeight = qBound(lowestHour, m_hourHeight * std::pow(1.15, event->angleDelta().y() / 120.0), highestHour);
    prepare();
    verticalScrollBar()->setValue(int(held * m_hourHeight - anchor));
    event->accept();
}

}  // namespace laneward
