#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"life.age", QT_TRANSLATE_NOOP("wording", "life %2 of the list is no length above nothing")},
    {"life.too-few-failures",
     QT_TRANSLATE_NOOP("wording", "%2 failures are too few for a law of lives: it takes two that are not alike")},
    {"life.no-spread", QT_TRANSLATE_NOOP("wording", "all %2 failures came at the same age: no law of lives follows from that")},
    {"life.beyond-range", QT_TRANSLATE_NOOP("wording", "the lives are too long or too many to be reckoned with")},
    {"replacement.costs",
     QT_TRANSLATE_NOOP("wording", "the costs of a replacement, planned and after a failure, must be above nothing")},
    {"replacement.law", QT_TRANSLATE_NOOP("wording", "this law of lives has no mean: no best age follows from it")},
    {"wear.too-few", QT_TRANSLATE_NOOP("wording", "%1: %2 failures are known; a law of wear is shown after %3 more")},
    {"wear.never",
     QT_TRANSLATE_NOOP("wording", "%1: failures do not come with age, so replacing it early does not pay: wait until it fails")},
    {"wear.no-gain", QT_TRANSLATE_NOOP("wording", "%1: a failure costs no more than a planned replacement: wait until it fails")},
    {"wear.unsure",
     QT_TRANSLATE_NOOP("wording",
                       "%1: too few failures to say that replacing it early pays; it may be better to wait until it fails")},
    {"wear.age-now", QT_TRANSLATE_NOOP("wording", "%1: the interval that is set now must be above nothing")},
    {"pack.volts", QT_TRANSLATE_NOOP("wording", "%1: %2 cannot be; volts are between 0 and 60")},
    {"pack.nominal", QT_TRANSLATE_NOOP("wording", "%1: a pack of %2 nominal cannot be")},
    {"pack.no-table",
     QT_TRANSLATE_NOOP("wording",
                       "%1: no table of volts is known for this chemistry, so limits cannot be judged; the maker's "
                       "instructions decide")},
    {"pack.assumed-table",
     QT_TRANSLATE_NOOP("wording", "%1: the table of volts for this chemistry is assumed; the maker's instructions decide")},
    {"pack.full-unreachable",
     QT_TRANSLATE_NOOP("wording", "%1: full at %2 is more than a pack of this chemistry reaches in that state (about %3)")},
    {"pack.fit-unreachable",
     QT_TRANSLATE_NOOP("wording", "%1: fit to run at %2 is more than a pack of this chemistry reaches in that state (about %3)")},
    {"pack.full-low",
     QT_TRANSLATE_NOOP("wording", "%1: full at %2 is low: a pack of this chemistry with three quarters of its charge shows %3")},
    {"pack.fit-empty", QT_TRANSLATE_NOOP("wording", "%1: fit to run at %2 is below an empty pack of this chemistry (about %3)")},
    {"pack.spare-empty",
     QT_TRANSLATE_NOOP("wording", "%1: the spare pack below %2 comes too late: a pack of this chemistry is empty at about %3")},
    {"pack.order-full", QT_TRANSLATE_NOOP("wording", "%1: full at %2 is less than fit to run at %3")},
    {"pack.order-spare", QT_TRANSLATE_NOOP("wording", "%1: the spare pack below %2 is more than fit to run at %3")},
    {"pack.trend-log", QT_TRANSLATE_NOOP("wording", "%1: the log has a charge of no lanes or without a day")},
    {"pack.trend-few", QT_TRANSLATE_NOOP("wording", "%1: %2 charges run down are too few for a trend; it takes %3")},
    {"pack.trend-steady",
     QT_TRANSLATE_NOOP("wording", "%1: no loss of capacity can be seen that would leave too few lanes within ten years")},
    {"lifting.measure", QT_TRANSLATE_NOOP("wording", "%1: a weight or distance of the lift cannot be")},
    {"lifting.two",
     QT_TRANSLATE_NOOP("wording",
                       "%1 weighs %2 kg (%4 lb); one person should not lift more than %3 kg (%5 lb) in this way: two "
                       "people or a lift")},
    {"lifting.lift",
     QT_TRANSLATE_NOOP("wording",
                       "%1 weighs %2 kg (%4 lb), more than two people should lift in this way (%3 kg or %5 lb each): "
                       "use a lift")},
};

}  // namespace

std::span<const Phrase> wearPhrases() { return phrases; }

}  // namespace laneward
