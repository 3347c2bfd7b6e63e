#include "app/demo/demo_parts.h"

#include "core/documents/service_templates.h"
#include "core/season/service_outlook.h"

#include <algorithm>
#include <array>

namespace laneward::demo {

namespace {

constexpr std::uint64_t seed = 0x5e77;
constexpr int readCounterEvery = 28;  // days
constexpr std::int64_t unlogged = 3;  // lanes of trying out, between two readings of a counter
constexpr int failsOneIn = 5;         // of what wears, before its time
const PersonId lead{"tamsin"};

// What the story of tonight needs: one duty falls due while Grebe works, one is forgotten.
const DutyId dueTonight{"grebe-squeegee-turn"};
constexpr std::int64_t lanesLeftTonight = 1;  // at least
const DutyId overdue{"heron-filter-clean"};
constexpr int overdueDays = 4;

// Blades of the years before: enough of them failed to say when they are best replaced. Lives in lanes.
// The present ones fall due in some weeks.
const DutyId inNotebook{"heron-squeegee-replace"};
constexpr std::int64_t lanesOnBlades = 940;
struct OldLife {
    int lanes;
    bool failed;
};
constexpr std::array<OldLife, 14> oldLives{{{1'188, false},
                                            {876, true},
                                            {1'200, false},
                                            {1'020, true},
                                            {1'176, false},
                                            {744, true},
                                            {1'140, true},
                                            {1'200, false},
                                            {948, true},
                                            {1'188, false},
                                            {1'092, true},
                                            {624, true},
                                            {1'200, false},
                                            {972, true}}};

Money pounds(std::int64_t minor) { return {minor, "GBP"}; }

/// By counter when the year began; Heron is the older one.
std::int64_t lanesBefore(const MachineId& machine) { return machine.value == "heron" ? 41'230 : 12'705; }

bool wears(const ServiceItem& item, const Duty& duty) {
    const bool inTime = item.kind == ItemKind::Squeegee || item.kind == ItemKind::Filter || item.kind == ItemKind::Wheels;
    return duty.kind == DutyKind::Replace && inTime;
}

const char* findingOf(ItemKind kind, bool failed) {
    if (failed) {
        if (kind == ItemKind::Squeegee) return "Torn at the left end; wet streak on board 5";
        if (kind == ItemKind::Filter) return "Clogged; the waste pump ran hot";
        return "Belt slipped on lane 9";
    }
    if (kind == ItemKind::CushionBrush) return "Bristles 2 mm shorter on the right";
    if (kind == ItemKind::Pack) return "Terminals clean, no swelling";
    if (kind == ItemKind::Approach) return "Approach 15-16 sticky near the foul line";
    return "";
}

/// A year of services on its way: each duty is done a little before it falls due, or a little late, or after it has failed.
class YearOfService {
public:
    YearOfService(HistorySlice& records, const std::vector<ServiceItem>& items, const Centre& centre, QDate today)
        : m_records(records), m_items(items), m_centre(centre), m_today(today), m_dice(seed) {
        for (const RunLog& run : standing(records.runs))
            m_work.push_back({run.machine, run.time.end, metersOf(run)});
        std::sort(m_work.begin(), m_work.end(), [](const MachineWork& a, const MachineWork& b) { return a.end < b.end; });
    }

    void run() {
        for (QDate day = m_today.addDays(-historyDays); day < m_today; day = day.addDays(1)) {
            if (m_today.addDays(-historyDays).daysTo(day) % readCounterEvery == 0) readCounters(day);
            work(day);
        }
        serveBackwards();
        correctOne();
        copyNotebook();
        std::stable_sort(m_records.services.begin(), m_records.services.end(),
                         [](const ServiceRecord& a, const ServiceRecord& b) { return a.at < b.at; });
    }

private:
    /// Before the first run of a day.
    Instant morning(QDate day) const { return dayOf(m_centre, day).begin + hours(4); }

    Meters metersAt(const MachineId& machine, Instant at) const {
        return machine.isEmpty() ? Meters{} : laneward::metersAt(m_records.counters, m_work, machine, at);
    }

    void readCounters(QDate day) {
        const Instant at = morning(day);
        for (const Machine& machine : m_centre.machines) {
            MeterReading reading{operation("counter " + machine.id.value + day.toString(Qt::ISODate)), at, lead, machine.id};
            const bool first = m_records.counters.size() < m_centre.machines.size();
            reading.shown = first ? lanesBefore(machine.id) : metersAt(machine.id, at).lanes + unlogged;
            m_records.counters.push_back(std::move(reading));
        }
    }

    void work(QDate day) {
        std::map<MachineId, Meters> meters;
        for (const Machine& machine : m_centre.machines)
            meters[machine.id] = metersAt(machine.id, morning(day));
        int minute = 0;
        for (const ServiceItem& item : m_items) {
            for (const Duty& duty : item.duties) {
                if (duty.id == dueTonight) continue;
                const Meters& now = meters[item.machine];
                const auto last = m_lasts.find(duty.id);
                if (last == m_lasts.end()) {
                    begin(item, duty, now, day);
                    continue;
                }
                const bool isLast = duty.id == inNotebook && lanesUntilToday(item, now) <= lanesOnBlades;
                if (isLast && lanesUntilToday(item, last->second.meters) <= lanesOnBlades) continue;
                const bool failed = !isLast && wears(item, duty) && failsToday(duty, last->second, now, day);
                if (!isLast && !failed && !isTime(duty, last->second, now, day)) continue;
                keep(item, duty, failed, morning(day) + minutes(minute), now);
                minute += duty.minutes;
            }
        }
    }

    std::int64_t lanesUntilToday(const ServiceItem& item, const Meters& then) const {
        return metersAt(item.machine, morning(m_today)).lanes - then.lanes;
    }

    /// The last time before the year was typed in when the centre was set up.
    void begin(const ServiceItem& item, const Duty& duty, const Meters& now, QDate day) {
        const std::int64_t permille = m_dice.below(800);
        std::int64_t daysAgo = historyDays;
        for (const Trigger& trigger : duty.triggers)
            daysAgo = std::min(daysAgo, trigger.every * permille / 1'000 / aDay(trigger.meter) + 1);
        Meters then;
        then.lanes = std::max<std::int64_t>(0, now.lanes - daysAgo * aDay(MeterKind::Lanes));
        then.runs = std::max<std::int64_t>(0, now.runs - daysAgo * aDay(MeterKind::Runs));
        keep(item, duty, false, morning(day.addDays(-daysAgo)), then);
        m_records.services.back().note = QStringLiteral("Typed in when the centre was set up");
    }

    /// Roughly what a machine does.
    static std::int64_t aDay(MeterKind meter) {
        constexpr std::array<std::int64_t, 5> each{12, 2, 40, 2'000'000, 1};
        return each[size_t(meter)];
    }

    double used(const Duty& duty, const LastDone& last, const Meters& now, QDate day) const {
        return dueOf(duty, last, {now, nullptr, day}).used;
    }

    bool failsToday(const Duty& duty, const LastDone& last, const Meters& now, QDate day) {
        const double share = used(duty, last, now, day);
        return share > 0.5 && share < 0.9 && m_dice.oneIn(failsOneIn * 20);
    }

    bool isTime(const Duty& duty, const LastDone& last, const Meters& now, QDate day) {
        if (duty.id == overdue && day.daysTo(m_today) <= duty.triggers.front().every + overdueDays) {
            // The last time was just so long ago that it is overdue today.
            return day.daysTo(m_today) == duty.triggers.front().every + overdueDays && last.day < day;
        }
        const bool byDays = duty.triggers.front().meter == MeterKind::Days;
        const double share = used(duty, last, now, day);
        return share >= 1 || (share > (byDays ? 0.9 : 0.93) && m_dice.oneIn(3));
    }

    void keep(const ServiceItem& item, const Duty& duty, bool failed, Instant at, const Meters& now) {
        ServiceRecord record;
        record.id = operation("service " + duty.id.value + QString::number(at.seconds));
        record.at = at;
        record.person = duty.skill == Skill::Anyone && m_dice.oneIn(2) ? PersonId{"nell"} : lead;
        record.item = item.id;
        record.duty = duty.id;
        record.meters = now;
        record.result = failed ? ServiceResult::Failed : ServiceResult::Done;
        for (const PartNeed& part : duty.parts)
            record.parts.push_back({part.supply, part.amount, {}});
        record.minutes = duty.minutes + m_dice.below(6) + (failed ? 15 : 0);
        if (failed || m_dice.oneIn(8)) record.finding = QString::fromLatin1(findingOf(item.kind, failed));
        if (failed) record.cost = pounds(2'500);
        m_lasts[duty.id] = {at, dateOf(m_centre, at), now};
        m_records.services.push_back(std::move(record));
    }

    /// So that it falls due tonight, that duty is followed from today back through the year.
    void serveBackwards() {
        for (const ServiceItem& item : m_items) {
            const Duty* duty = findDuty(item, dueTonight);
            if (!duty) continue;
            const std::int64_t every = duty->triggers.front().every;
            std::int64_t lanes = metersAt(item.machine, morning(m_today)).lanes - every + lanesLeftTonight;
            const std::vector<Instant> ends = endsOf(item.machine);
            for (size_t n = ends.size(); n-- > 1;) {
                const Meters then = metersAt(item.machine, ends[n]);
                // A counter that is read may leap over it between two runs.
                if (then.lanes < lanes || metersAt(item.machine, ends[n - 1]).lanes >= lanes) continue;
                keep(item, *duty, false, ends[n] + minutes(15), then);
                lanes = then.lanes - every + m_dice.below(40);
            }
        }
    }

    std::vector<Instant> endsOf(const MachineId& machine) const {
        std::vector<Instant> ends;
        for (const MachineWork& work : m_work) {
            if (work.machine == machine) ends.push_back(work.end);
        }
        return ends;
    }

    /// One evening somebody wrote down the wrong minutes and put it right the next day.
    void correctOne() {
        const auto found = std::find_if(m_records.services.rbegin(), m_records.services.rend(),
                                        [](const ServiceRecord& record) { return record.duty.value == "heron-pack-inspect"; });
        if (found == m_records.services.rend()) return;
        ServiceRecord right = *found;
        right.id = operation("corrected " + found->id.value);
        right.corrects = found->id;
        right.finding = "One terminal was loose; tightened";
        right.note = "Written down without the finding";
        m_records.services.push_back(std::move(right));
    }

    /// What the notebook of the years before tells, back from the first that is known: each life began when the one before it
    /// ended.
    void copyNotebook() {
        for (const ServiceItem& item : m_items) {
            const Duty* duty = findDuty(item, inNotebook);
            if (!duty) continue;
            const auto first = std::find_if(m_records.services.begin(), m_records.services.end(),
                                            [](const ServiceRecord& record) { return record.duty == inNotebook; });
            if (first == m_records.services.end()) return;
            QDate day = dateOf(m_centre, first->at);
            Meters then = first->meters;
            first->result = oldLives.front().failed ? ServiceResult::Failed : ServiceResult::Done;
            for (size_t n = 0; n < oldLives.size(); ++n) {
                const std::int64_t days = oldLives[n].lanes / aDay(MeterKind::Lanes);
                day = day.addDays(-days);
                then.lanes -= oldLives[n].lanes;
                then.runs = std::max<std::int64_t>(0, then.runs - days * aDay(MeterKind::Runs));
                const bool failed = n + 1 < oldLives.size() && oldLives[n + 1].failed;  // the blades that came off then
                keep(item, *duty, failed, morning(day), then);
                m_records.services.back().note = QStringLiteral("Copied from the notebook");
            }
            return;
        }
    }

    HistorySlice& m_records;
    const std::vector<ServiceItem>& m_items;
    const Centre& m_centre;
    QDate m_today;
    Dice m_dice;
    std::vector<MachineWork> m_work;
    std::map<DutyId, LastDone> m_lasts;
};

void setCosts(std::vector<ServiceItem>& items) {
    for (ServiceItem& item : items) {
        for (Duty& duty : item.duties) {
            if (!wears(item, duty)) continue;
            duty.planned = pounds(item.kind == ItemKind::Squeegee ? 6'300 : item.kind == ItemKind::Filter ? 1'600 : 4'800);
            duty.failed = pounds(duty.planned.minor + 9'000);
        }
    }
}

}  // namespace

std::vector<ServiceItem> serviceItems(const Centre& centre) {
    const NewId readable = [](const QString& word) { return word; };
    const TemplateParts parts{{ItemKind::CushionBrush, {{"brush"}, Amount{1}}},
                              {ItemKind::Squeegee, {{"blades"}, Amount{1}}},
                              {ItemKind::Filter, {{"filter"}, Amount{1}}},
                              {ItemKind::Wheels, {{"belt"}, Amount{1}}}};
    std::vector<ServiceItem> items = templatesForCentre(readable);
    for (const Machine& machine : centre.machines) {
        for (ServiceItem& item : templatesFor(machine, readable, parts))
            items.push_back(std::move(item));
    }
    setCosts(items);
    addPackItems(items, centre);
    std::sort(items.begin(), items.end(), [](const ServiceItem& a, const ServiceItem& b) { return a.id < b.id; });
    return items;
}

void addServices(HistorySlice& records, const std::vector<ServiceItem>& items, const Centre& centre, QDate today) {
    YearOfService(records, items, centre, today).run();
}

}  // namespace laneward::demo
