#include "app/pages/supplies/quantity_box.h"

#include "core/base/limits.h"

#include <cmath>

namespace laneward {

namespace {

constexpr double microlitresPerLitre = 1'000'000;
constexpr double microlitresPerFluidOunce = 29'573.5295625;  // NIST Handbook 44, appendix C; from memory
constexpr double millimetresPerMetre = 1'000;
constexpr double millimetresPerFoot = 304.8;  // exactly, 16 CFR 500.19

}  // namespace

QuantityBox::QuantityBox(SupplyKind kind, UnitSystem units, QWidget* parent) : QDoubleSpinBox(parent) {
    const bool metric = units == UnitSystem::Metric;
    switch (unitOf(kind)) {
        case BaseUnit::Microlitre:
            m_perUnit = metric ? microlitresPerLitre : microlitresPerFluidOunce;
            setSuffix(metric ? tr(" L", "suffix: litres") : tr(" fl oz", "suffix: fluid ounces"));
            setDecimals(metric ? 3 : 1);
            break;
        case BaseUnit::Millimetre:
            m_perUnit = metric ? millimetresPerMetre : millimetresPerFoot;
            setSuffix(metric ? tr(" m", "suffix: metres") : tr(" ft", "suffix: feet"));
            setDecimals(metric ? 2 : 1);
            break;
        case BaseUnit::Piece:
            setDecimals(0);
            break;
    }
    // What cannot be is refused in words, so it can be typed.
    const double most = std::floor(double(limits::stockAmount) / m_perUnit);
    setRange(-most, most);
    setGroupSeparatorShown(true);
    setAlignment(Qt::AlignTrailing);
}

void QuantityBox::setAmount(Amount amount) {
    m_set = amount;
    setValue(double(amount.value) / m_perUnit);
}

Amount QuantityBox::amount() const {
    const double step = 0.5 * std::pow(10.0, -decimals());
    if (std::abs(double(m_set.value) / m_perUnit - value()) <= step) return m_set;
    return {std::llround(value() * m_perUnit)};
}

}  // namespace laneward
