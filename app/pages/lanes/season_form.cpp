#include "app/pages/lanes/season_form.h"

#include "app/edits/plain_label.h"
#include "app/widgets/time_formats.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QTimeEdit>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int leastHeight = 26;

/// Fills a box anew and keeps what was chosen.
void refill(QComboBox* box, const std::vector<std::pair<QString, QString>>& items) {
    const QSignalBlocker quiet(box);
    const QString chosen = box->currentData().toString();
    box->clear();
    for (const auto& [name, id] : items)
        box->addItem(name, id);
    box->setCurrentIndex(std::max(0, box->findData(chosen)));
}

QHBoxLayout* sideBySide(QWidget* first, QWidget* second) {
    auto* row = new QHBoxLayout;
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(first, 1);
    row->addWidget(second, 1);
    return row;
}

void makeNarrow(QComboBox* box) {
    box->setMinimumContentsLength(8);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
}

}  // namespace

SeasonForm::SeasonForm(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    buildTournaments();
    buildMachine();
    buildOpenPlay();
    for (QWidget* field : findChildren<QWidget*>()) {
        if (field->focusPolicy() != Qt::NoFocus) field->setMinimumHeight(leastHeight);
    }
}

/// A tick and, below it, the fields that it switches on.
QFormLayout* SeasonForm::part(QCheckBox*& box, const QString& name) {
    box = new QCheckBox(name, this);
    auto* fields = new QWidget(this);
    auto* form = new QFormLayout(fields);
    form->setContentsMargins(20, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::DontWrapRows);
    form->setVerticalSpacing(3);
    fields->setVisible(false);
    connect(box, &QCheckBox::toggled, fields, &QWidget::setVisible);
    connect(box, &QCheckBox::toggled, this, &SeasonForm::changed);
    layout()->addWidget(box);
    layout()->addWidget(fields);
    return form;
}

QSpinBox* SeasonForm::number(int least, int most, int value, const QString& name) {
    auto* box = new QSpinBox(this);
    box->setRange(least, most);
    box->setValue(value);
    box->setAccessibleName(name);
    connect(box, &QSpinBox::valueChanged, this, &SeasonForm::changed);
    return box;
}

void SeasonForm::buildTournaments() {
    QFormLayout* form = part(m_tournaments, tr("&Tournaments more"));
    m_count = number(1, 52, 4, tr("Number of tournaments"));
    m_weekday = new QComboBox(this);
    m_weekday->setAccessibleName(tr("Weekday of the tournaments"));
    makeNarrow(m_weekday);
    addField(form, tr("How many"), sideBySide(m_count, m_weekday), m_count);
    m_begins = new QTimeEdit(QTime(10, 0), this);
    m_begins->setAccessibleName(tr("Play begins"));
    m_begins->setLayoutDirection(Qt::LeftToRight);  // a clock time reads so in every language
    m_hours = number(1, 12, 6, tr("Hours of play"));
    m_hours->setSuffix(tr(" h", "suffix"));
    addField(form, tr("Begins"), sideBySide(m_begins, m_hours), m_begins);
    m_lanes = new QLineEdit(this);
    m_lanes->setAccessibleName(tr("Lanes of the tournaments"));
    addField(form, tr("Lanes"), m_lanes);
    m_pattern = new QComboBox(this);
    m_pattern->setAccessibleName(tr("Pattern of the tournaments"));
    makeNarrow(m_pattern);
    addField(form, tr("Pattern"), m_pattern);
    connect(m_weekday, &QComboBox::currentIndexChanged, this, &SeasonForm::changed);
    connect(m_pattern, &QComboBox::currentIndexChanged, this, &SeasonForm::changed);
    connect(m_begins, &QTimeEdit::timeChanged, this, &SeasonForm::changed);
    connect(m_lanes, &QLineEdit::textChanged, this, &SeasonForm::changed);
}

void SeasonForm::buildMachine() {
    QFormLayout* form = part(m_machineOut, tr("A machine o&ut of service"));
    m_machine = new QComboBox(this);
    m_machine->setAccessibleName(tr("Machine that is out of service"));
    makeNarrow(m_machine);
    addField(form, tr("Machine"), m_machine);
    m_from = new QDateEdit(this);
    m_from->setCalendarPopup(true);
    m_from->setAccessibleName(tr("First day out of service"));
    addField(form, tr("From"), m_from);
    m_outDays = number(1, 365, 14, tr("Days out of service"));
    addField(form, tr("Days"), m_outDays);
    connect(m_machine, &QComboBox::currentIndexChanged, this, &SeasonForm::changed);
    connect(m_from, &QDateEdit::dateChanged, this, &SeasonForm::changed);
}

void SeasonForm::buildOpenPlay() {
    QFormLayout* form = part(m_openPlay, tr("Open &play asks less often"));
    m_every = number(2, longestInterval, 3, tr("Days between treatments for open play"));
    addField(form, tr("Every … days"), m_every);
}

void SeasonForm::setChoices(const State& state, const DateRange& days, const Speech& speech) {
    std::vector<std::pair<QString, QString>> weekdays;
    for (int i = 0; i < 7; ++i) {
        const int weekday = (int(speech.locale.firstDayOfWeek()) - 1 + i) % 7 + 1;
        weekdays.emplace_back(speech.locale.standaloneDayName(weekday), QString::number(weekday));
    }
    const bool first = m_weekday->count() == 0;
    refill(m_weekday, weekdays);
    std::vector<std::pair<QString, QString>> patterns{{tr("any"), QString()}};
    for (const Pattern& pattern : state.patterns)
        patterns.emplace_back(shown(pattern.name), pattern.id.value);
    refill(m_pattern, patterns);
    std::vector<std::pair<QString, QString>> machines;
    for (const Machine& machine : state.centre.machines)
        machines.emplace_back(shown(machine.name), machine.id.value);
    refill(m_machine, machines);
    m_begins->setDisplayFormat(clockFormat(speech.locale));
    m_from->setLocale(speech.locale);
    m_from->setDisplayFormat(dayFieldFormat(speech.locale));
    const QSignalBlocker from(m_from);
    m_from->setDateRange(days.first, days.last);
    if (!first) return;
    const TournamentQuestion question = suggestedTournament(state, days);
    const QSignalBlocker quiet(this);
    m_lanes->setText(question.lanes.text());
    m_weekday->setCurrentIndex(std::max(0, m_weekday->findData(QString::number(question.weekday))));
    m_begins->setTime(question.begins);
    m_hours->setValue(int(question.length.value / hours(1).value));
    if (question.pattern) m_pattern->setCurrentIndex(std::max(0, m_pattern->findData(question.pattern->value)));
}

bool SeasonForm::supposesAnything() const {
    return m_tournaments->isChecked() || m_machineOut->isChecked() || m_openPlay->isChecked();
}

State SeasonForm::supposeTournaments(const State& state, const DateRange& days, QStringList& notes) const {
    const Result<LaneSet> lanes = LaneSet::parse(m_lanes->text());
    if (!lanes || lanes->isEmpty() || !lanes->isSubsetOf(allLanes(state.centre))) {
        notes += tr("Lanes are written as in \"1-12, 15\", up to lane %1.").arg(state.centre.facts.lanes);
        return state;
    }
    TournamentQuestion question;
    question.count = m_count->value();
    question.weekday = m_weekday->currentData().toInt();
    question.lanes = *lanes;
    if (const QString pattern = m_pattern->currentData().toString(); !pattern.isEmpty()) question.pattern = PatternId{pattern};
    question.begins = m_begins->time();
    question.length = hours(m_hours->value());
    Supposed supposed = withTournaments(state, question, days);
    if (supposed.count < question.count) {
        notes += tr("The lanes are free at that time on %1 of these weekdays; %2 were asked for.")
                     .arg(supposed.count)
                     .arg(question.count);
    }
    return std::move(supposed.state);
}

State SeasonForm::suppose(const State& state, const DateRange& days, QStringList& notes) const {
    State changed = state;
    if (m_openPlay->isChecked()) {
        Supposed supposed = withOpenPlayEvery(changed, m_every->value());
        if (supposed.count == 0) notes += tr("No open play asks for treatments more often than that.");
        changed = std::move(supposed.state);
    }
    if (m_tournaments->isChecked()) changed = supposeTournaments(changed, days, notes);
    if (m_machineOut->isChecked()) {
        changed = withMachineOut(changed, {m_machine->currentData().toString()}, m_from->date(), m_outDays->value()).state;
    }
    return changed;
}

}  // namespace laneward
