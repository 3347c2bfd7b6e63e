// The order of work of a sheet: preparations, jobs with what comes between them, closing down. Internal to this room.
#pragma once

#include "core/documents/job_sheet.h"

namespace laneward {

/// `jobs` in order of work. Nothing for a day without jobs. The first step that needs a caution carries it in full, later ones as
/// the reminder "caution.…-again". The first Duty step of a machine is for all its `duties`.
std::vector<SheetStep> sheetSteps(const std::vector<Job>& jobs, const std::vector<SheetDuty>& duties);

}  // namespace laneward
