// Single values as JSON and back: numbers, texts, times, lanes, and where in a document something is wrong.
//
// Instants are ISO 8601 in UTC, wall times ISO 8601 without zone, lanes a list of numbers. Limits: text without NUL and unpaired
// surrogates up to limits::noteLength characters, years 1 to 9999, amounts up to 10^15.
#pragma once

#include "core/base/limits.h"
#include "core/season/season.h"

#include <QJsonValue>
#include <QLatin1StringView>

namespace laneward {

/// Where one stands in a document: text is only made when something is wrong.
struct JsonPath {
    const JsonPath* parent = nullptr;
    QLatin1StringView key;
    qsizetype index = -1;

    QString text() const;  ///< "series[12].lanes"
};

struct JsonFault {
    QByteArray rule;  ///< "json.missing-key", "json.unknown-key", "json.bad-value"; empty = none
    QString path;

    bool set(const QByteArray& broken, const JsonPath& at);  ///< always false, for `return fault.set(…)`
};

QJsonValue toJson(bool v);
QJsonValue toJson(std::int64_t v);
QJsonValue toJson(const QString& v);
QJsonValue toJson(const QByteArray& v);
QJsonValue toJson(Instant v);
QJsonValue toJson(QDate v);
QJsonValue toJson(QTime v);
QJsonValue toJson(const LocalTime& v);
QJsonValue toJson(const LaneSet& v);
QJsonValue toJson(const Value& v);

bool fromJson(const QJsonValue& json, const JsonPath& at, bool& v, JsonFault& fault);
bool fromJson(const QJsonValue& json, const JsonPath& at, std::int64_t& v, JsonFault& fault);
bool fromJson(const QJsonValue& json, const JsonPath& at, QString& v, JsonFault& fault);
bool fromJson(const QJsonValue& json, const JsonPath& at, QByteArray& v, JsonFault& fault);
bool fromJson(const QJsonValue& json, const JsonPath& at, Instant& v, JsonFault& fault);
bool fromJson(const QJsonValue& json, const JsonPath& at, QDate& v, JsonFault& fault);
bool fromJson(const QJsonValue& json, const JsonPath& at, QTime& v, JsonFault& fault);
bool fromJson(const QJsonValue& json, const JsonPath& at, LocalTime& v, JsonFault& fault);
bool fromJson(const QJsonValue& json, const JsonPath& at, LaneSet& v, JsonFault& fault);
bool fromJson(const QJsonValue& json, const JsonPath& at, Value& v, JsonFault& fault);

}  // namespace laneward
