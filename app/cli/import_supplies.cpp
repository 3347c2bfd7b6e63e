#include "app/cli/import_supplies.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward::cli {

namespace {

constexpr size_t mostLines = 200;  ///< of faults that are told

/// The last one becomes the line of the error itself.
Outcome refused(const Call& call, const Loaded& loaded, const std::vector<Finding>& findings, ErrorKind kind) {
    if (findings.empty()) return Nothing{};
    const size_t told = std::min(findings.size(), mostLines);
    for (size_t n = 0; n + 1 < told; ++n)
        call.streams.err.write(("laneward: " + text(findings[n], loaded.speech) + "\n").toUtf8());
    return Error{kind, findings[told - 1]};
}

template <class Read>
Outcome mayComeIn(const Call& call, const Loaded& loaded, const Read& read) {
    const Outcome sound = refused(call, loaded, read.faults, ErrorKind::Invalid);
    if (!sound || call.options.isSet("sure")) return sound;
    return refused(call, loaded, read.doubts, ErrorKind::Refused);
}

}  // namespace

Status importCounts(const Call& call, const Loaded& loaded, const CsvRows& rows) {
    const ReadCounts read = countsFromCsv(rows, loaded.season, loaded.now);
    const Outcome may = mayComeIn(call, loaded, read);
    if (!may) return may.error();
    const bool only = call.options.isSet("dry-run");
    const Outcome done = only ? Outcome(Nothing{}) : appendBooked(loaded, {read.counts.begin(), read.counts.end()});
    if (!done) return done.error();
    const QString form = only ? QCoreApplication::translate("cli", "%1: %2 places could be counted; nothing was written\n")
                              : QCoreApplication::translate("cli", "%1: %2 places counted\n");
    print(call, form.arg(call.arguments.front()).arg(rows.count()));
    return 0;
}

Result<std::vector<Change>> priceChanges(const Call& call, const Loaded& loaded, const CsvRows& rows) {
    const ReadPrices read = pricesFromCsv(rows, loaded.season);
    const Outcome may = mayComeIn(call, loaded, read);
    if (!may) return may.error();
    return changesTo(loaded.season, read);
}

}  // namespace laneward::cli
