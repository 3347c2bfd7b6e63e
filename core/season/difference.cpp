#include "core/season/job_difference.h"

#include <algorithm>
#include <map>
#include <utility>

namespace laneward {

namespace {

bool servesTheSame(const Job& a, const Job& b) {
    // The day is the same, so the series tells the occurrence, even when all of its instances have moved.
    const auto sameNeed = [](const Need& x, const Need& y) { return x.series == y.series; };
    return a.date == b.date && a.treatment == b.treatment && a.pattern == b.pattern && a.laneSet() == b.laneSet() &&
           std::equal(a.neededBy.begin(), a.neededBy.end(), b.neededBy.begin(), b.neededBy.end(), sameNeed);
}

bool isUnmoved(const Job& a, const Job& b) { return a.time == b.time && a.machine == b.machine && a.lanes == b.lanes; }

using Jobs = std::vector<const Job*>;
using SameJob = bool (*)(const Job&, const Job&);

/// Pairs off jobs of both sides that are the same by `same`; what is left stays in `olds` and `news`, in order. Only jobs of one
/// date can be the same.
std::vector<std::pair<const Job*, const Job*>> paired(Jobs& olds, Jobs& news, SameJob same) {
    std::map<QDate, std::vector<const Job**>> byDate;
    for (const Job*& job : news)
        byDate[job->date].push_back(&job);
    std::vector<std::pair<const Job*, const Job*>> pairs;
    for (const Job*& job : olds) {
        const auto& day = byDate[job->date];
        const auto match = std::find_if(day.begin(), day.end(), [&](const Job** other) { return *other && same(*job, **other); });
        if (match != day.end()) pairs.emplace_back(std::exchange(job, nullptr), std::exchange(**match, nullptr));
    }
    std::erase(olds, nullptr);
    std::erase(news, nullptr);
    return pairs;
}

std::vector<Job> copied(const Jobs& jobs) {
    std::vector<Job> copies;
    for (const Job* job : jobs)
        copies.push_back(*job);
    return copies;
}

JobUse totalUse(const Jobs& jobs) {
    JobUse total;
    for (const Job* job : jobs) {
        for (size_t slot = 0; slot < total.conditioner.size(); ++slot)
            total.conditioner[slot] += job->use.conditioner[slot];
        total.cleaner += job->use.cleaner;
    }
    return total;
}

}  // namespace

PlanDifference differenceOfJobs(Jobs before, Jobs after) {
    PlanDifference result;
    const JobUse used = totalUse(before);
    const JobUse uses = totalUse(after);
    result.conditioner = uses.conditionerTotal() - used.conditionerTotal();
    result.cleaner = uses.cleaner - used.cleaner;
    // Unmoved jobs are paired off first, lest two jobs that serve the same events change places.
    paired(before, after, [](const Job& a, const Job& b) { return servesTheSame(a, b) && isUnmoved(a, b); });
    for (const auto& [from, to] : paired(before, after, servesTheSame))
        result.moved.emplace_back(*from, *to);
    result.removed = copied(before);
    result.added = copied(after);
    return result;
}

PlanDifference difference(const Plan& before, const Plan& after) {
    Jobs olds;
    Jobs news;
    for (const Job& job : before.jobs)
        olds.push_back(&job);
    for (const Job& job : after.jobs)
        news.push_back(&job);
    PlanDifference result = differenceOfJobs(std::move(olds), std::move(news));
    result.before = before.objective();
    result.after = after.objective();
    return result;
}

}  // namespace laneward
