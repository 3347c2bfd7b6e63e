#include "core/storage/json_values.h"

#include <algorithm>

namespace laneward {

bool JsonReader::finish() {
    for (auto entry = m_object.constBegin(); m_good && entry != m_object.constEnd(); ++entry) {
        const QString key = entry.key();
        if (std::find(m_keys.begin(), m_keys.end(), key) != m_keys.end()) continue;
        m_fault.set("json.unknown-key", m_at);
        m_fault.path += (m_fault.path.isEmpty() ? QString() : QStringLiteral(".")) + key.left(limits::nameLength);
        m_good = false;
    }
    return m_good;
}

bool JsonReader::mayLack(QLatin1StringView key) const {
    return std::find(m_optional.begin(), m_optional.end(), key) != m_optional.end();
}

}  // namespace laneward
