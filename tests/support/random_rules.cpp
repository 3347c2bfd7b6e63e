#include "tests/support/random_rules.h"

#include <QMap>

namespace laneward::build {

bool RuleCase::has(const char* part) const { return !value(part).isEmpty(); }

QString RuleCase::value(const char* part) const {
    const QString prefix = QLatin1String(part) + QLatin1Char('=');
    for (const QString& p : parts) {
        if (p.startsWith(prefix)) return p.mid(prefix.size());
    }
    return {};
}

int RandomRules::number(int least, int most) {
    // SplitMix64 (Steele, Lea, Flood 2014; constants from memory): the distributions of <random> differ between libraries.
    std::uint64_t z = (m_state += 0x9e3779b97f4a7c15);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
    z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
    return least + int((z ^ (z >> 31)) % std::uint64_t(most - least + 1));
}

QString RandomRules::numbers(int least, int most, int howMany, bool fromTheEnd) {
    QMap<int, QString> chosen;
    for (int i = number(1, howMany); i > 0; --i) {
        const int n = number(least, most) * (fromTheEnd && chance(35) ? -1 : 1);
        chosen[n] = QString::number(n);
    }
    return QStringList(chosen.values()).join(QLatin1Char(','));
}

/// Weekdays, in months and years some with positions; the two kinds are mixed only where BYSETPOS will not be added.
QString RandomRules::weekdays(const RuleCase& rule) {
    static const QStringList names{"MO", "TU", "WE", "TH", "FR", "SA", "SU"};
    const QString freq = rule.value("FREQ");
    const bool positions = (freq == QLatin1String("MONTHLY") || freq == QLatin1String("YEARLY")) && !rule.has("BYWEEKNO");
    const int most = freq == QLatin1String("MONTHLY") || rule.has("BYMONTH") ? 5 : 53;
    QMap<QString, bool> chosen;
    for (int i = number(1, 4); i > 0; --i) {
        QString day = names[number(0, 6)];
        if (positions && chance(50)) day.prepend(QString::number(number(1, most) * (chance(50) ? 1 : -1)));
        chosen[day] = true;
    }
    return QStringList(chosen.keys()).join(QLatin1Char(','));
}

void RandomRules::addDays(RuleCase& rule) {
    const QString freq = rule.value("FREQ");
    const bool yearly = freq == QLatin1String("YEARLY");
    if (chance(25)) rule.parts << "BYMONTH=" + numbers(1, 12, 4, false);
    if (yearly && chance(20)) rule.parts << "BYWEEKNO=" + numbers(1, 53, 3, true);
    if (yearly && chance(20)) rule.parts << "BYYEARDAY=" + numbers(1, 366, 4, true);
    if (freq != QLatin1String("WEEKLY") && chance(25)) rule.parts << "BYMONTHDAY=" + numbers(1, 31, 4, true);
    if (chance(50)) rule.parts << "BYDAY=" + weekdays(rule);
    if (chance(12)) rule.parts << "BYHOUR=" + numbers(0, 23, 3, false);
    if (chance(8)) rule.parts << "BYMINUTE=" + numbers(0, 59, 2, false);
}

void RandomRules::addEnd(RuleCase& rule) {
    const int kind = number(1, 10);
    if (kind <= 3) rule.count = number(1, 60);
    if (kind == 4 || kind == 5) {
        const LocalTime until = shifted(rule.start, hours(24 * number(0, 900)));
        rule.until = LocalTime{until.date, QTime(number(0, 23), number(0, 3) * 15)};
    }
}

RuleCase RandomRules::next() {
    static const QByteArrayList zones{"Europe/Berlin",    "Europe/London",    "America/New_York",    "America/Los_Angeles",
                                      "Australia/Sydney", "America/Santiago", "Australia/Lord_Howe", "Asia/Tokyo",
                                      "America/St_Johns", "Asia/Kathmandu",   "Pacific/Auckland",    "UTC"};
    static const QStringList frequencies{"DAILY", "WEEKLY", "WEEKLY", "MONTHLY", "MONTHLY", "YEARLY"};
    RuleCase rule;
    rule.zone = zones[number(0, int(zones.size()) - 1)];
    rule.start = {QDate(2020, 1, 1).addDays(number(0, 3'000)), QTime(number(0, 23), chance(50) ? 0 : 30)};
    rule.parts << "FREQ=" + frequencies[number(0, int(frequencies.size()) - 1)];
    if (chance(50)) rule.parts << QStringLiteral("INTERVAL=%1").arg(number(1, 5));
    addDays(rule);
    const QString days = rule.value("BYDAY");
    const qsizetype positions = days.count(QLatin1Char('1')) + days.count(QLatin1Char('2')) + days.count(QLatin1Char('3')) +
                                days.count(QLatin1Char('4')) + days.count(QLatin1Char('5'));
    const bool selects = rule.parts.filter(QStringLiteral("BY")).size() > 0;
    if (selects && positions == 0 && chance(20)) rule.parts << "BYSETPOS=" + numbers(1, 4, 2, true);
    if (chance(30)) rule.parts << "WKST=" + QStringList{"MO", "TU", "WE", "TH", "FR", "SA", "SU"}[number(0, 6)];
    addEnd(rule);
    rule.range.first = rule.start.date.addDays(number(-60, 500));
    rule.range.last = rule.range.first.addDays(number(1, 400));
    return rule;
}

}  // namespace laneward::build
