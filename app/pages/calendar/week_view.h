// Day and week: one column a day, time down; see DiaryView for what can be done with the blocks.
#pragma once

#include "app/pages/calendar/diary_view.h"
#include "app/pages/calendar/week_layout.h"

namespace laneward {

class WeekView : public DiaryView {
    Q_OBJECT

public:
    explicit WeekView(QWidget* parent = nullptr);

    const WeekLayout& layout() const { return m_layout; }
    QRectF toViewport(const QRectF& content) const override;
    /// Brings the busy part of the day into view.
    void scrollToBusyPart();

protected:
    void prepare() override;
    Grip gripAt(int index, const QPoint& point) const override;
    LocalTime timeAt(const QPoint& point) const override;
    void revealGhost() override;
    QRectF ghostRect() const override;
    void reveal(int index) override;
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    double headHeight() const;
    void prepareBlocks();
    void paintHeads(QPainter& painter);
    void paintHours(QPainter& painter);
    void paintItem(QPainter& painter, size_t item);
    void paintEventText(QPainter& painter, const HouseItem& item, const QRectF& rect);
    double paintLines(QPainter& painter, const QRectF& room, const QString& words, bool strong);
    void paintGhost(QPainter& painter);
    void paintDifference(QPainter& painter);
    void paintNow(QPainter& painter);

    WeekLayout m_layout;
    double m_hourHeight = 46;
};

}  // namespace laneward
