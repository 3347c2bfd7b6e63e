// How well past forecasts of a supply's use held, in words and as JSON.
//
// JSON of a score: {spans, missing, within_50, within_90, off, pinball_U, last_month: {spans, ours_U, plain_U}, last_year:
// likewise}, U being ul, mm or pieces; losses are mean pinball losses in that unit.
#pragma once

#include "core/documents/wording.h"
#include "core/supplies/forecast_scores.h"

#include <QJsonObject>

namespace laneward {

/// Fewer spans than that tell little; common practice, no source.
inline constexpr int fewSpans = 8;

struct ScoreWords {
    QString held;        ///< how often the ranges held
    QString judgement;   ///< whether that is what they promise; empty when it is
    QString comparison;  ///< beside the plain guesses; empty when there is none
    QStringList all() const;
};
ScoreWords scoreWords(const ForecastScore& score, SupplyKind kind, const Speech& speech);
QJsonObject scoreJson(const ForecastScore& score, SupplyKind kind);

}  // namespace laneward
