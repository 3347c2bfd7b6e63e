#include "app/pages/calendar/month_view.h"

#include "app/widgets/time_formats.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>

namespace laneward {

void MonthView::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), m_ink.shades.base);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(0, -verticalScrollBar()->value());
    for (int day = 0; day < int(m_cells.size()); ++day)
        paintDay(painter, day);
    paintGhost(painter);
    paintDifference(painter);
    painter.translate(0, verticalScrollBar()->value());
    painter.fillRect(QRectF(0, 0, viewport()->width(), headHeight()), m_ink.shades.heading);
    painter.setFont(m_ink.bold);
    painter.setPen(m_ink.shades.text);
    for (int column = 0; column < 7 && !m_cells.empty(); ++column) {
        const QRectF cell = m_cells[size_t(column)].rect;
        const QString name = m_speech.locale.dayName(m_days.first.addDays(column).dayOfWeek(), QLocale::ShortFormat);
        painter.drawText(QRectF(cell.left(), 0, cell.width(), headHeight()), Qt::AlignCenter, name);
    }
}

void MonthView::paintDay(QPainter& painter, int index) {
    const Day& day = m_cells[size_t(index)];
    const QDate date = m_days.first.addDays(index);
    const bool inMonth = date.month() == m_month.month();
    painter.setPen(QPen(m_ink.shades.line, 1));
    painter.setBrush(inMonth ? m_ink.shades.base : mixed(m_ink.shades.base, m_ink.shades.heading, 0.7));
    painter.drawRect(day.rect);
    const double height = QFontMetricsF(m_ink.bold).height();
    const QString number = QString::number(date.day());
    const double width = QFontMetricsF(m_ink.bold).horizontalAdvance(number) + 10;
    const QRectF mark(mirrored() ? day.rect.right() - width - 3 : day.rect.left() + 3, day.rect.top() + 3, width, height);
    const bool today = date == m_today;
    if (today) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_ink.shades.job);
        painter.drawRoundedRect(mark, 4, 4);
    }
    painter.setFont(inMonth ? m_ink.bold : m_ink.font);
    painter.setPen(today ? m_ink.shades.onJob : inMonth ? m_ink.shades.text : m_ink.shades.quiet);
    painter.drawText(mark, Qt::AlignCenter, m_speech.locale.toString(date.day()));
    paintJobs(painter, day);
    for (int line = 0; line < day.shown; ++line)
        paintLine(painter, lineRect(day, line), day.events[size_t(line)]);
    const int hidden = int(day.events.size()) - day.shown;
    if (hidden > 0) {
        painter.setFont(m_ink.font);
        painter.setPen(m_ink.shades.quiet);
        painter.drawText(lineRect(day, day.shown).adjusted(4, 0, -4, 0),
                         int(Qt::AlignVCenter | (mirrored() ? Qt::AlignRight : Qt::AlignLeft)) | Qt::AlignAbsolute,
                         tr("+%n more", nullptr, hidden));
    }
    if (current() < 0 || dayOfBlock(current()) != date) return;
    HousePainter marks(painter, m_ink);
    marks.frame(block(current()).rect.adjusted(2.5, 2.5, -2.5, -2.5), hasFocus());
}

void MonthView::paintJobs(QPainter& painter, const Day& day) {
    constexpr double width = 16;
    constexpr double height = 8;
    HousePainter marks(painter, m_ink);
    const double y = day.rect.top() + 6;
    double x = mirrored() ? day.rect.left() + 6 : day.rect.right() - width - 6;
    const double step = mirrored() ? width + 4 : -(width + 4);
    const int room = qMax(0, int((day.rect.width() - 34) / (width + 4)) - (day.lacks ? 1 : 0));
    for (int i = 0; i < qMin(room, int(day.jobs.size())); ++i, x += step) {
        const QRectF rect(x, y, width, height);
        marks.item(m_data.items[day.jobs[size_t(i)]], {rect, {rect}}, {}, Look::Plain);
    }
    if (!day.lacks) return;
    painter.setFont(m_ink.bold);
    painter.setPen(QPen(m_ink.shades.bad, 1.5));
    painter.setBrush(m_ink.shades.base);
    const QRectF rect(x, y - 2, width, height + 5);
    painter.drawRect(rect);
    painter.drawText(rect, Qt::AlignCenter, QStringLiteral("!"));
}

void MonthView::paintLine(QPainter& painter, const QRectF& rect, size_t index) {
    const HouseItem& item = m_data.items[index];
    HousePainter marks(painter, m_ink);
    const int block = blockOfItem(index);
    marks.item(item, {rect, {rect}}, {}, block == hovered() && block != current() ? Look::Hovered : Look::Plain);
    const QString when = clockText(m_data.zone.toLocal(item.time.begin).time, m_speech.locale);
    const QString words =
        item.conflict ? QStringLiteral("! %1 %2").arg(when, item.title) : QStringLiteral("%1 %2").arg(when, item.title);
    painter.setFont(m_ink.font);
    painter.setPen(m_ink.shades.text);
    const QRectF room = rect.adjusted(5, 0, -5, 0);
    painter.drawText(room, int(Qt::AlignVCenter | (mirrored() ? Qt::AlignRight : Qt::AlignLeft)) | Qt::AlignAbsolute,
                     QFontMetricsF(m_ink.font).elidedText(words, Qt::ElideRight, room.width()));
}

void MonthView::paintGhost(QPainter& painter) {
    if (!ghost()) return;
    const QRectF cell = ghostRect().translated(0, verticalScrollBar()->value());
    if (cell.isEmpty()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(m_ink.shades.text, 2.5, Qt::DashLine));
    painter.drawRoundedRect(cell.adjusted(3, 3, -3, -3), 4, 4);
}

QRectF MonthView::ghostRect() const {
    const int day = ghost() ? int(m_days.first.daysTo(ghost()->start.date)) : -1;
    if (day < 0 || day >= int(m_cells.size())) return {};
    return toViewport(m_cells[size_t(day)].rect);
}

/// In the lower edge of each day that would change: what would go, then what would come.
void MonthView::paintDifference(QPainter& painter) {
    constexpr double width = 18;
    constexpr double height = 10;
    constexpr double step = width + 12;  // leaves room for the plus
    DifferencePainter second(painter, m_ink);
    std::vector<int> used(m_cells.size());
    for (const DifferenceMark& mark : marks()) {
        const auto next = std::upper_bound(m_data.days.begin(), m_data.days.end(), mark.item.time.begin);
        const auto day = next - m_data.days.begin() - 1;
        if (day < 0 || size_t(day) >= m_cells.size() || mark.item.time.begin >= m_data.range.end) continue;
        const QRectF cell = m_cells[size_t(day)].rect;
        const int place = used[size_t(day)]++;
        const double x = cell.left() + 18 + place * step;
        if (x + width > cell.right() - 6) continue;
        const QRectF band(cell.left() + 6, cell.bottom() - height - 13, cell.width() - 12, height + 7);
        if (place == 0) painter.fillRect(band, m_ink.shades.base);
        const QRectF rect(x, band.top() + 4, width, height);
        second.mark(mark, {rect, {rect}});
    }
}

}  // namespace laneward
