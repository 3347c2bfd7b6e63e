// Tape readings and inspections as CSV, in and out of a centre: all or nothing, and every bad cell by its name.
#include "core/storage/store.h"
#include "tests/support/command_line.h"

#include <QTest>

using namespace laneward;
using namespace support;

namespace {

QStringList boardNames() {
    QStringList names;
    for (int board = 1; board <= boards; ++board)
        names << QString("b%1").arg(board);
    return names;
}

/// A file of one sound row and, if given, a second one with some cells changed.
QByteArray fileWith(const QHash<QString, QString>& changed = {}) {
    QStringList names{"date", "time", "lane", "distance_ft", "pattern", "machine", "note"};
    names += boardNames();
    const auto row = [&](const QHash<QString, QString>& cells) {
        QStringList fields;
        for (const QString& name : names)
            fields << cells.value(name, name.startsWith('b') ? QString("12.5") : QString());
        return fields.join(';') + "\r\n";
    };
    QHash<QString, QString> sound{{"date", "2026-11-11"}, {"time", "21:05"},    {"lane", "7"},     {"distance_ft", "22"},
                                  {"pattern", "wren-36"}, {"machine", "heron"}, {"b20", "48.125"}, {"b39", ""}};
    QString text = names.join(';') + "\r\n" + row(sound);
    if (!changed.isEmpty()) {
        sound["lane"] = "8";
        for (auto cell = changed.begin(); cell != changed.end(); ++cell)
            sound[cell.key()] = cell.value();
        text += row(sound);
    }
    return text.toUtf8();
}

std::vector<TapeReading> tapesIn(const DemoFolder& folder) {
    Location location;
    location.path = folder.path("demo.laneward");
    const auto store = Store::open(location, Access::ReadOnly);
    return *(*store)->tapes({Instant{1'794'355'200}, Instant{1'794'528'000}});  // 11 and 12 November 2026
}

}  // namespace

class ReadingExchangeTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void readingsComeIn();
    void theSameFileComesInOnce();
    void mappingsReadForeignFiles();
    void badCellsAreNamed_data();
    void badCellsAreNamed();
    void badFilesAreNamed_data();
    void badFilesAreNamed();
    void correctionsTravelToo();
    void inspectionsComeIn();
    void badInspectionsAreNamed_data();
    void badInspectionsAreNamed();

private:
    Answer import(const DemoFolder& folder, const QByteArray& csv, const QStringList& more = {}) {
        folder.write("a.csv", csv);
        return folder.run(QStringList{"import", folder.path("a.csv"), "--kind", "readings"} + more);
    }
    Answer importInspections(const DemoFolder& folder, const QByteArray& csv) {
        folder.write("a.csv", csv);
        return folder.run({"import", folder.path("a.csv"), "--kind", "inspections"});
    }

    QByteArray m_centre;
};

void ReadingExchangeTest::initTestCase() {
    m_centre = demoCentreFile();
    QVERIFY(m_centre.size() > 100'000);
}

void ReadingExchangeTest::readingsComeIn() {
    const DemoFolder folder(m_centre);
    const size_t before = tapesIn(folder).size();
    const Answer dry = import(folder, fileWith(), {"--dry-run"});
    QCOMPARE(dry.err, QString());
    QVERIFY(dry.out.contains(": 1 new; nothing was written"));
    QCOMPARE(folder.read("demo.laneward"), m_centre);
    const Answer in = import(folder, fileWith());
    QCOMPARE(in.err, QString());
    QVERIFY(in.out.contains(": 1 new\n"));
    const std::vector<TapeReading> all = tapesIn(folder);
    QCOMPARE(all.size(), before + 1);
    const TapeReading& reading = all.back();
    QCOMPARE(reading.at.seconds, 1'794'431'100);  // 2026-11-11T21:05:00Z
    QCOMPARE(reading.lane, 7);
    QCOMPARE(reading.distance.value, feet(22).value);
    QCOMPARE(reading.machine.value, QString("heron"));
    QCOMPARE(*reading.milliUnits[0], std::int64_t(12'500));
    QCOMPARE(*reading.milliUnits[19], std::int64_t(48'125));
    QVERIFY(!reading.milliUnits[38]);
    QCOMPARE(folder.run({"check"}).status, 0);
}

void ReadingExchangeTest::theSameFileComesInOnce() {
    const DemoFolder folder(m_centre);
    QCOMPARE(import(folder, fileWith()).status, 0);
    const size_t count = tapesIn(folder).size();
    QVERIFY(import(folder, fileWith()).out.contains(": 0 new\n"));
    QCOMPARE(tapesIn(folder).size(), count);
    // The same reading with another film is no second reading: a reading is corrected, not overwritten.
    const Answer other = import(folder, fileWith().replace("48.125", "48.5"));
    QCOMPARE(other.status, 4);
    QVERIFY(other.err.contains("already stands for another record"));
}

void ReadingExchangeTest::mappingsReadForeignFiles() {
    const DemoFolder folder(m_centre);
    QStringList titles{"Tag", "Uhr", "Bahn", "Fuß"};
    QStringList cells{"11.11.2026", "21.05", "7", "22,5"};
    QStringList columns{R"("date": "Tag", "time": "Uhr", "lane": "Bahn", "distance_ft": "Fuß")"};
    for (int board = 1; board < boards; ++board) {
        titles << QString("Brett %1").arg(board);
        cells << "12,5";
        columns << QString(R"("b%1": "Brett %1")").arg(board);
    }
    const QByteArray csv = (titles.join(';') + "\n" + cells.join(';') + "\n").toUtf8();
    const QString map = QString(R"({"columns": {%1}, "defaults": {"pattern": "wren-36", "b39": ""}, "date": "dd.MM.yyyy",
        "time": "HH.mm", "decimal": "comma"})")
                            .arg(columns.join(", "));
    folder.write("map.json", map.toUtf8());
    const QStringList mapped{"--mapping", folder.path("map.json")};
    const Answer in = import(folder, csv, mapped);
    QCOMPARE(in.err, QString());
    QCOMPARE(*tapesIn(folder).back().milliUnits[0], std::int64_t(12'500));
    QCOMPARE(tapesIn(folder).back().distance.value, feet(45).value / 2);
    const Answer point = import(folder, QByteArray(csv).replace("7;22,5;12,5", "7;22,5;12.5"), mapped);
    QCOMPARE(point.status, 3);
    QVERIFY2(point.err.contains("a.csv:2, column 'Brett 1': '12.5'"), qPrintable(point.err));
    for (const char* bad : {R"({"decimal": "semicolon"})", R"({"decimal": 1})"}) {
        folder.write("map.json", bad);
        QCOMPARE(import(folder, csv, mapped).status, 3);
    }
}

void ReadingExchangeTest::badCellsAreNamed_data() {
    QTest::addColumn<QString>("column");
    QTest::addColumn<QString>("cell");
    QTest::addColumn<QString>("expected");
    const auto row = [](const char* name, const char* column, const char* cell, const char* expected) {
        QTest::newRow(name) << column << cell << expected;
    };
    row("decimal comma", "b7", "12,5", "decimal point");
    row("thousands", "b7", "1,250", "decimal point");
    row("text", "b7", "dry", "0 to 500");
    row("negative", "b7", "-0.1", "0 to 500");
    row("absurd", "b7", "500.1", "0 to 500");
    row("not a number", "b39", "nan", "0 to 500");
    row("infinite", "b39", "1e999", "0 to 500");
    row("unit in the cell", "b1", "12.5 u", "0 to 500");
    row("beyond the lane", "distance_ft", "60.1", "0 to 60");
    row("before the lane", "distance_ft", "-1", "0 to 60");
    row("no distance", "distance_ft", "", "0 to 60");
    row("no lane", "lane", "", "1 to 24");
    row("lane 0", "lane", "0", "1 to 24");
    row("lane 25", "lane", "25", "1 to 24");
    row("half a lane", "lane", "7.5", "1 to 24");
    row("no such day", "date", "2026-02-30", "yyyy-MM-dd");
    row("other clock", "time", "9pm", "HH:mm");
    row("no pattern", "pattern", "", "empty");
    row("unknown pattern", "pattern", "goose-99", "has no 'goose-99'");
    row("unknown machine", "machine", "goose", "has no 'goose'");
}

void ReadingExchangeTest::badCellsAreNamed() {
    QFETCH(QString, column);
    QFETCH(QString, cell);
    QFETCH(QString, expected);
    const DemoFolder folder(m_centre);
    const Answer answer = import(folder, fileWith({{column, cell}}));
    QCOMPARE(answer.status, 3);
    QCOMPARE(answer.err.count('\n'), 1);
    for (const QString& part : {QString("a.csv:3, column '%1'").arg(column), cell, expected})
        QVERIFY2(answer.err.contains(part), qPrintable(answer.err));
    QCOMPARE(folder.read("demo.laneward"), m_centre);
}

void ReadingExchangeTest::badFilesAreNamed_data() {
    QTest::addColumn<QByteArray>("csv");
    QTest::addColumn<QString>("said");
    const QByteArray good = fileWith();
    QTest::newRow("no board 17") << QByteArray(good).replace(";b17;", ";seventeen;") << "no column 'b17'";
    QTest::newRow("board 40") << QByteArray(good).replace(";b39", ";b39;b40").replace(";\r\n", ";;\r\n") << "'b40' is no board";
    QTest::newRow("board 0") << QByteArray(good).replace("note;", "b0;") << "'b0' is no board";
    QTest::newRow("no time") << QByteArray(good).replace("date;", "day;") << "no column 'date'";
    QHash<QString, QString> none;
    for (const QString& name : boardNames())
        none[name] = "";
    QTest::newRow("nothing measured") << fileWith(none) << "a.csv:3: no board has film";
    QTest::newRow("short row") << good + "2026-11-11;21:05;8\r\n"
                               << "a.csv:3";
    QTest::newRow("empty") << QByteArray() << "a.csv";
}

void ReadingExchangeTest::badFilesAreNamed() {
    QFETCH(QByteArray, csv);
    QFETCH(QString, said);
    const DemoFolder folder(m_centre);
    const Answer answer = import(folder, csv);
    QCOMPARE(answer.status, 3);
    QVERIFY2(answer.err.contains(said), qPrintable(answer.err));
    QCOMPARE(answer.err.count('\n'), 1);
    QCOMPARE(folder.read("demo.laneward"), m_centre);
}

void ReadingExchangeTest::correctionsTravelToo() {
    const DemoFolder folder(m_centre);
    const QByteArray boardsOf = "[" + QByteArray("1000, ").repeated(38) + "null]";
    const QByteArray none = "[" + QByteArray("null, ").repeated(38) + "null]";
    const auto record = [](const char* id, const QByteArray& film, const char* corrects) {
        return QByteArray(R"({"kind": "reading", "id": ")") + id +
               R"(", "happened_at": "2026-11-11T09:00:00Z", "person": "nell",)"
               R"( "pattern": "wren-36", "lane": 3, "distance_um": 3048000, "milli_units": )" +
               film + R"(, "corrects": )" + corrects + "}";
    };
    folder.write("r.json", "[" + record("z", boardsOf, "null") + "," + record("m", boardsOf, "\"z\"") + "," +
                               record("a", none, "\"m\"") + "]");
    const Answer recorded = folder.run({"record", folder.path("r.json")});
    QCOMPARE(recorded.err, QString());
    QCOMPARE(folder.run({"export", folder.path("out.csv"), "--kind", "readings"}).status, 0);
    const QByteArray csv = folder.read("out.csv");
    QVERIFY(csv.indexOf("\r\nz,") < csv.indexOf("\r\nm,") && csv.indexOf("\r\nm,") < csv.indexOf("\r\na,"));
    const Answer same = folder.run({"import", folder.path("out.csv"), "--kind", "readings"});
    QCOMPARE(same.err, QString());
    QVERIFY(same.out.contains(": 0 new\n"));
    // Into a centre that knows none of them.
    DemoFolder other(m_centre);
    const QByteArray fresh = QByteArray(csv)
                                 .replace("\r\nz,", "\r\nz2,")
                                 .replace("\r\nm,", "\r\nm2,")
                                 .replace("\r\na,", "\r\na2,")
                                 .replace(",z,", ",z2,")
                                 .replace(",m,", ",m2,");
    other.write("in.csv", fresh);
    const Answer in = other.run({"import", other.path("in.csv"), "--kind", "readings"});
    QCOMPARE(in.err, QString());
    QVERIFY(in.out.contains(": 3 new\n"));
}

void ReadingExchangeTest::inspectionsComeIn() {
    const DemoFolder folder(m_centre);
    const QByteArray csv =
        "at,lane,feature,distance_ft,departure_um,person\r\n2026-11-10T10:00:00+01:00,5,tilt,20,-310,rowan\r\n"
        "2026-11-10T10:00:00+01:00,5,crown,30.5,120,rowan\r\n2026-11-10T10:20:00+01:00,6,level,20,80,rowan\r\n";
    const Answer in = importInspections(folder, csv);
    QCOMPARE(in.err, QString());
    QVERIFY(in.out.contains(": 2 new\n"));
    Location location;
    location.path = folder.path("demo.laneward");
    const auto store = Store::open(location, Access::ReadOnly);
    const Instant at{1'794'301'200};  // 2026-11-10T09:00:00Z
    const std::vector<Inspection> found = *(*store)->inspections({at, at + Seconds{1}});
    QCOMPARE(found.size(), size_t(1));
    const std::vector<GeometryValue> expected{
        {GeometryFeature::Tilt, feet(20), Micrometres{-310}},
        {GeometryFeature::Crown, feet(61) - Micrometres{feet(61).value / 2}, Micrometres{120}}};
    QVERIFY(found[0].values == expected);
    QVERIFY(importInspections(folder, csv).out.contains(": 0 new\n"));
}

void ReadingExchangeTest::badInspectionsAreNamed_data() {
    QTest::addColumn<QByteArray>("row");
    QTest::addColumn<QString>("said");
    QTest::newRow("feature") << QByteArray("2026-11-10T10:00:00Z,5,lean,20,1") << "column 'feature': 'lean'";
    QTest::newRow("fraction") << QByteArray("2026-11-10T10:00:00Z,5,tilt,20,1.5") << "column 'departure_um': '1.5'";
    QTest::newRow("far off") << QByteArray("2026-11-10T10:00:00Z,5,tilt,20,50001") << "-50,000 to 50,000";
    QTest::newRow("beyond") << QByteArray("2026-11-10T10:00:00Z,5,tilt,61,1") << "column 'distance_ft': '61'";
    QTest::newRow("no offset") << QByteArray("2026-11-10T10:00:00,5,tilt,20,1") << "column 'at'";
    QTest::newRow("nothing") << QByteArray("2026-11-10T10:00:00Z,5,,,") << "column 'feature'";
}

void ReadingExchangeTest::badInspectionsAreNamed() {
    QFETCH(QByteArray, row);
    QFETCH(QString, said);
    const DemoFolder folder(m_centre);
    const Answer answer = importInspections(folder, "at,lane,feature,distance_ft,departure_um\r\n" + row + "\r\n");
    QCOMPARE(answer.status, 3);
    QVERIFY2(answer.err.contains("a.csv:2, " + said) || answer.err.contains(said), qPrintable(answer.err));
    QCOMPARE(folder.read("demo.laneward"), m_centre);
}

QTEST_MAIN(ReadingExchangeTest)
#include "tst_exchange_readings.moc"
