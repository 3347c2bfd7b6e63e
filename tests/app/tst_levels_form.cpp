// What is typed at a machine on the page Today: volts with their state, emptied waste, packs swapped and charged; by mouse and by
// keyboard, judged while it is typed, taken back by one undo.
#include "app/pages/today/levels_form.h"
#include "app/pages/today/readiness_card.h"
#include "app/pages/today/today_page.h"
#include "app/window/style.h"
#include "core/season/pack_outlook.h"
#include "core/season/waste_past.h"
#include "tests/support/demo_window.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"
#include "tests/support/practised_pack.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QStandardPaths>
#include <QTest>
#include <QTranslator>

using namespace laneward;

namespace {

struct Desk {
    support::Evening evening;
    std::unique_ptr<Session> session = support::sessionOn(evening);
    std::unique_ptr<TodayPage> page;

    explicit Desk(bool packs = true) {
        if (packs && !session->apply("Packs", {RowChange<ServiceItem>{{}, support::practisedPack("p1", "Blue pack")},
                                               RowChange<ServiceItem>{{}, support::practisedPack("p2", "Red pack")}}))
            qFatal("no packs");
        page = std::make_unique<TodayPage>(*session);
        page->resize(1'100, 700);
        page->show();
        if (!QTest::qWaitForWindowExposed(page.get())) qFatal("the page is not shown");
    }
    LevelsForm* form() const { return page->findChild<LevelsForm*>(); }
    template <class T>
    T* part(const char* name) const {
        return form()->findChild<T*>(name);
    }
    void open() { QTest::mouseClick(page->findChild<QPushButton*>("measure"), Qt::LeftButton); }
    void click(const char* name) {
        auto* button = part<QPushButton>(name);
        QVERIFY2(button && button->isVisible(), name);
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void choose(const char* name, int data) {
        auto* box = part<QComboBox>(name);
        box->setCurrentIndex(box->findData(data));
    }
    QString words(const char* name) const {
        const auto* label = part<QLabel>(name);
        return label->isVisible() ? label->text() : QString();
    }
    QString cardWords() const {
        QStringList all;
        for (const QLabel* label : page->findChild<ReadinessCard*>()->findChildren<QLabel*>()) {
            if (label->isVisible()) all << label->text();
        }
        return all.join(u'\n');
    }
    std::vector<LevelReading> readings() const { return standing(session->season().readings); }
    std::vector<PackReading> log() const { return standing(session->season().packReadings); }
    PackState packState(const char* id) const {
        for (const PackState& state : packsOf(session->season(), session->now())) {
            if (state.pack.value == id) return state;
        }
        return {};
    }
};

void type(QWidget* field, const QString& typed) {
    field->setFocus();
    QTest::keyClick(field, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(field, typed);
}

}  // namespace

class LevelsFormTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QStandardPaths::setTestModeEnabled(true); }
    void cleanup();
    void voltsWithTheirStateByMouse();
    void voltsWithTheirStateByKeyboard();
    void withoutPacksVoltsAreRested();
    void impossibleVoltsAreRefusedInWords();
    void tooFewVoltsAreSaidAtOnce();
    void emptiedWasteIsKeptAndLearned();
    void emptiedNonsenseIsRefusedInWords();
    void moreThanTheTankHoldsIsFlagged();
    void aSwapIsOneDeedWithTheLog();
    void aChargeIsOneDeedWithTheLog();
    void nothingDoneToThePackIsNothingLogged();
    void overflowIsSaidOnTheCardAndTheJob();
    void pictures_data();
    void pictures();
};

void LevelsFormTest::cleanup() {
    QApplication::setPalette(support::lightPalette());
    QApplication::setLayoutDirection(Qt::LeftToRight);
    QLocale::setDefault(QLocale("en_GB"));
}

void LevelsFormTest::voltsWithTheirStateByMouse() {
    Desk desk;
    desk.open();
    auto* state = desk.part<QComboBox>("voltsState");
    QVERIFY(state->isVisible());
    QCOMPARE(state->currentData().toInt(), int(VoltageState::JustCharged));  // as the pack's limit is measured
    desk.part<QDoubleSpinBox>("volts")->setValue(25.3);
    desk.choose("voltsState", int(VoltageState::Rested));
    desk.click("keepReading");
    QCOMPARE(desk.log().size(), size_t(1));
    const PackReading entry = desk.log().front();
    QVERIFY(entry.pack.value == "p1" && entry.deed == PackDeed::Read && entry.state == VoltageState::Rested);
    QCOMPARE(entry.volts->value, std::int64_t{25'300});
    QCOMPARE(entry.person.value, QString("ada"));
    QCOMPARE(desk.readings().front().levels.volts->value, std::int64_t{25'300});
    QVERIFY2(desk.cardWords().contains("25.3 V rested"), qPrintable(desk.cardWords()));
    const int steps = desk.session->undoStack().index();
    desk.session->undoStack().undo();
    QCOMPARE(desk.session->undoStack().index(), steps - 1);
    QVERIFY(desk.log().empty());
    QVERIFY2(!desk.cardWords().contains("25.3 V"), qPrintable(desk.cardWords()));
    desk.session->undoStack().redo();
    QCOMPARE(desk.log().size(), size_t(1));
}

void LevelsFormTest::voltsWithTheirStateByKeyboard() {
    Desk desk;
    desk.page->findChild<QPushButton*>("measure")->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    QTest::keyClicks(QApplication::focusWidget(), "26.9");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    auto* state = qobject_cast<QComboBox*>(QApplication::focusWidget());
    QVERIFY(state && state->objectName() == "voltsState");
    QTest::keyClick(state, Qt::Key_Down);
    QCOMPARE(state->currentData().toInt(), int(VoltageState::UnderLoad));
    QTest::keyClick(state, Qt::Key_Up);
    QTest::keyClick(state, Qt::Key_Return);
    QCOMPARE(desk.log().size(), size_t(1));
    QVERIFY(desk.log().front().state == VoltageState::JustCharged);
    QVERIFY2(desk.cardWords().contains("26.9 V just charged"), qPrintable(desk.cardWords()));
    QVERIFY(!desk.cardWords().contains("counts as full"));
}

void LevelsFormTest::withoutPacksVoltsAreRested() {
    Desk desk(false);
    desk.open();
    QVERIFY(!desk.part<QComboBox>("voltsState")->isVisible() && !desk.part<QComboBox>("packChange")->isVisible());
    desk.part<QDoubleSpinBox>("volts")->setValue(25.7);
    desk.click("packSwapped");
    desk.click("keepReading");
    QVERIFY(desk.log().empty());
    QCOMPARE(desk.readings().front().levels.volts->value, std::int64_t{25'700});
    QVERIFY(desk.cardWords().contains("25.7 V rested"));
}

void LevelsFormTest::impossibleVoltsAreRefusedInWords() {
    Desk desk;
    desk.open();
    auto* volts = desk.part<QDoubleSpinBox>("volts");
    type(volts, "60.5");
    QVERIFY2(desk.words("voltsWords").contains("volts are between 0 and 60"), qPrintable(desk.words("voltsWords")));
    QTest::keyClick(volts, Qt::Key_Return);
    QVERIFY(desk.readings().empty() && desk.log().empty());
    QVERIFY(desk.form()->isVisible());
    QCOMPARE(volts->value(), 60.5);
    QVERIFY(volts->hasFocus());
    type(volts, "26.8");
    QCOMPARE(desk.words("voltsWords"), QString());
    QTest::keyClick(volts, Qt::Key_Return);
    QCOMPARE(desk.readings().size(), size_t(1));
}

void LevelsFormTest::tooFewVoltsAreSaidAtOnce() {
    Desk desk;
    desk.open();
    auto* volts = desk.part<QDoubleSpinBox>("volts");
    type(volts, "19.9");
    QVERIFY2(desk.words("voltsWords").contains("put the spare pack on before the run"), qPrintable(desk.words("voltsWords")));
    type(volts, "25.3");
    QVERIFY2(desk.words("voltsWords").contains("fit to run from 25.4 V"), qPrintable(desk.words("voltsWords")));
    desk.choose("voltsState", int(VoltageState::UnderLoad));  // more than enough under load
    QCOMPARE(desk.words("voltsWords"), QString());
    type(volts, "19.9");
    QTest::keyClick(volts, Qt::Key_Return);
    QVERIFY2(desk.cardWords().contains("19.9 V is below 20.0 V; put the spare pack on before the run"),
             qPrintable(desk.cardWords()));
}

void LevelsFormTest::emptiedWasteIsKeptAndLearned() {
    Desk desk;
    desk.open();
    auto* emptied = desk.part<QLineEdit>("emptied");
    QVERIFY(!emptied->isVisible());
    desk.click("emptiedNow");
    QVERIFY(emptied->isVisible() && emptied->hasFocus());
    QTest::keyClicks(emptied, "850");
    QTest::keyClick(emptied, Qt::Key_Return);
    const LevelReading reading = desk.readings().front();
    QCOMPARE(reading.emptied->value, millilitres(850).value);
    QCOMPARE(reading.levels.waste.value, std::int64_t{0});
    desk.session->undoStack().undo();
    QVERIFY(!desk.session->season().readings.back().emptied);
    // Seen empty, 8 lanes cleaned, emptied and measured: that teaches.
    desk.open();
    desk.click("emptiedNow");
    QTest::keyClick(emptied, Qt::Key_Return);
    QVERIFY(!desk.readings().back().emptied);  // not read
    desk.evening.clock.set(support::eveningNow + hours(1));
    QTest::mouseClick(desk.page->findChild<QPushButton*>("asPlanned"), Qt::LeftButton);
    desk.evening.clock.set(support::eveningNow + hours(2));
    desk.session->tick();
    desk.open();
    desk.click("emptiedNow");
    QTest::keyClicks(emptied, "800");
    QTest::keyClick(emptied, Qt::Key_Return);
    const Machine& machine = desk.session->season().centre.machines.front();
    QCOMPARE(learnedWasteTank(desk.session->season(), machine).emptyings(), 1);
}

void LevelsFormTest::emptiedNonsenseIsRefusedInWords() {
    Desk desk;
    desk.open();
    desk.click("emptiedNow");
    auto* emptied = desk.part<QLineEdit>("emptied");
    for (const auto& [typed, said] : {std::pair{"-5", "cannot be emptied"}, std::pair{"much", "is no number"}}) {
        type(emptied, typed);
        QVERIFY2(desk.words("emptiedWords").contains(said), qPrintable(desk.words("emptiedWords")));
        QTest::keyClick(emptied, Qt::Key_Return);
        QVERIFY(desk.readings().empty() && desk.form()->isVisible());
        QCOMPARE(emptied->text(), QString(typed));
    }
}

void LevelsFormTest::moreThanTheTankHoldsIsFlagged() {
    Desk desk;
    desk.open();
    desk.click("emptiedNow");
    auto* emptied = desk.part<QLineEdit>("emptied");
    type(emptied, "85000");
    QVERIFY2(desk.words("emptiedWords").contains("85 L were emptied, but the waste tank holds 9 L"),
             qPrintable(desk.words("emptiedWords")));
    QTest::keyClick(emptied, Qt::Key_Return);
    QCOMPARE(desk.readings().front().emptied->value, millilitres(85'000).value);
    QVERIFY2(desk.cardWords().contains("kept and flagged"), qPrintable(desk.cardWords()));
}

void LevelsFormTest::aSwapIsOneDeedWithTheLog() {
    Desk desk;
    desk.open();
    const int steps = desk.session->undoStack().index();
    desk.part<QSpinBox>("lanesLeft")->setValue(3);
    desk.click("packSwapped");
    QVERIFY2(desk.part<QComboBox>("packChange")->currentText().contains("Red pack"),
             qPrintable(desk.part<QComboBox>("packChange")->currentText()));
    QCOMPARE(desk.part<QSpinBox>("lanesLeft")->value(), 40);
    desk.part<QDoubleSpinBox>("volts")->setValue(26.9);
    desk.click("keepReading");
    QCOMPARE(desk.session->undoStack().index(), steps + 1);
    QVERIFY(desk.packState("p2").onMachine && desk.packState("p1").onCharge && !desk.packState("p1").onMachine);
    QCOMPARE(desk.packState("p2").volts->value, std::int64_t{26'900});
    // The outlook sees it: the one before is on the outlet.
    const Plan& plan = desk.session->planOf(desk.session->today());
    const PackOutlook outlook = packOutlook(desk.session->season(), plan, desk.session->now());
    QCOMPARE(outlook.turns.front().pack.value, QString("p1"));
    desk.session->undoStack().undo();
    QVERIFY(desk.packState("p1").onMachine && !desk.packState("p1").onCharge && !desk.packState("p2").onMachine);
    QVERIFY(desk.log().empty());
}

void LevelsFormTest::aChargeIsOneDeedWithTheLog() {
    Desk desk;
    desk.open();
    const int steps = desk.session->undoStack().index();
    desk.form()->findChild<QPushButton*>("packCharged")->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    desk.click("keepReading");
    QCOMPARE(desk.session->undoStack().index(), steps + 1);
    QCOMPARE(desk.log().size(), size_t(1));
    QVERIFY(desk.log().front().deed == PackDeed::Charged && desk.log().front().pack.value == "p1");
    QVERIFY(*desk.packState("p1").since == desk.session->now());
    desk.session->undoStack().undo();
    QVERIFY(desk.log().empty());
}

void LevelsFormTest::nothingDoneToThePackIsNothingLogged() {
    Desk desk;
    desk.open();
    desk.click("filled");
    desk.click("keepReading");
    QVERIFY(desk.log().empty());
    QCOMPARE(desk.readings().size(), size_t(1));
}

void LevelsFormTest::overflowIsSaidOnTheCardAndTheJob() {
    Desk desk;
    const auto told = [&desk](const QString& words) {
        const QList<QLabel*> labels = desk.page->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) { return label->text().contains(words); });
    };
    QTRY_VERIFY(told("the waste tank lasts, as far as is known"));
    QVERIFY(!told("empty the waste tank before the job"));
    // A confirmed job stays as it is, so that the tank is what does not do.
    QVERIFY(desk.session->confirmDay(desk.session->today()) > 0);
    desk.open();
    for (QDoubleSpinBox* box : desk.form()->findChildren<QDoubleSpinBox*>()) {
        if (box->maximum() == 9'000) box->setValue(8'600);
    }
    desk.click("keepReading");
    QVERIFY2(desk.cardWords().contains("Otter: empty the waste tank before the job at "), qPrintable(desk.cardWords()));
    QTRY_VERIFY(told("! the waste tank overflows with a chance of"));
    QVERIFY(told("Waste: not down a drain"));
}

void LevelsFormTest::pictures_data() {
    QTest::addColumn<QString>("look");
    for (const char* look : {"light", "dark", "german", "mirrored"})
        QTest::newRow(look) << QString(look);
}

void LevelsFormTest::pictures() {
    QFETCH(QString, look);
    QTranslator german;
    if (look == "dark") QApplication::setPalette(readablePalette(support::darkPalette()));
    if (look == "mirrored") QApplication::setLayoutDirection(Qt::RightToLeft);
    if (look == "german") {
        QLocale::setDefault(QLocale("de_DE"));
        QVERIFY(german.load("laneward_de", qEnvironmentVariable("LANEWARD_BINARY", ".")));
        QApplication::installTranslator(&german);
    }
    support::DemoWindow house;
    auto* card = house.window.findChild<ReadinessCard*>();
    QTest::mouseClick(card->findChild<QPushButton*>("measure"), Qt::LeftButton);
    auto* form = card->findChild<LevelsForm*>();
    QTest::mouseClick(form->findChild<QPushButton*>("emptiedNow"), Qt::LeftButton);
    QTest::mouseClick(form->findChild<QPushButton*>("packSwapped"), Qt::LeftButton);
    form->findChild<QLineEdit*>("emptied")->setText("99000");
    form->findChild<QDoubleSpinBox*>("volts")->setValue(23.8);
    QVERIFY(support::picture(house.window, "levels-top-" + look));
    QCOMPARE(house.window.size(), QSize(1280, 720));
    for (QWidget* parent = form; parent; parent = parent->parentWidget()) {
        if (auto* scroll = qobject_cast<QScrollArea*>(parent))
            scroll->ensureWidgetVisible(form->findChild<QPushButton*>("keepReading"));
    }
    QVERIFY(support::picture(house.window, "levels-bottom-" + look));
    for (QPushButton* button : form->findChildren<QPushButton*>()) {
        if (!button->isVisible()) continue;
        QVERIFY2(button->height() >= 28, qPrintable(button->text()));
        QVERIFY2(button->fontMetrics().horizontalAdvance(button->text().remove('&')) <= button->width(),
                 qPrintable(button->text()));
    }
}

QTEST_MAIN(LevelsFormTest)
#include "tst_levels_form.moc"
