// Records in the database: appended, read by range, never changed.
#pragma once

#include "core/storage/edit.h"
#include "core/storage/operations.h"
#include "core/storage/rows.h"

namespace laneward {

/// Run logs with their lanes, ordered by end, then id. `where` as for rowsOf().
Result<std::vector<RunLog>> runsWhere(Database& database, const CentreId& centre, const QString& where,
                                      const std::vector<QVariant>& values);

Outcome insertRecord(Database& database, const CentreId& centre, const Record& record, std::int64_t change);

/// Whether the stored record with this id is the same.
Result<bool> holdsSame(Database& database, const CentreId& centre, const Record& record);

const char* tableOfRecord(const Record& record);
Instant timeOf(const Record& record);
PersonId personOf(const Record& record);

/// Ids of incidents that follow up what is not there.
inline constexpr auto incidentsOfUnknownAnswers =
    "SELECT id FROM incidents i WHERE answers IS NOT NULL AND NOT EXISTS (SELECT 1 FROM incidents r WHERE r.centre_id = "
    "i.centre_id AND r.id = i.answers) AND NOT EXISTS (SELECT 1 FROM tape_readings t WHERE t.centre_id = i.centre_id AND t.id = "
    "i.answers)";

/// Orders by time, then id.
void sortByTime(std::vector<Incident>& incidents);
void sortByTime(std::vector<HandOver>& handOvers);
void sortByTime(std::vector<LevelReading>& readings);
void sortByTime(std::vector<TapeReading>& readings);
void sortByTime(std::vector<Inspection>& inspections);
void sortByTime(std::vector<StockCount>& counts);
void sortByTime(std::vector<ServiceRecord>& records);
void sortByTime(std::vector<MeterReading>& readings);
void sortByTime(std::vector<PackReading>& readings);
void sortByTime(std::vector<Attachment>& attachments);

}  // namespace laneward
