#include "app/widgets/house_painter.h"

#include <QFontMetricsF>
#include <QPainterPath>

namespace laneward {

namespace {

constexpr double pad = 6;

QStaticText cut(const QString& text, const QFont& font, double width) {
    QStaticText result(QFontMetricsF(font).elidedText(text, Qt::ElideRight, width));
    result.setTextFormat(Qt::PlainText);
    result.setPerformanceHint(QStaticText::AggressiveCaching);
    result.prepare(QTransform(), font);
    return result;
}

}  // namespace

ItemText itemText(const HouseItem& item, const QRectF& rect, const HouseInk& ink) {
    const double width = rect.width() - 2 * pad;
    ItemText text;
    if (width < 14) return text;
    QString title = item.title;
    if (item.state == JobState::Done && item.kind == HouseItem::Kind::Job) title.prepend(QStringLiteral("\u2713 "));
    if (item.kind == HouseItem::Kind::Shortfall) title.prepend(QStringLiteral("! "));
    if (item.conflict) title.prepend(QStringLiteral("! "));
    if (item.lastLane > 0) title += QStringLiteral(" \u2192 %1").arg(item.lastLane);
    text.title = cut(title, ink.bold, width);
    text.detail = cut(item.detail, ink.font, width);
    if (!item.late.isEmpty()) text.late = cut(item.late, ink.bold, 1'000);  // the notch may be wider than its bar
    return text;
}

void HousePainter::line(const QRectF& room, const QStaticText& text, const QFont& font, const QColor& colour) {
    if (text.text().isEmpty()) return;
    m_painter.setFont(font);
    m_painter.setPen(colour);
    const double x = m_ink.mirrored ? room.right() - pad - text.size().width() : room.left() + pad;
    m_painter.drawStaticText(QPointF(x, room.top()), text);
}

void HousePainter::item(const HouseItem& item, const HouseLayout::Placed& place, const ItemText& text, Look look) {
    switch (item.kind) {
        case HouseItem::Kind::Event:
            event(item, place, text, look);
            break;
        case HouseItem::Kind::Job:
            job(item, place, text);
            break;
        case HouseItem::Kind::Shortfall:
            shortfall(place, text);
            break;
        case HouseItem::Kind::Outage:
            outage(place, text);
            break;
    }
    if (look == Look::Plain) return;
    for (const QRectF& part : place.parts)
        frame(part, look == Look::Current);
}

void HousePainter::frame(const QRectF& rect, bool focused) {
    const QRectF around = rect.adjusted(-2.5, -2.5, 2.5, 2.5);
    m_painter.setBrush(Qt::NoBrush);
    if (focused) {
        m_painter.setPen(QPen(m_ink.shades.base, 5));
        m_painter.drawRoundedRect(around, 4, 4);
    }
    m_painter.setPen(QPen(focused ? m_ink.shades.focus : m_ink.shades.edge, focused ? 2.5 : 1.5));
    m_painter.drawRoundedRect(around, 4, 4);
}

void HousePainter::event(const HouseItem& item, const HouseLayout::Placed& place, const ItemText& text, Look look) {
    const QColor fill = m_ink.shades.event(item.event);
    for (const QRectF& part : place.parts) {
        m_painter.setPen(QPen(item.conflict ? m_ink.shades.bad : m_ink.shades.edge, item.conflict ? 2 : 1));
        m_painter.setBrush(look == Look::Hovered ? mixed(fill, m_ink.shades.base, 0.35) : fill);
        if (part.height() < 5) {  // in a row of a month: no room for an outline
            m_painter.fillRect(part, item.conflict ? m_ink.shades.bad : m_ink.shades.edge);
            continue;
        }
        m_painter.drawRoundedRect(part, 3, 3);
        if (item.event != EventKind::Closure) continue;
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(QBrush(m_ink.shades.line, Qt::BDiagPattern));
        m_painter.drawRect(part);
    }
    const double lineHeight = QFontMetricsF(m_ink.bold).height();
    const QRectF room = place.rect.adjusted(0, 4, 0, 0);
    if (place.rect.height() < lineHeight) return;
    line(place.rect.height() < lineHeight + 6 ? place.rect : room, text.title, m_ink.bold, m_ink.shades.text);
    if (place.rect.height() >= 2 * lineHeight + 6) {
        line(room.translated(0, lineHeight + 1), text.detail, m_ink.font, m_ink.shades.quiet);
    }
}

void HousePainter::outage(const HouseLayout::Placed& place, const ItemText& text) {
    for (const QRectF& part : place.parts) {
        m_painter.setPen(QPen(m_ink.shades.edge, 1));
        m_painter.setBrush(QBrush(m_ink.shades.edge, Qt::DiagCrossPattern));
        m_painter.drawRect(part);
    }
    const double lineHeight = QFontMetricsF(m_ink.bold).height();
    if (place.rect.height() < lineHeight + 8 || text.title.text().isEmpty()) return;
    const QRectF ground(place.rect.left() + 3, place.rect.top() + 4, place.rect.width() - 6, lineHeight + 2);
    m_painter.fillRect(ground, m_ink.shades.base);
    line(ground, text.title, m_ink.bold, m_ink.shades.text);
}

void HousePainter::shortfall(const HouseLayout::Placed& place, const ItemText& text) {
    const double lineHeight = QFontMetricsF(m_ink.bold).height();
    for (const QRectF& part : place.parts) {
        m_painter.setPen(QPen(m_ink.shades.bad, 2.5));
        m_painter.setBrush(m_ink.shades.base);
        m_painter.drawRect(part);
        if (part == place.rect && !text.title.text().isEmpty() && part.height() >= lineHeight) continue;
        m_painter.setFont(m_ink.bold);
        m_painter.drawText(part, Qt::AlignCenter, QStringLiteral("!"));
    }
    if (place.rect.height() < lineHeight) return;
    const bool two = place.rect.height() >= 2 * lineHeight + 4;
    const double top = (place.rect.height() - (two ? 2 : 1) * lineHeight) / 2;
    line(place.rect.translated(0, top), text.title, m_ink.bold, m_ink.shades.bad);
    if (two) line(place.rect.translated(0, top + lineHeight), text.detail, m_ink.font, m_ink.shades.text);
}

}  // namespace laneward
