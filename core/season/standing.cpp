#include "core/season/season.h"

#include <algorithm>

namespace laneward {

namespace {

template <class T>
std::vector<T> uncorrected(std::vector<T> records) {
    std::vector<OperationId> corrected;
    for (const T& record : records) {
        if (record.corrects) corrected.push_back(*record.corrects);
    }
    std::erase_if(records, [&corrected](const T& record) {
        return std::find(corrected.begin(), corrected.end(), record.id) != corrected.end();
    });
    return records;
}

template <class T>
std::vector<T> withoutWithdrawals(std::vector<T> records) {
    std::erase_if(records, [](const T& record) { return record.corrects && record.text.isEmpty(); });
    return records;
}

}  // namespace

std::vector<Incident> standing(std::vector<Incident> incidents) { return withoutWithdrawals(uncorrected(std::move(incidents))); }

std::vector<HandOver> standing(std::vector<HandOver> handOvers) { return withoutWithdrawals(uncorrected(std::move(handOvers))); }

std::vector<LevelReading> standing(std::vector<LevelReading> readings) { return uncorrected(std::move(readings)); }

}  // namespace laneward
