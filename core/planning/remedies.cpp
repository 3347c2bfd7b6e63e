#include "core/planning/shortfalls.h"

#include "core/planning/recursion.h"

#include <algorithm>

namespace laneward::planning {

namespace {

// Overtime and the time by which an event moves are told to five minutes, and no more than this is looked at.
constexpr std::int64_t stepMinutes = 5;
constexpr std::int64_t mostOvertime = 120 / stepMinutes;
constexpr std::int64_t mostMoved = 240 / stepMinutes;

/// In steps, at least one.
std::int64_t stepsFor(Seconds s) { return std::max<std::int64_t>(1, (s.value + stepMinutes * 60 - 1) / (stepMinutes * 60)); }

Seconds ofSteps(std::int64_t steps) { return minutes(steps * stepMinutes); }

/// What falls short in a plan of one day: of one occurrence and of all.
struct Short {
    int here = 0;
    std::int64_t unmet = 0;
    std::int64_t late = 0;
};

Short shortIn(const Plan& plan, const Shortfall& of) {
    Short sum;
    for (const Shortfall& s : plan.unmet) {
        if (s.series == of.series && s.original == of.original) sum.here += s.lanes.count();
    }
    const Objective objective = plan.objective();
    sum.unmet = objective.unmet;
    sum.late = objective.late_s;
    return sum;
}

class Advisor {
public:
    Advisor(const State& state, const Plan& plan, int tries, const Planner& planner)
        : m_state(state), m_plan(plan), m_tries(tries), m_planner(planner) {}

    std::vector<Remedy> remediesFor(const Shortfall& shortfall) {
        m_shortfall = &shortfall;
        m_date = dateOf(m_state.centre,
                        shortfall.demand == DemandKind::Stripped ? shortfall.playBegins - Seconds{1} : shortfall.playBegins);
        // What is only estimated looks at the shifts, which are the same in the state of any day.
        if (m_tries > 0 || m_day.centre.machines.empty()) m_day = dayState();
        m_remedies.clear();
        m_base.reset();
        if (m_state.centre.machines.empty()) return {};
        const bool time = because("short.no-time") || because("short.machine-busy");
        const bool staff = because("short.no-staff");
        if (m_tries <= 0) {
            if (time || staff) guess();
            return std::move(m_remedies);
        }
        // Cheapest first, so that tries which run out are spent on what costs least: minutes of the team, then what is asked of
        // the lanes, then what players feel, then what has to be found: a person, a machine. Common practice, no source.
        if (time || staff) overtime();
        if (time) shorterTreatment();
        if (time || staff) {
            moveEvent();
            fewerLanes();
            secondPerson();
        }
        if (time || because("short.barred") || because("short.out-of-service")) secondMachine();
        return std::move(m_remedies);
    }

private:
    bool because(const char* rule) const {
        const auto& reasons = m_shortfall->reasons;
        return std::any_of(reasons.begin(), reasons.end(), [&](const Finding& f) { return f.rule == rule; });
    }

    Instant dayBegin() const { return std::max(m_plan.now, dayOf(m_state.centre, m_date).begin); }

    /// The centre as it will be when the day begins, by the plan.
    State dayState() const {
        State day = m_state;
        const Instant begin = dayBegin();
        std::vector<RunLog> runs;
        for (const LaneTreatment& t : m_state.history) {
            runs.push_back({});
            runs.back().treatment = t.treatment;
            runs.back().pattern = t.pattern;
            runs.back().lanes = {{t.lane, {t.end, t.end}}};
        }
        // The history's own patterns stand, so a condition only there is told as what it left behind.
        for (RunLog& run : runs) {
            if (run.treatment == Treatment::ConditionOnly && run.pattern) run.treatment = Treatment::CleanAndCondition;
        }
        for (const Job& job : m_plan.jobs) {
            if (job.time.end > begin || job.state == JobState::Dropped) continue;
            runs.push_back({});
            runs.back().treatment = job.treatment;
            runs.back().pattern = job.pattern;
            runs.back().lanes = job.lanes;
        }
        day.history = lastTreatments(runs, begin);
        if (m_date != dateOf(m_state.centre, m_plan.now)) day.levels.clear();
        return day;
    }

    Short tried(const State& changed) const { return shortIn(m_planner(changed, dayBegin(), {m_date, m_date}), *m_shortfall); }

    bool helps(const State& changed) {
        if (m_tries <= 0) return false;
        if (!m_base) {
            m_base = tried(m_day);
            --m_tries;
        }
        --m_tries;
        const Short now = tried(changed);
        return now.here == 0 && std::pair(now.unmet, now.late) < std::pair(m_base->unmet, m_base->late);
    }

    void add(const char* rule, QString subject, std::vector<Value> values, Seconds by) {
        m_remedies.push_back({{Severity::Note, rule, std::move(subject), std::move(values)}, by, true});
    }

    Shift* shiftFor(State& state) const {
        const std::vector<ShiftSpan> spans = shiftsOn(state.centre, m_date);
        if (spans.empty()) return nullptr;
        const auto nearest = std::min_element(spans.begin(), spans.end(), [&](const ShiftSpan& a, const ShiftSpan& b) {
            return distance(a.work) < distance(b.work);
        });
        const auto found = std::find_if(state.centre.shifts.begin(), state.centre.shifts.end(),
                                        [&](const Shift& s) { return s.id == nearest->shift; });
        return found == state.centre.shifts.end() ? nullptr : &*found;
    }

    Seconds distance(const Span& work) const {
        const Instant t = m_shortfall->playBegins;
        if (t < work.begin) return work.begin - t;
        return t > work.end ? t - work.end : Seconds{0};
    }

    /// When enough has been tried: by the minutes that are missing, and not verified.
    void guess() {
        const Seconds missing = std::max(m_shortfall->missing, minutes(5));
        const Shift* shift = shiftFor(m_day);
        if (shift && because("short.no-staff")) {
            const Seconds more = ofSteps(stepsFor(missing));
            add("remedy.overtime", shift->name, {more, m_shortfall->playBegins - more}, more);
            m_remedies.back().verified = false;
        }
        if (m_shortfall->demand == DemandKind::Stripped) return;
        const Seconds later = ofSteps(stepsFor(missing));
        add("remedy.move-event", m_shortfall->title, {later, m_shortfall->playBegins + later}, later);
        m_remedies.back().verified = false;
    }

    struct Search {
        std::int64_t guess = 1;
        std::int64_t most = 1;
        bool doubtful = false;  ///< perhaps not even the most helps: that is tried first
    };

    /// The least number from 1 to the most that helps, each tried by planning; nothing when none was found. What helps is taken
    /// to help with more as well: where it does not, the answer still helps but a smaller one may too.
    std::optional<std::int64_t> least(const Search& search, const std::function<State(std::int64_t)>& changed) {
        if (search.doubtful && !helps(changed(search.most))) return std::nullopt;
        std::int64_t low = 0;  // does not help
        std::int64_t high = std::min(search.guess, search.most);
        const bool known = search.doubtful;
        while (!(known && high == search.most) && !helps(changed(high))) {
            if (high == search.most || m_tries <= 0) return known ? std::optional(search.most) : std::nullopt;
            low = high;
            high = std::min(high * 2, search.most);
        }
        // Just below the guess first: what is missing is known well where one job is late.
        std::int64_t middle = low == 0 ? high - 1 : low + (high - low) / 2;
        while (high - low > 1 && m_tries > 0) {
            (helps(changed(middle)) ? high : low) = middle;
            middle = low + (high - low) / 2;
        }
        return high;
    }

    State withOvertime(std::int64_t steps) const {
        State changed = m_day;
        if (Shift* shift = shiftFor(changed)) {
            shift->overtimeBefore += ofSteps(steps);
            shift->overtimeAfter += ofSteps(steps);
        }
        return changed;
    }

    void overtime() {
        if (!shiftFor(m_day)) return;
        const bool doubtful = !because("short.no-staff");
        const auto steps =
            least({stepsFor(m_shortfall->missing), mostOvertime, doubtful}, [&](std::int64_t n) { return withOvertime(n); });
        if (!steps) return;
        State changed = withOvertime(*steps);
        const Shift* shift = shiftFor(changed);
        const std::vector<ShiftSpan> spans = shiftsOn(changed.centre, m_date);
        const auto span = std::find_if(spans.begin(), spans.end(), [&](const ShiftSpan& s) { return s.shift == shift->id; });
        const bool before = m_shortfall->playBegins < span->work.begin + Seconds{span->work.length().value / 2};
        const Seconds more = ofSteps(*steps);
        add("remedy.overtime", shift->name, {more, before ? span->allowance.begin : span->allowance.end}, more);
    }

    void secondMachine() {
        State changed = m_day;
        Machine more = changed.centre.machines.front();
        more.id.value += u"+";
        changed.centre.machines.push_back(more);
        if (helps(changed))
            add("remedy.second-machine", m_state.centre.facts.name, {std::int64_t(changed.centre.machines.size())}, {});
    }

    void secondPerson() {
        State changed = m_day;
        Shift* shift = shiftFor(changed);
        if (!shift) return;
        ++shift->people;
        if (helps(changed)) add("remedy.second-person", shift->name, {std::int64_t{shift->people}}, {});
    }

    Series* seriesIn(State& state) const {
        const auto found =
            std::find_if(state.series.begin(), state.series.end(), [&](const Series& s) { return s.id == m_shortfall->series; });
        return found == state.series.end() ? nullptr : &*found;
    }

    void shorterTreatment() {
        State changed = m_day;
        Series* series = seriesIn(changed);
        if (!series || m_shortfall->demand != DemandKind::Fresh) return;
        for (SurfaceDemand& demand : series->demands) {
            if (demand.kind == DemandKind::Fresh && demand.least == Treatment::CleanAndCondition)
                demand.least = Treatment::ConditionOnly;
        }
        if (helps(changed)) add("remedy.shorter-treatment", m_shortfall->title, {std::int64_t(Treatment::ConditionOnly)}, {});
    }

    Override& overrideIn(Series& series) const {
        for (Override& change : series.overrides) {
            if (change.original == m_shortfall->original) return change;
        }
        series.overrides.push_back({});
        series.overrides.back().original = m_shortfall->original;
        return series.overrides.back();
    }

    const Occurrence* occurrence() const {
        for (const Occurrence& o : m_plan.occupancy.occurrences) {
            if (o.series == m_shortfall->series && o.original == m_shortfall->original) return &o;
        }
        return nullptr;
    }

    /// Without the last `dropped` of the lanes that fall short.
    LaneSet keptLanes(const LaneSet& all, std::int64_t dropped) const {
        LaneSet lacking;
        for (const Shortfall& other : m_plan.unmet) {
            if (other.series == m_shortfall->series && other.original == m_shortfall->original) lacking = lacking | other.lanes;
        }
        LaneSet kept = all;
        const std::vector<int> lanes = lacking.lanes();
        for (size_t i = lanes.size(); i-- > 0 && dropped > 0; --dropped)
            kept.remove(lanes[i]);
        return kept;
    }

    State withLanes(const LaneSet& kept) const {
        State changed = m_day;
        Series& series = *seriesIn(changed);
        // An override's lanes spread a single demand over all of them; what is asked stays with the lanes that keep it.
        overrideIn(series).lanes = kept;
        for (SurfaceDemand& demand : series.demands)
            demand.lanes = demand.lanes & kept;
        return changed;
    }

    void fewerLanes() {
        const Occurrence* o = occurrence();
        if (!seriesIn(m_day) || !o) return;
        const LaneSet without = keptLanes(o->lanes, o->lanes.count());
        const std::int64_t most = o->lanes.count() - without.count() - (without.isEmpty() ? 1 : 0);
        if (most < 1) return;
        const auto dropped = least({m_shortfall->unmet ? most : 1, most, false},
                                   [&](std::int64_t n) { return withLanes(keptLanes(o->lanes, n)); });
        if (!dropped) return;
        const LaneSet kept = keptLanes(o->lanes, *dropped);
        add("remedy.fewer-lanes", m_shortfall->title, {std::int64_t{kept.count()}, kept.text()}, {});
    }

    void moveEvent() {
        const Occurrence* o = occurrence();
        if (!o || m_shortfall->demand == DemandKind::Stripped || !seriesIn(m_day)) return;
        const auto steps = least({stepsFor(m_shortfall->missing), mostMoved, false}, [&](std::int64_t n) {
            State changed = m_day;
            Override& change = overrideIn(*seriesIn(changed));
            change.start = shifted(change.start.value_or(m_shortfall->original), ofSteps(n));
            return changed;
        });
        if (!steps) return;
        const Seconds later = ofSteps(*steps);
        add("remedy.move-event", m_shortfall->title, {later, o->booked.begin + later}, later);
    }

    const State& m_state;
    const Plan& m_plan;
    int m_tries;
    const Planner& m_planner;
    const Shortfall* m_shortfall = nullptr;
    QDate m_date;
    State m_day;
    std::optional<Short> m_base;
    std::vector<Remedy> m_remedies;
};

}  // namespace

void addRemedies(const State& state, Plan& plan, int tries, const Planner& planner) {
    Advisor advisor(state, plan, tries, planner);
    std::vector<std::vector<Remedy>> found;
    for (const Shortfall& shortfall : plan.unmet)
        found.push_back(advisor.remediesFor(shortfall));
    for (size_t i = 0; i < found.size(); ++i)
        plan.unmet[i].remedies = std::move(found[i]);
}

}  // namespace laneward::planning
