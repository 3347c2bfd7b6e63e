// A curve with its band, points beside it and upright marks. A place on it is chosen by the mouse or by the arrow keys (ten by
// the page keys), and told in words. Ages run to the right in every language.
#pragma once

#include "core/statistics/least_squares.h"

#include <QPolygonF>
#include <QString>
#include <QWidget>

#include <vector>

namespace laneward {

struct PlotTick {
    double at = 0;
    QString words;
};

struct PlotMark {
    double x = 0;
    QString words;
    bool isBest = false;  ///< full, and its triangle stands on the axis; others are dashed
};

/// A place that can be chosen.
struct PlotStop {
    QPointF at;
    QString spoken;
};

/// In the plot's own scale: whoever fills it has taken logarithms where it wants them.
struct PlotContent {
    QString title;
    Interval x{0, 1};
    Interval y{0, 1};
    std::vector<PlotTick> xTicks;
    std::vector<PlotTick> yTicks;
    QPolygonF band;  ///< closed
    QPolygonF line;
    std::vector<QPointF> points;
    std::vector<PlotMark> marks;
    std::vector<PlotStop> stops;  ///< by x
    QString empty;                ///< what is said in place of a plot without a line and points
};

class PlotView : public QWidget {
    Q_OBJECT

public:
    explicit PlotView(QWidget* parent = nullptr);

    void show(PlotContent content);
    int current() const { return m_current; }  ///< -1 = none
    void setCurrent(int stop);
    int stopCount() const { return int(m_content.stops.size()); }
    QString spoken(int stop) const;
    QPointF placeOf(const QPointF& at) const;  ///< where it is painted
    const PlotContent& content() const { return m_content; }
    QSize sizeHint() const override { return {360, 250}; }
    QSize minimumSizeHint() const override { return {220, 150}; }

Q_SIGNALS:
    void chosen(const QString& spoken);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QRectF area() const;
    void paintScale(QPainter& painter) const;
    void paintCurve(QPainter& painter) const;
    void paintMarks(QPainter& painter) const;
    void paintChosen(QPainter& painter) const;

    PlotContent m_content;
    int m_current = -1;
};

}  // namespace laneward
