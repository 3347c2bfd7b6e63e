#include "app/demo/demo_parts.h"

namespace laneward::demo {

namespace {

Machine heron() {
    Machine machine;
    machine.id = {"heron"};
    machine.name = "Heron";
    machine.times.lane = {Seconds{92}, Seconds{80}, Seconds{62}};
    machine.capacity.conditioner = {millilitres(1'800), millilitres(900)};
    machine.capacity.lanesPerCharge = 56;
    machine.capacity.sparePacks = 1;
    machine.conditioners = {"Tideglass Amber", "Tideglass Clear"};
    machine.cleaner = "Reedwash";
    machine.carryLength = Micrometres{762'000};  // 2.5 ft
    machine.weight = Grams{71'000};
    return machine;
}

Machine grebe() {
    Machine machine;
    machine.id = {"grebe"};
    machine.name = "Grebe";
    machine.bars.patterns = {{"heron-45"}, {"nightjar-43"}};  // they need the second conditioner
    machine.times.lane = {Seconds{98}, Seconds{86}, Seconds{66}};
    machine.capacity.conditioner = {millilitres(1'200), Microlitres{0}};
    machine.capacity.cleaner = millilitres(5'000);
    machine.capacity.waste = millilitres(6'000);
    machine.capacity.lanesPerCharge = 36;
    machine.capacity.sparePacks = 0;
    machine.conditioners = {"Tideglass Amber", QString()};
    machine.cleaner = "Reedwash";
    machine.carryLength = Micrometres{548'640};  // 1.8 ft
    machine.weight = Grams{22'500};
    return machine;
}

Shift shift(const QString& id, const QString& name, QTime begin, QTime end, int people) {
    Shift shift;
    shift.id = {id};
    shift.name = name;
    shift.begin = begin;
    shift.end = end;
    shift.people = people;
    return shift;
}

/// Lanes 11 and 12 were relevelled last spring; nothing is out of service tonight.
Outage relevelling(const Centre& centre, QDate today) {
    Outage outage;
    outage.id = {"relevelling"};
    outage.lanes = {11, 12};
    outage.begin = dayOf(centre, today.addDays(-relevelledDaysAgo - 1)).begin;
    outage.end = dayOf(centre, today.addDays(-relevelledDaysAgo)).begin;
    outage.note = "Approach and lanes 11-12 relevelled";
    return outage;
}

}  // namespace

Centre house(QDate today) {
    Centre centre;
    centre.facts.id = {"quillmarsh"};
    centre.facts.name = "Quillmarsh Bowl";
    centre.facts.zone = "Europe/London";
    centre.facts.lanes = 24;
    centre.facts.settings.currency = "GBP";
    centre.machines = {grebe(), heron()};
    centre.people = {{{"idris"}, "Idris Penhallow", Role::Operator},
                     {{"nell"}, "Nell Farrow", Role::Operator},
                     {{"rowan"}, "Rowan Achterby", Role::Manager},
                     {{"tamsin"}, "Tamsin Voss", Role::Lead}};
    centre.shifts = {shift("day", "Day", QTime(8, 0), QTime(16, 0), 1),
                     shift("evening", "Evening", QTime(15, 30), QTime(0, 30), 2)};
    if (today.isValid()) centre.outages = {relevelling(centre, today)};
    return centre;
}

}  // namespace laneward::demo
