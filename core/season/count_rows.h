// What is counted when stock is counted: every place where a supply lies or may lie, with what the books say of it.
//
// A tank is counted as the liquid that is in it: cleaner as it is mixed.
//
//     for (const CountRow& row : rowsToCount(season)) ...
//     count.lines = linesOf(row, found);
#pragma once

#include "core/season/season.h"

namespace laneward {

struct CountRow {
    StockKey key;
    SupplyKind kind = SupplyKind::Cleaner;
    Amount books;
    int waterParts = 0;  ///< in what is counted there, to one of the supply
    friend bool operator==(const CountRow&, const CountRow&) = default;
};

/// Containers and lots that the books know; the shelf, open containers of what is not counted in pieces, and the tanks that name
/// the supply also where they have nothing; then what the machines recovered. Retired supplies while any is left. By kind, name
/// and place.
std::vector<CountRow> rowsToCount(const SeasonState& season);

/// What a count of the row says: a line, or one for the supply and one for its water.
std::vector<CountLine> linesOf(const CountRow& row, Amount counted);

}  // namespace laneward
