#include "app/pages/patterns/reading_form.h"

#include "app/edits/plain_label.h"
#include "app/pages/patterns/board_model.h"
#include "app/pages/patterns/length_box.h"
#include "app/pages/patterns/reading_chart.h"
#include "app/pages/patterns/reading_model.h"
#include "app/widgets/cell_table.h"
#include "app/widgets/decimal_text.h"

#include <QComboBox>
#include <QDateTimeEdit>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

#include <algorithm>

namespace laneward {

ReadingForm::ReadingForm(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("A tape reading"));
    auto* grid = new QGridLayout(this);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(3, 1);
    grid->setColumnStretch(5, 2);
    buildFields(grid);
    buildBoards(grid);
    buildButtons(grid);
}

void ReadingForm::buildFields(QGridLayout* grid) {
    m_title = headingLabel({}, this);
    grid->addWidget(m_title, 0, 0, 1, 6);
    const auto add = [this, grid](const QString& name, QWidget* field, int row, int column) {
        auto* label = plainLabel(name, this);
        label->setBuddy(field);
        grid->addWidget(label, row, column);
        grid->addWidget(field, row, column + 1);
    };
    m_lane = new QSpinBox(this);
    m_at = momentField(this);
    m_laneOfRun = new QSpinBox(this);
    m_laneOfRun->setRange(0, mostLanesOfRun);
    m_laneOfRun->setSpecialValueText(tr("not known"));
    m_laneOfRun->setToolTip(tr("The how manieth lane of its run: the first lanes get less while the brush fills"));
    add(tr("&Lane:"), m_lane, 1, 0);
    add(tr("&Taken:"), m_at, 1, 2);
    add(tr("&Note:"), m_note = new QLineEdit(this), 1, 4);
    add(tr("&Distance from the foul line:"), m_distance = new LengthBox(m_session.season().centre.facts.settings.units, this), 2,
        0);
    add(tr("&Machine:"), m_machine = new QComboBox(this), 2, 2);
    add(tr("&Version run:"), m_version = new QComboBox(this), 2, 4);
    add(tr("L&ane of its run:"), m_laneOfRun, 3, 0);
    connect(m_lane, &QSpinBox::valueChanged, this, &ReadingForm::guess);
    connect(m_at, &QDateTimeEdit::dateTimeChanged, this, &ReadingForm::guess);
    for (QComboBox* box : {m_machine, m_version})
        connect(box, &QComboBox::activated, this, [this] { m_guesses = false; });
    for (QComboBox* box : {m_machine, m_version})
        connect(box, &QComboBox::currentIndexChanged, this, &ReadingForm::recompute);
    connect(m_laneOfRun, &QSpinBox::valueChanged, this, &ReadingForm::recompute);
    connect(m_distance, &LengthBox::valueChanged, this, &ReadingForm::recompute);
}

void ReadingForm::buildBoards(QGridLayout* grid) {
    m_boards = new BoardModel(this);
    m_table = new CellTable(m_boards, this);
    m_table->setAccessibleName(tr("Film on each board; a row from a spreadsheet can be pasted"));
    m_table->setTabKeyNavigation(false);
    m_chart = new ReadingChart(this);
    auto* row = new QHBoxLayout;
    row->addWidget(m_table, 3);
    row->addWidget(m_chart, 4);
    grid->addLayout(row, 4, 0, 1, 6);
    grid->setRowStretch(4, 1);
    connect(m_boards, &BoardModel::edited, this, &ReadingForm::recompute);
    connect(m_chart, &ReadingChart::boardChosen, this, [this](int board) {
        if (m_chart->hasFocus()) m_table->scrollTo(m_boards->index(board - 1, 0));
    });
}

void ReadingForm::buildButtons(QGridLayout* grid) {
    auto* row = new QHBoxLayout;
    m_problem = proseLabel({}, this);
    auto* save = new QPushButton(tr("&Keep the reading"), this);
    save->setObjectName("keepTape");
    auto* leave = new QPushButton(tr("Cancel"), this);
    leave->setObjectName("leaveTape");
    row->addWidget(m_problem, 1);
    row->addWidget(save);
    row->addWidget(leave);
    grid->addLayout(row, 5, 0, 1, 6);
    connect(save, &QPushButton::clicked, this, &ReadingForm::submit);
    connect(leave, &QPushButton::clicked, this, &ReadingForm::cancelled);
}

void ReadingForm::fillChoices(const Pattern& pattern) {
    const Speech speech = m_session.speech();
    m_pattern = pattern.id;
    m_lane->setRange(1, std::max(1, m_session.season().centre.facts.lanes));
    m_machine->clear();
    m_machine->addItem(tr("not known"), QString());
    for (const Machine& machine : m_session.season().centre.machines)
        m_machine->addItem(shown(machine.name), machine.id.value);
    m_version->clear();
    m_version->addItem(tr("not known"), qlonglong(0));
    for (const PatternVersion& version : m_versions) {
        m_version->addItem(
            tr("version %1, since %2")
                .arg(speech.locale.toString(qlonglong(version.pattern.edition)), dateTimeText(version.since, speech)),
            qlonglong(version.pattern.edition));
    }
}

void ReadingForm::begin(const Pattern& pattern, std::vector<PatternVersion> versions) {
    m_filling = true;
    m_versions = std::move(versions);
    m_corrects.reset();
    m_guesses = true;
    fillChoices(pattern);
    m_title->setText(tr("A tape reading of %1").arg(shown(pattern.name)));
    setMoment(*m_at, m_session.now(), m_session.zone());
    m_distance->setLength(feet(15));
    m_note->clear();
    m_problem->clear();
    m_boards->begin({}, m_session.speech().locale);
    m_filling = false;
    guess();
    m_lane->setFocus();
    m_lane->selectAll();
}

void ReadingForm::correct(const TapeReading& reading, const Pattern& pattern, std::vector<PatternVersion> versions) {
    begin(pattern, std::move(versions));
    m_filling = true;
    m_guesses = false;
    m_corrects = reading.id;
    m_title->setText(tr("Correct the tape reading of %1").arg(shown(pattern.name)));
    m_lane->setValue(reading.lane);
    setMoment(*m_at, reading.at, m_session.zone());
    m_machine->setCurrentIndex(std::max(0, m_machine->findData(reading.machine.value)));
    m_distance->setLength(reading.distance);
    m_laneOfRun->setValue(reading.laneOfRun);
    m_version->setCurrentIndex(std::max(0, m_version->findData(qlonglong(reading.patternVersion))));
    m_note->setText(reading.note);
    m_filling = false;
    m_boards->begin(reading.milliUnits, m_session.speech().locale);
}

/// The last run that laid this pattern on that lane by then.
void ReadingForm::guess() {
    if (m_filling) return;
    if (m_guesses) {
        const Instant at = momentOf(*m_at, m_session.zone()) + minutes(1);
        const RunLog* last = nullptr;
        qsizetype place = 0;
        const std::vector<RunLog> runs = standing(m_session.season().runs);
        for (const RunLog& run : runs) {
            if (run.pattern != m_pattern || run.time.begin > at || (last && run.time.end < last->time.end)) continue;
            const auto lane =
                std::find_if(run.lanes.begin(), run.lanes.end(), [&](const LaneTime& l) { return l.lane == m_lane->value(); });
            if (lane == run.lanes.end()) continue;
            last = &run;
            place = lane - run.lanes.begin() + 1;
        }
        m_filling = true;
        m_machine->setCurrentIndex(last ? std::max(0, m_machine->findData(last->machine.value)) : 0);
        m_laneOfRun->setValue(int(place));
        const qlonglong edition = last && last->patternVersion ? last->patternVersion
                                  : m_versions.empty()         ? 0
                                                               : m_versions.back().pattern.edition;
        m_version->setCurrentIndex(std::max(0, m_version->findData(edition)));
        m_filling = false;
    }
    recompute();
}

Micrometres ReadingForm::carry() const {
    const Machine* machine = findMachine(m_session.season().centre, {m_machine->currentData().toString()});
    return machine ? machine->carryLength : Micrometres{0};
}

TapeReading ReadingForm::reading() const {
    TapeReading made;
    made.at = momentOf(*m_at, m_session.zone());
    made.machine = {m_machine->currentData().toString()};
    made.pattern = m_pattern;
    made.patternVersion = m_version->currentData().toLongLong();
    made.lane = m_lane->value();
    made.laneOfRun = m_laneOfRun->value();
    made.distance = m_distance->length();
    made.milliUnits = m_boards->values();
    made.note = m_note->text().trimmed();
    made.corrects = m_corrects;
    return made;
}

void ReadingForm::recompute() {
    if (m_filling) return;
    const TapeReading now = reading();
    const Pattern* recipe = recipeOf(now, m_versions);
    std::optional<BoardValues> computed;
    if (recipe) computed = tapeFilm(*recipe, {carry(), now.laneOfRun}, now.distance);
    m_boards->setComputed(computed);
    m_chart->show(now.milliUnits, computed, m_session.speech().locale);
}

QString ReadingForm::problemOf(const TapeReading& reading) const {
    const Speech speech = m_session.speech();
    if (const int board = m_boards->firstBad())
        return tr("Nothing kept yet: board %1: %2.").arg(speech.locale.toString(board), m_boards->remark(board));
    if (!isMeasured(reading)) return tr("Nothing kept yet: no board has a value.");
    if (reading.at > m_session.now()) return tr("Nothing kept yet: the time is still to come.");
    const std::vector<Finding> faults = faultsOf(reading, m_session.season().centre.facts.lanes);
    if (!faults.empty()) return tr("Nothing kept yet: %1.").arg(text(faults.front(), speech));
    if (!recipeOf(reading, m_versions)) return tr("Nothing kept yet: no version of the pattern is known to compare with.");
    return {};
}

void ReadingForm::submit() {
    m_table->finishEditing();
    const TapeReading made = reading();
    const QString problem = problemOf(made);
    m_problem->setText(problem);
    if (const int board = m_boards->firstBad()) m_table->setCurrentIndex(m_boards->index(board - 1, BoardModel::Read));
    if (problem.isEmpty()) Q_EMIT finished(made);
}

void ReadingForm::keyPressEvent(QKeyEvent* event) {
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
