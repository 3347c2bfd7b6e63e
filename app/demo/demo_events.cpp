#include "app/demo/demo_parts.h"

#include <QLocale>

namespace laneward::demo {

namespace {

constexpr int anyDay = -1;

/// One row of the weekly diary. Evenings are placed relative to the day on which the demo is made.
struct Row {
    const char* id;
    const char* title;  ///< %1 is the weekday
    EventKind kind;
    int day;  ///< 0 = the weekday of the demo, 1 = the next …; anyDay = daily
    QTime start;
    int minutes;
    LaneSet lanes;
    std::vector<SurfaceDemand> demands;
    int players = 0;
};

SurfaceDemand asks(DemandKind kind, const char* pattern, const LaneSet& lanes = {}) {
    SurfaceDemand demand;
    demand.kind = kind;
    demand.lanes = lanes;
    if (pattern) demand.pattern = PatternId{QString::fromLatin1(pattern)};
    return demand;
}

SurfaceDemand fresh(const char* pattern, const LaneSet& lanes = {}) { return asks(DemandKind::Fresh, pattern, lanes); }

SurfaceDemand recent(const char* pattern, int age, int play, Treatment least = Treatment::CleanAndCondition) {
    SurfaceDemand demand = asks(DemandKind::Recent, pattern);
    demand.longestAge = hours(age);
    demand.longestPlay = hours(play);
    demand.least = least;
    return demand;
}

SurfaceDemand stripped() {
    SurfaceDemand demand = asks(DemandKind::Stripped, nullptr);
    demand.least = Treatment::CleanOnly;
    return demand;
}

/// Leagues that have a last and a present season.
std::vector<Row> leagues() {
    const auto league = EventKind::League;
    return {
        {"reed-cutters", "%1 Reed Cutters", league, 0, QTime(18, 0), 150, LaneSet::range(1, 12), {fresh("bittern-38")}, 48},
        {"marsh-mixed",
         "%1 Marsh Mixed",
         league,
         0,
         QTime(18, 30),
         150,
         LaneSet::range(13, 20),
         {fresh("curlew-41", {13, 14, 15, 16, 17, 19}), fresh("avocet-39", {18, 20})},
         32},
        {"late-lanterns", "%1 Late Lanterns", league, 0, QTime(21, 30), 120, LaneSet::range(1, 8), {fresh("curlew-41")}, 24},
        {"harbour-trades", "%1 Harbour Trades", league, 1, QTime(19, 0), 150, LaneSet::range(1, 16), {fresh("wren-36")}, 64},
        {"sluicegate", "Sluicegate Doubles", league, 2, QTime(18, 30), 150, LaneSet::range(1, 10), {fresh("curlew-41")}, 40},
        {"mill-street",
         "Mill Street Works",
         league,
         2,
         QTime(18, 30),
         150,
         LaneSet::range(11, 20),
         {recent("wren-36", 30, 6, Treatment::ConditionOnly)},
         40},
        {"levels-ladies", "Ladies of the Levels", league, 3, QTime(19, 0), 150, LaneSet::range(5, 16), {fresh("avocet-39")}, 36},
        {"nightjar-scratch", "Nightjar Scratch", league, 4, QTime(19, 30), 150, LaneSet::range(1, 8), {fresh("nightjar-43")}, 24},
        {"silver-sedge", "Silver Sedge seniors", league, 1, QTime(13, 0), 150, LaneSet::range(1, 8), {fresh("wren-36")}, 32},
    };
}

/// What goes on all the year round.
std::vector<Row> regulars() {
    return {
        {"open-day",
         "Open play, daytime",
         EventKind::OpenPlay,
         anyDay,
         QTime(12, 0),
         270,
         {13, 14, 15, 16, 21, 22, 23, 24},
         {asks(DemandKind::AsItIs, nullptr)}},
        {"open-evening",
         "Open play, evening",
         EventKind::OpenPlay,
         anyDay,
         QTime(17, 30),
         330,
         LaneSet::range(21, 24),
         {recent("wren-36", 26, 12)}},
        {"alder-hill",
         "Alder Hill School",
         EventKind::School,
         2,
         QTime(10, 0),
         90,
         LaneSet::range(1, 8),
         {asks(DemandKind::Pattern, "wren-36")},
         40},
        {"fen-lane",
         "Fen Lane Primary",
         EventKind::School,
         4,
         QTime(10, 0),
         90,
         LaneSet::range(9, 12),
         {asks(DemandKind::AsItIs, nullptr)},
         22},
        {"coots",
         "Lunch-hour Coots",
         EventKind::Practice,
         0,
         QTime(12, 15),
         75,
         LaneSet::range(1, 6),
         {asks(DemandKind::AsItIs, nullptr)},
         12},
        {"academy-teal",
         "Academy, short oil",
         EventKind::Practice,
         1,
         QTime(17, 0),
         75,
         LaneSet::range(17, 20),
         {fresh("teal-34")},
         12},
        {"academy-nightjar",
         "Academy, scratch squad",
         EventKind::Practice,
         3,
         QTime(16, 45),
         75,
         LaneSet::range(1, 4),
         {recent("nightjar-43", 24, 4)},
         10},
        {"tadpoles",
         "Tadpoles juniors",
         EventKind::Other,
         5,
         QTime(10, 0),
         120,
         LaneSet::range(1, 12),
         {asks(DemandKind::Pattern, "wren-36")},
         36},
        {"birthday-slots",
         "Birthday parties",
         EventKind::Party,
         5,
         QTime(14, 0),
         120,
         LaneSet::range(1, 6),
         {asks(DemandKind::AsItIs, nullptr)},
         30},
        {"lantern-disco",
         "Lantern disco",
         EventKind::OpenPlay,
         5,
         QTime(20, 0),
         270,
         LaneSet::range(1, 8),
         {asks(DemandKind::AsItIs, nullptr)}},
        {"social", "%1 Social", EventKind::League, 6, QTime(19, 0), 150, LaneSet::range(5, 16), {recent("wren-36", 36, 10)}, 48},
        {"strip-night", "%1 Strip night", EventKind::Other, 6, QTime(19, 0), 120, LaneSet::range(17, 20), {stripped()}, 8},
    };
}

Series seriesOf(const Row& row, const QString& suffix, QDate today, int weeksAgo, int weeks) {
    const int day = row.day == anyDay ? 0 : row.day;
    const QDate first = today.addDays(day - 7 * weeksAgo);
    Series series;
    series.id = {QString::fromLatin1(row.id) + suffix};
    series.uid = series.id.value;
    series.title = QString::fromLatin1(row.title).replace("%1", QLocale::c().dayName(first.dayOfWeek()));
    series.kind = row.kind;
    series.zone = "Europe/London";
    series.start = {first, row.start};
    series.duration = minutes(row.minutes);
    series.lanes = row.lanes;
    series.demands = row.demands;
    series.players = row.players;
    series.firstPairTwice = series.id.value.startsWith("nightjar");
    for (SurfaceDemand& demand : series.demands)
        demand.lanes = demand.lanes.isEmpty() ? row.lanes : demand.lanes;
    static constexpr const char* names[] = {"MO", "TU", "WE", "TH", "FR", "SA", "SU"};
    series.rule = row.day == anyDay ? QString("FREQ=DAILY") : QString("FREQ=WEEKLY;BYDAY=") + names[first.dayOfWeek() - 1];
    if (weeks > 0) series.rule += QString(";COUNT=%1").arg(weeks);
    return series;
}

Series once(const char* id, const char* title, EventKind kind, const LocalTime& start, int minutesLong, const LaneSet& lanes) {
    Series series;
    series.id = {QString::fromLatin1(id)};
    series.uid = series.id.value;
    series.title = QString::fromLatin1(title);
    series.kind = kind;
    series.zone = "Europe/London";
    series.start = start;
    series.duration = minutes(minutesLong);
    series.lanes = lanes;
    SurfaceDemand demand = asks(DemandKind::AsItIs, nullptr);
    demand.lanes = lanes;
    series.demands = {demand};
    return series;
}

/// Every Saturday night across midnight, and so across both changes of the clocks.
Series midnightOtters(QDate today) {
    const QDate saturday = today.addDays(-historyDays + 13 - (today.dayOfWeek() % 7 + 1) % 7);
    Series series = once("midnight-otters", "Midnight Otters", EventKind::OpenPlay, {saturday.addDays(-7), QTime(22, 30)}, 210,
                         LaneSet::range(9, 16));
    series.rule = "FREQ=WEEKLY;BYDAY=SA";
    return series;
}

std::vector<Series> closures(QDate today) {
    const LaneSet all = LaneSet::range(1, 24);
    Series annual =
        once("annual-closure", "Annual closure", EventKind::Closure, {today.addDays(40).addYears(-2), QTime(5, 0)}, 24 * 60, all);
    annual.rule = "FREQ=YEARLY";
    annual.noStaff = true;
    Series resurfacing = once("resurfacing", "Lanes 21-24 resurfaced", EventKind::Closure, {today.addDays(20), QTime(5, 0)},
                              24 * 60, LaneSet::range(21, 24));
    return {annual, resurfacing};
}

/// Three squads on two days; what usually plays on those lanes makes room.
std::vector<Series> tournament(const QString& suffix, const QString& title, QDate first) {
    std::vector<Series> squads;
    const QTime starts[] = {QTime(9, 30), QTime(13, 30), QTime(17, 30)};
    for (int n = 0; n < 3; ++n) {
        const QString letter(QChar('A' + n));
        Series squad = once("cup", "", EventKind::Tournament, {first, starts[n]}, 150, LaneSet::range(1, 16));
        squad.id.value += suffix + "-" + letter.toLower();
        squad.uid = squad.id.value;
        squad.title = title + ", squad " + letter;
        squad.extraDates = {{first.addDays(1), starts[n]}};
        squad.demands = {fresh("heron-45", squad.lanes)};
        squad.players = 48;
        squads.push_back(squad);
    }
    return squads;
}

void makeRoom(std::vector<Series>& all, QDate date) {
    for (Series& series : all) {
        const bool weekly = series.rule.startsWith("FREQ=WEEKLY") && series.start.date.dayOfWeek() == date.dayOfWeek();
        const bool onThatDay = (weekly || series.rule.startsWith("FREQ=DAILY")) && series.start.date <= date;
        if (onThatDay && series.lanes.intersects(LaneSet::range(1, 16)))
            series.excludedDates.push_back({date, series.start.time});
    }
}

void addOverrides(std::vector<Series>& all, QDate today) {
    const auto add = [&all](const char* id, QDate date, const auto& change) {
        for (Series& series : all) {
            if (series.id.value != QLatin1String(id)) continue;
            Override one;
            one.original = {date, series.start.time};
            change(one);
            series.overrides.push_back(one);
        }
    };
    add("reed-cutters", today.addDays(14), [](Override& o) { o.cancelled = true; });
    add("levels-ladies", today.addDays(17), [](Override& o) { o.start = LocalTime{o.original.date, QTime(20, 0)}; });
    add("harbour-trades", today.addDays(8), [](Override& o) {
        o.title = "Harbour Trades, position night";
        o.duration = minutes(180);
    });
    add("sluicegate", today.addDays(16), [](Override& o) { o.lanes = LaneSet::range(1, 8); });
}

}  // namespace

std::vector<Series> events(QDate today) {
    std::vector<Series> all;
    for (const Row& row : leagues()) {
        all.push_back(seriesOf(row, "-last", today, 52, 30));
        all.push_back(seriesOf(row, "", today, 16, 36));
    }
    for (const Row& row : regulars())
        all.push_back(seriesOf(row, "", today, 52, 0));
    all.push_back(midnightOtters(today));
    const std::pair<QDate, const char*> cups[] = {{today.addDays(9), "Quillmarsh Cup"}, {today.addDays(-103), "Eel Pie Trophy"}};
    for (const auto& [first, title] : cups) {
        makeRoom(all, first);
        makeRoom(all, first.addDays(1));
    }
    for (const auto& [first, title] : cups) {
        const std::vector<Series> squads = tournament(first > today ? "" : "-last", QString::fromLatin1(title), first);
        all.insert(all.end(), squads.begin(), squads.end());
    }
    Series camp =
        once("camp", "Half-term camp", EventKind::School, {today.addDays(30), QTime(10, 0)}, 105, LaneSet::range(17, 24));
    camp.rule = "FREQ=DAILY;COUNT=5";
    all.push_back(camp);
    all.push_back(
        once("osier", "Osier Insurance party", EventKind::Party, {today.addDays(4), QTime(13, 0)}, 120, LaneSet::range(1, 6)));
    for (const Series& closure : closures(today))
        all.push_back(closure);
    addOverrides(all, today);
    return all;
}

}  // namespace laneward::demo
