// Colours for painted pages, all derived from a palette, so that light, dark and high-contrast themes are followed live.
//
// Ratios are those of WCAG 2.1, success criteria 1.4.3 (text, 4.5) and 1.4.11 (marks, 3).
//
//     const Shades shades = shadesOf(palette());
//     painter.setPen(shades.quiet);
#pragma once

#include "core/calendar/series.h"

#include <QColor>
#include <QPalette>

namespace laneward {

inline constexpr double textContrast = 4.5;
inline constexpr double markContrast = 3.0;

struct Shades {
    QColor base;  ///< what pages are painted on
    QColor text;
    QColor quiet;    ///< text that steps back
    QColor line;     ///< hour lines: decoration only
    QColor edge;     ///< outlines of blocks
    QColor heading;  ///< fill behind column heads
    QColor job;      ///< fill and outline of treatments
    QColor onJob;    ///< text on it
    QColor now;      ///< the line of the present moment
    QColor bad;      ///< unmet, late, conflicts
    QColor focus;
    QColor closed;  ///< fill of closures
    QColor tint;    ///< the hue from which event fills are made

    QColor event(EventKind kind) const;
};

Shades shadesOf(const QPalette& palette);
/// Black on white, whatever the screen's theme.
Shades paperShades();

/// Contrast ratio 1 … 21.
double contrast(const QColor& a, const QColor& b);
/// `wanted`, moved towards black or white as little as it takes to reach `ratio` on `ground`.
QColor readable(const QColor& wanted, const QColor& ground, double ratio);
/// `a` with `part` (0 … 1) of `b`.
QColor mixed(const QColor& a, const QColor& b, double part);

}  // namespace laneward
