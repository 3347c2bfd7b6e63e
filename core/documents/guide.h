// The evening step by step: the sheet's order of work as single steps, what has been done of them, and what comes next.
//
// What was done is a list of ticks in the order in which it was done; it outlives the plan that it was done by. A tick whose
// record was taken back is no tick any more, and a run that was recorded elsewhere is one. What is ahead always comes from the
// sheet as it is now.
//
//     const Guide guide = guideOf(sheet, season, ticks);
//     if (!guide.ahead.empty()) show(guide.ahead.front());
#pragma once

#include "core/documents/job_sheet.h"

namespace laneward {

/// What ticking a step does besides the tick.
enum class GuideDeed {
    None,
    Volts,       ///< records the volts that were read
    Levels,      ///< records the levels that were read
    Refill,      ///< records full tanks
    EmptyWaste,  ///< records an empty waste tank
    FullPack,    ///< records a full pack: swapped or charged
    CloseTanks,  ///< records full tanks and an empty waste tank
    ClosePack,   ///< writes down that the pack is on charge, where the centre keeps a log of it
    Run,         ///< records the run
    Service,     ///< records the duty: at its last line
    HandOver,    ///< records the note
};

struct GuideStep {
    QByteArray key;  ///< the same for the same work in another plan of the day
    SheetStep step;  ///< cautions in full, as each step is read alone
    GuideDeed deed = GuideDeed::None;
    std::optional<size_t> duty;  ///< index into JobSheet::duties
    int line = 0;                ///< of the duty's steps
    int lines = 0;               ///< how many it has; one without any is a line of its own
};

struct GuideTick {
    QByteArray key;
    SheetStep::Kind kind = SheetStep::Kind::Prepare;
    MachineId machine;
    QString line;  ///< as it was said then
    bool isLeftOut = false;
    JobId job;           ///< of a run
    OperationId record;  ///< of what was recorded with it; empty = nothing
    friend bool operator==(const GuideTick&, const GuideTick&) = default;
};

struct Guide {
    std::vector<GuideTick> done;    ///< those that stand; `line` is empty for runs that were recorded elsewhere
    std::vector<GuideStep> ahead;   ///< the first is the one that comes now
    std::vector<GuideStep> behind;  ///< steps of the sheet that are done: they can be looked at again
};

/// All steps of a sheet: those of every machine by themselves, a duty line by line.
std::vector<GuideStep> guideSteps(const JobSheet& sheet);
Guide guideOf(const JobSheet& sheet, const SeasonState& season, const std::vector<GuideTick>& ticks);

/// How what is ahead differs from what it was, without what was done meanwhile.
struct GuideChange {
    int added = 0;
    int gone = 0;
    int moved = 0;  ///< to another minute
    bool isNothing() const { return added + gone + moved == 0; }
};
GuideChange changeOf(const std::vector<GuideStep>& before, const Guide& after);

}  // namespace laneward
