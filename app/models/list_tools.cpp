#include "app/models/list_tools.h"

#include "core/documents/writers.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QMenu>
#include <QSettings>
#include <QTableView>

#include <algorithm>

namespace laneward {

namespace {

std::vector<int> namedColumns(const QAbstractItemModel& model) {
    std::vector<int> columns;
    for (int c = 0; c < model.columnCount(); ++c) {
        if (!model.headerData(c, Qt::Horizontal).toString().isEmpty()) columns.push_back(c);
    }
    return columns;
}

std::vector<QStringList> cells(const QAbstractItemModel& model) {
    const std::vector<int> columns = namedColumns(model);
    std::vector<QStringList> lines(1);
    for (int c : columns)
        lines[0].append(model.headerData(c, Qt::Horizontal).toString());
    for (int r = 0; r < model.rowCount(); ++r) {
        QStringList line;
        for (int c : columns)
            line.append(model.index(r, c).data().toString().replace(QChar::LineFeed, QStringLiteral(", ")));
        lines.push_back(line);
    }
    return lines;
}

}  // namespace

QString textTable(const QAbstractItemModel& model) {
    const std::vector<QStringList> lines = cells(model);
    std::vector<qsizetype> widths(size_t(lines[0].size()));
    for (const QStringList& line : lines) {
        for (qsizetype c = 0; c < line.size(); ++c)
            widths[size_t(c)] = std::max(widths[size_t(c)], line[c].size());
    }
    QString text;
    for (const QStringList& line : lines) {
        QString row;
        for (qsizetype c = 0; c < line.size(); ++c)
            row += line[c].leftJustified(widths[size_t(c)] + 2);
        text += row.trimmed() + u'\n';
    }
    return text;
}

QByteArray csvTable(const QAbstractItemModel& model) {
    QByteArray csv;
    for (const QStringList& line : cells(model)) {
        std::vector<CsvField> fields;
        for (const QString& cell : line)
            fields.push_back({cell, false});
        csv += csvRecord(fields);
    }
    return csv;
}

QString plainTip(const QString& text) { return text.isEmpty() ? text : QStringLiteral("<qt>%1</qt>").arg(text.toHtmlEscaped()); }

ListTools::ListTools(QTableView* table, const QString& name) : QObject(table), m_table(table), m_name(name) {
    table->horizontalHeader()->setContextMenuPolicy(Qt::CustomContextMenu);
    table->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(table, &QTableView::customContextMenuRequested, this, &ListTools::openMenu);
    connect(table->horizontalHeader(), &QHeaderView::customContextMenuRequested, this, &ListTools::openMenu);
    restore();
}

void ListTools::restore() {
    const QStringList hidden = QSettings().value("lists/" + m_name + "/hidden").toStringList();
    for (const QString& column : hidden)
        m_table->setColumnHidden(column.toInt(), true);
}

void ListTools::setColumnShown(int column, bool shown) {
    m_table->setColumnHidden(column, !shown);
    QStringList hidden;
    for (int c = 0; c < m_table->model()->columnCount(); ++c) {
        if (m_table->isColumnHidden(c)) hidden.append(QString::number(c));
    }
    QSettings().setValue("lists/" + m_name + "/hidden", hidden);
}

void ListTools::writeBy(std::function<QString()> text, std::function<QByteArray()> csv) {
    m_text = std::move(text);
    m_csv = std::move(csv);
}

void ListTools::copy() const { QGuiApplication::clipboard()->setText(m_text ? m_text() : textTable(*m_table->model())); }

void ListTools::openMenu(const QPoint& at) {
    auto* menu = new QMenu(m_table);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    connect(menu->addAction(tr("&Copy as text table")), &QAction::triggered, this, &ListTools::copy);
    connect(menu->addAction(tr("&Save as CSV…")), &QAction::triggered, this,
            [this] { Q_EMIT csvWanted(m_csv ? m_csv() : csvTable(*m_table->model())); });
    menu->addSeparator();
    for (int c : namedColumns(*m_table->model())) {
        QAction* action = menu->addAction(m_table->model()->headerData(c, Qt::Horizontal).toString());
        action->setCheckable(true);
        action->setChecked(!m_table->isColumnHidden(c));
        connect(action, &QAction::toggled, this, [this, c](bool shown) { setColumnShown(c, shown); });
    }
    menu->popup(m_table->viewport()->mapToGlobal(at));
}

}  // namespace laneward
