// What a change would do to stock and cost, in words, behind those about jobs.
#pragma once

#include "core/documents/difference_wording.h"
#include "core/season/supply_difference.h"

namespace laneward {

/// "Amber runs out 3 days earlier (Sat 12/12/2026).", "Order Amber by Wed 2/12/2026 instead of Sat 5/12/2026."; one line that
/// says so when no such day changes.
std::vector<DifferenceLine> stockLines(const SupplyDifference& change, const SeasonState& season, const Speech& speech);
/// "Product cost +14.20 GBP, without Clear, which has no price."
DifferenceLine costLine(const ProductCost& cost, const Speech& speech);
/// Puts both into the words of an answer, before how sure it is.
void addStock(DifferenceWords& words, const SupplyDifference& change, const ProductCost& cost, const SeasonState& season,
              const Speech& speech);

}  // namespace laneward
