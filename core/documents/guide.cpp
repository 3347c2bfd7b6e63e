#include "core/documents/guide.h"

#include <algorithm>
#include <map>
#include <set>

namespace laneward {

namespace {

using Kind = SheetStep::Kind;

bool isOver(const Job& job) { return job.state == JobState::Done || job.state == JobState::CutShort; }

/// What a job is whatever its id and time: those of a proposal change with every plan.
QByteArray workOf(const Job& job) {
    return (job.machine.value + u'|' + job.laneSet().text() + u'|' + (job.pattern ? job.pattern->value : QString())).toUtf8() +
           '|' + QByteArray::number(int(job.treatment));
}

/// Each job's work, told apart from the same work earlier in the day.
std::vector<QByteArray> worksOf(const JobSheet& sheet) {
    std::vector<QByteArray> works;
    std::map<QByteArray, int> seen;
    for (const Job& job : sheet.jobs) {
        const QByteArray work = workOf(job);
        works.push_back(work + '#' + QByteArray::number(seen[work]++));
    }
    return works;
}

GuideDeed deedOf(const SheetStep& step) {
    switch (step.kind) {
        case Kind::Job:
            return GuideDeed::Run;
        case Kind::Refill:
            return GuideDeed::Refill;
        case Kind::EmptyWaste:
            return GuideDeed::EmptyWaste;
        case Kind::SwapPack:
        case Kind::Charge:
            return GuideDeed::FullPack;
        case Kind::Duty:
            return GuideDeed::Service;
        case Kind::CloseDown:
            return step.rule == "sheet.close-hand-over" ? GuideDeed::HandOver : GuideDeed::None;
        case Kind::Prepare:
        case Kind::Return:
            break;
    }
    return GuideDeed::None;
}

class Steps {
public:
    explicit Steps(const JobSheet& sheet) : m_sheet(sheet), m_works(worksOf(sheet)) {
        for (const Job& job : sheet.jobs) {
            if (std::find(m_machines.begin(), m_machines.end(), job.machine) == m_machines.end())
                m_machines.push_back(job.machine);
        }
    }

    std::vector<GuideStep> all() {
        for (const SheetStep& step : m_sheet.steps)
            add(step);
        return std::move(m_steps);
    }

private:
    void add(const SheetStep& step) {
        if (step.rule == "sheet.check-pack") {
            plain("guide.look-ahead", {});
            forEachMachine(step, "guide.volts", GuideDeed::Volts);
        } else if (step.rule == "sheet.check-levels") {
            forEachMachine(step, "guide.levels", GuideDeed::Levels);
            SheetStep look = step;
            look.cautions = {{Severity::Warning, "caution.moving-parts", {}, {}}};
            forEachMachine(look, "guide.look-over", GuideDeed::None);
        } else if (step.rule == "sheet.close-waste") {
            forEachMachine(step, "guide.close-tanks", GuideDeed::CloseTanks);
        } else if (step.rule == "sheet.close-charge") {
            forEachMachine(step, "guide.close-pack", GuideDeed::ClosePack);
        } else if (step.kind == Kind::Duty) {
            addDuties(step);
        } else if (step.job) {
            addOfJob(step);
        } else {
            keep(step.rule, step, deedOf(step));
        }
    }

    void plain(const QByteArray& rule, std::vector<Finding> cautions) {
        SheetStep made;
        made.rule = rule;
        made.cautions = std::move(cautions);
        keep(rule, made, GuideDeed::None);
    }

    void forEachMachine(const SheetStep& step, const QByteArray& rule, GuideDeed deed) {
        for (const MachineId& machine : m_machines) {
            SheetStep one = step;
            one.rule = rule;
            one.machine = machine;
            keep(rule + '|' + machine.value.toUtf8(), one, deed);
        }
    }

    /// The duties of a sheet stand at the first of a machine's Duty steps; another has nothing left to do.
    void addDuties(const SheetStep& step) {
        for (const size_t n : step.duties) {
            const Duty& duty = m_sheet.duties[n].duty;
            const int lines = std::max(1, int(duty.steps.size()));
            for (int line = 0; line < lines; ++line) {
                keep("duty|" + duty.id.value.toUtf8() + '|' + QByteArray::number(line), step,
                     line + 1 == lines ? GuideDeed::Service : GuideDeed::None);
                m_steps.back().duty = n;
                m_steps.back().line = line;
                m_steps.back().lines = int(duty.steps.size());
            }
        }
    }

    void addOfJob(const SheetStep& step) {
        const QByteArray key = m_works[*step.job] + '|' + QByteArray::number(int(step.kind)) + step.rule;
        keep(key + '|' + QByteArray::number(m_seen[key]++), step, deedOf(step));
        const Job& job = m_sheet.jobs[*step.job];
        if (step.kind == Kind::Job && isOver(job)) addReturn(job, step);
    }

    /// The sheet leaves out what lies round a job that is over; but its machine still has to be brought back.
    void addReturn(const Job& job, const SheetStep& work) {
        const auto back =
            std::find_if(job.steps.begin(), job.steps.end(), [](const Step& s) { return s.kind == StepKind::ReturnToBay; });
        if (back == job.steps.end()) return;
        SheetStep made;
        made.kind = Kind::Return;
        made.machine = work.machine;
        made.job = work.job;
        addOfJob(made);
    }

    void keep(const QByteArray& key, SheetStep step, GuideDeed deed) {
        for (Finding& caution : step.cautions) {
            if (caution.rule.endsWith("-again")) caution.rule.chop(6);
        }
        m_steps.push_back({key, std::move(step), deed, {}, 0, 0});
    }

    const JobSheet& m_sheet;
    std::vector<QByteArray> m_works;
    std::vector<MachineId> m_machines;  ///< that work on this day, the first to work first
    std::map<QByteArray, int> m_seen;
    std::vector<GuideStep> m_steps;
};

template <class T>
bool has(const std::vector<T>& records, const OperationId& id) {
    return std::any_of(records.begin(), records.end(), [&id](const T& record) { return record.id == id; });
}

bool isRecorded(const SeasonState& season, const OperationId& id) {
    return has(standing(season.readings), id) || has(season.services, id) || has(standing(season.handOvers), id) ||
           has(standing(season.packReadings), id);
}

const Job* findJob(const JobSheet& sheet, const JobId& id) {
    const auto found = std::find_if(sheet.jobs.begin(), sheet.jobs.end(), [&id](const Job& job) { return job.id == id; });
    return found == sheet.jobs.end() ? nullptr : &*found;
}

bool stands(const GuideTick& tick, const JobSheet& sheet, const SeasonState& season) {
    if (tick.kind != Kind::Job) return tick.record.isEmpty() || isRecorded(season, tick.record);
    if (tick.job.isEmpty()) return true;  // left out, or ticked where nothing may be recorded
    const Job* job = findJob(sheet, tick.job);
    return job && isOver(*job);
}

/// Where a machine is, as far as the ticks know.
struct Whereabouts {
    bool isOut = false;
    bool hasWorked = false;  ///< since it left its bay
};

std::map<MachineId, Whereabouts> whereabouts(const std::vector<GuideTick>& done) {
    std::map<MachineId, Whereabouts> all;
    for (const GuideTick& tick : done) {
        if (tick.isLeftOut) continue;
        Whereabouts& one = all[tick.machine];
        if (tick.kind == Kind::Return) one = {};
        if (tick.kind == Kind::Prepare && tick.key.contains("sheet.leave-bay")) one = {true, false};
        if (tick.kind == Kind::Job) one.hasWorked = true;
    }
    return all;
}

/// Looking ahead, checking and reading come before a machine's first work, not after it; and so does what leads to a job.
class Passed {
public:
    explicit Passed(const JobSheet& sheet) : m_sheet(sheet) {
        for (const Job& job : sheet.jobs) {
            if (isOver(job) || job.state == JobState::UnderWay) m_started.insert(job.machine);
        }
    }

    bool operator()(const GuideStep& one) const {
        const SheetStep& step = one.step;
        if (step.kind == Kind::Return) return laterWork(m_sheet.jobs[*step.job]);
        if (step.job) return step.kind != Kind::Job && m_sheet.jobs[*step.job].state == JobState::UnderWay;
        if (step.kind != Kind::Prepare) return false;
        return step.machine.isEmpty() ? !m_started.empty() : m_started.count(step.machine) > 0;
    }

private:
    bool laterWork(const Job& job) const {
        return std::any_of(m_sheet.jobs.begin(), m_sheet.jobs.end(), [&job](const Job& other) {
            const bool begun = isOver(other) || other.state == JobState::UnderWay;
            return begun && other.machine == job.machine && other.time.begin > job.time.begin;
        });
    }

    const JobSheet& m_sheet;
    std::set<MachineId> m_started;
};

/// Ticks that stand, and runs that were recorded without one.
std::vector<GuideTick> standingTicks(const JobSheet& sheet, const SeasonState& season, const std::vector<GuideTick>& ticks,
                                     const std::vector<GuideStep>& steps) {
    std::set<QByteArray> over;
    for (const GuideStep& one : steps) {
        if (one.step.kind == Kind::Job && isOver(sheet.jobs[*one.step.job])) over.insert(one.key);
    }
    std::vector<GuideTick> done;
    std::set<JobId> told;
    for (const GuideTick& tick : ticks) {
        if (!stands(tick, sheet, season)) continue;
        if (tick.kind == Kind::Job && tick.job.isEmpty() && over.count(tick.key) > 0) continue;  // recorded after all
        if (!tick.job.isEmpty()) told.insert(tick.job);
        done.push_back(tick);
    }
    for (const GuideStep& one : steps) {
        if (over.count(one.key) == 0) continue;
        const Job& job = sheet.jobs[*one.step.job];
        if (told.count(job.id) == 0) done.push_back({one.key, Kind::Job, job.machine, {}, false, job.id, {}});
    }
    return done;
}

/// While one machine works the other one is made ready: a job that is under way comes up again when it ends.
void putAtItsEnd(std::vector<GuideStep>& ahead, const JobSheet& sheet) {
    for (auto one = ahead.begin(); one != ahead.end(); ++one) {
        if (one->step.kind != Kind::Job || sheet.jobs[*one->step.job].state != JobState::UnderWay) continue;
        const Instant end = sheet.jobs[*one->step.job].time.end;
        const auto next = std::find_if(one + 1, ahead.end(), [&](const GuideStep& other) {
            return !other.step.startBy || *other.step.startBy >= end || other.step.machine == one->step.machine;
        });
        std::rotate(one, one + 1, next);
        return;  // at most one more machine is out
    }
}

}  // namespace

std::vector<GuideStep> guideSteps(const JobSheet& sheet) { return Steps(sheet).all(); }

Guide guideOf(const JobSheet& sheet, const SeasonState& season, const std::vector<GuideTick>& ticks) {
    Guide guide;
    const std::vector<GuideStep> steps = guideSteps(sheet);
    guide.done = standingTicks(sheet, season, ticks, steps);
    std::set<QByteArray> ticked;
    for (const GuideTick& tick : guide.done)
        ticked.insert(tick.key);
    std::map<MachineId, Whereabouts> machines = whereabouts(guide.done);
    const Passed passed(sheet);
    for (const GuideStep& one : steps) {
        const bool work = one.step.kind == Kind::Job;
        if (ticked.count(one.key) > 0 || (work && isOver(sheet.jobs[*one.step.job]))) {
            guide.behind.push_back(one);
            continue;
        }
        // Out already, on the way to work that the plan has changed meanwhile.
        Whereabouts& machine = machines[one.step.machine];
        if (one.step.rule == "sheet.leave-bay" && machine.isOut && !machine.hasWorked) {
            machine.hasWorked = true;
            continue;
        }
        if (!passed(one)) guide.ahead.push_back(one);
    }
    putAtItsEnd(guide.ahead, sheet);
    return guide;
}

GuideChange changeOf(const std::vector<GuideStep>& before, const Guide& after) {
    std::map<QByteArray, std::optional<Instant>> known;
    for (const GuideStep& one : before)
        known[one.key] = one.step.startBy;
    GuideChange change;
    for (const GuideStep& one : after.ahead) {
        const auto was = known.find(one.key);
        if (was == known.end()) {
            ++change.added;
            continue;
        }
        const auto minuteOf = [](const std::optional<Instant>& t) { return t ? t->seconds / 60 : 0; };
        if (minuteOf(was->second) != minuteOf(one.step.startBy)) ++change.moved;
        known.erase(was);
    }
    for (const GuideTick& tick : after.done)
        known.erase(tick.key);
    change.gone = int(known.size());
    return change;
}

}  // namespace laneward
