#include "app/pages/service/counter_form.h"

#include "app/edits/plain_label.h"
#include "core/documents/item_words.h"
#include "core/season/service_state.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QDoubleSpinBox>
#include <QHBoxLayout>

#include <cmath>

namespace laneward {

namespace {

constexpr double minutesPerHour = 60;
constexpr double mostTyped = 1e9;

}  // namespace

double CounterForm::typedOf(std::int64_t shown, MeterKind meter) {
    return meter == MeterKind::Minutes ? double(shown) / minutesPerHour : double(shown);
}

std::int64_t CounterForm::shownOf(double typed, MeterKind meter) {
    return std::llround(meter == MeterKind::Minutes ? typed * minutesPerHour : typed);
}

CounterForm::CounterForm(Session& session, QWidget* parent) : RecordForm(session, "counter", parent) {
    build();
    finish();
    connect(m_meter, &QComboBox::currentIndexChanged, this, &CounterForm::meterChosen);
    connect(m_shown, &QDoubleSpinBox::valueChanged, this, &CounterForm::touched);
    connect(atField(), &QDateTimeEdit::dateTimeChanged, this, &CounterForm::tellExpected);
}

void CounterForm::build() {
    m_meter = new QComboBox(this);
    m_meter->setObjectName("counterMeter");
    for (const MeterKind kind : {MeterKind::Lanes, MeterKind::Runs, MeterKind::Minutes})
        m_meter->addItem(text(kind), int(kind));
    m_shown = new QDoubleSpinBox(this);
    m_shown->setObjectName("counterShown");
    m_shown->setRange(-mostTyped, mostTyped);
    m_shown->setGroupSeparatorShown(true);
    m_shown->setAlignment(Qt::AlignTrailing);
    m_expected = proseLabel({}, this);
    m_expected->setObjectName("counterExpected");
    addRow(tr("&Counter of:"), m_meter, {"meter.kind"});
    addRow(tr("It &shows:"), m_shown, {"meter.value", "meter.backwards"});
    auto* hint = new QHBoxLayout;
    m_expected->setMinimumWidth(420);
    hint->addWidget(m_expected);
    addRow({}, hint, m_expected, {});
    m_replaced = addCheck(tr("It is a &new counter, which began with this"), "counterReplaced");
    addEnd(tr("Read &at:"), {"meter.in-future"});
}

QString CounterForm::machineName() const {
    const Machine* machine = findMachine(session().season().centre, m_machine);
    return machine ? machine->name : m_machine.value;
}

MeterKind CounterForm::meter() const { return MeterKind(m_meter->currentData().toInt()); }

void CounterForm::create(const MachineId& machine) {
    m_machine = machine;
    open(tr("A counter of %1", "machine").arg(shown(machineName())));
    m_shown->setFocus();
    m_shown->selectAll();
}

void CounterForm::reload() {
    m_meter->setCurrentIndex(0);
    RecordForm::reload();
    m_replaced->setChecked(false);
    meterChosen();
}

/// Begins with the last reading: what is typed replaces it.
void CounterForm::meterChosen() {
    const MeterReading* last = nullptr;
    for (const MeterReading& reading : session().season().counters) {
        const bool own = reading.machine == m_machine && reading.meter == meter();
        if (own && (!last || last->at < reading.at)) last = &reading;
    }
    m_shown->setDecimals(meter() == MeterKind::Minutes ? 1 : 0);
    m_shown->setSuffix(meter() == MeterKind::Minutes ? tr(" h", "suffix") : QString());
    m_shown->setValue(last ? typedOf(last->shown, meter()) : 0);
    tellExpected();
    touched();
}

void CounterForm::tellExpected() {
    const MeterReading made = draft();
    const Meters then = metersNow(session().season(), m_machine, made.at);
    m_expected->setText(tr("By its last reading and the runs since, the meter stands at %1.")
                            .arg(meterText(double(valueOf(then, meter())), meter(), session().speech())));
}

MeterReading CounterForm::draft() const {
    MeterReading reading;
    reading.machine = m_machine;
    reading.meter = meter();
    reading.shown = shownOf(m_shown->value(), meter());
    reading.at = at();
    reading.replaced = m_replaced->isChecked();
    reading.note = note();
    return reading;
}

std::vector<Finding> CounterForm::faults() const {
    std::vector<Finding> found = faultsOf(draft(), session().season().counters, session().now());
    for (Finding& fault : found)
        fault.subject = machineName();
    return found;
}

bool CounterForm::store() { return session().record(tr("Counter of %1", "machine").arg(shown(machineName())), {draft()}); }

}  // namespace laneward
