#include "app/pages/calendar/diary_view.h"

#include "app/widgets/time_formats.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>

namespace laneward {

namespace {

constexpr Seconds coarse = minutes(15);
constexpr Seconds fineStep = minutes(5);

Seconds between(const LocalTime& from, const LocalTime& to) {
    return Seconds{from.date.daysTo(to.date) * 86'400 + from.time.secsTo(to.time)};
}

Seconds rounded(Seconds by, Seconds step) {
    const std::int64_t half = by.value >= 0 ? step.value / 2 : -step.value / 2;
    return Seconds{(by.value + half) / step.value * step.value};
}

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
    m_held.reset();
    m_dragging = false;
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

void DiaryView::show(const Ghost& ghost) {
    if (ghost.duration < fineStep) return;
    m_ghost = ghost;
    const LocalTime end = shifted(ghost.start, ghost.duration);
    const QString day = shortDay(ghost.start.date, m_speech.locale);
    const auto clock = [this](QTime t) { return clockText(t, m_speech.locale); };
    Q_EMIT ghostChanged(
        tr("%1, %2 to %3: Enter keeps it, Esc leaves it as it was").arg(day, clock(ghost.start.time), clock(end.time)));
    revealGhost();
    viewport()->update();
}

void DiaryView::clearGhost() {
    m_held.reset();
    m_dragging = false;
    if (!m_ghost) return;
    m_ghost.reset();
    Q_EMIT ghostChanged({});
    viewport()->update();
}

bool DiaryView::push(QKeyEvent* event) {
    const bool stretch = event->modifiers() & Qt::ShiftModifier;
    std::optional<Ghost> ghost = m_ghost ? m_ghost : ghostOf(current());
    if (!(event->modifiers() & Qt::AltModifier) || !ghost) return false;
    const bool onward = event->key() == (mirrored() ? Qt::Key_Left : Qt::Key_Right);
    switch (event->key()) {
        case Qt::Key_Up:
        case Qt::Key_Down: {
            const Seconds by = event->key() == Qt::Key_Down ? coarse : -coarse;
            if (stretch)
                ghost->duration += by;
            else
                ghost->start = shifted(ghost->start, by);
            break;
        }
        case Qt::Key_Left:
        case Qt::Key_Right:
            ghost->start.date = ghost->start.date.addDays(onward ? 1 : -1);
            break;
        default:
            return false;
    }
    show(*ghost);
    return true;
}

void DiaryView::keyPressEvent(QKeyEvent* event) {
    if (isModifier(event->key())) return event->ignore();  // on the way to Alt+Shift+Up, nothing is given up
    if (push(event)) return;
    const bool plain = event->modifiers() == Qt::NoModifier || event->modifiers() == Qt::KeypadModifier;
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape && (m_ghost || m_held)) {
        clearGhost();
    } else if (enter && m_ghost) {
        Q_EMIT moveAsked(*m_ghost);
    } else if (event->key() == Qt::Key_N && plain && m_movable) {
        Q_EMIT newAsked(proposedStart());
    } else if (event->key() == Qt::Key_Delete && current() >= 0 && m_movable) {
        Q_EMIT removeAsked(current());
    } else {
        if (m_ghost) clearGhost();
        BlockView::keyPressEvent(event);
    }
}

void DiaryView::mousePressEvent(QMouseEvent* event) {
    if (m_ghost) clearGhost();
    BlockView::mousePressEvent(event);
    if (event->button() != Qt::LeftButton) return;
    m_pressed = event->position().toPoint();
    m_held = ghostOf(current());
    if (!m_held) return;
    m_grip = gripAt(current(), m_pressed);
    m_grabbed = timeAt(m_pressed);
}

void DiaryView::mouseMoveEvent(QMouseEvent* event) {
    const QPoint point = event->position().toPoint();
    if (!(event->buttons() & Qt::LeftButton) || !m_held) {
        BlockView::mouseMoveEvent(event);
        const Grip grip = hovered() >= 0 && ghostOf(hovered()) ? gripAt(hovered(), point) : Grip::Whole;
        viewport()->setCursor(grip == Grip::Whole ? Qt::ArrowCursor : Qt::SizeVerCursor);
        return;
    }
    if ((point - m_pressed).manhattanLength() >= QApplication::startDragDistance()) m_dragging = true;
    if (m_dragging) drag(point, event->modifiers() & Qt::ShiftModifier);
}

void DiaryView::drag(const QPoint& point, bool fine) {
    const Seconds by = rounded(between(m_grabbed, timeAt(point)), fine ? fineStep : coarse);
    Ghost ghost = *m_held;
    if (m_grip != Grip::End) ghost.start = shifted(ghost.start, by);
    if (m_grip == Grip::Begin) ghost.duration -= by;
    if (m_grip == Grip::End) ghost.duration += by;
    show(ghost);
}

void DiaryView::mouseReleaseEvent(QMouseEvent*) {
    const bool moved = m_dragging && m_ghost && m_held && *m_ghost != *m_held;
    if (m_dragging && !moved) clearGhost();
    m_held.reset();
    m_dragging = false;
    if (moved) Q_EMIT moveAsked(Ghost(*m_ghost));
}

void DiaryView::mouseDoubleClickEvent(QMouseEvent* event) {
    const int under = blockAt(event->position().toPoint());
    if (under >= 0)
        BlockView::mouseDoubleClickEvent(event);
    else if (m_movable)
        Q_EMIT newAsked(timeAt(event->position().toPoint()));
}

void DiaryView::resizeEvent(QResizeEvent*) { prepare(); }

void DiaryView::changeEvent(QEvent* event) {
    BlockView::changeEvent(event);
    const bool looks = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
                       event->type() == QEvent::LayoutDirectionChange || event->type() == QEvent::StyleChange;
    if (looks && m_data.lanes > 0) prepare();
}

}  // namespace laneward
