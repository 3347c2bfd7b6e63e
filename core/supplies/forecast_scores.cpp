#include "core/supplies/forecast_scores.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace laneward {

namespace {

constexpr double farOff = 3;  // standard errors

using Quantiles = std::array<double, keptLevels.size()>;
constexpr size_t low90 = 0, low50 = 1, median = 2, high50 = 3, high90 = 4;

constexpr int week = 7;

/// The share of the first week's use that its first `days` have, by the median; none when not every day is kept.
std::optional<double> shareOfWeek(const KeptSupply& supply, int days) {
    if (supply.horizons.size() < week || supply.horizons[week - 1].days != week) return std::nullopt;
    const double whole = double(supply.horizons[week - 1].use[median].value);
    if (whole <= 0) return std::nullopt;
    return days == 0 ? 0 : double(supply.horizons[size_t(days - 1)].use[median].value) / whole;
}

/// How much of the use between two horizons falls on the days up to `days`.
double partOf(const KeptSupply& supply, const KeptUse& from, const KeptUse& to, int days) {
    const int length = to.days - from.days;
    const int since = days - from.days;
    const bool whole = from.days % week == 0 && length % week == 0;
    const std::optional<double> share = whole && from.days > 0 ? shareOfWeek(supply, since % week) : std::nullopt;
    const int weeks = since / week;
    return share ? (weeks + *share) * week / length : double(since) / length;
}

/// From nothing at 0 days; none beyond the last horizon.
std::optional<Quantiles> quantilesAt(const KeptSupply& supply, int days) {
    KeptUse before;
    for (const KeptUse& kept : supply.horizons) {
        if (kept.days < days) {
            before = kept;
            continue;
        }
        const double part = partOf(supply, before, kept, days);
        Quantiles at{};
        for (size_t i = 0; i < at.size(); ++i)
            at[i] = double(before.use[i].value) + part * double((kept.use[i] - before.use[i]).value);
        return at;
    }
    return std::nullopt;
}

const KeptSupply* keptOf(std::span<const KeptForecast> kept, QDate day, const SupplyId& supply) {
    const auto forecast = std::find_if(kept.begin(), kept.end(), [day](const KeptForecast& f) { return f.day == day; });
    if (forecast == kept.end()) return nullptr;
    for (const KeptSupply& one : forecast->supplies)
        if (one.supply == supply) return &one;
    return nullptr;
}

double meanPinball(const Quantiles& quantiles, double value) {
    double sum = 0;
    for (size_t i = 0; i < quantiles.size(); ++i)
        sum += pinballLoss(keptLevels[i], quantiles[i], value);
    return sum / double(quantiles.size());
}

void count(Coverage& coverage, double low, double high, double value) {
    ++coverage.spans;
    coverage.inside += low <= value && value <= high;
}

/// Sums; the means are taken at the end.
void add(PlainScore& score, const Quantiles& ours, std::optional<double> guess, double value) {
    if (!guess) return;
    Quantiles same;
    same.fill(*guess);
    ++score.spans;
    score.ours += meanPinball(ours, value);
    score.plain += meanPinball(same, value);
    score.oursMedian += pinballLoss(0.5, ours[median], value);
    score.plainMedian += pinballLoss(0.5, *guess, value);
}

void average(PlainScore& score) {
    if (score.spans == 0) return;
    for (double* sum : {&score.ours, &score.plain, &score.oursMedian, &score.plainMedian})
        *sum /= score.spans;
}

}  // namespace

ForecastRule keptRule() {
    ForecastRule rule;
    rule.levels.assign(keptLevels.begin(), keptLevels.end());
    rule.useHorizons.assign(keptHorizons.begin(), keptHorizons.end());
    return rule;
}

KeptSupply kept(const SupplyId& supply, const StockForecast& forecast, int days) {
    assert(forecast.use.size() == keptHorizons.size());
    KeptSupply kept{supply, {}};
    for (size_t i = 0; i < keptHorizons.size() && keptHorizons[i] <= days; ++i) {
        KeptUse& use = kept.horizons.emplace_back(KeptUse{keptHorizons[i], {}});
        for (size_t level = 0; level < keptLevels.size(); ++level)
            use.use[level] = Amount{std::llround(forecast.use[i][level])};
    }
    return kept;
}

UseCurve::UseCurve(std::span<const KnownUse> known) {
    double sum = 0;
    for (const KnownUse& one : known) {
        assert(m_points.empty() || m_points.back().first < one.day);
        if (!m_points.empty()) sum += double(one.used.value);
        m_points.emplace_back(one.day, sum);
    }
}

std::optional<double> UseCurve::until(QDate day) const {
    const auto after =
        std::lower_bound(m_points.begin(), m_points.end(), day, [](const auto& p, QDate d) { return p.first < d; });
    if (after == m_points.end()) return std::nullopt;
    if (after->first == day) return after->second;
    if (after == m_points.begin()) return std::nullopt;
    const auto before = after - 1;
    const double part = double(before->first.daysTo(day)) / double(before->first.daysTo(after->first));
    return before->second + part * (after->second - before->second);
}

std::optional<double> UseCurve::used(QDate from, QDate until) const {
    const std::optional<double> begin = this->until(from);
    const std::optional<double> end = this->until(until);
    return begin && end ? std::optional(*end - *begin) : std::nullopt;
}

std::optional<double> lastMonthsAverage(const UseCurve& curve, QDate from, int days, int month) {
    const std::optional<double> used = curve.used(from.addDays(-month), from);
    return used ? std::optional(*used / month * days) : std::nullopt;
}

std::optional<double> sameWeeksLastYear(const UseCurve& curve, QDate from, int days, int year) {
    return curve.used(from.addDays(-year), from.addDays(days - year));
}

double pinballLoss(double level, double quantile, double value) {
    return value >= quantile ? level * (value - quantile) : (1 - level) * (quantile - value);
}

double Coverage::standardError() const { return spans > 0 ? std::sqrt(promised * (1 - promised) / spans) : 0; }

bool Coverage::isOff() const { return spans > 0 && std::abs(share() - promised) > farOff * standardError(); }

ForecastScore scoreForecasts(std::span<const KeptForecast> kept, const SupplyId& supply, std::span<const KnownUse> known,
                             int leastDays) {
    const UseCurve curve(known);
    ForecastScore score;
    for (size_t from = 0, until = 1; until < known.size(); ++until) {
        const QDate day = known[from].day;
        const int days = int(day.daysTo(known[until].day));
        if (days < leastDays) continue;
        from = until;
        const KeptSupply* forecast = keptOf(kept, day, supply);
        const std::optional<Quantiles> quantiles = forecast ? quantilesAt(*forecast, days) : std::nullopt;
        if (!quantiles) {
            ++score.missing;
            continue;
        }
        const double value = *curve.used(day, day.addDays(days));
        const Quantiles& q = *quantiles;
        count(score.half, q[low50], q[high50], value);
        count(score.most, q[low90], q[high90], value);
        score.pinball += meanPinball(q, value);
        add(score.lastMonth, q, lastMonthsAverage(curve, day, days), value);
        // A plain guess may use only what was known by then; last year's weeks lie before that when the span is short enough.
        add(score.lastYear, q, days <= yearDays ? sameWeeksLastYear(curve, day, days) : std::nullopt, value);
    }
    if (score.half.spans > 0) score.pinball /= score.half.spans;
    average(score.lastMonth);
    average(score.lastYear);
    return score;
}

}  // namespace laneward
