// Attached files in both databases: kept byte for byte, never changed, checked, and out of the centre file.
#include "core/storage/centre_file.h"
#include "core/storage/database.h"
#include "tests/support/full_season.h"
#include "tests/support/two_databases.h"

#include <QBuffer>
#include <QTest>

using namespace laneward;
using namespace support;

namespace {

const OperationId spill{"a spill"};

/// Bytes of every value, behind a signature.
QByteArray photo(int n) {
    QByteArray bytes("\xff\xd8\xff\xe0");
    for (int value = 0; value < 1'000; ++value)
        bytes += char((value + n) % 256);
    return bytes;
}

Attachment attached(int n, const OperationId& record = spill) {
    Attachment made = attachmentOf(QString("photo %1.jpg").arg(n), photo(n));
    made.id = operation(200 + n);
    made.at = fullSeasonNow - minutes(n);
    made.person = {"ada"};
    made.record = record;
    return made;
}

QByteArray ruleOf(const Outcome& outcome) { return outcome ? QByteArray() : outcome.error().finding.rule; }

QByteArrayList rulesOf(const Result<std::vector<Finding>>& findings) {
    QByteArrayList rules;
    for (const Finding& finding : findings ? *findings : std::vector<Finding>{})
        rules << finding.rule;
    return rules;
}

}  // namespace

class AttachmentsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void bytesAreKept_data() { TwoDatabases::rows(); }
    void bytesAreKept();
    void theSameBytesAreKeptOnce_data() { TwoDatabases::rows(); }
    void theSameBytesAreKeptOnce();
    void refusesWhatCannotBe_data() { TwoDatabases::rows(); }
    void refusesWhatCannotBe();
    void nothingChangesThem_data() { TwoDatabases::rows(); }
    void nothingChangesThem();
    void damageIsFound_data() { TwoDatabases::rows(); }
    void damageIsFound();
    void centreFilesCarryNamesOnly_data() { TwoDatabases::rows(); }
    void centreFilesCarryNamesOnly();

private:
    std::unique_ptr<Store> house() {
        std::unique_ptr<Store> store = m_databases.fresh();
        if (!store->replaceAll(fullSeason(), {}, {"ada"}, fullSeasonNow)) qFatal("not made");
        const Incident incident{spill, IncidentKind::Spill, fullSeasonNow, 3, {}, {"ada"}, "Cleaner", {}};
        if (!store->append({incident})) qFatal("not recorded");
        return store;
    }

    TwoDatabases m_databases;
};

void AttachmentsTest::bytesAreKept() {
    const auto store = house();
    QVERIFY(store->append({attached(1), attached(2)}));
    const auto all = store->attachments(spill);
    QVERIFY(all);
    QCOMPARE(*all, (std::vector{attached(2), attached(1)}));  // by time
    QVERIFY(all->front().content.isEmpty());
    QCOMPARE(*store->attachmentContent(attached(1).sha256), photo(1));
    QCOMPARE(*store->attachmentContent(QString("0").repeated(64)), QByteArray());
    QVERIFY(store->attachments({"nothing"})->empty());
    QCOMPARE(store->deeds(allRecords)->attachments.size(), size_t(2));
    QVERIFY(store->append({attached(1)}));  // once more has no effect
    QCOMPARE(store->attachments(spill)->size(), size_t(2));
    QCOMPARE(rulesOf(store->check()), QByteArrayList());
}

void AttachmentsTest::theSameBytesAreKeptOnce() {
    const auto store = house();
    Attachment twin = attached(1);
    twin.id = operation(300);
    QVERIFY(store->append({attached(1), twin}));
    Attachment off = attached(1);
    off.id = operation(301);
    off.corrects = attached(1).id;
    off.withdrawn = true;
    off.content.clear();
    QVERIFY(store->append({off}));
    QCOMPARE(standing(*store->attachments(spill)), std::vector{twin});
    Attachment back = attached(1);
    back.id = operation(302);
    back.corrects = off.id;
    back.content.clear();  // they are here already
    QVERIFY(store->append({back}));
    QCOMPARE(standing(*store->attachments(spill)).size(), size_t(2));
    QCOMPARE(store->database().value("SELECT COUNT(*) FROM attachment_contents")->toInt(), 1);
    QCOMPARE(rulesOf(store->check()), QByteArrayList());
}

void AttachmentsTest::refusesWhatCannotBe() {
    const auto store = house();
    QCOMPARE(ruleOf(store->append({attached(1, {"nothing"})})), QByteArray("attachment.no-record"));
    HandOver note{{"note"}, {}, fullSeasonNow, {"ada"}, "x", {}};
    note.date = QDate(2026, 11, 12);
    QVERIFY(store->append({note}));
    QCOMPARE(ruleOf(store->append({attached(1, note.id)})), QByteArray("attachment.no-record"));
    Attachment text = attachmentOf("a.txt", "plain words");
    text.id = operation(210);
    text.record = spill;
    text.person = {"ada"};
    QCOMPARE(ruleOf(store->append({text})), QByteArray("attachment.type"));
    Attachment gone = attached(3);
    gone.content.clear();
    QCOMPARE(ruleOf(store->append({gone})), QByteArray("attachment.no-content"));
    Attachment large = attached(4);
    large.size = attachmentBytes + 1;
    QCOMPARE(ruleOf(store->append({large})), QByteArray("attachment.too-large"));
    QVERIFY(store->attachments(spill)->empty());
    QCOMPARE(store->database().value("SELECT COUNT(*) FROM attachment_contents")->toInt(), 0);
}

void AttachmentsTest::nothingChangesThem() {
    const auto store = house();
    QVERIFY(store->append({attached(1)}));
    for (const char* sql : {"UPDATE attachments SET name = 'x'", "DELETE FROM attachments", "DELETE FROM attachment_contents",
                            "UPDATE attachment_contents SET sha256 = 'x'"})
        QVERIFY2(!store->database().change(QString::fromLatin1(sql)), sql);
    QCOMPARE(*store->attachmentContent(attached(1).sha256), photo(1));
}

void AttachmentsTest::damageIsFound() {
    const auto store = house();
    QVERIFY(store->append({attached(1)}));
    const QString replacing = QStringLiteral("INSERT INTO replacing SELECT id FROM centres");
    QVERIFY(store->database().change(replacing));
    const auto changed = [&](const char* sql, const std::vector<QVariant>& values = {}) {
        return bool(store->database().change(QString::fromLatin1(sql), values));
    };
    QVERIFY(changed("UPDATE attachment_contents SET content = ?", {photo(2)}));
    QVERIFY(rulesOf(store->check()).contains("attachment.hash"));
    QVERIFY(changed("UPDATE attachment_contents SET content = ?", {QByteArray("plain words")}));
    QVERIFY(rulesOf(store->check()).contains("attachment.type"));
    QVERIFY(changed("UPDATE attachment_contents SET content = ?", {photo(1)}));
    QCOMPARE(rulesOf(store->check()), QByteArrayList());
    QVERIFY(changed("UPDATE attachment_contents SET sha256 = ?", {QString("0").repeated(64)}));
    QVERIFY(rulesOf(store->check()).contains("check.content-of-nothing"));
    QVERIFY(changed("UPDATE attachments SET record = id"));
    QVERIFY(rulesOf(store->check()).contains("check.attachment-of-nothing"));
}

void AttachmentsTest::centreFilesCarryNamesOnly() {
    const auto store = house();
    QVERIFY(store->append({attached(1)}));
    QBuffer json;
    QVERIFY(json.open(QIODevice::ReadWrite));
    const Result<CentreFile> file = exported(*store);
    QVERIFY(file && writeCentreFile(json, *file));
    QVERIFY(json.data().contains("photo 1.jpg") && json.data().contains(attached(1).sha256.toLatin1()));
    QVERIFY(json.seek(0));
    const Result<CentreFile> read = readCentreFile(json, "club.json");
    QVERIFY(read);
    QCOMPARE(read->history.attachments, std::vector{attached(1)});
    QVERIFY(store->replaceAll(read->season, read->history, {"ada"}, fullSeasonNow));
    QCOMPARE(*store->attachments(spill), std::vector{attached(1)});
    QCOMPARE(*store->attachmentContent(attached(1).sha256), QByteArray());
    QCOMPARE(rulesOf(store->check()), QByteArrayList());  // what is not here is not wrong
}

QTEST_GUILESS_MAIN(AttachmentsTest)
#include "tst_attachments.moc"
