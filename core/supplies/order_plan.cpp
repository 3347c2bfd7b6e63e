#include "core/supplies/order_plan.h"

#include "core/supplies/next_orders.h"
#include "core/supplies/order_sources.h"

#include <algorithm>

namespace laneward {

using namespace ordering;

namespace {

OrderInputs inputsOf(const OrderQuestion& asked) {
    OrderInputs inputs;
    inputs.question = asked;
    OrderQuestion& question = inputs.question;
    std::sort(question.supplies.begin(), question.supplies.end(),
              [](const StockedSupply& a, const StockedSupply& b) { return a.supply.id < b.supply.id; });
    std::sort(question.suppliers.begin(), question.suppliers.end(),
              [](const SourcedSupplier& a, const SourcedSupplier& b) { return a.supplier.id < b.supplier.id; });
    for (const StockedSupply& supply : question.supplies)
        inputs.horizon = std::max(inputs.horizon, int(std::min<size_t>(supply.needed.size(), size_t(longestHorizon))));
    for (const SourcedSupplier& supplier : question.suppliers)
        inputs.calendars.push_back(calendarOf(supplier, question.first, inputs.horizon));
    for (const StockedSupply& supply : question.supplies)
        inputs.courses.push_back(courseOf(supply, question.first, inputs.horizon));
    return inputs;
}

Cost rounded(Cost cost) { return (cost + (cost < 0 ? -1 : 1) * costOfMinor / 2) / costOfMinor; }

bool leavesLotsOut(const Finding& finding) {
    return finding.rule == "orders.packs-not-mixed" || finding.rule == "orders.several-packs";
}

class Planning {
public:
    explicit Planning(const OrderQuestion& asked) : m_inputs(inputsOf(asked)) {}

    OrderPlan plan(std::int64_t effort, const std::function<bool()>& cancelled) {
        findWays();
        m_assignment = bestAssignment(m_inputs, effort, cancelled);
        for (size_t s = 0; s < m_assignment.shares.size(); ++s)
            writeShare(s);
        std::stable_sort(m_plan.orders.begin(), m_plan.orders.end(), [](const PlannedOrder& a, const PlannedOrder& b) {
            return std::tie(a.on, a.supplier) < std::tie(b.on, b.supplier);
        });
        m_plan.next = nextOrders(m_inputs, m_assignment, m_plan.orders);
        sumUp();
        writeFindings();
        return std::move(m_plan);
    }

private:
    Money money(Cost minor) const { return {minor, m_inputs.question.currency}; }
    const Supply& supply(size_t i) const { return m_inputs.question.supplies[i].supply; }
    const Supplier& supplier(size_t s) const { return m_inputs.question.suppliers[s].supplier; }
    void say(Severity severity, const char* rule, const QString& subject, std::vector<Value> values) {
        m_plan.findings.push_back({severity, rule, subject, std::move(values)});
    }

    void findWays() {
        m_inputs.ways.resize(m_inputs.question.supplies.size());
        for (size_t i = 0; i < m_inputs.ways.size(); ++i) {
            if (supply(i).retired) continue;
            std::vector<Finding> reasons;
            for (size_t s = 0; s < m_inputs.question.suppliers.size(); ++s) {
                if (supplier(s).retired) continue;
                SourcedSupply way = sourced(m_inputs.question, i, supplier(s), m_inputs.courses[i], m_inputs.calendars[s]);
                if (way.isPossible()) {
                    m_inputs.ways[i].emplace(s, std::move(way));
                } else {
                    if (!way.offers.empty() && m_inputs.calendars[s].periods() == 0)
                        reasons.push_back({Severity::Warning, "orders.no-days", supply(i).name, {supplier(s).name}});
                    reasons.insert(reasons.end(), way.findings.begin(), way.findings.end());
                }
            }
            if (!m_inputs.ways[i].empty() || !needsAny(i)) continue;
            m_plan.findings.insert(m_plan.findings.end(), reasons.begin(), reasons.end());
            say(Severity::Fault, "orders.no-offer", supply(i).name, {firstShort(i, m_inputs.horizon)});
        }
    }

    bool needsAny(size_t i) const {
        const std::vector<std::int64_t>& missing = m_inputs.courses[i].missing;
        return std::any_of(missing.begin(), missing.end(), [](std::int64_t amount) { return amount > 0; });
    }

    /// The first day before `end` on which something is missing; invalid = none.
    QDate firstShort(size_t i, int end) const {
        for (int day = 0; day < end; ++day) {
            if (m_inputs.courses[i].missing[size_t(day)] > 0) return m_inputs.question.first.addDays(day);
        }
        return {};
    }

    void writeShare(size_t s) {
        const SupplierShare& share = m_assignment.shares[s];
        const OrderCalendar& calendar = m_inputs.calendars[s];
        if (!share.plan.isFound()) return;
        std::vector<int> bought(share.supplies.size(), 0);
        for (int t = 0; t < calendar.periods(); ++t) {
            PlannedOrder order{supplier(s).id,
                               m_inputs.question.first.addDays(calendar.orders[size_t(t)]),
                               m_inputs.question.first.addDays(calendar.arrivals[size_t(t)]),
                               {},
                               money(0),
                               money(0)};
            for (size_t k = 0; k < share.supplies.size(); ++k) {
                const SourcedSupply& way = m_inputs.ways[share.supplies[k]].at(s);
                const int lot = share.plan.lots[k][size_t(t)];
                bought[k] += lot;
                m_holding += way.problem.periods[size_t(t)].holding * bought[k];
                if (lot > 0) writeLines(way, lot, bought[k], order);
            }
            if (order.lines.empty()) continue;
            OrderTerms terms = termsOf(supplier(s));
            terms.minimum = 0;
            order.freight = money(freightOf(terms, order.goods.minor * costOfMinor) / costOfMinor);
            m_plan.orders.push_back(std::move(order));
        }
    }

    void writeLines(const SourcedSupply& way, int lot, int bought, PlannedOrder& order) const {
        const std::vector<int> packs = way.problem.purchase.packsFor(lot);
        const QDate covers = m_inputs.question.first.addDays(coveredUntil(m_inputs.courses[way.supply], bought * way.unit));
        for (size_t o = 0; o < packs.size(); ++o) {
            if (packs[o] == 0) continue;
            PlannedLine line{supply(way.supply).id, way.offers[o]->id, packs[o] * way.together[o], {}, {}, covers};
            for (const PriceBreak& price : way.offers[o]->prices)
                line.each = line.packs >= price.packs ? money(price.each.minor) : line.each;
            line.cost = line.each * line.packs;
            order.goods = order.goods + line.cost;
            order.lines.push_back(std::move(line));
        }
    }

    /// Of what is there without any order, at the rate that the plan reckons with; may be below 0 where it would run out.
    Cost heldAnyway(size_t i, size_t s) const {
        const SourcedSupply& way = m_inputs.ways[i].at(s);
        double amount = 0;
        for (std::int64_t stock : m_inputs.courses[i].stock)
            amount += double(stock);
        return Cost(amount / double(way.unit) * way.holding);
    }

    void sumUp() {
        for (size_t i = 0; i < m_assignment.supplier.size(); ++i) {
            if (m_assignment.supplier[i] != nowhere) m_holding += heldAnyway(i, m_assignment.supplier[i]);
        }
        m_plan.goods = m_plan.freight = money(0);
        for (const PlannedOrder& order : m_plan.orders) {
            m_plan.goods = m_plan.goods + order.goods;
            m_plan.freight = m_plan.freight + order.freight;
        }
        m_plan.holding = money(std::max<Cost>(0, rounded(m_holding)));
        m_plan.total = m_plan.goods + m_plan.freight + m_plan.holding;
        const Cost gap = std::max<Cost>(0, m_assignment.cost - m_assignment.lowerBound);
        m_plan.lowerBound = money(m_plan.total.minor - (gap + costOfMinor - 1) / costOfMinor);
        m_plan.proven = gap == 0;
        m_plan.stopped = m_assignment.stopped;
    }

    void writeFindings() {
        for (size_t i = 0; i < m_assignment.supplier.size(); ++i) {
            const size_t s = m_assignment.supplier[i];
            if (s == nowhere) continue;
            const std::vector<Finding>& own = m_inputs.ways[i].at(s).findings;
            m_plan.findings.insert(m_plan.findings.end(), own.begin(), own.end());
            // The bound holds for the lots that were looked at; other lots may cost less.
            if (std::any_of(own.begin(), own.end(), leavesLotsOut)) m_plan.proven = false;
            const int arrival = m_inputs.calendars[s].arrivals.front();
            const QDate day = firstShort(i, arrival);
            if (day.isValid())
                say(Severity::Warning, "orders.too-late", supply(i).name, {day, m_inputs.question.first.addDays(arrival)});
        }
        for (size_t i : m_assignment.fixed)
            say(Severity::Note, "orders.source-fixed", supply(i).name, {supplier(m_assignment.supplier[i]).name});
        for (size_t s = 0; s < m_assignment.shares.size(); ++s) {
            if (m_assignment.shares[s].belowMinimum) say(Severity::Warning, "orders.below-minimum", supplier(s).name, {});
        }
    }

    OrderInputs m_inputs;
    Assignment m_assignment;
    OrderPlan m_plan;
    Cost m_holding = 0;
};

}  // namespace

OrderPlan planOrders(const OrderQuestion& question, std::int64_t effort, const std::function<bool()>& cancelled) {
    return Planning(question).plan(effort, cancelled);
}

}  // namespace laneward
