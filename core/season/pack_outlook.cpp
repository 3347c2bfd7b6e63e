#include "core/season/pack_outlook.h"

#include "core/season/service_state.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace laneward {

namespace {

constexpr double sureLevel = 0.05;
constexpr double mostLanes = 100;  // times the usual: beyond what is learned

PackLanes learnedOf(const PackState& pack, const Machine& machine) {
    PackLanes lanes(std::max(1, machine.capacity.lanesPerCharge));
    lanes.learn(pack.charges);
    return lanes;
}

/// The most whole lanes that a charge exceeds in 19 of 20 cases; at least 1.
int sureLanes(const PackLanes& lanes) {
    int low = 1;
    int high = 2;
    while (lanes.chanceOfMore(high) > 1 - sureLevel)
        high *= 2;
    while (high - low > 1) {
        const int middle = (low + high) / 2;
        (lanes.chanceOfMore(middle) > 1 - sureLevel ? low : high) = middle;
    }
    return low;
}

/// P(it runs so many lanes more); none when nobody knows how full it is.
std::optional<double> chanceOf(const PackLine& line, const PackLanes& lanes, double more) {
    const PackState& pack = line.state;
    if (line.charge && pack.state == VoltageState::Rested)
        return lanes.chanceToFinish(*line.charge, more + pack.lanes - pack.lanesAtVolts);
    if (!pack.since || pack.onCharge) return std::nullopt;
    const double done = pack.lanes > 0 ? lanes.chanceOfMore(pack.lanes) : 1;
    return done > 0 ? lanes.chanceOfMore(pack.lanes + more) / done : 0;
}

/// Lanes that are exceeded as often as not, by halving.
std::optional<double> likelyLeft(const PackLine& line, const PackLanes& lanes) {
    if (!chanceOf(line, lanes, 0)) return std::nullopt;
    double low = 0;
    double high = line.usual * mostLanes;
    for (int step = 0; step < 60 && high - low > 0.01; ++step) {
        const double middle = (low + high) / 2;
        (*chanceOf(line, lanes, middle) > 0.5 ? low : high) = middle;
    }
    return low;
}

/// Jobs of the machine that are still to come on that day, in order.
std::vector<const Job*> jobsOf(const Plan& ahead, const MachineId& machine, QDate day, Instant now) {
    std::vector<const Job*> jobs;
    for (const Job& job : ahead.jobs) {
        if (job.machine == machine && job.date == day && isAhead(job) && job.time.end > now) jobs.push_back(&job);
    }
    std::sort(jobs.begin(), jobs.end(), [](const Job* a, const Job* b) { return a->time.begin < b->time.begin; });
    return jobs;
}

const Step* swapOf(const Job& job, Instant now) {
    const auto swap = std::find_if(job.steps.begin(), job.steps.end(), [now](const Step& step) {
        return (step.kind == StepKind::SwapPack || step.kind == StepKind::Charge) && step.time.end > now;
    });
    return swap == job.steps.end() ? nullptr : &*swap;
}

/// Lanes from now until the pack comes off; a job in which it is swapped counts for the next one.
int lanesUntilSwap(const std::vector<const Job*>& jobs, Instant now) {
    int lanes = 0;
    for (const Job* job : jobs) {
        if (swapOf(*job, now)) break;
        lanes += job->use.laneRuns;
    }
    return lanes;
}

/// What is missing to full, as far as it is known.
double missingShare(const PackLine& line) {
    if (line.state.onCharge || !line.left || line.usual <= 0) return 1;
    return std::clamp(1 - *line.left / line.usual, 0.0, 1.0);
}

class Outlet {
public:
    Outlet(const SeasonState& season, const Plan& ahead, Instant now) : m_season(season), m_ahead(ahead), m_now(now) {}

    /// A pack on its machine is there when tonight's work is over and is wanted for tomorrow's; one beside it is there now and
    /// is wanted when it goes on.
    std::optional<ChargeNeed> needOf(const PackLine& line) const {
        const Machine* machine = findMachine(m_season.centre, line.state.machine);
        const QDate today = dateOf(m_season.centre, m_now);
        const std::vector<const Job*> tonight = jobsOf(m_ahead, line.state.machine, today, m_now);
        const Seconds full = machine->times.charge;
        Seconds length{std::llround(missingShare(line) * double(full.value))};
        if (line.state.onCharge && line.state.since) length = std::max(Seconds{0}, full - (m_now - *line.state.since));
        ChargeNeed need{line.state.pack, m_now, length, tomorrow(line.state.machine, today)};
        if (line.state.onMachine && !tonight.empty()) {
            need.from = tonight.back()->time.end;
            const double rest = std::max(0.0, line.left.value_or(0) - line.tonight);
            need.length = Seconds{std::llround((1 - std::min(1.0, rest / std::max(1.0, line.usual))) * double(full.value))};
        }
        if (!line.state.onMachine) {
            for (const Job* job : tonight) {
                if (const Step* swap = swapOf(*job, m_now)) {
                    need.by = swap->time.begin;
                    break;
                }
            }
        }
        constexpr Seconds hardlyAny{600};
        return need.length > hardlyAny ? std::optional(need) : std::nullopt;
    }

private:
    /// The next outing after today; a day later when none is planned.
    Instant tomorrow(const MachineId& machine, QDate today) const {
        std::optional<Instant> first;
        for (const Job& job : m_ahead.jobs) {
            if (job.machine == machine && isAhead(job) && job.date > today)
                first = std::min(first.value_or(job.time.begin), job.time.begin);
        }
        return first.value_or(dayOf(m_season.centre, today.addDays(1)).end);
    }

    const SeasonState& m_season;
    const Plan& m_ahead;
    Instant m_now;
};

PackLine lineOf(const PackState& pack, const Machine& machine, const std::optional<PackLimits>& limits,
                const std::vector<const Job*>& tonight, Instant now) {
    PackLine line{pack, 0, 0, 0, 0, {}, {}, 0, {}};
    const PackLanes lanes = learnedOf(pack, machine);
    line.charges = lanes.charges();
    line.cutShort = lanes.cutShort();
    line.usual = lanes.quantile(0.5);
    line.sure = lanes.quantile(sureLevel);
    const bool sinceCharged = pack.volts && pack.voltsAt && (!pack.since || *pack.since <= *pack.voltsAt);
    if (limits && sinceCharged && !pack.onCharge) {
        const Result<std::optional<Charge>> charge = chargeOf(limits->kind, *pack.volts, pack.state);
        if (charge) line.charge = *charge;
    }
    line.left = likelyLeft(line, lanes);
    if (pack.onMachine) line.tonight = lanesUntilSwap(tonight, now);
    if (line.tonight > 0) line.finishes = chanceOf(line, lanes, line.tonight);
    return line;
}

}  // namespace

std::vector<PackState> packsOf(const SeasonState& season, Instant now) {
    std::vector<MachineWork> work;
    for (const RunLog& run : standing(season.runs))
        work.push_back({run.machine, run.time.end, metersOf(run)});
    return packStates(season.items, standing(season.packReadings), std::move(work), now);
}

int busiestNight(const SeasonState& season, const MachineId& machine) {
    std::map<QDate, std::int64_t> lanes;
    for (const RunLog& run : standing(season.runs)) {
        if (run.machine == machine) lanes[dateOf(season.centre, run.time.end)] += metersOf(run).lanes;
    }
    std::int64_t most = 0;
    for (const auto& [day, sum] : lanes)
        most = std::max(most, sum);
    return int(most);
}

PackOutlook packOutlook(const SeasonState& season, const Plan& ahead, Instant now) {
    PackOutlook outlook;
    std::vector<ChargeNeed> needs;
    const QDate today = dateOf(season.centre, now);
    const Outlet outlet(season, ahead, now);
    for (const PackState& pack : packsOf(season, now)) {
        const Machine* machine = findMachine(season.centre, pack.machine);
        const ServiceItem* item = findItem(season.items, pack.pack);
        if (!machine || !item) continue;
        outlook.packs.push_back(lineOf(pack, *machine, item->pack, jobsOf(ahead, pack.machine, today, now), now));
        if (const auto need = outlet.needOf(outlook.packs.back())) needs.push_back(*need);
    }
    outlook.turns = chargingTurns(needs);
    return outlook;
}

std::optional<int> learnedLanesPerCharge(const std::vector<PackState>& packs, const Machine& machine) {
    std::optional<int> least;
    for (const PackState& pack : packs) {
        if (pack.machine != machine.id) continue;
        if (int(pack.charges.size()) < leastChargesForLimit) return std::nullopt;
        const int sure = sureLanes(learnedOf(pack, machine));
        least = std::min(least.value_or(sure), sure);
    }
    return least;
}

}  // namespace laneward
