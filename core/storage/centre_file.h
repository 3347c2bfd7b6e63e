// The centre file: a whole centre as JSON, versioned, documented in resources/schemas/centre.schema.json. It round-trips exactly.
#pragma once

#include "core/storage/store.h"

#include <QIODevice>

namespace laneward {

inline constexpr int centreFileVersion = 2;

struct CentreFile {
    SeasonState season;  ///< with an empty history part: all records are in `history`
    HistorySlice history;
    friend bool operator==(const CentreFile&, const CentreFile&) = default;
};

/// Keys {format: "laneward-centre", version, centre, lanes, machines, people, shifts, outages, patterns, series, jobs, runs, …}.
Outcome writeCentreFile(QIODevice& out, const CentreFile& file);
/// Errors (Invalid): "json.unreadable", "json.missing-key", "json.unknown-key", "json.bad-value", "centre-file.newer"; the
/// subject names file and record ("club.json: series[12].lanes"). Files of earlier versions are read as if they said what was not
/// known then: no readings, no carry, versions of patterns unknown.
Result<CentreFile> readCentreFile(QIODevice& in, const QString& name);

/// Everything of a store, from one read transaction.
Result<CentreFile> exported(Store& store);

/// Operations for `laneward record`: a JSON list, each {id, kind, …}; schema in resources/schemas/record.schema.json.
Result<std::vector<Record>> readRecords(const QByteArray& json, const QString& name);

}  // namespace laneward
