// The waste tank: how much of the cleaner comes back, and whether the tank overflows tonight.
//
// A clean lays down cleaner and takes up a share of it, and strips the conditioner. What is emptied, in units of a tank, is
//
//     emptied(i) - stripped(i) = share cleaner(i) + noise(i),   noise ~ N(0, s cleaner(i))
//
// with the recovered share drifting slowly and s unknown: a dynamic linear model (core/statistics/dynamic_model.h) whose
// predictions are Student's t. Units: microlitres. Limits: what evaporates counts as not recovered; the level never falls by
// itself; cleaner is known as what the plan dispenses.
//
//     WasteTank tank({millilitres(9'000)});
//     for (const Emptying& one : log) tank.learn(one);
//     tank.overflowChances({now, {}}, jobs);      // one a job: 0.001, 0.4
#pragma once

#include "core/base/quantities.h"
#include "core/statistics/dynamic_model.h"

#include <optional>
#include <span>
#include <vector>

namespace laneward {

/// What cleaning lays down and takes up.
struct Cleaning {
    Microlitres cleaner;   ///< dispensed
    Microlitres stripped;  ///< conditioner that was on those lanes
    friend Cleaning operator+(const Cleaning& a, const Cleaning& b) { return {a.cleaner + b.cleaner, a.stripped + b.stripped}; }
    friend bool operator==(const Cleaning&, const Cleaning&) = default;
};

/// The tank was emptied, and what was in it measured.
struct Emptying {
    Cleaning since;  ///< the emptying before
    Microlitres volume;
};

/// What is believed before the first emptying. Common practice, no source.
struct WasteRule {
    Microlitres capacity = millilitres(9'000);  ///< above 0
    double share = 0.85;                        ///< mean of the recovered share, and its standard deviation
    double shareDeviation = 0.1;
    double noise = 0.05;          ///< root of s: of the waste of one tank of cleaner
    double weight = 3;            ///< emptyings that this is worth: degrees of freedom
    double discount = 0.97;       ///< how fast the share is forgotten: about 33 tanks are remembered
    double scaleDiscount = 0.99;  ///< likewise s
};

struct WasteLevel {
    Microlitres measured;  ///< 0 after emptying
    Cleaning since;        ///< work done since then
};

class WasteTank {
public:
    explicit WasteTank(const WasteRule& rule = {});
    /// One more, by time; false, and left out, without cleaner, or when nothing or more than one and a half times all of it came
    /// back.
    bool learn(const Emptying& emptying);

    Student share() const;                        ///< recovered of the cleaner
    Student wasteOf(const Cleaning& work) const;  ///< of future work, microlitres
    /// What planning counts for a lane: so much that a run of as many `lanes` (1 or more), each taking `lane`, exceeds it with
    /// chance 1 - p only. The 99 % quantile by default; at least 0.
    Microlitres perLane(const Cleaning& lane, int lanes, double p = 0.99) const;
    /// For each job in order: P(the tank is over its capacity by the job's end, when it is not emptied before).
    std::vector<double> overflowChances(const WasteLevel& now, std::span<const Cleaning> jobs) const;
    /// The first job before which the tank is to be emptied for no chance to exceed `most`; none when it lasts.
    std::optional<size_t> emptyBefore(const WasteLevel& now, std::span<const Cleaning> jobs, double most = 0.01) const;

    int emptyings() const { return m_emptyings; }  ///< behind it
    int leftOut() const { return m_leftOut; }

private:
    WasteRule m_rule;
    double m_capacity;  ///< microlitres
    double m_drift;
    DynamicModel m_model;
    int m_emptyings = 0;
    int m_leftOut = 0;
};

}  // namespace laneward
