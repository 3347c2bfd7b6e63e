// RFC 5545 (September 2009), https://www.rfc-editor.org/rfc/rfc5545: every example of section 3.8.5.3 and the examples of 3.3.5,
// 3.3.6, 3.3.10, 3.3.11, 3.1, 3.6.5, 3.8.5.1 and 3.8.5.2. The values in data/rfc5545_*.json were read in the RFC's text.
#include "core/calendar/icalendar.h"
#include "core/calendar/recurrence.h"
#include "tests/support/calendar_builders.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

using namespace laneward;

namespace {

QJsonObject data(const char* file) {
    QFile f(qEnvironmentVariable("LANEWARD_SOURCE") + QStringLiteral("/tests/outside/data/") + QLatin1String(file));
    return f.open(QIODevice::ReadOnly) ? QJsonDocument::fromJson(f.readAll()).object() : QJsonObject();
}

QStringList strings(const QJsonValue& list) {
    QStringList all;
    for (const QJsonValue& value : list.toArray())
        all << value.toString();
    return all;
}

/// A calendar with one event of an hour on lane 1, `lines` added.
QByteArray calendar(const QByteArrayList& lines) {
    return "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:1\r\nSUMMARY:x\r\nRESOURCES:LANE 1\r\n" + lines.join("\r\n") +
           "\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";
}

Result<IcsContents> read(const QByteArray& bytes) { return readIcs(bytes, QStringLiteral("rfc.ics"), {}, "America/New_York", 4); }

Series only(const QByteArrayList& lines) {
    const Result<IcsContents> contents = read(calendar(lines));
    return contents && contents->series.size() == 1 ? contents->series[0] : Series();
}

}  // namespace

class tst_rfc5545 : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void recurrence_data();
    void recurrence();
    void localTimes();
    void onsets();
    void lastOnsetIsIncluded();
    void durations();
    void exceptionDates();
    void recurrenceDates();
    void recurrencePeriods();
    void folding();
    void foldsAtOctets();
    void escaping();
};

void tst_rfc5545::recurrence_data() {
    QTest::addColumn<QJsonObject>("example");
    const QJsonArray examples = data("rfc5545_rrule.json")["examples"].toArray();
    QCOMPARE(examples.size(), 40);
    for (const QJsonValue& example : examples)
        QTest::newRow(qPrintable(example["id"].toString())) << example.toObject();
}

void tst_rfc5545::recurrence() {
    QFETCH(QJsonObject, example);
    Series series = build::league(example["id"].toString(), example["dtstart"].toString());
    series.zone = example["tzid"].toString().toLatin1();
    const QStringList expected = strings(example["expected_local"]);
    const QStringList offsets = strings(example["expected_utc_offset"]);
    const bool complete = example["complete"].toBool();
    if (!example["exdate"].isNull()) series.excludedDates = {build::wall(example["exdate"].toString())};
    const DateRange range{QDate(1990, 1, 1), complete ? QDate(2099, 12, 31) : build::wall(expected.last()).date};
    QStringList rules{example["rrule"].toString()};
    if (!example["alt_rrule"].isNull()) rules << example["alt_rrule"].toString();
    for (const QString& rule : rules) {
        series.rule = rule;
        const Result<Dates> dates = startsOf(series, range);
        if (rule.contains(QLatin1String("HOURLY")) || rule.contains(QLatin1String("MINUTELY"))) {
            QVERIFY(!dates);
            QCOMPARE(dates.error().finding.rule, QByteArray("rule.too-frequent"));
            continue;
        }
        QVERIFY(dates);
        QCOMPARE(build::texts(dates->starts), expected);
        const Result<Zone> zone = Zone::load(series.zone);
        for (size_t i = 0; i < dates->starts.size(); ++i) {
            const int seconds = int(zone->offsetAt(zone->toInstant(dates->starts[i])).value);
            const int written = offsets[int(i)].toInt();
            QCOMPARE(seconds, (written / 100 * 60 + written % 100) * 60);
        }
    }
}

void tst_rfc5545::localTimes() {
    const QJsonArray cases = data("rfc5545_timezone.json")["local_to_utc"].toArray();
    QCOMPARE(cases.size(), 4);
    for (const QJsonValue& c : cases) {
        const Result<Zone> zone = Zone::load(c["tzid"].toString().toLatin1());
        const Instant instant = zone->toInstant(build::wall(c["local"].toString()));
        QCOMPARE(build::text(Zone().toLocal(instant)) + QLatin1Char('Z'), c["utc"].toString());
        if (c["shown_local"].isString()) QCOMPARE(build::text(zone->toLocal(instant)), c["shown_local"].toString());
    }
}

void tst_rfc5545::onsets() {
    const QJsonArray cases = data("rfc5545_timezone.json")["vtimezone_new_york_onsets"].toArray();
    const Result<Zone> zone = Zone::load("America/New_York");
    int checked = 0;
    for (const QJsonValue& c : cases) {
        const Instant onset = Zone().toInstant(build::wall(c["onset_utc"].toString()));
        if (onset.seconds < 0) continue;  // our tables begin in 1970; the RFC's example in 1967
        const auto offset = [](const QJsonValue& v) { return Seconds{v.toString().toInt() / 100 * 3600}; };
        QCOMPARE(zone->offsetAt({onset.seconds - 1}), offset(c["tzoffsetfrom"]));
        QCOMPARE(zone->offsetAt(onset), offset(c["tzoffsetto"]));
        ++checked;
    }
    QCOMPARE(checked, 10);
}

void tst_rfc5545::lastOnsetIsIncluded() {
    // Section 3.6.5: UNTIL in UTC equals the last onset, whose wall time is that of the offset before the change.
    const QJsonArray cases = data("rfc5545_timezone.json")["vtimezone_until_rule"].toObject()["examples"].toArray();
    QCOMPARE(cases.size(), 3);
    for (const QJsonValue& c : cases) {
        const QString rule = c["rrule"].toString();
        const LocalTime last = build::wall(c["last_onset_local"].toString());
        const Result<Zone> before = Zone::load(last.date.month() == 10 ? "Etc/GMT+4" : "Etc/GMT+5");
        const Result<Rule> parsed = parseRule(rule, *before);
        QVERIFY(parsed);
        LocalTime start = last;
        start.date = QDate(1970, last.date.month(), last.date.month() == 10 ? 25 : 26);
        const Dates dates = datesOf(*parsed, start, {QDate(1971, 1, 1), QDate(2020, 1, 1)});
        QVERIFY(!dates.starts.empty());
        QCOMPARE(build::text(dates.starts.back()), build::text(last));
    }
}

void tst_rfc5545::durations() {
    const QJsonArray cases = data("rfc5545_timezone.json")["duration"].toArray();
    QCOMPARE(cases.size(), 2);
    for (const QJsonValue& c : cases) {
        const QJsonObject p = c["parts"].toObject();
        const qint64 seconds = ((p["weeks"].toInt() * 7 + p["days"].toInt()) * 24 + p["hours"].toInt()) * qint64{3600} +
                               p["minutes"].toInt() * 60 + p["seconds"].toInt();
        const Series s = only({"DTSTART:20260101T100000", "DURATION:" + c["value"].toString().toLatin1()});
        QCOMPARE(s.duration.value, seconds);
    }
}

void tst_rfc5545::exceptionDates() {
    const QJsonObject c = data("rfc5545_timezone.json")["sets"].toArray()[0].toObject();
    const Series s =
        only({"DTSTART;TZID=America/New_York:19960401T210000", "DURATION:PT1H", "EXDATE:" + c["exdate"].toString().toLatin1()});
    // 01:00Z is 20:00 EST on the day before; daylight saving began on 7 April in 1996.
    QCOMPARE(build::texts(s.excludedDates), (QStringList{"19960401T200000", "19960402T200000", "19960403T200000"}));
}

void tst_rfc5545::recurrenceDates() {
    const QJsonObject c = data("rfc5545_timezone.json")["sets"].toArray()[1].toObject();
    const QStringList dates = strings(c["values"]);
    QCOMPARE(dates.size(), 11);
    // Folded as the RFC prints it.
    const QByteArray all = dates.join(QLatin1Char(',')).toLatin1();
    const Series s = only({"DTSTART;TZID=America/New_York:19970101T190000", "DURATION:PT1H",
                           "RDATE;VALUE=DATE:" + all.left(53) + "\r\n " + all.mid(53)});
    QStringList expected;
    for (const QString& date : dates)
        expected << date + QStringLiteral("T190000");
    QCOMPARE(build::texts(startsOf(s, {QDate(1997, 1, 1), QDate(1997, 12, 31)})->starts), expected);
}

void tst_rfc5545::recurrencePeriods() {
    const QJsonObject c = data("rfc5545_timezone.json")["sets"].toArray()[2].toObject();
    const Series s = only({"DTSTART:19960402T020000Z", "DURATION:PT2H",
                           "RDATE;VALUE=PERIOD:" + strings(c["values"]).join(QLatin1Char(',')).toLatin1()});
    const Occupancy all = occupancyOf({s}, build::centre(4, "UTC"), {QDate(1996, 4, 1), QDate(1996, 4, 10)});
    QStringList ends;
    for (const Occurrence& o : all.occurrences)
        ends << build::text(Zone().toLocal(o.booked.end)) + QLatin1Char('Z');
    QCOMPARE(ends, QStringList{"19960402T040000Z"} + strings(c["expected_end"]));
}

void tst_rfc5545::folding() {
    const QJsonObject c = data("rfc5545_text.json")["folding"].toArray()[0].toObject();
    QCOMPARE(unfolded(c["folded"].toString().toUtf8()), c["unfolded"].toString().toUtf8());
}

void tst_rfc5545::foldsAtOctets() {
    // Section 3.1: at most 75 octets without the line break, and no UTF-8 sequence is split here.
    const QString letters = QString::fromUtf8("a\u00e4\u4e2d\U0001F3B3");
    for (int length = 0; length < 400; ++length) {
        QString text = QStringLiteral("SUMMARY:");
        for (int i = 0; i < length; ++i)
            text += i % 4 == 3 ? letters.mid(3, 2) : letters.mid(i % 4, 1);
        const QByteArray folded = foldedLine(text.toUtf8());
        QVERIFY(folded.endsWith("\r\n"));
        for (const QByteArray& line : folded.chopped(2).split('\n')) {
            const QByteArray bare = line.endsWith('\r') ? line.chopped(1) : line;
            QVERIFY(bare.size() <= 75);
            QCOMPARE(QString::fromUtf8(bare).toUtf8(), bare);
        }
        QCOMPARE(unfolded(folded), text.toUtf8() + "\r\n");
    }
}

void tst_rfc5545::escaping() {
    const QJsonArray cases = data("rfc5545_text.json")["escaping"].toArray();
    QCOMPARE(cases.size(), 2);
    for (const QJsonValue& c : cases) {
        QCOMPARE(escapedText(c["value"].toString()), c["encoded"].toString().toUtf8());
        QCOMPARE(unescapedText(c["encoded"].toString().toUtf8()), c["value"].toString());
    }
    QCOMPARE(unescapedText("one\\Ntwo"), QStringLiteral("one\ntwo"));
}

QTEST_GUILESS_MAIN(tst_rfc5545)
#include "tst_rfc5545.moc"
