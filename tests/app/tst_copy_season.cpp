// Copying last season's series: holidays left out, one undoable step.
#include "app/pages/calendar/copy_season_panel.h"
#include "core/calendar/recurrence.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QDateEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

using namespace laneward;

namespace {

template <class T>
T* named(const QWidget& parent, const QString& name) {
    for (T* child : parent.findChildren<T*>()) {
        if (child->accessibleName() == name || child->property("text").toString().remove('&').startsWith(name)) return child;
    }
    qFatal("no %s", qPrintable(name));
}

}  // namespace

class CopySeasonTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void aSeasonIsCopiedInOneStep();
    void nothingChosenCopiesNothing();
    void endedLeaguesAreProposed();
    void escCloses();

private:
    std::unique_ptr<support::Evening> m_evening;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<CopySeasonPanel> m_panel;
};

void CopySeasonTest::init() {
    m_panel.reset();
    m_session.reset();
    m_evening = std::make_unique<support::Evening>();
    m_session = support::sessionOn(*m_evening);
    m_panel = std::make_unique<CopySeasonPanel>(*m_session);
    m_panel->resize(340, 600);
    m_panel->show();
}

void CopySeasonTest::aSeasonIsCopiedInOneStep() {
    Series before = m_session->season().series.front();
    Series after = before;
    after.rule += ";COUNT=10";
    QVERIFY(m_session->apply("Ten weeks", {RowChange<Series>{before, after}}));
    m_panel->open(after.id);
    auto* list = named<QListWidget>(*m_panel, "Series to copy");
    for (int i = 0; i < list->count(); ++i)
        list->item(i)->setCheckState(Qt::Checked);
    m_panel->findChildren<QDateEdit*>().front()->setDate(QDate(2027, 9, 1));
    named<QDateEdit>(*m_panel, "Holiday")->setDate(QDate(2027, 9, 16));
    QTest::mouseClick(named<QPushButton>(*m_panel, "Leave out"), Qt::LeftButton);
    QVERIFY(support::picture(*m_panel, "copy_season"));
    QSignalSpy copied(m_panel.get(), &CopySeasonPanel::copied);
    QTest::mouseClick(named<QPushButton>(*m_panel, "Copy"), Qt::LeftButton);
    QCOMPARE(copied.count(), 1);
    QCOMPARE(copied.first().first().toDate(), QDate(2027, 9, 2));  // the first Thursday
    QCOMPARE(m_session->season().series.size(), size_t(4));
    QCOMPARE(m_session->undoStack().count(), 2);
    for (const Series& series : m_session->season().series) {
        if (series.start.date.year() != 2027 || !series.rule.contains("COUNT")) continue;
        const Result<Dates> dates = startsOf(series, {QDate(2027, 1, 1), QDate(2028, 12, 31)});
        QVERIFY(dates);
        for (const LocalTime& start : dates->starts) {
            QCOMPARE(start.date.dayOfWeek(), 4);
            QVERIFY(start.date != QDate(2027, 9, 16));
        }
    }
    m_session->undoStack().undo();
    QCOMPARE(m_session->season().series.size(), size_t(2));
    m_session->undoStack().redo();
    QCOMPARE(m_session->season().series.size(), size_t(4));
}

void CopySeasonTest::nothingChosenCopiesNothing() {
    m_panel->open({});
    QVERIFY(m_panel->copies().empty());  // no league has ended
    QVERIFY(!named<QPushButton>(*m_panel, "Copy")->isEnabled());
    QVERIFY(!m_panel->copy());
    QCOMPARE(m_session->undoStack().count(), 0);
}

void CopySeasonTest::endedLeaguesAreProposed() {
    const Series before = m_session->season().series.front();
    Series after = before;
    after.kind = EventKind::League;
    after.start.date = QDate(2026, 1, 8);
    after.rule += ";COUNT=4";
    QVERIFY(m_session->apply("Ended", {RowChange<Series>{before, after}}));
    m_panel->open({});
    QCOMPARE(m_panel->copies().size(), size_t(1));
    QVERIFY(m_panel->copies().front().id != after.id);
}

void CopySeasonTest::escCloses() {
    QSignalSpy closed(m_panel.get(), &CopySeasonPanel::closeAsked);
    QTest::keyClick(m_panel.get(), Qt::Key_Escape);
    QCOMPARE(closed.count(), 1);
}

QTEST_MAIN(CopySeasonTest)
#include "tst_copy_season.moc"
