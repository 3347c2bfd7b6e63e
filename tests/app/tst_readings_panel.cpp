// Tape readings beside the computed film: the list, typing, correcting, withdrawing, importing, and how far the brush carries.
#include "app/pages/patterns/board_model.h"
#include "app/pages/patterns/carry_panel.h"
#include "app/pages/patterns/limits_form.h"
#include "app/pages/patterns/reading_chart.h"
#include "app/pages/patterns/reading_details.h"
#include "app/pages/patterns/reading_form.h"
#include "app/pages/patterns/reading_model.h"
#include "app/pages/patterns/readings_import.h"
#include "app/pages/patterns/readings_panel.h"
#include "app/widgets/cell_table.h"
#include "app/widgets/decimal_text.h"
#include "tests/support/demo_session.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QStackedLayout>
#include <QStandardPaths>
#include <QTableView>
#include <QTest>
#include <QTranslator>

#include <ctime>

using namespace laneward;

namespace {

constexpr int patience = 60'000;

QPushButton* button(const QWidget& parent, const QString& text) {
    for (QPushButton* child : parent.findChildren<QPushButton*>()) {
        if (child->text().remove('&').startsWith(text)) return child;
    }
    qFatal("no button %s", qPrintable(text));
}

/// Labels, and the items of lists.
QString allText(const QWidget& widget) {
    QStringList lines;
    for (const QLabel* label : widget.findChildren<QLabel*>())
        lines << label->text();
    for (const QListWidget* list : widget.findChildren<QListWidget*>()) {
        for (int i = 0; i < list->count(); ++i)
            lines << list->item(i)->text();
    }
    return lines.join('\n');
}

std::vector<TapeReading> stored(Session& session) {
    const Result<std::vector<TapeReading>> all = session.store().tapes(allRecords);
    return all ? standing(*all) : std::vector<TapeReading>{};
}

}  // namespace

class ReadingsPanelTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void numbersAreReadAsPeopleTypeThem_data();
    void numbersAreReadAsPeopleTypeThem();
    void theListComparesReadingsWithTheirFilm();
    void theRowsFiguresAreThoseOfTheComparison();
    void boardOneIsAtTheRight();
    void suspendedChecksAreHistory();
    void theCentresOwnLimitsAreKept();
    void aReadingIsTypedAndTakenBack();
    void aRowIsPasted();
    void badCellsKeepWhatWasTyped();
    void aReadingIsCorrectedAndWithdrawn();
    void carryIsFittedAndAdopted();
    void aTableIsImported();
    void aBadTableChangesNothing();
    void withoutReadingsItSaysWhatToDo();
    void thousandsStaySwift();
    void pictures();

private:
    Session& session() { return m_demo->session(); }
    QTableView& list() const { return *m_panel->findChild<QTableView*>("readings"); }
    ReadingModel& model() const { return *m_panel->findChild<ReadingModel*>(); }
    ReadingForm& form() const { return *m_panel->findChild<ReadingForm*>(); }
    BoardModel& cells() const { return *m_panel->findChild<BoardModel*>(); }
    void showMost();
    QString saved(const QString& csv);

    QTemporaryDir m_folder;
    QTranslator m_english;
    std::unique_ptr<support::DemoSession> m_demo;
    std::unique_ptr<ReadingsPanel> m_panel;
};

void ReadingsPanelTest::initTestCase() {
    QStandardPaths::setTestModeEnabled(true);
    QSettings().remove("patterns");
    QSettings().remove("lists");
    QVERIFY(m_english.load("laneward_en", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&m_english);  // for its plural forms
    QLocale::setDefault(QLocale("en_GB"));
    m_demo = std::make_unique<support::DemoSession>();
}

void ReadingsPanelTest::init() {
    m_panel = std::make_unique<ReadingsPanel>(session());
    connect(&session(), &Session::changed, m_panel.get(), &ReadingsPanel::refresh);
    m_panel->resize(1130, 600);
    m_panel->show();
    showMost();
}

void ReadingsPanelTest::cleanup() {
    QLocale::setDefault(QLocale("en_GB"));
    QApplication::setPalette(support::lightPalette());
    m_panel.reset();
    while (session().undoStack().canUndo())
        session().undoStack().undo();
    session().undoStack().clear();
}

/// The pattern with the most readings.
void ReadingsPanelTest::showMost() {
    QHash<PatternId, int> counts;
    PatternId most;
    for (const TapeReading& reading : stored(session())) {
        if (++counts[reading.pattern] > counts.value(most)) most = reading.pattern;
    }
    m_panel->showPattern(most);
    QVERIFY(model().rowCount() > 5);
}

QString ReadingsPanelTest::saved(const QString& csv) {
    QFile file(m_folder.filePath("tapes.csv"));
    if (!file.open(QIODevice::WriteOnly) || file.write(csv.toUtf8()) < 0) qFatal("not written");
    return file.fileName();
}

void ReadingsPanelTest::numbersAreReadAsPeopleTypeThem_data() {
    QTest::addColumn<QString>("language");
    QTest::addColumn<QString>("typed");
    QTest::addColumn<double>("number");  // -1 = none
    QTest::newRow("point") << "en_GB"
                           << " 31.2 " << 31.2;
    QTest::newRow("comma in English") << "en_GB"
                                      << "31,2" << -1.0;
    QTest::newRow("comma in German") << "de_DE"
                                     << "31,2" << 31.2;
    QTest::newRow("point in German") << "de_DE"
                                     << "31.2" << 31.2;
    QTest::newRow("both") << "de_DE"
                          << "1.031,2" << -1.0;
    QTest::newRow("thousands") << "en_GB"
                               << "1,031.2" << -1.0;
    QTest::newRow("exponent") << "en_GB"
                              << "1e3" << -1.0;
    QTest::newRow("word") << "en_GB"
                          << "dry" << -1.0;
    QTest::newRow("infinity") << "en_GB"
                              << "inf" << -1.0;
}

void ReadingsPanelTest::numbersAreReadAsPeopleTypeThem() {
    QFETCH(QString, language);
    QFETCH(QString, typed);
    QFETCH(double, number);
    QCOMPARE(decimalOf(typed, QLocale(language)).value_or(-1), number);
}

void ReadingsPanelTest::theListComparesReadingsWithTheirFilm() {
    QCOMPARE(list().model()->rowCount(), model().rowCount());
    QVERIFY2(m_panel->headline().contains("tape readings"), qPrintable(m_panel->headline()));
    const QString words = m_panel->findChild<ReadingDetails*>()->allText();
    for (const char* part : {"Lane", "computed on average", "Left-right unlikeness", "Track ratio", "Checks", "Source"})
        QVERIFY2(words.contains(part), qPrintable(QString(part) + " not in " + words));
    list().sortByColumn(ReadingModel::MeanError, Qt::DescendingOrder);
    const QModelIndex top = list().model()->index(0, ReadingModel::MeanError);
    const double size = top.data(ReadingModel::SortRole).toDouble();
    for (int row = 1; row < model().rowCount(); ++row)
        QVERIFY(top.siblingAtRow(row).data(ReadingModel::SortRole).toDouble() <= size);
}

void ReadingsPanelTest::theRowsFiguresAreThoseOfTheComparison() {
    const ReadingRow& row = *model().row(0);
    QVERIFY(row.pattern);
    QCOMPARE(row.pattern->edition, row.reading.patternVersion);
    const ReadingComparison seen = compare(row.reading, *row.pattern, row.carry);
    const auto cell = [&](int column) { return model().index(0, column).data().toString(); };
    QCOMPARE(cell(ReadingModel::Board), QString::number(seen.largestBoard));
    QCOMPARE(cell(ReadingModel::Track), QLocale("en_GB").toString(*seen.read.trackRatio, 'f', 2));
    QCOMPARE(cell(ReadingModel::Count), QString::number(seen.count));
}

void ReadingsPanelTest::boardOneIsAtTheRight() {
    auto* chart = m_panel->findChild<ReadingDetails*>()->findChild<ReadingChart*>();
    QVERIFY(chart->pointOf(1, 0).x() > chart->pointOf(39, 0).x());
    m_panel->setLayoutDirection(Qt::RightToLeft);
    QVERIFY(chart->pointOf(1, 0).x() > chart->pointOf(39, 0).x());
    chart->setFocus();
    chart->setBoard(20);
    QTest::keyClick(chart, Qt::Key_Right);
    QCOMPARE(chart->board(), 19);
    QVERIFY(chart->accessibleDescription().startsWith("Board 19: read "));
    m_panel->setLayoutDirection(Qt::LeftToRight);
    QCoreApplication::processEvents();
    QTest::mouseMove(chart, {int(chart->pointOf(7, 0).x()), chart->height() / 3});
    QTRY_COMPARE(chart->board(), 7);
}

void ReadingsPanelTest::suspendedChecksAreHistory() {
    CheckResult low;
    low.check = {CheckId::ThreeUnits, CheckStatus::Suspended, CheckSource::BodyPage2007, 1992, 2019};
    low.value = 1.5;
    low.least = 3;
    low.holds = false;
    const CheckLines lines = linesOf(low, QLocale("en_GB"));
    QVERIFY2(lines.verdict.startsWith("History") && !lines.verdict.contains("not kept"), qPrintable(lines.verdict));
    QVERIFY2(lines.source.contains("not in force") && lines.source.contains("2019"), qPrintable(lines.source));
    low.check = {CheckId::OwnLowest, CheckStatus::CentresOwn, CheckSource::Centre, 0, 0};
    QVERIFY(linesOf(low, QLocale("en_GB")).verdict.startsWith("! not kept"));
    low.value.reset();
    QVERIFY(linesOf(low, QLocale("en_GB")).verdict.contains("were not read"));
}

void ReadingsPanelTest::theCentresOwnLimitsAreKept() {
    auto* form = m_panel->findChild<LimitsForm*>();
    QVERIFY(!form->isVisible());
    for (QPushButton* button : m_panel->findChildren<QPushButton*>()) {
        if (button->text() == "Li&mits…") button->click();
    }
    QVERIFY(form->isVisible());
    const QList<QDoubleSpinBox*> fields = form->findChildren<QDoubleSpinBox*>();
    QCOMPARE(fields.size(), 4);
    fields[0]->setValue(4.5);
    fields[2]->setValue(1.2);
    form->findChild<QPushButton*>("keepLimits")->click();
    QVERIFY(!form->isVisible());
    const auto limits = [&] { return session().season().centre.facts.readingLimits; };
    QCOMPARE(limits().lowestMilliUnits, std::optional<std::int64_t>(4'500));
    QCOMPARE(limits().leastTrackPermille, std::optional<int>(1'200));
    QVERIFY(!limits().largestErrorMilliUnits);
    const QString words = m_panel->findChild<ReadingDetails*>()->allText();
    QVERIFY2(words.contains("own"), qPrintable(words));
    session().undoStack().undo();
    QCOMPARE(limits(), ReadingLimits{});
    // Enter on 'Cancel' cancels.
    for (QPushButton* button : m_panel->findChildren<QPushButton*>()) {
        if (button->text() == "Li&mits…") button->click();
    }
    fields[0]->setValue(6);
    for (QPushButton* button : form->findChildren<QPushButton*>()) {
        if (button->text() != "Cancel") continue;
        button->setFocus();
        QTest::keyClick(button, Qt::Key_Return);
    }
    QVERIFY(!form->isVisible());
    QCOMPARE(limits(), ReadingLimits{});
}

void ReadingsPanelTest::aReadingIsTypedAndTakenBack() {
    const size_t before = stored(session()).size();
    QTest::mouseClick(button(*m_panel, "Type a reading"), Qt::LeftButton);
    QVERIFY(form().isVisible());
    auto* table = form().findChild<CellTable*>();
    table->setFocus();
    table->setCurrentIndex(cells().index(17, BoardModel::Read));
    for (const char* units : {"31.2", "30.25", "29"}) {
        QWidget* cell = table->indexWidget(table->currentIndex());
        QVERIFY(cell);
        QTest::keyClicks(cell, units);
        QTest::keyClick(cell, Qt::Key_Return);
        QCoreApplication::processEvents();
    }
    QCOMPARE(cells().values()[17], std::optional<std::int64_t>(31'200));
    QCOMPARE(cells().values()[18], std::optional<std::int64_t>(30'250));
    QCOMPARE(cells().values()[19], std::optional<std::int64_t>(29'000));
    // What is still being typed survives a refresh and counts when the form is kept.
    QTest::keyClicks(table->indexWidget(table->currentIndex()), "12.5");
    m_panel->refresh();
    QCOMPARE(cells().values()[18], std::optional<std::int64_t>(30'250));
    QVERIFY(support::picture(*m_panel, "readings_form"));
    QTest::mouseClick(form().findChild<QPushButton*>("keepTape"), Qt::LeftButton);
    QCOMPARE(stored(session()).size(), before + 1);
    QCOMPARE(cells().values()[20], std::optional<std::int64_t>(12'500));
    QVERIFY(!form().isVisible());
    session().undoStack().undo();
    QCOMPARE(stored(session()).size(), before);
    session().undoStack().redo();
    QCOMPARE(stored(session()).size(), before + 1);
}

void ReadingsPanelTest::aRowIsPasted() {
    QLocale::setDefault(QLocale("de_DE"));
    QTest::mouseClick(button(*m_panel, "Type a reading"), Qt::LeftButton);
    QStringList row;
    for (int board = 1; board <= boards; ++board)
        row << QString("%1,5").arg(board);
    QGuiApplication::clipboard()->setText(row.join('\t') + "\r\n");
    auto* table = form().findChild<CellTable*>();
    table->setFocus();
    table->selectionModel()->setCurrentIndex(cells().index(0, BoardModel::Computed), QItemSelectionModel::NoUpdate);
    QTest::keySequence(table, QKeySequence::Paste);
    for (int board = 1; board <= boards; ++board)
        QCOMPARE(cells().values()[size_t(board - 1)], std::optional<std::int64_t>(board * 1'000 + 500));
    QCOMPARE(cells().firstBad(), 0);
    cells().paste(2, row);
    QCOMPARE(cells().firstBad(), boards);  // one value too many
    QVERIFY2(cells().remark(boards).contains("1 more value"), qPrintable(cells().remark(boards)));
}

void ReadingsPanelTest::badCellsKeepWhatWasTyped() {
    const size_t before = stored(session()).size();
    QTest::mouseClick(button(*m_panel, "Type a reading"), Qt::LeftButton);
    const std::pair<const char*, const char*> bad[] = {
        {"dry", "not a number"}, {"31,2", "not a number"}, {"-1", "below nothing"}, {"501", "more than 500"}};
    auto* keep = form().findChild<QPushButton*>("keepTape");
    QTest::mouseClick(keep, Qt::LeftButton);
    QVERIFY(allText(form()).contains("no board has a value"));
    for (const auto& [typed, why] : bad) {
        const QModelIndex cell = cells().index(4, BoardModel::Read);
        cells().setData(cell, typed, Qt::EditRole);
        QCOMPARE(cell.data().toString(), QString(typed));
        QVERIFY2(cells().remark(5).contains(why), qPrintable(cells().remark(5)));
        QVERIFY(cell.siblingAtColumn(BoardModel::Remark).data().toString().startsWith("! "));
        QTest::mouseClick(keep, Qt::LeftButton);
        QVERIFY2(allText(form()).contains("Nothing kept yet: board 5"), qPrintable(allText(form())));
    }
    QVERIFY(support::picture(*m_panel, "readings_bad_cell"));
    QCOMPARE(stored(session()).size(), before);
    QTest::keyClick(form().findChild<QSpinBox*>(), Qt::Key_Escape);
    QVERIFY(!form().isVisible());
}

void ReadingsPanelTest::aReadingIsCorrectedAndWithdrawn() {
    const size_t before = stored(session()).size();
    const TapeReading old = model().row(0)->reading;
    const auto has = [&](const OperationId& id) {
        const auto all = stored(session());
        return std::any_of(all.begin(), all.end(), [&](const TapeReading& r) { return r.id == id; });
    };
    const auto likeOld = [&] {
        const auto all = stored(session());
        return std::any_of(all.begin(), all.end(), [&](const TapeReading& r) {
            return r.at == old.at && r.milliUnits == old.milliUnits && r.lane == old.lane && r.laneOfRun == old.laneOfRun &&
                   r.machine == old.machine && r.patternVersion == old.patternVersion && r.distance == old.distance;
        });
    };
    list().selectRow(list().model()->rowCount() - 1);  // the oldest: newest first
    QVERIFY(likeOld());
    QTest::mouseClick(button(*m_panel, "Correct"), Qt::LeftButton);
    QCOMPARE(cells().values(), old.milliUnits);
    cells().setData(cells().index(0, 0), "0.7", Qt::EditRole);
    QTest::mouseClick(form().findChild<QPushButton*>("keepTape"), Qt::LeftButton);
    QCOMPARE(stored(session()).size(), before);
    QVERIFY(!has(old.id) && !likeOld());
    session().undoStack().undo();
    QCOMPARE(stored(session()).size(), before);
    QVERIFY(likeOld());
    list().selectRow(list().model()->rowCount() - 1);
    QTest::mouseClick(button(*m_panel, "Withdraw"), Qt::LeftButton);
    QCOMPARE(stored(session()).size(), before - 1);
    QVERIFY(!likeOld());
    session().undoStack().undo();
    QCOMPARE(stored(session()).size(), before);
    QVERIFY(likeOld());
    session().undoStack().redo();
    QVERIFY(!likeOld());
    session().undoStack().undo();
    QVERIFY(likeOld());
}

void ReadingsPanelTest::carryIsFittedAndAdopted() {
    auto* carry = m_panel->findChild<CarryPanel*>();
    QTRY_VERIFY_WITH_TIMEOUT(!carry->isBusy(), patience);
    QVERIFY2(allText(*carry).contains("95 % interval"), qPrintable(allText(*carry)));
    const Micrometres before = findMachine(session().season().centre, {"heron"})->carryLength;
    QTest::mouseClick(button(*carry, "Adopt for Heron"), Qt::LeftButton);
    const Micrometres after = findMachine(session().season().centre, {"heron"})->carryLength;
    QVERIFY(after != before);
    QVERIFY(std::abs(after.value - 762'000) < 100'000);  // the demo's films are made with 2.5 ft
    QTRY_VERIFY_WITH_TIMEOUT(!carry->isBusy(), patience);
    session().undoStack().undo();
    QCOMPARE(findMachine(session().season().centre, {"heron"})->carryLength, before);
}

void ReadingsPanelTest::aTableIsImported() {
    const size_t before = stored(session()).size();
    QString csv = "Tag;Uhrzeit;Bahn;Weite;Gerät";
    for (int board = boards; board >= 1; --board)
        csv += QString(";x%1").arg(board);
    csv += "\n11.11.2026;18.45;7;15,5;Heron";
    for (int board = boards; board >= 1; --board)
        csv += QString(";%1,25").arg(board);
    csv += '\n';
    auto* import = m_panel->findChild<ReadingsImport*>();
    const auto choose = [&](const QString& ours, const QString& theirs) {
        auto* box = import->findChild<QComboBox*>("column-" + ours);
        QVERIFY(box->findText(theirs) > 0);
        box->setCurrentIndex(box->findText(theirs));
    };
    import->load(saved(csv), model().row(0)->reading.pattern);
    auto* take = import->findChild<QPushButton*>("takeReadings");
    QVERIFY(!take->isEnabled());
    choose("date", "Tag");
    choose("time", "Uhrzeit");
    choose("lane", "Bahn");
    choose("distance_ft", "Weite");
    choose("machine", "Gerät");
    choose("boards", "x39");
    import->findChild<QCheckBox*>()->setChecked(true);
    import->findChild<QComboBox*>("decimal")->setCurrentIndex(1);
    import->findChild<QLineEdit*>("dateFormat")->setText("dd.MM.yyyy");
    import->findChild<QLineEdit*>("timeFormat")->setText("HH.mm");
    QVERIFY2(take->isEnabled(), qPrintable(allText(*import)));
    import->show();
    m_panel->findChild<QStackedLayout*>()->setCurrentWidget(import);
    QVERIFY(support::picture(*m_panel, "readings_import"));
    take->click();
    QCOMPARE(stored(session()).size(), before + 1);
    const auto all = stored(session());
    const auto found = std::find_if(all.begin(), all.end(), [](const TapeReading& r) { return r.milliUnits[6] == 7'250; });
    QVERIFY(found != all.end());
    QCOMPARE(found->machine.value, QString("heron"));
    QCOMPARE(found->lane, 7);
    QCOMPARE(found->distance, Micrometres{4'724'400});
    QCOMPARE(dateTimeText(found->at, session().speech()), QString("Wed 11/11/2026, 18:45"));
    import->load(saved(csv), model().row(0)->reading.pattern);  // the mapping is kept, and the row is known
    QVERIFY2(allText(*import).contains("1 is here already"), qPrintable(allText(*import)));
    QVERIFY(!take->isEnabled());
    session().undoStack().undo();
    QCOMPARE(stored(session()).size(), before);
}

void ReadingsPanelTest::aBadTableChangesNothing() {
    QSettings().remove("patterns");
    QString csv = "at,lane,distance_ft";
    for (int board = 1; board <= boards; ++board)
        csv += QString(",b%1").arg(board);
    csv += "\n2026-11-11T18:45:00Z,99,15" + QString(",2.5").repeated(boards);
    csv += "\n2026-11-11T18:45:00Z,7,75" + QString(",2.5").repeated(boards - 1) + ",dry";
    auto* import = m_panel->findChild<ReadingsImport*>();
    import->load(saved(csv), model().row(0)->reading.pattern);
    QVERIFY(!import->findChild<QPushButton*>("takeReadings")->isEnabled());
    const QString lines = allText(*import);
    for (const char* part : {"99", "75", "dry", "b39"})
        QVERIFY2(lines.contains(part), qPrintable(QString(part) + " not in " + lines));
    import->load(m_folder.filePath("missing.csv"), model().row(0)->reading.pattern);
    QVERIFY(!import->findChild<QPushButton*>("takeReadings")->isEnabled());
}

void ReadingsPanelTest::withoutReadingsItSaysWhatToDo() {
    const support::Evening evening;
    const auto small = support::sessionOn(evening);
    ReadingsPanel panel(*small);
    panel.resize(1130, 600);
    panel.show();
    QVERIFY2(allText(panel).contains("Take a tape after a run"), qPrintable(allText(panel)));
    QVERIFY2(panel.headline().contains("no tape reading yet"), qPrintable(panel.headline()));
    QVERIFY(button(panel, "Type a reading")->isEnabled());
    QVERIFY(!button(panel, "Correct")->isEnabled());
    QVERIFY(support::picture(panel, "readings_empty"));
}

void ReadingsPanelTest::thousandsStaySwift() {
    constexpr int count = 10'000;
    support::DemoSession many;
    Session& full = many.session();
    std::vector<Record> records;
    const TapeReading like = stored(full).front();
    for (int n = 0; n < count; ++n) {
        TapeReading reading = like;
        reading.id = {QString("many-%1").arg(n)};
        reading.at = like.at + minutes(n);
        reading.milliUnits[size_t(n % boards)] = n;
        records.push_back(reading);
    }
    QVERIFY(full.store().append(records));
    ReadingsPanel panel(full);
    panel.resize(1130, 600);
    const std::clock_t begin = std::clock();
    panel.show();
    panel.showPattern(like.pattern);
    panel.grab();
    qInfo("10,000 readings loaded and shown in %ld ms of the processor", long((std::clock() - begin) * 1'000 / CLOCKS_PER_SEC));
    QVERIFY(panel.findChild<ReadingModel*>()->rowCount() >= count);
    auto* carry = panel.findChild<CarryPanel*>();
    QTRY_VERIFY_WITH_TIMEOUT(!carry->isBusy(), patience);
}

void ReadingsPanelTest::pictures() {
    auto* carry = m_panel->findChild<CarryPanel*>();
    QTRY_VERIFY_WITH_TIMEOUT(!carry->isBusy(), patience);
    QVERIFY(support::picture(*m_panel, "readings"));
    QApplication::setPalette(support::darkPalette());
    QVERIFY(support::picture(*m_panel, "readings_dark"));
    QApplication::setPalette(support::contrastPalette());
    QVERIFY(support::picture(*m_panel, "readings_contrast"));
    QApplication::setPalette(support::lightPalette());
    m_panel->setLayoutDirection(Qt::RightToLeft);
    QVERIFY(support::picture(*m_panel, "readings_rtl"));
    QTranslator words;
    QVERIFY(words.load("laneward_de", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&words);
    QLocale::setDefault(QLocale("de_DE"));
    ReadingsPanel german(session());
    german.resize(1130, 600);
    german.show();
    auto* fits = german.findChild<CarryPanel*>();
    QTRY_VERIFY_WITH_TIMEOUT(!fits->isBusy(), patience);
    QVERIFY(support::picture(german, "readings_german"));
    QApplication::removeTranslator(&words);
    QLocale::setDefault(QLocale("en_GB"));
}

QTEST_MAIN(ReadingsPanelTest)
#include "tst_readings_panel.moc"
