#include "core/storage/kept_backups.h"

#include <QDateTime>
#include <QDir>
#include <QRegularExpression>

#include <algorithm>
#include <set>

namespace laneward {

namespace {

QDate dayOf(const KeptBackup& backup) { return QDateTime::fromSecsSinceEpoch(backup.made.seconds, Qt::UTC).date(); }

QDate weekOf(const KeptBackup& backup) {
    const QDate day = dayOf(backup);
    return day.addDays(1 - day.dayOfWeek());
}

}  // namespace

std::vector<KeptBackup> backupsIn(const QString& folder) {
    static const QRegularExpression name(QStringLiteral("-(\\d{8}-\\d{6})Z(-\\d+)?\\.(laneward|json)$"));
    std::vector<KeptBackup> backups;
    const QDir dir(folder);
    for (const QString& file : dir.entryList(QDir::Files)) {
        const QRegularExpressionMatch match = name.match(file);
        if (!match.hasMatch()) continue;
        QDateTime made = QDateTime::fromString(match.captured(1), QStringLiteral("yyyyMMdd-HHmmss"));
        made.setTimeSpec(Qt::UTC);
        if (made.isValid()) backups.push_back({dir.filePath(file), {made.toSecsSinceEpoch()}});
    }
    std::sort(backups.begin(), backups.end(),
              [](const KeptBackup& a, const KeptBackup& b) { return a.made != b.made ? a.made > b.made : a.path > b.path; });
    return backups;
}

std::vector<KeptBackup> overtaken(const std::vector<KeptBackup>& backups) {
    std::set<QDate> days;
    std::set<QDate> weeks;
    std::vector<KeptBackup> old;
    for (const KeptBackup& backup : backups) {
        const bool isDaily = days.size() < size_t(dailyBackups) && days.insert(dayOf(backup)).second;
        const bool isWeekly = weeks.size() < size_t(weeklyBackups) && weeks.insert(weekOf(backup)).second;
        if (!isDaily && !isWeekly) old.push_back(backup);
    }
    return old;
}

}  // namespace laneward
