// Ranges of whole days in a centre's wall time.
#pragma once

#include "core/base/zone.h"

namespace laneward {

/// Days from `first` to `last`, both included. Empty when last is before first.
struct DateRange {
    QDate first;
    QDate last;

    int days() const { return first.isValid() && last.isValid() ? int(qMax(qint64{0}, first.daysTo(last) + 1)) : 0; }
    bool contains(QDate d) const { return first <= d && d <= last; }
    friend bool operator==(const DateRange&, const DateRange&) = default;
};

}  // namespace laneward
