// Forecasts as they were kept: one row a day, never changed. Callers hold the transaction.
#pragma once

#include "core/storage/rows.h"

namespace laneward {

/// Those that satisfy `where` (further conditions with bound values), by day.
Result<std::vector<KeptForecast>> storedForecasts(Database& database, const CentreId& centre, const QString& where = {},
                                                  std::vector<QVariant> values = {});
/// False when that day has one already, whoever wrote it.
Result<bool> insertForecast(Database& database, const CentreId& centre, const KeptForecast& forecast);

}  // namespace laneward
