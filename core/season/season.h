// The whole state of a centre as one value, and what follows from it.
//
// State in memory = what is, what is asked, and the open window of what happened; older history is queried by range from
// storage and never loaded whole.
#pragma once

#include "core/patterns/inspection.h"
#include "core/patterns/tape_reading.h"
#include "core/planning/plan.h"
#include "core/service/pack_log.h"
#include "core/service/service_record.h"
#include "core/service/volt_limits.h"
#include "core/service/waste_tank.h"
#include "core/supplies/ledger.h"

namespace laneward {

enum class IncidentKind { Spill, Jam, Fault, Injury, NearMiss };

struct Incident {
    OperationId id;
    IncidentKind kind = IncidentKind::Spill;
    Instant at;
    int lane = 0;       ///< 0 = none
    MachineId machine;  ///< empty = none
    PersonId person;
    QString text;
    std::optional<OperationId> corrects;  ///< replaces that earlier one; with an empty text it only withdraws it
    std::optional<OperationId> answers;   ///< says what was done about that incident or tape reading; it is none itself
    friend bool operator==(const Incident&, const Incident&) = default;
};

/// What one shift tells the next.
struct HandOver {
    OperationId id;
    QDate date;
    Instant at;
    PersonId person;
    QString text;
    std::optional<OperationId> corrects;  ///< replaces that earlier one; with an empty text it only withdraws it
    friend bool operator==(const HandOver&, const HandOver&) = default;
};

/// What was poured into the tanks at a fill.
struct Poured {
    std::array<Microlitres, conditionerSlots> conditioner;
    Microlitres cleaner;
    bool toLine = true;  ///< what was poured reached the line; otherwise it was only topped up
    friend bool operator==(const Poured&, const Poured&) = default;
};

/// A measured level or voltage, or tanks filled, waste emptied, pack swapped, all by saying what is in the machine now.
struct LevelReading {
    OperationId id;
    PersonId person;
    MachineLevels levels;
    std::optional<Poured> poured;         ///< when tanks were filled and somebody read how much it took
    std::optional<OperationId> corrects;  ///< replaces that earlier one
    std::optional<Microlitres> emptied;   ///< when the waste tank was emptied and somebody measured what was in it
    friend bool operator==(const LevelReading&, const LevelReading&) = default;
};

struct SeasonState {
    Centre centre;
    std::vector<Series> series;
    std::vector<Pattern> patterns;
    std::vector<Job> confirmed;          ///< confirmed and not older than openJobDays (work_ahead.h)
    std::vector<RunLog> runs;            ///< the open window, corrections included
    std::vector<LaneTreatment> before;   ///< last treatments before the open window
    std::vector<LevelReading> readings;  ///< the latest per machine and the open window's
    std::vector<Incident> incidents;     ///< of the open window
    std::vector<HandOver> handOvers;     ///< of the open window
    std::vector<Supply> supplies;
    std::vector<Supplier> suppliers;
    std::vector<Offer> offers;
    std::vector<Order> orders;
    Balances stock;  ///< as it is now, by the ledger
    std::vector<ServiceItem> items;
    std::vector<ServiceRecord> services;    ///< the last that stands of each duty
    std::vector<MeterReading> counters;     ///< all that stand
    std::vector<PackReading> packReadings;  ///< of the open window
    std::vector<MachineWork> workBefore;    ///< what was run before the open window, from one reading of a counter to the next
    friend bool operator==(const SeasonState&, const SeasonState&) = default;
};

/// Those that stand: without the corrected, and without incidents and notes that only withdraw. Order as given.
std::vector<Incident> standing(std::vector<Incident> incidents);
std::vector<HandOver> standing(std::vector<HandOver> handOvers);
std::vector<LevelReading> standing(std::vector<LevelReading> readings);
std::vector<TapeReading> standing(std::vector<TapeReading> readings);
std::vector<Inspection> standing(std::vector<Inspection> inspections);
std::vector<StockCount> standing(std::vector<StockCount> counts);

/// Days of history that are kept in memory.
inline constexpr int openWindowDays = 35;

/// What planning needs, as of `now`: limits from settings, levels carried forward from the last reading by the runs since,
/// committed jobs with their run logs joined, each lane's last treatment.
State planningState(const SeasonState& season, Instant now);
/// The last treatment of each lane by `t`, from the runs that stand and from before the open window.
std::vector<LaneTreatment> treatmentsUntil(const SeasonState& season, Instant t);

/// What is on a lane at `t`, by the runs and the play since.
struct LaneNow {
    int lane = 0;
    LaneCondition condition;
    bool inPlay = false;
    bool outOfService = false;
};
std::vector<LaneNow> lanesAt(const SeasonState& season, const Occupancy& occupancy, Instant t);

/// The chance that a machine's waste tank is over its capacity by the end of a job, emptied as the plan has it.
struct OverflowChance {
    JobId job;
    double chance = 0;
    friend bool operator==(const OverflowChance&, const OverflowChance&) = default;
};

/// What a machine holds against what tonight's jobs take.
struct Readiness {
    MachineId machine;
    MachineLevels now;
    JobUse tonight;   ///< of the jobs still to run
    int refills = 0;  ///< planned steps still to come
    int emptyings = 0;
    int swaps = 0;
    std::optional<Instant> measuredAt;
    VoltRule limits;                       ///< that hold for its pack
    std::optional<MeasuredVolts> volts;    ///< of that pack, read today
    std::vector<OverflowChance> overflow;  ///< of tonight's jobs that are still to run, in order
    std::vector<Finding> findings;         ///< "readiness.…": what is short, what to measure
};
std::vector<Readiness> readinessOf(const SeasonState& season, const Plan& plan, Instant now);

/// The difference between two plans: an answer to 'what if'.
struct PlanDifference {
    std::vector<Job> added;
    std::vector<Job> removed;
    std::vector<std::pair<Job, Job>> moved;  ///< same lanes, pattern and needs at another time or machine
    Objective before;
    Objective after;
    Microlitres conditioner;  ///< after - before
    Microlitres cleaner;
};
PlanDifference difference(const Plan& before, const Plan& after);

}  // namespace laneward
