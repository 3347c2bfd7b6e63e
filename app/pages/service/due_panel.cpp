#include "app/pages/service/due_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/list_tools.h"
#include "app/models/panel_list.h"
#include "app/pages/service/due_delegate.h"
#include "app/pages/service/due_model.h"
#include "app/pages/service/service_form.h"
#include "core/documents/history_index.h"

#include <QCheckBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr int least = 28;        // height of what is clicked
constexpr int rangeWidth = 260;  // of the dates, at least
constexpr int findWidth = 260;

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
    column->addWidget(m_none = proseLabel(tr("No duty and no part fits. Take words or the choice away."), this));
    m_none->setObjectName("noDuty");
    buildList(column);
    column->addWidget(m_findings = proseLabel({}, this));
    m_form = new ServiceForm(session, this);
    column->addWidget(m_form);
    connect(m_form, &ServiceForm::left, this, [this] {
        showParts();
        m_list->setFocus();
    });
    column->addStretch(0);
}

void DuePanel::buildTools(QVBoxLayout* column) {
    m_tools = new QWidget(this);
    auto* row = new QHBoxLayout(m_tools);
    row->setContentsMargins(0, 0, 0, 0);
    m_find = new QLineEdit(m_tools);
    m_find->setObjectName("findDuty");
    m_find->setPlaceholderText(tr("Find a duty or part"));
    m_find->setAccessibleName(tr("Find a duty or part"));
    m_find->setClearButtonEnabled(true);
    m_find->setMinimumHeight(least);
    m_find->setMaximumWidth(findWidth);
    m_find->installEventFilter(this);
    row->addWidget(m_find, 1);
    m_onlySoon = new QCheckBox(tr("Only what is &due within four weeks"), m_tools);
    m_onlySoon->setObjectName("onlySoon");
    m_onlySoon->setMinimumHeight(least);
    row->addWidget(m_onlySoon);
    row->addWidget(proseLabel(tr("▬ from 5 % to 95 %, tick at 50 %   ▼ when it fits"), m_tools), 1, Qt::AlignVCenter);
    m_record = new QPushButton(tr("Record &service…"), m_tools);
    m_record->setObjectName("recordService");
    m_record->setMinimumHeight(least);
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
    static_cast<QSortFilterProxyModel*>(m_list->model())->setFilterRole(DueModel::FilterRole);
    m_list->installEventFilter(this);
    connect(m_onlySoon, &QCheckBox::toggled, this, &DuePanel::narrow);
    connect(m_find, &QLineEdit::textChanged, this, &DuePanel::narrow);
    connect(m_list, &QTableView::activated, this, &DuePanel::recordChosen);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &DuePanel::showParts);
    m_list->setMinimumWidth(rangeWidth * 2);
    column->addWidget(m_list, 1);
}

/// What is typed in the list is looked for; arrow down and Enter go back to it.
bool DuePanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    const QString typed = key->text();
    if (watched == m_list && !typed.isEmpty() && typed[0].isLetterOrNumber() && !(key->modifiers() & ~Qt::ShiftModifier)) {
        m_find->setFocus();
        m_find->setText(typed);
        return true;
    }
    if (watched == m_find && (key->key() == Qt::Key_Down || key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter)) {
        m_list->setFocus();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

/// Every word must occur, in any order.
void DuePanel::narrow() {
    QString pattern = m_onlySoon->isChecked() ? QStringLiteral("^soon ") : QStringLiteral("^");
    for (const QString& word : folded(m_find->text()).simplified().split(u' ', Qt::SkipEmptyParts))
        pattern += QStringLiteral("(?=.*%1)").arg(QRegularExpression::escape(word));
    static_cast<QSortFilterProxyModel*>(m_list->model())
        ->setFilterRegularExpression(QRegularExpression(pattern, QRegularExpression::DotMatchesEverythingOption));
    if (!chosen()) m_list->setCurrentIndex(m_list->model()->index(0, 0));
    m_list->scrollTo(m_list->currentIndex());
    showParts();
}

void DuePanel::refresh() { m_form->refresh(); }

void DuePanel::show(const std::shared_ptr<const SupplyAnswer>& answer) {
    const DutyDue* before = chosen();
    const std::optional<DutyId> kept = before ? std::optional(before->duty) : std::nullopt;
    m_model->show(m_session.season(), answer ? &answer->service : nullptr, m_session.speech());
    fitColumns(*m_list);
    m_list->horizontalHeader()->setFixedHeight(m_list->horizontalHeader()->sizeHint().height());  // with its dates
    const int row = kept ? m_model->rowOf(*kept) : -1;
    if (row >= 0)
        chooseRow(*m_list, row);
    else
        m_list->setCurrentIndex(m_list->model()->index(0, 0));  // what is due first
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
    m_find->clear();
    chooseRow(*m_list, row);
    recordChosen();
}

/// The form stands below what it is about.
void DuePanel::showParts() {
    const bool any = !m_session.season().items.empty();
    m_list->setVisible(any);
    m_tools->setVisible(any);
    m_empty->setVisible(!any);
    m_none->setVisible(any && m_model->rowCount() > 0 && m_list->model()->rowCount() == 0);
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
