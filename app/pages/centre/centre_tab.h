// One list of the centre with its sentence and its buttons; a form takes their place while it is open.
#pragma once

#include "app/pages/centre/centre_rows.h"

#include <QWidget>

#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace laneward {

class EditForm;
class Session;

class CentreTab : public QWidget {
    Q_OBJECT

public:
    /// `name` tells the lists apart: of their choice of columns, and of the objects.
    CentreTab(Session& session, const QString& name, const CentreList& list, QWidget* parent = nullptr);

    /// Takes the form over. `begin` opens it for a row.
    void addForm(EditForm* form, std::function<void(const QString& id)> begin);
    void addButton(const QString& text, const QString& name, std::function<void()> deed);
    /// For the row that is chosen, grey without one.
    void addRowButton(const QString& text, const QString& name, std::function<void(const QString& id)> deed);

    void show(CentreList list);
    bool isFormOpen() const;
    QString chosenId() const;
    void focusList();

private:
    QPushButton* button(const QString& text, const QString& name);
    /// The list makes room for a form that has opened.
    void makeRoom();
    void fitButtons();

    Session& m_session;
    QWidget* m_sheet = nullptr;
    QLabel* m_sentence = nullptr;
    PlainRows* m_rows = nullptr;
    QTableView* m_list = nullptr;
    QHBoxLayout* m_buttons = nullptr;
    QVBoxLayout* m_column = nullptr;
    EditForm* m_form = nullptr;
    std::function<void(const QString&)> m_begin;
    std::vector<QPushButton*> m_ofRow;
};

}  // namespace laneward
