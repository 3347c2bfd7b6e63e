// What ticking a step records, as one undoable deed.
#pragma once

#include "app/edits/session.h"
#include "core/documents/guide_blanks.h"

namespace laneward {

struct GuideAct {
    Deed deed;           ///< nothing in it when there is nothing to record
    OperationId record;  ///< of the record in it; empty = none
};

/// A machine that sets about the first step of an outing has that outing's jobs confirmed: the plan goes round them from then on.
/// A job that has not begun is begun; one that is under way is recorded as planned.
GuideAct actOf(Session& session, const JobSheet& sheet, const GuideStep& step, const std::vector<GuideAnswer>& answers);

/// What the records say is in it now.
MachineLevels levelsOf(Session& session, const MachineId& machine);

}  // namespace laneward
