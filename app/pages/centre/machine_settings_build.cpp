// The fields of a machine.
#include "app/edits/plain_label.h"
#include "app/pages/centre/machine_settings_form.h"
#include "app/widgets/quantity_box.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QSpinBox>

namespace laneward {

namespace {

constexpr int productWidth = 220;
constexpr int amountWidth = 120;
constexpr int secondsWidth = 90;
constexpr int wideField = 420;
constexpr int listHeight = 110;
constexpr int mostTyped = 999'999;  // more than can be: what cannot is said, not cut off
constexpr double mostPercent = 9'999;

}  // namespace

MachineSettingsForm::MachineSettingsForm(Session& session, QWidget* parent) : CentreRowForm(session, &Centre::machines, parent) {
    m_name = lineField("machineName", limits::nameLength + 1);
    addRow(tr("&Name:"), m_name, {"centre.no-name", "centre.name-too-long", "centre.name-twice"});
    m_attended = addCheck("machineAttended", tr("needs a person beside it while it is out"), {});
    buildTanks();
    buildUse();
    buildLaneTimes();
    buildTimes();
    buildBars();
    finish();
}

QuantityBox* MachineSettingsForm::amountField(const char* name, SupplyKind kind) {
    auto* field = new QuantityBox(kind, session().season().centre.facts.settings.units, this);
    field->setObjectName(QString::fromLatin1(name));
    field->setMinimum(0);
    field->setFixedWidth(amountWidth);
    connect(field, &QDoubleSpinBox::valueChanged, this, &MachineSettingsForm::touched);
    return field;
}

MachineSettingsForm::Tank MachineSettingsForm::addTank(const QString& label, const char* name, SupplyKind kind) {
    Tank tank{new QComboBox(this), amountField(name, kind)};
    tank.product->setObjectName(QString::fromLatin1(name) + "Product");
    tank.product->setEditable(true);
    tank.product->setFixedWidth(productWidth);
    tank.holds->setAccessibleName(tr("The tank holds"));
    connect(tank.product, &QComboBox::editTextChanged, this, &MachineSettingsForm::touched);
    auto* row = new QHBoxLayout;
    row->addWidget(tank.product);
    row->addWidget(plainLabel(tr("holds", "a tank"), this));
    row->addWidget(tank.holds);
    row->addStretch(1);
    addRow(label, row, tank.product, {});
    return tank;
}

void MachineSettingsForm::buildTanks() {
    m_conditioner[0] = addTank(tr("&Conditioner:"), "tankFirst", SupplyKind::Conditioner);
    m_conditioner[1] = addTank(tr("&Second conditioner (0 = no tank):"), "tankSecond", SupplyKind::Conditioner);
    m_cleaner = addTank(tr("C&leaner:"), "tankCleaner", SupplyKind::Cleaner);
    m_waste = amountField("tankWaste", SupplyKind::Cleaner);
    addRow(tr("The &waste tank holds:"), m_waste, {"machine.capacity"});
}

void MachineSettingsForm::buildUse() {
    m_percent = new QDoubleSpinBox(this);
    m_percent->setObjectName("machineUse");
    m_percent->setDecimals(1);
    m_percent->setRange(0, mostPercent);
    m_percent->setSuffix(tr(" %", "suffix"));
    m_percent->setAlignment(Qt::AlignTrailing);
    m_percent->setToolTip(tr("Until fills have taught what is really used"));
    connect(m_percent, &QDoubleSpinBox::valueChanged, this, &MachineSettingsForm::touched);
    m_cleanerPerLane = amountField("cleanerPerLane", SupplyKind::Cleaner);
    m_wastePerLane = amountField("wastePerLane", SupplyKind::Cleaner);
    m_lanesPerCharge = numberField("lanesPerCharge", mostTyped, tr(" lanes", "suffix"));
    m_spares = numberField("sparePacks", mostTyped);
    addRow(tr("Conditioner used, of what the &pattern says:"), m_percent, {});
    addRow(tr("Cleaner for a lane:"), m_cleanerPerLane, {});
    addRow(tr("Waste from a lane:"), m_wastePerLane, {});
    addRow(tr("A full pack &runs:"), m_lanesPerCharge, {});
    addRow(tr("Spare packs:"), m_spares, {});
}

void MachineSettingsForm::buildLaneTimes() {
    const QString suffix = tr(" s", "suffix");
    auto* lanes = new QHBoxLayout;
    for (size_t t = 0; t < m_lane.size(); ++t) {
        m_lane[t] = numberField(qPrintable("laneTime" + QString::number(t)), mostTyped, suffix);
        m_lane[t]->setFixedWidth(secondsWidth);
        m_lane[t]->setAccessibleName(tr("Seconds for a lane: %1").arg(text(Treatment(t))));
        lanes->addWidget(m_lane[t]);
        lanes->addWidget(plainLabel(text(Treatment(t)), this));
    }
    lanes->addStretch(1);
    addRow(tr("A lane of a 40 &ft pattern takes:"), lanes, m_lane.front(), {"machine.times"});
    m_perTenFeet = numberField("perTenFeet", mostTyped, suffix);
    m_next = numberField("nextLane", mostTyped, suffix);
    m_cross = numberField("crossLane", mostTyped, suffix);
    addRow(tr("More for each 10 ft of pattern:"), m_perTenFeet, {});
    addRow(tr("To the ne&xt lane:"), m_next, {});
    addRow(tr("More for each lane that is crossed:"), m_cross, {});
}

void MachineSettingsForm::addTime(const QString& label, const char* name, Seconds MachineTimes::*time) {
    m_times.push_back({time, minutesField(name)});
    addRow(label, m_times.back().minutes, {});
}

void MachineSettingsForm::buildTimes() {
    addTime(tr("Read&y it and bring it to the lanes:"), "leaveBay", &MachineTimes::leaveBay);
    addTime(tr("Bring it &back:"), "returnToBay", &MachineTimes::returnToBay);
    addTime(tr("Refill its tanks:"), "refill", &MachineTimes::refill);
    addTime(tr("&Empty the waste tank:"), "emptyWaste", &MachineTimes::emptyWaste);
    addTime(tr("Swap the pack:"), "swapPack", &MachineTimes::swapPack);
    addTime(tr("Char&ge, where there is no spare pack:"), "charge", &MachineTimes::charge);
    addTime(tr("A service &duty between jobs:"), "dutyTime", &MachineTimes::duty);
}

void MachineSettingsForm::buildBars() {
    m_barredLanes = lineField("barredLanes", limits::noteLength);
    addRow(tr("N&ot for these lanes:"), m_barredLanes, {"lanes.unreadable", "lanes.out-of-range"});
    auto* treatments = new QHBoxLayout;
    for (size_t t = 0; t < m_barredTreatments.size(); ++t) {
        m_barredTreatments[t] = checkField(qPrintable("barredTreatment" + QString::number(t)), text(Treatment(t)));
        treatments->addWidget(m_barredTreatments[t]);
    }
    treatments->addStretch(1);
    addRow(tr("Not &to:"), treatments, m_barredTreatments.front(), {});
    m_barredPatterns = new QListWidget(this);
    m_barredPatterns->setObjectName("barredPatterns");
    m_barredPatterns->setMinimumHeight(listHeight);
    m_barredPatterns->setMaximumHeight(listHeight);
    m_barredPatterns->setTabKeyNavigation(false);
    connect(m_barredPatterns, &QListWidget::itemChanged, this, &MachineSettingsForm::touched);
    addRow(tr("Not with these patterns:"), m_barredPatterns, {});
    QLabel* more = proseLabel(tr("Its weight and the volts of its packs stand on the page Service, Machines."), this);
    more->setFixedWidth(wideField);
    auto* row = new QHBoxLayout;
    row->addWidget(more);
    addRow({}, row, more, {});
}

}  // namespace laneward
