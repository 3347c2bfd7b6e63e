#include "app/pages/patterns/drift_panel.h"

#include "app/edits/plain_label.h"

#include <QComboBox>
#include <QDateEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSettings>

#include <algorithm>

namespace laneward {

bool DriftPanel::load() {
    m_unread.clear();
    m_runs.clear();
    Store& store = m_session.store();
    Result<std::vector<RunLog>> runs = store.runs(allRecords);
    Result<std::vector<LevelReading>> readings = store.levelReadings(allRecords);
    Result<std::vector<PatternVersion>> versions = store.patternVersions();
    if (!runs || !readings || !versions) {
        m_unread = text(!runs ? runs.error() : !readings ? readings.error() : versions.error(), m_session.speech());
        m_history = {};
        return false;
    }
    m_history = {*std::move(runs), *std::move(readings), *std::move(versions), m_session.season().patterns};
    for (const RunLog& run : m_history.runs)
        m_runs.insert(run.id, &run);
    return true;
}

QString DriftPanel::key(const MachineId& machine, int product) const {
    return QStringLiteral("drift/%1/%2/%3").arg(m_session.season().centre.facts.id.value, machine.value).arg(product);
}

std::optional<Span> DriftPanel::baselineOf(const MachineId& machine, int product) const {
    const QSettings settings;
    const QDate from = QDate::fromString(settings.value(key(machine, product) + "/from").toString(), Qt::ISODate);
    const QDate to = QDate::fromString(settings.value(key(machine, product) + "/to").toString(), Qt::ISODate);
    if (!from.isValid() || !to.isValid()) return std::nullopt;
    const Centre& centre = m_session.season().centre;
    return Span{dayOf(centre, from).begin, dayOf(centre, to).end};
}

void DriftPanel::judgeAll() {
    m_outputs.clear();
    for (const Machine& machine : m_session.season().centre.machines) {
        for (int product = 0; product < products; ++product) {
            if (product != cleanerProduct && machine.capacity.conditioner[size_t(product)] <= Microlitres{0}) continue;
            m_outputs.push_back({machine.id, product, outputDrift(m_history, machine, product, baselineOf(machine.id, product))});
        }
    }
}

void DriftPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) refresh();
}

void DriftPanel::refresh() {
    m_stale = !isVisible();
    if (m_stale) return;
    load();
    judgeAll();
    showChosen(fillChoices());
    sayHeadline();
}

/// Keeps what was chosen; at first, and then it returns true, the output whose signal weighs most.
bool DriftPanel::fillChoices() {
    const QString before = m_machine->currentData().toString();
    const int product = m_product->count() ? m_product->currentData().toInt() : -1;
    const JudgedOutput* gravestOutput = nullptr;
    for (const JudgedOutput& output : m_outputs) {
        const DriftSignal* signal = gravest(output.drift);
        const DriftSignal* other = gravestOutput ? gravest(gravestOutput->drift) : nullptr;
        if (signal && (!other || (signal->isNow && !other->isNow))) gravestOutput = &output;
    }
    m_filling = true;
    m_machine->clear();
    for (const Machine& machine : m_session.season().centre.machines)
        m_machine->addItem(shown(machine.name), machine.id.value);
    const int kept = m_machine->findData(before);
    const bool fresh = product < 0 || kept < 0;
    m_machine->setCurrentIndex(!fresh ? kept : gravestOutput ? m_machine->findData(gravestOutput->machine.value) : 0);
    m_filling = false;
    fillProducts(!fresh ? product : gravestOutput ? gravestOutput->product : 0);
    return fresh;
}

void DriftPanel::fillProducts(int wanted) {
    const Machine* machine = findMachine(m_session.season().centre, {m_machine->currentData().toString()});
    m_filling = true;
    m_product->clear();
    for (const JudgedOutput& output : m_outputs) {
        if (!machine || output.machine != machine->id) continue;
        const QString name = productName(*machine, output.product);
        const QString unnamed = output.product == cleanerProduct ? tr("cleaner") : tr("conditioner %1").arg(output.product + 1);
        m_product->addItem(name.isEmpty() ? unnamed : shown(name), output.product);
    }
    m_product->setCurrentIndex(std::max(0, m_product->findData(wanted)));
    m_filling = false;
}

const JudgedOutput* DriftPanel::chosen() const {
    const MachineId machine{m_machine->currentData().toString()};
    const auto found = std::find_if(m_outputs.begin(), m_outputs.end(), [&](const JudgedOutput& output) {
        return output.machine == machine && output.product == m_product->currentData().toInt();
    });
    return m_product->count() == 0 || found == m_outputs.end() ? nullptr : &*found;
}

void DriftPanel::showBaseline() {
    const JudgedOutput* output = chosen();
    m_filling = true;
    const std::optional<Span> span = output ? baselineOf(output->machine, output->product) : std::nullopt;
    m_span->setEnabled(output && !output->drift.points.empty());
    m_span->setCurrentIndex(span ? 1 : 0);
    m_from->setVisible(span.has_value());
    m_to->setVisible(span.has_value());
    if (span) {
        const Centre& centre = m_session.season().centre;
        m_from->setDate(dateOf(centre, span->begin));
        m_to->setDate(dateOf(centre, span->end - Seconds{1}));
    }
    m_filling = false;
}

/// A span begins as the days of the baseline that is in use; it stays for this machine and product.
void DriftPanel::keepBaseline() {
    const JudgedOutput* output = chosen();
    if (m_filling || !output || output->drift.points.empty()) return;
    QSettings settings;
    const QString place = key(output->machine, output->product);
    if (m_span->currentIndex() == 0) {
        settings.remove(place);
    } else {
        const bool begins = !baselineOf(output->machine, output->product);
        const OutputDrift& drift = output->drift;
        const auto day = [&](size_t point) { return dateOf(m_session.season().centre, drift.points[point].at); };
        const size_t last = std::min(drift.points.size(), std::max<size_t>(drift.baselineEnd, 1)) - 1;
        settings.setValue(place + "/from", (begins ? day(drift.baselineBegin) : m_from->date()).toString(Qt::ISODate));
        settings.setValue(place + "/to", (begins ? day(last) : m_to->date()).toString(Qt::ISODate));
    }
    judgeAll();
    showChosen(false);
    sayHeadline();
}

/// `anew`: another output than before, shown from its gravest signal on.
void DriftPanel::showChosen(bool anew) {
    showBaseline();
    const JudgedOutput* output = chosen();
    QStringList lines;
    if (!m_unread.isEmpty()) lines << tr("The records could not be read: %1").arg(m_unread);
    if (m_session.season().centre.machines.empty()) lines << tr("There is no machine yet: set one up first.");
    if (output && output->drift.points.empty()) {
        lines << tr(
            "No fill up to the line is on record yet. Whenever the tank is filled, write down how much was poured; drift is "
            "judged from %n fill(s) on.",
            nullptr, int(fillsOfBaseline));
    } else if (output) {
        for (const Finding& note : output->drift.notes)
            lines << text(note, m_session.speech());
    }
    m_body->setVisible(output && !output->drift.points.empty());
    m_notes->setText(lines.join(u'\n'));
    m_notes->setVisible(!lines.isEmpty());
    if (anew) m_fillShown = output ? output->drift.points.size() : 0;
    showChart();
    showSignals(anew);
}

size_t DriftPanel::firstPoint(DriftChart chart) const {
    const JudgedOutput* output = chosen();
    if (!output || chart == DriftChart::Single) return 0;
    return output->drift.baselineBegin + (chart == DriftChart::Range ? 1 : 0);
}

void DriftPanel::showChart() {
    const JudgedOutput* output = chosen();
    const auto chart = DriftChart(m_kind->currentData().toInt());
    const Speech speech = m_session.speech();
    m_chart->show(output ? plotOf(output->drift, chart, speech) : ChartContent{}, speech.locale);
    m_legend->setText(output && output->drift.isJudged()
                          ? tr("◆ signal   ● fill   ○ fill of the baseline   – – limits   — centre and values")
                          : tr("● fill"));
    const int point = int(m_fillShown) - int(firstPoint(chart));
    m_chart->setCurrent(std::clamp(point, 0, std::max(0, m_chart->pointCount() - 1)));
    showFill(m_chart->current());
}

void DriftPanel::showSignals(bool anew) {
    const JudgedOutput* output = chosen();
    const int row = m_signals->currentRow();
    m_filling = true;
    m_signals->clear();
    if (output) {
        for (const DriftSignal& signal : output->drift.signals) {
            const QString state = signal.isNow ? tr("◆ now") : tr("◇ passed");
            m_signals->addItem(tr("%1: %2").arg(state, text(signal.finding, m_session.speech())));
        }
    }
    if (m_signals->count() == 0) {
        m_signals->addItem(output && output->drift.isJudged()
                               ? tr("No fill signals: the machine puts out what it did in its baseline.")
                               : tr("Nothing is judged yet."));
        m_signals->item(0)->setFlags(Qt::ItemIsEnabled);
    }
    const DriftSignal* first = output ? gravest(output->drift) : nullptr;
    const int preferred = first ? int(first - output->drift.signals.data()) : -1;
    const bool kept = !anew && output && row >= 0 && size_t(row) < output->drift.signals.size();
    m_signals->setCurrentRow(kept ? row : preferred);
    m_filling = false;
    if (anew) goToSignal(m_signals->currentRow());
    offerFault();
}

const DriftSignal* DriftPanel::chosenSignal() const {
    const JudgedOutput* output = chosen();
    const int row = m_signals->currentRow();
    return output && row >= 0 && size_t(row) < output->drift.signals.size() ? &output->drift.signals[size_t(row)] : nullptr;
}

void DriftPanel::offerFault() {
    const DriftSignal* signal = chosenSignal();
    const bool written = signal && isWritten(*signal);
    m_write->setEnabled(signal && !written && !m_session.isReadOnly());
    QStringList cautions;
    for (const char* rule : {"caution.moving-parts", "caution.defer"})
        cautions << text(Finding{Severity::Warning, rule, {}, {}}, m_session.speech());
    m_caution->setText(signal ? cautions.join(u' ') : QString());
    m_caution->setVisible(signal);
    m_write->setText(written ? tr("Fault is written down") : tr("&Write down a fault"));
}

/// Its chart, its first fill, and the runs that led to it.
void DriftPanel::goToSignal(int row) {
    if (m_filling || row < 0) return;
    offerFault();
    const DriftSignal* signal = chosenSignal();
    if (!signal) return;
    m_fillShown = signal->first;
    m_filling = true;
    m_kind->setCurrentIndex(m_kind->findData(int(signal->chart)));
    m_filling = false;
    showChart();
    m_runsTitle->setText(tr("%n run(s) that led to the signal", nullptr, int(signal->runs.size())));
    listRuns(signal->runs);
}

void DriftPanel::showFill(int point) {
    const JudgedOutput* output = chosen();
    const size_t index = firstPoint(DriftChart(m_kind->currentData().toInt())) + size_t(std::max(0, point));
    if (!output || point < 0 || index >= output->drift.points.size()) {
        m_fill->clear();
        return listRuns({});
    }
    m_fillShown = index;
    m_fill->setText(fillText(output->drift, index, m_session.speech()));
    const std::vector<OperationId>& runs = output->drift.points[index].runs;
    m_runsTitle->setText(tr("%n run(s) since the fill before", nullptr, int(runs.size())));
    listRuns(runs);
}

void DriftPanel::listRuns(const std::vector<OperationId>& runs) {
    m_runList->clear();
    if (runs.empty()) m_runsTitle->clear();
    for (auto id = runs.rbegin(); id != runs.rend(); ++id) {
        const RunLog* run = m_runs.value(*id);
        if (!run) continue;
        m_runList->addItem(runText(*run, m_session.season().patterns, m_session.speech()));
        m_runList->item(m_runList->count() - 1)->setSizeHint({0, qMax(26, fontMetrics().lineSpacing() + 8)});
    }
}

bool DriftPanel::isWritten(const DriftSignal& signal) const {
    const QString words = text(signal.finding, m_session.speech());
    const std::vector<Incident>& incidents = m_session.season().incidents;
    return std::any_of(incidents.begin(), incidents.end(), [&](const Incident& i) { return i.text == words; });
}

void DriftPanel::writeFault() {
    const DriftSignal* signal = chosenSignal();
    const Machine* machine = signal ? findMachine(m_session.season().centre, chosen()->machine) : nullptr;
    if (!machine) return;
    Incident incident;
    incident.kind = IncidentKind::Fault;
    incident.at = m_session.now();
    incident.machine = machine->id;
    incident.text = text(signal->finding, m_session.speech());
    if (m_session.record(tr("Write down a fault of %1").arg(shown(machine->name)), {incident})) offerFault();
}

void DriftPanel::sayHeadline() {
    QString line;
    bool anyFill = false;
    bool anyJudged = false;
    double largest = -1;
    for (const JudgedOutput& output : m_outputs) {
        const Machine* machine = findMachine(m_session.season().centre, output.machine);
        anyFill |= !output.drift.points.empty();
        anyJudged |= output.drift.isJudged();
        const QString sentence = machine ? driftSentence(output, *machine, m_session.speech()) : QString();
        const DriftSignal* signal = gravest(output.drift);
        if (sentence.isEmpty() || double(output.drift.points.size() - signal->began) <= largest) continue;
        largest = double(output.drift.points.size() - signal->began);
        line = sentence;
    }
    if (line.isEmpty() && anyJudged) line = tr("Every machine puts out what it did in its baseline");
    if (line.isEmpty())
        line = anyFill ? tr("Too few fills yet to judge any machine's output") : tr("No fill up to the line is on record yet");
    if (line == m_headline) return;
    m_headline = line;
    Q_EMIT headlineChanged();
}

}  // namespace laneward
