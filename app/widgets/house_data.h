// What the house view shows, as plain data in the reader's language: lane heads, events, jobs, what is missing, what is out of
// service.
//
//     HouseData data = houseData({season, plan, speech}, now);
#pragma once

#include "core/documents/wording.h"

#include <QObject>

namespace laneward {

struct HouseItem {
    enum class Kind { Event, Job, Shortfall, Outage };
    Kind kind = Kind::Event;
    QString key;  ///< "event:…", "job:…", "short:…", "outage:…"; see keyOf()
    Span time;
    LaneSet lanes;
    QString title;
    QString detail;  ///< what it asks, or its pattern and amounts
    QString spoken;  ///< one sentence that says all of it
    EventKind event = EventKind::Other;
    bool conflict = false;  ///< claims lanes that another event has
    Treatment treatment = Treatment::CleanAndCondition;
    JobState state = JobState::Proposed;
    QString late;      ///< in words; empty = in time
    int lastLane = 0;  ///< of a job that was cut short
    size_t index = 0;  ///< into the plan's occurrences, jobs or shortfalls, or the centre's outages
    bool log = false;  ///< a recorded run whose job is not in the plan: `index` is into the season's runs
};

/// Adjacent lanes that carry the same pattern of the same age.
struct LaneBand {
    int first = 1;
    int last = 1;
    QString pattern;  ///< its name; words when stripped or unknown
    QString age;
    QString spoken;
    bool inPlay = false;
    bool outOfService = false;
};

struct HouseData {
    int lanes = 0;
    Span range;
    std::vector<Instant> days;  ///< the beginning of each centre's day in the range
    Zone zone;
    Instant now;
    QString headsTitle;  ///< "now" or the clock time at which the heads hold
    std::vector<LaneBand> bands;
    std::vector<HouseItem> items;  ///< events first, then what lies above them
};

/// All of it read only; the plan covers the days to be shown.
struct HouseSource {
    const SeasonState& season;
    const Plan& plan;
    const Speech& speech;
};

HouseData houseData(const HouseSource& source, Instant now);
/// A job by itself; its index stays 0.
HouseItem jobItem(const Job& job, const SeasonState& season, const Speech& speech);
/// Lane heads at `at`: recorded runs, and for times ahead the jobs that the plan will have done by then. `before` are the
/// occurrences of the days up to `at`.
std::vector<LaneBand> laneBands(const HouseSource& source, const Occupancy& before, Instant at);

QString keyOf(const Occurrence& occurrence);
QString keyOf(const Job& job);
QString keyOf(const Shortfall& shortfall);
/// "event:" with this identity, for finding an occurrence that is known by its series and original start.
QString eventKey(const SeriesId& series, const LocalTime& original);

/// "fresh · Bittern 38" for an event's demands, each with its lanes when they differ.
QString demandsText(const Occurrence& occurrence, const std::vector<Pattern>& patterns);
QString patternName(const std::optional<PatternId>& id, const std::vector<Pattern>& patterns);

}  // namespace laneward
