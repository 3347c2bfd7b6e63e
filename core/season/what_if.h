// 'What if': a season planned once, and asked again and again with small changes (planning.md, 7).
//
//     WhatIf season(planningState(season, now), now, {today, today.addDays(27)});
//     WhatIfAnswer quick = season.ask(changed, Effort::First);    // at once, with its bound
//     WhatIfAnswer proof = season.ask(changed, Effort::Proven);   // as far as the search goes
//
// `changed` is the same state with an edit in it. Days that the edit cannot touch are not planned again; days are known by
// their inputs in relative time, so the same Thursday is solved once. A proven answer is the difference of two whole plans. Not
// for use by two threads at once; every answer is a value of its own, and none depends on what was asked before.
#pragma once

#include "core/season/season.h"

#include <memory>

namespace laneward {

enum class Effort {
    First,   ///< few search nodes for days that the edit touches: answers while the mouse moves
    Proven,  ///< the search's usual limit
};

struct WhatIfAnswer {
    PlanDifference difference;          ///< over the whole range
    Objective bound;                    ///< of the range after the change: nothing can be better
    bool proven = false;                ///< the range after the change is at its bound on every day that changed
    std::vector<Shortfall> shortfalls;  ///< unmet or late after the change and not before, without remedies
    std::vector<QDate> days;            ///< whose jobs are other than before
    bool cancelled = false;             ///< stopped early: days that were not reached count as they were
};

class WhatIf {
public:
    WhatIf(State state, Instant now, const DateRange& range, std::int64_t nodeLimit = defaultNodeLimit);
    ~WhatIf();
    WhatIf(WhatIf&&) noexcept;
    WhatIf& operator=(WhatIf&&) noexcept;

    const State& state() const;
    /// The plan without any change.
    const Plan& before() const;
    WhatIfAnswer ask(const State& changed, Effort effort, const Cancelled& cancelled = {});

private:
    struct Memo;
    std::unique_ptr<Memo> m_memo;
};

}  // namespace laneward
