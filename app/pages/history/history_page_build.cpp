#include "app/edits/busy_bar.h"
#include "app/edits/plain_label.h"
#include "app/models/list_tools.h"
#include "app/pages/history/history_filters.h"
#include "app/pages/history/history_model.h"
#include "app/pages/history/history_page.h"
#include "app/pages/history/history_panel.h"
#include "app/paper/history_painter.h"

#include <QEvent>
#include <QFileDialog>
#include <QHeaderView>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSaveFile>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int least = 28;  // height of what is clicked

}  // namespace

void HistoryPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addWidget(m_filters = new HistoryFilters(session(), this));
    startAt(m_filters);
    buildTools();
    buildBusy(column);
    column->addWidget(m_empty = proseLabel({}, this));
    m_clear = new QPushButton(tr("Take all choices a&way"), this);
    m_clear->setObjectName("clearFilters");
    m_clear->setMinimumHeight(least);
    column->addWidget(m_clear, 0, Qt::AlignLeading);
    m_empty->hide();
    m_clear->hide();
    buildList(column);
    column->addWidget(m_totals = proseLabel({}, this));
    column->addWidget(m_figures = proseLabel({}, this));
    m_totals->setObjectName("historyTotals");
    m_totals->setAccessibleName(tr("What is listed, added up"));
    m_figures->setObjectName("historyFigures");
    m_figures->setAccessibleName(tr("How the item or machine has fared on these days"));
    column->addStretch(0);
    connect(m_filters, &HistoryFilters::changed, this, &HistoryPage::follow);
    connect(m_filters, &HistoryFilters::leftForList, m_list, [this] { m_list->setFocus(Qt::TabFocusReason); });
    connect(m_clear, &QPushButton::clicked, m_filters, &HistoryFilters::clear);
}

void HistoryPage::buildTools() {
    const auto button = [&](const QString& words, const QString& spoken, const char* name) {
        auto* made = new QPushButton(words, this);
        made->setObjectName(QLatin1StringView(name));
        made->setAccessibleName(spoken);
        made->setMinimumHeight(least);
        m_filters->firstRow()->addWidget(made);
        return made;
    };
    connect(button(tr("&Print…"), tr("Print what is listed"), "printHistory"), &QPushButton::clicked, this, [this] {
        QPrinter printer(QPrinter::HighResolution);
        prepare(printer, session().season().centre.facts.settings.letterPaper ? PaperSize::Letter : PaperSize::A4);
        QPrintDialog dialog(&printer, this);
        if (dialog.exec() == QDialog::Accepted) print(printer);
    });
    connect(button(tr("P&DF…"), tr("Save what is listed as PDF"), "historyPdf"), &QPushButton::clicked, this, [this] {
        if (const QString path = askWhere(tr("PDF (*.pdf)"), QStringLiteral("pdf")); !path.isEmpty()) savePdf(path);
    });
    connect(button(tr("CS&V…"), tr("Save what is listed as CSV"), "historyCsv"), &QPushButton::clicked, this, [this] {
        if (const QString path = askWhere(tr("CSV (*.csv)"), QStringLiteral("csv")); !path.isEmpty()) saveCsv(path);
    });
}

void HistoryPage::buildBusy(QVBoxLayout* column) {
    column->addWidget(m_busy = new BusyBar(tr("Reading what was done"), tr("Read o&n"), this));
    connect(m_busy, &BusyBar::cancelled, this, &HistoryPage::stop);
    connect(m_busy, &BusyBar::againWanted, this, &HistoryPage::read);
    connect(&m_reader, &HistoryReader::progressed, m_busy, &BusyBar::setDone);
}

void HistoryPage::buildList(QVBoxLayout* column) {
    m_splitter = new QSplitter(this);
    m_model = new HistoryModel(this);
    m_list = new QTableView(m_splitter);
    m_list->setObjectName("historyList");
    m_list->setAccessibleName(tr("What was done, the newest first"));
    m_list->setModel(m_model);
    m_list->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setShowGrid(false);
    m_list->setTabKeyNavigation(false);
    m_list->setWordWrap(false);
    m_list->verticalHeader()->hide();
    m_list->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_list->verticalHeader()->setDefaultSectionSize(std::max(least, m_list->fontMetrics().lineSpacing() + 8));
    m_list->horizontalHeader()->setSortIndicator(int(HistoryColumn::When), Qt::DescendingOrder);
    m_list->setSortingEnabled(true);
    auto* tools = new ListTools(m_list, QStringLiteral("history/entries"));
    tools->writeBy(
        [this] {
            return m_reading ? historyListText({m_reading->index, m_model->rows()}, m_model->cells()) : QString();
        },
        [this] {
            return m_reading ? historyListCsv({m_reading->index, m_model->rows()}, session().speech()) : QByteArray();
        });
    connect(tools, &ListTools::csvWanted, this, [this](const QByteArray& csv) {
        if (const QString path = askWhere(tr("CSV (*.csv)"), QStringLiteral("csv")); !path.isEmpty()) write(csv, path);
    });
    m_panel = new HistoryPanel(session(), m_splitter);
    m_panel->hide();
    m_splitter->addWidget(m_list);
    m_splitter->addWidget(m_panel);
    m_splitter->setStretchFactor(0, 1);
    m_splitter->setChildrenCollapsible(false);
    column->addWidget(m_splitter, 1);
    fitList();
    m_list->viewport()->installEventFilter(this);
    connect(m_list, &QTableView::activated, this, &HistoryPage::openDetails);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!m_showing && m_panel->isOpen()) showChosen();
    });
    connect(m_panel, &HistoryPanel::closeAsked, this, &HistoryPage::closeDetails);
    connect(m_panel, &HistoryPanel::entryWanted, this, &HistoryPage::goTo);
}

/// As wide as the titles and the newest entries need, names not beyond reason: hundreds of thousands of rows are not measured.
void HistoryPage::fitList() {
    constexpr int rowsSeen = 200;
    constexpr int air = 18;
    constexpr int arrow = 20;
    const QFontMetrics metrics = m_list->fontMetrics();
    const QFontMetrics bold = m_list->horizontalHeader()->fontMetrics();
    const int most = metrics.averageCharWidth() * 20;
    for (int column = 0; column < historyColumns; ++column) {
        int width = bold.horizontalAdvance(laneward::title(HistoryColumn(column))) * 11 / 10 + arrow;  // the chosen one is bold
        for (int row = 0; row < std::min(rowsSeen, m_model->rowCount()); ++row) {
            const int needed = metrics.horizontalAdvance(m_model->cells().text(*m_model->at(row), HistoryColumn(column))) + air;
            width = std::max(width, HistoryColumn(column) == HistoryColumn::When ? needed : std::min(needed, most));
        }
        m_list->setColumnWidth(column, width);
    }
    m_list->horizontalHeader()->setMinimumSectionSize(40);
    fitWords();
}

/// What was done takes the room that the others leave, but enough to be read; then the list scrolls sideways.
void HistoryPage::fitWords() {
    const int leastRoom = m_list->fontMetrics().averageCharWidth() * 28;
    int room = m_list->viewport()->width();
    for (int column = 0; column < historyColumns; ++column)
        if (column != int(HistoryColumn::Words) && !m_list->isColumnHidden(column)) room -= m_list->columnWidth(column);
    if (!m_list->isColumnHidden(int(HistoryColumn::Words)))
        m_list->setColumnWidth(int(HistoryColumn::Words), std::max(leastRoom, room));
}

bool HistoryPage::eventFilter(QObject* watched, QEvent* event) {
    if (m_list && watched == m_list->viewport() && event->type() == QEvent::Resize) fitWords();
    return Page::eventFilter(watched, event);
}

HistorySheet HistoryPage::sheet() const {
    std::vector<HistoryColumn> columns;
    for (int visual = 0; visual < historyColumns; ++visual) {
        const int column = m_list->horizontalHeader()->logicalIndex(visual);
        if (!m_list->isColumnHidden(column)) columns.push_back(HistoryColumn(column));
    }
    HistorySheet sheet = historySheet({m_reading->index, m_model->rows()}, columns, m_model->cells());
    const QString centre = shown(session().season().centre.facts.name);
    sheet.title = tr("What was done: %1", "name of the centre").arg(centre);
    sheet.headline = m_headline;
    if (!m_busy->why().isEmpty()) sheet.sums << m_busy->why();  // paper does not say more than the page knows
    for (const QLabel* label : {m_totals, m_figures})
        if (!label->text().isEmpty()) sheet.sums << label->text();
    sheet.footer = tr("%1, %2", "centre, time").arg(centre.left(60), dateTimeText(session().now(), session().speech()));
    return sheet;
}

std::optional<HistorySheet> HistoryPage::sheetForPaper() {
    if (!m_reading || m_model->rows().empty()) {
        Q_EMIT session().problem(tr("Nothing is listed, so nothing was printed."));
        return std::nullopt;
    }
    if (m_model->rows().size() <= mostOnPaper) return sheet();
    const QLocale locale;
    Q_EMIT session().problem(
        tr("%1 entries are too many for paper; narrow the list to %2, or save it as CSV. Nothing was printed.")
            .arg(locale.toString(m_model->rowCount()), locale.toString(int(mostOnPaper))));
    return std::nullopt;
}

bool HistoryPage::print(QPrinter& printer) {
    const std::optional<HistorySheet> made = sheetForPaper();
    if (!made) return false;
    const bool printed = paintHistory(printer, *made, session().speech()) > 0;
    if (printed)
        Q_EMIT session().said(tr("What is listed is printed"));
    else
        Q_EMIT session().problem(tr("Nothing was printed: the printer cannot be painted on."));
    return printed;
}

QString HistoryPage::askWhere(const QString& filter, const QString& ending) {
    return QFileDialog::getSaveFileName(this, tr("Save what is listed"), tr("history.%1", "ending of a file").arg(ending),
                                        filter);
}

bool HistoryPage::savePdf(const QString& path) {
    const std::optional<HistorySheet> made = sheetForPaper();
    if (!made) return false;
    const bool letter = session().season().centre.facts.settings.letterPaper;
    const Outcome written = writeHistoryPdf(path, *made, session().speech(), letter ? PaperSize::Letter : PaperSize::A4);
    if (written)
        Q_EMIT session().said(tr("The list is in %1").arg(path));
    else
        Q_EMIT session().problem(text(written.error(), session().speech()));
    return bool(written);
}

bool HistoryPage::saveCsv(const QString& path) {
    if (!m_reading) return false;
    return write(historyListCsv({m_reading->index, m_model->rows()}, session().speech()), path);
}

bool HistoryPage::write(const QByteArray& csv, const QString& path) {
    QSaveFile file(path);
    const bool saved = file.open(QIODevice::WriteOnly) && file.write(csv) == csv.size() && file.commit();
    if (saved)
        Q_EMIT session().said(tr("The list is in %1").arg(path));
    else
        Q_EMIT session().problem(tr("%1 could not be written; nothing was changed.").arg(path));
    return saved;
}

}  // namespace laneward
