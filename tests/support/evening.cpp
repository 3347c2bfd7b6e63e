#include "tests/support/evening.h"

namespace support {

using namespace laneward;

namespace {

Series event(const QString& id, const QString& title, const QTime& begin, Seconds length, const SurfaceDemand& demand) {
    Series series;
    series.id = {id};
    series.uid = id;
    series.title = title;
    series.zone = "Europe/London";
    series.start = {QDate(2026, 11, 12), begin};
    series.duration = length;
    series.rule = "FREQ=WEEKLY;BYDAY=TH";
    series.lanes = demand.lanes;
    series.demands = {demand};
    return series;
}

Centre house() {
    Centre centre;
    centre.facts = {{"evening"}, "Reedling Lanes", "Europe/London", 12, {}, 0};
    Machine machine;
    machine.id = {"m1"};
    machine.name = "Otter";
    machine.conditioners = {"Fenlight", {}};
    machine.cleaner = "Sluice";
    centre.machines = {machine};
    centre.people = {{{"ada"}, "Ada Fenwick", Role::Operator, true, 0}, {{"ben"}, "Ben & Co <b>", Role::Lead, true, 0}};
    Shift shift;
    shift.id = {"late"};
    shift.name = "late";
    shift.begin = QTime(14, 0);
    shift.end = QTime(23, 0);
    centre.shifts = {shift};
    return centre;
}

Pattern pattern() {
    Pattern reed;
    reed.id = {"reed"};
    reed.name = "Reed 38";
    reed.end = feet(38);
    reed.strokes = {{Direction::Out, 2, 38, 3, Microlitres{50}, feet(0), feet(30), 0},
                    {Direction::Back, 8, 32, 10, Microlitres{50}, feet(4), feet(30), 0}};
    return reed;
}

}  // namespace

SeasonState eveningSeason() {
    SeasonState season;
    season.centre = house();
    season.patterns = {pattern()};
    SurfaceDemand fresh;
    fresh.lanes = LaneSet::range(1, 8);
    fresh.kind = DemandKind::Fresh;
    fresh.pattern = PatternId{"reed"};
    SurfaceDemand asItIs;
    asItIs.lanes = LaneSet::range(1, 8);
    season.series = {event("league", "Thursday Fours", QTime(18, 30), hours(3), fresh),
                     event("open", "Open play", QTime(14, 0), minutes(150), asItIs)};
    return season;
}

Evening::Evening() {
    const Result<std::unique_ptr<Store>> store = Store::open(location(), Access::Create);
    if (!store) qFatal("evening: %s", store.error().finding.rule.constData());
    const Outcome filled = (*store)->replaceAll(eveningSeason(), {}, {"ada"}, eveningNow);
    if (!filled) qFatal("evening: %s", filled.error().finding.rule.constData());
}

std::unique_ptr<Store> Evening::store(Access access) const {
    Result<std::unique_ptr<Store>> store = Store::open(location(), access);
    if (!store) qFatal("evening: %s", store.error().finding.rule.constData());
    return *std::move(store);
}

}  // namespace support
