// The open centre as the window sees it: one store, one state, one stack of edits, one person at the desk.
//
// Pages read the state and the plan, ask for edits and records, and listen to changed(). Every edit goes through apply() and can
// be undone; every record is appended and is undone by its counter-record. What the store refuses is said in one line by
// problem(), and nothing has changed then. References that planOf(), planAtOnce() and occupancyOf() return hold until the next
// changed() or planned().
//
//     if (session.apply(tr("Move %1").arg(title), {RowChange<Series>{before, after}})) closeEditor();
#pragma once

#include "app/edits/beside.h"
#include "app/edits/row_versions.h"
#include "core/base/clock.h"
#include "core/documents/wording.h"
#include "core/planning/plan_memo.h"
#include "core/season/bookings.h"
#include "core/storage/store.h"

#include <QObject>
#include <QUndoStack>

#include <functional>
#include <memory>
#include <mutex>

namespace laneward {

/// What one undoable step does: rows replaced, records appended, both or one of them.
struct Deed {
    QString name;
    std::vector<Change> changes;
    std::vector<Record> records;
};

class Session : public QObject {
    Q_OBJECT

public:
    /// `store` has been opened by the caller; `clock` outlives the session.
    Session(std::unique_ptr<Store> store, const Clock& clock, QObject* parent = nullptr);
    ~Session() override;

    /// Reads the whole state again. Called by the constructor, after edits, and when another PC changed the centre.
    Outcome reload();
    bool hasRead() const { return !m_season.centre.facts.id.isEmpty(); }
    /// Reads again if somebody else has changed the centre, and says once if its file turned out to be damaged, which takes no
    /// writing any more; to be called every few seconds.
    void lookForOthers();
    /// Tells the session that time has passed: plans that begin in the past are made again.
    void tick();

    const SeasonState& season() const { return m_season; }
    Store& store() { return *m_store; }
    bool isReadOnly() const;
    Instant now() const { return m_clock.now(); }
    std::optional<Instant> savedAt() const { return m_savedAt; }  ///< last time this window wrote something
    QDate today() const;                                          ///< the centre's day
    Speech speech() const;
    Zone zone() const { return m_zone; }

    /// For what is shown: the plan of one day or a range as far as it is known at once. Where that is not the last word, the
    /// search goes on beside the window, and planned() tells of what came of it. Memoised until the state changes.
    const Plan& planAtOnce(const DateRange& range);
    const Plan& planAtOnce(QDate day) { return planAtOnce(DateRange{day, day}); }
    bool isSearching() const;
    /// For what is printed, confirmed or written: searched to its limit, however long that takes. Memoised likewise.
    const Plan& planOf(const DateRange& range);
    const Plan& planOf(QDate day) { return planOf(DateRange{day, day}); }
    /// Occurrences of a range, memoised likewise.
    const Occupancy& occupancyOf(const DateRange& range);
    /// The state that planning sees now.
    const State& planningState();

    std::optional<Person> person() const;
    void setPerson(const PersonId& id);
    /// Asks who is at the desk when the first edit or record needs to know; the answer is kept for the sitting.
    void setPersonChooser(std::function<PersonId()> chooser) { m_chooser = std::move(chooser); }

    /// Applies the changes as one undoable edit called `name`; the versions in `before` are those of season().
    bool apply(const QString& name, std::vector<Change> changes);
    /// Appends records as one undoable step called `name`. Empty ids and persons and recordedAt are filled in.
    bool record(const QString& name, std::vector<Record> records);
    /// Rows and records in one undoable step.
    bool perform(Deed deed);
    QUndoStack& undoStack() { return m_undo; }

    /// Stores the day's proposed jobs as confirmed with the next plan version; undoable. Returns that version, 0 on failure or
    /// when there is nothing new to confirm (then the current version).
    int confirmDay(QDate day);
    /// Stores one job as confirmed at the time it names, with the day's next plan version; undoable. The plan goes around it.
    bool confirmJob(const Job& job);
    /// 'Still playing, slips by …': lengthens that one occurrence; the evening is planned again.
    bool slip(const SeriesId& series, const LocalTime& original, Seconds by);

    OperationId newOperation() const;  ///< a fresh UUID

Q_SIGNALS:
    void changed();  ///< the state is another; ask for everything again
    void planned();  ///< a plan that planAtOnce() has shown is another one now
    void searching(bool isSearching);
    void personChanged();
    void problem(const QString& line);  ///< something was refused; nothing has changed
    void said(const QString& line);     ///< something was done, in words

private:
    friend class UndoableStep;
    void forget();
    void searchNext();
    void stopSearching();
    void learn(const DateRange& range, Plan plan);
    void refuse(const Error& error);
    bool knowsPerson();
    /// Applies, keeps the row versions, and turns `edit` into its counter-edit.
    bool commit(Edit& edit, const std::vector<Passage>& passages);
    /// With what they book in the stock ledger.
    bool append(const std::vector<Record>& records);
    const UseFactors& useFactors();
    void fillIn(Record& record) const;
    std::vector<Record> counterOf(const std::vector<Record>& records) const;
    ErrorKind lastRefusal() const { return m_refusal; }
    void settled();

    struct Memo;
    std::unique_ptr<Store> m_store;
    const Clock& m_clock;
    SeasonState m_season;
    Zone m_zone;
    RowVersions m_versions;
    PersonId m_person;
    std::function<PersonId()> m_chooser;
    std::optional<Instant> m_savedAt;
    bool m_damageSaid = false;
    std::int64_t m_counter = -1;
    ErrorKind m_refusal = ErrorKind::Io;
    std::unique_ptr<Memo> m_memo;
    std::optional<UseFactors> m_factors;
    // Both outlive edits: days that they do not touch are not solved again.
    PlanMemo m_first;
    PlanMemo m_searched;
    std::mutex m_atSearched;
    QUndoStack m_undo;
    Beside m_beside;
};

}  // namespace laneward
