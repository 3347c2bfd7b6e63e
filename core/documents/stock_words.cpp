#include "core/documents/stock_words.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

}  // namespace

QString amountText(Amount amount, SupplyKind kind, const Speech& speech) {
    switch (unitOf(kind)) {
        case BaseUnit::Microlitre:
            return amountText(Microlitres{amount.value}, speech);
        case BaseUnit::Millimetre:
            return lengthText(Micrometres{amount.value * 1'000}, speech);
        case BaseUnit::Piece:
            break;
    }
    return speech.locale.toString(qlonglong(amount.value));
}

QString moneyText(const Money& money, const Speech& speech) {
    const int digits = minorDigits(money.currency);
    std::int64_t whole = 1;
    for (int n = 0; n < digits; ++n)
        whole *= 10;
    const QString number = speech.locale.toString(double(money.minor) / double(whole), 'f', digits);
    return money.currency.isEmpty() ? number
                                    : say(QT_TRANSLATE_NOOP("wording", "%1 %2")).arg(number, QString::fromLatin1(money.currency));
}

QString signedMoneyText(const Money& money, const Speech& speech) {
    if (money.minor == 0) return QStringLiteral("\u00b10");
    return money.minor > 0 ? QStringLiteral("+") + moneyText(money, speech) : moneyText(money, speech);
}

QString dayWithWeekday(QDate date, const Speech& speech) {
    const QString day = speech.locale.dayName(date.dayOfWeek(), QLocale::ShortFormat);
    const QString text =
        speech.locale.language() == QLocale::C ? date.toString(Qt::ISODate) : speech.locale.toString(date, QLocale::ShortFormat);
    return day + u' ' + text;
}

QString packsText(int packs, Amount pack, SupplyKind kind, const Speech& speech) {
    const QString count = speech.locale.toString(packs);
    if (unitOf(kind) == BaseUnit::Piece && pack == Amount{1}) return count;
    return say(QT_TRANSLATE_NOOP("wording", "%1 x %2")).arg(count, amountText(pack, kind, speech));
}

QString text(SupplyKind kind) {
    switch (kind) {
        case SupplyKind::Conditioner:
            return say(QT_TRANSLATE_NOOP("wording", "conditioner"));
        case SupplyKind::Cleaner:
            return say(QT_TRANSLATE_NOOP("wording", "cleaner"));
        case SupplyKind::ApproachCleaner:
            return say(QT_TRANSLATE_NOOP("wording", "approach cleaner"));
        case SupplyKind::Cloth:
            return say(QT_TRANSLATE_NOOP("wording", "cloth"));
        case SupplyKind::Part:
            return say(QT_TRANSLATE_NOOP("wording", "part"));
        case SupplyKind::Pack:
            return say(QT_TRANSLATE_NOOP("wording", "pack"));
    }
    return {};
}

QString text(MovementKind kind) {
    switch (kind) {
        case MovementKind::Received:
            return say(QT_TRANSLATE_NOOP("wording", "received"));
        case MovementKind::Opened:
            return say(QT_TRANSLATE_NOOP("wording", "opened"));
        case MovementKind::Filled:
            return say(QT_TRANSLATE_NOOP("wording", "filled"));
        case MovementKind::Used:
            return say(QT_TRANSLATE_NOOP("wording", "used"));
        case MovementKind::Spilled:
            return say(QT_TRANSLATE_NOOP("wording", "spilled"));
        case MovementKind::Counted:
            return say(QT_TRANSLATE_NOOP("wording", "counted"));
        case MovementKind::Returned:
            return say(QT_TRANSLATE_NOOP("wording", "returned"));
        case MovementKind::Disposed:
            return say(QT_TRANSLATE_NOOP("wording", "disposed"));
    }
    return {};
}

QString text(OrderState state) {
    switch (state) {
        case OrderState::Draft:
            return say(QT_TRANSLATE_NOOP("wording", "draft"));
        case OrderState::Placed:
            return say(QT_TRANSLATE_NOOP("wording", "placed"));
        case OrderState::Closed:
            return say(QT_TRANSLATE_NOOP("wording", "closed"));
    }
    return {};
}

QString text(Place::Kind kind) {
    switch (kind) {
        case Place::Kind::Shelf:
            return say(QT_TRANSLATE_NOOP("wording", "shelf"));
        case Place::Kind::Open:
            return say(QT_TRANSLATE_NOOP("wording", "open"));
        case Place::Kind::Tank:
            return say(QT_TRANSLATE_NOOP("wording", "tank"));
        case Place::Kind::WasteTank:
            return say(QT_TRANSLATE_NOOP("wording", "waste tank"));
        case Place::Kind::Supplier:
            return say(QT_TRANSLATE_NOOP("wording", "supplier"));
        case Place::Kind::WaterMain:
            return say(QT_TRANSLATE_NOOP("wording", "water main"));
        case Place::Kind::Lane:
            return say(QT_TRANSLATE_NOOP("wording", "lane"));
        case Place::Kind::Drain:
            return say(QT_TRANSLATE_NOOP("wording", "drain"));
        case Place::Kind::Loss:
            return say(QT_TRANSLATE_NOOP("wording", "loss"));
        case Place::Kind::Opening:
            return say(QT_TRANSLATE_NOOP("wording", "opening stock"));
    }
    return {};
}

}  // namespace laneward
