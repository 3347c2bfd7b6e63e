#include "core/supplies/next_orders.h"

#include <algorithm>

namespace laneward::ordering {

namespace {

constexpr int week = 7;

class Outlook {
public:
    Outlook(const OrderInputs& inputs, const SupplierShare& share, size_t supplier)
        : m_inputs(inputs), m_share(share), m_supplier(supplier) {}

    NextOrder of(const PlannedOrder& order) const {
        NextOrder next;
        const int on = int(m_inputs.question.first.daysTo(order.on));
        next.orderBy = orderBy();
        next.weekEarlier = weekEarlier(on);
        next.lateArrival = dayOf(on + week + lead());
        next.late = shortages(on + week + lead());
        return next;
    }

private:
    QDate dayOf(int day) const { return m_inputs.question.first.addDays(day); }
    int lead() const {
        const OrderCalendar& calendar = m_inputs.calendars[m_supplier];
        return calendar.arrivals.front() - calendar.orders.front();
    }
    const StockCourse& course(size_t supply) const { return m_inputs.courses[supply]; }

    /// Never before the first day: what is late already is best ordered at once. Days on which no order can help any more do not
    /// count.
    QDate orderBy() const {
        const int earliest = m_inputs.calendars[m_supplier].arrivals.front();
        int needed = m_inputs.horizon;
        for (size_t i : m_share.supplies) {
            const std::vector<std::int64_t>& missing = course(i).missing;
            const auto from = missing.begin() + std::min(earliest, int(missing.size()));
            const auto shortDay = std::find_if(from, missing.end(), [](std::int64_t m) { return m > 0; });
            needed = std::min(needed, int(shortDay - missing.begin()));
        }
        if (needed >= m_inputs.horizon) return {};
        int by = needed - lead();
        while (by >= 0 && !takesOrders(m_inputs.question.suppliers[m_supplier].supplier, dayOf(by)))
            --by;
        return dayOf(by >= 0 ? by : m_inputs.calendars[m_supplier].orders.front());
    }

    std::optional<Money> weekEarlier(int on) const {
        const int earlier = on - week;
        if (earlier < 0) return std::nullopt;
        Cost cost = 0;
        const OrderCalendar& calendar = m_inputs.calendars[m_supplier];
        const auto t = size_t(std::find(calendar.orders.begin(), calendar.orders.end(), on) - calendar.orders.begin());
        for (size_t k = 0; k < m_share.supplies.size(); ++k) {
            const SourcedSupply& way = m_inputs.ways[m_share.supplies[k]].at(m_supplier);
            const int lot = m_share.plan.lots[k][t];
            if (lot == 0) continue;
            for (size_t before = 0; before < t; ++before) {
                if (calendar.orders[before] >= earlier && lot > way.problem.periods[before].most) return std::nullopt;
            }
            cost += holdingOf(way, std::int64_t{lot} * week);
        }
        return Money{(cost + costOfMinor / 2) / costOfMinor, m_inputs.question.currency};
    }

    std::vector<Shortage> shortages(int arrival) const {
        std::vector<Shortage> all;
        for (size_t i : m_share.supplies) {
            const std::vector<std::int64_t>& missing = course(i).missing;
            Shortage found{m_inputs.question.supplies[i].supply.id, {}, {}};
            for (int day = 0; day < std::min(arrival, m_inputs.horizon); ++day) {
                if (missing[size_t(day)] <= 0) continue;
                if (!found.from.isValid()) found.from = dayOf(day);
                found.missing.value = std::max(found.missing.value, missing[size_t(day)]);
            }
            if (found.from.isValid()) all.push_back(std::move(found));
        }
        return all;
    }

    const OrderInputs& m_inputs;
    const SupplierShare& m_share;
    size_t m_supplier;
};

}  // namespace

int coveredUntil(const StockCourse& course, std::int64_t bought) {
    int day = 0;
    while (day < int(course.missing.size()) && course.missing[size_t(day)] <= bought)
        ++day;
    return day - 1;
}

std::vector<NextOrder> nextOrders(const OrderInputs& inputs, const Assignment& assignment,
                                  const std::vector<PlannedOrder>& orders) {
    std::vector<NextOrder> all;
    for (size_t s = 0; s < assignment.shares.size(); ++s) {
        const SupplierId& id = inputs.question.suppliers[s].supplier.id;
        const auto first = std::find_if(orders.begin(), orders.end(), [&](const PlannedOrder& o) { return o.supplier == id; });
        if (first == orders.end()) continue;
        NextOrder next = Outlook(inputs, assignment.shares[s], s).of(*first);
        next.order = size_t(first - orders.begin());
        all.push_back(std::move(next));
    }
    return all;
}

}  // namespace laneward::ordering
