// What a bowling centre is: its lanes, machines, people, shifts and settings. Plain values; nothing here changes a thing.
//
// A centre's day runs from `dayBegins` (wall time, default 05:00) to the same time on the next date, so that play and
// work after midnight belong to the evening before.
#pragma once

#include "core/base/dates.h"
#include "core/base/ids.h"
#include "core/centre/machine.h"

#include <optional>
#include <vector>

namespace laneward {

enum class Role { Operator, Lead, Manager };
enum class UnitSystem { Metric, UsCustomary };

struct Person {
    PersonId id;
    QString name;
    Role role = Role::Operator;
    bool active = true;
    std::int64_t version = 0;
    friend bool operator==(const Person&, const Person&) = default;
};

/// Weekly working time of lane staff. `end` at or before `begin` means on the next date.
struct Shift {
    ShiftId id;
    QString name;
    std::uint8_t weekdays = 0x7f;  ///< bit 0 = Monday … bit 6 = Sunday
    QTime begin{9, 0};
    QTime end{23, 0};
    int people = 1;
    Seconds overtimeBefore = minutes(60);  ///< allowance
    Seconds overtimeAfter = minutes(60);
    std::vector<QDate> daysOff;    ///< dates on which this shift does not work
    std::vector<QDate> extraDays;  ///< dates on which it works besides its weekdays
    std::int64_t version = 0;
    friend bool operator==(const Shift&, const Shift&) = default;
};

/// Lanes or a machine out of service. No `end` means until further notice.
struct Outage {
    OutageId id;
    LaneSet lanes;
    std::optional<MachineId> machine;
    Instant begin;
    std::optional<Instant> end;
    QString note;
    std::int64_t version = 0;
    friend bool operator==(const Outage&, const Outage&) = default;
};

struct Settings {
    bool pairPartnerRule = true;    ///< no treatment while the pair partner is played on
    Seconds reserve = minutes(10);  ///< kept free between the planned end and the settle time
    Seconds settle = minutes(15);   ///< defaults for new series …
    Seconds clearing = minutes(10);
    Seconds longestAge = hours(12);
    QTime dayBegins{5, 0};
    UnitSystem units = UnitSystem::Metric;
    bool letterPaper = false;     ///< A4 otherwise
    QByteArray currency = "EUR";  ///< ISO 4217; of everything that is bought
    friend bool operator==(const Settings&, const Settings&) = default;
};

/// What the centre itself asks of a tape reading; none = it asks nothing. Film in thousandths of a unit.
struct ReadingLimits {
    std::optional<std::int64_t> lowestMilliUnits;        ///< least film anywhere in the oiled part
    std::optional<std::int64_t> largestErrorMilliUnits;  ///< mean error against the computed film, either way
    std::optional<int> leastTrackPermille;               ///< track ratio, middle over outer boards, times 1,000
    std::optional<int> mostTrackPermille;
    friend bool operator==(const ReadingLimits&, const ReadingLimits&) = default;
};

struct CentreFacts {
    CentreId id;
    QString name;
    QByteArray zone = "UTC";  ///< IANA id
    int lanes = 0;            ///< numbered 1..lanes
    Settings settings;
    std::int64_t version = 0;
    ReadingLimits readingLimits;
    friend bool operator==(const CentreFacts&, const CentreFacts&) = default;
};

struct Centre {
    CentreFacts facts;
    std::vector<Machine> machines;
    std::vector<Person> people;
    std::vector<Shift> shifts;
    std::vector<Outage> outages;
    friend bool operator==(const Centre&, const Centre&) = default;
};

/// A shift on one date, in instants.
struct ShiftSpan {
    ShiftId shift;
    Span work;       ///< paid time
    Span allowance;  ///< work with overtime on both sides
    int people = 1;
};

/// The centre's zone; UTC when its id is unknown.
Zone zoneOf(const Centre& centre);
/// From dayBegins on `date` to dayBegins on the next date.
Span dayOf(const Centre& centre, QDate date);
/// The centre's day that contains `t`.
QDate dateOf(const Centre& centre, Instant t);
/// Shifts that begin on `date`, in order of their start.
std::vector<ShiftSpan> shiftsOn(const Centre& centre, QDate date);
LaneSet allLanes(const Centre& centre);
const Machine* findMachine(const Centre& centre, const MachineId& id);
const Person* findPerson(const Centre& centre, const PersonId& id);
/// What cannot be: no lanes, unknown zone, a capacity of nothing, names that are empty or twice. Empty when sound.
std::vector<Finding> faultsOf(const Centre& centre);

}  // namespace laneward
