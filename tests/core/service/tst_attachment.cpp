// Files that are attached: told by their first bytes, held to their size and hash.
#include "core/service/attachment.h"

#include <QTest>

using namespace laneward;

namespace {

QByteArray ruleOf(const Attachment& attachment) {
    const std::vector<Finding> faults = faultsOf(attachment);
    return faults.empty() ? QByteArray() : faults.front().rule;
}

Attachment photo() { return attachmentOf("photo.jpg", QByteArray("\xff\xd8\xff\xe0 and more")); }

}  // namespace

class AttachmentTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void typesAreToldByTheirSignatures_data();
    void typesAreToldByTheirSignatures();
    void hashIsThePublishedOne();
    void whatCannotBe();
    void theTakenOffDoNotStand();
};

void AttachmentTest::typesAreToldByTheirSignatures_data() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<int>("type");
    QTest::newRow("png") << QByteArray("\x89PNG\r\n\x1a\n....") << int(AttachmentType::Png);
    QTest::newRow("jpeg") << QByteArray("\xff\xd8\xff\xe1....") << int(AttachmentType::Jpeg);
    QTest::newRow("webp") << QByteArray("RIFF\x10\x20\x30\x40WEBPVP8 ") << int(AttachmentType::WebP);
    QTest::newRow("pdf") << QByteArray("%PDF-1.4\n") << int(AttachmentType::Pdf);
    QTest::newRow("nothing") << QByteArray() << -1;
    QTest::newRow("png of text mode") << QByteArray("\x89PNG\n\x1a\n....") << -1;
    QTest::newRow("wave") << QByteArray("RIFF\x10\x20\x30\x40WAVEfmt ") << -1;
    QTest::newRow("cut short") << QByteArray("RIFF\x10\x20") << -1;
    QTest::newRow("gif") << QByteArray("GIF89a") << -1;
    QTest::newRow("program") << QByteArray("MZ") << -1;
    QTest::newRow("pdf behind something") << QByteArray(" %PDF-1.4") << -1;
}

void AttachmentTest::typesAreToldByTheirSignatures() {
    QFETCH(QByteArray, bytes);
    QFETCH(int, type);
    const std::optional<AttachmentType> told = typeOf(bytes);
    QCOMPARE(told ? int(*told) : -1, type);
}

/// FIPS 180-4, example of one block, from memory.
void AttachmentTest::hashIsThePublishedOne() {
    QCOMPARE(sha256Of("abc"), QString("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
}

void AttachmentTest::whatCannotBe() {
    QCOMPARE(ruleOf(photo()), QByteArray());
    Attachment known = photo();
    known.content.clear();  // as it is read back
    QCOMPARE(ruleOf(known), QByteArray());
    Attachment other = photo();
    other.content[8] = 'x';
    QCOMPARE(ruleOf(other), QByteArray("attachment.hash"));
    Attachment shorter = photo();
    shorter.size -= 1;
    QCOMPARE(ruleOf(shorter), QByteArray("attachment.hash"));
    Attachment wrong = photo();
    wrong.type = AttachmentType::Pdf;
    QCOMPARE(ruleOf(wrong), QByteArray("attachment.type"));
    QCOMPARE(ruleOf(attachmentOf("a.txt", "plain words")), QByteArray("attachment.type"));
    QCOMPARE(ruleOf(attachmentOf("a.png", {})), QByteArray("attachment.empty"));
    QCOMPARE(ruleOf(attachmentOf(" ", photo().content)), QByteArray("attachment.name"));
    QByteArray most = photo().content.leftJustified(attachmentBytes, 'x');
    QCOMPARE(ruleOf(attachmentOf("most.jpg", most)), QByteArray());
    QCOMPARE(ruleOf(attachmentOf("more.jpg", most + 'x')), QByteArray("attachment.too-large"));
    Attachment hashless = photo();
    hashless.sha256 = hashless.sha256.toUpper();
    QCOMPARE(ruleOf(hashless), QByteArray("attachment.hash"));
}

void AttachmentTest::theTakenOffDoNotStand() {
    Attachment first = photo();
    first.id = {"1"};
    Attachment off = first;
    off.id = {"2"};
    off.corrects = first.id;
    off.withdrawn = true;
    Attachment back = first;
    back.id = {"3"};
    back.corrects = off.id;
    QCOMPARE(standing(std::vector{first}).size(), size_t(1));
    QCOMPARE(standing(std::vector{first, off}).size(), size_t(0));
    QCOMPARE(standing(std::vector{first, off, back}), std::vector{back});
}

QTEST_GUILESS_MAIN(AttachmentTest)
#include "tst_attachment.moc"
