// What a list of the history adds up to, and how one item or machine has fared.
//
// Only what stands counts, also where corrected entries are listed.
#pragma once

#include "core/documents/history_index.h"

namespace laneward {

struct HistoryTotals {
    std::int64_t entries = 0;
    std::int64_t incidents = 0;
    std::int64_t runs = 0;
    std::int64_t lanes = 0;  ///< treated, the first pair twice
    Microlitres conditioner;
    Microlitres cleaner;
    std::int64_t runMinutes = 0;  ///< of machines
    std::int64_t services = 0;
    std::int64_t failures = 0;        ///< of them such whose part had failed
    std::int64_t serviceMinutes = 0;  ///< of people
    std::int64_t costMinor = 0;       ///< with parts
    std::int64_t partsMinor = 0;
    friend bool operator==(const HistoryTotals&, const HistoryTotals&) = default;
};

HistoryTotals totalsOf(const HistoryIndex& index, const std::vector<HistoryRow>& rows);

/// Of one item, or of all items of a machine, over the days of a query and whatever else it looks for.
struct ItemFigures {
    std::optional<std::int64_t> lanes;  ///< that the machine has treated; nothing where there is none
    std::int64_t failures = 0;
    std::int64_t costMinor = 0;
    std::int64_t partsMinor = 0;
    std::optional<double> lanesBetweenFailures;  ///< nothing without a failure
    std::optional<double> costPerLane;           ///< minor units; nothing without a lane
};
/// Nothing when the query asks for no item and no machine.
std::optional<ItemFigures> itemFigures(const HistoryIndex& index, const HistoryQuery& query, const SeasonState& season);

/// One sentence: how much was recorded on which days of the centre, and what stands out.
QString historyHeadline(const HistoryTotals& totals, const DateRange& days, const Speech& speech);
/// "31 runs of 412 lanes, …".
QString totalsText(const HistoryTotals& totals, const SeasonState& season, const Speech& speech);
QString figuresText(const ItemFigures& figures, const SeasonState& season, const Speech& speech);

}  // namespace laneward
