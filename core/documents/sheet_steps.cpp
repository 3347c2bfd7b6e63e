#include "core/documents/sheet_steps.h"

#include <algorithm>
#include <set>

namespace laneward {

namespace {

using Kind = SheetStep::Kind;
using Rules = std::vector<QByteArray>;

SheetStep step(Kind kind, const QByteArray& rule, const Rules& cautions, const Rules& blanks = {}) {
    SheetStep made;
    made.kind = kind;
    made.rule = rule;
    made.blanks = blanks;
    for (const QByteArray& caution : cautions)
        made.cautions.push_back({Severity::Warning, "caution." + caution, {}, {}});
    return made;
}

std::vector<SheetStep> preparations() {
    return {step(Kind::Prepare, "sheet.check-pack", {"battery"}), step(Kind::Prepare, "sheet.check-levels", {"chemicals"}),
            step(Kind::Prepare, "sheet.check-floor", {"slippery"})};
}

std::vector<SheetStep> closing() {
    return {step(Kind::CloseDown, "sheet.close-waste", {"waste", "chemicals"}),
            step(Kind::CloseDown, "sheet.close-wipe", {"moving-parts"}), step(Kind::CloseDown, "sheet.close-charge", {"battery"}),
            step(Kind::CloseDown, "sheet.close-hand-over", {}, {"blank.initials"})};
}

SheetStep between(StepKind kind) {
    switch (kind) {
        case StepKind::LeaveBay:
            return step(Kind::Prepare, "sheet.leave-bay", {"lifting", "moving-parts"});
        case StepKind::Refill:
            return step(Kind::Refill, "sheet.refill", {"chemicals"});
        case StepKind::EmptyWaste:
            return step(Kind::EmptyWaste, "sheet.empty-waste", {"waste", "chemicals"}, {"blank.emptied"});
        case StepKind::SwapPack:
            return step(Kind::SwapPack, "sheet.swap-pack", {"battery", "lifting"});
        case StepKind::Charge:
            return step(Kind::Charge, "sheet.charge", {"battery"});
        case StepKind::Duty:
            return step(Kind::Duty, "sheet.duty", {"moving-parts"});
        case StepKind::ReturnToBay:
            return step(Kind::Return, "sheet.return", {});
        case StepKind::FirstPairTwice:
        case StepKind::Treat:
            break;
    }
    return step(Kind::Job, {}, {"slippery", "moving-parts"}, {"blank.finished", "blank.initials"});
}

bool isWork(const Step& step) { return step.kind == StepKind::Treat || step.kind == StepKind::FirstPairTwice; }

/// The job itself: all its lanes as one line, from the first one worked to the last.
SheetStep work(const Job& job) {
    SheetStep made = between(StepKind::Treat);
    Span time = job.time;
    const auto first = std::find_if(job.steps.begin(), job.steps.end(), isWork);
    if (first != job.steps.end()) time.begin = first->time.begin;
    made.startBy = time.begin;
    made.readyAt = time.end;
    return made;
}

bool isOver(const Job& job) { return job.state == JobState::Done || job.state == JobState::CutShort; }

void addJob(std::vector<SheetStep>& steps, const Job& job, size_t index) {
    bool worked = false;
    const auto add = [&](SheetStep made) {
        made.machine = job.machine;
        made.job = index;
        steps.push_back(std::move(made));
    };
    for (const Step& one : job.steps) {
        if (isOver(job)) break;
        if (isWork(one)) {
            if (!worked) add(work(job));
            worked = true;
            continue;
        }
        SheetStep made = between(one.kind);
        made.startBy = one.time.begin;
        made.readyAt = one.time.end;
        add(std::move(made));
    }
    if (!worked) add(work(job));
}

void addDuties(std::vector<SheetStep>& steps, const std::vector<SheetDuty>& duties) {
    std::set<MachineId> served;
    for (SheetStep& one : steps) {
        if (one.kind != Kind::Duty || !served.insert(one.machine).second) continue;
        for (size_t n = 0; n < duties.size(); ++n) {
            if (duties[n].machine != one.machine) continue;
            one.duties.push_back(n);
            for (const QByteArray& rule : duties[n].duty.cautions) {
                const auto known = [&rule](const Finding& f) { return f.rule == rule; };
                if (std::none_of(one.cautions.begin(), one.cautions.end(), known))
                    one.cautions.push_back({Severity::Warning, rule, {}, {}});
            }
        }
    }
}

void remindFromTheSecondTime(std::vector<SheetStep>& steps) {
    std::set<QByteArray> given;
    for (SheetStep& one : steps) {
        for (Finding& caution : one.cautions) {
            if (!given.insert(caution.rule).second) caution.rule += "-again";
        }
    }
}

}  // namespace

std::vector<SheetStep> sheetSteps(const std::vector<Job>& jobs, const std::vector<SheetDuty>& duties) {
    if (jobs.empty()) return {};
    std::vector<SheetStep> steps;
    for (size_t n = 0; n < jobs.size(); ++n)
        addJob(steps, jobs[n], n);
    std::stable_sort(steps.begin(), steps.end(), [](const SheetStep& a, const SheetStep& b) { return *a.startBy < *b.startBy; });
    addDuties(steps, duties);
    std::vector<SheetStep> all = preparations();
    all.insert(all.end(), steps.begin(), steps.end());
    for (SheetStep& last : closing())
        all.push_back(std::move(last));
    remindFromTheSecondTime(all);
    return all;
}

}  // namespace laneward
