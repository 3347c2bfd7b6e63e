#include "core/season/season.h"

#include <algorithm>

namespace laneward {

namespace {

bool servesTheSame(const Job& a, const Job& b) {
    const auto sameNeed = [](const Need& x, const Need& y) { return x.series == y.series && x.original == y.original; };
    return a.date == b.date && a.treatment == b.treatment && a.pattern == b.pattern && a.laneSet() == b.laneSet() &&
           std::equal(a.neededBy.begin(), a.neededBy.end(), b.neededBy.begin(), b.neededBy.end(), sameNeed);
}

bool isUnmoved(const Job& a, const Job& b) { return a.time == b.time && a.machine == b.machine && a.lanes == b.lanes; }

using SameJob = bool (*)(const Job&, const Job&);

/// Pairs off jobs of both sides that are the same by `same`; what is left stays in `olds` and `news`.
std::vector<std::pair<Job, Job>> paired(std::vector<Job>& olds, std::vector<Job>& news, SameJob same) {
    std::vector<std::pair<Job, Job>> pairs;
    std::vector<Job> left;
    for (Job& job : olds) {
        const auto match = std::find_if(news.begin(), news.end(), [&job, same](const Job& other) { return same(job, other); });
        if (match == news.end()) {
            left.push_back(std::move(job));
            continue;
        }
        pairs.emplace_back(std::move(job), std::move(*match));
        news.erase(match);
    }
    olds = std::move(left);
    return pairs;
}

JobUse totalUse(const Plan& plan) {
    JobUse total;
    for (const Job& job : plan.jobs) {
        for (size_t slot = 0; slot < total.conditioner.size(); ++slot)
            total.conditioner[slot] += job.use.conditioner[slot];
        total.cleaner += job.use.cleaner;
    }
    return total;
}

}  // namespace

PlanDifference difference(const Plan& before, const Plan& after) {
    PlanDifference result;
    result.before = before.objective();
    result.after = after.objective();
    result.removed = before.jobs;
    result.added = after.jobs;
    // Unmoved jobs are paired off first, lest two jobs that serve the same events change places.
    paired(result.removed, result.added, [](const Job& a, const Job& b) { return servesTheSame(a, b) && isUnmoved(a, b); });
    result.moved = paired(result.removed, result.added, servesTheSame);
    const JobUse used = totalUse(before);
    const JobUse uses = totalUse(after);
    result.conditioner = uses.conditionerTotal() - used.conditionerTotal();
    result.cleaner = uses.cleaner - used.cleaner;
    return result;
}

}  // namespace laneward
