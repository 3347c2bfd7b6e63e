#include "app/pages/supplies/supply_form.h"

#include "app/widgets/quantity_box.h"
#include "core/base/limits.h"
#include "core/documents/stock_words.h"
#include "core/season/bookings.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double permilleInPercent = 10;
constexpr std::array kinds{SupplyKind::Conditioner, SupplyKind::Cleaner, SupplyKind::ApproachCleaner,
                           SupplyKind::Cloth,       SupplyKind::Part,    SupplyKind::Pack};

UseBasis usualBasis(SupplyKind kind) {
    switch (kind) {
        case SupplyKind::Conditioner:
        case SupplyKind::Cleaner:
            return UseBasis::Machine;
        case SupplyKind::ApproachCleaner:
            return UseBasis::PerDay;
        case SupplyKind::Cloth:
            return UseBasis::PerLaneCleaned;
        case SupplyKind::Part:
        case SupplyKind::Pack:
            break;
    }
    return UseBasis::WhenServiced;
}

QSpinBox* numberBox(int least, int most, const char* name, QWidget* parent) {
    auto* box = new QSpinBox(parent);
    box->setRange(least, most);
    box->setObjectName(name);
    box->setAlignment(Qt::AlignTrailing);
    return box;
}

/// Machines name the product in their tanks by its name, so they go along with it.
void renameIn(std::vector<Change>& changes, const Machine& machine, const QString& before, const QString& after) {
    Machine renamed = machine;
    for (QString& conditioner : renamed.conditioners) {
        if (conditioner == before) conditioner = after;
    }
    if (renamed.cleaner == before) renamed.cleaner = after;
    if (renamed != machine) changes.push_back(RowChange<Machine>{machine, renamed});
}

}  // namespace

SupplyForm::SupplyForm(Session& session, QWidget* parent) : EditForm(session, parent) {
    buildWhat();
    buildRules();
    finish();
    connectFields();
}

void SupplyForm::buildWhat() {
    const UnitSystem units = session().season().centre.facts.settings.units;
    m_name = new QLineEdit(this);
    m_name->setObjectName("supplyName");
    m_kind = new QComboBox(this);
    m_kind->setObjectName("supplyKind");
    for (const SupplyKind kind : kinds)
        m_kind->addItem(text(kind), int(kind));
    m_water = numberBox(0, 100'000, "supplyWater", this);
    m_water->setSpecialValueText(tr("used as it comes"));
    m_basis = new QComboBox(this);
    m_basis->setObjectName("supplyBasis");
    m_basis->addItem(tr("from machines' tanks, by the recipe"), int(UseBasis::Machine));
    m_basis->addItem(tr("for each lane that is cleaned"), int(UseBasis::PerLaneCleaned));
    m_basis->addItem(tr("each day"), int(UseBasis::PerDay));
    m_basis->addItem(tr("when something is serviced"), int(UseBasis::WhenServiced));
    m_usual = new QuantityBox(SupplyKind::Conditioner, units, this);
    m_usual->setObjectName("supplyUsual");
    m_container = new QuantityBox(SupplyKind::Conditioner, units, this);
    m_container->setObjectName("supplyContainer");
    addRow(tr("&Name:"), m_name, {"supply.no-name", "supply.name-too-long", "supply.name-twice", "supply.reserved"});
    addRow(tr("&Kind:"), m_kind, {});
    addRow(tr("Parts of &water to one:"), m_water, {"supply.water"});
    addRow(tr("&Used:"), m_basis, {"supply.basis"});
    addRow(tr("Usual &amount of it:"), m_usual, {"supply.usual-use"});
    addRow(tr("One &container holds:"), m_container, {"supply.container"});
}

void SupplyForm::buildRules() {
    const UnitSystem units = session().season().centre.facts.settings.units;
    const auto percentBox = [this](const char* name) {
        auto* box = new QDoubleSpinBox(this);
        box->setObjectName(name);
        box->setDecimals(1);
        box->setRange(-1, 100'000);
        box->setSuffix(tr(" %", "suffix"));
        box->setAlignment(Qt::AlignTrailing);
        return box;
    };
    m_limit = new QuantityBox(SupplyKind::Conditioner, units, this);
    m_limit->setObjectName("supplyLimit");
    m_life = numberBox(-1, 1'000'000, "supplyLife", this);
    m_life->setSuffix(tr(" days", "suffix"));
    m_level = percentBox("supplyLevel");
    m_level->setToolTip(tr("How likely it must be not to run out before the next delivery"));
    m_holding = percentBox("supplyHolding");
    m_holding->setToolTip(tr("What keeping it for a year costs, as part of its value"));
    m_note = new QLineEdit(this);
    m_note->setObjectName("supplyNote");
    m_note->setMaxLength(limits::noteLength);
    addRow(tr("The store holds at &most (0 = no limit):"), m_limit, {"supply.storage-limit"});
    addRow(tr("Keeps &for (0 = keeps):"), m_life, {"supply.shelf-life"});
    addRow(tr("Service le&vel:"), m_level, {"supply.service-level"});
    addRow(tr("&Holding cost a year:"), m_holding, {"supply.holding-cost"});
    addRow(tr("N&ote:"), m_note, {});
}

void SupplyForm::connectFields() {
    for (QLineEdit* field : {m_name, m_note})
        connect(field, &QLineEdit::textChanged, this, &SupplyForm::touched);
    for (QSpinBox* field : {m_water, m_life})
        connect(field, &QSpinBox::valueChanged, this, &SupplyForm::touched);
    for (QDoubleSpinBox* field : std::initializer_list<QDoubleSpinBox*>{m_usual, m_container, m_limit, m_level, m_holding})
        connect(field, &QDoubleSpinBox::valueChanged, this, &SupplyForm::touched);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &SupplyForm::kindChosen);
    connect(m_basis, &QComboBox::currentIndexChanged, this, [this] {
        showFields();
        touched();
    });
}

void SupplyForm::kindChosen() {
    const auto kind = SupplyKind(m_kind->currentData().toInt());
    const UnitSystem units = session().season().centre.facts.settings.units;
    for (QuantityBox* box : {m_usual, m_container, m_limit})
        box->setKind(kind, units);
    if (!m_before || kind != m_before->kind) m_basis->setCurrentIndex(m_basis->findData(int(usualBasis(kind))));
    if (kind != SupplyKind::Cleaner) m_water->setValue(0);
    showFields();
    touched();
}

void SupplyForm::showFields() {
    const auto kind = SupplyKind(m_kind->currentData().toInt());
    const auto basis = UseBasis(m_basis->currentData().toInt());
    setRowVisible(m_water, kind == SupplyKind::Cleaner);
    setRowVisible(m_usual, basis == UseBasis::PerDay || basis == UseBasis::PerLaneCleaned);
}

void SupplyForm::create() {
    m_before.reset();
    m_loaded = {};
    m_loaded.id = {session().newOperation().value};
    open(tr("New supply"));
}

void SupplyForm::edit(const Supply& supply) {
    m_before = supply;
    open(tr("Change %1", "supply").arg(shown(supply.name)));
}

void SupplyForm::reload() {
    if (m_before) {
        const Supply* now = findSupply(session().season().supplies, m_before->id);
        if (now) m_before = *now;
        m_loaded = *m_before;
    }
    m_name->setText(m_loaded.name);
    m_kind->setCurrentIndex(m_kind->findData(int(m_loaded.kind)));
    kindChosen();
    m_water->setValue(m_loaded.waterParts);
    m_basis->setCurrentIndex(m_basis->findData(int(m_loaded.basis)));
    m_usual->setAmount(m_loaded.usualUse);
    m_container->setAmount(m_loaded.container);
    m_limit->setAmount(m_loaded.rules.storageLimit);
    m_life->setValue(m_loaded.rules.shelfLifeDays);
    m_level->setValue(m_loaded.rules.serviceLevelPermille / permilleInPercent);
    m_holding->setValue(m_loaded.rules.holdingPermille / permilleInPercent);
    m_note->setText(m_loaded.note);
    showFields();
}

Supply SupplyForm::draft() const {
    Supply supply = m_loaded;
    supply.name = m_name->text().trimmed();
    supply.kind = SupplyKind(m_kind->currentData().toInt());
    supply.waterParts = m_water->value();
    supply.basis = UseBasis(m_basis->currentData().toInt());
    const bool usual = supply.basis == UseBasis::PerDay || supply.basis == UseBasis::PerLaneCleaned;
    supply.usualUse = usual ? m_usual->amount() : Amount{};
    supply.container = m_container->amount();
    supply.rules.storageLimit = m_limit->amount();
    supply.rules.shelfLifeDays = m_life->value();
    supply.rules.serviceLevelPermille = int(std::lround(m_level->value() * permilleInPercent));
    supply.rules.holdingPermille = int(std::lround(m_holding->value() * permilleInPercent));
    supply.note = m_note->text();
    return supply;
}

std::vector<Finding> SupplyForm::faults() const {
    Supply supply = draft();
    std::vector<Supply> all = session().season().supplies;
    std::erase_if(all, [&](const Supply& other) { return other.id == supply.id || other.name != supply.name; });
    if (!m_before) supply.id = {tr("new", "a supply")};
    all.push_back(supply);
    std::vector<Finding> own = faultsOf(supply);
    for (Finding& fault : faultsOf(all)) {
        if (fault.rule == "supply.name-twice" && !supply.name.isEmpty()) own.push_back(std::move(fault));
    }
    for (Finding& fault : own) {
        if (fault.subject.isEmpty()) fault.subject = supply.id.value;
    }
    return own;
}

std::vector<Change> SupplyForm::changesTo(const Supply& after) const {
    std::vector<Change> changes{RowChange<Supply>{m_before, after}};
    const bool renamed = m_before && m_before->name != after.name && !m_before->name.isEmpty();
    for (const Machine& machine : session().season().centre.machines) {
        if (renamed) renameIn(changes, machine, m_before->name, after.name);
    }
    return changes;
}

bool SupplyForm::store() {
    const Supply after = draft();
    Deed deed;
    deed.name = m_before ? tr("Change %1", "supply").arg(shown(after.name)) : tr("Add %1", "supply").arg(shown(after.name));
    deed.changes = changesTo(after);
    if (!m_before) {
        const SeasonState& season = session().season();
        Books books{season.centre, season.supplies, season.patterns, season.stock, {}};
        for (Movement& movement : openingOf(after, session().planningState().levels, books))
            deed.records.push_back(std::move(movement));
    }
    return session().perform(std::move(deed));
}

bool SupplyForm::isOther() const {
    if (!m_before) return false;
    const Supply* now = findSupply(session().season().supplies, m_before->id);
    return !now || *now != *m_before;
}

bool retire(Session& session, const Supply& supply) {
    Supply after = supply;
    after.retired = !supply.retired;
    const QString name = after.retired ? SupplyForm::tr("Retire %1") : SupplyForm::tr("Take %1 up again");
    return session.apply(name.arg(shown(supply.name)), {RowChange<Supply>{supply, after}});
}

}  // namespace laneward
