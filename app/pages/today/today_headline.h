// The one sentence at the top of Today: what matters now.
#pragma once

#include "core/documents/wording.h"

namespace laneward {

struct TodayFacts {
    const JobSheet& sheet;
    Speech speech;
    Instant now;
    int followUps = 0;  ///< incidents and readings that nobody has answered
};
/// What is left and the next start, what is late or cannot be met, what a machine lacks, what wants an answer.
QString todayHeadline(const TodayFacts& facts);

}  // namespace laneward
