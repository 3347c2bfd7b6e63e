#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"sheet.check-pack", QT_TRANSLATE_NOOP("wording", "Charger off and unplugged; read the packs' volts")},
    {"sheet.check-levels", QT_TRANSLATE_NOOP("wording", "Read all levels and write them above")},
    {"sheet.check-floor", QT_TRANSLATE_NOOP("wording", "Floor sign out; approaches clear and dry")},
    {"sheet.leave-bay", QT_TRANSLATE_NOOP("wording", "Ready %1, bring it to the lanes")},
    {"sheet.refill", QT_TRANSLATE_NOOP("wording", "Refill %1 up to the lines")},
    {"sheet.empty-waste", QT_TRANSLATE_NOOP("wording", "Empty the waste tank of %1 into the marked container")},
    {"sheet.swap-pack", QT_TRANSLATE_NOOP("wording", "Swap the pack of %1; put the empty one on charge")},
    {"sheet.charge", QT_TRANSLATE_NOOP("wording", "Charge %1")},
    {"sheet.duty", QT_TRANSLATE_NOOP("wording", "Service duty of %1")},
    {"sheet.return", QT_TRANSLATE_NOOP("wording", "Bring %1 back to its bay")},
    {"sheet.close-waste", QT_TRANSLATE_NOOP("wording", "Waste into the marked container; fill up the tanks")},
    {"sheet.close-wipe", QT_TRANSLATE_NOOP("wording", "Machines off; wipe them down; look at brushes, blades, cloth")},
    {"sheet.close-charge", QT_TRANSLATE_NOOP("wording", "Packs on charge, one at a time where they share an outlet")},
    {"sheet.close-hand-over", QT_TRANSLATE_NOOP("wording", "Record tonight's runs and write the hand-over")},
    {"blank.volts", QT_TRANSLATE_NOOP("wording", "volts")},
    {"blank.conditioner", QT_TRANSLATE_NOOP("wording", "conditioner")},
    {"blank.cleaner", QT_TRANSLATE_NOOP("wording", "cleaner")},
    {"blank.emptied", QT_TRANSLATE_NOOP("wording", "emptied")},
    {"blank.waste", QT_TRANSLATE_NOOP("wording", "waste")},
    {"blank.finished", QT_TRANSLATE_NOOP("wording", "done at")},
    {"blank.initials", QT_TRANSLATE_NOOP("wording", "initials")},
    {"readiness.out-of-service", QT_TRANSLATE_NOOP("wording", "%1 is out of service")},
    {"readiness.not-measured",
     QT_TRANSLATE_NOOP("wording", "%1: nothing measured yet today; read volts and levels before you start")},
    {"readiness.attach-spare", QT_TRANSLATE_NOOP("wording", "%1: %2 is below %3; put the spare pack on before the run")},
    {"readiness.charge-first", QT_TRANSLATE_NOOP("wording", "%1: %2 is below %3; charge the pack before the run")},
    {"readiness.not-fit", QT_TRANSLATE_NOOP("wording", "%1: %2; the pack is fit to run from %3: charge it, or take another one")},
    {"readiness.other-state",
     QT_TRANSLATE_NOOP("wording", "%1: %2 was not read in the state that the limit of %3 is for, so it says nothing about it")},
    {"readiness.overflow",
     QT_TRANSLATE_NOOP("wording",
                       "%1: empty the waste tank before the job at %T2 (lanes %4): it would overflow with a chance of %3 %")},
    {"waste.negative", QT_TRANSLATE_NOOP("wording", "%1: %2 cannot be emptied; nothing was recorded. Look at what was typed")},
    {"waste.beyond-tank",
     QT_TRANSLATE_NOOP("wording",
                       "%1: %2 were emptied, but the waste tank holds %3; kept and flagged, and nothing is learned from it. Look "
                       "at what was typed")},
    {"readiness.not-full", QT_TRANSLATE_NOOP("wording", "%1: %2; the pack counts as full from %3")},
    {"readiness.short-conditioner", QT_TRANSLATE_NOOP("wording", "%1 holds %2 of conditioner, but tonight takes %3")},
    {"readiness.short-cleaner", QT_TRANSLATE_NOOP("wording", "%1 holds %2 of cleaner, but tonight takes %3")},
    {"readiness.short-waste", QT_TRANSLATE_NOOP("wording", "%1 has room for %2 of waste, but tonight gives %3")},
    {"readiness.short-charge", QT_TRANSLATE_NOOP("wording", "%1 can work %2 more lanes on this charge, but tonight needs %3")},
};

}  // namespace

std::span<const Phrase> sheetPhrases() { return phrases; }

}  // namespace laneward
