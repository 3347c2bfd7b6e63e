// Money and currencies.
#include "core/base/money.h"

#include <QTest>

using namespace laneward;

class TestMoney : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void amountsOfOneCurrencyAdd();
    void nothingHasNoCurrency();
    void codesAreThreeCapitals();
    void minorUnitsFollowTheCode();
};

void TestMoney::amountsOfOneCurrencyAdd() {
    const Money freight{1'250, "EUR"};
    QVERIFY((freight + Money{50, "EUR"} == Money{1'300, "EUR"}));
    QVERIFY((freight * 3 == Money{3'750, "EUR"}));
    QVERIFY((freight != Money{1'250, "USD"}));
}

void TestMoney::nothingHasNoCurrency() {
    QVERIFY((Money{} + Money{5, "JPY"} == Money{5, "JPY"}));
    QVERIFY((Money{5, "JPY"} + Money{} == Money{5, "JPY"}));
    QVERIFY(Money{}.isZero() && (Money{0, "EUR"}.isZero()));
}

void TestMoney::codesAreThreeCapitals() {
    for (const char* code : {"EUR", "USD", "XAF"})
        QVERIFY(isCurrencyCode(code));
    for (const char* code : {"", "EU", "EURO", "eur", "E R", "E1R", "€"})
        QVERIFY2(!isCurrencyCode(code), code);
}

// ISO 4217, list one; from memory.
void TestMoney::minorUnitsFollowTheCode() {
    QCOMPARE(minorDigits("EUR"), 2);
    QCOMPARE(minorDigits("JPY"), 0);
    QCOMPARE(minorDigits("KWD"), 3);
    QCOMPARE(minorDigits("ZZZ"), 2);
}

QTEST_GUILESS_MAIN(TestMoney)
#include "tst_money.moc"
