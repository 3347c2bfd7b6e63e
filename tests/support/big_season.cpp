#include "tests/support/big_season.h"

#include <array>

using namespace laneward;

namespace support {

namespace {

constexpr int lanes = 64;
constexpr int patternCount = 6;

Pattern pattern(int i) {
    Pattern p{PatternId{QString("p%1").arg(i)}, QString("Pattern %1").arg(i), {}, feet(36 + 2 * i)};
    p.strokes = {{Direction::Out, 2, 38, 3, Microlitres{50}, feet(0), feet(20), 0},
                 {Direction::Out, 10, 30, 2, Microlitres{45}, feet(20), feet(34), 0},
                 {Direction::Back, 8, 32, 3, Microlitres{45}, feet(4), feet(30), 0}};
    return p;
}

/// One weekly series on `block` lanes.
Series weekly(int n, const char* day, QTime begin, int hoursLong, LaneSet block) {
    Series s;
    s.id = SeriesId{QString("s%1").arg(n, 3, 10, QChar('0'))};
    s.uid = s.id.value;
    s.title = QString("Series %1").arg(n);
    s.kind = EventKind::League;
    s.zone = "Europe/Berlin";
    s.rule = QString("FREQ=WEEKLY;BYDAY=%1").arg(QLatin1String(day));
    static const std::array names{"MO", "TU", "WE", "TH", "FR", "SA", "SU"};
    int weekday = 0;
    while (qstrcmp(names[size_t(weekday)], day) != 0)
        ++weekday;
    s.start = {bigSeasonBegins().addDays((weekday + 8 - bigSeasonBegins().dayOfWeek()) % 7), begin};
    s.duration = hours(hoursLong);
    s.lanes = block;
    s.demands = {{block, DemandKind::Fresh, PatternId{QString("p%1").arg(n % patternCount)}, Treatment::CleanAndCondition}};
    return s;
}

Centre centre() {
    Centre c;
    c.facts = {CentreId{"big"}, "Big", "Europe/Berlin", lanes, {}, 0};
    c.machines = {Machine{MachineId{"m1"}, "First"}, Machine{MachineId{"m2"}, "Second"}};
    for (Machine& m : c.machines)
        m.capacity.lanesPerCharge = 70;
    c.people = {Person{PersonId{"a"}, "A"}, Person{PersonId{"b"}, "B"}};
    Shift shift{ShiftId{"all"}, "All day"};
    shift.begin = QTime(8, 0);
    shift.end = QTime(23, 30);
    shift.people = 2;
    c.shifts = {shift};
    return c;
}

}  // namespace

State bigSeason() {
    State state;
    state.centre = centre();
    for (int i = 0; i < patternCount; ++i)
        state.patterns.push_back(pattern(i));
    int n = 0;
    // 7 days x 4 evening blocks of 16 lanes, 7 x 2 afternoon halves, 7 late-morning whole-house sessions as it is: 49 series …
    for (const char* day : {"MO", "TU", "WE", "TH", "FR", "SA", "SU"}) {
        for (int block = 0; block < 4; ++block) {
            state.series.push_back(
                weekly(n++, day, QTime(18 + block % 2, 30 * (block / 2)), 3, LaneSet::range(16 * block + 1, 16 * block + 16)));
        }
        for (int half = 0; half < 2; ++half) {
            Series s = weekly(n++, day, QTime(13, 30), 2, LaneSet::range(32 * half + 1, 32 * half + 32));
            s.demands[0].kind = half == 0 ? DemandKind::Recent : DemandKind::Pattern;
            s.demands[0].longestAge = hours(30);
            s.demands[0].pattern.reset();
            state.series.push_back(s);
        }
        Series open = weekly(n++, day, QTime(10, 0), 2, LaneSet::range(1, lanes));
        open.demands[0].kind = DemandKind::AsItIs;
        state.series.push_back(open);
    }
    // … and 11 monthly ones late on the first of a weekday, as it is.
    for (int i = 0; i < 11; ++i) {
        Series s = weekly(n++, "MO", QTime(22, 45), 1, LaneSet::range(5 * i + 1, 5 * i + 5));
        s.rule = QString("FREQ=MONTHLY;BYDAY=%1MO").arg(1 + i % 4);
        s.demands[0].kind = DemandKind::AsItIs;
        state.series.push_back(s);
    }
    return state;
}

}  // namespace support
