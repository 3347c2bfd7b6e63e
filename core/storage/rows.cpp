#include "core/storage/rows.h"

#include <QStringList>

namespace laneward {
namespace {

QStringList named(const std::vector<QLatin1StringView>& columns) {
    QStringList names;
    for (const QLatin1StringView column : columns)
        names << QString(column);
    return names;
}

}  // namespace

QString selectStatement(const char* table, const std::vector<QLatin1StringView>& columns, bool versioned, const QString& where) {
    QStringList names = named(columns);
    if (versioned) names << QStringLiteral("version");
    return QStringLiteral("SELECT %1 FROM %2 WHERE centre_id = ? %3")
        .arg(names.join(QLatin1StringView(", ")), QLatin1StringView(table), where);
}

QString insertStatement(const char* table, const std::vector<QLatin1StringView>& columns, bool versioned) {
    QStringList names = QStringList{QStringLiteral("centre_id")} + named(columns);
    if (versioned) names << QStringLiteral("version");
    const QStringList places(names.size(), QStringLiteral("?"));
    return QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
        .arg(QLatin1StringView(table), names.join(QLatin1StringView(", ")), places.join(QLatin1StringView(", ")));
}

QString updateStatement(const char* table, const std::vector<QLatin1StringView>& columns) {
    QStringList names = named(columns) << QStringLiteral("version");
    for (QString& name : names)
        name += QLatin1StringView(" = ?");
    return QStringLiteral("UPDATE %1 SET %2 WHERE centre_id = ? AND id = ? AND version = ?")
        .arg(QLatin1StringView(table), names.join(QLatin1StringView(", ")));
}

QString deleteStatement(const char* table) {
    return QStringLiteral("DELETE FROM %1 WHERE centre_id = ? AND id = ? AND version = ?").arg(QLatin1StringView(table));
}

}  // namespace laneward
