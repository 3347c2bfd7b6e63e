#include "app/pages/service/plot_view.h"

#include "app/widgets/shades.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr int page = 10;
constexpr double air = 6;

}  // namespace

PlotView::PlotView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setLayoutDirection(Qt::LeftToRight);
}

void PlotView::show(PlotContent content) {
    m_content = std::move(content);
    m_current = std::min(m_current, stopCount() - 1);
    setAccessibleName(tr("%1; arrow keys walk along it", "title").arg(m_content.title));
    setAccessibleDescription(spoken(m_current));
    update();
}

QString PlotView::spoken(int stop) const {
    return stop >= 0 && stop < stopCount() ? m_content.stops[size_t(stop)].spoken : m_content.empty;
}

void PlotView::setCurrent(int stop) {
    stop = std::clamp(stop, -1, stopCount() - 1);
    if (stop == m_current) return;
    m_current = stop;
    setAccessibleDescription(spoken(stop));
    QAccessibleEvent said(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&said);
    update();
    Q_EMIT chosen(spoken(stop));
}

QRectF PlotView::area() const {
    const QFontMetricsF metrics(font());
    double labels = 0;
    for (const PlotTick& tick : m_content.yTicks)
        labels = std::max(labels, metrics.horizontalAdvance(tick.words));
    return QRectF(rect()).adjusted(labels + 2 * air, 2 * metrics.height() + air, -2 * air, -metrics.height() - air);
}

QPointF PlotView::placeOf(const QPointF& at) const {
    const QRectF room = area();
    const double x = (at.x() - m_content.x.low) / (m_content.x.high - m_content.x.low);
    const double y = (at.y() - m_content.y.low) / (m_content.y.high - m_content.y.low);
    return {room.left() + x * room.width(), room.bottom() - y * room.height()};
}

void PlotView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Shades shades = shadesOf(palette());
    painter.fillRect(rect(), shades.base);
    const QFontMetricsF metrics(font());
    painter.setPen(shades.text);
    painter.drawText(QRectF(rect()).adjusted(air, 2, -air, 0), Qt::AlignLeft | Qt::AlignTop,
                     metrics.elidedText(m_content.title, Qt::ElideRight, width() - 2 * air));
    if (m_content.line.isEmpty() && m_content.points.empty()) {
        painter.setPen(shades.quiet);
        painter.drawText(QRectF(rect()).adjusted(16, 30, -16, -10), Qt::AlignCenter | Qt::TextWordWrap, m_content.empty);
    } else {
        paintScale(painter);
        paintCurve(painter);
        paintMarks(painter);
        paintChosen(painter);
    }
    if (!hasFocus()) return;
    painter.setPen(QPen(shades.focus, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

void PlotView::paintScale(QPainter& painter) const {
    const Shades shades = shadesOf(palette());
    const QRectF room = area();
    const QFontMetricsF metrics(font());
    for (const PlotTick& tick : m_content.yTicks) {
        const double y = placeOf({m_content.x.low, tick.at}).y();
        painter.setPen(QPen(shades.line, 1));
        painter.drawLine(QPointF(room.left(), y), QPointF(room.right(), y));
        painter.setPen(shades.quiet);
        painter.drawText(QRectF(0, y - metrics.height() / 2, room.left() - air, metrics.height()),
                         Qt::AlignRight | Qt::AlignVCenter, tick.words);
    }
    double free = 0;
    for (const PlotTick& tick : m_content.xTicks) {
        const double x = placeOf({tick.at, m_content.y.low}).x();
        painter.setPen(QPen(shades.line, 1));
        painter.drawLine(QPointF(x, room.top()), QPointF(x, room.bottom()));
        const double width = metrics.horizontalAdvance(tick.words);
        const double left = std::clamp(x - width / 2, 0.0, std::max(0.0, this->width() - width));
        if (left < free) continue;
        painter.setPen(shades.quiet);
        painter.drawText(QPointF(left, room.bottom() + metrics.ascent() + 3), tick.words);
        free = left + width + 10;
    }
    painter.setPen(QPen(shades.edge, 1.5));
    painter.drawLine(room.bottomLeft(), room.bottomRight());
}

void PlotView::paintCurve(QPainter& painter) const {
    const Shades shades = shadesOf(palette());
    const auto onScreen = [this](const QPolygonF& own) {
        QPolygonF placed;
        for (const QPointF& at : own)
            placed << placeOf(at);
        return placed;
    };
    painter.save();
    painter.setClipRect(area().adjusted(-4, -4, 4, 4));
    painter.setPen(QPen(shades.job, 0.6));
    painter.setBrush(mixed(shades.base, shades.job, 0.22));
    painter.drawPolygon(onScreen(m_content.band));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(shades.job, 2.2));
    painter.drawPolyline(onScreen(m_content.line));
    painter.setPen(QPen(shades.base, 1));
    painter.setBrush(shades.text);
    for (const QPointF& point : m_content.points)
        painter.drawEllipse(placeOf(point), 4, 4);
    painter.restore();
}

/// Words stand on the lines, one below the other, so that none is crossed.
void PlotView::paintMarks(QPainter& painter) const {
    const Shades shades = shadesOf(palette());
    const QRectF room = area();
    for (const PlotMark& mark : m_content.marks) {
        const double x = placeOf({mark.x, m_content.y.low}).x();
        painter.setPen(QPen(shades.now, mark.isBest ? 2 : 1.4, mark.isBest ? Qt::SolidLine : Qt::DashLine));
        painter.drawLine(QPointF(x, room.top()), QPointF(x, room.bottom()));
        if (!mark.isBest) continue;
        painter.setPen(Qt::NoPen);
        painter.setBrush(shades.now);
        painter.drawPolygon(QPolygonF{{x, room.bottom() - 9}, {x - 6, room.bottom() + 1}, {x + 6, room.bottom() + 1}});
    }
    const QFontMetricsF metrics(font());
    double top = room.top();
    for (const PlotMark& mark : m_content.marks) {
        const double x = placeOf({mark.x, m_content.y.low}).x();
        const double width = metrics.horizontalAdvance(mark.words);
        const double left = x + 5 + width <= room.right() ? x + 5 : std::max(room.left(), x - 5 - width);
        const QRectF box(left - 1, top, width + 2, metrics.height());
        painter.fillRect(box, shades.base);
        painter.setPen(readable(shades.now, shades.base, textContrast));
        painter.drawText(box, Qt::AlignCenter, mark.words);
        top += metrics.height() + 1;
    }
}

void PlotView::paintChosen(QPainter& painter) const {
    if (m_current < 0 || m_current >= stopCount()) return;
    const Shades shades = shadesOf(palette());
    const QRectF room = area();
    const QPointF at = placeOf(m_content.stops[size_t(m_current)].at);
    painter.setPen(QPen(shades.focus, 1));
    painter.drawLine(QPointF(at.x(), room.top()), QPointF(at.x(), room.bottom()));
    painter.setPen(QPen(shades.base, 1.5));
    painter.setBrush(shades.focus);
    painter.drawEllipse(at, 5, 5);
}

void PlotView::mouseMoveEvent(QMouseEvent* event) {
    int nearest = -1;
    double least = 0;
    for (int n = 0; n < stopCount(); ++n) {
        const double away = std::abs(placeOf(m_content.stops[size_t(n)].at).x() - event->position().x());
        if (nearest >= 0 && away >= least) continue;
        nearest = n;
        least = away;
    }
    setCurrent(nearest);
}

void PlotView::mousePressEvent(QMouseEvent* event) { mouseMoveEvent(event); }

void PlotView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
            return setCurrent(std::max(0, m_current - 1));
        case Qt::Key_Right:
            return setCurrent(m_current + 1);
        case Qt::Key_PageUp:
            return setCurrent(std::max(0, m_current - page));
        case Qt::Key_PageDown:
            return setCurrent(std::max(0, m_current) + page);
        case Qt::Key_Home:
            return setCurrent(0);
        case Qt::Key_End:
            return setCurrent(stopCount() - 1);
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace laneward
