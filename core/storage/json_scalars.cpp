#include "core/storage/json_scalars.h"

#include "core/storage/json_values.h"

namespace laneward {
namespace {

// Sums of accepted amounts stay far inside 64 bits: 10^15 microlitres are a million cubic metres.
constexpr std::int64_t largest = 1'000'000'000'000'000;
constexpr std::int64_t firstInstant = -62'135'596'800;  // 0001-01-01T00:00:00Z
constexpr std::int64_t lastInstant = 253'402'300'799;   // 9999-12-31T23:59:59Z

constexpr auto dateFormat = "yyyy-MM-dd";
constexpr auto timeFormat = "HH:mm:ss";

/// The number that the digits from `at` spell, -1 if one of them is none. A year of records holds a hundred thousand times, and
/// the general parsers of Qt, which know every format, would take most of the time to open a centre.
int digits(const QString& text, qsizetype at, int count) {
    int number = 0;
    for (qsizetype i = at; i < at + count; ++i) {
        const int digit = text[i].unicode() - u'0';
        if (digit < 0 || digit > 9) return -1;
        number = number * 10 + digit;
    }
    return number;
}

QDate dateFrom(const QString& text) {
    if (text.size() != 10 || text[4] != u'-' || text[7] != u'-') return {};
    const int year = digits(text, 0, 4);
    return year >= 1 ? QDate(year, digits(text, 5, 2), digits(text, 8, 2)) : QDate();
}

QTime timeFrom(const QString& text) {
    if (text.size() != 8 || text[2] != u':' || text[5] != u':') return {};
    return {digits(text, 0, 2), digits(text, 3, 2), digits(text, 6, 2)};
}

LocalTime localFrom(const QString& text) {
    return text.size() == 19 && text[10] == u'T' ? LocalTime{dateFrom(text.left(10)), timeFrom(text.mid(11))} : LocalTime{};
}

QString localText(const LocalTime& v) {
    return v.date.toString(QLatin1StringView(dateFormat)) + u'T' + v.time.toString(QLatin1StringView(timeFormat));
}

/// Keys of a finding's values, in the order of the alternatives of Value.
constexpr std::array valueKeys{"count", "s", "ul", "um", "mv", "instant", "day", "text"};
static_assert(valueKeys.size() == std::variant_size_v<Value>);

template <size_t I>
bool readAlternative(const QJsonValue& json, const JsonPath& at, Value& v, JsonFault& fault) {
    std::variant_alternative_t<I, Value> read{};
    if (!fromJson(json, at, read, fault)) return false;
    v = read;
    return true;
}

template <size_t... I>
bool readAlternatives(const QJsonValue& json, const JsonPath& at, Value& v, JsonFault& fault, std::index_sequence<I...>) {
    return ((at.key == QLatin1StringView(valueKeys[I]) && readAlternative<I>(json, at, v, fault)) || ...);
}

}  // namespace

QString JsonPath::text() const {
    QString before = parent ? parent->text() : QString();
    if (index >= 0) return before + u'[' + QString::number(index) + u']';
    if (key.isEmpty()) return before;
    return before.isEmpty() ? QString(key) : before + u'.' + key;
}

bool JsonFault::set(const QByteArray& broken, const JsonPath& at) {
    rule = broken;
    path = at.text();
    return false;
}

QJsonValue toJson(bool v) { return v; }
QJsonValue toJson(std::int64_t v) { return QJsonValue(qint64{v}); }
QJsonValue toJson(const QString& v) { return v; }
QJsonValue toJson(const QByteArray& v) { return QString::fromUtf8(v); }
QJsonValue toJson(QDate v) { return v.toString(QLatin1StringView(dateFormat)); }
QJsonValue toJson(QTime v) { return v.toString(QLatin1StringView(timeFormat)); }
QJsonValue toJson(const LocalTime& v) { return localText(v); }
QJsonValue toJson(const LaneSet& v) { return toJson(v.lanes()); }

QJsonValue toJson(Instant v) {
    const QDateTime utc = QDateTime::fromSecsSinceEpoch(v.seconds, Qt::UTC);
    return QString(localText({utc.date(), utc.time()}) + u'Z');
}

QJsonValue toJson(const Value& v) {
    QJsonObject object;
    std::visit([&](const auto& held) { object.insert(QLatin1StringView(valueKeys.at(v.index())), toJson(held)); }, v);
    return object;
}

bool fromJson(const QJsonValue& json, const JsonPath& at, bool& v, JsonFault& fault) {
    v = json.toBool();
    return json.isBool() || fault.set("json.bad-value", at);
}

bool fromJson(const QJsonValue& json, const JsonPath& at, std::int64_t& v, JsonFault& fault) {
    v = json.toInteger(largest + 1);  // also for what is no whole number
    return (v >= -largest && v <= largest) || fault.set("json.bad-value", at);
}

bool fromJson(const QJsonValue& json, const JsonPath& at, QString& v, JsonFault& fault) {
    v = json.toString();
    const bool good = json.isString() && v.size() <= limits::noteLength && v.isValidUtf16() && !v.contains(QChar(0));
    return good || fault.set("json.bad-value", at);
}

bool fromJson(const QJsonValue& json, const JsonPath& at, QByteArray& v, JsonFault& fault) {
    QString text;
    if (!fromJson(json, at, text, fault)) return false;
    v = text.toUtf8();
    return true;
}

bool fromJson(const QJsonValue& json, const JsonPath& at, Instant& v, JsonFault& fault) {
    const QString text = json.toString();
    const LocalTime utc = text.endsWith(u'Z') ? localFrom(text.chopped(1)) : LocalTime{};
    if (!utc.isValid()) return fault.set("json.bad-value", at);
    static const Zone universal;
    v = universal.toInstant(utc);
    return (v.seconds >= firstInstant && v.seconds <= lastInstant) || fault.set("json.bad-value", at);
}

bool fromJson(const QJsonValue& json, const JsonPath& at, QDate& v, JsonFault& fault) {
    v = dateFrom(json.toString());
    return v.isValid() || fault.set("json.bad-value", at);
}

bool fromJson(const QJsonValue& json, const JsonPath& at, QTime& v, JsonFault& fault) {
    v = timeFrom(json.toString());
    return v.isValid() || fault.set("json.bad-value", at);
}

bool fromJson(const QJsonValue& json, const JsonPath& at, LocalTime& v, JsonFault& fault) {
    v = localFrom(json.toString());
    return v.isValid() || fault.set("json.bad-value", at);
}

bool fromJson(const QJsonValue& json, const JsonPath& at, LaneSet& v, JsonFault& fault) {
    std::vector<int> lanes;
    if (!fromJson(json, at, lanes, fault)) return false;
    v = {};
    for (const int lane : lanes) {
        if (lane < 1 || lane > limits::lanes || v.contains(lane)) return fault.set("json.bad-value", at);
        v.insert(lane);
    }
    return true;
}

bool fromJson(const QJsonValue& json, const JsonPath& at, Value& v, JsonFault& fault) {
    const QJsonObject object = json.toObject();
    if (object.size() != 1) return fault.set("json.bad-value", at);
    const auto only = object.constBegin();
    for (size_t i = 0; i < valueKeys.size(); ++i)
        if (only.key() == QLatin1StringView(valueKeys[i]))
            return readAlternatives(QJsonValue(only.value()), {&at, QLatin1StringView(valueKeys[i])}, v, fault,
                                    std::make_index_sequence<valueKeys.size()>());
    return fault.set("json.unknown-key", at);
}

}  // namespace laneward
