#include "app/edits/edit_form.h"

#include "app/edits/plain_label.h"

#include <QAbstractSpinBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>

#include <algorithm>

namespace laneward {

namespace {

constexpr int fieldWidth = 260;
constexpr int tallField = 50;

}  // namespace

EditForm::EditForm(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    setFrameShape(QFrame::StyledPanel);
    m_column = new QVBoxLayout(this);
    m_column->addWidget(m_title = headingLabel({}, this));
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    m_fields = new QWidget(scroll);
    m_grid = new QGridLayout(m_fields);
    m_grid->setContentsMargins(0, 4, 8, 4);
    m_grid->setHorizontalSpacing(10);
    m_grid->setColumnStretch(2, 1);
    scroll->setWidget(m_fields);
    m_column->addWidget(scroll, 1);
    hide();
}

void EditForm::addRow(const QString& name, QWidget* field, const QStringList& rules) {
    field->setFixedWidth(fieldWidth);
    auto* one = new QHBoxLayout;
    one->addWidget(field);
    addRow(name, one, field, rules);
}

void EditForm::addRow(const QString& name, QLayout* fields, QWidget* first, const QStringList& rules) {
    QLabel* label = plainLabel(name, m_fields);
    label->setBuddy(first);
    auto* box = new QWidget(m_fields);
    fields->setContentsMargins(0, 0, 0, 0);
    box->setLayout(fields);
    QLabel* words = proseLabel({}, m_fields);
    words->setObjectName("problem-" + first->objectName());
    const int row = int(m_rows.size());
    // Beside a field of many lines words stand at its top.
    const bool isTall = first->minimumHeight() > tallField;
    const Qt::Alignment where = isTall ? Qt::AlignTop : Qt::AlignVCenter;
    m_grid->addWidget(label, row, 0, where | Qt::AlignLeading);
    m_grid->addWidget(box, row, 1, where | Qt::AlignLeading);
    m_grid->addWidget(words, row, 2, where);
    m_rows.push_back({label, box, first, rules, words});
}

void EditForm::finish() {
    m_grid->setRowStretch(int(m_rows.size()), 1);
    m_column->addWidget(m_problem = proseLabel({}, this));
    auto* row = new QHBoxLayout;
    m_save = new QPushButton(tr("&Save"), this);
    m_save->setObjectName("saveForm");
    auto* leaving = new QPushButton(tr("Leave it (Esc)"), this);
    leaving->setObjectName("leaveForm");
    row->addWidget(m_save);
    row->addWidget(leaving);
    row->addStretch();
    m_column->addLayout(row);
    connect(m_save, &QPushButton::clicked, this, &EditForm::save);
    connect(leaving, &QPushButton::clicked, this, &EditForm::leave);
    m_loading = false;
}

void EditForm::setRowVisible(const QWidget* first, bool visible) {
    for (const Row& row : m_rows) {
        if (row.first != first) continue;
        for (QWidget* part : std::initializer_list<QWidget*>{row.name, row.field, row.words})
            part->setVisible(visible);
    }
}

void EditForm::open(const QString& title) {
    m_loading = true;
    reload();
    m_loading = false;
    m_dirty = false;
    m_title->setText(title);
    m_save->setEnabled(!m_session.isReadOnly());
    show();
    look();
    m_rows.front().first->setFocus();
}

void EditForm::leave() {
    if (isHidden()) return;
    hide();
    Q_EMIT left();
}

void EditForm::touched() {
    if (m_loading) return;
    m_dirty = true;
    look();
}

void EditForm::refresh() {
    if (isHidden()) return;
    if (isOther() && !m_dirty) {
        m_loading = true;
        reload();
        m_loading = false;
    }
    look();
}

void EditForm::look() {
    if (m_loading) return;
    const Speech speech = m_session.speech();
    std::vector<Finding> all = faults();
    const bool sound = all.empty();
    for (Finding& doubt : doubts())
        all.push_back(std::move(doubt));
    QStringList others;
    std::vector<QStringList> words(m_rows.size());
    for (const Finding& finding : all) {
        const auto row = std::find_if(m_rows.begin(), m_rows.end(),
                                      [&](const Row& r) { return r.rules.contains(QString::fromLatin1(finding.rule)); });
        const QString line =
            (finding.severity == Severity::Fault ? QStringLiteral("! ") : QStringLiteral("? ")) + text(finding, speech);
        (row == m_rows.end() ? others : words[size_t(row - m_rows.begin())]) << line;
    }
    for (size_t n = 0; n < m_rows.size(); ++n) {
        words[n].removeDuplicates();
        m_rows[n].words->setText(words[n].join(u'\n'));
    }
    if (m_dirty && isOther())
        others << tr("This was changed meanwhile. What you typed stays; leaving it shows what is stored now.");
    m_problem->setText(others.join(u'\n'));
    m_problem->setVisible(!others.isEmpty());
    m_save->setEnabled(sound && !m_session.isReadOnly());
}

QStringList EditForm::problems() const {
    QStringList lines;
    for (const Row& row : m_rows) {
        if (!row.words->text().isEmpty()) lines << row.words->text();
    }
    if (!m_problem->text().isEmpty()) lines << m_problem->text();
    return lines;
}

bool EditForm::save() {
    look();
    if (!m_save->isEnabled()) {
        const auto bad = std::find_if(m_rows.begin(), m_rows.end(), [](const Row& row) { return !row.words->text().isEmpty(); });
        if (bad != m_rows.end()) bad->first->setFocus();
        return false;
    }
    if (!m_dirty) {
        leave();
        return true;
    }
    m_dirty = false;  // so that what comes back is taken over
    if (!store()) {
        m_dirty = true;
        look();
        return false;
    }
    leave();
    return true;
}

void EditForm::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    QWidget* focused = focusWidget();
    if (event->key() == Qt::Key_Escape) {
        leave();
    } else if (auto* button = enter ? qobject_cast<QAbstractButton*>(focused) : nullptr) {
        button->click();
    } else if (enter && !qobject_cast<QPlainTextEdit*>(focused)) {
        save();
    } else {
        QFrame::keyPressEvent(event);
    }
}

}  // namespace laneward
