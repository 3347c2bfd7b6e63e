#include "app/pages/supplies/price_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/models/plain_rows.h"
#include "app/pages/supplies/offer_form.h"
#include "app/pages/supplies/supplier_form.h"
#include "app/pages/supplies/supplies_import.h"
#include "app/pages/supplies/supply_texts.h"
#include "core/documents/stock_words.h"

#include <QCheckBox>
#include <QHeaderView>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int wordsAir = 22;  // beside whole words in a column
constexpr int everyDay = 0x7f;

/// "Mon, Thu".
QString orderDays(std::uint8_t days, const QLocale& locale) {
    if ((days & everyDay) == everyDay) return PricePanel::tr("every day");
    QStringList names;
    for (int day = 0; day < 7; ++day) {
        if (days & (1U << unsigned(day))) names << locale.standaloneDayName(day + 1, QLocale::ShortFormat);
    }
    return names.join(PricePanel::tr(", "));
}

/// "89.50 GBP, from 4 packs 84.00 GBP".
QString pricesText(const Offer& offer, const Speech& speech) {
    QStringList parts;
    for (const PriceBreak& price : offer.prices) {
        const QString each = moneyText(price.each, speech);
        parts << (price.packs <= 1 ? each : PricePanel::tr("from %n packs %1", nullptr, price.packs).arg(each));
    }
    return parts.join(PricePanel::tr(", "));
}

}  // namespace

PricePanel::PricePanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    m_lists = new QSplitter(Qt::Vertical, this);
    m_lists->setChildrenCollapsible(false);
    m_lists->addWidget(buildSuppliers());
    m_lists->addWidget(buildOffers());
    m_lists->setStretchFactor(0, 2);
    m_lists->setStretchFactor(1, 3);
    column->addWidget(m_lists, 1);
    buildForms();
}

QPushButton* PricePanel::addButton(QHBoxLayout* row, const QString& text, const char* name, void (PricePanel::*deed)()) {
    auto* button = new QPushButton(text, this);
    button->setObjectName(name);
    row->addWidget(button);
    connect(button, &QPushButton::clicked, this, deed);
    return button;
}

QWidget* PricePanel::buildSuppliers() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 4);
    auto* row = new QHBoxLayout;
    row->addWidget(headingLabel(tr("Suppliers"), side), 1);
    m_retired = new QCheckBox(tr("Show retired ones"), side);
    m_retired->setObjectName("showRetired");
    row->addWidget(m_retired);
    addButton(row, tr("&New supplier…"), "newSupplier", &PricePanel::newSupplier);
    m_ofSupplier << addButton(row, tr("&Change…"), "changeSupplier", &PricePanel::changeSupplier);
    m_retireSupplier = addButton(row, tr("Retire"), "retireSupplier", &PricePanel::retireSupplier);
    m_ofSupplier << m_retireSupplier;
    column->addLayout(row);
    m_empty = proseLabel(tr("No supplier is kept yet. Enter whom you order from, then what each sells and at which price: from "
                            "then on the tab Orders proposes what to order by when."),
                         side);
    column->addWidget(m_empty);
    m_supplierRows = new PlainRows({tr("Supplier"), tr("Takes orders on"), tr("Delivers in, days"), tr("Freight"),
                                    tr("No freight from"), tr("Order at least")},
                                   {2, 3, 4, 5}, this);
    m_suppliers = listOf(m_supplierRows, QStringLiteral("supplies/suppliers"), tr("suppliers.csv"), m_session, side);
    m_suppliers->setAccessibleName(tr("Suppliers"));
    m_suppliers->sortByColumn(0, Qt::AscendingOrder);
    m_suppliers->horizontalHeader()->setStretchLastSection(false);
    column->addWidget(m_suppliers, 1);
    column->addStretch(0);
    connect(m_retired, &QCheckBox::toggled, this, &PricePanel::refresh);
    connect(m_suppliers->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!m_filling) fillOffers();
    });
    connect(m_suppliers, &QTableView::doubleClicked, this, &PricePanel::changeSupplier);
    return side;
}

QWidget* PricePanel::buildOffers() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 4, 0, 0);
    auto* row = new QHBoxLayout;
    row->addWidget(m_head = headingLabel({}, side), 1);
    m_ofSupplier << addButton(row, tr("Ne&w price…"), "newOffer", &PricePanel::newOffer);
    m_ofOffer << addButton(row, tr("Chan&ge…"), "changeOffer", &PricePanel::changeOffer);
    m_retireOffer = addButton(row, tr("Retire"), "retireOffer", &PricePanel::retireOffer);
    m_ofOffer << m_retireOffer;
    m_ofSupplier << addButton(row, tr("&Import price list…"), "importPrices", &PricePanel::importList);
    column->addLayout(row);
    column->addWidget(m_noOffers = proseLabel({}, side));
    m_offerRows = new PlainRows({tr("Supply"), tr("Article"), tr("Pack"), tr("Prices of a pack")}, {2}, this);
    m_offers = listOf(m_offerRows, QStringLiteral("supplies/offers"), tr("prices.csv"), m_session, side);
    m_offers->setAccessibleName(tr("Price list"));
    m_offers->sortByColumn(0, Qt::AscendingOrder);
    m_offers->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(m_offers, 1);
    column->addStretch(0);
    connect(m_offers->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!m_filling) showChosen();
    });
    connect(m_offers, &QTableView::doubleClicked, this, &PricePanel::changeOffer);
    return side;
}

void PricePanel::buildForms() {
    m_supplierForm = new SupplierForm(m_session, this);
    m_offerForm = new OfferForm(m_session, this);
    m_import = new SuppliesImport(m_session, cli::StockKind::Prices, this);
    for (QWidget* form : std::initializer_list<QWidget*>{m_supplierForm, m_offerForm, m_import}) {
        layout()->addWidget(form);
        form->hide();
    }
    connect(m_supplierForm, &SupplierForm::left, this, [this] {
        cover(nullptr);
        const int row = m_supplierRows->rowOf(m_supplierForm->editing().value);
        if (row >= 0) chooseRow(*m_suppliers, row);
        m_suppliers->setFocus();
    });
    connect(m_offerForm, &OfferForm::left, this, [this] {
        cover(nullptr);
        const int row = m_offerRows->rowOf(m_offerForm->editing().value);
        if (row >= 0) chooseRow(*m_offers, row);
        m_offers->setFocus();
    });
    connect(m_import, &SuppliesImport::closed, this, [this] { cover(nullptr); });
}

void PricePanel::cover(QWidget* form) {
    m_lists->setVisible(!form);
    m_import->setVisible(form == m_import);
}

void PricePanel::refresh() {
    fillSuppliers();
    m_supplierForm->refresh();
    m_offerForm->refresh();
    if (m_import->isVisible()) m_import->refresh();
}

void PricePanel::fillSuppliers() {
    const Speech speech = m_session.speech();
    const Supplier* before = supplier();
    const QString kept = before ? before->id.value : QString();
    const QByteArray currency = m_session.season().centre.facts.settings.currency;
    std::vector<PlainRow> rows;
    for (const Supplier& one : m_session.season().suppliers) {
        if (one.retired && !m_retired->isChecked()) continue;
        const auto money = [&](const Money& m) { return moneyText(m.isZero() ? Money{0, currency} : m, speech); };
        const QString name = one.retired ? tr("%1 (retired)", "supplier").arg(shown(one.name)) : shown(one.name);
        PlainRow row{
            one.id.value,
            {name, orderDays(one.orderWeekdays, speech.locale), speech.locale.toString(one.usualLeadDays), money(one.freight),
             one.freeFreightFrom ? money(*one.freeFreightFrom) : tr("never"), money(one.minimumOrder)},
            {}};
        row.sort = {one.name.toCaseFolded(),
                    {},
                    one.usualLeadDays,
                    qlonglong(one.freight.minor),
                    qlonglong(one.freeFreightFrom ? one.freeFreightFrom->minor : limits::moneyMinor),
                    qlonglong(one.minimumOrder.minor)};
        rows.push_back(std::move(row));
    }
    m_filling = true;
    m_supplierRows->show(std::move(rows));
    fitColumns(*m_suppliers, wordsAir);
    const int row = m_supplierRows->rowOf(kept);
    if (row >= 0) chooseRow(*m_suppliers, row);
    if (!supplier() && m_supplierRows->rowCount() > 0) m_suppliers->setCurrentIndex(m_suppliers->model()->index(0, 0));
    m_filling = false;
    m_suppliers->setVisible(m_supplierRows->rowCount() > 0);
    m_empty->setVisible(m_supplierRows->rowCount() == 0);
    fillOffers();
}

void PricePanel::fillOffers() {
    const SeasonState& season = m_session.season();
    const Speech speech = m_session.speech();
    const Supplier* of = supplier();
    const Offer* before = offer();
    const QString kept = before ? before->id.value : QString();
    std::vector<PlainRow> rows;
    for (const Offer& one : season.offers) {
        if (!of || one.supplier != of->id || (one.retired && !m_retired->isChecked())) continue;
        const QString name = supplyName(one.supply, season);
        const QString pack = amountText(one.pack, supplyKind(one.supply, season), speech);
        const Money each = one.prices.empty() ? Money{} : one.prices.front().each;
        PlainRow row{
            one.id.value,
            {one.retired ? tr("%1 (retired)", "supply").arg(name) : name, shown(one.article), pack, pricesText(one, speech)},
            {name.toCaseFolded(), {}, qlonglong(one.pack.value), qlonglong(each.minor)}};
        rows.push_back(std::move(row));
    }
    const bool any = !rows.empty();
    m_filling = true;
    m_offerRows->show(std::move(rows));
    fitColumns(*m_offers, wordsAir);
    const int row = m_offerRows->rowOf(kept);
    if (row >= 0) chooseRow(*m_offers, row);
    if (!offer() && any) m_offers->setCurrentIndex(m_offers->model()->index(0, 0));
    m_filling = false;
    m_offers->setVisible(any);
    m_noOffers->setVisible(!any);
    m_noOffers->setText(of ? tr("%1 has no prices yet: enter one, or import a price list.").arg(shown(of->name)) : QString());
    m_head->setText(of ? tr("Price list of %1").arg(shown(of->name)) : tr("Price list"));
    showChosen();
}

void PricePanel::showChosen() {
    const bool writable = !m_session.isReadOnly();
    const Supplier* of = supplier();
    const Offer* one = offer();
    for (QPushButton* button : m_ofSupplier)
        button->setEnabled(writable && of);
    for (QPushButton* button : m_ofOffer)
        button->setEnabled(writable && one);
    m_retireSupplier->setText(of && of->retired ? tr("Take up again") : tr("Retire"));
    m_retireOffer->setText(one && one->retired ? tr("Take up again") : tr("Retire"));
}

const Supplier* PricePanel::supplier() const {
    const int row = chosenRow(*m_suppliers);
    return row < 0 ? nullptr : findSupplier(m_session.season().suppliers, {m_supplierRows->idAt(row)});
}

const Offer* PricePanel::offer() const {
    const int row = chosenRow(*m_offers);
    return row < 0 ? nullptr : findOffer(m_session.season().offers, {m_offerRows->idAt(row)});
}

void PricePanel::newSupplier() {
    cover(m_supplierForm);
    m_supplierForm->create();
}

void PricePanel::changeSupplier() {
    const Supplier* chosen = supplier();
    if (!chosen) return;
    cover(m_supplierForm);
    m_supplierForm->edit(*chosen);
}

void PricePanel::retireSupplier() {
    if (const Supplier* chosen = supplier()) retire(m_session, Supplier(*chosen));
}

void PricePanel::newOffer() {
    const Supplier* chosen = supplier();
    if (!chosen) return;
    cover(m_offerForm);
    m_offerForm->create(chosen->id);
}

void PricePanel::changeOffer() {
    const Offer* chosen = offer();
    if (!chosen) return;
    cover(m_offerForm);
    m_offerForm->edit(*chosen);
}

void PricePanel::retireOffer() {
    if (const Offer* chosen = offer()) retire(m_session, Offer(*chosen));
}

void PricePanel::importList() {
    const Supplier* chosen = supplier();
    if (chosen && m_import->chooseFile(chosen->id)) cover(m_import);
}

}  // namespace laneward
