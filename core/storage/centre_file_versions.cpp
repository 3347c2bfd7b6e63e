#include "core/storage/centre_file_versions.h"

#include <algorithm>

namespace laneward {
namespace {

/// A key that came with a version.
struct NewKey {
    int since;
    const char* list;
    const char* key;
    QJsonValue before;
    const char* inside = nullptr;  ///< the object of the element that has the key; none = the element itself
};

const std::vector<NewKey>& newKeys() {
    static const std::vector<NewKey> keys{{2, "centre", "reading_limits", toJson(ReadingLimits{})},
                                          {2, "machines", "carry_length_um", 0},
                                          {2, "patterns", "edition", 0},
                                          {2, "runs", "pattern_version", 0},
                                          {2, "readings", "poured", QJsonValue::Null},
                                          {3, "readings", "emptied_ul", QJsonValue::Null},
                                          {3, "incidents", "answers", QJsonValue::Null},
                                          {3, "centre", "currency", toJson(Settings{}.currency), "settings"},
                                          {4, "machines", "weight_g", QJsonValue::Null}};
    return keys;
}

struct NewList {
    int since;
    const char* list;
};
constexpr std::array newLists{NewList{2, "pattern_versions"}, NewList{2, "tape_readings"},   NewList{2, "inspections"},
                              NewList{3, "supplies"},         NewList{3, "suppliers"},       NewList{3, "offers"},
                              NewList{3, "orders"},           NewList{3, "movements"},       NewList{3, "stock_counts"},
                              NewList{3, "service_items"},    NewList{3, "service_records"}, NewList{3, "meter_readings"},
                              NewList{3, "pack_readings"},    NewList{3, "attachments"},     NewList{3, "kept_forecasts"}};

void put(QJsonObject& object, const NewKey& key) {
    const QLatin1StringView name(key.key);
    if (!object.contains(name)) object.insert(name, key.before);
}

}  // namespace

QJsonValue raised(const QJsonValue& element, QLatin1StringView list, int version) {
    if (!element.isObject()) return element;
    QJsonObject object = element.toObject();
    for (const NewKey& key : newKeys()) {
        if (version >= key.since || list != QLatin1StringView(key.list)) continue;
        if (!key.inside) {
            put(object, key);
        } else if (QJsonObject inside = object.value(QLatin1StringView(key.inside)).toObject(); !inside.isEmpty()) {
            put(inside, key);
            object.insert(QLatin1StringView(key.inside), inside);
        }
    }
    return object;
}

bool mayLackList(QLatin1StringView list, int version) {
    return std::any_of(newLists.begin(), newLists.end(),
                       [&](const NewList& n) { return version < n.since && list == QLatin1StringView(n.list); });
}

}  // namespace laneward
