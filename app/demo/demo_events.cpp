#include "app/demo/demo_parts.h"

namespace laneward::demo {

namespace {

struct Play {
    int minutes;
    LaneSet lanes;
};

Series once(const char* id, const char* title, EventKind kind, const LocalTime& start, const Play& play) {
    Series series;
    series.id = {QString::fromLatin1(id)};
    series.uid = series.id.value;
    series.title = QString::fromLatin1(title);
    series.kind = kind;
    series.zone = "Europe/London";
    series.start = start;
    series.duration = minutes(play.minutes);
    series.lanes = play.lanes;
    SurfaceDemand demand;
    demand.lanes = play.lanes;
    series.demands = {demand};
    return series;
}

/// Every Saturday night across midnight, and so across both changes of the clocks.
Series midnightOtters(QDate today) {
    const QDate saturday = today.addDays(-historyDays + 13 - (today.dayOfWeek() % 7 + 1) % 7);
    Series series = once("midnight-otters", "Midnight Otters", EventKind::OpenPlay, {saturday.addDays(-7), QTime(22, 30)},
                         {210, LaneSet::range(9, 16)});
    series.rule = "FREQ=WEEKLY;BYDAY=SA";
    return series;
}

std::vector<Series> closures(QDate today) {
    const LaneSet all = LaneSet::range(1, 24);
    Series annual = once("annual-closure", "Annual closure", EventKind::Closure, {today.addDays(40).addYears(-2), QTime(5, 0)},
                         {24 * 60, all});
    annual.rule = "FREQ=YEARLY";
    annual.noStaff = true;
    Series resurfacing = once("resurfacing", "Lanes 21-24 resurfaced", EventKind::Closure, {today.addDays(20), QTime(5, 0)},
                              {24 * 60, LaneSet::range(21, 24)});
    return {annual, resurfacing};
}

/// Three squads on two days; what usually plays on those lanes makes room.
std::vector<Series> tournament(const QString& suffix, const QString& title, QDate first) {
    std::vector<Series> squads;
    const QTime starts[] = {QTime(9, 30), QTime(13, 30), QTime(17, 30)};
    for (int n = 0; n < 3; ++n) {
        const QString letter(QChar('A' + n));
        Series squad = once("cup", "", EventKind::Tournament, {first, starts[n]}, {150, LaneSet::range(1, 16)});
        squad.id.value += suffix + "-" + letter.toLower();
        squad.uid = squad.id.value;
        squad.title = title + ", squad " + letter;
        squad.extraDates = {{first.addDays(1), starts[n]}};
        squad.demands[0].kind = DemandKind::Fresh;
        squad.demands[0].pattern = PatternId{"heron-45"};
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

void addTournaments(std::vector<Series>& all, QDate today) {
    const std::pair<QDate, const char*> cups[] = {{today.addDays(9), "Quillmarsh Cup"}, {today.addDays(-103), "Eel Pie Trophy"}};
    for (const auto& [first, title] : cups) {
        makeRoom(all, first);
        makeRoom(all, first.addDays(1));
    }
    for (const auto& [first, title] : cups) {
        const std::vector<Series> squads = tournament(first > today ? "" : "-last", QString::fromLatin1(title), first);
        all.insert(all.end(), squads.begin(), squads.end());
    }
}

}  // namespace

std::vector<Series> events(QDate today) {
    std::vector<Series> all = diary(today);
    all.push_back(midnightOtters(today));
    addTournaments(all, today);
    Series camp =
        once("camp", "Half-term camp", EventKind::School, {today.addDays(30), QTime(10, 0)}, {105, LaneSet::range(17, 24)});
    camp.rule = "FREQ=DAILY;COUNT=5";
    all.push_back(camp);
    all.push_back(
        once("osier", "Osier Insurance party", EventKind::Party, {today.addDays(4), QTime(13, 0)}, {120, LaneSet::range(1, 6)}));
    for (const Series& closure : closures(today))
        all.push_back(closure);
    addOverrides(all, today);
    return all;
}

}  // namespace laneward::demo
