// The centre in the window: settings, machines, people, shifts and what is out of service, by mouse and by keyboard.
#include "app/edits/edit_form.h"
#include "app/models/panel_list.h"
#include "app/models/plain_rows.h"
#include "app/pages/centre/centre_view.h"
#include "app/widgets/quantity_box.h"
#include "tests/support/demo_window.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"
#include "tests/support/tab_order.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QSortFilterProxyModel>
#include <QSpinBox>
#include <QTableView>
#include <QTest>

using namespace laneward;

namespace {

using Tab = CentreView::Tab;

struct Desk {
    support::Evening evening;
    std::unique_ptr<Session> session = support::sessionOn(evening);
    CentreView view{*session};

    Desk() {
        view.resize(1'100, 640);
        view.show();
        if (!QTest::qWaitForWindowExposed(&view)) qFatal("the view is not shown");
    }

    template <class T>
    T* part(const char* name) {
        T* found = view.findChild<T*>(name);
        if (!found) qFatal("no %s", name);
        return found;
    }
    const Centre& centre() { return session->season().centre; }
    void click(const char* button) { QTest::mouseClick(part<QPushButton>(button), Qt::LeftButton); }
    EditForm* form() {
        for (EditForm* form : view.findChildren<EditForm*>())
            if (form->isOpen()) return form;
        return nullptr;
    }
    QString problems() { return form() ? form()->problems().join(u'\n') : QString(); }
    QString sentence(const char* list) { return part<QLabel>(qPrintable(QString(list) + "Sentence"))->text(); }
    void choose(const char* list, const QString& id) {
        auto* table = part<QTableView>(qPrintable(QString(list) + "List"));
        const auto* proxy = static_cast<QSortFilterProxyModel*>(table->model());
        chooseRow(*table, static_cast<PlainRows*>(proxy->sourceModel())->rowOf(id));
    }
    void type(const char* field, const QString& text) {
        auto* widget = part<QWidget>(field);
        widget->setFocus();
        QTest::keyClick(widget, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(widget, text);
    }
    void keep() { QTest::keyClick(form(), Qt::Key_Return); }
    int steps() { return session->undoStack().index(); }
};

}  // namespace

class CentreViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cleanup() {
        QApplication::setPalette(support::lightPalette());
        QApplication::setLayoutDirection(Qt::LeftToRight);
    }

    void aMachineIsEntered() {
        Desk desk;
        desk.view.showTab(Tab::Machines);
        QCOMPARE(desk.sentence("machines"), QString("1 lane machine(s), all in service."));
        desk.click("newMachine");
        QVERIFY(desk.form());
        QVERIFY(desk.problems().contains("has no name"));
        desk.keep();  // stays: a name is missing
        QVERIFY(desk.form());
        desk.type("machineName", "Otter");
        QVERIFY2(desk.problems().contains("used twice"), qPrintable(desk.problems()));
        desk.type("machineName", "Heron");
        QCOMPARE(desk.problems(), QString());
        desk.type("tankFirstProduct", "Fenlight");
        desk.type("barredLanes", "1-4");
        desk.keep();
        QVERIFY(!desk.form());
        QCOMPARE(desk.centre().machines.size(), size_t(2));
        const Machine* heron = nullptr;
        for (const Machine& machine : desk.centre().machines)
            if (machine.name == "Heron") heron = &machine;
        QVERIFY(heron);
        Machine usual;
        usual.id = heron->id;
        usual.name = "Heron";
        usual.version = heron->version;
        usual.conditioners[0] = "Fenlight";
        usual.bars.lanes = LaneSet::range(1, 4);
        QVERIFY(*heron == usual);
        desk.session->undoStack().undo();
        QCOMPARE(desk.centre().machines.size(), size_t(1));
    }

    /// What nobody typed over stays to the second and the microlitre, in either units.
    void whatIsNotTypedStays_data() {
        QTest::addColumn<int>("units");
        QTest::newRow("metric") << int(UnitSystem::Metric);
        QTest::newRow("US") << int(UnitSystem::UsCustomary);
    }

    void whatIsNotTypedStays() {
        QFETCH(int, units);
        support::Evening evening;
        const auto session = support::sessionOn(evening);
        CentreFacts facts = session->season().centre.facts;
        facts.settings.units = UnitSystem(units);
        Machine odd = session->season().centre.machines.front();
        odd.times.leaveBay = Seconds{251};
        odd.times.charge = Seconds{12'345};
        odd.times.duty = Seconds{1};
        odd.capacity.cleanerPerLane = Microlitres{110'003};
        odd.capacity.wastePerLane = Microlitres{99'999};
        odd.capacity.conditioner[1] = Microlitres{1'234'567};
        odd.capacity.conditionerPermille = 1'083;
        odd.bars.treatments = {Treatment::CleanOnly};
        odd.bars.patterns = {session->season().patterns.front().id};
        odd.weight = Grams{93'512};
        QVERIFY(session->apply("Odd", {RowChange<CentreFacts>{session->season().centre.facts, facts},
                                       RowChange<Machine>{session->season().centre.machines.front(), odd}}));
        CentreView view(*session);
        view.show();
        view.showTab(Tab::Machines);
        QTest::mouseClick(view.findChild<QPushButton*>("changeMachine"), Qt::LeftButton);
        auto* name = view.findChild<QLineEdit*>("machineName");
        name->setText("Renamed");
        QTest::keyClick(name, Qt::Key_Return);
        const Machine& after = session->season().centre.machines.front();
        QCOMPARE(after.name, QString("Renamed"));
        odd.name = "Renamed";
        odd.version = after.version;
        QVERIFY(after == odd);
    }

    void planningGoesByTheTimes() {
        Desk desk;
        desk.view.showTab(Tab::Machines);
        const Job before = desk.session->planOf(desk.session->today()).jobs.front();
        desk.click("changeMachine");
        desk.type("laneTime0", "120");
        desk.type("leaveBay", "8.5");
        desk.keep();
        QCOMPARE(desk.centre().machines.front().times.lane[0], Seconds{120});
        QCOMPARE(desk.centre().machines.front().times.leaveBay, Seconds{510});
        const Job after = desk.session->planOf(desk.session->today()).jobs.front();
        QVERIFY(after.time.length() > before.time.length());
    }

    void whatAMachineCannotBeIsSaid() {
        Desk desk;
        desk.view.showTab(Tab::Machines);
        const Machine before = desk.centre().machines.front();
        desk.click("changeMachine");
        desk.type("laneTime0", "0");
        QVERIFY2(desk.problems().contains("a time of the machine"), qPrintable(desk.problems()));
        desk.type("laneTime0", "90");
        desk.type("lanesPerCharge", "1");
        QVERIFY2(desk.problems().contains("a capacity of the machine"), qPrintable(desk.problems()));
        desk.type("lanesPerCharge", "40");
        desk.type("barredLanes", "one to three");
        QVERIFY2(desk.problems().contains("is not a list of lanes"), qPrintable(desk.problems()));
        desk.keep();
        QVERIFY(desk.form());
        QTest::keyClick(desk.form(), Qt::Key_Escape);
        QVERIFY(!desk.form());
        QVERIFY(desk.centre().machines.front() == before);
        QCOMPARE(desk.steps(), 0);
    }

    /// A machine that has done something stays; one that has not goes, and comes back.
    void whatIsUsedStays() {
        Desk desk;
        desk.view.showTab(Tab::Machines);
        desk.click("newMachine");
        desk.type("machineName", "Heron");
        desk.keep();
        const MachineId heron =
            desk.centre().machines.back().name == "Heron" ? desk.centre().machines.back().id : desk.centre().machines.front().id;
        desk.choose("machines", heron.value);
        desk.click("removeMachine");
        QCOMPARE(desk.centre().machines.size(), size_t(1));
        desk.session->undoStack().undo();
        QCOMPARE(desk.centre().machines.size(), size_t(2));
        desk.session->confirmDay(desk.session->today());
        const MachineId used = desk.session->season().confirmed.front().machine;
        QSignalSpy problem(desk.session.get(), &Session::problem);
        desk.choose("machines", used.value);
        desk.click("removeMachine");
        QCOMPARE(problem.size(), 1);
        QVERIFY2(problem[0][0].toString().contains("still used"), qPrintable(problem[0][0].toString()));
        QCOMPARE(desk.centre().machines.size(), size_t(2));
    }

    void peopleComeAndGo() {
        Desk desk;
        desk.view.showTab(Tab::People);
        QCOMPARE(desk.sentence("people"), QString("2 person(s) can sign records."));
        desk.click("newPerson");
        desk.type("personName", "Cora Marsh");
        desk.part<QComboBox>("personRole")->setCurrentIndex(2);
        desk.keep();
        QCOMPARE(desk.centre().people.size(), size_t(3));
        QCOMPARE(desk.sentence("people"), QString("3 person(s) can sign records."));
        for (const Person& person : desk.centre().people)
            if (person.name == "Cora Marsh") desk.session->setPerson(person.id);
        for (const char* name : {"ada", "ben"}) {
            desk.choose("people", name);
            QTest::keyClick(desk.part<QTableView>("peopleList"), Qt::Key_Return);
            QVERIFY(desk.form());
            desk.part<QCheckBox>("personActive")->click();
            desk.keep();
            QVERIFY(!desk.form());
        }
        QCOMPARE(desk.sentence("people"), QString("1 person(s) can sign records."));
        for (const Person& person : desk.centre().people)
            if (person.active) desk.choose("people", person.id.value);
        desk.click("changePerson");
        desk.part<QCheckBox>("personActive")->click();
        QVERIFY2(desk.problems().contains("needs somebody who works there"), qPrintable(desk.problems()));
        desk.keep();
        QVERIFY(desk.form());
    }

    void shiftsWithTheirDays() {
        Desk desk;
        desk.view.showTab(Tab::Shifts);
        QVERIFY2(desk.sentence("shifts").startsWith("Today: 14:00"), qPrintable(desk.sentence("shifts")));
        desk.click("newShift");
        desk.type("shiftName", "early");
        desk.part<QCheckBox>("shiftDay6")->click();
        desk.type("shiftPeople", "2");
        desk.type("shiftAfter", "30");
        desk.type("shiftDaysOff", "2026-12-25; 1 April");
        QVERIFY2(desk.problems().contains("'1 April' is no date"), qPrintable(desk.problems()));
        desk.type("shiftDaysOff", "2026-12-25, 2026-12-26");
        desk.keep();
        QCOMPARE(desk.centre().shifts.size(), size_t(2));
        const Shift& early = desk.centre().shifts[0].name == "early" ? desk.centre().shifts[0] : desk.centre().shifts[1];
        QCOMPARE(int(early.weekdays), 0x3f);
        QCOMPARE(early.people, 2);
        QCOMPARE(early.overtimeAfter, minutes(30));
        QCOMPARE(early.overtimeBefore, minutes(60));
        QCOMPARE(early.daysOff, (std::vector<QDate>{{2026, 12, 25}, {2026, 12, 26}}));
        // Taken out again, the house has nobody: said, and planning says it too.
        while (!desk.centre().shifts.empty()) {
            desk.choose("shifts", desk.centre().shifts.front().id.value);
            desk.click("removeShift");
        }
        QVERIFY2(desk.sentence("shifts").startsWith("Nobody works"), qPrintable(desk.sentence("shifts")));
        desk.session->undoStack().undo();
        desk.session->undoStack().undo();
        QCOMPARE(desk.centre().shifts.size(), size_t(2));
    }

    void lanesAndMachinesGoOutOfService() {
        Desk desk;
        desk.view.showTab(Tab::Outages);
        QCOMPARE(desk.sentence("outages"), QString("Everything is in service."));
        desk.click("newOutage");
        QVERIFY2(desk.problems().contains("say which lanes"), qPrintable(desk.problems()));
        desk.type("outageLanes", "3-99");
        QVERIFY2(desk.problems().contains("does not exist"), qPrintable(desk.problems()));
        desk.type("outageLanes", "3-4");
        desk.part<QCheckBox>("outageOpen")->setChecked(false);
        auto* until = desk.part<QDateTimeEdit>("outageEnd");
        until->setDateTime(desk.part<QDateTimeEdit>("outageBegin")->dateTime().addSecs(-60));
        QVERIFY2(desk.problems().contains("lanes 3-4' ends before it begins"), qPrintable(desk.problems()));
        until->setDateTime(desk.part<QDateTimeEdit>("outageBegin")->dateTime().addDays(2));
        desk.keep();
        QCOMPARE(desk.centre().outages.size(), size_t(1));
        QCOMPARE(desk.centre().outages[0].lanes, LaneSet::range(3, 4));
        QCOMPARE(desk.sentence("outages"), QString("Out of service now: lanes 3-4."));
        // A machine, until further notice: nothing can be planned with it.
        desk.click("newOutage");
        desk.part<QComboBox>("outageWhat")->setCurrentIndex(1);
        QVERIFY(!desk.part<QLineEdit>("outageLanes")->isVisible());
        desk.type("outageNote", "waits for a part");
        desk.keep();
        QVERIFY(desk.session->planOf(desk.session->today()).jobs.empty());
        QVERIFY(!desk.session->planOf(desk.session->today()).unmet.empty());
        desk.view.showTab(Tab::Machines);
        QCOMPARE(desk.sentence("machines"), QString("0 lane machine(s) in service, of 1."));
        desk.view.showTab(Tab::Outages);
        for (const Outage& outage : desk.centre().outages)
            if (outage.machine) desk.choose("outages", outage.id.value);
        desk.evening.clock.set(support::eveningNow + minutes(1));
        desk.click("endOutage");
        QVERIFY(!desk.session->planOf(desk.session->today()).jobs.empty());
        QSignalSpy said(desk.session.get(), &Session::said);
        desk.click("endOutage");
        QCOMPARE(said.size(), 1);  // it is over already
    }

    void theHouseIsChanged() {
        Desk desk;
        QVERIFY(desk.sentence("house").startsWith("Reedling Lanes has 12 lane(s)"));
        desk.click("changeHouse");
        desk.type("centreLanes", "999");
        QVERIFY2(desk.problems().contains("1 to 200 are possible"), qPrintable(desk.problems()));
        desk.type("centreLanes", "14");
        desk.type("centreReserve", "12.5");
        desk.type("centreCurrency", "euro");
        QVERIFY2(desk.problems().contains("is not a currency"), qPrintable(desk.problems()));
        desk.type("centreCurrency", "gbp");
        desk.part<QComboBox>("centrePaper")->setCurrentIndex(1);
        CentreFacts expected = desk.centre().facts;
        desk.keep();
        QVERIFY(!desk.form());
        expected.lanes = 14;
        expected.settings.reserve = Seconds{750};
        expected.settings.currency = "GBP";
        expected.settings.letterPaper = true;
        expected.version = desk.centre().facts.version;
        QVERIFY(desk.centre().facts == expected);
        QVERIFY(desk.sentence("house").startsWith("Reedling Lanes has 14 lane(s)"));
        desk.session->undoStack().undo();
        QCOMPARE(desk.centre().facts.lanes, 12);
    }

    void whoMayOnlyReadCannotChange() {
        support::Evening evening;
        auto store = Store::open({Location::Kind::Sqlite, evening.path(), {}}, Access::ReadOnly);
        QVERIFY(store);
        Session session(*std::move(store), evening.clock);
        CentreView view(session);
        view.show();
        for (const char* button : {"changeHouse", "newMachine", "changeMachine", "removeMachine", "newPerson", "changePerson",
                                   "newShift", "changeShift", "removeShift", "newOutage"})
            QVERIFY2(!view.findChild<QPushButton*>(button)->isEnabled(), button);
        view.showTab(Tab::People);
        QTest::keyClick(view.findChild<QTableView*>("peopleList"), Qt::Key_Return);
        for (const EditForm* form : view.findChildren<EditForm*>())
            QVERIFY(!form->isOpen());
    }

    /// Every page still says what matters when there is nothing to work with, or nobody.
    void nothingToWorkWith() {
        support::Evening evening;
        MainWindow window(evening.clock);
        QVERIFY(window.openCentre(evening.location()));
        window.show();
        QVERIFY(QTest::qWaitForWindowExposed(&window));
        Session& session = window.workspace()->session();
        session.setPerson({"ada"});
        const auto showAll = [&] {
            for (size_t page = 0; page < window.workspace()->pages().size(); ++page) {
                window.workspace()->showPage(int(page));
                QCoreApplication::processEvents();
                QVERIFY(!window.workspace()->currentPage()->headline().isEmpty());
            }
            window.workspace()->showSheet(session.today());
            window.workspace()->showGuide();
            QTRY_VERIFY(!session.isSearching());
            window.workspace()->showPage(0);
        };
        std::vector<Change> gone;
        for (const Machine& machine : session.season().centre.machines)
            gone.push_back(RowChange<Machine>{machine, std::nullopt});
        QVERIFY(session.apply("No machine", std::move(gone)));
        showAll();
        const Plan& none = session.planOf(session.today());
        QVERIFY(none.jobs.empty() && !none.unmet.empty());
        QVERIFY2(window.workspace()->currentPage()->headline().contains("will not get"),
                 qPrintable(window.workspace()->currentPage()->headline()));
        session.undoStack().undo();
        std::vector<Change> off;
        for (const Shift& shift : session.season().centre.shifts)
            off.push_back(RowChange<Shift>{shift, std::nullopt});
        QVERIFY(session.apply("Nobody", std::move(off)));
        showAll();
        QVERIFY(session.planOf(session.today()).jobs.empty());
        session.undoStack().undo();
        QVERIFY(!session.planOf(session.today()).jobs.empty());
        // A house that has become smaller than its events.
        CentreFacts small = session.season().centre.facts;
        small.lanes = 2;
        small.zone = "America/St_Johns";
        QVERIFY(session.apply("Small", {RowChange<CentreFacts>{session.season().centre.facts, small}}));
        showAll();
        for (const Job& job : session.planOf(session.today()).jobs)
            QVERIFY(job.laneSet().last() <= 2);
        session.undoStack().undo();
        showAll();
    }

    /// From the menu's key to the list, over Esc back to the page.
    void fromTheWindowAndBack() {
        support::DemoWindow demo;
        MainWindow& window = demo.window;
        window.show();
        QVERIFY(QTest::qWaitForWindowExposed(&window));
        QTest::keyClick(&window, Qt::Key_Comma, Qt::ControlModifier);
        auto* view = window.findChild<CentreView*>();
        QVERIFY(view && view->isVisible());
        QTRY_VERIFY(view->isAncestorOf(QApplication::focusWidget()));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab, Qt::ControlModifier);
        QVERIFY(view->findChild<QTableView*>("machinesList")->isVisible());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        QTRY_VERIFY(!window.findChild<CentreView*>());
        QVERIFY(window.workspace()->currentPage()->isVisible());
    }

    void tabReachesEverything_data() {
        QTest::addColumn<int>("tab");
        QTest::addColumn<QString>("button");
        const char* const buttons[] = {"changeHouse", "changeMachine", "changePerson", "changeShift", "newOutage"};
        for (int tab = 0; tab < Tab::TabCount; ++tab) {
            QTest::addRow("list %d", tab) << tab << QString();
            QTest::addRow("form %d", tab) << tab << QString(buttons[tab]);
        }
    }

    void tabReachesEverything() {
        QFETCH(int, tab);
        QFETCH(QString, button);
        Desk desk;
        desk.view.showTab(Tab(tab));
        if (!button.isEmpty()) desk.click(qPrintable(button));
        const QStringList passed = support::passedByTab(desk.view);
        QVERIFY2(passed.isEmpty(), qPrintable(passed.join(' ')));
    }

    void pictures_data() {
        QTest::addColumn<QString>("look");
        for (const QString& look : support::looks())
            QTest::newRow(qPrintable(look)) << look;
    }

    void pictures() {
        QFETCH(QString, look);
        const support::Look worn(look);
        support::DemoWindow demo;
        demo.window.resize(1'280, 720);
        demo.window.show();
        QVERIFY(QTest::qWaitForWindowExposed(&demo.window));
        demo.window.workspace()->showCentre();
        auto* view = demo.window.findChild<CentreView*>();
        const char* const names[] = {"house", "machines", "people", "shifts", "outages"};
        const char* const buttons[] = {"changeHouse", "changeMachine", "changePerson", "changeShift", "newOutage"};
        for (int tab = 0; tab < Tab::TabCount; ++tab) {
            view->showTab(Tab(tab));
            QVERIFY(support::picture(demo.window, QString("centre_%1_%2").arg(names[tab], look)));
            QTest::mouseClick(view->findChild<QPushButton*>(buttons[tab]), Qt::LeftButton);
            QVERIFY(support::picture(demo.window, QString("centre_%1_form_%2").arg(names[tab], look)));
        }
    }
};

QTEST_MAIN(CentreViewTest)
#include "tst_centre_view.moc"
