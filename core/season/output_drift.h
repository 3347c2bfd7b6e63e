// Output drift: does a machine still put out what its patterns say? Fills against nominal, on three control charts.
//
// The operator fills a tank up to its line, so what is poured is what the lanes since the last full line took. Nominal is what
// the patterns of these runs say, in the version that was run; of cleaner, the machine's dose per lane cleaned. The ratio of both
// is charted for each machine and product against a fixed baseline: the first fills, or a span that the lead sets.
//
// The line is met within an error that comes back with the opposite sign in the next fill. It widens the moving range, and so the
// limits: the charts allow for it, and cumulative sums cancel it. Against a few lanes it would be large, so fills after less than
// a quarter of a tank join the next; longer intervals have equal weight.
//
//     const OutputDrift drift = outputDrift({runs, readings, versions, patterns}, machine, 0);
//     for (const DriftSignal& signal : drift.signals) show(text(signal.finding, speech), signal.runs);
#pragma once

#include "core/season/season.h"
#include "core/statistics/control_charts.h"

#include <span>

namespace laneward {

inline constexpr size_t fillsOfBaseline = 20;      ///< the first ones, when the lead sets no span
inline constexpr size_t leastFillsOfBaseline = 8;  ///< that a span must hold; common practice, no source
inline constexpr int products = conditionerSlots + 1;
inline constexpr int cleanerProduct = conditionerSlots;  ///< products before it are the conditioners' slots

inline constexpr int leastTankShare = 4;  ///< 1 / the part of a tank that an interval must take; common practice, no source

/// What drift is judged from. Lists in any order; corrections among the records are applied here.
struct DriftHistory {
    std::vector<RunLog> runs;
    std::vector<LevelReading> readings;
    std::vector<PatternVersion> versions;
    std::vector<Pattern> patterns;  ///< as they are now, for those without a version
};

/// One fill that reached the line.
struct FillPoint {
    OperationId fill;
    Instant at;
    double ratio = 0;               ///< poured / nominal
    Microlitres poured;             ///< since the last full line, toppings-up included
    Microlitres nominal;            ///< of `runs`
    std::vector<OperationId> runs;  ///< since the last full line, by their end
    int lanes = 0;                  ///< that these runs worked with the product, repeated first pairs included
    bool follows = true;            ///< the fill at whose line it began was judged as well
};

struct FillPoints {
    std::vector<FillPoint> points;  ///< by time
    int leftOut = 0;                ///< fills that cannot be judged: a run's pattern is unknown
};
FillPoints fillPoints(const DriftHistory& history, const Machine& machine, int product);

enum class DriftChart { Single, Range, Average, Sum };

/// Fills in a row that a chart does not take for chance.
struct DriftSignal {
    DriftChart chart = DriftChart::Single;
    bool high = false;              ///< more than the baseline; of a range: up from the fill before
    size_t began = 0;               ///< index of the first point that led to it
    size_t first = 0;               ///< point that signals first …
    size_t last = 0;                ///< … and last
    bool isNow = false;             ///< the latest fill still signals
    std::vector<OperationId> runs;  ///< behind the points began..first
    Finding finding;                ///< "drift.…", a warning; subject: the machine
};

struct OutputDrift {
    std::vector<FillPoint> points;
    size_t baselineBegin = 0;  ///< points [begin, end) are the baseline
    size_t baselineEnd = 0;
    Baseline baseline;
    /// Of the points from baselineBegin on: index 0 is that point. Empty without a baseline.
    IndividualsChart individuals;
    EwmaChart average;
    CusumChart sum;
    std::vector<DriftSignal> signals;  ///< after the baseline, by chart and time
    std::vector<Finding> notes;        ///< why nothing, or not everything, is judged

    bool isJudged() const { return baselineEnd > baselineBegin; }
};

/// `baseline`: the span whose fills are taken as steady; none = the first fillsOfBaseline.
OutputDrift outputDrift(const DriftHistory& history, const Machine& machine, int product,
                        const std::optional<Span>& baseline = std::nullopt);

/// What lanes take of a product by the recipe: `pattern` is what was laid, none for clean only.
Microlitres nominalUse(const Machine& machine, int product, Treatment treatment, const Pattern* pattern, std::int64_t laneRuns);
/// What its tank holds.
Microlitres tankOf(const Machine& machine, int product);
/// The product's name as the machine has it.
QString productName(const Machine& machine, int product);

}  // namespace laneward
