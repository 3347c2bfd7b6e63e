#include "app/widgets/house_view.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QScrollBar>

namespace laneward {

void HouseView::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), m_ink.shades.base);
    if (m_data.lanes == 0) return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.save();
    painter.setClipRect(QRectF(0, headHeight(), viewport()->width(), viewport()->height()));
    painter.translate(-horizontalScrollBar()->value(), headHeight() - verticalScrollBar()->value());
    paintTicks(painter);
    paintItems(painter);
    paintGhost(painter);
    paintDifference(painter);
    painter.restore();
    if (m_data.range.contains(m_data.now)) paintMoment(painter, m_data.now, m_ink.shades.now, Qt::SolidLine);
    if (m_chosen) paintMoment(painter, *m_chosen, m_ink.shades.text, Qt::DashLine);
    paintHeads(painter);
}

void HouseView::paintTicks(QPainter& painter) {
    painter.setFont(m_ink.font);
    const double seenTop = verticalScrollBar()->value();
    const double height = QFontMetricsF(m_ink.font).height();
    const double left = m_layout.firstLane() - 4;
    const double right = m_layout.lastLane() + 4;
    double lowest = -height;
    for (size_t i = 0; i < m_layout.ticks().size(); ++i) {
        const HouseLayout::Tick& tick = m_layout.ticks()[i];
        if (tick.y < seenTop - height || tick.y > seenTop + viewport()->height()) continue;
        painter.setPen(QPen(tick.day && m_data.days.size() > 1 ? m_ink.shades.edge : m_ink.shades.line, 1));
        painter.drawLine(QPointF(left, tick.y), QPointF(right, tick.y));
        const double top = m_layout.isRows() ? tick.y + 1 : qMax(tick.y - height / 2, seenTop);
        if (top < lowest + height) continue;  // rows lower than the text show every other date
        lowest = top;
        painter.setPen(m_ink.shades.quiet);
        const double width = m_layout.firstLane();
        const QRectF room = mirrored() ? QRectF(right + 4, top, m_layout.size().width() - right - 4, height)
                                       : QRectF(horizontalScrollBar()->value(), top, width - 10 - 0, height);
        painter.drawText(room, int((mirrored() ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignAbsolute | Qt::AlignTop),
                         m_tickTexts[i]);
    }
}

void HouseView::paintItems(QPainter& painter) {
    HousePainter marks(painter, m_ink);
    const QRectF seen(horizontalScrollBar()->value(), verticalScrollBar()->value() - 30, viewport()->width(),
                      viewport()->height() + 60);
    const auto look = [this](int index) {
        if (index == current()) return Look::Current;
        return index == hovered() ? Look::Hovered : Look::Plain;
    };
    for (size_t i = 0; i < m_data.items.size(); ++i) {
        const HouseLayout::Placed& place = m_layout.items()[i];
        const bool visible =
            std::any_of(place.parts.begin(), place.parts.end(), [&](const QRectF& r) { return r.intersects(seen); });
        if (visible) marks.item(m_data.items[i], place, m_texts[i], look(int(i)));
    }
    const HouseItem* chosen = itemOf(current());
    if (chosen && m_layout.items()[size_t(current())].rect.intersects(seen)) {
        marks.frame(m_layout.items()[size_t(current())].rect, true);  // above whatever lies on it
    }
}

void HouseView::paintMoment(QPainter& painter, Instant at, const QColor& colour, Qt::PenStyle style) {
    const double y = headHeight() + m_layout.y(at) - verticalScrollBar()->value();
    if (y < headHeight() || y > viewport()->height()) return;
    const double shift = -horizontalScrollBar()->value();
    painter.setPen(QPen(colour, style == Qt::SolidLine ? 2 : 1.5, style));
    painter.drawLine(QPointF(m_layout.firstLane() - 4 + shift, y), QPointF(m_layout.lastLane() + 4 + shift, y));
    if (m_layout.isRows()) return;  // the dates keep their place
    const QFontMetricsF metrics(m_ink.bold);
    const QString words = clockTime(at, m_speech);
    const double width = metrics.horizontalAdvance(words) + 8;
    const double x = mirrored() ? m_layout.lastLane() + 5 + shift : qMax(0.0, m_layout.firstLane() - width - 5);
    const double top = qMax(headHeight(), y - metrics.height() / 2);
    const QRectF flag(x, top, width, metrics.height());
    painter.setPen(Qt::NoPen);
    painter.setBrush(style == Qt::SolidLine ? colour : m_ink.shades.base);
    painter.drawRoundedRect(flag, 3, 3);
    painter.setFont(m_ink.bold);
    painter.setPen(style == Qt::SolidLine ? m_ink.shades.base : colour);
    painter.drawText(flag, Qt::AlignCenter, words);
}

void HouseView::paintHeads(QPainter& painter) {
    painter.fillRect(QRectF(0, 0, viewport()->width(), headHeight()), m_ink.shades.base);
    painter.save();
    painter.translate(-horizontalScrollBar()->value(), 0);
    for (size_t i = 0; i < m_data.bands.size() && i < m_bandTexts.size(); ++i)
        paintBand(painter, i);
    paintNumbers(painter);
    painter.restore();
    painter.setPen(QPen(m_ink.shades.edge, 1));
    painter.drawLine(QPointF(0, headHeight() - 0.5), QPointF(viewport()->width(), headHeight() - 0.5));
    if (m_data.headsTitle.isEmpty()) return;
    painter.setFont(m_ink.bold);
    painter.setPen(m_ink.shades.quiet);
    const double height = QFontMetricsF(m_ink.bold).height();
    const double room = mirrored() ? m_layout.lastLane() + 4 : 0;
    const double width = mirrored() ? m_layout.size().width() - room : m_layout.firstLane() - 8;
    painter.drawText(QRectF(room, 4 + height, width, height * 2),
                     int((mirrored() ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignAbsolute) | Qt::TextWordWrap,
                     m_data.headsTitle);
}

void HouseView::paintNumbers(QPainter& painter) {
    const QFontMetricsF metrics(m_ink.bold);
    painter.setFont(m_ink.bold);
    painter.setPen(m_ink.shades.text);
    const double widest = metrics.horizontalAdvance(QString::number(m_data.lanes)) + 2;
    // Where lanes are narrower than their number, the first of each pair (or of two pairs) speaks for its neighbours.
    const int step = m_layout.laneWidth() >= widest ? 1 : m_layout.laneWidth() * 2 >= widest ? 2 : 4;
    for (int lane = 1; lane <= m_data.lanes; lane += step) {
        const QRectF room(m_layout.laneLeft(lane) - (step > 1 ? 0 : 4), 3, m_layout.laneWidth() * step + 8, metrics.height());
        painter.drawText(room, int(step > 1 ? Qt::AlignLeft : Qt::AlignHCenter) | Qt::AlignAbsolute, QString::number(lane));
    }
}

void HouseView::paintBand(QPainter& painter, size_t index) {
    const LaneBand& band = m_data.bands[index];
    const double height = QFontMetricsF(m_ink.font).height();
    QRectF rect = m_layout.across(band.first, band.last);
    rect.setTop(height + 6);
    rect.setBottom(headHeight() - 4);
    const int block = int(m_data.items.size() + index);
    painter.setPen(QPen(m_ink.shades.edge, 1));
    painter.setBrush(hovered() == block ? m_ink.shades.line : m_ink.shades.heading);
    painter.drawRoundedRect(rect, 3, 3);
    if (band.outOfService) {
        painter.setBrush(QBrush(m_ink.shades.line, Qt::DiagCrossPattern));
        painter.drawRoundedRect(rect, 3, 3);
    }
    if (band.inPlay) painter.fillRect(QRectF(rect.left(), rect.bottom() - 2, rect.width(), 3), m_ink.shades.now);
    painter.setFont(m_ink.font);
    for (size_t row = 0; row < 2; ++row) {
        const QStaticText& text = m_bandTexts[index][row];
        painter.setPen(row == 0 ? m_ink.shades.text : m_ink.shades.quiet);
        painter.drawStaticText(QPointF(rect.center().x() - text.size().width() / 2, rect.top() + 1 + double(row) * height), text);
    }
    if (current() == block) {
        HousePainter marks(painter, m_ink);
        marks.frame(rect.adjusted(2, 2, -2, -2), hasFocus());
    }
}

}  // namespace laneward
