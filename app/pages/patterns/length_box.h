// A field for a distance from the foul line in the centre's units. The distance itself stays in micrometres, and a value that
// nobody has typed over is given back exactly as it was set.
#pragma once

#include "core/centre/centre.h"

#include <QDoubleSpinBox>

namespace laneward {

class LengthBox : public QDoubleSpinBox {
    Q_OBJECT

public:
    explicit LengthBox(UnitSystem units, QWidget* parent = nullptr);

    void setLength(Micrometres length);
    Micrometres length() const;

private:
    double m_perUnit;  ///< micrometres
    Micrometres m_set;
};

}  // namespace laneward
