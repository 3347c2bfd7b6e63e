#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"violation.lane-in-play", QT_TRANSLATE_NOOP("wording", "%1 works lane %2 at %3 while it is played on")},
    {"violation.partner-in-play", QT_TRANSLATE_NOOP("wording", "%1 works lane %2 at %3 while its pair partner is played on")},
    {"violation.lane-twice", QT_TRANSLATE_NOOP("wording", "%1 works lane %2 at %3 together with another machine")},
    {"violation.machine-twice", QT_TRANSLATE_NOOP("wording", "%1 is to be in two places at once (%2, %3)")},
    {"violation.too-short", QT_TRANSLATE_NOOP("wording", "%1 has less time for lane %2 at %3 than it needs")},
    {"violation.before-now", QT_TRANSLATE_NOOP("wording", "%1 is to start at %2, which has passed")},
    {"violation.no-staff", QT_TRANSLATE_NOOP("wording", "nobody is there to run %1 at %2")},
    {"violation.closed", QT_TRANSLATE_NOOP("wording", "%1 is to run at %2, during a closure without staff")},
    {"violation.barred-lane", QT_TRANSLATE_NOOP("wording", "%1 may not work lane %2 (%3)")},
    {"violation.barred-pattern", QT_TRANSLATE_NOOP("wording", "%1 may not lay the pattern '%2' (%3)")},
    {"violation.barred-treatment", QT_TRANSLATE_NOOP("wording", "%1 may not do this treatment (%2)")},
    {"violation.lane-out-of-service", QT_TRANSLATE_NOOP("wording", "%1 works lane %2 at %3 while it is out of service")},
    {"violation.machine-out-of-service", QT_TRANSLATE_NOOP("wording", "%1 is out of service at %2")},
    {"violation.conditioner", QT_TRANSLATE_NOOP("wording", "%1 would run out of conditioner in the job of %2")},
    {"violation.cleaner", QT_TRANSLATE_NOOP("wording", "%1 would run out of cleaner in the job of %2")},
    {"violation.waste", QT_TRANSLATE_NOOP("wording", "the waste tank of %1 would overflow in the job of %2")},
    {"violation.pack", QT_TRANSLATE_NOOP("wording", "the pack of %1 would not last for the job of %2")},
    {"violation.duty", QT_TRANSLATE_NOOP("wording", "%1 would pass a service duty in the job of %2")},
    {"violation.other-pattern", QT_TRANSLATE_NOOP("wording", "%1 would condition lane %2 at %3 over another pattern")},
    {"violation.unknown", QT_TRANSLATE_NOOP("wording", "the job of %2 names the machine or pattern '%1', which does not exist")},
};

}  // namespace

std::span<const Phrase> violationPhrases() { return phrases; }

}  // namespace laneward
