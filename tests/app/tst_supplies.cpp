// The Supplies page in a made centre with known numbers: what lasts how long, orders from the proposal to the shelf, the ledger.
#include "app/models/list_tools.h"
#include "app/pages/supplies/fan_chart.h"
#include "app/pages/supplies/ledger_panel.h"
#include "app/pages/supplies/list_paper.h"
#include "app/pages/supplies/order_deeds.h"
#include "app/pages/supplies/stock_delegate.h"
#include "app/pages/supplies/stock_detail.h"
#include "app/pages/supplies/supplies_page.h"
#include "app/widgets/date_axis.h"
#include "app/widgets/quantity_box.h"
#include "core/documents/stock_words.h"
#include "core/documents/supply_words.h"
#include "core/storage/booked.h"
#include "tests/support/looks.h"
#include "tests/support/stocked_house.h"

#include <QBuffer>
#include <QComboBox>
#include <QDateEdit>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPdfWriter>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTableView>
#include <QTest>
#include <QTranslator>

using namespace laneward;
using Answer = std::shared_ptr<const SupplyAnswer>;

namespace {

constexpr int patience = 60'000;  // milliseconds: beside everything else that a machine under test does

QString allText(const QWidget& widget) {
    QStringList lines;
    for (const QLabel* label : widget.findChildren<QLabel*>()) {
        if (label->isVisibleTo(&widget)) lines << label->text();
    }
    return lines.join('\n');
}

void press(QWidget* button) {
    QVERIFY(button && button->isVisible() && button->isEnabled());
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
}

}  // namespace

class SuppliesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void withoutSuppliesItSaysWhatToDo();
    void stockIsToldBeforeItsFutureIs();
    void rowsTellKnownNumbers();
    void rowsAreFilteredSortedAndChosen();
    void theFanIsWalkedByKeyAndMouse();
    void whatIsUsedIsToldWithItsFills();
    void pastForecastsAreTold();
    void aProposalIsPlacedAndUndone();
    void aDraftIsPlacedOrDeleted();
    void ordersAreWrittenAndPrinted();
    void aDeliveryTakesTwoClicks();
    void partsAreReceivedAndUndoneToTheStart();
    void twoPackSizesOfOneSupplyAreTwoLines();
    void whatCannotArriveIsRefused();
    void anOrderIsClosed();
    void theLedgerTellsKnownMovements();
    void aMovementIsTakenBack();
    void whatWasNotThereIsMarked();
    void theLedgerIsReadByPieces();
    void theNewestQuestionWins();
    void nothingIsAnsweredAfterLeaving();
    void progressIsShownAndCancelled();
    void whatCannotBeReadIsSaid();
    void timeNeverMirrors();
    void pictures();

private:
    void open(support::StockedHouse& house);
    void settle() { QTRY_VERIFY_WITH_TIMEOUT(!m_page->isBusy(), patience); }
    template <class T>
    T* named(const QString& name) const;
    QPushButton* button(const char* name) const;
    void showTab(int tab) { m_page->findChild<QTabWidget*>()->setCurrentIndex(tab); }
    QString cell(const QString& list, int row, const QString& column) const;
    int rowOf(const QString& list, const QString& first) const;
    Amount onHand(const char* id) const { return m_session->season().stock.onHand({id}); }
    void placeProposal();

    QTranslator m_english;
    std::unique_ptr<support::StockedHouse> m_house;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<SuppliesPage> m_page;
};

template <class T>
T* SuppliesTest::named(const QString& name) const {
    for (T* child : m_page->findChildren<T*>()) {
        if (child->accessibleName() == name || child->objectName() == name) return child;
    }
    qFatal("nothing named %s", qPrintable(name));
}

QPushButton* SuppliesTest::button(const char* name) const {
    for (QPushButton* one : m_page->findChildren<QPushButton*>(name)) {
        if (one->isVisible()) return one;
    }
    return nullptr;
}

QString SuppliesTest::cell(const QString& list, int row, const QString& column) const {
    const QAbstractItemModel& model = *named<QTableView>(list)->model();
    for (int c = 0; c < model.columnCount(); ++c) {
        if (model.headerData(c, Qt::Horizontal).toString() == column) return model.index(row, c).data().toString();
    }
    return QString("no column %1").arg(column);
}

int SuppliesTest::rowOf(const QString& list, const QString& first) const {
    const QAbstractItemModel& model = *named<QTableView>(list)->model();
    for (int row = 0; row < model.rowCount(); ++row) {
        if (model.index(row, 0).data().toString() == first) return row;
    }
    return -1;
}

void SuppliesTest::initTestCase() {
    QStandardPaths::setTestModeEnabled(true);
    QVERIFY(m_english.load("laneward_en", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&m_english);  // for its plural forms
}

void SuppliesTest::init() {
    QSettings().remove("lists");
    QLocale::setDefault(QLocale("en_GB"));
    QApplication::setPalette(support::lightPalette());
    m_house = std::make_unique<support::StockedHouse>();
    open(*m_house);
}

void SuppliesTest::cleanup() {
    QApplication::setLayoutDirection(Qt::LeftToRight);
    m_page.reset();
    m_session.reset();
    m_house.reset();
}

void SuppliesTest::open(support::StockedHouse& house) {
    m_page.reset();
    m_session = house.session();
    m_page = std::make_unique<SuppliesPage>(*m_session);
    m_page->resize(1130, 600);
    m_page->show();
    QVERIFY(QTest::qWaitForWindowExposed(m_page.get()));
}

void SuppliesTest::withoutSuppliesItSaysWhatToDo() {
    SeasonState bare = support::eveningSeason();
    support::StockedHouse empty({}, bare);
    open(empty);
    settle();
    QCOMPARE(m_page->headline(), QString("No supplies are kept yet."));
    QVERIFY2(allText(*m_page).contains("Enter the conditioners, the cleaner, cloth and parts first"),
             qPrintable(allText(*m_page)));
    showTab(1);
    QVERIFY(allText(*m_page).contains("There is nobody to order from yet"));
    QVERIFY(allText(*m_page).contains("No order is kept yet"));
    showTab(2);
    QVERIFY(allText(*m_page).contains("No supplies are kept yet, so nothing has moved."));
    m_page.reset();
    m_session.reset();
}

void SuppliesTest::stockIsToldBeforeItsFutureIs() {
    QVERIFY(m_page->isBusy());
    QCOMPARE(m_page->headline(), QString("Working out how long stock lasts…"));
    QCOMPARE(cell("Supplies", rowOf("Supplies", "Fenlight"), "On hand"), QString("12 L"));
    QCOMPARE(cell("Supplies", rowOf("Supplies", "Fenlight"), "Runs out"), QString("…"));
    settle();
    QVERIFY(cell("Supplies", rowOf("Supplies", "Fenlight"), "Runs out") != QString("…"));
}

/// What the page shows is what the core says of the same plan.
void SuppliesTest::rowsTellKnownNumbers() {
    settle();
    const SeasonState& season = m_session->season();
    const Speech speech = m_session->speech();
    const QDate today = m_session->today();
    const Result<SupplyHistory> history = supplyHistory(m_session->store(), season, m_session->now());
    QVERIFY(history);
    const SupplyLearning learned = learnSupplies(season, *history);
    const Plan ahead = plan(m_session->planningState(), m_session->now(), {today, today.addDays(181)}, 8 * nodesFor);
    const auto outlook = supplyOutlook({season, ahead, learned, history->stock.movements, m_session->now()}, {});
    QVERIFY(outlook);
    QCOMPARE(m_page->headline(), supplyHeadline(*outlook, season, speech));
    QVERIFY2(m_page->headline().startsWith("Order today from Teasel Stores: Squeegee blade set"), qPrintable(m_page->headline()));
    QCOMPARE(named<QTableView>("Supplies")->model()->rowCount(), 4);
    for (const SupplyLine& line : outlook->lines) {
        const Supply& supply = *findSupply(season.supplies, line.supply);
        const int row = rowOf("Supplies", supply.name);
        QCOMPARE(cell("Supplies", row, "A week"), weekText(line, supply.kind, speech));
        QCOMPARE(cell("Supplies", row, "Order by") == "-", !line.orderBy.has_value());
        QCOMPARE(cell("Supplies", row, "Runs out") == "later", !line.outEarly.has_value());
    }
    const int blades = rowOf("Supplies", "Squeegee blade set");
    QCOMPARE(cell("Supplies", blades, "On hand"), QString("0"));
    QCOMPARE(cell("Supplies", blades, "Order by"), QString("! today"));
    const int fenlight = rowOf("Supplies", "Fenlight");
    QCOMPARE(cell("Supplies", fenlight, "Sealed"), QString("10 L"));
    QCOMPARE(cell("Supplies", fenlight, "Open"), QString("2 L"));
    QCOMPARE(cell("Supplies", fenlight, "In tanks"), amountText(Amount{}, SupplyKind::Conditioner, speech));
    QCOMPARE(cell("Supplies", rowOf("Supplies", "Cloth roll"), "On hand"), QString("100 m"));
}

void SuppliesTest::rowsAreFilteredSortedAndChosen() {
    settle();
    auto* list = named<QTableView>("Supplies");
    QCOMPARE(rowOf("Supplies", "Squeegee blade set"), 0);  // what runs out first stands first
    auto* group = named<QComboBox>("supplyGroup");
    group->setFocus();
    QTest::keyClick(group, Qt::Key_Down);
    QCOMPARE(group->currentText(), QString("liquids"));
    QCOMPARE(list->model()->rowCount(), 2);
    QTest::keyClick(group, Qt::Key_Down);
    QCOMPARE(list->model()->rowCount(), 1);
    QCOMPARE(cell("Supplies", 0, "Supply"), QString("Cloth roll"));
    QVERIFY2(allText(*m_page).contains("Cloth roll: stock ahead"), qPrintable(allText(*m_page)));
    group->setCurrentIndex(0);
    list->sortByColumn(0, Qt::AscendingOrder);
    QCOMPARE(cell("Supplies", 0, "Supply"), QString("Cloth roll"));
    list->setFocus();
    list->setCurrentIndex(list->model()->index(0, 0));
    QTest::keyClick(list, Qt::Key_Down);
    QVERIFY(allText(*m_page).contains("Fenlight: stock ahead"));
    QVERIFY2(allText(*m_page).contains("shelf 10 L"), qPrintable(allText(*m_page)));
    // The ledger follows what is chosen here.
    showTab(2);
    QCOMPARE(named<QComboBox>("ledgerSupply")->currentText(), QString("Fenlight"));
    // The choice of columns stays.
    list->findChild<ListTools*>()->setColumnShown(6, false);
    open(*m_house);
    QVERIFY(named<QTableView>("Supplies")->isColumnHidden(6));
    QVERIFY(!named<QTableView>("Supplies")->isColumnHidden(2));
    settle();
}

void SuppliesTest::theFanIsWalkedByKeyAndMouse() {
    settle();
    auto* list = named<QTableView>("Supplies");
    list->setCurrentIndex(list->model()->index(rowOf("Supplies", "Fenlight"), 0));
    auto* fan = m_page->findChild<FanChart*>();
    QCOMPARE(fan->day(), -1);
    fan->setFocus();
    QTest::keyClick(fan, Qt::Key_Home);
    QCOMPARE(fan->day(), 0);
    QVERIFY2(fan->accessibleDescription().startsWith("Thu 12 Nov, end of day:"), qPrintable(fan->accessibleDescription()));
    QVERIFY(fan->accessibleDescription().contains("under 1 % that it has run out by then"));
    QTest::keyClick(fan, Qt::Key_PageDown);
    QCOMPARE(fan->day(), 7);
    QTest::keyClick(fan, Qt::Key_Left);
    QCOMPARE(fan->day(), 6);
    QVERIFY(allText(*m_page).contains(fan->dayText(6)));
    QTest::keyClick(fan, Qt::Key_End);
    QCOMPARE(fan->day(), fan->days() - 1);
    QTest::mouseMove(fan, QPoint(int(fan->xOf(30)) - 1, fan->height() / 2));
    QTRY_COMPARE(fan->day(), 30);
}

void SuppliesTest::whatIsUsedIsToldWithItsFills() {
    settle();
    SupplyAnswer answer;
    answer.outlook.today = m_session->today();
    answer.outlook.days = 10;
    Usage usage(UsageRule{Amount{2'000'000}, {}, {}});
    std::vector<FillPoint> points;
    for (int n = 0; n < 6; ++n) {
        const Instant at = support::eveningNow - hours(24 * (60 - 10 * n));
        QVERIFY(usage.learn({{QString("fill%1").arg(n)}, at, {1'000'000}, {1'100'000}, 50}));
        FillPoint point;
        point.at = at;
        point.poured = {1'100'000};
        point.nominal = {1'000'000};
        points.push_back(point);
    }
    answer.learned.machines = {{{"m1"}, 0, "Fenlight", usage}};
    answer.fills = {{{"m1"}, 0, points}};
    StockDetail detail(*m_session);
    detail.show({"fen"}, &answer);
    const Student lane = usage.perLane(usage.nominalPerLane());
    const QString told = allText(detail);
    QVERIFY2(told.contains(QString("Otter: %1 mL per lane").arg(lane.centre / 1'000, 0, 'f', 1)), qPrintable(told));
    QVERIFY(told.contains(QString("%1 mL to").arg(lane.interval(0.9).low / 1'000, 0, 'f', 1)));
    QVERIFY2(told.contains("where the recipes say 20.0 mL; from 6 fills."), qPrintable(told));
    auto* fills = detail.findChild<QListWidget*>();
    QCOMPARE(fills->count(), 6);
    QVERIFY2(fills->item(0)->text().endsWith("Otter: 1.1 L poured for 1 L"), qPrintable(fills->item(0)->text()));
    // Without fills it says so.
    answer.learned.machines = {{{"m1"}, 0, "Fenlight", Usage(UsageRule{Amount{2'000'000}, {}, {}})}};
    detail.show({"fen"}, &answer);
    QVERIFY(allText(detail).contains("no fill up to the line is on record yet"));
}

void SuppliesTest::pastForecastsAreTold() {
    settle();
    SupplyAnswer answer;
    ForecastScore score;
    score.half.spans = score.most.spans = 96;
    score.most.inside = 88;
    score.half.inside = 50;
    answer.scores[{"fen"}] = score;
    StockDetail detail(*m_session);
    detail.show({"fen"}, &answer);
    QVERIFY2(allText(detail).contains("Of 96 past spans, 50 were within the middle range (expected about half) and 88 within "
                                      "the wide one (expected 9 in 10)."),
             qPrintable(allText(detail)));
    answer.scores[{"fen"}].most.inside = 40;
    detail.show({"fen"}, &answer);
    QVERIFY(allText(detail).contains("! The ranges are too narrow"));
    detail.show({"cloth"}, &answer);
    QVERIFY(!allText(detail).contains("Past forecasts"));
}

void SuppliesTest::placeProposal() {
    settle();
    showTab(1);
    press(button("placeOrder"));
    QCOMPARE(m_session->season().orders.size(), size_t{1});
    settle();
}

void SuppliesTest::aProposalIsPlacedAndUndone() {
    settle();
    showTab(1);
    QVERIFY2(allText(*m_page).contains("Proposed order, Teasel Stores"), qPrintable(allText(*m_page)));
    QVERIFY(allText(*m_page).contains("Order by: ! today"));
    QVERIFY2(allText(*m_page).contains("Proven: ") || allText(*m_page).contains("at most"), qPrintable(allText(*m_page)));
    press(button("placeOrder"));
    QVERIFY(m_page->isBusy());
    if (QPushButton* again = button("placeOrder")) QVERIFY(!again->isEnabled());  // not placed twice
    QCOMPARE(m_session->season().orders.size(), size_t{1});
    const Order order = m_session->season().orders.front();
    QCOMPARE(order.state, OrderState::Placed);
    QCOMPARE(order.number, QString("2026-001"));
    QCOMPARE(order.placedOn, std::optional(m_session->today()));
    QCOMPARE(order.person, PersonId{"ada"});
    QVERIFY(!order.lines.empty());
    QCOMPARE(cell("Orders", 0, "State"), QString("placed"));
    QVERIFY2(cell("Orders", 0, "Still to come").contains("Squeegee blade set"), qPrintable(cell("Orders", 0, "Still to come")));
    settle();
    // It is under way now, and the fan of what was ordered knows the delivery.
    showTab(0);
    auto* list = named<QTableView>("Supplies");
    list->setCurrentIndex(list->model()->index(rowOf("Supplies", "Squeegee blade set"), 0));
    auto* fan = m_page->findChild<FanChart*>();
    QStringList days;
    for (int day = 0; day < fan->days(); ++day)
        days << fan->dayText(day);
    QCOMPARE(days.filter("Delivery about ").size(), 1);
    QVERIFY2(days.filter("Delivery about ").front().endsWith(QString(": %1").arg(order.lines.front().packs)),
             qPrintable(days.filter("Delivery about ").front()));
    m_session->undoStack().undo();
    QVERIFY(m_session->season().orders.empty());
    QCOMPARE(named<QTableView>("Orders")->model()->rowCount(), 0);
    settle();
    QVERIFY(m_page->headline().contains("Squeegee blade set"));
    m_session->undoStack().redo();
    QCOMPARE(cell("Orders", 0, "Number"), QString("2026-001"));
    settle();
}

void SuppliesTest::aDraftIsPlacedOrDeleted() {
    settle();
    showTab(1);
    press(button("saveDraft"));
    QCOMPARE(cell("Orders", 0, "State"), QString("draft"));
    QVERIFY(!m_session->season().orders.front().placedOn);
    QVERIFY(!button("receiveOrder"));
    settle();
    press(button("dropDraft"));
    QVERIFY(m_session->season().orders.empty());
    m_session->undoStack().undo();
    QCOMPARE(cell("Orders", 0, "State"), QString("draft"));
    press(button("placeDraft"));
    QCOMPARE(cell("Orders", 0, "State"), QString("placed"));
    QCOMPARE(m_session->season().orders.front().placedOn, std::optional(m_session->today()));
    m_session->undoStack().undo();
    QCOMPARE(cell("Orders", 0, "State"), QString("draft"));
    settle();
}

void SuppliesTest::ordersAreWrittenAndPrinted() {
    placeProposal();
    QTemporaryDir folder;
    const Order order = m_session->season().orders.front();
    QVERIFY(saveOrderCsv(folder.filePath("order.csv"), order, *m_session));
    QFile csv(folder.filePath("order.csv"));
    QVERIFY(csv.open(QIODevice::ReadOnly));
    const QByteArray lines = csv.readAll();
    QVERIFY2(lines.contains("T-blades") && lines.contains("6120") && lines.contains("EUR"), lines.constData());
    QVERIFY(saveOrderPdf(folder.filePath("order.pdf"), order, *m_session));
    QVERIFY(QFile(folder.filePath("order.pdf")).size() > 1'000);
    QSignalSpy problems(m_session.get(), &Session::problem);
    QVERIFY(!saveOrderCsv(folder.filePath("no/such/order.csv"), order, *m_session));
    QCOMPARE(problems.size(), 1);
    // The lists are printed and copied as they are shown.
    QBuffer bytes;
    QVERIFY(bytes.open(QIODevice::WriteOnly));
    QPdfWriter writer(&bytes);
    for (const char* list : {"Supplies", "Orders"})
        QCOMPARE(paintList(writer, "List", *named<QTableView>(list), *m_session), 1);
    const QByteArray table = csvTable(*named<QTableView>("Supplies")->model());
    QVERIFY2(table.contains("Fenlight,conditioner,12 L,10 L,2 L"), table.constData());
    QVERIFY(table.contains("in 30 days"));
}

void SuppliesTest::aDeliveryTakesTwoClicks() {
    placeProposal();
    const Order order = m_session->season().orders.front();
    QTest::mouseClick(button("receiveOrder"), Qt::LeftButton);
    QTest::mouseClick(button("bookReceipt"), Qt::LeftButton);
    QCOMPARE(cell("Orders", 0, "State"), QString("received"));
    QCOMPARE(cell("Orders", 0, "Still to come"), QString("-"));
    for (const OrderLine& line : order.lines) {
        Amount before;
        for (const Movement& movement : support::knownMovements())
            before += balancesOf({&movement, 1}).onHand(line.supply);
        QCOMPARE(m_session->season().stock.onHand(line.supply), before + line.pack * line.packs);
    }
    QVERIFY(!button("bookReceipt"));
    settle();
}

void SuppliesTest::partsAreReceivedAndUndoneToTheStart() {
    // Two lines whose amounts are known.
    Order order;
    order.id = {"order"};
    order.supplier = {"teasel"};
    order.number = "2026-007";
    order.state = OrderState::Placed;
    order.placedOn = m_session->today();
    order.lines = {{{"fen"}, {"o-fen"}, "T-fen", {5'000'000}, 2, {15'900, "EUR"}},
                   {{"blades"}, {"o-blades"}, "T-blades", {1}, 3, {6'120, "EUR"}}};
    order.freight = {1'200, "EUR"};
    const Balances start = m_session->season().stock;
    QVERIFY(m_session->apply("Place", {RowChange<Order>{std::nullopt, order}}));
    showTab(1);
    QCOMPARE(cell("Orders", 0, "Still to come"), QString("10 L Fenlight, 3 Squeegee blade set"));
    QCOMPARE(cell("Orders", 0, "Total"), QString("513.60 EUR"));
    press(button("receiveOrder"));
    auto amounts = m_page->findChildren<QuantityBox*>("receivedAmount");
    QCOMPARE(amounts.size(), 2);
    QCOMPARE(amounts[0]->amount(), Amount{10'000'000});
    QCOMPARE(amounts[1]->amount(), Amount{3});
    amounts[0]->setValue(5);
    amounts[1]->setValue(0);
    m_page->findChildren<QLineEdit*>("receivedLot").front()->setText("A12");
    press(button("bookReceipt"));
    QCOMPARE(cell("Orders", 0, "State"), QString("part received"));
    QCOMPARE(cell("Orders", 0, "Still to come"), QString("5 L Fenlight, 3 Squeegee blade set"));
    QCOMPARE(onHand("fen"), Amount{17'000'000});
    QCOMPARE(m_session->season().stock.at({{"fen"}, {Place::Kind::Shelf, {}, 0}, {}, "A12"}), Amount{5'000'000});
    // The second time a litre more than ordered comes.
    press(button("receiveOrder"));
    amounts = m_page->findChildren<QuantityBox*>("receivedAmount");
    QCOMPARE(amounts[0]->amount(), Amount{5'000'000});
    amounts[0]->setValue(6);
    QTest::keyClick(amounts[1], Qt::Key_Return);
    QCOMPARE(cell("Orders", 0, "State"), QString("received"));
    QCOMPARE(onHand("fen"), Amount{23'000'000});
    QCOMPARE(onHand("blades"), Amount{3});
    m_session->undoStack().undo();
    QCOMPARE(cell("Orders", 0, "State"), QString("part received"));
    QCOMPARE(onHand("fen"), Amount{17'000'000});
    m_session->undoStack().undo();
    QCOMPARE(cell("Orders", 0, "State"), QString("placed"));
    QVERIFY(m_session->season().stock == start);
    // The ledger names the order for ever, so it cannot go away.
    QSignalSpy problems(m_session.get(), &Session::problem);
    m_session->undoStack().undo();
    QCOMPARE(problems.size(), 1);
    QCOMPARE(m_session->season().orders.size(), size_t{1});
    const Result<std::vector<Movement>> kept = m_session->store().movementsFrom(MovementSource::Order, "order");
    QVERIFY(kept);
    QCOMPARE(kept->size(), size_t{6});  // three receipts and what takes each back: nothing is deleted
    const Result<std::vector<Finding>> faults = m_session->store().check();
    QVERIFY(faults && faults->empty());
    settle();
}

void SuppliesTest::twoPackSizesOfOneSupplyAreTwoLines() {
    Order order;
    order.id = {"order"};
    order.supplier = {"teasel"};
    order.number = "2026-008";
    order.state = OrderState::Placed;
    order.placedOn = m_session->today();
    order.lines = {{{"fen"}, {"o-fen"}, "T-fen", {5'000'000}, 1, {15'900, "EUR"}},
                   {{"fen"}, {"o-fen"}, "T-fen", {20'000'000}, 1, {50'000, "EUR"}}};
    QVERIFY(m_session->apply("Place", {RowChange<Order>{std::nullopt, order}}));
    showTab(1);
    QCOMPARE(cell("Orders", 0, "Still to come"), QString("5 L Fenlight, 20 L Fenlight"));
    press(button("receiveOrder"));
    m_page->findChildren<QuantityBox*>("receivedAmount")[1]->setValue(0);
    press(button("bookReceipt"));
    QCOMPARE(cell("Orders", 0, "Still to come"), QString("20 L Fenlight"));
    press(button("receiveOrder"));
    press(button("bookReceipt"));
    QCOMPARE(cell("Orders", 0, "State"), QString("received"));
    QCOMPARE(onHand("fen"), Amount{37'000'000});
}

void SuppliesTest::whatCannotArriveIsRefused() {
    placeProposal();
    press(button("receiveOrder"));
    auto* amount = m_page->findChildren<QuantityBox*>("receivedAmount").front();
    amount->setValue(-1);
    const Balances before = m_session->season().stock;
    press(button("bookReceipt"));
    QVERIFY2(named<QLabel>("receiveProblem")->text().startsWith("Nothing was booked: -1"),
             qPrintable(named<QLabel>("receiveProblem")->text()));
    QVERIFY(m_session->season().stock == before);
    QVERIFY(button("bookReceipt"));  // what was typed is still there
    for (QuantityBox* box : m_page->findChildren<QuantityBox*>("receivedAmount"))
        box->setValue(0);
    press(button("bookReceipt"));
    QCOMPARE(named<QLabel>("receiveProblem")->text(), QString("Nothing was booked: no line has an amount."));
    QTest::keyClick(amount, Qt::Key_Escape);
    QVERIFY(!button("bookReceipt"));
    QVERIFY(button("receiveOrder")->isEnabled());
}

void SuppliesTest::anOrderIsClosed() {
    placeProposal();
    press(button("closeOrder"));
    QCOMPARE(cell("Orders", 0, "State"), QString("closed"));
    QCOMPARE(cell("Orders", 0, "Still to come"), QString("-"));
    QVERIFY(!button("receiveOrder"));
    m_session->undoStack().undo();
    QCOMPARE(cell("Orders", 0, "State"), QString("placed"));
    settle();
}

void SuppliesTest::theLedgerTellsKnownMovements() {
    settle();
    showTab(2);
    auto* supply = named<QComboBox>("ledgerSupply");
    supply->setCurrentIndex(supply->findText("Fenlight"));
    const QString list = "Movements, the newest first";
    QCOMPARE(named<QTableView>(list)->model()->rowCount(), 3);
    const auto line = [&](int row) {
        QStringList cells;
        for (const char* column : {"What", "From", "To", "Amount", "On hand", "By"})
            cells << cell(list, row, column);
        return cells.join(" | ");
    };
    QCOMPARE(line(0), QString::fromUtf8("used | open | lane | −3 L | 12 L | Ada Fenwick"));
    QCOMPARE(line(1), QString("opened | shelf | open | 5 L | 15 L | Ada Fenwick"));
    QCOMPARE(line(2), QString("received | supplier | shelf | +15 L | 15 L | Ada Fenwick"));
    // Only days that are asked for, with what was there before them.
    auto* from = named<QDateEdit>("ledgerFrom");
    from->setDate(m_session->today().addDays(-3));
    QCOMPARE(named<QTableView>(list)->model()->rowCount(), 0);
    QVERIFY2(allText(*m_page).contains("Nothing moved since Mon 9 Nov."), qPrintable(allText(*m_page)));
    press(button("showEarlier"));
    QCOMPARE(named<QTableView>(list)->model()->rowCount(), 3);
    QVERIFY(from->date() < m_session->today().addDays(-20));
}

void SuppliesTest::aMovementIsTakenBack() {
    settle();
    showTab(2);
    auto* supply = named<QComboBox>("ledgerSupply");
    supply->setCurrentIndex(supply->findText("Fenlight"));
    const QString list = "Movements, the newest first";
    auto* reason = named<QLineEdit>("takeBackReason");
    QVERIFY(!button("takeBack")->isEnabled());  // a reason is asked for
    named<QTableView>(list)->setCurrentIndex(named<QTableView>(list)->model()->index(0, 0));
    reason->setFocus();
    QTest::keyClicks(reason, "written down twice");
    QTest::keyClick(reason, Qt::Key_Return);
    QCOMPARE(onHand("fen"), Amount{15'000'000});
    QCOMPARE(named<QTableView>(list)->model()->rowCount(), 4);
    QCOMPARE(cell(list, 0, "Why"), QString("written down twice"));
    QCOMPARE(cell(list, 0, "Note"), QString("takes back"));
    QCOMPARE(cell(list, 0, "Amount"), QString("+3 L"));
    QCOMPARE(cell(list, 1, "Note"), QString("taken back"));
    QVERIFY(!named<QLineEdit>("takeBackReason")->isEnabled());  // what is taken back is over
    m_session->undoStack().undo();
    QCOMPARE(onHand("fen"), Amount{12'000'000});
    const Result<std::vector<Finding>> faults = m_session->store().check();
    QVERIFY(faults && faults->empty());
    settle();
}

void SuppliesTest::whatWasNotThereIsMarked() {
    settle();
    // Taking back what was used long ago leaves the shelf below nothing.
    showTab(2);
    auto* supply = named<QComboBox>("ledgerSupply");
    supply->setCurrentIndex(supply->findText("Fenlight"));
    const QString list = "Movements, the newest first";
    named<QTableView>(list)->setCurrentIndex(named<QTableView>(list)->model()->index(2, 0));
    named<QLineEdit>("takeBackReason")->setText("never came");
    press(button("takeBack"));
    QCOMPARE(onHand("fen"), Amount{-3'000'000});
    bool marked = false;
    for (int row = 0; row < named<QTableView>(list)->model()->rowCount(); ++row)
        marked |= cell(list, row, "Note").contains("! more than was there");
    QVERIFY(marked);
    settle();
}

/// Three years of daily movements: what is shown is read, the rest is not.
void SuppliesTest::theLedgerIsReadByPieces() {
    std::vector<Movement> movements;
    for (int day = 1'000; day > 0; --day) {
        Movement in = support::stockMove(QString("d%1").arg(day), MovementKind::Received, {"fen"},
                                         {Place::Kind::Supplier, Place::Kind::Shelf}, 1'000);
        in.at = in.recordedAt = support::eveningNow - hours(24 * day);
        movements.push_back(in);
    }
    support::StockedHouse house(movements);
    open(house);
    showTab(2);
    auto* supply = named<QComboBox>("ledgerSupply");
    supply->setCurrentIndex(supply->findText("Fenlight"));
    const QString list = "Movements, the newest first";
    const auto rows = [&] { return named<QTableView>(list)->model()->rowCount(); };
    QCOMPARE(rows(), 27);  // today has none yet
    QCOMPARE(cell(list, 0, "On hand"), QString("1 L"));
    press(button("showEarlier"));
    QCOMPARE(rows(), 55);
    QCOMPARE(cell(list, 54, "On hand"), amountText(Amount{946'000}, SupplyKind::Conditioner, m_session->speech()));
    // A range of years is read until there are enough, then further on when it is asked for.
    named<QDateEdit>("ledgerFrom")->setDate(m_session->today().addDays(-1'100));
    const int first = rows();
    QVERIFY2(first >= 500 && first < 560, qPrintable(QString::number(first)));
    press(button("showEarlier"));
    QCOMPARE(rows(), 1'000);
    // A range in the past begins with what was there then.
    named<QDateEdit>("ledgerTo")->setDate(m_session->today().addDays(-500));
    named<QDateEdit>("ledgerFrom")->setDate(m_session->today().addDays(-509));
    QCOMPARE(rows(), 10);
    QCOMPARE(cell(list, 0, "On hand"), amountText(Amount{501'000}, SupplyKind::Conditioner, m_session->speech()));
    m_page.reset();
    m_session.reset();
}

void SuppliesTest::theNewestQuestionWins() {
    settle();
    SupplyAsker asker;
    QSignalSpy answers(&asker, &SupplyAsker::answered);
    asker.ask(*m_session);
    Supply kept = m_session->season().supplies.front();
    Supply retired = kept;
    retired.retired = true;
    QVERIFY(m_session->apply("Retire", {RowChange<Supply>{kept, retired}}));
    asker.ask(*m_session);
    QTRY_VERIFY_WITH_TIMEOUT(!asker.isBusy(), patience);
    QTest::qWait(50);
    QCOMPARE(answers.size(), 1);
    const auto answer = answers.front().front().value<Answer>();
    QCOMPARE(answer->outlook.lines.size(), size_t{3});  // of the state that is now
    settle();
    QCOMPARE(named<QTableView>("Supplies")->model()->rowCount(), 3);
}

void SuppliesTest::nothingIsAnsweredAfterLeaving() {
    settle();
    SupplyAsker asker;
    QSignalSpy answers(&asker, &SupplyAsker::answered);
    QSignalSpy failures(&asker, &SupplyAsker::failed);
    asker.ask(*m_session);
    asker.leave();
    QVERIFY(!asker.isBusy());
    auto other = std::make_unique<SupplyAsker>();
    QElapsedTimer time;
    other->ask(*m_session);
    time.start();
    other.reset();  // a window that is closed does not wait for the end
    qInfo("leaving an outlook under way takes %lld ms", time.elapsed());
    QTest::qWait(80);
    QCOMPARE(answers.size() + failures.size(), 0);
}

/// So many supplies that it takes its time.
void SuppliesTest::progressIsShownAndCancelled() {
    settle();
    SeasonState season = support::stockedSeason();
    for (int n = 0; n < 60; ++n) {
        Supply part = season.supplies.front();
        part.id = {QString("part%1").arg(n)};
        part.name = QString("Part %1").arg(n);
        season.supplies.push_back(part);
    }
    support::StockedHouse house(support::knownMovements(), season);
    open(house);
    QTRY_VERIFY_WITH_TIMEOUT(button("cancelWork"), patience);
    QVERIFY(m_page->isBusy());
    QTRY_VERIFY_WITH_TIMEOUT(m_page->findChild<QProgressBar*>()->value() > 0, patience);
    QTest::mouseClick(button("cancelWork"), Qt::LeftButton);
    QVERIFY(!m_page->isBusy());
    QVERIFY(!button("cancelWork"));
    QVERIFY(allText(*m_page).contains("Stopped. How long stock lasts is not known."));
    QCOMPARE(m_page->headline(), QString("How long stock lasts is not known."));
    // A page that is left works nothing out, and begins anew when it is shown again.
    press(button("workAgain"));
    QVERIFY(m_page->isBusy());
    m_page->hide();
    QVERIFY(!m_page->isBusy());
    m_page->show();
    QVERIFY(m_page->isBusy());
    m_page.reset();
    m_session.reset();
}

void SuppliesTest::whatCannotBeReadIsSaid() {
    settle();
    SupplyAsker asker;
    QSignalSpy failures(&asker, &SupplyAsker::failed);
    QVERIFY(QFile::rename(m_house->location().path, m_house->location().path + ".away"));
    asker.ask(*m_session);
    QTRY_COMPARE_WITH_TIMEOUT(failures.size(), 1, patience);
    QVERIFY(!asker.isBusy());
    QVERIFY(QFile::rename(m_house->location().path + ".away", m_house->location().path));
}

void SuppliesTest::timeNeverMirrors() {
    QApplication::setLayoutDirection(Qt::RightToLeft);
    open(*m_house);
    settle();
    auto* fan = m_page->findChild<FanChart*>();
    QVERIFY(fan->xOf(30) > fan->xOf(3));
    const DayAxis axis(QRectF(0, 0, 200, 30), 90);
    QVERIFY(axis.x(30) > axis.x(3));
    // The list itself runs with the language.
    auto* list = named<QTableView>("Supplies");
    QVERIFY(list->columnViewportPosition(0) > list->columnViewportPosition(2));
}

void SuppliesTest::pictures() {
    settle();
    auto* list = named<QTableView>("Supplies");
    list->setCurrentIndex(list->model()->index(rowOf("Supplies", "Fenlight"), 0));
    m_page->findChild<FanChart*>()->setDay(20);
    QVERIFY(support::picture(*m_page, "supplies-stock"));
    QApplication::setPalette(support::contrastPalette());
    QVERIFY(support::picture(*m_page, "supplies-stock-contrast"));
    QApplication::setPalette(support::lightPalette());
    showTab(1);
    QVERIFY(support::picture(*m_page, "supplies-orders"));
    press(button("placeOrder"));
    settle();
    press(button("receiveOrder"));
    QVERIFY(support::picture(*m_page, "supplies-receive"));
    showTab(2);
    QVERIFY(support::picture(*m_page, "supplies-ledger"));
}

QTEST_MAIN(SuppliesTest)
#include "tst_supplies.moc"
