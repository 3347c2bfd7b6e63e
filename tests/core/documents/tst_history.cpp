// The history as a list: what is found is what a plain scan over the words finds, whatever is typed; sums, chains and files.
#include "core/documents/csv_reader.h"
#include "core/documents/history_details.h"
#include "core/documents/history_list.h"
#include "core/documents/history_totals.h"
#include "tests/support/full_season.h"
#include "tests/support/hostile_texts.h"

#include <QTest>

#include <algorithm>
#include <random>

using namespace laneward;
using namespace support;

namespace {

Speech plain() { return {QLocale::c(), *Zone::load("Europe/London"), UnitSystem::Metric}; }

constexpr Instant noon{1'794'484'800};

HistoryEntry entryOf(int n, const QString& words, Instant at) {
    HistoryEntry entry;
    entry.kind = HistoryKind(n % historyKinds);
    entry.id = {QString("e%1").arg(n, 6, 10, QChar('0'))};
    entry.at = at;
    entry.when = dateTimeText(at, plain());
    entry.words = words;
    return entry;
}

const QStringList& vocabulary() {
    static const QStringList words{
        "Bürste", "brush",   "BRUSH",   "Heron",  "Égret",   "egret", "über", "Öl", "straße", "STRASSE",   "İzmir",    "ılık",
        "ﬁlter",  "ΣΊΣΥΦΟΣ", "σίσυφος", "Łódź",   "naïve",   "①",     "½",    "a",  "aa",     "aaa",       "ab",       "ba",
        "x,y",    "\"q\"",   "%1",      "\u0301", "e\u0301", "日本",  "भारत", "😀",  "don't",  "tab\there", "line\nend"};
    return words;
}

std::vector<HistoryEntry> randomEntries(std::mt19937& random, int count) {
    const auto any = [&](int n) { return int(random() % unsigned(n)); };
    const QStringList hostile = hostileTexts();
    std::vector<HistoryEntry> entries;
    for (int n = count; n > 0; --n) {
        QStringList words;
        for (int w = any(7); w >= 0; --w)
            words << (any(8) == 0 ? hostile[any(int(hostile.size()))] : vocabulary()[any(int(vocabulary().size()))]);
        HistoryEntry entry = entryOf(n, words.join(any(2) == 0 ? " " : ", "), noon + minutes(n * 30));
        entry.machine = {any(2) == 0 ? "heron" : "egret"};
        entry.machineName = entry.machine.value;
        entry.person = {any(3) == 0 ? "ada" : "ben"};
        entry.personName = entry.person.value;
        entry.item = {any(4) == 0 ? "brush" : ""};
        entry.products = {vocabulary()[any(5)]};
        entry.of = entry.products.front();
        entry.lanes = LaneSet::range(1 + any(10), 10 + any(10));
        entry.stands = any(10) > 0;
        entries.push_back(entry);
    }
    return entries;
}

/// A piece of what is there, or anything.
QString randomText(std::mt19937& random, const std::vector<HistoryEntry>& entries) {
    const auto any = [&](qsizetype n) { return qsizetype(random() % std::uint32_t(std::max<qsizetype>(n, 1))); };
    QStringList words;
    for (qsizetype n = any(4); n > 0; --n) {
        const QString from = any(3) == 0 ? vocabulary()[any(vocabulary().size())]
                                         : HistoryIndex::wordsOf(entries[size_t(any(qsizetype(entries.size())))]);
        const qsizetype start = any(from.size());
        QString piece = from.mid(start, 1 + any(6));
        piece.removeIf([](QChar c) { return c.isSurrogate(); });  // nobody types half a letter
        words << (any(2) == 0 ? piece.toUpper() : piece);
    }
    return words.join(' ');
}

HistoryQuery randomQuery(std::mt19937& random, const std::vector<HistoryEntry>& entries) {
    const auto any = [&](int n) { return int(random() % unsigned(n)); };
    HistoryQuery query;
    query.text = randomText(random, entries);
    if (any(4) == 0) query.kind = HistoryKind(any(historyKinds));
    if (any(4) == 0) query.machine = {"heron"};
    if (any(4) == 0) query.person = {"ada"};
    if (any(6) == 0) query.item = {"brush"};
    if (any(6) == 0) query.product = vocabulary()[any(5)];
    if (any(6) == 0) query.lane = 1 + any(20);
    if (any(3) == 0) query.time = {noon + minutes(any(900)), noon + minutes(3'000 + any(9'000))};
    query.withCorrected = any(2) == 0;
    return query;
}

/// What the words say: nothing clever.
bool suitsPlainly(const HistoryEntry& entry, const QString& all, const HistoryQuery& query) {
    for (const QString& word : folded(query.text).simplified().split(' ', Qt::SkipEmptyParts))
        if (!all.contains(word)) return false;
    if (query.kind && *query.kind != entry.kind) return false;
    if (!query.machine.isEmpty() && query.machine != entry.machine) return false;
    if (!query.person.isEmpty() && query.person != entry.person) return false;
    if (!query.item.isEmpty() && query.item != entry.item) return false;
    if (!query.product.isEmpty() && !entry.products.contains(query.product)) return false;
    if (query.lane > 0 && !entry.lanes.contains(query.lane)) return false;
    return query.time.contains(entry.at) && (query.withCorrected || entry.stands);
}

std::vector<HistoryRow> allRows(const HistoryIndex& index) {
    HistoryQuery all;
    all.withCorrected = true;
    return index.find(all);
}

HistoryIndex fullIndex() { return HistoryIndex(historyEntries(fullHistory(), fullSeason(), plain())); }

}  // namespace

class HistoryTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void foldingForgetsCaseAndAccents_data();
    void foldingForgetsCaseAndAccents();
    void findsWhatAPlainScanFinds();
    void everyWordMustOccur();
    void sortsByEveryColumn();
    void emptyIsEmpty();
    void everyKindIsListed();
    void correctedAreToldApart();
    void chainsAreFollowed();
    void chainsThatBiteTheirTailEnd();
    void followUpsLeadBothWays();
    void followUpsThatAnswerEachOtherEnd();
    void namesThatAreGoneAreShownAsIds();
    void csvReadsBack();
    void hostileTextsStayText();
    void failuresPerLane();
    void partsCountAtTodaysPrice();
    void headlineSaysWhatStandsOut();
    void detailsTellEverything();
};

void HistoryTest::foldingForgetsCaseAndAccents_data() {
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("expected");
    QTest::newRow("plain") << "Heron 12"
                           << "heron 12";
    QTest::newRow("umlaut") << "BÜRSTE"
                            << "burste";
    QTest::newRow("apart") << "e\u0301gret"
                           << "egret";
    QTest::newRow("sharp s") << "Straße"
                             << "strasse";
    QTest::newRow("ligature") << "ﬁlter"
                              << "filter";
    QTest::newRow("final sigma") << "ΣΊΣΥΦΟΣ"
                                 << "σισυφοσ";
    QTest::newRow("circled") << "①"
                             << "1";
    QTest::newRow("wide") << "Ｂ"
                          << "b";
    QTest::newRow("nothing") << ""
                             << "";
}

void HistoryTest::foldingForgetsCaseAndAccents() {
    QFETCH(QString, text);
    QFETCH(QString, expected);
    QCOMPARE(folded(text), expected);
}

void HistoryTest::findsWhatAPlainScanFinds() {
    std::mt19937 random(20'261'126);
    size_t hits = 0;
    for (int round = 0; round < 20; ++round) {
        const HistoryIndex index(randomEntries(random, 300));
        QStringList words;
        for (const HistoryEntry& entry : index.entries())
            words << folded(HistoryIndex::wordsOf(entry)).simplified();
        for (int n = 0; n < 100; ++n) {
            const HistoryQuery query = randomQuery(random, index.entries());
            std::vector<HistoryRow> expected;
            for (size_t row = 0; row < index.size(); ++row)
                if (suitsPlainly(index.entries()[row], words[qsizetype(row)], query)) expected.push_back(HistoryRow(row));
            QVERIFY2(index.find(query) == expected, qPrintable(query.text));
            hits += expected.size();
        }
    }
    QVERIFY(hits > 10'000);  // the queries do find something
}

void HistoryTest::everyWordMustOccur() {
    const HistoryIndex index({entryOf(2, "Kissenbürste gewechselt", noon), entryOf(1, "Cushion brush changed", noon - hours(1))});
    const auto found = [&](const char* text) { return index.find({QString::fromUtf8(text)}).size(); };
    QCOMPARE(found("BURSTE kissen"), size_t(1));
    QCOMPARE(found("brush cushion"), size_t(1));
    QCOMPARE(found("ush"), size_t(1));
    QCOMPARE(found("brush kissen"), size_t(0));  // in two different entries
    QCOMPARE(found("  \t "), size_t(2));
    QCOMPARE(found("changedkissen"), size_t(0));
    QCOMPARE(found("e"), size_t(2));
}

void HistoryTest::sortsByEveryColumn() {
    std::mt19937 random(7);
    const HistoryIndex index(randomEntries(random, 400));
    for (int column = 0; column < historyColumns; ++column) {
        for (const bool ascending : {true, false}) {
            std::vector<HistoryRow> rows = allRows(index);
            const std::vector<HistoryRow> before = rows;
            index.sort(rows, HistoryColumn(column), ascending);
            QVERIFY(std::is_permutation(rows.begin(), rows.end(), before.begin()));
            for (size_t n = 1; n < rows.size(); ++n) {
                const auto by = [&](HistoryRow row) {
                    const HistoryEntry& e = index.at(row);
                    switch (HistoryColumn(column)) {
                        case HistoryColumn::When:
                            return QString("%1").arg(e.at.seconds, 20);
                        case HistoryColumn::Machine:
                            return folded(e.machineName);
                        case HistoryColumn::Person:
                            return folded(e.personName);
                        case HistoryColumn::Of:
                            return folded(e.of);
                        case HistoryColumn::Words:
                            return folded(e.words);
                        case HistoryColumn::What:
                            return QString("%1").arg(int(e.kind), 3);
                        case HistoryColumn::Lanes:
                            return QString("%1 %2").arg(e.lanes.first(), 4).arg(e.lanes.count(), 4);
                        default:
                            return QString();
                    }
                };
                const QString a = by(rows[n - 1]);
                const QString b = by(rows[n]);
                QVERIFY2(ascending ? a <= b : b <= a, qPrintable(a + " | " + b));
                if (a == b && column != int(HistoryColumn::Of) && column != int(HistoryColumn::Words))
                    QVERIFY(rows[n - 1] < rows[n]);
            }
        }
    }
}

void HistoryTest::emptyIsEmpty() {
    const HistoryIndex index(historyEntries({}, {}, plain()));
    QCOMPARE(index.size(), size_t(0));
    QVERIFY(index.find({}).empty());
    QVERIFY(index.find({"anything"}).empty());
    std::vector<HistoryRow> none;
    index.sort(none, HistoryColumn::Words, true);
    QCOMPARE(totalsOf(index, none), HistoryTotals());
    QVERIFY(totalsText({}, {}, plain()).isEmpty());
    QCOMPARE(historyListCsv({index, none}, plain()).count('\n'), 1);
    HistoryQuery query;
    query.machine = {"none"};
    QCOMPARE(*itemFigures(index, query, {})->lanes, 0);
    QVERIFY(!itemFigures(index, {}, {}));
}

void HistoryTest::everyKindIsListed() {
    const HistorySlice history = fullHistory();
    const HistoryIndex index = fullIndex();
    QCOMPARE(index.size(), history.runs.size() + history.readings.size() + history.services.size() + history.counters.size() +
                               history.packReadings.size() + history.incidents.size() + history.handOvers.size() +
                               history.tapes.size() + history.inspections.size() + history.counts.size() +
                               history.movements.size());
    std::array<int, size_t(historyKinds)> kinds{};
    for (const HistoryEntry& entry : index.entries()) {
        ++kinds[size_t(entry.kind)];
        QVERIFY(!entry.words.isEmpty() && !entry.when.isEmpty() && !entry.words.contains(QChar('\n')));
        QVERIFY(!text(entry.kind).isEmpty() && !key(entry.kind).isEmpty());
    }
    for (int kind = 0; kind < historyKinds; ++kind)
        QVERIFY2(kinds[size_t(kind)] > 0, qPrintable(key(HistoryKind(kind))));
    QVERIFY(
        std::is_sorted(index.entries().begin(), index.entries().end(), [](const auto& a, const auto& b) { return a.at > b.at; }));
}

void HistoryTest::correctedAreToldApart() {
    const HistorySlice history = fullHistory();
    const HistoryIndex index = fullIndex();
    size_t stand = standing(history.runs).size() + standing(history.readings).size() + standing(history.services).size() +
                   standing(history.packReadings).size() + standing(history.counters).size() +
                   standing(history.incidents).size() + standing(history.handOvers).size() + standing(history.tapes).size() +
                   standing(history.inspections).size() + standing(history.counts).size();
    for (const Movement& movement : history.movements) {
        const auto back = [&](const Movement& other) { return other.corrects == movement.id; };
        stand += !movement.corrects && std::none_of(history.movements.begin(), history.movements.end(), back);
    }
    QCOMPARE(index.find({}).size(), stand);
    QVERIFY(allRows(index).size() > stand);
    QCOMPARE(totalsOf(index, allRows(index)), totalsOf(index, index.find({})));
}

void HistoryTest::chainsAreFollowed() {
    HistoryEntry first = entryOf(1, "first", noon);
    HistoryEntry second = entryOf(2, "second", noon + hours(1));
    HistoryEntry third = entryOf(3, "third", noon + hours(2));
    second.corrects = first.id;
    third.corrects = second.id;
    const HistoryIndex index({third, second, entryOf(9, "other", noon), first});
    for (const HistoryRow row : {0U, 1U, 3U})
        QCOMPARE(index.chainOf(row), (std::vector<HistoryRow>{3, 1, 0}));
    QCOMPARE(index.chainOf(2), std::vector<HistoryRow>{2});
}

void HistoryTest::chainsThatBiteTheirTailEnd() {
    HistoryEntry a = entryOf(1, "a", noon);
    HistoryEntry b = entryOf(2, "b", noon);
    a.corrects = b.id;
    b.corrects = a.id;
    QCOMPARE(HistoryIndex({b, a}).chainOf(0).size(), size_t(2));
    HistoryEntry own = entryOf(3, "own", noon);
    own.corrects = own.id;
    QCOMPARE(HistoryIndex({own}).chainOf(0).size(), size_t(1));
}

/// A reading outside its check and a spill that was put right later; each followed up, once by words that were put right.
void HistoryTest::followUpsLeadBothWays() {
    HistorySlice slice;
    TapeReading tape{{"tape"}, noon};
    tape.lane = 7;
    tape.note = "Thin at board 20";
    slice.tapes = {tape};
    const auto incident = [&](const char* id, int hour, const char* words, const char* corrects, const char* answers) {
        Incident made;
        made.id = {id};
        made.kind = IncidentKind::Spill;
        made.at = noon + hours(hour);
        made.text = words;
        if (corrects) made.corrects = OperationId{corrects};
        if (answers) made.answers = OperationId{answers};
        slice.incidents.push_back(made);
    };
    incident("spill", 1, "Oil by the bay", nullptr, nullptr);
    incident("wiped", 2, "Wiped the nozzle", nullptr, "tape");
    incident("mopped", 3, "Moped it", nullptr, "spill");
    incident("mopped-2", 3, "Mopped it dry", "mopped", "spill");
    incident("spill-2", 4, "Oil by the door", "spill", nullptr);
    incident("lost", 5, "Looked again", nullptr, "long-ago");
    const HistoryIndex index(historyEntries(slice, {}, plain()));
    const auto rowOf = [&](const char* id) {
        for (HistoryRow row = 0; row < index.size(); ++row)
            if (index.at(row).id.value == id) return row;
        qFatal("no %s", id);
    };
    QCOMPARE(index.answeredBy(rowOf("wiped")), std::optional(rowOf("tape")));
    QCOMPARE(index.answersTo(rowOf("tape")), std::vector{rowOf("wiped")});
    QCOMPARE(index.answersTo(rowOf("spill")), std::vector{rowOf("mopped-2")});
    QCOMPARE(index.answersTo(rowOf("spill-2")), std::vector{rowOf("mopped-2")});
    QVERIFY(!index.answeredBy(rowOf("spill")) && !index.answeredBy(rowOf("lost")) && index.answersTo(rowOf("lost")).empty());
    const auto found = [&](const char* words) {
        QStringList ids;
        for (const HistoryRow row : index.find({words}))
            ids << index.at(row).id.value;
        ids.sort();
        return ids;
    };
    QCOMPARE(found("nozzle"), QStringList({"tape", "wiped"}));
    QCOMPARE(found("board 20"), QStringList({"tape", "wiped"}));
    QCOMPARE(found("mopped"), QStringList({"mopped-2", "spill-2"}));
    QCOMPARE(found("moped"), QStringList());
    QVERIFY(index.at(rowOf("lost")).words.contains("follows up an entry that is not listed"));
    // What follows up is no incident.
    QCOMPARE(totalsOf(index, index.find({})).incidents, 1);
    for (const HistoryFact& fact : historyDetails(index.at(rowOf("wiped")), slice, {}, plain()))
        QVERIFY(fact.name != "What happened");
}

void HistoryTest::followUpsThatAnswerEachOtherEnd() {
    HistorySlice slice;
    for (const char* id : {"a", "b", "c"}) {
        Incident made;
        made.id = {id};
        made.at = noon;
        made.text = id;
        made.answers = OperationId{id == QString("a") ? "b" : "a"};
        made.corrects = OperationId{id == QString("b") ? "c" : "b"};
        slice.incidents.push_back(made);
    }
    const HistoryIndex index(historyEntries(slice, {}, plain()));
    QCOMPARE(index.size(), size_t(3));
    for (HistoryRow row = 0; row < 3; ++row)
        QVERIFY(index.answersTo(row).size() <= 3 && index.answeredBy(row));
}

/// Records of a centre whose machines, people and supplies are not there, as in a damaged store.
void HistoryTest::namesThatAreGoneAreShownAsIds() {
    const HistorySlice history = fullHistory();
    const HistoryIndex index(historyEntries(history, {}, plain()));
    QCOMPARE(index.size(), fullIndex().size());
    QVERIFY(!index.find({"ben"}).empty());
    for (const HistoryEntry& entry : index.entries())
        QVERIFY(!historyDetails(entry, history, {}, plain()).empty());
}

void HistoryTest::csvReadsBack() {
    const HistoryIndex index = fullIndex();
    const std::vector<HistoryRow> rows = allRows(index);
    const Result<CsvTable> table = readCsv(historyListCsv({index, rows}, plain()), "history.csv");
    QVERIFY(table);
    QCOMPARE(table->records.size(), rows.size() + 1);
    for (size_t n = 0; n < rows.size(); ++n) {
        const HistoryEntry& entry = index.at(rows[n]);
        const QStringList& fields = table->records[n + 1].fields;
        QCOMPARE(fields.size(), 13);
        QCOMPARE(Instant{QDateTime::fromString(fields[0], Qt::ISODate).toSecsSinceEpoch()}, entry.at);
        QCOMPARE(fields[1], key(entry.kind));
        QCOMPARE(fields[2], entry.machineName);
        QCOMPARE(fields[3], entry.laneText);
        QCOMPARE(fields[4], entry.personName);
        QCOMPARE(fields[5], entry.of);
        QCOMPARE(fields[6], entry.words);
        QCOMPARE(fields[7], entry.meter ? QString::number(*entry.meter) : QString());
        QCOMPARE(fields[10], entry.stands ? "1" : "0");
        QCOMPARE(fields[11], entry.id.value);
        QCOMPARE(fields[12], entry.corrects ? entry.corrects->value : QString());
    }
}

void HistoryTest::hostileTextsStayText() {
    std::vector<HistoryEntry> entries;
    int n = 0;
    for (const QString& text : hostileTexts())
        entries.push_back(entryOf(++n, shown(text), noon));
    for (const char* text : {"=1+1", "+1", "-1", "@x", "\t=1", "'=1", "''", "a\"b", "a;b"})
        entries.push_back(entryOf(++n, text, noon));
    const HistoryIndex index(entries);
    const std::vector<HistoryRow> rows = allRows(index);
    const QByteArray csv = historyListCsv({index, rows}, plain());
    const Result<CsvTable> table = readCsv(csv, "history.csv");
    QVERIFY(table);
    for (size_t row = 0; row < entries.size(); ++row) {
        const QString& field = table->records[row + 1].fields[6];
        QCOMPARE(field, entries[row].words);
        // As a spreadsheet sees it, which knows nothing of our apostrophe.
        if (!field.isEmpty() && QString("=+-@\t\r").contains(field[0])) QVERIFY(csv.contains(("'" + field.left(1)).toUtf8()));
    }
}

void HistoryTest::failuresPerLane() {
    SeasonState season;
    season.items = {{{"brush"}, {"heron"}, ItemKind::CushionBrush, "Brush"}, {{"tank"}, {"heron"}, ItemKind::WasteTank, "Tank"}};
    season.centre.facts.settings.currency = "EUR";
    std::vector<HistoryEntry> entries;
    for (int n = 20; n > 0; --n) {
        HistoryEntry run = entryOf(n * 2, "run", noon + hours(n));
        run.kind = HistoryKind::Run;
        run.machine = {n % 5 == 0 ? "egret" : "heron"};
        run.lanesTreated = 10;
        HistoryEntry service = entryOf(n * 2 + 1, "service", noon + hours(n));
        service.kind = HistoryKind::Service;
        service.machine = {"heron"};
        service.item = {n % 2 == 0 ? "brush" : "tank"};
        service.failed = n % 8 == 0;
        service.costMinor = 50;
        service.partsMinor = 20;
        service.stands = n != 2;
        entries.push_back(service);
        entries.push_back(run);
    }
    const HistoryIndex index(entries);
    HistoryQuery query;
    query.text = "nothing like it";  // the figures are those of the days, whatever else is looked for
    query.item = {"brush"};
    const ItemFigures figures = *itemFigures(index, query, season);
    QCOMPARE(*figures.lanes, 160);
    QCOMPARE(figures.failures, 2);
    QCOMPARE(figures.costMinor, 450);  // nine of ten stand
    QCOMPARE(figures.partsMinor, 180);
    QCOMPARE(*figures.lanesBetweenFailures, 80.0);
    QCOMPARE(*figures.costPerLane, 450.0 / 160.0);
    query.time = {noon, noon + hours(8)};
    QCOMPARE(itemFigures(index, query, season)->failures, 0);
    QVERIFY(!itemFigures(index, query, season)->lanesBetweenFailures);
    HistoryQuery machine;
    machine.machine = {"heron"};
    QCOMPARE(itemFigures(index, machine, season)->costMinor, 19 * 50);
    season.items[0].machine = {};  // then there are no lanes to count
    query.time = HistoryQuery().time;
    const ItemFigures house = *itemFigures(index, query, season);
    QVERIFY(!house.lanes && !house.costPerLane && !house.lanesBetweenFailures);
    QCOMPARE(house.failures, 2);
    const QString plainly = figuresText(house, season, plain());
    QVERIFY2(plainly.contains("service costs 4.50 EUR") && !plainly.contains("lane"), qPrintable(plainly));
    const QString words = figuresText(figures, season, plain());
    QVERIFY2(words.contains("80 lanes between failures") && words.contains("28.13 EUR per 1,000"), qPrintable(words));
}

void HistoryTest::partsCountAtTodaysPrice() {
    SeasonState season;
    season.centre.facts.settings.currency = "EUR";
    season.items = {{{"i"}, {}, ItemKind::Other, "Thing"}};
    season.supplies = {Supply{{"part"}, "Blade", SupplyKind::Part}, Supply{{"free"}, "Rag", SupplyKind::Part}};
    season.offers = {Offer{{"o"}, {"s"}, {"part"}, {}, Amount{4}, {{1, {1'000, "EUR"}}}}};
    HistorySlice slice;
    ServiceRecord record{{"r"}, noon, {"ada"}, {"i"}, {}, {}, ServiceResult::Done};
    record.parts = {{{"part"}, Amount{2}, "L7"}, {{"free"}, Amount{1}, {}}};
    record.cost = {250, "EUR"};
    slice.services = {record};
    const std::vector<HistoryEntry> entries = historyEntries(slice, season, plain());
    QCOMPARE(*entries.front().costMinor, 750);
    QCOMPARE(entries.front().partsMinor, 500);
    QCOMPARE(entries.front().products, (QStringList{"Blade", "Rag"}));
    QString parts;
    for (const HistoryFact& fact : historyDetails(entries.front(), slice, season, plain()))
        if (fact.text.contains("Blade")) parts = fact.text;
    QVERIFY2(parts.contains("lot L7") && parts.contains("5.00 EUR") && parts.contains("no price known"), qPrintable(parts));
}

void HistoryTest::headlineSaysWhatStandsOut() {
    HistoryTotals totals;
    totals.entries = 1'412;
    const DateRange days{QDate(2026, 11, 2), QDate(2026, 11, 12)};
    const QString quiet = historyHeadline(totals, days, plain());
    QVERIFY2(quiet.startsWith("1412 ") && quiet.contains("no incident"), qPrintable(quiet));
    totals.incidents = 3;
    totals.failures = 1;
    const QString loud = historyHeadline(totals, days, plain());
    QVERIFY2(loud.contains("3 incident") && loud.contains("1 part") && loud.contains("2026-11-02"), qPrintable(loud));
}

void HistoryTest::detailsTellEverything() {
    const HistorySlice history = fullHistory();
    const HistoryIndex index = fullIndex();
    QString all;
    for (const HistoryEntry& entry : index.entries()) {
        const std::vector<HistoryFact> facts = historyDetails(entry, history, fullSeason(), plain());
        QVERIFY(facts.size() >= 2);
        for (const HistoryFact& fact : facts) {
            QVERIFY(!fact.name.isEmpty() && !fact.text.isEmpty());
            all += fact.name + ": " + fact.text + "\n";
        }
    }
    for (const char* words : {"lot L9", "Worn on the left", "Half of it was still good", "7.25 GBP", "Cable across the approach",
                              "Lane 4 squeaks\nCall the fitter", "1203 lanes"})
        QVERIFY2(all.contains(QString::fromUtf8(words)), words);
}

QTEST_GUILESS_MAIN(HistoryTest)
#include "tst_history.moc"
