#include "app/paper/sheet_painter.h"
#include "tests/support/hand_made.h"

#include <QDir>
#include <QPdfWriter>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <sys/resource.h>
#include <sys/stat.h>

#include <csignal>

using namespace laneward;
using namespace support;

namespace {

Speech speech(const QLocale& locale = QLocale::c()) { return {locale, *Zone::load("Europe/London"), UnitSystem::Metric}; }

JobSheet handSheet() { return jobSheet(handSeason(), handPlan(), QDate(2026, 11, 12), handAt(15, 0)); }

QString output(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForStarted() || !process.waitForFinished(60'000))
        qFatal("%s is missing: install poppler-utils", qPrintable(program));
    return QString::fromUtf8(process.readAllStandardOutput()).normalized(QString::NormalizationForm_KC);
}

QString textOf(const QString& pdf) { return output("pdftotext", {"-layout", pdf, "-"}); }
/// In the order in which it was painted: the lines of one text follow each other.
QString paintedText(const QString& pdf) { return output("pdftotext", {"-raw", pdf, "-"}); }

int pagesOf(const QString& pdf) {
    return QRegularExpression("Pages:\\s+(\\d+)").match(output("pdfinfo", {pdf})).captured(1).toInt();
}

/// `jobs` jobs on as many lanes, each with a pattern of its own name.
JobSheet bigSheet(int jobs, int lanesEach) {
    SeasonState season = handSeason();
    season.centre.facts.lanes = jobs * lanesEach;
    season.patterns.clear();
    Plan plan = handPlan();
    plan.jobs.clear();
    plan.unmet.clear();
    for (int n = 0; n < jobs; ++n) {
        Pattern pattern;
        pattern.id = {QString("p%1").arg(n)};
        pattern.name = QString("Nr%1x").arg(n, 3, 10, QChar('0'));
        season.patterns.push_back(pattern);
        Job job = handJob();
        job.id = {QString("j%1").arg(n)};
        job.pattern = pattern.id;
        job.time = {handAt(8, 10 * n), handAt(8, 10 * n + 9)};
        job.lanes = handLanes(1 + n * lanesEach, (n + 1) * lanesEach, handAt(8, 10 * n));
        job.steps = {{StepKind::Treat, job.time, {}}};
        plan.jobs.push_back(job);
    }
    return jobSheet(season, plan, QDate(2026, 11, 12), handAt(5, 0));
}

QString withoutSpaces(QString text) {
    text.removeIf([](QChar c) { return c.isSpace(); });
    return text;
}

}  // namespace

class PaperTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyJobInOrderOnOnePage();
    void aBigDayHasEveryJobExactlyOnce_data();
    void aBigDayHasEveryJobExactlyOnce();
    void anEmptyDayIsOnePage();
    void hostileNamesAreText();
    void longNamesAndNotesStayOnPaper();
    void rightToLeftMirrorsThePageButNotTheLanes();
    void aPdfThatCannotBeWrittenLeavesNothing();
    void aFullDiskKeepsTheOldFile();
    void bodyIsElevenPoints();

private:
    QString written(const JobSheet& sheet, const Speech& words, PaperSize size = PaperSize::A4);
    QTemporaryDir m_folder;
};

QString PaperTest::written(const JobSheet& sheet, const Speech& words, PaperSize size) {
    const QString path = m_folder.filePath("sheet.pdf");
    const Outcome outcome = writeSheetPdf(path, sheet, words, size);
    return outcome ? path : QString();
}

void PaperTest::everyJobInOrderOnOnePage() {
    for (PaperSize size : {PaperSize::A4, PaperSize::Letter}) {
        const QString path = written(handSheet(), speech(), size);
        QVERIFY(!path.isEmpty());
        QCOMPARE(pagesOf(path), 1);
        const QString text = textOf(path);
        qsizetype at = 0;
        for (const char* part :
             {"Sedge Lanes", "Job sheet", "Thursday 12 November 2026", "Not confirmed yet", "UNMET: Late Fours", "17:17",
              "Ready Otter", "17:22", "17:39", "lanes 1-8, Reed 38", "conditioner 160 mL", "17:38", "Empty the waste", "17:44",
              "17:52", "lanes 9-12, Otter", "Closing down", "page 1 of 1"}) {
            const qsizetype found = text.indexOf(part, at);
            QVERIFY2(found >= 0, part);
            at = found;
        }
        for (const char* caution :
             {"Batteries:", "Chemicals:", "Slippery:", "Lifting:", "Moving parts:", "Waste:", "Local codes"}) {
            QVERIFY2(text.contains(caution), caution);
        }
    }
}

void PaperTest::aBigDayHasEveryJobExactlyOnce_data() {
    QTest::addColumn<int>("jobs");
    QTest::addColumn<bool>("letter");
    QTest::newRow("60 jobs, A4") << 60 << false;
    QTest::newRow("60 jobs, Letter") << 60 << true;
    QTest::newRow("100 jobs") << 100 << false;
}

void PaperTest::aBigDayHasEveryJobExactlyOnce() {
    QFETCH(int, jobs);
    QFETCH(bool, letter);
    const QString path = written(bigSheet(jobs, 200 / jobs), speech(), letter ? PaperSize::Letter : PaperSize::A4);
    const int pages = pagesOf(path);
    QVERIFY(pages > 3);
    const QString text = textOf(path);
    for (int n = 0; n < jobs; ++n) {
        const QString name = QString("Nr%1x").arg(n, 3, 10, QChar('0'));
        QCOMPARE(text.count(name), 1);
    }
    QCOMPARE(text.count("done at"), jobs);
    for (int page = 1; page <= pages; ++page) {
        const QString line = QString("page %1 of %2").arg(page).arg(pages);
        QCOMPARE(text.count(QRegularExpression(line + "\\b")), 1);
    }
    QCOMPARE(text.count(QRegularExpression("Sedge Lanes, Thursday 12 November 2026, Not confirmed yet")), pages);
}

void PaperTest::anEmptyDayIsOnePage() {
    const QString path = written(bigSheet(0, 1), speech());
    QCOMPARE(pagesOf(path), 1);
    QVERIFY(textOf(path).contains("Nothing to run on this day."));
}

void PaperTest::hostileNamesAreText() {
    const QStringList names{"Bob <img src='file:///etc/hostname'>", "&lt;b&gt;Fours&lt;/b&gt;", "O'Brien \"Ace\"", "../../CON",
                            "%1 %n"};
    for (const QString& name : names) {
        Plan plan = handPlan();
        plan.jobs[0].neededBy[0].title = name;
        plan.occupancy.occurrences[0].title = name;
        const QString path = written(jobSheet(handSeason(), plan, QDate(2026, 11, 12), handAt(15, 0)), speech());
        // A long name may break anywhere; which places do depends on the fonts of the machine.
        QVERIFY2(withoutSpaces(paintedText(path)).contains(withoutSpaces(name)), qPrintable(paintedText(path)));
        QCOMPARE(output("pdfimages", {"-list", path}).count('\n'), 2);  // the two lines of its head
    }
    SeasonState season = handSeason();
    season.centre.facts.name = QString(QChar(0x202e)) + "evil" + QChar('\n') + "name";
    const QString text = textOf(written(jobSheet(season, handPlan(), QDate(2026, 11, 12), handAt(15, 0)), speech()));
    QVERIFY(text.contains("‹RLO›evil‹LF›name"));
    QVERIFY(!QDir(m_folder.path()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot).join(' ').contains("evil"));
}

void PaperTest::longNamesAndNotesStayOnPaper() {
    SeasonState season = handSeason();
    season.handOvers[0].text = QString("word ").repeated(2'000) + "END";
    Plan plan = handPlan();
    plan.jobs[0].neededBy[0].title = QString(200, 'W');
    plan.occupancy.occurrences[0].title = QString(200, 'W');
    const QString path = written(jobSheet(season, plan, QDate(2026, 11, 12), handAt(15, 0)), speech());
    const QString text = textOf(path);
    QCOMPARE(text.count(QRegularExpression("\\bword\\b")), 2'000);
    QVERIFY(text.contains("END"));
    QCOMPARE(text.count('W'), 2 * 200 + text.count("Waste") + text.count("What cannot"));
}

void PaperTest::rightToLeftMirrorsThePageButNotTheLanes() {
    Plan plan = handPlan();
    plan.jobs[0].lanes.erase(plan.jobs[0].lanes.begin() + 4);
    const JobSheet sheet = jobSheet(handSeason(), plan, QDate(2026, 11, 12), handAt(15, 0));
    const auto boxOfWord = [this, &sheet](const QLocale& locale, const QString& word) {
        const QString html = output("pdftotext", {"-bbox", written(sheet, speech(locale)), "-"});
        const QRegularExpression box("xMin=\"([\\d.]+)\"[^>]*xMax=\"([\\d.]+)\"[^>]*>" + QRegularExpression::escape(word) + "<");
        const QRegularExpressionMatch found = box.match(html);
        return found.hasMatch() ? (found.captured(1).toDouble() + found.captured(2).toDouble()) / 2 : -1.0;
    };
    const double left = boxOfWord(QLocale::c(), "Sedge");
    const double right = boxOfWord(QLocale(QLocale::Hebrew), "Sedge");
    QVERIFY(left > 0 && left < 150);
    QVERIFY2(right > 595 / 2.0, qPrintable(QString::number(right)));
    // "1-4, 6-8" reads from left to right on both.
    const QLocale hebrew(QLocale::Hebrew);
    QVERIFY(boxOfWord(hebrew, "1-4,") > 0);
    QVERIFY(boxOfWord(hebrew, "1-4,") < boxOfWord(hebrew, "6-8,") || boxOfWord(hebrew, "1-4,") < boxOfWord(hebrew, "6-8"));
}

void PaperTest::aPdfThatCannotBeWrittenLeavesNothing() {
    const Outcome outcome = writeSheetPdf(m_folder.filePath("no/such/folder.pdf"), handSheet(), speech(), PaperSize::A4);
    QVERIFY(!outcome);
    QCOMPARE(outcome.error().kind, ErrorKind::Io);
    QCOMPARE(outcome.error().finding.rule, QByteArray("file.not-written"));
    QVERIFY(!QDir(m_folder.filePath("no")).exists());
    const QByteArray pipe = m_folder.filePath("pipe").toUtf8();
    QCOMPARE(mkfifo(pipe.constData(), 0600), 0);
    QCOMPARE(writeSheetPdf(QString::fromUtf8(pipe), handSheet(), speech(), PaperSize::A4).error().finding.rule,
             QByteArray("file.not-a-file"));
    struct stat info {};
    QCOMPARE(stat(pipe.constData(), &info), 0);
    QVERIFY(S_ISFIFO(info.st_mode));
}

void PaperTest::aFullDiskKeepsTheOldFile() {
    const QString path = m_folder.filePath("kept.pdf");
    QVERIFY(writeSheetPdf(path, handSheet(), speech(), PaperSize::A4));
    const qint64 size = QFileInfo(path).size();
    // Writes beyond the limit fail as they do on a full disk.
    rlimit before{};
    getrlimit(RLIMIT_FSIZE, &before);
    const rlimit small{10'000, before.rlim_max};
    std::signal(SIGXFSZ, SIG_IGN);
    setrlimit(RLIMIT_FSIZE, &small);
    const Outcome outcome = writeSheetPdf(path, handSheet(), speech(), PaperSize::A4);
    setrlimit(RLIMIT_FSIZE, &before);
    QVERIFY(!outcome);
    QCOMPARE(outcome.error().finding.rule, QByteArray("file.not-written"));
    QCOMPARE(QFileInfo(path).size(), size);
}

void PaperTest::bodyIsElevenPoints() {
    const QString html = output("pdftotext", {"-bbox", written(handSheet(), speech()), "-"});
    const QRegularExpression box("yMin=\"([\\d.]+)\"[^>]*yMax=\"([\\d.]+)\">condition,<");
    const QRegularExpressionMatch found = box.match(html);
    QVERIFY(found.hasMatch());
    // The box of a word is ascent plus descent: at least its point size.
    QVERIFY(found.captured(2).toDouble() - found.captured(1).toDouble() >= 11.0);
}

QTEST_MAIN(PaperTest)
#include "tst_paper.moc"
