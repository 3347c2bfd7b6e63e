#include "app/pages/service/machines_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/pages/service/counter_form.h"
#include "app/pages/service/item_form.h"
#include "app/pages/service/last_done_form.h"
#include "app/pages/service/machine_form.h"
#include "core/documents/service_templates.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int wordsAir = 18;
constexpr int rowHeight = 28;

}  // namespace

MachinesPanel::MachinesPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    m_sheet = new QWidget(this);
    auto* inner = new QVBoxLayout(m_sheet);
    inner->setContentsMargins(0, 0, 0, 0);
    buildTop(inner);
    m_empty = proseLabel(tr("Nothing is looked after here yet. Begin with the usual items, or enter your own: every interval is "
                            "yours to change, and the machine's own instructions decide."),
                         m_sheet);
    inner->addWidget(m_empty);
    buildList(inner);
    buildDeeds(inner);
    inner->addStretch(0);
    column->addWidget(m_sheet, 1);
    buildForms(column);
    connect(&session, &Session::planned, this, [this] {
        if (isVisible()) fill();
    });
}

QPushButton* MachinesPanel::addButton(QHBoxLayout* row, const QString& text, const char* name, void (MachinesPanel::*deed)()) {
    auto* button = new QPushButton(text, m_sheet);
    button->setObjectName(name);
    button->setMinimumHeight(rowHeight);
    row->addWidget(button);
    connect(button, &QPushButton::clicked, this, deed);
    return button;
}

void MachinesPanel::buildTop(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    m_machine = new QComboBox(m_sheet);
    m_machine->setObjectName("sheetMachine");
    m_machine->setMinimumHeight(rowHeight);
    auto* label = plainLabel(tr("&Machine:"), m_sheet);
    label->setBuddy(m_machine);
    row->addWidget(label);
    row->addWidget(m_machine);
    m_retired = new QCheckBox(tr("Show retired ones"), m_sheet);
    m_retired->setObjectName("showRetiredItems");
    row->addWidget(m_retired);
    row->addStretch(1);
    m_lastDone = addButton(row, tr("&When last done…"), "typeLastDone", &MachinesPanel::typeLastDone);
    m_counter = addButton(row, tr("&Read a counter…"), "readCounter", &MachinesPanel::readCounter);
    m_weight = addButton(row, tr("Weight, &volts…"), "changeMachine", &MachinesPanel::changeMachine);
    column->addLayout(row);
    column->addWidget(m_meters = proseLabel({}, m_sheet));
    m_meters->setObjectName("sheetMeters");
    connect(m_machine, &QComboBox::currentIndexChanged, this, [this] {
        if (!m_filling) fill();
    });
    connect(m_retired, &QCheckBox::toggled, this, &MachinesPanel::fill);
}

void MachinesPanel::buildList(QVBoxLayout* column) {
    m_rows = new PlainRows(machineTitles(), {}, this);
    m_list = listOf(m_rows, QStringLiteral("service/machine"), tr("machine.csv"), m_session, m_sheet);
    m_list->setObjectName("machineList");
    m_list->setAccessibleName(tr("What is looked after"));
    m_list->verticalHeader()->setDefaultSectionSize(qMax(rowHeight, fontMetrics().lineSpacing() + 10));
    m_list->sortByColumn(machine_columns::Item, Qt::AscendingOrder);
    m_list->horizontalHeader()->setStretchLastSection(false);
    m_list->horizontalHeader()->setSectionResizeMode(machine_columns::Parts, QHeaderView::Stretch);
    column->addWidget(m_list, 1);
    connect(m_list, &QTableView::activated, this, &MachinesPanel::changeItem);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!m_filling) showParts();
    });
}

void MachinesPanel::buildDeeds(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    m_usual = addButton(row, tr("Begin with the &usual items"), "usualItems", &MachinesPanel::addUsual);
    m_new = addButton(row, tr("&New item…"), "newItem", &MachinesPanel::newItem);
    m_change = addButton(row, tr("&Change…"), "changeItem", &MachinesPanel::changeItem);
    m_retire = addButton(row, tr("Retire"), "retireItem", &MachinesPanel::retireItem);
    row->addStretch(1);
    m_record = addButton(row, tr("Record &service…"), "recordFromSheet", &MachinesPanel::recordService);
    column->addLayout(row);
}

void MachinesPanel::buildForms(QVBoxLayout* column) {
    m_itemForm = new ItemForm(m_session, this);
    m_counterForm = new CounterForm(m_session, this);
    m_lastDoneForm = new LastDoneForm(m_session, this);
    m_machineForm = new MachineForm(m_session, this);
    for (EditForm* form : std::initializer_list<EditForm*>{m_itemForm, m_counterForm, m_lastDoneForm, m_machineForm}) {
        column->addWidget(form, 1);
        connect(form, &EditForm::left, this, [this] {
            showParts();
            m_list->setFocus();
        });
    }
}

MachineId MachinesPanel::machine() const { return {m_machine->currentData().toString()}; }

MachineSheet MachinesPanel::sheet() const {
    return {m_session.season(), machine(), m_session.now(), m_answer ? &m_answer->service : nullptr, m_retired->isChecked()};
}

QString MachinesPanel::chosenRowId() const {
    const int row = chosenRow(*m_list);
    return row < 0 ? QString() : m_rows->idAt(row);
}

const ServiceItem* MachinesPanel::chosen() const { return itemOfRow(m_session.season().items, chosenRowId()); }

void MachinesPanel::show(const std::shared_ptr<const SupplyAnswer>& answer) {
    m_answer = answer;
    fill();
}

void MachinesPanel::refresh() {
    fillMachines();
    fill();
    m_itemForm->refresh();
    m_counterForm->refresh();
    m_lastDoneForm->refresh();
    m_machineForm->refresh();
}

void MachinesPanel::fillMachines() {
    const QString before = m_machine->currentData().toString();
    const bool first = m_machine->count() == 0;
    m_filling = true;
    m_machine->clear();
    for (const Machine& one : m_session.season().centre.machines)
        m_machine->addItem(shown(one.name), one.id.value);
    m_machine->addItem(tr("The centre: approaches, gutters"), QString());
    m_machine->setCurrentIndex(first ? 0 : qMax(0, m_machine->findData(before)));
    m_filling = false;
}

void MachinesPanel::fill() {
    if (m_machine->count() == 0) fillMachines();
    const QString before = chosenRowId();
    m_filling = true;
    m_rows->show(machineRows(sheet(), m_session.speech()));
    fitColumns(*m_list, wordsAir);
    const int row = m_rows->rowOf(before);
    if (row >= 0) chooseRow(*m_list, row);
    if (!m_list->currentIndex().isValid() && m_rows->rowCount() > 0) m_list->setCurrentIndex(m_list->model()->index(0, 0));
    m_filling = false;
    const QString meters = metersLine(sheet(), m_session.speech());
    QStringList lines;
    if (!meters.isEmpty()) lines << tr("Meters: %1").arg(meters);
    const QString waste = wasteLine(sheet(), m_session.planAtOnce(m_session.today()), m_session.speech());
    if (!waste.isEmpty()) lines << waste;
    m_meters->setText(lines.join(u'\n'));
    showParts();
}

/// A form stands in place of the sheet.
void MachinesPanel::showParts() {
    const bool open = m_itemForm->isOpen() || m_counterForm->isOpen() || m_lastDoneForm->isOpen() || m_machineForm->isOpen();
    m_sheet->setVisible(!open);
    const bool any = m_rows->rowCount() > 0;
    const bool writable = !m_session.isReadOnly();
    const ServiceItem* item = chosen();
    m_list->setVisible(any);
    m_empty->setVisible(!any);
    m_meters->setVisible(!m_meters->text().isEmpty());
    m_usual->setVisible(!any);
    m_usual->setEnabled(writable);
    m_new->setEnabled(writable);
    m_change->setEnabled(writable && item);
    m_retire->setEnabled(writable && item);
    m_retire->setText(item && item->retired ? tr("Take up again") : tr("Retire"));
    m_record->setEnabled(writable && item && !item->retired && findDuty(*item, {chosenRowId()}));
    m_counter->setEnabled(writable && !machine().isEmpty());
    m_weight->setEnabled(writable && !machine().isEmpty());
    const bool unknown = !LastDoneForm::unrecorded(m_session.season(), machine()).empty();
    m_lastDone->setEnabled(writable && unknown);
    m_lastDone->setToolTip(unknown ? tr("Type once what was done before this program came")
                                   : tr("Every duty here has been recorded already"));
}

void MachinesPanel::newItem() {
    m_itemForm->create(machine());
    showParts();
}

void MachinesPanel::changeItem() {
    const ServiceItem* item = chosen();
    if (!item || m_session.isReadOnly()) return;
    const DutyId duty{chosenRowId()};
    m_itemForm->edit(ServiceItem(*item), duty);
    showParts();
}

void MachinesPanel::retireItem() {
    if (const ServiceItem* item = chosen()) retire(m_session, ServiceItem(*item));
}

void MachinesPanel::addUsual() {
    std::vector<Change> changes;
    for (ServiceItem& item : ItemForm::templates(m_session, machine()))
        changes.push_back(RowChange<ServiceItem>{{}, std::move(item)});
    m_session.apply(tr("Begin with the usual items"), std::move(changes));
}

void MachinesPanel::recordService() { Q_EMIT recordWanted({chosenRowId()}); }

void MachinesPanel::readCounter() {
    m_counterForm->create(machine());
    showParts();
}

void MachinesPanel::changeMachine() {
    m_machineForm->edit(machine());
    showParts();
}

void MachinesPanel::typeLastDone() {
    m_lastDoneForm->create(machine());
    showParts();
}

}  // namespace laneward
