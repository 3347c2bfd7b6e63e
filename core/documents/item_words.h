// What is looked after, by which meters, and how its parts wear, in words.
#pragma once

#include "core/documents/wording.h"
#include "core/season/service_state.h"
#include "core/service/wear.h"

namespace laneward {

QString text(ItemKind kind);
QString text(DutyKind kind);
/// "lanes", "hours of work": for the head of a column or a choice.
QString text(MeterKind meter);

/// "1,200 lanes", "312.5 h", "61.2 L", "40 days": in the unit of the meter, the cost points of a chart included.
QString meterText(double value, MeterKind meter, const Speech& speech);
/// The same without the unit, where that stands elsewhere: "1,200", "312.5"; liquid keeps its own.
QString meterNumber(double value, MeterKind meter, const Speech& speech);
/// When it is due, behind 'after': "1,200 lanes or 180 days; on Sat 2026-12-12".
QString triggersText(const Duty& duty, const Speech& speech);
/// Of each meter that the duty counts: "820 lanes, 64 days"; empty when it was never done.
QString sinceText(const Duty& duty, const std::optional<LastDone>& last, const DueQuestion& now, const Speech& speech);
/// "Squeegee blade set 1 (4 there), …"; empty when the duty takes none.
QString partsText(const Duty& duty, const SeasonState& season, const Speech& speech);

/// How a part wears: what is asked, and what came out of it.
struct WearSaid {
    QString item;
    const WearAnswer& answer;
    MeterKind meter = MeterKind::Lanes;
    std::optional<double> now;  ///< the interval that is set
    bool hasCosts = true;       ///< both are known
};
/// "Cushion brush: best replaced after 2,400 lanes (2,000 to 3,100); now it is after 3,000 lanes." Ages are rounded like an
/// interval that is adopted.
QString wearSentence(const WearSaid& said, const Speech& speech);

}  // namespace laneward
