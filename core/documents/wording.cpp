#include "core/documents/wording.h"

#include "core/documents/phrases.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace laneward {

namespace {

int pluralNumber(const Finding& finding) {
    for (const Value& value : finding.values) {
        if (const auto* n = std::get_if<std::int64_t>(&value)) return int(std::clamp<std::int64_t>(*n, 0, 1'000'000'000));
    }
    return 0;
}

QString translated(const Phrase& phrase, const Finding& finding) {
    return QCoreApplication::translate("wording", phrase.text, nullptr, phrase.plural ? pluralNumber(finding) : -1);
}

/// What a marker such as %2 stands for; nothing when the finding does not say.
QString meant(const Finding& finding, qsizetype number, QChar form, const Speech& speech) {
    if (number == 1) return shown(finding.subject);
    const size_t index = size_t(number - 2);
    if (index >= finding.values.size()) return {};
    const Value& value = finding.values[index];
    if (form == 'T' && std::holds_alternative<Instant>(value)) return clockTime(std::get<Instant>(value), speech);
    if (form == 'W' && std::holds_alternative<std::int64_t>(value)) {
        const std::int64_t n = std::get<std::int64_t>(value);
        if (n >= 0 && n < std::int64_t(allTreatments.size())) return text(allTreatments[size_t(n)]);
    }
    return text(value, speech);
}

/// All markers in one pass: text that comes in is never searched for markers again.
QString filled(const QString& form, const Finding& finding, const Speech& speech) {
    QString out;
    for (qsizetype i = 0; i < form.size(); ++i) {
        const bool typed = i + 2 < form.size() && (form[i + 1] == 'T' || form[i + 1] == 'W');
        const qsizetype digit = i + (typed ? 2 : 1);
        if (form[i] != '%' || digit >= form.size() || !form[digit].isDigit()) {
            out += form[i];
            continue;
        }
        out += meant(finding, form[digit].digitValue(), typed ? form[i + 1] : QChar(), speech);
        i = digit;
    }
    while (out.endsWith(' ') || out.endsWith(':'))
        out.chop(1);
    return out;
}

/// Better the bare facts than nothing, when a rule has no words.
QString bare(const Finding& finding, const Speech& speech) {
    QString out = QString::fromUtf8(finding.rule) + ": " + shown(finding.subject);
    for (const Value& value : finding.values)
        out += ", " + text(value, speech);
    return out;
}

}  // namespace

const Phrase* phraseOf(const QByteArray& rule) {
    const std::array rooms{planningPhrases(),  violationPhrases(), centrePhrases(),  calendarPhrases(),
                           icalendarPhrases(), storagePhrases(),   filePhrases(),    readingPhrases(),
                           driftPhrases(),     sheetPhrases(),     cautionPhrases(), supplyPhrases(),
                           orderPhrases(),     servicePhrases(),   wearPhrases(),    guidePhrases()};
    for (const std::span<const Phrase> room : rooms) {
        const auto found = std::find_if(room.begin(), room.end(), [&rule](const Phrase& phrase) { return rule == phrase.rule; });
        if (found != room.end()) return &*found;
    }
    return nullptr;
}

bool isWorded(const QByteArray& rule) { return phraseOf(rule) != nullptr; }

QString text(const Finding& finding, const Speech& speech) {
    const Phrase* phrase = phraseOf(finding.rule);
    return phrase ? filled(translated(*phrase, finding), finding, speech) : bare(finding, speech);
}

QString text(const Error& error, const Speech& speech) { return text(error.finding, speech); }

QString text(const Value& value, const Speech& speech) {
    struct Printer {
        const Speech& speech;
        QString operator()(std::int64_t n) const { return speech.locale.toString(qlonglong(n)); }
        QString operator()(Seconds d) const { return durationText(d, speech); }
        QString operator()(Microlitres a) const { return amountText(a, speech); }
        QString operator()(Micrometres l) const { return lengthText(l, speech); }
        QString operator()(Millivolts v) const { return voltsText(v, speech); }
        QString operator()(Instant t) const { return dateTimeText(t, speech); }
        QString operator()(QDate date) const { return dayText(date, speech); }
        QString operator()(const QString& name) const { return shown(name); }
    };
    return std::visit(Printer{speech}, value);
}

}  // namespace laneward
