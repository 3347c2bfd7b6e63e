#include "app/cli/csv_supplies.h"
#include "app/cli/csv_supply_cells.h"
#include "core/base/limits.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace laneward::cli {

namespace {

constexpr double farOff = 20;  ///< a unit or a decimal sign is hardly meant from here on; as counts are judged

double powerOfTen(int digits) { return std::pow(10.0, digits); }

bool isFar(double a, double b) { return a > 0 && b > 0 && (a > farOff * b || b > farOff * a); }

/// Rows become offers: one for each supply, article and pack, with the price breaks of its rows.
class PriceReader {
public:
    PriceReader(const CsvRows& rows, const SeasonState& season)
        : m_rows(rows), m_season(season), m_currency(season.centre.facts.settings.currency) {}

    ReadPrices read() {
        if (m_rows.count() == 0) m_read.faults.push_back({Severity::Fault, "csv.empty", m_rows.file, {}});
        for (size_t n = 0; n < m_rows.count(); ++n) {
            const CsvRow row = m_rows.row(n);
            CsvCells cells(row, m_rows.mapping, m_read.faults);
            take(cells);
        }
        if (m_read.faults.empty()) finish();
        return std::move(m_read);
    }

private:
    struct Draft {
        Offer offer;
        QString where;
        std::optional<std::int64_t> to;  ///< last pack that the latest price is said to be for
        size_t told = 0;                 ///< faults that have been reported
    };

    bool takeSupplier(CsvCells& cells) {
        const Supplier* supplier = named(cells, "supplier", m_season.suppliers);
        if (!supplier) return false;
        if (m_read.supplier.isEmpty()) m_read.supplier = supplier->id;
        if (m_read.supplier == supplier->id) return true;
        cells.refuse("csv.one-supplier", "supplier");
        return false;
    }

    std::optional<Money> moneyOf(CsvCells& cells) {
        const QByteArray currency = cells.has("currency") ? cells.value("currency").toUpper().toLatin1() : m_currency;
        const double whole = powerOfTen(minorDigits(currency));
        if (!cells.has("price")) {
            cells.refuse("csv.cell-empty", "price");
            return std::nullopt;
        }
        const std::optional<double> number = cells.decimal("price", "csv.number", double(limits::moneyMinor) / whole);
        if (!number) return std::nullopt;
        const double minor = *number * whole;
        if (std::abs(minor - std::round(minor)) > 1e-6 * std::max(1.0, minor)) {
            cells.refuse("csv.money", "price", {std::int64_t{minorDigits(currency)}});
            return std::nullopt;
        }
        return Money{std::llround(minor), currency};
    }

    Draft& draftOf(const CsvCells& cells, const Supply& supply, Amount pack) {
        const QString article = cells.value("article");
        const auto [place, isNew] = m_places.insert({{supply.id, article, pack}, m_drafts.size()});
        if (!isNew) return m_drafts[place->second];
        Draft draft;
        draft.offer.supplier = m_read.supplier;
        draft.offer.supply = supply.id;
        draft.offer.article = article;
        draft.offer.pack = pack;
        draft.offer.id = {supply.name};  // until it is stored it is called by what it sells
        draft.where = cells.where();
        return m_drafts.emplace_back(std::move(draft));
    }

    void take(CsvCells& cells) {
        const size_t before = m_read.faults.size();
        const bool isOfSupplier = takeSupplier(cells);
        const Supply* supply = named(cells, "supply", m_season.supplies);
        const std::optional<Money> each = moneyOf(cells);
        if (!isOfSupplier || !supply) return;
        const std::optional<Amount> pack =
            cells.has("pack") ? amountIn(cells, "pack", "pack_unit", unitOf(supply->kind)) : supply->container;
        const std::int64_t from = cells.has("from_packs") ? cells.whole("from_packs", 1, limits::packs) : 1;
        std::optional<std::int64_t> to;
        if (cells.has("to_packs")) to = cells.whole("to_packs", from, limits::packs);
        if (!pack || !each || m_read.faults.size() > before) return;
        Draft& draft = draftOf(cells, *supply, *pack);
        const int row = int(draft.offer.prices.size());
        if (row > 0 && draft.to && from != *draft.to + 1)
            cells.refuse(from > *draft.to ? "csv.price-gap" : "csv.price-overlap", "from_packs", {*draft.to});
        draft.to = to;
        draft.offer.prices.push_back({int(from), *each});
        // What is wrong since this row is its fault.
        const std::vector<Finding> faults = faultsOf(draft.offer, m_currency);
        for (size_t n = draft.told; n < faults.size(); ++n)
            m_read.faults.push_back(atRow(cells, faults[n]));
        draft.told = std::max(draft.told, faults.size());
    }

    /// The stored offer that a row is about: by article, else by pack.
    const Offer* stored(const Offer& offer) const {
        const Offer* best = nullptr;
        for (const Offer& old : m_season.offers) {
            if (old.supplier != offer.supplier || old.supply != offer.supply || m_taken.contains(old.id)) continue;
            const bool samePack = old.pack == offer.pack;
            const bool sameArticle = old.article == offer.article;
            if (sameArticle && samePack) return &old;
            const bool either = (sameArticle && !offer.article.isEmpty()) || (samePack && old.article.isEmpty());
            if (either && !best) best = &old;
        }
        return best;
    }

    void doubt(const Draft& draft, const Offer* before) {
        const Offer& offer = draft.offer;
        const Supply* supply = findSupply(m_season.supplies, offer.supply);
        const BaseUnit unit = unitOf(supply->kind);
        const auto add = [&](const char* rule, std::vector<Value> values) {
            m_read.doubts.push_back({Severity::Warning, rule, draft.where, std::move(values)});
        };
        if (unit != BaseUnit::Piece && isFar(double(offer.pack.value), double(supply->container.value)))
            add("csv.pack-far-off", {supply->name, valueOfAmount(offer.pack, unit), valueOfAmount(supply->container, unit)});
        const auto rate = [](const Offer& one) {
            return double(one.prices.front().each.minor) / std::max(1.0, double(one.pack.value));
        };
        if (before && !before->prices.empty() && isFar(rate(offer), rate(*before)))
            add("csv.price-far-off", {supply->name, plain(offer.prices.front().each), plain(before->prices.front().each)});
        for (Finding rises : doubtsOf(offer)) {
            rises.subject = draft.where + ": " + rises.subject;
            m_read.doubts.push_back(rises);
        }
    }

    static QString plain(const Money& money) {
        const int digits = minorDigits(money.currency);
        return QString::number(double(money.minor) / powerOfTen(digits), 'f', digits) + ' ' + QString::fromLatin1(money.currency);
    }

    void finish() {
        for (Draft& draft : m_drafts) {
            const Offer* before = stored(draft.offer);
            doubt(draft, before);
            const Offer& offer = draft.offer;
            draft.offer.id = before ? before->id
                                    : OfferId{idFrom({offer.supplier.value, offer.supply.value, offer.article,
                                                      QString::number(offer.pack.value)})};
            if (before) draft.offer.version = before->version;
            if (before) m_taken.insert(before->id);
            m_read.offers.push_back(std::move(draft.offer));
        }
    }

    const CsvRows& m_rows;
    const SeasonState& m_season;
    QByteArray m_currency;
    std::vector<Draft> m_drafts;
    std::map<std::tuple<SupplyId, QString, Amount>, size_t> m_places;  ///< in m_drafts
    std::set<OfferId> m_taken;                                         ///< stored ones that are replaced
    ReadPrices m_read;
};

}  // namespace

ReadPrices pricesFromCsv(const CsvRows& rows, const SeasonState& season) { return PriceReader(rows, season).read(); }

std::vector<Change> changesTo(const SeasonState& season, const ReadPrices& list) {
    std::vector<Change> changes;
    const auto withId = [](const std::vector<Offer>& offers, const OfferId& id) {
        return std::find_if(offers.begin(), offers.end(), [&](const Offer& offer) { return offer.id == id; });
    };
    for (const Offer& offer : list.offers) {
        const auto old = withId(season.offers, offer.id);
        if (old == season.offers.end())
            changes.push_back(RowChange<Offer>{std::nullopt, offer});
        else if (*old != offer)
            changes.push_back(RowChange<Offer>{*old, offer});
    }
    for (const Offer& old : season.offers) {
        if (old.supplier != list.supplier || old.retired || withId(list.offers, old.id) != list.offers.end()) continue;
        Offer gone = old;
        gone.retired = true;
        changes.push_back(RowChange<Offer>{old, gone});
    }
    return changes;
}

}  // namespace laneward::cli
