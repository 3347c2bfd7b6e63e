// Runs the registered benchmarks and judges pairs of them: ours beside its peer, both measured in this one run.
#pragma once

#include <benchmark/benchmark.h>

#include <cstdio>
#include <map>
#include <string>
#include <vector>

namespace bench {

/// Keeps the median (or the only) processor time of each benchmark in nanoseconds while printing as usual. Processor time of
/// these single-threaded programs is what they take on a quiet machine; the clock on the wall also counts its other work.
class Times : public benchmark::ConsoleReporter {
public:
    void ReportRuns(const std::vector<Run>& runs) override {
        for (const Run& run : runs) {
            const bool single = run.run_type == Run::RT_Iteration && run.repetitions <= 1;
            if (single || run.aggregate_name == "median") {
                ns[run.run_name.function_name] = run.GetAdjustedCPUTime() * unitNs(run.time_unit);
            }
        }
        ConsoleReporter::ReportRuns(runs);
    }

    std::map<std::string, double> ns;

private:
    static double unitNs(benchmark::TimeUnit unit) { return 1e9 / benchmark::GetTimeUnitMultiplier(unit); }
};

/// Prints "ratio OURS / PEER = x (at most LIMIT)"; returns whether it holds.
inline bool withinRatio(const Times& times, const std::string& ours, const std::string& peer, double limit) {
    const auto a = times.ns.find(ours);
    const auto b = times.ns.find(peer);
    if (a == times.ns.end() || b == times.ns.end() || b->second <= 0) {
        std::printf("ratio %s / %s was not measured\n", ours.c_str(), peer.c_str());
        return false;
    }
    const double ratio = a->second / b->second;
    std::printf("ratio %s / %s = %.2f (at most %.2f)%s\n", ours.c_str(), peer.c_str(), ratio, limit,
                ratio <= limit ? "" : "  TOO SLOW");
    return ratio <= limit;
}

/// Prints "limit OURS = x ms (at most LIMIT ms)"; returns whether it holds.
inline bool withinLimit(const Times& times, const std::string& ours, double limitMs) {
    const auto a = times.ns.find(ours);
    if (a == times.ns.end()) {
        std::printf("limit %s was not measured\n", ours.c_str());
        return false;
    }
    const double ms = a->second / 1e6;
    std::printf("limit %s = %.2f ms (at most %.0f ms)%s\n", ours.c_str(), ms, limitMs, ms <= limitMs ? "" : "  TOO SLOW");
    return ms <= limitMs;
}

}  // namespace bench
