// Values over time with their centre line and limits. A value is chosen by the mouse or by the arrow keys; what signals is a
// diamond, what the limits were made from a hollow circle, the rest full circles. Time runs to the right in every language.
//
//     chart.show({.points = points, .lines = lines, .unit = tr("poured over nominal"), .decimals = 2}, locale);
#pragma once

#include "core/base/zone.h"

#include <QChartView>
#include <QLocale>

QT_BEGIN_NAMESPACE
class QDateTimeAxis;
class QValueAxis;
QT_END_NAMESPACE

namespace laneward {

enum class PointMark { Plain, Hollow, Signal };

struct ChartPoint {
    double x = 0;  ///< as wallTime() gives it
    double y = 0;
    PointMark mark = PointMark::Plain;
    QString spoken;  ///< a whole sentence
};

enum class LineLook { Values, Centre, Limit };

struct ChartLine {
    LineLook look = LineLook::Values;
    QList<QPointF> points;
};

struct ChartContent {
    std::vector<ChartPoint> points;  ///< by x
    std::vector<ChartLine> lines;
    QString unit;  ///< beside the axis
    int decimals = 2;
};

/// The centre's wall time as the axis wants it, so that its days are the centre's whatever the computer's zone.
double wallTime(Instant t, const Zone& zone);

class PointChart : public QChartView {
    Q_OBJECT

public:
    explicit PointChart(QWidget* parent = nullptr);

    void show(ChartContent content, const QLocale& locale);
    int current() const { return m_current; }  ///< -1 = none
    void setCurrent(int point);
    int pointCount() const { return int(m_content.points.size()); }
    QPoint positionOf(int point) const;  ///< on the viewport
    QSize sizeHint() const override { return {500, 260}; }

Q_SIGNALS:
    void pointChosen(int point);

protected:
    void drawForeground(QPainter* painter, const QRectF& rect) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void applyColours();
    void fitAxes();
    QPointF placeOf(const ChartPoint& point) const;
    void chooseNear(const QPoint& place);

    ChartContent m_content;
    QDateTimeAxis* m_time;
    QValueAxis* m_value;
    QLocale m_locale;
    int m_current = -1;
};

}  // namespace laneward
