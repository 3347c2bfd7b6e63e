// All that a record says, fact by fact: what the list has no room for.
#pragma once

#include "core/documents/history_index.h"

namespace laneward {

struct HistoryFact {
    QString name;
    QString text;  ///< may have several lines
};

/// Of the record behind an entry; empty facts are left out. `slice` is what the entries were made from.
std::vector<HistoryFact> historyDetails(const HistoryEntry& entry, const HistorySlice& slice, const SeasonState& season,
                                        const Speech& speech);

/// Whether files can belong to it.
bool takesAttachments(HistoryKind kind);

}  // namespace laneward
