#include "app/cli/ics_mapping.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace laneward::cli {

namespace {

const QStringList kinds{"league", "practice", "school", "tournament", "open-play", "party", "closure", "other"};
const QStringList demandKinds{"fresh", "recent", "pattern", "stripped", "as-it-is"};
const QStringList treatments{"clean-and-condition", "condition-only", "clean-only"};

template <class Enum>
bool take(const QStringList& words, const QString& word, Enum& into) {
    const qsizetype index = words.indexOf(word);
    if (index >= 0) into = Enum(index);
    return index >= 0;
}

bool takeKey(const QString& key, const QString& value, IcsMapping& mapping, SurfaceDemand& demand) {
    if (key == "lanes") {
        const Result<LaneSet> lanes = LaneSet::parse(value);
        if (lanes) mapping.lanes = *lanes;
        return bool(lanes);
    }
    if (key == "zone") {
        mapping.zone = value.toUtf8();
        return bool(Zone::load(mapping.zone));
    }
    if (key == "pattern") {
        demand.pattern = PatternId{value};
        return !value.isEmpty();
    }
    if (key == "kind") return take(kinds, value, mapping.kind);
    if (key == "demand") return take(demandKinds, value, demand.kind);
    return key == "treatment" && take(treatments, value, demand.least);
}

}  // namespace

Result<IcsMapping> icsMapping(const QByteArray& json, const QString& name) {
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(json, &error);
    if (!document.isObject()) return fault(ErrorKind::Invalid, "mapping.unreadable", name, {error.errorString()});
    const QJsonObject object = document.object();
    IcsMapping mapping;
    SurfaceDemand demand;
    for (auto it = object.begin(); it != object.end(); ++it) {
        if (it->isString() && takeKey(it.key(), it->toString(), mapping, demand)) continue;
        return fault(ErrorKind::Invalid, "mapping.unreadable", name, {it.key()});
    }
    if (object.contains("demand")) mapping.demands = {demand};
    return mapping;
}

}  // namespace laneward::cli
