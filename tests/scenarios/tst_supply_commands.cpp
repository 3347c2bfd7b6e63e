// The commands about stock on the demo centre: forecast, order, and what record does to the ledger.
#include "core/documents/csv_reader.h"
#include "tests/support/command_line.h"

#include <QGuiApplication>
#include <QJsonArray>
#include <QProcess>
#include <QTest>

using namespace laneward;
using namespace support;

namespace {

const QString today = "2026-11-12";

QString unitOfLine(const QJsonObject& line) {
    for (const char* unit : {"_ul", "_mm", "_pieces"}) {
        if (line.contains(QString("on_hand") + unit)) return unit;
    }
    return {};
}

}  // namespace

class SupplyCommandsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void forecastJson();
    void forecastTextAndCsv();
    void pastForecastsAreScored();
    void theForecastOfTodayIsKeptOnce();
    void dueSaysWhatIsDue();
    void ordersAddUp();
    void ordersAsPdf();
    void wrongUse_data();
    void wrongUse();
    void receiptsAndCountsChangeStock();
    void aRunTakesFromTheTanks();
    void aCountInTheWrongUnitIsAskedAbout();
    void badReceiptsAreRefused_data();
    void badReceiptsAreRefused();
    void theLedgerIsSound();

private:
    QJsonObject lineOf(const QString& supply) {
        for (const QJsonValue& line :
             m_folder.run({"forecast", "--format", "json", "--until", "2026-11-20"}).json()["supplies"].toArray()) {
            if (line["supply"].toString() == supply) return line.toObject();
        }
        return {};
    }
    Answer record(const QString& json, const QStringList& more = {}) {
        m_folder.write("record.json", json.toUtf8());
        return m_folder.run(QStringList{"record", m_folder.path("record.json")} + more);
    }

    QByteArray m_demo;
    DemoFolder m_folder;
};

void SupplyCommandsTest::initTestCase() {
    m_demo = demoCentreFile();
    QVERIFY(!m_demo.isEmpty());
    m_folder.write("demo.laneward", m_demo);
}

void SupplyCommandsTest::forecastJson() {
    const Answer answer = m_folder.run({"forecast", "--format", "json"});
    QCOMPARE(answer.status, 0);
    const QJsonArray supplies = answer.json()["supplies"].toArray();
    QCOMPARE(supplies.size(), 9);
    int ranges = 0;
    for (const QJsonValue& value : supplies) {
        const QJsonObject line = value.toObject();
        const QString unit = unitOfLine(line);
        QVERIFY2(!unit.isEmpty(), qPrintable(line["name"].toString()));
        QCOMPARE(line["on_hand" + unit].toDouble(),
                 line["sealed" + unit].toDouble() + line["open" + unit].toDouble() + line["in_tanks" + unit].toDouble());
        QVERIFY(line["on_hand" + unit].toDouble() >= 0);
        const QString early = line["run_out_early"].toString();
        const QString likely = line["run_out_likely"].toString();
        const QString late = line["run_out_late"].toString();
        if (!likely.isEmpty()) QVERIFY2(!early.isEmpty() && early <= likely, qPrintable(early + ' ' + likely));
        if (!late.isEmpty()) QVERIFY2(!likely.isEmpty() && likely <= late, qPrintable(likely + ' ' + late));
        ranges += !early.isEmpty();
    }
    QVERIFY(ranges >= 4);
    // What is planned is used: conditioner and cleaner by the week.
    for (const char* supply : {"amber", "reedwash", "sedge"}) {
        const QJsonObject line = lineOf(supply);
        QVERIFY2(line["a_week" + unitOfLine(line)].toDouble() > 0, supply);
    }
    QCOMPARE(m_folder.run({"forecast", "--format", "json"}).out, answer.out);
}

void SupplyCommandsTest::forecastTextAndCsv() {
    const QJsonArray supplies = m_folder.run({"forecast", "--format", "json"}).json()["supplies"].toArray();
    const Answer text = m_folder.run({"forecast"});
    const Answer csv = m_folder.run({"forecast", "--format", "csv"});
    QCOMPARE(text.status, 0);
    QCOMPARE(csv.out.count("\r\n"), supplies.size() + 1);
    for (const QJsonValue& line : supplies) {
        QVERIFY2(text.out.contains(line["name"].toString()), qPrintable(text.out));
        QVERIFY(csv.out.contains(line["name"].toString()));
    }
    for (const QString& line : text.out.split('\n'))
        QVERIFY2(line.size() <= 100, qPrintable(line));
}

void SupplyCommandsTest::pastForecastsAreScored() {
    const QJsonObject past = lineOf("amber")["past"].toObject();
    QVERIFY2(past["spans"].toInt() >= 8, qPrintable(QString::number(past["spans"].toInt())));
    QVERIFY(past["within_50"].toInt() <= past["within_90"].toInt() && past["within_90"].toInt() <= past["spans"].toInt());
    QVERIFY(past["pinball_ul"].toDouble() > 0 && past["last_month"]["spans"].toInt() > 0);
    QVERIFY(past["off"].isBool());
    QVERIFY(lineOf("blades")["past"].isNull());  // ranges of few pieces are not scored
    const QString text = m_folder.run({"forecast"}).out.simplified();
    QVERIFY2(text.contains(QString("Tideglass Amber: Of %1 past spans, %2 were within the middle range")
                               .arg(past["spans"].toInt())
                               .arg(past["within_50"].toInt())),
             qPrintable(text));
}

/// By the system's clock: a given one would keep a forecast of a day that is not today.
void SupplyCommandsTest::theForecastOfTodayIsKeptOnce() {
    const DemoFolder folder;
    const QString centre = folder.path("now.laneward");
    QCOMPARE(command({"--centre", centre, "demo"}).status, 0);
    const auto kept = [&] {
        if (command({"--centre", centre, "export", folder.path("now.json")}).status != 0) qFatal("not exported");
        return QJsonDocument::fromJson(folder.read("now.json")).object()["kept_forecasts"].toArray();
    };
    const QJsonArray before = kept();
    QVERIFY(before.size() > 60);
    QCOMPARE(folder.run({"forecast"}, "now.laneward").status, 0);
    QCOMPARE(kept(), before);
    QCOMPARE(command({"--centre", centre, "forecast", "--until", QDate::currentDate().addDays(20).toString(Qt::ISODate)}).status,
             0);
    QCOMPARE(kept(), before);  // too short to be kept
    const Answer first = command({"--centre", centre, "forecast", "--format", "json"});
    QCOMPARE(first.status, 0);
    const QJsonArray once = kept();
    QCOMPARE(once.size(), before.size() + 1);
    QVERIFY(once.last()["day"].toString() > before.last()["day"].toString());
    QCOMPARE(once.last()["supplies"].toArray().size(), 9);
    QCOMPARE(command({"--centre", centre, "forecast", "--due"}).err, QString());
    QCOMPARE(kept(), once);
    const Answer sound = command({"--centre", centre, "check"});
    QVERIFY2(sound.status == 0, qPrintable(sound.out));
}

void SupplyCommandsTest::dueSaysWhatIsDue() {
    bool due = false;
    for (const QJsonValue& order : m_folder.run({"order", "--format", "json"}).json()["orders"].toArray())
        due |= !order["order_by"].toString().isEmpty() && order["order_by"].toString() <= today;
    const Answer answer = m_folder.run({"forecast", "--due"});
    QCOMPARE(answer.status, due ? 1 : 0);
    QCOMPARE(answer.out.isEmpty(), !due);
    // Without stock of what is used every day something is due.
    QString zero = R"([{"id": "z1", "kind": "count", "person": "rowan", "happened_at": "2026-11-12T14:59:00Z", "lines": [)";
    m_folder.run({"export", m_folder.path("centre.json")});
    QStringList lines;
    const QJsonObject centre = QJsonDocument::fromJson(m_folder.read("centre.json")).object();
    QSet<QString> seen;
    for (const QJsonValue& movement : centre["movements"].toArray()) {
        for (const QJsonValue& entry : movement["entries"].toArray()) {
            const QString place = entry["place"].toString();
            const QString key = place + '/' + entry["lot"].toString() + '/' + entry["container"].toString();
            if (entry["supply"].toString() != "amber" || (place != "shelf" && place != "open") || seen.contains(key)) continue;
            seen.insert(key);
            lines += QString(R"({"supply": "amber", "place": "%1", "lot": "%2", "container": "%3", "amount_ul": 0})")
                         .arg(place, entry["lot"].toString(), entry["container"].toString());
        }
    }
    QVERIFY(!lines.isEmpty());
    const Answer counted = record(zero + lines.join(", ") + "]}]", {"--sure"});
    QVERIFY2(counted.status == 0, qPrintable(counted.err));
    const Answer now = m_folder.run({"forecast", "--due"});
    QCOMPARE(now.status, 1);
    QVERIFY2(now.out.contains("Tideglass Amber"), qPrintable(now.out));
    m_folder.write("demo.laneward", m_demo);
}

void SupplyCommandsTest::ordersAddUp() {
    const Answer answer = m_folder.run({"order", "--format", "json"});
    QCOMPARE(answer.status, 0);
    const QJsonArray orders = answer.json()["orders"].toArray();
    QVERIFY(!orders.isEmpty());
    for (const QJsonValue& order : orders) {
        qint64 goods = 0;
        for (const QJsonValue& line : order["lines"].toArray()) {
            QCOMPARE(line["total_minor"].toInteger(), line["each_minor"].toInteger() * line["packs"].toInteger());
            goods += line["total_minor"].toInteger();
        }
        QCOMPARE(order["goods_minor"].toInteger(), goods);
        QCOMPARE(order["total_minor"].toInteger(), goods + order["freight_minor"].toInteger());
        QCOMPARE(order["currency"].toString(), QString("GBP"));
        QVERIFY(order["arrives"].toString() >= today);
    }
    QVERIFY(answer.json()["lower_bound_minor"].toInteger() <= answer.json()["total_minor"].toInteger());
    const QString supplier = orders.first()["supplier"].toString();
    const Answer one = m_folder.run({"order", "--supplier", supplier, "--format", "json"});
    QCOMPARE(one.json()["orders"].toArray().size(), 1);
    QCOMPARE(one.json()["orders"].toArray().first()["total_minor"], orders.first()["total_minor"]);
    QVERIFY(m_folder.run({"order"}).out.contains(supplier));
}

void SupplyCommandsTest::ordersAsPdf() {
    const Answer answer = m_folder.run({"order", "--pdf", m_folder.path("orders.pdf")});
    QVERIFY2(answer.status == 0, qPrintable(answer.err));
    QVERIFY(m_folder.read("orders.pdf").startsWith("%PDF"));
    QProcess reader;
    reader.start("pdftotext", {"-layout", m_folder.path("orders.pdf"), "-"});
    QVERIFY(reader.waitForFinished());
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    const QJsonArray orders = m_folder.run({"order", "--format", "json"}).json()["orders"].toArray();
    QCOMPARE(text.count(QChar('\f')), orders.size());
    for (const QJsonValue& order : orders) {
        QVERIFY2(text.contains(order["supplier"].toString()), qPrintable(text));
        for (const QJsonValue& line : order["lines"].toArray())
            QVERIFY2(text.contains(line["article"].toString()), qPrintable(text));
    }
}

void SupplyCommandsTest::wrongUse_data() {
    QTest::addColumn<QStringList>("arguments");
    QTest::addColumn<QString>("says");
    QTest::newRow("supplier") << QStringList{"order", "--supplier", "Nobody"} << "Nobody";
    QTest::newRow("past") << QStringList{"forecast", "--until", "2026-11-01"} << "2026-11-01";
    QTest::newRow("far") << QStringList{"forecast", "--until", "2036-11-01"} << "2036-11-01";
    QTest::newRow("no date") << QStringList{"forecast", "--until", "soon"} << "soon";
    QTest::newRow("format") << QStringList{"order", "--format", "csv"} << "csv";
    QTest::newRow("argument") << QStringList{"forecast", "amber"} << "amber";
}

void SupplyCommandsTest::wrongUse() {
    QFETCH(QStringList, arguments);
    QFETCH(QString, says);
    const Answer answer = m_folder.run(arguments);
    QCOMPARE(answer.status, 2);
    QVERIFY2(answer.err.contains(says), qPrintable(answer.err));
    QCOMPARE(answer.err.count('\n'), 1);
    QVERIFY(answer.out.isEmpty());
}

void SupplyCommandsTest::receiptsAndCountsChangeStock() {
    const double before = lineOf("amber")["sealed_ul"].toDouble();
    const QString receipt =
        R"([{"id": "r1", "kind": "receipt", "person": "rowan", "happened_at": "2026-11-12T14:00:00Z",
             "lines": [{"supply": "amber", "lot": "NEW", "amount_ul": 5000000}]}])";
    QCOMPARE(record(receipt).status, 0);
    QCOMPARE(lineOf("amber")["sealed_ul"].toDouble(), before + 5e6);
    // The same file again has no further effect.
    QCOMPARE(record(receipt).status, 0);
    QCOMPARE(lineOf("amber")["sealed_ul"].toDouble(), before + 5e6);
    const Answer counted = record(R"([{"id": "c1", "kind": "count", "person": "rowan", "happened_at": "2026-11-12T14:30:00Z",
                                       "lines": [{"supply": "amber", "lot": "NEW", "amount_ul": 4000000}]}])");
    QVERIFY2(counted.status == 0, qPrintable(counted.err));
    QCOMPARE(lineOf("amber")["sealed_ul"].toDouble(), before + 4e6);
}

/// Ten lanes of a pattern: its volume ten times, times what Heron really takes, which is near 1.
void SupplyCommandsTest::aRunTakesFromTheTanks() {
    const QJsonObject volumes = m_folder.run({"film", "Wren 36", "--format", "json"}).json()["volumes"].toObject();
    const double before = lineOf("amber")["in_tanks_ul"].toDouble();
    QStringList lanes;
    for (int lane = 1; lane <= 10; ++lane) {
        lanes += QString(R"({"lane": %1, "begins": "2026-11-12T13:%2:00Z", "ends": "2026-11-12T13:%3:00Z"})")
                     .arg(lane)
                     .arg(lane * 2, 2, 10, QChar('0'))
                     .arg(lane * 2 + 1, 2, 10, QChar('0'));
    }
    const Answer answer = record(
        R"([{"id": "run1", "kind": "run", "job": "", "plan_version": 0, "corrects": null, "machine": "heron", "person": "nell",
             "begins": "2026-11-12T13:00:00Z", "ends": "2026-11-12T13:21:00Z", "treatment": "clean-and-condition",
             "pattern": "wren-36", "pattern_version": 1, "result": "unplanned", "note": "", "recorded_at": "2026-11-12T13:25:00Z",
             "used": {"conditioner_ul": [0, 0], "cleaner_ul": 0, "waste_ul": 0, "lane_runs": 10}, "lanes": [)" +
        lanes.join(", ") + "]}]");
    QVERIFY2(answer.status == 0, qPrintable(answer.err));
    const double taken = before - lineOf("amber")["in_tanks_ul"].toDouble();
    const double nominal = 10 * volumes["lane_ul"].toDouble();
    QVERIFY2(taken > 0.9 * nominal && taken < 1.25 * nominal, qPrintable(QString("%1 of %2").arg(taken).arg(nominal)));
}

void SupplyCommandsTest::aCountInTheWrongUnitIsAskedAbout() {
    const QString json = R"([{"id": "c2", "kind": "count", "person": "rowan", "happened_at": "2026-11-12T14:40:00Z",
                              "lines": [{"supply": "amber", "lot": "NEW", "amount_ul": 500000000}]}])";
    const Answer asked = record(json);
    QCOMPARE(asked.status, 4);
    QVERIFY2(asked.err.contains("500 L") && asked.err.contains("4 L"), qPrintable(asked.err));
    QCOMPARE(record(json, {"--sure"}).status, 0);
}

void SupplyCommandsTest::badReceiptsAreRefused_data() {
    QTest::addColumn<QString>("line");
    QTest::newRow("negative") << R"({"supply": "amber", "amount_ul": -5})";
    QTest::newRow("unknown") << R"({"supply": "honey", "amount_ul": 5})";
    QTest::newRow("unit") << R"({"supply": "amber", "pieces": 5})";
    QTest::newRow("huge") << R"({"supply": "amber", "amount_ul": 9000000000000000})";
}

void SupplyCommandsTest::badReceiptsAreRefused() {
    QFETCH(QString, line);
    const QJsonObject before = lineOf("amber");
    const Answer answer =
        record(R"([{"id": "bad", "kind": "receipt", "person": "rowan", "happened_at": "2026-11-12T14:50:00Z", "lines": [)" +
               line + "]}]");
    QVERIFY(answer.status == 3 || answer.status == 4);
    QCOMPARE(answer.err.count('\n'), 1);
    QCOMPARE(lineOf("amber"), before);
}

void SupplyCommandsTest::theLedgerIsSound() {
    const Answer answer = m_folder.run({"check"});
    QVERIFY2(answer.status == 0, qPrintable(answer.out));
}

QTEST_MAIN(SupplyCommandsTest)
#include "tst_supply_commands.moc"
