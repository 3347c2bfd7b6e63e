#include "app/pages/patterns/strokes_table.h"

#include "app/pages/patterns/strokes_model.h"

#include <QComboBox>
#include <QHeaderView>
#include <QKeyEvent>
#include <QStyledItemDelegate>

namespace laneward {

namespace {

/// A combo box where there is only a choice, a line where something is typed.
class StrokeDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const auto* model = qobject_cast<const StrokesModel*>(index.model());
        if (index.column() != StrokesModel::DirectionColumn && index.column() != StrokesModel::Conditioner)
            return QStyledItemDelegate::createEditor(parent, option, index);
        auto* choice = new QComboBox(parent);
        if (index.column() == StrokesModel::DirectionColumn) {
            choice->addItem(model->directionText(Direction::Out), int(Direction::Out));
            choice->addItem(model->directionText(Direction::Back), int(Direction::Back));
        } else {
            for (int slot = 0; slot < conditionerSlots; ++slot)
                choice->addItem(model->conditionerText(slot), slot);
        }
        auto* self = const_cast<StrokeDelegate*>(this);
        QObject::connect(choice, &QComboBox::activated, self, [self, choice] {
            Q_EMIT self->commitData(choice);
            Q_EMIT self->closeEditor(choice);
        });
        return choice;
    }

    void setEditorData(QWidget* editor, const QModelIndex& index) const override {
        auto* choice = qobject_cast<QComboBox*>(editor);
        if (!choice) return QStyledItemDelegate::setEditorData(editor, index);
        choice->setCurrentIndex(choice->findData(index.data(Qt::EditRole)));
    }

    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override {
        const auto* choice = qobject_cast<QComboBox*>(editor);
        if (!choice) return QStyledItemDelegate::setModelData(editor, model, index);
        model->setData(index, choice->currentData());
    }
};

bool isOwn(const QKeyEvent& keys) { return keys.matches(QKeySequence::Undo) || keys.matches(QKeySequence::Redo); }

}  // namespace

StrokesTable::StrokesTable(StrokesModel* model, QWidget* parent) : QTableView(parent) {
    setModel(model);
    setItemDelegate(new StrokeDelegate(this));
    setAccessibleName(tr("Strokes in working order"));
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed | QAbstractItemView::AnyKeyPressed);
    setTabKeyNavigation(false);  // from cell to cell while one types, else on
    setAlternatingRowColors(true);
    setWordWrap(true);
    verticalHeader()->setMinimumSectionSize(24);
    verticalHeader()->setDefaultSectionSize(std::max(26, fontMetrics().height() + 8));
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(StrokesModel::Conditioner, QHeaderView::Stretch);
}

/// What is typed here is taken back here before the window's own undo.
bool StrokesTable::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && isOwn(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QTableView::event(event);
}

void StrokesTable::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Undo)) {
        Q_EMIT undoAsked();
    } else if (event->matches(QKeySequence::Redo)) {
        Q_EMIT redoAsked();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        edit(currentIndex());
    } else {
        QTableView::keyPressEvent(event);
    }
}

}  // namespace laneward
