#include "core/storage/booked.h"

#include "core/storage/movements.h"
#include "core/storage/operations.h"

#include <algorithm>

namespace laneward {

namespace {

class Booker {
public:
    Booker(Store& store, const SeasonState& season, const UseFactors& factors)
        : m_store(store),
          m_now{season.centre, season.supplies, season.patterns, season.stock, factors},
          m_centre(season.centre) {}

    Outcome add(const Record& record) {
        m_records.push_back(record);
        if (m_now.supplies.empty()) return Nothing{};
        if (const auto* movement = std::get_if<Movement>(&record)) {
            m_now.stock.add(*movement);
            return Nothing{};
        }
        const Result<QString> stored = operationKind(m_store.database(), m_centre.facts.id, operationOf(record));
        if (!stored) return stored.error();
        if (!stored->isEmpty()) return Nothing{};
        if (const auto* run = std::get_if<RunLog>(&record)) return book(*run, MovementSource::Run, run->time.end);
        if (const auto* level = std::get_if<LevelReading>(&record)) return book(*level, MovementSource::Level, level->levels.at);
        if (const auto* count = std::get_if<StockCount>(&record)) return book(*count, MovementSource::Count, count->at);
        if (const auto* service = std::get_if<ServiceRecord>(&record))
            return book(*service, MovementSource::Service, service->at);
        return Nothing{};
    }

    std::vector<Record> take() { return std::move(m_records); }

private:
    template <class T>
    Outcome book(const T& record, MovementSource source, Instant at) {
        if (record.corrects) {
            const Result<std::vector<Movement>> earlier = m_store.movementsFrom(source, record.corrects->value);
            if (!earlier) return earlier.error();
            for (Movement& movement : takenBack(*earlier, {record.id, record.person, at}, m_now))
                m_records.push_back(std::move(movement));
        }
        const Result<std::vector<Movement>> later =
            movementsWhere(m_store.database(), m_centre.facts.id, QStringLiteral("AND happened_at > ?"), {qint64{at.seconds}});
        if (!later) return later.error();
        Books then = m_now;
        for (const Movement& movement : *later)
            then.stock.add(counterOf(movement));
        for (Movement& movement : bookingsOf(record, then)) {
            movement.flagged = overdraws(movement, m_now.stock);
            m_now.stock.add(movement);
            m_records.push_back(std::move(movement));
        }
        return Nothing{};
    }

    Store& m_store;
    Books m_now;
    const Centre& m_centre;
    std::vector<Record> m_records;
};

}  // namespace

Result<std::vector<Record>> withBookings(Store& store, const SeasonState& season, const UseFactors& factors,
                                         const std::vector<Record>& records) {
    Booker booker(store, season, factors);
    for (const Record& record : records) {
        if (const Outcome added = booker.add(record); !added) return added.error();
    }
    return booker.take();
}

Result<UseFactors> learnedFactors(Store& store, const SeasonState& season, Instant now) {
    const Span past{dayOf(season.centre, dateOf(season.centre, now).addDays(-learningDays)).begin, now + Seconds{1}};
    const Result<std::vector<RunLog>> runs = store.runs(past);
    if (!runs) return runs.error();
    const Result<std::vector<LevelReading>> readings = store.levelReadings(past);
    if (!readings) return readings.error();
    const Result<std::vector<PatternVersion>> versions = store.patternVersions();
    if (!versions) return versions.error();
    return factorsOf(usageOf({*runs, *readings, *versions, season.patterns}, season.centre));
}

Result<SupplyHistory> supplyHistory(Store& store, const SeasonState& season, Instant now) {
    const QDate today = dateOf(season.centre, now);
    SupplyHistory history;
    history.days = {today.addDays(-learningDays), today.addDays(-1)};
    Result<HistorySlice> slice = store.history({dayOf(season.centre, history.days.first).begin, now + Seconds{1}});
    if (!slice) return slice.error();
    history.stock.runs = standing(slice->runs);
    history.stock.movements = std::move(slice->movements);
    history.stock.counts = standing(std::move(slice->counts));
    for (const ServiceRecord& record : standing(std::move(slice->services))) {
        if (record.result == ServiceResult::Failed) history.stock.failures.push_back(record.id);
    }
    if (!history.stock.movements.empty())
        history.days.first = std::max(history.days.first, dateOf(season.centre, history.stock.movements.front().at));
    history.drift = {std::move(slice->runs), std::move(slice->readings), std::move(slice->patternVersions), season.patterns};
    return history;
}

}  // namespace laneward
