// What happened in a range of time: the records of every kind, as they were kept, for pages that look back.
#pragma once

#include "core/season/season.h"
#include "core/service/attachment.h"
#include "core/supplies/kept_forecast.h"

namespace laneward {

struct HistorySlice {
    std::vector<RunLog> runs;
    std::vector<Incident> incidents;
    std::vector<HandOver> handOvers;
    std::vector<LevelReading> readings;
    std::vector<TapeReading> tapes;
    std::vector<Inspection> inspections;
    std::vector<PatternVersion> patternVersions;
    std::vector<Job> jobs;
    std::vector<Movement> movements;
    std::vector<StockCount> counts;
    std::vector<ServiceRecord> services;
    std::vector<MeterReading> counters;
    std::vector<PackReading> packReadings;
    std::vector<Attachment> attachments;  ///< without their content
    std::vector<KeptForecast> forecasts;  ///< of whole centre files only, by day; a range has none: Store::keptForecasts()
    friend bool operator==(const HistorySlice&, const HistorySlice&) = default;
};

}  // namespace laneward
