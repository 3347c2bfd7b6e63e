#include "app/pages/supplies/stock_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/list_tools.h"
#include "app/models/panel_list.h"
#include "app/pages/supplies/list_paper.h"
#include "app/pages/supplies/stock_delegate.h"
#include "app/pages/supplies/stock_detail.h"
#include "app/pages/supplies/stock_model.h"
#include "app/pages/supplies/supply_form.h"
#include "app/pages/supplies/supply_texts.h"

#include <QComboBox>
#include <QPushButton>
#include <QSettings>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int wordsAir = 22;     // beside whole words in a column
constexpr int lineWidth = 170;   // of the stock ahead
constexpr int rangeWidth = 260;  // of the dates, at least
constexpr auto listKey = "supplies/stock";

}  // namespace

StockPanel::StockPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    buildTools();
    m_empty =
        proseLabel(tr("No supplies are kept yet. Enter the conditioners, the cleaner, cloth and parts first, then count what "
                      "is there: from then on this page tells how long everything lasts."),
                   this);
    column->addWidget(m_empty);
    m_split = new QSplitter(Qt::Vertical, this);
    m_split->setChildrenCollapsible(false);
    buildList();
    m_detail = new StockDetail(session, m_split);
    m_split->setStretchFactor(0, 1);
    m_split->setStretchFactor(1, 1);
    m_split->setSizes({240, 270});
    column->addWidget(m_split, 1);
    buildForm(column);
    column->addStretch(0);
}

void StockPanel::buildForm(QVBoxLayout* column) {
    m_form = new SupplyForm(m_session, this);
    column->addWidget(m_form, 1);
    connect(m_form, &SupplyForm::left, this, [this] {
        showParts();
        select(m_form->editing());
        m_list->setFocus();
    });
}

void StockPanel::buildTools() {
    m_tools = new QWidget(this);
    auto* row = new QHBoxLayout(m_tools);
    row->setContentsMargins(0, 0, 0, 0);
    m_group = new QComboBox(m_tools);
    m_group->setObjectName("supplyGroup");
    m_group->addItem(tr("all supplies"), StockModel::keptGroups());
    m_group->addItem(tr("liquids"), QString::number(int(SupplyGroup::Liquid)));
    m_group->addItem(tr("cloth"), QString::number(int(SupplyGroup::Cloth)));
    m_group->addItem(tr("parts"), QString::number(int(SupplyGroup::Part)));
    m_group->addItem(tr("retired ones"), StockModel::retiredGroup());
    auto* label = plainLabel(tr("Sho&w:"), m_tools);
    label->setBuddy(m_group);
    row->addWidget(label);
    row->addWidget(m_group);
    row->addWidget(proseLabel(tr("▬ from 5 % to 95 %, tick at 50 %   ▼ order by"), m_tools), 1, Qt::AlignVCenter);
    buildDeeds(row);
    auto* print = new QPushButton(tr("Print &list…"), m_tools);
    print->setObjectName("printStock");
    row->addWidget(print);
    layout()->addWidget(m_tools);
    connect(m_group, &QComboBox::currentIndexChanged, this, &StockPanel::filter);
    connect(print, &QPushButton::clicked, this, [this] { printList(tr("Supplies"), *m_list, m_session, this); });
}

void StockPanel::buildDeeds(QHBoxLayout* row) {
    const auto add = [&](const QString& text, const char* name) {
        auto* button = new QPushButton(text, m_tools);
        button->setObjectName(name);
        row->addWidget(button);
        return button;
    };
    QPushButton* fresh = add(tr("&New supply…"), "newSupply");
    m_change = add(tr("&Change…"), "changeSupply");
    m_retire = add(tr("Retire"), "retireSupply");
    connect(fresh, &QPushButton::clicked, this, [this] {
        m_form->create();
        showParts();
    });
    connect(m_change, &QPushButton::clicked, this, [this] {
        if (const Supply* supply = chosenSupply()) m_form->edit(*supply);
        showParts();
    });
    connect(m_retire, &QPushButton::clicked, this, [this] {
        if (const Supply* supply = chosenSupply()) retire(m_session, Supply(*supply));
    });
}

const Supply* StockPanel::chosenSupply() const { return findSupply(m_session.season().supplies, current()); }

/// The form stands in place of the list.
void StockPanel::showParts() {
    const bool any = m_model->rowCount() > 0;
    const bool list = !m_form->isOpen();
    m_tools->setVisible(list);
    m_split->setVisible(list && any);
    m_empty->setVisible(list && !any);
    const Supply* supply = chosenSupply();
    m_change->setEnabled(supply && !m_session.isReadOnly());
    m_retire->setEnabled(supply && !m_session.isReadOnly());
    m_retire->setText(supply && supply->retired ? tr("Take up again") : tr("Retire"));
}

void StockPanel::buildList() {
    m_model = new StockModel(this);
    m_list = listOf(m_model, QString(listKey), tr("supplies.csv"), m_session, m_split);
    m_list->setAccessibleName(tr("Supplies"));
    auto* header = new AxisHeader(
        StockModel::RunsOut, [this] { return m_model->axis(); }, m_list);
    header->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(header, &QHeaderView::customContextMenuRequested, m_list, &QTableView::customContextMenuRequested);
    m_list->setHorizontalHeader(header);
    m_list->setSortingEnabled(true);
    header->setSectionsMovable(false);
    header->setStretchLastSection(false);
    m_list->setItemDelegate(new StockDelegate(*m_model, m_list));
    m_list->verticalHeader()->setDefaultSectionSize(std::max(30, fontMetrics().lineSpacing() + 14));
    // At first only what is looked for most; the choice of columns is kept.
    const QStringList kept = QSettings().value(QStringLiteral("lists/%1/hidden").arg(listKey)).toStringList();
    const bool fresh = !QSettings().contains(QStringLiteral("lists/%1/hidden").arg(listKey));
    for (const int c : {StockModel::Kind, StockModel::Sealed, StockModel::Open, StockModel::InTanks}) {
        if (fresh) m_list->setColumnHidden(c, true);
    }
    for (const QString& c : kept)
        m_list->setColumnHidden(c.toInt(), true);
    m_list->sortByColumn(StockModel::RunsOut, Qt::AscendingOrder);
    auto* proxy = static_cast<QSortFilterProxyModel*>(m_list->model());
    proxy->setFilterRole(StockModel::GroupRole);
    proxy->setFilterRegularExpression(StockModel::keptGroups());
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &StockPanel::showChosen);
}

void StockPanel::fit() {
    fitColumns(*m_list, wordsAir);
    QHeaderView& header = *m_list->horizontalHeader();
    header.setFixedHeight(std::max(header.height(), header.sizeHint().height()));
    m_list->setColumnWidth(StockModel::Stock, lineWidth);
    m_list->setColumnWidth(StockModel::RunsOut, rangeWidth);
    header.setSectionResizeMode(QHeaderView::Interactive);
    header.setSectionResizeMode(StockModel::RunsOut, QHeaderView::Stretch);
}

void StockPanel::show(const std::shared_ptr<const SupplyAnswer>& answer) {
    m_answer = answer;
    const SupplyId before = current();
    m_filling = true;
    m_model->show(m_session.season(), answer ? &answer->outlook : nullptr, m_session.speech());
    fit();
    select(before);
    if (current().isEmpty() && m_list->model()->rowCount() > 0) m_list->setCurrentIndex(m_list->model()->index(0, 0));
    m_filling = false;
    m_form->refresh();
    showChosen();
    showParts();
}

void StockPanel::filter() {
    const SupplyId before = current();
    static_cast<QSortFilterProxyModel*>(m_list->model())->setFilterRegularExpression(m_group->currentData().toString());
    select(before);
    if (current().isEmpty() && m_list->model()->rowCount() > 0) m_list->setCurrentIndex(m_list->model()->index(0, 0));
    showChosen();
}

void StockPanel::select(const SupplyId& supply) {
    const int row = m_model->rowOf(supply);
    if (row >= 0) chooseRow(*m_list, row);
}

SupplyId StockPanel::current() const {
    const int row = chosenRow(*m_list);
    return row < 0 ? SupplyId{} : m_model->idAt(row);
}

void StockPanel::showChosen() {
    if (m_filling) return;
    const SupplyId supply = current();
    m_detail->show(supply, m_answer.get());
    showParts();
    if (supply == m_shown || supply.isEmpty()) return;
    m_shown = supply;
    Q_EMIT chosen(supply);
}

}  // namespace laneward
