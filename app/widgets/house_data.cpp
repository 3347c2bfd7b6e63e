#include "app/widgets/house_data.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(HouseData)
};

QString lanesText(const LaneSet& lanes) {
    return (lanes.count() == 1 ? Words::tr("Lane %1") : Words::tr("Lanes %1")).arg(lanes.text());
}

QString spanText(const Span& span, const Speech& speech) {
    return Words::tr("%1 to %2").arg(clockTime(span.begin, speech), clockTime(span.end, speech));
}

QString sentence(const QStringList& parts) {
    QStringList kept = parts;
    kept.removeAll(QString());
    return kept.join(Words::tr(", "));
}

bool inConflict(const Occupancy& occupancy, size_t index) {
    return std::any_of(occupancy.conflicts.begin(), occupancy.conflicts.end(),
                       [index](const Conflict& c) { return c.first == index || c.second == index; });
}

HouseItem eventItem(const HouseSource& source, size_t index) {
    const Occurrence& occurrence = source.plan.occupancy.occurrences[index];
    HouseItem item;
    item.kind = HouseItem::Kind::Event;
    item.key = keyOf(occurrence);
    item.time = occurrence.booked;
    item.lanes = occurrence.lanes;
    item.title = shown(occurrence.title);
    item.event = occurrence.kind;
    item.conflict = inConflict(source.plan.occupancy, index);
    item.index = index;
    item.detail =
        occurrence.kind == EventKind::Closure ? text(EventKind::Closure) : demandsText(occurrence, source.season.patterns);
    item.spoken = sentence({lanesText(item.lanes), item.title, spanText(item.time, source.speech), item.detail,
                            item.conflict ? Words::tr("conflicts with another event") : QString()});
    return item;
}

QString lateText(const Job& job, const Speech& speech) {
    return job.late.value > 0 ? Words::tr("late %1").arg(durationText(job.late, speech)) : QString();
}

bool hasFirstPairTwice(const Job& job) {
    return std::any_of(job.steps.begin(), job.steps.end(), [](const Step& s) { return s.kind == StepKind::FirstPairTwice; });
}

HouseItem runItem(const HouseSource& source, size_t index) {
    const RunLog& run = source.season.runs[index];
    HouseItem item;
    item.kind = HouseItem::Kind::Job;
    item.key = QStringLiteral("run:") + run.id.value;
    item.time = run.time;
    for (const LaneTime& lane : run.lanes)
        item.lanes.insert(lane.lane);
    item.treatment = run.treatment;
    item.state = run.result == RunResult::CutShort ? JobState::CutShort : JobState::Done;
    if (item.state == JobState::CutShort && !run.lanes.empty()) item.lastLane = run.lanes.back().lane;
    item.index = index;
    item.log = true;
    QStringList words{clockTime(run.time.begin, source.speech), text(run.treatment)};
    if (run.pattern) words << patternName(run.pattern, source.season.patterns);
    item.title = words.join(QStringLiteral(" · "));
    item.detail = text(run.result);
    item.spoken =
        sentence({lanesText(item.lanes), words.mid(1).join(Words::tr(", ")), spanText(item.time, source.speech), item.detail});
    return item;
}

HouseItem shortfallItem(const HouseSource& source, size_t index) {
    const Shortfall& lack = source.plan.unmet[index];
    HouseItem item;
    item.kind = HouseItem::Kind::Shortfall;
    item.key = keyOf(lack);
    item.time = {lack.playBegins - minutes(25), lack.playBegins};  // where the missing treatment would stand
    item.lanes = lack.lanes;
    item.title = Words::tr("Not %1 in time for %2").arg(text(lack.demand), shown(lack.title));
    if (!lack.reasons.empty()) item.detail = text(lack.reasons.front(), source.speech);
    item.index = index;
    item.spoken = sentence({lanesText(item.lanes), item.title, clockTime(lack.playBegins, source.speech), item.detail});
    return item;
}

HouseItem outageItem(const HouseSource& source, size_t index, const Span& range) {
    const Outage& outage = source.season.centre.outages[index];
    HouseItem item;
    item.kind = HouseItem::Kind::Outage;
    item.key = QStringLiteral("outage:") + outage.id.value;
    item.time = {std::max(outage.begin, range.begin), std::min(outage.end.value_or(range.end), range.end)};
    item.lanes = outage.lanes;
    item.title = Words::tr("Out of service");
    item.detail = shown(outage.note);
    item.index = index;
    item.spoken = sentence({lanesText(item.lanes), item.title, item.detail});
    return item;
}

void addRuns(const HouseSource& source, HouseData& data) {
    const std::vector<RunLog> kept = standing(source.season.runs);
    for (size_t i = 0; i < source.season.runs.size(); ++i) {
        const RunLog& run = source.season.runs[i];
        const bool shownByItsJob =
            std::any_of(source.plan.jobs.begin(), source.plan.jobs.end(), [&](const Job& job) { return job.id == run.job; });
        if (shownByItsJob || !run.time.overlaps(data.range)) continue;
        const bool stands = std::any_of(kept.begin(), kept.end(), [&](const RunLog& log) { return log.id == run.id; });
        if (stands) data.items.push_back(runItem(source, i));
    }
}

}  // namespace

QString eventKey(const SeriesId& series, const LocalTime& original) {
    return QStringLiteral("event:%1@%2T%3")
        .arg(series.value, original.date.toString(Qt::ISODate), original.time.toString(Qt::ISODate));
}

QString keyOf(const Occurrence& occurrence) { return eventKey(occurrence.series, occurrence.original); }
QString keyOf(const Job& job) { return QStringLiteral("job:") + job.id.value; }
QString keyOf(const Shortfall& lack) {
    return QStringLiteral("short:%1/%2/%3").arg(eventKey(lack.series, lack.original), lack.lanes.text()).arg(int(lack.demand));
}

QString patternName(const std::optional<PatternId>& id, const std::vector<Pattern>& patterns) {
    if (!id) return Words::tr("any pattern");
    const Pattern* pattern = findPattern(patterns, *id);
    return shown(pattern ? pattern->name : id->value);
}

QString demandsText(const Occurrence& occurrence, const std::vector<Pattern>& patterns) {
    QStringList parts;
    for (const SurfaceDemand& demand : occurrence.demands) {
        QStringList words{text(demand.kind)};
        const bool names = demand.kind != DemandKind::AsItIs && demand.kind != DemandKind::Stripped;
        if (names) words << patternName(demand.pattern, patterns);
        if (demand.lanes != occurrence.lanes) words << lanesText(demand.lanes);
        parts << words.join(QStringLiteral(" · "));
    }
    if (parts.isEmpty()) parts << text(DemandKind::AsItIs);
    return parts.join(QStringLiteral("; "));
}

HouseItem jobItem(const Job& job, const SeasonState& season, const Speech& speech) {
    HouseItem item;
    item.kind = HouseItem::Kind::Job;
    item.key = keyOf(job);
    item.time = job.lanes.empty() ? job.time : Span{job.lanes.front().time.begin, job.lanes.back().time.end};
    item.lanes = job.laneSet();
    item.treatment = job.treatment;
    item.state = job.state;
    item.late = lateText(job, speech);
    if (job.state == JobState::CutShort && !job.lanes.empty()) item.lastLane = job.lanes.back().lane;
    const QString pattern = patternName(job.pattern, season.patterns);
    QStringList words{clockTime(job.time.begin, speech), text(job.treatment)};
    if (job.pattern) words << pattern;
    if (hasFirstPairTwice(job)) words << text(StepKind::FirstPairTwice);
    item.title = words.join(QStringLiteral(" · "));
    item.detail = text(job.state);
    const Machine* machine = findMachine(season.centre, job.machine);
    item.spoken = sentence({lanesText(item.lanes), text(job.treatment), job.pattern ? pattern : QString(),
                            spanText(item.time, speech), machine ? shown(machine->name) : QString(), item.detail, item.late});
    return item;
}

HouseData houseData(const HouseSource& source, Instant now) {
    const Plan& plan = source.plan;
    HouseData data;
    data.lanes = source.season.centre.facts.lanes;
    data.now = now;
    data.range = {dayOf(source.season.centre, plan.range.first).begin, dayOf(source.season.centre, plan.range.last).end};
    data.zone = source.speech.zone;
    for (QDate day = plan.range.first; day <= plan.range.last; day = day.addDays(1))
        data.days.push_back(dayOf(source.season.centre, day).begin);
    const std::vector<Outage>& outages = source.season.centre.outages;
    for (size_t i = 0; i < outages.size(); ++i) {
        const bool seen = outages[i].begin < data.range.end && outages[i].end.value_or(data.range.end) > data.range.begin;
        if (seen && !outages[i].lanes.isEmpty()) data.items.push_back(outageItem(source, i, data.range));
    }
    for (size_t i = 0; i < plan.occupancy.occurrences.size(); ++i) {
        if (plan.occupancy.occurrences[i].booked.overlaps(data.range)) data.items.push_back(eventItem(source, i));
    }
    for (size_t i = 0; i < plan.jobs.size(); ++i) {
        data.items.push_back(jobItem(plan.jobs[i], source.season, source.speech));
        data.items.back().index = i;
    }
    addRuns(source, data);
    for (size_t i = 0; i < plan.unmet.size(); ++i) {
        if (plan.unmet[i].unmet) data.items.push_back(shortfallItem(source, i));
    }
    for (HouseItem& item : data.items)
        item.lanes = item.lanes & LaneSet::range(1, data.lanes);
    return data;
}

}  // namespace laneward
