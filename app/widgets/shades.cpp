#include "app/widgets/shades.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

/// WCAG 2.1, definition of relative luminance.
double luminance(const QColor& colour) {
    const auto linear = [](double c) { return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

QColor turned(const QColor& colour, int degrees) {
    const QColor hsl = colour.toHsl();
    const int hue = hsl.hslHue() < 0 ? 30 : (hsl.hslHue() + degrees) % 360;
    return QColor::fromHsl(hue, std::max(hsl.hslSaturation(), 150), std::clamp(hsl.lightness(), 80, 170));
}

}  // namespace

Shades paperShades() {
    QPalette palette;
    palette.setColor(QPalette::Base, Qt::white);
    palette.setColor(QPalette::Window, Qt::white);
    palette.setColor(QPalette::Text, Qt::black);
    palette.setColor(QPalette::WindowText, Qt::black);
    return shadesOf(palette);
}

double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

QColor mixed(const QColor& a, const QColor& b, double part) {
    const auto blend = [part](double x, double y) { return x + (y - x) * part; };
    return QColor::fromRgbF(float(blend(a.redF(), b.redF())), float(blend(a.greenF(), b.greenF())),
                            float(blend(a.blueF(), b.blueF())));
}

QColor readable(const QColor& wanted, const QColor& ground, double ratio) {
    const QColor end = contrast(ground, Qt::white) > contrast(ground, Qt::black) ? Qt::white : Qt::black;
    QColor result = wanted;
    for (int step = 1; step <= 20 && contrast(result, ground) < ratio; ++step)
        result = mixed(wanted, end, step / 20.0);
    return result;
}

QColor Shades::event(EventKind kind) const {
    if (kind == EventKind::Closure) return closed;
    const QColor fill = mixed(base, turned(tint, int(kind) * 47), 0.13);
    const bool legible =
        contrast(fill, quiet) >= textContrast && contrast(fill, edge) >= markContrast && contrast(fill, job) >= markContrast;
    return legible ? fill : base;
}

Shades shadesOf(const QPalette& palette) {
    Shades s;
    s.base = palette.color(QPalette::Base);
    s.text = readable(palette.color(QPalette::Text), s.base, 7.0);
    s.tint = palette.color(QPalette::Highlight);
    // No fill under text is stronger than this one; a middling base leaves little room for it.
    double part = 0.16;
    while (part > 0.01 && contrast(mixed(s.base, s.text, part), s.text) < textContrast + 0.5)
        part -= 0.02;
    const QColor strongest = s.closed = mixed(s.base, s.text, part);
    s.quiet = readable(mixed(s.text, s.base, 0.32), strongest, textContrast);
    s.line = mixed(s.base, s.text, 0.13);
    s.edge = readable(mixed(s.text, s.base, 0.5), strongest, markContrast);
    s.heading = mixed(s.base, palette.color(QPalette::Window), 0.6);
    s.job = readable(s.tint, strongest, markContrast + 0.6);
    s.onJob = readable(palette.color(QPalette::HighlightedText), s.job, textContrast);
    s.now = readable(turned(s.tint, 165), strongest, textContrast);
    s.bad = readable(turned(s.tint, 140), strongest, textContrast);
    s.focus = s.text;
    return s;
}

}  // namespace laneward
