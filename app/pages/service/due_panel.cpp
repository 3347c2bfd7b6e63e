#include "app/pages/service/due_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/list_tools.h"
#include "app/models/panel_list.h"
#include "app/pages/service/due_delegate.h"
#include "app/pages/service/due_model.h"
#include "app/pages/service/service_form.h"
#include "core/documents/wording.h"

#include <QCheckBox>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr int rangeWidth = 260;  // of the dates, at least

}  // namespace

DuePanel::DuePanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    buildTools(column);
    m_empty =
        proseLabel(tr("No service items are kept yet: brushes, blades, filters, tanks, packs and what else is looked after. "
                      "The tab Machines begins with the usual ones."),
                   this);
    column->addWidget(m_empty);
    buildList(column);
    column->addWidget(m_findings = proseLabel({}, this));
    m_form = new ServiceForm(session, this);
    column->addWidget(m_form);
    connect(m_form, &ServiceForm::left, this, [this] {
        showParts();
        m_list->setFocus();
    });
    column->addStretch(0);
    setFocusProxy(m_list);
}

void DuePanel::buildTools(QVBoxLayout* column) {
    m_tools = new QWidget(this);
    auto* row = new QHBoxLayout(m_tools);
    row->setContentsMargins(0, 0, 0, 0);
    m_onlySoon = new QCheckBox(tr("Only what is &due within four weeks"), m_tools);
    m_onlySoon->setObjectName("onlySoon");
    row->addWidget(m_onlySoon);
    row->addWidget(proseLabel(tr("▬ from 5 % to 95 %, tick at 50 %   ▼ when it fits"), m_tools), 1, Qt::AlignVCenter);
    m_record = new QPushButton(tr("Record &service…"), m_tools);
    m_record->setObjectName("recordService");
    row->addWidget(m_record);
    column->addWidget(m_tools);
    connect(m_record, &QPushButton::clicked, this, &DuePanel::recordChosen);
}

void DuePanel::buildList(QVBoxLayout* column) {
    m_model = new DueModel(this);
    m_list = listOf(m_model, QStringLiteral("service/due"), tr("service.csv"), m_session, this);
    m_list->setObjectName("dueList");
    m_list->setAccessibleName(tr("What falls due"));
    auto* header = new AxisHeader(
        DueModel::Due, [this] { return m_model->axis(); }, m_list);
    header->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(header, &QHeaderView::customContextMenuRequested, m_list, &QTableView::customContextMenuRequested);
    m_list->setHorizontalHeader(header);
    m_list->setSortingEnabled(true);
    m_list->setItemDelegate(new DueDelegate(*m_model, m_list));
    m_list->verticalHeader()->setDefaultSectionSize(std::max(30, fontMetrics().lineSpacing() + 14));
    m_list->sortByColumn(DueModel::Due, Qt::AscendingOrder);
    header->setStretchLastSection(false);
    header->setSectionResizeMode(DueModel::Due, QHeaderView::Stretch);
    header->setMinimumSectionSize(40);
    auto* proxy = static_cast<QSortFilterProxyModel*>(m_list->model());
    proxy->setFilterRole(DueModel::SoonRole);
    connect(m_onlySoon, &QCheckBox::toggled, this,
            [proxy](bool only) { proxy->setFilterFixedString(only ? QStringLiteral("soon") : QString()); });
    connect(m_list, &QTableView::activated, this, &DuePanel::recordChosen);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &DuePanel::showParts);
    m_list->setMinimumWidth(rangeWidth * 2);
    column->addWidget(m_list, 1);
}

void DuePanel::refresh() { m_form->refresh(); }

void DuePanel::show(const std::shared_ptr<const SupplyAnswer>& answer) {
    const DutyDue* before = chosen();
    const std::optional<DutyId> kept = before ? std::optional(before->duty) : std::nullopt;
    m_model->show(m_session.season(), answer ? &answer->service : nullptr, m_session.speech());
    fitColumns(*m_list);
    m_list->horizontalHeader()->setFixedHeight(m_list->horizontalHeader()->sizeHint().height());  // with its dates
    const int row = kept ? m_model->rowOf(*kept) : -1;
    chooseRow(*m_list, std::max(0, row));
    QStringList lines;
    if (answer) {
        for (const Finding& finding : answer->service.findings)
            lines << QStringLiteral("! ") + text(finding, m_session.speech());
    }
    m_findings->setText(lines.join(u'\n'));
    showParts();
}

void DuePanel::recordDuty(const DutyId& duty) {
    const int row = m_model->rowOf(duty);
    if (row < 0) return;
    m_onlySoon->setChecked(false);  // it may not be due for long
    chooseRow(*m_list, row);
    recordChosen();
}

/// The form stands below what it is about.
void DuePanel::showParts() {
    const bool any = !m_session.season().items.empty();
    m_list->setVisible(any);
    m_tools->setVisible(any);
    m_empty->setVisible(!any);
    m_findings->setVisible(any && !m_findings->text().isEmpty() && !m_form->isOpen());
    m_record->setEnabled(chosen() && !m_session.isReadOnly() && !m_form->isOpen());
}

const DutyDue* DuePanel::chosen() const { return m_model->at(chosenRow(*m_list)); }

void DuePanel::recordChosen() {
    const DutyDue* due = chosen();
    if (!due || m_session.isReadOnly()) return;
    m_form->open(DutyDue(*due));
    showParts();
}

}  // namespace laneward
