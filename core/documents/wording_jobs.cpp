#include "core/documents/wording_jobs.h"

#include "core/documents/sheet_words.h"

#include <QCoreApplication>

namespace laneward {

QString text(const JobMove& move, const Speech& speech) {
    QStringList why;
    for (const Finding& finding : move.why)
        why += text(finding, speech);
    const QString what = text(move.what, speech);
    if (why.isEmpty()) return what;
    return QCoreApplication::translate("wording", "%1: %2", "what, why").arg(what, why.join(u"; "));
}

QStringList placeText(const Job& job, const Speech& speech) {
    QStringList lines{slackText(job, speech)};
    for (const Finding& reason : job.reasons)
        lines += text(reason, speech);
    return lines;
}

}  // namespace laneward
