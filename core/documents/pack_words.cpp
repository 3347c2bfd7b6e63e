#include "core/documents/pack_words.h"

#include "core/documents/keys.h"
#include "core/documents/service_words.h"

#include <QCoreApplication>
#include <QJsonObject>

#include <cmath>

namespace laneward {

namespace {

constexpr double sureChance = 0.95;
constexpr double likelyChance = 0.8;

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

QString percent(double share, const Speech& speech) {
    return say(QT_TRANSLATE_NOOP("wording", "%1 %")).arg(speech.locale.toString(int(std::lround(share * 100))));
}

QJsonValue permille(const std::optional<double>& value) {
    return value ? QJsonValue(qint64(std::llround(*value * 1'000))) : QJsonValue();
}

}  // namespace

QString text(Chemistry chemistry) {
    switch (chemistry) {
        case Chemistry::FloodedLeadAcid:
            return say(QT_TRANSLATE_NOOP("wording", "lead-acid, flooded"));
        case Chemistry::Agm:
            return say(QT_TRANSLATE_NOOP("wording", "lead-acid, AGM"));
        case Chemistry::Gel:
            return say(QT_TRANSLATE_NOOP("wording", "lead-acid, gel"));
        case Chemistry::LithiumIronPhosphate:
            return say(QT_TRANSLATE_NOOP("wording", "lithium iron phosphate"));
        case Chemistry::Other:
            return say(QT_TRANSLATE_NOOP("wording", "another chemistry"));
    }
    return {};
}

QString text(VoltageState state) {
    switch (state) {
        case VoltageState::JustCharged:
            return say(QT_TRANSLATE_NOOP("wording", "just charged"));
        case VoltageState::Rested:
            return say(QT_TRANSLATE_NOOP("wording", "rested"));
        case VoltageState::UnderLoad:
            return say(QT_TRANSLATE_NOOP("wording", "under load"));
    }
    return {};
}

QString text(PackDeed deed) {
    switch (deed) {
        case PackDeed::Read:
            return say(QT_TRANSLATE_NOOP("wording", "volts read"));
        case PackDeed::OnMachine:
            return say(QT_TRANSLATE_NOOP("wording", "put on the machine"));
        case PackDeed::OnCharge:
            return say(QT_TRANSLATE_NOOP("wording", "put on charge"));
        case PackDeed::Charged:
            return say(QT_TRANSLATE_NOOP("wording", "charged"));
    }
    return {};
}

QString packName(const ItemId& pack, const SeasonState& season) {
    const ServiceItem* item = findItem(season.items, pack);
    return item ? itemText(*item, season) : shown(pack.value);
}

QString packPlaceText(const PackState& pack, const Speech& speech) {
    const QString since = pack.since ? dateTimeText(*pack.since, speech) : QString();
    if (pack.onCharge) return say(QT_TRANSLATE_NOOP("wording", "on charge since %1")).arg(since);
    const QString place = pack.onMachine ? say(QT_TRANSLATE_NOOP("wording", "on the machine"))
                                         : say(QT_TRANSLATE_NOOP("wording", "beside the machine"));
    if (!pack.since) return place + say(QT_TRANSLATE_NOOP("wording", "; nobody wrote when it was charged"));
    const QString lanes = say(QT_TRANSLATE_N_NOOP("wording", "%n lane(s) since it was charged"), int(pack.lanes));
    return place + ", " + lanes + " (" + since + ")";
}

QString packVoltsText(const PackLine& line, const Speech& speech) {
    const PackState& pack = line.state;
    if (!pack.volts || !pack.voltsAt) return {};
    QString said = say(QT_TRANSLATE_NOOP("wording", "%1 %2, %3"))
                       .arg(voltsText(*pack.volts, speech), text(pack.state), dateTimeText(*pack.voltsAt, speech));
    if (!line.charge) return said;
    const QString low = percent(line.charge->likely.low, speech);
    const QString high = percent(line.charge->likely.high, speech);
    return said + say(QT_TRANSLATE_NOOP("wording", ": %1 to %2 full")).arg(low, high);
}

QString packTonightText(const PackLine& line, const Speech& speech) {
    QStringList parts;
    if (line.left) parts += say(QT_TRANSLATE_N_NOOP("wording", "about %n lane(s) left"), int(std::lround(*line.left)));
    if (line.tonight > 0) {
        const QString lanes = say(QT_TRANSLATE_N_NOOP("wording", "tonight %n lane(s)"), line.tonight);
        if (!line.finishes) {
            parts += lanes + say(QT_TRANSLATE_NOOP("wording", ": read its rested volts to know whether it lasts"));
        } else {
            const char* how = *line.finishes >= sureChance     ? QT_TRANSLATE_NOOP("wording", ": it lasts (%1)")
                              : *line.finishes >= likelyChance ? QT_TRANSLATE_NOOP("wording", ": it probably lasts (%1)")
                                                               : QT_TRANSLATE_NOOP("wording", ": it may not last (%1)");
            parts += lanes + say(how).arg(percent(*line.finishes, speech));
        }
    }
    return parts.join("; ");
}

QString packLearnedText(const PackLine& line, const Speech& speech) {
    if (line.charges == 0)
        return say(QT_TRANSLATE_NOOP("wording", "no charge is known yet: planning goes by the machine's setting"));
    const auto number = [&](double lanes) { return speech.locale.toString(int(std::floor(lanes))); };
    QString said = say(QT_TRANSLATE_NOOP("wording", "about %1 lanes a charge, in 19 of 20 cases at least %2"))
                       .arg(number(line.usual), number(line.sure));
    said += say(QT_TRANSLATE_N_NOOP("wording", " (%n charge(s)"), line.charges);
    if (line.cutShort > 0) said += say(QT_TRANSLATE_NOOP("wording", ", %1 of them cut short")).arg(line.cutShort);
    return said + ")";
}

QString turnText(const ChargeTurn& turn, const SeasonState& season, const Speech& speech) {
    QString said =
        say(QT_TRANSLATE_NOOP("wording", "%1 to %2: %3"))
            .arg(dateTimeText(turn.time.begin, speech), clockTime(turn.time.end, speech, true), packName(turn.pack, season));
    if (!turn.isLast) said += say(QT_TRANSLATE_NOOP("wording", " (then another one first)"));
    if (turn.late > Seconds{0})
        said += say(QT_TRANSLATE_NOOP("wording", " (full %1 too late)")).arg(durationText(turn.late, speech));
    return said;
}

QString packTrendText(const Result<PackTrend>& trend, int needed, const QString& name, const Speech& speech) {
    if (!trend) {
        Finding why = trend.error().finding;
        why.subject = name;
        return text(why, speech);
    }
    const auto month = [&](double day) {
        return std::isfinite(day) ? speech.locale.toString(QDate(1970, 1, 1).addDays(qint64(day)), QStringLiteral("MMM yyyy"))
                                  : say(QT_TRANSLATE_NOOP("wording", "later"));
    };
    return say(QT_TRANSLATE_NOOP("wording", "%1 fades: fewer than %2 lanes, as the busiest night took, about %3 (%4 to %5)."))
        .arg(name, speech.locale.toString(needed), month(trend->day), month(trend->dayInterval.low),
             month(trend->dayInterval.high));
}

QString packHeadline(const PackOutlook& outlook, const SeasonState& season, Instant now, const Speech& speech) {
    if (outlook.packs.empty())
        return say(QT_TRANSLATE_NOOP("wording", "No packs are kept yet: add one among the machine's items."));
    for (const PackLine& line : outlook.packs) {
        if (!line.finishes || *line.finishes >= likelyChance) continue;
        return say(QT_TRANSLATE_NOOP("wording", "%1 may not last tonight: %2 for %3 lanes."))
            .arg(packName(line.state.pack, season), percent(*line.finishes, speech), speech.locale.toString(line.tonight));
    }
    for (const ChargeTurn& turn : outlook.turns) {
        if (turn.time.contains(now))
            return say(QT_TRANSLATE_NOOP("wording", "All packs last tonight, as far as is known; on charge now: %1."))
                .arg(packName(turn.pack, season));
    }
    return say(QT_TRANSLATE_NOOP("wording", "All packs last tonight, as far as is known; none has to be charged now."));
}

QJsonArray packsJson(const PackOutlook& outlook, const SeasonState& season, const Speech& speech) {
    QJsonArray packs;
    for (const PackLine& line : outlook.packs) {
        const PackState& pack = line.state;
        packs.append(QJsonObject{{"pack", pack.pack.value},
                                 {"name", packName(pack.pack, season)},
                                 {"machine", pack.machine.value},
                                 {"on_machine", pack.onMachine},
                                 {"on_charge", pack.onCharge},
                                 {"since", pack.since ? QJsonValue(isoTime(*pack.since, speech.zone)) : QJsonValue()},
                                 {"lanes", qint64(std::llround(pack.lanes))},
                                 {"charges", line.charges},
                                 {"cut_short", line.cutShort},
                                 {"usual_lanes_permille", permille(line.usual)},
                                 {"sure_lanes_permille", permille(line.sure)},
                                 {"volts_mv", pack.volts ? QJsonValue(qint64(pack.volts->value)) : QJsonValue()},
                                 {"state", pack.volts ? QJsonValue(key(pack.state)) : QJsonValue()},
                                 {"charge_permille", line.charge ? permille(line.charge->share) : QJsonValue()},
                                 {"left_permille", permille(line.left)},
                                 {"tonight", line.tonight},
                                 {"finishes_permille", permille(line.finishes)}});
    }
    return packs;
}

QJsonArray turnsJson(const PackOutlook& outlook, const Speech& speech) {
    QJsonArray turns;
    for (const ChargeTurn& turn : outlook.turns)
        turns.append(QJsonObject{{"pack", turn.pack.value},
                                 {"begin", isoTime(turn.time.begin, speech.zone)},
                                 {"end", isoTime(turn.time.end, speech.zone)},
                                 {"full", turn.isLast},
                                 {"late_s", qint64(turn.late.value)}});
    return turns;
}

}  // namespace laneward
