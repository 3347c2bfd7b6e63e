// What a move costs and what a season takes, in words and as JSON.
#include "core/documents/season_words.h"
#include "core/documents/wording_jobs.h"
#include "core/documents/writers.h"
#include "tests/support/planning_builders.h"

#include <QJsonArray>
#include <QTest>

using namespace support;

namespace {

Speech plain() { return {QLocale::c(), Zone(), UnitSystem::Metric}; }

/// Lanes 1-4 for 18:00 on two days, the second behind play until 17:10: 15 minutes for 7 min 40 s of work.
State evenings() {
    State s = house();
    s.series = {eventOf("a", 0, {18, 0}, 60, LaneSet::range(1, 4)), eventOf("b", 1, {18, 0}, 60, LaneSet::range(1, 4)),
                eventOf("before", 1, {15, 10}, 120, LaneSet::range(1, 4))};
    s.series[2].demands = {asks(DemandKind::AsItIs, LaneSet::range(1, 4), nullptr)};
    return s;
}

}  // namespace

class SeasonWordsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void movesAreSentences() {
        const State s = evenings();
        const Plan p = planDay(s, at(0, 6), 2);
        const auto said = [&](size_t job, Seconds by) { return text(*moveOf(s, p, p.jobs[job], by), plain()); };
        QCOMPARE(said(0, -minutes(15)),
                 QString("the outing can be 15 min earlier, from 17:07: 4 lane(s) would be up to 15 min older when play begins"));
        QCOMPARE(said(0, minutes(5)),
                 QString("the outing can be 5 min later, from 17:27: 3 lane(s) would be ready inside the reserve, by "
                         "up to 5 min; 4 lane(s) would be up to 5 min fresher when play begins"));
        QCOMPARE(said(1, -minutes(15)),
                 QString("the outing cannot be 15 min earlier: lanes 1-4 are in play until 17:20 (Event before)"));
    }

    void theTextSaysWhatMovingCosts() {
        const State s = evenings();
        const QString week = planText(planDay(s, at(0, 6), 2), s, plain()).simplified();
        QVERIFY2(week.contains("the outing cannot be 15 min earlier: lanes 1-4 are in play until 17:20 (Event before)"),
                 qPrintable(week));
        QVERIFY(week.contains("nothing to spare"));
        QVERIFY(week.contains("must end by 17:35"));
        const QString month = planText(planDay(s, at(0, 6), 28), s, plain()).simplified();
        QVERIFY(!month.contains("the outing can"));  // a long plan is not read job by job
    }

    void seasonAsText() {
        const State s = evenings();
        const QString said = seasonText(seasonFigures(s, planDay(s, at(0, 6), 5)), plain());
        for (const char* words :
             {"Thursday 12 November 2026 to Monday 16 November 2026", "lanes to treat: 8", "outings: 2, machine time 33 min",
              "overtime: 0 s", "days proven to be the best: 5 of 5", "1 tight day(s)", "7 min to spare"})
            QVERIFY2(said.contains(words), qPrintable(QString(words) + " not in\n" + said));
        // The tight day comes before the weeks.
        QVERIFY(said.indexOf("Friday 13 November") > 0 && said.indexOf("Friday 13 November") < said.indexOf("By week"));
        for (const QString& line : said.split('\n'))
            QVERIFY2(line.size() <= 90, qPrintable(line));
        QVERIFY(seasonText({}, plain()).isEmpty());
    }

    void spareInWords() {
        WorkFigures work;
        QCOMPARE(spareText(work, plain()), QString("nothing to do"));
        work.spare = Seconds{30};
        QCOMPARE(spareText(work, plain()), QString("nothing to spare"));
        work.spare = Seconds{119};
        QCOMPARE(spareText(work, plain()), QString("1 min to spare"));  // rounded down: no more than there is
        work.spare = -minutes(4);
        QCOMPARE(spareText(work, plain()), QString("tight by 4 min"));
        work.late = 1;
        QVERIFY(spareText(work, plain()).contains("late"));
        work.unmet = 2;
        QVERIFY(spareText(work, plain()).contains("unmet"));
    }

    void seasonAsJson() {
        const State s = evenings();
        const Plan p = planDay(s, at(0, 6), 5);
        const QJsonObject json = seasonJson(seasonFigures(s, p));
        QCOMPARE(json["total"]["treatments"].toInt(), 8);
        QCOMPARE(json["total"]["machine_s"].toInt(), 2 * (300 + 460 + 240));
        QCOMPARE(json["days"].toArray().size(), 5);
        QCOMPARE(json["days"][1]["spare_s"].toInt(), 15 * 60 - 460);
        QCOMPARE(json["days"][1]["tight"].toBool(), true);
        QVERIFY(json["days"][2]["spare_s"].isNull());
        QCOMPARE(json["weeks"].toArray().size(), 2);
        QCOMPARE(json["tight"].toArray(), QJsonArray{"2026-11-13"});
        qint64 conditioner = 0;
        for (const Job& job : p.jobs)
            conditioner += job.use.conditionerTotal().value;
        QCOMPARE(json["total"]["conditioner_ul"].toInteger(), conditioner);
    }
};

QTEST_GUILESS_MAIN(SeasonWordsTest)
#include "tst_season_words.moc"
