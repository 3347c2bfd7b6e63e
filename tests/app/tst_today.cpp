// Today, driven with mouse and keyboard: recording in every way, incidents, slips, notes, readings, printing, and taking all of
// it back.
#include "app/edits/run_form.h"
#include "app/pages/today/incident_form.h"
#include "app/pages/today/level_bar.h"
#include "app/pages/today/levels_form.h"
#include "app/pages/today/readiness_card.h"
#include "app/pages/today/sheet_view.h"
#include "app/pages/today/slip_panel.h"
#include "app/pages/today/today_headline.h"
#include "app/pages/today/today_page.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QDoubleSpinBox>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QProcess>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableView>
#include <QTest>

using namespace laneward;

namespace {

/// A page on the evening, shown.
struct Desk {
    support::Evening evening;
    std::unique_ptr<Session> session = support::sessionOn(evening);
    TodayPage page{*session};

    Desk() {
        page.resize(1100, 620);
        page.show();
        if (!QTest::qWaitForWindowExposed(&page)) qFatal("the page is not shown");
    }

    void click(const QString& name, QWidget* within = nullptr) {
        auto* button = (within ? within : &page)->findChild<QPushButton*>(name);
        QVERIFY2(button, qPrintable(name));
        QVERIFY2(button->isEnabled(), qPrintable(name));
        QTest::mouseClick(button, Qt::LeftButton);
    }
    template <class T>
    T* part(const QString& name = {}) {
        return page.findChild<T*>(name);
    }
    QComboBox* boxWith(QWidget* within, const QVariant& data) {
        for (QComboBox* box : within->findChildren<QComboBox*>()) {
            if (box->findData(data) >= 0) return box;
        }
        return nullptr;
    }
    std::vector<RunLog> runs() const { return standing(session->season().runs); }
    const Job& firstJob() const { return session->planOf(session->today()).jobs.front(); }
};

}  // namespace

class TodayTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void headlineSaysWhatMatters();
    void listShowsTheJobs();
    void detailsSayWhatMovingWouldCost();
    void recordsAsPlannedWithOneKey();
    void anEarlyRunEndsNow();
    void beginsAJob();
    void recordsARunThatWasCutShort();
    void recordsOtherLanesWithASpill();
    void correctsARecordedRun();
    void unplannedRunWithTheKeyboardAlone();
    void badLanesAreSaidAndKept();
    void slipsTheEventThatIsOn();
    void slipIsOfferedOnlyForEventsNearNow();
    void recordsAnIncidentWithItsCaution();
    void incidentsWantAnAnswer();
    void closesALaneAndOpensItAgain();
    void badReadingsWantAnAnswer();
    void leavesANoteForTheNextShift();
    void keepsAReading();
    void keepsWhatAFillTook();
    void typedReadingSurvivesAChangeElsewhere();
    void barsSayWhatIsShort();
    void onlyWhatIsLeft();
    void savingTheSheetConfirmsTheDay();
    void savingWhereNobodyMayWriteIsSaid();
    void readOnlyOffersNothing();
    void emptyDaySaysWhatToDo();
};

void TodayTest::headlineSaysWhatMatters() {
    Desk desk;
    QVERIFY2(desk.page.headline().contains("start the next by " + clockTime(desk.firstJob().time.begin, desk.session->speech())),
             qPrintable(desk.page.headline()));
    desk.evening.clock.set(desk.firstJob().time.begin + minutes(7));
    QVERIFY2(desk.page.headline().contains("should have begun 7 min ago"), qPrintable(desk.page.headline()));
    desk.evening.clock.set(support::eveningNow);
    desk.page.recordAsPlanned();
    QVERIFY2(desk.page.headline().contains("done"), qPrintable(desk.page.headline()));
}

void TodayTest::listShowsTheJobs() {
    Desk desk;
    const QAbstractItemModel* list = desk.part<QTableView>("jobs")->model();
    QCOMPARE(list->rowCount(), int(desk.session->planOf(desk.session->today()).jobs.size()));
    const QString startBy = list->index(0, JobModel::StartBy).data().toString();
    QCOMPARE(startBy, clockTime(desk.firstJob().time.begin, desk.session->speech()));
    QVERIFY(list->index(0, JobModel::What).data().toString().contains("Thursday Fours 18:30"));
    QVERIFY(list->index(0, JobModel::Mark).data(Qt::AccessibleTextRole).toString().contains("lanes 1-8"));
}

void TodayTest::detailsSayWhatMovingWouldCost() {
    Desk desk;
    const auto told = [&desk](const QString& words) {
        const QList<QLabel*> labels = desk.page.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) { return label->text().contains(words); });
    };
    const Job job = desk.firstJob();
    QTRY_VERIFY(told("Why here"));
    QVERIFY(told("must end by 18:05"));
    QVERIFY(told("the outing can be 15 min earlier, from " + clockTime(job.time.begin - minutes(15), desk.session->speech())));
    QVERIFY(told("the outing can be 15 min later") && told("inside the reserve"));
    desk.page.recordAsPlanned();
    desk.page.showJob(job.id);
    QTRY_VERIFY(!told("the outing can"));  // what is done cannot move
}

void TodayTest::recordsAsPlannedWithOneKey() {
    Desk desk;
    const Job job = desk.firstJob();
    desk.evening.clock.set(job.time.end + minutes(3));
    QTest::keyClick(desk.part<QTableView>("jobs"), Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(desk.runs().size(), size_t(1));
    const RunLog run = desk.runs().front();
    QCOMPARE(run.result, RunResult::AsPlanned);
    QVERIFY(run.time == job.time && run.lanes == job.lanes && run.use == job.use);
    QCOMPARE(run.person.value, QString("ada"));
    QCOMPARE(desk.firstJob().state, JobState::Done);
    QVERIFY(!desk.part<QPushButton>("asPlanned")->isEnabled());
    desk.session->undoStack().undo();
    QVERIFY(desk.runs().empty());
    QVERIFY(desk.session->season().confirmed.empty());
    desk.session->undoStack().redo();
    QCOMPARE(desk.runs().size(), size_t(1));
    QCOMPARE(desk.firstJob().state, JobState::Done);
}

void TodayTest::anEarlyRunEndsNow() {
    Desk desk;
    const Seconds length = desk.firstJob().time.length();
    desk.click("asPlanned");
    QCOMPARE(desk.runs().front().time.end.seconds, support::eveningNow.seconds);
    QCOMPARE(desk.runs().front().time.length().value, length.value);
}

void TodayTest::beginsAJob() {
    Desk desk;
    desk.click("begin");
    QCOMPARE(desk.firstJob().state, JobState::UnderWay);
    QCOMPARE(desk.firstJob().time.begin.seconds, support::eveningNow.seconds);
    QVERIFY(desk.page.headline().contains("under way"));
    QVERIFY(!desk.part<QPushButton>("begin")->isEnabled());
    desk.session->undoStack().undo();
    QCOMPARE(desk.firstJob().state, JobState::Proposed);
}

void TodayTest::recordsARunThatWasCutShort() {
    Desk desk;
    const Job job = desk.firstJob();
    desk.click("changed");
    auto* form = desk.part<RunForm>();
    QVERIFY(form->isVisible());
    QComboBox* last = desk.boxWith(form, 5);
    QVERIFY(last);
    last->setCurrentIndex(last->findData(job.lanes[3].lane));
    desk.click("recordRun", form);
    QCOMPARE(desk.runs().size(), size_t(1));
    const RunLog run = desk.runs().front();
    QCOMPARE(run.result, RunResult::CutShort);
    QCOMPARE(run.lanes.size(), size_t(4));
    QVERIFY(run.use.laneRuns < job.use.laneRuns);
    QVERIFY(!form->isVisible());
    // The lanes that were left out are planned again.
    LaneSet open;
    for (const Job& again : desk.session->planOf(desk.session->today()).jobs) {
        if (again.state == JobState::Proposed) open = open | again.laneSet();
    }
    for (size_t i = 4; i < job.lanes.size(); ++i)
        QVERIFY(open.contains(job.lanes[i].lane));
    desk.session->undoStack().undo();
    QVERIFY(desk.runs().empty());
}

void TodayTest::recordsOtherLanesWithASpill() {
    Desk desk;
    desk.click("changed");
    auto* form = desk.part<RunForm>();
    form->findChildren<QLineEdit*>().front()->setText("1-6");
    QComboBox* incident = desk.boxWith(form, -1);
    incident->setCurrentIndex(incident->findData(int(IncidentKind::Spill)));
    desk.click("recordRun", form);
    QVERIFY(desk.runs().empty());
    QVERIFY(form->isVisible());
    for (QLineEdit* edit : form->findChildren<QLineEdit*>()) {
        if (edit->accessibleName() == "What happened, and where") edit->setText("cleaner on approach 3");
    }
    desk.click("recordRun", form);
    QCOMPARE(desk.runs().size(), size_t(1));
    QCOMPARE(desk.runs().front().result, RunResult::Changed);
    QCOMPARE(desk.session->season().incidents.size(), size_t(1));
    desk.session->undoStack().undo();
    QVERIFY(desk.runs().empty());
    QVERIFY(desk.session->season().incidents.empty());
}

void TodayTest::correctsARecordedRun() {
    Desk desk;
    desk.click("asPlanned");
    const RunLog before = desk.runs().front();
    desk.click("changed");
    auto* form = desk.part<RunForm>();
    QComboBox* last = desk.boxWith(form, 5);
    last->setCurrentIndex(last->findData(before.lanes[1].lane));
    desk.click("recordRun", form);
    QCOMPARE(desk.runs().size(), size_t(1));
    QCOMPARE(desk.runs().front().lanes.size(), size_t(2));
    for (int round = 0; round < 2; ++round) {
        desk.session->undoStack().undo();
        QCOMPARE(desk.runs().size(), size_t(1));
        QCOMPARE(desk.runs().front().lanes.size(), before.lanes.size());
        desk.session->undoStack().redo();
        QCOMPARE(desk.runs().size(), size_t(1));
        QCOMPARE(desk.runs().front().lanes.size(), size_t(2));
    }
}

void TodayTest::unplannedRunWithTheKeyboardAlone() {
    Desk desk;
    QElapsedTimer clock;
    clock.start();
    QTest::keyClick(desk.part<QTableView>("jobs"), Qt::Key_U, Qt::ControlModifier);
    QWidget* field = QApplication::focusWidget();
    QVERIFY(qobject_cast<QLineEdit*>(field));
    QTest::keyClicks(field, "9-10");
    QTest::keyClick(field, Qt::Key_Return);
    QCOMPARE(desk.runs().size(), size_t(1));
    const RunLog run = desk.runs().front();
    QCOMPARE(run.result, RunResult::Unplanned);
    QCOMPARE(run.lanes.size(), size_t(2));
    QCOMPARE(run.pattern->value, QString("reed"));
    QVERIFY(run.job.isEmpty());
    QVERIFY2(
        run.time.end <= support::eveningNow && run.time.length() > Seconds{60},
        qPrintable(
            QString("%1 s, ends %2 s after now").arg(run.time.length().value).arg((run.time.end - support::eveningNow).value)));
    QVERIFY(run.use.conditionerTotal() > Microlitres{0});
    QCOMPARE(desk.part<QTableView>("jobs")->model()->rowCount(), 2);
    desk.session->undoStack().undo();
    QVERIFY(desk.runs().empty());
    QTest::keyClick(desk.part<QTableView>("jobs"), Qt::Key_U, Qt::ControlModifier);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    QVERIFY(!desk.part<RunForm>()->isVisible());
    QVERIFY(desk.runs().empty());
}

void TodayTest::badLanesAreSaidAndKept() {
    Desk desk;
    for (const char* lanes : {"", "abc", "13", "0", "5-2-1"}) {
        desk.page.recordUnplanned();
        auto* field = desk.part<RunForm>()->findChildren<QLineEdit*>().front();
        field->setText(lanes);
        QTest::keyClick(field, Qt::Key_Return);
        QVERIFY2(desk.runs().empty(), lanes);
        QVERIFY(desk.part<RunForm>()->isVisible());
        QCOMPARE(field->text(), QString(lanes));
    }
}

void TodayTest::slipsTheEventThatIsOn() {
    Desk desk;
    desk.evening.clock.set(support::eveningNow - minutes(20));
    desk.page.refresh();
    const Instant before = desk.firstJob().time.begin;
    auto* events = desk.part<SlipPanel>()->findChild<QComboBox*>();
    QVERIFY(events->currentText().startsWith("Open play"));
    desk.click("slip30");
    const auto& occurrences = desk.session->occupancyOf({desk.session->today(), desk.session->today()}).occurrences;
    QCOMPARE(occurrences.front().booked.length().value, minutes(180).value);
    QVERIFY(desk.firstJob().lanes.front().time.begin >= occurrences.front().cleared);
    desk.session->undoStack().undo();
    QCOMPARE(desk.firstJob().time.begin.seconds, before.seconds);
}

void TodayTest::slipIsOfferedOnlyForEventsNearNow() {
    Desk desk;
    desk.evening.clock.set(support::eveningNow - hours(6));
    desk.page.refresh();
    QVERIFY(!desk.part<QPushButton>("slip10")->isEnabled());
    desk.evening.clock.set(support::eveningNow + hours(3));
    desk.page.refresh();
    QVERIFY(desk.part<QPushButton>("slip10")->isEnabled());
    QVERIFY(desk.part<SlipPanel>()->findChild<QComboBox*>()->currentText().startsWith("Thursday Fours"));
}

void TodayTest::recordsAnIncidentWithItsCaution() {
    Desk desk;
    desk.click("incident");
    auto* form = desk.part<IncidentForm>();
    QVERIFY(form->isVisible());
    bool cautioned = false;
    for (const QLabel* label : form->findChildren<QLabel*>())
        cautioned |= label->text().contains("Slippery");
    QVERIFY(cautioned);
    desk.click("recordIncident", form);
    QVERIFY(desk.session->season().incidents.empty());
    form->findChildren<QLineEdit*>().last()->setText("oil on approach");
    for (QLineEdit* edit : form->findChildren<QLineEdit*>()) {
        if (!edit->parentWidget()->inherits("QAbstractSpinBox") && !edit->parentWidget()->inherits("QComboBox"))
            edit->setText("oil on approach");
    }
    desk.click("recordIncident", form);
    QCOMPARE(desk.session->season().incidents.size(), size_t(1));
    QCOMPARE(desk.session->season().incidents.front().text, QString("oil on approach"));
    desk.session->undoStack().undo();
    QVERIFY(desk.session->season().incidents.empty());
}

void TodayTest::incidentsWantAnAnswer() {
    Desk desk;
    QVERIFY(!desk.page.findChild<QPushButton*>("followUp"));
    Incident spill;
    spill.at = desk.session->now() - hours(20);
    spill.lane = 3;
    spill.text = "oil on the approach";
    QVERIFY(desk.session->record("A spill", {spill}));
    QVERIFY2(desk.page.headline().contains("followed up"), qPrintable(desk.page.headline()));
    desk.click("followUp");
    auto* form = desk.part<IncidentForm>();
    QVERIFY(form->isVisible());
    QVERIFY(support::picture(desk.page, "today-follow-up"));
    QWidget* field = QApplication::focusWidget();
    QTest::keyClick(field, Qt::Key_Return);
    QCOMPARE(desk.session->season().incidents.size(), size_t(1));  // without a word nothing is recorded
    QTest::keyClicks(field, "wiped up");
    QTest::keyClick(field, Qt::Key_Return);
    QCOMPARE(desk.session->season().incidents.size(), size_t(2));
    const Incident answer = desk.session->season().incidents.back();
    QCOMPARE(answer.answers, std::optional(desk.session->season().incidents.front().id));
    QCOMPARE(answer.lane, 3);
    QVERIFY(!form->isVisible());
    QVERIFY(!desk.page.headline().contains("followed up"));
    desk.session->undoStack().undo();
    QVERIFY(desk.page.headline().contains("followed up"));
    // A new incident begins without what was answered before.
    desk.page.recordIncident();
    for (QLineEdit* edit : form->findChildren<QLineEdit*>()) {
        if (!edit->parentWidget()->inherits("QAbstractSpinBox")) edit->setText("another");
    }
    desk.click("recordIncident", form);
    QVERIFY(!desk.session->season().incidents.back().answers);
}

void TodayTest::closesALaneAndOpensItAgain() {
    Desk desk;
    const auto planned = [&desk](int lane) {
        const std::vector<Job>& jobs = desk.session->planOf(desk.session->today()).jobs;
        return std::any_of(jobs.begin(), jobs.end(), [lane](const Job& job) { return job.laneSet().contains(lane); });
    };
    QVERIFY(planned(3));
    desk.click("incident");
    auto* form = desk.part<IncidentForm>();
    auto* close = form->findChild<QCheckBox*>("closeLane");
    QVERIFY(!close->isEnabled());
    form->findChild<QSpinBox*>()->setValue(3);
    QCOMPARE(close->text(), QString("&Close lane 3 until"));
    QTest::mouseClick(close, Qt::LeftButton, {}, QPoint(8, close->height() / 2));
    QVERIFY(close->isChecked());
    auto* until = form->findChild<QDateTimeEdit*>("closedUntil");
    const QDateTime end = until->dateTime();
    until->setDateTime(end.addDays(-2));
    for (QLineEdit* edit : form->findChildren<QLineEdit*>()) {
        if (!edit->parentWidget()->inherits("QAbstractSpinBox")) edit->setText("ball return smokes");
    }
    desk.click("recordIncident", form);
    QVERIFY(desk.session->season().incidents.empty() && form->isVisible());
    until->setDateTime(end);
    desk.click("recordIncident", form);
    QCOMPARE(desk.session->season().centre.outages.size(), size_t(1));
    const Outage outage = desk.session->season().centre.outages.front();
    QVERIFY(outage.lanes == LaneSet{3});
    QCOMPARE(outage.begin.seconds, support::eveningNow.seconds);
    QCOMPARE(outage.end->seconds, dayOf(desk.session->season().centre, desk.session->today()).end.seconds);
    QVERIFY(!planned(3) && planned(4));
    desk.session->undoStack().undo();
    QVERIFY(desk.session->season().centre.outages.empty() && desk.session->season().incidents.empty());
    QVERIFY(planned(3));
    desk.session->undoStack().redo();
    QVERIFY(!planned(3));
    desk.evening.clock.set(support::eveningNow + minutes(10));
    desk.click("followUp");
    QCOMPARE(close->text(), QString("Lane 3 is in &use again"));
    QVERIFY(!until->isVisible());
    close->setChecked(true);
    QTest::keyClicks(QApplication::focusWidget(), "belt renewed");
    desk.click("recordIncident", form);
    QCOMPARE(desk.session->season().centre.outages.front().end->seconds, (support::eveningNow + minutes(10)).seconds);
    QVERIFY(planned(3));
}

void TodayTest::badReadingsWantAnAnswer() {
    Desk desk;
    CentreFacts facts = desk.session->season().centre.facts;
    const CentreFacts before = facts;
    facts.readingLimits.lowestMilliUnits = 4'000;
    QVERIFY(desk.session->apply("Limits", {RowChange<CentreFacts>{before, facts}}));
    TapeReading reading;
    reading.at = desk.session->now() - hours(2);
    reading.pattern = {"reed"};
    reading.machine = {"m1"};
    reading.lane = 5;
    reading.distance = feet(10);
    reading.milliUnits.fill(1'000);
    QVERIFY(desk.session->record("A reading", {reading}));
    bool told = false;
    for (const QLabel* label : desk.page.findChildren<QLabel*>())
        told |= label->text().contains("the tape reading of lane 5 (Reed 38) is outside its check");
    QVERIFY(told);
    desk.click("followUp");
    QTest::keyClicks(QApplication::focusWidget(), "tip cleaned");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QCOMPARE(desk.session->season().incidents.size(), size_t(1));
    QVERIFY(!desk.page.headline().contains("followed up"));
}

void TodayTest::leavesANoteForTheNextShift() {
    Desk desk;
    auto* text = desk.part<QPlainTextEdit>();
    QTest::keyClicks(text, "Pin 7 on lane 3 sticks <b>");
    desk.click("leaveNote");
    QCOMPARE(desk.session->season().handOvers.size(), size_t(1));
    QVERIFY(text->toPlainText().isEmpty());
    bool shownToNext = false;
    for (const QLabel* label : desk.page.findChildren<QLabel*>())
        shownToNext |= label->text().contains("Ada Fenwick: Pin 7 on lane 3 sticks <b>");
    QVERIFY(shownToNext);
    desk.session->undoStack().undo();
    QVERIFY(desk.session->season().handOvers.empty());
}

void TodayTest::keepsAReading() {
    Desk desk;
    auto* card = desk.part<ReadinessCard>();
    desk.click("measure", card);
    auto* form = card->findChild<LevelsForm*>();
    const QList<QDoubleSpinBox*> fields = form->findChildren<QDoubleSpinBox*>();
    fields[0]->setValue(24.1);
    fields[1]->setValue(350);
    desk.click("keepReading", form);
    QCOMPARE(desk.session->season().readings.size(), size_t(1));
    const MachineLevels levels = desk.session->season().readings.front().levels;
    QCOMPARE(levels.volts->value, std::int64_t{24'100});
    QCOMPARE(levels.conditioner[0].value, millilitres(350).value);
    QCOMPARE(levels.cleaner.value, millilitres(7'500).value);
    QVERIFY(!form->isVisible());
    bool attachSpare = false;
    for (const QLabel* label : card->findChildren<QLabel*>())
        attachSpare |= label->text().contains("spare");
    QVERIFY(attachSpare);
    desk.session->undoStack().undo();
    QCOMPARE(desk.session->planningState().levels.front().conditioner[0].value, millilitres(2'000).value);
}

void TodayTest::keepsWhatAFillTook() {
    Desk desk;
    auto* card = desk.part<ReadinessCard>();
    desk.click("measure", card);
    auto* form = card->findChild<LevelsForm*>();
    auto* poured = form->findChild<QDoubleSpinBox*>("pouredCleaner");
    QVERIFY(!poured->isVisible());
    for (QPushButton* button : form->findChildren<QPushButton*>()) {
        if (button->text() == "&Filled") button->click();
    }
    QVERIFY(poured->isVisible());
    poured->setValue(4'200);
    desk.click("keepReading", form);
    const LevelReading reading = desk.session->season().readings.front();
    QVERIFY(reading.poured);
    QCOMPARE(reading.poured->cleaner.value, millilitres(4'200).value);
    QVERIFY(reading.poured->toLine);
    QCOMPARE(reading.levels.cleaner.value, millilitres(7'500).value);
    // A reading without a fill says nothing of one.
    desk.click("measure", card);
    QVERIFY(!poured->isVisible());
    desk.click("keepReading", form);
    const std::vector<LevelReading>& kept = desk.session->season().readings;
    QCOMPARE(kept.size(), size_t(2));
    QCOMPARE(std::count_if(kept.begin(), kept.end(), [](const LevelReading& r) { return r.poured.has_value(); }), 1);
}

void TodayTest::typedReadingSurvivesAChangeElsewhere() {
    Desk desk;
    auto* card = desk.part<ReadinessCard>();
    desk.click("measure", card);
    auto* volts = card->findChild<LevelsForm*>()->findChildren<QDoubleSpinBox*>().front();
    volts->setValue(25.3);
    const auto theirs = support::sessionOn(desk.evening);
    QVERIFY(theirs->record("Note", {HandOver{{}, theirs->today(), theirs->now(), {}, "hello", {}}}));
    desk.session->lookForOthers();
    QCOMPARE(desk.session->season().handOvers.size(), size_t(1));
    QVERIFY(desk.part<ReadinessCard>() == card && volts->isVisible());
    QCOMPARE(volts->value(), 25.3);
}

void TodayTest::barsSayWhatIsShort() {
    const SeasonState season = support::eveningSeason();
    const Machine& machine = season.centre.machines.front();
    Readiness readiness;
    readiness.now = fullLevels(machine, limitsFromSettings(machine), support::eveningNow);
    readiness.tonight.conditioner[0] = millilitres(2'500);
    LevelBar bar;
    const Speech speech{QLocale::c(), Zone(), UnitSystem::Metric};
    bar.show(levelsOf(machine, readiness, speech).front());
    QVERIFY(bar.isShort());
    QCOMPARE(bar.accessibleName(), QString("Fenlight: 2 L, tonight takes 2.5 L"));
    readiness.refills = 1;
    bar.show(levelsOf(machine, readiness, speech).front());
    QVERIFY(!bar.isShort());
    readiness.now.waste = millilitres(8'900);
    readiness.tonight.waste = millilitres(200);
    bar.show(levelsOf(machine, readiness, speech)[2]);
    QVERIFY(bar.isShort());
}

void TodayTest::onlyWhatIsLeft() {
    Desk desk;
    desk.click("asPlanned");
    QAbstractItemModel* list = desk.part<QTableView>("jobs")->model();
    QCOMPARE(list->rowCount(), 1);
    desk.part<QCheckBox>()->setChecked(true);
    QCOMPARE(list->rowCount(), 0);
    desk.part<QCheckBox>()->setChecked(false);
    QCOMPARE(list->rowCount(), 1);
}

void TodayTest::savingTheSheetConfirmsTheDay() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    QTemporaryDir directory;
    SheetView view(*session);
    view.resize(900, 600);
    view.QWidget::show();
    view.show(session->today());
    const QString path = directory.filePath("sheet.pdf");
    QVERIFY(view.savePdf(path));
    QVERIFY(QFileInfo(path).size() > 1'000);
    QCOMPARE(session->planOf(session->today()).jobs.front().planVersion, 1);
    QProcess text;
    text.start("pdftotext", {"-layout", path, "-"});
    QVERIFY(text.waitForFinished());
    const QString words = QString::fromUtf8(text.readAllStandardOutput()).normalized(QString::NormalizationForm_KC);
    QVERIFY2(words.contains("Plan version 1") && words.contains("1-8") && words.contains("Reed 38"), qPrintable(words));
    QVERIFY(view.savePdf(path));
    QCOMPARE(session->undoStack().count(), 1);
    session->undoStack().undo();
    QCOMPARE(session->planOf(session->today()).jobs.front().state, JobState::Proposed);
}

void TodayTest::savingWhereNobodyMayWriteIsSaid() {
    support::Evening evening;
    const auto session = support::sessionOn(evening);
    SheetView view(*session);
    view.show(session->today());
    QSignalSpy problem(session.get(), &Session::problem);
    QVERIFY(!view.savePdf("/nowhere/at/all/sheet.pdf"));
    QCOMPARE(problem.size(), 1);
}

void TodayTest::readOnlyOffersNothing() {
    support::Evening evening;
    Session session(evening.store(Access::ReadOnly), evening.clock);
    TodayPage page(session);
    page.show();
    QVERIFY(QTest::qWaitForWindowExposed(&page));
    for (const char* name : {"asPlanned", "changed", "begin", "unplanned", "incident", "slip10", "measure", "leaveNote"}) {
        QVERIFY2(!page.findChild<QPushButton*>(name)->isEnabled(), name);
    }
    QVERIFY(page.findChild<QPushButton*>("print")->isEnabled());
}

void TodayTest::emptyDaySaysWhatToDo() {
    Desk desk;
    desk.evening.clock.set(support::eveningNow + hours(24));
    QVERIFY(desk.session->reload());
    QVERIFY2(desk.page.headline().contains("no lane needs a treatment"), qPrintable(desk.page.headline()));
    const auto told = [&desk] {
        const QList<QLabel*> labels = desk.page.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
            return label->isVisible() && label->text().contains("entered in the Calendar");
        });
    };
    QTRY_VERIFY(told());
}

QTEST_MAIN(TodayTest)
#include "tst_today.moc"
