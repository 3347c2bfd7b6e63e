// Planning around what is done, under way or confirmed.
#include "tests/support/planning_builders.h"

#include <QTest>

#include <algorithm>

using namespace support;

namespace {

State evening() {
    State s = house(8);
    s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2, 3, 4})};
    return s;
}

void commit(State& s, const Plan& p, JobState state) {
    for (const Job& job : p.jobs) {
        if (job.state != JobState::Proposed) continue;
        s.committed.push_back(job);
        s.committed.back().state = state;
    }
}

std::vector<Job> proposed(const Plan& p) {
    std::vector<Job> jobs;
    std::copy_if(p.jobs.begin(), p.jobs.end(), std::back_inserter(jobs),
                 [](const Job& j) { return j.state == JobState::Proposed; });
    return jobs;
}

}  // namespace

class TestCommitted : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void confirmedJobsSatisfy() {
        for (JobState state : {JobState::Confirmed, JobState::UnderWay, JobState::Done}) {
            State s = evening();
            const Plan first = planDay(s);
            commit(s, first, state);
            const Plan again = planDay(s);
            QCOMPARE(again.jobs, s.committed);
            QCOMPARE(again.objective().unmet, 0);
            QCOMPARE(again.objective().treatments, 4);
        }
    }

    void droppedJobsDoNot() {
        State s = evening();
        commit(s, planDay(s), JobState::Dropped);
        QCOMPARE(proposed(planDay(s)).size(), size_t(1));
    }

    void cutShortLeavesTheRest() {
        State s = evening();
        commit(s, planDay(s), JobState::CutShort);
        s.committed[0].lanes.resize(2);
        const Plan again = planDay(s, at(0, 17, 32));
        QCOMPARE(proposed(again).size(), size_t(1));
        QCOMPARE(proposed(again)[0].laneSet(), (LaneSet{3, 4}));
    }

    void newWorkGoesAround() {
        State s = evening();
        const Plan first = planDay(s);
        commit(s, first, JobState::Confirmed);
        s.series.push_back(eventOf("b", 0, {18, 0}, 120, {7, 8}));
        const Plan again = planDay(s);
        QCOMPARE(proposed(again).size(), size_t(1));
        QVERIFY(proposed(again)[0].steps.back().time.end <= first.jobs[0].time.begin);
        QCOMPARE(proposed(again)[0].outing, 2);
        QVERIFY(violationsOf(s, again).empty());
        QVERIFY(again.jobs[0].id != again.jobs[1].id);
    }

    void newWorkLeavesEnoughForWhatIsConfirmed() {
        State s = evening();
        s.levels = {fullLevels(s.centre.machines[0], limitsFromSettings(s.centre.machines[0]), at(0, 6))};
        s.levels[0].lanesLeft = 5;
        commit(s, planDay(s), JobState::Confirmed);  // takes four of the five
        s.series.push_back(eventOf("b", 0, {18, 0}, 120, {7, 8}));
        const Plan again = planDay(s);
        QVERIFY(hasStep(proposed(again)[0], StepKind::SwapPack));
        QVERIFY(violationsOf(s, again).empty());
        s.centre.machines[0].capacity.sparePacks = 0;
        const Plan charged = planDay(s);
        QVERIFY(violationsOf(s, charged).empty());
        QVERIFY(hasStep(proposed(charged)[0], StepKind::Charge));
    }

    void stillPlayingSlips() {
        // The event before on lanes 5-8 runs over; its own lanes wait, the confirmed job on lanes 1-4 stays.
        State s = evening();
        s.series.push_back(eventOf("before", 0, {15, 0}, 60, {5, 6, 7, 8}));
        s.series.back().demands.clear();
        s.series.push_back(eventOf("late", 0, {19, 0}, 60, {5, 6, 7, 8}));
        const Plan first = planDay(s);
        for (const Job& job : first.jobs) {
            if (job.laneSet().intersects({1, 2, 3, 4})) {
                s.committed.push_back(job);
                s.committed.back().state = JobState::Confirmed;
                s.committed.back().lanes.resize(4);
            }
        }
        Override slip;
        slip.original = {day0, {15, 0}};
        slip.duration = minutes(170);
        s.series[1].overrides.push_back(slip);
        const Plan again = planDay(s, at(0, 15, 30));
        for (const Job& job : proposed(again))
            QVERIFY(job.lanes.front().time.begin >= at(0, 18));
        QCOMPARE(again.objective().unmet, 0);
        QVERIFY(violationsOf(s, again).empty());
        QVERIFY(std::find(again.jobs.begin(), again.jobs.end(), s.committed[0]) != again.jobs.end());
    }

    void confirmedThatCannotBeIsSaid() {
        State s = evening();
        commit(s, planDay(s), JobState::Confirmed);
        QVERIFY(!has(planDay(s).findings, "plan.confirmed-breaks"));
        s.centre.outages.push_back({{"o"}, {2}, {}, at(0, 17), at(0, 17, 50), {}, 0});
        QVERIFY(has(planDay(s).findings, "plan.confirmed-breaks"));
    }

    void confirmedThatComesTooEarlyDoesNotSatisfy() {
        // Play on the lane slipped past the confirmed run: the lane needs another one.
        State s = evening();
        s.series.push_back(eventOf("before", 0, {15, 0}, 60, {1, 2, 3, 4}));
        s.series.back().demands.clear();
        commit(s, planDay(s), JobState::Confirmed);
        s.series.back().duration = minutes(150);
        const Plan again = planDay(s, at(0, 15, 30));
        QCOMPARE(again.objective().unmet, 0);
        QCOMPARE(proposed(again).size(), size_t(1));
        QVERIFY(proposed(again)[0].lanes.front().time.begin >= at(0, 17, 40));
    }

    void committedAttendanceBindsThePerson() {
        State s = evening();
        s.centre.machines.push_back(machineOf("m2"));
        commit(s, planDay(s), JobState::Confirmed);
        s.series.push_back(eventOf("b", 0, {18, 0}, 120, {7, 8}));
        const Plan again = planDay(s);
        const Job other = proposed(again)[0];
        QVERIFY(other.steps.back().time.end <= s.committed[0].time.begin);
        s.centre.shifts[0].people = 2;
        QCOMPARE(proposed(planDay(s))[0].time.end, at(0, 17, 35));
    }
};

QTEST_GUILESS_MAIN(TestCommitted)
#include "tst_committed.moc"
