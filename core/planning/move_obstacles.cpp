#include "core/planning/move_obstacles.h"

#include <algorithm>

namespace laneward::planning {

namespace {

struct Block {
    QString title;
    LaneSet lanes;
    Instant at;
};

class Obstacles {
public:
    explicit Obstacles(const Shifted& shifted)
        : m_s(shifted), m_plays(playsOf(shifted.state, shifted.plan.occupancy)), m_outings(outingsOf(m_s.state, m_s.plan.jobs)) {
        const auto found = std::find_if(m_outings.begin(), m_outings.end(), [&](const JobOuting& o) { return isMoved(o); });
        m_moved = found == m_outings.end() ? nullptr : &*found;
    }

    std::vector<Finding> of(const std::vector<Finding>& violations) {
        for (const Finding& violation : violations) {
            if (isTold(violation.rule)) continue;
            const bool inWords = m_moved && add(violation);
            if (!inWords) m_found.push_back({Severity::Note, violation.rule, violation.subject, violation.values});
            m_told.push_back(violation.rule);
        }
        return std::move(m_found);
    }

private:
    bool earlier() const { return m_s.by < Seconds{0}; }
    bool isTold(const QByteArray& rule) const { return std::find(m_told.begin(), m_told.end(), rule) != m_told.end(); }
    bool isMoved(const JobOuting& o) const {
        return o.date == m_s.date && o.number == m_s.outing && o.machine && o.machine->id == m_s.machine;
    }

    void tell(const char* before, const char* after, QString subject, std::vector<Value> values) {
        m_found.push_back({Severity::Note, earlier() ? before : after, std::move(subject), std::move(values)});
    }

    /// Whether the constraint behind it is told.
    bool add(const Finding& violation) {
        const QByteArray& rule = violation.rule;
        const size_t before = m_found.size();
        if (rule == "violation.lane-in-play") addPlay(false);
        if (rule == "violation.partner-in-play") {
            // Where the lane itself is in play its partner adds nothing.
            if (isTold("violation.lane-in-play")) return true;
            addPlay(true);
        }
        if (rule == "violation.machine-twice") addMachine();
        if (rule == "violation.lane-twice") addOtherMachine();
        if (rule == "violation.no-staff") addStaff();
        if (rule == "violation.closed") addClosure();
        if (rule == "violation.before-now")
            m_found.push_back({Severity::Note, "job.blocked-by-now", violation.subject, {m_s.plan.now}});
        return m_found.size() > before;
    }

    void addPlay(bool partners) {
        std::optional<Block> worst;
        for (const Job* job : m_moved->jobs) {
            for (const LaneTime& lane : job->lanes)
                lookAt(partners ? pairPartner(lane.lane) : lane.lane, lane, worst);
            for (const Step& step : job->steps) {
                if (step.kind != StepKind::FirstPairTwice) continue;
                for (int lane : step.lanes.lanes())
                    lookAt(partners ? pairPartner(lane) : lane, {lane, step.time}, worst);
            }
        }
        if (!worst) return;
        if (partners)
            tell("job.blocked-by-partner-before", "job.blocked-by-partner-after", worst->title, {worst->lanes.text(), worst->at});
        else
            tell("job.blocked-by-play-before", "job.blocked-by-play-after", worst->title, {worst->lanes.text(), worst->at});
    }

    /// The play that stands furthest in the way, with all lanes on which it does.
    void lookAt(int played, const LaneTime& worked, std::optional<Block>& worst) const {
        if (played < 1 || played > int(m_plays.size())) return;
        const LanePlays& plays = m_plays[size_t(played - 1)];
        for (auto play = firstAfter(plays, worked.time.begin); play != plays.end() && play->booked.begin < worked.time.end;
             ++play) {
            if (play->cleared <= worked.time.begin) continue;
            const QString& title = m_s.plan.occupancy.occurrences[play->occurrence].title;
            const Instant at = earlier() ? play->cleared : play->booked.begin;
            if (worst && worst->at == at && worst->title == title) worst->lanes.insert(worked.lane);
            const bool worse = !worst || (earlier() ? worst->at < at : at < worst->at);
            if (worse) worst = Block{title, LaneSet{worked.lane}, at};
        }
    }

    void addMachine() {
        for (const JobOuting& other : m_outings) {
            if (&other == m_moved || other.machine != m_moved->machine || !other.time.overlaps(m_moved->time)) continue;
            tell("job.blocked-by-machine-before", "job.blocked-by-machine-after", other.machine->name,
                 {earlier() ? other.time.end : other.time.begin});
            return;
        }
    }

    void addOtherMachine() {
        for (const JobOuting& other : m_outings) {
            if (&other == m_moved || !other.machine || !other.time.overlaps(m_moved->time)) continue;
            LaneSet both;
            for (const Job* job : other.jobs)
                both = both | job->laneSet();
            LaneSet own;
            for (const Job* job : m_moved->jobs)
                own = own | job->laneSet();
            if (!both.intersects(own)) continue;
            m_found.push_back({Severity::Note, "job.blocked-by-other-machine", other.machine->name, {(both & own).text()}});
            return;
        }
    }

    QString shiftName(const ShiftSpan& span) const {
        const auto& shifts = m_s.state.centre.shifts;
        const auto found = std::find_if(shifts.begin(), shifts.end(), [&](const Shift& s) { return s.id == span.shift; });
        return found == shifts.end() ? span.shift.value : found->name;
    }

    /// Outside every allowance, or inside one whose people are all at work.
    void addStaff() {
        const Span attended = m_moved->attended;
        const Span planned{attended.begin - m_s.by, attended.end - m_s.by};
        const ShiftSpan* of = nullptr;
        std::vector<ShiftSpan> shifts;
        for (int offset : {-1, 0, 1}) {
            const std::vector<ShiftSpan> more = shiftsOn(m_s.state.centre, m_s.date.addDays(offset));
            shifts.insert(shifts.end(), more.begin(), more.end());
        }
        for (const ShiftSpan& shift : shifts) {
            const auto covers = [&](const Span& time) {
                return shift.people > 0 && shift.allowance.begin <= time.begin && time.end <= shift.allowance.end;
            };
            if (covers(attended)) {
                m_found.push_back({Severity::Note, "job.blocked-by-person", shiftName(shift), {attended.begin, attended.end}});
                return;
            }
            if (!of && covers(planned)) of = &shift;
        }
        if (!of) return;
        tell("job.blocked-by-shift-before", "job.blocked-by-shift-after", shiftName(*of),
             {earlier() ? of->allowance.begin : of->allowance.end});
    }

    void addClosure() {
        for (const Occurrence& o : m_s.plan.occupancy.occurrences) {
            if (o.kind != EventKind::Closure || !o.noStaff || !o.booked.overlaps(m_moved->time)) continue;
            tell("job.blocked-by-closure-before", "job.blocked-by-closure-after", o.title,
                 {earlier() ? o.booked.end : o.booked.begin});
            return;
        }
    }

    const Shifted& m_s;
    std::vector<LanePlays> m_plays;
    std::vector<JobOuting> m_outings;
    const JobOuting* m_moved = nullptr;
    std::vector<QByteArray> m_told;
    std::vector<Finding> m_found;
};

}  // namespace

std::vector<Finding> obstaclesOf(const Shifted& shifted, const std::vector<Finding>& violations) {
    return Obstacles(shifted).of(violations);
}

}  // namespace laneward::planning
