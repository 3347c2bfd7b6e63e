#include "app/pages/centre/centre_tab.h"

#include "app/edits/edit_form.h"
#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTableView>

namespace laneward {

namespace {

constexpr int rowHeight = 28;

}  // namespace

CentreTab::CentreTab(Session& session, const QString& name, const CentreList& list, QWidget* parent)
    : QWidget(parent), m_session(session) {
    m_column = new QVBoxLayout(this);
    m_column->setContentsMargins(0, 6, 0, 0);
    m_sheet = new QWidget(this);
    auto* inner = new QVBoxLayout(m_sheet);
    inner->setContentsMargins(0, 0, 0, 0);
    m_sentence = proseLabel({}, m_sheet);
    m_sentence->setObjectName(name + "Sentence");
    QFont font = m_sentence->font();
    font.setBold(true);
    m_sentence->setFont(font);
    inner->addWidget(m_sentence);
    m_rows = new PlainRows(list.titles, list.numbers, this);
    m_list = listOf(m_rows, "centre/" + name, name + ".csv", session, m_sheet);
    m_list->setObjectName(name + "List");
    m_list->setAccessibleName(list.titles.value(0));
    m_list->verticalHeader()->setDefaultSectionSize(qMax(rowHeight, fontMetrics().lineSpacing() + 10));
    m_list->horizontalHeader()->setStretchLastSection(true);
    m_list->sortByColumn(-1, Qt::AscendingOrder);  // as it is given
    inner->addWidget(m_list, 1);
    m_buttons = new QHBoxLayout;
    m_buttons->addStretch(1);
    inner->addLayout(m_buttons);
    m_column->addWidget(m_sheet, 1);
    connect(m_list, &QTableView::activated, this, [this] {
        if (!chosenId().isEmpty() && m_begin && !m_session.isReadOnly()) {
            m_begin(chosenId());
            makeRoom();
        }
    });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &CentreTab::fitButtons);
}

void CentreTab::addForm(EditForm* form, std::function<void(const QString&)> begin) {
    m_form = form;
    m_begin = std::move(begin);
    m_column->addWidget(form, 1);
    connect(form, &EditForm::left, this, [this] {
        m_sheet->show();
        m_list->setFocus();
    });
}

QPushButton* CentreTab::button(const QString& text, const QString& name) {
    auto* made = new QPushButton(text, m_sheet);
    made->setObjectName(name);
    made->setMinimumHeight(rowHeight);
    made->setEnabled(!m_session.isReadOnly());
    m_buttons->insertWidget(m_buttons->count() - 1, made);
    return made;
}

void CentreTab::addButton(const QString& text, const QString& name, std::function<void()> deed) {
    connect(button(text, name), &QPushButton::clicked, this, [this, deed = std::move(deed)] {
        deed();
        makeRoom();
    });
}

void CentreTab::addRowButton(const QString& text, const QString& name, std::function<void(const QString&)> deed) {
    m_ofRow.push_back(button(text, name));
    connect(m_ofRow.back(), &QPushButton::clicked, this, [this, deed = std::move(deed)] {
        if (const QString id = chosenId(); !id.isEmpty()) deed(id);
        makeRoom();
    });
}

void CentreTab::makeRoom() { m_sheet->setVisible(!isFormOpen()); }

bool CentreTab::isFormOpen() const { return m_form && m_form->isOpen(); }

QString CentreTab::chosenId() const {
    const int row = chosenRow(*m_list);
    return row < 0 ? QString() : m_rows->idAt(row);
}

void CentreTab::focusList() {
    if (!isFormOpen()) m_list->setFocus();
}

void CentreTab::show(CentreList list) {
    const QString before = chosenId();
    m_sentence->setText(list.sentence);
    m_rows->show(std::move(list.rows));
    fitColumns(*m_list);
    const int row = m_rows->rowOf(before);
    if (m_rows->rowCount() > 0) chooseRow(*m_list, std::max(row, 0));
    fitButtons();
    if (m_form) m_form->refresh();
}

void CentreTab::fitButtons() {
    for (QPushButton* one : m_ofRow)
        one->setEnabled(!chosenId().isEmpty() && !m_session.isReadOnly());
}

}  // namespace laneward
