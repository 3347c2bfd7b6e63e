#include "core/season/season_questions.h"

#include <algorithm>

namespace laneward {

namespace {

struct Openings {
    std::vector<QDate> days;
    std::vector<std::vector<const Occurrence*>> givesWay;  ///< open play, for each day
};

bool isInTheWay(const Occurrence& o, const TournamentQuestion& question, const Span& time) {
    const bool closes = o.kind == EventKind::Closure && (o.lanes.isEmpty() || o.lanes.intersects(question.lanes));
    if (!closes && !o.lanes.intersects(question.lanes)) return false;
    return o.booked.begin < time.end && time.begin < (closes ? o.booked.end : o.cleared);
}

Openings openingsOf(const State& state, const Occupancy& occupancy, const TournamentQuestion& question, const DateRange& range) {
    const Zone zone = zoneOf(state.centre);
    Openings openings;
    for (QDate day = range.first; day <= range.last; day = day.addDays(1)) {
        if (day.dayOfWeek() != question.weekday) continue;
        const Instant begin = zone.toInstant({day, question.begins});
        const Span time{begin, begin + question.length + state.centre.facts.settings.clearing};
        std::vector<const Occurrence*> open;
        bool free = true;
        for (const Occurrence& o : occupancy.occurrences) {
            if (!isInTheWay(o, question, time)) continue;
            free = free && o.kind == EventKind::OpenPlay;
            open.push_back(&o);
        }
        if (!free) continue;
        openings.days.push_back(day);
        openings.givesWay.push_back(std::move(open));
    }
    return openings;
}

/// Takes lanes away from one occurrence.
void giveWay(State& state, const Occurrence& occurrence, const LaneSet& lanes) {
    for (Series& series : state.series) {
        if (series.id != occurrence.series) continue;
        auto change = std::find_if(series.overrides.begin(), series.overrides.end(),
                                   [&](const Override& o) { return o.original == occurrence.original; });
        if (change == series.overrides.end()) {
            change = series.overrides.insert(series.overrides.end(), Override());
            change->original = occurrence.original;
        }
        const LaneSet left = occurrence.lanes - lanes;
        if (left.isEmpty())
            change->cancelled = true;
        else
            change->lanes = left;
    }
}

/// `count` of `all` things in a row, as far apart as it goes.
std::vector<size_t> spreadOver(size_t all, size_t count) {
    std::vector<size_t> chosen;
    const size_t some = std::min(count, all);
    for (size_t i = 0; i < some; ++i)
        chosen.push_back((2 * i + 1) * all / (2 * some));
    return chosen;
}

}  // namespace

Supposed withTournaments(const State& state, const TournamentQuestion& question, const DateRange& range) {
    Supposed supposed{state, 0};
    if (question.lanes.isEmpty() || question.count < 1) return supposed;
    const Occupancy occupancy = occupancyOf(state.series, state.centre, range);
    const Openings openings = openingsOf(state, occupancy, question, range);
    const std::vector<size_t> chosen = spreadOver(openings.days.size(), size_t(question.count));
    const Settings& settings = state.centre.facts.settings;
    for (size_t i : chosen) {
        const QDate day = openings.days[i];
        for (const Occurrence* open : openings.givesWay[i])
            giveWay(supposed.state, *open, question.lanes);
        Series series;
        series.id = {QStringLiteral("supposed-%1").arg(day.toString(Qt::ISODate))};
        series.uid = series.id.value;
        series.title = QStringLiteral("?");
        series.kind = EventKind::Tournament;
        series.zone = state.centre.facts.zone;
        series.start = {day, question.begins};
        series.duration = question.length;
        series.lanes = question.lanes;
        series.settle = settings.settle;
        series.clearing = settings.clearing;
        SurfaceDemand demand;
        demand.lanes = question.lanes;
        demand.kind = DemandKind::Fresh;
        demand.pattern = question.pattern;
        demand.longestAge = settings.longestAge;
        series.demands = {demand};
        supposed.state.series.push_back(std::move(series));
    }
    supposed.count = int(chosen.size());
    return supposed;
}

TournamentQuestion suggestedTournament(const State& state, const DateRange& range) {
    constexpr int daysLookedAt = 56;
    constexpr size_t enough = 4;
    const DateRange near{range.first, std::min(range.last, range.first.addDays(daysLookedAt - 1))};
    const Occupancy occupancy = occupancyOf(state.series, state.centre, near);
    TournamentQuestion question;
    question.lanes = allLanes(state.centre);
    if (!state.patterns.empty()) question.pattern = state.patterns.front().id;
    const int lanes = state.centre.facts.lanes;
    for (const LaneSet& some : {question.lanes, LaneSet::range(lanes / 2 + 1, lanes), LaneSet::range(1, (lanes + 1) / 2)}) {
        for (int weekday : {6, 7, 5, 4, 3, 2, 1}) {
            for (const QTime begins : {QTime(10, 0), QTime(14, 0), QTime(18, 0)}) {
                TournamentQuestion tried = question;
                tried.lanes = some;
                tried.weekday = weekday;
                tried.begins = begins;
                tried.length = begins.hour() < 18 ? hours(6) : hours(4);
                if (openingsOf(state, occupancy, tried, near).days.size() >= enough) return tried;
            }
        }
    }
    return question;
}

Supposed withMachineOut(const State& state, const MachineId& machine, QDate from, int days) {
    Supposed supposed{state, 0};
    if (days < 1 || !from.isValid() || !findMachine(state.centre, machine)) return supposed;
    Outage outage;
    outage.id = {QStringLiteral("supposed")};
    outage.machine = machine;
    outage.begin = dayOf(state.centre, from).begin;
    outage.end = dayOf(state.centre, from.addDays(days - 1)).end;
    supposed.state.centre.outages.push_back(std::move(outage));
    supposed.count = days;
    return supposed;
}

Supposed withOpenPlayEvery(const State& state, int days) {
    Supposed supposed{state, 0};
    const Seconds age = hours(24) * std::clamp(days, 1, longestInterval);
    for (Series& series : supposed.state.series) {
        if (series.kind != EventKind::OpenPlay) continue;
        bool asked = false;
        for (SurfaceDemand& demand : series.demands) {
            const bool often = demand.kind == DemandKind::Fresh || (demand.kind == DemandKind::Recent && demand.longestAge < age);
            if (!often) continue;
            demand.kind = DemandKind::Recent;
            demand.longestAge = age;
            demand.longestPlay = age;
            asked = true;
        }
        supposed.count += asked ? 1 : 0;
    }
    return supposed;
}

}  // namespace laneward
