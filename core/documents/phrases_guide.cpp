#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"guide.look-ahead", QT_TRANSLATE_NOOP("wording", "Look at tonight: who plays where, and what is to be run")},
    {"guide.volts", QT_TRANSLATE_NOOP("wording", "%1: charger off and unplugged; read the pack's volts")},
    {"guide.levels", QT_TRANSLATE_NOOP("wording", "%1: read all levels")},
    {"guide.look-over", QT_TRANSLATE_NOOP("wording", "%1: look over cloth, brushes and blades; nothing drips")},
    {"guide.close-pack", QT_TRANSLATE_NOOP("wording", "%1: pack on charge, one at a time where packs share an outlet")},
    {"guide.close-tanks", QT_TRANSLATE_NOOP("wording", "%1: waste into the marked container; fill up the tanks")},
    {"guide.no-number",
     QT_TRANSLATE_NOOP("wording", "'%1' is no number; nothing was recorded. Leave the blank empty if it was not read")},
    {"guide.volts-beyond",
     QT_TRANSLATE_NOOP("wording", "A pack gives 0 to %2 volts; nothing was recorded. Look at what was typed")},
    {"guide.amount-beyond", QT_TRANSLATE_NOOP("wording", "%1: between 0 and %2; nothing was recorded. Look at what was typed")},
    {"guide.emptied-beyond", QT_TRANSLATE_NOOP("wording", "%2 cannot be emptied; nothing was recorded. Look at what was typed")},
    {"guide.lanes-beyond",
     QT_TRANSLATE_NOOP("wording", "A pack gives 0 to %2 lanes; nothing was recorded. Look at what was typed")},
};

}  // namespace

std::span<const Phrase> guidePhrases() { return phrases; }

}  // namespace laneward
