// What month, week and day have in common: blocks for events and, more quietly, jobs; an event can be dragged, stretched or
// pushed by keys. While that goes on a ghost shows where it would stand, with what that would do beside it; nothing changes
// before moveAsked(), and Esc leaves no trace.
//
// Keys: Space picks an event up and arrows push it by a quarter of an hour or a day, Alt+arrows do both at once, with Shift they
// stretch; Enter keeps, Esc leaves; N creates, Delete takes away. Shift while dragging goes by five minutes.
#pragma once

#include "app/widgets/block_view.h"
#include "app/widgets/difference_marks.h"
#include "app/widgets/ghost.h"

namespace laneward {

class DifferencePanel;

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
    const std::optional<Ghost>& ghost() const { return m_hand.ghost(); }
    void clearGhost();
    /// Something is dragged, or may be next.
    bool isHolding() const { return ghost() || m_hand.holds(); }
    /// What the ghost would do: a panel beside it, and the jobs as a second layer. Gone with the ghost.
    void showDifference(const DifferenceText& text, std::vector<DifferenceMark> marks);
    /// The answer to another question is on its way; what is shown belongs to the one before.
    void awaitDifference(const QString& title);
    /// A time for a new event: at the current block's day, else on the first day shown.
    virtual LocalTime proposedStart() const;
    int blockOfItem(size_t item) const;

Q_SIGNALS:
    void held();                                    ///< the button went down on an event: it may be dragged next
    void ghostMoved(const laneward::Ghost& ghost);  ///< it would stand elsewhere than before
    void moveAsked(const laneward::Ghost& ghost);
    void newAsked(const laneward::LocalTime& start);
    void removeAsked(int index);
    void dayAsked(QDate day);
    void letGo();                             ///< nothing is held any more
    void ghostChanged(const QString& words);  ///< where it would go, for the status line; empty = nowhere

protected:
    virtual void prepare() = 0;  ///< lay out again
    virtual Grip gripAt(int index, const QPoint& point) const = 0;
    /// Wall time under a point, as far as the view tells times.
    virtual LocalTime timeAt(const QPoint& point) const = 0;
    virtual void revealGhost() {}
    /// Where the ghost stands, on the viewport.
    virtual QRectF ghostRect() const = 0;
    /// The days beside the ghost are those that change: the panel then stands under it.
    virtual bool keepsSidesFree() const { return false; }
    const std::vector<DifferenceMark>& marks() const { return m_marks; }

    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
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
    void ghostHasMoved();
    DifferencePanel& panel();
    void placePanel();

    std::vector<int> m_items;  ///< by block; -1 = none
    GhostHand m_hand;
    std::vector<DifferenceMark> m_marks;
    DifferencePanel* m_panel = nullptr;
    bool m_movable = true;
};

}  // namespace laneward
