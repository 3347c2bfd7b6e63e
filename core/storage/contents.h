// Reading a centre: parts of it by range, or all of it. Callers hold the transaction.
#pragma once

#include "core/storage/centre_file.h"
#include "core/storage/operations.h"

namespace laneward {

/// Whether movements are read along: ten years of them are a million. Deeds are those that no other record made.
enum class Ledger { With, Without, Deeds };

Result<Centre> storedFacts(Database& database, const CentreId& centre);
Result<HistorySlice> storedHistory(Database& database, const CentreId& centre, const Span& time, Ledger ledger = Ledger::With);
/// Movements of a range, of one supply or of all, and corrections of them wherever they lie, by time.
Result<std::vector<Movement>> movementsWithin(Database& database, const CentreId& centre, const Span& time,
                                              const std::optional<SupplyId>& supply);
/// Those of them that somebody booked, or that received an order.
Result<std::vector<Movement>> deedsWithin(Database& database, const CentreId& centre, const Span& time);
/// Supplies, suppliers, price lists and orders.
Outcome readStock(Database& database, const CentreId& centre, SeasonState& season);
/// Items, the last service of each duty, counters, and the work before `from`.
Outcome readService(Database& database, const CentreId& centre, SeasonState& season, Instant from);
/// Records of a range, and corrections of them wherever they lie, by time.
template <class T>
Result<std::vector<T>> recordsWithin(Database& database, const CentreId& centre, const Span& time);
template <>
Result<std::vector<RunLog>> recordsWithin(Database& database, const CentreId& centre, const Span& time);
/// Stored jobs that overlap a range.
Result<std::vector<Job>> jobsWithin(Database& database, const CentreId& centre, const Span& time);
/// Each lane's last treatment that ended before `until`.
Result<std::vector<LaneTreatment>> treatmentsBefore(Database& database, const CentreId& centre, int lanes, Instant until);
/// Centre, series, patterns and all records.
Result<CentreFile> everything(Database& database, const CentreId& centre, Ledger ledger = Ledger::With);

}  // namespace laneward
