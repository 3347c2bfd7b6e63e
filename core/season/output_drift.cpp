#include "core/season/output_drift.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

std::vector<double> ratiosOf(std::span<const FillPoint> points) {
    std::vector<double> ratios;
    for (const FillPoint& point : points)
        ratios.push_back(point.ratio);
    return ratios;
}

std::int64_t permille(double ratio) { return std::llround(ratio * 1'000); }

void note(OutputDrift& drift, const Machine& machine, const char* rule, std::vector<Value> values) {
    drift.notes.push_back({Severity::Note, rule, machine.name, std::move(values)});
}

/// Says which points are the baseline; false when they are too few.
bool findBaseline(OutputDrift& drift, const std::optional<Span>& span) {
    const auto& points = drift.points;
    const size_t least = span ? leastFillsOfBaseline : fillsOfBaseline;
    size_t begin = 0;
    size_t end = std::min(points.size(), fillsOfBaseline);
    if (span) {
        const auto isBefore = [&](const FillPoint& p) { return p.at < span->begin; };
        begin = size_t(std::find_if_not(points.begin(), points.end(), isBefore) - points.begin());
        end = begin;
        while (end < points.size() && span->contains(points[end].at))
            ++end;
    }
    if (end - begin < least) return false;
    drift.baselineBegin = begin;
    drift.baselineEnd = end;
    return true;
}

const char* ruleOf(DriftChart chart, bool high) {
    switch (chart) {
        case DriftChart::Single:
            return high ? "drift.single-high" : "drift.single-low";
        case DriftChart::Range:
            return "drift.range";
        case DriftChart::Average:
            return high ? "drift.average-high" : "drift.average-low";
        case DriftChart::Sum:
            return high ? "drift.sum-high" : "drift.sum-low";
    }
    return "";
}

/// Turns the signals of one chart into runs of neighbours. Indices are those of the charts, which begin with the baseline.
class Signals {
public:
    Signals(OutputDrift& drift, const Machine& machine, const QString& product)
        : m_drift(drift), m_machine(machine), m_product(product) {}

    /// `began(i)`: first value that led to the signal at value i; `isHigh(i)`: its side.
    template <class Began, class High>
    void add(DriftChart chart, const std::vector<size_t>& signalling, const Began& began, const High& isHigh) {
        const size_t baseline = m_drift.baselineEnd - m_drift.baselineBegin;
        std::optional<size_t> before;
        for (const size_t i : signalling) {
            if (i < baseline) continue;
            const bool goesOn = before && *before + 1 == i && m_drift.signals.back().high == isHigh(i);
            before = i;
            if (!goesOn) open(chart, isHigh(i), std::max(began(i), baseline), i);
            m_drift.signals.back().last = m_drift.baselineBegin + i;
            m_drift.signals.back().isNow = m_drift.baselineBegin + i + 1 == m_drift.points.size();
        }
    }

private:
    void open(DriftChart chart, bool high, size_t began, size_t first) {
        const size_t from = m_drift.baselineBegin;
        DriftSignal signal{chart, high, from + began, from + first, from + first, false, {}, {}};
        Microlitres poured;
        Microlitres nominal;
        for (size_t i = signal.began; i <= signal.first; ++i) {
            const FillPoint& point = m_drift.points[i];
            signal.runs.insert(signal.runs.end(), point.runs.begin(), point.runs.end());
            poured += point.poured;
            nominal += point.nominal;
        }
        const double ratio = double(poured.value) / double(nominal.value);
        const std::int64_t fills = std::int64_t(signal.first - signal.began + 1);
        const Instant when = m_drift.points[signal.first].at;
        signal.finding = {
            Severity::Warning,
            ruleOf(chart, high),
            m_machine.name,
            {m_product, when, permille(ratio), permille(m_drift.baseline.mean), fills, std::int64_t(signal.runs.size())}};
        m_drift.signals.push_back(std::move(signal));
    }

    OutputDrift& m_drift;
    const Machine& m_machine;
    QString m_product;
};

/// The value after the last one at which a running sum was nothing.
size_t riseOf(const std::vector<double>& sums, size_t at) {
    while (at > 0 && sums[at - 1] > 0)
        --at;
    return at;
}

/// The first of the values before `at` that kept the average on one side of the centre.
size_t strayOf(const EwmaChart& chart, size_t at) {
    const auto side = [&](size_t i) { return chart.averages[i] > chart.limits[i].centre; };
    const bool high = side(at);
    while (at > 0 && side(at - 1) == high)
        --at;
    return at;
}

void judge(OutputDrift& drift, const Machine& machine, const QString& product) {
    const std::vector<double> values = ratiosOf(std::span(drift.points).subspan(drift.baselineBegin));
    drift.individuals = individualsChart(values, drift.baseline);
    drift.average = ewmaChart(values, drift.baseline);
    drift.sum = cusumChart(values, drift.baseline);
    Signals signals(drift, machine, product);
    const auto itself = [](size_t i) { return i; };
    const double mean = drift.baseline.mean;
    signals.add(DriftChart::Single, drift.individuals.signals, itself, [&](size_t i) { return values[i] > mean; });
    signals.add(
        DriftChart::Range, drift.individuals.rangeSignals, [](size_t i) { return i - 1; },
        [&](size_t i) { return values[i] > values[i - 1]; });
    signals.add(
        DriftChart::Average, drift.average.signals, [&](size_t i) { return strayOf(drift.average, i); },
        [&](size_t i) { return drift.average.averages[i] > mean; });
    signals.add(
        DriftChart::Sum, drift.sum.highSignals, [&](size_t i) { return riseOf(drift.sum.high, i); }, [](size_t) { return true; });
    signals.add(
        DriftChart::Sum, drift.sum.lowSignals, [&](size_t i) { return riseOf(drift.sum.low, i); }, [](size_t) { return false; });
}

}  // namespace

OutputDrift outputDrift(const DriftHistory& history, const Machine& machine, int product, const std::optional<Span>& baseline) {
    const QString name = productName(machine, product);
    FillPoints found = fillPoints(history, machine, product);
    OutputDrift drift;
    drift.points = std::move(found.points);
    if (found.leftOut > 0) note(drift, machine, "drift.left-out", {name, std::int64_t{found.leftOut}});
    if (!findBaseline(drift, baseline)) {
        const size_t least = baseline ? leastFillsOfBaseline : fillsOfBaseline;
        note(drift, machine, "drift.too-few", {name, std::int64_t(drift.points.size()), std::int64_t(least)});
        return drift;
    }
    const auto steady = std::span(drift.points).subspan(drift.baselineBegin, drift.baselineEnd - drift.baselineBegin);
    drift.baseline = baselineOf(ratiosOf(steady));
    if (drift.baseline.sigma > 0) {
        judge(drift, machine, name);
        return drift;
    }
    drift.baselineEnd = drift.baselineBegin;
    note(drift, machine, "drift.no-spread", {name});
    return drift;
}

}  // namespace laneward
