#include "app/pages/service/due_delegate.h"

#include "app/pages/service/due_model.h"
#include "app/widgets/shades.h"

#include <QApplication>
#include <QPainter>

namespace laneward {

DueDelegate::DueDelegate(const DueModel& model, QObject* parent) : QStyledItemDelegate(parent), m_model(model) {}

void DueDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem item = option;
    if (index.data(DueModel::UrgentRole).toBool() && index.column() == DueModel::Left) {
        item.palette.setColor(QPalette::Text, shadesOf(option.palette).bad);
        item.font.setBold(true);
    }
    if (index.column() != DueModel::Due) return QStyledItemDelegate::paint(painter, item, index);
    QStyle* style = option.widget ? option.widget->style() : QApplication::style();
    style->drawPrimitive(QStyle::PE_PanelItemViewItem, &item, painter, option.widget);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setFont(option.font);
    painter->setLayoutDirection(Qt::LeftToRight);
    const bool chosen = option.state & QStyle::State_Selected;
    paintRange(*painter, index.data(DueModel::MarksRole).value<RangeMarks>(), m_model.axis(),
               {QRectF(option.rect), option.palette, chosen});
    painter->restore();
}

}  // namespace laneward
