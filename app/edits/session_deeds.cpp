#include "app/edits/session.h"
#include "app/edits/undoable_step.h"
#include "core/season/recording.h"
#include "core/storage/booked.h"

#include <algorithm>

namespace laneward {

std::optional<Person> Session::person() const {
    const Person* found = findPerson(m_season.centre, m_person);
    return found && found->active ? std::optional(*found) : std::nullopt;
}

void Session::setPerson(const PersonId& id) {
    if (m_person == id) return;
    m_person = id;
    Q_EMIT personChanged();
}

/// A centre with one person need not ask; one without people has nobody to name.
bool Session::knowsPerson() {
    if (person()) return true;
    std::vector<PersonId> active;
    for (const Person& p : m_season.centre.people) {
        if (p.active) active.push_back(p.id);
    }
    if (active.empty()) return true;
    if (active.size() == 1) {
        setPerson(active.front());
    } else if (m_chooser) {
        setPerson(m_chooser());
    }
    if (person()) return true;
    Q_EMIT problem(tr("Nothing was saved: choose who is at the desk first, below on the right."));
    return false;
}

namespace {

/// What the ledger names cannot go away: undoing a new supply that has moved retires it.
void keepMoved(Edit& counter, const std::vector<Record>& records) {
    for (Change& change : counter.changes) {
        auto* supply = std::get_if<RowChange<Supply>>(&change);
        if (!supply || !supply->before || supply->after) continue;
        const bool moved = std::any_of(records.begin(), records.end(), [&](const Record& record) {
            const auto* movement = std::get_if<Movement>(&record);
            return movement && std::any_of(movement->entries.begin(), movement->entries.end(),
                                           [&](const Entry& e) { return e.key.supply == supply->before->id; });
        });
        if (!moved) continue;
        supply->after = supply->before;
        supply->after->retired = true;
    }
}

}  // namespace

bool Session::apply(const QString& name, std::vector<Change> changes) { return perform({name, std::move(changes), {}}); }

bool Session::record(const QString& name, std::vector<Record> records) { return perform({name, {}, std::move(records)}); }

bool Session::perform(Deed deed) {
    if (deed.changes.empty() && deed.records.empty()) return true;
    if (!knowsPerson()) return false;
    for (Record& record : deed.records)
        fillIn(record);
    for (Change& change : deed.changes) {
        auto* order = std::get_if<RowChange<Order>>(&change);
        const bool places = order && order->after && order->after->state == OrderState::Placed;
        if (places && order->after->person.isEmpty()) order->after->person = m_person;
    }
    std::vector<Passage> passages = m_versions.passages(deed.changes);
    Edit edit{{}, m_person, now(), deed.name, std::move(deed.changes)};
    if (!edit.changes.empty() && !commit(edit, passages)) return false;
    if (!deed.records.empty() && !append(deed.records)) {
        for (Passage& passage : passages)
            std::swap(passage.from, passage.to);
        if (!edit.changes.empty() && commit(edit, passages)) settled();
        return false;
    }
    keepMoved(edit, deed.records);
    m_undo.push(new UndoableStep(*this, std::move(edit), std::move(passages), std::move(deed.records)));
    settled();
    Q_EMIT said(deed.name);
    return true;
}

bool Session::commit(Edit& edit, const std::vector<Passage>& passages) {
    edit.id = newOperation();
    edit.person = m_person;
    edit.at = now();
    RowVersions::expect(edit.changes, passages);
    Result<Edit> counter = m_store->apply(edit);
    if (!counter) {
        const bool conflict = counter.error().kind == ErrorKind::Refused && !isReadOnly();
        refuse(counter.error());
        // The line that says why stays: reload() alone says nothing.
        if (const Outcome read = conflict ? reload() : Outcome(Nothing{}); !read) refuse(read.error());
        return false;
    }
    m_versions.written(counter->changes, passages);
    edit.changes = std::move(counter->changes);
    return true;
}

bool Session::append(const std::vector<Record>& records) {
    const Result<std::vector<Record>> booked = withBookings(*m_store, m_season, useFactors(), records);
    const Outcome done = booked ? m_store->append(*booked) : Outcome(booked.error());
    if (!done) refuse(done.error());
    const auto isFill = [](const Record& record) { return std::holds_alternative<LevelReading>(record); };
    if (std::any_of(records.begin(), records.end(), isFill)) m_factors.reset();
    return bool(done);
}

/// Learned from the fills of a year, so worked out once and again after a fill.
const UseFactors& Session::useFactors() {
    if (m_factors) return *m_factors;
    Result<UseFactors> learned = m_season.supplies.empty() ? UseFactors{} : learnedFactors(*m_store, m_season, now());
    m_factors = learned ? *std::move(learned) : UseFactors{};
    return *m_factors;
}

void Session::fillIn(Record& record) const {
    std::visit(
        [this](auto& r) {
            if (r.id.isEmpty()) r.id = newOperation();
            if (r.person.isEmpty()) r.person = m_person;
        },
        record);
    auto* run = std::get_if<RunLog>(&record);
    if (!run) return;
    if (run->recordedAt.seconds == 0) run->recordedAt = now();
    const Pattern* pattern = run->pattern ? findPattern(m_season.patterns, *run->pattern) : nullptr;
    if (pattern && run->patternVersion == 0) run->patternVersion = pattern->edition;
}

namespace {

/// A run is taken back as void; a correction is taken back by stating again what it had corrected.
RunLog takenBack(const RunLog& run, const SeasonState& season) {
    RunLog counter = run;
    counter.result = RunResult::Void;
    for (const RunLog& other : season.runs) {
        if (run.corrects && other.id == *run.corrects) counter = other;
    }
    counter.corrects = run.id;
    return counter;
}

void empty(Incident& incident) { incident.text.clear(); }
void empty(HandOver& note) { note.text.clear(); }
void empty(TapeReading& reading) { reading.milliUnits = {}; }
void empty(Inspection& inspection) { inspection.values.clear(); }
void empty(StockCount& count) { count.lines.clear(); }
void empty(ServiceRecord& record) { record.result = ServiceResult::Withdrawn; }
void empty(MeterReading& reading) { reading.withdrawn = true; }
void empty(PackReading& reading) { reading.withdrawn = true; }
void empty(Attachment& attachment) {
    attachment.withdrawn = true;
    attachment.content.clear();
}

template <class T>
T withdrawalOf(const T& record) {
    T counter = record;
    counter.corrects = record.id;
    empty(counter);
    return counter;
}

/// A correction is taken back by stating again what it had corrected, wherever that lies among `all`.
template <class T>
T restated(const T& record, const Result<std::vector<T>>& all) {
    T counter = withdrawalOf(record);
    for (const T& other : all ? *all : std::vector<T>{}) {
        if (record.corrects && other.id == *record.corrects) counter = other;
    }
    counter.corrects = record.id;
    return counter;
}

/// Before the reading stood the one before it; before the first of all, what closing down leaves behind.
LevelReading takenBack(const LevelReading& reading, const SeasonState& season) {
    LevelReading counter = reading;
    counter.corrects = reading.id;
    const LevelReading* before = nullptr;
    for (const LevelReading& other : season.readings) {
        if (other.levels.machine != reading.levels.machine || other.id == reading.id) continue;
        if (other.levels.at <= reading.levels.at && (!before || before->levels.at <= other.levels.at)) before = &other;
    }
    const Machine* machine = findMachine(season.centre, reading.levels.machine);
    const Instant dawn = dayOf(season.centre, dateOf(season.centre, reading.levels.at)).begin;
    counter.poured.reset();  // nothing was poured or emptied after all
    counter.emptied.reset();
    if (before) counter.levels = before->levels;
    if (!before && machine) counter.levels = fullLevels(*machine, limitsFromSettings(*machine), dawn);
    return counter;
}

}  // namespace

std::vector<Record> Session::counterOf(const std::vector<Record>& records) const {
    std::vector<Record> counters;
    for (const Record& record : records) {
        Record counter = record;
        if (const auto* run = std::get_if<RunLog>(&record)) counter = takenBack(*run, m_season);
        if (const auto* incident = std::get_if<Incident>(&record)) counter = withdrawalOf(*incident);
        if (const auto* note = std::get_if<HandOver>(&record)) counter = withdrawalOf(*note);
        if (const auto* reading = std::get_if<LevelReading>(&record)) counter = takenBack(*reading, m_season);
        if (const auto* tape = std::get_if<TapeReading>(&record))
            counter = tape->corrects ? restated(*tape, m_store->tapes(allRecords)) : withdrawalOf(*tape);
        if (const auto* inspection = std::get_if<Inspection>(&record))
            counter = inspection->corrects ? restated(*inspection, m_store->inspections(allRecords)) : withdrawalOf(*inspection);
        if (const auto* movement = std::get_if<Movement>(&record)) counter = laneward::counterOf(*movement);
        if (const auto* count = std::get_if<StockCount>(&record))
            counter = count->corrects ? restated(*count, m_store->counts(allRecords)) : withdrawalOf(*count);
        if (const auto* service = std::get_if<ServiceRecord>(&record))
            counter = service->corrects ? restated(*service, m_store->services(allRecords)) : withdrawalOf(*service);
        if (const auto* reading = std::get_if<MeterReading>(&record)) counter = withdrawalOf(*reading);
        if (const auto* pack = std::get_if<PackReading>(&record)) counter = withdrawalOf(*pack);
        if (const auto* attachment = std::get_if<Attachment>(&record))
            counter = attachment->corrects ? restated(*attachment, m_store->attachments(attachment->record))
                                           : withdrawalOf(*attachment);
        std::visit(
            [this](auto& r) {
                r.id = newOperation();
                r.person = m_person;
            },
            counter);
        if (auto* run = std::get_if<RunLog>(&counter)) run->recordedAt = now();
        if (auto* movement = std::get_if<Movement>(&counter)) movement->recordedAt = now();
        counters.push_back(std::move(counter));
    }
    return counters;
}

int Session::confirmDay(QDate day) {
    const int version = planVersionOf(m_season, day);
    std::vector<Job> proposed;
    for (const Job& job : planOf(day).jobs) {
        if (job.state == JobState::Proposed && job.date == day) proposed.push_back(job);
    }
    if (proposed.empty()) return version;
    if (!knowsPerson()) return 0;
    std::vector<Change> changes;
    changes.reserve(proposed.size());
    for (const Job& job : proposed) {
        changes.push_back(RowChange<Job>{std::nullopt, confirmedAs(job, {newOperation().value}, version + 1, m_person)});
    }
    const QString name = tr("Confirm the jobs of %1").arg(dayText(day, speech()));
    return apply(name, std::move(changes)) ? version + 1 : 0;
}

bool Session::confirmJob(const Job& job) {
    if (!knowsPerson()) return false;
    const Job confirmed = confirmedAs(job, {newOperation().value}, planVersionOf(m_season, job.date) + 1, m_person);
    const QString name = tr("Confirm the job at %1").arg(dateTimeText(job.time.begin, speech()));
    return apply(name, {RowChange<Job>{std::nullopt, confirmed}});
}

bool Session::slip(const SeriesId& series, const LocalTime& original, Seconds by) {
    const auto found =
        std::find_if(m_season.series.begin(), m_season.series.end(), [&](const Series& s) { return s.id == series; });
    if (found == m_season.series.end()) return false;
    Series after = *found;
    auto exception =
        std::find_if(after.overrides.begin(), after.overrides.end(), [&](const Override& o) { return o.original == original; });
    if (exception == after.overrides.end()) {
        exception = after.overrides.insert(after.overrides.end(), Override{original, false, {}, {}, {}, {}});
    }
    exception->duration = exception->duration.value_or(after.duration) + by;
    std::vector<Change> changes{RowChange<Series>{*found, after}};
    for (const Occurrence& occurrence : occupancyOf({today().addDays(-1), today()}).occurrences) {
        if (occurrence.series != series || occurrence.original != original) continue;
        for (const Job& job : overtakenJobs(m_season, occurrence, occurrence.cleared + by, now())) {
            changes.push_back(RowChange<Job>{job, std::nullopt});
        }
    }
    const QString name = tr("%1 plays %2 longer").arg(shown(after.title), durationText(by, speech()));
    return apply(name, std::move(changes));
}

}  // namespace laneward
