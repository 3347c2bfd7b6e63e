// The film command on the demo centre: the same film as text, JSON, CSV and picture.
#include "core/documents/csv_reader.h"
#include "core/patterns/film.h"
#include "tests/support/command_line.h"

#include <QGuiApplication>
#include <QImage>
#include <QJsonArray>
#include <QRegularExpression>
#include <QTest>

using namespace laneward;
using namespace support;

class FilmCommandTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void json();
    void carryFromTheMachine();
    void csvIsTheMap();
    void text();
    void picture();
    void wrongUse_data();
    void wrongUse();

private:
    DemoFolder m_folder;
};

void FilmCommandTest::initTestCase() {
    const QByteArray demo = demoCentreFile();
    QVERIFY(!demo.isEmpty());
    m_folder.write("demo.laneward", demo);
}

void FilmCommandTest::json() {
    const Answer answer = m_folder.run({"film", "Wren 36", "--format", "json"});
    QCOMPARE(answer.status, 0);
    const QJsonObject json = answer.json();
    // By hand: 37 boards x 1 x 45, 23 x 4 x 45, 19 x 4 x 45, 37 x 45 out; 17 x 3 x 45, 21 x 3 x 45 back.
    const QJsonObject volumes = json["volumes"].toObject();
    QCOMPARE(volumes["out_ul"].toInt(), 37 * 45 + 23 * 180 + 19 * 180 + 37 * 45);
    QCOMPARE(volumes["back_ul"].toInt(), 17 * 135 + 21 * 135);
    QCOMPARE(volumes["lane_ul"].toInt(), volumes["out_ul"].toInt() + volumes["back_ul"].toInt());
    const QJsonObject map = json["map"].toObject();
    QCOMPARE(map["cell_um"].toInt(), 152'400);
    QCOMPARE(map["film_milliunits"].toArray().size(), 120);
    QCOMPARE(map["film_milliunits"].toArray()[0].toArray().size(), boards);
    QCOMPARE(map["laid_ul"].toInt(), volumes["lane_ul"].toInt());
    double sum = 0;
    for (const QJsonValue& row : map["film_milliunits"].toArray()) {
        for (const QJsonValue& cell : row.toArray())
            sum += cell.toDouble() / 1'000 / filmUnits(1, 0.5);
    }
    // Each of 39 x 120 figures is rounded to half a thousandth of a unit.
    QVERIFY(std::abs(sum - volumes["lane_ul"].toDouble()) < 39 * 120 * 0.0005 / filmUnits(1, 0.5));
    // The same by its id.
    QCOMPARE(m_folder.run({"film", "wren-36", "--format", "json"}).out, answer.out);
}

void FilmCommandTest::carryFromTheMachine() {
    const QJsonArray machines = [&] {
        m_folder.run({"export", m_folder.path("centre.json")});
        return QJsonDocument::fromJson(m_folder.read("centre.json")).object()["machines"].toArray();
    }();
    QVERIFY(!machines.isEmpty());
    for (const QJsonValue& value : machines) {
        const QJsonObject machine = value.toObject();
        const Answer answer = m_folder.run({"film", "Teal 34", "--machine", machine["name"].toString(), "--format", "json"});
        QCOMPARE(answer.status, 0);
        QCOMPARE(answer.json()["machine"], machine["name"]);
        QCOMPARE(answer.json()["carry_um"].toDouble(), machine["carry_length_um"].toDouble());
    }
    const Answer first = m_folder.run({"film", "Teal 34", "--lane", "1", "--format", "json"});
    QCOMPARE(first.json()["lane"].toInt(), 1);
    const QJsonObject map = first.json()["map"].toObject();
    QCOMPARE(map["brush_before_ul"].toInt(), 0);
    QVERIFY(std::abs(map["laid_ul"].toInt() + map["brush_after_ul"].toInt() -
                     first.json()["volumes"].toObject()["lane_ul"].toInt()) <= 1);
}

void FilmCommandTest::csvIsTheMap() {
    const Answer answer = m_folder.run({"film", "Wren 36", "--format", "csv"});
    QCOMPARE(answer.status, 0);
    const Answer written = m_folder.run({"film", "Wren 36", "--csv", m_folder.path("wren.csv")});
    QCOMPARE(written.status, 0);
    QVERIFY(written.out.isEmpty());
    const QByteArray bytes = m_folder.read("wren.csv");
    QCOMPARE(QString::fromUtf8(bytes), answer.out);
    const Result<CsvTable> table = readCsv(bytes, "wren.csv");
    QVERIFY(table);
    QCOMPARE(table->records.size(), size_t(121));
    const QJsonArray rows =
        m_folder.run({"film", "Wren 36", "--format", "json"}).json()["map"].toObject()["film_milliunits"].toArray();
    for (int cell = 0; cell < 120; ++cell) {
        const QStringList fields = table->records[size_t(cell) + 1].fields;
        QCOMPARE(fields.size(), 2 + boards);
        QCOMPARE(fields[0].toDouble(), cell * 0.5);
        for (int board = 1; board <= boards; ++board)
            QVERIFY(std::abs(fields[board + 1].toDouble() * 1'000 - rows[cell].toArray()[board - 1].toInt()) < 1e-6);
    }
}

void FilmCommandTest::text() {
    const Answer answer = m_folder.run({"film", "Wren 36"});
    QCOMPARE(answer.status, 0);
    QVERIFY(answer.out.contains("Wren 36"));
    QVERIFY(answer.out.contains(QRegularExpression("on board +37 +32 .* 8 +3\\n")));
    for (const QString& line : answer.out.split('\n'))
        QVERIFY2(line.size() <= 80, qPrintable(line));
}

void FilmCommandTest::picture() {
    const QString name = m_folder.path("wren.png");
    const Answer answer = m_folder.run({"film", "Wren 36", "--png", name});
    QCOMPARE(answer.status, 0);
    const QImage image(name);
    QVERIFY(!image.isNull());
    QSet<QRgb> colours;
    for (int y = 0; y < image.height(); y += 3) {
        for (int x = 0; x < image.width(); x += 3)
            colours.insert(image.pixel(x, y));
    }
    QVERIFY2(colours.size() > 40, qPrintable(QString::number(colours.size())));
    const QString kept = qEnvironmentVariable("LANEWARD_BINARY");
    if (!kept.isEmpty()) image.save(kept + "/film_wren.png");
}

void FilmCommandTest::wrongUse_data() {
    QTest::addColumn<QStringList>("arguments");
    QTest::addColumn<int>("status");
    QTest::newRow("no pattern") << QStringList{"film"} << 2;
    QTest::newRow("unknown pattern") << QStringList{"film", "Swift 99"} << 2;
    QTest::newRow("two patterns") << QStringList{"film", "Wren 36", "Teal 34"} << 2;
    QTest::newRow("unknown machine") << QStringList{"film", "Wren 36", "--machine", "Nobody"} << 2;
    QTest::newRow("lane 0") << QStringList{"film", "Wren 36", "--lane", "0"} << 2;
    QTest::newRow("lane x") << QStringList{"film", "Wren 36", "--lane", "x"} << 2;
    QTest::newRow("unknown format") << QStringList{"film", "Wren 36", "--format", "xml"} << 2;
    QTest::newRow("option of another command") << QStringList{"plan", "--png", "x.png"} << 2;
    QTest::newRow("no folder") << QStringList{"film", "Wren 36", "--csv", "/no/such/folder/x.csv"} << 3;
}

void FilmCommandTest::wrongUse() {
    QFETCH(QStringList, arguments);
    QFETCH(int, status);
    const Answer answer = m_folder.run(arguments);
    QCOMPARE(answer.status, status);
    QCOMPARE(answer.err.count('\n'), 1);
    QVERIFY(answer.out.isEmpty());
}

QTEST_MAIN(FilmCommandTest)
#include "tst_film_command.moc"
