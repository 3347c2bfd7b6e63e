#include "app/cli/csv_supplies.h"
#include "app/cli/csv_supply_cells.h"
#include "core/season/bookings.h"
#include "core/season/count_rows.h"
#include "core/season/output_drift.h"

#include <map>

namespace laneward::cli {

namespace {

const QStringList placeWords{"shelf", "open", "tank", "waste"};
constexpr std::array placeKinds{Place::Kind::Shelf, Place::Kind::Open, Place::Kind::Tank, Place::Kind::WasteTank};

/// Reads row by row; a row that does not fit leaves its faults.
class CountReader {
public:
    CountReader(const CsvRows& rows, const SeasonState& season, Instant now)
        : m_rows(rows),
          m_season(season),
          m_now(now),
          m_zone(zoneOf(season.centre)),
          m_books{season.centre, season.supplies, season.patterns, season.stock, {}} {}

    ReadCounts read() {
        if (m_rows.count() == 0) m_read.faults.push_back({Severity::Fault, "csv.empty", m_rows.file, {}});
        for (size_t n = 0; n < m_rows.count(); ++n) {
            const CsvRow row = m_rows.row(n);
            CsvCells cells(row, m_rows.mapping, m_read.faults);
            take(cells);
        }
        if (m_read.faults.empty()) finish();
        return std::move(m_read);
    }

private:
    bool has(const char* key) const { return m_rows.columns.contains(key) || m_rows.mapping.defaults.contains(key); }

    Instant timeOf(CsvCells& cells) {
        if (!has("at") && !has("date")) return m_now;
        const Instant at = cells.instant(m_zone);
        if (at > m_now) cells.refuse("csv.time-to-come", has("at") ? "at" : "date");
        return at;
    }

    /// The tank of the machine that names the supply.
    bool findTank(CsvCells& cells, const Supply& supply, const Machine& machine, Place& place) {
        for (place.slot = 0; place.slot < products; ++place.slot)
            if (productName(machine, place.slot) == supply.name) return true;
        cells.refuse("csv.no-tank", "machine", {supply.name});
        return false;
    }

    /// Where the row says that it lies; waste is no supply of its own.
    std::optional<CountRow> whereOf(CsvCells& cells) {
        CountRow row;
        Place& place = row.key.place;
        place.kind = cells.has("place") ? placeKinds.at(cells.word("place", placeWords)) : Place::Kind::Shelf;
        const bool inMachine = place.kind == Place::Kind::Tank || place.kind == Place::Kind::WasteTank;
        const Machine* machine = inMachine ? named(cells, "machine", m_season.centre.machines) : nullptr;
        if (machine) place.machine = machine->id;
        if (place.kind == Place::Kind::WasteTank) {
            row.key.supply = wasteId;
            return machine ? std::optional(row) : std::nullopt;
        }
        const Supply* supply = named(cells, "supply", m_season.supplies);
        if (!supply || (inMachine && !machine)) return std::nullopt;
        row.key.supply = supply->id;
        row.kind = supply->kind;
        if (inMachine && !findTank(cells, *supply, *machine, place)) return std::nullopt;
        if (inMachine) row.waterParts = supply->waterParts;
        row.key.container = inMachine ? QString() : cells.value("container");
        row.key.lot = inMachine ? QString() : cells.value("lot");
        return row;
    }

    void take(CsvCells& cells) {
        const size_t before = m_read.faults.size();
        const Instant at = timeOf(cells);
        const std::optional<CountRow> row = whereOf(cells);
        if (!row) return;
        const std::optional<Amount> amount = amountIn(cells, "amount", "unit", unitOf(row->kind));
        if (!amount || m_read.faults.size() > before) return;
        const auto [first, isNew] = m_lines.insert({{at, row->key}, cells.where()});
        if (!isNew) {
            m_read.faults.push_back({Severity::Fault, "csv.place-twice", cells.where(), {first->second.section(':', -1)}});
            return;
        }
        StockCount& count = m_counts[at];
        if (count.note.isEmpty()) count.note = cells.value("note");
        const std::vector<CountLine> lines = linesOf(*row, *amount);
        const StockCount alone{{}, at, {}, lines, {}, {}};
        for (const Finding& fault : faultsOf(alone, m_season.supplies))
            m_read.faults.push_back(atRow(cells, fault));
        for (const Finding& doubt : doubtsOf(alone, m_books))
            m_read.doubts.push_back({Severity::Warning, "csv.far-off", cells.where(), valuesOf(doubt)});
        count.lines.insert(count.lines.end(), lines.begin(), lines.end());
    }

    /// The supply, what the ledger has, what was counted.
    static std::vector<Value> valuesOf(const Finding& doubt) {
        std::vector<Value> values{doubt.subject};
        values.insert(values.end(), doubt.values.begin(), doubt.values.end());
        return values;
    }

    /// Ids follow from what is counted, so that the same file does not count twice.
    void finish() {
        for (auto& [at, count] : m_counts) {
            count.at = at;
            QStringList facts{QString::number(at.seconds), count.note};
            for (const CountLine& line : count.lines)
                facts << line.key.supply.value << QString::number(int(line.key.place.kind)) << line.key.place.machine.value
                      << QString::number(line.key.place.slot) << line.key.container << line.key.lot
                      << QString::number(line.counted.value);
            count.id = {idFrom(facts)};
            for (Finding fault : faultsOf(count, m_season.supplies)) {
                fault.subject = m_rows.file;
                m_read.faults.push_back(fault);
            }
            m_read.counts.push_back(std::move(count));
        }
    }

    const CsvRows& m_rows;
    const SeasonState& m_season;
    Instant m_now;
    Zone m_zone;
    Books m_books;
    std::map<std::pair<Instant, StockKey>, QString> m_lines;  ///< where each place stands
    std::map<Instant, StockCount> m_counts;
    ReadCounts m_read;
};

}  // namespace

QStringList stockColumns(StockKind kind) {
    return kind == StockKind::Counts ? QStringList{"supply", "amount"} : QStringList{"supply", "price"};
}

ReadCounts countsFromCsv(const CsvRows& rows, const SeasonState& season, Instant now) {
    return CountReader(rows, season, now).read();
}

}  // namespace laneward::cli
