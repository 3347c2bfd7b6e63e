// Service items, meters and wear in words: units, rounding, and each way in which a question of wear can end.
#include "core/documents/item_words.h"

#include <QTest>

#include <set>

using namespace laneward;

namespace {

Speech plain() { return {QLocale::c(), *Zone::load("Europe/London"), UnitSystem::Metric}; }

std::vector<Life> brushes(int failures) {
    std::vector<Life> lives;
    for (int i = 0; i < failures; ++i)
        lives.push_back({3'000 * (0.7 + 0.6 * (i + 0.5) / failures), true});
    lives.push_back({1'000, false});
    return lives;
}

}  // namespace

class ItemWordsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyKindHasItsWord();
    void metersHaveTheirUnits();
    void triggersAndWhatWasDoneSince();
    void partsTellWhatIsThere();
    void wearIsSaid();
};

void ItemWordsTest::everyKindHasItsWord() {
    std::set<QString> words;
    for (int kind = 0; kind <= int(ItemKind::Other); ++kind)
        words.insert(text(ItemKind(kind)));
    QCOMPARE(words.size(), size_t(ItemKind::Other) + 1);
    words.clear();
    for (int kind = 0; kind <= int(DutyKind::Calibrate); ++kind)
        words.insert(text(DutyKind(kind)));
    QCOMPARE(words.size(), size_t(DutyKind::Calibrate) + 1);
    words.clear();
    for (int kind = 0; kind <= int(MeterKind::Days); ++kind)
        words.insert(text(MeterKind(kind)));
    QCOMPARE(words.size(), size_t(MeterKind::Days) + 1);
    QVERIFY(!words.contains(QString()));
}

void ItemWordsTest::metersHaveTheirUnits() {
    QCOMPARE(meterText(2'400, MeterKind::Lanes, plain()), QString("2400 lane(s)"));
    QCOMPARE(meterText(1, MeterKind::Days, plain()), QString("1 day(s)"));
    QCOMPARE(meterText(18'630, MeterKind::Minutes, plain()), QString("310.5 h"));
    QCOMPARE(meterText(18'000, MeterKind::Minutes, plain()), QString("300 h"));
    QCOMPARE(meterText(61.2e6, MeterKind::Volume, plain()), QString("61.2 L"));
    QCOMPARE(meterNumber(2'400, MeterKind::Lanes, plain()), QString("2400"));
    QCOMPARE(meterNumber(18'630, MeterKind::Minutes, plain()), QString("310.5"));
    Speech german = plain();
    german.locale = QLocale("de_DE");
    QCOMPARE(meterNumber(2'400, MeterKind::Lanes, german), QString("2.400"));
}

void ItemWordsTest::triggersAndWhatWasDoneSince() {
    Duty duty{{"d"}, DutyKind::Replace, "Change", {{MeterKind::Lanes, 1'200}, {MeterKind::Days, 180}}};
    QCOMPARE(triggersText(duty, plain()), QString("1200 lane(s) or 180 day(s)"));
    duty.dates = {{2026, 12, 24}};
    QVERIFY2(triggersText(duty, plain()).contains("; on Thu"), qPrintable(triggersText(duty, plain())));
    const QDate today{2026, 11, 12};
    const LastDone last{{}, today.addDays(-12), {400, 50, {}, {}}};
    QCOMPARE(sinceText(duty, last, {{1'220, 90, {}, {}}, nullptr, today}, plain()), QString("820 lane(s), 12 day(s)"));
    QCOMPARE(sinceText(duty, {}, {{}, nullptr, today}, plain()), QString());
}

void ItemWordsTest::partsTellWhatIsThere() {
    SeasonState season;
    season.supplies = {Supply{{"blade"}, "Blade", SupplyKind::Part}};
    Duty duty{{"d"}, DutyKind::Replace, "Change"};
    duty.parts = {{{"blade"}, Amount{2}}, {{"gone"}, Amount{1}}};
    QCOMPARE(partsText(duty, season, plain()), QString("Blade 2 (0 there)"));
}

void ItemWordsTest::wearIsSaid() {
    const ReplacementCosts costs{40, 200};
    const auto said = [](const WearAnswer& answer, std::optional<double> now = {}, bool hasCosts = true) {
        return wearSentence({"Brush", answer, MeterKind::Lanes, now, hasCosts}, plain());
    };
    const WearAnswer good = wearOf({"Brush", brushes(12), costs, 3'000});
    const QString sentence = said(good, 3'000);
    QVERIFY2(sentence.startsWith("Brush: best replaced after "), qPrintable(sentence));
    QVERIFY2(sentence.endsWith("; now it is after 3000 lane(s)."), qPrintable(sentence));
    QVERIFY(sentence.contains(QString::number(qRound(good.best->age / 100) * 100) + " lane(s) ("));
    QVERIFY(said(good).contains("does not depend on that"));
    const WearAnswer few = wearOf({"Brush", brushes(2), costs, {}});
    QVERIFY2(said(few).contains("2 of 3 known parts failed") && said(few).contains("after 3 more"), qPrintable(said(few)));
    QVERIFY(said(wearOf({"Brush", {}, costs, {}})).contains("no replacement is recorded yet"));
    const WearAnswer unpriced = wearOf({"Brush", brushes(12), {0, 0}, {}});
    QVERIFY2(said(unpriced, {}, false).contains("Type what a replacement costs"), qPrintable(said(unpriced, {}, false)));
    const WearAnswer same = wearOf({"Brush", brushes(12), {40, 40}, {}});
    QVERIFY2(said(same).contains("wait until it fails"), qPrintable(said(same)));
    const WearAnswer unsure =
        wearOf({"Brush", {{300, true}, {900, true}, {1'400, true}, {2'200, true}, {3'100, true}, {1'000, false}}, costs, {}});
    QVERIFY2(said(unsure).contains("no end is known"), qPrintable(said(unsure)));
    QVERIFY2(!said(unsure).contains(".."), qPrintable(said(unsure)));
}

QTEST_GUILESS_MAIN(ItemWordsTest)
#include "tst_item_words.moc"
