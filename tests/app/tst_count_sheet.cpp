// The count sheet in a made centre with known numbers: walked by key and mouse, asked about, booked, taken back and printed.
#include "app/pages/supplies/count_model.h"
#include "app/pages/supplies/count_panel.h"
#include "app/pages/supplies/supplies_page.h"
#include "app/paper/count_painter.h"
#include "app/widgets/cell_table.h"
#include "tests/support/demo_session.h"
#include "tests/support/looks.h"
#include "tests/support/stocked_house.h"

#include <QBuffer>
#include <QCheckBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPdfWriter>
#include <QPushButton>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTest>
#include <QTranslator>

using namespace laneward;

namespace {

constexpr int countTab = 3;

}  // namespace

class CountSheetTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void withoutSuppliesThereIsNothingToCount();
    void everyPlaceStandsWithWhatTheBooksSay();
    void enterAndDownGoToTheNextField();
    void theDifferenceIsToldAtOnce();
    void numbersAreReadInTheWindowsLanguage();
    void aCountIsBookedAndTakenBack();
    void anEmptyRowIsNotCounted();
    void whatIsFarOffIsAskedAtTheRow();
    void whatCannotBeIsKeptAsTyped();
    void whatIsTypedSurvives();
    void anotherLotIsFound();
    void aTankIsCountedAsItIsMixed();
    void theSheetIsPrintedBlind();
    void aUsualStoreFitsOnAPage();
    void pictures();

private:
    void open(const support::StockedHouse& house);
    CountPanel& panel() const { return *m_page->findChild<CountPanel*>(); }
    CountModel& model() const { return *panel().findChild<CountModel*>(); }
    CellTable& table() const { return *panel().findChild<CellTable*>(); }
    QString summary() const { return panel().findChild<QLabel*>("countSummary")->text(); }
    int rowOf(const QString& supply, const QString& place) const;
    void type(int row, const QString& text);
    void press(const char* name) const;
    QString cell(int row, CountModel::Column column) const { return model().index(row, column).data().toString(); }
    Amount inPlace(const char* id, Place::Kind kind) const { return m_session->season().stock.in({id}, {kind, {}, 0}); }

    QTranslator m_english;
    std::unique_ptr<support::StockedHouse> m_house;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<SuppliesPage> m_page;
};

void CountSheetTest::initTestCase() {
    QStandardPaths::setTestModeEnabled(true);
    QVERIFY(m_english.load("laneward_en", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&m_english);  // for its plural forms
}

void CountSheetTest::init() {
    QLocale::setDefault(QLocale("en_GB"));
    QApplication::setPalette(support::lightPalette());
    m_house = std::make_unique<support::StockedHouse>();
    open(*m_house);
}

void CountSheetTest::cleanup() {
    m_page.reset();
    m_session.reset();
    m_house.reset();
}

void CountSheetTest::open(const support::StockedHouse& house) {
    m_page.reset();
    m_session = house.session();
    m_page = std::make_unique<SuppliesPage>(*m_session);
    m_page->resize(1130, 600);
    m_page->show();
    QVERIFY(QTest::qWaitForWindowExposed(m_page.get()));
    m_page->findChild<QTabWidget*>()->setCurrentIndex(countTab);
}

int CountSheetTest::rowOf(const QString& supply, const QString& place) const {
    for (int row = 0; row < model().rowCount(); ++row) {
        if (cell(row, CountModel::Name) == supply && cell(row, CountModel::Where) == place) return row;
    }
    qFatal("no row %s, %s", qPrintable(supply), qPrintable(place));
}

/// By key, and on to the next row.
void CountSheetTest::type(int row, const QString& text) {
    table().setFocus();
    table().setCurrentIndex(model().index(row, CountModel::Counted));
    if (!table().indexWidget(table().currentIndex())) table().edit(table().currentIndex());
    QWidget* field = table().indexWidget(table().currentIndex());
    QVERIFY(field);
    QTest::keyClicks(field, text);
    QTest::keyClick(field, Qt::Key_Return);
    QCoreApplication::processEvents();
}

void CountSheetTest::press(const char* name) const {
    auto* button = panel().findChild<QPushButton*>(name);
    QVERIFY(button && button->isVisible() && button->isEnabled());
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
}

void CountSheetTest::withoutSuppliesThereIsNothingToCount() {
    const support::StockedHouse empty({}, support::eveningSeason());
    open(empty);
    QCOMPARE(model().rowCount(), 0);
    QVERIFY(!table().isVisible());
    bool told = false;
    for (const QLabel* label : panel().findChildren<QLabel*>())
        told |= label->isVisible() && label->text().contains("there is nothing to count");
    QVERIFY(told);
    m_page.reset();
    m_session.reset();
}

void CountSheetTest::everyPlaceStandsWithWhatTheBooksSay() {
    QCOMPARE(cell(rowOf("Fenlight", "shelf"), CountModel::BooksSay), QString("10"));
    QCOMPARE(cell(rowOf("Fenlight", "open"), CountModel::BooksSay), QString("2"));
    QCOMPARE(cell(rowOf("Fenlight", "open"), CountModel::Unit), QString("L"));
    QCOMPARE(cell(rowOf("Cloth roll", "shelf"), CountModel::BooksSay), QString("100"));
    QCOMPARE(cell(rowOf("Cloth roll", "shelf"), CountModel::Unit), QString("m"));
    QCOMPARE(cell(rowOf("Squeegee blade set", "shelf"), CountModel::BooksSay), QString("0"));
    QCOMPARE(cell(rowOf("Squeegee blade set", "shelf"), CountModel::Unit), QString());
    for (const Machine& machine : m_session->season().centre.machines)
        QVERIFY(rowOf("waste", machine.name + ", waste tank") >= 0);
    // Each supply of a machine's tank stands with that tank.
    for (const CountRow& row : rowsToCount(m_session->season()))
        QVERIFY(row.key.place.kind != Place::Kind::Tank || !row.key.place.machine.isEmpty());
    QCOMPARE(summary(), QString("0 places counted."));
}

void CountSheetTest::enterAndDownGoToTheNextField() {
    table().setFocus();
    table().setCurrentIndex(model().index(0, CountModel::Counted));
    const auto field = [&] { return table().indexWidget(table().currentIndex()); };
    QVERIFY(field());
    QTest::keyClicks(field(), "1");
    QTest::keyClick(field(), Qt::Key_Return);
    QCoreApplication::processEvents();
    QCOMPARE(table().currentIndex(), model().index(1, CountModel::Counted));
    QVERIFY(field());
    QTest::keyClicks(field(), "2");
    QTest::keyClick(field(), Qt::Key_Down);
    QCoreApplication::processEvents();
    QCOMPARE(table().currentIndex(), model().index(2, CountModel::Counted));
    QCOMPARE(cell(1, CountModel::Counted), QString("2"));
    QVERIFY(field());
    QTest::keyClicks(field(), "3");
    QTest::keyClick(field(), Qt::Key_Tab);
    QCoreApplication::processEvents();
    QCOMPARE(table().currentIndex(), model().index(3, CountModel::Counted));
    QTest::keyClick(field(), Qt::Key_Up);
    QCoreApplication::processEvents();
    QCOMPARE(table().currentIndex(), model().index(2, CountModel::Counted));
    QCOMPARE(cell(0, CountModel::Counted) + cell(1, CountModel::Counted) + cell(2, CountModel::Counted), QString("123"));
    // By mouse.
    const QModelIndex last = model().index(3, CountModel::Counted);
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, table().visualRect(last).center());
    QVERIFY(table().indexWidget(last));
}

void CountSheetTest::theDifferenceIsToldAtOnce() {
    const int row = rowOf("Fenlight", "open");
    type(row, "1.7");
    QCOMPARE(cell(row, CountModel::Difference), QLocale().negativeSign() + QString("0.3"));
    type(row, "2.25");
    QCOMPARE(cell(row, CountModel::Difference), QString("+0.25"));
    type(row, "2");
    QCOMPARE(cell(row, CountModel::Difference), QString("0"));
    QCOMPARE(summary(), QString("1 place counted."));
}

void CountSheetTest::numbersAreReadInTheWindowsLanguage() {
    QLocale::setDefault(QLocale("de_DE"));
    open(*m_house);
    const int row = rowOf("Fenlight", "open");
    type(row, "1,75");
    QCOMPARE(cell(row, CountModel::Difference), QLocale().negativeSign() + QString("0,25"));
    QCOMPARE(model().lines(), (std::vector<CountLine>{{{{"fen"}, {Place::Kind::Open, {}, 0}, {}, {}}, {1'750'000}}}));
}

void CountSheetTest::aCountIsBookedAndTakenBack() {
    const int steps = m_session->undoStack().count();
    type(rowOf("Fenlight", "shelf"), "5");
    type(rowOf("Cloth roll", "shelf"), "98.5");
    type(rowOf("Squeegee blade set", "shelf"), "1");
    panel().findChild<QLineEdit*>("countNote")->setText("before the delivery");
    QSignalSpy said(m_session.get(), &Session::said);
    press("bookCount");
    QCOMPARE(said.back().front().toString(), QString("Count 3 places"));
    QCOMPARE(inPlace("fen", Place::Kind::Shelf), Amount{5'000'000});
    QCOMPARE(inPlace("cloth", Place::Kind::Shelf), Amount{98'500});
    QCOMPARE(inPlace("blades", Place::Kind::Shelf), Amount{1});
    QCOMPARE(m_session->undoStack().count(), steps + 1);
    const Result<std::vector<StockCount>> counts = m_session->store().counts(allRecords);
    QVERIFY(counts);
    QCOMPARE(counts->size(), size_t(1));
    QCOMPARE(counts->front().lines.size(), size_t(3));
    QCOMPARE(counts->front().note, QString("before the delivery"));
    QCOMPARE(counts->front().person, PersonId{"ada"});
    // The sheet is empty for the next time, beside what the books say now.
    QCOMPARE(cell(rowOf("Fenlight", "shelf"), CountModel::Counted), QString());
    QCOMPARE(cell(rowOf("Fenlight", "shelf"), CountModel::BooksSay), QString("5"));
    m_session->undoStack().undo();
    QCOMPARE(inPlace("fen", Place::Kind::Shelf), Amount{10'000'000});
    QCOMPARE(inPlace("cloth", Place::Kind::Shelf), Amount{100'000});
    QCOMPARE(inPlace("blades", Place::Kind::Shelf), Amount{0});
    m_session->undoStack().redo();
    QCOMPARE(inPlace("fen", Place::Kind::Shelf), Amount{5'000'000});
    QVERIFY(m_session->store().check()->empty());
}

void CountSheetTest::anEmptyRowIsNotCounted() {
    press("bookCount");
    QVERIFY2(summary().startsWith("Nothing was booked."), qPrintable(summary()));
    QVERIFY(m_session->store().counts(allRecords)->empty());
    type(rowOf("Fenlight", "open"), "0");
    type(rowOf("Fenlight", "shelf"), "4");
    // What was typed is taken out again.
    table().setCurrentIndex(model().index(rowOf("Fenlight", "shelf"), CountModel::Counted));
    table().finishEditing();
    QTest::keyClick(&table(), Qt::Key_Delete);
    QCOMPARE(cell(rowOf("Fenlight", "shelf"), CountModel::Counted), QString());
    press("bookCount");
    QCOMPARE(inPlace("fen", Place::Kind::Open), Amount{0});  // nothing was found there, which is a count
    QCOMPARE(inPlace("fen", Place::Kind::Shelf), Amount{10'000'000});
}

/// 10 L counted as 10,000: somebody typed millilitres.
void CountSheetTest::whatIsFarOffIsAskedAtTheRow() {
    const int row = rowOf("Fenlight", "shelf");
    type(row, "10000");
    QCOMPARE(cell(row, CountModel::Remark), QString("? 10,000 L, the books have 10 L. Tick if it is so."));
    QCOMPARE(summary(), QString("0 places counted. 1 row far from the books: mend or tick."));
    press("bookCount");
    QVERIFY(m_session->store().counts(allRecords)->empty());
    QVERIFY(summary().startsWith("Nothing was booked."));
    QCOMPARE(table().currentIndex(), model().index(row, CountModel::Remark));
    QCOMPARE(cell(row, CountModel::Counted), QString("10000"));
    // By key it is confirmed, and no longer.
    QTest::keyClick(&table(), Qt::Key_Space);
    QCOMPARE(model().stateAt(row), CountModel::State::Ready);
    QTest::keyClick(&table(), Qt::Key_Space);
    QCOMPARE(model().stateAt(row), CountModel::State::Asked);
    // By mouse, in the box at the beginning of the cell.
    const QRect box = table().visualRect(model().index(row, CountModel::Remark));
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, {box.left() + 10, box.center().y()});
    QCOMPARE(model().stateAt(row), CountModel::State::Ready);
    // Another number is another question.
    type(row, "9000");
    QCOMPARE(model().stateAt(row), CountModel::State::Asked);
    type(row, "9");
    QCOMPARE(cell(row, CountModel::Remark), QString());
    type(row, "10000");
    model().setData(model().index(row, CountModel::Remark), Qt::Checked, Qt::CheckStateRole);
    press("bookCount");
    QCOMPARE(inPlace("fen", Place::Kind::Shelf), Amount{10'000'000'000});
}

void CountSheetTest::whatCannotBeIsKeptAsTyped() {
    const int row = rowOf("Fenlight", "open");
    const int blades = rowOf("Squeegee blade set", "shelf");
    type(row, "two");
    type(blades, "1.5");
    QCOMPARE(cell(row, CountModel::Counted), QString("two"));
    QCOMPARE(cell(row, CountModel::Remark), QString("! Not a number; it is written as 12.5."));
    QCOMPARE(cell(blades, CountModel::Remark), QString("! Not a whole number."));
    QVERIFY(summary().contains("2 rows cannot be read."));
    type(row, "-1");
    QVERIFY2(cell(row, CountModel::Remark).startsWith("! Fenlight: "), qPrintable(cell(row, CountModel::Remark)));
    type(rowOf("Fenlight", "shelf"), "8");
    press("bookCount");
    QVERIFY(m_session->store().counts(allRecords)->empty());  // all or nothing
    QCOMPARE(table().currentIndex().column(), int(CountModel::Counted));
    QCOMPARE(cell(rowOf("Fenlight", "shelf"), CountModel::Counted), QString("8"));
}

void CountSheetTest::whatIsTypedSurvives() {
    const int row = rowOf("Fenlight", "open");
    type(row, "1.5");
    table().setCurrentIndex(model().index(rowOf("Fenlight", "shelf"), CountModel::Counted));
    QTest::keyClicks(table().indexWidget(table().currentIndex()), "7");
    // Somebody else opens a container meanwhile: the books move, and nothing that is typed goes.
    Movement opened =
        support::stockMove("other", MovementKind::Opened, {"fen"}, {Place::Kind::Shelf, Place::Kind::Open}, 5'000'000);
    opened.at = opened.recordedAt = support::eveningNow;
    QVERIFY(m_session->record("Open", {opened}));
    QCOMPARE(cell(row, CountModel::Counted), QString("1.5"));
    QCOMPARE(cell(row, CountModel::BooksSay), QString("7"));
    QCOMPARE(cell(row, CountModel::Remark), QString("The books had 2 L when this was typed."));
    m_page->findChild<QTabWidget*>()->setCurrentIndex(0);
    m_page->hide();
    m_page->show();
    m_page->findChild<QTabWidget*>()->setCurrentIndex(countTab);
    m_page->refresh();
    QCOMPARE(cell(row, CountModel::Counted), QString("1.5"));
    // A place that is new to the books takes nothing away either, nor one that is gone.
    Movement received =
        support::stockMove("lot", MovementKind::Received, {"cloth"}, {Place::Kind::Supplier, Place::Kind::Shelf}, 50'000);
    received.entries[1].key.lot = "C7";
    received.at = received.recordedAt = support::eveningNow;
    const int rows = model().rowCount();
    QVERIFY(m_session->record("Receive", {received}));
    QCOMPARE(model().rowCount(), rows + 1);
    QCOMPARE(cell(rowOf("Fenlight", "open"), CountModel::Counted), QString("1.5"));
    QCOMPARE(cell(rowOf("Fenlight", "shelf"), CountModel::Counted), QString("7"));
    press("bookCount");
    QCOMPARE(inPlace("fen", Place::Kind::Open), Amount{1'500'000});
    QCOMPARE(inPlace("fen", Place::Kind::Shelf), Amount{7'000'000});
}

void CountSheetTest::anotherLotIsFound() {
    const int row = rowOf("Cloth roll", "shelf");
    table().setFocus();
    table().setCurrentIndex(model().index(row, CountModel::Counted));
    press("anotherLot");
    QCOMPARE(table().currentIndex(), model().index(row + 1, CountModel::Lot));
    type(row + 1, "50");
    QCOMPARE(cell(row + 1, CountModel::Remark), QString("! This lot stands in another row."));
    table().setCurrentIndex(model().index(row + 1, CountModel::Lot));
    QTest::keyClicks(table().indexWidget(table().currentIndex()), "C9");
    QTest::keyClick(table().indexWidget(table().currentIndex()), Qt::Key_Return);
    QCoreApplication::processEvents();
    QCOMPARE(model().stateAt(row + 1), CountModel::State::Ready);
    press("bookCount");
    QCOMPARE(m_session->season().stock.at({{"cloth"}, {Place::Kind::Shelf, {}, 0}, {}, "C9"}), Amount{50'000});
    QCOMPARE(inPlace("cloth", Place::Kind::Shelf), Amount{150'000});
}

/// Sluice is mixed 1 : 4, so 5 L in a tank are 1 L of it.
void CountSheetTest::aTankIsCountedAsItIsMixed() {
    SeasonState season = support::stockedSeason();
    QVERIFY(!season.centre.machines.empty());
    season.centre.machines.front().cleaner = "Sluice";
    const support::StockedHouse house(support::knownMovements(), season);
    open(house);
    const Machine& machine = m_session->season().centre.machines.front();
    const int row = rowOf("Sluice", machine.name + ", tank (as mixed)");
    type(row, "5");
    press("bookCount");
    const Place tank{Place::Kind::Tank, machine.id, conditionerSlots};
    QCOMPARE(m_session->season().stock.in({"sluice"}, tank), Amount{1'000'000});
    QCOMPARE(m_session->season().stock.in(waterId, tank), Amount{4'000'000});
    QCOMPARE(cell(rowOf("Sluice", machine.name + ", tank (as mixed)"), CountModel::BooksSay), QString("5"));
    m_page.reset();
    m_session.reset();
}

void CountSheetTest::theSheetIsPrintedBlind() {
    CountSheet sheet = panel().sheet();
    QVERIFY(!sheet.withBooks);
    QCOMPARE(sheet.lines.size(), size_t(model().rowCount()));
    auto* books = panel().findChild<QCheckBox*>("printBooks");
    QTest::keyClick(books, Qt::Key_Space);
    QVERIFY(panel().sheet().withBooks);
    const auto pages = [&](const CountSheet& one) {
        QBuffer buffer;
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        prepare(writer, PaperSize::A4);
        return paintCount(writer, one, m_session->speech());
    };
    QCOMPARE(pages(sheet), 1);
    // 35 places still fit on a page, 100 take more.
    sheet.lines.resize(35, sheet.lines.front());
    QCOMPARE(pages(sheet), 1);
    sheet.lines.resize(100, sheet.lines.front());
    QVERIFY(pages(sheet) > 1);
    QTemporaryDir folder;
    QVERIFY(panel().savePdf(folder.filePath("count.pdf")));
    QFile file(folder.filePath("count.pdf"));
    QVERIFY(file.open(QIODevice::ReadOnly) && file.read(5) == "%PDF-");
    QSignalSpy problem(m_session.get(), &Session::problem);
    QVERIFY(!panel().savePdf(folder.filePath("nowhere/count.pdf")));
    QCOMPARE(problem.count(), 1);
}

void CountSheetTest::aUsualStoreFitsOnAPage() {
    support::DemoSession demo;
    CountPanel sheet(demo.session());
    sheet.resize(1150, 620);
    sheet.show();
    sheet.refresh();
    for (const PaperSize size : {PaperSize::A4, PaperSize::Letter}) {
        QBuffer buffer;
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        prepare(writer, size);
        QCOMPARE(paintCount(writer, sheet.sheet(), demo.session().speech()), 1);
    }
    QVERIFY(support::picture(sheet, "count_demo"));
    QVERIFY(sheet.savePdf(QDir(qEnvironmentVariable("LANEWARD_BINARY", QDir::tempPath())).filePath("pictures/count_demo.pdf")));
}

void CountSheetTest::pictures() {
    const QDir folder(qEnvironmentVariable("LANEWARD_BINARY", QDir::tempPath()));
    type(rowOf("Fenlight", "shelf"), "10000");
    type(rowOf("Fenlight", "open"), "1.7");
    type(rowOf("Cloth roll", "shelf"), "many");
    for (const auto& [name, palette] : {std::pair{"light", support::lightPalette()},
                                        {"dark", support::darkPalette()},
                                        {"contrast", support::contrastPalette()}}) {
        QApplication::setPalette(palette);
        QVERIFY(support::picture(*m_page, QString("count_%1").arg(name)));
    }
    QVERIFY(panel().savePdf(folder.filePath("pictures/count_blind.pdf")));
    panel().findChild<QCheckBox*>("printBooks")->setChecked(true);
    QVERIFY(panel().savePdf(folder.filePath("pictures/count_books.pdf")));
}

QTEST_MAIN(CountSheetTest)
#include "tst_count_sheet.moc"
