// The steps of a guided evening in words.
#pragma once

#include "core/documents/guide.h"
#include "core/documents/wording.h"

#include <QStringList>

namespace laneward {

/// "Otter: read all levels", "Lanes 1-8: clean and condition, Reed 38".
QString titleOf(const GuideStep& step, const JobSheet& sheet, const Speech& speech);
/// What has to be known for it, line by line: times, who waits, what it takes, what the limits are.
QStringList detailsOf(const GuideStep& step, const JobSheet& sheet, const Speech& speech);
/// Each in full, then that they defer to others; empty when there is none.
QStringList cautionsOf(const GuideStep& step, const Speech& speech);
/// "The plan has changed: 2 steps are new, 1 is at another time. …"; empty when nothing has.
QString changeText(const GuideChange& change);
/// A tick as it was said; a run that was recorded elsewhere by its job.
QString lineOf(const GuideTick& tick, const JobSheet& sheet, const Speech& speech);

}  // namespace laneward
