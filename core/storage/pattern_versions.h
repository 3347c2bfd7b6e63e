// The versions of patterns: every new recipe is kept beside the pattern's row, for the records that ran it.
#pragma once

#include "core/storage/rows.h"

namespace laneward {

/// Versions that satisfy `where` (further conditions with bound values), by pattern and edition.
Result<std::vector<PatternVersion>> versionsWhere(Database& database, const CentreId& centre, const QString& where = {},
                                                  std::vector<QVariant> values = {});

Outcome insertVersion(Database& database, const CentreId& centre, const PatternVersion& version);

/// Gives the pattern its edition: that of a stored version that says the same, or else the next one, which is stored.
Outcome settleEdition(Database& database, const CentreId& centre, Pattern& pattern, Instant at, const PersonId& person);

/// Whether a record may say that it ran this version of this pattern.
Result<bool> knowsVersion(Database& database, const CentreId& centre, const PatternId& pattern, std::int64_t edition);

/// Ids of records that name a version that is not there.
inline constexpr auto recordsOfUnknownVersions =
    "SELECT id FROM (SELECT centre_id, id, pattern, pattern_version FROM runs UNION ALL SELECT centre_id, id, pattern, "
    "pattern_version FROM tape_readings) r WHERE pattern_version <> 0 AND NOT EXISTS (SELECT 1 FROM pattern_versions v WHERE "
    "v.centre_id = r.centre_id AND v.pattern = r.pattern AND v.edition = r.pattern_version)";

}  // namespace laneward
