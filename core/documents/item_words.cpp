#include "core/documents/item_words.h"

#include "core/documents/service_words.h"
#include "core/documents/stock_words.h"
#include "core/season/part_lives.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double minutesPerHour = 60;
constexpr double tenths = 0.05;

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

int shownCount(double n) { return int(std::clamp(std::round(n), -1e9, 1e9)); }

}  // namespace

QString text(ItemKind kind) {
    switch (kind) {
        case ItemKind::CushionBrush:
            return say(QT_TRANSLATE_NOOP("wording", "cushion brush"));
        case ItemKind::BufferBrush:
            return say(QT_TRANSLATE_NOOP("wording", "buffer brush"));
        case ItemKind::Squeegee:
            return say(QT_TRANSLATE_NOOP("wording", "squeegee"));
        case ItemKind::Cloth:
            return say(QT_TRANSLATE_NOOP("wording", "cloth roll"));
        case ItemKind::WasteTank:
            return say(QT_TRANSLATE_NOOP("wording", "waste tank"));
        case ItemKind::Filter:
            return say(QT_TRANSLATE_NOOP("wording", "filter"));
        case ItemKind::Nozzles:
            return say(QT_TRANSLATE_NOOP("wording", "nozzles and lines"));
        case ItemKind::Wheels:
            return say(QT_TRANSLATE_NOOP("wording", "wheels and belts"));
        case ItemKind::Pack:
            return say(QT_TRANSLATE_NOOP("wording", "pack"));
        case ItemKind::Charger:
            return say(QT_TRANSLATE_NOOP("wording", "charger"));
        case ItemKind::Approach:
            return say(QT_TRANSLATE_NOOP("wording", "approaches"));
        case ItemKind::Gutter:
            return say(QT_TRANSLATE_NOOP("wording", "gutters"));
        case ItemKind::Other:
            break;
    }
    return say(QT_TRANSLATE_NOOP("wording", "something else"));
}

QString text(DutyKind kind) {
    switch (kind) {
        case DutyKind::Inspect:
            return say(QT_TRANSLATE_NOOP("wording", "inspect"));
        case DutyKind::Clean:
            return say(QT_TRANSLATE_NOOP("wording", "clean"));
        case DutyKind::Turn:
            return say(QT_TRANSLATE_NOOP("wording", "turn"));
        case DutyKind::Replace:
            return say(QT_TRANSLATE_NOOP("wording", "replace"));
        case DutyKind::Empty:
            return say(QT_TRANSLATE_NOOP("wording", "empty"));
        case DutyKind::Calibrate:
            break;
    }
    return say(QT_TRANSLATE_NOOP("wording", "calibrate"));
}

QString text(MeterKind meter) {
    switch (meter) {
        case MeterKind::Lanes:
            return say(QT_TRANSLATE_NOOP("wording", "lanes"));
        case MeterKind::Runs:
            return say(QT_TRANSLATE_NOOP("wording", "runs"));
        case MeterKind::Minutes:
            return say(QT_TRANSLATE_NOOP("wording", "hours of work"));
        case MeterKind::Volume:
            return say(QT_TRANSLATE_NOOP("wording", "liquid through it"));
        case MeterKind::Days:
            break;
    }
    return say(QT_TRANSLATE_NOOP("wording", "days"));
}

QString meterText(double value, MeterKind meter, const Speech& speech) {
    // The form goes by the number, which is written as the reader writes numbers.
    const auto counted = [&](const char* source) {
        return say(source, shownCount(value)).arg(meterNumber(value, meter, speech));
    };
    switch (meter) {
        case MeterKind::Lanes:
            return counted(QT_TRANSLATE_N_NOOP("wording", "%1 lane(s)"));
        case MeterKind::Runs:
            return counted(QT_TRANSLATE_N_NOOP("wording", "%1 run(s)"));
        case MeterKind::Minutes: {
            const double hours = value / minutesPerHour;
            const bool even = std::abs(hours - std::round(hours)) < tenths;
            return say(QT_TRANSLATE_NOOP("wording", "%1 h")).arg(speech.locale.toString(hours, 'f', even ? 0 : 1));
        }
        case MeterKind::Volume:
            return amountText(Microlitres{std::llround(value)}, speech);
        case MeterKind::Days:
            break;
    }
    return counted(QT_TRANSLATE_N_NOOP("wording", "%1 day(s)"));
}

QString meterNumber(double value, MeterKind meter, const Speech& speech) {
    if (meter == MeterKind::Volume) return meterText(value, meter, speech);
    const double number = meter == MeterKind::Minutes ? value / minutesPerHour : value;
    const bool even = meter != MeterKind::Minutes || std::abs(number - std::round(number)) < tenths;
    return speech.locale.toString(number, 'f', even ? 0 : 1);
}

QString triggersText(const Duty& duty, const Speech& speech) {
    QStringList intervals;
    for (const Trigger& trigger : duty.triggers)
        intervals += meterText(double(trigger.every), trigger.meter, speech);
    QStringList parts;
    if (!intervals.isEmpty()) parts += intervals.join(say(QT_TRANSLATE_NOOP("wording", " or ")));
    QStringList dates;
    for (const QDate date : duty.dates)
        dates += dayWithWeekday(date, speech);
    if (!dates.isEmpty()) parts += say(QT_TRANSLATE_NOOP("wording", "on %1")).arg(dates.join(QStringLiteral(", ")));
    return parts.join(QStringLiteral("; "));
}

QString sinceText(const Duty& duty, const std::optional<LastDone>& last, const DueQuestion& now, const Speech& speech) {
    if (!last) return {};
    QStringList parts;
    for (const Trigger& trigger : duty.triggers) {
        const std::int64_t since = trigger.meter == MeterKind::Days
                                       ? last->day.daysTo(now.today)
                                       : valueOf(now.now, trigger.meter) - valueOf(last->meters, trigger.meter);
        parts += meterText(double(since), trigger.meter, speech);
    }
    return parts.join(QStringLiteral(", "));
}

QString partsText(const Duty& duty, const SeasonState& season, const Speech& speech) {
    QStringList parts;
    for (const PartNeed& part : duty.parts) {
        const Supply* supply = findSupply(season.supplies, part.supply);
        if (!supply) continue;
        parts += say(QT_TRANSLATE_NOOP("wording", "%1 %2 (%3 there)"))
                     .arg(shown(supply->name), amountText(part.amount, supply->kind, speech),
                          amountText(season.stock.onHand(part.supply), supply->kind, speech));
    }
    return parts.join(QStringLiteral(", "));
}

namespace {

QString bestText(const WearSaid& said, const Speech& speech) {
    const auto rounded = [&](double age) { return double(roundedInterval(age, said.meter)); };
    const WearAnswer& answer = said.answer;
    const QString best = meterText(rounded(answer.best->age), said.meter, speech);
    const QString low = meterNumber(rounded(answer.bestInterval.low), said.meter, speech);
    if (std::isinf(answer.bestInterval.high))
        return say(QT_TRANSLATE_NOOP("wording", "best replaced after %1 (from %2 on, no end is known)")).arg(best, low);
    return say(QT_TRANSLATE_NOOP("wording", "best replaced after %1 (%2 to %3)"))
        .arg(best, low, meterNumber(rounded(answer.bestInterval.high), said.meter, speech));
}

}  // namespace

QString wearSentence(const WearSaid& said, const Speech& speech) {
    const WearAnswer& answer = said.answer;
    if (answer.fit && !said.hasCosts)
        return say(QT_TRANSLATE_NOOP("wording",
                                     "%1: half of them last %2 or longer. Type what a replacement costs, planned and after a "
                                     "failure: from that follows when it is best done."))
            .arg(shown(said.item), meterText(answer.fit->law.quantile(0.5), said.meter, speech));
    if (answer.best && !answer.best->never) {
        const QString now =
            said.now ? say(QT_TRANSLATE_NOOP("wording", "now it is after %1")).arg(meterText(*said.now, said.meter, speech))
                     : say(QT_TRANSLATE_NOOP("wording", "now it does not depend on that"));
        return say(QT_TRANSLATE_NOOP("wording", "%1: %2; %3.")).arg(shown(said.item), bestText(said, speech), now);
    }
    if (answer.parts == 0)
        return say(QT_TRANSLATE_NOOP("wording",
                                     "%1: no replacement is recorded yet; how long it lasts is learned from the second one on."))
            .arg(shown(said.item));
    if (answer.moreNeeded > 0)
        return say(QT_TRANSLATE_N_NOOP("wording",
                                       "%1: %2 of %3 known parts failed; when it is best replaced is told after %n more "
                                       "failure(s)."),
                   answer.moreNeeded)
            .arg(shown(said.item), speech.locale.toString(answer.failures), speech.locale.toString(answer.parts));
    if (answer.findings.empty()) return shown(said.item);
    const QString why = text(answer.findings.front(), speech);
    return why.endsWith(u'.') ? why : why + u'.';
}

}  // namespace laneward
