#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

// %1 machine, %2 product, %3 time of the fill, %4 now and %5 in the baseline, per 1,000 of nominal, %6 fills, %7 runs.
constexpr Phrase phrases[] = {
    {"drift.single-high",
     QT_TRANSLATE_NOOP(
         "wording",
         "%1, %2: the fill of %3 took %4 for 1,000 of nominal, where %5 is usual; one fill alone does not vary by as "
         "much. Check the fill line, the runs since the fill before (%7) and leaks")},
    {"drift.single-low",
     QT_TRANSLATE_NOOP(
         "wording",
         "%1, %2: the fill of %3 took only %4 for 1,000 of nominal, where %5 is usual; one fill alone does not vary by "
         "as much. Check the fill line, the runs since the fill before (%7) and blocked tips")},
    {"drift.range",
     QT_TRANSLATE_NOOP(
         "wording",
         "%1, %2: the fill of %3 differs from the one before by more than fills do; together they took %4 for 1,000 "
         "of nominal, where %5 is usual. Was the line met both times, and was everything poured written down?")},
    {"drift.average-high",
     QT_TRANSLATE_NOOP(
         "wording",
         "%1, %2: up to the fill of %3 the smoothed average has risen beyond its limit: %4 for 1,000 of nominal over "
         "the last fills (%6), where %5 is usual, in %7 runs. The machine puts out more than it did")},
    {"drift.average-low",
     QT_TRANSLATE_NOOP(
         "wording",
         "%1, %2: up to the fill of %3 the smoothed average has fallen below its limit: %4 for 1,000 of nominal over "
         "the last fills (%6), where %5 is usual, in %7 runs. The machine puts out less than it did")},
    {"drift.sum-high",
     QT_TRANSLATE_NOOP(
         "wording",
         "%1, %2: up to the fill of %3 small excesses have added up to more than chance: %4 for 1,000 of nominal over "
         "the last fills (%6), where %5 is usual, in %7 runs. The machine puts out more than it did")},
    {"drift.sum-low",
     QT_TRANSLATE_NOOP("wording",
                       "%1, %2: up to the fill of %3 small shortfalls have added up to more than chance: %4 for 1,000 of nominal "
                       "over the last fills (%6), where %5 is usual, in %7 runs. The machine puts out less than it did")},
    {"drift.too-few",
     QT_TRANSLATE_NOOP("wording", "%1, %2: %3 fills up to the line; drift is judged once there are %4 to compare with")},
    {"drift.no-spread",
     QT_TRANSLATE_NOOP("wording",
                       "%1, %2: all fills of the baseline are the same to the drop, so nothing can be judged by them")},
    {"drift.left-out", QT_TRANSLATE_NOOP("wording", "%1, %2: fills left out because the pattern of a run is not known: %3")},
};

}  // namespace

std::span<const Phrase> driftPhrases() { return phrases; }

}  // namespace laneward
