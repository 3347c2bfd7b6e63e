// Conversions against the cited tables in data/units.csv: 16 CFR 500.19 and NIST publications, each row with its source.
#include "core/base/quantities.h"
#include "core/documents/csv_reader.h"
#include "core/documents/wording.h"

#include <QFile>
#include <QTest>

using namespace laneward;

namespace {

QString numberOf(const QString& text) { return text.section(' ', 0, 0); }

Speech speech(UnitSystem units) { return {QLocale::c(), Zone(), units}; }

}  // namespace

class ConversionsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void aFootIsExact();
    void amountsInFluidOuncesAndGallons_data();
    void amountsInFluidOuncesAndGallons();
    void lengthsInFeetAndMetres();

private:
    double factor(const QString& from, const QString& to) const;
    CsvTable m_units;
};

void ConversionsTest::initTestCase() {
    QFile file(qEnvironmentVariable("LANEWARD_SOURCE") + "/tests/outside/data/units.csv");
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    const Result<CsvTable> table = readCsv(bytes, "units.csv");
    QVERIFY2(table, table ? "" : table.error().finding.rule.constData());
    m_units = *table;
}

double ConversionsTest::factor(const QString& from, const QString& to) const {
    for (const CsvRecord& record : m_units.records) {
        if (record.fields[0] == from && record.fields[1] == to) return record.fields[2].toDouble();
    }
    return 0;
}

void ConversionsTest::aFootIsExact() {
    QCOMPARE(factor("foot", "m"), 0.3048);
    QCOMPARE(feet(1).value, std::int64_t(factor("foot", "m") * 1'000'000));
    QCOMPARE(feet(60).value, 18'288'000);
}

void ConversionsTest::amountsInFluidOuncesAndGallons_data() {
    QTest::addColumn<qint64>("microlitres");
    for (qint64 ul : {5'000, 29'574, 302'000, 1'000'000, 3'500'000, 3'785'412, 7'570'824, 9'000'000})
        QTest::addRow("%lld uL", ul) << ul;
}

void ConversionsTest::amountsInFluidOuncesAndGallons() {
    QFETCH(qint64, microlitres);
    const QString text = amountText(Microlitres{microlitres}, speech(UnitSystem::UsCustomary));
    const bool gallons = text.endsWith(" gal");
    QVERIFY(gallons || text.endsWith(" fl oz"));
    const double base = gallons ? factor("US gallon", "L") * 1e6 : factor("US fluid ounce", "mL") * 1e3;
    QVERIFY(base > 0);
    // What is printed is the exact amount rounded to the digits shown.
    const double half = gallons ? 0.005 : 0.05;
    QVERIFY(std::abs(numberOf(text).toDouble() - double(microlitres) / base) <= half + 1e-9);
    QCOMPARE(factor("US gallon", "L"), factor("US gallon", "cubic inch") * factor("cubic inch", "mL") / 1000);
}

void ConversionsTest::lengthsInFeetAndMetres() {
    for (int ft : {0, 8, 38, 40, 45, 60}) {
        QCOMPARE(lengthText(feet(ft), speech(UnitSystem::UsCustomary)), QString("%1 ft").arg(ft));
        const double metres = numberOf(lengthText(feet(ft), speech(UnitSystem::Metric))).toDouble();
        QVERIFY(std::abs(metres - ft * factor("foot", "m")) <= 0.05 + 1e-9);
    }
}

QTEST_GUILESS_MAIN(ConversionsTest)
#include "tst_conversions.moc"
