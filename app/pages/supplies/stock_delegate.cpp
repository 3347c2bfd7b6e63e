#include "app/pages/supplies/stock_delegate.h"

#include "app/pages/supplies/stock_model.h"
#include "app/widgets/date_axis.h"
#include "app/widgets/shades.h"

#include <QApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace laneward {

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
        paintRange(*painter, {marks.early, marks.likely, marks.late, marks.orderBy}, m_model.axis(),
                   {cell, option.palette, chosen});
    painter->restore();
}

void StockDelegate::paintLine(QPainter& painter, const QRectF& cell, const StockMarks& marks, const QPalette& palette,
                              bool chosen) const {
    const Shades shades = shadesOf(palette);
    const DayAxis axis(cell, StockModel::sparkDays);
    const double bottom = cell.bottom() - 5;
    const double height = cell.height() - 10;
    painter.setPen(QPen(markInk(palette, chosen, shades.edge), 1));
    painter.drawLine(QPointF(axis.x(0), bottom), QPointF(axis.right(), bottom));
    QPainterPath path;
    for (qsizetype day = 0; day < marks.stock.size(); ++day) {
        const QPointF at(axis.x(double(day)), bottom - marks.stock[day] * height);
        day == 0 ? path.moveTo(at) : path.lineTo(at);
    }
    painter.setPen(QPen(markInk(palette, chosen, shades.job), 1.8));
    painter.drawPath(path);
}

}  // namespace laneward
