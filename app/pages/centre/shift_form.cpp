#include "app/pages/centre/shift_form.h"

#include "app/edits/date_list.h"
#include "app/edits/plain_label.h"

#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QSpinBox>
#include <QTimeEdit>

namespace laneward {

namespace {

constexpr int mostPeople = 999;  // more than can be: what cannot is said, not cut off
constexpr int wideField = 420;

}  // namespace

ShiftForm::ShiftForm(Session& session, QWidget* parent) : CentreForm(session, parent) {
    m_name = lineField("shiftName", limits::nameLength + 1);
    addRow(tr("&Name:"), m_name, {"centre.no-name", "centre.name-too-long", "centre.name-twice"});
    buildWhen();
    buildRest();
    finish();
}

void ShiftForm::buildWhen() {
    const QLocale locale = session().speech().locale;
    auto* days = new QHBoxLayout;
    for (int day = 0; day < int(m_days.size()); ++day) {
        m_days[size_t(day)] =
            checkField(qPrintable("shiftDay" + QString::number(day)), locale.dayName(day + 1, QLocale::ShortFormat));
        m_days[size_t(day)]->setAccessibleName(locale.dayName(day + 1));
        days->addWidget(m_days[size_t(day)]);
    }
    addRow(tr("&On:"), days, m_days.front(), {});
    auto* times = new QHBoxLayout;
    times->addWidget(m_begin = timeField("shiftBegin"));
    times->addWidget(plainLabel(tr("to", "time"), this));
    times->addWidget(m_end = timeField("shiftEnd"));
    m_end->setAccessibleName(tr("Works until; the same or earlier is on the next day"));
    times->addStretch(1);
    addRow(tr("&Works from:"), times, m_begin, {"shift.no-time"});
}

void ShiftForm::buildRest() {
    m_people = numberField("shiftPeople", mostPeople);
    auto* overtime = new QHBoxLayout;
    overtime->addWidget(m_before = minutesField("shiftBefore"));
    overtime->addWidget(plainLabel(tr("before,", "overtime"), this));
    overtime->addWidget(m_after = minutesField("shiftAfter"));
    overtime->addWidget(plainLabel(tr("after", "overtime"), this));
    m_before->setAccessibleName(tr("Overtime before the shift"));
    m_after->setAccessibleName(tr("Overtime after the shift"));
    addRow(tr("&People at once:"), m_people, {"shift.people"});
    addRow(tr("Over&time allowed:"), overtime, m_before, {"shift.overtime"});
    m_daysOff = lineField("shiftDaysOff", limits::noteLength);
    m_extraDays = lineField("shiftExtraDays", limits::noteLength);
    for (const auto& [label, field] :
         {std::pair{tr("Not o&n these days:"), m_daysOff}, std::pair{tr("&Also on these days:"), m_extraDays}}) {
        auto* row = new QHBoxLayout;
        field->setFixedWidth(wideField);
        row->addWidget(field);
        addRow(label, row, field, {field == m_daysOff ? "shift.days-off-unreadable" : "shift.extra-days-unreadable"});
    }
}

void ShiftForm::create() {
    m_isNew = true;
    m_loaded = Shift{};
    m_loaded.id = {session().newOperation().value};
    open(tr("A new shift"));
}

void ShiftForm::edit(const ShiftId& shift) {
    m_isNew = false;
    m_loaded.id = shift;
    if (!stored()) return;
    open(shown(stored()->name));
}

const Shift* ShiftForm::stored() const { return rowOf(session().season().centre.shifts, m_loaded.id); }

void ShiftForm::reload() {
    if (stored()) m_loaded = *stored();
    m_name->setText(m_loaded.name);
    for (size_t day = 0; day < m_days.size(); ++day)
        m_days[day]->setChecked(m_loaded.weekdays & (1U << day));
    m_begin->setTime(m_loaded.begin);
    m_end->setTime(m_loaded.end);
    m_people->setValue(m_loaded.people);
    showMinutes(*m_before, m_loaded.overtimeBefore);
    showMinutes(*m_after, m_loaded.overtimeAfter);
    m_daysOff->setText(datesText(m_loaded.daysOff));
    m_extraDays->setText(datesText(m_loaded.extraDays));
}

bool ShiftForm::isOther() const { return !m_isNew && (!stored() || stored()->version != m_loaded.version); }

Shift ShiftForm::draft() const {
    const QLocale locale = session().speech().locale;
    Shift shift = m_loaded;
    shift.name = m_name->text().trimmed();
    shift.weekdays = 0;
    for (size_t day = 0; day < m_days.size(); ++day) {
        if (m_days[day]->isChecked()) shift.weekdays |= std::uint8_t(1U << day);
    }
    shift.begin = m_begin->time();
    shift.end = m_end->time();
    shift.people = m_people->value();
    shift.overtimeBefore = secondsOf(*m_before);
    shift.overtimeAfter = secondsOf(*m_after);
    shift.daysOff = readDates(m_daysOff->text(), locale);
    shift.extraDays = readDates(m_extraDays->text(), locale);
    return shift;
}

std::vector<Finding> ShiftForm::faults() const {
    Centre centre = session().season().centre;
    put(centre.shifts, draft());
    std::vector<Finding> found = newFaults(centre);
    const QString example = QDate(session().today().year(), 12, 24).toString(Qt::ISODate);
    for (const auto& [field, rule] :
         {std::pair{m_daysOff, "shift.days-off-unreadable"}, std::pair{m_extraDays, "shift.extra-days-unreadable"}}) {
        QStringList bad;
        readDates(field->text(), session().speech().locale, &bad);
        if (!bad.isEmpty()) found.push_back({Severity::Fault, rule, bad.front(), {example}});
    }
    return found;
}

bool ShiftForm::store() {
    if (m_isNew) return session().apply(tr("New shift: %1").arg(shown(draft().name)), {RowChange<Shift>{std::nullopt, draft()}});
    return session().apply(tr("Change the shift %1").arg(shown(m_loaded.name)), {RowChange<Shift>{m_loaded, draft()}});
}

}  // namespace laneward
