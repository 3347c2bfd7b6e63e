// Work that could as well be done the evening before: it is shared between neighbouring days at the least price.
#include "core/planning/evenings_before.h"
#include "core/planning/fewest.h"
#include "core/planning/lane_runs.h"
#include "tests/support/planning_builders.h"
#include "tests/support/random_centre.h"

#include <QTest>

#include <map>
#include <random>

using namespace support;
using namespace laneward::planning;

namespace {

int treatmentsOn(const Plan& plan, int day) {
    int count = 0;
    for (const Job& job : plan.jobs)
        count += job.date == day0.addDays(day) ? int(job.lanes.size()) : 0;
    return count;
}

/// An evening with work for lanes 1 to 4, and a morning after it on lanes 5 to 8.
State eveningAndMorning() {
    State s = house(8);
    s.series = {eventOf("evening", 0, QTime(20, 0), 120, LaneSet::range(1, 4)),
                eventOf("before", 0, QTime(19, 0), 30, LaneSet::range(5, 8)),
                eventOf("morning", 1, QTime(10, 0), 120, LaneSet::range(5, 8))};
    s.series[1].demands = {asks(DemandKind::AsItIs, LaneSet::range(5, 8), nullptr)};
    s.series[2].demands[0].longestAge = hours(16);
    return s;
}

Plan planned(const State& s, int days = 2) { return plan(s, at(0, 12), {day0, day0.addDays(days - 1)}); }

/// All ways one after the other, as a peer of the recursion.
Score leastOfAll(const std::vector<std::vector<unsigned>>& choices, const std::function<DayPrice(int, unsigned, unsigned)>& price,
                 std::vector<unsigned> chosen = {}) {
    if (chosen.size() == choices.size()) {
        Score total{};
        for (size_t d = 0; d < choices.size(); ++d)
            total = sum(total, price(int(d), chosen[d], d + 1 < choices.size() ? chosen[d + 1] : 0).known);
        return total;
    }
    Score least;
    least.fill(std::numeric_limits<Sec>::max());
    for (unsigned s : choices[chosen.size()]) {
        std::vector<unsigned> more = chosen;
        more.push_back(s);
        least = std::min(least, leastOfAll(choices, price, more));
    }
    return least;
}

/// Two or three days: some evening events, and a morning after each night.
class RandomDays {
public:
    explicit RandomDays(unsigned seed) : m_generator(seed) {}

    State make() {
        State s = house(12);
        s.centre.shifts = {shiftOf("early", {8, 0}, {15, 0}), shiftOf("late", {15, 0}, {23, 0}, pick(1, 2))};
        for (int day = 0; day < 3; ++day) {
            for (int block = 0; block < 3; ++block) {
                const LaneSet lanes = LaneSet::range(4 * block + 1, 4 * block + 2 + pick(0, 2));
                if (pick(0, 2) > 0) add(s, day, QTime(pick(17, 19), 0), lanes, pick(0, 1) == 0);
                if (day > 0 && pick(0, 1) == 0) add(s, day, QTime(pick(9, 11), 30), lanes, true);
            }
        }
        return s;
    }

private:
    int pick(int low, int high) { return between(m_generator, low, high); }

    void add(State& s, int day, QTime begins, const LaneSet& lanes, bool fresh) {
        Series series = eventOf(QString("e%1").arg(s.series.size()), day, begins, 75, lanes);
        if (!fresh) series.demands = {asks(DemandKind::AsItIs, lanes, nullptr)};
        for (SurfaceDemand& demand : series.demands)
            demand.longestAge = hours(pick(14, 20));
        s.series.push_back(series);
    }

    std::mt19937 m_generator;
};

/// Every way to work each treatment's run on its latest day or the evening before, each day solved alone.
class EveryWay {
public:
    explicit EveryWay(const State& state)
        : m_state(state),
          m_occupancy(occupancyOf(state.series, state.centre, m_range)),
          m_demands(demandsOf(state, m_occupancy, at(0, 6), m_range)),
          m_ground(groundOf(state, m_occupancy, at(0, 6), m_range)) {}

    std::optional<Score> least() {
        const Fewest fewest = fewestTreatments(m_state, m_demands, m_occupancy, at(0, 6));
        // Lanes of one run go together: equal play, and neighbours.
        std::map<std::pair<Instant, int>, std::vector<OpenTreatment>> runs;
        for (const PlannedTreatment& t : fewest.chosen) {
            const Instant plays = m_demands.gaps[size_t(t.lane - 1)][t.gap].time.end;
            if (plays > m_ground.days.back()) continue;
            runs[{plays, (t.lane - 1) / 4}].push_back({t, int(m_ground.dayOf(plays - Seconds{1})), 1});
        }
        for (auto& [key, run] : runs)
            m_runs.push_back(std::move(run));
        if (m_runs.size() > 8) return std::nullopt;
        Score best;
        best.fill(std::numeric_limits<Sec>::max());
        for (unsigned earlier = 0; earlier < 1U << m_runs.size(); ++earlier) {
            const std::optional<Score> price = priceOfWay(earlier);
            if (!price) return std::nullopt;
            best = std::min(best, *price);
        }
        return best;
    }

private:
    std::optional<Score> priceOfWay(unsigned earlier) const {
        std::array<std::vector<const OpenTreatment*>, 3> days;
        for (size_t r = 0; r < m_runs.size(); ++r) {
            const int day = m_runs[r].front().day - (earlier & (1U << r) ? 1 : 0);
            for (const OpenTreatment& t : m_runs[r])
                days[size_t(std::max(0, day))].push_back(&t);
        }
        Score total{};
        for (int day = 0; day < 3; ++day) {
            DayStart start;
            start.dutyLeft.assign(m_ground.machines.size(), endless);
            std::vector<const OpenTreatment*>& treatments = days[size_t(day)];
            std::sort(treatments.begin(), treatments.end(), [](const OpenTreatment* a, const OpenTreatment* b) {
                return std::pair(a->what.lane, a->what.gap) < std::pair(b->what.lane, b->what.gap);
            });
            const DayProblem problem = dayProblem(m_ground, m_demands, treatments, day, start);
            const DaySolution solution = solveDay(problem, 20'000, {});
            const Score known = priceOf(solution.placement.score);
            if (known != priceOf(solution.bound)) return std::nullopt;
            total = sum(total, known);
        }
        return total;
    }

    const State& m_state;
    DateRange m_range{day0, day0.addDays(2)};
    Occupancy m_occupancy;
    DemandSet m_demands;
    Ground m_ground;
    std::vector<std::vector<OpenTreatment>> m_runs;
};

}  // namespace

class TestEveningsBefore : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void morningJoinsTheEveningsOuting() {
        const Plan p = planned(eveningAndMorning());
        QCOMPARE(treatmentsOn(p, 0), 8);
        QCOMPARE(treatmentsOn(p, 1), 0);
        QCOMPARE(p.objective().outings, std::int64_t{1});
        QVERIFY(p.days[0].proven && p.days[1].proven);
    }

    void morningStaysWhereItWouldBeTooOld() {
        State s = eveningAndMorning();
        s.series[2].demands[0].longestAge = hours(10);
        const Plan p = planned(s);
        QCOMPARE(treatmentsOn(p, 1), 4);
        QVERIFY(p.days[0].proven && p.days[1].proven);
    }

    void morningStaysWhereTheEveningHasNoWork() {
        State s = eveningAndMorning();
        s.series.erase(s.series.begin());
        const Plan p = planned(s);
        QCOMPARE(treatmentsOn(p, 0), 0);
        QCOMPARE(treatmentsOn(p, 1), 4);
        QVERIFY(p.days[1].proven);
    }

    void morningStaysWhereNobodyIsThereInTheEvening() {
        State s = eveningAndMorning();
        s.series[1].start.time = QTime(21, 0);
        s.series[1].duration = minutes(180);
        const Plan p = planned(s);
        QCOMPARE(treatmentsOn(p, 1), 4);
        QVERIFY(p.days[1].proven);
    }

    void sharingIsTheLeastOfAllWays() {
        std::mt19937 generator(7);
        for (int round = 0; round < 300; ++round) {
            const int days = between(generator, 1, 5);
            std::vector<std::vector<unsigned>> choices;
            for (int d = 0; d < days; ++d) {
                choices.push_back({0});
                for (unsigned s = 1; d > 0 && s < 4; ++s) {
                    if (between(generator, 0, 1) == 0) choices.back().push_back(s);
                }
            }
            std::map<std::tuple<int, unsigned, unsigned>, DayPrice> prices;
            const auto price = [&](int day, unsigned s, unsigned t) {
                const auto [place, isNew] = prices.try_emplace({day, s, t});
                if (isNew) {
                    place->second.known = {0, between(generator, 0, 3), 5, 0, 0, between(generator, 1, 4), 0, 0, 0};
                    place->second.least = place->second.known;
                }
                return place->second;
            };
            const Sharing sharing = leastSharing(choices, price);
            Score total{};
            for (int d = 0; d < days; ++d) {
                const unsigned next = d + 1 < days ? sharing.moved[size_t(d) + 1] : 0;
                total = sum(total, price(d, sharing.moved[size_t(d)], next).known);
            }
            QCOMPARE(total, leastOfAll(choices, price));
            QVERIFY(std::all_of(sharing.settled.begin(), sharing.settled.end(), [](bool sure) { return sure; }));
        }
    }

    void whatIsNotSureIsNotSettled() {
        const auto price = [](int day, unsigned s, unsigned) {
            DayPrice p{{0, 0, 5, 0, 0, 2, 0, 0, 0}, {0, 0, 5, 0, 0, 2, 0, 0, 0}};
            // Without its run the second day might take one outing less than is known.
            if (day == 1 && s == 1) p.least[score_part::Outings] = 1;
            return p;
        };
        const Sharing sharing = leastSharing({{0}, {0, 1}, {0}}, price);
        QCOMPARE(sharing.moved, std::vector<unsigned>(3, 0));
        QVERIFY(!sharing.settled[1]);
        QVERIFY(sharing.settled[2]);
    }

    /// The plan of three days against every way to share their work, each day solved alone.
    void planIsTheLeastOfAllWays() {
        int compared = 0;
        int shared = 0;
        for (unsigned seed = 1; seed <= 200; ++seed) {
            const State s = RandomDays(seed).make();
            const Plan p = plan(s, at(0, 6), {day0, day0.addDays(2)});
            if (std::any_of(p.days.begin(), p.days.end(), [](const DayPlan& day) { return !day.proven; })) continue;
            const std::optional<Score> least = EveryWay(s).least();
            if (!least) continue;
            const Objective o = p.objective();
            const Score own{o.unmet, o.late_s, o.treatments, o.overtime_s, o.tight_s, o.outings, 0, 0, 0};
            QVERIFY2(own == *least, qPrintable(QString("seed %1: %2 outings, least %3").arg(seed).arg(own[5]).arg((*least)[5])));
            ++compared;
            const auto early = [&](const Job& job) {
                return !job.neededBy.empty() && job.neededBy.front().playBegins > at(job.date.day() - 11, 5);
            };
            shared += std::any_of(p.jobs.begin(), p.jobs.end(), early) ? 1 : 0;
        }
        qInfo("three days against every way to share them: %d equal, in %d of them work is done the evening before", compared,
              shared);
        QVERIFY(compared >= 75);
        QVERIFY(shared >= 5);
    }
};

QTEST_GUILESS_MAIN(TestEveningsBefore)
#include "tst_evenings_before.moc"
