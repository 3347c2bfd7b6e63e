#include "core/documents/history_entry.h"
#include "core/documents/history_names.h"
#include "core/documents/pack_words.h"
#include "core/documents/service_words.h"
#include "core/documents/stock_words.h"
#include "core/season/service_state.h"

#include <QCoreApplication>
#include <QSet>

#include <algorithm>
#include <set>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

// What only takes an earlier record back.
bool isWithdrawal(const RunLog& run) { return run.result == RunResult::Void; }
bool isWithdrawal(const Incident& incident) { return incident.corrects && incident.text.isEmpty(); }
bool isWithdrawal(const HandOver& note) { return note.corrects && note.text.isEmpty(); }
bool isWithdrawal(const LevelReading&) { return false; }
bool isWithdrawal(const TapeReading& reading) { return reading.corrects && !isMeasured(reading); }
bool isWithdrawal(const Inspection& inspection) { return inspection.corrects && inspection.values.empty(); }
bool isWithdrawal(const StockCount& count) { return count.corrects && count.lines.empty(); }
bool isWithdrawal(const ServiceRecord& record) { return record.result == ServiceResult::Withdrawn; }
bool isWithdrawal(const MeterReading& reading) { return reading.withdrawn; }
bool isWithdrawal(const PackReading& reading) { return reading.withdrawn; }
bool isWithdrawal(const Movement& movement) { return movement.corrects.has_value(); }

Instant timeOf(const RunLog& run) { return run.time.end; }
Instant timeOf(const LevelReading& reading) { return reading.levels.at; }
template <class T>
Instant timeOf(const T& record) {
    return record.at;
}

/// Facts of one line; empty ones are left out.
QString joined(const QStringList& facts) {
    QString line;
    for (const QString& fact : facts) {
        if (fact.isEmpty()) continue;
        if (!line.isEmpty()) line += QLatin1StringView(", ");
        line += fact;
    }
    return line;
}

class Maker {
public:
    Maker(const SeasonState& season, const Speech& speech) : m_names(season), m_season(season), m_speech(speech) {}

    template <class T>
    void add(const std::vector<T>& records) {
        QSet<OperationId> corrected;
        for (const T& record : records)
            if (record.corrects) corrected.insert(*record.corrects);
        for (size_t n = 0; n < records.size(); ++n) {
            const T& record = records[n];
            HistoryEntry entry;
            entry.place = n;
            entry.id = record.id;
            entry.at = timeOf(record);
            entry.corrects = record.corrects;
            entry.stands = !isWithdrawal(record) && !corrected.contains(record.id);
            entry.person = record.person;
            entry.personName = m_names.person(record.person);
            entry.when = dateTimeText(entry.at, m_speech);
            tell(record, entry);
            entry.of = *m_shared.insert(entry.of);
            entry.laneText = *m_shared.insert(entry.laneText);
            if (isWithdrawal(record)) entry.words = joined({say(QT_TRANSLATE_NOOP("wording", "withdrawn")), entry.words});
            m_entries.push_back(std::move(entry));
        }
    }

    std::vector<HistoryEntry> entries() {
        std::stable_sort(m_entries.begin(), m_entries.end(), [](const HistoryEntry& a, const HistoryEntry& b) {
            if (a.at != b.at) return a.at > b.at;
            if (a.corrects.has_value() != b.corrects.has_value()) return a.corrects.has_value();  // above what it corrects
            return a.id > b.id;
        });
        nameCorrected();
        nameFollowUps();
        return std::move(m_entries);
    }

private:
    void tell(const RunLog& run, HistoryEntry& entry) const {
        entry.kind = HistoryKind::Run;
        ofMachine(run.machine, entry);
        LaneSet lanes;
        for (const LaneTime& lane : run.lanes)
            lanes.insert(lane.lane);
        onLanes(lanes, entry);
        const bool conditions = run.treatment != Treatment::CleanOnly;
        const bool cleans = run.treatment != Treatment::ConditionOnly;
        const auto& used = run.use.conditioner;
        entry.products = m_names.tanks(run.machine, {used[0] > Microlitres{0}, used[1] > Microlitres{0}}, cleans);
        entry.of = entry.products.join(QLatin1StringView(", "));
        entry.lanesTreated = metersOf(run).lanes;
        entry.conditioner = run.use.conditionerTotal();
        entry.cleaner = run.use.cleaner;
        entry.minutes = int(run.time.length().value / 60);
        QStringList facts{text(run.treatment)};
        if (run.pattern) facts << m_names.pattern(*run.pattern);
        facts << text(run.result);
        if (conditions) facts << say(QT_TRANSLATE_NOOP("wording", "conditioner %1")).arg(amountText(entry.conditioner, m_speech));
        if (cleans) facts << say(QT_TRANSLATE_NOOP("wording", "cleaner %1")).arg(amountText(entry.cleaner, m_speech));
        facts << shown(run.note);
        entry.words = joined(facts);
    }

    void tell(const LevelReading& reading, HistoryEntry& entry) const {
        entry.kind = reading.poured ? HistoryKind::Fill : HistoryKind::Levels;
        ofMachine(reading.levels.machine, entry);
        entry.products = m_names.tanks(reading.levels.machine, {true, true}, true);
        entry.of = entry.products.join(QLatin1StringView(", "));
        const MachineLevels& levels = reading.levels;
        QStringList facts;
        if (reading.poured) {
            const Poured& poured = *reading.poured;
            facts << say(QT_TRANSLATE_NOOP("wording", "poured %1 of conditioner and %2 of cleaner"))
                         .arg(amountText(poured.conditioner[0] + poured.conditioner[1], m_speech),
                              amountText(poured.cleaner, m_speech));
        }
        facts << say(QT_TRANSLATE_NOOP("wording", "conditioner %1"))
                     .arg(amountText(levels.conditioner[0] + levels.conditioner[1], m_speech))
              << say(QT_TRANSLATE_NOOP("wording", "cleaner %1")).arg(amountText(levels.cleaner, m_speech))
              << say(QT_TRANSLATE_NOOP("wording", "waste %1")).arg(amountText(levels.waste, m_speech));
        if (levels.volts) facts << voltsText(*levels.volts, m_speech);
        entry.words = joined(facts);
    }

    void tell(const ServiceRecord& record, HistoryEntry& entry) const {
        entry.kind = HistoryKind::Service;
        entry.item = record.item;
        const ServiceItem* item = m_names.item(record.item);
        const Duty* duty = item ? findDuty(*item, record.duty) : nullptr;
        entry.of = item ? itemText(*item, m_season) : shown(record.item.value);
        if (item) ofMachine(item->machine, entry);
        if (!entry.machine.isEmpty()) entry.meter = record.meters.lanes;
        entry.minutes = record.minutes;
        entry.failed = record.result == ServiceResult::Failed;
        QStringList facts{shown(duty ? duty->name : record.duty.value), text(record.result)};
        std::int64_t cost = record.cost.minor;
        bool isKnown = cost != 0;
        for (const PartUsed& part : record.parts) {
            const QString name = m_names.supply(part.supply);
            entry.products << name;
            facts << name + u' ' + amountText(part.amount, m_names.kindOf(part.supply), m_speech);
            const std::optional<Money> price = m_names.price(part.supply, part.amount);
            if (price) entry.partsMinor += price->minor;
            isKnown |= price.has_value();
        }
        if (isKnown) entry.costMinor = cost + entry.partsMinor;
        facts << shown(record.finding) << shown(record.note);
        entry.words = joined(facts);
    }

    void tell(const MeterReading& reading, HistoryEntry& entry) const {
        entry.kind = HistoryKind::Counter;
        ofMachine(reading.machine, entry);
        entry.meter = reading.shown;
        const QString value = m_speech.locale.toString(qlonglong(reading.shown));
        QStringList facts;
        switch (reading.meter) {
            case MeterKind::Runs:
                facts << say(QT_TRANSLATE_NOOP("wording", "counter of runs: %1")).arg(value);
                break;
            case MeterKind::Minutes:
                facts << say(QT_TRANSLATE_NOOP("wording", "counter of minutes: %1")).arg(value);
                break;
            default:
                facts << say(QT_TRANSLATE_NOOP("wording", "counter of lanes: %1")).arg(value);
        }
        if (reading.replaced) facts << say(QT_TRANSLATE_NOOP("wording", "a new counter"));
        facts << shown(reading.note);
        entry.words = joined(facts);
    }

    void tell(const PackReading& reading, HistoryEntry& entry) const {
        entry.kind = HistoryKind::Pack;
        entry.item = reading.pack;
        const ServiceItem* item = m_names.item(reading.pack);
        entry.of = item ? itemText(*item, m_season) : shown(reading.pack.value);
        if (item) ofMachine(item->machine, entry);
        QStringList facts{text(reading.deed)};
        if (reading.volts) facts << voltsText(*reading.volts, m_speech) + u' ' + text(reading.state);
        if (reading.spent) facts << say(QT_TRANSLATE_NOOP("wording", "had run until it was done"));
        entry.words = joined(facts << shown(reading.note));
    }

    void tell(const Incident& incident, HistoryEntry& entry) const {
        entry.kind = HistoryKind::Incident;
        ofMachine(incident.machine, entry);
        if (incident.lane > 0) onLanes({incident.lane}, entry);
        entry.answers = incident.answers;
        entry.words = incident.answers ? shown(incident.text) : joined({text(incident.kind), shown(incident.text)});
    }

    void tell(const HandOver& note, HistoryEntry& entry) const {
        entry.kind = HistoryKind::HandOver;
        entry.words = shown(note.text);
    }

    void tell(const TapeReading& reading, HistoryEntry& entry) const {
        entry.kind = HistoryKind::Tape;
        ofMachine(reading.machine, entry);
        onLanes({reading.lane}, entry);
        entry.words =
            joined({m_names.pattern(reading.pattern),
                    say(QT_TRANSLATE_NOOP("wording", "at %1")).arg(lengthText(reading.distance, m_speech)), shown(reading.note)});
    }

    void tell(const Inspection& inspection, HistoryEntry& entry) const {
        entry.kind = HistoryKind::Inspection;
        onLanes({inspection.lane}, entry);
        entry.words = joined(
            {say(QT_TRANSLATE_NOOP("wording", "measured: %1")).arg(m_speech.locale.toString(qlonglong(inspection.values.size()))),
             shown(inspection.note)});
    }

    void tell(const StockCount& count, HistoryEntry& entry) const {
        entry.kind = HistoryKind::Count;
        std::vector<std::pair<SupplyId, Amount>> sums;
        for (const CountLine& line : count.lines) {
            const auto same = [&](const auto& sum) { return sum.first == line.key.supply; };
            auto found = std::find_if(sums.begin(), sums.end(), same);
            if (found == sums.end()) found = sums.insert(sums.end(), {line.key.supply, {}});
            found->second += line.counted;
        }
        QStringList facts;
        for (const auto& [supply, amount] : sums) {
            entry.products << m_names.supply(supply);
            facts << entry.products.back() + u' ' + amountText(amount, m_names.kindOf(supply), m_speech);
        }
        if (sums.size() == 1) entry.of = entry.products.front();
        entry.words = joined(facts << shown(count.note));
    }

    void tell(const Movement& movement, HistoryEntry& entry) const {
        entry.kind = HistoryKind::Stock;
        std::vector<std::pair<SupplyId, Amount>> moved;
        for (const Entry& one : movement.entries) {
            if (one.amount <= Amount{0}) continue;
            if (!one.key.place.machine.isEmpty()) ofMachine(one.key.place.machine, entry);
            const auto same = [&](const auto& sum) { return sum.first == one.key.supply; };
            auto found = std::find_if(moved.begin(), moved.end(), same);
            if (found == moved.end()) found = moved.insert(moved.end(), {one.key.supply, {}});
            found->second += one.amount;
        }
        QStringList facts{text(movement.kind)};
        for (const auto& [supply, amount] : moved) {
            entry.products << m_names.supply(supply);
            facts << amountText(amount, m_names.kindOf(supply), m_speech);
        }
        entry.of = entry.products.join(QLatin1StringView(", "));
        if (movement.source == MovementSource::Order)
            facts << say(QT_TRANSLATE_NOOP("wording", "order %1")).arg(m_names.orderNumber(movement.sourceId));
        entry.words = joined(facts << shown(movement.reason));
    }

    void ofMachine(const MachineId& machine, HistoryEntry& entry) const {
        if (machine.isEmpty()) return;
        entry.machine = machine;
        entry.machineName = m_names.machine(machine);
    }

    static void onLanes(const LaneSet& lanes, HistoryEntry& entry) {
        entry.lanes = lanes;
        entry.laneText = lanes.text();
    }

    /// A correction says what it replaces.
    void nameCorrected() {
        QHash<OperationId, QString> when;
        for (const HistoryEntry& entry : m_entries)
            if (entry.corrects) when.insert(*entry.corrects, {});
        for (const HistoryEntry& entry : m_entries) {
            const auto found = when.find(entry.id);
            if (found != when.end()) *found = entry.when;
        }
        for (HistoryEntry& entry : m_entries) {
            if (!entry.corrects) continue;
            const QString old = when.value(*entry.corrects);
            const QString words = old.isEmpty() ? say(QT_TRANSLATE_NOOP("wording", "replaces an entry that is not listed"))
                                                : say(QT_TRANSLATE_NOOP("wording", "replaces the entry of %1")).arg(old);
            entry.words = joined({entry.words, words});
        }
    }

    /// A follow-up says what it follows up, and that says what was done about it: looking for the words of one finds both.
    void nameFollowUps() {
        QHash<OperationId, QStringList> answers;  // by what is answered, the newest first
        for (const HistoryEntry& entry : m_entries) {
            if (!entry.answers) continue;
            QStringList& words = answers[*entry.answers];
            if (entry.stands) words << say(QT_TRANSLATE_NOOP("wording", "followed up on %1: %2")).arg(entry.when, entry.words);
        }
        if (answers.isEmpty()) return;
        QHash<OperationId, OperationId> corrected;
        QHash<OperationId, QString> answered;
        for (const HistoryEntry& entry : m_entries) {
            if (entry.corrects) corrected.insert(entry.id, *entry.corrects);
            if (answers.contains(entry.id))
                answered.insert(
                    entry.id,
                    say(QT_TRANSLATE_NOOP("wording", "follows up: %1 of %2, %3")).arg(text(entry.kind), entry.when, entry.words));
        }
        for (HistoryEntry& entry : m_entries) {
            const QString subject =
                entry.answers
                    ? answered.value(*entry.answers, say(QT_TRANSLATE_NOOP("wording", "follows up an entry that is not listed")))
                    : QString();
            QStringList facts{entry.words, subject};
            // Also what was put right after it was answered.
            OperationId id = entry.id;
            for (qsizetype steps = 0; steps <= corrected.size() && !answers.contains(id) && corrected.contains(id); ++steps)
                id = corrected.value(id);
            const QStringList done = answers.value(id);
            std::copy(done.rbegin(), done.rend(), std::back_inserter(facts));
            if (!subject.isEmpty() || !done.isEmpty()) entry.words = joined(facts);
        }
    }

    HistoryNames m_names;
    const SeasonState& m_season;
    const Speech& m_speech;
    QSet<QString> m_shared;  ///< the same few lanes, items and products come again and again
    std::vector<HistoryEntry> m_entries;
};

}  // namespace

std::vector<HistoryEntry> historyEntries(const HistorySlice& slice, const SeasonState& season, const Speech& speech) {
    Maker maker(season, speech);
    maker.add(slice.runs);
    maker.add(slice.readings);
    maker.add(slice.services);
    maker.add(slice.counters);
    maker.add(slice.packReadings);
    maker.add(slice.incidents);
    maker.add(slice.handOvers);
    maker.add(slice.tapes);
    maker.add(slice.inspections);
    maker.add(slice.counts);
    maker.add(slice.movements);
    return maker.entries();
}

QString text(HistoryKind kind) {
    switch (kind) {
        case HistoryKind::Run:
            return say(QT_TRANSLATE_NOOP("wording", "Run"));
        case HistoryKind::Fill:
            return say(QT_TRANSLATE_NOOP("wording", "Fill"));
        case HistoryKind::Levels:
            return say(QT_TRANSLATE_NOOP("wording", "Levels"));
        case HistoryKind::Service:
            return say(QT_TRANSLATE_NOOP("wording", "Service"));
        case HistoryKind::Counter:
            return say(QT_TRANSLATE_NOOP("wording", "Counter"));
        case HistoryKind::Incident:
            return say(QT_TRANSLATE_NOOP("wording", "Incident"));
        case HistoryKind::HandOver:
            return say(QT_TRANSLATE_NOOP("wording", "Hand-over"));
        case HistoryKind::Tape:
            return say(QT_TRANSLATE_NOOP("wording", "Tape reading"));
        case HistoryKind::Inspection:
            return say(QT_TRANSLATE_NOOP("wording", "Inspection"));
        case HistoryKind::Count:
            return say(QT_TRANSLATE_NOOP("wording", "Stock count"));
        case HistoryKind::Stock:
            return say(QT_TRANSLATE_NOOP("wording", "Stock"));
        case HistoryKind::Pack:
            return say(QT_TRANSLATE_NOOP("wording", "Pack"));
    }
    return {};
}

QString key(HistoryKind kind) {
    constexpr std::array<const char*, size_t(historyKinds)> keys{"run",        "fill",     "levels",    "service",
                                                                 "counter",    "incident", "hand_over", "tape",
                                                                 "inspection", "count",    "movement",  "pack"};
    return QString::fromLatin1(keys.at(size_t(kind)));
}

}  // namespace laneward
