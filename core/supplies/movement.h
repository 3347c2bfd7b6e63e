// The stock ledger: movements, which are never changed or deleted. Stock is the sum of their entries.
//
// A movement moves amounts from places to places: its entries sum to zero for each supply. Inside places hold stock; outside
// places are where it comes from and goes to. A mistake is corrected by a counter-movement that names what it corrects. Cleaner
// mixed in a tank is booked as its concentrate and water, what a machine recovers as waste; water and waste are supplies of the
// ledger's own.
#pragma once

#include "core/supplies/supply.h"

namespace laneward {

/// The ledger's own supplies, in microlitres.
inline const SupplyId waterId{"water"};
inline const SupplyId wasteId{"waste"};

struct Place {
    enum class Kind {
        Shelf,      ///< sealed containers
        Open,       ///< open containers
        Tank,       ///< of a machine
        WasteTank,  ///< of a machine
        // outside
        Supplier,
        WaterMain,
        Lane,    ///< used: lanes, approaches, parts put in
        Drain,   ///< disposed of
        Loss,    ///< spilled, shrunk, found
        Opening  ///< stock that was there before the ledger began
    };
    Kind kind = Kind::Shelf;
    MachineId machine;  ///< of Tank and WasteTank
    int slot = 0;       ///< of Tank: conditioner slots from 0, then the cleaner's
    bool isInside() const { return kind <= Kind::WasteTank; }
    friend bool operator==(const Place&, const Place&) = default;
    friend auto operator<=>(const Place&, const Place&) = default;
};

/// Where exactly an amount lies: of which supply, in which place, container and lot.
struct StockKey {
    SupplyId supply;
    Place place;
    QString container;  ///< as people call it; empty = not told apart
    QString lot;        ///< empty = not known
    friend bool operator==(const StockKey&, const StockKey&) = default;
    friend auto operator<=>(const StockKey& a, const StockKey& b) {
        return std::tie(a.supply, a.place, a.container, a.lot) <=> std::tie(b.supply, b.place, b.container, b.lot);
    }
};

struct Entry {
    StockKey key;
    Amount amount;  ///< positive = comes in there
    friend bool operator==(const Entry&, const Entry&) = default;
};

enum class MovementKind { Received, Opened, Filled, Used, Spilled, Counted, Returned, Disposed };

/// What a movement was made from.
enum class MovementSource { Person, Run, Level, Count, Order, Service };

struct Movement {
    OperationId id;
    MovementKind kind = MovementKind::Received;
    Instant at;
    PersonId person;
    QString reason;
    MovementSource source = MovementSource::Person;
    QString sourceId;                     ///< id of that run log, level reading, count, order or service record
    std::optional<OperationId> corrects;  ///< takes that movement back: its entries, negated
    bool flagged = false;                 ///< leaves a place below zero, and says so: something was not recorded
    std::vector<Entry> entries;
    Instant recordedAt;
    friend bool operator==(const Movement&, const Movement&) = default;
};

/// What was found when stock was counted; the difference is booked by a movement of kind Counted.
struct CountLine {
    StockKey key;
    Amount counted;
    friend bool operator==(const CountLine&, const CountLine&) = default;
};

struct StockCount {
    OperationId id;
    Instant at;
    PersonId person;
    std::vector<CountLine> lines;
    QString note;
    std::optional<OperationId> corrects;  ///< replaces that earlier one; without lines it only withdraws it
    friend bool operator==(const StockCount&, const StockCount&) = default;
};

}  // namespace laneward
