// The page History: everything recorded in one list, searched while typing, by mouse and by keyboard alone; details, corrections,
// files that are attached; paper, PDF and CSV.
#include "app/pages/history/attachments_box.h"
#include "app/pages/history/history_model.h"
#include "app/pages/history/history_page.h"
#include "app/pages/history/history_panel.h"
#include "app/paper/history_painter.h"
#include "core/documents/csv_reader.h"
#include "tests/support/demo_session.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QBuffer>
#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDropEvent>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QSpinBox>
#include <QStandardPaths>
#include <QTableView>
#include <QTest>

using namespace laneward;

namespace {

constexpr int patience = 60'000;

/// A page with its session, open and read.
struct Desk {
    explicit Desk(Session& of) : session(of), page(of) {
        page.resize(1'100, 640);
        page.show();
        isOpen = QTest::qWaitForWindowExposed(&page) && read();
    }
    bool read() {
        return QTest::qWaitFor([this] { return !page.isBusy(); }, patience);
    }
    template <class T>
    T* part(const char* name) {
        return page.findChild<T*>(name);
    }
    QTableView* list() { return part<QTableView>("historyList"); }
    HistoryModel* model() { return static_cast<HistoryModel*>(list()->model()); }
    HistoryPanel* panel() { return page.findChild<HistoryPanel*>(); }
    QString cell(int row, HistoryColumn column) { return model()->index(row, int(column)).data().toString(); }
    void type(const QString& words) {
        auto* search = part<QLineEdit>("historySearch");
        search->setFocus();
        search->selectAll();
        QTest::keyClick(search, Qt::Key_Delete);
        QTest::keyClicks(search, words);
    }
    QString details() {
        QCoreApplication::processEvents();  // what was added to a layout shows itself
        QStringList texts;
        for (const QLabel* label : panel()->findChildren<QLabel*>())
            if (label->isVisible()) texts << label->text();
        return texts.join('\n');
    }

    Session& session;
    HistoryPage page;
    bool isOpen = false;
};

Session& demo() {
    static support::DemoSession made;
    return made.session();
}

QByteArray pngOf(int width, int height) {
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(QColor(40, 120, 90));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

QString fileWith(const QTemporaryDir& folder, const QString& name, const QByteArray& bytes) {
    QFile file(folder.filePath(name));
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size()) qFatal("not written");
    return file.fileName();
}

/// An evening on which a spill was recorded.
struct Spilled {
    Spilled() : session(support::sessionOn(evening)) {
        Incident spill;
        spill.kind = IncidentKind::Spill;
        spill.at = session->now() - minutes(30);
        spill.lane = 4;
        spill.text = "Cleaner by the bay";
        if (!session->record("Spill", {spill})) qFatal("not recorded");
        record = session->season().incidents.front().id;
    }
    std::vector<Attachment> attached() const {
        const auto all = session->store().attachments(record);
        return all ? standing(*all) : std::vector<Attachment>{};
    }

    support::Evening evening;
    std::unique_ptr<Session> session;
    OperationId record;
};

constexpr int manyNotes = 80'000;

/// Notes all along so many years, more than are read before anybody could press a button.
void noteForYears(const Spilled& spilled, int years) {
    std::vector<Record> notes;
    for (int n = 0; n < manyNotes; ++n) {
        const Instant at = spilled.session->now() - minutes(std::int64_t(n) * 60 * 24 * 365 * years / manyNotes) - hours(1);
        notes.push_back(HandOver{{QString("note-%1").arg(n)}, spilled.session->today(), at, {"ada"}, "All is well here", {}});
    }
    if (!spilled.evening.store()->append(notes)) qFatal("not recorded");
}

}  // namespace

class HistoryPageTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void anEmptyCentreSaysWhatToDo();
    void theDemoYearIsListed();
    void findsWhileTyping();
    void choicesNarrow();
    void worksByKeyboardAlone();
    void worksByMouse();
    void sortsByColumn();
    void correctedAreStruckThrough();
    void chainLeadsToTheOther();
    void followUpsLeadToEachOther();
    void earlierDaysAreReadWhenAsked();
    void aLongReadIsCancelledAndGoesOn();
    void theFirstReadIsCancelledAndGoesOn();
    void csvReadsBack();
    void paperAndPdf();
    void tooManyForPaper();
    void columnsAreRemembered();
    void whatOthersRecordAppears();
    void filesAreAttached();
    void droppedFilesAreAttached();
    void undoTakesOffAndPutsBack();
    void unfitFilesAreRefused();
    void readOnlyAttachesNothing();
    void closesWhileReading();
};

void HistoryPageTest::initTestCase() { QStandardPaths::setTestModeEnabled(true); }

void HistoryPageTest::init() { QSettings().remove("lists"); }

void HistoryPageTest::anEmptyCentreSaysWhatToDo() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    Desk desk(*session);
    QVERIFY(desk.isOpen);
    QCOMPARE(desk.model()->rowCount(), 0);
    bool told = false;
    for (const QLabel* label : desk.page.findChildren<QLabel*>())
        told |= label->isVisible() && label->text().contains("recorded on the page Today");
    QVERIFY(told);
    QVERIFY(!desk.list()->isVisible());
    QVERIFY(!desk.part<QPushButton>("clearFilters")->isVisible());
    QVERIFY2(desk.page.headline().startsWith("0 "), qPrintable(desk.page.headline()));
}

void HistoryPageTest::theDemoYearIsListed() {
    Desk desk(demo());
    QVERIFY(desk.isOpen);
    QVERIFY(desk.model()->rowCount() > 800);
    QVERIFY(desk.page.headline().contains("incident"));
    const QString totals = desk.part<QLabel>("historyTotals")->text();
    QVERIFY2(totals.contains("conditioner") && totals.contains("machines at work") && totals.contains("service work"),
             qPrintable(totals));
    for (int column = 0; column < historyColumns; ++column)
        QVERIFY(!desk.model()->index(0, column).data(Qt::AccessibleTextRole).toString().isEmpty());
    QVERIFY(support::picture(desk.page, "history-page"));
}

void HistoryPageTest::findsWhileTyping() {
    Desk desk(demo());
    const int all = desk.model()->rowCount();
    desk.type("FILTER");
    const int filters = desk.model()->rowCount();
    QVERIFY(filters > 0 && filters < all);
    for (int row = 0; row < filters; ++row)
        QVERIFY(folded(HistoryIndex::wordsOf(*desk.model()->at(row))).contains("filter"));
    QTest::keyClicks(desk.part<QLineEdit>("historySearch"), " qqq");
    QCOMPARE(desk.model()->rowCount(), 0);
    auto* clear = desk.part<QPushButton>("clearFilters");
    QVERIFY(clear->isVisible());
    QTest::mouseClick(clear, Qt::LeftButton);
    QCOMPARE(desk.model()->rowCount(), all);
    QVERIFY(desk.list()->isVisible());
}

void HistoryPageTest::choicesNarrow() {
    Desk desk(demo());
    const auto choose = [&](const char* name, int index) { desk.part<QComboBox>(name)->setCurrentIndex(index); };
    choose("historyKind", 1 + int(HistoryKind::Service));
    const int services = desk.model()->rowCount();
    QVERIFY(services > 0);
    choose("historyItem", 1);
    QVERIFY(desk.model()->rowCount() > 0 && desk.model()->rowCount() < services);
    const auto* figures = desk.part<QLabel>("historyFigures");
    QVERIFY(figures->isVisible());
    QVERIFY2(figures->text().contains("service costs"), qPrintable(figures->text()));
    QVERIFY(support::picture(desk.page, "history-item"));
    choose("historyItem", 0);
    choose("historyKind", 1 + int(HistoryKind::Run));
    desk.part<QSpinBox>("historyLane")->setValue(7);
    QVERIFY(desk.model()->rowCount() > 0);
    for (int row = 0; row < desk.model()->rowCount(); ++row)
        QVERIFY(desk.model()->at(row)->lanes.contains(7));
    desk.part<QDateEdit>("historyFrom")->setDate(desk.session.today().addDays(-7));
    const int week = desk.model()->rowCount();
    QVERIFY(week > 0 && week < 30);
}

void HistoryPageTest::worksByKeyboardAlone() {
    Desk desk(demo());
    desk.page.setFocus();
    auto* search = desk.part<QLineEdit>("historySearch");
    QVERIFY(search->hasFocus());
    QTest::keyClicks(search, "cloth jammed");
    QVERIFY(desk.model()->rowCount() > 0);
    QTest::keyClick(search, Qt::Key_Down);
    QVERIFY(desk.list()->hasFocus());
    QVERIFY(!desk.panel()->isVisible());
    QTest::keyClick(desk.list(), Qt::Key_Return);
    QVERIFY(desk.panel()->isVisible());
    QVERIFY2(desk.details().contains("Cloth roll"), qPrintable(desk.details()));  // what was done about it
    const QString before = desk.details();
    QTest::keyClick(desk.list(), Qt::Key_Down);
    QVERIFY(desk.details() != before);
    QVERIFY2(desk.details().contains("Cloth jammed"), qPrintable(desk.details()));
    QTest::keyClick(desk.list(), Qt::Key_Escape);
    QVERIFY(!desk.panel()->isVisible());
    QVERIFY(desk.list()->hasFocus());
}

void HistoryPageTest::worksByMouse() {
    Desk desk(demo());
    desk.part<QComboBox>("historyKind")->setCurrentIndex(1 + int(HistoryKind::Service));
    const QPoint at = desk.list()->visualRect(desk.model()->index(2, 0)).center();
    QTest::mouseClick(desk.list()->viewport(), Qt::LeftButton, {}, at);
    QTest::mouseDClick(desk.list()->viewport(), Qt::LeftButton, {}, at);
    QVERIFY(desk.panel()->isVisible());
    QVERIFY(desk.details().contains("Duty:") && desk.details().contains("Attached files"));
    QVERIFY(support::picture(desk.page, "history-details"));
    QTest::mouseClick(desk.part<QPushButton>("closeDetails"), Qt::LeftButton);
    QVERIFY(!desk.panel()->isVisible());
}

void HistoryPageTest::sortsByColumn() {
    Desk desk(demo());
    auto* header = desk.list()->horizontalHeader();
    const int column = int(HistoryColumn::Minutes);
    const QPoint at(header->sectionViewportPosition(column) + 8, header->height() / 2);
    QTest::mouseClick(header->viewport(), Qt::LeftButton, {}, at);
    QCOMPARE(header->sortIndicatorSection(), column);
    for (int row = 1; row < desk.model()->rowCount(); ++row) {
        const int before = desk.model()->at(row - 1)->minutes.value_or(-1);
        const int here = desk.model()->at(row)->minutes.value_or(-1);
        QVERIFY(header->sortIndicatorOrder() == Qt::AscendingOrder ? before <= here : before >= here);
    }
    desk.type("run");  // what is found later is in the same order
    for (int row = 1; row < desk.model()->rowCount(); ++row) {
        const int before = desk.model()->at(row - 1)->minutes.value_or(-1);
        const int here = desk.model()->at(row)->minutes.value_or(-1);
        QVERIFY(header->sortIndicatorOrder() == Qt::AscendingOrder ? before <= here : before >= here);
    }
}

void HistoryPageTest::correctedAreStruckThrough() {
    Spilled spilled;
    spilled.session->undoStack().undo();
    Desk desk(*spilled.session);
    QCOMPARE(desk.model()->rowCount(), 0);
    QTest::mouseClick(desk.part<QCheckBox>("showCorrected"), Qt::LeftButton, {}, QPoint(8, 14));
    QCOMPARE(desk.model()->rowCount(), 2);
    for (int row = 0; row < 2; ++row) {
        QVERIFY(desk.model()->index(row, 0).data(Qt::FontRole).value<QFont>().strikeOut());
        QVERIFY(desk.cell(row, HistoryColumn::What).contains("does not stand"));
    }
    QVERIFY2(desk.cell(0, HistoryColumn::Words).contains("withdrawn"), qPrintable(desk.cell(0, HistoryColumn::Words)));
    QVERIFY(desk.page.headline().startsWith("0 "));  // what does not stand does not count
}

void HistoryPageTest::chainLeadsToTheOther() {
    Spilled spilled;
    Incident right = spilled.session->season().incidents.front();
    right.id = {};
    right.corrects = spilled.record;
    right.at = spilled.session->now();
    right.text = "Cleaner on lane 4";
    QVERIFY(spilled.session->record("Correct", {right}));
    Desk desk(*spilled.session);
    QCOMPARE(desk.model()->rowCount(), 1);
    QVERIFY(desk.cell(0, HistoryColumn::Words).contains("replaces the entry of"));
    desk.list()->setFocus();
    QTest::keyClick(desk.list(), Qt::Key_Return);
    const auto chain = desk.panel()->findChildren<QPushButton*>("chainEntry");
    QCOMPARE(chain.size(), 2);
    QVERIFY(chain[0]->isEnabled() && !chain[1]->isEnabled());
    QTest::mouseClick(chain[0], Qt::LeftButton);
    QTRY_VERIFY(desk.details().contains("Cleaner by the bay"));
    QVERIFY(desk.details().contains("does not stand"));
    QCOMPARE(desk.panel()->current(), spilled.record);
    QVERIFY(support::picture(desk.page, "history-chain"));
}

void HistoryPageTest::earlierDaysAreReadWhenAsked() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    Incident old;
    old.at = session->now() - hours(24 * 365 * 4);
    old.text = "Long ago";
    QVERIFY(session->record("Old", {old}));
    Desk desk(*session);
    QCOMPARE(desk.model()->rowCount(), 0);
    desk.part<QDateEdit>("historyFrom")->setDate(session->today().addYears(-5));
    QVERIFY(desk.read());
    QCOMPARE(desk.model()->rowCount(), 1);
    desk.part<QDateEdit>("historyFrom")->setDate(session->today().addYears(-1));
    QCOMPARE(desk.model()->rowCount(), 0);
}

/// By mouse and by keyboard, and to one that the list does not show.
void HistoryPageTest::followUpsLeadToEachOther() {
    Spilled spilled;
    Incident done;
    done.at = spilled.session->now();
    done.text = "Wiped and tried with a sock";
    done.answers = spilled.record;
    QVERIFY(spilled.session->record("Follow up", {done}));
    const OperationId answer = spilled.session->season().incidents.back().id;
    Desk desk(*spilled.session);
    desk.type("sock");
    QCOMPARE(desk.model()->rowCount(), 2);  // looking for either finds both
    desk.type("Cleaner bay");
    QCOMPARE(desk.model()->rowCount(), 2);
    QVERIFY2(desk.page.headline().contains("1 incident"), qPrintable(desk.page.headline()));
    const auto link = [&](const char* name) {
        QPushButton* seen = nullptr;
        for (QPushButton* button : desk.panel()->findChildren<QPushButton*>(name))
            if (button->isVisible()) seen = button;
        return seen;
    };
    desk.list()->setCurrentIndex(desk.model()->index(desk.model()->rowOf(spilled.record), 0));
    desk.list()->setFocus();
    QTest::keyClick(desk.list(), Qt::Key_Return);
    QTRY_VERIFY(link("followedUp"));
    QVERIFY(!link("followsUp") && desk.details().contains("Followed up"));
    QVERIFY(link("followedUp")->height() >= 28 && !link("followedUp")->accessibleDescription().isEmpty());
    QVERIFY(support::picture(desk.page, "history-followed-up"));
    QTest::mouseClick(link("followedUp"), Qt::LeftButton);
    QTRY_COMPARE(desk.panel()->current(), answer);
    QTRY_VERIFY(link("followsUp"));
    QVERIFY(!link("followedUp") && desk.details().contains("Follow-up"));
    QVERIFY(support::picture(desk.page, "history-follows-up"));
    // The other is not listed now: it comes back into the list.
    desk.part<QComboBox>("historyPerson")->setCurrentIndex(1);
    desk.part<QDateEdit>("historyFrom")->setDate(spilled.session->today().addDays(-1));
    desk.part<QSpinBox>("historyLane")->setValue(0);
    desk.type("follows");
    QCOMPARE(desk.model()->rowCount(), 1);
    QTRY_VERIFY(link("followsUp"));
    link("followsUp")->setFocus();
    QTest::keyClick(link("followsUp"), Qt::Key_Space);
    QTRY_COMPARE(desk.panel()->current(), spilled.record);
}

void HistoryPageTest::aLongReadIsCancelledAndGoesOn() {
    Spilled spilled;
    noteForYears(spilled, 30);
    Desk desk(*spilled.session);
    const int thisYear = desk.model()->rowCount();
    QVERIFY(thisYear > 300 && thisYear < manyNotes / 20);
    auto* from = desk.part<QDateEdit>("historyFrom");
    auto* cancel = desk.part<QPushButton>("cancelWork");
    auto* why = desk.part<QLabel>("whyStopped");
    from->setDate(QDate(1990, 1, 1));
    QTRY_VERIFY2(cancel->isVisible(), "it was read before anybody could have cancelled");
    QVERIFY(cancel->height() >= 28 && desk.page.isBusy());
    QTRY_VERIFY(desk.page.findChild<QProgressBar*>()->value() > 0);
    QVERIFY(support::picture(desk.page, "history-reading"));
    QTest::mouseClick(cancel, Qt::LeftButton);
    QVERIFY(!desk.page.isBusy() && !cancel->isVisible() && why->isVisible());
    QVERIFY2(why->text().startsWith("Stopped: nothing before ") && why->text().contains("2025"), qPrintable(why->text()));
    QCOMPARE(desk.model()->rowCount(), thisYear);  // what was read stays
    QVERIFY(support::picture(desk.page, "history-stopped"));
    desk.type("spill");  // nor does looking for something begin it again
    QVERIFY(!desk.page.isBusy());
    QCOMPARE(desk.model()->rowCount(), 1);
    desk.type("");
    auto* again = desk.part<QPushButton>("workAgain");
    again->setFocus();
    QTest::keyClick(again, Qt::Key_Space);
    QVERIFY(desk.page.isBusy() && !why->isVisible());
    QVERIFY(desk.read());
    QCOMPARE(desk.model()->rowCount(), manyNotes + 1);
    QVERIFY(!why->isVisible() && !again->isVisible());
    // By the keyboard; a page that has read all has nothing to stop.
    QTest::keyClick(desk.list(), Qt::Key_Escape);
    QVERIFY(why->text().isEmpty());
    QVERIFY(desk.session.reload());
    QVERIFY(desk.page.isBusy());
    QTest::keyClick(desk.list(), Qt::Key_Escape);
    QVERIFY(!desk.page.isBusy());
    QVERIFY2(why->text().contains("older than the last record"), qPrintable(why->text()));
    QCOMPARE(desk.model()->rowCount(), manyNotes + 1);
}

void HistoryPageTest::theFirstReadIsCancelledAndGoesOn() {
    HistoryPage page(demo());
    page.resize(1'100, 640);
    page.show();
    QVERIFY(page.isBusy());
    QTest::keyClick(page.findChild<QLineEdit*>("historySearch"), Qt::Key_Escape);
    QVERIFY(!page.isBusy());
    QCOMPARE(page.headline(), QString("What was done is not known."));
    auto* again = page.findChild<QPushButton*>("workAgain");
    QVERIFY(again->isVisible());
    // Other days are read without being told to.
    page.findChild<QDateEdit*>("historyFrom")->setDate(demo().today().addDays(-20));
    QVERIFY(page.isBusy() && !again->isVisible());
    QTRY_VERIFY_WITH_TIMEOUT(!page.isBusy(), patience);
    QVERIFY(page.findChild<QTableView*>("historyList")->model()->rowCount() > 10);
}

void HistoryPageTest::csvReadsBack() {
    Desk desk(demo());
    desk.type("service");
    QTemporaryDir folder;
    QVERIFY(desk.page.saveCsv(folder.filePath("list.csv")));
    QFile file(folder.filePath("list.csv"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const Result<CsvTable> table = readCsv(file.readAll(), "list.csv");
    QVERIFY(table);
    QCOMPARE(int(table->records.size()), desk.model()->rowCount() + 1);
    QCOMPARE(table->records[1].fields[6], desk.cell(0, HistoryColumn::Words));
    QSignalSpy problems(&desk.session, &Session::problem);
    QVERIFY(!desk.page.saveCsv(folder.filePath("none/list.csv")));
    QCOMPARE(problems.count(), 1);
}

void HistoryPageTest::paperAndPdf() {
    Desk desk(demo());
    desk.type("service");
    QTemporaryDir folder;
    QVERIFY(desk.page.savePdf(folder.filePath("list.pdf")));
    QFile file(folder.filePath("list.pdf"));
    QVERIFY(file.open(QIODevice::ReadOnly) && file.read(5) == "%PDF-" && file.size() > 5'000);
    QDir(qEnvironmentVariable("LANEWARD_BINARY", ".")).mkpath("pictures");
    QFile::remove(qEnvironmentVariable("LANEWARD_BINARY", ".") + "/pictures/history.pdf");
    QVERIFY(QFile::copy(file.fileName(), qEnvironmentVariable("LANEWARD_BINARY", ".") + "/pictures/history.pdf"));
    desk.type("qqq");
    QSignalSpy problems(&desk.session, &Session::problem);
    QVERIFY(!desk.page.savePdf(folder.filePath("none.pdf")));
    QCOMPARE(problems.count(), 1);
    QVERIFY(!QFile::exists(folder.filePath("none.pdf")));
}

void HistoryPageTest::tooManyForPaper() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    std::vector<Record> notes;
    for (size_t n = 0; n <= mostOnPaper; ++n)
        notes.push_back(HandOver{{}, session->today(), session->now() - minutes(std::int64_t(n)), {}, "note", {}});
    QVERIFY(session->record("Notes", notes));
    Desk desk(*session);
    QCOMPARE(desk.model()->rowCount(), int(mostOnPaper) + 1);
    QSignalSpy problems(session.get(), &Session::problem);
    QTemporaryDir folder;
    QVERIFY(!desk.page.savePdf(folder.filePath("list.pdf")));
    QVERIFY(problems.front().front().toString().contains("too many for paper"));
    QVERIFY(desk.page.saveCsv(folder.filePath("list.csv")));
}

void HistoryPageTest::columnsAreRemembered() {
    QSettings().setValue("lists/history/entries/hidden", QStringList{QString::number(int(HistoryColumn::Meter))});
    Desk desk(demo());
    QVERIFY(desk.list()->isColumnHidden(int(HistoryColumn::Meter)));
    QVERIFY(!desk.list()->isColumnHidden(int(HistoryColumn::Cost)));
}

void HistoryPageTest::whatOthersRecordAppears() {
    Spilled spilled;
    Desk desk(*spilled.session);
    QCOMPARE(desk.model()->rowCount(), 1);
    desk.list()->setFocus();
    QTest::keyClick(desk.list(), Qt::Key_Return);
    const auto other = spilled.evening.store();
    HandOver note{{"other"}, spilled.session->today(), spilled.session->now(), {"ben"}, "Keys are in the drawer", {}};
    QVERIFY(other->append({note}));
    spilled.session->lookForOthers();
    QVERIFY(desk.read());
    QCOMPARE(desk.model()->rowCount(), 2);
    QCOMPARE(desk.panel()->current(), spilled.record);  // what is open stays open
}

void HistoryPageTest::filesAreAttached() {
    Spilled spilled;
    Desk desk(*spilled.session);
    desk.list()->setFocus();
    QTest::keyClick(desk.list(), Qt::Key_Return);
    QTemporaryDir folder;
    const QByteArray png = pngOf(1'200, 800);
    auto* box = desk.page.findChild<AttachmentsBox*>();
    QVERIFY(box->isVisible() && desk.part<QPushButton>("attachFile")->isEnabled());
    QVERIFY(box->attach(fileWith(folder, "spill <b>.png", png)));
    QVERIFY(box->attach(fileWith(folder, "sheet.pdf", "%PDF-1.7 not much of a paper")));
    QVERIFY(desk.read());
    std::vector<Attachment> attached = spilled.attached();
    QCOMPARE(attached.size(), size_t(2));
    if (attached[0].type == AttachmentType::Pdf) std::swap(attached[0], attached[1]);  // of one second in any order
    QCOMPARE(attached[0].name, QString("spill <b>.png"));
    QCOMPARE(attached[0].person, PersonId{"ada"});
    QCOMPARE(*spilled.session->store().attachmentContent(attached[0].sha256), png);
    const auto pictures = [&] {
        QList<QLabel*> seen;
        for (QLabel* label : desk.page.findChildren<QLabel*>("thumbnail"))
            if (label->isVisible()) seen << label;
        return seen;
    };
    QTRY_COMPARE(pictures().size(), 2);
    const auto isSeen = [](const QLabel* label) { return !label->pixmap(Qt::ReturnByValue).isNull(); };
    QTRY_VERIFY(isSeen(pictures()[0]) || isSeen(pictures()[1]));
    QCOMPARE((isSeen(pictures()[0]) ? pictures()[1] : pictures()[0])->text(), QString("PDF"));
    QVERIFY(support::picture(desk.page, "history-attachments"));
    QVERIFY(box->save(attached[0], folder.filePath("again.png")));
    QFile again(folder.filePath("again.png"));
    QVERIFY(again.open(QIODevice::ReadOnly) && again.readAll() == png);
    QVERIFY(spilled.session->store().check()->empty());
}

void HistoryPageTest::droppedFilesAreAttached() {
    Spilled spilled;
    Desk desk(*spilled.session);
    desk.list()->setFocus();
    QTest::keyClick(desk.list(), Qt::Key_Return);
    QTemporaryDir folder;
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(fileWith(folder, "a.png", pngOf(20, 20))), QUrl("https://example.org/b.png")});
    auto* box = desk.page.findChild<AttachmentsBox*>();
    QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, &data, Qt::LeftButton, {});
    QCoreApplication::sendEvent(box, &enter);
    QVERIFY(enter.isAccepted());
    QDropEvent drop(QPointF(5, 5), Qt::CopyAction, &data, Qt::LeftButton, {});
    QCoreApplication::sendEvent(box, &drop);
    QCOMPARE(spilled.attached().size(), size_t(1));
}

void HistoryPageTest::undoTakesOffAndPutsBack() {
    Spilled spilled;
    Desk desk(*spilled.session);
    desk.list()->setFocus();
    QTest::keyClick(desk.list(), Qt::Key_Return);
    QTemporaryDir folder;
    auto* box = desk.page.findChild<AttachmentsBox*>();
    QVERIFY(box->attach(fileWith(folder, "a.png", pngOf(20, 20))));
    QUndoStack& stack = spilled.session->undoStack();
    stack.undo();
    QCOMPARE(spilled.attached().size(), size_t(0));
    stack.redo();
    QCOMPARE(spilled.attached().size(), size_t(1));
    QVERIFY(desk.read());
    QPushButton* off = nullptr;
    for (QPushButton* button : desk.page.findChildren<QPushButton*>("takeOff"))
        if (button->isVisible()) off = button;
    QVERIFY(off);
    QTest::mouseClick(off, Qt::LeftButton);
    QCOMPARE(spilled.attached().size(), size_t(0));
    stack.undo();
    QCOMPARE(spilled.attached().size(), size_t(1));
    QCOMPARE(*spilled.session->store().attachmentContent(spilled.attached()[0].sha256), pngOf(20, 20));
    stack.redo();
    QCOMPARE(spilled.attached().size(), size_t(0));
    QVERIFY(spilled.session->store().check()->empty());
}

void HistoryPageTest::unfitFilesAreRefused() {
    Spilled spilled;
    Desk desk(*spilled.session);
    desk.list()->setFocus();
    QTest::keyClick(desk.list(), Qt::Key_Return);
    QTemporaryDir folder;
    auto* box = desk.page.findChild<AttachmentsBox*>();
    QSignalSpy problems(spilled.session.get(), &Session::problem);
    const auto refused = [&](const QString& path, const char* why) {
        const bool taken = box->attach(path);
        return !taken && !problems.isEmpty() && problems.last().front().toString().contains(QString::fromUtf8(why));
    };
    QFile huge(folder.filePath("huge.png"));  // 2 GB of nothing, which the disk does not hold
    QVERIFY(huge.open(QIODevice::WriteOnly) && huge.resize(2'000'000'000));
    huge.close();
    QElapsedTimer timer;
    timer.start();
    QVERIFY2(refused(huge.fileName(), "at most"),
             qPrintable(problems.isEmpty() ? QString() : problems.last().front().toString()));
    QVERIFY(timer.elapsed() < 500);  // it was not read
    QVERIFY(refused(fileWith(folder, "a.txt", "plain words"), "no PNG"));
    QVERIFY(refused(fileWith(folder, "fake.png", "GIF89a and so on"), "no PNG"));
    QVERIFY(refused(fileWith(folder, "empty.png", ""), "empty"));
    QVERIFY(refused(folder.path(), "cannot be read"));
    QVERIFY(refused(folder.filePath("none.png"), "cannot be read"));
    QCOMPARE(spilled.attached().size(), size_t(0));
}

void HistoryPageTest::readOnlyAttachesNothing() {
    Spilled spilled;
    Session reading(spilled.evening.store(Access::ReadOnly), spilled.evening.clock);
    Desk desk(reading);
    desk.list()->setFocus();
    QTest::keyClick(desk.list(), Qt::Key_Return);
    QVERIFY(desk.panel()->isVisible());
    QVERIFY(!desk.part<QPushButton>("attachFile")->isEnabled());
}

void HistoryPageTest::closesWhileReading() {
    for (int round = 0; round < 5; ++round) {
        HistoryPage page(demo());
        page.show();
        QVERIFY(page.isBusy());
        for (int n = 0; n < round * 20; ++n)
            QCoreApplication::processEvents();
    }
}

QTEST_MAIN(HistoryPageTest)
#include "tst_history.moc"
