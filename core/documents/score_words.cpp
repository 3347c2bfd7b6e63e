#include "core/documents/score_words.h"

#include "core/documents/keys.h"
#include "core/documents/stock_words.h"

#include <QCoreApplication>

#include <cmath>

namespace laneward {

namespace {

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

QString heldText(const ForecastScore& score, const Speech& speech) {
    const auto number = [&](int n) { return speech.locale.toString(n); };
    if (score.most.spans == 0) {
        if (score.missing == 0)
            return say(QT_TRANSLATE_NOOP("wording",
                                         "How well past forecasts held is not known yet: no two fills or counts lie a "
                                         "week apart."));
        return say(QT_TRANSLATE_NOOP("wording", "How well past forecasts held is not known: none was kept when a span began."));
    }
    if (score.most.spans == 1)
        return say(QT_TRANSLATE_NOOP("wording",
                                     "One past forecast is known: what was used lay within the middle range %1 of 1 "
                                     "time and within the wide one %2 of 1."))
            .arg(number(score.half.inside), number(score.most.inside));
    return say(QT_TRANSLATE_NOOP("wording",
                                 "Of %1 past spans, %2 were within the middle range (expected about half) and %3 "
                                 "within the wide one (expected 9 in 10)."))
        .arg(number(score.most.spans), number(score.half.inside), number(score.most.inside));
}

QString judgementOf(const ForecastScore& score) {
    const Coverage& off = score.most.isOff() ? score.most : score.half;
    if (off.isOff())
        return off.share() < off.promised
                   ? say(QT_TRANSLATE_NOOP("wording",
                                           "! The ranges are too narrow: they held less often than they promise. Do not "
                                           "rely on them."))
                   : say(QT_TRANSLATE_NOOP("wording", "! The ranges are too wide: they held more often than they promise."));
    return score.most.spans < fewSpans ? say(QT_TRANSLATE_NOOP("wording", "That is too few to judge the ranges by.")) : QString();
}

/// Twice the pinball loss of a median is its mean absolute error.
QString errorText(double medianLoss, SupplyKind kind, const Speech& speech) {
    return amountText(Amount{std::llround(2 * medianLoss)}, kind, speech);
}

QString compared(const ForecastScore& score, SupplyKind kind, const Speech& speech) {
    QStringList lines;
    const auto add = [&](const PlainScore& plain, const char* better, const char* worse) {
        if (plain.spans == 0) return;
        const bool isBetter = plain.oursMedian <= plain.plainMedian;
        lines << say(isBetter ? better : worse)
                     .arg(errorText(plain.oursMedian, kind, speech), errorText(plain.plainMedian, kind, speech));
    };
    add(score.lastMonth,
        QT_TRANSLATE_NOOP("wording", "The forecast missed by %1 a span on average, the average of the month before by %2."),
        QT_TRANSLATE_NOOP("wording",
                          "! The average of the month before would have been the better guess: it missed by %2 a span "
                          "on average, the forecast by %1."));
    add(score.lastYear,
        QT_TRANSLATE_NOOP("wording", "Where last year is known, it missed by %1, the same weeks of last year by %2."),
        QT_TRANSLATE_NOOP("wording",
                          "! The same weeks of last year would have been the better guess: they missed by %2, the "
                          "forecast by %1."));
    return lines.join(' ');
}

}  // namespace

QStringList ScoreWords::all() const {
    QStringList lines{held, judgement, comparison};
    lines.removeAll(QString());
    return lines;
}

ScoreWords scoreWords(const ForecastScore& score, SupplyKind kind, const Speech& speech) {
    return {heldText(score, speech), score.most.spans > 0 ? judgementOf(score) : QString(), compared(score, kind, speech)};
}

QJsonObject scoreJson(const ForecastScore& score, SupplyKind kind) {
    const QString unit = '_' + unitKey(kind);
    const auto plain = [&](const PlainScore& one) {
        return QJsonObject{{"spans", one.spans}, {"ours" + unit, one.ours}, {"plain" + unit, one.plain}};
    };
    return {{"spans", score.most.spans},
            {"missing", score.missing},
            {"within_50", score.half.inside},
            {"within_90", score.most.inside},
            {"off", score.half.isOff() || score.most.isOff()},
            {"pinball" + unit, score.pinball},
            {"last_month", plain(score.lastMonth)},
            {"last_year", plain(score.lastYear)}};
}

}  // namespace laneward
