// What a record moves in the stock ledger: a run uses what is in the tanks, a level that was read or a tank that was filled says
// what is really in them, a count what is really on the shelf, a service the
// parts that it took.
//
// A run is booked with its recipe's amounts times what its machine really takes of them (UseFactors); the next level that is read
// books the difference. Filling takes from open containers first, the oldest lot first, then opens sealed ones. Where stock is
// not enough the movement is flagged: something was not recorded. Machines' products that are no supply are not booked.
//
//     Books books{season.centre, season.supplies, season.patterns, season.stock, factors};
//     for (Movement& movement : bookingsOf(run, books)) store(movement);   // books.stock is after them now
#pragma once

#include "core/season/season.h"
#include "core/supplies/ledger.h"

#include <map>

namespace laneward {

/// Real over nominal use by machine and product (conditioner slots, then the cleaner); 1 where nothing is known.
using UseFactors = std::map<std::pair<MachineId, int>, double>;

struct Books {
    const Centre& centre;
    const std::vector<Supply>& supplies;
    const std::vector<Pattern>& patterns;
    Balances stock;
    UseFactors factors;
};

/// Supply and water in an amount of what is in a tank: to the microlitre, the rest is water.
struct Mixture {
    Amount concentrate;
    Amount water;
};
Mixture mixtureOf(const Supply& supply, Amount liquid);
/// Of the supply as it is mixed there.
Amount inTank(const Balances& stock, const Supply& supply, const Place& tank);

/// Movements carry ids made from the record's, so that the same record books the same again. A void run books nothing.
std::vector<Movement> bookingsOf(const RunLog& run, Books& books);
std::vector<Movement> bookingsOf(const LevelReading& reading, Books& books);
std::vector<Movement> bookingsOf(const StockCount& count, Books& books);
std::vector<Movement> bookingsOf(const ServiceRecord& record, Books& books);

/// Who corrects what, and when.
struct Correction {
    OperationId id;
    PersonId person;
    Instant at;
};
/// What a corrected record had booked is taken back: `earlier` are its movements, those that were taken back already left out.
std::vector<Movement> takenBack(const std::vector<Movement>& earlier, const Correction& by, Books& books);

/// What is in the machines' tanks of a supply when its ledger begins, by the levels known at that time.
std::vector<Movement> openingOf(const Supply& supply, const std::vector<MachineLevels>& levels, Books& books);

/// Counts that are hardly meant ("count.far-off"): twenty times more or less than the ledger has, and off by more than a
/// container. Where the ledger has nothing: more than twenty containers, or sealed ones that hold less than a twentieth of one.
std::vector<Finding> doubtsOf(const StockCount& count, const Books& books);

}  // namespace laneward
