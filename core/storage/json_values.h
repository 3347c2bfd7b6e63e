// Values as JSON and back, by the field lists of fields*.h. What fromJson() accepts is what may be stored: imports and edits
// share one rule.
//
// Single values are written as json_scalars.h says; an absent value is null.
//
//     QJsonObject o = toJson(machine);
//     JsonFault fault;
//     if (!fromJson(o, {}, machine, fault)) report(fault.rule, fault.path);
#pragma once

#include "core/storage/fields_centre.h"
#include "core/storage/fields_season.h"
#include "core/storage/fields_service.h"
#include "core/storage/fields_supplies.h"
#include "core/storage/json_scalars.h"
#include "core/storage/words.h"

#include <QJsonArray>
#include <QJsonObject>

#include <span>

namespace laneward {

template <class T>
QJsonValue toJson(const T& v);  ///< whole numbers, enumerations and described values

template <class T>
bool fromJson(const QJsonValue& json, const JsonPath& at, T& v, JsonFault& fault);

template <class T>
QJsonValue toJson(const Id<T>& v) {
    return toJson(v.value);
}
template <class T>
QJsonValue toJson(Quantity<T> v) {
    return toJson(v.value);
}
template <class T>
QJsonValue toJson(const std::optional<T>& v) {
    return v ? toJson(*v) : QJsonValue(QJsonValue::Null);
}
template <class List>
QJsonArray listToJson(const List& v) {
    QJsonArray array;
    for (const auto& item : v)
        array.append(toJson(item));
    return array;
}
template <class T>
QJsonValue toJson(const std::vector<T>& v) {
    return listToJson(v);
}
template <class T, size_t N>
QJsonValue toJson(const std::array<T, N>& v) {
    return listToJson(v);
}

/// Collects the fields of a value.
struct JsonWriter {
    QJsonObject object;

    template <class T>
    void operator()(const char* key, const T& v) {
        object.insert(QLatin1StringView(key), toJson(v));
    }
    template <class T>
    void child(const char* key, const T& v) {
        (*this)(key, v);
    }
};

template <class T>
QJsonObject objectOf(const T& v) {
    JsonWriter writer;
    describe(writer, v);
    return writer.object;
}

template <class T>
QJsonValue toJson(const T& v) {
    if constexpr (std::is_enum_v<T>)
        return QString(wordOf(v));
    else if constexpr (std::is_integral_v<T>)
        return toJson(std::int64_t{v});
    else
        return objectOf(v);
}

template <class T>
bool fromJson(const QJsonValue& json, const JsonPath& at, Id<T>& v, JsonFault& fault) {
    return fromJson(json, at, v.value, fault);
}
template <class T>
bool fromJson(const QJsonValue& json, const JsonPath& at, Quantity<T>& v, JsonFault& fault) {
    return fromJson(json, at, v.value, fault);
}
template <class T>
bool fromJson(const QJsonValue& json, const JsonPath& at, std::optional<T>& v, JsonFault& fault) {
    v.reset();
    return json.isNull() || fromJson(json, at, v.emplace(), fault);
}
template <class T>
bool fromJson(const QJsonValue& json, const JsonPath& at, std::vector<T>& v, JsonFault& fault) {
    if (!json.isArray()) return fault.set("json.bad-value", at);
    const QJsonArray array = json.toArray();
    v.clear();
    for (qsizetype i = 0; i < array.size(); ++i)
        if (!fromJson(array.at(i), {&at, {}, i}, v.emplace_back(), fault)) return false;
    return true;
}
template <class T, size_t N>
bool fromJson(const QJsonValue& json, const JsonPath& at, std::array<T, N>& v, JsonFault& fault) {
    const QJsonArray array = json.toArray();
    if (!json.isArray() || array.size() != qsizetype(N)) return fault.set("json.bad-value", at);
    for (size_t i = 0; i < N; ++i)
        if (!fromJson(array.at(qsizetype(i)), {&at, {}, qsizetype(i)}, v[i], fault)) return false;
    return true;
}

/// Reads the fields of a value; every key of the object must be one of them, and only those in `optional` may be absent.
class JsonReader {
public:
    JsonReader(const QJsonObject& object, const JsonPath& at, JsonFault& fault, std::span<const char* const> optional = {})
        : m_object(object), m_at(at), m_fault(fault), m_optional(optional) {}

    template <class T>
    void operator()(const char* key, T& v) {
        if (!m_good) return;
        const JsonPath here{&m_at, QLatin1StringView(key)};
        const auto found = m_object.constFind(here.key);
        m_keys.push_back(here.key);
        if (found == m_object.constEnd())
            m_good = mayLack(here.key) || m_fault.set("json.missing-key", here);
        else
            m_good = fromJson(QJsonValue(*found), here, v, m_fault);
    }
    template <class T>
    void child(const char* key, T& v) {
        (*this)(key, v);
    }
    bool finish();  ///< refuses keys that nobody asked for

private:
    bool mayLack(QLatin1StringView key) const;

    const QJsonObject& m_object;
    const JsonPath& m_at;
    JsonFault& m_fault;
    std::span<const char* const> m_optional;
    std::vector<QLatin1StringView> m_keys;
    bool m_good = true;
};

template <class T>
bool fromJson(const QJsonValue& json, const JsonPath& at, T& v, JsonFault& fault) {
    if constexpr (std::is_enum_v<T>) {
        const auto read = json.isString() ? valueOf<T>(json.toString()) : std::nullopt;
        if (read) v = *read;
        return read || fault.set("json.bad-value", at);
    } else if constexpr (std::is_integral_v<T>) {
        std::int64_t wide = 0;
        if (!fromJson(json, at, wide, fault)) return false;
        v = T(wide);
        return std::int64_t{v} == wide || fault.set("json.bad-value", at);
    } else {
        if (!json.isObject()) return fault.set("json.bad-value", at);
        const QJsonObject object = json.toObject();
        JsonReader reader(object, at, fault);
        describe(reader, v);
        return reader.finish();
    }
}

/// What about `v` cannot be stored: the path of the first such field.
template <class T>
std::optional<QString> unstorable(const T& v) {
    T copy;
    JsonFault fault;
    if (!fromJson(toJson(v), {}, copy, fault)) return fault.path;
    return std::nullopt;
}

}  // namespace laneward
