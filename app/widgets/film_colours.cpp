#include "app/widgets/film_colours.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace laneward {

namespace {

struct Lab {
    double L = 0, a = 0, b = 0;
};

/// Lightness, chroma and hue in degrees.
Lab lch(double L, double chroma, double hue) {
    const double angle = hue * std::numbers::pi / 180;
    return {L, chroma * std::cos(angle), chroma * std::sin(angle)};
}

double encoded(double linear) {
    const double c = std::clamp(linear, 0.0, 1.0);
    return c <= 0.0031308 ? 12.92 * c : 1.055 * std::pow(c, 1 / 2.4) - 0.055;  // IEC 61966-2-1
}

/// Ottosson, 'A perceptual color space for image processing' (2020), inverse matrices.
QRgb rgbOf(const Lab& lab) {
    const double l = std::pow(lab.L + 0.3963377774 * lab.a + 0.2158037573 * lab.b, 3);
    const double m = std::pow(lab.L - 0.1055613458 * lab.a - 0.0638541728 * lab.b, 3);
    const double s = std::pow(lab.L - 0.0894841775 * lab.a - 1.2914855480 * lab.b, 3);
    return QColor::fromRgbF(float(encoded(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s)),
                            float(encoded(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s)),
                            float(encoded(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s)))
        .rgb();
}

Lab between(const Lab& x, const Lab& y, double part) {
    return {x.L + (y.L - x.L) * part, x.a + (y.a - x.a) * part, x.b + (y.b - x.b) * part};
}

double distance(const Lab& x, const Lab& y) { return std::hypot(x.L - y.L, x.a - y.a, x.b - y.b); }

/// The place on a chain of straight pieces, `part` of its length from its beginning.
Lab along(const std::vector<Lab>& chain, double part) {
    double length = 0;
    for (size_t i = 1; i < chain.size(); ++i)
        length += distance(chain[i - 1], chain[i]);
    double left = part * length;
    for (size_t i = 1; i < chain.size(); ++i) {
        const double piece = distance(chain[i - 1], chain[i]);
        if (left <= piece || i + 1 == chain.size()) return between(chain[i - 1], chain[i], std::min(1.0, left / piece));
        left -= piece;
    }
    return chain.back();
}

template <class Ramp>
void fill(Ramp& ramp, const std::vector<Lab>& chain) {
    for (size_t i = 0; i < ramp.size(); ++i)
        ramp[i] = rgbOf(along(chain, double(i) / double(ramp.size() - 1)));
}

size_t step(double part) { return size_t(std::lround(std::clamp(part, 0.0, 1.0) * (FilmColours::steps - 1))); }

}  // namespace

FilmColours::FilmColours(const QColor& ground) {
    if (ground.lightnessF() >= 0.5F) {
        fill(m_amount,
             {lch(0.97, 0.02, 100), lch(0.84, 0.08, 150), lch(0.66, 0.1, 205), lch(0.47, 0.12, 255), lch(0.28, 0.1, 290)});
        fill(m_less, {lch(0.97, 0, 0), lch(0.66, 0.1, 245), lch(0.4, 0.13, 260)});
        fill(m_more, {lch(0.97, 0, 0), lch(0.72, 0.13, 60), lch(0.48, 0.13, 45)});
    } else {
        fill(m_amount,
             {lch(0.2, 0.03, 290), lch(0.42, 0.12, 270), lch(0.6, 0.11, 220), lch(0.78, 0.1, 165), lch(0.96, 0.08, 105)});
        fill(m_less, {lch(0.25, 0, 0), lch(0.5, 0.1, 255), lch(0.8, 0.1, 240)});
        fill(m_more, {lch(0.25, 0, 0), lch(0.52, 0.12, 50), lch(0.84, 0.12, 70)});
    }
}

QRgb FilmColours::amount(double part) const { return m_amount[step(part)]; }

QRgb FilmColours::difference(double part) const { return part < 0 ? m_less[step(-part)] : m_more[step(part)]; }

}  // namespace laneward
