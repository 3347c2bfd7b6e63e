// Counts and price lists come into the demo centre as CSV: mapped, asked about, or refused whole with every fault named.
#include "core/season/bookings.h"
#include "core/storage/store.h"
#include "tests/support/command_line.h"

#include <QGuiApplication>
#include <QTest>

#include <algorithm>

using namespace laneward;
using namespace support;

class ExchangeSuppliesTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init() { m_folder.write("demo.laneward", m_demo); }
    void aCountComesIn();
    void aFirstCountOpensTheBooks();
    void columnsAreMapped();
    void theSameFileCountsOnce();
    void brokenCounts_data();
    void brokenCounts();
    void aCountInTheWrongUnitIsAskedAbout();
    void aPriceListReplacesTheLast();
    void pricesAreMapped();
    void brokenPrices_data();
    void brokenPrices();
    void pricesThatAreHardlyMeantAreAskedAbout_data();
    void pricesThatAreHardlyMeantAreAskedAbout();
    void dryRunWritesNothing();
    void manyRowsAreReadInTime();
    void exportedStockCountsNothing();
    void exportedPricesChangeNothing();
    void exportsSayWhatTheyNeed();

private:
    Answer import(const char* kind, const QByteArray& csv, const QStringList& more = {}) {
        m_folder.write("in.csv", csv);
        return m_folder.run(QStringList{"import", m_folder.path("in.csv"), "--kind", kind} + more);
    }
    QByteArray exported(const char* kind, const QStringList& more = {}) {
        const Answer answer = m_folder.run(QStringList{"export", m_folder.path("out.csv"), "--kind", kind} + more);
        return answer.status == 0 ? m_folder.read("out.csv") : answer.err.toUtf8();
    }
    std::unique_ptr<Store> store() {
        auto opened = Store::open({Location::Kind::Sqlite, m_folder.path("demo.laneward"), {}}, Access::ReadOnly);
        if (!opened) qFatal("%s", opened.error().finding.rule.constData());
        return *std::move(opened);
    }
    SeasonState season() { return *store()->load(Instant{1'794'495'600}); }
    Amount inPlace(const char* supply, Place::Kind kind, const char* lot = nullptr) {
        return season().stock.at({{supply}, {kind, {}, 0}, {}, lot});
    }
    const Offer* offer(const SeasonState& state, const char* supply, Amount pack) {
        const auto found = std::find_if(state.offers.begin(), state.offers.end(),
                                        [&](const Offer& o) { return o.supply == SupplyId{supply} && o.pack == pack; });
        return found == state.offers.end() ? nullptr : &*found;
    }

    QByteArray m_demo;
    DemoFolder m_folder;
};

void ExchangeSuppliesTest::initTestCase() {
    m_demo = demoCentreFile();
    QVERIFY(!m_demo.isEmpty());
}

void ExchangeSuppliesTest::aCountComesIn() {
    const size_t counts = store()->counts(allRecords)->size();
    const Answer answer = import("stock",
                                 "supply,amount,unit,place,lot,container,note\r\n"
                                 "Tideglass Amber,35,L,shelf,X1,,yearly\r\n"
                                 "amber,2500,mL,open,,blue can,\r\n"
                                 "Sedge cloth,90,m,,X2,,\r\n"
                                 "brush,2,,shelf,X3,,\r\n");
    QVERIFY2(answer.status == 0, qPrintable(answer.err));
    QVERIFY(answer.out.endsWith("4 places counted\n"));
    QCOMPARE(inPlace("amber", Place::Kind::Shelf, "X1"), Amount{35'000'000});
    QCOMPARE(season().stock.at({{"amber"}, {Place::Kind::Open, {}, 0}, "blue can", {}}), Amount{2'500'000});
    QCOMPARE(inPlace("sedge", Place::Kind::Shelf, "X2"), Amount{90'000});
    QCOMPARE(inPlace("brush", Place::Kind::Shelf, "X3"), Amount{2});
    const std::vector<StockCount> after = *store()->counts(allRecords);
    QCOMPARE(after.size(), counts + 1);
    QVERIFY(std::any_of(after.begin(), after.end(), [](const StockCount& count) { return count.note == "yearly"; }));
    QCOMPARE(m_folder.run({"check"}).status, 0);
}

/// A machine's tank is counted as it is mixed: Reedwash is 1 in 5.
void ExchangeSuppliesTest::aFirstCountOpensTheBooks() {
    const SeasonState before = season();
    const Supply& wash = *findSupply(before.supplies, {"reedwash"});
    const auto machine = std::find_if(before.centre.machines.begin(), before.centre.machines.end(),
                                      [&](const Machine& m) { return m.cleaner == wash.name; });
    QVERIFY(machine != before.centre.machines.end());
    const Answer answer = import("stock", "supply,amount,unit,place,machine\r\nReedwash,5,L,tank," + machine->name.toUtf8() +
                                              "\r\n,2,L,waste," + machine->id.value.toUtf8() + "\r\n");
    QVERIFY2(answer.status == 0, qPrintable(answer.err));
    const SeasonState after = season();
    const Place tank{Place::Kind::Tank, machine->id, conditionerSlots};
    QCOMPARE(after.stock.in(wash.id, tank), Amount{1'000'000});
    QCOMPARE(after.stock.in(waterId, tank), Amount{4'000'000});
    QCOMPARE(after.stock.in(wasteId, {Place::Kind::WasteTank, machine->id, 0}), Amount{2'000'000});
}

void ExchangeSuppliesTest::columnsAreMapped() {
    m_folder.write("map.json", R"({"columns": {"supply": "Ware", "amount": "Menge", "date": "Tag", "time": "Zeit"},
        "defaults": {"unit": "L", "place": "open"}, "date": "dd.MM.yyyy", "time": "HH.mm", "decimal": "comma"})");
    const Answer answer = import("stock", "Ware;Menge;Tag;Zeit\r\nTideglass Clear;4,25;12.11.2026;09.30\r\n",
                                 {"--mapping", m_folder.path("map.json")});
    QVERIFY2(answer.status == 0, qPrintable(answer.err));
    const std::vector<StockCount> counts = *store()->counts(allRecords);
    const auto found = std::find_if(counts.begin(), counts.end(), [](const StockCount& count) {
        return count.lines.size() == 1 && count.lines.front().counted == Amount{4'250'000};
    });
    QVERIFY(found != counts.end());
    QCOMPARE(zoneOf(season().centre).toLocal(found->at).time, QTime(9, 30));
    QCOMPARE(found->lines.front().key, (StockKey{{"clear"}, {Place::Kind::Open, {}, 0}, {}, {}}));
}

void ExchangeSuppliesTest::theSameFileCountsOnce() {
    const QByteArray csv = "supply,amount,unit,at,lot\r\namber,12,L,2026-11-11T10:00:00Z,N1\r\n";
    QCOMPARE(import("stock", csv).status, 0);
    const size_t counts = store()->counts(allRecords)->size();
    QCOMPARE(import("stock", csv).status, 0);
    QCOMPARE(store()->counts(allRecords)->size(), counts);
    QCOMPARE(inPlace("amber", Place::Kind::Shelf, "N1"), Amount{12'000'000});
}

void ExchangeSuppliesTest::brokenCounts_data() {
    QTest::addColumn<QByteArray>("csv");
    QTest::addColumn<QStringList>("told");
    const auto row = [](const char* name, const QByteArray& csv, const QStringList& told) { QTest::newRow(name) << csv << told; };
    row("negative", "supply,amount,unit\r\nclear,5,L\r\namber,-3,L\r\n",
        {"in.csv:3, column 'amount': '-3' where a number from 0 to 1,000,000 is expected"});
    row("text", "supply,amount,unit\r\namber,three,L\r\n", {"in.csv:2, column 'amount': 'three' where a number"});
    row("decimal comma", "supply;amount;unit\r\namber;2,5;L\r\n", {"in.csv:2, column 'amount': '2,5' has a comma"});
    row("infinite", "supply,amount,unit\r\namber,inf,L\r\n", {"in.csv:2, column 'amount'"});
    row("no unit", "supply,amount\r\namber,5\r\n", {"in.csv:2, column 'unit': the unit is missing; there are ul, ml, l"});
    row("foreign unit", "supply,amount,unit\r\nsedge,5,L\r\n", {"in.csv:2, column 'unit': 'L' where one of mm, cm, m, ft"});
    row("half a brush", "supply,amount\r\nbrush,1.5\r\n", {"in.csv:2, column 'amount': '1.5' where a whole number"});
    row("unknown supply", "supply,amount\r\nbrushes,1\r\n", {"in.csv:2, column 'supply': the centre has no 'brushes'"});
    row("unknown place", "supply,amount,place\r\nbrush,1,attic\r\n", {"in.csv:2, column 'place'"});
    row("tank without machine", "supply,amount,unit,place\r\namber,1,L,tank\r\n", {"in.csv:2, column 'machine': empty"});
    row("twice", "supply,amount\r\nbrush,1\r\nbrush,2\r\n", {"in.csv:3: this place stands already in line 2"});
    row("tomorrow", "supply,amount,at\r\nbrush,1,2026-11-13T10:00:00Z\r\n", {"in.csv:2, column 'at'", "still to come"});
    row("nothing", "supply,amount\r\n", {"in.csv: has no records"});
    row("no column", "supply,number\r\nbrush,1\r\n", {"in.csv:1: there is no column 'amount'"});
    row("every fault is named", "supply,amount,unit\r\nnone,1,L\r\namber,x,L\r\nclear,1,m\r\n",
        {"in.csv:2, column 'supply'", "in.csv:3, column 'amount'", "in.csv:4, column 'unit'"});
}

void ExchangeSuppliesTest::brokenCounts() {
    QFETCH(QByteArray, csv);
    QFETCH(QStringList, told);
    const SeasonState before = season();
    const size_t counts = store()->counts(allRecords)->size();
    const Answer answer = import("stock", csv, {"--sure"});
    QCOMPARE(answer.status, 3);
    QVERIFY(answer.out.isEmpty());
    for (const QString& part : told)
        QVERIFY2(answer.err.contains(part), qPrintable(answer.err));
    QCOMPARE(season().stock, before.stock);
    QCOMPARE(store()->counts(allRecords)->size(), counts);
}

void ExchangeSuppliesTest::aCountInTheWrongUnitIsAskedAbout() {
    const QByteArray csv = "supply,amount,unit,lot\r\nclear,10,L,N1\r\namber,5000,L,N1\r\n";
    const Answer asked = import("stock", csv);
    QCOMPARE(asked.status, 4);
    QVERIFY2(asked.err.contains("in.csv:3: Tideglass Amber: 5,000 L counted where the ledger has 0 mL; check the unit"),
             qPrintable(asked.err));
    QCOMPARE(inPlace("clear", Place::Kind::Shelf, "N1"), Amount{0});
    QCOMPARE(import("stock", csv, {"--sure"}).status, 0);
    QCOMPARE(inPlace("amber", Place::Kind::Shelf, "N1"), Amount{5'000'000'000});
}

void ExchangeSuppliesTest::aPriceListReplacesTheLast() {
    const SeasonState before = season();
    const OfferId amber = offer(before, "amber", Amount{5'000'000})->id;
    const Answer answer = import("prices",
                                 "supplier,supply,article,pack,pack_unit,from_packs,price\r\n"
                                 "Fenmark Trade,Tideglass Amber,TA-5,5,L,1,91.00\r\n"
                                 "Fenmark Trade,Tideglass Amber,TA-5,5,L,4,85.50\r\n"
                                 "Fenmark Trade,Tideglass Amber,TA-20,20,L,1,310\r\n"
                                 "fenmark,reedwash,,,,,66.10\r\n");
    QVERIFY2(answer.status == 0, qPrintable(answer.err));
    const SeasonState after = season();
    const Offer* changed = offer(after, "amber", Amount{5'000'000});
    QCOMPARE(changed->id, amber);
    QCOMPARE(changed->prices, (std::vector<PriceBreak>{{1, {9'100, "GBP"}}, {4, {8'550, "GBP"}}}));
    QCOMPARE(offer(after, "amber", Amount{20'000'000})->prices, (std::vector<PriceBreak>{{1, {31'000, "GBP"}}}));
    QCOMPARE(offer(after, "reedwash", Amount{10'000'000})->prices.front().each, (Money{6'610, "GBP"}));  // one container
    // What the list no longer has is retired, not deleted; other suppliers stay as they are.
    QVERIFY(offer(after, "clear", Amount{5'000'000})->retired);
    QVERIFY(offer(after, "plainboard", Amount{5'000'000})->retired);
    QVERIFY(!offer(after, "brush", Amount{1})->retired);
    QCOMPARE(m_folder.run({"check"}).status, 0);
    // The same again changes nothing.
    QVERIFY(import("prices", m_folder.read("in.csv")).out.endsWith("0 new or changed\n"));
}

void ExchangeSuppliesTest::pricesAreMapped() {
    m_folder.write("map.json", R"({"columns": {"supply": "Artikel", "price": "Preis"}, "defaults": {"supplier": "withy"},
        "decimal": "comma"})");
    const Answer answer =
        import("prices", "Artikel;Preis\r\nbrush;151,20\r\nblades;55\r\n", {"--mapping", m_folder.path("map.json")});
    QVERIFY2(answer.status == 0, qPrintable(answer.err));
    const SeasonState after = season();
    QCOMPARE(offer(after, "brush", Amount{1})->prices.front().each, (Money{15'120, "GBP"}));
    QCOMPARE(offer(after, "blades", Amount{1})->prices.front().each, (Money{5'500, "GBP"}));
}

void ExchangeSuppliesTest::brokenPrices_data() {
    QTest::addColumn<QByteArray>("rows");
    QTest::addColumn<QStringList>("told");
    const auto row = [](const char* name, const QByteArray& rows, const QStringList& told) {
        QTest::newRow(name) << rows << told;
    };
    row("gap before the first", "fenmark,amber,A,5,L,4,,84,\r\n", {"in.csv:2: A: the prices begin at 4 packs"});
    row("gap between breaks", "fenmark,amber,A,5,L,1,3,90,\r\nfenmark,amber,A,5,L,5,,84,\r\n",
        {"in.csv:3, column 'from_packs': from 5 packs; the price before it ends at 3"});
    row("overlap", "fenmark,amber,A,5,L,1,5,90,\r\nfenmark,amber,A,5,L,4,,84,\r\n",
        {"in.csv:3, column 'from_packs': from 4 packs; the price before it goes on to 5"});
    row("order", "fenmark,amber,A,5,L,1,,90,\r\nfenmark,amber,A,5,L,8,,80,\r\nfenmark,amber,A,5,L,4,,84,\r\n",
        {"in.csv:4: A: the price from 4 packs stands after that from 8"});
    row("mixed currencies", "fenmark,amber,A,5,L,1,,90,GBP\r\nfenmark,amber,A,5,L,4,,84,EUR\r\nfenmark,clear,C,5,L,1,,9,USD\r\n",
        {"in.csv:3: A: a price is in 'EUR', but the centre buys in GBP", "in.csv:4: C: a price is in 'USD'"});
    row("negative", "fenmark,amber,A,5,L,1,,-90,\r\n", {"in.csv:2, column 'price': '-90' where a number from 0"});
    row("text", "fenmark,amber,A,5,L,1,,ninety,\r\n", {"in.csv:2, column 'price': 'ninety'"});
    row("decimal comma", "fenmark,amber,A,5,L,1,,\"89,50\",\r\n", {"in.csv:2, column 'price': '89,50' has a comma"});
    row("part of a coin", "fenmark,amber,A,5,L,1,,89.505,\r\n",
        {"in.csv:2, column 'price': '89.505' where money is expected, with 2 decimals at most"});
    row("no price", "fenmark,amber,A,5,L,1,,,\r\n", {"in.csv:2, column 'price': empty"});
    row("packs in words", "fenmark,amber,A,5,L,some,,90,\r\n", {"in.csv:2, column 'from_packs': 'some' where a whole number"});
    row("empty pack", "fenmark,amber,A,0,L,1,,90,\r\n", {"in.csv:2: A: a pack holds nothing"});
    row("pack without unit", "fenmark,amber,A,5,,1,,90,\r\n", {"in.csv:2, column 'pack_unit': the unit is missing"});
    row("two suppliers", "fenmark,amber,A,5,L,1,,90,\r\nwithy,brush,B,1,,1,,140,\r\n",
        {"in.csv:3, column 'supplier': 'withy'; a price list is of one supplier"});
    row("unknown supplier", "nobody,amber,A,5,L,1,,90,\r\n", {"in.csv:2, column 'supplier': the centre has no 'nobody'"});
    row("unknown supply", "fenmark,umber,A,5,L,1,,90,\r\n", {"in.csv:2, column 'supply': the centre has no 'umber'"});
    row("nothing", "", {"in.csv: has no records"});
}

void ExchangeSuppliesTest::brokenPrices() {
    QFETCH(QByteArray, rows);
    QFETCH(QStringList, told);
    const SeasonState before = season();
    const Answer answer =
        import("prices", "supplier,supply,article,pack,pack_unit,from_packs,to_packs,price,currency\r\n" + rows, {"--sure"});
    QCOMPARE(answer.status, 3);
    QVERIFY(answer.out.isEmpty());
    for (const QString& part : told)
        QVERIFY2(answer.err.contains(part), qPrintable(answer.err));
    QCOMPARE(season().offers, before.offers);
}

void ExchangeSuppliesTest::pricesThatAreHardlyMeantAreAskedAbout_data() {
    QTest::addColumn<QByteArray>("row");
    QTest::addColumn<QString>("told");
    QTest::newRow("pack in the wrong unit") << QByteArray("fenmark,amber,TA-5,5,mL,90")
                                            << "in.csv:2: Tideglass Amber: a pack of 5 mL, where a container holds 5 L";
    QTest::newRow("price a hundred times off") << QByteArray("fenmark,amber,TA-5,5,L,8950")
                                               << "in.csv:2: Tideglass Amber: 8950.00 GBP a pack, far from the 89.50 GBP of now";
}

void ExchangeSuppliesTest::pricesThatAreHardlyMeantAreAskedAbout() {
    QFETCH(QByteArray, row);
    QFETCH(QString, told);
    const SeasonState before = season();
    const QByteArray csv = "supplier,supply,article,pack,pack_unit,price\r\n" + row + "\r\n";
    const Answer asked = import("prices", csv);
    QCOMPARE(asked.status, 4);
    QVERIFY2(asked.err.contains(told), qPrintable(asked.err));
    QCOMPARE(season().offers, before.offers);
    QCOMPARE(import("prices", csv, {"--sure"}).status, 0);
    QVERIFY(season().offers != before.offers);
}

void ExchangeSuppliesTest::dryRunWritesNothing() {
    const SeasonState before = season();
    QVERIFY(import("stock", "supply,amount\r\nbrush,1\r\n", {"--dry-run"}).out.contains("1 places could be counted"));
    QVERIFY(import("prices", "supplier,supply,price\r\nwithy,brush,99\r\n", {"--dry-run"}).out.contains("nothing was written"));
    QCOMPARE(season().stock, before.stock);
    QCOMPARE(season().offers, before.offers);
    QCOMPARE(import("nothing", "supply,amount\r\nbrush,1\r\n").status, 2);
}

/// As many rows as a file may have, all of them wrong: refused, with no more lines than anybody reads.
void ExchangeSuppliesTest::manyRowsAreReadInTime() {
    QByteArray csv = "supplier,supply,article,pack,pack_unit,price\r\n";
    for (int n = 0; n < 90'000; ++n)
        csv += "fenmark,amber,A" + QByteArray::number(n) + ",5,L,90\r\n";
    csv += "fenmark,amber,A,5,L,-1\r\n";
    const Answer answer = import("prices", csv);
    QCOMPARE(answer.status, 3);
    QVERIFY(answer.err.contains("in.csv:90002, column 'price'"));
    csv = "supply,amount\r\n" + QByteArray("brush,x\r\n").repeated(90'000);
    QCOMPARE(import("stock", csv).err.count('\n'), 200);
}

/// Counted as the books have it, nothing moves; what is then found is all that does.
void ExchangeSuppliesTest::exportedStockCountsNothing() {
    const QByteArray out = exported("stock");
    QVERIFY2(out.startsWith("supply,place,machine,container,lot,amount,unit\r\n"), out.left(200).constData());
    QVERIFY(out.contains("Tideglass Amber,shelf,") && out.contains(",tank,Heron,") && out.contains(",waste,Heron,"));
    const Balances before = season().stock;
    const Answer answer = import("stock", out);
    QVERIFY2(answer.status == 0, qPrintable(answer.err));
    for (const auto& [key, amount] : before.all()) {
        if (key.place.kind != Place::Kind::Shelf && key.place.kind != Place::Kind::Open) continue;
        QCOMPARE(season().stock.at(key), amount);
    }
    QCOMPARE(exported("stock"), out);
    // A millilitre more in the first place with a whole number of them, which is found again.
    const qsizetype at = out.indexOf(".000,ml");
    QVERIFY(at > 0);
    const QByteArray found = out.left(at) + ".250,ml" + out.mid(at + 7);
    QVERIFY(import("stock", found).status == 0);
    QCOMPARE(exported("stock"), found);
    QCOMPARE(m_folder.run({"check"}).status, 0);
}

void ExchangeSuppliesTest::exportedPricesChangeNothing() {
    const SeasonState before = season();
    QVERIFY(before.suppliers.size() > 1);
    size_t rows = 0;
    for (const Supplier& supplier : before.suppliers) {
        const QByteArray out = exported("prices", {"--supplier", supplier.name});
        QVERIFY2(out.startsWith("supplier,supply,article,pack,pack_unit,from_packs,to_packs,price,currency\r\n"),
                 out.constData());
        rows += size_t(out.count("\r\n")) - 1;
        const Answer answer = import("prices", out);
        QVERIFY2(answer.status == 0 && answer.out.endsWith("0 new or changed\n"), qPrintable(answer.out + answer.err));
    }
    size_t breaks = 0;
    for (const Offer& one : before.offers)
        breaks += one.retired ? 0 : one.prices.size();
    QCOMPARE(rows, breaks);
    QCOMPARE(season().offers, before.offers);
}

void ExchangeSuppliesTest::exportsSayWhatTheyNeed() {
    const auto run = [&](const QStringList& more) {
        return m_folder.run(QStringList{"export", m_folder.path("none.csv")} + more);
    };
    const Answer missing = run({"--kind", "prices"});
    QCOMPARE(missing.status, 2);
    QVERIFY2(missing.err.contains("Fenmark Trade"), qPrintable(missing.err));
    QCOMPARE(run({"--kind", "prices", "--supplier", "nobody"}).status, 2);
    const Answer kind = run({"--kind", "coins"});
    QVERIFY2(kind.status == 2 && kind.err.contains("stock, prices"), qPrintable(kind.err));
    QVERIFY(!QFile::exists(m_folder.path("none.csv")));
}

QTEST_MAIN(ExchangeSuppliesTest)
#include "tst_exchange_supplies.moc"
