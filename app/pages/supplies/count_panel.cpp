#include "app/pages/supplies/count_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/pages/supplies/count_model.h"
#include "app/pages/supplies/count_table.h"
#include "app/pages/supplies/list_paper.h"
#include "app/pages/supplies/supplies_import.h"
#include "app/paper/count_painter.h"
#include "core/base/limits.h"

#include <QCheckBox>
#include <QFileDialog>
#include <QHeaderView>
#include <QLineEdit>
#include <QPrinter>
#include <QPushButton>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int wordsAir = 22;  // beside whole words in a column
constexpr int fieldWidth = 84;

}  // namespace

CountPanel::CountPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    column->addWidget(m_empty = proseLabel(tr("No supplies are kept yet, so there is nothing to count."), this));
    buildTable(column);
    buildFoot(column);
    buildImport(column);
    connect(m_model, &CountModel::typed, this, [this] {
        m_refusal.clear();
        say();
    });
}

void CountPanel::buildTools() {
    m_tools = new QWidget(this);
    auto* row = new QHBoxLayout(m_tools);
    row->setContentsMargins(0, 0, 0, 0);
    const QString advice = tr("Type what is really there. A row that is left empty is not counted.");
    row->addWidget(proseLabel(advice, m_tools), 1, Qt::AlignVCenter);
    m_withBooks = new QCheckBox(tr("Print what the boo&ks say"), m_tools);
    m_withBooks->setObjectName("printBooks");
    m_withBooks->setToolTip(tr("Without it whoever counts does not know what is expected"));
    auto* print = new QPushButton(tr("&Print count sheet…"), m_tools);
    print->setObjectName("printCount");
    auto* pdf = new QPushButton(tr("Save as P&DF…"), m_tools);
    pdf->setObjectName("countPdf");
    auto* import = new QPushButton(tr("&Import a count…"), m_tools);
    import->setObjectName("importCount");
    row->addWidget(m_withBooks);
    row->addWidget(print);
    row->addWidget(pdf);
    row->addWidget(import);
    connect(print, &QPushButton::clicked, this, &CountPanel::print);
    connect(pdf, &QPushButton::clicked, this, &CountPanel::askWhereForPdf);
    connect(import, &QPushButton::clicked, this, [this] {
        if (m_import->chooseFile()) m_import->show();
        showParts();
    });
}

void CountPanel::buildTable(QVBoxLayout* column) {
    buildTools();
    column->addWidget(m_tools);
    m_model = new CountModel(m_session, this);
    m_table = new CountTable(m_model, this);
    QHeaderView& header = *m_table->horizontalHeader();
    header.setSectionResizeMode(QHeaderView::Interactive);
    header.setStretchLastSection(true);
    column->addWidget(m_table, 1);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &CountPanel::say);
}

void CountPanel::buildFoot(QVBoxLayout* column) {
    m_summary = proseLabel({}, this);
    m_summary->setObjectName("countSummary");
    column->addWidget(m_summary);
    m_foot = new QWidget(this);
    auto* row = new QHBoxLayout(m_foot);
    row->setContentsMargins(0, 0, 0, 0);
    m_note = new QLineEdit(this);
    m_note->setObjectName("countNote");
    m_note->setMaxLength(limits::nameLength);
    m_note->setPlaceholderText(tr("For example: with the delivery still in its wrapping"));
    auto* label = plainLabel(tr("&Note:"), this);
    label->setBuddy(m_note);
    m_addLot = new QPushButton(tr("Another &lot here"), this);
    m_addLot->setObjectName("anotherLot");
    m_addLot->setToolTip(tr("A row for a lot that the books do not have at the chosen place"));
    m_book = new QPushButton(tr("&Book the count"), this);
    m_book->setObjectName("bookCount");
    row->addWidget(m_addLot);
    row->addWidget(label);
    row->addWidget(m_note, 1);
    row->addWidget(m_book);
    column->addWidget(m_foot);
    connect(m_addLot, &QPushButton::clicked, this, &CountPanel::addLot);
    connect(m_book, &QPushButton::clicked, this, &CountPanel::book);
}

void CountPanel::buildImport(QVBoxLayout* column) {
    m_import = new SuppliesImport(m_session, cli::StockKind::Counts, this);
    m_import->hide();
    column->addWidget(m_import, 1);
    connect(m_import, &SuppliesImport::closed, this, [this] {
        m_import->hide();
        showParts();
        m_table->setFocus();
    });
}

/// The import stands in place of the sheet.
void CountPanel::showParts() {
    const bool any = m_model->rowCount() > 0;
    const bool sheet = m_import->isHidden();
    m_empty->setVisible(!any);
    for (QWidget* part : std::initializer_list<QWidget*>{m_tools, m_table, m_summary, m_foot})
        part->setVisible(any && sheet);
}

/// An editor that is open when places come or go gives back what was typed, and opens again on its place.
void CountPanel::refresh() {
    const QModelIndex at = m_table->currentIndex();
    const StockKey key = at.isValid() ? m_model->rowAt(at.row()).key : StockKey{};
    const bool typing = at.isValid() && m_table->indexWidget(at);
    if (m_model->wouldReset()) m_table->finishEditing();
    if (m_model->refresh() && at.isValid()) {
        for (int row = 0; row < m_model->rowCount(); ++row) {
            if (m_model->rowAt(row).key != key) continue;
            if (typing) {
                go(row, at.column());
                break;
            }
            // Nobody types there now, so nothing opens.
            const auto triggers = m_table->editTriggers();
            m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
            m_table->setCurrentIndex(m_model->index(row, at.column()));
            m_table->setEditTriggers(triggers);
            break;
        }
    }
    if (!m_import->isHidden()) m_import->refresh();
    showParts();
    fit();
    say();
}

void CountPanel::fit() {
    fitColumns(*m_table, wordsAir);
    m_table->setColumnWidth(CountModel::Counted, std::max(fieldWidth, m_table->columnWidth(CountModel::Counted)));
    m_table->setColumnWidth(CountModel::Lot, std::max(fieldWidth, m_table->columnWidth(CountModel::Lot)));
    m_table->setColumnWidth(CountModel::Difference, std::max(fieldWidth, m_table->columnWidth(CountModel::Difference)));
}

void CountPanel::say() {
    const int ready = m_model->countOf(CountModel::State::Ready);
    const int wrong = m_model->countOf(CountModel::State::Wrong);
    const int asked = m_model->countOf(CountModel::State::Asked);
    QStringList parts{tr("%n place(s) counted.", nullptr, ready)};
    if (wrong > 0) parts << tr("%n row(s) cannot be read.", nullptr, wrong);
    if (asked > 0) parts << tr("%n row(s) far from the books: mend or tick.", nullptr, asked);
    if (!m_refusal.isEmpty()) parts.prepend(m_refusal);
    m_summary->setText(parts.join(u' '));
    m_book->setEnabled(!m_session.isReadOnly());
    m_addLot->setEnabled(!m_session.isReadOnly() && m_table->currentIndex().isValid());
}

void CountPanel::go(int row, int column) {
    m_table->setFocus();
    m_table->setCurrentIndex(m_model->index(row, column));
    m_table->scrollTo(m_table->currentIndex());
}

void CountPanel::addLot() {
    m_table->finishEditing();
    const QModelIndex at = m_table->currentIndex();
    if (at.isValid()) go(m_model->addLot(at.row()), CountModel::Lot);
}

void CountPanel::book() {
    m_table->finishEditing();
    const int wrong = m_model->firstOf(CountModel::State::Wrong);
    const int asked = m_model->firstOf(CountModel::State::Asked);
    const std::vector<CountLine> lines = m_model->lines();
    m_refusal = tr("Nothing was booked.");
    if (wrong >= 0) {
        go(wrong, CountModel::Counted);
    } else if (asked >= 0) {
        go(asked, CountModel::Remark);
    } else if (!lines.empty()) {
        StockCount count;
        count.at = m_session.now();
        count.lines = lines;
        count.note = m_note->text().trimmed();
        const int places = m_model->countOf(CountModel::State::Ready);
        m_refusal.clear();
        if (m_session.record(tr("Count %n place(s)", nullptr, places), {count})) {
            m_note->clear();
            m_model->clear();
        }
    }
    say();
}

CountSheet CountPanel::sheet() const {
    CountSheet sheet;
    sheet.centre = m_session.season().centre.facts.name;
    sheet.made = m_session.now();
    sheet.withBooks = m_withBooks->isChecked();
    for (int row = 0; row < m_model->rowCount(); ++row) {
        sheet.lines.push_back({m_model->cell(row, CountModel::Name), m_model->cell(row, CountModel::Where),
                               m_model->cell(row, CountModel::Lot), m_model->cell(row, CountModel::BooksSay),
                               m_model->cell(row, CountModel::Unit)});
    }
    return sheet;
}

void CountPanel::print() {
    QPrinter printer(QPrinter::HighResolution);
    if (!askPrinter(printer, m_session, this)) return;
    if (paintCount(printer, sheet(), m_session.speech()) > 0)
        Q_EMIT m_session.said(tr("The count sheet is printed"));
    else
        Q_EMIT m_session.problem(tr("Nothing was printed: the printer cannot be painted on."));
}

void CountPanel::askWhereForPdf() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the count sheet"), tr("count-sheet.pdf"), tr("PDF (*.pdf)"));
    if (!path.isEmpty()) savePdf(path);
}

bool CountPanel::savePdf(const QString& path) {
    const bool letter = m_session.season().centre.facts.settings.letterPaper;
    const Outcome written = writeCountPdf(path, sheet(), m_session.speech(), letter ? PaperSize::Letter : PaperSize::A4);
    if (written)
        Q_EMIT m_session.said(tr("The count sheet is in %1").arg(path));
    else
        Q_EMIT m_session.problem(text(written.error(), m_session.speech()));
    return bool(written);
}

}  // namespace laneward
