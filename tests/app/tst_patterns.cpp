// The Patterns page: writing a recipe with undo and messages at the cell, keeping it as a version, and the film that follows.
#include "app/pages/patterns/film_panel.h"
#include "app/pages/patterns/film_profiles.h"
#include "app/pages/patterns/pattern_editor.h"
#include "app/pages/patterns/pattern_list.h"
#include "app/pages/patterns/pattern_paper.h"
#include "app/pages/patterns/patterns_page.h"
#include "app/pages/patterns/strokes_model.h"
#include "app/pages/patterns/strokes_table.h"
#include "tests/support/demo_session.h"
#include "tests/support/looks.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPdfWriter>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

using namespace laneward;

namespace {

template <class T>
T* child(const QWidget& parent, const QString& text) {
    for (T* one : parent.findChildren<T*>()) {
        if (one->text().remove('&').startsWith(text)) return one;
    }
    qFatal("there is no '%s'", qPrintable(text));
}

}  // namespace

class PatternsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void distancesAreReadInTheCentresUnit();
    void aStoredPatternComesBackToTheMicrometre();
    void faultsStandAtTheirCells_data();
    void faultsStandAtTheirCells();
    void whatIsWrongStaysAsTyped();
    void typingIsUndoneInTheTable();
    void keepingMakesAVersionAndIsUndone();
    void rowsAreAddedCopiedMovedAndRemoved();
    void anotherPatternKeepsWhatWasTyped();
    void newDuplicateAndRetire();
    void theListFindsAndSorts();
    void theCursorFollowsMouseAndKeys();
    void besideAndDifference();
    void theHeadlineAnswers();
    void onePageOnPaper();
    void pictures();

private:
    const Pattern& wren() const { return *findPattern(session().season().patterns, {"wren-36"}); }
    Session& session() const { return m_demo->session(); }
    PatternEditor& editor() const { return *m_page->findChild<PatternEditor*>(); }
    StrokesModel& strokes() const { return *m_page->findChild<StrokesModel*>(); }
    FilmView& view() const { return *m_page->findChild<FilmView*>(); }
    bool type(int row, StrokesModel::Column column, const QString& text) const {
        return strokes().setData(strokes().index(row, column), text);
    }

    std::unique_ptr<support::DemoSession> m_demo;
    std::unique_ptr<PatternsPage> m_page;
};

void PatternsTest::initTestCase() { m_demo = std::make_unique<support::DemoSession>(); }

void PatternsTest::init() {
    m_page = std::make_unique<PatternsPage>(session());
    m_page->resize(1150, 660);
    m_page->show();
    m_page->showPattern({"wren-36"});
}

void PatternsTest::cleanup() {
    m_page.reset();
    while (session().undoStack().canUndo())
        session().undoStack().undo();
}

void PatternsTest::distancesAreReadInTheCentresUnit() {
    const Speech feetSpoken{QLocale(QLocale::English, QLocale::UnitedStates), Zone(), UnitSystem::UsCustomary};
    const Speech metres{QLocale(QLocale::German), Zone(), UnitSystem::Metric};
    // 1 ft = 304,800 um exactly (16 CFR 500.19).
    QCOMPARE(distanceOf("24.5", feetSpoken), std::optional(Micrometres{7'467'600}));
    QCOMPARE(distanceOf("7,5", metres), std::optional(Micrometres{7'500'000}));
    QCOMPARE(distanceOf("7.5", metres), std::optional(Micrometres{7'500'000}));
    QVERIFY(!distanceOf("seven", metres));
    QVERIFY(!distanceOf("1.234,5", metres));
    QVERIFY(!distanceOf("", metres));
    QVERIFY(!distanceOf("nan", metres));
}

void PatternsTest::aStoredPatternComesBackToTheMicrometre() {
    for (UnitSystem units : {UnitSystem::Metric, UnitSystem::UsCustomary}) {
        const Speech speech{QLocale(QLocale::German), Zone(), units};
        for (const Pattern& pattern : session().season().patterns)
            QCOMPARE(patternOf(draftOf(pattern, speech), speech), std::optional(pattern));
    }
}

void PatternsTest::faultsStandAtTheirCells_data() {
    QTest::addColumn<int>("column");
    QTest::addColumn<QString>("text");
    QTest::newRow("board 0") << int(StrokesModel::FirstBoard) << "0";
    QTest::newRow("board 40") << int(StrokesModel::LastBoard) << "40";
    QTest::newRow("half a board") << int(StrokesModel::LastBoard) << "12.5";
    QTest::newRow("last before first") << int(StrokesModel::LastBoard) << "1";
    QTest::newRow("no laps") << int(StrokesModel::Laps) << "0";
    QTest::newRow("text for a dose") << int(StrokesModel::Dose) << "much";
    QTest::newRow("negative dose") << int(StrokesModel::Dose) << "-5";
    QTest::newRow("absurd dose") << int(StrokesModel::Dose) << "99999999999";
    QTest::newRow("beyond the lane") << int(StrokesModel::To) << "75";
    QTest::newRow("before the foul line") << int(StrokesModel::From) << "-1";
    QTest::newRow("beyond the end") << int(StrokesModel::To) << "59";
    QTest::newRow("nothing") << int(StrokesModel::From) << "";
}

void PatternsTest::faultsStandAtTheirCells() {
    QFETCH(int, column);
    QFETCH(QString, text);
    QVERIFY(type(0, StrokesModel::Column(column), text));
    const QModelIndex cell = strokes().index(0, column);
    QCOMPARE(cell.data().toString(), text);
    QVERIFY(!cell.data(Qt::ToolTipRole).toString().isEmpty());
    QVERIFY(cell.data(Qt::DecorationRole).isValid());
    QVERIFY(!m_page->findChild<QLabel*>("patternFault")->text().isEmpty());
    QVERIFY(!child<QPushButton>(editor(), "Keep as version")->isEnabled());
    // The other strokes still say what they take.
    QCOMPARE(strokes().index(3, StrokesModel::Volume).data().toString(),
             amountText(volume(wren().strokes[3]), session().speech()));
}

void PatternsTest::whatIsWrongStaysAsTyped() {
    type(1, StrokesModel::LastBoard, "4o");
    m_page->refresh();
    QCOMPARE(strokes().index(1, StrokesModel::LastBoard).data().toString(), QString("4o"));
    // The film shows what is right, without that stroke.
    const std::optional<Pattern> part = editor().shownPattern();
    QVERIFY(part);
    QCOMPARE(part->strokes.size(), wren().strokes.size() - 1);
    type(1, StrokesModel::LastBoard, "31");
    QVERIFY(!m_page->findChild<QLabel*>("patternFault")->isVisible());
}

void PatternsTest::typingIsUndoneInTheTable() {
    const QString before = strokes().index(0, StrokesModel::Dose).data().toString();
    type(0, StrokesModel::Dose, "61");
    type(0, StrokesModel::Laps, "3");
    auto* table = m_page->findChild<StrokesTable*>();
    QTest::keyClick(table, Qt::Key_Z, Qt::ControlModifier);
    QTest::keyClick(table, Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(strokes().index(0, StrokesModel::Dose).data().toString(), before);
    QVERIFY(!editor().isChanged());
    QTest::keyClick(table, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(strokes().index(0, StrokesModel::Dose).data().toString(), QString("61"));
    QVERIFY(!session().undoStack().canUndo());
}

void PatternsTest::keepingMakesAVersionAndIsUndone() {
    const Pattern before = wren();
    type(0, StrokesModel::Dose, "61");
    auto* keep = child<QPushButton>(editor(), "Keep as version");
    QVERIFY(keep->isEnabled());
    keep->click();
    QCOMPARE(wren().strokes[0].dose, Microlitres{61});
    QCOMPARE(wren().edition, before.edition + 1);
    QVERIFY(!editor().isChanged());
    const auto versions = session().store().patternVersions(before.id);
    QVERIFY(versions);
    QVERIFY(std::any_of(versions->begin(), versions->end(),
                        [&](const PatternVersion& v) { return v.pattern.strokes == before.strokes; }));
    session().undoStack().undo();
    QCOMPARE(wren().strokes, before.strokes);
    QCOMPARE(strokes().index(0, StrokesModel::Dose).data().toString(), QString::number(before.strokes[0].dose.value));
}

void PatternsTest::rowsAreAddedCopiedMovedAndRemoved() {
    const int rows = strokes().rowCount();
    m_page->findChild<StrokesTable*>()->setCurrentIndex(strokes().index(0, StrokesModel::FirstBoard));
    child<QAbstractButton>(editor(), "Stroke back")->click();
    QCOMPARE(strokes().rowCount(), rows + 1);
    QCOMPARE(editor().draft().rows[1].direction, Direction::Back);
    child<QAbstractButton>(editor(), "Later")->click();
    QCOMPARE(editor().draft().rows[2].direction, Direction::Back);
    child<QAbstractButton>(editor(), "Copy")->click();
    QCOMPARE(strokes().rowCount(), rows + 2);
    child<QAbstractButton>(editor(), "Remove")->click();
    child<QAbstractButton>(editor(), "Remove")->click();
    QCOMPARE(strokes().rowCount(), rows);
    for (int step = 0; step < 5; ++step)
        child<QAbstractButton>(editor(), "Undo")->click();
    QVERIFY(!editor().isChanged());
}

void PatternsTest::anotherPatternKeepsWhatWasTyped() {
    type(0, StrokesModel::Dose, "61");
    m_page->showPattern({"teal-34"});
    QVERIFY(!editor().isChanged());
    m_page->showPattern({"wren-36"});
    QCOMPARE(strokes().index(0, StrokesModel::Dose).data().toString(), QString("61"));
    child<QPushButton>(editor(), "Leave it as it was")->click();
    QVERIFY(!editor().isChanged());
}

void PatternsTest::newDuplicateAndRetire() {
    auto* list = m_page->findChild<PatternList*>();
    const size_t count = session().season().patterns.size();
    child<QPushButton>(*list, "New")->click();
    QCOMPARE(session().season().patterns.size(), count + 1);
    QCOMPARE(findPattern(session().season().patterns, list->current())->name, QString("New pattern"));
    child<QPushButton>(*list, "Duplicate")->click();
    QCOMPARE(findPattern(session().season().patterns, list->current())->name, QString("New pattern (2)"));
    child<QPushButton>(*list, "Retire")->click();
    QVERIFY(findPattern(session().season().patterns, list->current())->retired);
    child<QPushButton>(*list, "Use again")->click();
    QVERIFY(!findPattern(session().season().patterns, list->current())->retired);
    for (int step = 0; step < 4; ++step)
        session().undoStack().undo();
    QCOMPARE(session().season().patterns.size(), count);
}

void PatternsTest::theListFindsAndSorts() {
    auto* list = m_page->findChild<PatternList*>();
    auto* table = list->findChild<QTableView*>();
    QTest::keyClicks(list->findChild<QLineEdit*>(), "heron");
    QCOMPARE(table->model()->rowCount(), 1);
    list->select({"teal-34"});  // it is shown whatever is looked for
    QCOMPARE(list->current(), PatternId{"teal-34"});
    table->sortByColumn(1, Qt::DescendingOrder);
    QCOMPARE(table->model()->index(0, 0).data().toString(), QString("Heron 45"));
}

void PatternsTest::theCursorFollowsMouseAndKeys() {
    QSignalSpy moved(&view(), &FilmView::cursorMoved);
    view().setCursorAt(20, feet(15));
    QTest::keyClick(&view(), Qt::Key_Left);
    QCOMPARE(view().board(), 21);
    QTest::keyClick(&view(), Qt::Key_Up);
    QCOMPARE(view().distance(), Micrometres{feet(31).value / 2});
    for (int step = 0; step < 60; ++step)
        QTest::keyClick(&view(), Qt::Key_Right);
    QCOMPARE(view().board(), 1);
    QTest::mouseMove(&view(), view().rect().center());
    QVERIFY(moved.count() > 3);
    const QString readout = m_page->findChild<QLabel*>("filmReadout")->text();
    QVERIFY2(readout.contains(view().readout()) && readout.contains("units"), qPrintable(readout));
}

void PatternsTest::besideAndDifference() {
    auto* panel = m_page->findChild<FilmPanel*>();
    QComboBox* beside = nullptr;
    for (QComboBox* box : panel->findChildren<QComboBox*>()) {
        if (box->findText("Teal 34") >= 0) beside = box;
    }
    QVERIFY(beside);
    QCOMPARE(view().films().size(), size_t{1});
    beside->setCurrentIndex(beside->findText("Teal 34"));
    QCOMPARE(view().films().size(), size_t{2});
    child<QCheckBox>(*panel, "Show the difference")->click();
    QVERIFY(view().films()[1].isDifference);
    const Film a = film(wren(), panel->brush());
    const Film b = film(*findPattern(session().season().patterns, {"teal-34"}), panel->brush());
    const double wanted = a.units(20, 30) - b.units(20, 30);
    QVERIFY(std::abs(view().films()[1].film.units(20, 30) - wanted) < 1e-9);
}

void PatternsTest::theHeadlineAnswers() {
    const QString headline = m_page->headline();
    QVERIFY2(headline.startsWith("Wren 36 lays"), qPrintable(headline));
    QVERIFY(headline.contains(amountText(volumes(wren()).lane, session().speech())));
    type(0, StrokesModel::Dose, "61");
    QVERIFY(m_page->headline().contains("not kept"));
}

void PatternsTest::onePageOnPaper() {
    const QString path = qEnvironmentVariable("LANEWARD_BINARY", QDir::tempPath()) + "/pictures/pattern.pdf";
    QDir().mkpath(QFileInfo(path).path());
    {
        QPdfWriter writer(path);
        writer.setPageSize(QPageSize(QPageSize::A4));
        const Machine& machine = session().season().centre.machines.front();
        const PatternPage page{
            wren(), {machine.carryLength}, machine.name, session().season().centre.facts.name, machine.conditioners};
        QVERIFY(paintPatternPage(writer, page, session().speech()));
    }
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray pdf = file.readAll();
    QCOMPARE(pdf.count("/Type /Page\n") + pdf.count("/Type /Page "), 1);
}

void PatternsTest::pictures() {
    const QPalette before = qApp->palette();
    for (const auto& [name, palette] : {std::pair("light", support::lightPalette()), std::pair("dark", support::darkPalette()),
                                        std::pair("contrast", support::contrastPalette())}) {
        qApp->setPalette(palette);
        QVERIFY(support::picture(*m_page, QString("patterns-") + name));
    }
    qApp->setPalette(support::lightPalette());
    type(0, StrokesModel::LastBoard, "47");
    QVERIFY(support::picture(*m_page, "patterns-fault"));
    m_page->setLayoutDirection(Qt::RightToLeft);
    QVERIFY(support::picture(*m_page, "patterns-rtl"));
    qApp->setPalette(before);
}

QTEST_MAIN(PatternsTest)
#include "tst_patterns.moc"
