// Scores of forecasts, changes of stock, costs and staff hours in words, as JSON and CSV. Plural forms are the catalogue's.
#include "core/documents/cost_words.h"
#include "core/documents/score_words.h"
#include "core/documents/staff_words.h"
#include "core/documents/supply_difference_words.h"
#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

namespace {

ForecastScore scoreOf(int spans, int half, int most) {
    ForecastScore score;
    score.half = {0.5, half, spans};
    score.most = {0.9, most, spans};
    return score;
}

Speech plain() { return {QLocale(QLocale::English, QLocale::UnitedKingdom), Zone(), UnitSystem::Metric}; }

QString wordsOf(const ForecastScore& score) { return scoreWords(score, SupplyKind::Conditioner, plain()).all().join('\n'); }

SeasonState season() {
    SeasonState s;
    s.centre = house().centre;
    s.centre.facts.settings.currency = "GBP";
    s.supplies = {Supply{{"kestrel"}, "Kestrel oil"}, Supply{{"amber"}, "Amber"}};
    return s;
}

EventCost costOfLeague() {
    EventCost cost;
    cost.series = {"league"};
    cost.title = "Fours";
    cost.playBegins = at(0, 19);
    cost.lanes = LaneSet::range(1, 12);
    cost.care.time = minutes(45);
    cost.care.use.conditioner[0] = millilitres(300);
    cost.care.use.cleaner = millilitres(1'200);
    cost.care.use.laneRuns = 12;
    cost.product = {3'125, "GBP"};
    return cost;
}

StaffWeek week() {
    StaffWeek w{day0, 46, minutes(95), minutes(5), {}};
    w.days = {{day0, minutes(95), minutes(5), 2, at(0, 16), at(0, 18)}, {day0.addDays(1), {}, {}, 0, {}, {}}};
    return w;
}

}  // namespace

class SupplyWordsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void scoresSayHowOftenRangesHeld() {
        QCOMPARE(wordsOf(scoreOf(18, 9, 16)),
                 QString("Of 18 past spans, 9 were within the middle range (expected about half) and 16 within the wide one "
                         "(expected 9 in 10)."));
        QVERIFY(wordsOf(scoreOf(5, 2, 5)).contains("That is too few to judge the ranges by."));
        QVERIFY(wordsOf(scoreOf(1, 1, 1)).startsWith("One past forecast is known"));
        QVERIFY(wordsOf(scoreOf(0, 0, 0)).contains("not known yet"));
        ForecastScore missing = scoreOf(0, 0, 0);
        missing.missing = 3;
        QVERIFY(wordsOf(missing).contains("none was kept"));
    }

    void coverageThatIsOffIsSaid() {
        QVERIFY(wordsOf(scoreOf(96, 50, 40)).contains("! The ranges are too narrow"));
        QVERIFY(wordsOf(scoreOf(40, 40, 39)).contains("! The ranges are too wide"));
        QVERIFY(!wordsOf(scoreOf(40, 21, 37)).contains('!'));
        // Few, and off all the same.
        const QString few = wordsOf(scoreOf(6, 0, 0));
        QVERIFY2(few.contains("too narrow") && !few.contains("too few"), qPrintable(few));
    }

    void plainGuessesAreBeside() {
        ForecastScore score = scoreOf(18, 9, 16);
        score.lastMonth = {14, 30'000, 50'000, 100'000, 210'000};
        QVERIFY2(wordsOf(score).contains(
                     "The forecast missed by 200 mL a span on average, the average of the month before by 420 mL."),
                 qPrintable(wordsOf(score)));
        QVERIFY(!wordsOf(score).contains("last year"));
        score.lastYear = {3, 1, 1, 300'000, 200'000};
        QVERIFY2(wordsOf(score).contains("! The same weeks of last year would have been the better guess: they missed by 400 mL, "
                                         "the forecast by 600 mL."),
                 qPrintable(wordsOf(score)));
    }

    void scoresAsJson() {
        ForecastScore score = scoreOf(96, 50, 40);
        score.missing = 2;
        score.pinball = 1.5;
        score.lastMonth = {14, 3, 5, 1, 2};
        const QJsonObject json = scoreJson(score, SupplyKind::Cloth);
        QCOMPARE(json["spans"].toInt(), 96);
        QCOMPARE(json["missing"].toInt(), 2);
        QCOMPARE(json["within_50"].toInt(), 50);
        QCOMPARE(json["within_90"].toInt(), 40);
        QVERIFY(json["off"].toBool());
        QCOMPARE(json["pinball_mm"].toDouble(), 1.5);
        QCOMPARE(json["last_month"]["plain_mm"].toDouble(), 5.0);
        QCOMPARE(json["last_year"]["spans"].toInt(), 0);
    }

    void changesOfStock() {
        const QDate d(2026, 12, 12);
        SupplyDifference change;
        change.runOut = {{{"kestrel"}, d.addDays(3), d}, {{"amber"}, d, d.addDays(1)}, {{"amber"}, {}, d}, {{"kestrel"}, d, {}}};
        change.orders = {{{{"kestrel"}, {"amber"}}, d.addDays(-7), d.addDays(-10)}, {{{"amber"}}, {}, d}, {{{"amber"}}, d, {}}};
        QStringList lines;
        for (const DifferenceLine& line : stockLines(change, season(), plain()))
            lines << (line.bad ? "! " : "") + line.words;
        const QStringList expected{"! Kestrel oil runs out 3 day(s) earlier (Sat 12/12/2026).",
                                   "Amber runs out 1 day(s) later (Sun 13/12/2026).",
                                   "! Amber would run out too, about Sat 12/12/2026.",
                                   "Kestrel oil no longer runs out about Sat 12/12/2026.",
                                   "! Order Kestrel oil, Amber by Wed 02/12/2026 instead of Sat 05/12/2026.",
                                   "! Order Amber too, by Sat 12/12/2026.",
                                   "No need to order Amber by Sat 12/12/2026."};
        QCOMPARE(lines, expected);
        QCOMPARE(stockLines({}, season(), plain()).front().words,
                 QString("Nothing runs out or has to be ordered on another day."));
    }

    void changesOfService() {
        SeasonState state = season();
        Duty turn{{"turn"}, DutyKind::Turn, "Turn it"};
        state.items = {{{"brush"}, {}, ItemKind::Other, "Brush", {turn}, {}, false, 1}};
        const QDate d(2026, 12, 12);
        const auto lines = [&](const std::vector<DutyShift>& shifts) {
            QStringList all;
            for (const DifferenceLine& line : serviceLines(shifts, state, plain()))
                all << line.words;
            return all;
        };
        const auto shift = [](std::optional<QDate> before, std::optional<QDate> after) {
            return DutyShift{{"brush"}, {"turn"}, before, after};
        };
        QVERIFY(lines({}).isEmpty());
        QCOMPARE(lines({shift(d.addDays(2), d), shift(d, d.addDays(1)), shift({}, d)}),
                 (QStringList{"Brush, Turn it falls due 2 day(s) earlier (Sat 12/12/2026).",
                              "Brush, Turn it falls due 1 day(s) later (Sun 13/12/2026).",
                              "Brush, Turn it falls due too, about Sat 12/12/2026."}));
        QCOMPARE(lines({shift(d, {}), shift(d, {}), shift(d, {}), shift(d, {}), shift(d, {})}).last(),
                 QString("2 more duty(s) fall due on other days."));
    }

    void changesOfCost() {
        QCOMPARE(costLine({{1'420, "GBP"}, {}}, plain()).words, QString("Product cost +14.20 GBP"));
        QCOMPARE(costLine({{-1'420, "GBP"}, {}}, plain()).words, QString("Product cost -14.20 GBP"));
        QCOMPARE(costLine({{0, "GBP"}, {}}, plain()).words, QString("Product cost ±0"));
        QCOMPARE(costLine({{5, "GBP"}, {"Clear", "Wash"}}, plain()).words,
                 QString("Product cost +0.05 GBP, without what has no price: Clear, Wash"));
        DifferenceWords words{"s", {{DifferenceLine::Kind::Amounts, "a"}, {DifferenceLine::Kind::Proof, "p"}}};
        addBesides(words, {{}, {}, {{0, "GBP"}, {}}}, season(), plain());
        QCOMPARE(words.lines.size(), size_t{4});
        QCOMPARE(words.lines.back().words, QString("p"));
        QCOMPARE(int(words.lines[1].kind), int(DifferenceLine::Kind::Stock));
        QCOMPARE(int(words.lines[2].kind), int(DifferenceLine::Kind::Cost));
    }

    void costsInSentences() {
        EventCost cost = costOfLeague();
        QCOMPARE(costSentences(cost, season(), plain()),
                 (QStringList{"Product: 31.25 GBP (300 mL of conditioner, 1.2 L of cleaner).", "Work: 45 min.",
                              "For each of its 12 lanes: 2.60 GBP and 4 min.",
                              "What an hour of work costs is not known here; add it yourself."}));
        cost.withoutPrice = {"Clear"};
        QVERIFY(costSentences(cost, season(), plain()).contains("Not in it, for want of a price: Clear."));
        cost.product = {};
        QVERIFY(costSentences(cost, season(), plain()).contains("Product: 300 mL of conditioner, 1.2 L of cleaner."));
        QVERIFY(costSentences(cost, season(), plain()).contains("For each of its 12 lanes: 4 min."));
    }

    void costsAsTables() {
        EventCosts costs{{costOfLeague()}, {}};
        costs.nobody.time = minutes(10);
        const QString page = costsText(costs, season(), plain());
        QVERIFY2(page.contains("Fours") && page.contains("31.25 GBP") && page.contains("Work that no event needs: 10 min."),
                 qPrintable(page));
        QVERIFY(costsText({}, season(), plain()).contains("No event needs lane care"));
        const QJsonObject json = costsJson(costs, season(), plain());
        const QJsonObject event = json["events"].toArray()[0].toObject();
        QCOMPARE(event["product_minor"].toInt(), 3'125);
        QCOMPARE(event["currency"].toString(), QString("GBP"));
        QCOMPARE(event["time_s"].toInt(), 2'700);
        QCOMPARE(event["conditioner_ul"].toInt(), 300'000);
        QCOMPARE(event["start"].toString(), QString("2026-11-12T19:00:00+00:00"));
        QCOMPARE(event["a_lane"]["time_s"].toInt(), 225);
        QCOMPARE(event["a_lane"]["product_minor"].toInt(), 260);
        QCOMPARE(json["nobody"]["time_s"].toInt(), 600);
        const QByteArray csv = costsCsv(costs, season(), plain());
        QVERIFY2(csv.contains("league,Fours,2026-11-12T19:00:00+00:00,1-12,2700,300000,1200000,0,12,3125,GBP,,225,260\r\n"),
                 csv.constData());
    }

    void staffHoursAsTables() {
        const QString page = staffText({week()}, plain());
        QVERIFY2(page.contains("Week 46, Thursday, 12 November 2026 to Friday, 13 November 2026") ||
                     page.contains("Week 46, Thursday 12 November 2026 to Friday 13 November 2026"),
                 qPrintable(page));
        QVERIFY(page.contains("1 h 35 min") && page.contains("5 min"));
        QCOMPARE(staffRow(week().days[1], plain()).mid(1), (QStringList{"-", "-", "-", "-", "-"}));
        const QJsonObject json = staffJson({week()}, plain())[0].toObject();
        QCOMPARE(json["week"].toInt(), 46);
        QCOMPARE(json["bound_s"].toInt(), 5'700);
        QCOMPARE(json["days"].toArray().size(), 2);
        QCOMPARE(json["days"][0]["from"].toString(), QString("2026-11-12T16:00:00+00:00"));
        QVERIFY(json["days"][1]["until"].isNull());
        QCOMPARE(staffCsv({week()}, plain()),
                 QByteArray("week,date,from,until,bound_s,overtime_s,outings\r\n"
                            "46,2026-11-12,2026-11-12T16:00:00+00:00,2026-11-12T18:00:00+00:00,5700,300,2\r\n"
                            "46,2026-11-13,,,0,0,0\r\n"));
    }
};

QTEST_GUILESS_MAIN(SupplyWordsTest)
#include "tst_supply_words.moc"
