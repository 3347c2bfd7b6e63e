#include "app/cli/command_list.h"
#include "core/documents/season_words.h"
#include "core/documents/writers.h"

namespace laneward::cli {

namespace {

constexpr int longestListed = 31;  // days; beyond that text sums up the season, and JSON and CSV have every job

/// What is wrong stays in sight, however long the range.
QString seasonPage(const Plan& made, const State& state, const Speech& speech) {
    Plan wrong = made;
    wrong.days.clear();
    for (const DayPlan& day : made.days) {
        if (day.objective.unmet > 0 || day.objective.late_s > 0) wrong.days.push_back(day);
    }
    return seasonText(seasonFigures(state, made), speech) + u'\n' + planText(wrong, state, speech);
}

}  // namespace

Status plan(const Call& call) {
    const Outcome arguments = noArguments(call);
    if (!arguments) return arguments.error();
    const Result<QString> format = formatOf(call, {"text", "json", "csv"});
    if (!format) return format.error();
    const Result<Loaded> loaded = load(call, Access::ReadOnly);
    if (!loaded) return loaded.error();
    const Result<DateRange> range = rangeOf(call, dateOf(loaded->season.centre, loaded->now), 1);
    if (!range) return range.error();
    const State state = planningState(loaded->season, loaded->now);
    const Plan made = laneward::plan(state, loaded->now, *range);
    if (*format == "json") {
        QJsonObject json = planJson(made, loaded->speech);
        json["season"] = seasonJson(seasonFigures(state, made));
        print(call, json);
    } else if (*format == "csv") {
        print(call, planCsv(made, loaded->speech));
    } else if (range->days() > longestListed) {
        print(call, seasonPage(made, state, loaded->speech));
    } else {
        print(call, planText(made, state, loaded->speech));
    }
    return call.options.isSet("strict") && !made.unmet.empty() ? 1 : 0;
}

}  // namespace laneward::cli
