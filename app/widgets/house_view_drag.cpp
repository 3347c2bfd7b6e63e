#include "app/widgets/house_view.h"

#include "app/widgets/time_formats.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>

namespace laneward {

namespace {

constexpr double gripHeight = 7;

bool isModifier(int key) {
    return key == Qt::Key_Shift || key == Qt::Key_Control || key == Qt::Key_Alt || key == Qt::Key_AltGr || key == Qt::Key_Meta;
}

}  // namespace

std::optional<Ghost> HouseView::ghostOf(int index) const {
    const HouseItem* item = itemOf(index);
    if (!item || !m_movable) return std::nullopt;
    const bool job = item->kind == HouseItem::Kind::Job && !item->log && item->state == JobState::Proposed;
    if (!job && item->kind != HouseItem::Kind::Event) return std::nullopt;
    return Ghost{item->key, m_data.zone.toLocal(item->time.begin), item->time.length()};
}

/// A job takes as long as it takes: only events can be stretched.
Grip HouseView::gripAt(int index, const QPoint& point) const {
    const HouseItem* item = itemOf(index);
    const QRect rect = blockRect(index);
    if (!item || item->kind != HouseItem::Kind::Event || m_layout.isRows() || rect.height() < 3 * gripHeight) return Grip::Whole;
    if (point.y() > rect.bottom() - gripHeight) return Grip::End;
    return point.y() < rect.top() + gripHeight ? Grip::Begin : Grip::Whole;
}

LocalTime HouseView::wallAt(const QPoint& point) const {
    return m_data.zone.toLocal(m_layout.timeAt(point.y() - headHeight() + verticalScrollBar()->value()));
}

bool HouseView::inRange(const Ghost& ghost) const { return m_data.range.contains(m_data.zone.toInstant(ghost.start)); }

void HouseView::ghostHasMoved() {
    if (const std::optional<HouseItem> item = ghostItem()) {
        const QRectF rect = m_layout.placeOf(*item, m_data).rect;
        QScrollBar* bar = verticalScrollBar();
        if (rect.top() < bar->value())
            bar->setValue(int(rect.top()) - 12);
        else if (rect.top() > bar->value() + viewHeight() - 40)
            bar->setValue(int(rect.top() - viewHeight()) + 60);
    }
    Q_EMIT ghostMoved(Ghost(*ghost()));
    viewport()->update();
}

void HouseView::clearGhost() {
    const bool held = isHolding();
    const bool had = m_hand.clear();
    m_marks.clear();
    if (had) {
        viewport()->update();
        Q_EMIT ghostCleared();
    }
    if (held) Q_EMIT letGo();
}

void HouseView::showDifference(std::vector<DifferenceMark> marks) {
    if (!ghost()) return;
    m_marks = std::move(marks);
    viewport()->update();
}

/// The dragged item at the place of its ghost.
std::optional<HouseItem> HouseView::ghostItem() const {
    if (!ghost()) return std::nullopt;
    for (const HouseItem& item : m_data.items) {
        if (item.key != ghost()->key) continue;
        HouseItem moved = item;
        moved.time.begin = m_data.zone.toInstant(ghost()->start);
        moved.time.end = moved.time.begin + ghost()->duration;
        return moved;
    }
    return std::nullopt;
}

bool HouseView::pushGhost(QKeyEvent* event) {
    if (isModifier(event->key())) {
        event->ignore();  // on the way to Alt+Shift+Up, nothing is given up
        return true;
    }
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape && (ghost() || m_hand.holds())) {
        clearGhost();
        return true;
    }
    if (enter && ghost()) {
        Q_EMIT moveAsked(Ghost(*ghost()));
        return true;
    }
    const HouseItem* item = itemOf(current());
    const GhostHand before = m_hand;
    if (!m_hand.push(*event, ghostOf(current()), mirrored(), item && item->kind == HouseItem::Kind::Event)) {
        if (ghost()) clearGhost();
        return false;
    }
    if (inRange(*ghost()))
        ghostHasMoved();
    else
        m_hand = before;
    return true;
}

void HouseView::mousePressEvent(QMouseEvent* event) {
    if (ghost()) clearGhost();
    BlockView::mousePressEvent(event);
    if (event->button() != Qt::LeftButton) return;
    const QPoint point = event->position().toPoint();
    if (const std::optional<Ghost> block = ghostOf(current())) {
        m_hand.press(block, gripAt(current(), point), point, wallAt(point));
        Q_EMIT held();
    }
    const double y = point.y() - headHeight();
    if (current() < 0 && y >= 0) Q_EMIT momentChosen(m_layout.timeAt(y + verticalScrollBar()->value()).seconds);
}

void HouseView::mouseMoveEvent(QMouseEvent* event) {
    const QPoint point = event->position().toPoint();
    if (!(event->buttons() & Qt::LeftButton) || !m_hand.holds()) {
        BlockView::mouseMoveEvent(event);
        const Grip grip = hovered() >= 0 && ghostOf(hovered()) ? gripAt(hovered(), point) : Grip::Whole;
        viewport()->setCursor(grip == Grip::Whole ? Qt::ArrowCursor : Qt::SizeVerCursor);
        return;
    }
    const auto steps = m_layout.isRows() ? GhostHand::Steps::Days : GhostHand::Steps::Minutes;
    const GhostHand before = m_hand;
    if (!m_hand.drag(point, wallAt(point), steps, event->modifiers() & Qt::ShiftModifier)) return;
    if (inRange(*ghost()))
        ghostHasMoved();
    else
        m_hand = before;
}

void HouseView::mouseReleaseEvent(QMouseEvent* event) {
    event->accept();
    if (!m_hand.holds()) return;
    if (const std::optional<Ghost> moved = m_hand.release()) {
        Q_EMIT moveAsked(*moved);
    } else {
        clearGhost();
        Q_EMIT letGo();
    }
}

void HouseView::paintDifference(QPainter& painter) {
    DifferencePainter second(painter, m_ink);
    std::optional<QRectF> from;
    for (const DifferenceMark& mark : m_marks) {
        const std::optional<QRectF> old = std::exchange(from, std::nullopt);
        if (!mark.item.time.overlaps(m_data.range)) continue;
        const HouseLayout::Placed place = m_layout.placeOf(mark.item, m_data);
        second.mark(mark, place);
        if (mark.kind == DifferenceMark::Kind::MovedFrom) from = place.rect;
        if (old && mark.kind == DifferenceMark::Kind::MovedTo) second.arrow(*old, place.rect);
    }
}

void HouseView::paintGhost(QPainter& painter) {
    const std::optional<HouseItem> item = ghostItem();
    if (!item) return;
    const QString begin = clockTime(item->time.begin, m_speech);
    const QString words =
        item->kind == HouseItem::Kind::Job ? begin : tr("%1 to %2").arg(begin, clockTime(item->time.end, m_speech));
    const HouseLayout::Placed place = m_layout.placeOf(*item, m_data);
    for (const QRectF& part : place.parts)
        paintGhostBlock(painter, part, m_ink, m_layout.isRows() || part != place.rect ? QString() : words);
}

}  // namespace laneward
