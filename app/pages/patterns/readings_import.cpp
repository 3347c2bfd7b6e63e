#include "app/pages/patterns/readings_import.h"

#include "app/cli/csv_readings.h"
#include "app/pages/patterns/reading_model.h"
#include "core/base/limits.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSet>
#include <QSettings>
#include <QTableWidget>

namespace laneward {

namespace {

constexpr qsizetype mostLines = 200;
constexpr size_t rowsShown = 5;
const QString kept = QStringLiteral("patterns/readings-import/");

/// Other programs know names, ours are ids.
template <class Rows>
void takeNamesForIds(cli::CsvRows& rows, const QString& key, const Rows& known) {
    const qsizetype column = rows.columns.value(key, -1);
    for (size_t n = 1; column >= 0 && n < rows.table.records.size(); ++n) {
        QString& cell = rows.table.records[n].fields[column];
        for (const auto& row : known) {
            if (row.name.compare(cell.trimmed(), Qt::CaseInsensitive) == 0) cell = row.id.value;
        }
    }
}

}  // namespace

bool ReadingsImport::chooseFile(const PatternId& pattern) {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Tape readings"), {}, tr("CSV (*.csv *.txt *.tsv);;All files (*)"));
    if (!path.isEmpty()) load(path, pattern);
    return !path.isEmpty();
}

void ReadingsImport::load(const QString& path, const PatternId& pattern) {
    m_pattern = pattern;
    m_name = QFileInfo(path).fileName();
    m_table = {};
    m_bytes.clear();
    m_title->setText(tr("Tape readings from %1").arg(shown(m_name)));
    QFile file(path);
    // One byte more than is accepted: the reader then refuses the file as too large without its being read whole.
    if (QFileInfo(path).isFile() && file.open(QIODevice::ReadOnly)) m_bytes = file.read(limits::importBytes + 1);
    const Result<CsvTable> table = readCsv(m_bytes, m_name);
    if (table) m_table = *table;
    fillColumns();
    preview();
    if (!table) {
        m_take->setEnabled(false);
        m_result->setText(tr("Nothing was changed."));
        return showLines({text(table.error(), m_session.speech())});
    }
    look();
    m_columns[QStringLiteral("at")]->setFocus();
}

/// What was chosen the last time, where the file has it; else the column that is called as ours.
void ReadingsImport::fillColumns() {
    m_filling = true;
    const QSettings settings;
    const QStringList titles = m_table.records.empty() ? QStringList{} : m_table.records.front().fields;
    const auto fill = [&](QComboBox* box, const QString& key, const QString& ours) {
        box->clear();
        box->addItem(tr("— not in the file —"), QString());
        for (const QString& title : titles)
            box->addItem(shown(title.trimmed()), title.trimmed());
        const int before = box->findData(settings.value(kept + key));
        const int same = box->findData(ours);
        box->setCurrentIndex(before > 0 ? before : std::max(0, same));
    };
    for (auto column = m_columns.begin(); column != m_columns.end(); ++column)
        fill(column.value(), column.key(), column.key());
    fill(m_boards, QStringLiteral("boards"), QStringLiteral("b1"));
    m_leftFirst->setChecked(settings.value(kept + "leftFirst").toBool());
    m_decimal->setCurrentIndex(settings.value(kept + "decimalComma").toBool() ? 1 : 0);
    m_date->setText(settings.value(kept + "date-format", "yyyy-MM-dd").toString());
    m_time->setText(settings.value(kept + "time-format", "HH:mm").toString());
    m_machine->clear();
    m_machine->addItem(tr("not known"), QString());
    for (const Machine& machine : m_session.season().centre.machines)
        m_machine->addItem(shown(machine.name), machine.id.value);
    m_filling = false;
}

void ReadingsImport::keepMapping() const {
    QSettings settings;
    for (auto column = m_columns.begin(); column != m_columns.end(); ++column)
        settings.setValue(kept + column.key(), column.value()->currentData());
    settings.setValue(kept + "boards", m_boards->currentData());
    settings.setValue(kept + "leftFirst", m_leftFirst->isChecked());
    settings.setValue(kept + "decimalComma", m_decimal->currentIndex() == 1);
    settings.setValue(kept + "date-format", m_date->text());
    settings.setValue(kept + "time-format", m_time->text());
}

cli::CsvMapping ReadingsImport::mapping() const {
    cli::CsvMapping mapping;
    for (auto column = m_columns.begin(); column != m_columns.end(); ++column) {
        const QString title = column.value()->currentData().toString();
        if (!title.isEmpty()) mapping.columns.insert(column.key(), title);
    }
    const QStringList titles = m_table.records.empty() ? QStringList{} : m_table.records.front().fields;
    for (int n = 0; n < boards && m_boards->currentIndex() > 0; ++n) {
        const qsizetype at = m_boards->currentIndex() - 1 + n;
        const int board = m_leftFirst->isChecked() ? boards - n : n + 1;
        if (at < titles.size()) mapping.columns.insert(QStringLiteral("b%1").arg(board), titles[at].trimmed());
    }
    mapping.defaults.insert(QStringLiteral("pattern"), m_pattern.value);
    if (m_machine->currentIndex() > 0) mapping.defaults.insert(QStringLiteral("machine"), m_machine->currentData().toString());
    mapping.date = m_date->text();
    mapping.time = m_time->text();
    mapping.decimalComma = m_decimal->currentIndex() == 1;
    return mapping;
}

void ReadingsImport::preview() {
    const size_t count = std::min(m_table.records.size(), rowsShown + 1);
    m_rows->clear();
    m_rows->setRowCount(count == 0 ? 0 : int(count) - 1);
    m_rows->setColumnCount(count == 0 ? 0 : int(m_table.records.front().fields.size()));
    for (size_t r = 0; r < count; ++r) {
        const QStringList& fields = m_table.records[r].fields;
        for (int c = 0; c < std::min(m_rows->columnCount(), int(fields.size())); ++c) {
            auto* item = new QTableWidgetItem(shown(fields[c].left(40)));
            r == 0 ? m_rows->setHorizontalHeaderItem(c, item) : m_rows->setItem(int(r) - 1, c, item);
        }
    }
    m_rows->resizeColumnsToContents();
}

/// What the reader of the file cannot know: versions that do not exist.
QStringList ReadingsImport::faultsOf(const std::vector<TapeReading>& readings) const {
    QStringList lines;
    const Result<std::vector<PatternVersion>> all = m_session.store().patternVersions();
    if (!all) return {text(all.error(), m_session.speech())};
    QHash<PatternId, std::vector<PatternVersion>> versions;
    for (const PatternVersion& version : *all)
        versions[version.pattern.id].push_back(version);
    for (const TapeReading& reading : readings) {
        if (reading.corrects && !isMeasured(reading)) continue;
        if (!recipeOf(reading, versions[reading.pattern]))
            lines << tr("Lane %1, %2: there is no version %3 of that pattern to compare with")
                         .arg(m_session.speech().locale.toString(reading.lane), dateTimeText(reading.at, m_session.speech()),
                              m_session.speech().locale.toString(qlonglong(reading.patternVersion)));
        else if (reading.at > m_session.now())
            lines << tr("Lane %1, %2: the time is still to come")
                         .arg(m_session.speech().locale.toString(reading.lane), dateTimeText(reading.at, m_session.speech()));
    }
    return lines;
}

void ReadingsImport::showLines(const QStringList& lines) {
    m_faults->clear();
    m_faults->addItems(lines.mid(0, mostLines));
    if (lines.size() > mostLines) m_faults->addItem(tr("and %n more", nullptr, int(lines.size() - mostLines)));
    m_faults->setVisible(!lines.isEmpty());
}

void ReadingsImport::look() {
    if (m_filling || m_table.records.empty()) return;
    m_readings.clear();
    m_take->setEnabled(false);
    const Speech speech = m_session.speech();
    Result<cli::CsvRows> rows = cli::csvRows(m_bytes, m_name, mapping(), cli::tapeColumns());
    if (!rows) {
        m_result->setText(tr("Nothing can come in yet:"));
        return showLines({text(rows.error(), speech)});
    }
    takeNamesForIds(*rows, QStringLiteral("pattern"), m_session.season().patterns);
    takeNamesForIds(*rows, QStringLiteral("machine"), m_session.season().centre.machines);
    const auto read = cli::tapesFromCsv(*rows, {m_session.season().centre, m_session.season().patterns});
    QStringList lines;
    for (const Finding& fault : read.faults)
        lines << text(fault, speech);
    if (lines.isEmpty()) lines = faultsOf(read.records);
    if (!lines.isEmpty()) {
        m_result->setText(tr("Nothing can come in yet; %n cell(s) do not fit:", nullptr, int(lines.size())));
        return showLines(lines);
    }
    QSet<OperationId> stored;
    if (const Result<std::vector<TapeReading>> all = m_session.store().tapes(allRecords)) {
        for (const TapeReading& reading : *all)
            stored.insert(reading.id);
    }
    for (const TapeReading& reading : read.records) {
        if (!stored.contains(reading.id)) m_readings.push_back(reading);
    }
    const int known = int(read.records.size() - m_readings.size());
    const QString coming = tr("%n reading(s) can come in", nullptr, int(m_readings.size()));
    m_result->setText(known ? tr("%1; %n are here already and stay as they are.", nullptr, known).arg(coming) : coming + u'.');
    m_take->setEnabled(!m_readings.empty());
    showLines({});
}

void ReadingsImport::take() {
    keepMapping();
    const std::vector<TapeReading> readings = m_readings;
    const QString name = tr("Import %n tape reading(s)", nullptr, int(readings.size()));
    if (m_session.record(name, {readings.begin(), readings.end()})) Q_EMIT closed();
}

void ReadingsImport::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT closed();
    } else {
        QWidget::keyPressEvent(event);
    }
}

}  // namespace laneward
