#include "app/cli/command_list.h"
#include "core/documents/writers.h"

namespace laneward::cli {

Status events(const Call& call) {
    const Outcome arguments = noArguments(call);
    if (!arguments) return arguments.error();
    const Result<QString> format = formatOf(call, {"text", "json", "csv"});
    if (!format) return format.error();
    const Result<Loaded> loaded = load(call, Access::ReadOnly);
    if (!loaded) return loaded.error();
    const Centre& centre = loaded->season.centre;
    const Result<DateRange> range = rangeOf(call, dateOf(centre, loaded->now), 7);
    if (!range) return range.error();
    const Occupancy occupancy = occupancyOf(loaded->season.series, centre, *range);
    if (*format == "json") {
        print(call, eventsJson(occupancy, loaded->speech));
    } else if (*format == "csv") {
        print(call, eventsCsv(occupancy, loaded->speech));
    } else {
        print(call, eventsText(occupancy, planningState(loaded->season, loaded->now), loaded->speech));
    }
    return 0;
}

}  // namespace laneward::cli
