// Colours of film maps: even steps of film are even steps to the eye, and whoever sees fewer hues still sees the order.
//
// Amounts run along a curve in OKLab (Ottosson 2020) whose lightness falls (rises on a dark ground) all the way, cut into steps
// of equal length; differences run from neutral to blue (less) and to orange (more), which colour-blind eyes tell apart.
//
//     const FilmColours colours(palette().color(QPalette::Base));
//     image.setPixel(x, y, colours.amount(units / most));
#pragma once

#include <QColor>

#include <array>

namespace laneward {

class FilmColours {
public:
    static constexpr int steps = 256;

    /// `ground` is what the map is painted on: no film looks nearly like it.
    explicit FilmColours(const QColor& ground);

    /// 0 = none … 1 = most; beyond, the ends.
    QRgb amount(double part) const;
    /// -1 = most less … 0 = equal … 1 = most more; beyond, the ends.
    QRgb difference(double part) const;

private:
    using Ramp = std::array<QRgb, size_t(steps)>;
    Ramp m_amount;
    Ramp m_less;
    Ramp m_more;
};

}  // namespace laneward
