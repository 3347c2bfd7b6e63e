#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"reading.lane", QT_TRANSLATE_NOOP("wording", "tape reading: there is no lane %1; lanes run from 1 to %2")},
    {"reading.distance", QT_TRANSLATE_NOOP("wording", "tape reading, lane %1: the distance %2 is not on the lane")},
    {"reading.lane-of-run",
     QT_TRANSLATE_NOOP("wording", "tape reading, lane %1: the number of the lane in its run runs from 0 to %3, not %2")},
    {"reading.film", QT_TRANSLATE_NOOP("wording", "tape reading, lane %1, board %2: film runs from 0 to %3 units")},
    {"reading.nothing", QT_TRANSLATE_NOOP("wording", "tape reading, lane %1: no board was measured")},
    {"carry.too-few",
     QT_TRANSLATE_NOOP("wording", "%1 boards with film were read; a carry length needs %2 or more, where film was laid")},
    {"inspection.lane", QT_TRANSLATE_NOOP("wording", "inspection: there is no lane %1; lanes run from 1 to %2")},
    {"inspection.distance", QT_TRANSLATE_NOOP("wording", "inspection, lane %1: the distance %2 is not on the lane")},
    {"inspection.departure", QT_TRANSLATE_NOOP("wording", "inspection, lane %1: a departure of %2 at %3 is out of range")},
    {"inspection.nothing", QT_TRANSLATE_NOOP("wording", "inspection, lane %1: nothing was measured")},
};

}  // namespace

std::span<const Phrase> readingPhrases() { return phrases; }

}  // namespace laneward
