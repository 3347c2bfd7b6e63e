#include "app/pages/patterns/pattern_list.h"

#include "app/models/list_tools.h"
#include "app/pages/patterns/pattern_list_model.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QSaveFile>
#include <QSettings>
#include <QSignalBlocker>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

PatternList::PatternList(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    m_filter = new QLineEdit(this);
    m_filter->setPlaceholderText(tr("Find a pattern"));
    m_filter->setAccessibleName(tr("Find a pattern"));
    m_filter->setClearButtonEnabled(true);
    column->addWidget(m_filter);
    buildTable();
    buildButtons();
}

void PatternList::buildTable() {
    m_model = new PatternListModel(this);
    m_sorted = new QSortFilterProxyModel(this);
    m_sorted->setSourceModel(m_model);
    m_sorted->setSortRole(PatternListModel::SortRole);
    m_sorted->setFilterCaseSensitivity(Qt::CaseInsensitive);
    m_table = new QTableView(this);
    m_table->setModel(m_sorted);
    m_table->setAccessibleName(tr("Patterns"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->setSortingEnabled(true);
    m_table->sortByColumn(PatternListModel::Name, Qt::AscendingOrder);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(std::max(26, fontMetrics().height() + 8));
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(PatternListModel::Name, QHeaderView::Stretch);
    layout()->addWidget(m_table);
    auto* tools = new ListTools(m_table, "patterns/list");
    // At first only what is looked for most; the choice of columns is kept.
    if (!QSettings().contains("lists/patterns/list/hidden")) {
        tools->setColumnShown(PatternListModel::End, false);
        tools->setColumnShown(PatternListModel::Version, false);
    }
    connect(m_filter, &QLineEdit::textChanged, m_sorted, &QSortFilterProxyModel::setFilterFixedString);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        showButtons();
        if (!current().isEmpty()) Q_EMIT chosen(current());
    });
    connect(tools, &ListTools::csvWanted, this, [this](const QByteArray& csv) {
        const QString path = QFileDialog::getSaveFileName(this, tr("Save the list"), tr("patterns.csv"), tr("CSV (*.csv)"));
        if (path.isEmpty()) return;
        QSaveFile file(path);
        if (!file.open(QIODevice::WriteOnly) || file.write(csv) != csv.size() || !file.commit())
            Q_EMIT m_session.problem(tr("%1 could not be written; nothing was saved.").arg(path));
    });
}

void PatternList::buildButtons() {
    auto* row = new QHBoxLayout;
    m_new = new QPushButton(tr("Ne&w"), this);
    m_duplicate = new QPushButton(tr("Du&plicate"), this);
    m_retire = new QPushButton(this);
    for (QPushButton* button : {m_new, m_duplicate, m_retire})
        row->addWidget(button);
    qobject_cast<QVBoxLayout*>(layout())->addLayout(row);
    connect(m_new, &QPushButton::clicked, this, &PatternList::addNew);
    connect(m_duplicate, &QPushButton::clicked, this, &PatternList::duplicate);
    connect(m_retire, &QPushButton::clicked, this, &PatternList::retire);
}

void PatternList::refresh() {
    const PatternId before = current();
    {
        const QSignalBlocker quiet(m_table->selectionModel());
        m_model->setPatterns(m_session.season().patterns, m_session.speech());
        if (!before.isEmpty()) select(before);
    }
    if (current().isEmpty() && m_sorted->rowCount() > 0) m_table->selectRow(0);
    m_table->viewport()->update();
    showButtons();
}

void PatternList::select(const PatternId& id) {
    const int row = m_model->rowOf(id);
    if (row < 0) return;
    const QModelIndex index = m_sorted->mapFromSource(m_model->index(row, PatternListModel::Name));
    if (!index.isValid()) {
        m_filter->clear();
        return select(id);
    }
    m_table->setCurrentIndex(index);
    m_table->selectRow(index.row());
}

PatternId PatternList::current() const {
    const QModelIndex index = m_table->currentIndex();
    return index.isValid() ? PatternId{index.data(PatternListModel::IdRole).toString()} : PatternId{};
}

const Pattern* PatternList::currentPattern() const { return findPattern(m_session.season().patterns, current()); }

void PatternList::showButtons() {
    const Pattern* pattern = currentPattern();
    const bool writable = !m_session.isReadOnly();
    m_new->setEnabled(writable);
    m_duplicate->setEnabled(writable && pattern);
    m_retire->setEnabled(writable && pattern);
    m_retire->setText(pattern && pattern->retired ? tr("Use aga&in") : tr("Ret&ire"));
    m_retire->setToolTip(pattern && pattern->retired ? tr("Offer it again")
                                                     : tr("Keep it for the records, and offer it no longer"));
}

/// "Wren 36", "Wren 36 (2)", …
QString PatternList::freeName(const QString& wanted) const {
    const auto& all = m_session.season().patterns;
    QString name = wanted;
    for (int n = 2; std::any_of(all.begin(), all.end(), [&](const Pattern& p) { return p.name == name; }); ++n)
        name = tr("%1 (%2)", "name and number of a copy").arg(wanted, m_session.speech().locale.toString(n));
    return name;
}

bool PatternList::store(const QString& name, const std::optional<Pattern>& before, const Pattern& after) {
    if (!m_session.apply(name, {RowChange<Pattern>{before, after}})) return false;
    select(after.id);
    return true;
}

/// It begins with one stroke over the whole lane's width, so that there is something to change.
void PatternList::addNew() {
    Pattern pattern;
    pattern.id = {m_session.newOperation().value};
    pattern.name = freeName(tr("New pattern"));
    pattern.strokes.push_back({Direction::Out, 2, 38, 1, Microlitres{40}, {}, pattern.end, 0});
    store(tr("New pattern"), std::nullopt, pattern);
}

void PatternList::duplicate() {
    const Pattern* original = currentPattern();
    if (!original) return;
    Pattern copy = *original;
    copy.id = {m_session.newOperation().value};
    copy.name = freeName(original->name);
    copy.retired = false;
    copy.version = copy.edition = 0;
    store(tr("Duplicate %1", "pattern").arg(shown(original->name)), std::nullopt, copy);
}

void PatternList::retire() {
    const Pattern* pattern = currentPattern();
    if (!pattern) return;
    Pattern after = *pattern;
    after.retired = !pattern->retired;
    store(after.retired ? tr("Retire %1", "pattern").arg(shown(pattern->name))
                        : tr("Use %1 again", "pattern").arg(shown(pattern->name)),
          *pattern, after);
}

}  // namespace laneward
