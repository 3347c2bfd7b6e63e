// 5,000 random rules with zones against two other expanders: python3-dateutil 2.8.2 (BSD-3/Apache-2) with the standard library's
// zoneinfo for instants, and the npm package rrule 2.8.1 (BSD-3). Where one of them differs, the difference must be one of the
// classes below: rewritten so that the other library cannot go its own way, the rule has to give exactly our dates.
//
//   start       DTSTART does not match the rule. RFC 5545, 3.8.5.3: its set is undefined; here DTSTART is always the first
//   instance
//               and counts, the libraries leave it out.
//   positions   BYDAY=1MO,TU: the libraries keep only days that satisfy both kinds; by 3.3.10 the list is a union.
//   week        BYWEEKNO without a day: the libraries take all seven days; 3.3.10 takes what is missing from DTSTART.
//   first-week  BYSETPOS in a period that begins before DTSTART: the libraries count from DTSTART, 3.3.10 the whole period.
//   gap         a time that a change of offset skips: dateutil's own zones use the offset after it, zoneinfo and 3.3.5 that
//   before.
#include "tests/support/calendar_builders.h"
#include "tests/support/random_rules.h"

#include "core/calendar/recurrence.h"

#include <QMap>
#include <QProcess>
#include <QRegularExpression>
#include <QTest>

using namespace laneward;
using build::RuleCase;

namespace {

constexpr unsigned seed = 20'261'112;
constexpr int caseCount = 5'000;

struct Case {
    RuleCase rule;
    QString text;          ///< with COUNT or UNTIL in UTC
    QString floatingText;  ///< with UNTIL in wall time
    QStringList ours;
};

QString stamp(QDate date) { return date.toString(QStringLiteral("yyyyMMdd")); }

QString line(const QString& zone, const LocalTime& start, const QString& rule, QDate first, QDate last) {
    return QStringList{zone, build::text(start), rule, stamp(first), stamp(last)}.join(QLatin1Char(' ')) + QLatin1Char('\n');
}

/// Runs a program on `input`; one list of instances per line. Empty when it fails, with a warning.
std::vector<QStringList> run(const QString& program, const QStringList& arguments, const QString& input) {
    QProcess process;
    process.start(program, arguments);
    process.write(input.toLatin1());
    process.closeWriteChannel();
    if (!process.waitForFinished(120'000) || process.exitCode() != 0) {
        qWarning("%s: %s", qPrintable(program), process.readAllStandardError().constData());
        return {};
    }
    std::vector<QStringList> lists;
    for (const QString& text : QString::fromLatin1(process.readAllStandardOutput()).chopped(1).split(QLatin1Char('\n')))
        lists.push_back(text.split(QLatin1Char(','), Qt::SkipEmptyParts));
    return lists;
}

QString tool(const char* name) {
    return qEnvironmentVariable("LANEWARD_SOURCE") + QStringLiteral("/tests/outside/tools/") + QLatin1String(name);
}

std::vector<QStringList> byDateutil(const QString& input) {
    return run(QStringLiteral("/usr/bin/python3"), {tool("expand_rules.py")}, input);
}

std::vector<QStringList> byNpm(const QString& input) {
    return run(QStringLiteral("node"),
               {tool("expand_rules.js"), qEnvironmentVariable("LANEWARD_BINARY") + QStringLiteral("/npm")}, input);
}

/// A rule in a form that leaves the other libraries no choice: the union of `rules` from `start`.
struct Plain {
    std::vector<QString> rules;
    LocalTime start;
    QStringList classes;
};

QString weekdayName(QDate date) { return QStringList{"MO", "TU", "WE", "TH", "FR", "SA", "SU"}[date.dayOfWeek() - 1]; }

void splitPositions(const RuleCase& rule, const QStringList& parts, Plain& plain) {
    static const QRegularExpression digit(QStringLiteral("[0-9]"));
    QStringList counted;
    QStringList every;
    for (const QString& day : rule.value("BYDAY").split(QLatin1Char(','), Qt::SkipEmptyParts))
        (day.contains(digit) ? counted : every) << day;
    if (counted.isEmpty() || every.isEmpty()) {
        plain.rules = {parts.join(QLatin1Char(';'))};
        return;
    }
    for (const QStringList& days : {counted, every}) {
        QStringList some = parts;
        some.replaceInStrings(QRegularExpression(QStringLiteral("^BYDAY=.*")), "BYDAY=" + days.join(QLatin1Char(',')));
        plain.rules.push_back(some.join(QLatin1Char(';')));
    }
    plain.classes << "positions";
}

Plain plainForm(const RuleCase& rule) {
    Plain plain;
    plain.start = rule.start;
    QStringList parts = rule.parts;
    const bool dayless = !rule.has("BYDAY") && !rule.has("BYMONTHDAY") && !rule.has("BYYEARDAY");
    if (rule.has("BYWEEKNO") && dayless) {
        parts << "BYDAY=" + weekdayName(rule.start.date);
        plain.classes << "week";
    }
    if (rule.has("BYSETPOS")) {
        // From the first day of a period before DTSTART that the interval meets too; what DTSTART would supply is spelled out.
        const int interval = std::max(1, rule.value("INTERVAL").toInt());
        const QString freq = rule.value("FREQ");
        if (freq == QLatin1String("WEEKLY")) {
            if (!rule.has("BYDAY")) parts << "BYDAY=" + weekdayName(rule.start.date);
            plain.start.date = rule.start.date.addDays(-7 * interval);
        } else if (freq == QLatin1String("MONTHLY")) {
            if (dayless) parts << QStringLiteral("BYMONTHDAY=%1").arg(rule.start.date.day());
            plain.start.date = QDate(rule.start.date.year(), rule.start.date.month(), 1).addMonths(-interval);
        } else if (freq == QLatin1String("YEARLY")) {
            if (dayless && !rule.has("BYWEEKNO")) {
                if (!rule.has("BYMONTH")) parts << QStringLiteral("BYMONTH=%1").arg(rule.start.date.month());
                parts << QStringLiteral("BYMONTHDAY=%1").arg(rule.start.date.day());
            }
            plain.start.date = QDate(rule.start.date.year() - interval, 1, 1);
        } else {
            plain.start.date = rule.start.date.addDays(-interval);
        }
        if (!rule.has("BYHOUR")) parts << QStringLiteral("BYHOUR=%1").arg(rule.start.time.hour());
        if (!rule.has("BYMINUTE")) parts << QStringLiteral("BYMINUTE=%1").arg(rule.start.time.minute());
        plain.start.time = QTime(0, 0);
        plain.classes << "first-week";
    }
    splitPositions(rule, parts, plain);
    return plain;
}

/// DTSTART, COUNT, UNTIL and the range applied to the union of plain lists; adds "start" to the classes where that mattered.
QStringList assembled(const RuleCase& rule, QStringList walls, QStringList& classes) {
    walls.sort();  // the form of the stamps sorts by time
    walls.removeDuplicates();
    const QString start = build::text(rule.start);
    walls.erase(walls.begin(), std::lower_bound(walls.begin(), walls.end(), start));
    if (walls.isEmpty() || walls.front() != start) {
        walls.prepend(start);
        classes << "start";
    }
    if (rule.count > 0) walls = walls.mid(0, rule.count);
    QStringList kept;
    for (const QString& wall : walls) {
        const bool over = rule.until && wall != start && build::text(*rule.until) < wall;
        if (!over && rule.range.contains(build::wall(wall).date)) kept << wall;
    }
    return kept;
}

Case makeCase(RuleCase rule) {
    Case c;
    const Result<Zone> zone = Zone::load(rule.zone);
    QStringList parts = rule.parts;
    QStringList floating = rule.parts;
    if (rule.count > 0) {
        parts << QStringLiteral("COUNT=%1").arg(rule.count);
        floating = parts;
    }
    if (rule.until) {
        const Instant until = zone->toInstant(*rule.until);
        rule.until = zone->toLocal(until);
        parts << "UNTIL=" + build::text(Zone().toLocal(until)) + QLatin1Char('Z');
        floating << "UNTIL=" + build::text(*rule.until);
    }
    c.text = parts.join(QLatin1Char(';'));
    c.floatingText = floating.join(QLatin1Char(';'));
    c.rule = rule;
    return c;
}

}  // namespace

class tst_reference_rules : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void dateutil();
    void npmRrule();
    void instantsInZones();

private:
    using Library = std::vector<QStringList> (*)(const QString&);
    void compare(const char* name, const std::vector<Case>& cases, const std::vector<QStringList>& raw, Library library);

    std::vector<Case> m_cases;
    std::vector<QStringList> m_dateutil;  ///< "WALL/DATEUTIL/ZONEINFO"
};

void tst_reference_rules::initTestCase() {
    build::RandomRules random(seed);
    int refused = 0;
    QString input;
    while (int(m_cases.size()) < caseCount) {
        Case c = makeCase(random.next());
        Series series = build::league(QStringLiteral("s"), build::text(c.rule.start), c.text);
        series.zone = c.rule.zone;
        const Result<Dates> dates = startsOf(series, c.rule.range);
        if (!dates) {  // some combinations have no date at all, such as week 1 in June
            QCOMPARE(dates.error().finding.rule, QByteArray("rule.endless-search"));
            ++refused;
            continue;
        }
        c.ours = build::texts(dates->starts);
        input += line(QString::fromLatin1(c.rule.zone), c.rule.start, c.text, c.rule.range.first, c.rule.range.last);
        m_cases.push_back(std::move(c));
    }
    qInfo("seed %u: %d rules, %d more refused as never giving a date", seed, caseCount, refused);
    m_dateutil = byDateutil(input);
    QVERIFY2(m_dateutil.size() == m_cases.size(), "python3-dateutil is needed: apt-get install python3-dateutil");
}

void tst_reference_rules::compare(const char* name, const std::vector<Case>& cases, const std::vector<QStringList>& raw,
                                  Library library) {
    std::vector<size_t> different;
    std::vector<Plain> plains;
    QString input;
    for (size_t i = 0; i < cases.size(); ++i) {
        if (raw[i] == cases[i].ours) continue;
        const RuleCase& rule = cases[i].rule;
        different.push_back(i);
        plains.push_back(plainForm(rule));
        for (const QString& text : plains.back().rules)
            input += line(QStringLiteral("-"), plains.back().start, text, rule.start.date, rule.range.last);
    }
    const std::vector<QStringList> lists = library(input);
    QMap<QString, int> counts;
    int unexplained = 0;
    size_t next = 0;
    for (size_t d = 0; d < different.size(); ++d) {
        const Case& c = cases[different[d]];
        QStringList walls;
        for (size_t k = 0; k < plains[d].rules.size(); ++k)
            walls += lists.at(next++);
        const QStringList expected = assembled(c.rule, walls, plains[d].classes);
        ++counts[plains[d].classes.join(QLatin1Char('+'))];
        if (expected == c.ours && !plains[d].classes.isEmpty()) continue;
        if (++unexplained > 5) continue;
        qWarning("%s: %s %s %s\n  ours   %s\n  theirs %s", name, c.rule.zone.constData(), qPrintable(build::text(c.rule.start)),
                 qPrintable(c.text), qPrintable(c.ours.mid(0, 8).join(QLatin1Char(' '))),
                 qPrintable(expected.mid(0, 8).join(QLatin1Char(' '))));
    }
    qInfo("%s: %zu rules, %zu equal as they stand", name, cases.size(), cases.size() - different.size());
    for (auto it = counts.begin(); it != counts.end(); ++it)
        qInfo("  explained by %s: %d", qPrintable(it.key()), it.value());
    QCOMPARE(unexplained, 0);
    QVERIFY2(different.size() * 4 < cases.size(), "the rules as they stand hardly agree: the classes would explain anything");
}

void tst_reference_rules::dateutil() {
    std::vector<QStringList> raw = m_dateutil;
    for (QStringList& list : raw)
        list.replaceInStrings(QRegularExpression(QStringLiteral("/.*")), QString());
    compare("dateutil", m_cases, raw, byDateutil);
}

void tst_reference_rules::npmRrule() {
    // Left to dateutil: rules that this package searches up to the year 9999 because they (or, by its reading, BYDAY=1MO,TU) give
    // no date after DTSTART, which takes seconds each; and BYSETPOS below -1, which it reads as the first of a set that is too
    // small.
    std::vector<Case> cases;
    QString input;
    for (const Case& c : m_cases) {
        const Result<Rule> rule = parseRule(c.rule.parts.join(QLatin1Char(';')), Zone());
        const Dates dates = datesOf(*rule, c.rule.start, {c.rule.start.date, c.rule.start.date.addYears(12)});
        if (dates.starts.size() < 2 || dates.starts.back().date < c.rule.range.last) continue;
        static const QRegularExpression farFromTheEnd(QStringLiteral("-([2-9]|1[0-9])"));
        if (plainForm(c.rule).rules.size() > 1 || c.rule.value("BYSETPOS").contains(farFromTheEnd)) continue;
        cases.push_back(c);
        input += line(QStringLiteral("-"), c.rule.start, c.floatingText, c.rule.range.first, c.rule.range.last);
    }
    qInfo("rrule: %zu rules left out", m_cases.size() - cases.size());
    QVERIFY(cases.size() * 10 > m_cases.size() * 8);
    const std::vector<QStringList> raw = byNpm(input);
    QVERIFY2(raw.size() == cases.size(), "node and the package rrule are needed: npm ci with tests/outside/tools/package.json");
    compare("rrule", cases, raw, byNpm);
}

void tst_reference_rules::instantsInZones() {
    int instants = 0;
    int gaps = 0;
    for (size_t i = 0; i < m_cases.size(); ++i) {
        const Result<Zone> zone = Zone::load(m_cases[i].rule.zone);
        for (const QString& item : m_dateutil[i]) {
            const QStringList fields = item.split(QLatin1Char('/'));
            const LocalTime wall = build::wall(fields[0]);
            const Instant instant = zone->toInstant(wall);
            QCOMPARE(instant.seconds, fields[2].toLongLong());
            ++instants;
            if (fields[1] == fields[2]) continue;
            QVERIFY2(zone->toLocal(instant) != wall, qPrintable(item));
            ++gaps;
        }
    }
    qInfo("%d instants equal zoneinfo's; dateutil's own zones differ in %d, all in gaps", instants, gaps);
    QVERIFY(gaps > 0);
}

QTEST_GUILESS_MAIN(tst_reference_rules)
#include "tst_reference_rules.moc"
