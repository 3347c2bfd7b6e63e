// The tab Wear: what past replacements say, told by mouse and by keyboard, costs that are typed, an interval that is adopted and
// taken back; too few failures; nothing recorded.
#include "app/pages/service/due_model.h"
#include "app/pages/service/machine_rows.h"
#include "app/pages/service/plot_view.h"
#include "app/pages/service/wear_panel.h"
#include "app/widgets/money_box.h"
#include "core/season/service_outlook.h"
#include "tests/support/demo_session.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"
#include "tests/support/service_desk.h"

#include <QCheckBox>
#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>

using namespace laneward;

namespace {

constexpr int patience = 60'000;
constexpr int wearTab = int(support::ServiceTab::Wear);
const DutyId blades{"heron-squeegee-replace"};

struct Desk : support::ServiceDesk {
    explicit Desk(Session& of, const QSize& size = {1'100, 640}) : ServiceDesk(of, support::ServiceTab::Wear, size) {
        panel = page.findChild<WearPanel*>();
    }
    PlainRows& rows() { return ServiceDesk::rows("wearList"); }
    void choose(const DutyId& duty) { ServiceDesk::choose("wearList", duty.value); }
    QString sentence() { return part<QLabel>("wearSentence")->text(); }
    std::int64_t every(const DutyId& duty, MeterKind meter) const {
        for (const ServiceItem& item : session.season().items) {
            const Duty* found = findDuty(item, duty);
            for (const Trigger& trigger : found ? found->triggers : std::vector<Trigger>{})
                if (trigger.meter == meter) return trigger.every;
        }
        return -1;
    }

    WearPanel* panel = nullptr;
};

}  // namespace

class WearPanelTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { m_demo = std::make_unique<support::DemoSession>(); }
    void cleanupTestCase() { m_demo.reset(); }
    void enoughFailuresGiveAnAnswer();
    void tooFewFailuresSayHowMany();
    void plotsAreReadByMouseAndKeyboard();
    void poolsWhatIsAlike();
    void costsAreTypedAndKept();
    void adoptsByKeyboardAndUndoes();
    void theLeadsPath();
    void withoutReplacementsItSaysSo();
    void readOnlyAdoptsNothing();
    void closingWhileItReadsIsSafe();
    void readingIsCancelledAndGoesOn();
    void thousandsOfLivesAreQuick();
    void pictures();

private:
    Session& session() { return m_demo->session(); }
    std::unique_ptr<support::DemoSession> m_demo;
};

void WearPanelTest::enoughFailuresGiveAnAnswer() {
    Desk desk(session());
    desk.choose(blades);
    const QString said = desk.sentence();
    QVERIFY2(said.contains("best replaced after"), qPrintable(said));
    QVERIFY2(said.contains("now it is after"), qPrintable(said));
    QVERIFY2(said.contains("1,200 lane") || said.contains("1200 lane"), qPrintable(said));
    const PlotView* failures = desk.part<PlotView>("wearFailures");
    QVERIFY(failures->content().points.size() >= 7 && failures->content().line.size() > 20);
    QCOMPARE(failures->stopCount(), int(failures->content().line.size()) + int(failures->content().points.size()));
    QVERIFY(failures->content().band.size() == 2 * failures->content().line.size());
    // The best age is where the curve is lowest, and both are marked.
    const PlotContent& cost = desk.part<PlotView>("wearCost")->content();
    QCOMPARE(cost.marks.size(), size_t(2));
    const auto lowest =
        std::min_element(cost.line.begin(), cost.line.end(), [](const QPointF& a, const QPointF& b) { return a.y() < b.y(); });
    QVERIFY(std::abs(lowest->x() - cost.marks[0].x) < cost.x.high / 30);
    QVERIFY(cost.marks[0].isBest && cost.marks[0].x < 1'200);
    QCOMPARE(cost.marks[1].x, 1'200.0);
    QVERIFY(desk.part<QPushButton>("adoptBest")->isEnabled());
}

void WearPanelTest::tooFewFailuresSayHowMany() {
    Desk desk(session());
    int told = 0;
    for (int row = 0; row < desk.rows().rowCount(); ++row) {
        if (desk.rows().idAt(row) == blades.value) continue;
        desk.choose({desk.rows().idAt(row)});
        QVERIFY(!desk.part<QPushButton>("adoptBest")->isEnabled());
        told += desk.sentence().contains("is told after");
        QVERIFY(!desk.sentence().isEmpty());
    }
    QVERIFY(told >= 3);
    QVERIFY(support::picture(desk.page, "wear-few"));
}

void WearPanelTest::plotsAreReadByMouseAndKeyboard() {
    Desk desk(session());
    desk.choose(blades);
    for (const char* name : {"wearFailures", "wearCost"}) {
        auto* plot = desk.part<PlotView>(name);
        QVERIFY(plot->stopCount() > 20);
        plot->setFocus();
        QTest::keyClick(plot, Qt::Key_Home);
        QCOMPARE(plot->current(), 0);
        const QString first = desk.part<QLabel>("wearSpoken")->text();
        QTest::keyClick(plot, Qt::Key_Right);
        QCOMPARE(plot->current(), 1);
        QVERIFY(desk.part<QLabel>("wearSpoken")->text() != first);
        QCOMPARE(plot->accessibleDescription(), desk.part<QLabel>("wearSpoken")->text());
        QTest::keyClick(plot, Qt::Key_PageDown);
        QCOMPARE(plot->current(), 11);
        const QPointF at = plot->placeOf(plot->content().stops[20].at);
        QTest::mouseMove(plot, at.toPoint());
        QCOMPARE(plot->current(), 20);
        QVERIFY(desk.part<QLabel>("wearSpoken")->text().contains("lane"));
    }
}

void WearPanelTest::poolsWhatIsAlike() {
    Desk desk(session());
    desk.choose(blades);
    const QString alone = desk.part<QLabel>("wearCounted")->text();
    QTest::mouseClick(desk.part<QCheckBox>("wearPool"), Qt::LeftButton, {}, {10, 8});
    QVERIFY(desk.part<QCheckBox>("wearPool")->isChecked());
    QVERIFY2(desk.part<QLabel>("wearCounted")->text() != alone, qPrintable(alone));
    auto* meter = desk.part<QComboBox>("wearMeter");
    meter->setCurrentIndex(meter->findData(int(MeterKind::Days)));
    QVERIFY2(desk.sentence().contains("days") || desk.sentence().contains("day"), qPrintable(desk.sentence()));
}

void WearPanelTest::costsAreTypedAndKept() {
    Desk desk(session());
    desk.choose(blades);
    const QString before = desk.sentence();
    auto* failed = desk.part<MoneyBox>("wearFailed");
    const Money was = failed->money();
    failed->setFocus();
    failed->selectAll();
    QTest::keyClicks(failed, "900");
    QVERIFY(desk.sentence() != before);  // told while it is typed
    QTest::keyClick(failed, Qt::Key_Tab);
    desk.wait();
    const auto stored = [&] {
        for (const ServiceItem& item : desk.session.season().items)
            if (const Duty* duty = findDuty(item, blades)) return duty->failed;
        return Money{};
    };
    QCOMPARE(stored().minor, std::int64_t{90'000});
    desk.session.undoStack().undo();
    desk.wait();
    QCOMPARE(stored(), was);
    QTRY_COMPARE(failed->money(), was);
    QCOMPARE(desk.sentence(), before);
    // Without a cost the fit still says how long they last.
    failed->setFocus();
    failed->selectAll();
    QTest::keyClicks(failed, "0");
    QVERIFY2(desk.sentence().contains("Type what a replacement costs"), qPrintable(desk.sentence()));
    QVERIFY(!desk.part<QPushButton>("adoptBest")->isEnabled());
    QTest::keyClick(failed, Qt::Key_Tab);
    desk.wait();
    desk.session.undoStack().undo();
    desk.wait();
}

/// See what is due, adopt what wears better, look at what is due now, take it back.
void WearPanelTest::adoptsByKeyboardAndUndoes() {
    Desk desk(session());
    desk.choose(blades);
    const auto dueText = [&] {
        desk.show(support::ServiceTab::Due);
        const QAbstractItemModel* list = desk.part<QTableView>("dueList")->model();
        for (int row = 0; row < list->rowCount(); ++row) {
            const QString what = list->index(row, DueModel::What).data().toString();
            const QString of = list->index(row, DueModel::Item).data().toString();
            if (what.contains("Replace") && of.contains("Heron") && of.contains("queegee"))
                return list->index(row, DueModel::Left).data().toString();
        }
        return QString();
    };
    const QString dueBefore = dueText();
    QVERIFY(dueBefore.contains("lane") || dueBefore.contains("day"));
    desk.show(support::ServiceTab::Wear);
    QCOMPARE(desk.every(blades, MeterKind::Lanes), std::int64_t{1'200});
    auto* adopt = desk.part<QPushButton>("adoptBest");
    const int steps = desk.session.undoStack().index();
    adopt->setFocus();
    QTest::keyClick(adopt, Qt::Key_Space);
    desk.wait();
    const std::int64_t set = desk.every(blades, MeterKind::Lanes);
    QVERIFY(set > 0 && set < 1'200 && set % 10 == 0);
    QCOMPARE(desk.every(blades, MeterKind::Days), std::int64_t{180});
    QCOMPARE(desk.session.undoStack().index(), steps + 1);
    QVERIFY(desk.session.undoStack().undoText().contains("Replace"));
    QVERIFY(!adopt->isEnabled());  // it is set now
    const QString dueAfter = dueText();
    QVERIFY2(dueAfter != dueBefore, qPrintable(dueAfter));
    desk.session.undoStack().undo();
    desk.wait();
    QCOMPARE(desk.every(blades, MeterKind::Lanes), std::int64_t{1'200});
    QCOMPARE(dueText(), dueBefore);
}

/// See what is due, record that it had failed, look back at the machine's sheet, and see what that says of wear; undo all of it.
void WearPanelTest::theLeadsPath() {
    Desk desk(session());
    desk.choose(blades);
    const QString counted = desk.part<QLabel>("wearCounted")->text();
    desk.tabs->setCurrentIndex(0);
    auto* due = desk.part<QTableView>("dueList");
    int row = -1;
    for (int r = 0; r < due->model()->rowCount(); ++r) {
        const QString of = due->model()->index(r, DueModel::Item).data().toString();
        const QString what = due->model()->index(r, DueModel::What).data().toString();
        if (of == "Heron: Squeegee blades" && what.startsWith("Replace")) row = r;
    }
    QVERIFY(row >= 0);
    due->setFocus();
    due->setCurrentIndex(due->model()->index(row, 0));
    QTest::keyClick(due, Qt::Key_Return);
    desk.part<QComboBox>("serviceResult")->setCurrentIndex(1);  // it had failed
    auto* note = desk.part<QLineEdit>("serviceNote");
    note->setFocus();
    QTest::keyClicks(note, "Torn");
    QTest::keyClick(note, Qt::Key_Return);
    desk.wait();
    desk.tabs->setCurrentIndex(1);
    auto* machine = desk.part<QComboBox>("sheetMachine");
    machine->setCurrentIndex(machine->findText("Heron"));
    const PlainRows& rows = desk.ServiceDesk::rows("machineList");
    const auto told = [&](int column) { return rows.index(rows.rowOf(blades.value), column).data().toString(); };
    QVERIFY2(told(machine_columns::Since).startsWith("0 lane"), qPrintable(told(machine_columns::Since)));
    desk.show(support::ServiceTab::Wear);
    const QString after = desk.part<QLabel>("wearCounted")->text();
    const auto failures = [](const QString& words) {
        return QRegularExpression("(\\d+) failure").match(words).captured(1).toInt();
    };
    QVERIFY2(failures(counted) > 0 && failures(after) == failures(counted) + 1, qPrintable(counted + " -> " + after));
    desk.session.undoStack().undo();
    desk.wait();
    QCOMPARE(desk.part<QLabel>("wearCounted")->text(), counted);
    QVERIFY(!told(machine_columns::Since).startsWith("0 lane"));
}

void WearPanelTest::withoutReplacementsItSaysSo() {
    support::Evening evening;
    const auto bare = support::sessionOn(evening);
    Desk desk(*bare);
    QVERIFY(desk.part<QLabel>("wearState")->isVisible());
    QVERIFY(desk.part<QLabel>("wearState")->text().contains("Nothing here is replaced"));
    ServiceItem item{{"brush"}, bare->season().centre.machines.front().id, ItemKind::CushionBrush, "Brush"};
    item.duties = {Duty{{"change"}, DutyKind::Replace, "Change it", {{MeterKind::Lanes, 100}}}};
    QVERIFY(bare->apply("Item", {RowChange<ServiceItem>{{}, item}}));
    desk.wait();
    QVERIFY2(desk.sentence().contains("no replacement is recorded yet"), qPrintable(desk.sentence()));
    QVERIFY(!desk.part<QPushButton>("adoptBest")->isEnabled());
}

void WearPanelTest::readOnlyAdoptsNothing() {
    auto store = Store::open(session().store().location(), Access::ReadOnly);
    QVERIFY(bool(store));
    const FixedClock clock{session().now()};
    Session reading(*std::move(store), clock);
    Desk desk(reading);
    desk.choose(blades);
    QVERIFY(desk.sentence().contains("best replaced after"));
    QVERIFY(!desk.part<QPushButton>("adoptBest")->isEnabled());
    QVERIFY(!desk.part<MoneyBox>("wearFailed")->isEnabled());
}

/// The page goes while its thread still reads; nothing uses the database afterwards, and nothing is told to what is gone.
void WearPanelTest::closingWhileItReadsIsSafe() {
    for (int round = 0; round < 5; ++round) {
        ServicePage page(session());
        page.resize(1'100, 640);
        page.show();
        page.findChild<QTabWidget*>()->setCurrentIndex(wearTab);
        QVERIFY(page.findChild<WearPanel*>()->isBusy());
    }
    QCoreApplication::processEvents();
    // One that is hidden reads again when it is seen.
    ServicePage page(session());
    page.show();
    auto* tabs = page.findChild<QTabWidget*>();
    auto* panel = page.findChild<WearPanel*>();
    tabs->setCurrentIndex(wearTab);
    tabs->setCurrentIndex(0);
    QVERIFY(!panel->isBusy());
    tabs->setCurrentIndex(wearTab);
    QVERIFY(panel->isBusy());
    QTRY_VERIFY_WITH_TIMEOUT(!panel->isBusy(), patience);
    QVERIFY(page.findChild<QTableView*>("wearList")->model()->rowCount() > 5);
}

void WearPanelTest::readingIsCancelledAndGoesOn() {
    Desk desk(session());
    const int parts = desk.rows().rowCount();
    const auto seen = [&](const char* name) {
        for (QWidget* widget : desk.panel->findChildren<QWidget*>(name))
            if (widget->isVisible()) return widget;
        return static_cast<QWidget*>(nullptr);
    };
    const auto stop = [&] {
        QTest::keyClick(desk.part<QTableView>("wearList"), Qt::Key_Escape);                            // the outlook first,
        if (desk.panel->isBusy()) QTest::keyClick(desk.part<QTableView>("wearList"), Qt::Key_Escape);  // then the reading
    };
    QVERIFY(session().reload());
    QVERIFY(desk.panel->isBusy());
    stop();
    QVERIFY(!desk.panel->isBusy() && !desk.page.isBusy());
    QCOMPARE(desk.rows().rowCount(), parts);
    QCOMPARE(static_cast<QLabel*>(seen("whyStopped"))->text(), QString("Stopped. The last replacements may be missing."));
    QVERIFY(support::picture(desk.page, "wear-stopped"));
    QTest::mouseClick(seen("workAgain"), Qt::LeftButton);
    QVERIFY(desk.panel->isBusy() && !seen("whyStopped"));
    desk.wait();
    QVERIFY(!seen("workAgain"));
    // Before anything was read there is nothing to show.
    ServicePage page(session());
    page.show();
    page.findChild<QTabWidget*>()->setCurrentIndex(wearTab);
    auto* panel = page.findChild<WearPanel*>();
    QVERIFY(panel->isBusy() && panel->cancel() && !panel->isBusy());
    QCOMPARE(panel->findChild<QLabel*>("whyStopped")->text(), QString("Stopped. What was replaced is not known."));
    QVERIFY(!panel->cancel());
}

/// What the window's thread does once the records are there.
void WearPanelTest::thousandsOfLivesAreQuick() {
    SeasonState season = session().season();
    const ServiceItem* item = nullptr;
    for (const ServiceItem& one : season.items)
        if (findDuty(one, blades)) item = &one;
    QVERIFY(item);
    std::vector<ServiceRecord> records;
    for (int n = 0; n < 10'000; ++n) {
        ServiceRecord record;
        record.id = {QString::number(n + 10'000)};
        record.at = session().now() - hours(24 * 11'000) + hours(24) * n;
        record.item = item->id;
        record.duty = blades;
        record.meters.lanes = std::int64_t{1'000} * n + (n * 7'919) % 700;
        record.result = n % 3 == 0 ? ServiceResult::Failed : ServiceResult::Done;
        records.push_back(record);
    }
    QElapsedTimer timer;
    timer.start();
    const PartLives lives = partLives({season, records, session().now(), MeterKind::Lanes}, {{item->id, blades}});
    const qint64 made = timer.elapsed();
    const WearAnswer answer = wearOf({"Blades", lives.ages(), {63, 153}, 1'200});
    qInfo("%zu lives made in %lld ms, answered in %lld ms", lives.lives.size(), made, timer.elapsed() - made);
    QVERIFY(answer.fit && lives.lives.size() > 9'000);
}

void WearPanelTest::pictures() {
    for (const QString& look : support::looks() + QStringList{"large"}) {
        const support::Look as(look);
        Desk desk(session(), look == "large" ? QSize(1'800, 950) : QSize(1'180, 600));
        desk.choose(blades);
        desk.part<PlotView>("wearFailures")->setCurrent(30);
        QVERIFY(support::picture(desk.page, "wear-" + look));
        desk.show(support::ServiceTab::Machines);
        QVERIFY(support::picture(desk.page, "machines-" + look));
    }
}

QTEST_MAIN(WearPanelTest)
#include "tst_wear_panel.moc"
