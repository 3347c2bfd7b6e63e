#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"calendar.conflicts-cut", QT_TRANSLATE_NOOP("wording", "more conflicts than can be shown; the first %2 are listed")},
    {"calendar.cut", QT_TRANSLATE_NOOP("wording", "%1: only the first %2 dates are used")},
    {"calendar.lanes-beyond", QT_TRANSLATE_NOOP("wording", "%1: lanes %2 do not exist here and are left out")},
    {"calendar.override-unmatched", QT_TRANSLATE_NOOP("wording", "%1: a change for %2 fits none of its dates and is left out")},
    {"calendar.range-cut", QT_TRANSLATE_NOOP("wording", "%1: too many days at once; looked at until %2")},
    {"calendar.unknown-zone", QT_TRANSLATE_NOOP("wording", "%1: the time zone '%2' is unknown; read in the centre's own")},
    {"series.bad-date", QT_TRANSLATE_NOOP("wording", "%1: a date is out of reach")},
    {"series.bad-start", QT_TRANSLATE_NOOP("wording", "%1: the start is not a date and time in reach")},
    {"series.demand-lanes", QT_TRANSLATE_NOOP("wording", "%1: asks something of lanes %2, which it does not have")},
    {"series.demand-no-lanes", QT_TRANSLATE_NOOP("wording", "%1: asks something, but of no lanes")},
    {"series.demand-time", QT_TRANSLATE_NOOP("wording", "%1: the longest age or play of a demand is out of range")},
    {"series.lane-unknown", QT_TRANSLATE_NOOP("wording", "%1: lane %2 does not exist; there are %3")},
    {"series.no-id", QT_TRANSLATE_NOOP("wording", "%1: has no id")},
    {"series.no-lanes", QT_TRANSLATE_NOOP("wording", "%1: has no lanes")},
    {"series.no-length", QT_TRANSLATE_NOOP("wording", "%1: takes no time")},
    {"series.no-title", QT_TRANSLATE_NOOP("wording", "an event has no title")},
    {"series.note-too-long", QT_TRANSLATE_NOOP("wording", "%1: the note is longer than %2 characters")},
    {"series.override-twice", QT_TRANSLATE_NOOP("wording", "%1: one date is changed twice")},
    {"series.players", QT_TRANSLATE_NOOP("wording", "%1: the number of players is out of range")},
    {"series.setting-time", QT_TRANSLATE_NOOP("wording", "%1: a time is out of range: %2")},
    {"series.title-too-long", QT_TRANSLATE_NOOP("wording", "%1: the title is longer than %2 characters")},
    {"series.too-long", QT_TRANSLATE_NOOP("wording", "%1: takes too long: %2")},
    {"series.unknown-zone", QT_TRANSLATE_NOOP("wording", "%1: unknown time zone '%2'")},
    {"calendar.conflict", QT_TRANSLATE_NOOP("wording", "%1 and %2 both claim lanes %3 from %4 to %5")},
    {"calendar.suppressed", QT_TRANSLATE_NOOP("wording", "%1 does not take place: a closure")},
    {"rule.unreadable", QT_TRANSLATE_NOOP("wording", "'%1' cannot be read as a rule of recurrence")},
    {"rule.too-frequent", QT_TRANSLATE_NOOP("wording", "'%1' recurs more often than daily, which no event of a centre does")},
    {"rule.endless-search", QT_TRANSLATE_NOOP("wording", "'%1' never produces a date")},
};

}  // namespace

std::span<const Phrase> calendarPhrases() { return phrases; }

}  // namespace laneward
