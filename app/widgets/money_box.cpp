#include "app/widgets/money_box.h"

#include <cmath>

namespace laneward {

namespace {

constexpr double mostTyped = 1e10;  // what cannot be is refused in words, so it can be typed

}  // namespace

MoneyBox::MoneyBox(QWidget* parent) : QDoubleSpinBox(parent) {
    setRange(-mostTyped, mostTyped);
    setGroupSeparatorShown(true);
    setAlignment(Qt::AlignTrailing);
    setButtonSymbols(QAbstractSpinBox::NoButtons);
    connect(this, &QDoubleSpinBox::valueChanged, this, [this](double now) {
        const QString suffix = u' ' + QString::fromLatin1(m_currency);
        if (now != m_shown && suffix != this->suffix()) setSuffix(suffix);
    });
}

void MoneyBox::setMoney(const Money& money, const QByteArray& currency) {
    m_currency = currency;
    m_set = money;
    setDecimals(minorDigits(currency));
    m_shown = double(money.minor) / std::pow(10.0, decimals());
    setValue(m_shown);
    m_shown = value();
    const bool other = !money.isZero() && money.currency != currency;
    setSuffix(u' ' + QString::fromLatin1(other ? money.currency : currency));
}

Money MoneyBox::money() const {
    if (value() == m_shown) return m_set;
    return {std::llround(value() * std::pow(10.0, decimals())), m_currency};
}

}  // namespace laneward
