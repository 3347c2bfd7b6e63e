// The building as a map: lanes across as one sees them from the approach, time down, events as blocks that stand on their lanes
// and jobs as low bars that cross them. One look shows what lies between two events.
//
// Keys: arrows walk over the blocks, Enter opens one, + and - zoom, Ctrl+wheel zooms at the pointer. A click beside the blocks
// asks for the lanes' state at that moment. An event can be dragged along the time and stretched, a proposed job can be dragged;
// see ghost.h for the keys. Nothing changes before moveAsked(), and Esc leaves no trace.
//
//     HouseView view;
//     view.setData(houseData({season, plan, speech}, now), speech);
#pragma once

#include "app/widgets/block_view.h"
#include "app/widgets/difference_marks.h"
#include "app/widgets/ghost.h"

namespace laneward {

class HouseView : public BlockView {
    Q_OBJECT

public:
    explicit HouseView(QWidget* parent = nullptr);

    void setData(HouseData data, const Speech& speech);
    /// New heads at a chosen moment, everything else as it is.
    void setBands(std::vector<LaneBand> bands, const QString& title, std::optional<Instant> at);
    void setNow(Instant now);
    const HouseData& data() const { return m_data; }
    const HouseLayout& layout() const { return m_layout; }

    HouseZoom zoom() const { return m_zoom; }
    void setZoom(HouseZoom zoom);
    void scrollTo(Instant t);
    /// The item that a block stands for; nothing for a lane head.
    const HouseItem* itemOf(int index) const;
    const LaneBand* bandOf(int index) const;
    void setMovable(bool movable) { m_movable = movable; }
    const std::optional<Ghost>& ghost() const { return m_hand.ghost(); }
    void clearGhost();
    /// Something is dragged, or may be next.
    bool isHolding() const { return ghost() || m_hand.holds(); }
    /// What the ghost would do to the jobs: gone with the ghost.
    void showDifference(std::vector<DifferenceMark> marks);
    QRectF toViewport(const QRectF& content) const override;
    QSize minimumSizeHint() const override { return {360, 240}; }

Q_SIGNALS:
    void held();  ///< the button went down on what may be dragged next
    void ghostMoved(const laneward::Ghost& ghost);
    void ghostCleared();
    void letGo();  ///< nothing is held any more
    void moveAsked(const laneward::Ghost& ghost);
    void zoomChanged(laneward::HouseZoom zoom);
    void momentChosen(qint64 secondsSince1970);  ///< a click beside the blocks

protected:
    void reveal(int index) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    std::optional<Ghost> ghostOf(int index) const;
    Grip gripAt(int index, const QPoint& point) const;
    LocalTime wallAt(const QPoint& point) const;
    bool inRange(const Ghost& ghost) const;
    void ghostHasMoved();
    std::optional<HouseItem> ghostItem() const;
    bool pushGhost(QKeyEvent* event);
    void paintDifference(QPainter& painter);
    void paintGhost(QPainter& painter);
    void prepare();
    void prepareBlocks();
    void prepareHeads();
    void setDayHeight(double height, double anchor);
    double headHeight() const;
    double viewHeight() const;
    bool mirrored() const { return layoutDirection() == Qt::RightToLeft; }
    void paintTicks(QPainter& painter);
    void paintItems(QPainter& painter);
    void paintHeads(QPainter& painter);
    void paintBand(QPainter& painter, size_t band);
    void paintMoment(QPainter& painter, Instant at, const QColor& colour, Qt::PenStyle style);
    void paintNumbers(QPainter& painter);

    HouseData m_data;
    GhostHand m_hand;
    std::vector<DifferenceMark> m_marks;
    bool m_movable = false;
    Speech m_speech;
    HouseZoom m_zoom = HouseZoom::Evening;
    double m_dayHeight = 0;
    std::optional<Instant> m_chosen;
    HouseInk m_ink;
    HouseLayout m_layout;
    std::vector<ItemText> m_texts;
    std::vector<QString> m_tickTexts;
    std::vector<std::array<QStaticText, 2>> m_bandTexts;
};

}  // namespace laneward
