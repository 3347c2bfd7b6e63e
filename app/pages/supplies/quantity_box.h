// A field for an amount of a supply in the centre's units: litres, metres or pieces, or fluid ounces and feet. The amount itself
// stays in base units, and a value that nobody has typed over is given back exactly as it was set.
#pragma once

#include "core/centre/centre.h"
#include "core/supplies/supply.h"

#include <QDoubleSpinBox>

namespace laneward {

class QuantityBox : public QDoubleSpinBox {
    Q_OBJECT

public:
    QuantityBox(SupplyKind kind, UnitSystem units, QWidget* parent = nullptr);

    void setAmount(Amount amount);
    Amount amount() const;

private:
    double m_perUnit = 1;  ///< base units
    Amount m_set;
};

}  // namespace laneward
