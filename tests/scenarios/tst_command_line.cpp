#include "tests/support/command_line.h"

#include <QJsonArray>
#include <QRegularExpression>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTest>

using namespace support;

namespace {

QByteArray runRecord(const QString& id, const QString& machine = "heron") {
    return QString(R"([{"id": "%1", "kind": "run", "machine": "%2", "person": "nell", "begins": "%3", "ends": "%4", "treatment":
        "clean-and-condition", "pattern": "wren-36", "lanes": [{"lane": 21, "begins": "%3", "ends": "%4"}], "used":
        {"conditioner_ul": [17000, 0], "cleaner_ul": 110000, "waste_ul": 100000, "lane_runs": 1}}])")
        .arg(id, machine, "2026-11-12T14:00:00Z", "2026-11-12T14:02:00Z")
        .toUtf8();
}

int jobCount(const Answer& answer) { return int(answer.json()["jobs"].toArray().size()); }

}  // namespace

class CommandLineTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void helpAndVersion();
    void wrongUsageIsTwo_data();
    void wrongUsageIsTwo();
    void withoutACommandTheWindowOpens();
    void demoMakesTheCentre();
    void demoRefusesAnExistingFile();
    void missingCentresAndFilesAreThree();
    void anOlderCentreIsBroughtUpToDate();
    void checkSaysSound();
    void eventsInThreeFormats();
    void planInThreeFormats();
    void plansTellCostsAndStaffHours();
    void strictPlansFailOnUnmetDemands();
    void sheetHasTonightsJobsInOrder();
    void confirmStoresTheDayOnce();
    void sheetOfAnotherDay();
    void recordAppendsOnceOrNothing();

private:
    QByteArray m_centre;
};

void CommandLineTest::initTestCase() {
    m_centre = demoCentreFile();
    QVERIFY(m_centre.size() > 100'000);
}

void CommandLineTest::helpAndVersion() {
    const Answer help = command({"--help"});
    QCOMPARE(help.status, 0);
    for (const char* name : {"demo", "check", "import", "export", "events", "plan", "sheet", "film", "forecast", "order",
                             "service", "record", "backup", "restore"}) {
        QVERIFY2(help.out.contains(QRegularExpression(QString("^  %1 ").arg(name), QRegularExpression::MultilineOption)), name);
        const Answer one = command({QString::fromLatin1(name), "--help"});
        QCOMPARE(one.status, 0);
        QVERIFY(one.out.contains(name));
    }
    QVERIFY(command({"--version"}).out.startsWith("laneward "));
}

void CommandLineTest::wrongUsageIsTwo_data() {
    QTest::addColumn<QStringList>("arguments");
    QTest::newRow("unknown command") << QStringList{"polish"};
    QTest::newRow("unknown option") << QStringList{"plan", "--fast"};
    QTest::newRow("option of another command") << QStringList{"plan", "--pdf", "x.pdf"};
    QTest::newRow("option without a command") << QStringList{"--strict"};
    QTest::newRow("bad date") << QStringList{"plan", "--from", "31.02.2026"};
    QTest::newRow("no such date") << QStringList{"sheet", "--date", "2026-02-30"};
    QTest::newRow("no days") << QStringList{"plan", "--days", "0"};
    QTest::newRow("too many days") << QStringList{"plan", "--days", "99999"};
    QTest::newRow("bad format") << QStringList{"plan", "--format", "xml"};
    QTest::newRow("unknown rows") << QStringList{"plan", "--kind", "people"};
    QTest::newRow("no paper of costs") << QStringList{"plan", "--kind", "costs", "--pdf", "x.pdf"};
    QTest::newRow("bad clock") << QStringList{"plan", "--now", "noon"};
    QTest::newRow("argument missing") << QStringList{"import"};
    QTest::newRow("argument too many") << QStringList{"plan", "tonight"};
    QTest::newRow("extension") << QStringList{"import", "events.xls"};
    QTest::newRow("kind") << QStringList{"import", "a.csv", "--kind", "orders"};
    QTest::newRow("password") << QStringList{"--centre", "postgresql://a:b@host/db", "check"};
}

void CommandLineTest::wrongUsageIsTwo() {
    QFETCH(QStringList, arguments);
    const DemoFolder folder(m_centre);
    const Answer answer =
        arguments.contains("--centre") || arguments.contains("--now")
            ? command(arguments +
                      (arguments.contains("--centre") ? QStringList() : QStringList{"--centre", folder.path("demo.laneward")}))
            : folder.run(arguments);
    QCOMPARE(answer.status, 2);
    QCOMPARE(answer.out, QString());
    QVERIFY(answer.err.startsWith("laneward: "));
    QCOMPARE(answer.err.count('\n'), 1);
}

void CommandLineTest::withoutACommandTheWindowOpens() {
    QCOMPARE(command({}).status, -1);
    laneward::Start start;
    QBuffer none;
    none.open(QIODevice::WriteOnly);
    QVERIFY(!laneward::runCommand({"laneward", "--centre", "a.laneward", "--now", "2026-11-12T16:43"}, start, {none, none}));
    QCOMPARE(start.centre, QString("a.laneward"));
    QVERIFY(start.centreGiven);
    QCOMPARE(start.now->time, QTime(16, 43));
    QVERIFY(!laneward::needsNoWindow({"laneward", "--centre", "a.laneward"}));
    QVERIFY(laneward::needsNoWindow({"laneward", "plan"}));
    QVERIFY(laneward::needsNoWindow({"laneward", "--help"}));
}

void CommandLineTest::demoMakesTheCentre() {
    const DemoFolder folder;
    const Answer made = folder.run({"demo"});
    QCOMPARE(made.err, QString());
    QCOMPARE(made.status, 0);
    QVERIFY(made.out.contains("Quillmarsh Bowl, 24 lanes"));
}

void CommandLineTest::demoRefusesAnExistingFile() {
    const DemoFolder folder(m_centre);
    const Answer answer = folder.run({"demo"});
    QCOMPARE(answer.status, 4);
    QVERIFY(answer.err.contains("demo.laneward"));
    QCOMPARE(folder.read("demo.laneward"), m_centre);
}

void CommandLineTest::anOlderCentreIsBroughtUpToDate() {
    const DemoFolder folder(m_centre);
    const QString before = folder.run({"sheet"}).out;
    {
        QSqlDatabase file = QSqlDatabase::addDatabase("QSQLITE", "older");
        file.setDatabaseName(folder.path("demo.laneward"));
        QVERIFY(file.open());
        QVERIFY(QSqlQuery(file).exec("ALTER TABLE machines DROP COLUMN weight_g"));
        QVERIFY(QSqlQuery(file).exec("PRAGMA user_version = 4"));
    }
    QSqlDatabase::removeDatabase("older");
    const Answer answer = folder.run({"sheet"});
    QCOMPARE(answer.err, QString());
    QCOMPARE(answer.status, 0);
    QVERIFY(before.contains("weighs") && !answer.out.contains("weighs"));  // which the older version did not keep
    QVERIFY(folder.files().contains("demo-schema-4.laneward"));
    QCOMPARE(folder.run({"check"}).status, 0);
}

void CommandLineTest::missingCentresAndFilesAreThree() {
    const DemoFolder folder(m_centre);
    for (const char* name : {"check", "plan", "sheet", "events"})
        QCOMPARE(folder.run({name}, "gone.laneward").status, 3);
    for (const char* name : {"gone.json", "gone.ics"})
        QCOMPARE(folder.run({"import", folder.path(name)}).status, 3);
    QCOMPARE(folder.run({"record", folder.path("gone.json")}).status, 3);
    QCOMPARE(folder.run({"sheet", "--pdf", folder.path("no/folder/x.pdf")}).status, 3);
    QCOMPARE(folder.run({"export", folder.path("no/folder/x.json")}).status, 3);
    QCOMPARE(folder.run({"backup", folder.path("no-folder")}).status, 3);
    QCOMPARE(folder.run({"record", QDir::tempPath()}).status, 3);
    QVERIFY(!folder.files().contains("gone.laneward"));
}

void CommandLineTest::checkSaysSound() {
    const DemoFolder folder(m_centre);
    const Answer sound = folder.run({"check"});
    QCOMPARE(sound.status, 0);
    QVERIFY(sound.out.contains("sound"));
    QCOMPARE(folder.run({"check", "--format", "json"}).json()["faults"].toArray().size(), 0);
    folder.write("bad.laneward", "not a database at all, but long enough to be looked at");
    QCOMPARE(folder.run({"check"}, "bad.laneward").status, 3);
}

void CommandLineTest::eventsInThreeFormats() {
    const DemoFolder folder(m_centre);
    const QStringList range{"events", "--from", "2026-11-12", "--days", "2", "--format"};
    const QJsonArray occurrences = folder.run(range + QStringList{"json"}).json()["occurrences"].toArray();
    QVERIFY(occurrences.size() >= 8);
    const QJsonObject first = occurrences[0].toObject();
    for (const char* key : {"series", "start", "end", "demands"})
        QVERIFY2(first.contains(key), key);
    QVERIFY(first["start"].toString().startsWith("2026-11-12T"));
    QVERIFY(folder.run(range + QStringList{"text"}).out.contains("Thursday Reed Cutters"));
    QVERIFY(folder.run(range + QStringList{"csv"}).out.count("\r\n") > occurrences.size());
}

void CommandLineTest::planInThreeFormats() {
    const DemoFolder folder(m_centre);
    const Answer json = folder.run({"plan", "--days", "3", "--format", "json"});
    QCOMPARE(json.status, 0);
    QCOMPARE(json.json()["days"].toArray().size(), 3);
    const QJsonObject day = json.json()["days"].toArray()[0].toObject();
    for (const char* key :
         {"unmet", "late_s", "treatments", "overtime_s", "tight_s", "outings", "changes", "lanes_crossed", "freshness_s"}) {
        QVERIFY2(day["objective"].toObject().contains(key), key);
    }
    QVERIFY(day["proof"] == "proven" || day["proof"] == "gap");
    int possible = 0;
    for (const QJsonValue& job : json.json()["jobs"].toArray()) {
        for (const QJsonValue& move : job["moves"].toArray()) {
            QCOMPARE(move["change"].isObject(), move["possible"].toBool());
            QVERIFY(move["by_s"].toInt() != 0 && !move["text"].toString().isEmpty());
            QVERIFY(move["possible"].toBool() || !move["reasons"].toArray().isEmpty());
            possible += move["possible"].toBool() ? 1 : 0;
        }
    }
    QVERIFY(possible > 0);
    QVERIFY(!folder.run({"plan", "--days", "8", "--format", "json"}).json()["jobs"][0].toObject().contains("moves"));
    QCOMPARE(folder.run({"plan", "--days", "3", "--format", "csv"}).out.count("\r\n"), jobCount(json) + 1);
    QVERIFY(folder.run({"plan"}).out.contains("lanes to treat"));
    QCOMPARE(folder.run({"plan", "--days", "3", "--format", "json"}).out, json.out);
}

/// The same in all formats: product and minutes of every event, hours of every day.
void CommandLineTest::plansTellCostsAndStaffHours() {
    const DemoFolder folder(m_centre);
    const QStringList week{"plan", "--days", "7"};
    const QJsonObject json = folder.run(week + QStringList{"--format", "json"}).json();
    const QJsonArray events = json["costs"]["events"].toArray();
    QVERIFY(events.size() >= 5);
    qint64 conditioner = json["costs"]["nobody"]["conditioner_ul"].toInteger();
    qint64 product = 0;
    for (const QJsonValue& event : events) {
        conditioner += event["conditioner_ul"].toInteger();
        product += event["product_minor"].toInteger();
        QCOMPARE(event["currency"].toString(), QString("GBP"));
        QVERIFY(event["time_s"].toInteger() > 0 && event["a_lane"]["time_s"].toInteger() > 0);
    }
    qint64 used = 0;
    for (const QJsonValue& job : json["jobs"].toArray())
        used += job["conditioner_ul"].isArray() ? job["conditioner_ul"][0].toInteger() + job["conditioner_ul"][1].toInteger()
                                                : job["conditioner_ul"].toInteger();
    QCOMPARE(conditioner, used);
    QVERIFY(product > 0);
    qint64 bound = 0;
    int days = 0;
    for (const QJsonValue& one : json["staff_hours"].toArray()) {
        for (const QJsonValue& day : one["days"].toArray()) {
            bound += day["bound_s"].toInteger();
            ++days;
        }
    }
    QCOMPARE(days, 7);
    QVERIFY(bound > 3'600);
    const Answer costs = folder.run(week + QStringList{"--kind", "costs", "--format", "csv"});
    QCOMPARE(costs.out.count("\r\n"), events.size() + 1);
    QVERIFY(folder.run(week + QStringList{"--kind", "costs"}).out.contains("What an hour of work costs is not known"));
    const Answer hours = folder.run(week + QStringList{"--kind", "staff-hours", "--format", "csv"});
    QCOMPARE(hours.out.count("\r\n"), 8);
    QVERIFY(folder.run(week + QStringList{"--kind", "staff-hours"}).out.contains("Overtime"));
    const Answer paper = folder.run(week + QStringList{"--kind", "staff-hours", "--pdf", folder.path("hours.pdf")});
    QCOMPARE(paper.status, 0);
    QVERIFY(folder.read("hours.pdf").startsWith("%PDF"));
    QCOMPARE(folder.run(week + QStringList{"--kind", "jobs", "--format", "csv"}).out,
             folder.run(week + QStringList{"--format", "csv"}).out);
    for (const char* kind : {"costs", "staff-hours"}) {
        for (const QString& line : folder.run(week + QStringList{"--kind", kind}).out.split('\n'))
            QVERIFY2(line.size() <= 110, qPrintable(line));
    }
}

void CommandLineTest::strictPlansFailOnUnmetDemands() {
    const DemoFolder folder(m_centre);
    QCOMPARE(folder.run({"plan", "--strict"}).status, 0);
    folder.write("late.csv",
                 "title,date,start,minutes,lanes,kind,demand,pattern\r\n"
                 "One,2026-11-13,12:00,60,1-12,other,fresh,avocet-39\r\nTwo,2026-11-13,13:12,60,1-12,other,fresh,bittern-38\r\n");
    const Answer imported = folder.run({"import", folder.path("late.csv"), "--kind", "series"});
    QCOMPARE(imported.err, QString());
    QCOMPARE(folder.run({"plan", "--from", "2026-11-13"}).status, 0);
    const Answer strict = folder.run({"plan", "--from", "2026-11-13", "--strict", "--format", "json"});
    QCOMPARE(strict.status, 1);
    QVERIFY(!strict.json()["unmet"].toArray().isEmpty());
}

void CommandLineTest::sheetHasTonightsJobsInOrder() {
    const DemoFolder folder(m_centre);
    const QJsonObject sheet = folder.run({"sheet", "--format", "json"}).json();
    QCOMPARE(sheet["date"].toString(), QString("2026-11-12"));
    QCOMPARE(sheet["plan_version"].toInt(), 0);
    const QJsonArray jobs = sheet["jobs"].toArray();
    QVERIFY(jobs.size() >= 4);
    for (qsizetype n = 1; n < jobs.size(); ++n)
        QVERIFY(jobs[n - 1].toObject()["start"].toString() <= jobs[n].toObject()["start"].toString());
    const QString text = folder.run({"sheet"}).out;
    qsizetype at = 0;
    for (const QJsonValue& step : sheet["steps"].toArray()) {
        if (step.toObject()["kind"] != "job") continue;
        const QString line = "start by " + step.toObject()["start_by"].toString().mid(11, 5);
        at = text.indexOf(line, at);
        QVERIFY2(at >= 0, qPrintable(line));
        at += line.size();
    }
    QCOMPARE(text.count("start by "), jobs.size());
    QCOMPARE(folder.run({"sheet", "--format", "csv"}).out.count("\r\n"), jobs.size() + 1);
}

void CommandLineTest::confirmStoresTheDayOnce() {
    const DemoFolder folder(m_centre);
    const Answer first = folder.run({"sheet", "--confirm", "--format", "json"});
    QCOMPARE(first.err, QString());
    QCOMPARE(first.json()["plan_version"].toInt(), 1);
    const Answer again = folder.run({"sheet", "--confirm", "--format", "json"});
    QCOMPARE(again.json()["jobs"], first.json()["jobs"]);
    for (const QJsonValue& job : first.json()["jobs"].toArray())
        QCOMPARE(job.toObject()["state"].toString(), QString("confirmed"));
    QCOMPARE(folder.run({"check"}).status, 0);
}

void CommandLineTest::sheetOfAnotherDay() {
    const DemoFolder folder(m_centre);
    const QJsonObject tomorrow = folder.run({"sheet", "--date", "2026-11-13", "--format", "json"}).json();
    QCOMPARE(tomorrow["date"].toString(), QString("2026-11-13"));
    QVERIFY(!tomorrow["jobs"].toArray().isEmpty());
    const QJsonObject past = folder.run({"sheet", "--date", "2026-11-05", "--format", "json"}).json();
    QVERIFY(!past["jobs"].toArray().isEmpty());
    for (const QJsonValue& job : past["jobs"].toArray())
        QVERIFY(job.toObject()["date"] == "2026-11-05");
}

void CommandLineTest::recordAppendsOnceOrNothing() {
    const DemoFolder folder(m_centre);
    const QString id = "0f8fad5b-d9cb-469f-a165-70867728950e";
    folder.write("run.json", runRecord(id));
    const Answer dry = folder.run({"record", folder.path("run.json"), "--dry-run"});
    QCOMPARE(dry.err, QString());
    QCOMPARE(dry.status, 0);
    QCOMPARE(folder.read("demo.laneward"), m_centre);
    QCOMPARE(folder.run({"record", folder.path("run.json")}).status, 0);
    // Sent again after an unclear end it changes nothing; under the same id something else is refused.
    QCOMPARE(folder.run({"record", folder.path("run.json")}).status, 0);
    folder.write("other.json", runRecord(id, "grebe"));
    QCOMPARE(folder.run({"record", folder.path("other.json")}).status, 4);
    folder.write("bad.json", "[{\"id\": \"x\", \"kind\": \"dance\"}]");
    const Answer bad = folder.run({"record", folder.path("bad.json")});
    QCOMPARE(bad.status, 3);
    QVERIFY(bad.err.contains("bad.json"));
    folder.write("later.json", "[{\"id\": \"x\", \"kind\": \"service\"}]");
    QCOMPARE(folder.run({"record", folder.path("later.json")}).status, 3);
    QCOMPARE(folder.run({"check"}).status, 0);
}

QTEST_MAIN(CommandLineTest)
#include "tst_command_line.moc"
