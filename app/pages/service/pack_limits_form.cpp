#include "app/pages/service/pack_limits_form.h"

#include "core/documents/pack_words.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>

#include <cmath>

namespace laneward {

namespace {

constexpr double mostTyped = 999;
constexpr double milli = 1'000;

}  // namespace

PackLimitsForm::PackLimitsForm(Session& session, QWidget* parent) : EditForm(session, parent) {
    build();
    finish();
    connect(m_chemistry, &QComboBox::currentIndexChanged, this, &PackLimitsForm::touched);
    connect(m_nominal, &QDoubleSpinBox::valueChanged, this, &PackLimitsForm::touched);
    for (const Limit& limit : m_limits) {
        connect(limit.volts, &QDoubleSpinBox::valueChanged, this, &PackLimitsForm::touched);
        connect(limit.state, &QComboBox::currentIndexChanged, this, &PackLimitsForm::touched);
    }
}

QDoubleSpinBox* PackLimitsForm::voltsBox(const char* name) {
    auto* box = new QDoubleSpinBox(this);
    box->setObjectName(QString::fromLatin1(name));
    box->setRange(0, mostTyped);
    box->setDecimals(2);
    box->setSingleStep(0.1);
    box->setSuffix(tr(" V", "suffix"));
    box->setAlignment(Qt::AlignTrailing);
    return box;
}

PackLimitsForm::Limit PackLimitsForm::addLimit(const QString& label, const char* name, const QStringList& rules) {
    Limit limit{voltsBox(name), new QComboBox(this)};
    limit.state->setObjectName(QString::fromLatin1(name) + "State");
    limit.state->setAccessibleName(tr("In which state: %1").arg(QString(label).remove(u'&')));
    for (const VoltageState state : {VoltageState::Rested, VoltageState::JustCharged, VoltageState::UnderLoad})
        limit.state->addItem(text(state), int(state));
    auto* row = new QHBoxLayout;
    row->addWidget(limit.volts);
    row->addWidget(limit.state);
    addRow(label, row, limit.volts, rules);
    return limit;
}

void PackLimitsForm::build() {
    m_chemistry = new QComboBox(this);
    m_chemistry->setObjectName("packChemistry");
    for (const Chemistry one :
         {Chemistry::FloodedLeadAcid, Chemistry::Agm, Chemistry::Gel, Chemistry::LithiumIronPhosphate, Chemistry::Other})
        m_chemistry->addItem(text(one), int(one));
    m_nominal = voltsBox("packNominal");
    addRow(tr("&Chemistry:"), m_chemistry, {"pack.no-table", "pack.assumed-table"});
    addRow(tr("&Nominal:"), m_nominal, {"pack.nominal"});
    m_limits[0] = addLimit(tr("F&ull from:"), "packFull", {"pack.full-unreachable", "pack.full-low", "pack.order-full"});
    m_limits[1] = addLimit(tr("F&it to run from:"), "packFit", {"pack.fit-unreachable", "pack.fit-empty"});
    m_limits[2] = addLimit(tr("&Spare pack below:"), "packSpare", {"pack.order-spare", "pack.spare-empty"});
}

VoltLimit PackLimitsForm::limitOf(const Limit& limit) const {
    return {Millivolts{std::llround(limit.volts->value() * milli)}, VoltageState(limit.state->currentData().toInt())};
}

void PackLimitsForm::show(const Limit& limit, const VoltLimit& value) {
    limit.volts->setValue(double(value.at.value) / milli);
    limit.state->setCurrentIndex(limit.state->findData(int(value.state)));
}

void PackLimitsForm::edit(const ItemId& pack) {
    m_pack = pack;
    open(tr("%1: what it is, and the volts that count", "pack").arg(packName(pack, session().season())));
    m_chemistry->setFocus();
}

void PackLimitsForm::reload() {
    const ServiceItem* item = stored();
    if (!item) return;
    m_loaded = *item;
    const PackLimits limits = item->pack.value_or(PackLimits{});
    m_chemistry->setCurrentIndex(m_chemistry->findData(int(limits.kind.chemistry)));
    m_nominal->setValue(double(limits.kind.nominal.value) / milli);
    show(m_limits[0], limits.full);
    show(m_limits[1], limits.fit);
    show(m_limits[2], limits.spareBelow);
}

bool PackLimitsForm::isOther() const {
    const ServiceItem* item = stored();
    return !item || item->version != m_loaded.version;
}

ServiceItem PackLimitsForm::draft() const {
    ServiceItem item = m_loaded;
    const PackKind kind{Chemistry(m_chemistry->currentData().toInt()), Millivolts{std::llround(m_nominal->value() * milli)}};
    item.pack = PackLimits{kind, limitOf(m_limits[0]), limitOf(m_limits[1]), limitOf(m_limits[2])};
    return item;
}

std::vector<Finding> PackLimitsForm::faults() const {
    return faultsOf(draft(), session().season().centre.facts.settings.currency);
}

std::vector<Finding> PackLimitsForm::doubts() const {
    std::vector<Finding> found = findingsOf(*draft().pack, m_loaded.name);
    std::erase_if(found, [](const Finding& finding) { return finding.severity == Severity::Fault; });
    return found;
}

bool PackLimitsForm::store() {
    const QString name = tr("Volts of %1", "pack").arg(packName(m_pack, session().season()));
    return session().apply(name, {RowChange<ServiceItem>{m_loaded, draft()}});
}

}  // namespace laneward
