#include "core/documents/difference_wording.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

using Kind = DifferenceLine::Kind;

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

QString lanesText(const LaneSet& lanes) {
    return (lanes.count() == 1 ? say(QT_TRANSLATE_NOOP("wording", "lane %1")) : say(QT_TRANSLATE_NOOP("wording", "lanes %1")))
        .arg(lanes.text());
}

/// "+4", "−4"; nothing more and nothing less is "±0".
QString withSign(std::int64_t size, const QString& words) {
    if (size == 0) return QStringLiteral("\u00b10");
    return size > 0 ? QStringLiteral("+") + words : words;
}

QString signedCount(std::int64_t n, const Speech& speech) { return withSign(n, speech.locale.toString(qlonglong(n))); }

QString signedAmount(Microlitres a, const Speech& speech) { return withSign(a.value, amountText(a, speech)); }

QString dateText(QDate date, const Speech& speech) {
    return speech.locale.language() == QLocale::C ? date.toString(Qt::ISODate)
                                                  : speech.locale.toString(date, QLocale::ShortFormat);
}

/// "clean and condition · Reed 38 · lanes 1-8"
QString jobText(const Job& job, const std::vector<Pattern>& patterns) {
    QStringList words{text(job.treatment)};
    if (job.pattern) {
        const Pattern* pattern = findPattern(patterns, *job.pattern);
        words << shown(pattern ? pattern->name : job.pattern->value);
    }
    words << lanesText(job.laneSet());
    return words.join(QStringLiteral(" \u00b7 "));
}

QString movedText(const Job& from, const Job& to, const QString& what, const Speech& speech) {
    const QString old = dateTimeText(from.time.begin, speech);
    if (from.time.begin == to.time.begin) {
        return from.machine != to.machine ? say(QT_TRANSLATE_NOOP("wording", "To another machine, %1: %2")).arg(old, what)
                                          : say(QT_TRANSLATE_NOOP("wording", "In another order, %1: %2")).arg(old, what);
    }
    return say(QT_TRANSLATE_NOOP("wording", "From %1 to %2: %3")).arg(old, clockTime(to.time.begin, speech), what);
}

QString missedText(const Shortfall& lack, const Speech& speech) {
    const QString what = QStringLiteral("%1, %2").arg(text(lack.demand), lanesText(lack.lanes));
    const QString form = lack.unmet ? say(QT_TRANSLATE_NOOP("wording", "Cannot be met: %1, %2, play begins %3"))
                                    : say(QT_TRANSLATE_NOOP("wording", "Would be ready late: %1, %2, play begins %3"));
    QString words = form.arg(shown(lack.title), what, dateTimeText(lack.playBegins, speech));
    if (lack.missing.value > 0)
        words += say(QT_TRANSLATE_NOOP("wording", "; %1 are missing")).arg(durationText(lack.missing, speech));
    return words;
}

/// "12 min more late"; nothing when it is as before.
QString lateText(const PlanDifference& change, const Speech& speech) {
    const Seconds by{change.after.late_s - change.before.late_s};
    if (by.value > 0) return say(QT_TRANSLATE_NOOP("wording", "%1 more late")).arg(durationText(by, speech));
    if (by.value < 0) return say(QT_TRANSLATE_NOOP("wording", "%1 less late")).arg(durationText(-by, speech));
    return {};
}

QString unmetText(const PlanDifference& change) {
    const int by = int(change.after.unmet - change.before.unmet);
    if (by > 0) return say(QT_TRANSLATE_N_NOOP("wording", "%n more demand(s) unmet"), by);
    if (by < 0) return say(QT_TRANSLATE_N_NOOP("wording", "%n fewer demand(s) unmet"), -by);
    return {};
}

QString sentenceOf(const PlanDifference& change, const Speech& speech) {
    QStringList parts;
    const auto count = [&parts](const char* words, size_t n) {
        if (n > 0) parts << say(words, int(n));
    };
    count(QT_TRANSLATE_N_NOOP("wording", "%n job(s) added"), change.added.size());
    count(QT_TRANSLATE_N_NOOP("wording", "%n job(s) removed"), change.removed.size());
    count(QT_TRANSLATE_N_NOOP("wording", "%n job(s) moved"), change.moved.size());
    if (parts.isEmpty()) parts << say(QT_TRANSLATE_NOOP("wording", "no job changes"));
    for (const QString& words : {unmetText(change), lateText(change, speech)}) {
        if (!words.isEmpty()) parts << words;
    }
    return parts.join(QStringLiteral(", "));
}

QString proofText(const WhatIfAnswer& answer, Effort effort) {
    if (answer.proven) return say(QT_TRANSLATE_NOOP("wording", "Proven: no plan does better."));
    if (effort == Effort::First) return say(QT_TRANSLATE_NOOP("wording", "First look: the proof follows."));
    return say(QT_TRANSLATE_NOOP("wording", "The best plan found: not proven to be the best."));
}

QString amountsText(const PlanDifference& change, const DateRange& days, const Speech& speech) {
    return say(QT_TRANSLATE_NOOP("wording", "%1 to %2: treatments %3, conditioner %4, cleaner %5"))
        .arg(dateText(days.first, speech), dateText(days.last, speech),
             signedCount(change.after.treatments - change.before.treatments, speech), signedAmount(change.conditioner, speech),
             signedAmount(change.cleaner, speech));
}

template <class T, class Begin>
std::vector<T> byTime(std::vector<T> jobs, Begin begin) {
    std::stable_sort(jobs.begin(), jobs.end(), [&](const T& a, const T& b) { return begin(a) < begin(b); });
    return jobs;
}

}  // namespace

bool isAboutJobs(DifferenceLine::Kind kind) { return kind < Kind::Amounts; }

DifferenceWords differenceWords(const WhatIfAnswer& answer, Effort effort, const DateRange& days,
                                const std::vector<Pattern>& patterns, const Speech& speech) {
    const PlanDifference& change = answer.difference;
    const auto start = [](const Job& job) { return job.time.begin; };
    DifferenceWords words{sentenceOf(change, speech), {}};
    std::vector<DifferenceLine>& lines = words.lines;
    for (const Shortfall& lack : answer.shortfalls)
        lines.push_back({Kind::Missed, missedText(lack, speech), true});
    for (const Job& job : byTime(change.removed, start)) {
        lines.push_back({Kind::Removed, say(QT_TRANSLATE_NOOP("wording", "No longer %1: %2"))
                                            .arg(dateTimeText(job.time.begin, speech), jobText(job, patterns))});
    }
    const auto oldStart = [](const std::pair<Job, Job>& pair) { return pair.first.time.begin; };
    for (const auto& [from, to] : byTime(change.moved, oldStart))
        lines.push_back({Kind::Moved, movedText(from, to, jobText(to, patterns), speech)});
    for (const Job& job : byTime(change.added, start)) {
        lines.push_back(
            {Kind::Added,
             say(QT_TRANSLATE_NOOP("wording", "New %1: %2")).arg(dateTimeText(job.time.begin, speech), jobText(job, patterns))});
    }
    lines.push_back({Kind::Amounts, amountsText(change, days, speech)});
    lines.push_back({Kind::Proof, proofText(answer, effort)});
    return words;
}

}  // namespace laneward
