#include "app/widgets/date_axis.h"

#include "app/widgets/shades.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace laneward {

namespace {

constexpr double sideAir = 8;
constexpr double barHeight = 12;

QString monthText(QDate date, const QLocale& locale) { return locale.toString(date, QStringLiteral("d MMM")); }

}  // namespace

QColor markInk(const QPalette& palette, bool chosen, const QColor& usual) {
    return chosen ? palette.color(QPalette::HighlightedText) : usual;
}

DayAxis::DayAxis(const QRectF& cell, int days)
    : m_left(cell.left() + sideAir), m_right(cell.right() - sideAir), m_days(std::max(1, days)) {}

double DayAxis::x(double day) const { return m_left + std::clamp(day / m_days, 0.0, 1.0) * (m_right - m_left); }

QList<int> monthsOnAxis(QDate today, int days) {
    QList<int> months;
    if (!today.isValid()) return months;
    for (QDate first = QDate(today.year(), today.month(), 1).addMonths(1); today.daysTo(first) <= days;
         first = first.addMonths(1))
        months.append(int(today.daysTo(first)));
    return months;
}

namespace {

/// An arrow where it goes on beyond the axis.
QPainterPath barShape(const QRectF& bar, bool ends) {
    QPainterPath shape;
    shape.moveTo(ends ? bar.topRight() : QPointF(bar.right() - 4, bar.top()));
    shape.lineTo(bar.topLeft());
    shape.lineTo(bar.bottomLeft());
    shape.lineTo(ends ? bar.bottomRight() : QPointF(bar.right() - 4, bar.bottom()));
    if (!ends) shape.lineTo(QPointF(bar.right() + 4, bar.center().y()));
    shape.closeSubpath();
    return shape;
}

void paintBar(QPainter& painter, const RangeMarks& marks, int days, const RowLook& row) {
    const Shades shades = shadesOf(row.palette);
    const DayAxis axis(row.cell, days);
    const QColor ink = markInk(row.palette, row.chosen, shades.job);
    const bool ends = marks.late >= 0 && marks.late <= days;
    const double from = axis.x(marks.early);
    const double to = std::max(ends ? axis.x(marks.late) : axis.right(), from + 3);
    const QRectF bar(from, row.cell.center().y() - barHeight / 2, to - from, barHeight);
    painter.setPen(QPen(ink, 1));
    painter.setBrush(row.chosen ? QBrush(ink, Qt::Dense6Pattern) : QBrush(mixed(shades.base, shades.job, 0.28)));
    painter.drawPath(barShape(bar, ends));
    if (marks.likely < 0 || marks.likely > days) return;
    painter.setPen(QPen(ink, 2.4));
    painter.drawLine(QPointF(axis.x(marks.likely), bar.top() - 3), QPointF(axis.x(marks.likely), bar.bottom() + 3));
}

}  // namespace

void paintRange(QPainter& painter, const RangeMarks& marks, const DateSpan& span, const RowLook& row) {
    const Shades shades = shadesOf(row.palette);
    const QRectF& cell = row.cell;
    const DayAxis axis(cell, span.days);
    const QColor ink = markInk(row.palette, row.chosen, shades.job);
    painter.setPen(QPen(row.chosen ? ink : shades.line, 1, row.chosen ? Qt::DotLine : Qt::SolidLine));
    for (const int month : monthsOnAxis(span.today, span.days))
        painter.drawLine(QPointF(axis.x(month), cell.top()), QPointF(axis.x(month), cell.bottom()));
    if (marks.early < 0 || marks.early > span.days) {
        painter.setPen(markInk(row.palette, row.chosen, shades.quiet));
        painter.drawText(cell.adjusted(sideAir, 0, -sideAir, 0), int(Qt::AlignRight) | Qt::AlignVCenter,
                         AxisHeader::tr("later →", "beyond the axis"));
    } else {
        paintBar(painter, marks, span.days, row);
    }
    if (marks.flag < 0 || marks.flag > span.days) return;
    const double x = axis.x(marks.flag);
    painter.setPen(Qt::NoPen);
    painter.setBrush(markInk(row.palette, row.chosen, shades.bad));
    painter.drawPolygon(QPolygonF{{x - 4.5, cell.top() + 1}, {x + 4.5, cell.top() + 1}, {x, cell.top() + 8}});
}

AxisHeader::AxisHeader(int column, std::function<DateSpan()> span, QWidget* parent)
    : QHeaderView(Qt::Horizontal, parent), m_column(column), m_span(std::move(span)) {
    setSectionsClickable(true);
    setHighlightSections(true);
    setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
}

QSize AxisHeader::sizeHint() const {
    const QSize usual = QHeaderView::sizeHint();
    return {usual.width(), std::max(usual.height(), 2 * fontMetrics().lineSpacing() + 10)};
}

void AxisHeader::paintSection(QPainter* painter, const QRect& rect, int section) const {
    const DateSpan span = m_span();
    if (section != m_column || !span.today.isValid()) return QHeaderView::paintSection(painter, rect, section);
    const int line = fontMetrics().lineSpacing() + 2;
    painter->save();
    QHeaderView::paintSection(painter, rect, section);  // its title stands at the top
    painter->restore();
    painter->save();
    const DayAxis axis(rect, span.days);
    painter->setLayoutDirection(Qt::LeftToRight);
    painter->setPen(palette().color(QPalette::ButtonText));
    double free = rect.left();
    for (const int month : monthsOnAxis(span.today, span.days)) {
        const QString words = monthText(span.today.addDays(month), QLocale());
        const double width = painter->fontMetrics().horizontalAdvance(words);
        const double left = std::clamp(axis.x(month) - width / 2, double(rect.left()) + 2, rect.right() - width - 2);
        painter->drawLine(QPointF(axis.x(month), rect.bottom() - 3), QPointF(axis.x(month), rect.bottom()));
        if (left < free) continue;
        painter->drawText(QRectF(left, rect.bottom() - line - 2, width + 2, line), int(Qt::AlignLeft | Qt::AlignVCenter), words);
        free = left + width + 6;
    }
    painter->restore();
}

}  // namespace laneward
