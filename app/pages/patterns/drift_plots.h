// What the drift charts show, as values: the points of one chart with its lines, and words for fills, runs and signals.
#pragma once

#include "app/pages/patterns/point_chart.h"
#include "core/documents/wording.h"
#include "core/season/output_drift.h"

#include <QHash>

namespace laneward {

/// A machine and one of its products, judged.
struct JudgedOutput {
    MachineId machine;
    int product = 0;
    OutputDrift drift;
};

/// Whose signal weighs most: one that holds now before one that has passed, sums and averages before single fills, the newest
/// first. Null without any.
const DriftSignal* gravest(const OutputDrift& drift);

ChartContent plotOf(const OutputDrift& drift, DriftChart chart, const Speech& speech);
QString nameOf(DriftChart chart);
/// "Fill of …: 1.2 L poured for 1.1 L of nominal, 1.06; signals".
QString fillText(const OutputDrift& drift, size_t point, const Speech& speech);
/// "Heron puts out 6 % more Tideglass Amber than in its baseline since 21 October"; empty when nothing signals now.
QString driftSentence(const JudgedOutput& output, const Machine& machine, const Speech& speech);

using RunsById = QHash<OperationId, const RunLog*>;
QString runText(const RunLog& run, const std::vector<Pattern>& patterns, const Speech& speech);

}  // namespace laneward
