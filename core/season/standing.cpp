#include "core/base/corrections.h"
#include "core/season/season.h"

namespace laneward {

namespace {

bool isEmpty(const Incident& incident) { return incident.text.isEmpty(); }
bool isEmpty(const HandOver& note) { return note.text.isEmpty(); }
bool isEmpty(const Inspection& inspection) { return inspection.values.empty(); }
bool isEmpty(const TapeReading& reading) { return !isMeasured(reading); }
bool isEmpty(const StockCount& count) { return count.lines.empty(); }

template <class T>
std::vector<T> withoutWithdrawals(std::vector<T> records) {
    std::erase_if(records, [](const T& record) { return record.corrects && isEmpty(record); });
    return records;
}

}  // namespace

std::vector<Incident> standing(std::vector<Incident> incidents) { return withoutWithdrawals(uncorrected(std::move(incidents))); }

std::vector<HandOver> standing(std::vector<HandOver> handOvers) { return withoutWithdrawals(uncorrected(std::move(handOvers))); }

std::vector<LevelReading> standing(std::vector<LevelReading> readings) { return uncorrected(std::move(readings)); }

std::vector<TapeReading> standing(std::vector<TapeReading> readings) {
    return withoutWithdrawals(uncorrected(std::move(readings)));
}

std::vector<Inspection> standing(std::vector<Inspection> inspections) {
    return withoutWithdrawals(uncorrected(std::move(inspections)));
}

std::vector<StockCount> standing(std::vector<StockCount> counts) { return withoutWithdrawals(uncorrected(std::move(counts))); }

}  // namespace laneward
