// Money: whole minor units (cents) of one currency. Amounts of two currencies are never added.
//
// Currencies are named by ISO 4217 codes ("EUR"); how many digits a minor unit has follows from the code.
#pragma once

#include "core/base/finding.h"

#include <QByteArray>
#include <QtGlobal>

#include <compare>
#include <cstdint>

namespace laneward {

struct Money {
    std::int64_t minor = 0;
    QByteArray currency;  ///< ISO 4217; empty only for an amount of nothing

    bool isZero() const { return minor == 0; }

    friend bool operator==(const Money&, const Money&) = default;
    friend Money operator+(const Money& a, const Money& b) {
        Q_ASSERT(a.currency == b.currency || a.isZero() || b.isZero());
        return {a.minor + b.minor, a.currency.isEmpty() ? b.currency : a.currency};
    }
    friend Money operator*(const Money& a, std::int64_t n) { return {a.minor * n, a.currency}; }
};

/// What cannot be ("price.amount", "price.currency"): less than nothing or beyond reason, another currency than the centre's.
std::vector<Finding> faultsOf(const Money& money, const QByteArray& currency, const QString& subject);

/// Three capital letters.
bool isCurrencyCode(const QByteArray& code);
/// Digits behind the point: 2 for most, 0 for JPY and its like, 3 for KWD and its like (ISO 4217, list one; from memory).
int minorDigits(const QByteArray& currency);

}  // namespace laneward
