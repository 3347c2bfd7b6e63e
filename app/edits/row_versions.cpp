#include "app/edits/row_versions.h"

namespace laneward {

namespace {

template <class T>
QString idOf(const RowChange<T>& change) {
    return change.before ? change.before->id.value : change.after ? change.after->id.value : QString();
}

std::int64_t versionBefore(const Change& change) {
    return std::visit([](const auto& c) { return c.before ? c.before->version : std::int64_t{0}; }, change);
}

}  // namespace

QString rowKey(const Change& change) {
    return QString::number(change.index()) + u':' + std::visit([](const auto& c) { return idOf(c); }, change);
}

std::vector<Passage> RowVersions::passages(const std::vector<Change>& changes) {
    std::vector<Passage> result;
    for (const Change& change : changes) {
        const QString key = rowKey(change);
        VersionCell& live = m_live[key];
        const std::int64_t version = versionBefore(change);
        if (!live || *live != version) live = std::make_shared<std::int64_t>(version);
        result.push_back({live, std::make_shared<std::int64_t>(0)});
    }
    return result;
}

void RowVersions::expect(std::vector<Change>& changes, const std::vector<Passage>& passages) {
    for (size_t i = 0; i < changes.size(); ++i) {
        const std::int64_t version = *passages[i].from;
        std::visit(
            [version](auto& c) {
                if (c.before) c.before->version = version;
            },
            changes[i]);
    }
}

void RowVersions::written(const std::vector<Change>& counter, const std::vector<Passage>& passages) {
    for (size_t i = 0; i < counter.size() && i < passages.size(); ++i) {
        *passages[i].to = versionBefore(counter[i]);
        m_live[rowKey(counter[i])] = passages[i].to;
    }
}

}  // namespace laneward
