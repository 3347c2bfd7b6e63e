// What a file of services leaves to the centre, and what its clock refuses. Internal to this room.
#pragma once

#include "app/cli/call.h"

namespace laneward::cli {

/// Meters that are not given are those that the machine had then, money is of the centre's currency. A service that is stored
/// already keeps its own, so that the same file can be recorded again.
Outcome completeServices(const Loaded& loaded, std::vector<Record>& records);
/// Services and counters that cannot be: those of the future, of no item or duty, counters that run backwards.
Outcome checkServices(const Loaded& loaded, const std::vector<Record>& records);
/// What services took and the ledger did not have, in words, one a line.
QString partsNotThere(const Loaded& loaded, const std::vector<Record>& booked);

}  // namespace laneward::cli
