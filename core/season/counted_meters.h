// Meters of records as they stand on the counters of a machine, whenever those were first read.
//
// Before a machine's counter is first read its meter is what was logged, which begins at nothing; the first reading moves it to
// what the counter shows. A record from before that reading which knows no more than the logs did by then is moved along, so that
// what was done since is neither the counter's whole life nor less than nothing. One that stands higher was typed off the counter
// and stays.
//
//     CountedMeters counted(season);
//     const std::int64_t since = now.lanes - counted.of(machine, record).lanes;
#pragma once

#include "core/season/season.h"

#include <array>
#include <map>

namespace laneward {

class CountedMeters {
public:
    /// `season` outlives this; its counters, and what machines have done.
    explicit CountedMeters(const SeasonState& season);

    Meters of(const MachineId& machine, const ServiceRecord& record);

private:
    struct First {
        std::optional<Instant> at;
        std::int64_t logged = 0;  ///< by then
        std::int64_t shown = 0;
    };
    using Firsts = std::array<First, 3>;  ///< lanes, runs, minutes

    const Firsts& firstsOf(const MachineId& machine);

    const SeasonState& m_season;
    std::vector<MachineWork> m_work;
    std::map<MachineId, Firsts> m_firsts;
};

}  // namespace laneward
