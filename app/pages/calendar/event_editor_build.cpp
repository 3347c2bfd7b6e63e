#include "app/pages/calendar/demand_rows.h"
#include "app/pages/calendar/event_editor.h"
#include "app/pages/calendar/recurrence_edit.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QStyle>
#include <QTimeEdit>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

namespace laneward {

namespace {

QLabel* plain(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

QLabel* strong(QWidget* parent) {
    QLabel* label = plain(parent);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    return label;
}

QFormLayout* formIn(QVBoxLayout* column) {
    auto* form = new QFormLayout;
    column->addLayout(form);
    return form;
}

QWidget* pair(QWidget* a, QWidget* b) {
    auto* box = new QWidget;
    auto* line = new QHBoxLayout(box);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(a, 3);
    line->addWidget(b, 2);
    return box;
}

}  // namespace

void EventEditor::build() {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Event editor"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* body = m_body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(12, 10, 12, 10);
    buildHead(column);
    QFormLayout* form = formIn(column);
    buildBasics(form);
    buildTimes(form);
    m_recurrence = new RecurrenceEdit(body);
    column->addWidget(m_recurrence);
    QLabel* heading = strong(body);
    heading->setText(tr("What it asks of the lanes"));
    column->addWidget(heading);
    m_demands = new DemandRows(body);
    column->addWidget(m_demands);
    buildMore(column);
    column->addWidget(m_costHeading = strong(body));
    column->addWidget(m_cost = plain(body));
    m_cost->setAccessibleName(tr("What it costs"));
    m_costHeading->hide();
    m_cost->hide();
    column->addStretch(1);
    scroll->setWidget(body);
    whole->addWidget(scroll, 1);
    buildFoot(whole);
}

/// Wide enough for the longest label and field of the reader's language: the form never scrolls sideways.
void EventEditor::fitWidth() {
    const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    setMinimumWidth(m_body->layout()->minimumSize().width() + bar + 2 * frameWidth() + 2);
}

void EventEditor::buildHead(QVBoxLayout* column) {
    m_heading = plain(this);
    QFont font = m_heading->font();
    font.setBold(true);
    font.setPointSizeF(font.pointSizeF() * 1.15);
    m_heading->setFont(font);
    column->addWidget(m_heading);
}

void EventEditor::buildBasics(QFormLayout* form) {
    m_title = new QLineEdit(this);
    m_title->setMaxLength(limits::nameLength);
    m_title->setAccessibleName(tr("Title"));
    form->addRow(tr("&Title"), m_title);
    m_kind = new QComboBox(this);
    m_kind->setAccessibleName(tr("Kind"));
    for (int kind = 0; kind <= int(EventKind::Other); ++kind)
        m_kind->addItem(text(EventKind(kind)), kind);
    form->addRow(tr("&Kind"), m_kind);
    m_lanes = new QLineEdit(this);
    m_lanes->setPlaceholderText(tr("for example 1-12, 15"));
    m_lanes->setAccessibleName(tr("Lanes"));
    form->addRow(tr("&Lanes"), m_lanes);
}

void EventEditor::buildTimes(QFormLayout* form) {
    m_day = new QDateEdit(this);
    m_from = new QTimeEdit(this);
    m_lastDay = new QDateEdit(this);
    m_to = new QTimeEdit(this);
    m_day->setAccessibleName(tr("First day"));
    m_from->setAccessibleName(tr("Begins at"));
    m_lastDay->setAccessibleName(tr("Ends on"));
    m_to->setAccessibleName(tr("Ends at"));
    m_day->setCalendarPopup(true);
    m_lastDay->setCalendarPopup(true);
    form->addRow(tr("&Begins"), pair(m_day, m_from));
    form->addRow(tr("&Until"), pair(m_lastDay, m_to));
    m_zoneNote = plain(this);
    form->addRow(m_zoneNote);
}

QSpinBox* EventEditor::minutesBox(const QString& name) {
    auto* box = new QSpinBox(this);
    box->setRange(0, 24 * 60);
    box->setSuffix(tr(" min"));
    box->setAccessibleName(name);
    return box;
}

void EventEditor::buildMore(QVBoxLayout* column) {
    m_moreButton = new QToolButton(this);
    m_moreButton->setText(tr("Mo&re"));
    m_moreButton->setAccessibleName(tr("More settings"));
    m_moreButton->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    m_moreButton->setArrowType(Qt::RightArrow);
    m_moreButton->setCheckable(true);
    m_moreButton->setMinimumHeight(26);
    column->addWidget(m_moreButton);
    m_more = new QWidget(this);
    auto* form = new QFormLayout(m_more);
    form->setContentsMargins(0, 0, 0, 0);
    m_settle = minutesBox(tr("Settle time"));
    form->addRow(tr("Settle time"), m_settle);
    m_clearing = minutesBox(tr("Clearing time"));
    form->addRow(tr("Clearing time"), m_clearing);
    buildOrganisation(form);
    m_more->hide();
    column->addWidget(m_more);
    connect(m_moreButton, &QToolButton::toggled, this, [this](bool open) {
        m_more->setVisible(open);
        m_moreButton->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
    });
}

void EventEditor::buildOrganisation(QFormLayout* form) {
    m_players = new QSpinBox(this);
    m_players->setRange(0, 10'000);
    m_players->setAccessibleName(tr("Players"));
    form->addRow(tr("Players"), m_players);
    m_twice = new QCheckBox(tr("Work the first pair twice"), this);
    m_yields = new QCheckBox(tr("Does not take place while the centre is closed"), this);
    m_noStaff = new QCheckBox(tr("Nobody is there to treat lanes"), this);
    m_cancelled = new QCheckBox(tr("Called off"), this);
    for (QCheckBox* box : {m_twice, m_yields, m_noStaff, m_cancelled}) {
        box->setMinimumHeight(24);
        form->addRow(box);
    }
    m_note = new QPlainTextEdit(this);
    m_note->setAccessibleName(tr("Note"));
    m_note->setTabChangesFocus(true);
    m_note->setMaximumHeight(80);
    form->addRow(tr("Note"), m_note);
}

void EventEditor::buildFoot(QVBoxLayout* column) {
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(12, 0, 12, 10);
    m_problems = strong(this);
    m_problems->setAccessibleName(tr("What is wrong"));
    m_consequences = plain(this);
    m_consequences->setAccessibleName(tr("What it changes"));
    foot->addWidget(m_problems);
    foot->addWidget(m_consequences);
    auto* row = new QHBoxLayout;
    m_save = new QPushButton(tr("&Save"), this);
    m_save->setDefault(true);
    m_revert = new QPushButton(tr("Revert"), this);
    auto* close = new QPushButton(tr("Close (Esc)"), this);
    for (QPushButton* button : {m_save, m_revert, close}) {
        button->setMinimumHeight(28);
        row->addWidget(button);
    }
    foot->addLayout(row);
    column->addLayout(foot);
    connect(m_save, &QPushButton::clicked, this, &EventEditor::save);
    connect(m_revert, &QPushButton::clicked, this, &EventEditor::revert);
    connect(close, &QPushButton::clicked, this, &EventEditor::closeAsked);
}

void EventEditor::connectFields() {
    for (QLineEdit* field : {m_title, m_lanes})
        connect(field, &QLineEdit::textEdited, this, &EventEditor::touched);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &EventEditor::touched);
    connect(m_day, &QDateEdit::dateChanged, this, &EventEditor::startMoved);
    connect(m_from, &QTimeEdit::timeChanged, this, &EventEditor::startMoved);
    connect(m_lastDay, &QDateEdit::dateChanged, this, &EventEditor::touched);
    connect(m_to, &QTimeEdit::timeChanged, this, &EventEditor::touched);
    connect(m_demands, &DemandRows::edited, this, &EventEditor::touched);
    connect(m_recurrence, &RecurrenceEdit::edited, this, &EventEditor::touched);
    for (QSpinBox* box : {m_settle, m_clearing, m_players})
        connect(box, &QSpinBox::valueChanged, this, &EventEditor::touched);
    for (QCheckBox* box : {m_twice, m_yields, m_noStaff, m_cancelled})
        connect(box, &QCheckBox::toggled, this, &EventEditor::touched);
    connect(m_note, &QPlainTextEdit::textChanged, this, &EventEditor::touched);
    m_pause = new QTimer(this);
    m_pause->setSingleShot(true);
    m_pause->setInterval(350);
    connect(m_pause, &QTimer::timeout, this, &EventEditor::lookAhead);
}

}  // namespace laneward
