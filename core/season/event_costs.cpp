#include "core/season/event_costs.h"

#include "core/season/output_drift.h"

#include <algorithm>
#include <map>

namespace laneward {

namespace {

/// The n-th of `count` shares of a whole: they differ by one at most and add up to it.
std::int64_t share(std::int64_t whole, std::int64_t count, std::int64_t n) { return whole * (n + 1) / count - whole * n / count; }

JobUse share(const JobUse& use, std::int64_t count, std::int64_t n) {
    JobUse part;
    for (size_t slot = 0; slot < use.conditioner.size(); ++slot)
        part.conditioner[slot] = {share(use.conditioner[slot].value, count, n)};
    part.cleaner = {share(use.cleaner.value, count, n)};
    part.waste = {share(use.waste.value, count, n)};
    part.laneRuns = int(share(use.laneRuns, count, n));
    return part;
}

LaneCare share(const LaneCare& care, std::int64_t count, std::int64_t n) {
    return {{share(care.time.value, count, n)}, share(care.use, count, n)};
}

using EventKey = std::tuple<Instant, QString, SeriesId, QDate, QTime>;

EventKey keyOf(const Need& need) { return {need.playBegins, need.title, need.series, need.original.date, need.original.time}; }

bool counts(const Job& job) { return job.state != JobState::Dropped && !job.lanes.empty(); }

class Sharing {
public:
    Sharing(const SeasonState& season, const Plan& plan) : m_season(season), m_plan(plan) {}

    EventCosts run() {
        for (const Job& job : m_plan.jobs) {
            if (counts(job)) shareJob(job);
        }
        EventCosts costs{{}, m_nobody};
        for (auto& [key, event] : m_events) {
            price(event);
            costs.events.push_back(std::move(event));
        }
        return costs;
    }

private:
    /// Time between the bay and the lanes belongs to the outing: its jobs' lanes share it.
    Seconds timeOf(const Job& job) const {
        const Outing* outing = outingOf(job);
        if (!outing) return job.time.length();
        Seconds whole = outing->time.length();
        std::int64_t before = 0;
        std::int64_t lanes = 0;
        for (const Job& other : m_plan.jobs) {
            if (!counts(other) || outingOf(other) != outing) continue;
            if (&other == &job) before = lanes;
            lanes += std::int64_t(other.lanes.size());
        }
        Seconds time;
        for (std::int64_t n = before; n < before + std::int64_t(job.lanes.size()); ++n)
            time += Seconds{share(whole.value, lanes, n)};
        return time;
    }

    const Outing* outingOf(const Job& job) const {
        const auto day =
            std::find_if(m_plan.days.begin(), m_plan.days.end(), [&](const DayPlan& d) { return d.date == job.date; });
        if (day == m_plan.days.end()) return nullptr;
        const auto outing = std::find_if(day->outings.begin(), day->outings.end(), [&](const Outing& o) {
            return std::find(o.jobs.begin(), o.jobs.end(), job.id) != o.jobs.end();
        });
        return outing == day->outings.end() ? nullptr : &*outing;
    }

    void shareJob(const Job& job) {
        const LaneCare whole{timeOf(job), job.use};
        for (size_t n = 0; n < job.lanes.size(); ++n)
            shareLane(job, job.lanes[n].lane, share(whole, std::int64_t(job.lanes.size()), std::int64_t(n)));
    }

    void shareLane(const Job& job, int lane, const LaneCare& care) {
        std::vector<const Need*> needs;
        for (const Need& need : job.neededBy) {
            if (need.lanes.contains(lane)) needs.push_back(&need);
        }
        if (needs.empty()) m_nobody.add(care);
        for (size_t n = 0; n < needs.size(); ++n)
            give(*needs[n], job.machine, lane, share(care, std::int64_t(needs.size()), std::int64_t(n)));
    }

    void give(const Need& need, const MachineId& machine, int lane, const LaneCare& care) {
        EventCost& event = m_events[keyOf(need)];
        event.series = need.series;
        event.original = need.original;
        event.title = need.title;
        event.playBegins = need.playBegins;
        event.lanes.insert(lane);
        event.care.add(care);
        auto own =
            std::find_if(event.byMachine.begin(), event.byMachine.end(), [&](const auto& m) { return m.first == machine; });
        if (own == event.byMachine.end()) own = event.byMachine.insert(own, {machine, {}});
        LaneCare sum{{}, own->second};
        sum.add(care);
        own->second = sum.use;
    }

    void price(EventCost& event) const {
        for (const auto& [id, use] : event.byMachine) {
            const Machine* machine = findMachine(m_season.centre, id);
            for (int product = 0; machine && product < products; ++product) {
                const Microlitres used = product == cleanerProduct ? use.cleaner : use.conditioner[size_t(product)];
                if (used > Microlitres{0}) addPrice(event, productName(*machine, product), used);
            }
        }
    }

    void addPrice(EventCost& event, const QString& product, Microlitres used) const {
        const Supply* supply = supplyNamed(m_season.supplies, product);
        const auto unit = supply ? unitPriceOf(m_season.offers, supply->id) : std::nullopt;
        if (!unit && !event.withoutPrice.contains(product)) event.withoutPrice << product;
        if (unit) event.product = event.product + costOf({used.value / (1 + supply->waterParts)}, *unit);
    }

    const SeasonState& m_season;
    const Plan& m_plan;
    std::map<EventKey, EventCost> m_events;
    LaneCare m_nobody;
};

}  // namespace

void LaneCare::add(const LaneCare& more) {
    time += more.time;
    for (size_t slot = 0; slot < use.conditioner.size(); ++slot)
        use.conditioner[slot] += more.use.conditioner[slot];
    use.cleaner += more.use.cleaner;
    use.waste += more.use.waste;
    use.laneRuns += more.use.laneRuns;
}

std::optional<UnitPrice> unitPriceOf(const std::vector<Offer>& offers, const SupplyId& supply) {
    std::optional<UnitPrice> best;
    for (const Offer& offer : offers) {
        if (offer.retired || offer.supply != supply || offer.prices.empty() || offer.pack <= Amount{0}) continue;
        const UnitPrice price{offer.prices.front().each, offer.pack};
        const auto cheaper = [](const UnitPrice& a, const UnitPrice& b) {
            return double(a.price.minor) * double(b.per.value) < double(b.price.minor) * double(a.per.value);
        };
        if (!best || cheaper(price, *best)) best = price;
    }
    return best;
}

Money costOf(Amount amount, const UnitPrice& price) {
    // Beyond 64 bits only for amounts and prices that importers refuse.
    return {(amount.value * price.price.minor + price.per.value / 2) / price.per.value, price.price.currency};
}

EventCosts eventCosts(const SeasonState& season, const Plan& plan) { return Sharing(season, plan).run(); }

}  // namespace laneward
