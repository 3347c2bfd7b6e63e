#include "app/pages/lanes/season_view.h"

#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr Seconds fullBar = hours(2);  // more is plenty
constexpr double barHeight = 6;
constexpr double margin = 4;
constexpr double gap = 10;  // behind a day, so that its scale does not run into the next

}  // namespace

void SeasonView::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), m_shades.base);
    painter.setFont(font());
    if (m_season.days.empty()) {
        painter.setPen(m_shades.quiet);
        painter.drawText(viewport()->rect().adjusted(12, 12, -12, -12), int(Qt::AlignCenter) | Qt::TextWordWrap,
                         tr("The season is being planned…"));
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    painter.save();
    painter.setClipRect(QRectF(0, headHeight(), viewport()->width(), viewport()->height()));
    painter.translate(-horizontalScrollBar()->value(), headHeight() - verticalScrollBar()->value());
    const double top = verticalScrollBar()->value();
    const double bottom = top + viewport()->height();
    const int rows = rowOf(m_season.days.back().date) + 1;
    for (int row = 0; row < rows; ++row) {
        if ((row + 1) * m_rowHeight >= top && row * m_rowHeight <= bottom) paintWeek(painter, row);
    }
    for (size_t day = 0; day < m_season.days.size(); ++day) {
        const QRectF& rect = block(int(day)).rect;
        if (rect.bottom() >= top && rect.top() <= bottom) paintDay(painter, day);
    }
    if (current() >= 0) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_shades.focus, hasFocus() ? 2.5 : 1.5));
        painter.drawRect(block(current()).rect.adjusted(1.5, 1.5, -1.5, -1.5));
    }
    painter.restore();
    paintHead(painter);
}

/// Where a line begins or ends in the reader's direction; the words themselves keep theirs.
int SeasonView::aligned(bool leading) const {
    const bool left = leading != (layoutDirection() == Qt::RightToLeft);
    return int((left ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignAbsolute | Qt::AlignVCenter);
}

/// What a cell has for its day's words and bar.
QRectF SeasonView::inner(const QRectF& cell) const {
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    return cell.adjusted(mirrored ? gap : margin, 0, mirrored ? -margin : -gap, 0);
}

/// Weekdays, and below each the scale of its bars.
void SeasonView::paintHead(QPainter& painter) const {
    painter.fillRect(QRectF(0, 0, viewport()->width(), headHeight()), m_shades.base);
    QFont bold = font();
    bold.setBold(true);
    painter.save();
    painter.translate(-horizontalScrollBar()->value(), 0);
    const double line = QFontMetricsF(bold).height();
    for (int column = 0; column < 7; ++column) {
        QRectF rect = cell(0, column);
        rect.setHeight(line + 4);
        const int weekday = (int(m_speech.locale.firstDayOfWeek()) - 1 + column) % 7 + 1;
        painter.setFont(bold);
        painter.setPen(m_shades.text);
        painter.drawText(rect, Qt::AlignCenter, m_speech.locale.standaloneDayName(weekday, QLocale::ShortFormat));
        paintScale(painter, rect.translated(0, line + 3));
    }
    painter.restore();
    painter.setPen(QPen(m_shades.edge, 1));
    painter.drawLine(QPointF(0, headHeight() - 0.5), QPointF(viewport()->width(), headHeight() - 0.5));
}

void SeasonView::paintScale(QPainter& painter, const QRectF& cell) const {
    painter.setFont(font());
    painter.setPen(m_shades.quiet);
    const QRectF room = inner(cell);
    painter.drawText(room, aligned(true), QStringLiteral("0"));
    painter.drawText(room, aligned(false), durationText(fullBar, m_speech));
}

void SeasonView::paintWeek(QPainter& painter, int row) const {
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    const QRectF first = cell(row, mirrored ? 6 : 0);
    const double right = first.left() + 7 * m_columnWidth;
    painter.setPen(QPen(m_shades.line, 1));
    painter.drawLine(QPointF(first.left(), first.bottom() - 0.5), QPointF(right, first.bottom() - 0.5));
    painter.setPen(m_shades.quiet);
    const QRectF gutter(mirrored ? right : 0, first.top(), m_gutter, m_rowHeight);
    const QDate day = m_firstRow.addDays(7 * row);
    painter.drawText(gutter.adjusted(6, 0, -6, 0), aligned(false), m_speech.locale.toString(day, QStringLiteral("d MMM")));
}

void SeasonView::paintDay(QPainter& painter, size_t day) const {
    const QRectF& rect = block(int(day)).rect;
    const SeasonDay& figures = m_season.days[day];
    if (int(day) == hovered()) painter.fillRect(rect.adjusted(1, 1, -1, -1), m_shades.heading);
    // A month begins: a stronger line above its first seven days and in front of its first.
    painter.setPen(QPen(m_shades.edge, 1));
    if (figures.date.day() <= 7) painter.drawLine(rect.topLeft() - QPointF(0, 0.5), rect.topRight() - QPointF(0, 0.5));
    if (figures.date.day() == 1) {
        const double x = layoutDirection() == Qt::RightToLeft ? rect.right() : rect.left();
        painter.drawLine(QPointF(x, rect.top()), QPointF(x, rect.bottom()));
    }
    const QRectF line = inner(rect).adjusted(0, 2, 0, -barHeight - 3);
    painter.setFont(font());
    painter.setPen(m_shades.quiet);
    painter.drawText(line, aligned(true), m_speech.locale.toString(figures.date.day()));
    QFont words = font();
    words.setBold(figures.work.isTight());
    painter.setFont(words);
    const bool wrong = figures.work.unmet > 0 || figures.work.late > 0;
    painter.setPen(wrong ? m_shades.bad : figures.work.isTight() ? m_shades.text : m_shades.quiet);
    const double used = QFontMetricsF(font()).horizontalAdvance(QStringLiteral("30")) + 4;
    const QString text = QFontMetricsF(words).elidedText(cellText(figures.work), Qt::ElideRight, line.width() - used);
    painter.drawText(line, aligned(false), text);
    paintBar(painter, rect, figures.work);
}

QString SeasonView::cellText(const WorkFigures& work) const {
    if (work.unmet > 0) return tr("! %n unmet", nullptr, int(work.unmet));
    if (work.late > 0) return tr("! %n late", nullptr, int(work.late));
    if (!work.spare) return {};
    if (*work.spare < Seconds{0}) return tr("! −%1").arg(durationText(-*work.spare, m_speech));
    // Whole hours where there is plenty: cells are narrow.
    const std::int64_t unit = *work.spare < fullBar ? 60 : 3'600;
    const QString spare = work.spare->value < 60 ? tr("0 min") : durationText({work.spare->value / unit * unit}, m_speech);
    return work.isTight() ? tr("! %1", "tight").arg(spare) : spare;
}

/// As long as the time to spare. Hatched when tight, a hollow frame when something is unmet, a notch when late.
void SeasonView::paintBar(QPainter& painter, const QRectF& cell, const WorkFigures& work) const {
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    const QRectF inside = inner(cell);
    const QRectF room(inside.left(), cell.bottom() - barHeight - 3, inside.width(), barHeight);
    if (work.unmet > 0) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_shades.bad, 1.5));
        painter.drawRect(room.adjusted(0.75, 0.75, -0.75, -0.75));
        return;
    }
    if (!work.spare) return;
    const double part = std::clamp(double(work.spare->value) / double(fullBar.value), 0.0, 1.0);
    const double length = std::max(2.0, room.width() * part);
    const QRectF bar(mirrored ? room.right() - length : room.left(), room.top(), length, room.height());
    if (!work.isTight()) {
        painter.fillRect(bar, m_shades.job);
        return;
    }
    // What is missing to plenty is hatched: a short bar alone is easily overlooked.
    QBrush hatch(m_shades.bad, Qt::BDiagPattern);
    painter.fillRect(room, hatch);
    painter.fillRect(bar, m_shades.bad);
    if (work.late > 0) {
        const double x = mirrored ? room.left() : room.right();
        const double inward = mirrored ? barHeight : -barHeight;
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_shades.bad);
        painter.drawPolygon(QPolygonF({{x, room.top()}, {x + inward, room.center().y()}, {x, room.bottom()}}));
    }
}

}  // namespace laneward
