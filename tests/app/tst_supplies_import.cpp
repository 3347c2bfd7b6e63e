// Counts and price lists come into the window from files with other names of columns: seen, mapped, kept, asked about, undone.
#include "app/pages/supplies/count_panel.h"
#include "app/pages/supplies/price_panel.h"
#include "app/pages/supplies/supplies_import.h"
#include "tests/support/looks.h"
#include "tests/support/stocked_house.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTest>
#include <QTranslator>

using namespace laneward;
using cli::StockKind;

class SuppliesImportTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void aCountIsMappedAndUndone();
    void theMappingIsKept();
    void aColumnThatIsNotChosenIsNotTaken();
    void whatDoesNotFitIsNamed();
    void aWrongUnitIsAsked();
    void aPriceListIsMappedAndUndone();
    void whatCannotBeReadIsSaid();
    void escLeaves();
    void thePanelsHaveIt();
    void pictures();

private:
    SuppliesImport& open(StockKind kind, const QByteArray& csv);
    void choose(const char* ours, const QString& theirs) {
        auto* box = m_import->findChild<QComboBox*>(ours);
        QVERIFY(box);
        const int at = box->findText(theirs);
        QVERIFY2(at >= 0, qPrintable(theirs));
        box->setFocus();
        box->setCurrentIndex(at);
    }
    QString result() const { return m_import->findChild<QLabel*>("importResult")->text(); }
    QStringList faults() const {
        QStringList lines;
        const auto* list = m_import->findChild<QListWidget*>();
        for (int row = 0; row < list->count(); ++row)
            lines << list->item(row)->text();
        return lines;
    }
    QPushButton& take() const { return *m_import->findChild<QPushButton*>("takeImport"); }
    const SeasonState& season() const { return m_session->season(); }

    QTranslator m_english;
    QTemporaryDir m_folder;
    std::unique_ptr<support::StockedHouse> m_house;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<SuppliesImport> m_import;
};

void SuppliesImportTest::initTestCase() {
    QStandardPaths::setTestModeEnabled(true);
    QVERIFY(m_english.load("laneward_en", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&m_english);  // for its plural forms
}

void SuppliesImportTest::init() {
    QSettings().remove("supplies");
    QLocale::setDefault(QLocale("en_GB"));
    QApplication::setPalette(support::lightPalette());
    m_house = std::make_unique<support::StockedHouse>();
    m_session = m_house->session();
}

void SuppliesImportTest::cleanup() {
    m_import.reset();
    m_session.reset();
    m_house.reset();
}

SuppliesImport& SuppliesImportTest::open(StockKind kind, const QByteArray& csv) {
    const QString path = m_folder.filePath("list.csv");
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(csv) != csv.size()) qFatal("cannot write %s", qPrintable(path));
    file.close();
    m_import = std::make_unique<SuppliesImport>(*m_session, kind);
    m_import->resize(1000, 560);
    m_import->show();
    m_import->load(path, kind == StockKind::Prices ? SupplierId{"teasel"} : SupplierId{});
    return *m_import;
}

void SuppliesImportTest::aCountIsMappedAndUndone() {
    open(StockKind::Counts, "Ware;Menge;Ort\r\nFenlight;8,5;shelf\r\nfenlight;1,25;open\r\n");
    QVERIFY2(faults().join(' ').contains("there is no column 'supply'"), qPrintable(faults().join(' ')));
    QVERIFY(!take().isEnabled());
    choose("column-supply", "Ware");
    choose("column-amount", "Menge");
    choose("column-place", "Ort");
    QVERIFY2(faults().front().contains("list.csv:2, column 'Menge': '8,5' has a comma") ||
                 faults().front().contains("unit is missing"),
             qPrintable(faults().join('\n')));
    choose("defaultUnit", "L");
    choose("decimal", "comma (31,2)");
    QCOMPARE(faults(), QStringList());
    QCOMPARE(result(), QString("2 places are counted."));
    QSignalSpy closed(m_import.get(), &SuppliesImport::closed);
    QTest::mouseClick(&take(), Qt::LeftButton);
    QCOMPARE(closed.count(), 1);
    QCOMPARE(season().stock.in({"fen"}, {Place::Kind::Shelf, {}, 0}), Amount{8'500'000});
    QCOMPARE(season().stock.in({"fen"}, {Place::Kind::Open, {}, 0}), Amount{1'250'000});
    QCOMPARE(m_session->undoStack().count(), 1);
    m_session->undoStack().undo();
    QCOMPARE(season().stock.onHand({"fen"}), Amount{12'000'000});
}

void SuppliesImportTest::theMappingIsKept() {
    open(StockKind::Counts, "Ware;Menge\r\nCloth roll;98,5\r\n");
    choose("column-supply", "Ware");
    choose("column-amount", "Menge");
    choose("defaultUnit", "m");
    choose("decimal", "comma (31,2)");
    take().setFocus();
    QTest::keyClick(&take(), Qt::Key_Space);
    QCOMPARE(season().stock.onHand({"cloth"}), Amount{98'500});
    open(StockKind::Counts, "Ware;Menge\r\nCloth roll;97\r\n");
    QCOMPARE(m_import->findChild<QComboBox*>("column-supply")->currentText(), QString("Ware"));
    QCOMPARE(m_import->findChild<QComboBox*>("defaultUnit")->currentText(), QString("m"));
    QVERIFY(take().isEnabled());
}

void SuppliesImportTest::aColumnThatIsNotChosenIsNotTaken() {
    open(StockKind::Counts, "supply,amount,unit,lot\r\nFenlight,4,L,Z9\r\n");
    QVERIFY(take().isEnabled());
    m_import->findChild<QComboBox*>("column-lot")->setCurrentIndex(0);
    QTest::mouseClick(&take(), Qt::LeftButton);
    QCOMPARE(season().stock.at({{"fen"}, {Place::Kind::Shelf, {}, 0}, {}, {}}), Amount{4'000'000});
}

void SuppliesImportTest::whatDoesNotFitIsNamed() {
    open(StockKind::Counts, "supply,amount,unit\r\nFenlight,-4,L\r\nCloth roll,five,m\r\nMoss,1,L\r\nFenlight,1,\r\n");
    QCOMPARE(faults().size(), 4);
    QVERIFY(faults()[0].startsWith("list.csv:2, column 'amount': '-4'"));
    QVERIFY(faults()[1].startsWith("list.csv:3, column 'amount': 'five'"));
    QVERIFY(faults()[2].startsWith("list.csv:4, column 'supply'"));
    QVERIFY(faults()[3].startsWith("list.csv:5, column 'unit'"));
    QCOMPARE(result(), QString("Nothing can come in yet; 4 cells do not fit:"));
    QVERIFY(!take().isEnabled());
}

void SuppliesImportTest::aWrongUnitIsAsked() {
    open(StockKind::Counts, "supply,amount,unit\r\nFenlight,10000,L\r\n");
    QCOMPARE(faults(), QStringList{"list.csv:2: Fenlight: 10,000 L counted where the ledger has 10 L; check the unit"});
    auto* sure = m_import->findChild<QCheckBox*>("importSure");
    QVERIFY(sure->isVisible() && !take().isEnabled());
    sure->setFocus();
    QTest::keyClick(sure, Qt::Key_Space);
    QVERIFY(take().isEnabled());
    QTest::mouseClick(&take(), Qt::LeftButton);
    QCOMPARE(season().stock.in({"fen"}, {Place::Kind::Shelf, {}, 0}), Amount{10'000'000'000});
}

void SuppliesImportTest::aPriceListIsMappedAndUndone() {
    const std::vector<Offer> before = season().offers;
    open(StockKind::Prices, "Article,What,Packs,Price\r\nT-fen,Fenlight,1,150\r\nT-fen,Fenlight,4,140.50\r\n");
    choose("column-supply", "What");
    choose("column-article", "Article");
    choose("column-from_packs", "Packs");
    choose("column-price", "Price");
    QCOMPARE(faults(), QStringList());
    QCOMPARE(result(), QString("1 price is new or another. 3 are no longer in the list and are retired."));
    QTest::mouseClick(&take(), Qt::LeftButton);
    for (const Offer& offer : season().offers) {
        if (offer.id == OfferId{"o-fen"})
            QCOMPARE(offer.prices, (std::vector<PriceBreak>{{1, {15'000, "EUR"}}, {4, {14'050, "EUR"}}}));
        else
            QVERIFY(offer.retired);
    }
    m_session->undoStack().undo();
    QCOMPARE(season().offers.size(), before.size());
    for (size_t n = 0; n < before.size(); ++n) {
        QCOMPARE(season().offers[n].prices, before[n].prices);
        QVERIFY(!season().offers[n].retired);
    }
}

void SuppliesImportTest::whatCannotBeReadIsSaid() {
    open(StockKind::Prices, "supply,price\r\nFenlight,\"1\r\n");
    QVERIFY2(faults().join(' ').contains("quotation mark"), qPrintable(faults().join(' ')));
    QVERIFY(!take().isEnabled());
    open(StockKind::Prices, "");
    QVERIFY(!faults().isEmpty());
    QVERIFY(!take().isEnabled());
}

void SuppliesImportTest::escLeaves() {
    open(StockKind::Counts, "supply,amount,unit\r\nFenlight,9,L\r\n");
    QSignalSpy closed(m_import.get(), &SuppliesImport::closed);
    QTest::keyClick(m_import.get(), Qt::Key_Escape);
    QCOMPARE(closed.count(), 1);
    QCOMPARE(season().stock.onHand({"fen"}), Amount{12'000'000});
}

void SuppliesImportTest::thePanelsHaveIt() {
    CountPanel counts(*m_session);
    counts.refresh();
    QVERIFY(counts.findChild<QPushButton*>("importCount"));
    QVERIFY(counts.findChild<SuppliesImport*>()->isHidden());
    PricePanel prices(*m_session);
    prices.refresh();
    QVERIFY(prices.findChild<QPushButton*>("importPrices"));
    QVERIFY(prices.findChild<SuppliesImport*>()->isHidden());
}

void SuppliesImportTest::pictures() {
    const QByteArray csv = "supply,amount,unit\r\nFenlight,-4,L\r\nCloth roll,five,m\r\nMoss,1,L\r\n";
    for (const auto& [name, palette] : {std::pair{"light", support::lightPalette()}, {"dark", support::darkPalette()}}) {
        QApplication::setPalette(palette);
        QVERIFY(support::picture(open(StockKind::Counts, csv), QString("count_import_%1").arg(name)));
        QVERIFY(support::picture(open(StockKind::Prices, "supply,article,price\r\nFenlight,T-fen,15000\r\n"),
                                 QString("price_import_%1").arg(name)));
    }
}

QTEST_MAIN(SuppliesImportTest)
#include "tst_supplies_import.moc"
