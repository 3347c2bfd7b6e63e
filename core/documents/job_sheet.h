// The day's job sheet as plain data: the same model feeds the screen, the PDF, the printer, the plain text and the JSON.
#pragma once

#include "core/season/season.h"

namespace laneward {

/// One line of the order of work: a preparation, a job, or closing down, with the cautions that belong beside it.
struct SheetStep {
    enum class Kind { Prepare, Job, Refill, EmptyWaste, SwapPack, Charge, Duty, Return, CloseDown };
    Kind kind = Kind::Prepare;
    QByteArray rule;                 ///< wording of a Prepare or CloseDown step, "sheet.…"
    std::optional<Instant> startBy;  ///< printed rounded down to the minute
    std::optional<Instant> readyAt;  ///< printed rounded up
    std::optional<size_t> job;       ///< index into JobSheet::jobs
    MachineId machine;
    std::vector<Finding> cautions;   ///< "caution.…" beside this step
    std::vector<size_t> duties;      ///< of a Duty: indices into JobSheet::duties
    std::vector<QByteArray> blanks;  ///< values to write down: "blank.volts", "blank.conditioner", …
};

struct SheetReadiness {
    MachineId machine;
    QString name;
    Readiness readiness;
    std::vector<QString> conditioners;
    QString cleaner;
};

/// A duty that falls due while the machine works.
struct SheetDuty {
    MachineId machine;
    QString item;
    Duty duty;
    std::vector<Supply> supplies;  ///< of its parts
};

struct SheetEvent {
    QString title;
    Span booked;
    LaneSet lanes;
};

struct JobSheet {
    QString centre;
    QByteArray zone;
    QDate date;
    int planVersion = 0;  ///< 0 = not confirmed yet
    Instant madeAt;
    UnitSystem units = UnitSystem::Metric;
    std::vector<SheetReadiness> readiness;
    std::vector<Job> jobs;              ///< in order of work
    std::vector<QString> patternNames;  ///< of each job; empty for clean only
    std::vector<QString> machineNames;  ///< of each job
    std::vector<SheetStep> steps;
    std::vector<Shortfall> shortfalls;
    std::vector<SheetDuty> duties;    ///< done at the Duty steps, those that are due first come first
    std::vector<Finding> cautions;    ///< general ones, with their source
    std::vector<SheetEvent> events;   ///< the day's events, for orientation
    std::vector<HandOver> handOvers;  ///< notes from the shift before
};

/// The chance that the waste tank is over its capacity by the end of a job of today that is still to run.
std::optional<double> overflowOf(const JobSheet& sheet, const Job& job);

JobSheet jobSheet(const SeasonState& season, const Plan& plan, QDate date, Instant now);

}  // namespace laneward
