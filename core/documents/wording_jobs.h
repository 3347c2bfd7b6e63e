// A job's place in words: why it is where it is, how much room it has, and what it would cost to move it.
#pragma once

#include "core/documents/wording.h"
#include "core/planning/moves.h"

#include <QStringList>

namespace laneward {

/// "the outing can be 15 min later, from 17:32: 3 lanes would be ready inside the reserve, by up to 5 min".
QString text(const JobMove& move, const Speech& speech);
/// "12 min to spare", "nothing to spare", "TIGHT: …", "LATE by …", the same words as on the sheet; then what fixes the job's
/// place.
QStringList placeText(const Job& job, const Speech& speech);

}  // namespace laneward
