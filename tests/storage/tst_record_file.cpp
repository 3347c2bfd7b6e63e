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

}  // namespace

void TestRecordFile::recordsAreRead() {
    const QByteArray json =
        '[' + runJson() +
        R"(, {"id": "f1", "kind": "fill", "person": "ada", "machine": "m1", "happened_at": "2026-11-12T10:00:00Z", "conditioner_ul": )"
        R"([1000, 0], "cleaner_ul": 2, "waste_ul": 3, "lanes_left": 4})"
        R"(, {"id": "i1", "kind": "incident", "incident": "spill", "person": "ada", "happened_at": "2026-11-12T10:00:00Z", "note": "x"})"
        R"(, {"id": "h1", "kind": "hand_over", "person": "ada", "day": "2026-11-12", "happened_at": "2026-11-12T10:00:00Z", "note": "y"})" +
        ", " + tapeJson() + ", " + inspectionJson() + ']';
    const Result<std::vector<Record>> records = readRecords(json, "tonight.json");
    QVERIFY2(records, records ? "" : qPrintable(records.error().finding.subject));
    QCOMPARE(records->size(), size_t{6});
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
    TemporaryCentre centre;
    QVERIFY(centre.store().append(*records));
    QVERIFY(centre.store().append(*records));
    const Result<std::vector<Record>> planned = readRecords('[' + runJson(R"(, "job": "j1")") + ']', "x");
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
    for (const char* kind : {"service", "count", "receipt"})
        row(kind, R"([{"kind": ")" + QByteArray(kind) + R"("}])", "record.kind-not-kept", "t.json: [0].kind");
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
    const Result<std::vector<Record>> records = readRecords(json, "t.json");
    QCOMPARE(ruleOf(records), rule);
    QCOMPARE(records.error().finding.subject, subject);
    QCOMPARE(ruleOf(readRecords(QByteArray(20'000'001, ' '), "t.json")), QByteArray("json.too-large"));
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
    QJsonObject run = QJsonDocument::fromJson(runJson()).object();
    for (const QJsonValue& key : record["run"].toObject()["required"].toArray()) {
        QJsonObject without = run;
        without.remove(key.toString());
        QVERIFY2(!readRecords(QJsonDocument(QJsonArray{without}).toJson(), "t"), qPrintable(key.toString()));
    }
}

QTEST_GUILESS_MAIN(TestRecordFile)
#include "tst_record_file.moc"
