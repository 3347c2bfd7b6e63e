// A ghost shows where a block would stand while it is dragged, stretched or pushed by keys; nothing changes before it is let go,
// and Esc leaves no trace. The hand that holds it knows wall times and keys, but no pixels of the view.
//
// Keys: Space picks up, then arrows push by a quarter of an hour or a day, and Shift+Up and Down stretch; Alt with the arrows
// picks up and pushes at once. Shift while dragging goes by five minutes.
#pragma once

#include "core/base/zone.h"

#include <QPoint>
#include <QString>

#include <optional>

class QKeyEvent;

namespace laneward {

struct Ghost {
    QString key;      ///< of the block
    LocalTime start;  ///< in the centre's wall time
    Seconds duration;
    friend bool operator==(const Ghost&, const Ghost&) = default;
};

enum class Grip { Whole, Begin, End };

class GhostHand {
public:
    enum class Steps { Minutes, Days };  ///< whole days where a view tells no finer times

    const std::optional<Ghost>& ghost() const { return m_ghost; }
    bool holds() const { return m_held.has_value(); }  ///< the button went down on something that can be moved

    /// The button went down on `block`, which stands where it is; nothing when it cannot be moved.
    void press(std::optional<Ghost> block, Grip grip, const QPoint& point, const LocalTime& at);
    /// True when there is another ghost than before.
    bool drag(const QPoint& point, const LocalTime& at, Steps steps, bool fine);
    /// The ghost, when it was let go elsewhere than it was taken.
    std::optional<Ghost> release();
    /// True when the key has pushed, stretched or picked up; `block` is what the keys are on. `stretches` is false for what has
    /// a fixed length.
    bool push(const QKeyEvent& event, const std::optional<Ghost>& block, bool mirrored, bool stretches = true);
    /// True when there was a ghost.
    bool clear();

private:
    bool show(const Ghost& ghost);

    std::optional<Ghost> m_ghost;
    std::optional<Ghost> m_held;  ///< as it was when the button went down
    LocalTime m_grabbed;
    QPoint m_pressed;
    Grip m_grip = Grip::Whole;
    bool m_dragging = false;
    bool m_picked = false;  ///< by Space
};

}  // namespace laneward
