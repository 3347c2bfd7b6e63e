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

ShiftForm::ShiftForm(Session& session, QWidget* parent) : CentreRowForm(session, &Centre::shifts, parent) {
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

void ShiftForm::fill(const Shift& shift) {
    m_name->setText(shift.name);
    for (size_t day = 0; day < m_days.size(); ++day)
        m_days[day]->setChecked(shift.weekdays & (1U << day));
    m_begin->setTime(shift.begin);
    m_end->setTime(shift.end);
    m_people->setValue(shift.people);
    showMinutes(*m_before, shift.overtimeBefore);
    showMinutes(*m_after, shift.overtimeAfter);
    m_daysOff->setText(datesText(shift.daysOff));
    m_extraDays->setText(datesText(shift.extraDays));
}

Shift ShiftForm::draft() const {
    const QLocale locale = session().speech().locale;
    Shift shift = loaded();
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
    std::vector<Finding> found = newFaults(centreWith(draft()));
    const QString example = QDate(session().today().year(), 12, 24).toString(Qt::ISODate);
    for (const auto& [field, rule] :
         {std::pair{m_daysOff, "shift.days-off-unreadable"}, std::pair{m_extraDays, "shift.extra-days-unreadable"}}) {
        QStringList bad;
        readDates(field->text(), session().speech().locale, &bad);
        if (!bad.isEmpty()) found.push_back({Severity::Fault, rule, bad.front(), {example}});
    }
    return found;
}

QString ShiftForm::title() const { return isNew() ? tr("A new shift") : shown(loaded().name); }

QString ShiftForm::deedName(const Shift& made) const {
    return isNew() ? tr("New shift: %1").arg(shown(made.name)) : tr("Change the shift %1").arg(shown(loaded().name));
}

}  // namespace laneward
