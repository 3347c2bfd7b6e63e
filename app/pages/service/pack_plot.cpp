#include "app/pages/service/pack_plot.h"

#include "core/documents/stock_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double air = 1.1;
constexpr int ticks = 4;
constexpr double roundLanes = 5.0 * ticks;

QString say(const char* source) { return QCoreApplication::translate("laneward::PacksPanel", source); }

QDate dateOfDay(double day) { return QDate(1970, 1, 1).addDays(qint64(std::floor(day))); }

}  // namespace

PlotContent packPlot(const PackShown& shown, const Speech& speech) {
    PlotContent plot;
    plot.title = say(QT_TRANSLATE_NOOP("laneward::PacksPanel", "Lanes of each charge"));
    plot.empty = say(QT_TRANSLATE_NOOP(
        "laneward::PacksPanel", "No charge of it is known yet. Write down when a pack is put on charge and when it is charged."));
    if (shown.charges.empty()) return plot;
    const auto [first, last] = std::minmax_element(shown.charges.begin(), shown.charges.end(),
                                                   [](const PackCharge& a, const PackCharge& b) { return a.day < b.day; });
    double most = shown.needed;
    for (const PackCharge& charge : shown.charges) {
        plot.points.emplace_back(charge.day, charge.lanes);
        most = std::max(most, charge.lanes);
        const QString day = dayWithWeekday(dateOfDay(charge.day), speech);
        const char* how = charge.cutShort ? QT_TRANSLATE_NOOP("laneward::PacksPanel", "%1: %2 lanes, charged before it was done")
                                          : QT_TRANSLATE_NOOP("laneward::PacksPanel", "%1: %2 lanes until it was done");
        plot.stops.push_back({{charge.day, charge.lanes}, say(how).arg(day, speech.locale.toString(int(charge.lanes)))});
    }
    std::sort(plot.stops.begin(), plot.stops.end(), [](const PlotStop& a, const PlotStop& b) { return a.at.x() < b.at.x(); });
    const double width = std::max(1.0, last->day - first->day);
    plot.x = {first->day - width * 0.03, last->day + width * 0.03};
    plot.y = {0, std::max(1.0, std::ceil(most * air / roundLanes)) * roundLanes};
    for (int n = 0; n <= ticks; ++n) {
        const double day = first->day + width * n / ticks;
        plot.xTicks.push_back({day, speech.locale.toString(dateOfDay(day), QLocale::ShortFormat)});
        const double lanes = std::round(plot.y.high * n / ticks);
        plot.yTicks.push_back({lanes, speech.locale.toString(int(lanes))});
    }
    if (shown.trend) {
        const auto at = [&](double day) { return shown.needed + shown.trend->lanesPerDay * (day - shown.trend->day); };
        plot.line << QPointF(first->day, at(first->day)) << QPointF(last->day, at(last->day));
    }
    return plot;
}

}  // namespace laneward
