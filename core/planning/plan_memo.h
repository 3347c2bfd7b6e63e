// What planning remembers from one call to the next: solved days, and whole stretches of a season, both by what they were made
// from and in times relative to their begin. A plan made with a memo is the plan made without it, only sooner.
//
//     PlanMemo memo;
//     Plan p = plan({state, now, range}, memo);
//     Plan q = plan({edited, now, range}, memo);   // stretches that the edit leaves as they were are not planned again
//
// A memo grows to some dozen megabytes and then starts anew. Not for use by two threads at once.
#pragma once

#include "core/planning/plan.h"

#include <memory>

namespace laneward {

class PlanMemo {
public:
    enum class Keeps {
        Everything,
        Nothing,  ///< for tests: every stretch and every day is worked out again
    };

    explicit PlanMemo(Keeps keeps = Keeps::Everything);
    ~PlanMemo();
    PlanMemo(PlanMemo&&) noexcept;
    PlanMemo& operator=(PlanMemo&&) noexcept;

    struct Data;
    Data& data() const { return *m_data; }

private:
    std::unique_ptr<Data> m_data;
};

struct PlanTask {
    const State& state;
    Instant now;
    DateRange range;
    std::int64_t nodeLimit = defaultNodeLimit;
    Cancelled cancelled = {};
};

Plan plan(const PlanTask& task, PlanMemo& memo);

/// At once: few nodes a day and no remedies. What `searched` knows of days with the task's own nodes is taken from it.
Plan firstPlan(const PlanTask& task, PlanMemo& memo, const PlanMemo* searched = nullptr);
/// plan() would say the same as this first one: every day is proven, and nothing asks for remedies.
bool isLastWord(const Plan& first);

}  // namespace laneward
