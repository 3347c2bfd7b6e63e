#include "core/documents/job_sheet.h"

#include "core/documents/sheet_steps.h"
#include "core/season/service_outlook.h"
#include "core/service/lifting.h"

#include <algorithm>

namespace laneward {

namespace {

Finding caution(const char* rule) { return {Severity::Warning, rule, {}, {}}; }

std::vector<Job> jobsOf(const Plan& plan, QDate date) {
    std::vector<Job> jobs;
    std::copy_if(plan.jobs.begin(), plan.jobs.end(), std::back_inserter(jobs),
                 [date](const Job& job) { return job.date == date && job.state != JobState::Dropped; });
    std::stable_sort(jobs.begin(), jobs.end(), [](const Job& a, const Job& b) {
        return a.time.begin != b.time.begin ? a.time.begin < b.time.begin : a.machine < b.machine;
    });
    return jobs;
}

void nameThings(JobSheet& sheet, const SeasonState& season) {
    for (const Job& job : sheet.jobs) {
        const Pattern* pattern = job.pattern ? findPattern(season.patterns, *job.pattern) : nullptr;
        const Machine* machine = findMachine(season.centre, job.machine);
        sheet.patternNames.push_back(pattern ? pattern->name : job.pattern ? job.pattern->value : QString());
        sheet.machineNames.push_back(machine ? machine->name : job.machine.value);
        sheet.planVersion = std::max(sheet.planVersion, job.planVersion);
    }
}

void addReadiness(JobSheet& sheet, const SeasonState& season, const Plan& plan, Instant now) {
    // Another day is looked at as it begins: full, empty and charged.
    const QDate today = dateOf(season.centre, now);
    const Instant at = sheet.date == today ? now : dayOf(season.centre, sheet.date).begin;
    for (Readiness& readiness : readinessOf(season, plan, at)) {
        const Machine* machine = findMachine(season.centre, readiness.machine);
        if (!machine) continue;
        SheetReadiness entry;
        entry.machine = machine->id;
        entry.name = machine->name;
        entry.readiness = std::move(readiness);
        entry.cleaner = machine->cleaner;
        for (size_t slot = 0; slot < machine->conditioners.size(); ++slot) {
            if (machine->capacity.conditioner[slot] > Microlitres{0}) entry.conditioners.push_back(machine->conditioners[slot]);
        }
        sheet.readiness.push_back(std::move(entry));
    }
}

void addEvents(JobSheet& sheet, const SeasonState& season, const Plan& plan) {
    const Span day = dayOf(season.centre, sheet.date);
    for (const Occurrence& occurrence : plan.occupancy.occurrences) {
        if (!occurrence.booked.overlaps(day)) continue;
        sheet.events.push_back({occurrence.title, occurrence.booked, occurrence.lanes});
    }
}

void addHandOvers(JobSheet& sheet, const SeasonState& season, Instant now) {
    for (const HandOver& note : standing(season.handOvers)) {
        const bool recent = note.date == sheet.date.addDays(-1) || note.date == sheet.date;
        if (recent && note.at <= now) sheet.handOvers.push_back(note);
    }
    std::stable_sort(sheet.handOvers.begin(), sheet.handOvers.end(),
                     [](const HandOver& a, const HandOver& b) { return a.at < b.at; });
}

/// What machines that have a Duty step are to be given: all that falls due before the day's work is done.
void addDuties(JobSheet& sheet, const SeasonState& season, const Plan& plan, Instant now) {
    for (const Machine& machine : season.centre.machines) {
        int lanes = 0;
        bool stops = false;
        for (const Job& job : plan.jobs) {
            if (job.machine != machine.id || job.date > sheet.date || !isAhead(job)) continue;
            lanes += job.use.laneRuns;
            const auto isDuty = [](const Step& step) { return step.kind == StepKind::Duty; };
            stops = stops || (job.date == sheet.date && std::any_of(job.steps.begin(), job.steps.end(), isDuty));
        }
        if (!stops) continue;
        for (const LaneDuty& due : laneDuties(season, machine.id, now)) {
            if (due.left >= lanes) break;
            const ServiceItem& item = *findItem(season.items, due.item);
            SheetDuty duty{machine.id, item.name, *findDuty(item, due.duty), {}};
            for (const PartNeed& part : duty.duty.parts) {
                const Supply* supply = findSupply(season.supplies, part.supply);
                duty.supplies.push_back(supply ? *supply : Supply{part.supply, part.supply.value, SupplyKind::Part});
            }
            sheet.duties.push_back(std::move(duty));
        }
    }
}

/// What the machine weighs, told once at the step at which it is lifted.
void addLifting(JobSheet& sheet, const SeasonState& season) {
    for (const Machine& machine : season.centre.machines) {
        if (!machine.weight) continue;
        const auto lifted = std::find_if(sheet.steps.begin(), sheet.steps.end(), [&](const SheetStep& step) {
            return step.rule == "sheet.leave-bay" && step.machine == machine.id;
        });
        if (lifted == sheet.steps.end()) continue;
        std::vector<Finding> said = liftingFindings(machine.name, double(machine.weight->value) / 1'000);
        if (said.empty()) continue;
        std::erase_if(lifted->cautions, [](const Finding& caution) { return caution.rule == "caution.lifting-again"; });
        lifted->cautions.insert(lifted->cautions.end(), said.begin(), said.end());
    }
}

}  // namespace

std::optional<double> overflowOf(const JobSheet& sheet, const Job& job) {
    for (const SheetReadiness& machine : sheet.readiness) {
        for (const OverflowChance& one : machine.readiness.overflow) {
            if (one.job == job.id) return one.chance;
        }
    }
    return std::nullopt;
}

JobSheet jobSheet(const SeasonState& season, const Plan& plan, QDate date, Instant now) {
    JobSheet sheet;
    sheet.centre = season.centre.facts.name;
    sheet.zone = season.centre.facts.zone;
    sheet.date = date;
    sheet.madeAt = now;
    sheet.units = season.centre.facts.settings.units;
    sheet.jobs = jobsOf(plan, date);
    nameThings(sheet, season);
    addReadiness(sheet, season, plan, now);
    addEvents(sheet, season, plan);
    addHandOvers(sheet, season, now);
    addDuties(sheet, season, plan, now);
    sheet.steps = sheetSteps(sheet.jobs, sheet.duties);
    addLifting(sheet, season);
    for (const Shortfall& shortfall : plan.unmet) {
        if (dateOf(season.centre, shortfall.playBegins) == date) sheet.shortfalls.push_back(shortfall);
    }
    if (!sheet.jobs.empty()) sheet.cautions = {caution("caution.defer")};
    return sheet;
}

}  // namespace laneward
