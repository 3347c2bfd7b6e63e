// Paints what the list of supplies shows instead of words: a line of the stock ahead, and the range in which it runs out on one
// date axis (app/widgets/date_axis.h) with the day by which it must be ordered.
#pragma once

#include <QStyledItemDelegate>

namespace laneward {

class StockModel;
struct StockMarks;

class StockDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    StockDelegate(const StockModel& model, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void paintLine(QPainter& painter, const QRectF& cell, const StockMarks& marks, const QPalette& palette, bool chosen) const;

    const StockModel& m_model;
};

}  // namespace laneward
