// The tab Packs: where each pack is, what it lasts, its fading by a year's log, writing something down and the volts that count,
// by mouse and by keyboard, and taking it back.
#include "app/edits/edit_form.h"
#include "app/pages/service/packs_panel.h"
#include "app/pages/service/plot_view.h"
#include "core/documents/pack_words.h"
#include "tests/support/demo_session.h"
#include "tests/support/looks.h"
#include "tests/support/service_desk.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QUndoStack>

using namespace laneward;

namespace {

constexpr int patience = 60'000;
const ItemId heronPack{"heron-pack"};

struct Desk : support::ServiceDesk {
    explicit Desk(Session& of, const QSize& size = {1'100, 620}) : ServiceDesk(of, support::ServiceTab::Packs, size) {}
    PlainRows& rows() { return ServiceDesk::rows("packList"); }
    void choose(const ItemId& pack) { ServiceDesk::choose("packList", pack.value); }
    QString problems() {
        QStringList said;
        for (const EditForm* form : page.findChildren<EditForm*>())
            if (form->isOpen()) said << form->problems();
        return said.join(u'\n');
    }
};

}  // namespace

class PacksPanelTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { m_demo = std::make_unique<support::DemoSession>(); }
    void cleanupTestCase() { m_demo.reset(); }
    void saysWhatPacksLast();
    void theYearShowsWhatFades();
    void writesDownByKeyboardAndUndoes();
    void whatCannotBeIsSaid();
    void theVoltsThatCount();
    void pictures();

private:
    Session& session() { return m_demo->session(); }
    std::unique_ptr<support::DemoSession> m_demo;
};

void PacksPanelTest::saysWhatPacksLast() {
    Desk desk(session());
    QCOMPARE(desk.rows().rowCount(), 4);
    const QString said = desk.part<QLabel>("packSentence")->text();
    QVERIFY2(said.startsWith("All packs last tonight") || said.contains("may not last tonight"), qPrintable(said));
    const int row = desk.rows().rowOf(heronPack.value);
    const auto cell = [&](int column) { return desk.rows().data(desk.rows().index(row, column)).toString(); };
    QCOMPARE(cell(0), QString("Heron: Pack"));
    QVERIFY2(cell(1).contains("machine") || cell(1).contains("charge"), qPrintable(cell(1)));
    QVERIFY2(cell(4).contains("lanes a charge"), qPrintable(cell(4)));
}

void PacksPanelTest::theYearShowsWhatFades() {
    Desk desk(session());
    desk.choose(heronPack);
    PlotView* plot = desk.part<PlotView>("packPlot");
    QVERIFY2(plot->content().points.size() > 20, qPrintable(QString::number(plot->content().points.size())));
    // The demo's pack loses a sixth in its year; the other machine's hardly anything.
    QCOMPARE(plot->content().line.size(), 2);
    QVERIFY(plot->content().line[1].y() < plot->content().line[0].y() - 3);
    plot->setFocus();
    QTest::keyClick(plot, Qt::Key_Home);
    QVERIFY2(desk.part<QLabel>("packSpoken")->text().contains("lanes"), qPrintable(desk.part<QLabel>("packSpoken")->text()));
    const QString trend = desk.part<QLabel>("packTrend")->text();
    QVERIFY2(trend.contains("Heron: Pack"), qPrintable(trend));
}

void PacksPanelTest::writesDownByKeyboardAndUndoes() {
    Desk desk(session());
    desk.choose(heronPack);
    const size_t before = session().season().packReadings.size();
    QTableView* list = desk.part<QTableView>("packList");
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Return);
    QComboBox* deed = desk.part<QComboBox>("packDeed");
    QVERIFY(deed->isVisible() && !list->isVisible());
    QVERIFY2(desk.problems().contains("a reading needs the volts"), qPrintable(desk.problems()));
    QTest::keyClick(deed, Qt::Key_Down);
    QTest::keyClick(deed, Qt::Key_Down);
    QVERIFY(desk.part<QCheckBox>("packSpent")->isVisible());
    desk.part<QCheckBox>("packSpent")->setFocus();
    QTest::keyClick(desk.part<QCheckBox>("packSpent"), Qt::Key_Space);
    desk.part<QDoubleSpinBox>("packVolts")->setFocus();
    QTest::keyClick(desk.part<QDoubleSpinBox>("packVolts"), Qt::Key_Return);
    QVERIFY2(list->isVisible(), qPrintable(desk.problems()));
    QCOMPARE(session().season().packReadings.size(), before + 1);
    const PackReading& kept = session().season().packReadings.back();
    QVERIFY(kept.pack == heronPack && kept.deed == PackDeed::OnCharge && kept.spent && !kept.volts);
    desk.wait();
    const int row = desk.rows().rowOf(heronPack.value);
    QTRY_VERIFY_WITH_TIMEOUT(desk.rows().data(desk.rows().index(row, 1)).toString().startsWith("on charge since"), patience);
    session().undoStack().undo();
    QVERIFY(standing(session().season().packReadings).size() == before);
}

void PacksPanelTest::whatCannotBeIsSaid() {
    Desk desk(session());
    desk.choose(heronPack);
    desk.click("notePack");
    desk.part<QDoubleSpinBox>("packVolts")->setValue(61);
    QVERIFY2(desk.problems().contains("volts are between 0 and 60"), qPrintable(desk.problems()));
    const size_t before = session().season().packReadings.size();
    QTest::keyClick(desk.part<QDoubleSpinBox>("packVolts"), Qt::Key_Return);
    QCOMPARE(session().season().packReadings.size(), before);
    QTest::keyClick(desk.part<QDoubleSpinBox>("packVolts"), Qt::Key_Escape);
    QVERIFY(desk.part<QTableView>("packList")->isVisible());
}

/// The settings of one machine's operators (common practice, no source) can be entered; what is odd about them is said.
void PacksPanelTest::theVoltsThatCount() {
    Desk desk(session());
    desk.choose(heronPack);
    const int steps = session().undoStack().index();
    desk.click("packLimits");
    QComboBox* chemistry = desk.part<QComboBox>("packChemistry");
    chemistry->setCurrentIndex(chemistry->findData(int(Chemistry::FloodedLeadAcid)));
    const auto state = [&](const char* name, VoltageState which) {
        QComboBox* box = desk.part<QComboBox>(name);
        box->setCurrentIndex(box->findData(int(which)));
    };
    desk.part<QDoubleSpinBox>("packFull")->setValue(26.8);
    desk.part<QDoubleSpinBox>("packFit")->setValue(25.4);
    desk.part<QDoubleSpinBox>("packSpare")->setValue(20);
    state("packFullState", VoltageState::Rested);
    QVERIFY2(desk.problems().contains("Pack"), "a rested pack of this chemistry never shows 26.8 V, and nobody said so");
    state("packFullState", VoltageState::JustCharged);
    state("packFitState", VoltageState::JustCharged);
    state("packSpareState", VoltageState::UnderLoad);
    QTest::keyClick(desk.part<QDoubleSpinBox>("packSpare"), Qt::Key_Return);
    const ServiceItem& kept = *findItem(session().season().items, heronPack);
    QCOMPARE(kept.pack->full.at, Millivolts{26'800});
    QVERIFY(kept.pack->spareBelow.state == VoltageState::UnderLoad);
    QCOMPARE(session().undoStack().index(), steps + 1);
    session().undoStack().undo();
    QVERIFY(findItem(session().season().items, heronPack)->pack->kind.chemistry == Chemistry::Agm);
}

void PacksPanelTest::pictures() {
    for (const QString& look : support::looks()) {
        const support::Look as(look);
        Desk desk(session(), {1'180, 600});
        desk.choose(heronPack);
        QVERIFY(support::picture(desk.page, "packs-" + look));
        desk.click("packLimits");
        QVERIFY(support::picture(desk.page, "packs-limits-" + look));
    }
}

QTEST_MAIN(PacksPanelTest)
#include "tst_packs_panel.moc"
