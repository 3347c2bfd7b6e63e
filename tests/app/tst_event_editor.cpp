// The event editor: nothing typed is lost, what is wrong is said beside it, and one edit is one step with its name.
#include "app/pages/calendar/consequences.h"
#include "app/pages/calendar/demand_rows.h"
#include "app/pages/calendar/event_editor.h"
#include "app/pages/calendar/recurrence_edit.h"
#include "tests/support/evening_session.h"
#include "tests/support/full_season.h"
#include "tests/support/looks.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimeEdit>
#include <QToolButton>

using namespace laneward;

namespace {

template <class T>
T* named(const QWidget& parent, const QString& name) {
    for (T* child : parent.findChildren<T*>()) {
        if (child->accessibleName() == name) return child;
    }
    qFatal("no %s", qPrintable(name));
}

QPushButton* button(const QWidget& parent, const QString& text) {
    for (QPushButton* child : parent.findChildren<QPushButton*>()) {
        if (child->text().remove('&').startsWith(text)) return child;
    }
    qFatal("no button %s", qPrintable(text));
}

void type(QLineEdit* field, const QString& text) {
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, text);
}

}  // namespace

class EventEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void everyFieldComesBackUnchanged();
    void editsAreNamedByWhatChanged();
    void badInputStaysAndIsSaid();
    void theEndFollowsTheStart();
    void endBeforeStartIsSaid();
    void demandsPerGroupOfLanes();
    void nextDatesAreShown();
    void consequencesAreShownBeforeSaving();
    void newEventsAreAdded();
    void changesFromElsewhere();
    void closuresAskNothing();
    void fieldsHaveNamesAndRoom();
    void pictures();

private:
    const Series& league() const {
        for (const Series& series : m_session->season().series) {
            if (series.id.value == "league") return series;
        }
        qFatal("no league");
    }

    std::unique_ptr<support::Evening> m_evening;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<EventEditor> m_editor;
};

void EventEditorTest::init() {
    m_evening = std::make_unique<support::Evening>();
    m_session = support::sessionOn(*m_evening);
    m_editor = std::make_unique<EventEditor>(*m_session);
    connect(m_session.get(), &Session::changed, m_editor.get(), &EventEditor::sessionChanged);
    m_editor->resize(380, 800);
    m_editor->show();
    m_editor->edit(league());
}

void EventEditorTest::cleanup() {
    m_editor.reset();
    m_session.reset();
}

void EventEditorTest::everyFieldComesBackUnchanged() {
    for (const Series& series : support::fullSeason().series) {
        m_editor->edit(series);
        const std::optional<Series> same = m_editor->draft();
        QVERIFY2(same, qPrintable(m_editor->problems()));
        QVERIFY2(*same == series, qPrintable(series.title));
        QVERIFY(!m_editor->isDirty());
    }
}

void EventEditorTest::editsAreNamedByWhatChanged() {
    QSignalSpy saved(m_editor.get(), &EventEditor::saved);
    type(named<QLineEdit>(*m_editor, "Title"), "Friday Fives");
    QTest::keyClick(named<QLineEdit>(*m_editor, "Title"), Qt::Key_Return);
    QCOMPARE(saved.count(), 1);
    QCOMPARE(m_session->undoStack().undoText(), QString("Rename Friday Fives"));
    type(named<QLineEdit>(*m_editor, "Lanes"), "1-6");
    QTest::mouseClick(button(*m_editor, "Save"), Qt::LeftButton);
    QCOMPARE(m_session->undoStack().undoText(), QString("Change lanes of Friday Fives"));
    named<QTimeEdit>(*m_editor, "Begins at")->setTime(QTime(19, 15));
    QVERIFY(m_editor->save());
    QCOMPARE(m_session->undoStack().undoText(), QString("Move Friday Fives"));
    QCOMPARE(league().duration, hours(3));
    named<QComboBox>(*m_editor, "Demand")->setCurrentIndex(2);
    QVERIFY(m_editor->save());
    QCOMPARE(m_session->undoStack().undoText(), QString("Change what Friday Fives asks"));
    QCOMPARE(m_session->undoStack().count(), 4);
    while (m_session->undoStack().canUndo())
        m_session->undoStack().undo();
    QCOMPARE(league().title, QString("Thursday Fours"));
    QCOMPARE(named<QLineEdit>(*m_editor, "Title")->text(), QString("Thursday Fours"));  // the form follows undo
    QCOMPARE(named<QLineEdit>(*m_editor, "Lanes")->text(), QString("1-8"));
}

void EventEditorTest::badInputStaysAndIsSaid() {
    auto* lanes = named<QLineEdit>(*m_editor, "Lanes");
    for (const char* wrong : {"1-x", "8-2", "1-300", "13-14", ""}) {
        lanes->selectAll();
        QTest::keyClick(lanes, Qt::Key_Delete);
        QTest::keyClicks(lanes, wrong);
        QVERIFY2(!m_editor->problems().isEmpty(), wrong);
        QVERIFY(!m_editor->save());
        QCOMPARE(lanes->text(), QString(wrong));
        QCOMPARE(m_session->undoStack().count(), 0);
    }
    type(lanes, "1-8");
    QVERIFY2(m_editor->problems().isEmpty(), qPrintable(m_editor->problems()));
    auto* title = named<QLineEdit>(*m_editor, "Title");
    title->selectAll();
    QTest::keyClick(title, Qt::Key_Delete);
    QVERIFY(!m_editor->save());
    QVERIFY(!m_editor->problems().isEmpty());
    type(title, "<b>Bold & \"quoted\"</b>");
    QVERIFY(m_editor->save());
    QCOMPARE(league().title, QString("<b>Bold & \"quoted\"</b>"));
}

void EventEditorTest::theEndFollowsTheStart() {
    named<QTimeEdit>(*m_editor, "Begins at")->setTime(QTime(22, 30));
    QCOMPARE(named<QTimeEdit>(*m_editor, "Ends at")->time(), QTime(1, 30));
    QCOMPARE(named<QDateEdit>(*m_editor, "Ends on")->date(), QDate(2026, 11, 13));
    QCOMPARE(m_editor->draft()->duration, hours(3));
}

void EventEditorTest::endBeforeStartIsSaid() {
    named<QTimeEdit>(*m_editor, "Ends at")->setTime(QTime(18, 0));
    QVERIFY(!m_editor->problems().isEmpty());
    QVERIFY(!m_editor->save());
    named<QTimeEdit>(*m_editor, "Ends at")->setTime(QTime(20, 0));
    QVERIFY(m_editor->save());
    QCOMPARE(league().duration, minutes(90));
}

void EventEditorTest::demandsPerGroupOfLanes() {
    auto* rows = m_editor->findChild<DemandRows*>();
    QCOMPARE(rows->count(), 1);
    QTest::mouseClick(button(*rows, "Add lanes"), Qt::LeftButton);
    DemandRow* second = rows->row(1);
    type(named<QLineEdit>(*second, "Lanes of this demand"), "7-8");
    auto* kind = named<QComboBox>(*second, "Demand");
    kind->setCurrentIndex(kind->findData(int(DemandKind::Recent)));
    named<QDoubleSpinBox>(*second, "Longest age in hours")->setValue(30);
    named<QDoubleSpinBox>(*second, "Longest play since then in hours")->setValue(4.5);
    QVERIFY2(m_editor->save(), qPrintable(m_editor->problems()));
    QCOMPARE(league().demands.size(), size_t(2));
    QCOMPARE(league().demands[0].lanes, LaneSet::range(1, 6));
    QCOMPARE(league().demands[1].lanes, LaneSet::range(7, 8));
    QCOMPARE(league().demands[1].longestAge, hours(30));
    QCOMPARE(league().demands[1].longestPlay, minutes(270));
    type(named<QLineEdit>(*rows->row(1), "Lanes of this demand"), "9-");
    QVERIFY(!m_editor->save());
    QVERIFY(!m_editor->problems().isEmpty());
    QTest::mouseClick(button(*rows->row(1), "Remove"), Qt::LeftButton);
    QVERIFY(m_editor->save());
    QCOMPARE(league().demands.size(), size_t(1));
}

void EventEditorTest::nextDatesAreShown() {
    const QString words = m_editor->findChild<RecurrenceEdit*>()->preview();
    const QLocale locale = m_session->speech().locale;
    for (int week = 0; week < 5; ++week)
        QVERIFY2(words.contains(locale.toString(QDate(2026, 11, 12).addDays(7 * week), QLocale::ShortFormat)), qPrintable(words));
}

void EventEditorTest::consequencesAreShownBeforeSaving() {
    named<QTimeEdit>(*m_editor, "Begins at")->setTime(QTime(16, 0));
    QTRY_VERIFY(m_editor->consequences().contains("Open play"));
    QVERIFY2(m_editor->consequences().contains("Conflicts"), qPrintable(m_editor->consequences()));
    QCOMPARE(m_session->undoStack().count(), 0);
    named<QTimeEdit>(*m_editor, "Begins at")->setTime(QTime(18, 30));
    type(named<QLineEdit>(*m_editor, "Lanes"), "1-10");
    QTRY_VERIFY2(m_editor->consequences().contains("2 more lane"), qPrintable(m_editor->consequences()));
    QVERIFY(m_editor->consequences().contains("more conditioner"));
}

void EventEditorTest::newEventsAreAdded() {
    Series draft;
    draft.id = SeriesId{m_session->newOperation().value};
    draft.uid = draft.id.value;
    draft.zone = "Europe/London";
    draft.start = {QDate(2026, 11, 14), QTime(10, 0)};
    m_editor->create(draft);
    QVERIFY(!m_editor->save());  // no title, no lanes
    type(named<QLineEdit>(*m_editor, "Title"), "Juniors");
    type(named<QLineEdit>(*m_editor, "Lanes"), "9-12");
    QVERIFY2(m_editor->save(), qPrintable(m_editor->problems()));
    QCOMPARE(m_session->season().series.size(), size_t(3));
    QCOMPARE(m_session->undoStack().undoText(), QString("Add Juniors"));
    m_session->undoStack().undo();
    QCOMPARE(m_session->season().series.size(), size_t(2));
    m_session->undoStack().redo();
    QCOMPARE(m_session->season().series.size(), size_t(3));
}

void EventEditorTest::changesFromElsewhere() {
    auto* title = named<QLineEdit>(*m_editor, "Title");
    type(title, "Mine");
    const Series before = league();
    Series after = before;
    after.title = "Theirs";
    QVERIFY(m_session->apply("Rename", {RowChange<Series>{before, after}}));
    QCOMPARE(title->text(), QString("Mine"));  // what was typed stays
    QVERIFY(m_editor->problems().contains("changed meanwhile"));
    QTest::mouseClick(button(*m_editor, "Revert"), Qt::LeftButton);
    QCOMPARE(title->text(), QString("Theirs"));
    QVERIFY(!m_editor->isDirty());
}

void EventEditorTest::closuresAskNothing() {
    auto* kind = named<QComboBox>(*m_editor, "Kind");
    kind->setCurrentIndex(kind->findData(int(EventKind::Closure)));
    QVERIFY(m_editor->save());
    QVERIFY(league().demands.empty());
}

void EventEditorTest::fieldsHaveNamesAndRoom() {
    QTest::mouseClick(m_editor->findChild<QToolButton*>(), Qt::LeftButton);
    QCoreApplication::processEvents();
    for (QWidget* field : m_editor->findChildren<QWidget*>()) {
        const bool takesFocus = field->focusPolicy() & Qt::TabFocus && field->isVisible() && !field->focusProxy();
        if (!takesFocus || field->inherits("QScrollArea")) continue;
        if (field->parentWidget()->inherits("QAbstractSpinBox") || field->parentWidget()->inherits("QComboBox")) continue;
        const bool hasText = !field->property("text").toString().isEmpty();
        QVERIFY2(hasText || !field->accessibleName().isEmpty(), field->metaObject()->className());
        const QRect place(field->mapTo(m_editor.get(), QPoint()), field->size());
        QVERIFY2(place.right() <= m_editor->width(), qPrintable(field->accessibleName() + " is cut off"));
    }
}

void EventEditorTest::pictures() {
    m_editor->resize(390, 1250);
    QTest::mouseClick(m_editor->findChild<QToolButton*>(), Qt::LeftButton);
    named<QTimeEdit>(*m_editor, "Begins at")->setTime(QTime(16, 0));
    QTRY_VERIFY(m_editor->consequences().contains("Conflicts"));
    QVERIFY(support::picture(*m_editor, "editor_light"));
    QApplication::setPalette(support::darkPalette());
    QVERIFY(support::picture(*m_editor, "editor_dark"));
    QApplication::setPalette(support::lightPalette());
    m_editor->setLayoutDirection(Qt::RightToLeft);
    QVERIFY(support::picture(*m_editor, "editor_rtl"));
}

QTEST_MAIN(EventEditorTest)
#include "tst_event_editor.moc"
