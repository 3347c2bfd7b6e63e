#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

// %1 is the supply, but for the minimum order the supplier.
constexpr Phrase phrases[] = {
    {"orders.no-offer", QT_TRANSLATE_NOOP("wording", "%1: nobody sells it, and it falls below its service level on %2")},
    {"orders.no-days", QT_TRANSLATE_NOOP("wording", "%1: %2 takes no orders that would arrive in the time that is planned")},
    {"orders.offer-unusable",
     QT_TRANSLATE_NOOP("wording", "%1: article '%3' of %2 is left out; its pack, prices or currency cannot be used")},
    {"orders.beyond-reason",
     QT_TRANSLATE_NOOP("wording", "%1: %2 packs would be needed, which cannot be right; no order is planned for it")},
    {"orders.too-late",
     QT_TRANSLATE_NOOP("wording", "%1: falls below its service level on %2, before the first order can arrive (%3)")},
    {"orders.storage", QT_TRANSLATE_NOOP("wording",
                                         "%1: the store holds %2, too little for the service level until the next delivery; "
                                         "planned with no more beyond it than that takes")},
    {"orders.pack-over-storage",
     QT_TRANSLATE_NOOP("wording", "%1: one pack is %2, and the store holds %3; planned all the same")},
    {"orders.shelf-life", QT_TRANSLATE_NOOP("wording",
                                            "%1: does not keep for longer than %2 days, and the service level needs more at a "
                                            "time than is used until then; some may have to be thrown away")},
    {"orders.below-minimum",
     QT_TRANSLATE_NOOP("wording", "%1: no plan was found whose orders all reach the minimum; planned without it")},
    {"orders.source-fixed",
     QT_TRANSLATE_NOOP("wording", "%1: of those who sell it only %2 was looked at, the cheapest for it alone")},
    {"orders.packs-not-mixed",
     QT_TRANSLATE_NOOP("wording", "%1: planned in packs of one size, article '%3' of %2, because so many are needed")},
    {"orders.several-packs", QT_TRANSLATE_NOOP("wording", "%1: planned by %2 packs at a time, because so many are needed")},
};

}  // namespace

std::span<const Phrase> orderPhrases() { return phrases; }

}  // namespace laneward
