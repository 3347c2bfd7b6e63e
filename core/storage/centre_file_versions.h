// What earlier versions of the centre file did not say yet, and what that means. A new version adds its keys here, with the value
// that holds for a file that does not know them.
#pragma once

#include "core/storage/json_values.h"

namespace laneward {

/// Puts what a file of `version` did not know into an element of `list` ("machines", "runs", …, "centre").
QJsonValue raised(const QJsonValue& element, QLatin1StringView list, int version);

/// Whether a file of `version` need not have the list.
bool mayLackList(QLatin1StringView list, int version);

}  // namespace laneward
