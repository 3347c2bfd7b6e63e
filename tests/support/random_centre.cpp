#include "tests/support/random_centre.h"

namespace support {

using namespace laneward;

namespace {

class Maker {
public:
    explicit Maker(unsigned seed) : m_generator(seed) {}

    State make() {
        m_state.centre.facts.name = "Random";
        m_state.centre.facts.id = {"random"};
        m_state.centre.facts.zone = chance(2) ? "Europe/Berlin" : "America/New_York";
        m_lanes = m_state.centre.facts.lanes = chance(4) ? pick(1, 4) : pick(5, 64);
        m_state.centre.facts.settings.pairPartnerRule = !chance(4);
        m_state.centre.facts.settings.reserve = minutes(pick(0, 15));
        addPatterns();
        addMachines();
        addShifts();
        const int events = pick(1, 10);
        for (int e = 0; e < events; ++e)
            addSeries(e);
        if (chance(3)) addClosure();
        if (chance(3)) addOutage();
        addHistory();
        return m_state;
    }

private:
    int pick(int low, int high) { return between(m_generator, low, high); }
    bool chance(int oneIn) { return pick(1, oneIn) == 1; }

    Instant at(int day, int minute) const {
        return zoneOf(m_state.centre).toInstant({randomBegins().addDays(day), QTime(0, 0)}) + minutes(minute);
    }

    LaneSet someLanes() {
        const int first = pick(1, m_lanes);
        return LaneSet::range(first, chance(3) ? m_lanes : pick(first, m_lanes));
    }

    void addPatterns() {
        for (int p = 0; p < 3; ++p) {
            Pattern pattern;
            pattern.id = {QString("p%1").arg(p)};
            pattern.name = QString("Pattern %1").arg(p);
            pattern.end = feet(pick(36, 47));
            pattern.strokes.push_back({Direction::Out, 2, 38, pick(1, 4), {pick(20, 80)}, {}, feet(30), 0});
            pattern.strokes.push_back({Direction::Back, 10, 30, pick(1, 4), {pick(20, 80)}, {}, feet(20), chance(4) ? 1 : 0});
            m_state.patterns.push_back(pattern);
        }
    }

    void addMachines() {
        const int machines = pick(1, 3);
        for (int m = 0; m < machines; ++m) {
            Machine machine;
            machine.id = {QString("m%1").arg(m)};
            machine.name = QString("Machine %1").arg(m);
            machine.attended = !chance(5);
            machine.times.lane = {Seconds{pick(60, 120)}, Seconds{pick(50, 100)}, Seconds{pick(40, 80)}};
            machine.times.leaveBay = Seconds{pick(60, 400)};
            machine.times.returnToBay = Seconds{pick(60, 400)};
            machine.capacity.conditioner = {millilitres(pick(100, 2000)), millilitres(pick(100, 1000))};
            machine.capacity.cleaner = millilitres(pick(1000, 7000));
            machine.capacity.waste = millilitres(pick(1000, 9000));
            machine.capacity.lanesPerCharge = pick(6, 60);
            machine.capacity.sparePacks = pick(0, 1);
            machine.times.charge = minutes(pick(60, 240));
            if (chance(3)) machine.capacity.lanesUntilDuty = pick(8, 200);
            if (chance(5)) machine.bars.lanes = someLanes();
            if (chance(6)) machine.bars.patterns.push_back({"p1"});
            if (chance(8)) machine.bars.treatments.push_back(Treatment::CleanOnly);
            m_state.centre.machines.push_back(machine);
            if (chance(2)) addLevels(machine);
        }
    }

    void addLevels(const Machine& machine) {
        MachineLevels levels = fullLevels(machine, limitsFromSettings(machine), at(0, 0));
        for (Microlitres& c : levels.conditioner)
            c = {c.value * pick(0, 100) / 100};
        levels.cleaner = {levels.cleaner.value * pick(0, 100) / 100};
        levels.waste = {machine.capacity.waste.value * pick(0, 100) / 100};
        levels.lanesLeft = pick(0, machine.capacity.lanesPerCharge);
        m_state.levels.push_back(levels);
    }

    void addShifts() {
        const int shifts = pick(1, 2);
        for (int s = 0; s < shifts; ++s) {
            Shift shift;
            shift.id = {QString("s%1").arg(s)};
            shift.name = QString("Shift %1").arg(s);
            shift.begin = QTime(pick(7, 14), 0);
            shift.end = QTime(pick(16, 23), 30);
            shift.people = pick(1, 3);
            shift.overtimeBefore = minutes(pick(0, 2) * 30);
            m_state.centre.shifts.push_back(shift);
        }
    }

    SurfaceDemand someDemand(const LaneSet& lanes) {
        SurfaceDemand demand;
        demand.lanes = lanes;
        demand.kind = DemandKind(pick(0, 4));
        if (chance(3)) demand.kind = DemandKind::Fresh;
        if (!chance(4)) demand.pattern = PatternId{QString("p%1").arg(pick(0, 2))};
        if (chance(5)) demand.least = Treatment::ConditionOnly;
        if (chance(8)) {
            demand.least = Treatment::CleanOnly;
            demand.pattern.reset();
        }
        demand.longestAge = hours(pick(2, 14));
        demand.longestPlay = hours(pick(1, 6));
        return demand;
    }

    void addSeries(int number) {
        Series series;
        series.id = {QString("e%1").arg(number)};
        series.uid = series.id.value;
        series.title = QString("Event %1").arg(number);
        series.kind = EventKind(pick(0, 5));
        series.zone = m_state.centre.facts.zone;
        series.start = {randomBegins().addDays(pick(-7, 2)), QTime(pick(9, 22), 5 * pick(0, 11))};
        series.duration = minutes(pick(6, 40) * 5);
        series.rule = chance(2) ? "FREQ=DAILY" : "FREQ=WEEKLY";
        series.lanes = someLanes();
        series.settle = minutes(pick(0, 20));
        series.clearing = minutes(pick(0, 15));
        series.firstPairTwice = chance(4);
        series.demands.push_back(someDemand(series.lanes));
        if (chance(4)) {
            const LaneSet half = LaneSet::range(series.lanes.first(), (series.lanes.first() + series.lanes.last()) / 2);
            series.demands.insert(series.demands.begin(), someDemand(half));
        }
        m_state.series.push_back(series);
    }

    void addClosure() {
        Series closure;
        closure.id = {"closure"};
        closure.uid = "closure";
        closure.title = "Closed";
        closure.kind = EventKind::Closure;
        closure.zone = m_state.centre.facts.zone;
        closure.start = {randomBegins().addDays(pick(0, 1)), QTime(pick(8, 18), 0)};
        closure.duration = hours(pick(1, 5));
        closure.noStaff = !chance(3);
        if (chance(2)) closure.lanes = someLanes();
        m_state.series.push_back(closure);
    }

    void addOutage() {
        Outage outage;
        outage.id = {"o"};
        if (chance(2)) {
            outage.lanes = someLanes();
        } else {
            outage.machine = m_state.centre.machines.front().id;
        }
        outage.begin = at(0, pick(0, 2000));
        if (!chance(4)) outage.end = outage.begin + minutes(pick(30, 600));
        m_state.centre.outages.push_back(outage);
    }

    void addHistory() {
        for (int lane = 1; lane <= m_lanes; ++lane) {
            if (chance(3)) continue;
            LaneTreatment last;
            last.lane = lane;
            last.treatment = chance(6) ? Treatment::CleanOnly : Treatment::CleanAndCondition;
            if (last.treatment != Treatment::CleanOnly) last.pattern = PatternId{QString("p%1").arg(pick(0, 2))};
            last.end = at(-1, pick(600, 1440));
            m_state.history.push_back(last);
        }
    }

    std::mt19937 m_generator;
    State m_state;
    int m_lanes = 0;
};

}  // namespace

int between(std::mt19937& generator, int low, int high) {
    // Not std::uniform_int_distribution: what it makes of the same generator is up to the library.
    return low + int(generator() % unsigned(high - low + 1));
}

State randomCentre(unsigned seed) { return Maker(seed).make(); }

}  // namespace support
