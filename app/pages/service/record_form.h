// A form that writes down what happened: it ends with when that was, now unless typed, and a note. What is recorded never
// changes, so nobody else can have changed it meanwhile.
#pragma once

#include "app/edits/edit_form.h"

class QCheckBox;
class QDateTimeEdit;
class QLineEdit;

namespace laneward {

class RecordForm : public EditForm {
    Q_OBJECT

protected:
    /// `name` begins the names of its fields.
    RecordForm(Session& session, const char* name, QWidget* parent);

    QCheckBox* addCheck(const QString& words, const char* name);
    /// The last rows; findings whose rule is among `rules` are told beside the time.
    void addEnd(const QString& when, const QStringList& rules);
    QDateTimeEdit* atField() const { return m_at; }
    Instant at() const;
    QString note() const;

    bool isOther() const override { return false; }
    void reload() override;

private:
    QString m_name;
    QDateTimeEdit* m_at = nullptr;
    QLineEdit* m_note = nullptr;
};

}  // namespace laneward
