// The parts that demoCentre() puts together.
#pragma once

#include "core/season/bookings.h"
#include "core/storage/store.h"

#include <cstdint>

namespace laneward::demo {

inline constexpr int historyDays = 364;        ///< whole weeks, so that weekdays stay what they are
inline constexpr int ledgerDays = 112;         ///< of stock
inline constexpr int relevelledDaysAgo = 170;  ///< lanes 11 and 12

/// splitmix64 (Steele, Lea, Flood 2014, figure 1): tiny, and the same everywhere, which std distributions are not.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_state(seed) {}
    std::uint64_t next();
    /// 0 .. n-1.
    int below(int n) { return int(next() % std::uint64_t(n)); }
    bool oneIn(int n) { return below(n) == 0; }

private:
    std::uint64_t m_state;
};

Centre house(QDate today);
/// A fixed id for each name.
OperationId operation(const QString& name);
std::vector<Pattern> patterns();
/// Every pattern's versions; the house pattern was changed twice in the year.
std::vector<PatternVersion> patternVersions(const Centre& centre, QDate today);
/// The edition of the pattern that was in force at `t`.
std::int64_t editionAt(const std::vector<PatternVersion>& versions, const PatternId& pattern, Instant t);
const Pattern* versionOf(const std::vector<PatternVersion>& versions, const PatternId& pattern, std::int64_t edition);
/// What returns every week or day: leagues of a last and a present season, and what goes on all the year round.
std::vector<Series> diary(QDate today);
/// The diary with all that is out of the ordinary; no two events claim a lane at one time.
std::vector<Series> events(QDate today);
/// Records of the year before `today`; `season` holds centre, series and patterns.
HistorySlice yearOfRecords(const SeasonState& season, QDate today);
/// Tanks filled up to their lines through the year, with what was poured: Heron puts out more Amber of late. To be called with
/// the year's runs.
void addFills(HistorySlice& records, const SeasonState& season, QDate today);
/// Tapes of the year's runs: what the film should be, as people read it.
void addTapes(HistorySlice& records, const SeasonState& season, QDate today);
/// What is serviced, from the templates; parts are those of the demo's supplies.
std::vector<ServiceItem> serviceItems(const Centre& centre);
/// A year of services and readings of counters. To be called with the year's runs.
void addServices(HistorySlice& records, const std::vector<ServiceItem>& items, const Centre& centre, QDate today);
/// What packs are and ask for, and a spare one for each machine.
void addPackItems(std::vector<ServiceItem>& items, const Centre& centre);
/// A year of packs swapped and charged. To be called with the year's runs.
void addPacks(HistorySlice& records, const Centre& centre, QDate today);
/// Sixteen weeks of stock, with suppliers, orders and counts. To be called when all runs, readings and services are there.
void addSupplies(SeasonState& season, HistorySlice& records, QDate today);
/// What machines really take, as the program would have learned it from the fills until then.
UseFactors factorsBy(const SeasonState& season, const HistorySlice& records, Instant until);
/// What the program would have kept each morning since: its own forecasts, from what was known by then. To be called last.
void addForecasts(const SeasonState& season, HistorySlice& records, QDate today);
/// Inspections of some lanes through two years.
void addInspections(HistorySlice& records, const SeasonState& season, QDate today);

}  // namespace laneward::demo
