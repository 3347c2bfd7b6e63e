#include "app/pages/patterns/length_box.h"

#include "core/patterns/pattern.h"

#include <cmath>

namespace laneward {

LengthBox::LengthBox(UnitSystem units, QWidget* parent)
    : QDoubleSpinBox(parent), m_perUnit(units == UnitSystem::Metric ? 1'000'000.0 : double(feet(1).value)) {
    const bool metric = units == UnitSystem::Metric;
    setDecimals(metric ? 3 : 2);
    setRange(0, double(laneLength.value) / m_perUnit);
    setSingleStep(metric ? 0.5 : 1);
    setSuffix(metric ? tr(" m", "suffix") : tr(" ft", "suffix"));
    setAlignment(Qt::AlignTrailing);
}

void LengthBox::setLength(Micrometres length) {
    m_set = length;
    setValue(double(length.value) / m_perUnit);
}

Micrometres LengthBox::length() const {
    const double step = 0.5 * std::pow(10.0, -decimals());
    if (std::abs(double(m_set.value) / m_perUnit - value()) <= step) return m_set;
    return {std::llround(value() * m_perUnit)};
}

}  // namespace laneward
