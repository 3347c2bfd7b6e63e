// A centre's database: SQLite in one file, or PostgreSQL for many PCs; the same repositories on both.
//
//     Result<std::unique_ptr<Store>> store = Store::open(Location::parse("club.laneward"), Access::ReadWrite);
//     Result<SeasonState> season = (*store)->load(now);
//
// One Store belongs to one thread. Files are made with mode 0600 and checked (quick_check, application id, schema version) before
// use; a damaged or newer file is refused untouched. A file or folder that cannot be written opens read-only and says so.
// quick_check reads a whole file, so a window lets it go on beside its first page: what is written waits for it.
#pragma once

#include "core/season/history_slice.h"
#include "core/storage/edit.h"

#include <QUrl>

#include <memory>
#include <optional>

namespace laneward {

class Database;

/// Where a centre is kept.
struct Location {
    enum class Kind { Sqlite, Postgres };
    Kind kind = Kind::Sqlite;
    QString path;  ///< SQLite file
    QUrl server;   ///< postgresql://user@host:port/db, host may be a socket directory in ?host=; without password
    /// Errors (Usage): "location.password", "location.unreadable".
    static Result<Location> parse(const QString& fileOrUrl);
    QString shown() const;
};

enum class Access { ReadWrite, ReadOnly, Create };  ///< Create refuses an existing file or centre

/// What was written down of packs, corrections included, and the work of each run that stands.
struct PackHistory {
    std::vector<PackReading> readings;
    std::vector<MachineWork> work;
};

/// When the pages of a SQLite file are read and checked; its kind, size and schema always are at once.
enum class Examination {
    First,      ///< before anything else
    Meanwhile,  ///< on a thread of its own, begun by the first damage() or change; writing waits for it
    Elsewhere,  ///< by a Store of this program that has the same centre open
};

/// All that was ever recorded; the ends leave room for reckoning with them.
inline constexpr Span allRecords{{std::int64_t{-1} << 60}, {std::int64_t{1} << 60}};

class Store {
public:
    /// Errors: Io "store.missing", "store.damaged", "store.not-a-database", "store.locked", "store.unreachable",
    /// "store.disk-full", "store.no-driver", Refused "store.newer-schema", "store.older-schema" (and read-only), "store.exists".
    /// These Io errors may come from every other call too.
    static Result<std::unique_ptr<Store>> open(const Location& location, Access access,
                                               Examination examination = Examination::First);
    ~Store();
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;

    const Location& location() const;
    bool isReadOnly() const;
    /// What an examination meanwhile has found so far; does not wait for it, but begins it.
    std::optional<Error> damage();

    /// The state with its open window as of `now`; without a centre one whose facts have an empty id. Lists are ordered by id,
    /// records by time.
    Result<SeasonState> load(Instant now);
    /// Records and jobs of a range, and corrections of them wherever they lie.
    Result<HistorySlice> history(const Span& time);
    /// The same for looking back: of the movements only those that no other record made.
    Result<HistorySlice> deeds(const Span& time);
    /// Runs of a range, and corrections of them wherever they lie, by their end. standing() drops what is corrected.
    Result<std::vector<RunLog>> runs(const Span& time);
    /// Tape readings of a range, and corrections of them wherever they lie, by time. standing() drops what is corrected.
    Result<std::vector<TapeReading>> tapes(const Span& time);
    /// Inspections of a range likewise.
    Result<std::vector<Inspection>> inspections(const Span& time);
    /// Level readings of a range likewise, with the fills among them.
    Result<std::vector<LevelReading>> levelReadings(const Span& time);
    /// Movements of a range likewise, of one supply or of all.
    Result<std::vector<Movement>> movements(const Span& time, const std::optional<SupplyId>& supply = {});
    /// What was booked from one record or order, with what was taken back of it, by time.
    Result<std::vector<Movement>> movementsFrom(MovementSource source, const QString& sourceId);
    /// Counts of stock of a range likewise.
    Result<std::vector<StockCount>> counts(const Span& time);
    /// Service records of a range likewise.
    Result<std::vector<ServiceRecord>> services(const Span& time);
    Result<PackHistory> packs(const Span& time);
    /// What was ever attached to a record, by time. standing() drops what was withdrawn.
    Result<std::vector<Attachment>> attachments(const OperationId& record);
    /// The bytes of an attachment by their hash; empty when they are not here, as after a centre file was read.
    Result<QByteArray> attachmentContent(const QString& sha256);
    /// What is kept, and what of it is on hand.
    Result<std::vector<Supply>> supplies();
    Result<Balances> stock();
    /// Forecasts of a range of days as they were kept, by day.
    Result<std::vector<KeptForecast>> keptForecasts(const DateRange& days);
    /// All versions of one pattern, or of every pattern, by pattern and edition.
    Result<std::vector<PatternVersion>> patternVersions(const std::optional<PatternId>& pattern = {});

    /// Errors: Refused "edit.conflict" (subject: the row's name, values: who, when), "edit.read-only", "edit.already-done",
    /// "edit.still-used", "edit.unit-stays", "edit.centre-stays"; Invalid "edit.unstorable", "edit.unknown-reference",
    /// "edit.other-row", "edit.empty", "store.no-centre". A pattern that says something new becomes its next version: its edition
    /// is given here, whatever the edit holds. Returns the counter-edit (its id is empty: the caller gives it one when it
    /// undoes).
    Result<Edit> apply(const Edit& edit);
    /// Appends all or none. A record whose id is already stored with the same content is success without effect (so that an
    /// unclear commit can be repeated); with other content: Refused "record.id-taken". Further errors: Refused
    /// "record.already-corrected", "edit.read-only"; Invalid "record.unknown-lane", "record.unknown-reference",
    /// "record.ends-before-start", "record.unstorable", "store.no-centre", and the faults of tape readings, inspections, counts
    /// and movements ("ledger.…"); a movement that takes more than is there and is not flagged is Refused, a correction that is
    /// not the opposite Invalid ("ledger.not-opposite"). What a record corrects or comes from stands before it; balances are
    /// those after the records before it, whatever their dates.
    Outcome append(const std::vector<Record>& records);

    /// Keeps the forecast of a day for ever. A day whose forecast is kept already, maybe by another PC just now, is success
    /// without effect. It is no change that others need to hear of: changeCounter() stays. Errors: Refused "edit.read-only";
    /// Invalid "store.no-centre" and the faults of kept forecasts ("forecast.…").
    Outcome keepForecast(const KeptForecast& forecast);

    /// Grows whenever anybody changes the centre: cheap to ask, for noticing other PCs.
    Result<std::int64_t> changeCounter();

    /// Makes the balances of all months again from the movements, which they follow from.
    Outcome rebuildClosingBalances();

    /// Integrity of the file, references and versions ("check.…"), and what the rooms say about their values; empty when sound.
    Result<std::vector<Finding>> check();
    /// A verified copy in `directory` named after centre and `now`; returns its path. SQLite: VACUUM INTO; PostgreSQL: the centre
    /// file.
    Result<QString> backup(const QString& directory, Instant now);

    /// Replaces everything by a centre file's content in one transaction, or fills an empty store. Used by import and demo.
    /// Records may stand in both parts; the season's stock is made from the movements. Errors: Invalid "import.unstorable",
    /// "import.unknown-reference", "import.id-twice", and the faults of the ledger.
    Outcome replaceAll(const SeasonState& season, const HistorySlice& history, PersonId person, Instant at);

    Database& database();

private:
    explicit Store(std::unique_ptr<Database> database, Location location);
    struct Parts;
    std::unique_ptr<Parts> m_parts;
};

/// Puts a verified backup in place of a SQLite centre; the replaced file is kept beside it with the time in its name.
Outcome restore(const QString& backupFile, const Location& location, Instant now);

}  // namespace laneward
