#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

// The sources, and how far each was read, stand in cautions.cpp. "-again" is the reminder at a later step.
constexpr Phrase phrases[] = {
    {"caution.battery", QT_TRANSLATE_NOOP("wording",
                                          "Batteries: charging gives off explosive gas. Air the room; no smoking, flame or "
                                          "sparks; protect eyes and hands; charger off first.")},
    {"caution.battery-again", QT_TRANSLATE_NOOP("wording", "Batteries.")},
    {"caution.lifting", QT_TRANSLATE_NOOP("wording", "Lifting: two people or the ramp; not on a slippery floor.")},
    {"caution.lifting-again", QT_TRANSLATE_NOOP("wording", "Lifting.")},
    {"caution.slippery", QT_TRANSLATE_NOOP("wording", "Slippery: keep off conditioned lanes and wet floors; wipe up drips.")},
    {"caution.slippery-again", QT_TRANSLATE_NOOP("wording", "Slippery floor.")},
    {"caution.moving-parts", QT_TRANSLATE_NOOP("wording",
                                               "Moving parts: keep hands, hair and clothes away; switch off and isolate before "
                                               "you clear a jam; never bypass a guard.")},
    {"caution.moving-parts-again", QT_TRANSLATE_NOOP("wording", "Moving parts.")},
    {"caution.chemicals", QT_TRANSLATE_NOOP("wording",
                                            "Chemicals: protect eyes and hands as the safety data sheet says; keep it and the "
                                            "eye wash within reach.")},
    {"caution.chemicals-again", QT_TRANSLATE_NOOP("wording", "Chemicals.")},
    {"caution.waste", QT_TRANSLATE_NOOP("wording", "Waste: not down a drain; ask the local wastewater authority.")},
    {"caution.waste-again", QT_TRANSLATE_NOOP("wording", "Waste: not down a drain.")},
    {"caution.defer",
     QT_TRANSLATE_NOOP("wording",
                       "These are the usual cautions. Local codes, the product's safety data sheet, the machine's "
                       "own instructions and licensed practice decide.")},
    {"caution.sources", QT_TRANSLATE_NOOP("wording", "General sources: %1.")},
};

}  // namespace

std::span<const Phrase> cautionPhrases() { return phrases; }

}  // namespace laneward
