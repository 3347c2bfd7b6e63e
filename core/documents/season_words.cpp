#include "core/documents/season_words.h"

#include "core/documents/text_page.h"

#include <QCoreApplication>
#include <QJsonArray>

#include <algorithm>

namespace laneward {

namespace {

constexpr size_t narrowListed = 10;
constexpr size_t tightListed = 20;

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

QString number(std::int64_t n, const Speech& speech) { return speech.locale.toString(qlonglong(n)); }

/// Columns behind the first `left` end at the same place, as figures do.
QString figuresTable(std::vector<QStringList> rows, qsizetype left) {
    for (qsizetype column = left; !rows.empty() && column < rows.front().size(); ++column) {
        qsizetype width = 0;
        for (const QStringList& row : rows)
            width = std::max(width, row[column].size());
        for (QStringList& row : rows)
            row[column] = row[column].rightJustified(width);
    }
    return table(rows, 2);
}

QStringList totals(const SeasonFigures& season, const Speech& speech) {
    const WorkFigures& total = season.total;
    return {say(QT_TRANSLATE_NOOP("wording", "lanes to treat: %1")).arg(number(total.treatments, speech)),
            say(QT_TRANSLATE_NOOP("wording", "outings: %1, machine time %2"))
                .arg(number(total.outings, speech), durationText(total.machineTime, speech)),
            say(QT_TRANSLATE_NOOP("wording", "overtime: %1")).arg(durationText(total.overtime, speech)),
            say(QT_TRANSLATE_NOOP("wording", "conditioner: %1, cleaner: %2"))
                .arg(amountText(total.conditioner, speech), amountText(total.cleaner, speech)),
            say(QT_TRANSLATE_NOOP("wording", "demands unmet: %1, events late: %2"))
                .arg(number(total.unmet, speech), number(total.late, speech)),
            say(QT_TRANSLATE_NOOP("wording", "days proven to be the best: %1 of %2"))
                .arg(number(total.proven, speech), number(total.days, speech))};
}

QString dayTable(const SeasonFigures& season, const std::vector<size_t>& days, const Speech& speech) {
    std::vector<QStringList> rows{{say(QT_TRANSLATE_NOOP("wording", "Day")), say(QT_TRANSLATE_NOOP("wording", "To spare")),
                                   say(QT_TRANSLATE_NOOP("wording", "Lanes")), say(QT_TRANSLATE_NOOP("wording", "Machine")),
                                   say(QT_TRANSLATE_NOOP("wording", "Overtime"))}};
    for (size_t i : days) {
        const SeasonDay& day = season.days[i];
        rows.push_back({dayText(day.date, speech), spareText(day.work, speech), number(day.work.treatments, speech),
                        durationText(day.work.machineTime, speech), durationText(day.work.overtime, speech)});
    }
    return figuresTable(std::move(rows), 2);
}

QString weekTable(const SeasonFigures& season, const Speech& speech) {
    std::vector<QStringList> rows{{say(QT_TRANSLATE_NOOP("wording", "Week")), say(QT_TRANSLATE_NOOP("wording", "From")),
                                   say(QT_TRANSLATE_NOOP("wording", "Lanes")), say(QT_TRANSLATE_NOOP("wording", "Machine")),
                                   say(QT_TRANSLATE_NOOP("wording", "Overtime")),
                                   say(QT_TRANSLATE_NOOP("wording", "Conditioner")), say(QT_TRANSLATE_NOOP("wording", "Cleaner")),
                                   say(QT_TRANSLATE_NOOP("wording", "Tight days"))}};
    for (const SeasonWeek& week : season.weeks) {
        rows.push_back({number(week.number, speech), speech.locale.toString(week.first, QLocale::ShortFormat),
                        number(week.work.treatments, speech), durationText(week.work.machineTime, speech),
                        durationText(week.work.overtime, speech), amountText(week.work.conditioner, speech),
                        amountText(week.work.cleaner, speech), number(week.tightDays, speech)});
    }
    return figuresTable(std::move(rows), 2);
}

QJsonValue secondsJson(const std::optional<Seconds>& s) { return s ? QJsonValue(qint64(s->value)) : QJsonValue(); }

QJsonObject workJson(const WorkFigures& work) {
    return {{"jobs", work.jobs},
            {"outings", work.outings},
            {"treatments", qint64(work.treatments)},
            {"conditioner_ul", qint64(work.conditioner.value)},
            {"cleaner_ul", qint64(work.cleaner.value)},
            {"machine_s", qint64(work.machineTime.value)},
            {"overtime_s", qint64(work.overtime.value)},
            {"unmet", qint64(work.unmet)},
            {"late", qint64(work.late)},
            {"late_s", qint64(work.lateBy.value)},
            {"tight_s", qint64(work.tightBy.value)},
            {"least_slack_s", secondsJson(work.leastSlack)},
            {"spare_s", secondsJson(work.spare)},
            {"days", work.days},
            {"proven", work.proven}};
}

}  // namespace

QString spareText(const WorkFigures& work, const Speech& speech) {
    if (work.unmet > 0) return say(QT_TRANSLATE_N_NOOP("wording", "%n demand(s) unmet"), int(work.unmet));
    if (work.late > 0) return say(QT_TRANSLATE_N_NOOP("wording", "%n event(s) late"), int(work.late));
    if (!work.spare) return say(QT_TRANSLATE_NOOP("wording", "nothing to do"));
    if (*work.spare < Seconds{0}) return say(QT_TRANSLATE_NOOP("wording", "tight by %1")).arg(durationText(-*work.spare, speech));
    if (*work.spare < minutes(1)) return say(QT_TRANSLATE_NOOP("wording", "nothing to spare"));
    return say(QT_TRANSLATE_NOOP("wording", "%1 to spare")).arg(durationText(minutes(work.spare->value / 60), speech));
}

QString seasonText(const SeasonFigures& season, const Speech& speech) {
    if (season.days.empty()) return {};
    QString out = heading(say(QT_TRANSLATE_NOOP("wording", "%1 to %2"))
                              .arg(dayText(season.days.front().date, speech), dayText(season.days.back().date, speech)));
    for (const QString& line : totals(season, speech))
        out += wrapped(line, 2);
    const bool any = !season.tight.empty();
    const int count = int(season.tight.size());
    out += u'\n' + heading(any ? say(QT_TRANSLATE_N_NOOP("wording", "%n tight day(s)"), count)
                               : say(QT_TRANSLATE_NOOP("wording", "No day is tight; least to spare")));
    out += dayTable(season, narrowestDays(season, any ? std::min(tightListed, season.tight.size()) : narrowListed), speech);
    if (season.tight.size() > tightListed) {
        const int more = int(season.tight.size() - tightListed);
        out += wrapped(say(QT_TRANSLATE_N_NOOP("wording", "and %n more"), more), 2);
    }
    return out + u'\n' + heading(say(QT_TRANSLATE_NOOP("wording", "By week"))) + weekTable(season, speech);
}

QJsonObject seasonJson(const SeasonFigures& season) {
    QJsonArray weeks;
    for (const SeasonWeek& week : season.weeks) {
        QJsonObject object = workJson(week.work);
        object["week"] = week.number;
        object["first"] = week.first.toString(Qt::ISODate);
        object["tight_days"] = week.tightDays;
        weeks.append(object);
    }
    QJsonArray days;
    for (const SeasonDay& day : season.days) {
        QJsonObject object = workJson(day.work);
        object["date"] = day.date.toString(Qt::ISODate);
        object["tight"] = day.work.isTight();
        days.append(object);
    }
    QJsonArray tight;
    for (size_t i : season.tight)
        tight.append(season.days[i].date.toString(Qt::ISODate));
    return {{"total", workJson(season.total)}, {"weeks", weeks}, {"days", days}, {"tight", tight}};
}

}  // namespace laneward
