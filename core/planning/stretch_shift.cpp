#include "core/planning/job_builder.h"
#include "core/planning/stretch.h"

#include <cstdlib>

namespace laneward::planning {

namespace {

// Beyond this an instant means never or for ever, and stays where it is.
constexpr std::int64_t endOfTime = std::int64_t{1} << 60;

class Shift {
public:
    Shift(qint64 days, Seconds by) : m_days(days), m_by(by) {}

    void move(Instant& t) const {
        if (t.seconds > -endOfTime && t.seconds < endOfTime) t = t + m_by;
    }
    void move(QDate& date) const { date = date.addDays(m_days); }
    void move(LocalTime& t) const { move(t.date); }
    void move(Span& s) const {
        move(s.begin);
        move(s.end);
    }

    void move(Finding& finding) const {
        for (Value& value : finding.values) {
            if (auto* t = std::get_if<Instant>(&value)) move(*t);
            if (auto* date = std::get_if<QDate>(&value)) move(*date);
        }
    }

    /// The id of a proposed job begins with its date.
    void move(JobId& id, QDate from) {
        if (from != m_from) {
            m_from = from;
            m_old = dateInId(from);
            m_new = dateInId(from.addDays(m_days));
        }
        if (id.value.startsWith(m_old)) id.value.replace(0, m_old.size(), m_new);
    }

    void move(Job& job) {
        move(job.id, job.date);
        move(job.date);
        move(job.time);
        for (LaneTime& lane : job.lanes)
            move(lane.time);
        for (Step& step : job.steps)
            move(step.time);
        for (Need& need : job.neededBy) {
            move(need.original);
            move(need.playBegins);
        }
        for (Finding& reason : job.reasons)
            move(reason);
        move(job.window);
    }

    void move(Shortfall& shortfall) const {
        move(shortfall.original);
        move(shortfall.playBegins);
        for (Finding& reason : shortfall.reasons)
            move(reason);
        for (Remedy& remedy : shortfall.remedies)
            move(remedy.what);
    }

    void move(DayPlan& day) {
        for (Outing& outing : day.outings) {
            move(outing.time);
            for (JobId& id : outing.jobs)
                move(id, day.date);
        }
        move(day.date);
    }

private:
    qint64 m_days;
    Seconds m_by;
    QDate m_from;   ///< the last date in an id, …
    QString m_old;  ///< … how it is written …
    QString m_new;  ///< … and what it becomes
};

}  // namespace

StretchPlan shiftedTo(const StretchPlan& plan, QDate first, Instant begins) {
    StretchPlan moved = plan;
    Shift shift(plan.range.first.daysTo(first), begins - plan.begins);
    shift.move(moved.range.first);
    shift.move(moved.range.last);
    shift.move(moved.begins);
    for (Job& job : moved.jobs)
        shift.move(job);
    for (Shortfall& shortfall : moved.unmet)
        shift.move(shortfall);
    for (DayPlan& day : moved.days)
        shift.move(day);
    for (LaneTreatment& lane : moved.after.lanes)
        shift.move(lane.end);
    return moved;
}

}  // namespace laneward::planning
