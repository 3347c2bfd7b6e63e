#include "core/base/money.h"

#include "core/base/limits.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace laneward {

namespace {

constexpr std::array<std::string_view, 16> withoutMinor{"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW",
                                                        "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF"};
constexpr std::array<std::string_view, 7> withThree{"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"};

template <class List>
bool contains(const List& list, const QByteArray& code) {
    return std::find(list.begin(), list.end(), std::string_view(code.constData(), size_t(code.size()))) != list.end();
}

}  // namespace

std::vector<Finding> faultsOf(const Money& money, const QByteArray& currency, const QString& subject) {
    std::vector<Finding> faults;
    const QString name = subject.left(limits::nameLength);
    if (money.minor < 0 || money.minor > limits::moneyMinor)
        faults.push_back({Severity::Fault, "price.amount", name, {std::int64_t{money.minor}}});
    if (!money.isZero() && money.currency != currency)
        faults.push_back(
            {Severity::Fault, "price.currency", name, {QString::fromUtf8(money.currency), QString::fromUtf8(currency)}});
    return faults;
}

bool isCurrencyCode(const QByteArray& code) {
    return code.size() == 3 && std::all_of(code.begin(), code.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

int minorDigits(const QByteArray& currency) {
    if (contains(withoutMinor, currency)) return 0;
    return contains(withThree, currency) ? 3 : 2;
}

}  // namespace laneward
