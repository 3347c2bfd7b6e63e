#include "core/supplies/order_inputs.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace laneward::ordering {

namespace {

constexpr int mostSteps = 120;                 ///< of packs over the horizon
constexpr int mostSurplus = 400;               ///< steps beyond what is needed
constexpr int mostTogether = 100'000;          ///< packs
constexpr std::int64_t mostEach = 10'000'000;  ///< minor units; sums of costs stay within their range
constexpr int yearDays = 365;
constexpr int fineDays = 28;

std::int64_t ceiling(std::int64_t a, std::int64_t b) { return a > 0 ? (a + b - 1) / b : a / b; }
std::int64_t floored(std::int64_t a, std::int64_t b) { return a < 0 ? -((-a + b - 1) / b) : a / b; }

bool isUsable(const Offer& offer, const QByteArray& currency) {
    if (offer.pack.value <= 0 || offer.prices.empty() || offer.prices.front().packs != 1) return false;
    int packs = 0;
    for (const PriceBreak& price : offer.prices) {
        const bool known = price.each.currency == currency || price.each.isZero();
        if (price.packs <= packs || !known || price.each.minor < 0 || price.each.minor > mostEach) return false;
        packs = price.packs;
    }
    return true;
}

/// Price of an amount at the best break, for comparing packs of different sizes.
double leastRate(const Offer& offer) {
    std::int64_t least = offer.prices.front().each.minor;
    for (const PriceBreak& price : offer.prices)
        least = std::min(least, price.each.minor);
    return double(least) / double(offer.pack.value);
}

PackOffer packOffer(const Offer& offer, int together, std::int64_t unit) {
    PackOffer packs{int(offer.pack.value * together / unit), {}};
    for (const PriceBreak& price : offer.prices) {
        const int from = int(ceiling(price.packs, together));
        if (!packs.prices.empty() && packs.prices.back().packs == from) packs.prices.pop_back();
        packs.prices.push_back({from, price.each.minor * costOfMinor * together});
    }
    return packs;
}

/// Units beyond the need that a cheapest plan may end with. While more packs are left over than that, the last order with one of
/// them is cheaper without it: no price break, minimum or freight is worth them.
int surplusOf(const std::vector<PackOffer>& offers, const OrderTerms& terms) {
    std::int64_t sum = 0;
    for (const PackOffer& offer : offers) {
        Cost least = offer.prices.front().each;
        for (const PackPrice& price : offer.prices)
            least = std::min(least, price.each);
        const std::int64_t worth = least > 0 ? ceiling(std::max(terms.minimum, terms.freight), least) + 1 : 1;
        sum += offer.units * std::max<std::int64_t>(worth, offer.prices.back().packs);
    }
    return int(std::min<std::int64_t>(sum, mostSurplus));
}

bool canBeKept(const LotProblem& problem) { return bestLots(problem, std::vector<Cost>(problem.periods.size(), 0)).has_value(); }

class Sourcing {
public:
    Sourcing(const OrderQuestion& question, size_t supply, const Supplier& supplier, const StockCourse& course,
             const OrderCalendar& calendar)
        : m_question(question),
          m_stocked(question.supplies[supply]),
          m_supplier(supplier),
          m_course(course),
          m_calendar(calendar) {
        m_made.supply = supply;
    }

    SourcedSupply make() {
        chooseOffers();
        if (m_made.offers.empty() || m_calendar.periods() == 0 || !chooseUnit()) return m_made;
        std::vector<PackOffer> packs;
        for (size_t o = 0; o < m_made.offers.size(); ++o)
            packs.push_back(packOffer(*m_made.offers[o], m_made.together[o], m_made.unit));
        for (const PackOffer& offer : packs)
            m_smallest = std::min(m_smallest, offer.units);
        const std::int64_t most = ceiling(need(), m_made.unit) + surplusOf(packs, termsOf(m_supplier));
        m_made.problem.purchase = PackCosts(packs, int(most));
        setHolding();
        setPeriods();
        return m_made;
    }

private:
    std::int64_t need() const {
        const auto most = std::max_element(m_course.missing.begin(), m_course.missing.end());
        return most == m_course.missing.end() ? 0 : std::max<std::int64_t>(0, *most);
    }
    const Supply& supply() const { return m_stocked.supply; }
    void say(Severity severity, const char* rule, std::vector<Value> values) {
        m_made.findings.push_back({severity, rule, supply().name, std::move(values)});
    }

    void chooseOffers() {
        for (const Offer& offer : m_question.offers) {
            if (offer.supply != supply().id || offer.supplier != m_supplier.id || offer.retired) continue;
            if (isUsable(offer, m_question.currency)) {
                m_made.offers.push_back(&offer);
            } else {
                say(Severity::Warning, "orders.offer-unusable", {m_supplier.name, offer.article});
            }
        }
        std::sort(m_made.offers.begin(), m_made.offers.end(), [](const Offer* a, const Offer* b) { return a->id < b->id; });
    }

    /// False when the need is beyond reason.
    bool chooseUnit() {
        std::int64_t unit = 0;
        for (const Offer* offer : m_made.offers)
            unit = std::gcd(unit, offer->pack.value);
        int together = 1;
        if (m_made.offers.size() > 1 && ceiling(need(), unit) > mostSteps) {
            const auto cheapest = std::min_element(m_made.offers.begin(), m_made.offers.end(),
                                                   [](const Offer* a, const Offer* b) { return leastRate(*a) < leastRate(*b); });
            m_made.offers = {*cheapest};
            unit = m_made.offers.front()->pack.value;
            say(Severity::Note, "orders.packs-not-mixed", {m_supplier.name, m_made.offers.front()->article});
        }
        if (const std::int64_t packs = ceiling(need(), unit); packs > mostSteps) {
            const std::int64_t each = m_made.offers.front()->prices.front().each.minor;
            if (packs / mostSteps > mostTogether || each * (packs / mostSteps) > mostEach) {
                say(Severity::Fault, "orders.beyond-reason", {packs});
                return false;
            }
            together = int(ceiling(packs, mostSteps));
            unit *= together;
            say(Severity::Note, "orders.several-packs", {std::int64_t{together}});
        }
        m_made.unit = unit;
        m_made.together.assign(m_made.offers.size(), together);
        return true;
    }

    /// By the cheapest price of a single pack, whoever asks it.
    void setHolding() {
        double least = std::numeric_limits<double>::max();
        for (const Offer& offer : m_question.offers) {
            if (offer.supply != supply().id || offer.retired || !isUsable(offer, m_question.currency)) continue;
            least = std::min(least, double(offer.prices.front().each.minor) / double(offer.pack.value));
        }
        const int permille = std::clamp(supply().rules.holdingPermille, 0, 10'000);
        m_made.holding = least * double(m_made.unit) * double(costOfMinor) * permille / 1'000 / yearDays;
    }

    void setPeriods() {
        const bool stores = supply().rules.storageLimit.value > 0;
        const bool keeps = supply().rules.shelfLifeDays <= 0;
        setBounds(stores, !keeps, false);
        if (canBeKept(m_made.problem)) return;
        setBounds(stores, false, false);
        const bool byAge = !keeps && canBeKept(m_made.problem);
        if (byAge) {
            say(Severity::Warning, "orders.shelf-life", {std::int64_t{supply().rules.shelfLifeDays}});
        } else if (smallestPack() > supply().rules.storageLimit.value) {
            say(Severity::Warning, "orders.pack-over-storage", {shown(smallestPack()), shown(supply().rules.storageLimit.value)});
        } else {
            say(Severity::Warning, "orders.storage", {shown(supply().rules.storageLimit.value)});
        }
        setBounds(stores, !keeps, true);
    }

    std::int64_t smallestPack() const { return m_smallest * m_made.unit; }
    Value shown(std::int64_t amount) const { return shownAmount(amount, supply().kind); }

    /// `give` = where a bound cannot be kept, no more than it takes.
    void setBounds(bool stores, bool ages, bool give) {
        std::vector<LotPeriod>& periods = m_made.problem.periods;
        periods.clear();
        std::int64_t least = 0;
        for (int t = 0; t < m_calendar.periods(); ++t) {
            std::int64_t most = m_made.problem.purchase.mostUnits();
            const int begin = m_calendar.arrivals[size_t(t)];
            for (int day = begin; day < m_calendar.end(t); ++day) {
                least = std::max(least, ceiling(m_course.missing[size_t(day)], m_made.unit));
                if (stores) most = std::min(most, floored(room(day), m_made.unit));
            }
            if (ages) {
                const std::int64_t used = m_course.usedBy(begin + supply().rules.shelfLifeDays - 1);
                most = std::min(most, floored(used - m_course.available[size_t(begin)], m_made.unit));
            }
            if (give) most = std::max(most, least + m_smallest - 1);
            most = std::max(most, std::int64_t{least == 0 ? 0 : -1});  // what is there already may stay
            periods.push_back({int(least), int(most), holdingOf(m_made, m_calendar.end(t) - begin)});
        }
    }

    /// When the day begins and what comes on it has come.
    std::int64_t room(int day) const {
        const std::int64_t used = day > 0 ? m_course.used[size_t(day) - 1] : 0;
        return supply().rules.storageLimit.value - (m_course.available[size_t(day)] - used);
    }

    const OrderQuestion& m_question;
    const StockedSupply& m_stocked;
    const Supplier& m_supplier;
    const StockCourse& m_course;
    const OrderCalendar& m_calendar;
    int m_smallest = std::numeric_limits<int>::max();  ///< units in a pack
    SourcedSupply m_made;
};

}  // namespace

bool takesOrders(const Supplier& supplier, QDate day) { return (supplier.orderWeekdays >> (day.dayOfWeek() - 1) & 1) != 0; }

OrderCalendar calendarOf(const SourcedSupplier& supplier, QDate first, int horizon) {
    OrderCalendar calendar;
    calendar.horizon = horizon;
    const int lead = std::clamp(supplier.leadDays, 0, longestHorizon);
    int next = 0;
    for (int day = 0; day + lead < horizon; ++day) {
        if (day < next || !takesOrders(supplier.supplier, first.addDays(day))) continue;
        calendar.orders.push_back(day);
        calendar.arrivals.push_back(day + lead);
        if (day >= fineDays) next = day + 7 - day % 7;
    }
    return calendar;
}

StockCourse courseOf(const StockedSupply& supply, QDate first, int horizon) {
    StockCourse course;
    std::int64_t needed = 0, used = 0;
    for (int day = 0; day < horizon; ++day) {
        std::int64_t available = supply.onHand.value;
        for (const Arrival& arrival : supply.underWay)
            available += arrival.on <= first.addDays(day) ? arrival.amount.value : 0;
        if (day < int(supply.needed.size())) needed = std::max(needed, supply.needed[size_t(day)].value);
        if (day < int(supply.expected.size())) used = std::max(used, supply.expected[size_t(day)].value);
        course.missing.push_back(needed - available);
        course.stock.push_back(available - used);
        course.available.push_back(available);
        course.used.push_back(used);
    }
    return course;
}

std::int64_t StockCourse::usedBy(int day) const {
    if (day < 0 || used.empty()) return 0;
    const int days = int(used.size());
    return day < days ? used[size_t(day)] : used.back() + used.back() / days * (day - days + 1);
}

SourcedSupply sourced(const OrderQuestion& question, size_t supply, const Supplier& supplier, const StockCourse& course,
                      const OrderCalendar& calendar) {
    return Sourcing(question, supply, supplier, course, calendar).make();
}

OrderTerms termsOf(const Supplier& supplier) {
    const auto cost = [](const Money& money) { return std::clamp<std::int64_t>(money.minor, 0, mostEach) * costOfMinor; };
    return {cost(supplier.freight), supplier.freeFreightFrom ? cost(*supplier.freeFreightFrom) : impossible,
            cost(supplier.minimumOrder)};
}

Cost holdingOf(const SourcedSupply& supply, std::int64_t unitDays) { return std::llround(supply.holding * double(unitDays)); }

Value shownAmount(std::int64_t amount, SupplyKind kind) {
    switch (unitOf(kind)) {
        case BaseUnit::Microlitre:
            return Microlitres{amount};
        case BaseUnit::Millimetre:
            return Micrometres{amount * 1'000};
        case BaseUnit::Piece:
            break;
    }
    return amount;
}

}  // namespace laneward::ordering
