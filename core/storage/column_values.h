// Values as columns and back, by the field lists of fields*.h: whole numbers and instants as bigint, text and wall times as
// text, an empty id or absent value as NULL, anything else as JSON text.
//
// A column that does not hold what its kind asks for is damage, never a default: ColumnReader says so.
#pragma once

#include "core/storage/json_values.h"

#include <QVariant>

#include <vector>

namespace laneward {

inline QVariant toColumn(std::int64_t v) { return qint64{v}; }
inline QVariant toColumn(Instant v) { return qint64{v.seconds}; }
QVariant toColumn(const QString& v);  ///< never NULL
QVariant toColumn(const QByteArray& v);
QVariant toColumn(const LaneSet& v);
QVariant toColumn(const QJsonValue& v);  ///< JSON text

bool fromColumn(const QVariant& column, std::int64_t& v);
bool fromColumn(const QVariant& column, bool& v);
bool fromColumn(const QVariant& column, Instant& v);
bool fromColumn(const QVariant& column, QString& v);
bool fromColumn(const QVariant& column, QByteArray& v);
bool fromColumn(const QVariant& column, LaneSet& v);
bool fromColumn(const QVariant& column, QJsonValue& v);

template <class T>
inline constexpr bool isWallTime = std::is_same_v<T, QDate> || std::is_same_v<T, QTime> || std::is_same_v<T, LocalTime>;

template <class T>
QVariant toColumn(const Id<T>& v) {
    return v.isEmpty() ? QVariant() : toColumn(v.value);
}
template <class T>
QVariant toColumn(Quantity<T> v) {
    return toColumn(v.value);
}
template <class T>
QVariant toColumn(const T& v) {
    if constexpr (std::is_integral_v<T>)
        return toColumn(std::int64_t{v});
    else if constexpr (std::is_enum_v<T> || isWallTime<T>)
        return toColumn(toJson(v).toString());
    else
        return toColumn(QJsonValue(toJson(v)));
}
template <class T>
QVariant toColumn(const std::optional<T>& v) {
    return v ? toColumn(*v) : QVariant();
}

template <class T>
bool fromColumn(const QVariant& column, Id<T>& v) {
    return column.isNull() || fromColumn(column, v.value);
}
template <class T>
bool fromColumn(const QVariant& column, Quantity<T>& v) {
    return fromColumn(column, v.value);
}
template <class T>
bool fromColumn(const QVariant& column, T& v) {
    JsonFault fault;
    if constexpr (std::is_integral_v<T>) {
        std::int64_t wide = 0;
        return fromColumn(column, wide) && fromJson(toJson(wide), {}, v, fault);
    } else if constexpr (std::is_enum_v<T> || isWallTime<T>) {
        QString text;
        return fromColumn(column, text) && fromJson(text, {}, v, fault);
    } else {
        QJsonValue json;
        return fromColumn(column, json) && fromJson(json, {}, v, fault);
    }
}
template <class T>
bool fromColumn(const QVariant& column, std::optional<T>& v) {
    v.reset();
    return column.isNull() || fromColumn(column, v.emplace());
}

/// Names of a value's columns, in order.
struct ColumnNames {
    std::vector<QLatin1StringView> names;

    template <class T>
    void operator()(const char* key, const T&) {
        names.push_back(QLatin1StringView(key));
    }
    template <class T>
    void child(const char*, const T&) {}
};

/// Values of a value's columns, in the same order.
struct ColumnWriter {
    std::vector<QVariant> values;

    template <class T>
    void operator()(const char*, const T& v) {
        values.push_back(toColumn(v));
    }
    template <class T>
    void child(const char*, const T&) {}
};

/// Fills a value from the columns of a row, `at` being the first.
template <class Row>
class ColumnReader {
public:
    explicit ColumnReader(const Row& row, int at = 0) : m_row(row), m_at(at) {}

    template <class T>
    void operator()(const char*, T& v) {
        m_good = fromColumn(m_row.value(m_at++), v) && m_good;
    }
    template <class T>
    void child(const char*, const T&) {}
    bool isGood() const { return m_good; }

private:
    const Row& m_row;
    int m_at;
    bool m_good = true;
};

}  // namespace laneward
