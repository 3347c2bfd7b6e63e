// Operations for the record command: read whole, refused by name.
#include "core/storage/centre_file.h"
#include "tests/support/temporary_centre.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

using namespace laneward;
using namespace support;

class TestRecordFile : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void recordsAreRead();
    void badRecordsAreNamed_data();
    void badRecordsAreNamed();
    void theRecordSchemaKnowsEveryKey();
};

namespace {

QByteArray ruleOf(const auto& result) { return result ? QByteArray() : result.error().finding.rule; }

QJsonObject schema(const char* name) {
    const QByteArray bytes = bytesOf(qEnvironmentVariable("LANEWARD_SOURCE") + "/resources/schemas/" + name);
    return QJsonDocument::fromJson(bytes).object();
}

/// With the supplies of the full season.
Result<std::vector<Record>> read(const QByteArray& json, const QString& name) {
    return readRecords(json, name, fullSeason().supplies);
}

const char* const use = R"({"conditioner_ul": [8000, 0], "cleaner_ul": 100, "waste_ul": 90, "lane_runs": 1})";

QByteArray runJson(const QByteArray& more = {}) {
    return QByteArray(R"({"id": "r1", "kind": "run", "machine": "m1", "person": "ada", "begins": "2026-11-12T10:00:00Z", )"
                      R"("ends": "2026-11-12T10:02:00Z", "treatment": "clean-and-condition", "pattern": "house", "lanes": )"
                      R"([{"lane": 1, "begins": "2026-11-12T10:00:00Z", "ends": "2026-11-12T10:02:00Z"}], "used": )") +
           use + more + '}';
}

QByteArray tapeJson() {
    const QByteArray boards = "[5000" + QByteArray(", 1000").repeated(37) + ", null]";
    return R"({"id": "t1", "kind": "reading", "person": "ada", "happened_at": "2026-11-12T10:30:00Z", "pattern": "house", )"
           R"("lane": 3, "distance_um": 6705600, "milli_units": )" +
           QByteArray(boards).replace("[5000, ", "[5000,") + "}";
}

QByteArray inspectionJson() {
    return R"({"id": "g1", "kind": "inspection", "person": "ben", "happened_at": "2026-11-12T10:30:00Z", "lane": 3, )"
           R"("geometry": [{"feature": "tilt", "distance_um": 6096000, "departure_um": -300}]})";
}

QByteArray countJson() {
    return R"({"id": "c1", "kind": "count", "person": "ben", "happened_at": "2026-11-12T10:30:00Z", "lines": [)"
           R"({"supply": "amber", "container": "A1", "lot": "L7", "amount_ul": 9500000}, )"
           R"({"supply": "cloth", "place": "open", "amount_mm": 12000}, )"
           R"({"supply": "water", "place": "tank", "machine": "m1", "slot": 2, "amount_ul": 800}]})";
}

QByteArray receiptJson() {
    return R"({"id": "d1", "kind": "receipt", "person": "ben", "happened_at": "2026-11-12T10:30:00Z", "order": "ord1", "lines": [)"
           R"({"supply": "amber", "container": "A2", "lot": "L8", "amount_ul": 5000000}, {"supply": "cloth", "amount_mm": 200000}]})";
}

}  // namespace

void TestRecordFile::recordsAreRead() {
    const QByteArray json =
        '[' + runJson() +
        R"(, {"id": "f1", "kind": "fill", "person": "ada", "machine": "m1", "happened_at": "2026-11-12T10:00:00Z", "conditioner_ul": )"
        R"([1000, 0], "cleaner_ul": 2, "waste_ul": 3, "lanes_left": 4})"
        R"(, {"id": "i1", "kind": "incident", "incident": "spill", "person": "ada", "happened_at": "2026-11-12T10:00:00Z", "note": "x"})"
        R"(, {"id": "h1", "kind": "hand_over", "person": "ada", "day": "2026-11-12", "happened_at": "2026-11-12T10:00:00Z", "note": "y"})" +
        ", " + tapeJson() + ", " + inspectionJson() + ", " + countJson() + ", " + receiptJson() +
        R"(, {"id": "i2", "kind": "incident", "incident": "spill", "person": "ada", "happened_at": "2026-11-12T10:05:00Z", )"
        R"("note": "wiped up", "answers": "i1"}])";
    const Result<std::vector<Record>> records = read(json, "tonight.json");
    QVERIFY2(records, records ? "" : qPrintable(records.error().finding.subject));
    QCOMPARE(records->size(), size_t{9});
    QVERIFY(!std::get<Incident>((*records)[2]).answers);
    QCOMPARE(std::get<Incident>((*records)[8]).answers->value, QString("i1"));
    const RunLog run = std::get<RunLog>(records->front());
    QCOMPARE(run.result, RunResult::Unplanned);
    QCOMPARE(run.recordedAt.seconds, run.time.end.seconds);
    QCOMPARE(std::get<LevelReading>((*records)[1]).levels.lanesLeft, 4);
    const TapeReading tape = std::get<TapeReading>((*records)[4]);
    QVERIFY(tape.machine.isEmpty() && tape.laneOfRun == 0 && tape.patternVersion == 0);
    QCOMPARE(tape.milliUnits[0], std::optional<std::int64_t>(5'000));
    QCOMPARE(tape.milliUnits[38], std::optional<std::int64_t>());
    const GeometryValue tilt{GeometryFeature::Tilt, feet(20), Micrometres{-300}};
    QVERIFY((std::get<Inspection>((*records)[5]).values == std::vector{tilt}));
    const StockCount count = std::get<StockCount>((*records)[6]);
    QVERIFY((count.lines == std::vector<CountLine>{{{{"amber"}, {}, "A1", "L7"}, Amount{9'500'000}},
                                                   {{{"cloth"}, {Place::Kind::Open, {}, 0}, {}, {}}, Amount{12'000}},
                                                   {{waterId, {Place::Kind::Tank, {"m1"}, 2}, {}, {}}, Amount{800}}}));
    const Movement receipt = std::get<Movement>((*records)[7]);
    QCOMPARE(receipt.kind, MovementKind::Received);
    QCOMPARE(receipt.source, MovementSource::Order);
    QCOMPARE(receipt.sourceId, QString("ord1"));
    QCOMPARE(receipt.recordedAt.seconds, receipt.at.seconds);
    const Entry first{{{"amber"}, {}, "A2", "L8"}, Amount{5'000'000}};
    const Entry from{{{"amber"}, {Place::Kind::Supplier, {}, 0}, {}, {}}, Amount{-5'000'000}};
    QCOMPARE(receipt.entries.size(), size_t{4});
    QVERIFY(receipt.entries[0] == first && receipt.entries[1] == from);
    TemporaryCentre centre;
    QVERIFY(centre.store().append(*records));
    QVERIFY(centre.store().append(*records));
    QCOMPARE(centre.store().stock()->at(first.key).value, 5'000'000);
    QVERIFY(centre.store().check()->empty());
    const Result<std::vector<Record>> planned = read('[' + runJson(R"(, "job": "j1")") + ']', "x");
    QCOMPARE(std::get<RunLog>(planned->front()).result, RunResult::AsPlanned);
}

void TestRecordFile::badRecordsAreNamed_data() {
    QTest::addColumn<QByteArray>("json");
    QTest::addColumn<QByteArray>("rule");
    QTest::addColumn<QString>("subject");
    const auto row = [](const char* name, const QByteArray& json, const char* rule, const char* subject) {
        QTest::newRow(name) << json << QByteArray(rule) << QString(subject);
    };
    row("nothing", "", "json.unreadable", "t.json");
    row("object", "{}", "json.unreadable", "t.json");
    row("cut", "[{", "json.unreadable", "t.json");
    row("number", "[1]", "json.bad-value", "t.json: [0]");
    row("no kind", "[{}]", "json.missing-key", "t.json: [0].kind");
    row("no such kind", R"([{"kind": "walk"}])", "json.bad-value", "t.json: [0].kind");
    row("service", R"([{"kind": "service"}])", "json.missing-key", "t.json: [0].id");
    const auto count = [&](const char* name, const char* from, const char* to, const char* rule, const char* where) {
        row(name, '[' + countJson().replace(from, to) + ']', rule, where);
    };
    count("counted in millimetres", "amount_ul\": 9", "amount_mm\": 9", "record.wrong-unit", "t.json: [0].lines[0].amount_mm");
    count("counted in pieces", "amount_mm", "pieces", "record.wrong-unit", "t.json: [0].lines[1].pieces");
    count("not counted", ", \"amount_mm\": 12000", "", "json.missing-key", "t.json: [0].lines[1].amount_mm");
    count("no such supply", "\"cloth\"", "\"felt\"", "record.unknown-supply", "t.json: [0].lines[1].supply");
    count("no such place", "\"open\"", "\"attic\"", "json.bad-value", "t.json: [0].lines[1].place");
    count("half a microlitre", "9500000", "0.5", "json.bad-value", "t.json: [0].lines[0].amount_ul");
    count("no lines", "lines", "rows", "json.missing-key", "t.json: [0].lines");
    count("lines as text", "[", "\"\", \"rest\": [", "json.bad-value", "t.json: [0].lines");
    row("receipt of water", '[' + receiptJson().replace("amber", "water") + ']', "record.unknown-supply",
        "t.json: [0].lines[0].supply");
    row("receipt in the wrong unit", '[' + receiptJson().replace("amount_ul", "pieces") + ']', "record.wrong-unit",
        "t.json: [0].lines[0].pieces");
    row("receipt into a tank", '[' + receiptJson().replace("\"container\"", "\"machine\"") + ']', "json.unknown-key",
        "t.json: [0].lines[0].machine");
    row("both units", '[' + receiptJson().replace("\"amount_mm\"", "\"pieces\": 1, \"amount_mm\"") + ']', "record.wrong-unit",
        "t.json: [0].lines[1].pieces");
    row("line of nothing", R"([{"kind": "count", "lines": [7]}])", "json.bad-value", "t.json: [0].lines[0]");
    row("36 boards", '[' + tapeJson().replace("null", "1, 1") + ']', "json.bad-value", "t.json: [0].milli_units");
    row("film as text", '[' + tapeJson().replace("[5000,", "[\"5,0\",") + ']', "json.bad-value", "t.json: [0].milli_units[0]");
    row("half a thousandth", '[' + tapeJson().replace("[5000,", "[5000.5,") + ']', "json.bad-value",
        "t.json: [0].milli_units[0]");
    row("no distance", '[' + tapeJson().replace("\"distance_um\"", "\"distance\"") + ']', "json.missing-key",
        "t.json: [0].distance_um");
    row("no such feature", '[' + inspectionJson().replace("tilt", "lean") + ']', "json.bad-value",
        "t.json: [0].geometry[0].feature");
    row("fill without a line",
        R"([{"id": "f1", "kind": "fill", "person": "ada", "machine": "m1", "happened_at": )"
        R"("2026-11-12T10:00:00Z", "conditioner_ul": [1000, 0], "cleaner_ul": 2, "waste_ul": 3, "lanes_left": 4, )"
        R"("poured": {"conditioner_ul": [1, 0], "cleaner_ul": 1}}])",
        "json.missing-key", "t.json: [0].poured.to_line");
    row("second", '[' + runJson() + R"(, {"kind": "run"}])", "json.missing-key", "t.json: [1].id");
    row("unknown key", '[' + runJson(R"(, "speed": 1)") + ']', "json.unknown-key", "t.json: [0].speed");
    row("unknown result", '[' + runJson(R"(, "result": "fine")") + ']', "json.bad-value", "t.json: [0].result");
}

void TestRecordFile::badRecordsAreNamed() {
    QFETCH(QByteArray, json);
    QFETCH(QByteArray, rule);
    QFETCH(QString, subject);
    const Result<std::vector<Record>> records = read(json, "t.json");
    QCOMPARE(ruleOf(records), rule);
    QCOMPARE(records.error().finding.subject, subject);
    QCOMPARE(ruleOf(read(QByteArray(20'000'001, ' '), "t.json")), QByteArray("json.too-large"));
}

void TestRecordFile::theRecordSchemaKnowsEveryKey() {
    const QJsonObject record = schema("record.schema.json")["$defs"].toObject();
    const QJsonObject centre = schema("centre.schema.json")["$defs"].toObject();
    for (const auto& [name, like] : {std::pair{"run", "run"},
                                     {"fill", "reading"},
                                     {"incident", "incident"},
                                     {"hand_over", "hand_over"},
                                     {"tape_reading", "tape_reading"},
                                     {"inspection", "inspection"}}) {
        QJsonObject properties = record[name].toObject()["properties"].toObject();
        QVERIFY(properties.contains("kind"));
        properties.remove("kind");
        QCOMPARE(properties.keys(), centre[like].toObject()["properties"].toObject().keys());
        // What the schema lets out may be left out, and nothing else.
        const QJsonArray required = record[name].toObject()["required"].toArray();
        QVERIFY(required.contains("id") && required.contains("kind") && required.contains("person"));
    }
    for (const char* name : {"count", "receipt"}) {
        const QJsonObject sample = QJsonDocument::fromJson(QByteArray(name) == "count" ? countJson() : receiptJson()).object();
        const QJsonObject properties = record[name].toObject()["properties"].toObject();
        for (const QString& key : sample.keys())
            QVERIFY2(properties.contains(key), qPrintable(key));
        for (const QJsonValue& key : record[name].toObject()["required"].toArray()) {
            QJsonObject without = sample;
            without.remove(key.toString());
            QVERIFY2(!read(QJsonDocument(QJsonArray{without}).toJson(), "t"), qPrintable(key.toString()));
        }
    }
    QJsonObject run = QJsonDocument::fromJson(runJson()).object();
    for (const QJsonValue& key : record["run"].toObject()["required"].toArray()) {
        QJsonObject without = run;
        without.remove(key.toString());
        QVERIFY2(!read(QJsonDocument(QJsonArray{without}).toJson(), "t"), qPrintable(key.toString()));
    }
}

QTEST_GUILESS_MAIN(TestRecordFile)
#include "tst_record_file.moc"
