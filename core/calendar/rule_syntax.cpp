#include "core/calendar/rule_syntax.h"

#include "core/base/zone.h"

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <map>

namespace laneward {

namespace {

using Parts = std::map<QString, QString>;

struct Numbers {
    const char* part;
    int least;
    int most;
    bool fromTheEnd;  ///< negative numbers count from the end
    bool list;
};

constexpr Numbers numberParts[] = {
    {"INTERVAL", 1, 32'767, false, false}, {"COUNT", 1, 2'147'483'647, false, false},
    {"BYSECOND", 0, 60, false, true},      {"BYMINUTE", 0, 59, false, true},
    {"BYHOUR", 0, 23, false, true},        {"BYMONTHDAY", 1, 31, true, true},
    {"BYYEARDAY", 1, 366, true, true},     {"BYWEEKNO", 1, 53, true, true},
    {"BYMONTH", 1, 12, false, true},       {"BYSETPOS", 1, 366, true, true},
};

bool areNumbers(const Numbers& allowed, const QString& value) {
    static const QRegularExpression number(QStringLiteral("^[+-]?[0-9]{1,10}$"));
    const QStringList items = value.split(QLatin1Char(','));
    if (items.size() > 1 && !allowed.list) return false;
    for (const QString& item : items) {
        if (!number.match(item).hasMatch()) return false;
        const qint64 n = item.toLongLong();
        if (n < 0 && !allowed.fromTheEnd) return false;
        if (qAbs(n) < allowed.least || qAbs(n) > allowed.most) return false;
    }
    return items.size() <= allowed.most - allowed.least + 1;  // libical keeps each list in an array of about this size
}

bool areDays(const QString& value) {
    static const QRegularExpression day(QStringLiteral("^([+-]?[0-9]{1,2})?(MO|TU|WE|TH|FR|SA|SU)$"));
    const QStringList items = value.split(QLatin1Char(','));
    for (const QString& item : items) {
        const QRegularExpressionMatch match = day.match(item);
        if (!match.hasMatch()) return false;
        if (match.capturedLength(1) == 0) continue;
        const int position = qAbs(match.captured(1).toInt());
        if (position < 1 || position > 53) return false;
    }
    return items.size() <= 380;
}

bool isUntil(const QString& value) {
    static const QRegularExpression form(QStringLiteral("^([0-9]{8})(?:T([0-9]{6})Z?)?$"));
    const QRegularExpressionMatch match = form.match(value);
    if (!match.hasMatch()) return false;
    const QDate date = QDate::fromString(match.captured(1), QStringLiteral("yyyyMMdd"));
    if (!date.isValid() || date.year() < 1) return false;
    return match.capturedLength(2) == 0 || QTime::fromString(match.captured(2), QStringLiteral("HHmmss")).isValid();
}

bool isPart(const QString& name, const QString& value) {
    for (const Numbers& allowed : numberParts) {
        if (name == QLatin1String(allowed.part)) return areNumbers(allowed, value);
    }
    static const QStringList weekdays{"MO", "TU", "WE", "TH", "FR", "SA", "SU"};
    static const QStringList frequencies{"SECONDLY", "MINUTELY", "HOURLY", "DAILY", "WEEKLY", "MONTHLY", "YEARLY"};
    if (name == QLatin1String("FREQ")) return frequencies.contains(value);
    if (name == QLatin1String("WKST")) return weekdays.contains(value);
    if (name == QLatin1String("BYDAY")) return areDays(value);
    return name == QLatin1String("UNTIL") && isUntil(value);
}

/// The part that its frequency or another part forbids (RFC 5545, 3.3.10: the table and the text about BYDAY, BYSETPOS).
QString forbiddenPart(const Parts& parts) {
    const QString freq = parts.at(QStringLiteral("FREQ"));
    const bool yearly = freq == QLatin1String("YEARLY");
    const bool monthly = freq == QLatin1String("MONTHLY");
    const auto has = [&](const char* name) { return parts.contains(QLatin1String(name)); };
    if (has("COUNT") && has("UNTIL")) return QStringLiteral("UNTIL");
    if (has("BYWEEKNO") && !yearly) return QStringLiteral("BYWEEKNO");
    if (has("BYYEARDAY") && !yearly) return QStringLiteral("BYYEARDAY");
    if (has("BYMONTHDAY") && freq == QLatin1String("WEEKLY")) return QStringLiteral("BYMONTHDAY");
    static const QRegularExpression digit(QStringLiteral("[0-9]"));
    const bool counted = has("BYDAY") && parts.at(QStringLiteral("BYDAY")).contains(digit);
    if (counted && ((!yearly && !monthly) || has("BYWEEKNO"))) return QStringLiteral("BYDAY");
    const bool selects = std::any_of(parts.begin(), parts.end(), [](const auto& part) {
        return part.first.startsWith(QLatin1String("BY")) && part.first != QLatin1String("BYSETPOS");
    });
    if (has("BYSETPOS") && !selects) return QStringLiteral("BYSETPOS");
    return {};
}

Error unreadable(const QString& rule, const QString& part) { return fault(ErrorKind::Invalid, "rule.unreadable", rule, {part}); }

}  // namespace

Outcome checkRuleSyntax(const QString& rule) {
    Parts parts;
    for (const QString& part : rule.toUpper().split(QLatin1Char(';'))) {
        const qsizetype equals = part.indexOf(QLatin1Char('='));
        if (equals < 1) return unreadable(rule, part);
        const QString name = part.left(equals);
        const QString value = part.mid(equals + 1);
        if (!isPart(name, value) || !parts.emplace(name, value).second) return unreadable(rule, part);
    }
    const auto freq = parts.find(QStringLiteral("FREQ"));
    if (freq == parts.end()) return unreadable(rule, QStringLiteral("FREQ"));
    if (QStringList{"SECONDLY", "MINUTELY", "HOURLY"}.contains(freq->second)) {
        return fault(ErrorKind::Invalid, "rule.too-frequent", rule, {freq->second});
    }
    const QString forbidden = forbiddenPart(parts);
    if (!forbidden.isEmpty()) return unreadable(rule, forbidden);
    return Nothing{};
}

}  // namespace laneward
