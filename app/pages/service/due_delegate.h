// Paints when a duty falls due on the axis that all rows share; other cells in words, what is due now in bold.
#pragma once

#include <QStyledItemDelegate>

namespace laneward {

class DueModel;

class DueDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    DueDelegate(const DueModel& model, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const DueModel& m_model;
};

}  // namespace laneward
