// What a change would do to stock, service and cost, in words, behind those about jobs.
#pragma once

#include "core/documents/difference_wording.h"
#include "core/season/service_difference.h"
#include "core/season/supply_difference.h"

namespace laneward {

/// "Amber runs out 3 days earlier (Sat 12/12/2026).", "Order Amber by Wed 2/12/2026 instead of Sat 5/12/2026."; one line that
/// says so when no such day changes.
std::vector<DifferenceLine> stockLines(const SupplyDifference& change, const SeasonState& season, const Speech& speech);
/// "Product cost +14.20 GBP, without Clear, which has no price."
DifferenceLine costLine(const ProductCost& cost, const Speech& speech);
/// "Heron: Turn the squeegee blades falls due 2 days earlier (Tue 24 Nov)."; the next few, and how many more. Nothing when no
/// duty falls due on another day.
std::vector<DifferenceLine> serviceLines(const std::vector<DutyShift>& shifts, const SeasonState& season, const Speech& speech);

/// What follows from a change besides its jobs.
struct ChangeBesides {
    SupplyDifference stock;
    std::vector<DutyShift> service;
    ProductCost cost;
};
/// Puts all into the words of an answer, before how sure it is.
void addBesides(DifferenceWords& words, const ChangeBesides& change, const SeasonState& season, const Speech& speech);

}  // namespace laneward
