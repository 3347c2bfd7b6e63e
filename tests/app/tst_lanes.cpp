// The Lanes page on one evening: what is where, why, and what can be done about it.
#include "app/pages/lanes/lanes_page.h"
#include "app/pages/lanes/why_panel.h"
#include "app/widgets/date_bar.h"
#include "tests/support/demo_session.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QDateEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

using namespace laneward;

namespace {

int indexOf(const HouseView& view, HouseItem::Kind kind) {
    for (int i = 0; i < view.blockCount(); ++i) {
        if (view.itemOf(i) && view.itemOf(i)->kind == kind) return i;
    }
    return -1;
}

QAbstractButton* button(const QWidget& parent, const QString& text) {
    for (QAbstractButton* child : parent.findChildren<QAbstractButton*>()) {
        if (child->text().remove('&').startsWith(text) || child->accessibleName() == text) return child;
    }
    qFatal("no button %s", qPrintable(text));
}

}  // namespace

class LanesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void theHeadlineAnswers();
    void everyOccurrenceAndJobIsShown();
    void aJobSaysWhyItIsThere();
    void anEventSaysWhatItAsks();
    void whatIsMissingComesWithRemedies();
    void actionsAskTheFrame();
    void headsTellTheStateAtAnyTime();
    void daysAndLevels();
    void recordedRunsAreShown();
    void theSearchFindsItsWayHere();
    void pictures();

private:
    HouseView& view() const { return *m_page->findChild<HouseView*>(); }
    QString why() const { return m_page->findChild<WhyPanel*>()->allText(); }

    std::unique_ptr<support::Evening> m_evening;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<LanesPage> m_page;
};

void LanesTest::init() {
    m_evening = std::make_unique<support::Evening>();
    m_session = support::sessionOn(*m_evening);
    m_page = std::make_unique<LanesPage>(*m_session);
    m_page->resize(1150, 660);
    m_page->show();
}

void LanesTest::cleanup() {
    m_page.reset();
    m_session.reset();
}

void LanesTest::theHeadlineAnswers() {
    QVERIFY2(m_page->headline().contains("12 November"), qPrintable(m_page->headline()));
    QCOMPARE(m_page->headline().count("12 November"), 1);
    QVERIFY2(m_page->headline().contains("job"), qPrintable(m_page->headline()));
}

void LanesTest::everyOccurrenceAndJobIsShown() {
    const Plan& plan = m_session->planOf(QDate(2026, 11, 12));
    QVERIFY(!plan.jobs.empty());
    QStringList keys;
    for (int i = 0; i < view().blockCount(); ++i)
        keys << view().block(i).key;
    for (const Job& job : plan.jobs)
        QVERIFY(keys.contains(keyOf(job)));
    for (const Occurrence& occurrence : plan.occupancy.occurrences)
        QVERIFY(keys.contains(keyOf(occurrence)));
    const int event = int(keys.indexOf(keyOf(plan.occupancy.occurrences.back())));
    QCOMPARE(view().block(event).spoken, QString("Lanes 1-8, Thursday Fours, 18:30 to 21:30, fresh \u00b7 Reed 38"));
}

void LanesTest::aJobSaysWhyItIsThere() {
    view().setCurrent(indexOf(view(), HouseItem::Kind::Job));
    const Job& job = m_session->planOf(QDate(2026, 11, 12)).jobs.front();
    const Speech speech = m_session->speech();
    for (const QString& words :
         {QString("Thursday Fours"), QString("Reed 38"), QString("Otter"), amountText(job.use.conditionerTotal(), speech),
          clockTime(job.time.begin, speech), QString("Slack"), QString("If the outing moved"), QString("the outing can"),
          QString("Cleaner after"), QString("Steps")})
        QVERIFY2(why().contains(words), qPrintable(words + " not in " + why()));
}

void LanesTest::anEventSaysWhatItAsks() {
    m_page->showOccurrence({"league"}, {QDate(2026, 11, 12), QTime(18, 30)});
    for (const char* words : {"Thursday Fours", "18:30 to 21:30", "1-8", "fresh", "Served by", "Comes again"})
        QVERIFY2(why().contains(words), qPrintable(QString(words) + " not in " + why()));
}

void LanesTest::whatIsMissingComesWithRemedies() {
    const Series before = m_session->season().series.front().id.value == "open" ? m_session->season().series.front()
                                                                                : m_session->season().series.back();
    Series after = before;
    after.duration = minutes(255);  // the lanes are free at 18:25, five minutes before the league
    QVERIFY(m_session->apply("Change", {RowChange<Series>{before, after}}));
    m_page->refresh();
    const int lack = indexOf(view(), HouseItem::Kind::Shortfall);
    QVERIFY(lack >= 0);
    view().setCurrent(lack);
    QVERIFY2(why().contains("What would meet it"), qPrintable(why()));
    QVERIFY2(m_page->headline().contains("no job can meet"), qPrintable(m_page->headline()));
    QVERIFY(support::picture(*m_page, "lanes_unmet"));
}

void LanesTest::actionsAskTheFrame() {
    QSignalSpy sheet(m_page.get(), &Page::sheetWanted);
    QSignalSpy record(m_page.get(), &Page::recordWanted);
    QSignalSpy event(m_page.get(), &Page::eventWanted);
    view().setCurrent(indexOf(view(), HouseItem::Kind::Job));
    QTest::mouseClick(button(*m_page, "Print sheet"), Qt::LeftButton);
    QCOMPARE(sheet.count(), 1);
    QCOMPARE(sheet.first().first().toDate(), QDate(2026, 11, 12));
    QTest::mouseClick(button(*m_page, "Record"), Qt::LeftButton);
    QCOMPARE(record.count(), 1);
    view().setFocus();
    QTest::keyClick(&view(), Qt::Key_Return);
    QCOMPARE(record.count(), 2);
    QVERIFY(!button(*m_page, "Edit event")->isVisible());
    view().setCurrent(indexOf(view(), HouseItem::Kind::Event));
    QVERIFY(!button(*m_page, "Record")->isVisible());
    QTest::mouseClick(button(*m_page, "Edit event"), Qt::LeftButton);
    QCOMPARE(event.count(), 1);
}

void LanesTest::headsTellTheStateAtAnyTime() {
    QCOMPARE(view().data().headsTitle, QString("now"));
    const auto bandOf = [&](int lane) {
        for (const LaneBand& band : view().data().bands) {
            if (band.first <= lane && lane <= band.last) return band;
        }
        return LaneBand();
    };
    QVERIFY(bandOf(1).age.isEmpty());  // nothing was ever recorded
    Q_EMIT view().momentChosen(m_session->zone().toInstant({QDate(2026, 11, 12), QTime(19, 0)}).seconds);
    QCOMPARE(bandOf(1).pattern, QString("Reed 38"));
    QVERIFY(bandOf(1).inPlay);
    QVERIFY(!bandOf(12).inPlay);
    m_page->showLane(12);
    QVERIFY2(why().contains("Nothing in the time shown") && why().contains("19:00"), qPrintable(why()));
}

void LanesTest::daysAndLevels() {
    QTest::mouseClick(button(*m_page, "Later"), Qt::LeftButton);
    QVERIFY2(m_page->headline().contains("13 November"), qPrintable(m_page->headline()));
    QTest::mouseClick(button(*m_page, "Go to today"), Qt::LeftButton);
    QVERIFY(m_page->headline().contains("12 November"));
    const QList<std::pair<QString, int>> levels{{"Week", 7}, {"Month", 30}, {"Season", 91}, {"Day", 1}, {"Evening", 1}};
    for (const auto& [name, days] : levels) {
        QTest::mouseClick(button(*m_page, name), Qt::LeftButton);
        QCOMPARE(int(view().data().days.size()), days);
        QVERIFY(support::picture(*m_page, "lanes_" + name.toLower()));
    }
}

void LanesTest::recordedRunsAreShown() {
    RunLog run;
    run.id = m_session->newOperation();
    run.machine = {"m1"};
    run.person = {"ada"};
    run.time = {support::eveningNow - minutes(70), support::eveningNow - minutes(50)};
    run.treatment = Treatment::CleanAndCondition;
    run.pattern = PatternId{"reed"};
    for (int lane = 9; lane <= 12; ++lane)
        run.lanes.push_back({lane, {run.time.begin + minutes((lane - 9) * 5), run.time.begin + minutes((lane - 8) * 5)}});
    run.result = RunResult::Unplanned;
    run.note = "After a spill <b>";
    run.recordedAt = support::eveningNow;
    QVERIFY(m_session->record("Record", {run}));
    m_page->refresh();
    const int bar = indexOf(view(), HouseItem::Kind::Job);
    bool found = false;
    for (int i = bar; i < view().blockCount(); ++i) {
        if (!view().itemOf(i) || !view().itemOf(i)->log) continue;
        found = true;
        QCOMPARE(int(view().itemOf(i)->state), int(JobState::Done));
        view().setCurrent(i);
        QVERIFY2(why().contains("After a spill <b>") && why().contains("Ada Fenwick"), qPrintable(why()));
    }
    QVERIFY(found);
    QCOMPARE(view().data().bands.back().pattern, QString("Reed 38"));
}

void LanesTest::theSearchFindsItsWayHere() {
    m_page->showOccurrence({"league"}, {QDate(2026, 12, 10), QTime(18, 30)});
    QVERIFY(m_page->headline().contains("10 December"));
    QVERIFY(why().contains("Thursday Fours"));
}

void LanesTest::pictures() {
    support::DemoSession demo;
    LanesPage page(demo.session());
    page.resize(1150, 640);  // what 1280x720 leaves beside the rail
    page.show();
    auto* house = page.findChild<HouseView*>();
    house->setCurrent(indexOf(*house, HouseItem::Kind::Job));
    QVERIFY(support::picture(page, "lanes_demo_evening"));
    for (const char* name : {"Day", "Week", "Month", "Season"}) {
        QTest::mouseClick(button(page, name), Qt::LeftButton);
        QVERIFY(support::picture(page, QString("lanes_demo_%1").arg(QString(name).toLower())));
    }
    QTest::mouseClick(button(page, "Evening"), Qt::LeftButton);
    house->setCurrent(indexOf(*house, HouseItem::Kind::Event));
    QApplication::setPalette(support::darkPalette());
    QVERIFY(support::picture(page, "lanes_demo_dark"));
    QApplication::setPalette(support::lightPalette());
    page.setLayoutDirection(Qt::RightToLeft);
    QVERIFY(support::picture(page, "lanes_demo_rtl"));
}

QTEST_MAIN(LanesTest)
#include "tst_lanes.moc"
