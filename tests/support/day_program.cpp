#include "tests/support/day_program.h"

#include "tests/support/small_day.h"

#include <QJsonObject>
#include <QSet>

#include <algorithm>
#include <map>

namespace support {

using namespace laneward::planning;

namespace {

/// Up = 0, down = 1.
constexpr int directions = 2;

struct Run {
    DayTask like;
    int first = 0;
    int count = 0;
    int pattern = 0;
    std::vector<Slot> slots;  ///< an end by the target
    int ways() const { return count > 1 ? directions : 1; }
    int firstLane(int way) const { return way == 0 ? first : first + count - 1; }
    int lastLane(int way) const { return way == 0 ? first + count - 1 : first; }
};

/// A go of a run by a machine: how long it takes, and when it may begin.
struct Work {
    bool possible = false;
    Sec length = 0;
    Sec earliest = 0;
    Sec latest = 0;
};

/// A sum of variables.
class Sum {
public:
    Sum& add(Sec factor, const QString& name) {
        m_text += QStringLiteral(" %1 %2 %3\n").arg(QLatin1Char(factor < 0 ? '-' : '+')).arg(std::abs(factor)).arg(name);
        m_parts.insert(name, double(factor));
        return *this;
    }
    bool isEmpty() const { return m_text.isEmpty(); }
    QString text() const { return m_text; }
    QJsonObject parts() const { return m_parts; }

private:
    QString m_text;
    QJsonObject m_parts;
};

class Writer {
public:
    explicit Writer(const DayProblem& day) : m_day(day) {}

    DayProgram write() {
        findRuns();
        m_works.resize(m_day.machines.size());
        for (size_t m = 0; m < m_works.size(); ++m) {
            for (const Run& run : m_runs)
                m_works[m].push_back(workOf(m_day.machines[m], run));
        }
        const int n = int(m_runs.size());
        for (int r = 0; r < n; ++r)
            writeRun(r);
        for (int m = 0; m < int(m_works.size()); ++m)
            writeMachine(m);
        for (int a = 0; a < n; ++a) {
            for (int b = 0; b < n; ++b) {
                if (a != b) writeOrder(a, b);
            }
        }
        // Implied by the times; the solver's bounds are better for it.
        for (const auto& [pair, ways] : m_neighbours)
            row(ways, "<=", 1);
        DayProgram program;
        program.rows = QStringLiteral("Minimize\n obj: 0 %1\nSubject To\n").arg(begin(0)) + m_rows +
                       QStringLiteral("Binaries\n") + m_binaries.join(u'\n') + QStringLiteral("\nEnd\n");
        program.constants.back() = m_freshest;
        for (const Sum& sum : {m_outings, m_changes, m_crossed, m_freshness})
            program.objectives.append(sum.parts());
        program.runs = n;
        return program;
    }

private:
    const DayMachine& machine(int m) const { return m_day.machines[size_t(m)]; }
    const Run& run(int r) const { return m_runs[size_t(r)]; }
    const Work& work(int m, int r) const { return m_works[size_t(m)][size_t(r)]; }
    int machines() const { return int(m_works.size()); }

    static QString begin(int r) { return QStringLiteral("b%1").arg(r); }
    static QString does(int m, int r, int way) { return QStringLiteral("z%1_%2_%3").arg(m).arg(r).arg(way); }
    static QString firstOf(int m, int r) { return QStringLiteral("f%1_%2").arg(m).arg(r); }
    static QString lastOf(int m, int r) { return QStringLiteral("l%1_%2").arg(m).arg(r); }
    static QString home(int m, int a, int b) { return QStringLiteral("y%1_%2_%3").arg(m).arg(a).arg(b); }
    static QString within(int slot, int r) { return QStringLiteral("w%1_%2").arg(slot).arg(r); }
    static QString on(int m, int a, int aWay, int b, int bWay) {
        return QStringLiteral("x%1_%2_%3_%4_%5").arg(m).arg(a).arg(aWay).arg(b).arg(bWay);
    }

    void row(const Sum& sum, const char* sign, Sec value) {
        if (sum.isEmpty() && (value == 0 || *sign == '<')) return;
        m_rows += QStringLiteral(" c%1:\n%2 %3 %4\n").arg(++m_count).arg(sum.text(), QLatin1String(sign)).arg(value);
    }

    void findRuns() {
        const std::vector<int> runs = runOf(m_day);
        for (size_t t = 0; t < runs.size(); ++t) {
            const DayTask& task = m_day.tasks[t];
            if (runs[t] == int(m_runs.size())) {
                Run made{task, task.lane, 0, m_day.recipes[size_t(task.recipe)].pattern, {}};
                for (int s = task.firstSlot; s < task.firstSlot + task.slotCount; ++s) {
                    const Slot& slot = m_day.slots[size_t(s)];
                    made.slots.push_back({slot.begin, std::min(slot.end, task.target)});
                }
                m_runs.push_back(made);
            }
            ++m_runs.back().count;
        }
    }

    Work workOf(const DayMachine& m, const Run& run) const {
        Work work;
        const Sec lane = m.lane[size_t(run.like.recipe)];
        if (lane < 0 || run.slots.empty()) return work;
        work.length = lane * run.count + m.next * (run.count - 1);
        const Slot& paid = m_day.shifts[0].work;
        work.earliest = std::max({run.slots.front().begin, paid.begin + m.leave, run.like.earliestEnd - lane});
        work.latest = std::min(run.slots.back().end, paid.end - m.back) - work.length;
        work.possible = work.earliest <= work.latest;
        return work;
    }

    /// By one machine in one direction, within one slot, within what its machine allows.
    void writeRun(int r) {
        Sum once;
        Sum least;
        Sum most;
        least.add(1, begin(r));
        most.add(1, begin(r));
        for (int m = 0; m < machines(); ++m) {
            if (!work(m, r).possible) continue;
            for (int way = 0; way < run(r).ways(); ++way) {
                const QString z = does(m, r, way);
                m_binaries << z;
                once.add(1, z);
                least.add(-work(m, r).earliest, z);
                most.add(-work(m, r).latest, z);
                addFreshness(m, r, z);
            }
        }
        if (once.isEmpty()) once.add(0, begin(r));  // nobody can do it in time: no plan
        row(once, "=", 1);
        row(least, ">=", 0);
        row(most, "<=", 0);
        m_freshness.add(-Sec(run(r).like.fresh) * run(r).count, begin(r));
        m_freshest += Sec(run(r).like.fresh) * run(r).count * run(r).like.play;
        if (run(r).slots.size() > 1) writeSlots(r);
    }

    /// Lane k of `count` ends k+1 lanes and k moves after the go began.
    void addFreshness(int m, int r, const QString& z) {
        const Run& of = run(r);
        const Sec lane = machine(m).lane[size_t(of.like.recipe)];
        const Sec sum = of.count * lane + (lane + machine(m).next) * of.count * (of.count - 1) / 2;
        m_freshness.add(-of.like.fresh * sum, z);
    }

    void writeSlots(int r) {
        Sum one;
        Sum least;
        Sum most;
        least.add(1, begin(r));
        most.add(1, begin(r));
        for (int m = 0; m < machines(); ++m) {
            for (int way = 0; way < run(r).ways() && work(m, r).possible; ++way)
                most.add(work(m, r).length, does(m, r, way));
        }
        for (int s = 0; s < int(run(r).slots.size()); ++s) {
            m_binaries << within(s, r);
            one.add(1, within(s, r));
            least.add(-run(r).slots[size_t(s)].begin, within(s, r));
            most.add(-run(r).slots[size_t(s)].end, within(s, r));
        }
        row(one, "=", 1);
        row(least, ">=", 0);
        row(most, "<=", 0);
    }

    /// Every go of the machine follows another or is its first, and has one after it or is its last.
    void writeMachine(int m) {
        const int n = int(m_runs.size());
        Sum firsts;
        for (int r = 0; r < n; ++r) {
            if (!work(m, r).possible) continue;
            m_binaries << firstOf(m, r) << lastOf(m, r);
            firsts.add(1, firstOf(m, r));
            m_outings.add(1, firstOf(m, r));
        }
        row(firsts, "<=", 1);
        for (int r = 0; r < n; ++r) {
            if (work(m, r).possible) writeNeighbours(m, r);
        }
    }

    void writeNeighbours(int m, int r) {
        const int n = int(m_runs.size());
        Sum before;
        Sum after;
        before.add(1, firstOf(m, r));
        after.add(1, lastOf(m, r));
        for (int o = 0; o < n; ++o) {
            if (canGoHome(m, o, r)) before.add(1, home(m, o, r));
            if (canGoHome(m, r, o)) after.add(1, home(m, r, o));
        }
        for (int way = 0; way < run(r).ways(); ++way) {
            Sum in;
            Sum out;
            for (int o = 0; o < n; ++o) {
                for (int oWay = 0; oWay < run(o).ways(); ++oWay) {
                    if (canGoOn(m, o, oWay, r, way)) {
                        in.add(1, on(m, o, oWay, r, way));
                        before.add(1, on(m, o, oWay, r, way));
                    }
                    if (canGoOn(m, r, way, o, oWay)) {
                        out.add(1, on(m, r, way, o, oWay));
                        after.add(1, on(m, r, way, o, oWay));
                    }
                }
            }
            if (!in.isEmpty()) row(in.add(-1, does(m, r, way)), "<=", 0);
            if (!out.isEmpty()) row(out.add(-1, does(m, r, way)), "<=", 0);
            before.add(-1, does(m, r, way));
            after.add(-1, does(m, r, way));
        }
        row(before, "=", 0);
        row(after, "=", 0);
    }

    Sec moveFor(int m, int a, int aWay, int b, int bWay) const {
        const int lanes = std::abs(run(a).lastLane(aWay) - run(b).firstLane(bWay));
        return machine(m).next + machine(m).cross * (lanes - 1);
    }

    /// Who would wait as long as the way home and back takes goes home.
    Sec patience(int m) const { return machine(m).leave + machine(m).back - 1; }

    bool canGoOn(int m, int a, int aWay, int b, int bWay) const {
        const Work& first = work(m, a);
        const Work& second = work(m, b);
        if (a == b || !first.possible || !second.possible) return false;
        const Sec gap = first.length + moveFor(m, a, aWay, b, bWay);
        return first.earliest + gap <= second.latest && first.latest + gap + patience(m) >= second.earliest;
    }

    bool canGoHome(int m, int a, int b) const {
        const Work& first = work(m, a);
        const Work& second = work(m, b);
        if (a == b || !first.possible || !second.possible) return false;
        return first.earliest + first.length + machine(m).back + machine(m).leave <= second.latest;
    }

    /// All ways in which b may come right after a, what they cost, and the times that follow.
    void writeOrder(int a, int b) {
        Sum soonest;  // b - end of a - gaps - far * ways >= -far
        Sum waits;    // b - end of a - gaps - patience + far * ways <= far
        const Sec apart = farthest(a, b, true);
        const Sec late = farthest(b, a, false);
        Sum& ways = m_neighbours[{std::min(a, b), std::max(a, b)}];
        bool any = false;
        for (int m = 0; m < machines(); ++m) {
            const bool changes = run(a).pattern != run(b).pattern;
            if (canGoHome(m, a, b)) {
                any = true;
                ways.add(1, home(m, a, b));
                m_binaries << home(m, a, b);
                m_outings.add(1, home(m, a, b));
                if (changes) m_changes.add(1, home(m, a, b));
                soonest.add(-(machine(m).back + machine(m).leave) - apart, home(m, a, b));
            }
            for (int aWay = 0; aWay < run(a).ways(); ++aWay) {
                for (int bWay = 0; bWay < run(b).ways(); ++bWay) {
                    if (!canGoOn(m, a, aWay, b, bWay)) continue;
                    any = true;
                    const QString x = on(m, a, aWay, b, bWay);
                    ways.add(1, x);
                    m_binaries << x;
                    if (changes) m_changes.add(1, x);
                    const int crossed = std::abs(run(a).lastLane(aWay) - run(b).firstLane(bWay)) - 1;
                    if (crossed > 0) m_crossed.add(crossed, x);
                    const Sec move = moveFor(m, a, aWay, b, bWay);
                    soonest.add(-move - apart, x);
                    waits.add(-move - patience(m) + late, x);
                }
            }
        }
        if (!any) return;
        row(fromEnd(soonest, a, b), ">=", -apart);
        if (!waits.isEmpty()) row(fromEnd(waits, a, b), "<=", late);
    }

    /// `sum` and the begin of b less the end of a.
    Sum fromEnd(Sum sum, int a, int b) const {
        sum.add(1, begin(b)).add(-1, begin(a));
        for (int m = 0; m < machines(); ++m) {
            for (int way = 0; way < run(a).ways() && work(m, a).possible; ++way)
                sum.add(-work(m, a).length, does(m, a, way));
        }
        return sum;
    }

    /// The most by which a's end can lie behind b's begin; or, with a's begin and b's end, a behind b.
    Sec farthest(int a, int b, bool endOfA) const {
        Sec most = 0;
        for (int i = 0; i < machines(); ++i) {
            for (int j = 0; j < machines(); ++j) {
                const Work& x = work(i, a);
                const Work& y = work(j, b);
                if (!x.possible || !y.possible) continue;
                most = std::max(most, endOfA ? x.latest + x.length - y.earliest : x.latest - y.earliest - y.length);
            }
        }
        return most;
    }

    const DayProblem& m_day;
    std::vector<Run> m_runs;
    std::vector<std::vector<Work>> m_works;  ///< by machine, run
    QString m_rows;
    QStringList m_binaries;
    int m_count = 0;
    std::map<std::pair<int, int>, Sum> m_neighbours;  ///< the ways in which either of two comes right after the other
    Sum m_outings;
    Sum m_changes;
    Sum m_crossed;
    Sum m_freshness;
    Sec m_freshest = 0;
};

bool isPlain(const DayMachine& m, const Slot& paid) {
    const auto disturbs = [&](const Slot& s) { return s.overlaps(paid); };
    return m.attended && m.outings.empty() && m.runs.empty() && m.barred.isEmpty() &&
           std::none_of(m.closed.begin(), m.closed.end(), disturbs) &&
           std::all_of(m.full.begin(), m.full.end(), [](std::int64_t room) { return room == endless; });
}

}  // namespace

DayProblem withPlenty(DayProblem problem) {
    for (DayMachine& m : problem.machines) {
        m.full.fill(endless);
        m.begin.fill(endless);
    }
    for (DayShift& shift : problem.shifts)
        shift.people = std::max(shift.people, int(problem.machines.size()));
    return problem;
}

std::optional<DayProgram> programOf(const DayProblem& problem) {
    if (problem.tasks.empty() || problem.shifts.size() != 1) return std::nullopt;
    const DayShift& shift = problem.shifts[0];
    if (shift.people < int(problem.machines.size())) return std::nullopt;
    for (const DayMachine& m : problem.machines) {
        if (!isPlain(m, shift.work)) return std::nullopt;
    }
    QSet<int> lanes;
    for (const DayTask& task : problem.tasks) {
        if (lanes.contains(task.lane) || task.twice || problem.recipes[size_t(task.recipe)].pattern < 0) return std::nullopt;
        lanes.insert(task.lane);
    }
    return Writer(problem).write();
}

}  // namespace support
