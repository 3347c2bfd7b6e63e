#include "app/pages/calendar/diary_view.h"

#include "app/widgets/difference_panel.h"
#include "app/widgets/time_formats.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>

namespace laneward {

namespace {

bool isModifier(int key) {
    return key == Qt::Key_Shift || key == Qt::Key_Control || key == Qt::Key_Alt || key == Qt::Key_AltGr || key == Qt::Key_Meta;
}

}  // namespace

DiaryView::DiaryView(QWidget* parent) : BlockView(parent) {
    verticalScrollBar()->setSingleStep(24);
    setMinimumSize(360, 240);
}

void DiaryView::setData(HouseData data, const DateRange& days, QTime dayBegins, const Speech& speech) {
    m_data = std::move(data);
    m_days = days;
    m_begins = dayBegins;
    m_speech = speech;
    clearGhost();
    prepare();
}

void DiaryView::setItemBlocks(std::vector<Block> blocks, std::vector<int> items) {
    m_items = std::move(items);
    setBlocks(std::move(blocks));
}

const HouseItem* DiaryView::itemOf(int index) const {
    if (index < 0 || size_t(index) >= m_items.size() || m_items[size_t(index)] < 0) return nullptr;
    return &m_data.items[size_t(m_items[size_t(index)])];
}

int DiaryView::blockOfItem(size_t item) const {
    for (size_t i = 0; i < m_items.size(); ++i) {
        if (m_items[i] == int(item)) return int(i);
    }
    return -1;
}

LocalTime DiaryView::proposedStart() const {
    const HouseItem* item = itemOf(current());
    const QDate day = item ? m_data.zone.toLocal(item->time.begin).date : m_days.contains(m_today) ? m_today : m_days.first;
    return {day, QTime(19, 0)};
}

std::optional<Ghost> DiaryView::ghostOf(int index) const {
    const HouseItem* item = itemOf(index);
    if (!item || item->kind != HouseItem::Kind::Event || !m_movable) return std::nullopt;
    return Ghost{item->key, m_data.zone.toLocal(item->time.begin), item->time.length()};
}

void DiaryView::ghostHasMoved() {
    const Ghost moved = *ghost();
    const LocalTime end = shifted(moved.start, moved.duration);
    const QString day = shortDay(moved.start.date, m_speech.locale);
    const auto clock = [this](QTime t) { return clockText(t, m_speech.locale); };
    revealGhost();
    Q_EMIT ghostChanged(
        tr("%1, %2 to %3: Enter keeps it, Esc leaves it as it was").arg(day, clock(moved.start.time), clock(end.time)));
    Q_EMIT ghostMoved(moved);
    placePanel();
    viewport()->update();
}

void DiaryView::clearGhost() {
    const bool held = isHolding();
    const bool had = m_hand.clear();
    m_marks.clear();
    if (m_panel) m_panel->leave();
    if (had) {
        Q_EMIT ghostChanged({});
        viewport()->update();
    }
    if (held) Q_EMIT letGo();
}

DifferencePanel& DiaryView::panel() {
    if (!m_panel) m_panel = new DifferencePanel(this);
    return *m_panel;
}

void DiaryView::placePanel() {
    if (!ghost() || !m_panel) return;
    const QRect room = viewport()->geometry();
    const QRect stands = ghostRect().toAlignedRect().translated(viewport()->pos());
    if (keepsSidesFree())
        m_panel->standUnder(stands, room);
    else
        m_panel->standBeside(stands, room);
}

void DiaryView::awaitDifference(const QString& title) {
    if (!ghost()) return;
    panel().await(title);
    placePanel();
}

void DiaryView::showDifference(const DifferenceText& text, std::vector<DifferenceMark> marks) {
    if (!ghost()) return;
    m_marks = std::move(marks);
    panel().show(text);
    placePanel();
    viewport()->update();
}

void DiaryView::keyPressEvent(QKeyEvent* event) {
    if (isModifier(event->key())) return event->ignore();  // on the way to Alt+Shift+Up, nothing is given up
    if (m_hand.push(*event, ghostOf(current()), mirrored())) return ghostHasMoved();
    const bool plain = event->modifiers() == Qt::NoModifier || event->modifiers() == Qt::KeypadModifier;
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape && (ghost() || m_hand.holds())) {
        clearGhost();
    } else if (enter && ghost()) {
        Q_EMIT moveAsked(Ghost(*ghost()));
    } else if (event->key() == Qt::Key_N && plain && m_movable) {
        Q_EMIT newAsked(proposedStart());
    } else if (event->key() == Qt::Key_Delete && current() >= 0 && m_movable) {
        Q_EMIT removeAsked(current());
    } else {
        if (ghost()) clearGhost();
        BlockView::keyPressEvent(event);
    }
}

void DiaryView::mousePressEvent(QMouseEvent* event) {
    if (ghost()) clearGhost();
    BlockView::mousePressEvent(event);
    if (event->button() != Qt::LeftButton) return;
    const QPoint point = event->position().toPoint();
    const std::optional<Ghost> block = ghostOf(current());
    if (!block) return;
    m_hand.press(block, gripAt(current(), point), point, timeAt(point));
    Q_EMIT held();
}

void DiaryView::mouseMoveEvent(QMouseEvent* event) {
    const QPoint point = event->position().toPoint();
    if (!(event->buttons() & Qt::LeftButton) || !m_hand.holds()) {
        BlockView::mouseMoveEvent(event);
        const Grip grip = hovered() >= 0 && ghostOf(hovered()) ? gripAt(hovered(), point) : Grip::Whole;
        viewport()->setCursor(grip == Grip::Whole ? Qt::ArrowCursor : Qt::SizeVerCursor);
        return;
    }
    const bool fine = event->modifiers() & Qt::ShiftModifier;
    if (m_hand.drag(point, timeAt(point), GhostHand::Steps::Minutes, fine)) ghostHasMoved();
}

void DiaryView::mouseReleaseEvent(QMouseEvent*) {
    if (!m_hand.holds()) return;
    if (const std::optional<Ghost> moved = m_hand.release()) {
        Q_EMIT moveAsked(*moved);
    } else {
        clearGhost();
        Q_EMIT letGo();
    }
}

void DiaryView::mouseDoubleClickEvent(QMouseEvent* event) {
    const int under = blockAt(event->position().toPoint());
    if (under >= 0)
        BlockView::mouseDoubleClickEvent(event);
    else if (m_movable)
        Q_EMIT newAsked(timeAt(event->position().toPoint()));
}

void DiaryView::resizeEvent(QResizeEvent*) {
    prepare();
    placePanel();
}

void DiaryView::scrollContentsBy(int dx, int dy) {
    BlockView::scrollContentsBy(dx, dy);
    placePanel();
}

void DiaryView::changeEvent(QEvent* event) {
    BlockView::changeEvent(event);
    const bool looks = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
                       event->type() == QEvent::LayoutDirectionChange || event->type() == QEvent::StyleChange;
    if (looks && m_data.lanes > 0) prepare();
}

}  // namespace laneward
