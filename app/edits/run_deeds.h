// Beginning and recording a job as undoable deeds, wherever it is done: on the page Today or in the guide.
//
// A job that is still a proposal is confirmed on the way, so that its log can name it.
#pragma once

#include "app/edits/session.h"
#include "core/season/recording.h"

namespace laneward {

/// Confirms a proposed job: adds that to `changes`, and gives it back as it is then. Others come back as they are.
Job committed(const Session& session, Job job, std::vector<Change>& changes);

Deed doneAsPlanned(const Session& session, const Job& job);
Deed begun(const Session& session, const Job& job);
/// `corrects`: the run that it puts right.
Deed doneOtherwise(Session& session, const RunAccount& account, const std::optional<Incident>& incident,
                   const std::optional<OperationId>& corrects);
/// The run that tells how a job went; none while it is ahead.
std::optional<OperationId> runOf(const SeasonState& season, const Job& job);

}  // namespace laneward
