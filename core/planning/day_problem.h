// One day as numbers: which treatments are to be placed, and what machines, tanks and people allow.
//
// Everything is an index or a count, and times are seconds since the day's begin, so that equal days are equal problems: two
// Thursdays with the same events have the same key() and are solved once. Nothing here knows of names or dates.
#pragma once

#include "core/planning/ground.h"

#include <array>
#include <cstdint>

namespace laneward::planning {

using Sec = std::int64_t;

struct Slot {
    Sec begin = 0;
    Sec end = 0;
    Sec length() const { return end - begin; }
    bool overlaps(const Slot& o) const { return begin < o.end && o.begin < end; }
    friend bool operator==(const Slot&, const Slot&) = default;
};

/// What a machine works off: two conditioners, cleaner, room in the waste tank, lanes of the pack, lanes until a duty.
inline constexpr size_t stockCount = 2 + conditionerSlots + 2;
using Stock = std::array<std::int64_t, stockCount>;
inline constexpr size_t cleanerStock = conditionerSlots;
inline constexpr size_t wasteStock = conditionerSlots + 1;
inline constexpr size_t packStock = conditionerSlots + 2;
inline constexpr size_t dutyStock = conditionerSlots + 3;
inline constexpr std::int64_t endless = 1'000'000'000'000;

/// Steps in front of a block, as bits.
enum StepBits : unsigned { NoStep = 0, RefillBit = 1, EmptyBit = 2, SwapBit = 4, ChargeBit = 8, DutyBit = 16 };

/// A committed job, as far as tanks and changes go.
struct FixedRun {
    Sec begin = 0;
    unsigned steps = NoStep;
    Stock use{};
    int pattern = -1;
};

struct FixedOuting {
    Slot time;
    Slot attended;  ///< empty: nobody is bound
};

struct DayMachine {
    bool attended = true;
    Sec leave = 0;
    Sec back = 0;
    Sec next = 0;
    Sec cross = 0;
    std::array<Sec, 5> steps{};  ///< minutes of each step, in the order of StepBits
    std::vector<Sec> lane;       ///< by recipe; -1 = barred
    std::vector<Stock> use;      ///< of one lane, by recipe
    LaneSet barred;
    Stock full{};
    Stock begin{};
    int spares = 0;
    std::vector<Slot> closed;  ///< out of service, nobody in the house, committed, past
    std::vector<FixedOuting> outings;
    std::vector<FixedRun> runs;  ///< by begin
};

struct DayShift {
    Slot work;
    Slot allowance;
    int people = 1;
};

struct DayTask {
    int lane = 0;
    int recipe = 0;
    int firstSlot = 0;  ///< into DayProblem::slots: when the lane is free, within its gap
    int slotCount = 0;
    Sec earliestEnd = INT64_MIN / 2;  ///< a demand that it serves would find it too old before
    Sec target = 0;
    Sec due = 0;
    Sec play = 0;           ///< the gap's end, maybe on a later day
    bool scored = false;    ///< late and tight count: a demand at the gap's end is served or covered
    bool onlyHere = false;  ///< the demand at the gap's end can be met in no other gap
    bool twice = false;     ///< a series asks for the first pair twice
    bool stripped = false;
    int demands = 1;  ///< lost with it
    int fresh = 0;    ///< demands whose freshness counts
};

struct DayRecipe {
    Treatment treatment = Treatment::CleanAndCondition;
    int pattern = -1;
};

struct DayProblem {
    Sec length = 0;
    std::vector<DayTask> tasks;  ///< by lane, then gap
    std::vector<Slot> slots;
    std::vector<DayRecipe> recipes;
    std::vector<DayMachine> machines;
    std::vector<DayShift> shifts;

    /// Two problems with the same key have the same solution.
    std::string key() const;
};

/// What a machine starts a day with. `dutyLeft` runs on from day to day; all else is restored by closing down.
struct DayStart {
    std::vector<std::int64_t> dutyLeft;  ///< by machine
};

/// A treatment to be placed, with what was worked out about it.
struct OpenTreatment {
    PlannedTreatment what;
    int day = 0;
    int alike = 1;  ///< lanes that this one stands for while days are chosen
};

DayProblem dayProblem(const Ground& ground, const DemandSet& demands, const std::vector<const OpenTreatment*>& treatments,
                      int day, const DayStart& start);

Stock fullStock(const Machine& machine, const MachineLimits& limits);
Stock stockOf(const Machine& machine, const MachineLevels& levels, std::int64_t dutyLeft);
Stock useOf(const JobUse& use);
unsigned stepBits(const Job& job);
/// Sets what `steps` restore to full.
void restore(Stock& stock, const Stock& full, unsigned steps);

}  // namespace laneward::planning
