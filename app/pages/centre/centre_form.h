// What the forms of the centre have in common: a row of the centre is made or changed, and what would be wrong with the centre
// then is told.
#pragma once

#include "app/edits/edit_form.h"

#include <algorithm>

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

/// A form for the rows of one of the centre's lists.
template <class T>
class CentreRowForm : public CentreForm {
public:
    using Rows = std::vector<T> Centre::*;

    void create() {
        m_isNew = true;
        m_loaded = blank();
        m_loaded.id = {session().newOperation().value};
        open(title());
    }
    void edit(const decltype(T::id)& id) {
        m_isNew = false;
        m_loaded.id = id;
        if (!stored()) return;
        m_loaded = *stored();
        open(title());
    }

protected:
    CentreRowForm(Session& session, Rows rows, QWidget* parent) : CentreForm(session, parent), m_rows(rows) {}

    virtual T blank() const { return {}; }
    virtual void fill(const T& row) = 0;  ///< the fields
    virtual T draft() const = 0;          ///< from the fields
    virtual QString title() const = 0;
    virtual QString deedName(const T& made) const = 0;

    bool isNew() const { return m_isNew; }
    const T& loaded() const { return m_loaded; }
    /// The centre with the row in place of the one with its id, or behind all.
    Centre centreWith(const T& row) const {
        Centre centre = session().season().centre;
        std::vector<T>& rows = centre.*m_rows;
        const auto old = std::find_if(rows.begin(), rows.end(), [&](const T& one) { return one.id == m_loaded.id; });
        if (old == rows.end())
            rows.push_back(row);
        else
            *old = row;
        return centre;
    }

    bool isOther() const override { return !m_isNew && (!stored() || stored()->version != m_loaded.version); }
    void reload() override {
        if (stored()) m_loaded = *stored();
        fill(m_loaded);
    }
    bool store() override {
        const T made = draft();
        return session().apply(deedName(made), {RowChange<T>{m_isNew ? std::nullopt : std::optional(m_loaded), made}});
    }

private:
    const T* stored() const {
        const std::vector<T>& rows = session().season().centre.*m_rows;
        const auto found = std::find_if(rows.begin(), rows.end(), [this](const T& row) { return row.id == m_loaded.id; });
        return found == rows.end() ? nullptr : &*found;
    }

    Rows m_rows;
    bool m_isNew = false;
    T m_loaded;
};

}  // namespace laneward
