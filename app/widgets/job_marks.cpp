#include "app/widgets/house_painter.h"

#include <QFontMetricsF>
#include <QPainterPath>

namespace laneward {

namespace {

constexpr double tooth = 5;
constexpr double roomForEdge = 8;  // lower bars are drawn with thin lines and without notches

/// The rectangle with its right side torn, where the machine stopped.
QPainterPath torn(const QRectF& rect) {
    QPainterPath path(rect.topLeft());
    path.lineTo(rect.right() - tooth, rect.top());
    const int teeth = qMax(2, int(rect.height() / 6));
    for (int i = 0; i < teeth; ++i) {
        path.lineTo(rect.right(), rect.top() + (i + 0.5) * rect.height() / teeth);
        path.lineTo(rect.right() - tooth, rect.top() + (i + 1) * rect.height() / teeth);
    }
    path.lineTo(rect.bottomLeft());
    path.closeSubpath();
    return path;
}

}  // namespace

void HousePainter::job(const HouseItem& item, const HouseLayout::Placed& place, const ItemText& text) {
    for (const QRectF& part : place.parts) {
        m_painter.save();
        if (item.state == JobState::CutShort) m_painter.setClipPath(torn(part), Qt::IntersectClip);
        // A dashed edge on its own fill could not be seen: what is only proposed keeps its fill away from its edge.
        const bool apart = item.state == JobState::Proposed && part.height() > roomForEdge;
        jobFill(item.treatment, apart ? part.adjusted(2.5, 2.5, -2.5, -2.5) : part);
        m_painter.restore();
        jobEdge(item, part);
    }
    jobText(item, place.rect, text);
    if (!item.late.isEmpty() && place.rect.height() > roomForEdge) lateNotch(place.rect, text);
}

void HousePainter::jobFill(Treatment treatment, const QRectF& rect) {
    m_painter.fillRect(rect, m_ink.shades.base);
    if (treatment == Treatment::CleanOnly) return;
    const bool half = treatment == Treatment::ConditionOnly;
    m_painter.fillRect(half ? rect.adjusted(0, rect.height() / 2, 0, 0) : rect, m_ink.shades.job);
}

void HousePainter::jobEdge(const HouseItem& item, const QRectF& rect) {
    const bool thick = rect.height() > roomForEdge;
    QPen pen(m_ink.shades.job, thick ? 2 : 1.2);
    if (item.state == JobState::Proposed) pen.setDashPattern({3, 2});
    m_painter.setBrush(Qt::NoBrush);
    m_painter.setPen(pen);
    if (item.state == JobState::CutShort)
        m_painter.drawPath(torn(rect));
    else
        m_painter.drawRect(rect);
    if (item.state == JobState::UnderWay) movingEdge(item, rect);
    if (item.state != JobState::Dropped) return;
    const bool onFill = item.treatment == Treatment::CleanAndCondition;
    m_painter.setPen(QPen(onFill ? m_ink.shades.onJob : m_ink.shades.text, thick ? 2 : 1));
    m_painter.drawLine(QPointF(rect.left(), rect.center().y()), QPointF(rect.right(), rect.center().y()));
}

void HousePainter::movingEdge(const HouseItem& item, const QRectF& rect) {
    const double length = double(qMax<std::int64_t>(1, item.time.length().value));
    const double part = qBound(0.0, double((m_ink.now - item.time.begin).value) / length, 1.0);
    const double x = rect.left() + rect.width() * part;
    const double over = rect.height() > roomForEdge ? 3 : 0;
    m_painter.setPen(QPen(m_ink.shades.base, 5));
    m_painter.drawLine(QPointF(x, rect.top() - over), QPointF(x, rect.bottom() + over));
    m_painter.setPen(QPen(m_ink.shades.text, 2.5));
    m_painter.drawLine(QPointF(x, rect.top() - over), QPointF(x, rect.bottom() + over));
}

void HousePainter::jobText(const HouseItem& item, const QRectF& rect, const ItemText& text) {
    const double height = QFontMetricsF(m_ink.bold).height();
    if (rect.height() < height || text.title.text().isEmpty()) return;
    const double top = rect.top() + (rect.height() - height) / 2;
    const bool full = item.treatment == Treatment::CleanAndCondition;
    if (!full) {
        const double width = text.title.size().width() + 6;
        const double x = m_ink.mirrored ? rect.right() - 3 - width : rect.left() + 3;
        m_painter.fillRect(QRectF(x, top, width, height), m_ink.shades.base);
    }
    line(QRectF(rect.left(), top, rect.width(), height), text.title, m_ink.bold, full ? m_ink.shades.onJob : m_ink.shades.text);
}

void HousePainter::lateNotch(const QRectF& rect, const ItemText& text) {
    const double height = QFontMetricsF(m_ink.bold).height() + 2;
    const double width = text.late.size().width() + 16;
    const double x = m_ink.mirrored ? rect.left() + 6 : qMax(rect.left(), rect.right() - width - 6);
    const double y = rect.bottom() - 3;
    QPainterPath notch(QPointF(x, y));
    notch.lineTo(x + 8, y - 7);
    notch.lineTo(x + 16, y);
    notch.lineTo(x + width, y);
    notch.lineTo(x + width, y + height);
    notch.lineTo(x, y + height);
    notch.closeSubpath();
    m_painter.setPen(QPen(m_ink.shades.bad, 1.5));
    m_painter.setBrush(m_ink.shades.base);
    m_painter.drawPath(notch);
    m_painter.setFont(m_ink.bold);
    m_painter.setPen(m_ink.shades.bad);
    m_painter.drawStaticText(QPointF(x + 8, y + 1), text.late);
}

}  // namespace laneward
