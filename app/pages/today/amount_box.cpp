#include "app/pages/today/amount_box.h"

#include <cmath>

namespace laneward {

// 1 US fl oz = 29.5735295625 mL exactly (NIST Handbook 44, appendix C; from memory).
AmountBox::AmountBox(UnitSystem units, Microlitres most, QWidget* parent)
    : QDoubleSpinBox(parent), m_perUnit(units == UnitSystem::Metric ? 1'000.0 : 29'573.5295625) {
    const bool metric = units == UnitSystem::Metric;
    setDecimals(metric ? 0 : 1);
    setRange(0, std::ceil(double(most.value) / m_perUnit));
    setSingleStep(metric ? 50 : 1);
    setSuffix(metric ? tr(" mL", "suffix") : tr(" fl oz", "suffix"));
    setGroupSeparatorShown(true);
    setAlignment(Qt::AlignTrailing);
}

void AmountBox::setAmount(Microlitres amount) {
    m_set = amount;
    setValue(double(amount.value) / m_perUnit);
}

Microlitres AmountBox::amount() const {
    const double step = 0.5 * std::pow(10.0, -decimals());
    if (std::abs(double(m_set.value) / m_perUnit - value()) <= step) return m_set;
    return {std::llround(value() * m_perUnit)};
}

}  // namespace laneward
