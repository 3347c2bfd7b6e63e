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
};

const std::vector<NewKey>& newKeys() {
    static const std::vector<NewKey> keys{{2, "centre", "reading_limits", toJson(ReadingLimits{})},
                                          {2, "machines", "carry_length_um", 0},
                                          {2, "patterns", "edition", 0},
                                          {2, "runs", "pattern_version", 0},
                                          {2, "readings", "poured", QJsonValue::Null}};
    return keys;
}

struct NewList {
    int since;
    const char* list;
};
constexpr std::array newLists{NewList{2, "pattern_versions"}, NewList{2, "tape_readings"}, NewList{2, "inspections"}};

}  // namespace

QJsonValue raised(const QJsonValue& element, QLatin1StringView list, int version) {
    if (!element.isObject()) return element;
    QJsonObject object = element.toObject();
    for (const NewKey& key : newKeys()) {
        const QLatin1StringView name(key.key);
        if (version < key.since && list == QLatin1StringView(key.list) && !object.contains(name)) object.insert(name, key.before);
    }
    return object;
}

bool mayLackList(QLatin1StringView list, int version) {
    return std::any_of(newLists.begin(), newLists.end(),
                       [&](const NewList& n) { return version < n.since && list == QLatin1StringView(n.list); });
}

}  // namespace laneward
