#include "app/pages/calendar/recurrence_edit.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QFormLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>

#include <algorithm>

namespace laneward {

namespace {

using Form = RecurrenceChoice::Form;
using End = RecurrenceChoice::End;

void showRow(QFormLayout* form, QWidget* field, bool visible) {
    field->setVisible(visible);
    if (QWidget* label = form->labelForField(field)) label->setVisible(visible);
}

}  // namespace

void RecurrenceEdit::showParts() {
    const Form form = Form(m_forms->currentData().toInt());
    const bool repeats = form != Form::Once && form != Form::Custom;
    showRow(m_form, m_everyRow, repeats);
    showRow(m_form, m_weekdayRow, form == Form::Weekly);
    showRow(m_form, m_endRow, repeats);
    showRow(m_form, m_excludeRow, form != Form::Once);
    m_until->setVisible(m_end->currentIndex() == int(End::OnDate));
    m_times->setVisible(m_end->currentIndex() == int(End::AfterTimes));
    const int n = m_every->value();
    QString unit = tr("month(s)", nullptr, n);
    if (form == Form::Daily) unit = tr("day(s)", nullptr, n);
    if (form == Form::Weekly) unit = tr("week(s)", nullptr, n);
    if (form == Form::Yearly) unit = tr("year(s)", nullptr, n);
    m_everyUnit->setText(unit);
}

void RecurrenceEdit::fillExclusions() {
    m_excluded->clear();
    std::vector<LocalTime> all = m_excludedDates;
    for (const Override& change : m_overrides) {
        if (change.cancelled) all.push_back(change.original);
    }
    std::sort(all.begin(), all.end());
    for (const LocalTime& t : all) {
        auto* item = new QListWidgetItem(m_speech.locale.toString(t.date, QLocale::LongFormat), m_excluded);
        item->setSizeHint(QSize(0, 24));
        item->setData(Qt::UserRole, QDateTime(t.date, t.time, Qt::UTC));
    }
    m_excluded->setVisible(!all.empty());
    m_restore->setVisible(!all.empty());
    m_restore->setEnabled(m_excluded->currentRow() >= 0);
}

void RecurrenceEdit::excludeDay() {
    const LocalTime out{m_excludeDay->date(), m_start.time};
    if (std::find(m_excludedDates.begin(), m_excludedDates.end(), out) != m_excludedDates.end()) return;
    m_excludedDates.push_back(out);
    std::sort(m_excludedDates.begin(), m_excludedDates.end());
    fillExclusions();
    touched();
}

void RecurrenceEdit::restoreChosen() {
    const QListWidgetItem* item = m_excluded->currentItem();
    if (!item) return;
    const QDateTime when = item->data(Qt::UserRole).toDateTime();
    const LocalTime back{when.date(), when.time()};
    std::erase(m_excludedDates, back);
    for (Override& change : m_overrides) {
        if (change.original == back) change.cancelled = false;
    }
    std::erase_if(m_overrides, [](const Override& o) { return o == Override{o.original, false, {}, {}, {}, {}}; });
    fillExclusions();
    touched();
}

void RecurrenceEdit::touched() {
    if (m_loading) return;
    showParts();
    Q_EMIT edited();
}

void RecurrenceEdit::setPreview(const QString& words) { m_preview->setText(words); }

QString RecurrenceEdit::preview() const { return m_preview->text(); }

}  // namespace laneward
