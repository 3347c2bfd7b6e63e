// VTIMEZONE components (RFC 5545, section 3.6.5) from the system's tz database.
#pragma once

#include "core/base/zone.h"

#include <QByteArrayList>

namespace laneward {

struct YearSpan {
    int first = 0;  ///< 0 = nothing yet
    int last = 0;

    void include(int year) {
        first = first == 0 ? year : std::min(first, year);
        last = std::max(last, year);
    }
};

/// Lines without folding and line ends. Every change of offset from the year before `years` to ten years after is listed as
/// a date, not as a rule, so that no law about daylight saving has to be guessed.
QByteArrayList timeZoneLines(const Zone& zone, const QByteArray& id, const YearSpan& years);

}  // namespace laneward
