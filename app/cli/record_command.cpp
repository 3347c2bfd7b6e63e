#include "app/cli/command_list.h"
#include "app/cli/service_records.h"
#include "core/season/bookings.h"
#include "core/storage/centre_file.h"

#include <QCoreApplication>

namespace laneward::cli {

namespace {

/// Counts that are hardly meant are refused unless the caller is sure of them.
Outcome checkCounts(const std::vector<Record>& records, const SeasonState& season) {
    const Books books{season.centre, season.supplies, season.patterns, season.stock, {}};
    for (const Record& record : records) {
        const auto* count = std::get_if<StockCount>(&record);
        const std::vector<Finding> doubts = count ? doubtsOf(*count, books) : std::vector<Finding>{};
        if (!doubts.empty()) return Error{ErrorKind::Refused, doubts.front()};
    }
    return Nothing{};
}

}  // namespace

Status record(const Call& call) {
    const Result<QString> path = onlyArgument(call, "FILE.json");
    if (!path) return path.error();
    const Result<QByteArray> content = fileContent(*path);
    if (!content) return content.error();
    const Result<Loaded> loaded = load(call, Access::ReadWrite);
    if (!loaded) return loaded.error();
    Result<std::vector<Record>> records = readRecords(*content, *path, loaded->season.supplies);
    if (!records) return records.error();
    if (const Outcome complete = completeServices(*loaded, *records); !complete) return complete.error();
    if (const Outcome services = checkServices(*loaded, *records); !services) return services.error();
    if (!call.options.isSet("sure")) {
        const Outcome counts = checkCounts(*records, loaded->season);
        if (!counts) return counts.error();
    }
    const bool only = call.options.isSet("dry-run");
    const Result<std::vector<Record>> all = booked(*loaded, *records);
    if (!all) return all.error();
    const Outcome appended = only ? Outcome(Nothing{}) : loaded->store->append(*all);
    if (!appended) return appended.error();
    const QString form = only ? QCoreApplication::translate("cli", "%1: %2 records could be recorded\n")
                              : QCoreApplication::translate("cli", "%1: %2 records recorded\n");
    print(call, form.arg(*path).arg(records->size()) + partsNotThere(*loaded, *all));
    return 0;
}

}  // namespace laneward::cli
