#include "app/cli/command_list.h"
#include "app/paper/order_painter.h"
#include "core/documents/supply_words.h"
#include "core/season/past_forecasts.h"
#include "core/storage/booked.h"

#include <algorithm>

namespace laneward::cli {

namespace {

constexpr int usualDays = 182;
constexpr int mostDays = 731;
// Eight nodes a day: exact treatment counts and a valid placement.
constexpr std::int64_t planNodes = 8 * nodesFor;

struct Asked {
    Loaded loaded;
    SupplyHistory history;
    SupplyLearning learned;
    Plan ahead;
    SupplyOutlook outlook;
};

OutlookQuestion questionOf(const Asked& asked) {
    return {asked.loaded.season, asked.ahead, asked.learned, asked.history.stock.movements, asked.loaded.now};
}

Result<Asked> ask(const Call& call) {
    Result<Loaded> loaded = load(call, Access::ReadOnly);
    if (!loaded) return loaded.error();
    const QDate today = dateOf(loaded->season.centre, loaded->now);
    const Result<QDate> until = dateOption(call, "until", today.addDays(usualDays - 1));
    if (!until) return until.error();
    const qint64 days = today.daysTo(*until) + 1;
    if (days < 1 || days > mostDays) return wrongUsage("cli.bad-until", until->toString(Qt::ISODate), {std::int64_t{mostDays}});
    Asked asked{*std::move(loaded), {}, {}, {}, {}};
    const SeasonState& season = asked.loaded.season;
    Result<SupplyHistory> history = supplyHistory(*asked.loaded.store, season, asked.loaded.now);
    if (!history) return history.error();
    asked.history = *std::move(history);
    asked.ahead = plan(planningState(season, asked.loaded.now), asked.loaded.now, {today, *until}, planNodes);
    asked.learned = learnSupplies(season, asked.history);
    OutlookRule rule;
    rule.days = int(days);
    asked.outlook = *supplyOutlook(questionOf(asked), rule);
    return asked;
}

Result<PastScores> scoresOf(const Asked& asked) {
    const auto kept = asked.loaded.store->keptForecasts(asked.history.days);
    if (!kept) return kept.error();
    return scoresOf(asked.loaded.season, asked.history, *kept);
}

/// The forecast of today, once, to be scored later. A clock that was given on the command line makes none: that day would have
/// the forecast of another. Nor does a centre that is only read.
Outcome keep(const Call& call, const Asked& asked) {
    const QDate today = asked.outlook.today;
    const auto known = asked.loaded.store->keptForecasts({today, today});
    if (!known) return known.error();
    if (call.options.isSet("now") || !known->empty()) return Nothing{};
    const std::optional<KeptForecast> forecast = forecastToKeep(questionOf(asked));
    if (!forecast) return Nothing{};
    const Result<std::unique_ptr<Store>> store = openStore(call, Access::ReadWrite);
    if (!store) return store.error();
    return (*store)->isReadOnly() ? Outcome(Nothing{}) : (*store)->keepForecast(*forecast);
}

/// Leaves the proposals to one supplier, by id or name.
Outcome keepOnly(const QString& name, const SeasonState& season, SupplyOutlook& outlook) {
    const auto supplier = std::find_if(season.suppliers.begin(), season.suppliers.end(),
                                       [&](const Supplier& s) { return s.name == name || s.id.value == name; });
    if (supplier == season.suppliers.end()) return wrongUsage("cli.supplier-unknown", name);
    for (size_t n = outlook.plan.next.size(); n-- > 0;) {
        if (outlook.plan.orders[outlook.plan.next[n].order].supplier == supplier->id) continue;
        outlook.plan.next.erase(outlook.plan.next.begin() + std::ptrdiff_t(n));
        outlook.risks.erase(outlook.risks.begin() + std::ptrdiff_t(n));
    }
    return Nothing{};
}

Outcome writePdf(const Call& call, const Asked& asked) {
    std::vector<PurchaseOrder> orders;
    for (const NextOrder& next : asked.outlook.plan.next) {
        const Order draft = draftOf(asked.outlook.plan.orders[next.order], asked.loaded.season, asked.outlook.today);
        orders.push_back(purchaseOrder(asked.loaded.season, draft));
    }
    if (orders.empty()) return Error{ErrorKind::Refused, {Severity::Note, "cli.nothing-to-order", {}, {}}};
    const bool letter = asked.loaded.season.centre.facts.settings.letterPaper;
    return writeOrdersPdf(call.options.value("pdf"), orders, asked.loaded.speech, letter ? PaperSize::Letter : PaperSize::A4);
}

}  // namespace

Status forecast(const Call& call) {
    const Outcome arguments = noArguments(call);
    if (!arguments) return arguments.error();
    const Result<QString> format = formatOf(call, {"text", "json", "csv"});
    if (!format) return format.error();
    const Result<Asked> asked = ask(call);
    if (!asked) return asked.error();
    const SeasonState& season = asked->loaded.season;
    if (const Outcome kept = keep(call, *asked); !kept) return kept.error();
    const bool due = !dueOrders(asked->outlook.plan, asked->outlook.today).empty();
    if (call.options.isSet("due")) {
        if (due) print(call, supplyHeadline(asked->outlook, season, asked->loaded.speech) + "\n");
        return due ? 1 : 0;
    }
    const Result<PastScores> scores = scoresOf(*asked);
    if (!scores) return scores.error();
    if (*format == "json")
        print(call, supplyJson(asked->outlook, *scores, season));
    else if (*format == "csv")
        print(call, supplyCsv(asked->outlook, season));
    else
        print(call, supplyText(asked->outlook, *scores, season, asked->loaded.speech));
    return 0;
}

Status order(const Call& call) {
    const Outcome arguments = noArguments(call);
    if (!arguments) return arguments.error();
    const Result<QString> format = formatOf(call, {"text", "json"});
    if (!format) return format.error();
    Result<Asked> asked = ask(call);
    if (!asked) return asked.error();
    if (call.options.isSet("supplier")) {
        const Outcome kept = keepOnly(call.options.value("supplier"), asked->loaded.season, asked->outlook);
        if (!kept) return kept.error();
    }
    if (call.options.isSet("pdf")) {
        const Outcome written = writePdf(call, *asked);
        if (!written) return written.error();
    }
    if (*format == "json")
        print(call, ordersJson(asked->outlook, asked->loaded.season));
    else if (call.options.isSet("format") || !call.options.isSet("pdf"))
        print(call, ordersText(asked->outlook, asked->loaded.season, asked->loaded.speech));
    return 0;
}

}  // namespace laneward::cli
