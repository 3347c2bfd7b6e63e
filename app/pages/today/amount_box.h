// A field for an amount of liquid in the centre's units: millilitres or US fluid ounces. The amount itself stays in microlitres,
// and a value that nobody has typed over is given back exactly as it was set.
#pragma once

#include "core/centre/centre.h"

#include <QDoubleSpinBox>

namespace laneward {

class AmountBox : public QDoubleSpinBox {
    Q_OBJECT

public:
    AmountBox(UnitSystem units, Microlitres most, QWidget* parent = nullptr);

    void setAmount(Microlitres amount);
    Microlitres amount() const;

private:
    double m_perUnit;  ///< microlitres
    Microlitres m_set;
};

}  // namespace laneward
