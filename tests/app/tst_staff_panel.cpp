// Staff hours beside the calendar, on paper and as CSV; and what an event costs, in its editor.
#include "app/pages/calendar/calendar_page.h"
#include "app/pages/calendar/event_editor.h"
#include "app/pages/calendar/staff_panel.h"
#include "app/pages/calendar/week_view.h"
#include "app/paper/staff_painter.h"
#include "core/documents/staff_words.h"
#include "core/documents/wording.h"
#include "tests/support/demo_session.h"
#include "tests/support/looks.h"
#include "tests/support/stocked_house.h"

#include <QBuffer>
#include <QFile>
#include <QLabel>
#include <QPdfWriter>
#include <QPrinter>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

using namespace laneward;

namespace {

constexpr int patience = 30'000;  // milliseconds

}  // namespace

class StaffPanelTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void theWeekIsListed();
    void itFollowsTheCalendar();
    void keysOpenAndClose();
    void itIsSaved();
    void itIsPainted();
    void whatCannotBeWrittenIsSaid();
    void anEventSaysWhatItCosts();
    void pictures();

private:
    void open();
    StaffPanel* panel() const { return m_page->findChild<StaffPanel*>(); }
    QString cell(int row, int column) const {
        const QAbstractItemModel& model = *panel()->findChild<QTableView*>()->model();
        return model.index(row, column).data().toString();
    }
    QString labels() const {
        QStringList lines;
        for (const QLabel* label : panel()->findChildren<QLabel*>())
            lines << label->text();
        return lines.join('\n');
    }

    std::unique_ptr<support::StockedHouse> m_house;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<CalendarPage> m_page;
};

void StaffPanelTest::init() {
    QLocale::setDefault(QLocale("en_GB"));
    QApplication::setPalette(support::lightPalette());
    m_house = std::make_unique<support::StockedHouse>();
    m_session = m_house->session();
    m_page = std::make_unique<CalendarPage>(*m_session);
    m_page->resize(1150, 640);
    m_page->show();
    QVERIFY(QTest::qWaitForWindowExposed(m_page.get()));
}

void StaffPanelTest::cleanup() {
    m_page.reset();
    m_session.reset();
    m_house.reset();
}

void StaffPanelTest::open() {
    QTest::mouseClick(m_page->findChild<QPushButton*>("staffHours"), Qt::LeftButton);
    QVERIFY(panel() && panel()->isVisible());
}

/// What is listed is what the core says of the week's plan.
void StaffPanelTest::theWeekIsListed() {
    open();
    const DateRange week = panel()->days();
    QCOMPARE(week.days(), 7);
    QVERIFY(week.contains(m_session->today()));
    const Speech speech = m_session->speech();
    const std::vector<StaffWeek> weeks = staffHours(m_session->season(), m_session->planOf(week));
    Seconds bound;
    int row = 0;
    for (const StaffWeek& one : weeks) {
        bound += one.bound;
        for (const StaffDay& day : one.days)
            QCOMPARE(cell(row++, 3), staffRow(day, speech)[3]);
    }
    QCOMPARE(panel()->findChild<QTableView*>()->model()->rowCount(), row);
    QCOMPARE(row, 7);
    QVERIFY(bound > Seconds{0});
    QVERIFY2(labels().contains("In all " + durationText(bound, speech)), qPrintable(labels()));
    QVERIFY(labels().contains("A machine that is attended binds one person"));
}

void StaffPanelTest::itFollowsTheCalendar() {
    open();
    m_page->showDay(m_session->today().addDays(7));
    QVERIFY(panel()->days().contains(m_session->today().addDays(7)));
    m_page->setLevel(CalendarPage::Level::Day);
    QCOMPARE(panel()->days().days(), 1);
    QCOMPARE(panel()->findChild<QTableView*>()->model()->rowCount(), 1);
    m_page->setLevel(CalendarPage::Level::Month);
    QVERIFY(panel()->days().days() >= 28);
}

void StaffPanelTest::keysOpenAndClose() {
    auto* button = m_page->findChild<QPushButton*>("staffHours");
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
    QVERIFY(panel() && panel()->isVisible());
    auto* list = panel()->findChild<QTableView*>();
    QTRY_VERIFY(list->hasFocus());
    QTest::keyClick(list, Qt::Key_Escape);
    QVERIFY(!panel()->isVisible());
    QVERIFY(m_page->findChild<WeekView*>()->hasFocus());
}

void StaffPanelTest::itIsSaved() {
    open();
    QTemporaryDir folder;
    QSignalSpy said(m_session.get(), &Session::said);
    QVERIFY(panel()->saveCsv(folder.filePath("hours.csv")));
    QFile csv(folder.filePath("hours.csv"));
    QVERIFY(csv.open(QIODevice::ReadOnly));
    QCOMPARE(csv.readAll(), staffCsv(staffHours(m_session->season(), m_session->planOf(panel()->days())), m_session->speech()));
    QVERIFY(panel()->savePdf(folder.filePath("hours.pdf")));
    QFile pdf(folder.filePath("hours.pdf"));
    QVERIFY(pdf.open(QIODevice::ReadOnly));
    QVERIFY(pdf.readAll().startsWith("%PDF"));
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath("printed.pdf"));
    QVERIFY(panel()->print(printer));
    QCOMPARE(said.count(), 3);
}

void StaffPanelTest::itIsPainted() {
    open();
    QBuffer bytes;
    QVERIFY(bytes.open(QIODevice::WriteOnly));
    QPdfWriter writer(&bytes);
    prepare(writer, PaperSize::A4);
    std::vector<StaffWeek> weeks = staffHours(m_session->season(), m_session->planOf(panel()->days()));
    QCOMPARE(int(weeks.size()), 1);
    QCOMPARE(paintStaffHours(writer, {"House", m_session->now(), weeks}, m_session->speech()), 1);
    weeks.push_back(weeks.front());
    QBuffer more;
    QVERIFY(more.open(QIODevice::WriteOnly));
    QPdfWriter two(&more);
    prepare(two, PaperSize::Letter);
    QCOMPARE(paintStaffHours(two, {"House", m_session->now(), weeks}, m_session->speech()), 2);
    QCOMPARE(paintStaffHours(two, {"House", m_session->now(), {}}, m_session->speech()), 0);
}

void StaffPanelTest::whatCannotBeWrittenIsSaid() {
    open();
    QSignalSpy problems(m_session.get(), &Session::problem);
    QVERIFY(!panel()->saveCsv("/no/such/folder/hours.csv"));
    QVERIFY(!panel()->savePdf("/no/such/folder/hours.pdf"));
    QCOMPARE(problems.count(), 2);
}

/// The league's own share of the day, and what is not in it.
void StaffPanelTest::anEventSaysWhatItCosts() {
    m_page->editSeries({"league"});
    auto* editor = m_page->findChild<EventEditor*>();
    const auto cost = [&] {
        for (const QLabel* label : editor->findChildren<QLabel*>()) {
            if (label->accessibleName() == "What it costs") return label->isVisibleTo(editor) ? label->text() : QString();
        }
        return QString("no label");
    };
    QTRY_VERIFY2_WITH_TIMEOUT(cost().contains("Product: "), qPrintable(cost()), patience);
    for (const char* words :
         {"EUR", "of conditioner", "Work: ", "For each of its 8 lanes: ", "What an hour of work costs is not known"})
        QVERIFY2(cost().contains(words), qPrintable(cost()));
    QVERIFY2(!cost().contains("for want of a price"), qPrintable(cost()));
    // Without a price it says so.
    const Offer before = *std::find_if(m_session->season().offers.begin(), m_session->season().offers.end(),
                                       [](const Offer& o) { return o.supply.value == "fen"; });
    Offer after = before;
    after.retired = true;
    QVERIFY(m_session->apply("Retire", {RowChange<Offer>{before, after}}));
    m_page->editSeries({"league"});
    QTRY_VERIFY2_WITH_TIMEOUT(cost().contains("Not in it, for want of a price: Fenlight."), qPrintable(cost()), patience);
}

/// At 1280 by 720 less the rail and the head.
void StaffPanelTest::pictures() {
    support::DemoSession demo;
    CalendarPage page(demo.session());
    page.resize(1150, 620);
    page.show();
    QTest::mouseClick(page.findChild<QPushButton*>("staffHours"), Qt::LeftButton);
    QVERIFY(support::picture(page, "staff-hours-light"));
    QApplication::setPalette(support::darkPalette());
    QVERIFY(support::picture(page, "staff-hours-dark"));
    const Plan& plan = demo.session().planOf(demo.session().today().addDays(1));
    page.editSeries(plan.jobs.front().neededBy.front().series);
    auto* editor = page.findChild<EventEditor*>();
    QTRY_VERIFY_WITH_TIMEOUT(!editor->consequences().isEmpty(), patience);
    QVERIFY(support::picture(page, "event-cost-top"));  // lays it out
    auto* bar = editor->findChild<QScrollArea*>()->verticalScrollBar();
    bar->setValue(bar->maximum());
    QVERIFY(support::picture(page, "event-cost-dark"));
    QApplication::setPalette(support::lightPalette());
    QVERIFY(support::picture(page, "event-cost-light"));
    QDir(qEnvironmentVariable("LANEWARD_BINARY", QDir::tempPath())).mkpath("pictures");
    StaffPanel sheet(demo.session());
    sheet.setDays({QDate(2026, 11, 9), QDate(2026, 11, 15)});
    QVERIFY(sheet.savePdf(qEnvironmentVariable("LANEWARD_BINARY", QDir::tempPath()) + "/pictures/staff-hours.pdf"));
}

QTEST_MAIN(StaffPanelTest)
#include "tst_staff_panel.moc"
