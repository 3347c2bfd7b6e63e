#include "app/pages/supplies/supplies_import.h"

#include "app/pages/supplies/supply_texts.h"
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
#include <QSettings>
#include <QTableWidget>

#include <algorithm>

namespace laneward {

namespace {

constexpr qsizetype mostLines = 200;
constexpr size_t rowsShown = 5;
constexpr qsizetype cellShown = 40;

}  // namespace

QString SuppliesImport::kept() const {
    return m_kind == cli::StockKind::Counts ? QStringLiteral("supplies/count-import/") : QStringLiteral("supplies/price-import/");
}

bool SuppliesImport::chooseFile(const SupplierId& supplier) {
    const QString title = m_kind == cli::StockKind::Counts ? tr("A count of stock") : tr("A price list");
    const QString path = QFileDialog::getOpenFileName(this, title, {}, tr("CSV (*.csv *.txt *.tsv);;All files (*)"));
    if (!path.isEmpty()) load(path, supplier);
    return !path.isEmpty();
}

void SuppliesImport::load(const QString& path, const SupplierId& supplier) {
    m_supplier = supplier;
    m_name = QFileInfo(path).fileName();
    m_table = {};
    m_bytes.clear();
    m_title->setText(
        m_kind == cli::StockKind::Counts
            ? tr("Count of stock from %1", "file").arg(shown(m_name))
            : tr("Price list of %1 from %2", "supplier, file").arg(supplierName(supplier, m_session.season()), shown(m_name)));
    QFile file(path);
    // One byte more than is accepted: the reader then refuses the file as too large without its being read whole.
    if (QFileInfo(path).isFile() && file.open(QIODevice::ReadOnly)) m_bytes = file.read(limits::importBytes + 1);
    const Result<CsvTable> table = readCsv(m_bytes, m_name);
    if (table) m_table = *table;
    fillColumns();
    preview();
    m_sure->setChecked(false);
    look();
    m_columns[QStringLiteral("supply")]->setFocus();
}

/// What was chosen the last time, where the file has it; else the column that is called as ours.
void SuppliesImport::fillColumns() {
    m_filling = true;
    const QSettings settings;
    const QStringList titles = m_table.records.empty() ? QStringList{} : m_table.records.front().fields;
    for (auto column = m_columns.begin(); column != m_columns.end(); ++column) {
        QComboBox* box = column.value();
        box->clear();
        box->addItem(tr("— not in the file —"), QString());
        for (const QString& title : titles)
            box->addItem(shown(title.trimmed()), title.trimmed());
        const int before = box->findData(settings.value(kept() + column.key()));
        box->setCurrentIndex(before > 0 ? before : std::max(0, box->findData(column.key())));
    }
    m_unit->setCurrentIndex(std::max(0, m_unit->findData(settings.value(kept() + "unit-default").toString())));
    m_decimal->setCurrentIndex(settings.value(kept() + "decimalComma").toBool() ? 1 : 0);
    m_date->setText(settings.value(kept() + "date-format", "yyyy-MM-dd").toString());
    m_time->setText(settings.value(kept() + "time-format", "HH:mm").toString());
    m_filling = false;
}

void SuppliesImport::keepMapping() const {
    QSettings settings;
    for (auto column = m_columns.begin(); column != m_columns.end(); ++column)
        settings.setValue(kept() + column.key(), column.value()->currentData());
    settings.setValue(kept() + "unit-default", m_unit->currentData());
    settings.setValue(kept() + "decimalComma", m_decimal->currentIndex() == 1);
    settings.setValue(kept() + "date-format", m_date->text());
    settings.setValue(kept() + "time-format", m_time->text());
}

cli::CsvMapping SuppliesImport::mapping() const {
    cli::CsvMapping mapping;
    for (auto column = m_columns.begin(); column != m_columns.end(); ++column) {
        const QString title = column.value()->currentData().toString();
        // A column that was not chosen is not taken though it be called as ours.
        if (title.isEmpty())
            mapping.columns.insert(u'-' + column.key(), column.key());
        else
            mapping.columns.insert(column.key(), title);
    }
    const QString unit = m_unit->currentData().toString();
    if (!unit.isEmpty()) mapping.defaults.insert(QStringLiteral("unit"), unit);
    if (!unit.isEmpty()) mapping.defaults.insert(QStringLiteral("pack_unit"), unit);
    if (!m_supplier.isEmpty()) mapping.defaults.insert(QStringLiteral("supplier"), m_supplier.value);
    mapping.date = m_date->text();
    mapping.time = m_time->text();
    mapping.decimalComma = m_decimal->currentIndex() == 1;
    return mapping;
}

void SuppliesImport::preview() {
    const size_t count = std::min(m_table.records.size(), rowsShown + 1);
    m_rows->clear();
    m_rows->setRowCount(count == 0 ? 0 : int(count) - 1);
    m_rows->setColumnCount(count == 0 ? 0 : int(m_table.records.front().fields.size()));
    for (size_t r = 0; r < count; ++r) {
        const QStringList& fields = m_table.records[r].fields;
        for (int c = 0; c < std::min(m_rows->columnCount(), int(fields.size())); ++c) {
            auto* item = new QTableWidgetItem(shown(fields[c].left(cellShown)));
            r == 0 ? m_rows->setHorizontalHeaderItem(c, item) : m_rows->setItem(int(r) - 1, c, item);
        }
    }
    m_rows->resizeColumnsToContents();
}

void SuppliesImport::showLines(const QStringList& lines) {
    m_faults->clear();
    m_faults->addItems(lines.mid(0, mostLines));
    if (lines.size() > mostLines) m_faults->addItem(tr("and %n more", nullptr, int(lines.size() - mostLines)));
    m_faults->setVisible(!lines.isEmpty());
}

void SuppliesImport::look() {
    if (m_filling || m_name.isEmpty()) return;
    m_deed = {};
    m_take->setEnabled(false);
    m_sure->hide();
    const Result<cli::CsvRows> rows = cli::csvRows(m_bytes, m_name, mapping(), cli::stockColumns(m_kind));
    if (rows) return lookAt(*rows);
    m_result->setText(tr("Nothing can come in yet:"));
    showLines({text(rows.error(), m_session.speech())});
}

void SuppliesImport::lookAt(const cli::CsvRows& rows) {
    const SeasonState& season = m_session.season();
    if (m_kind == cli::StockKind::Counts) {
        const cli::ReadCounts read = cli::countsFromCsv(rows, season, m_session.now());
        m_deed.records = {read.counts.begin(), read.counts.end()};
        m_deed.name = tr("Count %n place(s) from %1", nullptr, int(rows.count())).arg(shown(m_name));
        return tell(read.faults, read.doubts, tr("%n place(s) are counted.", nullptr, int(rows.count())));
    }
    const cli::ReadPrices read = cli::pricesFromCsv(rows, season);
    if (read.faults.empty()) m_deed.changes = cli::changesTo(season, read);
    m_deed.name = tr("Price list of %1 from %2", "supplier, file").arg(supplierName(read.supplier, season), shown(m_name));
    const auto gone = std::count_if(m_deed.changes.begin(), m_deed.changes.end(), [](const Change& change) {
        const auto* offer = std::get_if<RowChange<Offer>>(&change);
        return offer && offer->after && offer->after->retired;
    });
    const int changed = int(m_deed.changes.size()) - int(gone);
    QString coming = tr("%n price(s) are new or another.", nullptr, changed);
    if (gone > 0) coming += u' ' + tr("%n are no longer in the list and are retired.", nullptr, int(gone));
    tell(read.faults, read.doubts, coming);
}

void SuppliesImport::tell(const std::vector<Finding>& faults, const std::vector<Finding>& doubts, const QString& coming) {
    QStringList lines;
    for (const Finding& finding : faults.empty() ? doubts : faults)
        lines << text(finding, m_session.speech());
    showLines(lines);
    const bool asked = faults.empty() && !doubts.empty();
    m_sure->setVisible(asked);
    if (!faults.empty())
        m_result->setText(tr("Nothing can come in yet; %n cell(s) do not fit:", nullptr, int(faults.size())));
    else if (asked)
        m_result->setText(coming + u' ' +
                          tr("%n row(s) are far from what is known; say if it is so:", nullptr, int(lines.size())));
    else
        m_result->setText(coming);
    const bool any = !m_deed.changes.empty() || !m_deed.records.empty();
    m_take->setEnabled(faults.empty() && any && (!asked || m_sure->isChecked()) && !m_session.isReadOnly());
}

void SuppliesImport::take() {
    keepMapping();
    if (!m_session.perform(m_deed)) return;
    m_name.clear();
    Q_EMIT closed();
}

void SuppliesImport::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

}  // namespace laneward
