#include "app/widgets/quantity_box.h"

#include "app/widgets/decimal_text.h"
#include "core/base/limits.h"

#include <cmath>

namespace laneward {

namespace {

constexpr double microlitresPerLitre = 1'000'000;
constexpr double microlitresPerFluidOunce = 29'573.5295625;  // NIST Handbook 44, appendix C; from memory
constexpr double millimetresPerMetre = 1'000;
constexpr double millimetresPerFoot = 304.8;  // exactly, 16 CFR 500.19
constexpr double mostTyped = 1e15;            // what follows from it still fits

}  // namespace

QuantityUnit quantityUnit(SupplyKind kind, UnitSystem units) {
    const bool metric = units == UnitSystem::Metric;
    switch (unitOf(kind)) {
        case BaseUnit::Microlitre:
            if (metric) return {microlitresPerLitre, 3, QuantityBox::tr("L", "litres")};
            return {microlitresPerFluidOunce, 1, QuantityBox::tr("fl oz", "fluid ounces")};
        case BaseUnit::Millimetre:
            if (metric) return {millimetresPerMetre, 2, QuantityBox::tr("m", "metres")};
            return {millimetresPerFoot, 1, QuantityBox::tr("ft", "feet")};
        case BaseUnit::Piece:
            break;
    }
    return {};
}

std::optional<Amount> QuantityUnit::amountOf(const QString& typed, const QLocale& locale) const {
    const std::optional<double> number = decimalOf(typed, locale);
    if (!number || std::abs(*number) * size > mostTyped) return std::nullopt;
    if (decimals == 0 && *number != std::floor(*number)) return std::nullopt;
    return Amount{std::llround(*number * size)};
}

QString QuantityUnit::text(Amount amount, const QLocale& locale) const {
    return decimalText(double(amount.value) / size, decimals, locale);
}

QuantityBox::QuantityBox(SupplyKind kind, UnitSystem units, QWidget* parent) : QDoubleSpinBox(parent) {
    setGroupSeparatorShown(true);
    setAlignment(Qt::AlignTrailing);
    setKind(kind, units);
}

void QuantityBox::setKind(SupplyKind kind, UnitSystem units) {
    const bool same = m_base == unitOf(kind);
    const Amount before = same ? amount() : Amount{};
    m_base = unitOf(kind);
    m_unit = quantityUnit(kind, units);
    setSuffix(m_unit.name.isEmpty() ? QString() : u' ' + m_unit.name);
    setDecimals(m_unit.decimals);
    // What cannot be is refused in words, so it can be typed.
    const double most = std::floor(double(limits::stockAmount) / m_unit.size);
    setRange(-most, most);
    setAmount(before);
}

void QuantityBox::setAmount(Amount amount) {
    m_set = amount;
    setValue(double(amount.value) / m_unit.size);
}

Amount QuantityBox::amount() const {
    const double step = 0.5 * std::pow(10.0, -decimals());
    if (std::abs(double(m_set.value) / m_unit.size - value()) <= step) return m_set;
    return {std::llround(value() * m_unit.size)};
}

}  // namespace laneward
