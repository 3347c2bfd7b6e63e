#include "app/pages/service/wear_plots.h"

#include "core/documents/item_words.h"
#include "core/documents/stock_words.h"
#include "core/season/part_lives.h"
#include "core/statistics/failure_band.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>

namespace laneward {

namespace {

constexpr int curvePoints = 61;
constexpr std::array shares{0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 0.8, 0.95, 0.99};
constexpr double steps = 4;

QString say(const char* source) { return QCoreApplication::translate("laneward::WearPanel", source); }

QString percent(double share, const Speech& speech) {
    return say(QT_TRANSLATE_NOOP("laneward::WearPanel", "%1 %"))
        .arg(speech.locale.toString(share * 100, 'f', share < 0.0995 ? 1 : 0));
}

/// 1, 2 or 5 times a power of ten, so that `most` has at most four of them.
double roundStep(double most) {
    const double power = std::pow(10, std::floor(std::log10(most / steps)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (most <= steps * factor * power) return factor * power;
    return 10 * power;
}

/// The unit in which ages are round: hours and litres, not minutes and microlitres.
double roundUnit(MeterKind meter) { return meter == MeterKind::Minutes ? 60 : meter == MeterKind::Volume ? 1e6 : 1; }

std::vector<PlotTick> ageTicks(double most, const WearShown& shown, const Speech& speech) {
    const double unit = roundUnit(shown.meter);
    const double step = roundStep(most / unit) * unit;
    std::vector<PlotTick> ticks;
    for (double age = 0; age <= most * 1.001; age += step)
        ticks.push_back({age, meterNumber(age, shown.meter, speech)});
    return ticks;
}

std::vector<PlotTick> logTicks(const Interval& ages, const WearShown& shown, const Speech& speech) {
    const double unit = roundUnit(shown.meter);
    std::vector<PlotTick> ticks;
    for (double power = std::pow(10, std::floor(std::log10(ages.low / unit))) * unit; power <= ages.high; power *= 10) {
        for (const double factor : {1.0, 2.0, 5.0}) {
            const double age = factor * power;
            if (age >= ages.low && age <= ages.high) ticks.push_back({std::log(age), meterNumber(age, shown.meter, speech)});
        }
    }
    return ticks;
}

/// From well below the first failure to well above the last, and to the interval that is set.
Interval agesOf(const WearShown& shown) {
    const std::vector<PlotPoint>& points = shown.answer.points;
    Interval ages{points.front().age, points.back().age};
    if (shown.answer.fit) {
        ages.low = std::min(ages.low, shown.answer.fit->law.quantile(0.03));
        ages.high = std::max(ages.high, shown.answer.fit->law.quantile(0.97));
    }
    return {ages.low / 1.3, ages.high * 1.3};
}

double clampedHeight(double share) { return plotHeight(std::clamp(share, 1e-4, 1 - 1e-6)); }

void addFit(PlotContent& plot, const WearShown& shown, const Interval& ages, const Speech& speech) {
    const std::vector<BandPoint> band = failureBand(*shown.answer.fit, ages, curvePoints);
    for (const BandPoint& point : band) {
        const double x = std::log(point.age);
        plot.band << QPointF(x, clampedHeight(point.low));
        plot.line << QPointF(x, clampedHeight(point.likely));
        plot.stops.push_back({plot.line.back(), say(QT_TRANSLATE_NOOP("laneward::WearPanel", "By %1: %2 have failed (%3 to %4)"))
                                                    .arg(meterText(point.age, shown.meter, speech), percent(point.likely, speech),
                                                         percent(point.low, speech), percent(point.high, speech))});
    }
    for (auto point = band.rbegin(); point != band.rend(); ++point)
        plot.band << QPointF(std::log(point->age), clampedHeight(point->high));
}

/// Each failure is a place of its own among those of the curve.
void addFailures(PlotContent& plot, const WearShown& shown, const Speech& speech) {
    for (const PlotPoint& point : shown.answer.points) {
        const QPointF at(std::log(point.age), clampedHeight(point.medianRank));
        plot.stops.push_back({at, say(QT_TRANSLATE_NOOP("laneward::WearPanel", "A failure at %1; about %2 have failed by then"))
                                      .arg(meterText(point.age, shown.meter, speech), percent(point.medianRank, speech))});
    }
    std::stable_sort(plot.stops.begin(), plot.stops.end(),
                     [](const PlotStop& a, const PlotStop& b) { return a.at.x() < b.at.x(); });
}

void addMarks(PlotContent& plot, const WearShown& shown, const Speech& speech, bool logarithms) {
    const auto add = [&](double age, const char* words, bool isBest) {
        const double x = logarithms ? std::log(age) : age;
        if (x < plot.x.low || x > plot.x.high) return;
        const double told = isBest ? double(roundedInterval(age, shown.meter)) : age;
        plot.marks.push_back({x, say(words).arg(meterNumber(told, shown.meter, speech)), isBest});
    };
    if (shown.answer.best && !shown.answer.best->never)
        add(shown.answer.best->age, QT_TRANSLATE_NOOP("laneward::WearPanel", "best: %1"), true);
    if (shown.now) add(*shown.now, QT_TRANSLATE_NOOP("laneward::WearPanel", "now: %1"), false);
}

}  // namespace

PlotContent weibullPlot(const WearShown& shown, const Speech& speech) {
    PlotContent plot;
    const char* title = shown.answer.fit
                            ? QT_TRANSLATE_NOOP("laneward::WearPanel", "Failed by age in %1: failures, fit, its 95 % band")
                            : QT_TRANSLATE_NOOP("laneward::WearPanel", "Failed by age in %1");
    plot.title = say(title).arg(text(shown.meter));
    plot.empty = say(QT_TRANSLATE_NOOP("laneward::WearPanel", "No failure is recorded."));
    if (shown.answer.points.empty()) return plot;
    const Interval ages = agesOf(shown);
    plot.x = {std::log(ages.low), std::log(ages.high)};
    plot.xTicks = logTicks(ages, shown, speech);
    double low = plotHeight(0.05);
    double high = plotHeight(0.95);
    for (const PlotPoint& point : shown.answer.points) {
        plot.points.emplace_back(std::log(point.age), clampedHeight(point.medianRank));
        low = std::min(low, plot.points.back().y() - 0.3);
        high = std::max(high, plot.points.back().y() + 0.3);
    }
    plot.y = {low, high};
    for (const double share : shares)
        if (plotHeight(share) >= low && plotHeight(share) <= high)
            plot.yTicks.push_back({plotHeight(share), percent(share, speech)});
    if (shown.answer.fit) addFit(plot, shown, ages, speech);
    addFailures(plot, shown, speech);
    addMarks(plot, shown, speech, true);
    return plot;
}

namespace {

/// Costs are told for so many of the meter's units that they are numbers to read.
struct CostUnit {
    double size = 1;
    QString words;
};

CostUnit costUnit(MeterKind meter, const Speech& speech) {
    const double size = meter == MeterKind::Lanes     ? 1'000
                        : meter == MeterKind::Runs    ? 100
                        : meter == MeterKind::Minutes ? 6'000
                        : meter == MeterKind::Volume  ? 100e6
                                                      : 100;
    return {size, meterText(size, meter, speech)};
}

QString costText(double cost, const CostUnit& unit, const QByteArray& currency, const Speech& speech) {
    return moneyText({std::llround(cost * unit.size), currency}, speech);
}

}  // namespace

PlotContent costPlot(const WearShown& shown, const Speech& speech) {
    const CostUnit unit = costUnit(shown.meter, speech);
    PlotContent plot;
    plot.title =
        say(QT_TRANSLATE_NOOP("laneward::WearPanel", "Cost of %1, by age of replacing in %2")).arg(unit.words, text(shown.meter));
    plot.empty =
        say(QT_TRANSLATE_NOOP("laneward::WearPanel", "What replacing costs at each age follows from a fit and from both costs."));
    if (!shown.answer.costs || !shown.answer.best) return plot;
    const BestAge& best = *shown.answer.best;
    const double life = shown.answer.fit->law.quantile(0.9);
    double most = std::max({life, best.never ? 0 : best.age * 1.6, shown.now.value_or(0) * 1.15});
    most = std::min(most, life * 3);
    const Interval ages{most / curvePoints, most};
    plot.x = {0, most};
    plot.xTicks = ageTicks(most, shown, speech);
    const double roof = best.cost * 3;
    double high = best.cost;
    for (const CostPoint& point : shown.answer.costs->curve(ages, curvePoints)) {
        if (point.cost > roof) continue;  // replacing too soon costs beyond any scale
        high = std::max(high, point.cost);
        plot.line << QPointF(point.age, point.cost);
        plot.stops.push_back({plot.line.back(), say(QT_TRANSLATE_NOOP("laneward::WearPanel", "Replaced after %1: %2 for %3"))
                                                    .arg(meterText(point.age, shown.meter, speech),
                                                         costText(point.cost, unit, shown.currency, speech), unit.words)});
    }
    const double step = roundStep(high * unit.size);
    plot.y = {0, std::ceil(high * unit.size / step) * step / unit.size};
    for (double cost = 0; cost <= plot.y.high * unit.size * 1.001; cost += step)
        plot.yTicks.push_back({cost / unit.size, costText(cost / unit.size, unit, shown.currency, speech)});
    addMarks(plot, shown, speech, false);
    return plot;
}

}  // namespace laneward
