#include "core/documents/wording.h"
#include "core/planning/rules.h"
#include "tests/support/hand_made.h"

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>
#include <QTest>

using namespace laneward;
using namespace support;

namespace {

Speech plain() { return {QLocale::c(), *Zone::load("Europe/London"), UnitSystem::Metric}; }

QString said(const QByteArray& rule, const QString& subject, std::vector<Value> values = {}) {
    return text(Finding{Severity::Note, rule, subject, std::move(values)}, plain());
}

/// Every literal in the sources that has the form of a rule: words and hyphens around one dot.
QMap<QByteArray, QString> rulesInSources() {
    static const QRegularExpression literal("\"([a-z]+(?:-[a-z]+)*\\.[a-z]+(?:-[a-z]+)*)\"");
    static const QRegularExpression fileName("\\.(laneward|json|csv|ics|pdf|svg|sql)$");
    QMap<QByteArray, QString> rules;
    for (const char* room : {"/core", "/app"}) {
        QDirIterator files(qEnvironmentVariable("LANEWARD_SOURCE") + room, {"*.cpp"}, QDir::Files, QDirIterator::Subdirectories);
        while (files.hasNext()) {
            QFile file(files.next());
            if (!file.open(QIODevice::ReadOnly)) continue;
            const QString source = QString::fromUtf8(file.readAll());
            for (auto found = literal.globalMatch(source); found.hasNext();) {
                const QString rule = found.next().captured(1);
                if (!rule.contains(fileName)) rules[rule.toUtf8()] = file.fileName();
            }
        }
    }
    return rules;
}

}  // namespace

class WordingTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyRuleOfPlanningHasWords();
    void everyRuleInTheSourcesHasWords();
    void markersAreFilledOnce();
    void aRuleWithoutWordsKeepsItsFacts();
    void valuesByTheirType_data();
    void valuesByTheirType();
    void amountsInBothSystems();
    void clockTimesRoundDownOrUp();
    void localesDecideTheForm();
    void namesAreShownAsTyped_data();
    void namesAreShownAsTyped();
    void recurrenceInWords_data();
    void recurrenceInWords();
    void exceptionsAndNextDates();
    void enumerationsHaveWords();
};

void WordingTest::everyRuleOfPlanningHasWords() {
    for (std::string_view rule : planningRules)
        QVERIFY2(isWorded(QByteArray(rule.data(), qsizetype(rule.size()))), rule.data());
}

void WordingTest::everyRuleInTheSourcesHasWords() {
    static const QByteArrayList notRules{"centre.lanes"};  // a path inside a centre file
    const QMap<QByteArray, QString> rules = rulesInSources();
    QVERIFY(rules.size() > 150);
    QStringList missing;
    for (auto it = rules.begin(); it != rules.end(); ++it) {
        if (!isWorded(it.key()) && !notRules.contains(it.key())) missing += it.key() + " in " + it.value();
    }
    QVERIFY2(missing.isEmpty(), qPrintable(missing.join("\n")));
}

void WordingTest::markersAreFilledOnce() {
    QCOMPARE(said("edit.conflict", "%2 %T2 <b>", {QString("%1"), handAt(17, 17)}),
             QString("'%2 %T2 <b>' was changed meanwhile by %1, Thu 2026-11-12, 17:17; nothing was overwritten"));
    QCOMPARE(said("short.no-time", "Late Fours", {minutes(12), handAt(19, 50)}),
             QString("12 min missing: the lanes are clear at 19:50"));
    QCOMPARE(said("remedy.shorter-treatment", "Fours", {std::int64_t{1}}), QString("ask less for Fours: condition only"));
    QCOMPARE(said("remedy.fewer-lanes", "Fours", {std::int64_t{6}}), QString("give Fours fewer lanes: 6 could be made ready"));
    // What a finding does not say is left out.
    QCOMPARE(said("file.not-written", "a.pdf"), QString("a.pdf: cannot be written"));
}

void WordingTest::aRuleWithoutWordsKeepsItsFacts() {
    QVERIFY(!isWorded("never.worded"));
    QCOMPARE(said("never.worded", "Lane 7", {minutes(3), QString("x")}), QString("never.worded: Lane 7, 3 min, x"));
    QCOMPARE(text(fault(ErrorKind::Io, "store.missing", "a.laneward"), plain()), QString("a.laneward: there is no such centre"));
}

void WordingTest::valuesByTheirType_data() {
    QTest::addColumn<QString>("made");
    QTest::addColumn<QString>("expected");
    const auto add = [](const char* name, const Value& value, const QString& expected) {
        QTest::newRow(name) << text(value, plain()) << expected;
    };
    add("number", std::int64_t{12}, "12");
    add("seconds", Seconds{45}, "45 s");
    add("minutes", minutes(9), "9 min");
    add("nearly an hour", Seconds{59 * 60 + 40}, "1 h");
    add("hours", minutes(125), "2 h 05 min");
    add("negative", -minutes(7), "-7 min");
    add("length", feet(40), "12.2 m");
    add("volts", Millivolts{25'640}, "25.6 V");
    add("date", QDate(2026, 11, 12), "Thursday 12 November 2026");
    add("time", handAt(17, 17), "Thu 2026-11-12, 17:17");
    add("name", QString("a\nb"), "a‹LF›b");
}

void WordingTest::valuesByTheirType() {
    QFETCH(QString, made);
    QFETCH(QString, expected);
    QCOMPARE(made, expected);
}

void WordingTest::amountsInBothSystems() {
    Speech speech = plain();
    QCOMPARE(amountText(Microlitres{0}, speech), QString("0 mL"));
    QCOMPARE(amountText(Microlitres{7'460}, speech), QString("7.5 mL"));
    QCOMPARE(amountText(Microlitres{302'400}, speech), QString("302 mL"));
    QCOMPARE(amountText(Microlitres{999'600}, speech), QString("1 L"));
    QCOMPARE(amountText(Microlitres{1'940'000}, speech), QString("1.9 L"));
    QCOMPARE(amountText(Microlitres{-1'940'000}, speech), QString("-1.9 L"));
    speech.units = UnitSystem::UsCustomary;
    QCOMPARE(amountText(Microlitres{302'400}, speech), QString("10.2 fl oz"));
    QCOMPARE(amountText(Microlitres{7'570'824}, speech), QString("2 gal"));
    QCOMPARE(lengthText(feet(40), speech), QString("40 ft"));
}

void WordingTest::clockTimesRoundDownOrUp() {
    QCOMPARE(clockTime(handAt(17, 17, 59), plain()), QString("17:17"));
    QCOMPARE(clockTime(handAt(17, 17, 1), plain(), true), QString("17:18"));
    QCOMPARE(clockTime(handAt(17, 17), plain(), true), QString("17:17"));
    QCOMPARE(clockTime({-1}, {QLocale::c(), Zone(), UnitSystem::Metric}), QString("23:59"));
}

void WordingTest::localesDecideTheForm() {
    const Speech german{QLocale(QLocale::German, QLocale::Germany), plain().zone, UnitSystem::Metric};
    QCOMPARE(clockTime(handAt(17, 17), german), QString("17:17"));
    QCOMPARE(amountText(Microlitres{1'940'000}, german), QString("1,9 L"));
    QVERIFY(dayText(QDate(2026, 11, 12), german).startsWith("Donnerstag"));
    const Speech american{QLocale(QLocale::English, QLocale::UnitedStates), plain().zone, UnitSystem::UsCustomary};
    QVERIFY(clockTime(handAt(17, 17), american).startsWith("5:17"));
}

void WordingTest::namesAreShownAsTyped_data() {
    QTest::addColumn<QString>("name");
    QTest::addColumn<QString>("expected");
    for (const char* same : {"Bob <img src='file:///etc/passwd'>", "&lt;b&gt;", "O'Brien \"Ace\"", "../../CON",
                             "👩‍👧 Öre", "يوم", "%1 %2"}) {
        QTest::newRow(same) << QString::fromUtf8(same) << QString::fromUtf8(same);
    }
    QTest::newRow("override") << QString(QChar(0x202e)) + "evil" << QString("‹RLO›evil");
    QTest::newRow("isolates") << QString(QChar(0x2066)) + "a" + QChar(0x2069) << QString("‹LRI›a‹PDI›");
    QTest::newRow("controls") << QString("a\tb\r\nc") + QChar(0) + QChar(0x9b) << QString("a‹TAB›b‹CR›‹LF›c‹U+0000›‹U+009B›");
    QTest::newRow("half a pair") << QString(QChar(0xd83d)) + "x" << QString(QChar(0xfffd)) + "x";
    QTest::newRow("second half") << QString(QChar(0xde00)) << QString(QChar(0xfffd));
    QTest::newRow("long") << QString(10'000, 'x') << QString(10'000, 'x');
}

void WordingTest::namesAreShownAsTyped() {
    QFETCH(QString, name);
    QFETCH(QString, expected);
    QCOMPARE(shown(name), expected);
}

void WordingTest::recurrenceInWords_data() {
    QTest::addColumn<QString>("rule");
    QTest::addColumn<QString>("expected");
    QTest::newRow("weekly") << "FREQ=WEEKLY"
                            << "Every Thursday; first: 2026-09-03, 2026-09-10, 2026-09-17";
    QTest::newRow("until") << "FREQ=WEEKLY;BYDAY=TH;UNTIL=20260917T230000Z"
                           << "Every Thursday until 2026-09-17; first: 2026-09-03, 2026-09-10, 2026-09-17";
    QTest::newRow("count") << "FREQ=WEEKLY;BYDAY=MO,TH;COUNT=3"
                           << "Every Monday and Thursday, 3 times in all; first: 2026-09-03, 2026-09-07, 2026-09-10";
    QTest::newRow("fortnight") << "FREQ=WEEKLY;INTERVAL=2"
                               << "Every 2 weeks on Thursday; first: 2026-09-03, 2026-09-17, 2026-10-01";
    QTest::newRow("daily") << "FREQ=DAILY;COUNT=2"
                           << "Every day, 2 times in all; first: 2026-09-03, 2026-09-04";
    QTest::newRow("every other day") << "FREQ=DAILY;INTERVAL=2"
                                     << "Every 2 days; first: 2026-09-03, 2026-09-05, 2026-09-07";
    QTest::newRow("monthly") << "FREQ=MONTHLY"
                             << "Every month on day 3; first: 2026-09-03, 2026-10-03, 2026-11-03";
    QTest::newRow("first Thursday") << "FREQ=MONTHLY;BYDAY=1TH"
                                    << "Every month on the first Thursday; first: 2026-09-03, 2026-10-01, 2026-11-05";
    QTest::newRow("every third month") << "FREQ=MONTHLY;INTERVAL=3;BYMONTHDAY=3"
                                       << "Every 3 months on day 3; first: 2026-09-03, 2026-12-03, 2027-03-03";
    QTest::newRow("last day") << "FREQ=MONTHLY;BYMONTHDAY=-1"
                              << "Every month on the last day; first: 2026-09-03, 2026-09-30, 2026-10-31";
    QTest::newRow("two dates") << "FREQ=MONTHLY;BYMONTHDAY=3,17"
                               << "Every month on days 3 and 17; first: 2026-09-03, 2026-09-17, 2026-10-03";
    QTest::newRow("yearly") << "FREQ=YEARLY"
                            << "Every year on 3 September; first: 2026-09-03, 2027-09-03, 2028-09-03";
    QTest::newRow("beyond words") << "FREQ=MONTHLY;BYDAY=TH;BYSETPOS=1"
                                  << "By the rule FREQ=MONTHLY;BYDAY=TH;BYSETPOS=1; first: 2026-09-03, 2026-10-01, 2026-11-05";
    QTest::newRow("once") << ""
                          << "Once, on Thursday 3 September 2026";
}

void WordingTest::recurrenceInWords() {
    QFETCH(QString, rule);
    QFETCH(QString, expected);
    Series series;
    series.start = {QDate(2026, 9, 3), QTime(18, 30)};
    series.rule = rule;
    QCOMPARE(seriesText(series, plain()).replace("%n", "3"), expected);
}

void WordingTest::exceptionsAndNextDates() {
    Series series;
    series.start = {QDate(2026, 9, 3), QTime(18, 30)};
    series.rule = "FREQ=WEEKLY;BYDAY=TH";
    series.excludedDates = {{QDate(2026, 12, 24), QTime(18, 30)}};
    Override cancelled;
    cancelled.original = {QDate(2026, 11, 26), QTime(18, 30)};
    cancelled.cancelled = true;
    Override moved;
    moved.original = {QDate(2026, 11, 19), QTime(18, 30)};
    moved.start = LocalTime{QDate(2026, 11, 20), QTime(20, 0)};
    series.overrides = {cancelled, moved};
    QCOMPARE(seriesText(series, plain(), QDate(2026, 11, 20)),
             QString("Every Thursday, not on 2026-11-26 and 2026-12-24, 2026-11-19 moved to 2026-11-20 20:00; next: 2026-12-03, "
                     "2026-12-10, 2026-12-17"));
    series.rule = "FREQ=WEEKLY;COUNT=2";
    QVERIFY(seriesText(series, plain(), QDate(2027, 1, 1)).endsWith("; no more dates"));
    series.cancelled = true;
    QCOMPARE(seriesText(series, plain()), QString("Cancelled"));
    Series dates;
    dates.start = {QDate(2026, 9, 3), QTime(18, 30)};
    dates.extraDates = {{QDate(2026, 9, 5), QTime(18, 30)}};
    QCOMPARE(seriesText(dates, plain()), QString("On single dates; first: 2026-09-03, 2026-09-05"));
}

void WordingTest::enumerationsHaveWords() {
    for (Treatment t : allTreatments)
        QVERIFY(!text(t).isEmpty());
    for (int n = 0; n <= int(EventKind::Other); ++n)
        QVERIFY(!text(EventKind(n)).isEmpty());
    for (int n = 0; n <= int(DemandKind::AsItIs); ++n)
        QVERIFY(!text(DemandKind(n)).isEmpty());
    for (int n = 0; n <= int(JobState::Dropped); ++n)
        QVERIFY(!text(JobState(n)).isEmpty());
    for (int n = 0; n <= int(StepKind::ReturnToBay); ++n)
        QVERIFY(!text(StepKind(n)).isEmpty());
    for (int n = 0; n <= int(Role::Manager); ++n)
        QVERIFY(!text(Role(n)).isEmpty());
    for (int n = 0; n <= int(IncidentKind::NearMiss); ++n)
        QVERIFY(!text(IncidentKind(n)).isEmpty());
    for (int n = 0; n <= int(RunResult::Void); ++n)
        QVERIFY(!text(RunResult(n)).isEmpty());
}

QTEST_GUILESS_MAIN(WordingTest)
#include "tst_wording.moc"
