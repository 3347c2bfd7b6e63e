#include "core/season/work_ahead.h"

#include "core/statistics/loss.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

struct Cumulants {
    double mean = 0;
    double variance = 0;
    double third = 0;
};

Cumulants over(const StrayWork& work, double t, const StrayPrior& prior) {
    const double shape = work.events + prior.events;
    const double scale = work.days + prior.days;
    const double rate = shape / scale;
    const double variance = rate / scale;
    const double third = 2 * variance / scale;
    const double sizeVariance = std::max(0.0, work.square - work.size * work.size);
    return {t * rate * work.size,
            t * rate * work.square +
                t * t * (work.size * work.size * variance + rate * rate * sizeVariance / (work.events + prior.weight)),
            t * rate * work.cube + 3 * t * t * work.size * work.square * variance + std::pow(t * work.size, 3) * third};
}

/// For each day, to its end.
std::vector<Meters> plannedBy(const Plan& ahead, const MachineId& machine, QDate today) {
    const int days = std::max(0, int(today.daysTo(ahead.range.last)) + 1);
    std::vector<Meters> sums(static_cast<size_t>(days));
    for (const Job& job : ahead.jobs) {
        const qint64 day = std::max<qint64>(0, today.daysTo(job.date));
        if (job.machine == machine && isAhead(job) && day < days) sums[size_t(day)] = sums[size_t(day)] + metersOf(job);
    }
    for (size_t day = 1; day < sums.size(); ++day)
        sums[day] = sums[day - 1] + sums[day];
    return sums;
}

/// Of one lane: what the machine did lately, else what it is to do.
std::array<double, 4> aLane(const SeasonState& season, const MachineId& machine, const std::vector<Meters>& planned) {
    Meters sum;
    for (const RunLog& run : standing(season.runs))
        if (run.machine == machine) sum = sum + metersOf(run);
    if (sum.lanes == 0 && !planned.empty()) sum = planned.back();
    std::array<double, 4> each{1, 0, 0, 0};
    for (size_t meter = 1; sum.lanes > 0 && meter < each.size(); ++meter)
        each[meter] = double(valueOf(sum, MeterKind(meter))) / double(sum.lanes);
    return each;
}

}  // namespace

StrayWork strayWork(const std::vector<std::int64_t>& sizes, double days, const StrayPrior& prior) {
    const double weight = prior.weight;
    StrayWork work{int(sizes.size()), days, weight * prior.size, weight * prior.square * std::pow(prior.size, 2),
                   weight * prior.cube * std::pow(prior.size, 3)};
    for (std::int64_t size : sizes) {
        work.size += double(size);
        work.square += std::pow(double(size), 2);
        work.cube += std::pow(double(size), 3);
    }
    for (double* moment : {&work.size, &work.square, &work.cube})
        *moment /= double(sizes.size()) + weight;
    return work;
}

StrayRates strayRates(const SeasonState& season, const MachineId& machine, QDate today) {
    std::vector<std::int64_t> besides;
    std::vector<std::int64_t> missed;
    const std::vector<RunLog> runs = standing(season.runs);
    for (const RunLog& run : runs) {
        if (run.machine != machine) continue;
        const auto job = std::find_if(season.confirmed.begin(), season.confirmed.end(),
                                      [&](const Job& j) { return !run.job.isEmpty() && j.id == run.job; });
        if (!run.job.isEmpty() && job == season.confirmed.end()) continue;  // older than the jobs that are in memory
        const std::int64_t more = run.use.laneRuns - (run.job.isEmpty() ? 0 : job->use.laneRuns);
        if (more > 0) besides.push_back(more);
        if (more < 0) missed.push_back(-more);
    }
    for (const Job& job : season.confirmed) {
        if (job.machine == machine && job.state == JobState::Dropped && job.date < today) missed.push_back(job.use.laneRuns);
    }
    return {strayWork(besides, openWindowDays, besidesPrior), strayWork(missed, openJobDays, missedPrior)};
}

double strayQuantile(const StrayRates& rates, double days, double level) {
    const Cumulants more = over(rates.besides, days, besidesPrior);
    const Cumulants less = over(rates.missed, days, missedPrior);
    const double deviation = std::sqrt(more.variance + less.variance);
    const double skewness = (more.third - less.third) / std::pow(deviation, 3);
    const double z = normalQuantile(level);
    return more.mean - less.mean + deviation * (z + (z * z - 1) * skewness / 6);
}

WorkAhead workAhead(const SeasonState& season, const Plan& ahead, const MachineId& machine, QDate today) {
    WorkAhead work{machine, today, {}};
    const std::vector<Meters> planned = plannedBy(ahead, machine, today);
    const StrayRates rates = strayRates(season, machine, today);
    const std::array<double, 4> each = aLane(season, machine, planned);
    for (size_t level = 0; level < dueLevels.size(); ++level) {
        std::array<double, 4> before{};
        for (size_t day = 0; day < planned.size(); ++day) {
            // What is due early comes of much work.
            const double stray = strayQuantile(rates, double(day) + 1, 1 - dueLevels[level]);
            for (size_t meter = 0; meter < each.size(); ++meter) {
                if (level == 0) work.reached[meter].emplace_back();
                const double there = double(valueOf(planned[day], MeterKind(meter))) + stray * each[meter];
                before[meter] = work.reached[meter][day][level] = std::max(before[meter], there);
            }
        }
    }
    return work;
}

}  // namespace laneward
