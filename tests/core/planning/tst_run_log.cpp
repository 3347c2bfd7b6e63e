#include "core/planning/run_log.h"

#include <QTest>

using namespace laneward;

namespace {

RunLog logOf(const char* id, std::int64_t begin, Treatment t, const char* pattern, std::vector<int> lanes) {
    RunLog log;
    log.id = {QString::fromLatin1(id)};
    log.treatment = t;
    if (pattern) log.pattern = PatternId{QString::fromLatin1(pattern)};
    for (int lane : lanes) {
        log.lanes.push_back({lane, {{begin}, {begin + 60}}});
        begin += 60;
    }
    log.time = {log.lanes.front().time.begin, log.lanes.back().time.end};
    return log;
}

}  // namespace

class TestRunLog : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void correctionsReplace() {
        RunLog first = logOf("a", 100, Treatment::CleanAndCondition, "p1", {1, 2});
        RunLog second = logOf("b", 100, Treatment::CleanAndCondition, "p2", {1});
        second.corrects = first.id;
        RunLog third = second;
        third.id = {"c"};
        third.corrects = second.id;
        third.result = RunResult::Void;
        QCOMPARE(standing({first}).size(), size_t(1));
        QCOMPARE(standing({second, first}).size(), size_t(1));
        QCOMPARE(standing({second, first}).front().id.value, QString("b"));
        QVERIFY(standing({first, second, third}).empty());
    }

    void orderIsByEndThenId() {
        const RunLog late = logOf("a", 500, Treatment::CleanOnly, nullptr, {1});
        const RunLog y = logOf("y", 100, Treatment::CleanOnly, nullptr, {2});
        const RunLog x = logOf("x", 100, Treatment::CleanOnly, nullptr, {3});
        const auto logs = standing({late, y, x});
        QCOMPARE(logs[0].id.value + logs[1].id.value + logs[2].id.value, QString("xya"));
    }

    void lastTreatmentOfEachLane() {
        const auto logs = standing({logOf("a", 0, Treatment::CleanAndCondition, "p1", {1, 2, 3}),
                                    logOf("b", 1000, Treatment::ConditionOnly, "p1", {1}),
                                    logOf("c", 2000, Treatment::CleanOnly, nullptr, {2})});
        const auto last = lastTreatments(logs, {10'000});
        QCOMPARE(last.size(), size_t(3));
        QCOMPARE(last[0], (LaneTreatment{1, Treatment::ConditionOnly, PatternId{"p1"}, {1060}}));
        QCOMPARE(last[1], (LaneTreatment{2, Treatment::CleanOnly, std::nullopt, {2060}}));
        QCOMPARE(last[2], (LaneTreatment{3, Treatment::CleanAndCondition, PatternId{"p1"}, {180}}));
    }

    void onlyWhatEndedByThen() {
        const auto logs = standing({logOf("a", 0, Treatment::CleanAndCondition, "p1", {1, 2})});
        QCOMPARE(lastTreatments(logs, {60}).size(), size_t(1));
        QCOMPARE(lastTreatments(logs, {59}).size(), size_t(0));
        QCOMPARE(lastTreatments(logs, {120}).size(), size_t(2));
    }

    void conditionOnlyKeepsWhatIsThere() {
        const auto logs = standing(
            {logOf("a", 0, Treatment::CleanAndCondition, "p1", {1}), logOf("b", 100, Treatment::ConditionOnly, "p2", {1})});
        QCOMPARE(*lastTreatments(logs, {1000}).front().pattern, PatternId{"p1"});
    }
};

QTEST_GUILESS_MAIN(TestRunLog)
#include "tst_run_log.moc"
