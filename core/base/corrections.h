// Records are never changed: a correction is a record that names the one it replaces.
#pragma once

#include "core/base/ids.h"

#include <QSet>

#include <vector>

namespace laneward {

/// Those that no other one corrects. Order as given.
template <class Record>
std::vector<Record> uncorrected(std::vector<Record> records) {
    QSet<OperationId> corrected;
    for (const Record& record : records) {
        if (record.corrects) corrected.insert(*record.corrects);
    }
    std::erase_if(records, [&corrected](const Record& record) { return corrected.contains(record.id); });
    return records;
}

}  // namespace laneward
