#include "app/pages/supplies/supplier_form.h"

#include "app/widgets/money_box.h"
#include "core/base/limits.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSpinBox>

namespace laneward {

namespace {

constexpr int addressLines = 3;

}  // namespace

SupplierForm::SupplierForm(Session& session, QWidget* parent) : EditForm(session, parent) {
    buildFields();
    buildTerms();
    finish();
    connectFields();
}

void SupplierForm::buildFields() {
    m_name = new QLineEdit(this);
    m_name->setObjectName("supplierName");
    m_address = new QPlainTextEdit(this);
    m_address->setObjectName("supplierAddress");
    m_address->setTabChangesFocus(true);
    m_address->setFixedHeight(fontMetrics().lineSpacing() * addressLines + 14);
    m_freight = new MoneyBox(this);
    m_freight->setObjectName("supplierFreight");
    m_isFree = new QCheckBox(tr("falls away fro&m"), this);
    m_isFree->setObjectName("supplierIsFree");
    m_freeFrom = new MoneyBox(this);
    m_freeFrom->setObjectName("supplierFreeFrom");
    m_freeFrom->setAccessibleName(tr("Value of goods from which there is no freight"));
    m_minimum = new MoneyBox(this);
    m_minimum->setObjectName("supplierMinimum");
    addRow(tr("&Name:"), m_name, {"supplier.no-name", "supplier.name-too-long"});
    addRow(tr("&Address:"), m_address, {});
    auto* freight = new QHBoxLayout;
    freight->addWidget(m_freight);
    freight->addWidget(m_isFree);
    freight->addWidget(m_freeFrom);
    addRow(tr("&Freight of an order:"), freight, m_freight, {"price.amount", "price.currency"});
    addRow(tr("An order is at &least:"), m_minimum, {});
}

void SupplierForm::buildTerms() {
    auto* days = new QHBoxLayout;
    const QLocale locale;
    for (int day = 0; day < int(m_days.size()); ++day) {
        auto* box = new QCheckBox(locale.standaloneDayName(day + 1, QLocale::ShortFormat), this);
        box->setObjectName(QStringLiteral("orderDay%1").arg(day + 1));
        box->setAccessibleName(tr("Takes orders on %1").arg(locale.standaloneDayName(day + 1)));
        days->addWidget(box);
        m_days[size_t(day)] = box;
    }
    m_lead = new QSpinBox(this);
    m_lead->setObjectName("supplierLead");
    m_lead->setRange(-1, 100'000);
    m_lead->setSuffix(tr(" days", "suffix"));
    m_lead->setAlignment(Qt::AlignTrailing);
    m_lead->setToolTip(tr("From order to receipt, before there are deliveries to learn from"));
    m_note = new QLineEdit(this);
    m_note->setObjectName("supplierNote");
    m_note->setMaxLength(limits::noteLength);
    addRow(tr("Takes &orders on:"), days, m_days.front(), {"supplier.order-days"});
    addRow(tr("Usual &delivery time:"), m_lead, {"supplier.lead-time"});
    addRow(tr("No&te:"), m_note, {});
}

void SupplierForm::connectFields() {
    for (QLineEdit* field : {m_name, m_note})
        connect(field, &QLineEdit::textChanged, this, &SupplierForm::touched);
    connect(m_address, &QPlainTextEdit::textChanged, this, &SupplierForm::touched);
    for (MoneyBox* field : {m_freight, m_freeFrom, m_minimum})
        connect(field, &QDoubleSpinBox::valueChanged, this, &SupplierForm::touched);
    for (QCheckBox* box : m_days)
        connect(box, &QCheckBox::toggled, this, &SupplierForm::touched);
    connect(m_lead, &QSpinBox::valueChanged, this, &SupplierForm::touched);
    connect(m_isFree, &QCheckBox::toggled, this, [this](bool on) {
        m_freeFrom->setEnabled(on);
        touched();
    });
}

void SupplierForm::create() {
    m_before.reset();
    m_loaded = {};
    m_loaded.id = {session().newOperation().value};
    open(tr("New supplier"));
}

void SupplierForm::edit(const Supplier& supplier) {
    m_before = supplier;
    open(tr("Change %1", "supplier").arg(shown(supplier.name)));
}

void SupplierForm::reload() {
    if (m_before) {
        if (const Supplier* now = findSupplier(session().season().suppliers, m_before->id)) m_before = *now;
        m_loaded = *m_before;
    }
    const QByteArray currency = session().season().centre.facts.settings.currency;
    m_name->setText(m_loaded.name);
    m_address->setPlainText(m_loaded.address);
    m_freight->setMoney(m_loaded.freight, currency);
    m_isFree->setChecked(m_loaded.freeFreightFrom.has_value());
    m_freeFrom->setEnabled(m_loaded.freeFreightFrom.has_value());
    m_freeFrom->setMoney(m_loaded.freeFreightFrom.value_or(Money{}), currency);
    m_minimum->setMoney(m_loaded.minimumOrder, currency);
    for (size_t day = 0; day < m_days.size(); ++day)
        m_days[day]->setChecked(m_loaded.orderWeekdays & (1U << day));
    m_lead->setValue(m_loaded.usualLeadDays);
    m_note->setText(m_loaded.note);
}

Supplier SupplierForm::draft() const {
    Supplier supplier = m_loaded;
    supplier.name = m_name->text().trimmed();
    supplier.address = m_address->toPlainText().trimmed().left(limits::noteLength);
    supplier.freight = m_freight->money();
    supplier.freeFreightFrom = m_isFree->isChecked() ? std::optional(m_freeFrom->money()) : std::nullopt;
    supplier.minimumOrder = m_minimum->money();
    supplier.orderWeekdays = 0;
    for (size_t day = 0; day < m_days.size(); ++day) {
        if (m_days[day]->isChecked()) supplier.orderWeekdays |= std::uint8_t(1U << day);
    }
    supplier.usualLeadDays = m_lead->value();
    supplier.note = m_note->text();
    return supplier;
}

std::vector<Finding> SupplierForm::faults() const {
    Supplier supplier = draft();
    if (!m_before) supplier.id = {tr("new", "a supplier")};
    std::vector<Finding> faults = faultsOf(supplier, session().season().centre.facts.settings.currency);
    for (Finding& fault : faults) {
        if (fault.subject.isEmpty()) fault.subject = supplier.id.value;
    }
    return faults;
}

bool SupplierForm::store() {
    const Supplier after = draft();
    const QString name = m_before ? tr("Change %1", "supplier") : tr("Add %1", "supplier");
    return session().apply(name.arg(shown(after.name)), {RowChange<Supplier>{m_before, after}});
}

bool SupplierForm::isOther() const {
    if (!m_before) return false;
    const Supplier* now = findSupplier(session().season().suppliers, m_before->id);
    return !now || *now != *m_before;
}

bool retire(Session& session, const Supplier& supplier) {
    Supplier after = supplier;
    after.retired = !supplier.retired;
    const QString name = after.retired ? SupplierForm::tr("Retire %1") : SupplierForm::tr("Take %1 up again");
    return session.apply(name.arg(shown(supplier.name)), {RowChange<Supplier>{supplier, after}});
}

}  // namespace laneward
