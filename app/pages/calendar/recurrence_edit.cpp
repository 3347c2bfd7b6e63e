#include "app/pages/calendar/recurrence_edit.h"

#include "app/widgets/time_formats.h"

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

QWidget* row(const std::vector<QWidget*>& parts) {
    auto* box = new QWidget;
    auto* line = new QHBoxLayout(box);
    line->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : parts)
        line->addWidget(part);
    line->addStretch(1);
    return box;
}

}  // namespace

RecurrenceEdit::RecurrenceEdit(QWidget* parent) : QWidget(parent), m_form(new QFormLayout(this)) {
    m_form->setContentsMargins(0, 0, 0, 0);
    buildForm();
    buildWeekdays();
    buildEnd();
    buildExclusions();
}

void RecurrenceEdit::buildForm() {
    m_forms = new QComboBox(this);
    m_forms->setAccessibleName(tr("Takes place"));
    m_forms->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_form->addRow(tr("Takes &place"), m_forms);
    m_every = new QSpinBox(this);
    m_every->setRange(1, 99);
    m_every->setAccessibleName(tr("Every how many"));
    m_everyUnit = new QLabel(this);
    m_everyUnit->setTextFormat(Qt::PlainText);
    m_everyRow = row({m_every, m_everyUnit});
    m_form->addRow(tr("Ever&y"), m_everyRow);
    connect(m_forms, &QComboBox::currentIndexChanged, this, &RecurrenceEdit::touched);
    connect(m_every, &QSpinBox::valueChanged, this, &RecurrenceEdit::touched);
}

void RecurrenceEdit::buildWeekdays() {
    m_weekdayRow = new QWidget(this);
    auto* grid = new QGridLayout(m_weekdayRow);
    grid->setContentsMargins(0, 0, 0, 0);
    for (int day = 1; day <= 7; ++day) {
        auto* box = new QCheckBox(m_weekdayRow);
        box->setMinimumHeight(24);
        grid->addWidget(box, (day - 1) / 4, (day - 1) % 4);
        connect(box, &QCheckBox::toggled, this, &RecurrenceEdit::touched);
        m_weekdays.push_back(box);
    }
    m_form->addRow(tr("On"), m_weekdayRow);
}

void RecurrenceEdit::buildEnd() {
    m_end = new QComboBox(this);
    m_end->addItems({tr("no end"), tr("last date"), tr("number of times")});
    m_end->setAccessibleName(tr("Ends"));
    m_until = new QDateEdit(this);
    m_until->setCalendarPopup(true);
    m_until->setAccessibleName(tr("Last date"));
    m_times = new QSpinBox(this);
    m_times->setRange(1, 9'999);
    m_times->setAccessibleName(tr("Number of times"));
    m_endRow = row({m_end, m_until, m_times});
    m_form->addRow(tr("Ends"), m_endRow);
    connect(m_end, &QComboBox::currentIndexChanged, this, &RecurrenceEdit::touched);
    connect(m_until, &QDateEdit::dateChanged, this, &RecurrenceEdit::touched);
    connect(m_times, &QSpinBox::valueChanged, this, &RecurrenceEdit::touched);
}

void RecurrenceEdit::buildExclusions() {
    m_excluded = new QListWidget(this);
    m_excluded->setAccessibleName(tr("Dates left out"));
    m_excluded->setMaximumHeight(78);
    m_excludeDay = new QDateEdit(this);
    m_excludeDay->setCalendarPopup(true);
    m_excludeDay->setAccessibleName(tr("Date to leave out"));
    auto* leaveOut = new QPushButton(tr("Leave out"), this);
    leaveOut->setMinimumHeight(26);
    m_restore = new QPushButton(tr("Put back"), this);
    m_restore->setMinimumHeight(26);
    connect(leaveOut, &QPushButton::clicked, this, &RecurrenceEdit::excludeDay);
    connect(m_restore, &QPushButton::clicked, this, &RecurrenceEdit::restoreChosen);
    connect(m_excluded, &QListWidget::currentRowChanged, this, [this](int index) { m_restore->setEnabled(index >= 0); });
    m_excludeRow = new QWidget(this);
    auto* column = new QVBoxLayout(m_excludeRow);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_excluded);
    column->addWidget(row({m_excludeDay, leaveOut, m_restore}));
    m_form->addRow(tr("Left out"), m_excludeRow);
    m_preview = new QLabel(this);
    m_preview->setTextFormat(Qt::PlainText);
    m_preview->setWordWrap(true);
    m_preview->setAccessibleName(tr("Next dates"));
    m_form->addRow(m_preview);
}

void RecurrenceEdit::load(const Series& series, const Speech& speech, const Zone& zone) {
    m_loading = true;
    m_speech = speech;
    m_zone = zone;
    m_start = series.start;
    m_excludedDates = series.excludedDates;
    m_overrides = series.overrides;
    const RecurrenceChoice choice = choiceOf(series.rule, series.start, zone);
    m_custom = choice.custom;
    for (int day = 1; day <= 7; ++day) {
        m_weekdays[size_t(day - 1)]->setText(speech.locale.dayName(day, QLocale::ShortFormat));
        m_weekdays[size_t(day - 1)]->setAccessibleName(speech.locale.dayName(day));
        const std::uint8_t mask = choice.weekdays ? choice.weekdays : weekdayBit(series.start.date);
        m_weekdays[size_t(day - 1)]->setChecked(mask >> (day - 1) & 1);
    }
    for (QDateEdit* edit : {m_until, m_excludeDay}) {
        edit->setLocale(speech.locale);
        edit->setDisplayFormat(dayFieldFormat(speech.locale));
    }
    m_every->setValue(choice.every);
    m_end->setCurrentIndex(int(choice.end));
    m_until->setDate(choice.until.isValid() ? choice.until : series.start.date.addMonths(6));
    m_times->setValue(choice.times);
    m_excludeDay->setDate(series.start.date);
    fillForms();
    m_forms->setCurrentIndex(qMax(0, m_forms->findData(int(choice.form))));
    fillExclusions();
    showParts();
    m_loading = false;
}

void RecurrenceEdit::setStart(const LocalTime& start) {
    if (start == m_start) return;
    m_loading = true;
    const std::uint8_t before = weekdayBit(m_start.date);
    const RecurrenceChoice old = choice();
    // An event on one weekday goes with its start; instances that were left out keep their place in the series.
    if (old.weekdays == before) {
        for (size_t day = 0; day < 7; ++day)
            m_weekdays[day]->setChecked(weekdayBit(start.date) >> day & 1);
    }
    const bool follows = old.form == Form::Weekly && old.weekdays == before;
    const qint64 days = follows ? start.date.dayOfWeek() - m_start.date.dayOfWeek() : 0;
    const Seconds by{days * 86'400 + m_start.time.secsTo(start.time)};
    for (LocalTime& t : m_excludedDates)
        t = shifted(t, by);
    for (Override& change : m_overrides)
        change.original = shifted(change.original, by);
    m_start = start;
    fillForms();
    const int same = m_forms->findData(int(old.form));
    const bool last = old.form == Form::MonthlyOnLastDay || old.form == Form::MonthlyOnLastWeekday;
    m_forms->setCurrentIndex(same >= 0 ? same : m_forms->findData(int(last ? Form::MonthlyOnDate : Form::Once)));
    fillExclusions();
    showParts();
    m_loading = false;
}

void RecurrenceEdit::fillForms() {
    m_forms->clear();
    const QDate date = m_start.date;
    const QString weekday = m_speech.locale.dayName(date.dayOfWeek());
    const auto add = [this](const QString& text, Form form) { m_forms->addItem(text, int(form)); };
    add(tr("once"), Form::Once);
    add(tr("every day"), Form::Daily);
    add(tr("every week"), Form::Weekly);
    add(tr("every month on day %1").arg(date.day()), Form::MonthlyOnDate);
    if (isLastOfMonth(date)) add(tr("every month on its last day"), Form::MonthlyOnLastDay);
    const QStringList ordinals{tr("first"), tr("second"), tr("third"), tr("fourth"), tr("fifth")};
    add(tr("every month on the %1 %2", "second Thursday").arg(ordinals.value(weekOfMonth(date) - 1), weekday),
        Form::MonthlyOnWeekday);
    if (isLastWeekdayOfMonth(date)) add(tr("every month on the last %1", "Thursday").arg(weekday), Form::MonthlyOnLastWeekday);
    add(tr("every year"), Form::Yearly);
    if (!m_custom.isEmpty()) add(tr("by its own rule, kept as it is"), Form::Custom);
}

RecurrenceChoice RecurrenceEdit::choice() const {
    RecurrenceChoice result;
    result.form = Form(m_forms->currentData().toInt());
    result.custom = result.form == Form::Custom ? m_custom : QString();
    if (result.form == Form::Once || result.form == Form::Custom) return result;
    result.every = m_every->value();
    result.end = End(m_end->currentIndex());
    result.until = result.end == End::OnDate ? m_until->date() : QDate();
    result.times = result.end == End::AfterTimes ? m_times->value() : result.times;
    for (size_t day = 0; day < 7 && result.form == Form::Weekly; ++day)
        result.weekdays |= std::uint8_t(m_weekdays[day]->isChecked() ? 1u << day : 0u);
    return result;
}

void RecurrenceEdit::store(Series& series) const {
    const RecurrenceChoice now = choice();
    // The text of a rule that was not touched stays as it was written.
    if (now != choiceOf(series.rule, m_start, m_zone)) series.rule = ruleOf(now, m_start, m_zone);
    series.excludedDates = m_excludedDates;
    series.overrides = m_overrides;
}

}  // namespace laneward
