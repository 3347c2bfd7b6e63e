#include "app/pages/patterns/drift_plots.h"

#include "app/widgets/decimal_text.h"
#include "app/widgets/time_formats.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

QString say(const char* source, int n = -1) { return QCoreApplication::translate("laneward::DriftPlots", source, nullptr, n); }

int weightOf(const DriftSignal& signal) {
    const bool gathers = signal.chart == DriftChart::Sum || signal.chart == DriftChart::Average;
    return (signal.isNow ? 2 : 0) + (gathers ? 1 : 0);
}

bool signalsAt(const OutputDrift& drift, DriftChart chart, size_t point) {
    return std::any_of(drift.signals.begin(), drift.signals.end(),
                       [&](const DriftSignal& s) { return s.chart == chart && s.first <= point && point <= s.last; });
}

/// Adds values to a plot from point `offset` of the drift on.
class Plot {
public:
    Plot(const OutputDrift& drift, DriftChart chart, const Speech& speech) : m_drift(drift), m_chart(chart), m_speech(speech) {}

    double x(size_t point) const { return wallTime(m_drift.points[point].at, m_speech.zone); }

    void addPoints(const std::vector<double>& values, size_t offset) {
        QList<QPointF> line;
        for (size_t i = 0; i < values.size(); ++i) {
            const size_t point = offset + i;
            const bool steady = m_drift.baselineBegin <= point && point < m_drift.baselineEnd;
            const bool signals = signalsAt(m_drift, m_chart, point);
            made.points.push_back({x(point), values[i],
                                   signals  ? PointMark::Signal
                                   : steady ? PointMark::Hollow
                                            : PointMark::Plain,
                                   fillText(m_drift, point, m_speech)});
            line.append({x(point), values[i]});
        }
        made.lines.push_back({LineLook::Values, line});
    }

    void addLine(LineLook look, double value, size_t offset) {
        made.lines.push_back({look, {{x(offset), value}, {x(m_drift.points.size() - 1), value}}});
    }

    ChartContent made;

private:
    const OutputDrift& m_drift;
    DriftChart m_chart;
    const Speech& m_speech;
};

void addLimits(Plot& plot, const ControlLimits& limits, size_t offset) {
    plot.addLine(LineLook::Centre, limits.centre, offset);
    plot.addLine(LineLook::Limit, limits.upper, offset);
    plot.addLine(LineLook::Limit, limits.lower, offset);
}

void plotAverage(Plot& plot, const OutputDrift& drift) {
    const size_t from = drift.baselineBegin;
    QList<QPointF> upper;
    QList<QPointF> lower;
    for (size_t i = 0; i < drift.average.limits.size(); ++i) {
        upper.append({plot.x(from + i), drift.average.limits[i].upper});
        lower.append({plot.x(from + i), drift.average.limits[i].lower});
    }
    plot.addLine(LineLook::Centre, drift.baseline.mean, from);
    plot.made.lines.push_back({LineLook::Limit, upper});
    plot.made.lines.push_back({LineLook::Limit, lower});
    plot.addPoints(drift.average.averages, from);
}

/// Upwards sums above the axis and downwards sums below it: what is larger at a fill is its point.
void plotSums(Plot& plot, const OutputDrift& drift) {
    const size_t from = drift.baselineBegin;
    QList<QPointF> high;
    QList<QPointF> low;
    std::vector<double> larger;
    for (size_t i = 0; i < drift.sum.high.size(); ++i) {
        high.append({plot.x(from + i), drift.sum.high[i]});
        low.append({plot.x(from + i), -drift.sum.low[i]});
        larger.push_back(drift.sum.high[i] >= drift.sum.low[i] ? drift.sum.high[i] : -drift.sum.low[i]);
    }
    addLimits(plot, {-drift.sum.limit, 0, drift.sum.limit}, from);
    plot.addPoints(larger, from);
    plot.made.lines.pop_back();  // the two sums are the lines
    plot.made.lines.push_back({LineLook::Values, high});
    plot.made.lines.push_back({LineLook::Values, low});
}

}  // namespace

const DriftSignal* gravest(const OutputDrift& drift) {
    const auto lighter = [](const DriftSignal& a, const DriftSignal& b) {
        return std::pair(weightOf(a), a.last) < std::pair(weightOf(b), b.last);
    };
    const auto found = std::max_element(drift.signals.begin(), drift.signals.end(), lighter);
    return found == drift.signals.end() ? nullptr : &*found;
}

ChartContent plotOf(const OutputDrift& drift, DriftChart chart, const Speech& speech) {
    Plot plot(drift, chart, speech);
    plot.made.unit = nameOf(chart);
    if (drift.points.empty()) return plot.made;
    if (!drift.isJudged() && chart != DriftChart::Single) return plot.made;
    std::vector<double> ratios;
    for (const FillPoint& point : drift.points)
        ratios.push_back(point.ratio);
    switch (chart) {
        case DriftChart::Single:
            if (drift.isJudged()) addLimits(plot, drift.individuals.limits, drift.baselineBegin);
            plot.addPoints(ratios, 0);
            break;
        case DriftChart::Range:
            addLimits(plot, drift.individuals.rangeLimits, drift.baselineBegin);
            plot.addPoints(drift.individuals.ranges, drift.baselineBegin + 1);
            break;
        case DriftChart::Average:
            plotAverage(plot, drift);
            break;
        case DriftChart::Sum:
            plotSums(plot, drift);
            break;
    }
    return plot.made;
}

QString nameOf(DriftChart chart) {
    switch (chart) {
        case DriftChart::Single:
            return say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "poured over nominal"));
        case DriftChart::Range:
            return say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "change from the fill before"));
        case DriftChart::Average:
            return say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "smoothed average"));
        case DriftChart::Sum:
            return say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "cumulative sums"));
    }
    return {};
}

QString fillText(const OutputDrift& drift, size_t point, const Speech& speech) {
    const FillPoint& fill = drift.points[point];
    const QString runs = say(QT_TRANSLATE_N_NOOP("laneward::DriftPlots", "%n run(s)"), int(fill.runs.size()));
    QString line =
        say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "Fill of %1: %2 poured where the patterns say %3 (ratio %4), %5"))
            .arg(dateTimeText(fill.at, speech), amountText(fill.poured, speech), amountText(fill.nominal, speech),
                 speech.locale.toString(fill.ratio, 'f', 3), runs);
    if (drift.baselineBegin <= point && point < drift.baselineEnd)
        line = say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "%1; part of the baseline")).arg(line);
    QStringList charts;
    for (const DriftChart chart : {DriftChart::Single, DriftChart::Range, DriftChart::Average, DriftChart::Sum}) {
        if (signalsAt(drift, chart, point)) charts << nameOf(chart);
    }
    if (!charts.isEmpty())
        line = say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "%1; signals: %2")).arg(line, charts.join(QStringLiteral(", ")));
    return line;
}

QString driftSentence(const JudgedOutput& output, const Machine& machine, const Speech& speech) {
    const OutputDrift& drift = output.drift;
    const DriftSignal* signal = gravest(drift);
    if (!signal || !signal->isNow) return {};
    const QString name = shown(machine.name);
    const QString product = shown(productName(machine, output.product));
    const QString since = shortDay(speech.zone.toLocal(drift.points[signal->began].at).date, speech.locale);
    if (signal->chart != DriftChart::Sum && signal->chart != DriftChart::Average) {
        return say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "%1: the latest fill of %2 is out of the ordinary"))
            .arg(name, product);
    }
    double poured = 0;
    double nominal = 0;
    for (size_t i = signal->began; i < drift.points.size(); ++i) {
        poured += double(drift.points[i].poured.value);
        nominal += double(drift.points[i].nominal.value);
    }
    const double off = 100 * (poured / nominal / drift.baseline.mean - 1);
    const QString size = decimalText(std::abs(off), std::abs(off) < 1.95 ? 1 : 0, speech.locale);
    return off >= 0 ? say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "%1 puts out %2 % more %3 than in its baseline since %4"))
                          .arg(name, size, product, since)
                    : say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "%1 puts out %2 % less %3 than in its baseline since %4"))
                          .arg(name, size, product, since);
}

QString runText(const RunLog& run, const std::vector<Pattern>& patterns, const Speech& speech) {
    const Pattern* pattern = run.pattern ? findPattern(patterns, *run.pattern) : nullptr;
    LaneSet lanes;
    for (const LaneTime& lane : run.lanes)
        lanes.insert(lane.lane);
    const QString what = pattern ? shown(pattern->name) : text(run.treatment);
    return say(QT_TRANSLATE_NOOP("laneward::DriftPlots", "%1: %2, lanes %3"))
        .arg(dateTimeText(run.time.begin, speech), what, lanes.text());
}

}  // namespace laneward
