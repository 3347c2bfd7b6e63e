#include "app/pages/today/today_headline.h"

#include "app/models/job_model.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

struct Headline {
    Q_DECLARE_TR_FUNCTIONS(Headline)

public:
    static QString work(const JobSheet& sheet, const Speech& speech, Instant now);
    static QString outcome(const JobSheet& sheet, const Speech& speech);
    static QString lack(const JobSheet& sheet, const Speech& speech);
    static QString open(int followUps);
    static QString whole(const TodayFacts& facts);
};

/// How many jobs are left, and the next step to take.
QString Headline::work(const JobSheet& sheet, const Speech& speech, Instant now) {
    const int left = int(std::count_if(sheet.jobs.begin(), sheet.jobs.end(), isAhead));
    if (sheet.jobs.empty()) return tr("no lane needs a treatment today");
    if (left == 0) return tr("all %n job(s) are done", nullptr, int(sheet.jobs.size()));
    const auto next = std::find_if(sheet.jobs.begin(), sheet.jobs.end(), isAhead);
    const QString jobs = tr("%n job(s) left", nullptr, left);
    if (next->state == JobState::UnderWay) return tr("%1, one is under way").arg(jobs);
    const Seconds overdue = now - next->time.begin;
    if (overdue >= minutes(1)) {
        return tr("%1, the next should have begun %2 ago").arg(jobs, durationText(overdue, speech));
    }
    return tr("%1, start the next by %2").arg(jobs, clockTime(next->time.begin, speech));
}

/// Whether everything will be ready, with the narrowest margin.
QString Headline::outcome(const JobSheet& sheet, const Speech& speech) {
    const int unmet =
        int(std::count_if(sheet.shortfalls.begin(), sheet.shortfalls.end(), [](const Shortfall& s) { return s.unmet; }));
    const int late = int(sheet.shortfalls.size()) - unmet;
    if (unmet > 0) return tr("%n event(s) will not get what they ask", nullptr, unmet);
    if (late > 0) return tr("%n event(s) will be late", nullptr, late);
    std::optional<Seconds> least;
    for (const Job& job : sheet.jobs) {
        if (isAhead(job)) least = std::min(least.value_or(job.slack), job.slack);
    }
    if (!least) return {};
    if (*least < Seconds{0}) return tr("every lane is ready in time, but tight");
    if (*least < minutes(1)) return tr("every lane is ready in time");
    return tr("every lane is ready in time, with %1 to spare").arg(durationText(*least, speech));
}

QString Headline::lack(const JobSheet& sheet, const Speech& speech) {
    for (const SheetReadiness& machine : sheet.readiness) {
        for (const Finding& finding : machine.readiness.findings) {
            if (finding.severity != Severity::Note) return text(finding, speech);
        }
    }
    return {};
}

QString Headline::open(int followUps) {
    return followUps > 0 ? tr("%n incident(s) or reading(s) to be followed up", nullptr, followUps) : QString();
}

QString Headline::whole(const TodayFacts& facts) {
    const auto& [sheet, speech, now, followUps] = facts;
    QStringList parts{work(sheet, speech, now)};
    for (const QString& part : {outcome(sheet, speech), lack(sheet, speech), open(followUps)}) {
        if (!part.isEmpty()) parts.append(part);
    }
    return tr("%1: %2", "day: what matters")
        .arg(dayText(sheet.date, speech), parts.join(tr("; ", "between parts of a sentence")));
}

}  // namespace

QString todayHeadline(const TodayFacts& facts) { return Headline::whole(facts); }

}  // namespace laneward
