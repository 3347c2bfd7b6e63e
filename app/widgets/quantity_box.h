// A field for an amount of a supply in the centre's units: litres, metres or pieces, or fluid ounces and feet. The amount itself
// stays in base units, and a value that nobody has typed over is given back exactly as it was set.
#pragma once

#include "core/centre/centre.h"
#include "core/supplies/supply.h"

#include <QDoubleSpinBox>

namespace laneward {

/// The unit in which amounts of a supply are typed.
struct QuantityUnit {
    double size = 1;  ///< base units
    int decimals = 0;
    QString name;  ///< "L"; empty for pieces

    /// A number as it is typed; none when it is no number. Amounts below zero and beyond reason are given back as they are.
    std::optional<Amount> amountOf(const QString& typed, const QLocale& locale) const;
    /// Without the unit and without zeros at the end.
    QString text(Amount amount, const QLocale& locale) const;
};
QuantityUnit quantityUnit(SupplyKind kind, UnitSystem units);

class QuantityBox : public QDoubleSpinBox {
    Q_OBJECT

public:
    QuantityBox(SupplyKind kind, UnitSystem units, QWidget* parent = nullptr);

    /// Other units; an amount that has none of them is nothing then.
    void setKind(SupplyKind kind, UnitSystem units);
    void setAmount(Amount amount);
    Amount amount() const;

private:
    QuantityUnit m_unit;
    std::optional<BaseUnit> m_base;
    Amount m_set;
};

}  // namespace laneward
