#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"service.no-name", QT_TRANSLATE_NOOP("wording", "the service item '%1' has no name")},
    {"service.name-too-long", QT_TRANSLATE_NOOP("wording", "the name '%1…' is too long")},
    {"service.duty-without-name", QT_TRANSLATE_NOOP("wording", "the duty '%1' has no name")},
    {"service.duty-twice", QT_TRANSLATE_NOOP("wording", "%1: there are two duties with one id")},
    {"service.never-due", QT_TRANSLATE_NOOP("wording", "%1: never falls due; say after how much, or on which dates")},
    {"service.interval", QT_TRANSLATE_NOOP("wording", "%1: due after %2 is less than possible or beyond reason")},
    {"service.no-meter", QT_TRANSLATE_NOOP("wording", "%1: only days are counted where there is no machine")},
    {"service.meter-twice", QT_TRANSLATE_NOOP("wording", "%1: one meter is counted twice")},
    {"service.minutes", QT_TRANSLATE_NOOP("wording", "%1: %2 minutes of work are not possible")},
    {"service.part", QT_TRANSLATE_NOOP("wording", "%1: %2 of a part cannot be taken")},
    {"service.dates-unreadable", QT_TRANSLATE_NOOP("wording", "%1: '%2' is no date; write dates like %3, with commas between")},
    {"service.duty-has-history",
     QT_TRANSLATE_NOOP("wording",
                       "%1 has been recorded and stays, so that its history keeps its name; give it a longer interval, or retire "
                       "the item")},
    {"service.date-unreadable", QT_TRANSLATE_NOOP("wording", "%1: '%2' is no date; write it like %3")},
    {"service.since-unreadable", QT_TRANSLATE_NOOP("wording", "%1: '%2' is no number of nothing or more")},
    {"service.since-missing", QT_TRANSLATE_NOOP("wording", "%1: say how much was done since then (%2); a good guess will do")},
    {"service.date-missing", QT_TRANSLATE_NOOP("wording", "%1: say on which day it was last done")},
    {"service.unknown-item", QT_TRANSLATE_NOOP("wording", "there is no service item '%1'; nothing was recorded")},
    {"service.unknown-duty", QT_TRANSLATE_NOOP("wording", "%1 has no duty '%2'; nothing was recorded")},
    {"service.in-future", QT_TRANSLATE_NOOP("wording", "%1: %2 is still to come; a service is recorded when it is done")},
    {"service.says-nothing", QT_TRANSLATE_NOOP("wording", "%1: say which duty was done, or what was found")},
    {"service.no-window",
     QT_TRANSLATE_NOOP("wording", "%1: no %3 minutes for '%2' before it is due, with the machine in its bay and somebody there")},
    {"service.part-not-there",
     QT_TRANSLATE_NOOP("wording",
                       "%1: more was taken than the ledger has; recorded and flagged. Count it, or book what arrived")},
    {"service.no-pack", QT_TRANSLATE_NOOP("wording", "%1: is no pack, and has a pack's volts")},
    {"pack.unknown", QT_TRANSLATE_NOOP("wording", "there is no pack '%1'; nothing was recorded")},
    {"pack.in-future", QT_TRANSLATE_NOOP("wording", "%1: %2 is still to come; a pack is recorded when it is handled")},
    {"pack.says-nothing", QT_TRANSLATE_NOOP("wording", "%1: a reading needs the volts")},
    {"meter.in-future", QT_TRANSLATE_NOOP("wording", "%1: %2 is still to come; a counter is recorded when it is read")},
    {"meter.value", QT_TRANSLATE_NOOP("wording", "%1: a counter cannot show %2")},
    {"meter.kind", QT_TRANSLATE_NOOP("wording", "%1: machines have counters of lanes, runs and minutes only")},
    {"meter.backwards",
     QT_TRANSLATE_NOOP("wording",
                       "%1: the counter runs backwards, from %3 to %2; if it was replaced, say so. Nothing was recorded")},
    {"attachment.name", QT_TRANSLATE_NOOP("wording", "the file '%1' has no name, or one that is too long; nothing was attached")},
    {"attachment.too-large", QT_TRANSLATE_NOOP("wording", "%1 has %2 bytes; at most %3 can be attached. Nothing was attached")},
    {"attachment.empty", QT_TRANSLATE_NOOP("wording", "%1 is empty; nothing was attached")},
    {"attachment.type",
     QT_TRANSLATE_NOOP("wording", "%1 is no PNG, JPEG, WebP or PDF; nothing else can be attached. Nothing was attached")},
    {"attachment.hash", QT_TRANSLATE_NOOP("wording", "the content of the attachment '%1' is not the one that was added")},
    {"attachment.no-record",
     QT_TRANSLATE_NOOP("wording", "%1 was not attached: files belong to a service or an incident that is recorded")},
    {"attachment.no-content", QT_TRANSLATE_NOOP("wording", "%1 was not attached: its content is not in this database any more")},
    {"attachment.unreadable", QT_TRANSLATE_NOOP("wording", "%1 cannot be read; nothing was attached")},
    {"check.attachment-of-nothing", QT_TRANSLATE_NOOP("wording", "the attachment '%1' belongs to no service and no incident")},
    {"check.content-of-nothing", QT_TRANSLATE_NOOP("wording", "the content '%1' belongs to no attachment")},
    {"check.run-work",
     QT_TRANSLATE_NOOP("wording", "what the run '%1' did is missing from the meters, or counted though it was corrected")},
};

}  // namespace

std::span<const Phrase> servicePhrases() { return phrases; }

}  // namespace laneward
