#include "app/pages/supplies/count_table.h"

#include "app/pages/supplies/count_model.h"

#include <QHeaderView>
#include <QLineEdit>
#include <QStyledItemDelegate>

namespace laneward {

namespace {

/// Fields look like fields; what cannot be typed over has the colour of the window.
class CountDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const override {
        auto* field = new QLineEdit(parent);
        field->setFrame(false);
        field->setAccessibleName(index.data(Qt::AccessibleTextRole).toString());
        if (index.column() == CountModel::Counted) field->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
        return field;
    }

protected:
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
        QStyledItemDelegate::initStyleOption(option, index);
        if (!(index.flags() & Qt::ItemIsEditable)) option->backgroundBrush = option->palette.window();
    }
};

}  // namespace

CountTable::CountTable(CountModel* model, QWidget* parent) : CellTable(model, parent) {
    setItemDelegate(new CountDelegate(this));
    setAccessibleName(tr("Count sheet"));
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(true);
    setWordWrap(false);
    verticalHeader()->hide();
}

QModelIndex CountTable::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    if (action != MoveNext && action != MovePrevious) return CellTable::moveCursor(action, modifiers);
    const int row = currentIndex().row() + (action == MoveNext ? 1 : -1);
    return model()->index(row, CountModel::Counted);
}

}  // namespace laneward
