// What lay where at the end of each month: kept so that nobody need read ten years to know what is on hand.
//
// A month has rows when anything inside was moved in it: one for every place that is not empty at its end, and one for each that
// was moved. So the last month's rows are what is there now. Every movement adds to its own month and to all later ones in the
// transaction that stores it; rebuilding makes the same from the movements alone.
#pragma once

#include "core/storage/rows.h"

namespace laneward {

/// What is on hand.
Result<Balances> storedBalances(Database& database, const CentreId& centre);

/// Adds a movement to the balances of its month and the later ones.
Outcome close(Database& database, const CentreId& centre, const Movement& movement);

/// Makes all balances again.
Outcome rebuildBalances(Database& database, const CentreId& centre);

/// Places whose balances are not those of the movements: the month and supply of each, as "202611 amber".
Result<std::vector<QString>> wrongBalances(Database& database, const CentreId& centre);

}  // namespace laneward
