#include "app/widgets/ghost.h"

#include <QApplication>
#include <QKeyEvent>

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

}  // namespace

bool GhostHand::show(const Ghost& ghost) {
    if (ghost.duration < fineStep || m_ghost == ghost) return false;
    m_ghost = ghost;
    return true;
}

bool GhostHand::clear() {
    m_held.reset();
    m_dragging = false;
    m_picked = false;
    const bool had = m_ghost.has_value();
    m_ghost.reset();
    return had;
}

void GhostHand::press(std::optional<Ghost> block, Grip grip, const QPoint& point, const LocalTime& at) {
    m_held = std::move(block);
    m_grip = grip;
    m_pressed = point;
    m_grabbed = at;
}

bool GhostHand::drag(const QPoint& point, const LocalTime& at, Steps steps, bool fine) {
    if (!m_held) return false;
    if ((point - m_pressed).manhattanLength() >= QApplication::startDragDistance()) m_dragging = true;
    if (!m_dragging) return false;
    Ghost ghost = *m_held;
    if (steps == Steps::Days) {
        ghost.start.date = ghost.start.date.addDays(m_grabbed.date.daysTo(at.date));
        return show(ghost);
    }
    const Seconds by = rounded(between(m_grabbed, at), fine ? fineStep : coarse);
    if (m_grip != Grip::End) ghost.start = shifted(ghost.start, by);
    if (m_grip == Grip::Begin) ghost.duration -= by;
    if (m_grip == Grip::End) ghost.duration += by;
    return show(ghost);
}

std::optional<Ghost> GhostHand::release() {
    const bool moved = m_dragging && m_ghost && m_held && *m_ghost != *m_held;
    m_held.reset();
    m_dragging = false;
    return moved ? m_ghost : std::nullopt;
}

bool GhostHand::push(const QKeyEvent& event, const std::optional<Ghost>& block, bool mirrored, bool stretches) {
    std::optional<Ghost> ghost = m_ghost ? m_ghost : block;
    if (!ghost) return false;
    if (event.key() == Qt::Key_Space && event.modifiers() == Qt::NoModifier) {
        m_picked = true;
        return show(*ghost) || m_ghost;
    }
    if (!m_picked && !(event.modifiers() & Qt::AltModifier)) return false;
    const bool stretch = event.modifiers() & Qt::ShiftModifier;
    if (stretch && !stretches) return false;
    const bool onward = event.key() == (mirrored ? Qt::Key_Left : Qt::Key_Right);
    switch (event.key()) {
        case Qt::Key_Up:
        case Qt::Key_Down: {
            const Seconds by = event.key() == Qt::Key_Down ? coarse : -coarse;
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

}  // namespace laneward
