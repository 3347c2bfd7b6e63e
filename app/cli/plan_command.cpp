#include "app/cli/command_list.h"
#include "core/documents/writers.h"

namespace laneward::cli {

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
        print(call, planJson(made, loaded->speech));
    } else if (*format == "csv") {
        print(call, planCsv(made, loaded->speech));
    } else {
        print(call, planText(made, state, loaded->speech));
    }
    return call.options.isSet("strict") && !made.unmet.empty() ? 1 : 0;
}

}  // namespace laneward::cli
