#include "core/season/past_forecasts.h"
#include "core/season/service_outlook.h"

#include "core/supplies/stock_needs.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double earlyLevel = 0.05;
constexpr double likelyLevel = 0.5;
constexpr double lateLevel = 0.95;
constexpr size_t usualDays = 28;  ///< over which a usual week is taken

std::optional<QDate> dateAfter(QDate today, std::optional<int> day) {
    return day ? std::optional(today.addDays(*day)) : std::nullopt;
}

class Outlook {
public:
    Outlook(const OutlookQuestion& question, const OutlookRule& rule)
        : m_question(question),
          m_season(question.season),
          m_today(dateOf(question.season.centre, question.now)),
          m_days(std::clamp(int(m_today.daysTo(question.ahead.range.last)) + 1, 1, rule.days)),
          m_rule(rule),
          m_parts(partsAhead({question.season, question.ahead, question.now}, m_days)) {}

    std::optional<SupplyOutlook> run(const ForecastWatch& watch) {
        SupplyOutlook outlook;
        outlook.today = m_today;
        outlook.days = m_days;
        outlook.open = openOrders(m_season, m_question.learned, m_question.receipts, m_today);
        OrderQuestion orders{m_today, m_season.centre.facts.settings.currency, {}, suppliers(), m_season.offers};
        const auto kept = keptSupplies();
        for (size_t n = 0; n < kept.size(); ++n) {
            ForecastWatch part = watch;
            if (watch.progress) part.progress = [&](double done) { watch.progress((double(n) + done) / double(kept.size())); };
            auto line = lineOf(*kept[n], outlook.open, orders, part);
            if (!line) return std::nullopt;
            outlook.lines.push_back(std::move(*line));
        }
        outlook.plan = planOrders(
            orders, m_rule.orderEffort, watch.cancelled ? watch.cancelled : [] { return false; });
        if (outlook.plan.stopped) return std::nullopt;
        addOrders(outlook);
        sort(outlook.lines);
        return outlook;
    }

    std::optional<KeptForecast> use(const ForecastRule& rule, const ForecastWatch& watch) const {
        KeptForecast all{m_today, {}};
        for (const Supply* supply : keptSupplies()) {
            const auto forecast = forecastStock(outlookOf(*supply), rule, watch);
            if (!forecast) return std::nullopt;
            all.supplies.push_back(kept(supply->id, *forecast, m_days));
        }
        return all;
    }

    int days() const { return m_days; }

private:
    std::vector<const Supply*> keptSupplies() const {
        std::vector<const Supply*> kept;
        for (const Supply& supply : m_season.supplies) {
            if (!supply.retired) kept.push_back(&supply);
        }
        return kept;
    }

    std::vector<SourcedSupplier> suppliers() const {
        std::vector<SourcedSupplier> all;
        for (const Supplier& supplier : m_season.suppliers) {
            if (supplier.retired) continue;
            all.push_back({supplier, leadOf(supplier).at(sureArrival)});
        }
        return all;
    }

    DayChances leadOf(const Supplier& supplier) const {
        const auto& learned = m_question.learned.suppliers;
        const auto known = std::find_if(learned.begin(), learned.end(), [&](const auto& s) { return s.supplier == supplier.id; });
        return leadTimes(known == learned.end() ? std::vector<int>{} : known->leadDays, supplier.usualLeadDays);
    }

    int dayOf(const Job& job) const { return std::max(0, int(m_today.daysTo(job.date))); }

    /// What the plan's jobs take from one machine's tank by the recipe, day by day.
    std::vector<Amount> nominalOf(const Machine& machine, int product) const {
        std::vector<Amount> days(size_t(m_days), Amount{0});
        for (const Job& job : m_question.ahead.jobs) {
            if (!isAhead(job) || job.machine != machine.id || dayOf(job) >= m_days || job.date < m_today.addDays(-1)) continue;
            days[size_t(dayOf(job))] += takes(machine, product, job);
        }
        return days;
    }

    Amount takes(const Machine& machine, int product, const Job& job) const {
        const Pattern* pattern = job.pattern ? findPattern(m_season.patterns, *job.pattern) : nullptr;
        return {nominalUse(machine, product, job.treatment, pattern, job.use.laneRuns).value};
    }

    std::vector<Amount> countedUse(const Supply& supply) const {
        std::vector<Amount> days(size_t(m_days), supply.basis == UseBasis::PerDay ? supply.usualUse : Amount{0});
        if (supply.basis != UseBasis::PerLaneCleaned) return days;
        for (const Job& job : m_question.ahead.jobs) {
            if (isAhead(job) && dayOf(job) < m_days && job.treatment != Treatment::ConditionOnly)
                days[size_t(dayOf(job))] += supply.usualUse * job.use.laneRuns;
        }
        return days;
    }

    std::vector<PlannedUse> plannedUse(const Supply& supply) const {
        std::vector<PlannedUse> planned;
        for (const ProductUsage& one : m_question.learned.machines) {
            const Machine* machine = findMachine(m_season.centre, one.machine);
            if (!machine || one.name != supply.name) continue;
            planned.push_back({one.usage.rate(), nominalOf(*machine, one.product), 1.0 / (1 + supply.waterParts)});
        }
        const SupplyLearned* learned = learnedOf(supply);
        if (learned && learned->counted) planned.push_back({learned->counted->rate(), countedUse(supply), 1});
        return planned;
    }

    const SupplyLearned* learnedOf(const Supply& supply) const {
        const auto& all = m_question.learned.supplies;
        const auto found = std::find_if(all.begin(), all.end(), [&](const SupplyLearned& s) { return s.supply == supply.id; });
        return found == all.end() ? nullptr : &*found;
    }

    SupplyLine onHandOf(const Supply& supply) const {
        SupplyLine line;
        line.supply = supply.id;
        for (const auto& [key, amount] : m_season.stock.all()) {
            if (key.supply != supply.id) continue;
            Amount& part = key.place.kind == Place::Kind::Shelf  ? line.sealed
                           : key.place.kind == Place::Kind::Open ? line.open
                                                                 : line.inTanks;
            part += amount;
        }
        return line;
    }

    /// Without deliveries.
    StockOutlook outlookOf(const Supply& supply) const {
        StockOutlook outlook{supply.id, onHandOf(supply).onHand(), m_days, plannedUse(supply), {}, {}, {}};
        if (const SupplyLearned* learned = learnedOf(supply)) outlook.chance = learned->chance;
        const auto parts = m_parts.find(supply.id);
        if (supply.basis == UseBasis::WhenServiced && parts != m_parts.end()) outlook.known = parts->second;
        return outlook;
    }

    std::optional<SupplyLine> lineOf(const Supply& supply, const std::vector<OpenOrder>& open, OrderQuestion& orders,
                                     const ForecastWatch& watch) const {
        SupplyLine line = onHandOf(supply);
        StockOutlook outlook = outlookOf(supply);
        for (const LearnedRate& rate : outlook.chance)
            line.chancePerDay += rate.comesIn ? -rate.meanPerDay() : rate.meanPerDay();
        StockedSupply stocked{supply, line.onHand(), {}, {}, {}};
        for (const OpenOrder& order : open) {
            for (const auto& [id, amount] : order.missing) {
                if (id != supply.id) continue;
                outlook.deliveries.push_back({amount, order.arrival});
                stocked.underWay.push_back({m_today.addDays(order.arrival.at(sureArrival)), amount});
            }
        }
        const ForecastRule rule = orderingRule(m_days, supply.rules, m_rule.paths);
        const auto forecast = forecastStock(outlook, rule, watch);
        if (!forecast) return std::nullopt;
        line.forecast = *forecast;
        line.outEarly = dateAfter(m_today, forecast->runOut(earlyLevel));
        line.outLikely = dateAfter(m_today, forecast->runOut(likelyLevel));
        line.outLate = dateAfter(m_today, forecast->runOut(lateLevel));
        StockNeeds needs = needsOf(*forecast, rule, supply.rules);
        const size_t weeks = std::min<size_t>(usualDays, needs.expected.size());
        line.aWeek = {needs.expected[weeks - 1].value * 7 / std::int64_t(weeks)};
        stocked.needed = std::move(needs.needed);
        stocked.expected = std::move(needs.expected);
        orders.supplies.push_back(std::move(stocked));
        return line;
    }

    void addOrders(SupplyOutlook& outlook) const {
        for (const NextOrder& next : outlook.plan.next) {
            std::vector<OrderRisk> risks;
            const PlannedOrder& order = outlook.plan.orders[next.order];
            for (const PlannedLine& planned : order.lines) {
                const auto line = std::find_if(outlook.lines.begin(), outlook.lines.end(),
                                               [&](const SupplyLine& l) { return l.supply == planned.supply; });
                if (line == outlook.lines.end()) continue;
                if (!line->orderBy && next.orderBy.isValid()) line->orderBy = next.orderBy;
                risks.push_back({planned.supply, outBefore(*line, order.arrives), outBefore(*line, next.lateArrival)});
            }
            outlook.risks.push_back(std::move(risks));
        }
    }

    double outBefore(const SupplyLine& line, QDate date) const {
        if (!date.isValid()) return 0;
        return line.forecast.outBefore(std::clamp(int(m_today.daysTo(date)), 0, m_days));
    }

    void sort(std::vector<SupplyLine>& lines) const {
        const QDate never = m_today.addDays(100'000);
        const auto order = [&](const SupplyLine& line) {
            return std::tuple(line.outEarly.value_or(never), line.outLikely.value_or(never), line.supply);
        };
        std::stable_sort(lines.begin(), lines.end(),
                         [&](const SupplyLine& a, const SupplyLine& b) { return order(a) < order(b); });
    }

    const OutlookQuestion& m_question;
    const SeasonState& m_season;
    QDate m_today;
    int m_days;
    OutlookRule m_rule;
    std::map<SupplyId, std::vector<Amount>> m_parts;  ///< that duties take
};

}  // namespace

std::optional<SupplyOutlook> supplyOutlook(const OutlookQuestion& question, const OutlookRule& rule, const ForecastWatch& watch) {
    return Outlook(question, rule).run(watch);
}

std::optional<KeptForecast> forecastToKeep(const OutlookQuestion& question, const ForecastRule& rule,
                                           const std::function<bool()>& cancelled) {
    const Centre& centre = question.season.centre;
    const Instant begin = dayOf(centre, dateOf(centre, question.now)).begin;
    const auto isToday = [&](const RunLog& run) { return begin <= run.time.end && run.time.end <= question.now; };
    if (std::any_of(question.season.runs.begin(), question.season.runs.end(), isToday)) return std::nullopt;
    OutlookRule days;
    days.days = keptHorizons.back();
    const Outlook outlook(question, days);
    if (outlook.days() < keptHorizons.back()) return std::nullopt;
    std::optional<KeptForecast> forecast = outlook.use(rule, {cancelled, {}});
    return forecast && !forecast->supplies.empty() ? forecast : std::nullopt;
}

}  // namespace laneward
