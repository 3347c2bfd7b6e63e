#include "tests/support/random_evening.h"

#include "core/planning/fewest.h"
#include "tests/support/planning_builders.h"
#include "tests/support/random_centre.h"

namespace support {

using namespace laneward::planning;

namespace {

class Maker {
public:
    Maker(unsigned seed, const EveningSize& size) : m_generator(seed), m_size(size) {}

    State make() {
        m_state = house(0);
        m_state.patterns = {patternOf("p1", 20), patternOf("p2", 30), patternOf("p3", 25), patternOf("p4", 40)};
        m_patterns = pick(1, 4);
        m_crowded = pick(1, 8) == 1;
        m_state.centre.machines.clear();
        for (int m = 1; m <= m_size.machines; ++m)
            addMachine(m);
        m_state.centre.shifts = {shiftOf("s1", {12, 0}, {23, 0}, pick(1, 3))};
        int lane = 1;
        for (int r = 0; r < m_size.runs; ++r)
            lane = addRun(lane);
        m_state.centre.facts.lanes = lane - 1;
        return m_state;
    }

private:
    int pick(int low, int high) { return between(m_generator, low, high); }

    void addMachine(int number) {
        Machine m = machineOf(QString("m%1").arg(number));
        m.times.lane[0] = Seconds{pick(9, 14) * 10};
        m.times.leaveBay = minutes(pick(4, 8));
        m.times.returnToBay = minutes(pick(3, 5));
        m.times.refill = minutes(5);
        m.capacity.conditioner[0] = millilitres(pick(400, 1'500));
        m_state.centre.machines.push_back(m);
    }

    /// Play until some time in the afternoon, then an event that wants its lanes fresh, then perhaps another.
    int addRun(int lane) {
        const int lanes = 2 * pick(1, m_size.mostPairs);
        const LaneSet set = LaneSet::range(lane, lane + lanes - 1);
        const int begins = 17 * 60 + 15 * pick(0, 12);
        const int free = m_crowded ? pick(30, 90) : pick(60, 240);
        addEvent(set, 13 * 60, begins - free - 13 * 60, {});
        addEvent(set, begins, 100, QString("p%1").arg(pick(1, m_patterns)));
        // Sometimes lanes that ask for nothing lie in between.
        return lane + lanes + (pick(1, 5) == 1 ? 2 : 0);
    }

    void addEvent(const LaneSet& lanes, int begins, int length, const QString& pattern) {
        Series s = eventOf(QString("e%1").arg(m_state.series.size() + 1), 0, QTime(begins / 60, begins % 60), length, lanes);
        if (pattern.isEmpty()) {
            s.demands = {asks(DemandKind::AsItIs, lanes, nullptr)};
        } else {
            s.demands[0].pattern = PatternId{pattern};
        }
        m_state.series.push_back(s);
    }

    std::mt19937 m_generator;
    EveningSize m_size;
    State m_state;
    int m_patterns = 1;
    bool m_crowded = false;
};

}  // namespace

State randomEvening(unsigned seed, const EveningSize& size) { return Maker(seed, size).make(); }

DayProblem problemOf(const State& state) {
    const DateRange range{day0, day0};
    const Instant now = at(0, 6);
    const Occupancy occupancy = occupancyOf(state.series, state.centre, range);
    const DemandSet demands = demandsOf(state, occupancy, now, range);
    const Ground ground = groundOf(state, occupancy, now, range);
    const Fewest fewest = fewestTreatments(state, demands, occupancy, now);
    std::vector<OpenTreatment> open;
    for (const PlannedTreatment& t : fewest.chosen)
        open.push_back({t, 0, 1});
    std::vector<const OpenTreatment*> pointers;
    for (const OpenTreatment& t : open)
        pointers.push_back(&t);
    DayStart start;
    start.dutyLeft.assign(ground.machines.size(), endless);
    return dayProblem(ground, demands, pointers, 0, start);
}

}  // namespace support
