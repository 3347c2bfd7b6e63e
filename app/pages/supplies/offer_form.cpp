#include "app/pages/supplies/offer_form.h"

#include "app/pages/supplies/price_model.h"
#include "app/pages/supplies/supply_texts.h"
#include "app/widgets/cell_table.h"
#include "app/widgets/quantity_box.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>

#include <algorithm>

namespace laneward {

namespace {

constexpr int priceWidth = 300;
constexpr int priceHeight = 190;

}  // namespace

OfferForm::OfferForm(Session& session, QWidget* parent) : EditForm(session, parent) {
    build();
    finish();
    connect(m_supply, &QComboBox::currentIndexChanged, this, &OfferForm::supplyChosen);
    connect(m_article, &QLineEdit::textChanged, this, &OfferForm::touched);
    connect(m_pack, &QDoubleSpinBox::valueChanged, this, &OfferForm::touched);
    connect(m_prices, &PriceModel::edited, this, &OfferForm::touched);
}

void OfferForm::build() {
    m_supply = new QComboBox(this);
    m_supply->setObjectName("offerSupply");
    m_article = new QLineEdit(this);
    m_article->setObjectName("offerArticle");
    m_pack = new QuantityBox(SupplyKind::Conditioner, session().season().centre.facts.settings.units, this);
    m_pack->setObjectName("offerPack");
    m_prices = new PriceModel(this);
    m_table = new CellTable(m_prices, this);
    m_table->setObjectName("offerPrices");
    m_table->setAccessibleName(tr("Prices"));
    m_table->setTabKeyNavigation(true);
    m_table->verticalHeader()->hide();
    m_table->setFixedHeight(priceHeight);
    addRow(tr("&Supply:"), m_supply, {"offer.no-supply"});
    addRow(tr("&Article number:"), m_article, {"offer.article-too-long"});
    addRow(tr("One &pack holds:"), m_pack, {"offer.pack"});
    auto* prices = new QHBoxLayout;
    m_table->setFixedWidth(priceWidth);
    prices->addWidget(m_table);
    addRow(tr("P&rices:"), prices, m_table,
           {"offer.no-price", "offer.price-gap", "offer.price-order", "offer.packs", "offer.too-many-prices", "price.amount",
            "price.currency", "offer.price-rises", "offer.price-unreadable"});
}

void OfferForm::supplyChosen() {
    const Supply* supply = findSupply(session().season().supplies, {m_supply->currentData().toString()});
    if (supply) m_pack->setKind(supply->kind, session().season().centre.facts.settings.units);
    if (supply && m_pack->amount() == Amount{}) m_pack->setAmount(supply->container);
    touched();
}

void OfferForm::create(const SupplierId& supplier) {
    m_before.reset();
    m_loaded = {};
    m_loaded.id = {session().newOperation().value};
    m_loaded.supplier = supplier;
    const QString name = supplierName(supplier, session().season());
    open(tr("New price of %1", "supplier").arg(name));
}

void OfferForm::edit(const Offer& offer) {
    m_before = offer;
    const SeasonState& season = session().season();
    open(tr("Change the price of %1 from %2", "supply, supplier")
             .arg(supplyName(offer.supply, season), supplierName(offer.supplier, season)));
}

void OfferForm::reload() {
    const SeasonState& season = session().season();
    if (m_before) {
        if (const Offer* now = findOffer(season.offers, m_before->id)) m_before = *now;
        m_loaded = *m_before;
    }
    m_supply->clear();
    for (const Supply& supply : season.supplies) {
        if (!supply.retired || supply.id == m_loaded.supply) m_supply->addItem(shown(supply.name), supply.id.value);
    }
    m_supply->setCurrentIndex(m_before ? m_supply->findData(m_loaded.supply.value) : std::min(0, m_supply->count() - 1));
    m_article->setText(m_loaded.article);
    m_pack->setAmount({});
    supplyChosen();
    if (m_before) m_pack->setAmount(m_loaded.pack);
    m_prices->show(m_loaded.prices, season.centre.facts.settings.currency, session().speech());
}

Offer OfferForm::draft() const {
    Offer offer = m_loaded;
    offer.supply = {m_supply->currentData().toString()};
    offer.article = m_article->text().trimmed();
    offer.pack = m_pack->amount();
    offer.prices = m_prices->prices();
    return offer;
}

std::vector<Finding> OfferForm::faults() const {
    Offer offer = draft();
    const QString name = offer.article.isEmpty() ? supplyName(offer.supply, session().season()) : offer.article;
    if (offer.article.isEmpty()) offer.id = {name};
    std::vector<Finding> faults;
    for (const int row : m_prices->unreadable())
        faults.push_back({Severity::Fault, "offer.price-unreadable", name, {std::int64_t{row}}});
    for (Finding& fault : faultsOf(offer, session().season().centre.facts.settings.currency)) {
        // Rows that cannot be read may be the price that is missed.
        if (fault.rule != "offer.no-price" || faults.empty()) faults.push_back(std::move(fault));
    }
    if (offer.supply.isEmpty()) faults.push_back({Severity::Fault, "offer.no-supply", name, {}});
    return faults;
}

std::vector<Finding> OfferForm::doubts() const {
    Offer offer = draft();
    if (offer.article.isEmpty()) offer.id = {supplyName(offer.supply, session().season())};
    return doubtsOf(offer);
}

bool OfferForm::store() {
    const Offer after = draft();
    const QString supply = supplyName(after.supply, session().season());
    const QString supplier = supplierName(after.supplier, session().season());
    const QString name =
        m_before ? tr("Change the price of %1 from %2", "supply, supplier") : tr("Add a price of %1 from %2", "supply, supplier");
    return session().apply(name.arg(supply, supplier), {RowChange<Offer>{m_before, after}});
}

bool OfferForm::isOther() const {
    if (!m_before) return false;
    const Offer* now = findOffer(session().season().offers, m_before->id);
    return !now || *now != *m_before;
}

const Offer* findOffer(const std::vector<Offer>& offers, const OfferId& id) {
    const auto found = std::find_if(offers.begin(), offers.end(), [&](const Offer& offer) { return offer.id == id; });
    return found == offers.end() ? nullptr : &*found;
}

bool retire(Session& session, const Offer& offer) {
    Offer after = offer;
    after.retired = !offer.retired;
    const QString name = after.retired ? OfferForm::tr("Retire the price of %1 from %2", "supply, supplier")
                                       : OfferForm::tr("Take the price of %1 from %2 up again", "supply, supplier");
    const SeasonState& season = session.season();
    return session.apply(name.arg(supplyName(offer.supply, season), supplierName(offer.supplier, season)),
                         {RowChange<Offer>{offer, after}});
}

}  // namespace laneward
