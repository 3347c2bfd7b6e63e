// What month, week and day have in common: blocks for events and, more quietly, jobs; an event can be dragged, stretched or
// pushed by keys. While that goes on a ghost shows where it would stand; nothing changes before moveAsked(), and Esc leaves no
// trace.
//
// Keys: Alt+arrows push by a quarter of an hour or a day, Alt+Shift+Up and Down stretch, Enter keeps, Esc leaves; N creates,
// Delete takes away. Shift while dragging goes by five minutes.
#pragma once

#include "app/widgets/block_view.h"
#include "app/widgets/house_painter.h"

#include <optional>

namespace laneward {

struct Ghost {
    QString key;      ///< of the event
    LocalTime start;  ///< in the centre's wall time
    Seconds duration;
    friend bool operator==(const Ghost&, const Ghost&) = default;
};

class DiaryView : public BlockView {
    Q_OBJECT

public:
    explicit DiaryView(QWidget* parent = nullptr);

    void setData(HouseData data, const DateRange& days, QTime dayBegins, const Speech& speech);
    const HouseData& data() const { return m_data; }
    /// The item that a block stands for, or nothing.
    const HouseItem* itemOf(int index) const;
    void setToday(QDate today) { m_today = today; }
    void setMovable(bool movable) { m_movable = movable; }
    const std::optional<Ghost>& ghost() const { return m_ghost; }
    void clearGhost();
    /// A time for a new event: at the current block's day, else on the first day shown.
    virtual LocalTime proposedStart() const;
    int blockOfItem(size_t item) const;

Q_SIGNALS:
    void moveAsked(const laneward::Ghost& ghost);
    void newAsked(const laneward::LocalTime& start);
    void removeAsked(int index);
    void dayAsked(QDate day);
    void ghostChanged(const QString& words);  ///< where it would go, for the status line; empty = nowhere

protected:
    enum class Grip { Whole, Begin, End };

    virtual void prepare() = 0;  ///< lay out again
    virtual Grip gripAt(int index, const QPoint& point) const = 0;
    /// Wall time under a point, as far as the view tells times.
    virtual LocalTime timeAt(const QPoint& point) const = 0;
    virtual void revealGhost() {}

    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void setItemBlocks(std::vector<Block> blocks, std::vector<int> items);
    bool mirrored() const { return layoutDirection() == Qt::RightToLeft; }

    HouseData m_data;
    DateRange m_days;
    QTime m_begins{5, 0};
    Speech m_speech;
    QDate m_today;
    HouseInk m_ink;

private:
    std::optional<Ghost> ghostOf(int index) const;
    void show(const Ghost& ghost);
    bool push(QKeyEvent* event);
    void drag(const QPoint& point, bool fine);

    std::vector<int> m_items;  ///< by block; -1 = none
    std::optional<Ghost> m_ghost;
    std::optional<Ghost> m_held;  ///< as it was when the button went down
    LocalTime m_grabbed;
    QPoint m_pressed;
    Grip m_grip = Grip::Whole;
    bool m_movable = true;
    bool m_dragging = false;
};

}  // namespace laneward
