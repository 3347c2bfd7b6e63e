#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"ics.too-large", QT_TRANSLATE_NOOP("wording", "%1: larger than %2 bytes; nothing was imported")},
    {"ics.too-many", QT_TRANSLATE_NOOP("wording", "%1: more than %2 records; nothing was imported")},
    {"ics.too-deep", QT_TRANSLATE_NOOP("wording", "%1: nested more than %2 deep")},
    {"ics.bad-nesting", QT_TRANSLATE_NOOP("wording", "%1: BEGIN and END do not match (%2)")},
    {"ics.bad-line", QT_TRANSLATE_NOOP("wording", "%1: not a line of a calendar")},
    {"ics.line-too-long", QT_TRANSLATE_NOOP("wording", "%1: the line is too long")},
    {"ics.control-character", QT_TRANSLATE_NOOP("wording", "%1: a control character")},
    {"ics.not-utf8", QT_TRANSLATE_NOOP("wording", "%1: not UTF-8")},
    {"ics.not-calendar", QT_TRANSLATE_NOOP("wording", "%1: not a calendar")},
    {"ics.truncated", QT_TRANSLATE_NOOP("wording", "%1: %2 is never ended; the file is cut off")},
    {"ics.bad-value", QT_TRANSLATE_NOOP("wording", "%1: %2 cannot be '%3'")},
    {"ics.end-before-start", QT_TRANSLATE_NOOP("wording", "%1: ends before it starts")},
    {"ics.no-start", QT_TRANSLATE_NOOP("wording", "%1: has no start")},
    {"ics.no-end", QT_TRANSLATE_NOOP("wording", "%1: has neither end nor duration")},
    {"ics.no-lanes", QT_TRANSLATE_NOOP("wording", "%1: names no lanes; give them by a mapping")},
    {"ics.no-title", QT_TRANSLATE_NOOP("wording", "%1: has no title")},
    {"ics.no-uid", QT_TRANSLATE_NOOP("wording", "%1: has no UID")},
    {"ics.lane-unknown", QT_TRANSLATE_NOOP("wording", "%1: '%2' names lanes that do not exist; there are %3")},
    {"ics.duplicate-property", QT_TRANSLATE_NOOP("wording", "%1: %2 stands twice")},
    {"ics.duplicate-uid", QT_TRANSLATE_NOOP("wording", "%1: the UID '%2' stands twice")},
    {"ics.this-and-future", QT_TRANSLATE_NOOP("wording", "%1: a change of this and all later dates cannot be read")},
    {"ics.unsupported-rule", QT_TRANSLATE_NOOP("wording", "%1: %2 cannot be read")},
    {"ics.unknown-zone", QT_TRANSLATE_NOOP("wording", "%1: the time zone '%2' is unknown; read in the centre's own")},
    {"ics.zone-read-as", QT_TRANSLATE_NOOP("wording", "%1: time zone read as %2")},
    {"ics.floating-time", QT_TRANSLATE_NOOP("wording", "%1: a time without a zone; read in %2")},
    {"ics.all-day", QT_TRANSLATE_NOOP("wording", "%1: a whole day; read in %2")},
    {"ics.single-date",
     QT_TRANSLATE_NOOP("wording", "%1: a single date of '%2' without its series; read as an event of its own")},
    {"ics.other-resource", QT_TRANSLATE_NOOP("wording", "%1: '%2' is not a lane and is left out")},
    {"ics.text-cut", QT_TRANSLATE_NOOP("wording", "%1: %2 is too long and was cut")},
    {"ics.skipped-component", QT_TRANSLATE_NOOP("wording", "%1: %2 is not used here")},
    {"ics.unsupported-property", QT_TRANSLATE_NOOP("wording", "%1: %2 is not used here")},
};

}  // namespace

std::span<const Phrase> icalendarPhrases() { return phrases; }

}  // namespace laneward
