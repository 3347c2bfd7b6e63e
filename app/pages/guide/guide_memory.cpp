#include "app/pages/guide/guide_memory.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSettings>
#include <QUrl>

namespace laneward {

namespace {

QString nameFor(const CentreId& centre) {
    return QStringLiteral("guide/") + QString::fromLatin1(QUrl::toPercentEncoding(centre.value));
}

QJsonObject jsonOf(const GuideTick& tick) {
    return {{QStringLiteral("key"), QString::fromUtf8(tick.key)}, {QStringLiteral("kind"), int(tick.kind)},
            {QStringLiteral("machine"), tick.machine.value},      {QStringLiteral("line"), tick.line},
            {QStringLiteral("left_out"), tick.isLeftOut},         {QStringLiteral("job"), tick.job.value},
            {QStringLiteral("record"), tick.record.value}};
}

std::optional<GuideTick> tickOf(const QJsonObject& json) {
    const auto textAt = [&json](const char* key) { return json.value(QLatin1StringView(key)).toString(); };
    const int kind = json.value(QLatin1StringView("kind")).toInt(-1);
    if (textAt("key").isEmpty() || kind < 0 || kind > int(SheetStep::Kind::CloseDown)) return std::nullopt;
    GuideTick tick;
    tick.key = textAt("key").toUtf8();
    tick.kind = SheetStep::Kind(kind);
    tick.machine = {textAt("machine")};
    tick.line = textAt("line");
    tick.isLeftOut = json.value(QLatin1StringView("left_out")).toBool();
    tick.job = {textAt("job")};
    tick.record = {textAt("record")};
    return tick;
}

}  // namespace

std::vector<GuideTick> keptTicks(const CentreId& centre, QDate day) {
    const QJsonObject kept = QJsonDocument::fromJson(QSettings().value(nameFor(centre)).toByteArray()).object();
    if (kept.value(QLatin1StringView("day")).toString() != day.toString(Qt::ISODate)) return {};
    std::vector<GuideTick> ticks;
    const QJsonArray all = kept.value(QLatin1StringView("ticks")).toArray();
    for (const auto& one : all) {
        if (const std::optional<GuideTick> tick = tickOf(one.toObject())) ticks.push_back(*tick);
    }
    return ticks;
}

void keepTicks(const CentreId& centre, QDate day, const std::vector<GuideTick>& ticks) {
    QJsonArray all;
    for (const GuideTick& tick : ticks)
        all.append(jsonOf(tick));
    const QJsonObject kept{{QStringLiteral("day"), day.toString(Qt::ISODate)}, {QStringLiteral("ticks"), all}};
    QSettings().setValue(nameFor(centre), QJsonDocument(kept).toJson(QJsonDocument::Compact));
}

}  // namespace laneward
