// What the forms of the centre have in common: a row of the centre is made or changed, and what would be wrong with the centre
// then is told.
#pragma once

#include "app/edits/edit_form.h"

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QLineEdit;
class QSpinBox;
class QTimeEdit;

namespace laneward {

class CentreForm : public EditForm {
    Q_OBJECT

protected:
    using EditForm::EditForm;

    /// Fields that tell when they are touched.
    QLineEdit* lineField(const char* name, int most);
    QSpinBox* numberField(const char* name, int most, const QString& suffix = {});
    /// Minutes that are kept as seconds: what nobody typed over comes back to the second.
    QDoubleSpinBox* minutesField(const char* name);
    QCheckBox* checkField(const char* name, const QString& text);
    /// One in a row of its own, as long as its words.
    QCheckBox* addCheck(const char* name, const QString& text, const QStringList& rules);
    QComboBox* choiceField(const char* name);
    QTimeEdit* timeField(const char* name);

    /// What `changed` has wrong that the stored centre has not.
    std::vector<Finding> newFaults(const Centre& changed) const;
};

Seconds secondsOf(const QDoubleSpinBox& minutes);
void showMinutes(QDoubleSpinBox& field, Seconds value);

/// The row of that id in `rows`, null = none.
template <class Row, class RowId>
const Row* rowOf(const std::vector<Row>& rows, const RowId& id) {
    for (const Row& row : rows) {
        if (row.id == id) return &row;
    }
    return nullptr;
}

/// `row` in place of the one with its id, or behind all.
template <class Row>
void put(std::vector<Row>& rows, const Row& row) {
    for (Row& old : rows) {
        if (old.id == row.id) {
            old = row;
            return;
        }
    }
    rows.push_back(row);
}

}  // namespace laneward
