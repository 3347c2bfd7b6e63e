#include "core/season/follow_ups.h"

#include "core/patterns/reading_checks.h"

#include <algorithm>

namespace laneward {

namespace {

const Pattern* patternOf(const TapeReading& reading, const std::vector<PatternVersion>& versions,
                         const std::vector<Pattern>& patterns) {
    for (const PatternVersion& version : versions) {
        if (version.pattern.id == reading.pattern && version.pattern.edition == reading.patternVersion) return &version.pattern;
    }
    return findPattern(patterns, reading.pattern);
}

bool isBroken(const TapeReading& reading, const Pattern& pattern, const Centre& centre) {
    const Machine* machine = findMachine(centre, reading.machine);
    const ReadingComparison compared = compare(reading, pattern, machine ? machine->carryLength : Micrometres{0});
    const std::vector<CheckResult> results = checkReading(compared, centre.facts.readingLimits);
    return std::any_of(results.begin(), results.end(), [](const CheckResult& result) {
        return result.isBroken() && result.check.status != CheckStatus::Suspended;
    });
}

bool isAnswered(const std::vector<Incident>& incidents, const OperationId& id) {
    return std::any_of(incidents.begin(), incidents.end(), [&id](const Incident& i) { return i.answers == id; });
}

}  // namespace

std::vector<TapeReading> brokenReadings(const std::vector<TapeReading>& readings, const std::vector<PatternVersion>& versions,
                                        const SeasonState& season) {
    std::vector<TapeReading> broken;
    for (const TapeReading& reading : standing(readings)) {
        const Pattern* pattern = patternOf(reading, versions, season.patterns);
        if (pattern && isBroken(reading, *pattern, season.centre)) broken.push_back(reading);
    }
    return broken;
}

std::vector<FollowUp> openFollowUps(const SeasonState& season, const std::vector<TapeReading>& broken, Instant now) {
    const std::vector<Incident> incidents = standing(season.incidents);
    const Instant from = now - hours(24 * followUpDays);
    std::vector<FollowUp> open;
    for (const Incident& incident : incidents) {
        if (incident.answers || incident.at < from || incident.at > now || isAnswered(incidents, incident.id)) continue;
        if (incident.corrects && isAnswered(incidents, *incident.corrects)) continue;  // put right after it was answered
        open.push_back(
            {incident.id, false, incident.kind, incident.at, incident.lane, incident.machine, incident.person, incident.text});
    }
    for (const TapeReading& reading : broken) {
        if (reading.at < from || reading.at > now || isAnswered(incidents, reading.id)) continue;
        if (reading.corrects && isAnswered(incidents, *reading.corrects)) continue;
        const Pattern* pattern = findPattern(season.patterns, reading.pattern);
        open.push_back({reading.id, true, IncidentKind::Fault, reading.at, reading.lane, reading.machine, reading.person,
                        pattern ? pattern->name : reading.pattern.value});
    }
    std::stable_sort(open.begin(), open.end(), [](const FollowUp& a, const FollowUp& b) { return b.at < a.at; });
    return open;
}

std::vector<Incident> answersTo(const std::vector<Incident>& incidents, const OperationId& id) {
    std::vector<Incident> answers;
    for (const Incident& incident : standing(incidents)) {
        if (incident.answers == id) answers.push_back(incident);
    }
    std::stable_sort(answers.begin(), answers.end(), [](const Incident& a, const Incident& b) { return a.at < b.at; });
    return answers;
}

const Outage* outageOf(const Centre& centre, int lane, Instant now) {
    const auto found = std::find_if(centre.outages.begin(), centre.outages.end(), [&](const Outage& outage) {
        return outage.lanes.contains(lane) && outage.begin <= now && (!outage.end || now < *outage.end);
    });
    return found == centre.outages.end() ? nullptr : &*found;
}

}  // namespace laneward
