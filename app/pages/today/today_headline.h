// The one sentence at the top of Today: what matters now.
#pragma once

#include "core/documents/wording.h"

namespace laneward {

/// In order of weight: what is late or cannot be met, what a machine lacks, the next start, what is left.
QString todayHeadline(const JobSheet& sheet, const Speech& speech, Instant now);

}  // namespace laneward
