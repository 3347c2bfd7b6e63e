// Random sound series, the same on every machine for the same seed.
#pragma once

#include "core/calendar/series.h"
#include "tests/support/random_rules.h"

namespace laneward::build {

class RandomCalendars {
public:
    explicit RandomCalendars(unsigned seed) : m_rules(seed) {}
    /// A series without faults in a centre of 24 lanes; every field may differ from its default.
    Series next();

private:
    QString name(int length);
    LaneSet lanes(const LaneSet& within);
    SurfaceDemand demand(const LaneSet& within);
    std::vector<LocalTime> dates(const LocalTime& near);
    Override change(const LocalTime& original);

    RandomRules m_rules;
    int m_serial = 0;
};

}  // namespace laneward::build
