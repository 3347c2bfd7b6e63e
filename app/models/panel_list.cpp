#include "app/models/panel_list.h"

#include "app/models/list_tools.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QHeaderView>
#include <QSaveFile>
#include <QShortcut>
#include <QSortFilterProxyModel>
#include <QTabWidget>
#include <QTableView>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("laneward::PanelList", source); }

void saveCsv(const QByteArray& csv, const QString& name, Session& session, QWidget* over) {
    const QString path = QFileDialog::getSaveFileName(over, say(QT_TRANSLATE_NOOP("laneward::PanelList", "Save the list")), name,
                                                      say(QT_TRANSLATE_NOOP("laneward::PanelList", "CSV (*.csv)")));
    if (path.isEmpty()) return;
    QSaveFile file(path);
    const bool saved = file.open(QIODevice::WriteOnly) && file.write(csv) == csv.size() && file.commit();
    if (saved)
        Q_EMIT session.said(say(QT_TRANSLATE_NOOP("laneward::PanelList", "The list is in %1")).arg(path));
    else
        Q_EMIT session.problem(
            say(QT_TRANSLATE_NOOP("laneward::PanelList", "%1 could not be written; nothing was changed.")).arg(path));
}

}  // namespace

QTableView* listOf(QAbstractItemModel* model, const QString& name, const QString& file, Session& session, QWidget* parent) {
    auto* list = new QTableView(parent);
    auto* proxy = new QSortFilterProxyModel(list);
    proxy->setSourceModel(model);
    proxy->setSortRole(Qt::UserRole);
    list->setModel(proxy);
    list->setSelectionBehavior(QAbstractItemView::SelectRows);
    list->setSelectionMode(QAbstractItemView::SingleSelection);
    list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    list->setShowGrid(false);
    list->setTabKeyNavigation(false);
    list->setWordWrap(false);
    list->verticalHeader()->hide();
    list->verticalHeader()->setDefaultSectionSize(qMax(26, list->fontMetrics().lineSpacing() + 8));
    list->setSortingEnabled(true);
    auto* tools = new ListTools(list, name);
    QObject::connect(tools, &ListTools::csvWanted, list,
                     [file, list, &session](const QByteArray& csv) { saveCsv(csv, file, session, list); });
    return list;
}

void fitColumns(QTableView& list, int air) {
    constexpr int rowsSeen = 20;
    constexpr int arrow = 16;  ///< of the column that is sorted by
    const QFontMetrics metrics = list.fontMetrics();
    const QFontMetrics bold = list.horizontalHeader()->fontMetrics();
    const QAbstractItemModel& model = *list.model();
    int lines = 1;
    for (int c = 0; c < model.columnCount(); ++c) {
        int width = 32;
        const QString title = model.headerData(c, Qt::Horizontal).toString();
        for (const QString& word : title.split(u' '))
            width = qMax(width, bold.horizontalAdvance(word) * 11 / 10 + arrow);  // the chosen column's title is bold
        for (int r = 0; r < qMin(rowsSeen, model.rowCount()); ++r)
            width = qMax(width, metrics.horizontalAdvance(model.index(r, c).data().toString()));
        list.setColumnWidth(c, width + air);
        const QRect room(0, 0, width - arrow, 1'000);
        lines = qMax(lines, bold.boundingRect(room, Qt::TextWordWrap, title).height() / bold.lineSpacing());
    }
    list.horizontalHeader()->setFixedHeight(lines * bold.lineSpacing() + 10);
}

void walkTabs(QTabWidget& tabs, QWidget& page) {
    for (const auto& [key, step] : {std::pair{QKeySequence::NextChild, 1}, {QKeySequence::PreviousChild, -1}}) {
        auto* shortcut = new QShortcut(&page);
        shortcut->setKeys(key);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        QObject::connect(shortcut, &QShortcut::activated, &page, [&tabs, &page, by = step] {
            tabs.setCurrentIndex((tabs.currentIndex() + tabs.count() + by) % tabs.count());
            page.setFocus(Qt::TabFocusReason);
        });
    }
}

int chosenRow(const QTableView& list) {
    const auto* proxy = static_cast<const QSortFilterProxyModel*>(list.model());
    return list.currentIndex().isValid() ? proxy->mapToSource(list.currentIndex()).row() : -1;
}

void chooseRow(QTableView& list, int row) {
    const auto* proxy = static_cast<const QSortFilterProxyModel*>(list.model());
    const int column = qMax(0, list.currentIndex().column());
    list.setCurrentIndex(proxy->mapFromSource(proxy->sourceModel()->index(row, column)));
}

}  // namespace laneward
