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

/// What goes on by day all the year round.
std::vector<Row> days() {
    return {
        {"open-day",
         "Open play, daytime",
         EventKind::OpenPlay,
         anyDay,
         QTime(12, 0),
         270,
         {13, 14, 15, 16, 21, 22, 23, 24},
         {asks(DemandKind::AsItIs, nullptr)}},
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
    };
}

/// What goes on in the evening all the year round.
std::vector<Row> evenings() {
    return {
        {"open-evening",
         "Open play, evening",
         EventKind::OpenPlay,
         anyDay,
         QTime(17, 30),
         330,
         LaneSet::range(21, 24),
         {recent("wren-36", 26, 12)}},
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

}  // namespace

std::vector<Series> diary(QDate today) {
    std::vector<Series> all;
    for (const Row& row : leagues()) {
        all.push_back(seriesOf(row, "-last", today, 52, 30));
        all.push_back(seriesOf(row, "", today, 16, 36));
    }
    for (const std::vector<Row>& regulars : {days(), evenings()}) {
        for (const Row& row : regulars)
            all.push_back(seriesOf(row, "", today, 52, 0));
    }
    return all;
}

}  // namespace laneward::demo
