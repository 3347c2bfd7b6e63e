// The tab Machines: what a machine has and when it falls due; items made, changed, retired and brought back; counters read; what
// was last done before the program came. By mouse and by keyboard, each taken back by one undo.
#include "app/models/panel_list.h"
#include "app/models/plain_rows.h"
#include "app/pages/service/counter_form.h"
#include "app/pages/service/item_form.h"
#include "app/pages/service/last_done_form.h"
#include "app/pages/service/machine_rows.h"
#include "app/pages/service/machines_panel.h"
#include "app/pages/service/service_form.h"
#include "app/pages/service/service_page.h"
#include "app/widgets/quantity_box.h"
#include "app/window/style.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"
#include "tests/support/tab_order.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QSpinBox>
#include <QTabWidget>
#include <QTableView>
#include <QTest>

using namespace laneward;

namespace {

constexpr int patience = 60'000;

struct Desk {
    explicit Desk(bool empty = false) : session(evening.store(), evening.clock) {
        session.setPerson(session.season().centre.people.front().id);
        machine = session.season().centre.machines.front().id;
        Supply part{{"brush"}, "Brush", SupplyKind::Part};
        part.container = Amount{1};
        part.basis = UseBasis::WhenServiced;
        std::vector<Change> changes{RowChange<Supply>{{}, part}};
        ServiceItem item{{"item"}, machine, ItemKind::CushionBrush, "Cushion brush"};
        item.duties = {{{"wipe"}, DutyKind::Clean, "Wipe the brush", {{MeterKind::Days, 7}}},
                       {{"change"}, DutyKind::Replace, "Change the brush", {{MeterKind::Lanes, 1'000}, {MeterKind::Days, 90}}}};
        item.duties[1].parts = {{{"brush"}, Amount{1}}};
        if (!empty) changes.push_back(RowChange<ServiceItem>{{}, item});
        isMade = session.apply("Items", std::move(changes));
        page = std::make_unique<ServicePage>(session);
        page->resize(1'180, 640);
        page->show();
        [this] { QVERIFY(QTest::qWaitForWindowExposed(page.get())); }();
        page->findChild<QTabWidget*>()->setCurrentIndex(1);
        wait();
    }

    template <class T>
    T* part(const char* name) {
        return page->findChild<T*>(name);
    }
    void wait() {
        [this] { QTRY_VERIFY_WITH_TIMEOUT(!page->isBusy(), patience); }();
    }
    PlainRows& rows() {
        return *static_cast<PlainRows*>(
            static_cast<QSortFilterProxyModel*>(part<QTableView>("machineList")->model())->sourceModel());
    }
    QString cell(const char* duty, int column) {
        const int row = rows().rowOf(duty);
        return row < 0 ? QString() : rows().index(row, column).data().toString();
    }
    void choose(const char* duty) { chooseRow(*part<QTableView>("machineList"), rows().rowOf(duty)); }
    void click(const char* name) { QTest::mouseClick(part<QPushButton>(name), Qt::LeftButton); }
    /// The form that is open.
    template <class T>
    T* form() {
        T* found = page->findChild<T*>();
        return found && found->isOpen() ? found : nullptr;
    }
    void saveByMouse(EditForm& form) { QTest::mouseClick(form.findChild<QPushButton*>("saveForm"), Qt::LeftButton); }
    void type(QWidget* field, const QString& text) {
        field->setFocus();
        QTest::keyClick(field, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(field, text);
    }
    const ServiceItem& item() const { return *findItem(session.season().items, {"item"}); }

    support::Evening evening;
    Session session;
    MachineId machine;
    bool isMade = false;
    std::unique_ptr<ServicePage> page;
};

}  // namespace

class MachineSheetTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void sheetTellsWhatIsKnown();
    void changesAnItemByKeyboard();
    void faultsStandBesideTheirFields();
    void whatCannotBeReadStays();
    void makesAnItemFromATemplate();
    void beginsWithTheUsualItems();
    void recordsFromTheSheet();
    void retiresAndBringsBack();
    void recordedDutiesStay();
    void readsACounter();
    void aCounterThatRunsBackwardsIsRefused();
    void typesWhatWasLastDone();
    void whatIsMissingIsSaid();
    void theCentreHasNoMeters();
    void readOnlyChangesNothing();
    void tabLeavesTheTable();
    void formsFit();
};

void MachineSheetTest::sheetTellsWhatIsKnown() {
    Desk desk;
    QVERIFY(desk.isMade);
    QCOMPARE(desk.rows().rowCount(), 2);
    QCOMPARE(desk.cell("wipe", machine_columns::What), QString("Wipe the brush"));
    QVERIFY2(desk.cell("change", machine_columns::Every).contains(" or "), qPrintable(desk.cell("change", 2)));
    QCOMPARE(desk.cell("wipe", machine_columns::Last), QString("never recorded"));
    QVERIFY2(desk.cell("change", machine_columns::Parts).contains("Brush 1 (0 there)"), qPrintable(desk.cell("change", 6)));
    QVERIFY(desk.part<QLabel>("sheetMeters")->text().contains("lane"));
    ServiceRecord done;
    done.item = {"item"};
    done.duty = {"change"};
    done.at = desk.session.now() - hours(24 * 10);
    done.meters = metersNow(desk.session.season(), desk.machine, done.at);
    QVERIFY(desk.session.record("Done", {done}));
    desk.wait();
    QVERIFY2(desk.cell("change", machine_columns::Since).contains("10 day"), qPrintable(desk.cell("change", 4)));
    QVERIFY(desk.cell("change", machine_columns::Next) != desk.cell("wipe", machine_columns::Next));
}

/// Enter on the row opens it; the whole item is one edit, and one undo.
void MachineSheetTest::changesAnItemByKeyboard() {
    Desk desk;
    const ServiceItem before = desk.item();
    desk.choose("change");
    auto* list = desk.part<QTableView>("machineList");
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Return);
    auto* form = desk.form<ItemForm>();
    QVERIFY(form && !list->isVisible());
    QCOMPARE(desk.part<QLineEdit>("dutyName")->text(), QString("Change the brush"));
    desk.type(desk.part<QDoubleSpinBox>("every0"), "800");
    desk.type(desk.part<QDoubleSpinBox>("every4"), "0");
    auto* steps = desk.part<QPlainTextEdit>("dutySteps");
    steps->setFocus();
    QTest::keyClicks(steps, "Switch off");
    QTest::keyClick(steps, Qt::Key_Return);  // a new line, not the end
    QTest::keyClicks(steps, "Take it out");
    QVERIFY(form->isOpen());
    desk.part<QCheckBox>("caution.moving-parts")->setFocus();
    QTest::keyClick(desk.part<QCheckBox>("caution.moving-parts"), Qt::Key_Space);
    desk.part<QComboBox>("itemDuty")->setCurrentIndex(0);
    QCOMPARE(desk.part<QLineEdit>("dutyName")->text(), QString("Wipe the brush"));
    desk.type(desk.part<QSpinBox>("dutyMinutes"), "25");
    QTest::keyClick(desk.part<QSpinBox>("dutyMinutes"), Qt::Key_Return);
    QVERIFY(!form->isOpen());
    const ServiceItem after = desk.item();
    QCOMPARE(after.duties[1].triggers, (std::vector<Trigger>{{MeterKind::Lanes, 800}}));
    QCOMPARE(after.duties[1].steps, (std::vector<QString>{"Switch off", "Take it out"}));
    QCOMPARE(after.duties[1].cautions, (std::vector<QByteArray>{"caution.moving-parts"}));
    QCOMPARE(after.duties[1].parts, before.duties[1].parts);
    QCOMPARE(after.duties[0].minutes, 25);
    QCOMPARE(after.duties[0].triggers, before.duties[0].triggers);
    desk.session.undoStack().undo();
    QCOMPARE(desk.item().duties, before.duties);
}

void MachineSheetTest::faultsStandBesideTheirFields() {
    Desk desk;
    desk.choose("wipe");
    desk.click("changeItem");
    auto* form = desk.form<ItemForm>();
    QVERIFY(form);
    desk.type(desk.part<QLineEdit>("itemName"), " ");
    QVERIFY(!form->findChild<QLabel*>("problem-itemName")->text().isEmpty());
    QVERIFY(!form->findChild<QPushButton*>("saveForm")->isEnabled());
    desk.type(desk.part<QLineEdit>("itemName"), "Brush");
    desk.type(desk.part<QDoubleSpinBox>("every4"), "0");
    QVERIFY(form->findChild<QLabel*>("problem-every0")->text().contains("never falls due"));
    desk.type(desk.part<QSpinBox>("dutyMinutes"), "9000");
    QVERIFY(form->findChild<QLabel*>("problem-dutyMinutes")->text().contains("not possible"));
    desk.type(desk.part<QLineEdit>("dutyName"), " ");
    QVERIFY2(form->findChild<QLabel*>("problem-dutyName")->text().contains("'1' has no name"),
             qPrintable(form->findChild<QLabel*>("problem-dutyName")->text()));
    desk.click("addPart");
    QVERIFY(form->findChild<QLabel*>("problem-dutyParts")->text().contains("cannot be taken"));
    QTest::keyClick(desk.part<QSpinBox>("dutyMinutes"), Qt::Key_Return);
    QVERIFY(form->isOpen());  // nothing is kept
    QTest::keyClick(form, Qt::Key_Escape);
    QVERIFY(!desk.form<ItemForm>());
    QCOMPARE(desk.item().name, QString("Cushion brush"));
}

/// Dates that are none stay as typed, through another duty and another state, until they are mended.
void MachineSheetTest::whatCannotBeReadStays() {
    Desk desk;
    desk.choose("wipe");
    desk.click("changeItem");
    auto* form = desk.form<ItemForm>();
    auto* dates = desk.part<QLineEdit>("dutyDates");
    desk.type(dates, "2027-06-01, 32 June");
    QVERIFY2(form->findChild<QLabel*>("problem-dutyDates")->text().contains("'32 June' is no date"),
             qPrintable(form->findChild<QLabel*>("problem-dutyDates")->text()));
    desk.part<QComboBox>("itemDuty")->setCurrentIndex(1);
    QCOMPARE(dates->text(), QString());
    QVERIFY(!form->findChild<QPushButton*>("saveForm")->isEnabled());
    desk.part<QComboBox>("itemDuty")->setCurrentIndex(0);
    QCOMPARE(dates->text(), QString("2027-06-01, 32 June"));
    QVERIFY(desk.session.reload());
    QCOMPARE(dates->text(), QString("2027-06-01, 32 June"));
    desk.type(dates, "2027-06-01; 2027-12-24");
    desk.saveByMouse(*form);
    QCOMPARE(desk.item().duties[0].dates, (std::vector<QDate>{{2027, 6, 1}, {2027, 12, 24}}));
    QVERIFY(desk.cell("wipe", machine_columns::Every).contains("; on "));
}

void MachineSheetTest::makesAnItemFromATemplate() {
    Desk desk;
    desk.click("newItem");
    auto* form = desk.form<ItemForm>();
    QVERIFY(form);
    auto* choice = desk.part<QComboBox>("itemTemplate");
    QVERIFY(choice->count() > 5);
    choice->setCurrentIndex(choice->findText("Squeegee blades"));
    QCOMPARE(desk.part<QLineEdit>("itemName")->text(), QString("Squeegee blades"));
    QCOMPARE(desk.part<QComboBox>("itemDuty")->count(), 3);
    QVERIFY(desk.part<QLineEdit>("itemNote")->text().contains("common practice"));
    desk.saveByMouse(*form);
    QCOMPARE(desk.session.season().items.size(), size_t(2));
    const auto made = std::find_if(desk.session.season().items.begin(), desk.session.season().items.end(),
                                   [](const ServiceItem& item) { return item.kind == ItemKind::Squeegee; });
    QVERIFY(made != desk.session.season().items.end() && made->machine == desk.machine && made->duties.size() == 3);
    desk.session.undoStack().undo();
    QCOMPARE(desk.session.season().items.size(), size_t(1));
    // And an empty one, with a duty of its own.
    desk.click("newItem");
    desk.type(desk.part<QLineEdit>("itemName"), "Lamp");
    desk.click("addDuty");
    desk.type(desk.part<QLineEdit>("dutyName"), "Look at it");
    desk.type(desk.part<QDoubleSpinBox>("every4"), "30");
    QTest::keyClick(desk.part<QLineEdit>("dutyName"), Qt::Key_Return);
    QVERIFY(!desk.form<ItemForm>());
    QCOMPARE(desk.session.season().items.size(), size_t(2));
}

void MachineSheetTest::beginsWithTheUsualItems() {
    Desk desk(true);
    QVERIFY(!desk.part<QTableView>("machineList")->isVisible());
    desk.click("usualItems");
    desk.wait();
    QVERIFY(desk.session.season().items.size() > 5);
    QVERIFY(desk.rows().rowCount() > 10);
    QVERIFY(!desk.part<QPushButton>("usualItems")->isVisible());
    desk.session.undoStack().undo();
    desk.wait();
    QVERIFY(desk.session.season().items.empty());
    QVERIFY(desk.part<QPushButton>("usualItems")->isVisible());
}

void MachineSheetTest::recordsFromTheSheet() {
    Desk desk;
    desk.choose("change");
    desk.click("recordFromSheet");
    QCOMPARE(desk.page->findChild<QTabWidget*>()->currentIndex(), 0);
    auto* form = desk.page->findChild<ServiceForm*>();
    QVERIFY(form->isVisible());
    QTest::mouseClick(desk.part<QPushButton>("keepService"), Qt::LeftButton);
    QCOMPARE(desk.session.season().services.front().duty, DutyId{"change"});
    desk.page->findChild<QTabWidget*>()->setCurrentIndex(1);
    desk.wait();
    QVERIFY(desk.cell("change", machine_columns::Last) != "never recorded");
    QCOMPARE(desk.cell("wipe", machine_columns::Last), QString("never recorded"));
}

void MachineSheetTest::retiresAndBringsBack() {
    Desk desk;
    desk.choose("wipe");
    desk.click("retireItem");
    desk.wait();
    QVERIFY(desk.item().retired);
    QCOMPARE(desk.rows().rowCount(), 0);
    desk.part<QCheckBox>("showRetiredItems")->setChecked(true);
    QCOMPARE(desk.rows().rowCount(), 2);
    QVERIFY(desk.cell("wipe", machine_columns::Item).contains("retired"));
    desk.choose("wipe");
    desk.click("retireItem");
    desk.wait();
    QVERIFY(!desk.item().retired);
    desk.session.undoStack().undo();
    QVERIFY(desk.item().retired);
    desk.session.undoStack().undo();
    QVERIFY(!desk.item().retired);
}

void MachineSheetTest::recordedDutiesStay() {
    Desk desk;
    ServiceRecord done;
    done.item = {"item"};
    done.duty = {"wipe"};
    done.at = desk.session.now();
    QVERIFY(desk.session.record("Wiped", {done}));
    desk.wait();
    desk.choose("wipe");
    desk.click("changeItem");
    QVERIFY(!desk.part<QPushButton>("takeDutyOut")->isEnabled());
    QVERIFY(!desk.part<QPushButton>("takeDutyOut")->toolTip().isEmpty());
    desk.part<QComboBox>("itemDuty")->setCurrentIndex(1);
    QVERIFY(desk.part<QPushButton>("takeDutyOut")->isEnabled());
    desk.click("takeDutyOut");
    desk.saveByMouse(*desk.form<ItemForm>());
    QCOMPARE(desk.item().duties.size(), size_t(1));
    desk.session.undoStack().undo();
    QCOMPARE(desk.item().duties.size(), size_t(2));
    // Taken out here, recorded by somebody else meanwhile: refused in words.
    desk.choose("change");
    desk.click("changeItem");
    desk.click("takeDutyOut");
    done.duty = {"change"};
    done.id = {};
    QVERIFY(desk.session.record("Changed", {done}));
    auto* form = desk.form<ItemForm>();
    QVERIFY(form && !form->findChild<QPushButton*>("saveForm")->isEnabled());
    QVERIFY2(form->problems().join(' ').contains("has been recorded"), qPrintable(form->problems().join(' ')));
}

void MachineSheetTest::readsACounter() {
    Desk desk;
    desk.click("readCounter");
    auto* form = desk.form<CounterForm>();
    QVERIFY(form);
    QVERIFY(!desk.part<QLabel>("counterExpected")->text().isEmpty());
    desk.type(desk.part<QDoubleSpinBox>("counterShown"), "41230");
    QTest::keyClick(desk.part<QDoubleSpinBox>("counterShown"), Qt::Key_Return);
    QVERIFY(!desk.form<CounterForm>());
    QCOMPARE(desk.session.season().counters.size(), size_t(1));
    QCOMPARE(metersNow(desk.session.season(), desk.machine, desk.session.now()).lanes, std::int64_t{41'230});
    desk.wait();
    QVERIFY2(
        desk.part<QLabel>("sheetMeters")->text().contains("41230") || desk.part<QLabel>("sheetMeters")->text().contains("41,230"),
        qPrintable(desk.part<QLabel>("sheetMeters")->text()));
    // Hours are read with a tenth.
    desk.click("readCounter");
    desk.part<QComboBox>("counterMeter")->setCurrentIndex(2);
    desk.type(desk.part<QDoubleSpinBox>("counterShown"), "310.5");
    desk.saveByMouse(*desk.form<CounterForm>());
    QCOMPARE(metersNow(desk.session.season(), desk.machine, desk.session.now()).work, minutes(18'630));
    desk.session.undoStack().undo();
    desk.session.undoStack().undo();
    QVERIFY(desk.session.season().counters.empty());
}

void MachineSheetTest::aCounterThatRunsBackwardsIsRefused() {
    Desk desk;
    MeterReading before;
    before.at = desk.session.now() - hours(48);
    before.machine = desk.machine;
    before.shown = 500;
    QVERIFY(desk.session.record("Counter", {before}));
    desk.click("readCounter");
    auto* form = desk.form<CounterForm>();
    QCOMPARE(desk.part<QDoubleSpinBox>("counterShown")->value(), 500.0);
    desk.type(desk.part<QDoubleSpinBox>("counterShown"), "12");
    const QLabel* words = form->findChild<QLabel*>("problem-counterShown");
    QVERIFY2(words->text().contains("runs backwards"), qPrintable(words->text()));
    QVERIFY(words->text().contains(desk.session.season().centre.machines.front().name));
    QVERIFY(!form->findChild<QPushButton*>("saveForm")->isEnabled());
    desk.part<QCheckBox>("counterReplaced")->setFocus();
    QTest::keyClick(desk.part<QCheckBox>("counterReplaced"), Qt::Key_Space);
    QVERIFY(words->text().isEmpty());
    desk.saveByMouse(*form);
    QVERIFY(desk.session.season().counters.back().replaced);
    // In the future of now.
    desk.click("readCounter");
    desk.part<QDateTimeEdit>("counterAt")->setDateTime(desk.part<QDateTimeEdit>("counterAt")->dateTime().addDays(2));
    QVERIFY(form->findChild<QLabel*>("problem-counterAt")->text().contains("still to come"));
}

void MachineSheetTest::typesWhatWasLastDone() {
    Desk desk;
    desk.click("typeLastDone");
    auto* form = desk.form<LastDoneForm>();
    QVERIFY(form);
    desk.type(desk.part<QDoubleSpinBox>("countersNow0"), "41230");
    auto* table = desk.part<QTableView>("lastDoneTable");
    QCOMPARE(table->model()->rowCount(), 2);
    const QDate today = desk.session.today();
    const auto put = [&](int row, int column, const QString& typed) {
        return table->model()->setData(table->model()->index(row, column), typed);
    };
    QVERIFY(put(0, LastDoneModel::Day, today.addDays(-3).toString(Qt::ISODate)));
    QVERIFY(!put(0, LastDoneModel::Lanes, "5"));  // that duty counts days alone
    // By keyboard in the table.
    table->setFocus();
    table->setCurrentIndex(table->model()->index(1, LastDoneModel::Day));
    QTest::keyClicks(QApplication::focusWidget(), today.addDays(-40).toString(Qt::ISODate));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    QTest::keyClicks(QApplication::focusWidget(), "640");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QCoreApplication::processEvents();  // the table takes what was typed in a little later
    QVERIFY2(form->problems().isEmpty(), qPrintable(form->problems().join(' ') + table->model()->index(1, 1).data().toString()));
    desk.saveByMouse(*form);
    const SeasonState& season = desk.session.season();
    QCOMPARE(season.services.size(), size_t(2));
    const std::map<DutyId, LastDone> lasts = lastDone(season);
    QCOMPARE(lasts.at({"wipe"}).day, today.addDays(-3));
    QCOMPARE(lasts.at({"change"}).day, today.addDays(-40));
    QCOMPARE(lasts.at({"change"}).meters.lanes, std::int64_t{41'230 - 640});
    desk.wait();
    QVERIFY2(desk.cell("change", machine_columns::Since).contains("640"), qPrintable(desk.cell("change", 4)));
    QVERIFY(!desk.part<QPushButton>("typeLastDone")->isEnabled());  // typed once
    desk.session.undoStack().undo();
    desk.wait();
    QVERIFY(lastDone(desk.session.season()).empty() && desk.session.season().counters.empty());
    QVERIFY(desk.part<QPushButton>("typeLastDone")->isEnabled());
}

void MachineSheetTest::whatIsMissingIsSaid() {
    Desk desk;
    desk.click("typeLastDone");
    auto* form = desk.form<LastDoneForm>();
    auto* model = form->findChild<LastDoneModel*>();
    const QLabel* words = form->findChild<QLabel*>("problem-lastDoneTable");
    model->setData(model->index(1, LastDoneModel::Lanes), "many");
    QVERIFY2(words->text().contains("on which day") && words->text().contains("'many' is no number"), qPrintable(words->text()));
    QCOMPARE(model->index(1, LastDoneModel::Lanes).data().toString(), QString("many"));
    model->setData(model->index(1, LastDoneModel::Day), "soon");
    QVERIFY(words->text().contains("'soon' is no date"));
    model->setData(model->index(1, LastDoneModel::Day), desk.session.today().addDays(5).toString(Qt::ISODate));
    QVERIFY2(words->text().contains("still to come"), qPrintable(words->text()));
    model->setData(model->index(1, LastDoneModel::Day), desk.session.today().addDays(-5).toString(Qt::ISODate));
    model->setData(model->index(1, LastDoneModel::Lanes), "");
    QVERIFY2(words->text().contains("how much was done since"), qPrintable(words->text()));
    QVERIFY(!form->findChild<QPushButton*>("saveForm")->isEnabled());
    model->setData(model->index(1, LastDoneModel::Day), "");
    QCOMPARE(form->problems(), QStringList());  // an empty row says nothing
}

void MachineSheetTest::theCentreHasNoMeters() {
    Desk desk;
    auto* machine = desk.part<QComboBox>("sheetMachine");
    machine->setCurrentIndex(machine->count() - 1);
    QVERIFY(!desk.part<QLabel>("sheetMeters")->isVisible());
    QVERIFY(!desk.part<QPushButton>("readCounter")->isEnabled());
    desk.click("usualItems");
    desk.wait();
    QVERIFY(desk.rows().rowCount() >= 2);
    desk.click("changeItem");
    QVERIFY(!desk.part<QDoubleSpinBox>("every0")->isVisible());
    QVERIFY(desk.part<QDoubleSpinBox>("every4")->isVisible());
}

void MachineSheetTest::readOnlyChangesNothing() {
    Desk desk;
    Session reading(desk.evening.store(Access::ReadOnly), desk.evening.clock);
    ServicePage page(reading);
    page.show();
    page.findChild<QTabWidget*>()->setCurrentIndex(1);
    QTRY_VERIFY_WITH_TIMEOUT(!page.isBusy(), patience);
    for (const char* name : {"newItem", "changeItem", "retireItem", "readCounter", "typeLastDone"})
        QVERIFY2(!page.findChild<QPushButton*>(name)->isEnabled(), name);
    QTest::keyClick(page.findChild<QTableView*>("machineList"), Qt::Key_Return);
    QVERIFY(!page.findChild<ItemForm*>()->isOpen());
}

/// A table once kept the keyboard for ever.
void MachineSheetTest::tabLeavesTheTable() {
    Desk desk;
    desk.page->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(desk.page.get()));
    desk.click("typeLastDone");
    QVERIFY(desk.form<LastDoneForm>());
    const QStringList passed = support::passedByTab(*desk.page);
    QVERIFY2(passed.isEmpty(), qPrintable(passed.join(", ")));
    QVERIFY(desk.form<LastDoneForm>());
}

void MachineSheetTest::formsFit() {
    applyStyle(TargetSize::Usual);
    for (const QString& look : support::looks() + QStringList{"large"}) {
        const support::Look as(look);
        Desk desk;
        desk.page->resize(look == "large" ? QSize(1'800, 950) : QSize(1'140, 570));  // what a window of 1280 by 720 leaves
        desk.choose("change");
        desk.click("changeItem");
        QVERIFY(support::picture(*desk.page, "item-form-" + look));
        QTest::keyClick(desk.form<ItemForm>(), Qt::Key_Escape);
        desk.click("readCounter");
        QVERIFY(support::picture(*desk.page, "counter-form-" + look));
        QTest::keyClick(desk.form<CounterForm>(), Qt::Key_Escape);
        desk.click("typeLastDone");
        auto* model = desk.page->findChild<LastDoneModel*>();
        model->setData(model->index(1, LastDoneModel::Day), "soon");
        QVERIFY(support::picture(*desk.page, "last-done-form-" + look));
    }
}

QTEST_MAIN(MachineSheetTest)
#include "tst_machine_sheet.moc"
