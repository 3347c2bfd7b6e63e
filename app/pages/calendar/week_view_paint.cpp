#include "app/pages/calendar/week_view.h"

#include "app/widgets/time_formats.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QScrollBar>
#include <QTextLayout>
#include <QTextOption>

namespace laneward {

namespace {

constexpr double narrow = 62;  // pixels, about eight letters

}  // namespace

void WeekView::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), m_ink.shades.base);
    if (m_days.days() == 0) return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.save();
    painter.setClipRect(QRectF(0, headHeight(), viewport()->width(), viewport()->height()));
    painter.translate(0, headHeight() - verticalScrollBar()->value());
    paintHours(painter);
    for (const bool background : {true, false}) {
        for (size_t i = 0; i < m_data.items.size(); ++i) {
            if (m_layout.items()[i].background == background) paintItem(painter, i);
        }
    }
    paintNow(painter);
    paintGhost(painter);
    paintDifference(painter);
    painter.restore();
    paintHeads(painter);
}

void WeekView::paintHours(QPainter& painter) {
    const double height = QFontMetricsF(m_ink.font).height();
    painter.setFont(m_ink.font);
    const double left = m_layout.column(mirrored() ? m_days.days() - 1 : 0).left();
    const double right = m_layout.column(mirrored() ? 0 : m_days.days() - 1).right();
    for (int hour = 0; hour < 24; ++hour) {
        const double y = hour * m_layout.hourHeight();
        painter.setPen(QPen(m_ink.shades.line, 1));
        painter.drawLine(QPointF(left, y), QPointF(right, y));
        const QString words = clockText(m_begins.addSecs(hour * 3'600), m_speech.locale);
        const QRectF room = mirrored() ? QRectF(right + 6, y - height / 2, viewport()->width() - right - 6, height)
                                       : QRectF(0, y - height / 2, left - 8, height);
        painter.setPen(m_ink.shades.quiet);
        if (hour > 0) painter.drawText(room, int((mirrored() ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignAbsolute), words);
    }
    painter.setPen(QPen(m_ink.shades.line, 1));
    for (int day = 0; day < m_days.days(); ++day) {
        const QRectF column = m_layout.column(day);
        painter.drawLine(mirrored() ? column.topRight() : column.topLeft(),
                         mirrored() ? column.bottomRight() : column.bottomLeft());
    }
}

void WeekView::paintItem(QPainter& painter, size_t index) {
    const HouseItem& item = m_data.items[index];
    const int block = blockOfItem(index);
    const Look look = block == current() ? Look::Current : block == hovered() ? Look::Hovered : Look::Plain;
    HousePainter marks(painter, m_ink);
    const double top = verticalScrollBar()->value();
    for (const QRectF& part : m_layout.items()[index].parts) {
        if (part.bottom() < top || part.top() > top + viewport()->height()) continue;
        const HouseLayout::Placed place{part, {part}};
        if (item.kind == HouseItem::Kind::Event && item.event != EventKind::Closure) {
            marks.item(item, place, {}, look == Look::Current ? Look::Plain : look);
            paintEventText(painter, item, part);
            if (look == Look::Current) marks.frame(part, true);
        } else {
            marks.item(item, place, itemText(item, part, m_ink), look);
        }
    }
}

void WeekView::paintEventText(QPainter& painter, const HouseItem& item, const QRectF& rect) {
    const double lineHeight = QFontMetricsF(m_ink.bold).height();
    const QString title = item.conflict ? QStringLiteral("! ") + item.title : item.title;
    const QString lanes = item.lanes.isEmpty() ? QString() : tr("lanes %1").arg(item.lanes.text()) + QStringLiteral(" · ");
    painter.save();
    painter.setClipRect(rect.adjusted(1, 1, -1, -1), Qt::IntersectClip);
    if (rect.width() < narrow && rect.height() > rect.width()) {
        // Too narrow for words: they run up the block like the title on the back of a book.
        painter.translate(rect.left() + (rect.width() - lineHeight) / 2, rect.bottom() - 4);
        painter.rotate(-90);
        const QRectF along(0, 0, rect.height() - 8, lineHeight);
        painter.setFont(m_ink.bold);
        painter.setPen(m_ink.shades.text);
        const QString words = QFontMetricsF(m_ink.bold).elidedText(title, Qt::ElideRight, along.width());
        painter.drawText(along, int(Qt::AlignRight | Qt::AlignVCenter), words);
    } else if (rect.height() >= lineHeight * 0.8) {
        const QRectF room = rect.adjusted(5, 2, -4, -2);
        const double used = paintLines(painter, room, title, true);
        paintLines(painter, room.adjusted(0, used + 1, 0, 0), lanes + item.detail, false);
    }
    painter.restore();
}

/// As many whole lines as there is room for; returns their height.
double WeekView::paintLines(QPainter& painter, const QRectF& room, const QString& words, bool strong) {
    QTextLayout lines(words, strong ? m_ink.bold : m_ink.font);
    QTextOption option(mirrored() ? Qt::AlignRight | Qt::AlignAbsolute : Qt::AlignLeft | Qt::AlignAbsolute);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    lines.setTextOption(option);
    lines.beginLayout();
    double y = 0;
    int whole = 0;
    for (QTextLine line = lines.createLine(); line.isValid(); line = lines.createLine()) {
        line.setLineWidth(room.width());
        if (y + line.height() > room.height() + (strong && whole == 0 ? line.height() : 0)) break;
        line.setPosition(QPointF(0, y));
        y += line.height();
        ++whole;
    }
    lines.endLayout();
    painter.setPen(strong ? m_ink.shades.text : m_ink.shades.quiet);
    for (int i = 0; i < whole; ++i)
        lines.lineAt(i).draw(&painter, room.topLeft());
    return y;
}

void WeekView::paintNow(QPainter& painter) {
    const LocalTime now = m_data.zone.toLocal(m_data.now);
    const int day = m_layout.dayOf(now);
    if (day < 0 || day >= m_days.days()) return;
    const QRectF column = m_layout.column(day);
    const double y = m_layout.y(now, day);
    painter.setPen(QPen(m_ink.shades.now, 2));
    painter.drawLine(QPointF(column.left(), y), QPointF(column.right(), y));
    painter.setBrush(m_ink.shades.now);
    painter.drawEllipse(QPointF(mirrored() ? column.right() : column.left(), y), 4, 4);
}

void WeekView::paintGhost(QPainter& painter) {
    if (!ghost()) return;
    const QRectF rect = m_layout.rectOf(ghost()->start, ghost()->duration);
    const LocalTime end = shifted(ghost()->start, ghost()->duration);
    const QString words =
        tr("%1 to %2").arg(clockText(ghost()->start.time, m_speech.locale), clockText(end.time, m_speech.locale));
    paintGhostBlock(painter, rect, m_ink, words);
}

void WeekView::paintDifference(QPainter& painter) {
    DifferencePainter second(painter, m_ink);
    std::vector<std::vector<QRectF>> rects;
    for (const DifferenceMark& mark : marks())
        rects.push_back(m_layout.markRects(mark.item, m_data.zone));
    for (size_t i = 0; i < rects.size(); ++i) {
        if (!rects[i].empty()) second.mark(marks()[i], {rects[i].front(), rects[i]});
        const bool moved = marks()[i].kind == DifferenceMark::Kind::MovedTo && !rects[i].empty() && !rects[i - 1].empty();
        if (moved) second.arrow(rects[i - 1].front(), rects[i].front());
    }
}

void WeekView::paintHeads(QPainter& painter) {
    painter.fillRect(QRectF(0, 0, viewport()->width(), headHeight()), m_ink.shades.base);
    for (int day = 0; day < m_days.days(); ++day) {
        const QDate date = m_days.first.addDays(day);
        const QRectF column = m_layout.column(day);
        const QRectF room(column.left() + 2, 3, column.width() - 4, headHeight() - 8);
        const bool today = date == m_today;
        if (today) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(m_ink.shades.job);
            painter.drawRoundedRect(room, 4, 4);
        }
        painter.setFont(today ? m_ink.bold : m_ink.font);
        painter.setPen(today ? m_ink.shades.onJob : m_ink.shades.text);
        const QString words = m_days.days() == 1 ? longDay(date, m_speech.locale) : shortDay(date, m_speech.locale);
        painter.drawText(room, Qt::AlignCenter, QFontMetricsF(painter.font()).elidedText(words, Qt::ElideRight, room.width()));
    }
    painter.setPen(QPen(m_ink.shades.edge, 1));
    painter.drawLine(QPointF(0, headHeight() - 0.5), QPointF(viewport()->width(), headHeight() - 0.5));
}

}  // namespace laneward
