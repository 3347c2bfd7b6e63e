// The centre file: exact, documented, and refused whole when anything in it is wrong.
#include "tests/support/temporary_centre.h"

#include "core/storage/centre_file.h"
#include "core/storage/database.h"
#include "core/storage/operations.h"

#include <QBuffer>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRandomGenerator>
#include <QSet>
#include <QTest>

#include <sys/resource.h>

using namespace laneward;
using namespace support;

namespace {

QByteArray ruleOf(const auto& result) { return result ? QByteArray() : result.error().finding.rule; }

CentreFile fullFile() { return {fullSeason(), fullHistory()}; }

QByteArray written(const CentreFile& file) {
    QBuffer out;
    out.open(QIODevice::WriteOnly);
    if (!writeCentreFile(out, file)) qFatal("not written");
    return out.data();
}

Result<CentreFile> read(QByteArray bytes) {
    QBuffer in(&bytes);
    in.open(QIODevice::ReadOnly);
    return readCentreFile(in, "club.json");
}

/// A device that takes only so much, as a full disk does.
class FullDisk : public QIODevice {
public:
    explicit FullDisk(qint64 room) : m_room(room) { open(QIODevice::WriteOnly); }

protected:
    qint64 readData(char*, qint64) override { return -1; }
    qint64 writeData(const char*, qint64 size) override {
        const qint64 taken = qMin(size, m_room);
        m_room -= taken;
        return taken;
    }

private:
    qint64 m_room;
};

/// The same bytes again and again, up to a size that no memory should have to hold.
class Endless : public QIODevice {
public:
    Endless(QByteArray head, QByteArray body, qint64 size) : m_head(std::move(head)), m_body(std::move(body)), m_size(size) {
        open(QIODevice::ReadOnly | QIODevice::Unbuffered);
    }
    bool isSequential() const override { return true; }
    qint64 given() const { return m_given; }

protected:
    qint64 readData(char* data, qint64 most) override {
        qint64 n = 0;
        for (; n < most && m_given < m_size; ++n, ++m_given)
            data[n] = m_given < m_head.size() ? m_head[m_given] : m_body[(m_given - m_head.size()) % m_body.size()];
        return n;
    }
    qint64 writeData(const char*, qint64) override { return -1; }

private:
    QByteArray m_head;
    QByteArray m_body;
    qint64 m_size;
    qint64 m_given = 0;
};

qint64 peakKilobytes() {
    struct rusage usage {};
    ::getrusage(RUSAGE_SELF, &usage);
    return usage.ru_maxrss;
}

using Spot = QList<QVariant>;  // keys and indexes from the root

/// All places of a document, containers included.
void spots(const QJsonValue& value, const Spot& at, std::vector<Spot>& all) {
    if (!at.isEmpty()) all.push_back(at);
    if (value.isObject())
        for (const QString& key : value.toObject().keys())
            spots(value.toObject()[key], at + Spot{key}, all);
    if (value.isArray())
        for (qsizetype i = 0; i < value.toArray().size(); ++i)
            spots(value.toArray()[i], at + Spot{int(i)}, all);
}

QJsonValue valueAt(const QJsonValue& root, const Spot& at) {
    QJsonValue value = root;
    for (const QVariant& step : at)
        value = step.typeId() == QMetaType::QString ? value.toObject()[step.toString()] : value.toArray()[step.toInt()];
    return value;
}

QJsonValue with(const QJsonValue& root, const Spot& at, const QJsonValue& instead) {
    if (at.isEmpty()) return instead;
    const QVariant step = at.front();
    if (step.typeId() == QMetaType::QString) {
        QJsonObject object = root.toObject();
        const QString key = step.toString();
        const QJsonValue inner = with(object[key], at.mid(1), instead);
        if (inner.isUndefined())
            object.remove(key);
        else
            object[key] = inner;
        return object;
    }
    QJsonArray array = root.toArray();
    array[step.toInt()] = with(array[step.toInt()], at.mid(1), instead);
    return array;
}

/// format and version first, as the file format asks.
QByteArray bytesOfDocument(QJsonObject root) {
    QByteArray head = "{";
    for (const char* key : {"format", "version"})
        if (root.contains(QLatin1StringView(key))) {
            const QJsonArray only{root.take(QLatin1StringView(key))};
            const QByteArray value = QJsonDocument(only).toJson(QJsonDocument::Compact);
            head += '"' + QByteArray(key) + "\":" + value.mid(1, value.size() - 2) + ',';
        }
    return head + QJsonDocument(root).toJson(QJsonDocument::Compact).mid(1);
}

}  // namespace

class TestCentreFile : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void comesBackExactly();
    void throughADatabaseItIsTheSameFile();
    void everyValueIsChecked();
    void everyKeyIsNeededAndNoOther();
    void brokenBytesAreRefused_data();
    void brokenBytesAreRefused();
    void cutAnywhereItIsRefused();
    void messagesNameTheRecord();
    void hugeFilesAreRefusedSoon_data();
    void hugeFilesAreRefusedSoon();
    void aFullDiskIsNoticed();
    void theSchemaKnowsEveryKey();

private:
    static QJsonObject schema(const char* name);
};

void TestCentreFile::comesBackExactly() {
    const CentreFile file = fullFile();
    const QByteArray bytes = written(file);
    const Result<CentreFile> back = read(bytes);
    QVERIFY2(back, back ? "" : qPrintable(back.error().finding.rule + ' ' + back.error().finding.subject.toUtf8()));
    QVERIFY(*back == file);
    QCOMPARE(written(*back), bytes);
    const Result<CentreFile> spaced = read(QJsonDocument::fromJson(bytes).toJson().replace("\"centre\"", "\"centre\" "));
    QCOMPARE(ruleOf(spaced), QByteArray("json.missing-key"));  // its keys are sorted: format does not come first
}

void TestCentreFile::throughADatabaseItIsTheSameFile() {
    TemporaryCentre first;
    const Result<CentreFile> out = exported(first.store());
    QVERIFY(out);
    const QByteArray bytes = written(*out);
    const Result<CentreFile> in = read(bytes);
    QVERIFY(in);
    TemporaryCentre second(false);
    QVERIFY(second.store().replaceAll(in->season, in->history, {}, fullSeasonNow));
    QCOMPARE(written(*exported(second.store())), bytes);
}

// Each place of a full file in turn gets values of two wrong kinds.
void TestCentreFile::everyValueIsChecked() {
    const QJsonValue root = QJsonDocument::fromJson(written(fullFile())).object();
    std::vector<Spot> all;
    spots(root, {}, all);
    const std::array<QJsonValue, 7> wrongs{true, 1.5, "\u0001!", 1e300, QJsonArray{QJsonObject{}}, QJsonObject{{"x", 1}}, "x"};
    size_t turn = 0;
    int refused = 0;
    for (const Spot& at : all) {
        const QJsonValue old = valueAt(root, at);
        for (int kind = 0; kind < 2; ++kind) {
            const QJsonValue wrong = wrongs[(turn++) % wrongs.size()];
            const bool sameKind = wrong.type() == old.type() && !wrong.isDouble() && !wrong.isArray() && !wrong.isObject();
            if (sameKind) continue;
            const bool wasText = (old.isString() || old.isNull()) && wrong.isString();  // perhaps a reference
            const Result<CentreFile> result = read(bytesOfDocument(with(root, at, wrong).toObject()));
            if (wasText && result) continue;
            QVERIFY2(!result, qPrintable(QString("%1 %2").arg(at.last().toString()).arg(int(wrong.type()))));
            QCOMPARE(result.error().kind, ErrorKind::Invalid);
            QVERIFY(result.error().finding.subject.startsWith("club.json"));
            ++refused;
        }
    }
    qInfo("%d broken variants refused", refused);
    QVERIFY(refused > 500);
}

void TestCentreFile::everyKeyIsNeededAndNoOther() {
    const QJsonValue root = QJsonDocument::fromJson(written(fullFile())).object();
    std::vector<Spot> all;
    spots(root, {}, all);
    int missing = 0;
    for (const Spot& at : all) {
        if (at.last().typeId() != QMetaType::QString) continue;
        const Result<CentreFile> result = read(bytesOfDocument(with(root, at, QJsonValue::Undefined).toObject()));
        QVERIFY2(!result, qPrintable(at.last().toString()));
        const bool isValue = at.size() > 1 && at[at.size() - 2] == QVariant("values");
        if (!isValue) QVERIFY(ruleOf(result) == "json.missing-key" || ruleOf(result) == "json.bad-value");
        ++missing;
        Spot beside = at;
        beside.last() = QString("unheard_of");
        QVERIFY(!read(bytesOfDocument(with(root, beside, 1).toObject())));
    }
    QVERIFY(missing > 200);
}

void TestCentreFile::brokenBytesAreRefused_data() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QByteArray>("rule");
    const QByteArray good = written(fullFile());
    const QByteArray unreadable = "json.unreadable";
    const auto row = [](const char* name, const QByteArray& bytes, const QByteArray& rule) {
        QTest::newRow(name) << bytes << rule;
    };
    row("empty", "", unreadable);
    row("space", " \n\t ", unreadable);
    row("list", "[]", unreadable);
    row("text", "hello", unreadable);
    row("mark", "\xef\xbb\xbf" + good, unreadable);
    row("UTF-16", QByteArray::fromHex("fffe7b007d00"), unreadable);
    row("Latin-1", QByteArray(good).replace("Thursday Fours", "Th\xfcrsday"), unreadable);
    row("NUL", QByteArray(good).replace("Quillmarsh", QByteArray(1, '\0')), "json.bad-value");
    row("escaped NUL", QByteArray(good).replace("Quillmarsh", "\\u0000"), "json.bad-value");
    row("half a pair", QByteArray(good).replace("Quillmarsh", "\\ud800"), "json.bad-value");
    row("two documents", good + good, unreadable);
    row("something after", good + "x", unreadable);
    row("trailing comma", QByteArray(good).replace("\n}\n", ",\n}\n"), unreadable);
    row("no comma", QByteArray(good).replace("4,\n\"centre\"", "4\n\"centre\""), unreadable);
    row("comments", QByteArray(good).replace("\"lanes\": 8", "\"lanes\": /* eight */ 8"), unreadable);
    row("single quotes", QByteArray(good).replace("\"lanes\": 8", "'lanes': 8"), unreadable);
    row("not a number", QByteArray(good).replace("\"lanes\": 8", "\"lanes\": NaN"), unreadable);
    row("leading zero", QByteArray(good).replace("\"lanes\": 8", "\"lanes\": 08"), unreadable);
    row("key twice", QByteArray(good).replace("\"lanes\": 8", "\"lanes\": 8, \"lanes\": 8"), "json.bad-value");
    row("other format", QByteArray(good).replace("laneward-centre", "something"), "json.bad-value");
    row("newer", QByteArray(good).replace("\"version\": 4", "\"version\": 5"), "centre-file.newer");
    row("much newer", QByteArray(good).replace("\"version\": 4", "\"version\": 99"), "centre-file.newer");
    row("version 0", QByteArray(good).replace("\"version\": 4", "\"version\": 0"), "json.bad-value");
    row("version text", QByteArray(good).replace("\"version\": 4", "\"version\": \"1\""), "json.bad-value");
    row("201 lanes", QByteArray(good).replace("[1,2,3]", "[1,2,201]"), "json.bad-value");
    row("lane 0", QByteArray(good).replace("[1,2,3]", "[0,2,3]"), "json.bad-value");
    row("lane twice", QByteArray(good).replace("[1,2,3]", "[1,2,2]"), "json.bad-value");
    row("31 February", QByteArray(good).replace("2026-12-24\"", "2026-02-31\""), "json.bad-value");
    row("year 0", QByteArray(good).replace("2026-12-24\"", "0000-02-01\""), "json.bad-value");
    row("no zone letter", QByteArray(good).replace("00Z\"", "00\""), "json.bad-value");
    row("deep", QByteArray(good).replace("\"people\": [", "\"people\": [" + QByteArray(3'000, '[')), unreadable);
    row("wrong brackets", QByteArray(good).replace("\"people\": [", "\"people\": [{]}"), unreadable);
}

void TestCentreFile::brokenBytesAreRefused() {
    QFETCH(QByteArray, bytes);
    QFETCH(QByteArray, rule);
    QCOMPARE(ruleOf(read(bytes)), rule);
}

void TestCentreFile::cutAnywhereItIsRefused() {
    const QByteArray good = written(fullFile());
    for (qsizetype length = 0; length < good.trimmed().size(); length += 7)
        QVERIFY2(!read(good.left(length)), qPrintable(QString::number(length)));
    QRandomGenerator random(7);
    for (int i = 0; i < 300; ++i) {  // any outcome but a crash
        QByteArray bytes = good;
        for (int n = 0; n < 3; ++n)
            bytes[random.bounded(int(bytes.size()))] = char(random.bounded(256));
        (void)read(bytes);
    }
}

void TestCentreFile::messagesNameTheRecord() {
    const QByteArray good = written(fullFile());
    const auto subject = [](const QByteArray& bytes) { return read(bytes).error().finding.subject; };
    QCOMPARE(subject(QByteArray(good).replace("[1,2,3]", "[1,2,201]")), QString("club.json: series[1].demands[0].lanes"));
    QCOMPARE(subject(QByteArray(good).replace("\"Ben\"", "7")), QString("club.json: people[1].name"));
    QCOMPARE(subject(QByteArray(good).replace("\"active\":false", "\"activ\":false")), QString("club.json: people[1].active"));
    QCOMPARE(subject(QByteArray(good).replace("\"active\":false", "\"active\":false,\"x\":1")),
             QString("club.json: people[1].x"));
}

void TestCentreFile::hugeFilesAreRefusedSoon_data() {
    QTest::addColumn<QByteArray>("head");
    QTest::addColumn<QByteArray>("body");
    const QByteArray begun = "{\"format\": \"laneward-centre\", \"version\": 4, \"people\": [";
    QTest::newRow("zeros") << QByteArray() << QByteArray(1, '\0');
    QTest::newRow("spaces") << QByteArray() << QByteArray(" ");
    QTest::newRow("open brackets") << QByteArray() << QByteArray("[");
    QTest::newRow("one text") << begun + '"' << QByteArray("x");
    QTest::newRow("one key") << QByteArray("{\"") << QByteArray("x");
    QTest::newRow("backslashes") << begun + '"' << QByteArray("\\");
    QTest::newRow("nested lists") << begun << QByteArray("[");
    QTest::newRow("nested objects") << begun << QByteArray("{\"a\":");
    QTest::newRow("numbers") << begun << QByteArray("0,");
    QTest::newRow("one long number") << begun << QByteArray("1");
    QTest::newRow("empty objects") << begun << QByteArray("{},");
    QTest::newRow("a list before its format") << QByteArray("{\"people\": [") << QByteArray("{},");
}

void TestCentreFile::hugeFilesAreRefusedSoon() {
    QFETCH(QByteArray, head);
    QFETCH(QByteArray, body);
    const qint64 before = peakKilobytes();
    Endless device(head, body, 100'000'000);
    const Result<CentreFile> result = readCentreFile(device, "huge.json");
    QVERIFY(!result);
    QCOMPARE(result.error().kind, ErrorKind::Invalid);
    QVERIFY2(peakKilobytes() - before < 60'000, qPrintable(QString::number(peakKilobytes() - before)));
    QVERIFY2(device.given() < 5'000'000, qPrintable(QString::number(device.given())));
}

void TestCentreFile::aFullDiskIsNoticed() {
    const qint64 size = written(fullFile()).size();
    for (qint64 room = 0; room < size; room += 501) {
        FullDisk disk(room);
        QCOMPARE(ruleOf(writeCentreFile(disk, fullFile())), QByteArray("file.cannot-write"));
    }
    FullDisk enough(size);
    QVERIFY(writeCentreFile(enough, fullFile()));
}

QJsonObject TestCentreFile::schema(const char* name) {
    const QByteArray bytes = bytesOf(qEnvironmentVariable("LANEWARD_SOURCE") + "/resources/schemas/" + name);
    return QJsonDocument::fromJson(bytes).object();
}

namespace {

/// Every object that is written has exactly the keys that the schema requires, all the way down.
void compare(const QJsonValue& value, QJsonObject node, const QJsonObject& root, const QString& at, QStringList& differences) {
    if (const QString ref = node["$ref"].toString(); !ref.isEmpty()) node = root["$defs"].toObject()[ref.mid(8)].toObject();
    if (const QJsonArray choices = node["anyOf"].toArray(); !choices.isEmpty()) {
        if (!value.isNull()) compare(value, choices[0].toObject(), root, at, differences);
        return;
    }
    if (const QJsonArray words = node["enum"].toArray(); !words.isEmpty() && !words.contains(value)) differences << at + " word";
    if (value.isArray())
        for (const QJsonValue& item : value.toArray())
            compare(item, node["items"].toObject(), root, at + "[]", differences);
    if (!value.isObject()) return;
    const QJsonObject properties = node["properties"].toObject();
    const bool choice = node["maxProperties"].toInt() == 1;
    for (const QString& key : value.toObject().keys()) {
        if (!properties.contains(key)) differences << at + '.' + key;
        compare(value.toObject()[key], properties[key].toObject(), root, at + '.' + key, differences);
    }
    for (const QJsonValue& key : node["required"].toArray())
        if (!value.toObject().contains(key.toString()) && !choice) differences << at + " lacks " + key.toString();
    if (!choice && node["required"].toArray().size() != properties.size()) differences << at + " has optional keys";
}

}  // namespace

void TestCentreFile::theSchemaKnowsEveryKey() {
    const QJsonObject root = schema("centre.schema.json");
    QStringList differences;
    compare(QJsonDocument::fromJson(written(fullFile())).object(), root, root, "file", differences);
    QCOMPARE(differences, QStringList());
}

QTEST_GUILESS_MAIN(TestCentreFile)
#include "tst_centre_file.moc"
