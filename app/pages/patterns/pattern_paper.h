// One page of a pattern: its strokes in working order, totals, and the film map in tones that print in black and white.
//
//     paintPatternPage(printer, {pattern, brush, machineName, centreName}, speech);
#pragma once

#include "core/documents/film_words.h"

class QPagedPaintDevice;

namespace laneward {

struct PatternPage {
    Pattern pattern;
    Brush brush;
    QString machine;  ///< whose brush it is; empty = without carry
    QString centre;
    std::array<QString, conditionerSlots> conditioners;
};

/// Whether something could be painted.
bool paintPatternPage(QPagedPaintDevice& device, const PatternPage& page, const Speech& speech);

}  // namespace laneward
