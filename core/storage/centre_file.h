// The centre file: a whole centre as JSON, versioned, documented in resources/schemas/centre.schema.json. It round-trips exactly.
#pragma once

#include "core/storage/store.h"

#include <QIODevice>

namespace laneward {

inline constexpr int centreFileVersion = 4;

struct CentreFile {
    SeasonState season;  ///< with an empty history part and no stock: all records are in `history`
    HistorySlice history;
    friend bool operator==(const CentreFile&, const CentreFile&) = default;
};

/// Keys {format: "laneward-centre", version, centre, lanes, machines, people, shifts, outages, patterns, series, jobs, runs, …}.
Outcome writeCentreFile(QIODevice& out, const CentreFile& file);
/// Errors (Invalid): "json.unreadable", "json.missing-key", "json.unknown-key", "json.bad-value", "centre-file.newer"; the
/// subject names file and record ("club.json: series[12].lanes"). Files of earlier versions are read as if they said what was not
/// known then: no readings, no carry, versions of patterns unknown, no supplies, money in EUR, machines without a weight.
Result<CentreFile> readCentreFile(QIODevice& in, const QString& name);

/// Everything of a store, from one read transaction.
Result<CentreFile> exported(Store& store);

/// Operations for `laneward record`: a JSON list, each {id, kind, …}; schema in resources/schemas/record.schema.json. Amounts of
/// counts, receipts and parts are in the unit that their key ends with, which must be that of one of `supplies`. Services may
/// come without meters and money without its currency: whoever knows the centre completes them. Errors as above, and (Invalid)
/// "record.unknown-supply", "record.wrong-unit".
Result<std::vector<Record>> readRecords(const QByteArray& json, const QString& name, const std::vector<Supply>& supplies);

}  // namespace laneward
