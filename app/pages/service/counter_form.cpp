#include "app/pages/service/counter_form.h"

#include "app/edits/plain_label.h"
#include "app/widgets/decimal_text.h"
#include "core/base/limits.h"
#include "core/documents/item_words.h"
#include "core/season/service_state.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLineEdit>

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

CounterForm::CounterForm(Session& session, QWidget* parent) : EditForm(session, parent) {
    build();
    finish();
    connect(m_meter, &QComboBox::currentIndexChanged, this, &CounterForm::meterChosen);
    connect(m_shown, &QDoubleSpinBox::valueChanged, this, &CounterForm::touched);
    connect(m_replaced, &QCheckBox::toggled, this, &CounterForm::touched);
    connect(m_note, &QLineEdit::textChanged, this, &CounterForm::touched);
    connect(m_at, &QDateTimeEdit::dateTimeChanged, this, [this] {
        tellExpected();
        touched();
    });
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
    m_at = momentField(this);
    m_at->setObjectName("counterAt");
    m_replaced = new QCheckBox(tr("It is a &new counter, which began with this"), this);
    m_replaced->setObjectName("counterReplaced");
    m_note = new QLineEdit(this);
    m_note->setObjectName("counterNote");
    m_note->setMaxLength(limits::noteLength);
    m_expected = proseLabel({}, this);
    m_expected->setObjectName("counterExpected");
    addRow(tr("&Counter of:"), m_meter, {"meter.kind"});
    addRow(tr("It &shows:"), m_shown, {"meter.value", "meter.backwards"});
    auto* hint = new QHBoxLayout;
    m_expected->setMinimumWidth(420);
    hint->addWidget(m_expected);
    addRow({}, hint, m_expected, {});
    auto* replaced = new QHBoxLayout;
    replaced->addWidget(m_replaced);
    addRow({}, replaced, m_replaced, {});
    addRow(tr("Read &at:"), m_at, {"meter.in-future"});
    addRow(tr("N&ote:"), m_note, {});
}

MeterKind CounterForm::meter() const { return MeterKind(m_meter->currentData().toInt()); }

void CounterForm::create(const MachineId& machine) {
    m_machine = machine;
    const Machine* found = findMachine(session().season().centre, machine);
    open(tr("A counter of %1", "machine").arg(shown(found ? found->name : machine.value)));
    m_shown->setFocus();
    m_shown->selectAll();
}

void CounterForm::reload() {
    m_meter->setCurrentIndex(0);
    setMoment(*m_at, session().now(), session().zone());
    m_replaced->setChecked(false);
    m_note->clear();
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
    reading.at = momentOf(*m_at, session().zone());
    reading.replaced = m_replaced->isChecked();
    reading.note = m_note->text().trimmed();
    return reading;
}

std::vector<Finding> CounterForm::faults() const {
    std::vector<Finding> found = faultsOf(draft(), session().season().counters, session().now());
    const Machine* machine = findMachine(session().season().centre, m_machine);
    for (Finding& fault : found)
        if (machine) fault.subject = machine->name;
    return found;
}

bool CounterForm::store() {
    const Machine* machine = findMachine(session().season().centre, m_machine);
    return session().record(tr("Counter of %1", "machine").arg(shown(machine ? machine->name : m_machine.value)), {draft()});
}

}  // namespace laneward
