// Supplies, suppliers and prices are entered, changed and retired in the page: by key and mouse, checked while they are typed,
// each edit one undoable step.
#include "app/pages/supplies/offer_form.h"
#include "app/pages/supplies/price_panel.h"
#include "app/pages/supplies/stock_panel.h"
#include "app/pages/supplies/supplier_form.h"
#include "app/pages/supplies/supplies_page.h"
#include "app/pages/supplies/supply_form.h"
#include "app/widgets/cell_table.h"
#include "app/widgets/money_box.h"
#include "app/widgets/quantity_box.h"
#include "tests/support/looks.h"
#include "tests/support/stocked_house.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTableView>
#include <QTest>
#include <QTranslator>

using namespace laneward;

namespace {

constexpr int stockTab = 0;
constexpr int priceTab = 4;

template <class T>
const T* byName(const std::vector<T>& rows, const QString& name) {
    for (const T& row : rows) {
        if (row.name == name) return &row;
    }
    return nullptr;
}

}  // namespace

class SupplyFormsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void aSupplyIsAddedByKey();
    void whatCannotBeIsSaidBesideItsField();
    void theFirstSupplyOfAnEmptyStore();
    void aTankThatNamesItIsBooked();
    void aSupplyIsRenamedWithItsTanks();
    void theUnitOfWhatMovedStays();
    void aSupplyIsRetiredAndTakenUpAgain();
    void whatIsTypedSurvivesARefresh();
    void aSupplierIsAddedAndChanged();
    void badTermsAreSaidBesideTheirFields();
    void aPriceIsAddedByKey();
    void badPricesAreSaidBesideThem();
    void pricesAreChangedAndRetired();
    void moneyKeepsItsCurrency();
    void pictures();

private:
    void open(const support::StockedHouse& house);
    void show(int tab) { m_page->findChild<QTabWidget*>()->setCurrentIndex(tab); }
    template <class T>
    T& part(const char* name = nullptr) const {
        T* found = m_page->findChild<T*>(name);
        if (!found) qFatal("nothing named %s", name ? name : "");
        return *found;
    }
    /// By mouse.
    void click(const char* name) const {
        for (QPushButton* button : m_page->findChildren<QPushButton*>(name)) {
            if (!button->isVisible()) continue;
            QVERIFY(button->isEnabled());
            return QTest::mouseClick(button, Qt::LeftButton);
        }
        QFAIL(name);
    }
    void typeInto(QWidget& field, const QString& text) const {
        field.setFocus();
        if (auto* line = qobject_cast<QLineEdit*>(&field)) line->selectAll();
        if (auto* box = qobject_cast<QAbstractSpinBox*>(&field)) box->selectAll();
        QTest::keyClicks(&field, text);
    }
    void typePrice(int row, const QString& packs, const QString& each) const;
    void choose(const char* list, const QString& first) const;
    const SeasonState& season() const { return m_session->season(); }
    int steps() const { return m_session->undoStack().count(); }

    QTranslator m_english;
    std::unique_ptr<support::StockedHouse> m_house;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<SuppliesPage> m_page;
};

void SupplyFormsTest::initTestCase() {
    QStandardPaths::setTestModeEnabled(true);
    QVERIFY(m_english.load("laneward_en", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&m_english);  // for its plural forms
}

void SupplyFormsTest::init() {
    QLocale::setDefault(QLocale("en_GB"));
    QApplication::setPalette(support::lightPalette());
    m_house = std::make_unique<support::StockedHouse>();
    open(*m_house);
}

void SupplyFormsTest::cleanup() {
    m_page.reset();
    m_session.reset();
    m_house.reset();
}

void SupplyFormsTest::open(const support::StockedHouse& house) {
    m_page.reset();
    m_session = house.session();
    m_page = std::make_unique<SuppliesPage>(*m_session);
    m_page->resize(1130, 600);
    m_page->show();
    QVERIFY(QTest::qWaitForWindowExposed(m_page.get()));
}

void SupplyFormsTest::choose(const char* list, const QString& first) const {
    for (auto* table : m_page->findChildren<QTableView*>()) {
        if (table->accessibleName() != QLatin1String(list)) continue;
        for (int row = 0; row < table->model()->rowCount(); ++row) {
            if (table->model()->index(row, 0).data().toString() != first) continue;
            table->setCurrentIndex(table->model()->index(row, 0));
            return;
        }
    }
    QFAIL(qPrintable(first));
}

void SupplyFormsTest::typePrice(int row, const QString& packs, const QString& each) const {
    auto& table = part<CellTable>("offerPrices");
    for (const auto& [column, text] : {std::pair{0, packs}, {1, each}}) {
        table.setFocus();
        table.setCurrentIndex(table.model()->index(row, column));
        QWidget* cell = table.indexWidget(table.currentIndex());
        QVERIFY(cell);
        typeInto(*cell, text);
        QTest::keyClick(cell, Qt::Key_Return);
        QCoreApplication::processEvents();
    }
}

void SupplyFormsTest::aSupplyIsAddedByKey() {
    show(stockTab);
    click("newSupply");
    auto& form = part<SupplyForm>();
    QVERIFY(form.isOpen());
    QVERIFY(!part<QPushButton>("newSupply").isVisible());
    const int before = steps();
    QCOMPARE(QApplication::focusWidget(), &part<QLineEdit>("supplyName"));
    typeInto(part<QLineEdit>("supplyName"), "Board polish");
    auto& kind = part<QComboBox>("supplyKind");
    kind.setFocus();
    QTest::keyClick(&kind, Qt::Key_Down);
    QTest::keyClick(&kind, Qt::Key_Down);
    QCOMPARE(kind.currentText(), QString("approach cleaner"));
    typeInto(part<QuantityBox>("supplyUsual"), "0.25");
    typeInto(part<QuantityBox>("supplyContainer"), "5");
    typeInto(part<QDoubleSpinBox>("supplyLevel"), "95");
    QCOMPARE(form.problems(), QStringList());
    QTest::keyClick(&part<QDoubleSpinBox>("supplyLevel"), Qt::Key_Return);
    QVERIFY(!form.isOpen());
    const Supply* added = byName(season().supplies, "Board polish");
    QVERIFY(added);
    QCOMPARE(added->kind, SupplyKind::ApproachCleaner);
    QCOMPARE(added->basis, UseBasis::PerDay);
    QCOMPARE(added->usualUse, Amount{250'000});
    QCOMPARE(added->container, Amount{5'000'000});
    QCOMPARE(added->rules.serviceLevelPermille, 950);
    QCOMPARE(steps(), before + 1);
    QCOMPARE(part<StockPanel>().current(), added->id);
    m_session->undoStack().undo();
    QVERIFY(!byName(season().supplies, "Board polish"));
    m_session->undoStack().redo();
    QVERIFY(byName(season().supplies, "Board polish"));
}

void SupplyFormsTest::whatCannotBeIsSaidBesideItsField() {
    show(stockTab);
    click("newSupply");
    auto& form = part<SupplyForm>();
    QCOMPARE(part<QLabel>("problem-supplyName").text(), QString("! the supply 'new' has no name"));
    QVERIFY(part<QLabel>("problem-supplyContainer").text().contains("what a container holds is nothing"));
    QVERIFY(!form.findChild<QPushButton*>("saveForm")->isEnabled());
    typeInto(part<QLineEdit>("supplyName"), "Fenlight");
    QCOMPARE(part<QLabel>("problem-supplyName").text(), QString("! two supplies are called 'Fenlight'"));
    typeInto(part<QLineEdit>("supplyName"), "Reedlight");
    QCOMPARE(part<QLabel>("problem-supplyName").text(), QString());
    typeInto(part<QuantityBox>("supplyContainer"), "-5");
    QVERIFY(!part<QLabel>("problem-supplyContainer").text().isEmpty());
    typeInto(part<QuantityBox>("supplyContainer"), "5");
    typeInto(part<QDoubleSpinBox>("supplyLevel"), "100");
    QVERIFY(part<QLabel>("problem-supplyLevel").text().contains("1,000 per thousand is not possible"));
    typeInto(part<QSpinBox>("supplyLife"), "-1");
    QVERIFY(part<QLabel>("problem-supplyLife").text().contains("shelf life of -1 days"));
    auto& basis = part<QComboBox>("supplyBasis");
    part<QComboBox>("supplyKind").setCurrentIndex(part<QComboBox>("supplyKind").findData(int(SupplyKind::Part)));
    basis.setCurrentIndex(basis.findData(int(UseBasis::Machine)));
    QVERIFY(part<QLabel>("problem-supplyBasis").text().contains("only conditioner and cleaner"));
    const int before = steps();
    QVERIFY(!form.save());
    QCOMPARE(steps(), before);
    QTest::keyClick(&part<QLineEdit>("supplyName"), Qt::Key_Escape);
    QVERIFY(!form.isOpen());
    QVERIFY(part<QPushButton>("newSupply").isVisible());
}

void SupplyFormsTest::theFirstSupplyOfAnEmptyStore() {
    const support::StockedHouse empty({}, support::eveningSeason());
    open(empty);
    show(stockTab);
    click("newSupply");
    typeInto(part<QLineEdit>("supplyName"), "Blade");
    part<QComboBox>("supplyKind").setCurrentIndex(part<QComboBox>("supplyKind").findData(int(SupplyKind::Part)));
    typeInto(part<QuantityBox>("supplyContainer"), "1");
    click("saveForm");
    QVERIFY(byName(season().supplies, "Blade"));
    QCOMPARE(byName(season().supplies, "Blade")->basis, UseBasis::WhenServiced);
    m_page.reset();
    m_session.reset();
}

/// The tank of a machine that names the new supply is in the books from then on; undoing takes that back and retires the supply,
/// because the ledger names it.
void SupplyFormsTest::aTankThatNamesItIsBooked() {
    SeasonState state = support::stockedSeason();
    QVERIFY(!state.centre.machines.empty());
    state.centre.machines.front().conditioners[0] = "Marshlight";
    const support::StockedHouse house(support::knownMovements(), state);
    open(house);
    show(stockTab);
    const int before = steps();
    click("newSupply");
    typeInto(part<QLineEdit>("supplyName"), "Marshlight");
    typeInto(part<QuantityBox>("supplyContainer"), "5");
    click("saveForm");
    const Supply* added = byName(season().supplies, "Marshlight");
    QVERIFY(added);
    const SupplyId id = added->id;
    QCOMPARE(steps(), before + 1);
    Microlitres level;
    for (const MachineLevels& one : m_session->planningState().levels) {
        if (one.machine == season().centre.machines.front().id) level = one.conditioner[0];
    }
    QVERIFY(level.value > 0);
    QCOMPARE(season().stock.onHand(id), Amount{level.value});
    m_session->undoStack().undo();
    QCOMPARE(season().stock.onHand(id), Amount{0});
    QVERIFY(findSupply(season().supplies, id)->retired);
    m_session->undoStack().redo();
    QCOMPARE(season().stock.onHand(id), Amount{level.value});
    QVERIFY(!findSupply(season().supplies, id)->retired);
    m_session->undoStack().undo();
    QVERIFY(findSupply(season().supplies, id)->retired);
    QVERIFY(m_session->store().check()->empty());
    m_page.reset();
    m_session.reset();
}

void SupplyFormsTest::aSupplyIsRenamedWithItsTanks() {
    SeasonState state = support::stockedSeason();
    state.centre.machines.front().conditioners[0] = "Fenlight";
    const support::StockedHouse house(support::knownMovements(), state);
    open(house);
    show(stockTab);
    choose("Supplies", "Fenlight");
    click("changeSupply");
    typeInto(part<QLineEdit>("supplyName"), "Fenlight Two");
    click("saveForm");
    QCOMPARE(findSupply(season().supplies, {"fen"})->name, QString("Fenlight Two"));
    QCOMPARE(season().centre.machines.front().conditioners[0], QString("Fenlight Two"));
    m_session->undoStack().undo();
    QCOMPARE(findSupply(season().supplies, {"fen"})->name, QString("Fenlight"));
    QCOMPARE(season().centre.machines.front().conditioners[0], QString("Fenlight"));
    m_page.reset();
    m_session.reset();
}

void SupplyFormsTest::theUnitOfWhatMovedStays() {
    show(stockTab);
    choose("Supplies", "Cloth roll");
    click("changeSupply");
    part<QComboBox>("supplyKind").setCurrentIndex(part<QComboBox>("supplyKind").findData(int(SupplyKind::Part)));
    typeInto(part<QuantityBox>("supplyContainer"), "1");
    QSignalSpy problem(m_session.get(), &Session::problem);
    click("saveForm");
    QCOMPARE(problem.count(), 1);
    QVERIFY(part<SupplyForm>().isOpen());  // what was typed stays
    QCOMPARE(findSupply(season().supplies, {"cloth"})->kind, SupplyKind::Cloth);
}

void SupplyFormsTest::aSupplyIsRetiredAndTakenUpAgain() {
    show(stockTab);
    choose("Supplies", "Fenlight");
    click("retireSupply");
    QVERIFY(findSupply(season().supplies, {"fen"})->retired);
    QCOMPARE(season().stock.onHand({"fen"}), Amount{12'000'000});  // nothing that was moved goes
    auto& group = part<QComboBox>("supplyGroup");
    group.setCurrentIndex(group.count() - 1);
    choose("Supplies", "Fenlight");
    QCOMPARE(part<QPushButton>("retireSupply").text(), QString("Take up again"));
    click("retireSupply");
    QVERIFY(!findSupply(season().supplies, {"fen"})->retired);
    m_session->undoStack().undo();
    m_session->undoStack().undo();
    QVERIFY(!findSupply(season().supplies, {"fen"})->retired);
}

void SupplyFormsTest::whatIsTypedSurvivesARefresh() {
    show(stockTab);
    choose("Supplies", "Fenlight");
    click("changeSupply");
    typeInto(part<QLineEdit>("supplyNote"), "top shelf");
    Supply other = *findSupply(season().supplies, {"fen"});
    const Supply before = other;
    other.rules.shelfLifeDays = 300;
    QVERIFY(m_session->apply("Another", {RowChange<Supply>{before, other}}));
    QCOMPARE(part<QLineEdit>("supplyNote").text(), QString("top shelf"));
    QVERIFY(part<SupplyForm>().problems().join(' ').contains("changed meanwhile"));
    show(priceTab);
    show(stockTab);
    QCOMPARE(part<QLineEdit>("supplyNote").text(), QString("top shelf"));
    QTest::keyClick(&part<QLineEdit>("supplyNote"), Qt::Key_Escape);
    click("changeSupply");
    QCOMPARE(part<QSpinBox>("supplyLife").value(), 300);
    // Nothing typed: what is stored is taken over.
    m_session->undoStack().undo();
    QCOMPARE(part<QSpinBox>("supplyLife").value(), 0);
}

void SupplyFormsTest::aSupplierIsAddedAndChanged() {
    show(priceTab);
    const int before = steps();
    click("newSupplier");
    typeInto(part<QLineEdit>("supplierName"), "Osier Supply");
    auto& address = part<QPlainTextEdit>("supplierAddress");
    address.setFocus();
    QTest::keyClicks(&address, "Mill Lane");
    QTest::keyClick(&address, Qt::Key_Return);
    QTest::keyClicks(&address, "Fenhithe");
    QVERIFY(part<SupplierForm>().isOpen());  // Enter in the address is a line
    typeInto(part<MoneyBox>("supplierFreight"), "9.50");
    QTest::keyClick(&part<QCheckBox>("supplierIsFree"), Qt::Key_Space);
    typeInto(part<MoneyBox>("supplierFreeFrom"), "300");
    typeInto(part<MoneyBox>("supplierMinimum"), "20");
    QTest::keyClick(&part<QCheckBox>("orderDay2"), Qt::Key_Space);
    typeInto(part<QSpinBox>("supplierLead"), "4");
    QTest::keyClick(&part<QSpinBox>("supplierLead"), Qt::Key_Return);
    QVERIFY(!part<SupplierForm>().isOpen());
    const Supplier* added = byName(season().suppliers, "Osier Supply");
    QVERIFY(added);
    QCOMPARE(added->address, QString("Mill Lane\nFenhithe"));
    QCOMPARE(added->freight, (Money{950, "EUR"}));
    QCOMPARE(added->freeFreightFrom, std::optional(Money{30'000, "EUR"}));
    QCOMPARE(added->minimumOrder, (Money{2'000, "EUR"}));
    QCOMPARE(int(added->orderWeekdays), 0x1d);
    QCOMPARE(added->usualLeadDays, 4);
    QCOMPARE(steps(), before + 1);
    // It is chosen now; retired, it is gone from the list until one asks for it.
    click("retireSupplier");
    QVERIFY(byName(season().suppliers, "Osier Supply")->retired);
    part<QCheckBox>("showRetired").setChecked(true);
    choose("Suppliers", "Osier Supply (retired)");
    click("retireSupplier");
    QVERIFY(!byName(season().suppliers, "Osier Supply")->retired);
    for (int n = 0; n < 3; ++n)
        m_session->undoStack().undo();
    QVERIFY(!byName(season().suppliers, "Osier Supply"));
}

void SupplyFormsTest::badTermsAreSaidBesideTheirFields() {
    show(priceTab);
    choose("Suppliers", "Teasel Stores");
    click("changeSupplier");
    for (int day = 1; day <= 5; ++day)
        part<QCheckBox>(qPrintable(QString("orderDay%1").arg(day))).setChecked(false);
    QVERIFY(part<QLabel>("problem-orderDay1").text().contains("takes no orders on any day"));
    typeInto(part<MoneyBox>("supplierFreight"), "-1");
    QVERIFY(part<QLabel>("problem-supplierFreight").text().contains("less than nothing"));
    typeInto(part<QSpinBox>("supplierLead"), "1000");
    QVERIFY(part<QLabel>("problem-supplierLead").text().contains("1,000 days is not possible"));
    QVERIFY(!part<SupplierForm>().save());
    QCOMPARE(season().suppliers.front().usualLeadDays, 7);
}

void SupplyFormsTest::aPriceIsAddedByKey() {
    show(priceTab);
    choose("Suppliers", "Teasel Stores");
    const int before = steps();
    click("newOffer");
    auto& supply = part<QComboBox>("offerSupply");
    supply.setCurrentIndex(supply.findText("Fenlight"));
    QCOMPARE(part<QuantityBox>("offerPack").amount(), Amount{5'000'000});  // a container, to begin with
    typeInto(part<QLineEdit>("offerArticle"), "T-20");
    typeInto(part<QuantityBox>("offerPack"), "20");
    typePrice(0, "1", "600");
    typePrice(1, "3", "570.5");
    QCOMPARE(part<OfferForm>().problems(), QStringList());
    click("saveForm");
    QCOMPARE(steps(), before + 1);
    const auto offer = [&]() -> const Offer* {
        for (const Offer& one : season().offers) {
            if (one.article == "T-20") return &one;
        }
        return nullptr;
    };
    QVERIFY(offer());
    QCOMPARE(offer()->supplier, SupplierId{"teasel"});
    QCOMPARE(offer()->supply, SupplyId{"fen"});
    QCOMPARE(offer()->pack, Amount{20'000'000});
    QCOMPARE(offer()->prices, (std::vector<PriceBreak>{{1, {60'000, "EUR"}}, {3, {57'050, "EUR"}}}));
    m_session->undoStack().undo();
    QVERIFY(!offer());
}

void SupplyFormsTest::badPricesAreSaidBesideThem() {
    show(priceTab);
    choose("Suppliers", "Teasel Stores");
    click("newOffer");
    auto& words = part<QLabel>("problem-offerPrices");
    QVERIFY2(words.text().contains("there is no price"), qPrintable(words.text()));
    typePrice(0, "4", "10");
    QVERIFY2(words.text().contains("the prices begin at 4 packs"), qPrintable(words.text()));
    typePrice(0, "1", "ten");
    QVERIFY2(words.text().contains("row 1 needs a number of packs and a price"), qPrintable(words.text()));
    typePrice(0, "1", "10.005");
    QVERIFY(words.text().contains("row 1 needs"));
    typePrice(0, "1", "-10");
    QVERIFY(words.text().contains("less than nothing"));
    typePrice(0, "1", "10");
    QCOMPARE(words.text(), QString());
    typePrice(1, "1", "9");
    QVERIFY2(words.text().contains("they must ascend"), qPrintable(words.text()));
    typePrice(1, "5", "11");
    QVERIFY2(words.text().startsWith("? ") && words.text().contains("costs more than before"), qPrintable(words.text()));
    QVERIFY(part<OfferForm>().findChild<QPushButton*>("saveForm")->isEnabled());  // hardly meant, yet it can be
    typeInto(part<QuantityBox>("offerPack"), "0");
    QVERIFY(part<QLabel>("problem-offerPack").text().contains("a pack holds nothing"));
    QVERIFY(!part<OfferForm>().save());
}

void SupplyFormsTest::pricesAreChangedAndRetired() {
    show(priceTab);
    choose("Suppliers", "Teasel Stores");
    choose("Price list", "Fenlight");
    click("changeOffer");
    typePrice(1, "4", "150");
    click("saveForm");
    QCOMPARE(findOffer(season().offers, {"o-fen"})->prices,
             (std::vector<PriceBreak>{{1, {15'900, "EUR"}}, {4, {15'000, "EUR"}}}));
    choose("Price list", "Fenlight");
    click("retireOffer");
    QVERIFY(findOffer(season().offers, {"o-fen"})->retired);
    m_session->undoStack().undo();
    m_session->undoStack().undo();
    QCOMPARE(findOffer(season().offers, {"o-fen"})->prices, (std::vector<PriceBreak>{{1, {15'900, "EUR"}}}));
    QVERIFY(!findOffer(season().offers, {"o-fen"})->retired);
}

void SupplyFormsTest::moneyKeepsItsCurrency() {
    MoneyBox box;
    box.setMoney({12'345, "EUR"}, "EUR");
    QCOMPARE(box.text(), QString("123.45 EUR"));
    QCOMPARE(box.money(), (Money{12'345, "EUR"}));
    box.setMoney({12'345, "USD"}, "EUR");
    QCOMPARE(box.text(), QString("123.45 USD"));
    QCOMPARE(box.money(), (Money{12'345, "USD"}));
    box.setValue(10);
    QCOMPARE(box.text(), QString("10.00 EUR"));
    QCOMPARE(box.money(), (Money{1'000, "EUR"}));
    box.setMoney({1'234, "JPY"}, "JPY");
    QCOMPARE(box.text(), QString("1,234 JPY"));
    box.setMoney({}, "EUR");
    QCOMPARE(box.money(), Money{});
}

void SupplyFormsTest::pictures() {
    for (const auto& [name, palette] : {std::pair{"light", support::lightPalette()}, {"dark", support::darkPalette()}}) {
        QApplication::setPalette(palette);
        show(stockTab);
        click("newSupply");
        QVERIFY(support::picture(*m_page, QString("supply_form_%1").arg(name)));
        part<SupplyForm>().leave();
        QVERIFY(support::picture(*m_page, QString("stock_tools_%1").arg(name)));
        show(priceTab);
        QVERIFY(support::picture(*m_page, QString("prices_%1").arg(name)));
        click("changeSupplier");
        typeInto(part<QSpinBox>("supplierLead"), "1000");
        QVERIFY(support::picture(*m_page, QString("supplier_form_%1").arg(name)));
        part<SupplierForm>().leave();
        click("newOffer");
        typePrice(0, "4", "10");
        QVERIFY(support::picture(*m_page, QString("offer_form_%1").arg(name)));
        part<OfferForm>().leave();
    }
}

QTEST_MAIN(SupplyFormsTest)
#include "tst_supply_forms.moc"
