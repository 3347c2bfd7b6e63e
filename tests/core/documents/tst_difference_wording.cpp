// What a change would do, in words: every kind of line, signs, units, and how sure the answer is.
#include "core/documents/difference_wording.h"

#include <QTest>

using namespace laneward;

namespace {

using Kind = DifferenceLine::Kind;

const DateRange days{QDate(2026, 11, 12), QDate(2026, 12, 9)};
constexpr Instant evening{1'794'504'600};  // Thursday 2026-11-12, 17:30 in London

Speech plain(UnitSystem units = UnitSystem::Metric) { return {QLocale::c(), *Zone::load("Europe/London"), units}; }

std::vector<Pattern> patterns() {
    Pattern reed;
    reed.id = {"reed"};
    reed.name = "Reed 38";
    return {reed};
}

Job job(Instant begin, int first, int last) {
    Job job;
    job.date = days.first;
    job.machine = {"m1"};
    job.time = {begin, begin + minutes(30)};
    job.pattern = PatternId{"reed"};
    for (int lane = first; lane <= last; ++lane)
        job.lanes.push_back({lane, job.time});
    return job;
}

Shortfall lack(bool unmet) {
    Shortfall lack;
    lack.title = "Thursday %1";  // never read as a marker
    lack.playBegins = evening + hours(1);
    lack.lanes = LaneSet::range(1, 8);
    lack.unmet = unmet;
    lack.missing = minutes(9);
    return lack;
}

QStringList linesOf(const DifferenceWords& words, Kind kind) {
    QStringList lines;
    for (const DifferenceLine& line : words.lines) {
        if (line.kind == kind) lines << line.words;
    }
    return lines;
}

DifferenceWords said(const WhatIfAnswer& answer, Effort effort = Effort::Proven, UnitSystem units = UnitSystem::Metric) {
    return differenceWords(answer, effort, days, patterns(), plain(units));
}

}  // namespace

class TestDifferenceWording : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nothingChanges();
    void jobsComeGoAndMove();
    void movesWithoutAnotherTime();
    void whatIsMissedAndGained();
    void amountsAreSigned();
    void howSureItIs();
};

void TestDifferenceWording::nothingChanges() {
    const DifferenceWords words = said({});
    QCOMPARE(words.sentence, QString("no job changes"));
    QCOMPARE(words.lines.size(), size_t(2));
    QCOMPARE(words.lines.front().words,
             QString("2026-11-12 to 2026-12-09: treatments \u00b10, conditioner \u00b10, cleaner \u00b10"));
}

void TestDifferenceWording::jobsComeGoAndMove() {
    WhatIfAnswer answer;
    answer.difference.added = {job(evening + hours(3), 5, 5), job(evening, 1, 8)};
    answer.difference.removed = {job(evening + hours(1), 9, 12)};
    answer.difference.moved = {{job(evening, 3, 4), job(evening + minutes(15), 3, 4)}};
    const DifferenceWords words = said(answer);
    for (const char* part : {"2 job(s) added", "1 job(s) removed", "1 job(s) moved"})
        QVERIFY2(words.sentence.contains(part), qPrintable(words.sentence));
    QCOMPARE(linesOf(words, Kind::Added),
             (QStringList{QString("New Thu 2026-11-12, 17:30: clean and condition \u00b7 Reed 38 \u00b7 lanes 1-8"),
                          QString("New Thu 2026-11-12, 20:30: clean and condition \u00b7 Reed 38 \u00b7 lane 5")}));
    QCOMPARE(linesOf(words, Kind::Removed),
             QStringList{QString("No longer Thu 2026-11-12, 18:30: clean and condition \u00b7 Reed 38 \u00b7 lanes 9-12")});
    QCOMPARE(linesOf(words, Kind::Moved),
             QStringList{QString("From Thu 2026-11-12, 17:30 to 17:45: clean and condition \u00b7 Reed 38 \u00b7 lanes 3-4")});
}

void TestDifferenceWording::movesWithoutAnotherTime() {
    WhatIfAnswer answer;
    Job other = job(evening, 1, 2);
    other.machine = {"m2"};
    Job back = job(evening, 1, 2);
    std::swap(back.lanes.front().lane, back.lanes.back().lane);
    answer.difference.moved = {{job(evening, 1, 2), other}, {job(evening, 1, 2), back}};
    const QStringList lines = linesOf(said(answer), Kind::Moved);
    QVERIFY2(lines[0].startsWith("To another machine, Thu 2026-11-12, 17:30"), qPrintable(lines[0]));
    QVERIFY2(lines[1].startsWith("In another order, Thu 2026-11-12, 17:30"), qPrintable(lines[1]));
}

void TestDifferenceWording::whatIsMissedAndGained() {
    WhatIfAnswer worse;
    worse.difference.after.unmet = 1;
    worse.difference.after.late_s = 720;
    worse.shortfalls = {lack(true), lack(false)};
    const DifferenceWords words = said(worse);
    QVERIFY2(words.sentence.contains("1 more demand(s) unmet, 12 min more late"), qPrintable(words.sentence));
    const QStringList lines = linesOf(words, Kind::Missed);
    QCOMPARE(lines.size(), 2);
    QCOMPARE(lines[0],
             QString("Cannot be met: Thursday %1, fresh, lanes 1-8, play begins Thu 2026-11-12, 18:30; 9 min are missing"));
    QVERIFY2(lines[1].startsWith("Would be ready late: Thursday %1"), qPrintable(lines[1]));
    for (const DifferenceLine& line : words.lines)
        QCOMPARE(line.bad, line.kind == Kind::Missed);
    WhatIfAnswer better;
    better.difference.before.unmet = 2;
    better.difference.before.late_s = 60;
    const DifferenceWords gained = said(better);
    QVERIFY2(gained.sentence.contains("2 fewer demand(s) unmet, 1 min less late"), qPrintable(gained.sentence));
    for (const DifferenceLine& line : gained.lines)
        QVERIFY(!line.bad);
}

void TestDifferenceWording::amountsAreSigned() {
    WhatIfAnswer answer;
    answer.difference.after.treatments = 4;
    answer.difference.conditioner = millilitres(120);
    answer.difference.cleaner = -millilitres(80);
    QCOMPARE(linesOf(said(answer), Kind::Amounts),
             QStringList{"2026-11-12 to 2026-12-09: treatments +4, conditioner +120 mL, cleaner -80 mL"});
    // 120 mL / 29.5735295625 mL per fl oz = 4.06; 80 mL = 2.71 (NIST Handbook 44, from memory).
    QCOMPARE(linesOf(said(answer, Effort::Proven, UnitSystem::UsCustomary), Kind::Amounts),
             QStringList{"2026-11-12 to 2026-12-09: treatments +4, conditioner +4.1 fl oz, cleaner -2.7 fl oz"});
    answer.difference.after.treatments = -3;
    QVERIFY(linesOf(said(answer), Kind::Amounts).front().contains("treatments -3,"));
}

void TestDifferenceWording::howSureItIs() {
    WhatIfAnswer answer;
    QVERIFY(said(answer, Effort::First).lines.back().words.startsWith("First look"));
    QVERIFY(said(answer, Effort::Proven).lines.back().words.startsWith("The best plan found"));
    answer.proven = true;
    for (Effort effort : {Effort::First, Effort::Proven}) {
        QCOMPARE(int(said(answer, effort).lines.back().kind), int(Kind::Proof));
        QVERIFY(said(answer, effort).lines.back().words.startsWith("Proven"));
    }
}

QTEST_GUILESS_MAIN(TestDifferenceWording)
#include "tst_difference_wording.moc"
