#include "app/widgets/difference_marks.h"

#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double badge = 13;      // across
constexpr double arrowHead = 7;   // long
constexpr double leastArrow = 5;  // shorter ones would be nothing but head

}  // namespace

std::vector<DifferenceMark> differenceMarks(const PlanDifference& change, const SeasonState& season, const Speech& speech) {
    using Kind = DifferenceMark::Kind;
    std::vector<DifferenceMark> marks;
    for (const Job& job : change.removed)
        marks.push_back({Kind::Removed, jobItem(job, season, speech)});
    for (const auto& [from, to] : change.moved) {
        marks.push_back({Kind::MovedFrom, jobItem(from, season, speech)});
        marks.push_back({Kind::MovedTo, jobItem(to, season, speech)});
    }
    for (const Job& job : change.added)
        marks.push_back({Kind::Added, jobItem(job, season, speech)});
    return marks;
}

void DifferencePainter::mark(const DifferenceMark& mark, const HouseLayout::Placed& place) {
    const bool was = mark.kind == DifferenceMark::Kind::Removed || mark.kind == DifferenceMark::Kind::MovedFrom;
    if (was) {
        for (const QRectF& part : place.parts)
            gone(part, mark.kind == DifferenceMark::Kind::Removed);
        return;
    }
    const ItemText text = itemText(mark.item, place.rect, m_ink);
    HouseItem item = mark.item;
    if (text.late.text().isEmpty()) item.late.clear();  // a notch without room for its words says nothing
    HousePainter marks(m_painter, m_ink);
    marks.item(item, place, text, Look::Plain);
    if (mark.kind == DifferenceMark::Kind::Added) plus(place.rect);
}

void DifferencePainter::gone(const QRectF& rect, bool crossed) {
    m_painter.fillRect(rect.adjusted(-1, -1, 1, 1), m_ink.shades.base);
    m_painter.setBrush(Qt::NoBrush);
    m_painter.setPen(QPen(m_ink.shades.quiet, 1.5, Qt::DotLine));
    m_painter.drawRect(rect);
    if (!crossed) return;
    m_painter.setPen(QPen(m_ink.shades.text, 1.5));
    m_painter.drawLine(rect.topLeft(), rect.bottomRight());
    m_painter.drawLine(rect.bottomLeft(), rect.topRight());
}

void DifferencePainter::plus(const QRectF& rect) {
    const double half = badge / 2;
    const QPointF centre(m_ink.mirrored ? rect.right() : rect.left(), rect.center().y());
    m_painter.setPen(QPen(m_ink.shades.text, 1.5));
    m_painter.setBrush(m_ink.shades.base);
    m_painter.drawEllipse(centre, half, half);
    m_painter.drawLine(centre - QPointF(half - 3, 0), centre + QPointF(half - 3, 0));
    m_painter.drawLine(centre - QPointF(0, half - 3), centre + QPointF(0, half - 3));
}

void DifferencePainter::arrow(const QRectF& from, const QRectF& to) {
    const bool down = to.center().y() > from.center().y();
    const double inset = std::min(8.0, to.width() / 2);
    const double x = m_ink.mirrored ? to.right() - inset : to.left() + inset;
    const QPointF tail(x, from.center().y());
    const QPointF head(x, down ? to.top() : to.bottom());
    if (std::abs(head.y() - tail.y()) < leastArrow) return;
    for (const bool halo : {true, false}) {
        m_painter.setPen(QPen(halo ? m_ink.shades.base : m_ink.shades.text, halo ? 5 : 1.5));
        m_painter.drawLine(tail, head);
    }
    const double back = down ? -arrowHead : arrowHead;
    QPainterPath path(head);
    path.lineTo(head + QPointF(-4, back));
    path.lineTo(head + QPointF(4, back));
    path.closeSubpath();
    m_painter.fillPath(path, m_ink.shades.text);
}

void paintGhostBlock(QPainter& painter, const QRectF& rect, const HouseInk& ink, const QString& words) {
    QColor veil = ink.shades.base;
    veil.setAlphaF(0.82F);
    painter.setBrush(veil);
    painter.setPen(QPen(ink.shades.text, 2, Qt::DashLine));
    painter.drawRoundedRect(rect, 4, 4);
    painter.setFont(ink.bold);
    painter.drawText(rect.adjusted(6, 4, -6, -4), int(Qt::AlignTop | Qt::AlignLeading) | Qt::TextWordWrap, words);
}

}  // namespace laneward
