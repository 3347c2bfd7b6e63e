#include "tests/support/small_day.h"

#include "tests/support/random_centre.h"

#include <algorithm>
#include <map>
#include <random>

namespace support {

using namespace laneward;
using namespace laneward::planning;

namespace {

class Maker {
public:
    explicit Maker(unsigned seed) : m_generator(seed) {}

    DayProblem make(int lanes) {
        m_day.length = 90;
        m_crowded = pick(1, 3) == 1;
        const int patterns = pick(1, 2);
        for (int p = 0; p < patterns; ++p)
            m_day.recipes.push_back({Treatment::CleanAndCondition, p});
        int lane = pick(1, 4);
        while (int(m_day.tasks.size()) < lanes) {
            const int count = std::min(pick(1, 3), lanes - int(m_day.tasks.size()));
            addRun(lane, count, pick(0, patterns - 1));
            lane += count + (pick(1, 3) == 1 ? pick(1, 3) : 0);
        }
        const bool scarce = pick(1, 4) == 1;
        const int machines = pick(1, 2);
        for (int m = 0; m < machines; ++m)
            addMachine(lanes, scarce);
        const Sec begin = pick(0, 12);
        const Sec end = pick(70, 88);
        m_day.shifts.push_back({{begin, end}, {std::max<Sec>(0, begin - 2), std::min<Sec>(90, end + 2)}, pick(1, 2)});
        return m_day;
    }

private:
    int pick(int low, int high) { return between(m_generator, low, high); }

    void addRun(int lane, int count, int recipe) {
        DayTask task;
        task.recipe = recipe;
        task.play = pick(40, 80);
        task.due = task.play - 3;
        task.target = task.due - 4;
        task.scored = true;
        task.onlyHere = true;
        task.fresh = pick(1, 5) == 1 ? 2 : 1;
        const Sec free = m_crowded ? pick(8, 20) : pick(15, 40);
        std::vector<Slot> slots{{task.play - free, task.play}};
        if (pick(1, 5) == 1) slots.insert(slots.begin(), {task.play - free - 20, task.play - free - 6});
        for (int i = 0; i < count; ++i) {
            task.lane = lane + i;
            task.firstSlot = int(m_day.slots.size());
            task.slotCount = int(slots.size());
            m_day.slots.insert(m_day.slots.end(), slots.begin(), slots.end());
            m_day.tasks.push_back(task);
        }
    }

    void addMachine(int lanes, bool scarce) {
        DayMachine m;
        m.leave = pick(2, 4);
        m.back = pick(1, 3);
        m.next = 1;
        m.cross = pick(0, 1);
        m.steps = {2, 1, 1, 6, 2};
        m.full.fill(endless);
        // Two runs of lanes are more than the tank holds, in some houses.
        m.full[0] = scarce ? std::max(2, lanes - 1) * 10 : endless;
        m.begin = m.full;
        for (const DayRecipe& recipe : m_day.recipes) {
            m.lane.push_back(pick(2, 4));
            Stock use{};
            use[0] = 10;
            m.use.push_back(use);
            (void)recipe;
        }
        m_day.machines.push_back(m);
    }

    std::mt19937 m_generator;
    DayProblem m_day;
    bool m_crowded = false;
};

/// One lane worked by one machine, in the order of one person or of one machine.
struct Visit {
    int task = 0;
    int machine = 0;
    bool leaves = false;  ///< first of an outing
    bool refills = false;
    bool joined = false;  ///< goes on without a pause
};

Score plus(Score a, const Score& b) {
    for (size_t i = 0; i < a.size(); ++i)
        a[i] += b[i];
    return a;
}

class Trial {
public:
    Trial(const DayProblem& day, bool dividing) : m_day(day), m_dividing(dividing), m_runs(runOf(day)) {
        m_single = day.machines.size() > 1 && day.shifts[0].people == 1;
    }

    std::optional<Score> best() {
        const unsigned all = (1U << m_day.tasks.size()) - 1;
        if (m_single) {
            // One person: all outings of all machines stand in one order.
            std::map<unsigned, Score> best;
            extend({}, 0, -1, best);
            return best.contains(all) ? std::optional(best[all]) : std::nullopt;
        }
        std::vector<std::map<unsigned, Score>> byMachine(m_day.machines.size());
        for (size_t m = 0; m < byMachine.size(); ++m) {
            byMachine[m][0] = {};
            extend({}, 0, int(m), byMachine[m]);
        }
        if (byMachine.size() == 1) byMachine.push_back({{0, Score{}}});
        std::optional<Score> least;
        for (const auto& [set, score] : byMachine[0]) {
            const auto rest = byMachine[1].find(all & ~set);
            if (rest == byMachine[1].end()) continue;
            const Score total = plus(score, rest->second);
            if (!least || total < *least) least = total;
        }
        return least;
    }

private:
    const DayTask& task(const Visit& v) const { return m_day.tasks[size_t(v.task)]; }
    const DayMachine& machine(const Visit& v) const { return m_day.machines[size_t(v.machine)]; }
    Sec laneTime(const Visit& v) const { return machine(v).lane[size_t(task(v).recipe)]; }

    /// A run that was begun is finished first, lane by lane in one direction, where runs stay whole.
    bool keepsRunWhole(const std::vector<Visit>& order, unsigned done, Visit& next) const {
        if (order.empty()) return true;
        const Visit& last = order.back();
        // Nobody waits from lane to lane of one run, divided or not.
        next.joined = !next.leaves && !next.refills && m_runs[size_t(next.task)] == m_runs[size_t(last.task)];
        if (m_dividing) return true;
        bool unfinished = false;
        for (size_t t = 0; t < m_runs.size(); ++t)
            unfinished = unfinished || (m_runs[t] == m_runs[size_t(last.task)] && !(done & (1U << t)));
        if (!unfinished) return isEndOfRun(next.task);
        const int step = next.task - last.task;
        const bool begun = order.size() > 1 && m_runs[size_t(order[order.size() - 2].task)] == m_runs[size_t(last.task)];
        return m_runs[size_t(next.task)] == m_runs[size_t(last.task)] && std::abs(step) == 1 && next.machine == last.machine &&
               !next.leaves && !next.refills && (!begun || step == last.task - order[order.size() - 2].task);
    }

    bool isEndOfRun(int t) const {
        const auto inRun = [&](int o) { return o >= 0 && o < int(m_runs.size()) && m_runs[size_t(o)] == m_runs[size_t(t)]; };
        return !inRun(t - 1) || !inRun(t + 1);
    }

    bool isFinished(const std::vector<Visit>& order, unsigned done) const {
        if (m_dividing || order.empty()) return true;
        for (size_t t = 0; t < m_runs.size(); ++t) {
            if (m_runs[t] == m_runs[size_t(order.back().task)] && !(done & (1U << t))) return false;
        }
        return true;
    }

    void extend(const std::vector<Visit>& order, unsigned done, int only, std::map<unsigned, Score>& best) {
        if (!order.empty() && isFinished(order, done) && stocksHold(order)) {
            if (const auto score = timed(order)) {
                const auto known = best.find(done);
                if (known == best.end() || *score < known->second) best[done] = *score;
            }
        }
        for (int t = 0; t < int(m_day.tasks.size()); ++t) {
            if (done & (1U << t)) continue;
            for (int m = 0; m < int(m_day.machines.size()); ++m) {
                if (only >= 0 && m != only) continue;
                for (bool leaves : {true, false}) {
                    if (!leaves && (order.empty() || order.back().machine != m)) continue;
                    for (bool refills : {false, true}) {
                        if (refills && m_day.machines[size_t(m)].full[0] == endless) continue;
                        Visit next{t, m, leaves, refills, false};
                        if (order.empty() ? !m_dividing && !isEndOfRun(t) : !keepsRunWhole(order, done, next)) continue;
                        std::vector<Visit> longer = order;
                        longer.push_back(next);
                        extend(longer, done | (1U << t), only, best);
                    }
                }
            }
        }
    }

    /// Nothing runs out, and no refill could be left out.
    bool stocksHold(const std::vector<Visit>& order) const {
        for (int m = 0; m < int(m_day.machines.size()); ++m) {
            if (m_day.machines[size_t(m)].full[0] == endless) continue;
            std::vector<std::int64_t> taken{0};
            for (const Visit& v : order) {
                if (v.machine != m) continue;
                if (v.refills) taken.push_back(0);
                taken.back() += 10;
            }
            const std::int64_t full = m_day.machines[size_t(m)].full[0];
            for (size_t k = 0; k < taken.size(); ++k) {
                if (taken[k] > full) return false;
                if (k > 0 && taken[k - 1] + taken[k] <= full) return false;
            }
        }
        return true;
    }

    /// The best times of one order: for every second at which a lane could begin, the best score up to there.
    std::optional<Score> timed(const std::vector<Visit>& order) const {
        std::map<Sec, Score> reached;
        for (size_t i = 0; i < order.size(); ++i) {
            std::map<Sec, Score> next;
            for (Sec t = 0; t < m_day.length; ++t) {
                if (!isFree(order[i], t)) continue;
                std::optional<Score> least;
                if (i == 0) {
                    if (const auto cost = leaving(order[i], t, -1)) least = *cost;
                }
                for (const auto& [before, score] : reached) {
                    const auto cost = i == 0 ? std::nullopt : between(order[i - 1], before, order[i], t);
                    if (cost && (!least || plus(score, *cost) < *least)) least = plus(score, *cost);
                }
                if (least) next[t] = plus(*least, laneCost(order[i], t));
            }
            reached = std::move(next);
        }
        std::optional<Score> best;
        for (const auto& [t, score] : reached) {
            const auto cost = coming(order.back(), t);
            if (cost && (!best || plus(score, *cost) < *best)) best = plus(score, *cost);
        }
        if (!best) return std::nullopt;
        Score total = *best;
        total[6] += changes(order);
        return total;
    }

    bool isFree(const Visit& v, Sec t) const {
        for (int s = task(v).firstSlot; s < task(v).firstSlot + task(v).slotCount; ++s) {
            const Slot& slot = m_day.slots[size_t(s)];
            if (slot.begin <= t && t + laneTime(v) <= slot.end) return true;
        }
        return false;
    }

    Score laneCost(const Visit& v, Sec t) const {
        Score score{};
        const Sec end = t + laneTime(v);
        score[2] = 1;
        if (end > task(v).due) score[1] = end - task(v).due;
        if (end > task(v).target && end <= task(v).due) score[4] = end - task(v).target;
        score[8] = task(v).fresh * (task(v).play - end);
        return score;
    }

    /// Leaving the bay for `v` at `t`, not before `from`.
    std::optional<Score> leaving(const Visit& v, Sec t, Sec from) const {
        const Sec begin = t - machine(v).leave - (v.refills ? machine(v).steps[0] : 0);
        const DayShift& shift = m_day.shifts[0];
        if (begin < from || begin < shift.allowance.begin) return std::nullopt;
        Score score{};
        score[5] = 1;
        score[3] = std::max<Sec>(0, shift.work.begin - begin);
        return score;
    }

    std::optional<Score> coming(const Visit& v, Sec t) const {
        const Sec end = t + laneTime(v) + machine(v).back;
        const DayShift& shift = m_day.shifts[0];
        if (end > shift.allowance.end) return std::nullopt;
        Score score{};
        score[3] = std::max<Sec>(0, end - shift.work.end);
        return score;
    }

    std::optional<Score> between(const Visit& a, Sec ta, const Visit& b, Sec tb) const {
        if (b.leaves) {
            const auto home = coming(a, ta);
            const auto out = leaving(b, tb, ta + laneTime(a) + machine(a).back);
            return home && out ? std::optional(plus(*home, *out)) : std::nullopt;
        }
        const int lanes = std::abs(task(a).lane - task(b).lane);
        const Sec ready = ta + laneTime(a) + (lanes == 0 ? 0 : machine(b).next + machine(b).cross * (lanes - 1)) +
                          (b.refills ? machine(b).steps[0] : 0);
        const Sec wait = tb - ready;
        // Who would wait as long as the way home and back takes goes home.
        if (wait < 0 || wait >= machine(b).leave + machine(b).back || (b.joined && wait > 0)) return std::nullopt;
        Score score{};
        score[7] = std::max(0, lanes - 1);
        return score;
    }

    Sec changes(const std::vector<Visit>& order) const {
        Sec sum = 0;
        for (int m = 0; m < int(m_day.machines.size()); ++m) {
            int last = -1;
            for (const Visit& v : order) {
                if (v.machine != m) continue;
                const int pattern = m_day.recipes[size_t(task(v).recipe)].pattern;
                sum += last >= 0 && pattern != last ? 1 : 0;
                last = pattern;
            }
        }
        return sum;
    }

    const DayProblem& m_day;
    bool m_dividing;
    bool m_single = false;
    std::vector<int> m_runs;
};

}  // namespace

DayProblem smallDay(unsigned seed, int lanes) { return Maker(seed).make(lanes); }

std::vector<int> runOf(const DayProblem& problem) {
    std::vector<int> runs;
    for (size_t t = 0; t < problem.tasks.size(); ++t) {
        const DayTask& task = problem.tasks[t];
        const DayTask& before = problem.tasks[t == 0 ? 0 : t - 1];
        const auto slots = [&](const DayTask& x) {
            return std::vector<Slot>(problem.slots.begin() + x.firstSlot, problem.slots.begin() + x.firstSlot + x.slotCount);
        };
        const bool same = t > 0 && task.lane == before.lane + 1 && task.recipe == before.recipe && task.play == before.play &&
                          task.fresh == before.fresh && slots(task) == slots(before);
        runs.push_back(t == 0 ? 0 : runs.back() + (same ? 0 : 1));
    }
    return runs;
}

std::optional<Score> bestByTrying(const DayProblem& problem, bool dividing) { return Trial(problem, dividing).best(); }

}  // namespace support
