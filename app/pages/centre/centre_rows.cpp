#include "app/pages/centre/centre_rows.h"

#include "app/widgets/time_formats.h"

#include <algorithm>

namespace laneward {

QString CentreRows::timeText(QTime time, const Speech& speech) { return clockText(time, speech.locale); }

/// "Mon, Tue, Fri", or "every day".
QString CentreRows::weekdaysText(std::uint8_t weekdays, const Speech& speech) {
    constexpr std::uint8_t all = 0x7f;
    if ((weekdays & all) == all) return tr("every day");
    QStringList days;
    for (int day = 0; day < 7; ++day) {
        if (weekdays & (1U << day)) days << speech.locale.dayName(day + 1, QLocale::ShortFormat);
    }
    return days.isEmpty() ? tr("no day of the week") : days.join(QStringLiteral(", "));
}

QString CentreRows::hoursText(const Shift& shift, const Speech& speech) {
    return tr("%1 to %2", "times").arg(timeText(shift.begin, speech), timeText(shift.end, speech));
}

QString CentreRows::outNames(const Centre& centre, Instant now) {
    QStringList names;
    for (const Outage& outage : centre.outages) {
        if (isOut(outage, now)) names << outageName(outage, centre);
    }
    return names.join(QStringLiteral(", "));
}

QString CentreRows::machineState(const Machine& machine, const Centre& centre, Instant now, const Speech& speech) {
    for (const Outage& outage : centre.outages) {
        if (outage.machine != machine.id || !isOut(outage, now)) continue;
        return outage.end ? tr("out of service until %1").arg(dateTimeText(*outage.end, speech))
                          : tr("out of service until further notice");
    }
    return tr("in service");
}

QString CentreRows::tanksText(const Machine& machine, const Speech& speech) {
    QStringList tanks;
    for (size_t slot = 0; slot < machine.conditioners.size(); ++slot) {
        const Microlitres holds = machine.capacity.conditioner[slot];
        if (holds > Microlitres{0}) tanks << shown(machine.conditioners[slot]) + u' ' + amountText(holds, speech);
    }
    tanks << shown(machine.cleaner) + u' ' + amountText(machine.capacity.cleaner, speech);
    return tanks.join(QStringLiteral(", ")).simplified();
}

bool CentreRows::isOut(const Outage& outage, Instant now) { return outage.begin <= now && (!outage.end || *outage.end > now); }

QString CentreRows::outageName(const Outage& outage, const Centre& centre) {
    if (outage.machine) {
        const Machine* machine = findMachine(centre, *outage.machine);
        return machine ? shown(machine->name) : outage.machine->value;
    }
    return tr("lanes %1").arg(outage.lanes.text());
}

CentreList CentreRows::house(const Centre& centre, const Speech& speech) {
    const CentreFacts& facts = centre.facts;
    const Settings& settings = facts.settings;
    CentreList list;
    list.titles = {tr("Setting"), tr("Is")};
    const auto add = [&list](const QString& name, const QString& value) {
        list.rows.push_back({QString::number(list.rows.size()), {name, value}, {int(list.rows.size()), value}});
    };
    const bool metric = settings.units == UnitSystem::Metric;
    add(tr("Name"), shown(facts.name));
    add(tr("Lanes"), speech.locale.toString(facts.lanes));
    add(tr("Time zone"), QString::fromUtf8(facts.zone));
    add(tr("The day begins at"), timeText(settings.dayBegins, speech));
    add(tr("While the neighbour on the same approach is played on"),
        settings.pairPartnerRule ? tr("no work") : tr("work goes on"));
    add(tr("Reserve before lanes must be ready"), durationText(settings.reserve, speech));
    add(tr("New events: conditioner settles for"), durationText(settings.settle, speech));
    add(tr("New events: players clear the lanes in"), durationText(settings.clearing, speech));
    add(tr("New events: fresh means not older than"), durationText(settings.longestAge, speech));
    add(tr("Units"), metric ? tr("millilitres, metres") : tr("US fluid ounces, feet"));
    add(tr("Paper"), settings.letterPaper ? tr("Letter", "paper") : tr("A4", "paper"));
    add(tr("Currency"), QString::fromUtf8(settings.currency));
    list.sentence = tr("%1 has %n lane(s), by the wall time of %2.", nullptr, facts.lanes)
                        .arg(shown(facts.name), QString::fromUtf8(facts.zone));
    return list;
}

CentreList CentreRows::machines(const Centre& centre, Instant now, const Speech& speech) {
    CentreList list;
    list.titles = {tr("Machine"), tr("Its tanks"), tr("A lane takes"), tr("A pack runs"), tr("Now")};
    list.numbers = {2, 3};
    int ready = 0;
    for (const Machine& machine : centre.machines) {
        const std::int64_t lane = machine.times.lane[size_t(Treatment::CleanAndCondition)].value;
        const bool isOutNow = std::any_of(centre.outages.begin(), centre.outages.end(), [&](const Outage& outage) {
            return outage.machine == machine.id && isOut(outage, now);
        });
        ready += isOutNow ? 0 : 1;
        list.rows.push_back(
            {machine.id.value,
             {shown(machine.name), tanksText(machine, speech), tr("%1 s").arg(speech.locale.toString(qint64(lane))),
              tr("%n lane(s)", nullptr, machine.capacity.lanesPerCharge), machineState(machine, centre, now, speech)},
             {shown(machine.name), {}, qint64(lane), machine.capacity.lanesPerCharge}});
    }
    const int count = int(centre.machines.size());
    list.sentence = centre.machines.empty() ? tr("There is no lane machine yet, so no work can be planned: enter one.")
                    : ready == count
                        ? tr("%n lane machine(s), all in service.", nullptr, count)
                        : tr("%n lane machine(s) in service, of %1.", nullptr, ready).arg(speech.locale.toString(count));
    return list;
}

CentreList CentreRows::people(const Centre& centre) {
    CentreList list;
    list.titles = {tr("Person"), tr("Role"), tr("Works here")};
    int active = 0;
    for (const Person& person : centre.people) {
        active += person.active ? 1 : 0;
        list.rows.push_back({person.id.value,
                             {shown(person.name), text(person.role), person.active ? tr("yes") : tr("no longer")},
                             {shown(person.name), int(person.role), person.active ? 0 : 1}});
    }
    list.sentence = active == 0 ? tr("Nobody can sign records yet: enter who works here.")
                                : tr("%n person(s) can sign records.", nullptr, active);
    return list;
}

CentreList CentreRows::shifts(const Centre& centre, QDate today, const Speech& speech) {
    CentreList list;
    list.titles = {tr("Shift"), tr("Days"), tr("Works"), tr("People"), tr("Overtime"), tr("Otherwise")};
    list.numbers = {3};
    for (const Shift& shift : centre.shifts) {
        QStringList others;
        if (!shift.daysOff.empty()) others << tr("%n day(s) off", nullptr, int(shift.daysOff.size()));
        if (!shift.extraDays.empty()) others << tr("%n day(s) besides", nullptr, int(shift.extraDays.size()));
        list.rows.push_back({shift.id.value,
                             {shown(shift.name), weekdaysText(shift.weekdays, speech), hoursText(shift, speech),
                              speech.locale.toString(shift.people),
                              tr("%1 before, %2 after", "overtime")
                                  .arg(durationText(shift.overtimeBefore, speech), durationText(shift.overtimeAfter, speech)),
                              others.join(QStringLiteral(", "))},
                             {shown(shift.name), {}, shift.begin, shift.people}});
    }
    QStringList spans;
    for (const ShiftSpan& span : shiftsOn(centre, today)) {
        const Shift* shift = nullptr;
        for (const Shift& one : centre.shifts)
            if (one.id == span.shift) shift = &one;
        spans << tr("%1 with %n person(s)", nullptr, span.people).arg(hoursText(*shift, speech));
    }
    list.sentence = spans.isEmpty() ? tr("Nobody works on the lanes today, so nothing can be planned for it.")
                                    : tr("Today: %1.").arg(spans.join(QStringLiteral("; ")));
    return list;
}

CentreList CentreRows::outages(const Centre& centre, Instant now, const Speech& speech) {
    CentreList list;
    list.titles = {tr("Out of service"), tr("From"), tr("Until"), tr("Now"), tr("Note")};
    std::vector<Outage> outages = centre.outages;
    std::sort(outages.begin(), outages.end(), [](const Outage& a, const Outage& b) { return a.begin > b.begin; });
    for (const Outage& outage : outages) {
        const QString state = isOut(outage, now) ? tr("out") : outage.begin > now ? tr("still to come") : tr("over");
        list.rows.push_back({outage.id.value,
                             {outageName(outage, centre), dateTimeText(outage.begin, speech),
                              outage.end ? dateTimeText(*outage.end, speech) : tr("further notice"), state, shown(outage.note)},
                             {{}, qint64(outage.begin.seconds), qint64(outage.end ? outage.end->seconds : INT64_MAX)}});
    }
    const QString out = outNames(centre, now);
    list.sentence = out.isEmpty() ? tr("Everything is in service.") : tr("Out of service now: %1.").arg(out);
    return list;
}

}  // namespace laneward
