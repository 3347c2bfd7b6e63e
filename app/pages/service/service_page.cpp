#include "app/pages/service/service_page.h"

#include "app/edits/plain_label.h"
#include "app/models/list_tools.h"
#include "app/models/panel_list.h"
#include "app/pages/service/due_delegate.h"
#include "app/pages/service/due_model.h"
#include "app/pages/service/service_form.h"
#include "core/documents/service_words.h"

#include <QCheckBox>
#include <QHideEvent>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr int rangeWidth = 260;  // of the dates, at least

}  // namespace

ServicePage::ServicePage(Session& session, QWidget* parent) : Page(session, parent) {
    m_headline = tr("Working out what falls due…");
    connect(&m_asker, &SupplyAsker::answered, this, &ServicePage::take);
    connect(&m_asker, &SupplyAsker::failed, this, &ServicePage::takeFailure);
}

void ServicePage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    buildTools(column);
    m_empty =
        proseLabel(tr("No service items are kept yet: brushes, blades, filters, tanks, packs and what else is looked after. "
                      "A centre file or the demo centre brings them."),
                   this);
    column->addWidget(m_empty);
    buildList(column);
    column->addWidget(m_findings = proseLabel({}, this));
    m_form = new ServiceForm(session(), this);
    column->addWidget(m_form);
    connect(m_form, &ServiceForm::left, this, [this] {
        showParts();
        m_list->setFocus();
    });
    column->addStretch(0);
    setFocusProxy(m_list);
}

void ServicePage::buildTools(QVBoxLayout* column) {
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
    connect(m_record, &QPushButton::clicked, this, &ServicePage::recordChosen);
}

void ServicePage::buildList(QVBoxLayout* column) {
    m_model = new DueModel(this);
    m_list = listOf(m_model, QStringLiteral("service/due"), tr("service.csv"), session(), this);
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
    connect(m_list, &QTableView::activated, this, &ServicePage::recordChosen);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &ServicePage::showParts);
    m_list->setMinimumWidth(rangeWidth * 2);
    column->addWidget(m_list, 1);
}

void ServicePage::refresh() {
    wake();
    m_form->refresh();
    if (session().season().items.empty()) {
        m_asker.leave();
        m_answer = nullptr;
        m_headline = tr("Nothing is looked after here yet.");
    } else {
        m_asker.ask(session(), SupplyAsker::Wanted::Service);
    }
    showAll();
    Q_EMIT headlineChanged();
}

/// A hidden page works nothing out; it asks again when it is shown.
void ServicePage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    if (event->spontaneous() || !m_asker.isBusy()) return;
    m_asker.leave();
    refreshSoon();
}

void ServicePage::take(const std::shared_ptr<const SupplyAnswer>& answer) {
    m_answer = answer;
    m_headline = serviceHeadline(answer->service, session().season(), session().speech());
    showAll();
    Q_EMIT headlineChanged();
}

void ServicePage::takeFailure(const Error& why) {
    m_headline = tr("What falls due could not be worked out: %1").arg(text(why, session().speech()));
    Q_EMIT headlineChanged();
}

void ServicePage::showAll() {
    const DutyDue* before = chosen();
    const std::optional<DutyId> kept = before ? std::optional(before->duty) : std::nullopt;
    m_model->show(session().season(), m_answer ? &m_answer->service : nullptr, session().speech());
    fitColumns(*m_list);
    m_list->horizontalHeader()->setFixedHeight(m_list->horizontalHeader()->sizeHint().height());  // with its dates
    const int row = kept ? m_model->rowOf(*kept) : -1;
    chooseRow(*m_list, std::max(0, row));
    QStringList lines;
    if (m_answer) {
        for (const Finding& finding : m_answer->service.findings)
            lines << QStringLiteral("! ") + text(finding, session().speech());
    }
    m_findings->setText(lines.join(u'\n'));
    showParts();
}

/// The form stands below what it is about.
void ServicePage::showParts() {
    const bool any = !session().season().items.empty();
    m_list->setVisible(any);
    m_tools->setVisible(any);
    m_empty->setVisible(!any);
    m_findings->setVisible(any && !m_findings->text().isEmpty() && !m_form->isOpen());
    m_record->setEnabled(chosen() && !session().isReadOnly() && !m_form->isOpen());
}

const DutyDue* ServicePage::chosen() const { return m_model->at(chosenRow(*m_list)); }

void ServicePage::recordChosen() {
    const DutyDue* due = chosen();
    if (!due || session().isReadOnly()) return;
    m_form->open(DutyDue(*due));
    showParts();
}

}  // namespace laneward
