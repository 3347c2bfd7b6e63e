#include "app/pages/patterns/inspection_form.h"

#include "app/edits/plain_label.h"
#include "app/pages/patterns/inspection_model.h"
#include "app/widgets/cell_table.h"
#include "app/widgets/decimal_text.h"

#include <QDateTimeEdit>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

InspectionForm::InspectionForm(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("An inspection of a lane"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_title = headingLabel({}, this));
    column->addWidget(
        proseLabel(tr("Departures from the true plane; up, or the right edge above the left, is +. Leave a cell empty "
                      "where nothing was measured."),
                   this));
    auto* row = new QHBoxLayout;
    const auto add = [this, row](const QString& name, QWidget* field, int stretch = 0) {
        auto* label = plainLabel(name, this);
        label->setBuddy(field);
        row->addWidget(label);
        row->addWidget(field, stretch);
    };
    add(tr("&Lane:"), m_lane = new QSpinBox(this));
    add(tr("&Taken:"), m_at = momentField(this));
    add(tr("&Note:"), m_note = new QLineEdit(this), 1);
    column->addLayout(row);
    m_model = new InspectionModel(this);
    m_table = new CellTable(m_model, this);
    m_table->setAccessibleName(tr("Measured departures by distance and feature"));
    column->addWidget(m_table, 1);
    auto* buttons = new QHBoxLayout;
    m_problem = proseLabel({}, this);
    auto* save = new QPushButton(tr("&Keep the inspection"), this);
    save->setObjectName("keepInspection");
    auto* leave = new QPushButton(tr("Cancel"), this);
    leave->setObjectName("leaveInspection");
    buttons->addWidget(m_problem, 1);
    buttons->addWidget(save);
    buttons->addWidget(leave);
    column->addLayout(buttons);
    connect(save, &QPushButton::clicked, this, &InspectionForm::submit);
    connect(leave, &QPushButton::clicked, this, &InspectionForm::cancelled);
}

void InspectionForm::begin(int lane) {
    m_corrects.reset();
    m_title->setText(tr("An inspection"));
    m_lane->setRange(1, std::max(1, m_session.season().centre.facts.lanes));
    m_lane->setValue(lane);
    setMoment(*m_at, m_session.now(), m_session.zone());
    m_note->clear();
    m_problem->clear();
    m_model->begin({}, m_session.speech());
    m_lane->setFocus();
    m_lane->selectAll();
}

void InspectionForm::correct(const Inspection& inspection) {
    begin(inspection.lane);
    m_corrects = inspection.id;
    m_title->setText(tr("Correct an inspection"));
    setMoment(*m_at, inspection.at, m_session.zone());
    m_note->setText(inspection.note);
    m_model->begin(inspection.values, m_session.speech());
}

QString InspectionForm::problemOf(const Inspection& inspection) const {
    const Speech speech = m_session.speech();
    if (const int row = m_model->firstBad(); row >= 0)
        return tr("Nothing kept yet: row %1: %2.").arg(speech.locale.toString(row + 1), m_model->remark(row));
    if (inspection.values.empty()) return tr("Nothing kept yet: no departure has been typed.");
    if (inspection.at > m_session.now()) return tr("Nothing kept yet: the time is still to come.");
    const std::vector<Finding> faults = faultsOf(inspection, m_session.season().centre.facts.lanes);
    return faults.empty() ? QString() : tr("Nothing kept yet: %1.").arg(text(faults.front(), speech));
}

void InspectionForm::submit() {
    m_table->finishEditing();
    Inspection made;
    made.at = momentOf(*m_at, m_session.zone());
    made.lane = m_lane->value();
    made.values = m_model->values();
    made.note = m_note->text().trimmed();
    made.corrects = m_corrects;
    const QString problem = problemOf(made);
    m_problem->setText(problem);
    if (problem.isEmpty()) Q_EMIT finished(made);
}

void InspectionForm::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT cancelled();
    } else if (auto* button = qobject_cast<QPushButton*>(focusWidget()); enter && button && button->hasFocus()) {
        button->click();
    } else if (enter && !m_table->isAncestorOf(focusWidget())) {
        submit();
    } else {
        QFrame::keyPressEvent(event);
    }
}

}  // namespace laneward
