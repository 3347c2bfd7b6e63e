// The parts of violationsOf(), one for each kind of thing that a plan may break.
#pragma once

#include "core/planning/outcomes.h"

namespace laneward::planning {

/// A proposed or confirmed job: what is done already is history, however it was done.
inline bool isChecked(const Job& job) { return job.state == JobState::Proposed || job.state == JobState::Confirmed; }

class Breaches {
public:
    Breaches(const State& state, const Plan& plan);

    std::vector<Finding> find();

private:
    void add(const char* rule, const Job& job, std::vector<Value> values);
    void checkJob(const Job& job);
    void checkMachine(const Job& job, const Machine& machine);
    void checkLane(const Job& job, int lane, const Span& time);
    void checkPlay(const Job& job, int lane, const Span& time);
    void checkTimes(const Job& job, const Machine& machine);
    void checkSteps(const Job& job, const Machine& machine);
    void checkOuting(const JobOuting& outing);
    void checkFirstPair(const JobOuting& outing);
    void checkClosed(const JobOuting& outing);
    void checkOverlaps();
    void checkStaff(QDate date);
    void checkConditionOnly();
    void checkStocks(const Machine& machine);

    const State& m_state;
    const Plan& m_plan;
    std::vector<LanePlays> m_plays;
    std::vector<JobOuting> m_outings;
    std::vector<Finding> m_findings;
};

}  // namespace laneward::planning
