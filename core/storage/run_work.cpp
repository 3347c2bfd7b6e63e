#include "core/storage/run_work.h"

#include "core/season/service_state.h"
#include "core/storage/records.h"

#include <algorithm>

namespace laneward {

namespace {

Outcome insertWork(Database& database, const CentreId& centre, const RunLog& run) {
    if (run.result == RunResult::Void || run.machine.isEmpty()) return Nothing{};
    const Meters done = metersOf(run);
    const Result<int> written = database.change(
        QStringLiteral(
            "INSERT INTO run_work (centre_id, run_id, machine, ends, lanes, runs, seconds, volume_ul) VALUES (?, ?, ?, "
            "?, ?, ?, ?, ?)"),
        {centre.value, run.id.value, run.machine.value, qint64{run.time.end.seconds}, qint64{done.lanes}, qint64{done.runs},
         qint64{done.work.value}, qint64{done.volume.value}});
    return written ? Outcome(Nothing{}) : Outcome(written.error());
}

std::vector<Instant> readingsOf(const std::vector<MeterReading>& counters, const MachineId& machine, Instant until) {
    std::vector<Instant> times;
    for (const MeterReading& reading : counters)
        if (reading.machine == machine && reading.at < until) times.push_back(reading.at);
    times.push_back({until.seconds - 1});
    std::sort(times.begin(), times.end());
    return times;
}

}  // namespace

Outcome takeWork(Database& database, const CentreId& centre, const RunLog& run) {
    if (run.corrects) {
        const Result<int> gone = database.change(QStringLiteral("DELETE FROM run_work WHERE centre_id = ? AND run_id = ?"),
                                                 {centre.value, run.corrects->value});
        if (!gone) return gone.error();
    }
    return insertWork(database, centre, run);
}

Outcome rebuildWork(Database& database, const CentreId& centre) {
    const Result<int> cleared = database.change(QStringLiteral("DELETE FROM run_work WHERE centre_id = ?"), {centre.value});
    if (!cleared) return cleared.error();
    Result<std::vector<RunLog>> runs = runsWhere(database, centre, {}, {});
    if (!runs) return runs.error();
    for (const RunLog& run : standing(*std::move(runs))) {
        if (const Outcome taken = insertWork(database, centre, run); !taken) return taken;
    }
    return Nothing{};
}

Result<std::vector<MachineWork>> workBefore(Database& database, const CentreId& centre, const std::vector<MeterReading>& counters,
                                            Instant until) {
    const Result<std::vector<Row>> machines =
        database.rows(QStringLiteral("SELECT id FROM machines WHERE centre_id = ? ORDER BY id"), {centre.value});
    if (!machines) return machines.error();
    std::vector<MachineWork> work;
    for (const Row& row : *machines) {
        const MachineId machine{row.value(0).toString()};
        qint64 after = std::numeric_limits<qint64>::min() / 2;
        for (const Instant end : readingsOf(counters, machine, until)) {
            const Result<std::vector<Row>> sums = database.rows(
                QStringLiteral("SELECT COALESCE(SUM(lanes), 0), COALESCE(SUM(runs), 0), COALESCE(SUM(seconds), 0), "
                               "COALESCE(SUM(volume_ul), 0) FROM run_work WHERE centre_id = ? AND machine = ? AND ends > ? AND "
                               "ends <= ?"),
                {centre.value, machine.value, after, qint64{end.seconds}});
            if (!sums) return sums.error();
            const auto sum = [&](int column) { return std::int64_t{sums->front().value(column).toLongLong()}; };
            if (sum(1) > 0) work.push_back({machine, end, {sum(0), sum(1), {sum(2)}, {sum(3)}}});
            after = end.seconds;
        }
    }
    return work;
}

Result<std::vector<MachineWork>> workWithin(Database& database, const CentreId& centre, const Span& time) {
    const Result<std::vector<Row>> rows = database.rows(
        QStringLiteral("SELECT machine, ends, lanes, runs, seconds, volume_ul FROM run_work WHERE centre_id = ? AND "
                       "ends >= ? AND ends < ? ORDER BY ends, run_id"),
        {centre.value, qint64{time.begin.seconds}, qint64{time.end.seconds}});
    if (!rows) return rows.error();
    std::vector<MachineWork> work;
    work.reserve(rows->size());
    for (const Row& row : *rows) {
        const auto number = [&](int column) { return std::int64_t{row.value(column).toLongLong()}; };
        work.push_back({{row.value(0).toString()}, {number(1)}, {number(2), number(3), {number(4)}, {number(5)}}});
    }
    return work;
}

}  // namespace laneward
