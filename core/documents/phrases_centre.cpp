#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"zone.unknown", QT_TRANSLATE_NOOP("wording", "unknown time zone '%1'")},
    {"lanes.unreadable", QT_TRANSLATE_NOOP("wording", "'%1' is not a list of lanes; write them as 1-12, 15")},
    {"lanes.out-of-range", QT_TRANSLATE_NOOP("wording", "'%1' names lanes outside 1 to 200")},
    {"centre.currency", QT_TRANSLATE_NOOP("wording", "%1: '%2' is not a currency; write three capital letters, as EUR")},
    {"centre.no-id", QT_TRANSLATE_NOOP("wording", "the centre '%1' has no id")},
    {"centre.no-name", QT_TRANSLATE_NOOP("wording", "'%1' has no name")},
    {"centre.name-too-long", QT_TRANSLATE_NOOP("wording", "the name '%1…' is too long")},
    {"centre.name-twice", QT_TRANSLATE_NOOP("wording", "the name '%1' is used twice")},
    {"centre.id-twice", QT_TRANSLATE_NOOP("wording", "the id '%1' is empty or used twice")},
    {"centre.lane-count", QT_TRANSLATE_NOOP("wording", "%1 has %2 lanes; 1 to %3 are possible")},
    {"centre.setting-time", QT_TRANSLATE_NOOP("wording", "a time in the settings of %1 is out of range: %2")},
    {"centre.day-begins", QT_TRANSLATE_NOOP("wording", "the settings of %1 do not say when its day begins")},
    {"machine.times", QT_TRANSLATE_NOOP("wording", "a time of the machine %1 is zero or out of range")},
    {"machine.capacity", QT_TRANSLATE_NOOP("wording", "a capacity of the machine %1 is out of range")},
    {"machine.volts",
     QT_TRANSLATE_NOOP("wording", "%1 would attach the spare pack above the voltage at which the pack counts as full")},
    {"machine.weight", QT_TRANSLATE_NOOP("wording", "the machine %1 must weigh more than nothing and at most 2,000 kg")},
    {"machine.carry", QT_TRANSLATE_NOOP("wording", "the carry length of the machine %1 is negative or longer than the lane")},
    {"centre.reading-limits", QT_TRANSLATE_NOOP("wording", "the limits for tape readings of %1 are out of range or reversed")},
    {"shift.no-time", QT_TRANSLATE_NOOP("wording", "the shift %1 has no beginning or end")},
    {"shift.people", QT_TRANSLATE_NOOP("wording", "the shift %1 cannot have %2 people")},
    {"shift.overtime", QT_TRANSLATE_NOOP("wording", "the overtime of the shift %1 is out of range: %2")},
    {"shift.days-off-unreadable", QT_TRANSLATE_NOOP("wording", "'%1' is no date; write dates like %2, with commas between")},
    {"shift.extra-days-unreadable", QT_TRANSLATE_NOOP("wording", "'%1' is no date; write dates like %2, with commas between")},
    {"centre.nobody", QT_TRANSLATE_NOOP("wording", "%1 needs somebody who works there and signs records")},
    {"outage.nothing", QT_TRANSLATE_NOOP("wording", "say which lanes are out of service, or which machine")},
    {"outage.end-before-begin", QT_TRANSLATE_NOOP("wording", "the outage '%1' ends before it begins")},
    {"outage.lane-unknown", QT_TRANSLATE_NOOP("wording", "the outage '%1' names lane %2, which does not exist")},
    {"outage.machine-unknown", QT_TRANSLATE_NOOP("wording", "the outage '%1' names a machine that does not exist")},
    {"pattern.no-id", QT_TRANSLATE_NOOP("wording", "the pattern '%1' has no id")},
    {"pattern.no-name", QT_TRANSLATE_NOOP("wording", "a pattern has no name")},
    {"pattern.name-too-long", QT_TRANSLATE_NOOP("wording", "the pattern's name '%1' is too long")},
    {"pattern.end", QT_TRANSLATE_NOOP("wording", "the pattern '%1' cannot end at %2")},
    {"pattern.no-strokes", QT_TRANSLATE_NOOP("wording", "the pattern '%1' has no strokes")},
    {"stroke.boards", QT_TRANSLATE_NOOP("wording", "%1, stroke %2: boards run from 1 to 39, the first not above the last")},
    {"stroke.laps", QT_TRANSLATE_NOOP("wording", "%1, stroke %2: the number of laps is out of range")},
    {"stroke.dose", QT_TRANSLATE_NOOP("wording", "%1, stroke %2: the dose is out of range")},
    {"stroke.distance", QT_TRANSLATE_NOOP("wording", "%1, stroke %2: the distances are reversed or beyond the lane")},
    {"stroke.beyond-end", QT_TRANSLATE_NOOP("wording", "%1, stroke %2: reaches beyond the end of the pattern")},
    {"stroke.slot", QT_TRANSLATE_NOOP("wording", "%1, stroke %2: there is no such conditioner")},
};

}  // namespace

std::span<const Phrase> centrePhrases() { return phrases; }

}  // namespace laneward
