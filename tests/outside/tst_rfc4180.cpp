// The examples of RFC 4180, section 2 (October 2005), as read in https://www.rfc-editor.org/rfc/rfc4180; in
// data/rfc4180_csv.json.
#include "core/documents/csv_reader.h"
#include "core/documents/writers.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

using namespace laneward;

class Rfc4180Test : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void examples_data();
    void examples();
    void writtenAsTheDocumentSays();
};

void Rfc4180Test::examples_data() {
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<QList<QStringList>>("records");
    QFile file(qEnvironmentVariable("LANEWARD_SOURCE") + "/tests/outside/data/rfc4180_csv.json");
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QJsonArray cases = QJsonDocument::fromJson(file.readAll()).object()["cases"].toArray();
    QCOMPARE(cases.size(), 7);
    for (const QJsonValue& value : cases) {
        const QJsonObject one = value.toObject();
        QList<QStringList> records;
        if (one.contains("header")) records += one["header"].toVariant().toStringList();
        for (const QJsonValue& record : one["records"].toArray())
            records += record.toVariant().toStringList();
        QTest::newRow(qPrintable(one["id"].toString())) << one["text"].toString().toUtf8() << records;
    }
}

void Rfc4180Test::examples() {
    QFETCH(QByteArray, text);
    QFETCH(QList<QStringList>, records);
    const Result<CsvTable> table = readCsv(text, "example.csv");
    QVERIFY(table);
    QList<QStringList> read;
    for (const CsvRecord& record : table->records)
        read += record.fields;
    QCOMPARE(read, records);
}

void Rfc4180Test::writtenAsTheDocumentSays() {
    // Section 2, rules 1, 5, 6 and 7: CRLF ends a record; CR, LF, comma or quote are quoted; a quote inside is doubled.
    QCOMPARE(csvRecord({{"aaa"}, {"b\r\nbb"}, {"ccc"}}), QByteArray("aaa,\"b\r\nbb\",ccc\r\n"));
    QCOMPARE(csvRecord({{"aaa"}, {"b\"bb"}, {"c,c"}}), QByteArray("aaa,\"b\"\"bb\",\"c,c\"\r\n"));
}

QTEST_GUILESS_MAIN(Rfc4180Test)
#include "tst_rfc4180.moc"
