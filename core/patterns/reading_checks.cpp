#include "core/patterns/reading_checks.h"

#include <algorithm>

namespace laneward {

namespace {

constexpr NamedCheck threeUnits{CheckId::ThreeUnits, CheckStatus::Suspended, CheckSource::BodyPage2007, 1992, 2019};
constexpr double publishedLowest = 3;
constexpr Micrometres fortyThousandths{1'016};  // 0.040 in, 1 in = 25,400 um exactly (16 CFR 500.19)

constexpr NamedCheck geometryFrom(CheckSource source) { return {CheckId::Geometry, CheckStatus::InForce, source, 0, 0}; }

constexpr GeometryTolerance tolerances[] = {
    {GeometryFeature::Level, fortyThousandths, geometryFrom(CheckSource::SportsReference)},
    {GeometryFeature::Tilt, fortyThousandths, geometryFrom(CheckSource::ReferenceAndMemory)},
    {GeometryFeature::Crown, fortyThousandths, geometryFrom(CheckSource::ReferenceAndMemory)},
    {GeometryFeature::Depression, fortyThousandths, geometryFrom(CheckSource::SportsReference)},
};

using Bound = std::optional<double>;

CheckResult judged(const NamedCheck& check, Bound value, Bound least, Bound most) {
    const bool holds = !value || ((!least || *value >= *least) && (!most || *value <= *most));
    return {check, value, least, most, holds};
}

NamedCheck own(CheckId id) { return {id, CheckStatus::CentresOwn, CheckSource::Centre, 0, 0}; }

template <class Number>
Bound thousandths(const std::optional<Number>& number) {
    return number ? Bound(double(*number) / 1'000) : std::nullopt;
}

}  // namespace

std::vector<CheckResult> checkReading(const ReadingComparison& compared, const ReadingLimits& limits) {
    std::vector<CheckResult> results{judged(threeUnits, compared.read.lowest, publishedLowest, {})};
    if (limits.lowestMilliUnits) {
        results.push_back(judged(own(CheckId::OwnLowest), compared.read.lowest, thousandths(limits.lowestMilliUnits), {}));
    }
    if (const Bound most = thousandths(limits.largestErrorMilliUnits)) {
        const Bound error = compared.count > 0 ? Bound(compared.meanError) : std::nullopt;
        results.push_back(judged(own(CheckId::OwnMeanError), error, -*most, most));
    }
    if (limits.leastTrackPermille || limits.mostTrackPermille) {
        results.push_back(judged(own(CheckId::OwnTrackRatio), compared.read.trackRatio, thousandths(limits.leastTrackPermille),
                                 thousandths(limits.mostTrackPermille)));
    }
    return results;
}

std::span<const GeometryTolerance> geometryTolerances() { return tolerances; }

std::vector<GeometryResult> checkInspection(const Inspection& inspection) {
    std::vector<GeometryResult> results;
    for (const GeometryValue& value : inspection.values) {
        const auto tolerance = std::find_if(std::begin(tolerances), std::end(tolerances),
                                            [&value](const GeometryTolerance& one) { return one.feature == value.feature; });
        if (tolerance == std::end(tolerances)) continue;
        const bool holds = value.departure <= tolerance->most && value.departure >= -tolerance->most;
        results.push_back({value, *tolerance, holds});
    }
    return results;
}

}  // namespace laneward
