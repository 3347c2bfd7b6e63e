#include "app/pages/patterns/readings_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/pages/patterns/carry_panel.h"
#include "app/pages/patterns/limits_form.h"
#include "app/pages/patterns/reading_details.h"
#include "app/pages/patterns/reading_form.h"
#include "app/pages/patterns/reading_model.h"
#include "app/pages/patterns/readings_import.h"

#include <QHeaderView>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedLayout>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

ReadingsPanel::ReadingsPanel(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_pages(new QStackedLayout(this)) {
    buildOverview();
    m_form = new ReadingForm(session, this);
    m_importer = new ReadingsImport(session, this);
    m_pages->addWidget(m_form);
    m_pages->addWidget(m_importer);
    m_pages->addWidget(m_limits = new LimitsForm(session, this));
    connect(m_form, &ReadingForm::finished, this, &ReadingsPanel::keep);
    connect(m_form, &ReadingForm::cancelled, this, &ReadingsPanel::leaveForm);
    connect(m_importer, &ReadingsImport::closed, this, &ReadingsPanel::leaveForm);
    connect(m_limits, &LimitsForm::closed, this, &ReadingsPanel::leaveForm);
}

void ReadingsPanel::buildOverview() {
    auto* splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(buildList());
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_details = new ReadingDetails(scroll);
    m_details->setContentsMargins(8, 0, 8, 0);
    scroll->setWidget(m_details);
    splitter->addWidget(scroll);
    splitter->setStretchFactor(0, 5);
    splitter->setStretchFactor(1, 4);
    splitter->setSizes({600, 480});
    m_pages->addWidget(m_overview = splitter);
}

QWidget* ReadingsPanel::buildList() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    m_type = new QPushButton(tr("&Type a reading"), side);
    m_correct = new QPushButton(tr("&Correct"), side);
    m_withdraw = new QPushButton(tr("&Withdraw"), side);
    m_import = new QPushButton(tr("&Import CSV…"), side);
    m_ownLimits = new QPushButton(tr("Li&mits…"), side);
    m_ownLimits->setToolTip(tr("What this centre itself asks of a reading"));
    for (QPushButton* button : {m_type, m_correct, m_withdraw, m_import, m_ownLimits})
        row->addWidget(button);
    row->addStretch();
    column->addLayout(row);
    column->addWidget(m_empty = proseLabel({}, side));
    m_model = new ReadingModel(this);
    m_list = listOf(m_model, "patterns/readings", tr("readings.csv"), m_session, side);
    m_list->setObjectName("readings");
    m_list->setAccessibleName(tr("Tape readings of the pattern"));
    m_list->sortByColumn(ReadingModel::When, Qt::DescendingOrder);
    column->addWidget(m_list, 1);
    column->addWidget(m_carry = new CarryPanel(m_session, side));
    connect(m_type, &QPushButton::clicked, this, &ReadingsPanel::typeReading);
    connect(m_correct, &QPushButton::clicked, this, &ReadingsPanel::correctChosen);
    connect(m_withdraw, &QPushButton::clicked, this, &ReadingsPanel::withdrawChosen);
    connect(m_ownLimits, &QPushButton::clicked, this, [this] {
        m_pages->setCurrentWidget(m_limits);
        m_limits->begin();
    });
    connect(m_import, &QPushButton::clicked, this, [this] {
        if (m_importer->chooseFile(m_pattern)) m_pages->setCurrentWidget(m_importer);
    });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &ReadingsPanel::showChosen);
    connect(m_list, &QTableView::doubleClicked, this, &ReadingsPanel::correctChosen);
    return side;
}

bool ReadingsPanel::load() {
    m_unread.clear();
    Result<std::vector<TapeReading>> readings = m_session.store().tapes(allRecords);
    Result<std::vector<PatternVersion>> versions = m_session.store().patternVersions();
    if (!readings || !versions) {
        m_unread = text(readings ? versions.error() : readings.error(), m_session.speech());
        return false;
    }
    m_readings = standing(*std::move(readings));
    m_versions = *std::move(versions);
    return true;
}

const Pattern* ReadingsPanel::pattern() const { return findPattern(m_session.season().patterns, m_pattern); }

std::vector<PatternVersion> ReadingsPanel::versionsOf(const PatternId& pattern) const {
    std::vector<PatternVersion> own;
    std::copy_if(m_versions.begin(), m_versions.end(), std::back_inserter(own),
                 [&](const PatternVersion& version) { return version.pattern.id == pattern; });
    return own;
}

void ReadingsPanel::showPattern(const PatternId& pattern) {
    if (m_pattern == pattern) return;
    m_pattern = pattern;
    if (!m_stale) showList();  // a form that is open stays, with its own pattern
}

void ReadingsPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) refresh();
}

void ReadingsPanel::refresh() {
    m_stale = !isVisible();
    if (m_stale) return;
    if (!load()) m_readings.clear();
    // Before anybody chose one, the pattern that was read last.
    if (!pattern() && !m_readings.empty()) m_pattern = m_readings.back().pattern;
    if (!pattern() && !m_session.season().patterns.empty()) m_pattern = m_session.season().patterns.front().id;
    showList();
    m_carry->show(m_readings, m_versions);
}

void ReadingsPanel::showList() {
    const ReadingRow* chosen = m_model->row(chosenRow(*m_list));
    const OperationId id = chosen ? chosen->reading.id : OperationId{};
    const bool first = m_model->rowCount() == 0;
    std::vector<ReadingRow> rows;
    std::vector<PatternVersion> own = versionsOf(m_pattern);
    for (const TapeReading& reading : m_readings) {
        if (reading.pattern != m_pattern) continue;
        const Machine* machine = findMachine(m_session.season().centre, reading.machine);
        rows.push_back({reading, recipeOf(reading, own), machine ? machine->carryLength : Micrometres{0},
                        machine ? shown(machine->name) : QString()});
    }
    const int newest = int(rows.size()) - 1;
    m_model->show(std::move(rows), m_session.speech());
    m_own = std::move(own);  // what the rows point to has moved with it
    const int row = m_model->rowOf(id);
    if (m_model->rowCount() > 0) chooseRow(*m_list, row >= 0 ? row : newest);
    if (first && m_model->rowCount() > 0) fitColumns(*m_list);
    const Pattern* one = pattern();
    m_empty->setVisible(m_model->rowCount() == 0 || !m_unread.isEmpty());
    if (!m_unread.isEmpty())
        m_empty->setText(tr("The readings could not be read: %1").arg(m_unread));
    else if (!one)
        m_empty->setText(tr("There is no pattern yet: make one first, then its film can be read and compared."));
    else
        m_empty->setText(
            tr("No tape reading of %1 yet. Take a tape after a run, then type what it says, or import a CSV of readings.")
                .arg(shown(one->name)));
    const bool writes = one && !m_session.isReadOnly();
    m_type->setEnabled(writes);
    m_import->setEnabled(writes);
    m_ownLimits->setEnabled(writes);
    showChosen();
    sayHeadline();
}

void ReadingsPanel::showChosen() {
    const int row = chosenRow(*m_list);
    const ReadingRow* chosen = m_model->row(row);
    for (QPushButton* button : {m_correct, m_withdraw})
        button->setEnabled(chosen && !m_session.isReadOnly());
    if (!chosen)
        return m_details->clear(m_model->rowCount() ? tr("Choose a reading to see it beside the computed film.") : QString());
    m_details->show(*chosen, m_model->compared(row), m_session.season().centre.facts.readingLimits, m_session.speech());
}

void ReadingsPanel::sayHeadline() {
    const Speech speech = m_session.speech();
    const Pattern* one = pattern();
    QString line = one ? tr("%1: no tape reading yet").arg(shown(one->name)) : tr("No pattern yet");
    const int last = m_model->rowCount() - 1;
    if (const ReadingRow* newest = m_model->row(last); newest && one) {
        const std::optional<ReadingComparison>& seen = m_model->compared(last);
        const QString count = tr("%n tape reading(s)", nullptr, last + 1);
        const QString when = dateTimeText(newest->reading.at, speech);
        line = tr("%1: %2, the newest of %3").arg(shown(one->name), count, when);
        if (seen) {
            const QString off = speech.locale.toString(std::abs(seen->meanError), 'f', 1);
            line = seen->meanError < 0 ? tr("%1, %2 units less than computed").arg(line, off)
                                       : tr("%1, %2 units more than computed").arg(line, off);
            const auto results = checkReading(*seen, m_session.season().centre.facts.readingLimits);
            const auto broken = std::count_if(results.begin(), results.end(), [](const CheckResult& result) {
                return result.isBroken() && result.check.status != CheckStatus::Suspended;
            });
            if (broken > 0) line = tr("%1; %n check(s) not kept", nullptr, int(broken)).arg(line);
        }
    }
    if (line == m_headline) return;
    m_headline = line;
    Q_EMIT headlineChanged();
}

void ReadingsPanel::typeReading() {
    const Pattern* one = pattern();
    if (!one) return;
    m_pages->setCurrentWidget(m_form);
    m_form->begin(*one, versionsOf(m_pattern));
}

void ReadingsPanel::correctChosen() {
    const ReadingRow* chosen = m_model->row(chosenRow(*m_list));
    const Pattern* one = pattern();
    if (!chosen || !one || m_session.isReadOnly()) return;
    m_pages->setCurrentWidget(m_form);
    m_form->correct(chosen->reading, *one, versionsOf(m_pattern));
}

void ReadingsPanel::withdrawChosen() {
    const ReadingRow* chosen = m_model->row(chosenRow(*m_list));
    if (!chosen) return;
    TapeReading withdrawal = chosen->reading;
    withdrawal.corrects = chosen->reading.id;
    withdrawal.id = {};
    withdrawal.person = {};
    withdrawal.milliUnits = {};
    const Speech speech = m_session.speech();
    m_session.record(tr("Withdraw the reading of lane %1, %2")
                         .arg(speech.locale.toString(chosen->reading.lane), dateTimeText(chosen->reading.at, speech)),
                     {withdrawal});
}

void ReadingsPanel::keep(const TapeReading& reading) {
    const QString lane = m_session.speech().locale.toString(reading.lane);
    if (m_session.record(
            reading.corrects ? tr("Correct a reading of lane %1").arg(lane) : tr("Tape reading of lane %1").arg(lane), {reading}))
        leaveForm();
}

void ReadingsPanel::leaveForm() {
    m_pages->setCurrentWidget(m_overview);
    m_list->setFocus();
}

}  // namespace laneward
