// Everything that was recorded as one list: an entry for each record, in words.
//
// What a record only books in the ledger is no entry of its own. Costs are those written down, and parts by the cheapest offer
// for one pack today; parts without an offer count nothing. Meters are lanes of the machine, or what a counter showed.
//
//     const std::vector<HistoryEntry> entries = historyEntries(slice, season, speech);   // the newest first
#pragma once

#include "core/documents/wording.h"
#include "core/season/history_slice.h"

namespace laneward {

enum class HistoryKind { Run, Fill, Levels, Service, Counter, Incident, HandOver, Tape, Inspection, Count, Stock, Pack };
inline constexpr int historyKinds = int(HistoryKind::Pack) + 1;

struct HistoryEntry {
    HistoryKind kind = HistoryKind::Run;
    size_t place = 0;  ///< in the slice's list of its kind
    OperationId id;
    Instant at;
    std::optional<OperationId> corrects;
    std::optional<OperationId> answers;  ///< it follows up that incident or tape reading, and is no incident itself
    bool stands = true;                  ///< neither corrected nor only a withdrawal
    MachineId machine;                   ///< empty = none
    PersonId person;
    ItemId item;
    LaneSet lanes;
    QStringList products;  ///< names of supplies that it is about

    // In words.
    QString when;
    QString machineName;
    QString laneText;
    QString personName;
    QString of;     ///< item or products
    QString words;  ///< what it was

    // In numbers.
    std::optional<std::int64_t> meter;
    std::optional<int> minutes;
    std::optional<std::int64_t> costMinor;  ///< with parts, in the centre's currency
    std::int64_t partsMinor = 0;            ///< of them parts
    std::int64_t lanesTreated = 0;          ///< of a run, the first pair twice
    Microlitres conditioner;                ///< of a run
    Microlitres cleaner;
    bool failed = false;  ///< a service whose part had failed
};

QString text(HistoryKind kind);
/// Stable word for CSV.
QString key(HistoryKind kind);

/// By time, the newest first.
std::vector<HistoryEntry> historyEntries(const HistorySlice& slice, const SeasonState& season, const Speech& speech);

}  // namespace laneward
