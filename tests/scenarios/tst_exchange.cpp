// Files in and out of a centre, all or nothing.
#include "tests/support/command_line.h"

#include <QJsonArray>
#include <QTest>

using namespace support;

class ExchangeTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void jsonRoundTrip();
    void icsRoundTrip();
    void csvRoundTrip_data();
    void csvRoundTrip();
    void dryRunsChangeNothing();
    void brokenImportsChangeNothing_data();
    void brokenImportsChangeNothing();
    void mappingsReadForeignFiles();
    void jobsForPhones();
    void hostileNamesStayInTheFolder();
    void backupAndRestore();

private:
    QByteArray m_centre;
};

void ExchangeTest::initTestCase() {
    m_centre = demoCentreFile();
    QVERIFY(m_centre.size() > 100'000);
}

void ExchangeTest::jsonRoundTrip() {
    const DemoFolder folder(m_centre);
    const Answer out = folder.run({"export", folder.path("a.json")});
    QCOMPARE(out.err, QString());
    const Answer in = folder.run({"import", folder.path("a.json")}, "new.laneward");
    QCOMPARE(in.err, QString());
    QCOMPARE(in.status, 0);
    QCOMPARE(folder.run({"export", folder.path("b.json")}, "new.laneward").status, 0);
    QCOMPARE(folder.read("b.json"), folder.read("a.json"));
    QCOMPARE(folder.run({"sheet"}, "new.laneward").out, folder.run({"sheet"}).out);
}

void ExchangeTest::icsRoundTrip() {
    const DemoFolder folder(m_centre);
    QCOMPARE(folder.run({"export", folder.path("a.ics")}).status, 0);
    const Answer same = folder.run({"import", folder.path("a.ics")});
    QCOMPARE(same.err, QString());
    QVERIFY(same.out.contains(": 0 new or changed"));
}

void ExchangeTest::csvRoundTrip_data() {
    QTest::addColumn<QString>("kind");
    QTest::newRow("series") << "series";
    QTest::newRow("strokes") << "strokes";
    QTest::newRow("readings") << "readings";
    QTest::newRow("inspections") << "inspections";
}

void ExchangeTest::csvRoundTrip() {
    QFETCH(QString, kind);
    const DemoFolder folder(m_centre);
    const QString path = folder.path("a.csv");
    QCOMPARE(folder.run({"export", path, "--kind", kind}).status, 0);
    QVERIFY(folder.read("a.csv").count("\r\n") > 30);
    const Answer same = folder.run({"import", path, "--kind", kind});
    QCOMPARE(same.err, QString());
    QCOMPARE(same.status, 0);
    QCOMPARE(folder.run({"export", folder.path("b.csv"), "--kind", kind}).status, 0);
    QCOMPARE(folder.read("b.csv"), folder.read("a.csv"));
    if (kind == "strokes") QVERIFY(same.out.contains(": 0 new or changed"));
    if (kind == "readings" || kind == "inspections") QVERIFY(same.out.contains(": 0 new\n"));
}

void ExchangeTest::dryRunsChangeNothing() {
    const DemoFolder folder(m_centre);
    QCOMPARE(folder.run({"export", folder.path("a.json")}).status, 0);
    folder.write("one.csv", "title,date,start,lanes\r\nQuiet hour,2026-12-01,11:00,1-4\r\n");
    const QStringList before = folder.files();
    const Answer series = folder.run({"import", folder.path("one.csv"), "--kind", "series", "--dry-run"});
    QVERIFY(series.out.contains("1 new or changed; nothing was written"));
    QCOMPARE(folder.run({"import", folder.path("a.json"), "--dry-run"}, "new.laneward").status, 0);
    QCOMPARE(folder.files(), before);
    QCOMPARE(folder.read("demo.laneward"), m_centre);
}

void ExchangeTest::brokenImportsChangeNothing_data() {
    QTest::addColumn<QString>("name");
    QTest::addColumn<QByteArray>("content");
    QTest::addColumn<QString>("where");
    const QByteArray head = "title,date,start,minutes,lanes,demand,pattern\r\nGood,2026-12-01,11:00,60,1-4,fresh,wren-36\r\n";
    QTest::newRow("no such date") << "a.csv" << head + "Bad,2026-02-31,11:00,60,1-4,,\r\n"
                                  << "a.csv:3";
    QTest::newRow("no length") << "a.csv" << head + "Bad,2026-12-02,11:00,0,1-4,,\r\n"
                               << "a.csv:3";
    QTest::newRow("not a number") << "a.csv" << head + "Bad,2026-12-02,11:00,1e309,1-4,,\r\n"
                                  << "a.csv:3";
    QTest::newRow("lane unknown") << "a.csv" << head + "Bad,2026-12-02,11:00,60,23-25,,\r\n"
                                  << "a.csv";
    QTest::newRow("pattern unknown") << "a.csv" << head + "Bad,2026-12-02,11:00,60,1-4,fresh,goose-99\r\n"
                                     << "a.csv";
    QTest::newRow("demand unknown") << "a.csv" << head + "Bad,2026-12-02,11:00,60,1-4,shiny,\r\n"
                                    << "a.csv:3";
    QTest::newRow("ragged") << "a.csv" << head + "Bad,2026-12-02\r\n"
                            << "a.csv:3";
    QTest::newRow("column missing") << "a.csv" << QByteArray("title,start\r\nx,11:00\r\n") << "a.csv:1";
    QTest::newRow("empty csv") << "a.csv" << QByteArray() << "a.csv";
    QTest::newRow("hourly rule") << "a.csv" << QByteArray("title,date,start,lanes,rule\r\nx,2026-12-01,11:00,1,FREQ=HOURLY\r\n")
                                 << "a.csv";
    QTest::newRow("cut off ics") << "a.ics" << QByteArray("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nUID:x\r\n")
                                 << "a.ics";
    QTest::newRow("cut off json") << "a.json" << QByteArray("{\"format\": \"laneward-centre\"") << "a.json";
    QTest::newRow("huge csv") << "a.csv" << QByteArray(25'000'000, 'x') << "a.csv";
}

void ExchangeTest::brokenImportsChangeNothing() {
    QFETCH(QString, name);
    QFETCH(QByteArray, content);
    QFETCH(QString, where);
    const DemoFolder folder(m_centre);
    folder.write(name, content);
    QStringList call{"import", folder.path(name)};
    if (name.endsWith(".csv")) call += {"--kind", "series"};
    const Answer answer = folder.run(call);
    QCOMPARE(answer.status, 3);
    QVERIFY2(answer.err.contains(where), qPrintable(answer.err));
    QCOMPARE(answer.err.count('\n'), 1);
    QCOMPARE(folder.read("demo.laneward"), m_centre);
}

void ExchangeTest::mappingsReadForeignFiles() {
    const DemoFolder folder(m_centre);
    folder.write("club.csv", "Anlass;Datum;Beginn;Ende;Bahnen\nSkatrunde;04.12.2026;11.00;13.30;1-4\n");
    folder.write("map.json",
                 R"({"columns": {"title": "Anlass", "date": "Datum", "start": "Beginn", "end": "Ende", "lanes": "Bahnen"},
        "defaults": {"kind": "party", "demand": "as-it-is"}, "date": "dd.MM.yyyy", "time": "HH.mm"})");
    const Answer in = folder.run({"import", folder.path("club.csv"), "--kind", "series", "--mapping", folder.path("map.json")});
    QCOMPARE(in.err, QString());
    const QJsonArray events =
        folder.run({"events", "--from", "2026-12-04", "--days", "1", "--format", "json"}).json()["occurrences"].toArray();
    bool found = false;
    for (const QJsonValue& event : events) {
        if (event.toObject()["title"] != "Skatrunde") continue;
        found = true;
        QCOMPARE(event.toObject()["start"].toString(), QString("2026-12-04T11:00:00+00:00"));
        QCOMPARE(event.toObject()["end"].toString(), QString("2026-12-04T13:30:00+00:00"));
        QCOMPARE(event.toObject()["event_kind"].toString(), QString("party"));
    }
    QVERIFY(found);
    const Answer again =
        folder.run({"import", folder.path("club.csv"), "--kind", "series", "--mapping", folder.path("map.json")});
    QVERIFY(again.out.contains(": 0 new or changed"));
    folder.write("foreign.ics",
                 "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nBEGIN:VEVENT\r\nUID:e1\r\nSUMMARY:Chess\r\n"
                 "DTSTART:20261205T100000\r\nDTEND:20261205T110000\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n");
    QCOMPARE(folder.run({"import", folder.path("foreign.ics")}).status, 3);
    folder.write("ics.json", R"({"lanes": "21-24", "kind": "other", "demand": "pattern", "pattern": "wren-36"})");
    const Answer chess = folder.run({"import", folder.path("foreign.ics"), "--mapping", folder.path("ics.json")});
    QVERIFY2(chess.out.contains("1 new or changed"), qPrintable(chess.err));
    for (const char* bad : {"[]", "{\"lanes\": 3}", "{\"what\": \"x\"}", "{\"kind\": \"ball\"}"}) {
        folder.write("bad.json", bad);
        QCOMPARE(folder.run({"import", folder.path("foreign.ics"), "--mapping", folder.path("bad.json")}).status, 3);
        QCOMPARE(folder.run({"import", folder.path("club.csv"), "--kind", "series", "--mapping", folder.path("bad.json")}).status,
                 3);
    }
}

void ExchangeTest::jobsForPhones() {
    const DemoFolder folder(m_centre);
    const Answer answer = folder.run({"export", "--jobs", folder.path("jobs.ics"), "--days", "1"});
    QCOMPARE(answer.err, QString());
    QCOMPARE(folder.read("jobs.ics").count("BEGIN:VEVENT"),
             folder.run({"plan", "--format", "json"}).json()["jobs"].toArray().size());
    QCOMPARE(folder.run({"export", "--jobs", folder.path("jobs.txt")}).status, 2);
}

void ExchangeTest::hostileNamesStayInTheFolder() {
    const DemoFolder folder(m_centre);
    folder.write("names.csv",
                 "title,date,start,lanes,id\r\n../../evil,2026-12-01,11:00,1-4,../../id\r\n"
                 "\"<img src='file:///x'>\",2026-12-01,13:00,1-4,CON\r\n\"'=HYPERLINK(1)\",2026-12-01,15:00,1-4,c\r\n");
    QCOMPARE(folder.run({"import", folder.path("names.csv"), "--kind", "series"}).err, QString());
    QVERIFY(QDir().mkpath(folder.path("out")));
    for (const char* name : {"a.json", "a.ics", "a.csv"}) {
        QStringList call{"export", folder.path("out/") + name};
        if (QByteArray(name) == "a.csv") call += {"--kind", "series"};
        QCOMPARE(folder.run(call).err, QString());
    }
    QCOMPARE(folder.run({"sheet", "--date", "2026-12-01", "--pdf", folder.path("out/s.pdf")}).err, QString());
    QCOMPARE(QDir(folder.path("out")).entryList(QDir::Files), (QStringList{"a.csv", "a.ics", "a.json", "s.pdf"}));
    for (const char* outside : {"../evil", "../../evil", "../id", "../../id", "CON", "out/../../evil"})
        QVERIFY2(!QFile::exists(folder.path(outside)), outside);
    const QString sheet = folder.run({"sheet", "--date", "2026-12-01"}).out;
    QVERIFY(sheet.contains("../../evil"));
    QVERIFY(sheet.contains("<img src='file:///x'>"));
    QVERIFY(folder.read("out/a.csv").contains("'=HYPERLINK(1)"));
    QVERIFY(!folder.read("out/a.csv").contains(",=HYPERLINK(1)"));
}

void ExchangeTest::backupAndRestore() {
    const DemoFolder folder(m_centre);
    QVERIFY(QDir().mkpath(folder.path("copies")));
    const Answer backup = folder.run({"backup", folder.path("copies")});
    QCOMPARE(backup.err, QString());
    const QString copy = backup.out.trimmed();
    QVERIFY(QFile::exists(copy));
    const QString before = folder.run({"sheet"}).out;
    folder.write("one.csv", "title,date,start,lanes,demand,pattern\r\nQuiet hour,2026-11-12,17:00,9-12,fresh,teal-34\r\n");
    QCOMPARE(folder.run({"import", folder.path("one.csv"), "--kind", "series"}).status, 0);
    QVERIFY(folder.run({"sheet"}).out != before);
    const Answer restored = folder.run({"restore", copy});
    QCOMPARE(restored.err, QString());
    QCOMPARE(folder.run({"sheet"}).out, before);
    QCOMPARE(folder.run({"restore", folder.path("one.csv")}).status, 3);
}

QTEST_MAIN(ExchangeTest)
#include "tst_exchange.moc"
