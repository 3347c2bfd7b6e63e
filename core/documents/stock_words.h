// Stock and money in words.
#pragma once

#include "core/documents/wording.h"
#include "core/supplies/movement.h"

namespace laneward {

/// "1.9 L", "12.4 m", "3": an amount of a supply of this kind.
QString amountText(Amount amount, SupplyKind kind, const Speech& speech);
/// "318.00 EUR", in the locale's digits.
QString moneyText(const Money& money, const Speech& speech);
/// "+318.00 EUR", "-1.20 EUR"; nothing more and nothing less is "±0".
QString signedMoneyText(const Money& money, const Speech& speech);
/// "Sat 12/12/2026": the day as it is written where that matters.
QString dayWithWeekday(QDate date, const Speech& speech);
/// "2 x 5 L": whole packs.
QString packsText(int packs, Amount pack, SupplyKind kind, const Speech& speech);
QString text(SupplyKind kind);
QString text(MovementKind kind);
QString text(OrderState state);
/// "shelf", "open", "tank"; machines are named by the caller.
QString text(Place::Kind kind);

}  // namespace laneward
