// The page Service: what falls due as a list, recording a service by mouse and by keyboard alone, taking it back.
#include "app/edits/busy_bar.h"
#include "app/pages/service/due_model.h"
#include "app/pages/service/service_form.h"
#include "app/pages/service/service_page.h"
#include "app/widgets/quantity_box.h"
#include "tests/support/big_season.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QSpinBox>
#include <QTableView>
#include <QTest>
#include <QTimer>

using namespace laneward;

namespace {

constexpr int patience = 30'000;

Duty duty(const char* id, const char* name, int everyDays) {
    Duty made{{id}, DutyKind::Clean, name};
    made.triggers = {{MeterKind::Days, everyDays}};
    made.steps = {"Unplug the machine", "Wipe it"};
    made.minutes = 15;
    made.cautions = {"caution.moving-parts"};
    return made;
}

struct Desk {
    Desk() : session(evening.store(), evening.clock) {
        session.setPerson(session.season().centre.people.front().id);
        Supply brush{{"brush"}, "Brush", SupplyKind::Part};
        brush.container = Amount{1};
        brush.basis = UseBasis::WhenServiced;
        ServiceItem item{{"item"}, session.season().centre.machines.front().id, ItemKind::CushionBrush, "Cushion brush"};
        item.duties = {duty("wipe", "Wipe the brush", 7), duty("change", "Change the brush", 90)};
        item.duties.back().kind = DutyKind::Replace;
        item.duties.back().parts = {{{"brush"}, Amount{1}}};
        isMade = session.apply("Items", {RowChange<Supply>{{}, brush}, RowChange<ServiceItem>{{}, item}});
    }

    template <class T>
    T* part(const char* name) {
        return page->findChild<T*>(name);
    }

    void open() {
        page = std::make_unique<ServicePage>(session);
        page->resize(1'100, 640);
        page->show();
        QVERIFY(QTest::qWaitForWindowExposed(page.get()));
        QTRY_VERIFY_WITH_TIMEOUT(!page->isBusy() && part<QTableView>("dueList")->model()->rowCount() == 2, patience);
    }

    QString cell(int row, int column) { return part<QTableView>("dueList")->model()->index(row, column).data().toString(); }

    support::Evening evening;
    Session session;
    bool isMade = false;
    std::unique_ptr<ServicePage> page;
};

}  // namespace

class ServiceTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void withoutItemsItSaysWhatToDo();
    void listTellsWhatIsDue();
    void recordsByKeyboardAlone();
    void partsAreProposedAndBooked();
    void undoBringsItBack();
    void readOnlyRecordsNothing();
    void whatIsTypedStays();
    void aLongOutlookIsCancelledAndGoesOn();
    void theOldAnswerStays();
};

void ServiceTest::withoutItemsItSaysWhatToDo() {
    support::Evening evening;
    Session session(evening.store(), evening.clock);
    ServicePage page(session);
    page.show();
    QVERIFY(page.headline().contains("Nothing is looked after"));
    bool told = false;
    for (const QLabel* label : page.findChildren<QLabel*>())
        told |= label->isVisible() && label->text().contains("No service items");
    QVERIFY(told);
}

void ServiceTest::listTellsWhatIsDue() {
    Desk desk;
    QVERIFY(desk.isMade);
    desk.open();
    QVERIFY(desk.cell(0, DueModel::What).contains("brush"));
    QVERIFY(desk.cell(0, DueModel::Item).contains("Cushion brush"));
    QVERIFY(!desk.page->headline().isEmpty() && !desk.page->headline().contains("Working"));
    const QAbstractItemModel* list = desk.part<QTableView>("dueList")->model();
    QVERIFY(list->index(0, DueModel::Due).data(DueModel::UrgentRole).toBool());  // never done
    for (int column = 0; column < DueModel::ColumnCount; ++column)
        QVERIFY(!list->index(0, column).data(Qt::AccessibleTextRole).toString().isEmpty());
    QVERIFY(support::picture(*desk.page, "service-page"));
}

void ServiceTest::recordsByKeyboardAlone() {
    Desk desk;
    desk.open();
    auto* list = desk.part<QTableView>("dueList");
    list->setFocus();
    const int row = desk.cell(0, DueModel::What).startsWith("Wipe") ? 0 : 1;
    list->setCurrentIndex(list->model()->index(row, 0));
    QTest::keyClick(list, Qt::Key_Return);
    auto* form = desk.page->findChild<ServiceForm*>();
    QVERIFY(form->isVisible());
    const QString steps = desk.part<QLabel>("serviceSteps")->text();
    QVERIFY(steps.contains("1. Unplug the machine") && steps.contains("2. Wipe it"));
    QVERIFY2(steps.startsWith("! "), qPrintable(steps));  // the caution comes first
    QCOMPARE(desk.part<QSpinBox>("serviceMinutes")->value(), 15);
    desk.part<QLineEdit>("serviceFinding")->setFocus();
    QTest::keyClicks(desk.part<QLineEdit>("serviceFinding"), "Fluff");
    QTest::keyClick(desk.part<QLineEdit>("serviceFinding"), Qt::Key_Return);
    QVERIFY(!form->isVisible());
    const std::vector<ServiceRecord>& records = desk.session.season().services;
    QCOMPARE(records.size(), size_t(1));
    QCOMPARE(records.front().duty, DutyId{"wipe"});
    QCOMPARE(records.front().finding, QString("Fluff"));
    QCOMPARE(records.front().minutes, 15);
    QCOMPARE(records.front().at, desk.session.now());
    QTRY_VERIFY_WITH_TIMEOUT(!desk.page->isBusy(), patience);
    QCOMPARE(desk.cell(0, DueModel::What), QString("Change the brush"));  // what was done is due later
}

void ServiceTest::partsAreProposedAndBooked() {
    Desk desk;
    desk.open();
    auto* list = desk.part<QTableView>("dueList");
    const int row = desk.cell(0, DueModel::What).startsWith("Change") ? 0 : 1;
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(list->model()->index(row, 0)).center());
    QTest::mouseClick(desk.part<QPushButton>("recordService"), Qt::LeftButton);
    QCOMPARE(desk.part<QuantityBox>("servicePart")->amount(), Amount{1});
    desk.part<QComboBox>("serviceResult")->setCurrentIndex(1);
    QTest::mouseClick(desk.part<QPushButton>("keepService"), Qt::LeftButton);
    QCOMPARE(desk.session.season().services.front().result, ServiceResult::Failed);
    // There was none on the books: the ledger says so and goes on.
    QCOMPARE(desk.session.season().stock.onHand({"brush"}), Amount{-1});
}

void ServiceTest::undoBringsItBack() {
    Desk desk;
    desk.open();
    auto* list = desk.part<QTableView>("dueList");
    list->setCurrentIndex(list->model()->index(0, 0));
    const QString what = desk.cell(0, DueModel::What);
    QTest::mouseClick(desk.part<QPushButton>("recordService"), Qt::LeftButton);
    QTest::mouseClick(desk.part<QPushButton>("keepService"), Qt::LeftButton);
    QTRY_VERIFY_WITH_TIMEOUT(!desk.page->isBusy(), patience);
    desk.session.undoStack().undo();
    QTRY_VERIFY_WITH_TIMEOUT(!desk.page->isBusy(), patience);
    QCOMPARE(lastDone(desk.session.season()).size(), size_t(0));
    QVERIFY(desk.cell(0, DueModel::What) == what || desk.cell(1, DueModel::What) == what);
    QVERIFY(list->model()->index(0, DueModel::Due).data(DueModel::UrgentRole).toBool());
}

void ServiceTest::readOnlyRecordsNothing() {
    Desk desk;
    Session reading(desk.evening.store(Access::ReadOnly), desk.evening.clock);
    ServicePage page(reading);
    page.show();
    auto* list = page.findChild<QTableView*>("dueList");
    QTRY_VERIFY_WITH_TIMEOUT(list->model()->rowCount() == 2, patience);
    QVERIFY(!page.findChild<QPushButton*>("recordService")->isEnabled());
    list->setCurrentIndex(list->model()->index(0, 0));
    QTest::keyClick(list, Qt::Key_Return);
    QVERIFY(!page.findChild<ServiceForm*>()->isVisible());
}

void ServiceTest::whatIsTypedStays() {
    Desk desk;
    desk.open();
    auto* list = desk.part<QTableView>("dueList");
    list->setCurrentIndex(list->model()->index(0, 0));
    QTest::mouseClick(desk.part<QPushButton>("recordService"), Qt::LeftButton);
    QTest::keyClicks(desk.part<QLineEdit>("serviceNote"), "half done");
    QVERIFY(desk.session.reload());
    QTRY_VERIFY_WITH_TIMEOUT(!desk.page->isBusy(), patience);
    QVERIFY(desk.page->findChild<ServiceForm*>()->isVisible());
    QCOMPARE(desk.part<QLineEdit>("serviceNote")->text(), QString("half done"));
    QTest::keyClick(desk.part<QLineEdit>("serviceNote"), Qt::Key_Escape);
    QVERIFY(!desk.page->findChild<ServiceForm*>()->isVisible());
    QVERIFY(desk.session.season().services.empty());
}

/// A year of a large centre with something to look after: working its outlook out takes a while.
struct LargeCentre {
    LargeCentre() {
        const State big = support::bigSeason();
        SeasonState season;
        season.centre = big.centre;
        season.series = big.series;
        season.patterns = big.patterns;
        ServiceItem item{{"item"}, season.centre.machines.front().id, ItemKind::CushionBrush, "Cushion brush"};
        item.duties = {duty("wipe", "Wipe the brush", 7)};
        season.items = {item};
        auto store = Store::open({Location::Kind::Sqlite, directory.filePath("large.laneward"), {}}, Access::Create);
        if (!store || !(*store)->replaceAll(season, {}, {}, clock.now())) qFatal("not stored");
        session = std::make_unique<Session>(*std::move(store), clock);
    }

    QTemporaryDir directory;
    FixedClock clock{Instant{1'788'609'600}};  // 2026-09-05T12:00Z
    std::unique_ptr<Session> session;
};

void ServiceTest::aLongOutlookIsCancelledAndGoesOn() {
    LargeCentre large;
    ServicePage page(*large.session);
    page.resize(1'100, 640);
    page.wake();
    page.findChild<BusyBar*>()->findChild<QTimer*>()->setInterval(0);  // one that takes its time would be longer than this test
    page.show();
    auto* cancel = page.findChild<QPushButton*>("cancelWork");
    auto* why = page.findChild<QLabel*>("whyStopped");
    QVERIFY(page.isBusy());
    while (page.isBusy() && !cancel->isVisible())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    QVERIFY2(cancel->isVisible(), "it was worked out before anybody could have cancelled");
    QVERIFY(page.isBusy() && page.findChild<QProgressBar*>()->isVisible());
    QTest::mouseClick(cancel, Qt::LeftButton);
    QVERIFY(!page.isBusy() && !cancel->isVisible() && cancel->height() >= 28);
    QCOMPARE(why->text(), QString("Stopped. What falls due is not known."));
    QCOMPARE(page.headline(), QString("What falls due is not known."));
    QVERIFY(support::picture(page, "service-stopped"));
    auto* again = page.findChild<QPushButton*>("workAgain");
    again->setFocus();
    QTest::keyClick(again, Qt::Key_Space);
    QVERIFY(page.isBusy() && !why->isVisible());
    QTRY_VERIFY_WITH_TIMEOUT(!page.isBusy(), patience);
    QVERIFY(page.findChild<QTableView*>("dueList")->model()->rowCount() == 1 && !again->isVisible());
    QVERIFY2(!page.headline().contains("not known"), qPrintable(page.headline()));
}

void ServiceTest::theOldAnswerStays() {
    Desk desk;
    desk.open();
    auto* list = desk.part<QTableView>("dueList");
    const QString headline = desk.page->headline();
    QTest::keyClick(list, Qt::Key_Escape);  // there is nothing to stop
    QVERIFY(!desk.part<QPushButton>("workAgain")->isVisible());
    QVERIFY(desk.session.reload());
    QVERIFY(desk.page->isBusy());
    QTest::keyClick(list, Qt::Key_Escape);
    QVERIFY(!desk.page->isBusy());
    QCOMPARE(list->model()->rowCount(), 2);
    QCOMPARE(desk.page->headline(), headline);
    QCOMPARE(desk.part<QLabel>("whyStopped")->text(), QString("Stopped. What is shown is older than the last change."));
    // A form takes Esc first.
    list->setCurrentIndex(list->model()->index(0, 0));
    QTest::mouseClick(desk.part<QPushButton>("workAgain"), Qt::LeftButton);
    QTest::mouseClick(desk.part<QPushButton>("recordService"), Qt::LeftButton);
    QVERIFY(desk.page->isBusy());
    QTest::keyClick(desk.part<QLineEdit>("serviceNote"), Qt::Key_Escape);
    QVERIFY(desk.page->isBusy() && !desk.page->findChild<ServiceForm*>()->isVisible());
    QTRY_VERIFY_WITH_TIMEOUT(!desk.page->isBusy(), patience);
}

QTEST_MAIN(ServiceTest)
#include "tst_service.moc"
