#include "core/storage/column_values.h"

#include <QJsonDocument>

namespace laneward {

// A null QString would be bound as NULL; in our values it is simply an empty text.
QVariant toColumn(const QString& v) { return v.isNull() ? QStringLiteral("") : v; }
QVariant toColumn(const QByteArray& v) { return toColumn(QString::fromUtf8(v)); }
QVariant toColumn(const LaneSet& v) { return toColumn(v.text()); }

QVariant toColumn(const QJsonValue& v) {
    const QJsonDocument document = v.isArray() ? QJsonDocument(v.toArray()) : QJsonDocument(v.toObject());
    return QString::fromUtf8(document.toJson(QJsonDocument::Compact));
}

bool fromColumn(const QVariant& column, std::int64_t& v) {
    const int type = column.typeId();
    v = column.toLongLong();
    return !column.isNull() && (type == QMetaType::LongLong || type == QMetaType::Int || type == QMetaType::ULongLong);
}

bool fromColumn(const QVariant& column, bool& v) {
    std::int64_t number = 0;
    const bool good = fromColumn(column, number) && (number == 0 || number == 1);
    v = number == 1;
    return good;
}

bool fromColumn(const QVariant& column, Instant& v) { return fromColumn(column, v.seconds); }

bool fromColumn(const QVariant& column, QString& v) {
    v = column.toString();
    return !column.isNull() && column.typeId() == QMetaType::QString;
}

bool fromColumn(const QVariant& column, QByteArray& v) {
    QString text;
    const bool good = fromColumn(column, text);
    v = text.toUtf8();
    return good;
}

bool fromColumn(const QVariant& column, LaneSet& v) {
    QString text;
    if (!fromColumn(column, text)) return false;
    v = {};
    if (text.isEmpty()) return true;
    const Result<LaneSet> lanes = LaneSet::parse(text);
    if (lanes) v = *lanes;
    return bool(lanes);
}

bool fromColumn(const QVariant& column, QJsonValue& v) {
    QString text;
    if (!fromColumn(column, text)) return false;
    const QJsonDocument document = QJsonDocument::fromJson(text.toUtf8());
    v = document.isArray() ? QJsonValue(document.array()) : QJsonValue(document.object());
    return !document.isNull();
}

}  // namespace laneward
