// How good were the forecasts? Kept ones against what happened, and against two plain ways to guess.
//
// A forecast of a centre's day is kept as it was: quantiles of cumulative use from the beginning of that day. What was really
// used is known at fills and counts only, so it is scored from one day with such knowledge to the next, over spans that do not
// overlap: their errors are then not the same error counted twice.
//
// Pinball loss of quantile q at level p for the value y: p (y - q) above q, (1 - p)(q - y) below it; the smaller the better, and
// smallest on average for the true quantile (Koenker and Bassett 1978; Gneiting and Raftery 2007, JASA 102(477), from memory).
// A plain guess is one number, and stands for all levels.
//
//     const ForecastScore score = scoreForecasts(kept, supply.id, known);
//     if (score.most.isOff()) say(score.most);
#pragma once

#include "core/supplies/kept_forecast.h"
#include "core/supplies/stock_forecast.h"

namespace laneward {

/// Days ahead that are kept. Use has the course of a week, so that all of the first one's days are; between two horizons after it
/// quantiles follow the median's course in the first week, where each of its days is kept, else a straight line.
inline constexpr std::array<int, 12> keptHorizons{1, 2, 3, 4, 5, 6, 7, 14, 21, 28, 42, 56};

/// The rule that a forecast to be kept is made with.
ForecastRule keptRule();
/// From a forecast by that rule.
KeptSupply kept(const SupplyId& supply, const StockForecast& forecast, int days);

/// The use that is known at the beginning of a day: all since the one before it in the list, 0 in the first.
struct KnownUse {
    QDate day;
    Amount used;
};

/// Cumulative real use; on a straight line between known days.
class UseCurve {
public:
    explicit UseCurve(std::span<const KnownUse> known);  ///< ascending days
    /// From the beginning of a day to that of another; none when not all of it is known.
    std::optional<double> used(QDate from, QDate until) const;

private:
    std::optional<double> until(QDate day) const;
    std::vector<std::pair<QDate, double>> m_points;
};

inline constexpr int monthDays = 28;
inline constexpr int yearDays = 364;  ///< 52 weeks: the same weekdays
/// What the days before used, on average, for so many days; none without that history.
std::optional<double> lastMonthsAverage(const UseCurve& curve, QDate from, int days, int month = monthDays);
/// What the same weeks used last year.
std::optional<double> sameWeeksLastYear(const UseCurve& curve, QDate from, int days, int year = yearDays);

double pinballLoss(double level, double quantile, double value);

/// How often an interval held the truth.
struct Coverage {
    double promised = 0;
    int inside = 0;
    int spans = 0;

    double share() const { return spans > 0 ? double(inside) / spans : 0; }
    double standardError() const;  ///< of the share if the promise holds: sqrt(p (1 - p) / spans)
    bool isOff() const;            ///< more than three standard errors from what it promises
};

/// Ours against a plain guess, over the spans for which there is one. Mean pinball losses over the kept levels, base units.
struct PlainScore {
    int spans = 0;
    double ours = 0;
    double plain = 0;
    double oursMedian = 0;  ///< of the median alone: half the mean absolute error
    double plainMedian = 0;
};

struct ForecastScore {
    Coverage half{0.5};
    Coverage most{0.9};
    int missing = 0;     ///< spans of known use without a forecast for their first day, or longer than it went
    double pinball = 0;  ///< mean over spans and levels
    PlainScore lastMonth;
    PlainScore lastYear;
};

/// `leastDays`: spans shorter than that are joined. Known days ascending.
ForecastScore scoreForecasts(std::span<const KeptForecast> kept, const SupplyId& supply, std::span<const KnownUse> known,
                             int leastDays = 7);

}  // namespace laneward
