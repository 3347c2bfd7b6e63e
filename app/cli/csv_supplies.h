// Counts of stock and price lists as CSV; the columns are documented in resources/schemas/csv.md.
//
//     const ReadCounts read = countsFromCsv(*rows, season, now);
//     if (!read.faults.empty()) show(read.faults);                 // nothing may be taken then
//     else if (!read.doubts.empty() && !sure) ask(read.doubts);    // hardly meant, as a hundred times too much
#pragma once

#include "app/cli/csv_cells.h"
#include "core/storage/edit.h"

namespace laneward::cli {

enum class StockKind { Counts, Prices };

/// Columns that csvRows() must find.
QStringList stockColumns(StockKind kind);

/// Faults and doubts have file and line as their subject.
struct ReadCounts {
    std::vector<StockCount> counts;  ///< one for each time that rows name, by time
    std::vector<Finding> faults;
    std::vector<Finding> doubts;
};
/// Rows without a time are counted `now`.
ReadCounts countsFromCsv(const CsvRows& rows, const SeasonState& season, Instant now);

struct ReadPrices {
    SupplierId supplier;
    std::vector<Offer> offers;  ///< with the ids of stored ones that they replace
    std::vector<Finding> faults;
    std::vector<Finding> doubts;
};
ReadPrices pricesFromCsv(const CsvRows& rows, const SeasonState& season);
/// Offers that are new or another, and those of the supplier that its list no longer has, retired.
std::vector<Change> changesTo(const SeasonState& season, const ReadPrices& list);

/// What the books have in each place that is counted, without a time: read again it is a count that finds nothing.
QByteArray stockToCsv(const SeasonState& season);
/// The price list of one supplier; read again it changes nothing.
QByteArray pricesToCsv(const SeasonState& season, const SupplierId& of);

}  // namespace laneward::cli
