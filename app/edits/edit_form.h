// A form in the page that changes one stored row: what cannot be is said beside its field while it is typed, keeping it is one
// undoable edit. Esc leaves it, Enter keeps it.
#pragma once

#include "app/edits/session.h"

#include <QFrame>

class QGridLayout;
class QLabel;
class QLayout;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class EditForm : public QFrame {
    Q_OBJECT

public:
    bool isOpen() const { return !isHidden(); }
    void leave();
    /// The session is another: what is stored is shown unless something was typed.
    void refresh();
    /// What stands beside the fields and below them now.
    QStringList problems() const;
    bool save();

Q_SIGNALS:
    void left();

protected:
    explicit EditForm(Session& session, QWidget* parent);

    /// Findings whose rule is among `rules` are told beside the field.
    void addRow(const QString& name, QWidget* field, const QStringList& rules);
    /// Several widgets as one field; `first` gets the focus.
    void addRow(const QString& name, QLayout* fields, QWidget* first, const QStringList& rules);
    /// After all rows: the buttons.
    void finish();
    void open(const QString& title);
    void touched();
    void setRowVisible(const QWidget* first, bool visible);
    Session& session() const { return m_session; }

    virtual std::vector<Finding> faults() const = 0;
    virtual std::vector<Finding> doubts() const { return {}; }
    /// Stores the draft; false when it was refused (which the session has said).
    virtual bool store() = 0;
    /// Whether the row that is edited is no longer as it was loaded; and loading it again.
    virtual bool isOther() const = 0;
    virtual void reload() = 0;

    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Row {
        QLabel* name;
        QWidget* field;
        QWidget* first;
        QStringList rules;
        QLabel* words;
    };

    void look();

    Session& m_session;
    std::vector<Row> m_rows;
    QVBoxLayout* m_column = nullptr;
    QGridLayout* m_grid = nullptr;
    QWidget* m_fields = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_problem = nullptr;
    QPushButton* m_save = nullptr;
    bool m_dirty = false;
    bool m_loading = true;
};

}  // namespace laneward
