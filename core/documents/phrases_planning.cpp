#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"plan.pattern-unknown", QT_TRANSLATE_NOOP("wording", "%1 asks for the pattern '%2' on lanes %3, which does not exist")},
    {"plan.no-machine", QT_TRANSLATE_NOOP("wording", "%1 has no machine: nothing can be planned")},
    {"plan.no-shift", QT_TRANSLATE_NOOP("wording", "Nobody works on %2, though lanes need work")},
    {"plan.lane-out-of-service", QT_TRANSLATE_NOOP("wording", "%1, %3, is booked on lanes %2, which are out of service")},
    {"plan.confirmed-breaks",
     QT_TRANSLATE_NOOP("wording", "The confirmed job of %1 on lanes %2 at %3 no longer fits; print the sheet again")},
    {"plan.cancelled",
     QT_TRANSLATE_NOOP("wording", "Planning was stopped early; the plan can be carried out but may be improved")},
    {"job.needed", QT_TRANSLATE_NOOP("wording", "needed by %1, play at %T2, lanes %3")},
    {"job.first-pair-twice", QT_TRANSLATE_NOOP("wording", "%1 wants the first pair, lanes %2, worked twice")},
    {"job.fixed-by-settle", QT_TRANSLATE_NOOP("wording", "must end by %T2: %1 asks for %3 to settle, and %4 is kept in reserve")},
    {"job.fixed-by-play-before", QT_TRANSLATE_NOOP("wording", "cannot begin before %T2, when %1 has cleared the lanes")},
    {"job.fixed-by-partner", QT_TRANSLATE_NOOP("wording", "the other lane of the pair is in play by %1 (%T2)")},
    {"job.fixed-by-shift", QT_TRANSLATE_NOOP("wording", "bound by the shift '%1' (%T2)")},
    {"job.fixed-by-machine", QT_TRANSLATE_NOOP("wording", "%1 is at work elsewhere (%T2)")},
    {"job.fixed-by-person", QT_TRANSLATE_NOOP("wording", "nobody of the shift '%1' is free (%T2)")},
    {"job.fixed-by-outage", QT_TRANSLATE_NOOP("wording", "lanes %1 out of service (%T2)")},
    {"job.fixed-by-closing", QT_TRANSLATE_NOOP("wording", "%1 is to leave the lanes stripped by the end of the day (%T2)")},
    {"job.fixed-by-now", QT_TRANSLATE_NOOP("wording", "cannot begin before now (%T2)")},
    {"job.overtime", QT_TRANSLATE_NOOP("wording", "takes %2 of overtime in the shift '%1'")},
    {"job.tight", QT_TRANSLATE_NOOP("wording", "tight: ends %2 inside the reserve of %1")},
    {"job.late", QT_TRANSLATE_NOOP("wording", "late: ends %2 inside the settle time of %1")},
    {"job.refill-before", QT_TRANSLATE_NOOP("wording", "refill %1 first (%2)")},
    {"job.empty-before", QT_TRANSLATE_NOOP("wording", "empty the waste tank of %1 first (%2)")},
    {"job.swap-before", QT_TRANSLATE_NOOP("wording", "swap the pack of %1 first (%2)")},
    {"job.charge-before", QT_TRANSLATE_NOOP("wording", "charge %1 first (%2)")},
    {"job.duty-before", QT_TRANSLATE_NOOP("wording", "a service duty of %1 comes first (%2)")},
    {"short.no-time", QT_TRANSLATE_NOOP("wording", "%2 missing: the lanes are clear at %T3")},
    {"short.no-staff", QT_TRANSLATE_NOOP("wording", "nobody is at work in time (working time begins or ends at %T2)")},
    {"short.barred", QT_TRANSLATE_NOOP("wording", "no machine may treat lanes %2 as asked")},
    {"short.out-of-service", QT_TRANSLATE_NOOP("wording", "out of service: lanes %2 or every machine")},
    {"short.no-machine", QT_TRANSLATE_NOOP("wording", "there is no machine")},
    {"short.pattern-unknown", QT_TRANSLATE_NOOP("wording", "the pattern '%2' does not exist")},
    {"short.machine-busy", QT_TRANSLATE_NOOP("wording", "%1 is busy; %2 missing")},
    {"short.condition-only", QT_TRANSLATE_NOOP("wording", "condition only was asked for, but lanes %2 carry another pattern")},
    {"short.too-big", QT_TRANSLATE_NOOP("wording", "more than %1 can do on full tanks and one charge: lanes %2")},
    {"remedy.overtime", QT_TRANSLATE_NOOP("wording", "%2 more overtime in the shift '%1' (until or from %T3)")},
    {"remedy.second-machine", QT_TRANSLATE_N_NOOP("wording", "a further machine (%n in all)"), true},
    {"remedy.second-person", QT_TRANSLATE_N_NOOP("wording", "a further person in the shift '%1' (%n in all)"), true},
    {"remedy.shorter-treatment", QT_TRANSLATE_NOOP("wording", "ask less for %1: %W2")},
    {"remedy.fewer-lanes", QT_TRANSLATE_N_NOOP("wording", "give %1 fewer lanes: %n could be made ready"), true},
    {"remedy.move-event", QT_TRANSLATE_NOOP("wording", "let %1 begin %2 later, at %T3")},
};

}  // namespace

std::span<const Phrase> planningPhrases() { return phrases; }

}  // namespace laneward
