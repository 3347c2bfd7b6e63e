#include "core/base/limits.h"
#include "core/documents/csv_reader.h"
#include "core/documents/writers.h"

#include <QElapsedTimer>
#include <QStringEncoder>
#include <QTest>

#include <random>

using namespace laneward;

namespace {

QList<QStringList> fieldsOf(const CsvTable& table) {
    QList<QStringList> all;
    for (const CsvRecord& record : table.records)
        all += record.fields;
    return all;
}

QByteArray ruleOf(const QByteArray& bytes) {
    const Result<CsvTable> table = readCsv(bytes, "f.csv");
    return table ? QByteArray() : table.error().finding.rule;
}

QByteArray written(const QStringList& fields) {
    std::vector<CsvField> list;
    for (const QString& field : fields)
        list.push_back({field, false});
    return csvRecord(list);
}

}  // namespace

class CsvTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void separatorsAreToldApart_data();
    void separatorsAreToldApart();
    void encodings();
    void lineEndsAndBlankLines();
    void refusals_data();
    void refusals();
    void subjectNamesFileAndLine();
    void tooLargeIsRefusedAtOnce();
    void tooManyRowsAreRefused();
    void textThatLooksLikeAFormulaStaysText_data();
    void textThatLooksLikeAFormulaStaysText();
    void numbersStayNumbers();
    void quotingAsTheStandardSays();
    void randomTablesComeBackEqual();
    void malformedTextsNeverCrash();
};

void CsvTest::separatorsAreToldApart_data() {
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<char>("separator");
    QTest::newRow("comma") << QByteArray("a,b\n1,2\n") << ',';
    QTest::newRow("semicolon") << QByteArray("a;b\n1,5;2\n") << ';';
    QTest::newRow("tab") << QByteArray("a\tb\n1,5\t2;3\n") << '\t';
    QTest::newRow("quoted separators do not count") << QByteArray("\"a,b,c\";d\n1;2\n") << ';';
    QTest::newRow("one column") << QByteArray("a\n1\n") << ',';
}

void CsvTest::separatorsAreToldApart() {
    QFETCH(QByteArray, text);
    QFETCH(char, separator);
    const Result<CsvTable> table = readCsv(text, "f.csv");
    QVERIFY(table);
    QCOMPARE(table->separator, separator);
    QCOMPARE(table->records.size(), size_t(2));
}

void CsvTest::encodings() {
    const QString text = "Größe,łódź,αβγ\r\n1,2,3\r\n";
    const QList<QStringList> expected{{"Größe", "łódź", "αβγ"}, {"1", "2", "3"}};
    for (const auto encoding : {QStringConverter::Utf16LE, QStringConverter::Utf16BE}) {
        QStringEncoder encoder(encoding, QStringConverter::Flag::WriteBom);
        const QByteArray bytes = encoder.encode(text);
        const Result<CsvTable> table = readCsv(bytes, "f.csv");
        QVERIFY(table);
        QCOMPARE(fieldsOf(*table), expected);
    }
    for (const QByteArray& bytes : {text.toUtf8(), "\xef\xbb\xbf" + text.toUtf8()}) {
        const Result<CsvTable> table = readCsv(bytes, "f.csv");
        QVERIFY(table);
        QCOMPARE(fieldsOf(*table), expected);
    }
}

void CsvTest::lineEndsAndBlankLines() {
    for (const char* text : {"a,b\r\n\r\n1,2", "a,b\n\n1,2\n", "a,b\r\r1,2\r", "\r\na,b\n1,2\r\n\r\n"}) {
        const Result<CsvTable> table = readCsv(text, "f.csv");
        QVERIFY2(table, text);
        QCOMPARE(fieldsOf(*table), (QList<QStringList>{{"a", "b"}, {"1", "2"}}));
    }
    const Result<CsvTable> empty = readCsv({}, "f.csv");
    QVERIFY(empty);
    QVERIFY(empty->records.empty());
}

void CsvTest::refusals_data() {
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<QByteArray>("rule");
    QTest::newRow("unclosed") << QByteArray("a,b\n\"1,2\n3,4\n") << QByteArray("csv.unclosed-quote");
    QTest::newRow("after quote") << QByteArray("a,b\n\"1\"x,2\n") << QByteArray("csv.text-after-quote");
    QTest::newRow("too few") << QByteArray("a,b\n1\n") << QByteArray("csv.ragged");
    QTest::newRow("too many") << QByteArray("a,b\n1,2,3\n") << QByteArray("csv.ragged");
    QTest::newRow("trailing comma") << QByteArray("a,b\n1,2,\n") << QByteArray("csv.ragged");
    QTest::newRow("NUL") << QByteArray("a,b\n1,\0\n", 8) << QByteArray("csv.nul");
    QTest::newRow("Latin-1") << QByteArray("a,b\n\xfc,2\n") << QByteArray("csv.not-utf8");
    QTest::newRow("half UTF-16") << QByteArray("\xff\xfe\x41", 3) << QByteArray("csv.not-utf8");
}

void CsvTest::refusals() {
    QFETCH(QByteArray, text);
    QFETCH(QByteArray, rule);
    QCOMPARE(ruleOf(text), rule);
}

void CsvTest::subjectNamesFileAndLine() {
    const Result<CsvTable> table = readCsv("a,b\n\"x\ny\",2\n3\n", "club.csv");
    QVERIFY(!table);
    QCOMPARE(table.error().finding.subject, QString("club.csv:4"));
    QCOMPARE(table.error().kind, ErrorKind::Invalid);
    const Result<CsvTable> latin = readCsv("a,b\n1,2\n3,\xe9\n", "club.csv");
    QVERIFY(!latin);
    QCOMPARE(latin.error().finding.subject, QString("club.csv:3"));
}

void CsvTest::tooLargeIsRefusedAtOnce() {
    const QByteArray big(100'000'000, 'a');
    QCOMPARE(ruleOf(big), QByteArray("csv.too-large"));
    const QByteArray field(limits::importLineBytes + 1, 'a');
    QCOMPARE(ruleOf("a,b\n" + field + ",2\n"), QByteArray("csv.too-large"));
    const QByteArray quoted(19'000'000, 'a');
    QCOMPARE(ruleOf("a,b\n\"" + quoted), QByteArray("csv.unclosed-quote"));
}

void CsvTest::tooManyRowsAreRefused() {
    QByteArray rows;
    for (int n = 0; n <= limits::importRows; ++n)
        rows += "1\n";
    QCOMPARE(ruleOf(rows), QByteArray("csv.too-large"));
    rows.chop(2);
    QCOMPARE(ruleOf(rows), QByteArray());
}

void CsvTest::textThatLooksLikeAFormulaStaysText_data() {
    QTest::addColumn<QString>("text");
    for (const char* lead : {"=", "+", "-", "@", "\t", "\r", "'=", "''+", "'", "''"}) {
        QTest::addRow("%s1+1", lead) << QString::fromLatin1(lead) + "1+1";
        QTest::addRow("%s alone", lead) << QString::fromLatin1(lead);
    }
    QTest::newRow("command") << QString("=cmd|'/C calc'!A0");
    QTest::newRow("apostrophe in a name") << QString("'Til late");
}

void CsvTest::textThatLooksLikeAFormulaStaysText() {
    QFETCH(QString, text);
    const QByteArray line = written({text, "b"});
    QByteArray first = line;
    if (first.startsWith('"')) first.remove(0, 1);
    QVERIFY2(!QByteArray("=+-@\t\r").contains(first[0]), line.constData());
    const Result<CsvTable> table = readCsv(line, "f.csv");
    QVERIFY(table);
    QCOMPARE(table->records[0].fields, (QStringList{text, "b"}));
}

void CsvTest::numbersStayNumbers() {
    QCOMPARE(csvRecord({{"-5", true}, {"-5", false}, {"1e309", true}}), QByteArray("-5,'-5,1e309\r\n"));
    QCOMPARE(csvRecord({{QString(QChar(0)) + "x", false}}).left(1), QByteArray("'"));
}

void CsvTest::quotingAsTheStandardSays() {
    QCOMPARE(written({"a b", "c"}), QByteArray("a b,c\r\n"));
    QCOMPARE(written({"a,b", "c\"d", "e\nf", ""}), QByteArray("\"a,b\",\"c\"\"d\",\"e\nf\",\r\n"));
    QCOMPARE(written({"", "b"}), QByteArray(",b\r\n"));
    QCOMPARE(written({""}), QByteArray("\"\"\r\n"));
}

void CsvTest::randomTablesComeBackEqual() {
    std::mt19937_64 dice(20'261'112);
    const QStringList pieces{"a", "Wren 36", ",", ";", "\"", "\r\n", "\n", "\t",
                             "=", "-",       "'", "ü", "😀",  " ",    "@",  QString(QChar(0x202e))};
    for (int round = 0; round < 500; ++round) {
        const int width = 1 + int(dice() % 5);
        QList<QStringList> rows;
        QByteArray bytes;
        // A first record in plain words settles the separator, as the header of our own files does.
        QStringList names;
        for (int n = 0; n < width; ++n)
            names += QString("c%1").arg(n);
        rows += names;
        bytes += written(names);
        for (int row = int(dice() % 6); row > 0; --row) {
            QStringList fields;
            for (int n = 0; n < width; ++n) {
                QString field;
                for (int k = int(dice() % 5); k > 0; --k)
                    field += pieces[qsizetype(dice() % size_t(pieces.size()))];
                fields += field;
            }
            rows += fields;
            bytes += written(fields);
        }
        const Result<CsvTable> table = readCsv(bytes, "f.csv");
        QVERIFY2(table, bytes.constData());
        QCOMPARE(fieldsOf(*table), rows);
    }
}

void CsvTest::malformedTextsNeverCrash() {
    std::mt19937_64 dice(35);
    const QByteArray sound = "title,date,start\r\n\"Thursday, Fours\",2026-11-12,18:30\r\nÄ,31.02.,1.234,5\r\n";
    int refused = 0;
    for (int n = 0; n < 400; ++n) {
        QByteArray text = sound;
        for (int k = 1 + int(dice() % 4); k > 0; --k) {
            const qsizetype at = qsizetype(dice() % size_t(text.size()));
            switch (dice() % 4) {
                case 0:
                    text.truncate(at + 1);
                    break;
                case 1:
                    text[at] = char(dice() % 256);
                    break;
                case 2:
                    text.insert(at, QByteArray("\"\0\r\n;\t,\xff", 8)[qsizetype(dice() % 8)]);
                    break;
                default:
                    text.insert(at, text.mid(at / 2, 20));
                    break;
            }
        }
        const Result<CsvTable> table = readCsv(text, "f.csv");
        if (table) continue;
        ++refused;
        QVERIFY(table.error().finding.rule.startsWith("csv."));
        QVERIFY(table.error().finding.subject.startsWith("f.csv:"));
    }
    QVERIFY(refused > 200);
}

QTEST_GUILESS_MAIN(CsvTest)
#include "tst_csv.moc"
