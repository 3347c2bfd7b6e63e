#include "app/pages/patterns/limits_form.h"

#include "app/edits/plain_label.h"

#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace laneward {

namespace {

constexpr double perUnit = 1'000;  // limits are kept in thousandths
constexpr double mostUnits = 100;
constexpr double mostRatio = 50;

template <class T>
double shownLimit(const std::optional<T>& limit) {
    return limit ? double(*limit) / perUnit : 0;
}

template <class T>
std::optional<T> limitOf(const QDoubleSpinBox& field) {
    return field.value() > 0 ? std::optional(T(std::llround(field.value() * perUnit))) : std::nullopt;
}

}  // namespace

LimitsForm::LimitsForm(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->addWidget(headingLabel(tr("What this centre asks of a tape reading"), this));
    column->addWidget(
        proseLabel(tr("Readings that do not hold are marked. A field that is left empty asks nothing. The rules of the sport's "
                      "governing body are shown beside them; its current rule book decides."),
                   this));
    auto* form = new QFormLayout;
    m_lowest = addLimit(form, tr("At &least on every oiled board, units:"), mostUnits);
    m_error = addLimit(form, tr("Mean &error at most, units:"), mostUnits);
    m_leastTrack = addLimit(form, tr("Track &ratio at least:"), mostRatio);
    m_mostTrack = addLimit(form, tr("Track ratio at &most:"), mostRatio);
    column->addLayout(form);
    auto* row = new QHBoxLayout;
    auto* keepButton = new QPushButton(tr("&Keep the limits"), this);
    keepButton->setObjectName("keepLimits");
    auto* leave = new QPushButton(tr("Cancel"), this);
    row->addWidget(keepButton);
    row->addWidget(leave);
    row->addStretch();
    column->addLayout(row);
    column->addStretch();
    connect(keepButton, &QPushButton::clicked, this, &LimitsForm::keep);
    connect(leave, &QPushButton::clicked, this, &LimitsForm::closed);
}

QDoubleSpinBox* LimitsForm::addLimit(QFormLayout* form, const QString& name, double most) {
    auto* field = new QDoubleSpinBox(this);
    field->setRange(0, most);
    field->setDecimals(1);
    field->setSingleStep(0.1);
    field->setSpecialValueText(tr("none"));
    field->setMaximumWidth(120);
    addField(form, name, field);
    return field;
}

void LimitsForm::begin() {
    const ReadingLimits& limits = m_session.season().centre.facts.readingLimits;
    m_lowest->setValue(shownLimit(limits.lowestMilliUnits));
    m_error->setValue(shownLimit(limits.largestErrorMilliUnits));
    m_leastTrack->setValue(shownLimit(limits.leastTrackPermille));
    m_mostTrack->setValue(shownLimit(limits.mostTrackPermille));
    m_lowest->setFocus();
    m_lowest->selectAll();
}

void LimitsForm::keep() {
    const CentreFacts before = m_session.season().centre.facts;
    CentreFacts after = before;
    after.readingLimits = {limitOf<std::int64_t>(*m_lowest), limitOf<std::int64_t>(*m_error), limitOf<int>(*m_leastTrack),
                           limitOf<int>(*m_mostTrack)};
    if (after == before || m_session.apply(tr("Limits of tape readings"), {RowChange<CentreFacts>{before, after}}))
        Q_EMIT closed();
}

/// Fields let Enter pass on to the form; on a button it presses that button.
void LimitsForm::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT closed();
    } else if (auto* button = qobject_cast<QPushButton*>(focusWidget()); enter && button) {
        button->click();
    } else if (enter) {
        keep();
    } else {
        QWidget::keyPressEvent(event);
    }
}

}  // namespace laneward
