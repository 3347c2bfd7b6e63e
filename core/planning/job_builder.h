// From placed blocks to the jobs that people read: steps, times of every lane, who needs it, what fixes it, what it takes.
#pragma once

#include "core/planning/range_planner.h"

namespace laneward::planning {

class JobBuilder {
public:
    JobBuilder(const Ground& ground, const DemandSet& demands) : m_ground(ground), m_demands(demands) {}

    /// Jobs of one solved day, without reasons.
    std::vector<Job> jobsOf(const SolvedDay& solved, int day);

private:
    void addTrip(const SolvedDay& solved, const Trip& trip, int day, int outing);
    void addBlock(const SolvedDay& solved, int block, bool first);
    void addSteps(Job& job, const BlockTimes& times, bool first);
    void addLanes(Job& job, const SolvedDay& solved, const BlockTimes& times);
    void addNeeds(Job& job, const PlannedTreatment& what);
    void addWindow(Job& job, const SolvedDay& solved, const BlockTimes& times);
    void finishTrip(const Trip& trip, size_t firstJob);
    int freeOuting(const MachineId& machine, QDate date);
    JobId idFor(const Job& job);
    Instant at(Sec t) const { return m_begin + Seconds{t}; }

    const Ground& m_ground;
    const DemandSet& m_demands;
    Instant m_begin;  ///< of the day
    const Machine* m_machine = nullptr;
    bool m_wantsTwice = false;  ///< of the job at hand
    std::vector<Job> m_jobs;
    std::set<JobId> m_ids;
    std::map<std::pair<QDate, MachineId>, std::set<int>> m_outings;
};

/// Sorts needs and joins those of one occurrence.
void addNeed(std::vector<Need>& needs, const Occurrence& occurrence, Instant playBegins, int lane);

/// Fills Job::reasons of every proposed job in `jobs`.
void explainJobs(const Ground& ground, const DemandSet& demands, std::vector<Job>& jobs);

/// The date as ISO 8601 writes it, with which the id of a proposed job begins.
QString dateInId(QDate date);

/// Order of Plan::jobs.
bool comesBefore(const Job& a, const Job& b);

}  // namespace laneward::planning
