// A field for money in one currency, with the digits that the currency has.
#pragma once

#include "core/base/money.h"

#include <QDoubleSpinBox>

namespace laneward {

class MoneyBox : public QDoubleSpinBox {
    Q_OBJECT

public:
    explicit MoneyBox(QWidget* parent = nullptr);

    /// Money of another currency than `currency` is shown in its own, until it is typed over.
    void setMoney(const Money& money, const QByteArray& currency);
    Money money() const;

private:
    QByteArray m_currency;
    Money m_set;
    double m_shown = 0;  ///< the value that stands for m_set
};

}  // namespace laneward
