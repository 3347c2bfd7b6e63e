#include "app/pages/service/last_done_form.h"

#include "app/pages/service/counter_form.h"
#include "app/widgets/cell_table.h"
#include "core/documents/item_words.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QHeaderView>

namespace laneward {

namespace {

constexpr double mostTyped = 1e9;
constexpr double notRead = -1;
constexpr int tableWidth = 700;
constexpr int tableHeight = 330;

}  // namespace

LastDoneForm::LastDoneForm(Session& session, QWidget* parent) : EditForm(session, parent) {
    build();
    finish();
    for (QDoubleSpinBox* box : m_counters)
        connect(box, &QDoubleSpinBox::valueChanged, this, &LastDoneForm::touched);
    connect(m_model, &LastDoneModel::edited, this, &LastDoneForm::touched);
}

void LastDoneForm::build() {
    auto* counters = new QHBoxLayout;
    for (int n = 0; n < int(m_counters.size()); ++n) {
        const MeterKind meter{n};
        auto* box = new QDoubleSpinBox(this);
        box->setObjectName("countersNow" + QString::number(n));
        box->setAccessibleName(tr("Counter now: %1", "lanes, hours of work").arg(text(meter)));
        box->setRange(notRead, mostTyped);
        box->setDecimals(meter == MeterKind::Minutes ? 1 : 0);
        box->setSpecialValueText(tr("no counter of %1", "lanes, hours of work").arg(text(meter)));
        box->setSuffix(u' ' + text(meter));
        box->setGroupSeparatorShown(true);
        m_counters[size_t(n)] = box;
        counters->addWidget(box);
    }
    addRow(tr("&Counters show now:"), counters, m_counters[0], {"meter.value", "meter.backwards", "meter.kind"});
    m_model = new LastDoneModel(this);
    m_table = new CellTable(m_model, this);
    m_table->setObjectName("lastDoneTable");
    m_table->setAccessibleName(tr("When each duty was last done"));
    m_table->setTabKeyNavigation(true);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setStretchLastSection(false);
    m_table->setFixedHeight(tableHeight);
    m_table->setFixedWidth(tableWidth);
    auto* table = new QHBoxLayout;
    table->addWidget(m_table);
    addRow(tr("&Last done:"), table, m_table,
           {"service.date-missing", "service.date-unreadable", "service.since-missing", "service.since-unreadable",
            "service.in-future"});
}

std::vector<LastDoneModel::Asked> LastDoneForm::unrecorded(const SeasonState& season, const MachineId& machine) {
    std::vector<LastDoneModel::Asked> asked;
    const std::map<DutyId, LastDone> lasts = lastDone(season);
    for (const ServiceItem& item : season.items) {
        if (item.machine != machine || item.retired) continue;
        for (const Duty& duty : item.duties)
            if (!lasts.contains(duty.id)) asked.push_back({item, duty});
    }
    return asked;
}

void LastDoneForm::create(const MachineId& machine) {
    m_machine = machine;
    const Machine* found = findMachine(session().season().centre, machine);
    open(found ? tr("What was last done on %1, typed once", "machine").arg(shown(found->name))
               : tr("What was last done in the centre, typed once"));
    if (machine.isEmpty()) m_table->setFocus();
}

void LastDoneForm::reload() {
    const SeasonState& season = session().season();
    setRowVisible(m_counters[0], !m_machine.isEmpty());
    for (QDoubleSpinBox* box : m_counters)
        box->setValue(notRead);
    m_model->show(unrecorded(season, m_machine), season.centre, session().speech());
    for (int column = LastDoneModel::Lanes; column < LastDoneModel::ColumnCount; ++column) {
        bool counted = false;
        for (int row = 0; row < m_model->rowCount(); ++row)
            counted |= m_model->isCounted(row, column);
        m_table->setColumnHidden(column, !counted);
    }
    m_table->resizeColumnsToContents();
    m_table->setColumnWidth(LastDoneModel::Day, fontMetrics().horizontalAdvance(QStringLiteral("0000-00-00")) + 40);
}

std::vector<MeterReading> LastDoneForm::readings() const {
    std::vector<MeterReading> readings;
    for (int n = 0; n < int(m_counters.size()) && !m_machine.isEmpty(); ++n) {
        if (m_counters[size_t(n)]->value() <= notRead) continue;
        MeterReading reading;
        reading.at = session().now();
        reading.machine = m_machine;
        reading.meter = MeterKind(n);
        reading.shown = CounterForm::shownOf(m_counters[size_t(n)]->value(), reading.meter);
        readings.push_back(std::move(reading));
    }
    return readings;
}

/// As they stand once the counters that are typed count.
Meters LastDoneForm::metersThen() const {
    std::vector<MeterReading> counters = session().season().counters;
    for (MeterReading& reading : readings())
        counters.push_back(std::move(reading));
    return metersAt(counters, workOf(session().season()), m_machine, session().now());
}

std::vector<Record> LastDoneForm::draft() const {
    std::vector<Record> records;
    for (MeterReading& reading : readings())
        records.emplace_back(std::move(reading));
    for (ServiceRecord& record : m_model->records(metersThen(), session().now())) {
        record.note = tr("Typed in when the centre was set up");
        records.emplace_back(std::move(record));
    }
    return records;
}

std::vector<Finding> LastDoneForm::faults() const {
    const SeasonState& season = session().season();
    const Machine* machine = findMachine(season.centre, m_machine);
    std::vector<Finding> found;
    for (const MeterReading& reading : readings()) {
        for (Finding& fault : faultsOf(reading, season.counters, session().now())) {
            if (machine) fault.subject = machine->name;
            found.push_back(std::move(fault));
        }
    }
    for (Finding& fault : m_model->faults())
        found.push_back(std::move(fault));
    for (const ServiceRecord& record : m_model->records(metersThen(), session().now())) {
        const ServiceItem* item = findItem(season.items, record.item);
        for (Finding& fault : faultsOf(record, item, session().now())) {
            const Duty* duty = item ? findDuty(*item, record.duty) : nullptr;
            if (duty) fault.subject = duty->name;
            found.push_back(std::move(fault));
        }
    }
    return found;
}

bool LastDoneForm::store() {
    const Machine* machine = findMachine(session().season().centre, m_machine);
    return session().record(
        machine ? tr("What was last done on %1", "machine").arg(shown(machine->name)) : tr("What was last done in the centre"),
        draft());
}

}  // namespace laneward
