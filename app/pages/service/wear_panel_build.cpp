#include "app/edits/busy_bar.h"
#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/models/plain_rows.h"
#include "app/pages/service/plot_view.h"
#include "app/pages/service/wear_panel.h"
#include "app/widgets/money_box.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int rowHeight = 28;
constexpr int listWidth = 480;
constexpr int detailWidth = 630;
constexpr int moneyWidth = 120;

}  // namespace

WearPanel::WearPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    column->addWidget(m_busy = new BusyBar(tr("Reading what was replaced"), tr("Rea&d it"), this));
    connect(m_busy, &BusyBar::cancelled, this, &WearPanel::stop);
    connect(m_busy, &BusyBar::againWanted, this, &WearPanel::read);
    column->addWidget(m_state = proseLabel({}, this));
    m_state->setObjectName("wearState");
    m_split = new QSplitter(Qt::Horizontal, this);
    m_split->setChildrenCollapsible(false);
    buildList(m_split);
    buildDetail(m_split);
    m_split->setStretchFactor(0, 2);
    m_split->setStretchFactor(1, 3);
    m_split->setSizes({listWidth, detailWidth});
    column->addWidget(m_split, 1);
    column->addStretch(0);
    connect(&m_asker, &WearAsker::answered, this, &WearPanel::take);
    connect(&m_asker, &WearAsker::failed, this, &WearPanel::takeFailure);
}

void WearPanel::buildList(QSplitter* split) {
    m_rows = new PlainRows({tr("Part"), tr("Failed"), tr("Replaced after"), tr("Best after")}, {1, 2, 3}, this);
    m_list = listOf(m_rows, QStringLiteral("service/wear"), tr("wear.csv"), m_session, split);
    m_list->setObjectName("wearList");
    m_list->setAccessibleName(tr("What is replaced"));
    m_list->verticalHeader()->setDefaultSectionSize(qMax(rowHeight, fontMetrics().lineSpacing() + 10));
    m_list->sortByColumn(1, Qt::DescendingOrder);
    m_list->horizontalHeader()->setStretchLastSection(false);
    m_list->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!m_filling) showChosen();
    });
}

void WearPanel::buildDetail(QSplitter* split) {
    auto* side = new QWidget(split);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(8, 0, 0, 0);
    m_sentence = proseLabel({}, side);
    m_sentence->setObjectName("wearSentence");
    QFont font = m_sentence->font();
    font.setBold(true);
    m_sentence->setFont(font);
    column->addWidget(m_sentence);
    buildChoices(column);
    auto* plots = new QHBoxLayout;
    m_failures = new PlotView(side);
    m_failures->setObjectName("wearFailures");
    m_cost = new PlotView(side);
    m_cost->setObjectName("wearCost");
    plots->addWidget(m_failures, 1);
    plots->addWidget(m_cost, 1);
    column->addLayout(plots, 1);
    column->addWidget(m_spoken = proseLabel({}, side));
    m_spoken->setObjectName("wearSpoken");
    for (PlotView* plot : {m_failures, m_cost})
        connect(plot, &PlotView::chosen, m_spoken, &QLabel::setText);
    buildCosts(column);
}

void WearPanel::buildChoices(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    QWidget* side = column->parentWidget();
    m_meter = new QComboBox(side);
    m_meter->setObjectName("wearMeter");
    m_meter->setMinimumHeight(rowHeight);
    m_meter->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* label = plainLabel(tr("Age &in:"), side);
    label->setBuddy(m_meter);
    m_pool = new QCheckBox(tr("&together with others of its kind"), side);
    m_pool->setObjectName("wearPool");
    row->addWidget(label);
    row->addWidget(m_meter);
    row->addWidget(m_pool);
    row->addWidget(m_counted = proseLabel({}, side), 1, Qt::AlignVCenter);
    m_counted->setObjectName("wearCounted");
    column->addLayout(row);
    connect(m_meter, &QComboBox::currentIndexChanged, this, [this] {
        if (!m_filling) showAnswer();
    });
    connect(m_pool, &QCheckBox::toggled, this, &WearPanel::showAnswer);
}

void WearPanel::buildCosts(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    QWidget* side = column->parentWidget();
    const auto add = [&](const QString& name, const char* objectName) {
        auto* box = new MoneyBox(side);
        box->setObjectName(objectName);
        box->setMinimumHeight(rowHeight);
        box->setMinimumWidth(moneyWidth);
        auto* label = plainLabel(name, side);
        label->setBuddy(box);
        row->addWidget(label);
        row->addWidget(box);
        connect(box, &QDoubleSpinBox::valueChanged, this, [this] {
            if (!m_filling) showAnswer();
        });
        connect(box, &QDoubleSpinBox::editingFinished, this, &WearPanel::storeCosts);
        return box;
    };
    m_planned = add(tr("Costs &planned:"), "wearPlanned");
    m_failed = add(tr("after a &failure:"), "wearFailed");
    m_failed->setToolTip(tr("Part, work, and all that the stopped run costs"));
    row->addStretch(1);
    m_adopt = new QPushButton(tr("&Adopt"), side);
    m_adopt->setEnabled(false);
    m_adopt->setObjectName("adoptBest");
    m_adopt->setMinimumHeight(rowHeight);
    row->addWidget(m_adopt);
    column->addLayout(row);
    connect(m_adopt, &QPushButton::clicked, this, &WearPanel::adopt);
}

}  // namespace laneward
