#include "app/pages/lanes/why_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WhyText)
};

constexpr size_t nextShown = 6;

QString spanText(const Span& span, const Speech& speech) {
    return Words::tr("%1 to %2").arg(clockTime(span.begin, speech), clockTime(span.end, speech));
}

QString lanesText(const LaneSet& lanes) {
    return (lanes.count() == 1 ? Words::tr("lane %1") : Words::tr("lanes %1")).arg(lanes.text());
}

/// Jobs of the plan that serve one occurrence.
WhySection servedBy(const HouseSource& source, const Occurrence& occurrence) {
    WhySection section{Words::tr("Served by"), {}};
    for (const Job& job : source.plan.jobs) {
        const bool serves = std::any_of(job.neededBy.begin(), job.neededBy.end(), [&](const Need& need) {
            return need.series == occurrence.series && need.original == occurrence.original;
        });
        if (!serves) continue;
        const QString pattern =
            job.pattern ? QStringLiteral(" · ") + patternName(job.pattern, source.season.patterns) : QString();
        section.rows.push_back({clockTime(job.time.begin, source.speech), text(job.treatment) + pattern, false});
    }
    for (const Shortfall& lack : source.plan.unmet) {
        if (lack.series != occurrence.series || lack.original != occurrence.original) continue;
        const QString words = lack.unmet ? Words::tr("not met on %1") : Words::tr("late on %1");
        section.rows.push_back({QStringLiteral("!"), words.arg(lanesText(lack.lanes)), true});
    }
    if (section.rows.empty()) section.rows.push_back({{}, Words::tr("Needs no treatment."), false});
    return section;
}

WhySection nextOn(const HouseSource& source, const LaneSet& lanes, Instant at) {
    std::vector<std::pair<Instant, QString>> coming;
    for (const Job& job : source.plan.jobs) {
        if (job.time.begin >= at && job.laneSet().intersects(lanes)) coming.emplace_back(job.time.begin, text(job.treatment));
    }
    for (const Occurrence& occurrence : source.plan.occupancy.occurrences) {
        const bool next = occurrence.booked.begin >= at && occurrence.lanes.intersects(lanes);
        if (next) coming.emplace_back(occurrence.booked.begin, shown(occurrence.title));
    }
    std::sort(coming.begin(), coming.end());
    if (coming.size() > nextShown) coming.resize(nextShown);
    WhySection section{Words::tr("Next on these lanes"), {}};
    for (const auto& [when, what] : coming)
        section.rows.push_back({clockTime(when, source.speech), what, false});
    if (coming.empty()) section.rows.push_back({{}, Words::tr("Nothing in the time shown."), false});
    return section;
}

}  // namespace

WhyText whyEvent(const HouseSource& source, const Occurrence& occurrence) {
    WhyText why;
    why.title = shown(occurrence.title);
    const Speech& speech = source.speech;
    WhySection when{{}, {}};
    when.rows.push_back({Words::tr("Kind"), text(occurrence.kind), false});
    when.rows.push_back({Words::tr("Plays"), spanText(occurrence.booked, speech), true});
    when.rows.push_back({Words::tr("Lanes"), occurrence.lanes.text(), true});
    when.rows.push_back({Words::tr("Lanes free from"), clockTime(occurrence.cleared, speech), false});
    if (occurrence.players > 0) when.rows.push_back({Words::tr("Players"), QString::number(occurrence.players), false});
    WhySection asks{Words::tr("Asks of the lanes"), {{{}, demandsText(occurrence, source.season.patterns), false}}};
    asks.rows.push_back({Words::tr("Settle time"), durationText(occurrence.settle, speech), false});
    why.sections = {when, asks, servedBy(source, occurrence)};
    const auto& all = source.season.series;
    const auto series = std::find_if(all.begin(), all.end(), [&](const Series& s) { return s.id == occurrence.series; });
    if (series != all.end()) why.sections.push_back({Words::tr("Comes again"), {{{}, seriesText(*series, speech), false}}});
    if (series != all.end() && !series->note.isEmpty()) why.sections.push_back({Words::tr("Note"), {{{}, series->note, false}}});
    return why;
}

WhyText whyShortfall(const HouseSource& source, const Shortfall& lack) {
    WhyText why;
    why.title = shown(lack.title);
    WhySection what{Words::tr("Missing"), {}};
    what.rows.push_back({Words::tr("Asks"), text(lack.demand), true});
    what.rows.push_back({Words::tr("Lanes"), lack.lanes.text(), true});
    what.rows.push_back({Words::tr("Play begins"), clockTime(lack.playBegins, source.speech), false});
    if (lack.missing.value > 0) what.rows.push_back({Words::tr("Time missing"), durationText(lack.missing, source.speech), true});
    for (const Finding& reason : lack.reasons)
        what.rows.push_back({{}, text(reason, source.speech), false});
    WhySection remedies{Words::tr("What would meet it"), {}};
    for (const Remedy& remedy : lack.remedies) {
        const QString sure = remedy.verified ? Words::tr("planned and found to work") : Words::tr("not tried out");
        remedies.rows.push_back({{}, QStringLiteral("%1 (%2)").arg(text(remedy.what, source.speech), sure), remedy.verified});
    }
    if (remedies.rows.empty())
        remedies.rows.push_back({{}, Words::tr("No change to this evening was found that would meet it."), false});
    why.sections = {what, remedies};
    return why;
}

WhyText whyRun(const HouseSource& source, const RunLog& run) {
    WhyText why;
    LaneSet lanes;
    for (const LaneTime& lane : run.lanes)
        lanes.insert(lane.lane);
    why.title = QStringLiteral("%1 · %2").arg(text(run.treatment), lanesText(lanes));
    WhySection what{Words::tr("Recorded"), {}};
    what.rows.push_back({Words::tr("Ran"), spanText(run.time, source.speech), true});
    if (run.pattern) what.rows.push_back({Words::tr("Pattern"), patternName(run.pattern, source.season.patterns), false});
    what.rows.push_back({Words::tr("Result"), text(run.result), false});
    if (const Machine* machine = findMachine(source.season.centre, run.machine)) {
        what.rows.push_back({Words::tr("Machine"), shown(machine->name), false});
    }
    if (const Person* person = findPerson(source.season.centre, run.person)) {
        what.rows.push_back({Words::tr("By"), shown(person->name), false});
    }
    if (!run.note.isEmpty()) what.rows.push_back({Words::tr("Note"), run.note, false});
    why.sections = {what};
    return why;
}

WhyText whyOutage(const HouseSource& source, const Outage& outage) {
    WhyText why;
    why.title = Words::tr("Out of service · %1").arg(lanesText(outage.lanes));
    WhySection what{{}, {{Words::tr("From"), dateTimeText(outage.begin, source.speech), false}}};
    what.rows.push_back(
        {Words::tr("Until"), outage.end ? dateTimeText(*outage.end, source.speech) : Words::tr("further notice"), false});
    if (!outage.note.isEmpty()) what.rows.push_back({Words::tr("Note"), outage.note, false});
    why.sections = {what};
    return why;
}

WhyText whyLanes(const HouseSource& source, const LaneBand& band, Instant at) {
    WhyText why;
    const LaneSet lanes = LaneSet::range(band.first, band.last);
    why.title = lanesText(lanes);
    WhySection state{Words::tr("At %1").arg(dateTimeText(at, source.speech)), {{Words::tr("Pattern"), band.pattern, true}}};
    if (!band.age.isEmpty()) state.rows.push_back({Words::tr("Age"), band.age, false});
    if (band.inPlay) state.rows.push_back({{}, Words::tr("In play"), true});
    if (band.outOfService) state.rows.push_back({{}, Words::tr("Out of service"), true});
    why.sections = {state, nextOn(source, lanes, at)};
    return why;
}

}  // namespace laneward
