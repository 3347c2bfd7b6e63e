#include "core/documents/service_words.h"

#include "core/documents/pack_words.h"
#include "core/documents/stock_words.h"
#include "core/documents/text_page.h"
#include "core/documents/waste_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

constexpr qsizetype mostNamed = 3;

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

int shownCount(std::int64_t n) { return int(std::clamp<std::int64_t>(n, 0, 1'000'000'000)); }

QString dutyName(const DutyId& id, const SeasonState& season) {
    for (const ServiceItem& item : season.items)
        if (const Duty* duty = findDuty(item, id)) return shown(duty->name);
    return shown(id.value);
}

QString machineName(const MachineId& id, const SeasonState& season) {
    const Machine* machine = findMachine(season.centre, id);
    return shown(machine ? machine->name : id.value);
}

bool isOver(const DutyDue& due) { return due.due.left < 0 && due.due.likely; }

/// "Heron: Clean the filters; Grebe: Turn the squeegee blades; and 4 more".
QString named(const std::vector<const DutyDue*>& duties, const SeasonState& season) {
    QStringList names;
    for (const DutyDue* due : duties) {
        if (names.size() == mostNamed) break;
        const QString name = dutyName(due->duty, season);
        names += due->machine.isEmpty() ? name : machineName(due->machine, season) + ": " + name;
    }
    const int more = int(duties.size()) - int(names.size());
    if (more > 0) names += say(QT_TRANSLATE_N_NOOP("wording", "and %n more"), more);
    return names.join("; ");
}

QString wastePart(const ServiceList& list, const Speech& speech) {
    if (list.waste.empty()) return {};
    QString out = "\n" + heading(say(QT_TRANSLATE_NOOP("wording", "Waste tanks")));
    for (const WasteLine& line : list.waste) {
        out += wrapped(machineName(line.machine, list.season) + ": " + wasteLevelText(line, speech), 2);
        if (const QString tonight = wasteTonightText(line, speech); !tonight.isEmpty()) out += wrapped(tonight, 6);
    }
    const bool any = std::any_of(list.waste.begin(), list.waste.end(), hasWaste);
    return any ? out + wrapped(text(Finding{Severity::Warning, "caution.waste", {}, {}}, speech), 8, "      !") : out;
}

}  // namespace

QString itemText(const ServiceItem& item, const SeasonState& season) {
    return item.machine.isEmpty() ? shown(item.name) : machineName(item.machine, season) + ": " + shown(item.name);
}

QString leftText(const DueRange& due, const Speech& speech) {
    const bool over = due.left < 0;
    const std::int64_t n = std::abs(due.left);
    switch (due.by) {
        case MeterKind::Lanes:
            return over ? say(QT_TRANSLATE_N_NOOP("wording", "%n lane(s) over"), shownCount(n))
                        : say(QT_TRANSLATE_N_NOOP("wording", "%n lane(s) left"), shownCount(n));
        case MeterKind::Runs:
            return over ? say(QT_TRANSLATE_N_NOOP("wording", "%n run(s) over"), shownCount(n))
                        : say(QT_TRANSLATE_N_NOOP("wording", "%n run(s) left"), shownCount(n));
        case MeterKind::Minutes: {
            const char* form =
                over ? QT_TRANSLATE_NOOP("wording", "%1 of work over") : QT_TRANSLATE_NOOP("wording", "%1 of work left");
            return say(form).arg(durationText(minutes(n), speech));
        }
        case MeterKind::Volume: {
            const char* form = over ? QT_TRANSLATE_NOOP("wording", "%1 over") : QT_TRANSLATE_NOOP("wording", "%1 left");
            return say(form).arg(amountText(Microlitres{n}, speech));
        }
        case MeterKind::Days:
            break;
    }
    return over ? say(QT_TRANSLATE_N_NOOP("wording", "%n day(s) over"), shownCount(n))
                : say(QT_TRANSLATE_N_NOOP("wording", "%n day(s) left"), shownCount(n));
}

QString likelyText(const DueRange& due, QDate today, const Speech& speech) {
    if (due.neverDone) return say(QT_TRANSLATE_NOOP("wording", "never recorded"));
    if (!due.likely) {
        if (!due.early) return say(QT_TRANSLATE_NOOP("wording", "later"));
        return say(QT_TRANSLATE_NOOP("wording", "%1 at the earliest")).arg(dayWithWeekday(*due.early, speech));
    }
    if (due.left < 0) return say(QT_TRANSLATE_NOOP("wording", "overdue"));
    return *due.likely == today ? say(QT_TRANSLATE_NOOP("wording", "today")) : dayWithWeekday(*due.likely, speech);
}

QString rangeText(const DueRange& due, const Speech& speech) {
    if (due.neverDone || !due.likely || due.left < 0 || (due.early == due.likely && due.late == due.likely)) return {};
    const QString late = due.late ? dayWithWeekday(*due.late, speech) : say(QT_TRANSLATE_NOOP("wording", "later"));
    return say(QT_TRANSLATE_NOOP("wording", "%1 to %2")).arg(dayWithWeekday(due.early.value_or(*due.likely), speech), late);
}

QString dueText(const DueRange& due, QDate today, const Speech& speech) {
    const QString range = rangeText(due, speech);
    const QString likely = likelyText(due, today, speech);
    return range.isEmpty() ? likely : say(QT_TRANSLATE_NOOP("wording", "%1 (%2)")).arg(likely, range);
}

QString missingText(const std::vector<PartNeed>& missing, const SeasonState& season, const Speech& speech) {
    QStringList parts;
    for (const PartNeed& part : missing) {
        const Supply* supply = findSupply(season.supplies, part.supply);
        parts += supply ? shown(supply->name) + ' ' + amountText(part.amount, supply->kind, speech) : shown(part.supply.value);
    }
    return parts.isEmpty() ? QString() : say(QT_TRANSLATE_NOOP("wording", "missing: %1")).arg(parts.join(", "));
}

QString metersText(const Meters& meters, const Speech& speech) {
    return say(QT_TRANSLATE_NOOP("wording", "%1 lanes, %2 runs, %3"))
        .arg(speech.locale.toString(qlonglong(meters.lanes)), speech.locale.toString(qlonglong(meters.runs)),
             durationText(meters.work, speech));
}

QString visitText(const ServiceVisit& visit, const SeasonState& season, const Speech& speech) {
    QStringList duties;
    for (const DutyId& duty : visit.duties)
        duties += dutyName(duty, season);
    QString line = say(QT_TRANSLATE_NOOP("wording", "%1 to %2"))
                       .arg(dateTimeText(visit.time.begin, speech), clockTime(visit.time.end, speech, true));
    if (!visit.machine.isEmpty()) line += ", " + machineName(visit.machine, season);
    line += ": " + duties.join(", ");
    return visit.isLate ? line + say(QT_TRANSLATE_NOOP("wording", " (late: no room before)")) : line;
}

QString serviceHeadline(const ServiceOutlook& outlook, const SeasonState& season, const Speech& speech) {
    if (outlook.due.empty()) return say(QT_TRANSLATE_NOOP("wording", "Nothing is serviced yet: begin with the templates."));
    std::vector<const DutyDue*> over;
    std::vector<const DutyDue*> now;
    const DutyDue* next = nullptr;
    for (const DutyDue& due : outlook.due) {
        if (isOver(due))
            over.push_back(&due);
        else if (due.due.isDue(outlook.today))
            now.push_back(&due);
        else if (!next && due.due.likely)
            next = &due;
    }
    QStringList said;
    if (!over.empty()) said += say(QT_TRANSLATE_NOOP("wording", "Overdue: %1.")).arg(named(over, season));
    if (!now.empty()) said += say(QT_TRANSLATE_NOOP("wording", "Due today: %1.")).arg(named(now, season));
    if (!said.isEmpty()) return said.join(' ');
    if (!next) return say(QT_TRANSLATE_NOOP("wording", "Nothing falls due in the time ahead."));
    return say(QT_TRANSLATE_NOOP("wording", "Nothing is due today. Next: %1, %2."))
        .arg(named({next}, season), dueText(next->due, outlook.today, speech));
}

std::vector<DutyDue> dueBy(const ServiceOutlook& outlook, QDate until) {
    std::vector<DutyDue> due;
    std::copy_if(outlook.due.begin(), outlook.due.end(), std::back_inserter(due),
                 [&](const DutyDue& d) { return d.due.isDue(until); });
    return due;
}

QString serviceText(const ServiceList& list, const Speech& speech) {
    const SeasonState& season = list.season;
    QString out = wrapped(serviceHeadline(list.outlook, season, speech), 0) + "\n";
    for (const DutyDue& due : dueBy(list.outlook, list.until)) {
        const QString where = due.machine.isEmpty() ? QString() : machineName(due.machine, season) + ": ";
        out += wrapped(where + dutyName(due.duty, season), 2);
        QStringList facts{dueText(due.due, list.outlook.today, speech)};
        if (!due.due.neverDone) facts += leftText(due.due, speech);
        const QString missing = missingText(due.missing, season, speech);
        if (!missing.isEmpty()) facts += missing;
        out += wrapped(facts.join(", "), 6);
    }
    if (!list.outlook.visits.empty()) out += "\n" + heading(say(QT_TRANSLATE_NOOP("wording", "When it fits")));
    for (const ServiceVisit& visit : list.outlook.visits)
        out += wrapped(visitText(visit, season, speech), 4, "  -");
    if (!list.packs.packs.empty()) out += "\n" + heading(say(QT_TRANSLATE_NOOP("wording", "Packs")));
    for (const PackLine& line : list.packs.packs) {
        out += wrapped(packName(line.state.pack, season) + ": " + packPlaceText(line.state, speech), 2);
        for (const QString& said : {packVoltsText(line, speech), packTonightText(line, speech), packLearnedText(line, speech)})
            if (!said.isEmpty()) out += wrapped(said, 6);
    }
    if (!list.packs.turns.empty()) out += "\n" + heading(say(QT_TRANSLATE_NOOP("wording", "On charge, one at a time")));
    for (const ChargeTurn& turn : list.packs.turns)
        out += wrapped(turnText(turn, season, speech), 4, "  -");
    out += wastePart(list, speech);
    for (const Finding& finding : list.outlook.findings)
        out += wrapped(text(finding, speech), 4, "  >");
    return out;
}

}  // namespace laneward
