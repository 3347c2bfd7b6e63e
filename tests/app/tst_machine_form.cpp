// What a machine weighs and the volts of its settings, typed on the page Service, by mouse and by keyboard; and the waste tank
// that is told beside the meters.
#include "app/pages/service/machine_form.h"
#include "app/pages/service/machines_panel.h"
#include "app/window/style.h"
#include "tests/support/demo_session.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QTranslator>

using namespace laneward;

namespace {

struct Desk {
    support::Evening evening;
    std::unique_ptr<Session> session = support::sessionOn(evening);
    std::unique_ptr<MachinesPanel> panel;

    Desk() { open(); }
    void open() {
        panel = std::make_unique<MachinesPanel>(*session);
        panel->resize(1'180, 560);
        panel->refresh();
        QObject::connect(session.get(), &Session::changed, panel.get(), [this] { panel->refresh(); });
        panel->QWidget::show();
        if (!QTest::qWaitForWindowExposed(panel.get())) qFatal("the panel is not shown");
    }
    QDoubleSpinBox* field(const char* name) { return panel->findChild<QDoubleSpinBox*>(name); }
    MachineForm* form() { return panel->findChild<MachineForm*>(); }
    const Machine& machine() { return session->season().centre.machines.front(); }
    QString problems() { return form()->problems().join(u'\n'); }
    void click(const char* name) { QTest::mouseClick(panel->findChild<QPushButton*>(name), Qt::LeftButton); }
};

void type(QWidget* field, const QString& typed) {
    field->setFocus();
    QTest::keyClick(field, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(field, typed);
}

}  // namespace

class MachineFormTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cleanup() {
        QApplication::setPalette(support::lightPalette());
        QApplication::setLayoutDirection(Qt::LeftToRight);
    }

    void theWeightIsKeptAndTakenBack() {
        Desk desk;
        QVERIFY(!desk.machine().weight);
        desk.click("changeMachine");
        QVERIFY(desk.form()->isOpen());
        type(desk.field("machineWeight"), "93.5");
        QVERIFY2(desk.problems().contains("more than two people should lift"), qPrintable(desk.problems()));
        QTest::keyClick(desk.field("machineWeight"), Qt::Key_Return);
        QVERIFY(!desk.form()->isOpen());
        QCOMPARE(desk.machine().weight->value, std::int64_t{93'500});
        desk.session->undoStack().undo();
        QVERIFY(!desk.machine().weight);
        desk.session->undoStack().redo();
        // Nothing typed is not known again.
        desk.panel->findChild<QPushButton*>("changeMachine")->setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        QCOMPARE(desk.field("machineWeight")->value(), 93.5);
        type(desk.field("machineWeight"), "0");
        QTest::keyClick(desk.field("machineWeight"), Qt::Key_Return);
        QVERIFY(!desk.machine().weight);
    }

    void poundsAreKeptAsGrams() {
        Desk desk;
        CentreFacts facts = desk.session->season().centre.facts;
        const CentreFacts before = facts;
        facts.settings.units = UnitSystem::UsCustomary;
        QVERIFY(desk.session->apply("Units", {RowChange<CentreFacts>{before, facts}}));
        desk.open();
        desk.click("changeMachine");
        type(desk.field("machineWeight"), "100");
        QTest::keyClick(desk.field("machineWeight"), Qt::Key_Return);
        // 100 lb are 45.359237 kg exactly (NIST Handbook 44, appendix C; from memory).
        QCOMPARE(desk.machine().weight->value, std::int64_t{45'359});
    }

    void whatCannotBeIsSaid() {
        Desk desk;
        desk.click("changeMachine");
        type(desk.field("machineWeight"), "2001");
        QVERIFY2(desk.problems().contains("at most 2,000 kg"), qPrintable(desk.problems()));
        QTest::keyClick(desk.field("machineWeight"), Qt::Key_Return);
        QVERIFY(desk.form()->isOpen() && !desk.machine().weight);
        type(desk.field("machineWeight"), "15");
        type(desk.field("machineSpare"), "61");
        QVERIFY2(desk.problems().contains("volts are between 0 and 60"), qPrintable(desk.problems()));
        type(desk.field("machineSpare"), "25.7");
        QVERIFY2(desk.problems().contains("Otter"), qPrintable(desk.problems()));  // above the volts that count as full
        QTest::keyClick(desk.field("machineSpare"), Qt::Key_Escape);
        QVERIFY(!desk.form()->isOpen() && !desk.machine().weight);
    }

    /// The volts of one centre's practice (common practice, no source) can be entered.
    void theVoltsOfTheSettings() {
        Desk desk;
        desk.click("changeMachine");
        desk.field("machineSpare")->setValue(20);
        desk.field("machineFull")->setValue(26.8);
        QCOMPARE(desk.problems(), QString());
        QTest::keyClick(desk.field("machineFull"), Qt::Key_Return);
        QCOMPARE(desk.machine().fullAt.value, std::int64_t{26'800});
        QCOMPARE(desk.machine().attachSpareAt.value, std::int64_t{20'000});
    }

    void theWasteTankIsTold() {
        Desk desk;
        const auto* line = desk.panel->findChild<QLabel*>("sheetMeters");
        QVERIFY2(line->text().contains("Waste tank: about 0 mL of 9 L"), qPrintable(line->text()));
        QVERIFY2(line->text().contains("tonight: the waste tank lasts, as far as is known"), qPrintable(line->text()));
        QVERIFY(line->text().contains("Waste: not down a drain; ask the local wastewater authority."));
        desk.panel->findChild<QComboBox*>("sheetMachine")->setCurrentIndex(1);
        QCOMPARE(line->text(), QString());
        QVERIFY(!desk.panel->findChild<QPushButton*>("changeMachine")->isEnabled());
    }

    void pictures_data() {
        QTest::addColumn<QString>("look");
        for (const char* look : {"light", "dark", "german", "mirrored"})
            QTest::newRow(look) << QString(look);
    }

    /// The sheet of a machine of the demo as its page gives it room in a window of 1280 x 720.
    void pictures() {
        QFETCH(QString, look);
        QTranslator german;
        if (look == "dark") QApplication::setPalette(readablePalette(support::darkPalette()));
        if (look == "mirrored") QApplication::setLayoutDirection(Qt::RightToLeft);
        if (look == "german") {
            QLocale::setDefault(QLocale("de_DE"));
            QVERIFY(german.load("laneward_de", qEnvironmentVariable("LANEWARD_BINARY", ".")));
            QApplication::installTranslator(&german);
        }
        applyStyle(TargetSize::Usual);
        support::DemoSession demo;
        MachinesPanel panel(demo.session());
        panel.resize(1'140, 570);
        panel.refresh();
        panel.QWidget::show();
        QVERIFY(QTest::qWaitForWindowExposed(&panel));
        QVERIFY(panel.minimumSizeHint().width() <= 1'140);
        QVERIFY(support::picture(panel, "machine-waste-" + look));
        auto* open = panel.findChild<QPushButton*>("changeMachine");
        QVERIFY(open->height() >= 28);
        QTest::mouseClick(open, Qt::LeftButton);
        panel.findChild<QDoubleSpinBox*>("machineWeight")->setValue(93.5);
        QVERIFY(support::picture(panel, "machine-form-" + look));
        QLocale::setDefault(QLocale("en_GB"));
    }
};

QTEST_MAIN(MachineFormTest)
#include "tst_machine_form.moc"
