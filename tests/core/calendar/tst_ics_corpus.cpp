// Damaged calendars, made from a sound one: whatever happens, reading ends at once, and either everything is read or the refusal
// names a place.
#include "tests/support/calendar_builders.h"
#include "tests/support/cpu_limit.h"
#include "tests/support/random_calendars.h"

#include "core/base/limits.h"
#include "core/calendar/icalendar.h"

#include <QRegularExpression>
#include <QTest>

using namespace laneward;

namespace {

constexpr unsigned seed = 20'261'112;

QByteArray soundCalendar(int events) {
    build::RandomCalendars random(seed);
    std::vector<Series> series;
    for (int i = 0; i < events; ++i)
        series.push_back(random.next());
    return writeIcs(series, {1'700'000'000});
}

/// What may stand where a number, a time, a rule or a text is expected.
const QByteArrayList values{"",
                            "\\",
                            "\\n\\,\\;",
                            "-1",
                            "0",
                            "99999999999999999999",
                            "00000000T000000Z",
                            "99991231T235959Z",
                            "20260229T000000",
                            "20260101T000060Z",
                            "P0D",
                            "-P1W",
                            "PT",
                            "P1Y",
                            "PT999999999H999999999M999999999S",
                            "FREQ=DAILY;UNTIL=20380119T031408Z",
                            "FREQ=SECONDLY",
                            "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30",
                            "FREQ=YEARLY;BYWEEKNO=7;BYHOUR=1,8,9",
                            "LANES 1-999999999",
                            "LANES 12-1",
                            "LANE 7,LANE 7",
                            "\xe2\x80\xae"
                            "drow",
                            "\xc0\x80",
                            "\xed\xa0\x80",
                            "<img src=x>",
                            QByteArray(100'000, 'x'),
                            QByteArray("1,").repeated(5'000),
                            QByteArray("20260101T000000Z,").repeated(3'000) + "20260101T000000Z"};

struct Tally {
    int read = 0;
    int refused = 0;
};

/// False when reading took long, or a refusal or a note names no place.
bool isHandled(const QByteArray& bytes, Tally& tally) {
    static const QRegularExpression place(QStringLiteral("^c\\.ics(:[1-9][0-9]*)?$"));
    const build::CpuLimit limit(2);
    const Result<IcsContents> contents = readIcs(bytes, QStringLiteral("c.ics"), {}, "Europe/Berlin", 24);
    if (limit.isExceeded()) return false;
    if (!contents) {
        ++tally.refused;
        return !contents.error().finding.rule.isEmpty() && place.match(contents.error().finding.subject).hasMatch();
    }
    ++tally.read;
    for (const Finding& note : contents->notes) {
        if (!place.match(note.subject).hasMatch()) return false;
    }
    for (const Series& s : contents->series) {
        if (!faultsOf(s, 24).empty()) return false;
    }
    const Occupancy all = occupancyOf(contents->series, build::centre(), build::days("20260101", "20261231"));
    return !limit.isExceeded() && all.occurrences.size() <= size_t(limits::occurrencesAtOnce);
}

}  // namespace

class tst_ics_corpus : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cutAnywhere();
    void bytesChanged();
    void linesMixed();
    void valuesReplaced();
};

void tst_ics_corpus::cutAnywhere() {
    const QByteArray sound = soundCalendar(6);
    Tally tally;
    QVERIFY(isHandled(sound, tally));
    QCOMPARE(tally.read, 1);
    for (int i = 0; i < 300; ++i) {
        const QByteArray cut = sound.left(sound.size() * i / 300);
        QVERIFY2(isHandled(cut, tally), qPrintable(QStringLiteral("cut at %1").arg(cut.size())));
    }
    QCOMPARE(tally.read, 1);  // no cut file passes for a whole one
}

void tst_ics_corpus::bytesChanged() {
    const QByteArray sound = soundCalendar(6);
    build::RandomRules random(seed);
    Tally tally;
    for (int i = 0; i < 400; ++i) {
        QByteArray changed = sound;
        for (int n = random.number(1, 8); n > 0; --n)
            changed[random.number(0, int(changed.size()) - 1)] = char(random.number(0, 255));
        QVERIFY2(isHandled(changed, tally), qPrintable(QStringLiteral("change %1").arg(i)));
    }
    qInfo("400 files with changed bytes: %d read, %d refused", tally.read, tally.refused);
    QVERIFY(tally.read > 0 && tally.refused > 0);
}

void tst_ics_corpus::linesMixed() {
    const QByteArrayList sound = soundCalendar(4).split('\n');
    build::RandomRules random(seed + 1);
    Tally tally;
    for (int i = 0; i < 300; ++i) {
        QByteArrayList lines = sound;
        for (int n = random.number(1, 4); n > 0; --n) {
            const int a = random.number(0, int(lines.size()) - 1);
            const int b = random.number(0, int(lines.size()) - 1);
            if (random.chance(40)) {
                lines.swapItemsAt(a, b);
            } else if (random.chance(50)) {
                lines.removeAt(a);
            } else {
                lines.insert(a, lines[b]);
            }
        }
        QVERIFY2(isHandled(lines.join('\n'), tally), qPrintable(QStringLiteral("mix %1").arg(i)));
    }
    qInfo("300 files with lines mixed: %d read, %d refused", tally.read, tally.refused);
    QVERIFY(tally.read > 0 && tally.refused > 0);
}

void tst_ics_corpus::valuesReplaced() {
    const QByteArrayList sound = soundCalendar(4).split('\n');
    Tally tally;
    int files = 0;
    for (qsizetype at = 0; at < sound.size(); at += 2) {
        const qsizetype colon = sound[at].indexOf(':');
        if (colon < 0) continue;
        for (const QByteArray& value : values) {
            if ((files++ % 4) != 0 && value.size() > 1'000) continue;
            QByteArrayList lines = sound;
            lines[at] = sound[at].left(colon + 1) + value + '\r';
            QVERIFY2(isHandled(lines.join('\n'), tally), (sound[at].left(colon + 1) + value.left(60)).constData());
        }
    }
    qInfo("%d files with a value replaced: %d read, %d refused", tally.read + tally.refused, tally.read, tally.refused);
    QVERIFY(tally.read > 200 && tally.refused > 200);
}

QTEST_GUILESS_MAIN(tst_ics_corpus)
#include "tst_ics_corpus.moc"
