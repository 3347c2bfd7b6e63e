#include "app/pages/supplies/stock_delegate.h"

#include "app/pages/supplies/stock_model.h"
#include "app/widgets/shades.h"

#include <QApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace laneward {

namespace {

constexpr double sideAir = 8;
constexpr double barHeight = 12;

/// Marks on a chosen row stand on its highlight.
QColor inkOf(const QPalette& palette, bool chosen, const QColor& usual) {
    return chosen ? palette.color(QPalette::HighlightedText) : usual;
}

QString monthText(QDate date, const QLocale& locale) { return locale.toString(date, QStringLiteral("d MMM")); }

}  // namespace

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

StockDelegate::StockDelegate(const StockModel& model, QObject* parent) : QStyledItemDelegate(parent), m_model(model) {}

void StockDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem item = option;
    const bool urgent = index.data(StockModel::UrgentRole).toBool();
    if (index.column() == StockModel::OrderBy && urgent) {
        const Shades shades = shadesOf(option.palette);
        item.palette.setColor(QPalette::Text, shades.bad);
        item.font.setBold(true);
    }
    const bool painted = index.column() == StockModel::Stock || index.column() == StockModel::RunsOut;
    const auto marks = index.data(StockModel::MarksRole).value<StockMarks>();
    if (!painted || !marks.isKnown) return QStyledItemDelegate::paint(painter, item, index);
    QStyle* style = option.widget ? option.widget->style() : QApplication::style();
    style->drawPrimitive(QStyle::PE_PanelItemViewItem, &item, painter, option.widget);
    const bool chosen = option.state & QStyle::State_Selected;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setFont(option.font);
    painter->setLayoutDirection(Qt::LeftToRight);
    const QRectF cell(option.rect);
    if (index.column() == StockModel::Stock)
        paintLine(*painter, cell, marks, option.palette, chosen);
    else
        paintRange(*painter, cell, marks, option.palette, chosen);
    painter->restore();
}

void StockDelegate::paintLine(QPainter& painter, const QRectF& cell, const StockMarks& marks, const QPalette& palette,
                              bool chosen) const {
    const Shades shades = shadesOf(palette);
    const DayAxis axis(cell, StockModel::sparkDays);
    const double bottom = cell.bottom() - 5;
    const double height = cell.height() - 10;
    painter.setPen(QPen(inkOf(palette, chosen, shades.edge), 1));
    painter.drawLine(QPointF(axis.x(0), bottom), QPointF(axis.right(), bottom));
    QPainterPath path;
    for (qsizetype day = 0; day < marks.stock.size(); ++day) {
        const QPointF at(axis.x(double(day)), bottom - marks.stock[day] * height);
        day == 0 ? path.moveTo(at) : path.lineTo(at);
    }
    painter.setPen(QPen(inkOf(palette, chosen, shades.job), 1.8));
    painter.drawPath(path);
}

void StockDelegate::paintRange(QPainter& painter, const QRectF& cell, const StockMarks& marks, const QPalette& palette,
                               bool chosen) const {
    const Shades shades = shadesOf(palette);
    const int days = m_model.axisDays();
    const DayAxis axis(cell, days);
    const QColor ink = inkOf(palette, chosen, shades.job);
    painter.setPen(QPen(chosen ? ink : shades.line, 1, chosen ? Qt::DotLine : Qt::SolidLine));
    for (const int month : monthsOnAxis(m_model.today(), days))
        painter.drawLine(QPointF(axis.x(month), cell.top()), QPointF(axis.x(month), cell.bottom()));
    const double middle = cell.center().y();
    if (marks.early < 0 || marks.early > days) {
        painter.setPen(inkOf(palette, chosen, shades.quiet));
        painter.drawText(cell.adjusted(sideAir, 0, -sideAir, 0), int(Qt::AlignRight) | Qt::AlignVCenter,
                         tr("later →", "beyond the axis"));
    } else {
        const bool ends = marks.late >= 0 && marks.late <= days;
        const double from = axis.x(marks.early);
        const double to = std::max(ends ? axis.x(marks.late) : axis.right(), from + 3);
        const QRectF bar(from, middle - barHeight / 2, to - from, barHeight);
        QPainterPath shape;
        shape.moveTo(ends ? bar.topRight() : QPointF(bar.right() - 4, bar.top()));
        shape.lineTo(bar.topLeft());
        shape.lineTo(bar.bottomLeft());
        shape.lineTo(ends ? bar.bottomRight() : QPointF(bar.right() - 4, bar.bottom()));
        if (!ends) shape.lineTo(QPointF(bar.right() + 4, middle));
        shape.closeSubpath();
        painter.setPen(QPen(ink, 1));
        painter.setBrush(chosen ? QBrush(ink, Qt::Dense6Pattern) : QBrush(mixed(shades.base, shades.job, 0.28)));
        painter.drawPath(shape);
        if (marks.likely >= 0 && marks.likely <= days) {
            painter.setPen(QPen(ink, 2.4));
            painter.drawLine(QPointF(axis.x(marks.likely), bar.top() - 3), QPointF(axis.x(marks.likely), bar.bottom() + 3));
        }
    }
    if (marks.orderBy < 0 || marks.orderBy > days) return;
    const double x = axis.x(marks.orderBy);
    painter.setPen(Qt::NoPen);
    painter.setBrush(inkOf(palette, chosen, shades.bad));
    painter.drawPolygon(QPolygonF{{x - 4.5, cell.top() + 1}, {x + 4.5, cell.top() + 1}, {x, cell.top() + 8}});
}

StockHeader::StockHeader(const StockModel& model, QWidget* parent) : QHeaderView(Qt::Horizontal, parent), m_model(model) {
    setSectionsClickable(true);
    setHighlightSections(true);
    setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
}

QSize StockHeader::sizeHint() const {
    const QSize stock = QHeaderView::sizeHint();
    return {stock.width(), std::max(stock.height(), 2 * fontMetrics().lineSpacing() + 10)};
}

void StockHeader::paintSection(QPainter* painter, const QRect& rect, int section) const {
    if (section != StockModel::RunsOut || !m_model.today().isValid()) return QHeaderView::paintSection(painter, rect, section);
    const int line = fontMetrics().lineSpacing() + 2;
    painter->save();
    QHeaderView::paintSection(painter, rect, section);  // its title stands at the top
    painter->restore();
    painter->save();
    const DayAxis axis(rect, m_model.axisDays());
    painter->setLayoutDirection(Qt::LeftToRight);
    painter->setPen(palette().color(QPalette::ButtonText));
    double free = rect.left();
    for (const int month : monthsOnAxis(m_model.today(), m_model.axisDays())) {
        const QString words = monthText(m_model.today().addDays(month), QLocale());
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
