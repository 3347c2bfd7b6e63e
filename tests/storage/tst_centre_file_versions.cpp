// Centre files of earlier versions: kept as they were written, read as long as there is this program.
#include "tests/support/temporary_centre.h"

#include "core/storage/centre_file.h"

#include <QBuffer>
#include <QTest>

using namespace laneward;
using namespace support;

namespace {

QByteArray kept(const char* name) {
    return bytesOf(qEnvironmentVariable("LANEWARD_SOURCE") + "/tests/storage/kept/" + QLatin1StringView(name));
}

Result<CentreFile> read(QByteArray bytes) {
    QBuffer in(&bytes);
    in.open(QIODevice::ReadOnly);
    return readCentreFile(in, "club.json");
}

/// The full season as version 3 knew it.
CentreFile knownToTheThird() {
    CentreFile file{fullSeason(), fullHistory()};
    file.season.centre.machines[0].weight.reset();
    return file;
}

/// As version 2 knew it.
CentreFile knownToTheSecond() {
    CentreFile file = knownToTheThird();
    file.season.centre.facts.settings.currency = "EUR";
    std::erase_if(file.history.incidents, [](const Incident& incident) { return incident.answers.has_value(); });
    file.season.supplies.clear();
    file.season.suppliers.clear();
    file.season.offers.clear();
    file.season.orders.clear();
    file.history.movements.clear();
    file.history.counts.clear();
    file.season.items.clear();
    file.history.services.clear();
    file.history.counters.clear();
    file.history.packReadings.clear();
    for (LevelReading& reading : file.history.readings)
        reading.emptied.reset();
    file.history.attachments.clear();
    file.history.forecasts.clear();
    return file;
}

/// As version 1 knew it.
CentreFile knownToTheFirst() {
    CentreFile file = knownToTheSecond();
    file.season.centre.facts.readingLimits = {};
    file.season.centre.machines[0].carryLength = {};
    for (Pattern& pattern : file.season.patterns)
        pattern.edition = 0;
    file.history.patternVersions.clear();
    file.history.tapes.clear();
    file.history.inspections.clear();
    for (RunLog& run : file.history.runs)
        run.patternVersion = 0;
    for (LevelReading& reading : file.history.readings)
        reading.poured.reset();
    return file;
}

}  // namespace

class TestCentreFileVersions : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theFirstVersionIsStillRead();
    void theSecondVersionIsStillRead();
    void theThirdVersionIsStillRead();
    void itsPatternsBecomeFirstVersions();
    void whatItHadIsAskedForAsEver_data();
    void whatItHadIsAskedForAsEver();
};

void TestCentreFileVersions::theFirstVersionIsStillRead() {
    const QByteArray old = kept("centre-1.json");
    QVERIFY(old.contains("\"version\":1") || old.contains("\"version\": 1"));
    QVERIFY(!old.contains("edition") && !old.contains("currency") && !old.contains("poured") && !old.contains("carry") &&
            !old.contains("tape_readings"));
    const Result<CentreFile> file = read(old);
    QVERIFY2(file, file ? "" : qPrintable(file.error().finding.rule + ' ' + file.error().finding.subject.toUtf8()));
    QVERIFY(*file == knownToTheFirst());
}

void TestCentreFileVersions::theSecondVersionIsStillRead() {
    const QByteArray old = kept("centre-2.json");
    QVERIFY(old.contains("\"version\": 2") && old.contains("tape_readings"));
    QVERIFY(!old.contains("currency") && !old.contains("supplies") && !old.contains("movements"));
    const Result<CentreFile> file = read(old);
    QVERIFY2(file, file ? "" : qPrintable(file.error().finding.rule + ' ' + file.error().finding.subject.toUtf8()));
    QVERIFY(*file == knownToTheSecond());
    TemporaryCentre centre(false);
    QVERIFY(centre.store().replaceAll(file->season, file->history, PersonId{"ada"}, fullSeasonNow));
    QVERIFY(centre.store().check()->empty());
}

void TestCentreFileVersions::theThirdVersionIsStillRead() {
    const QByteArray old = kept("centre-3.json");
    QVERIFY(old.contains("\"version\": 3") && old.contains("pack_readings") && !old.contains("weight_g"));
    const Result<CentreFile> file = read(old);
    QVERIFY2(file, file ? "" : qPrintable(file.error().finding.rule + ' ' + file.error().finding.subject.toUtf8()));
    QVERIFY(*file == knownToTheThird());
    TemporaryCentre centre(false);
    QVERIFY(centre.store().replaceAll(file->season, file->history, PersonId{"ada"}, fullSeasonNow));
    QVERIFY(centre.store().check()->empty());
}

void TestCentreFileVersions::itsPatternsBecomeFirstVersions() {
    const Result<CentreFile> file = read(kept("centre-1.json"));
    QVERIFY(file);
    TemporaryCentre centre(false);
    QVERIFY(centre.store().replaceAll(file->season, file->history, PersonId{"ada"}, fullSeasonNow));
    const Result<std::vector<PatternVersion>> versions = centre.store().patternVersions();
    QVERIFY(versions);
    QCOMPARE(versions->size(), size_t{2});
    for (const PatternVersion& version : *versions) {
        QCOMPARE(version.pattern.edition, std::int64_t{1});
        QCOMPARE(version.since.seconds, fullSeasonNow.seconds);
        QCOMPARE(version.person.value, QString("ada"));
    }
    QVERIFY(centre.store().check()->empty());
}

void TestCentreFileVersions::whatItHadIsAskedForAsEver_data() {
    QTest::addColumn<QByteArray>("key");
    for (const char* key : {"\"runs\"", "\"full_at_mv\"", "\"strokes\"", "\"volts_mv\"", "\"settings\"", "\"plan_version\""})
        QTest::newRow(key) << QByteArray(key);
}

void TestCentreFileVersions::whatItHadIsAskedForAsEver() {
    QFETCH(QByteArray, key);
    for (const char* name : {"centre-1.json", "centre-2.json", "centre-3.json"}) {
        const QByteArray old = kept(name);
        QVERIFY(old.contains(key));
        QVERIFY(!read(QByteArray(old).replace(key, "\"unheard_of\"")));
    }
}

QTEST_GUILESS_MAIN(TestCentreFileVersions)
#include "tst_centre_file_versions.moc"
