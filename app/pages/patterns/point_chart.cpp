#include "app/pages/patterns/point_chart.h"

#include "app/widgets/shades.h"

#include <QAccessible>
#include <QChart>
#include <QDateTimeAxis>
#include <QGraphicsLayout>
#include <QKeyEvent>
#include <QLineSeries>
#include <QMouseEvent>
#include <QValueAxis>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double plainRadius = 3;
constexpr double signalRadius = 6;
constexpr double reach = 40;  ///< pixels within which the mouse finds a value
constexpr qint64 hour = 3'600'000;

}  // namespace

double wallTime(Instant t, const Zone& zone) {
    const LocalTime local = zone.toLocal(t);
    return double(QDateTime(local.date, local.time).toMSecsSinceEpoch());
}

PointChart::PointChart(QWidget* parent)
    : QChartView(new QChart, parent), m_time(new QDateTimeAxis(this)), m_value(new QValueAxis(this)) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setLayoutDirection(Qt::LeftToRight);
    setFrameShape(QFrame::NoFrame);
    setRenderHint(QPainter::Antialiasing);
    chart()->legend()->hide();
    chart()->setMargins({});
    chart()->layout()->setContentsMargins(0, 0, 0, 0);
    chart()->setBackgroundRoundness(0);
    chart()->setLocalizeNumbers(true);
    chart()->addAxis(m_time, Qt::AlignBottom);
    chart()->addAxis(m_value, Qt::AlignLeft);
    m_time->setTickCount(5);
    m_value->setTickCount(5);
    applyColours();
}

void PointChart::show(ChartContent content, const QLocale& locale) {
    m_content = std::move(content);
    m_locale = locale;
    m_current = std::min(m_current, pointCount() - 1);
    chart()->setLocale(locale);
    chart()->removeAllSeries();
    m_time->setFormat(locale.dateFormat(QLocale::ShortFormat));
    m_value->setTitleText(m_content.unit);
    m_value->setLabelFormat(QStringLiteral("%.%1f").arg(m_content.decimals));
    for (const ChartLine& line : m_content.lines) {
        auto* series = new QLineSeries;
        series->append(line.points);
        series->setProperty("look", int(line.look));
        chart()->addSeries(series);
        series->attachAxis(m_time);
        series->attachAxis(m_value);
    }
    fitAxes();
    applyColours();
}

void PointChart::fitAxes() {
    double left = 1e300;
    double right = -1e300;
    double low = 1e300;
    double high = -1e300;
    const auto see = [&](double x, double y) {
        left = std::min(left, x);
        right = std::max(right, x);
        low = std::min(low, y);
        high = std::max(high, y);
    };
    for (const ChartPoint& point : m_content.points)
        see(point.x, point.y);
    for (const ChartLine& line : m_content.lines) {
        for (const QPointF& point : line.points)
            see(point.x(), point.y());
    }
    if (left > right) left = right = low = high = 0;
    const double room = std::max((right - left) * 0.02, double(12 * hour));
    const double air = std::max((high - low) * 0.08, std::pow(10, -m_content.decimals));
    m_time->setRange(QDateTime::fromMSecsSinceEpoch(qint64(left - room)), QDateTime::fromMSecsSinceEpoch(qint64(right + room)));
    m_value->setRange(low < 0 ? low - air : std::max(0.0, low - air), high + air);
    m_value->applyNiceNumbers();
}

void PointChart::applyColours() {
    const Shades shades = shadesOf(palette());
    chart()->setBackgroundBrush(shades.base);
    chart()->setBackgroundPen(Qt::NoPen);
    setBackgroundBrush(shades.base);
    for (QAbstractAxis* axis : {static_cast<QAbstractAxis*>(m_time), static_cast<QAbstractAxis*>(m_value)}) {
        axis->setLabelsBrush(shades.quiet);
        axis->setTitleBrush(shades.quiet);
        axis->setLabelsFont(font());
        axis->setTitleFont(font());
        axis->setLinePen(QPen(shades.edge));
        axis->setGridLinePen(QPen(shades.line));
    }
    for (QAbstractSeries* series : chart()->series()) {
        const auto look = LineLook(series->property("look").toInt());
        QPen pen(look == LineLook::Values ? shades.job : look == LineLook::Centre ? shades.edge : shades.text);
        pen.setWidthF(look == LineLook::Values ? 1.5 : 1.2);
        if (look == LineLook::Limit) pen.setStyle(Qt::DashLine);
        static_cast<QLineSeries*>(series)->setPen(pen);
    }
}

QPointF PointChart::placeOf(const ChartPoint& point) const {
    const QRectF area = chart()->plotArea();
    const double begin = double(m_time->min().toMSecsSinceEpoch());
    const double end = double(m_time->max().toMSecsSinceEpoch());
    const QPointF place(area.left() + (point.x - begin) / (end - begin) * area.width(),
                        area.bottom() - (point.y - m_value->min()) / (m_value->max() - m_value->min()) * area.height());
    return chart()->mapToScene(place);
}

QPoint PointChart::positionOf(int point) const { return mapFromScene(placeOf(m_content.points[size_t(point)])); }

void PointChart::drawForeground(QPainter* painter, const QRectF& /*rect*/) {
    const Shades shades = shadesOf(palette());
    painter->setRenderHint(QPainter::Antialiasing);
    for (const ChartPoint& point : m_content.points) {
        const QPointF at = placeOf(point);
        if (point.mark == PointMark::Signal) {
            painter->setPen(QPen(shades.base, 1));
            painter->setBrush(shades.bad);
            const QPointF diamond[] = {at + QPointF(0, -signalRadius), at + QPointF(signalRadius, 0),
                                       at + QPointF(0, signalRadius), at + QPointF(-signalRadius, 0)};
            painter->drawPolygon(diamond, 4);
            continue;
        }
        const bool hollow = point.mark == PointMark::Hollow;
        painter->setPen(hollow ? QPen(shades.text, 1.3) : QPen(Qt::NoPen));
        painter->setBrush(hollow ? shades.base : shades.text);
        painter->drawEllipse(at, plainRadius, plainRadius);
    }
    if (m_current >= 0) {
        painter->setPen(QPen(shades.focus, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawEllipse(placeOf(m_content.points[size_t(m_current)]), signalRadius + 3, signalRadius + 3);
    }
    if (!hasFocus()) return;
    painter->setPen(QPen(shades.focus, 2));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(mapToScene(viewport()->rect()).boundingRect().adjusted(1, 1, -1, -1));
}

void PointChart::setCurrent(int point) {
    point = std::clamp(point, -1, pointCount() - 1);
    if (point == m_current) return;
    m_current = point;
    setAccessibleDescription(point < 0 ? QString() : m_content.points[size_t(point)].spoken);
    QAccessibleEvent said(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&said);
    scene()->update();
    Q_EMIT pointChosen(point);
}

void PointChart::chooseNear(const QPoint& place) {
    const QPointF at = mapToScene(place);
    int best = -1;
    double nearest = reach * reach;
    for (int i = 0; i < pointCount(); ++i) {
        const QPointF off = placeOf(m_content.points[size_t(i)]) - at;
        const double distance = QPointF::dotProduct(off, off);
        if (distance < nearest) nearest = distance, best = i;
    }
    if (best >= 0) setCurrent(best);
}

void PointChart::mouseMoveEvent(QMouseEvent* event) { chooseNear(event->pos()); }
void PointChart::mousePressEvent(QMouseEvent* event) { chooseNear(event->pos()); }

void PointChart::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
            return setCurrent(std::max(0, (m_current < 0 ? pointCount() : m_current) - 1));
        case Qt::Key_Right:
            return setCurrent(m_current < 0 ? pointCount() - 1 : m_current + 1);
        case Qt::Key_Home:
            return setCurrent(0);
        case Qt::Key_End:
            return setCurrent(pointCount() - 1);
        default:
            QChartView::keyPressEvent(event);
    }
}

void PointChart::changeEvent(QEvent* event) {
    QChartView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) applyColours();
}

void PointChart::focusInEvent(QFocusEvent* event) {
    QChartView::focusInEvent(event);
    scene()->update();
}

void PointChart::focusOutEvent(QFocusEvent* event) {
    QChartView::focusOutEvent(event);
    scene()->update();
}

}  // namespace laneward
