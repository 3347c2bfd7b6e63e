// The command service on the demo centre, what record takes of services and counters, and the duty on the job sheet.
#include "core/documents/wording.h"
#include "tests/support/command_line.h"

#include <QGuiApplication>
#include <QJsonArray>
#include <QProcess>
#include <QTest>

using namespace laneward;
using namespace support;

namespace {

const QString dutyDue = "grebe-squeegee-turn";

QString serviceOf(const QString& more) {
    return QString(R"([{"kind": "service", "id": "s1", "person": "tamsin", %1}])").arg(more);
}

QString meterOf(const QString& more) {
    return QString(R"([{"kind": "meter", "id": "m1", "person": "tamsin", "meter": "lanes", %1}])").arg(more);
}

}  // namespace

class ServiceCommandTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void dueDuties();
    void textAndCsvSayTheSame();
    void wasteTanksAreTold();
    void theListEndsWhereItIsAsked();
    void theHistoryAddsUp();
    void theSheetNamesTheDuty();
    void theWallPageIsOnePage();
    void aServiceResetsItsDuty();
    void metersAreFilledIn();
    void partsThatAreNotThereAreFlagged();
    void badRecordsAreRefused_data();
    void badRecordsAreRefused();
    void wrongUse_data();
    void wrongUse();
    void theCentreIsSound();

private:
    QJsonObject json(const QStringList& arguments) { return m_folder.run(arguments + QStringList{"--format", "json"}).json(); }
    QJsonObject dutyOf(const QString& id) {
        for (const QJsonValue& duty : json({"service", "--until", "2027-02-28"})["duties"].toArray())
            if (duty["duty"].toString() == id) return duty.toObject();
        return {};
    }
    Answer record(const QString& text, const QStringList& more = {}) {
        m_folder.write("record.json", text.toUtf8());
        return m_folder.run(QStringList{"record", m_folder.path("record.json")} + more);
    }

    DemoFolder m_folder;
};

void ServiceCommandTest::initTestCase() {
    const QByteArray demo = demoCentreFile();
    QVERIFY(!demo.isEmpty());
    m_folder.write("demo.laneward", demo);
}

void ServiceCommandTest::dueDuties() {
    const QJsonObject answer = json({"service"});
    const QJsonArray duties = answer["duties"].toArray();
    QVERIFY2(duties.size() > 10, qPrintable(QString::number(duties.size())));
    int over = 0;
    QString before;
    for (const QJsonValue& duty : duties) {
        const QString likely = duty["due_likely"].toString();
        QVERIFY(likely >= before);
        before = likely;
        QVERIFY(duty["due_early"].toString() <= likely);
        if (!duty["due_late"].isNull()) QVERIFY(likely <= duty["due_late"].toString());
        QVERIFY(!duty["never_done"].toBool());
        over += duty["left"].toInt() < 0;
    }
    QVERIFY(over >= 1);
    const QJsonObject tonight = dutyOf(dutyDue);
    QCOMPARE(tonight["due_likely"].toString(), QString("2026-11-12"));
    QCOMPARE(tonight["by"].toString(), QString("lanes"));
    QVERIFY(!answer["visits"].toArray().isEmpty());
    QVERIFY(answer["findings"].isArray());
}

void ServiceCommandTest::textAndCsvSayTheSame() {
    const QJsonArray duties = json({"service"})["duties"].toArray();
    const Answer text = m_folder.run({"service"});
    const Answer csv = m_folder.run({"service", "--format", "csv"});
    QCOMPARE(text.status, 0);
    QCOMPARE(csv.out.count("\r\n"), duties.size() + 1);
    const QString words = text.out.simplified();
    for (const QJsonValue& duty : duties)
        QVERIFY2(words.contains(duty["name"].toString()), qPrintable(duty["name"].toString()));
    QVERIFY2(words.startsWith("Overdue: Heron: Clean the filters."), qPrintable(words.left(200)));
    for (const QString& line : text.out.split('\n'))
        QVERIFY2(line.size() <= 80, qPrintable(line));
}

void ServiceCommandTest::wasteTanksAreTold() {
    const QJsonArray tanks = json({"service"})["waste"].toArray();
    QCOMPARE(tanks.size(), 2);
    for (const QJsonValue& tank : tanks) {
        QVERIFY(tank["level_ul"].toInteger() >= 0 && tank["capacity_ul"].toInteger() > 0);
        QVERIFY(tank["emptyings"].toInt() > 3);
        QVERIFY(tank["share_permille"].toInt() > 500 && tank["share_permille"].toInt() < 1'000);
        int before = 0;
        for (const QJsonValue& job : tank["overflow"].toArray()) {
            QVERIFY(!job["job"].toString().isEmpty());
            QVERIFY(job["permille"].toInt() >= before && job["permille"].toInt() <= 1'000);
            before = job["permille"].toInt();
        }
    }
    const QString words = m_folder.run({"service"}).out.simplified();
    QVERIFY2(words.contains("Waste tanks") && words.contains("of the cleaner comes back"), qPrintable(words));
    QVERIFY(words.contains("Waste: not down a drain; ask the local wastewater authority."));
}

void ServiceCommandTest::theListEndsWhereItIsAsked() {
    for (const QJsonValue& duty : json({"service", "--until", "2026-11-13"})["duties"].toArray())
        QVERIFY(duty["due_likely"].toString() <= "2026-11-13");
}

void ServiceCommandTest::theHistoryAddsUp() {
    const QJsonObject answer = json({"service", "--history"});
    const QJsonArray records = answer["records"].toArray();
    QVERIFY(records.size() > 300);
    int failures = 0;
    int minutes = 0;
    QSet<QString> corrected;
    QSet<QString> ids;
    for (const QJsonValue& record : records) {
        failures += record["result"].toString() == "failed";
        minutes += record["minutes"].toInt();
        ids.insert(record["id"].toString());
        if (!record["corrects"].isNull()) corrected.insert(record["corrects"].toString());
    }
    QCOMPARE(corrected.size(), 1);
    QVERIFY(!ids.intersects(corrected));  // what was corrected does not stand
    QCOMPARE(answer["totals"]["records"].toInt(), int(records.size()));
    QCOMPARE(answer["totals"]["failures"].toInt(), failures);
    QCOMPARE(answer["totals"]["minutes"].toInt(), minutes);
    QCOMPARE(m_folder.run({"service", "--history", "--format", "csv"}).out.count("\r\n"), records.size() + 1);
    QVERIFY(m_folder.run({"service", "--history"}).out.contains("had failed first"));
    const qsizetype early = json({"service", "--history", "--until", "2026-03-01"})["records"].toArray().size();
    QVERIFY(early > 0 && early < records.size());
}

void ServiceCommandTest::theSheetNamesTheDuty() {
    const QJsonObject sheet = json({"sheet"});
    const QJsonArray duties = sheet["duties"].toArray();
    QVERIFY(!duties.isEmpty());
    QCOMPARE(duties[0]["duty"].toString(), dutyDue);
    QCOMPARE(duties[0]["minutes"].toInt(), 15);
    QVERIFY(duties[0]["steps"].toArray().size() >= 2);
    QCOMPARE(duties[0]["cautions"][0]["rule"].toString(), QString("caution.moving-parts"));
    int steps = 0;
    for (const QJsonValue& step : sheet["steps"].toArray()) {
        if (step["kind"].toString() != "duty") continue;
        ++steps;
        QVERIFY2(step["text"].toString().contains("Turn the squeegee blades (15 min)"), qPrintable(step["text"].toString()));
        QVERIFY(!step["cautions"].toArray().isEmpty());
    }
    QCOMPARE(steps, 1);
    const QString text = m_folder.run({"sheet"}).out.simplified();
    QVERIFY(text.contains("Turn both blades to an unused edge"));
}

void ServiceCommandTest::theWallPageIsOnePage() {
    const QString path = m_folder.path("service.pdf");
    QCOMPARE(m_folder.run({"service", "--until", "2027-02-28", "--pdf", path}).status, 0);
    QProcess info;
    info.start("pdfinfo", {path});
    QVERIFY(info.waitForFinished());
    QVERIFY(info.readAllStandardOutput().contains("Pages:           1"));
    QProcess words;
    words.start("pdftotext", {"-layout", path, "-"});
    QVERIFY(words.waitForFinished());
    const QString text = QString::fromUtf8(words.readAllStandardOutput()).normalized(QString::NormalizationForm_KC).simplified();
    QVERIFY(text.contains("Clean the filters") && text.contains("Turn the squeegee blades"));
    QVERIFY(text.contains("more until"));  // of three months not all fits
    QVERIFY(text.contains("never bypass a guard"));
    QVERIFY(text.contains("machine's own instructions"));
}

void ServiceCommandTest::aServiceResetsItsDuty() {
    const QString right =
        serviceOf(R"("happened_at": "2026-11-12T14:00:00Z", "item": "heron-filter", "duty": "heron-filter-clean", "minutes": 9)");
    QCOMPARE(record(right, {"--dry-run"}).status, 0);
    QCOMPARE(dutyOf("heron-filter-clean")["left"].toInt(), -4);
    const Answer answer = record(right);
    QVERIFY2(answer.status == 0, qPrintable(answer.err));
    QCOMPARE(dutyOf("heron-filter-clean")["left"].toInt(), 14);
    // The same file again changes nothing, with other content it is refused.
    QCOMPARE(record(right).status, 0);
    QCOMPARE(record(QString(right).replace("\"minutes\": 9", "\"minutes\": 8")).status, 4);
}

void ServiceCommandTest::metersAreFilledIn() {
    QCOMPARE(record(meterOf(R"("happened_at": "2026-11-12T13:00:00Z", "machine": "heron", "shown": 99000)")).status, 0);
    const QString now = R"([{"kind": "service", "id": "s2", "happened_at": "2026-11-12T13:30:00Z", "person": "nell",
        "item": "heron-nozzles", "duty": "heron-nozzles-clean"}])";
    QCOMPARE(record(now).status, 0);
    for (const QJsonValue& one : json({"service", "--history"})["records"].toArray())
        if (one["id"].toString() == "s2") QCOMPARE(one["meters"]["lanes"].toInt(), 99000);
}

void ServiceCommandTest::partsThatAreNotThereAreFlagged() {
    const QString taken = R"([{"kind": "service", "id": "s3", "happened_at": "2026-11-12T14:10:00Z", "person": "tamsin",
        "item": "heron-squeegee", "duty": "heron-squeegee-replace", "result": "failed", "finding": "torn", "cost_minor": 1200,
        "parts": [{"supply": "blades", "pieces": 40}]}])";
    const Answer answer = record(taken);
    QVERIFY2(answer.status == 0, qPrintable(answer.err));
    QVERIFY2(answer.out.contains("Squeegee blade set: more was taken than the ledger has"), qPrintable(answer.out));
    const QString there = QString(taken).replace("\"s3\"", "\"s4\"").replace("blades", "brush").replace("40", "1");
    const Answer enough = record(there);
    QVERIFY2(enough.status == 0 && enough.out.count('\n') == 1, qPrintable(enough.out + enough.err));
}

void ServiceCommandTest::badRecordsAreRefused_data() {
    QTest::addColumn<QString>("records");
    QTest::addColumn<int>("status");
    QTest::addColumn<QString>("says");
    const QString at = R"("happened_at": "2026-11-12T14:20:00Z", )";
    const auto row = [](const char* name, const QString& records, const QString& says) {
        QTest::newRow(name) << QString(records).replace("\"s1\"", "\"bad\"").replace("\"m1\"", "\"bad\"") << 3 << says;
    };
    row("future", serviceOf(R"("happened_at": "2026-11-13T09:00:00Z", "item": "heron-pack", "duty": "heron-pack-inspect")"),
        "is still to come");
    row("item", serviceOf(at + R"("item": "heron-sail", "duty": "x")"), "there is no service item 'heron-sail'");
    row("duty", serviceOf(at + R"("item": "heron-pack", "duty": "heron-pack-sing")"), "has no duty 'heron-pack-sing'");
    row("says nothing", serviceOf(at + R"("item": "heron-pack")"), "say which duty was done");
    row("minutes", serviceOf(at + R"("item": "heron-pack", "duty": "heron-pack-inspect", "minutes": 5000)"), "not possible");
    row("supply", serviceOf(at + R"("item": "heron-pack", "note": "x", "parts": [{"supply": "gold", "pieces": 1}])"), "gold");
    row("unit", serviceOf(at + R"("item": "heron-pack", "note": "x", "parts": [{"supply": "blades", "amount_ul": 1}])"),
        "write pieces");
    row("nothing of a part", serviceOf(at + R"("item": "heron-pack", "note": "x", "parts": [{"supply": "blades", "pieces": 0}])"),
        "cannot be taken");
    row("parts", serviceOf(at + R"("item": "heron-pack", "note": "x", "parts": 4)"), "[0].parts");
    row("unknown key", serviceOf(at + R"("item": "heron-pack", "note": "x", "mood": 4)"), "[0].mood");
    row("backwards", meterOf(at + R"("machine": "heron", "shown": 10)"), "runs backwards, from 99,000 to 10");
    row("counter of the future", meterOf(R"("happened_at": "2026-11-13T09:00:00Z", "machine": "heron", "shown": 99900)"),
        "is still to come");
    row("counter of days", QString(meterOf(at + R"("machine": "heron", "shown": 3)")).replace("\"lanes\"", "\"days\""),
        "lanes, runs and minutes only");
    row("below nothing", meterOf(at + R"("machine": "heron", "shown": -3)"), "cannot show");
    row("machine", meterOf(at + R"("machine": "swan", "shown": 3)"), "");
}

void ServiceCommandTest::badRecordsAreRefused() {
    QFETCH(QString, records);
    QFETCH(int, status);
    QFETCH(QString, says);
    const QString before = m_folder.run({"service", "--history", "--format", "json"}).out;
    const Answer answer = record(records);
    QVERIFY2(answer.status == status, qPrintable(QString::number(answer.status) + answer.out + answer.err));
    QVERIFY2(answer.err.contains(says), qPrintable(answer.err));
    QCOMPARE(answer.err.count('\n'), 1);
    QCOMPARE(m_folder.run({"service", "--history", "--format", "json"}).out, before);
}

void ServiceCommandTest::wrongUse_data() {
    QTest::addColumn<QStringList>("arguments");
    QTest::addColumn<int>("status");
    QTest::newRow("argument") << QStringList{"service", "x"} << 2;
    QTest::newRow("format") << QStringList{"service", "--format", "xml"} << 2;
    QTest::newRow("yesterday") << QStringList{"service", "--until", "2026-11-11"} << 2;
    QTest::newRow("far") << QStringList{"service", "--until", "2029-11-11"} << 2;
    QTest::newRow("no date") << QStringList{"service", "--until", "soon"} << 2;
    QTest::newRow("history as a page") << QStringList{"service", "--history", "--pdf", "x.pdf"} << 2;
    QTest::newRow("no such folder") << QStringList{"service", "--pdf", "/nowhere/at/all.pdf"} << 3;
}

void ServiceCommandTest::wrongUse() {
    QFETCH(QStringList, arguments);
    QFETCH(int, status);
    const Answer answer = m_folder.run(arguments);
    QCOMPARE(answer.status, status);
    QCOMPARE(answer.err.count('\n'), 1);
}

void ServiceCommandTest::theCentreIsSound() {
    const Answer answer = m_folder.run({"check"});
    QVERIFY2(answer.status == 0, qPrintable(answer.out + answer.err));
}

QTEST_MAIN(ServiceCommandTest)
#include "tst_service_command.moc"
