#include "core/season/bookings.h"

#include "core/season/output_drift.h"

#include <QUuid>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

const QUuid bookingSpace{"{5d0c2f0e-3b52-4a1b-9a53-6a2d7a2f6c11}"};

Place tankPlace(const Machine& machine, int product) { return {Place::Kind::Tank, machine.id, product}; }
Place wasteTankOf(const Machine& machine) { return {Place::Kind::WasteTank, machine.id, 0}; }

Amount amountOf(Microlitres liquid) { return {liquid.value}; }

/// The movements of one record, each booked as it is made.
class Booking {
public:
    Booking(Books& books, const OperationId& record, const Movement& header)
        : m_books(books), m_record(record), m_header(header) {}

    void add(MovementKind kind, std::vector<Entry> entries) {
        std::erase_if(entries, [](const Entry& e) { return e.amount == Amount{0}; });
        if (entries.empty()) return;
        Movement movement = m_header;
        movement.id = {QUuid::createUuidV5(bookingSpace, m_record.value + '/' + QString::number(m_movements.size()))
                           .toString(QUuid::WithoutBraces)};
        movement.kind = kind;
        movement.entries = std::move(entries);
        movement.flagged = overdraws(movement, m_books.stock);
        m_books.stock.add(movement);
        m_movements.push_back(std::move(movement));
    }

    Books& books() { return m_books; }
    std::vector<Movement> take() { return std::move(m_movements); }

private:
    Books& m_books;
    OperationId m_record;
    Movement m_header;
    std::vector<Movement> m_movements;
};

Movement headerOf(MovementSource source, const OperationId& record, const PersonId& person, Instant at) {
    Movement header;
    header.at = at;
    header.person = person;
    header.source = source;
    header.sourceId = record.value;
    header.recordedAt = at;
    return header;
}

void move(std::vector<Entry>& entries, const SupplyId& supply, const Place& from, const Place& to, Amount amount) {
    entries.push_back({{supply, from, {}, {}}, -amount});
    entries.push_back({{supply, to, {}, {}}, amount});
}

/// From tank to lane, or back where less was used than booked.
void useFromTank(std::vector<Entry>& entries, const Supply& supply, const Place& tank, Amount liquid) {
    const Mixture used = mixtureOf(supply, liquid);
    move(entries, supply.id, tank, {Place::Kind::Lane, {}, 0}, used.concentrate);
    move(entries, waterId, tank, {Place::Kind::Lane, {}, 0}, used.water);
}

Amount usedBy(const Books& books, const Machine& machine, const RunLog& run, int product) {
    const auto factor = books.factors.find({machine.id, product});
    const double k = factor == books.factors.end() ? 1.0 : factor->second;
    const Pattern* pattern = run.pattern ? findPattern(books.patterns, *run.pattern) : nullptr;
    return {std::llround(k * double(nominalUse(machine, product, run.treatment, pattern, run.use.laneRuns).value))};
}

void bookPerLane(Booking& booking, const RunLog& run) {
    if (run.treatment == Treatment::ConditionOnly) return;
    for (const Supply& supply : booking.books().supplies) {
        if (supply.retired || supply.basis != UseBasis::PerLaneCleaned) continue;
        std::vector<Entry> entries;
        move(entries, supply.id, {Place::Kind::Open, {}, 0}, {Place::Kind::Lane, {}, 0}, supply.usualUse * run.use.laneRuns);
        booking.add(MovementKind::Used, std::move(entries));
    }
}

/// Takes from open containers, the oldest lot first, then opens sealed ones; what is not there goes below zero in the open.
class Taking {
public:
    Taking(Booking& booking, const Supply& supply) : m_booking(booking), m_supply(supply) {}

    std::vector<Entry> take(Amount amount) {
        std::vector<Entry> taken;
        while (amount > Amount{0}) {
            const std::optional<StockKey> open = firstIn(Place::Kind::Open);
            if (!open && openNext()) continue;
            const StockKey from = open.value_or(StockKey{m_supply.id, {Place::Kind::Open, {}, 0}, {}, {}});
            const Amount part = open ? std::min(amount, left(*open)) : amount;
            m_taken[from] += part;
            taken.push_back({from, -part});
            amount -= part;
        }
        return taken;
    }

private:
    Amount left(const StockKey& key) const {
        const auto taken = m_taken.find(key);
        return m_booking.books().stock.at(key) - (taken == m_taken.end() ? Amount{0} : taken->second);
    }

    std::optional<StockKey> firstIn(Place::Kind kind) const {
        std::optional<StockKey> first;
        for (const auto& [key, amount] : m_booking.books().stock.all()) {
            if (key.supply != m_supply.id || key.place.kind != kind || left(key) <= Amount{0}) continue;
            if (!first || std::tie(key.lot, key.container) < std::tie(first->lot, first->container)) first = key;
        }
        return first;
    }

    bool openNext() {
        const std::optional<StockKey> sealed = firstIn(Place::Kind::Shelf);
        if (!sealed) return false;
        const Amount there = left(*sealed);
        const Amount one = m_supply.container > Amount{0} ? std::min(there, m_supply.container) : there;
        StockKey open = *sealed;
        open.place.kind = Place::Kind::Open;
        m_booking.add(MovementKind::Opened, {{*sealed, -one}, {open, one}});
        return true;
    }

    Booking& m_booking;
    const Supply& m_supply;
    std::map<StockKey, Amount> m_taken;
};

void bookFill(Booking& booking, const Supply& supply, const Place& tank, Amount liquid) {
    const Mixture filled = mixtureOf(supply, liquid);
    std::vector<Entry> entries = Taking(booking, supply).take(filled.concentrate);
    entries.push_back({{supply.id, tank, {}, {}}, filled.concentrate});
    move(entries, waterId, {Place::Kind::WaterMain, {}, 0}, tank, filled.water);
    booking.add(MovementKind::Filled, std::move(entries));
}

/// What was poured goes in; without anybody having said how much, what the level rose by. The rest of the difference is use.
void bookLevel(Booking& booking, const Supply& supply, const Place& tank, std::optional<Microlitres> poured, Microlitres level) {
    const Amount before = inTank(booking.books().stock, supply, tank);
    const Amount filled = poured ? amountOf(*poured) : std::max(Amount{0}, amountOf(level) - before);
    bookFill(booking, supply, tank, filled);
    std::vector<Entry> entries;
    useFromTank(entries, supply, tank, before + filled - amountOf(level));
    booking.add(MovementKind::Used, std::move(entries));
}

void bookWaste(Booking& booking, const Machine& machine, Microlitres level) {
    const Place tank = wasteTankOf(machine);
    const Amount emptied = booking.books().stock.in(wasteId, tank) - amountOf(level);
    std::vector<Entry> entries;
    const Place outside{emptied > Amount{0} ? Place::Kind::Drain : Place::Kind::Lane, {}, 0};
    move(entries, wasteId, tank, outside, emptied);
    booking.add(emptied > Amount{0} ? MovementKind::Disposed : MovementKind::Used, std::move(entries));
}

const Supply* keptFor(const Books& books, const Machine& machine, int product) {
    const QString name = productName(machine, product);
    return name.isEmpty() ? nullptr : supplyNamed(books.supplies, name);
}

Microlitres levelOf(const MachineLevels& levels, int product) {
    return product == cleanerProduct ? levels.cleaner : levels.conditioner[size_t(product)];
}

/// The measure is what the ledger has; where it has nothing, a container.
bool isFarOff(const CountLine& line, std::int64_t before, std::int64_t container) {
    constexpr std::int64_t farOff = 20;
    const std::int64_t counted = line.counted.value;
    const bool many = counted > farOff * (before > 0 ? before : container);
    const bool few = before > farOff * counted;
    if (many || few) return std::abs(counted - before) > container;
    return line.key.place.kind == Place::Kind::Shelf && before <= 0 && counted > 0 && farOff * counted < container;
}

}  // namespace

Mixture mixtureOf(const Supply& supply, Amount liquid) {
    const std::int64_t parts = 1 + supply.waterParts;
    const Amount concentrate{liquid.value / parts};
    return {concentrate, liquid - concentrate};
}

Amount inTank(const Balances& stock, const Supply& supply, const Place& tank) {
    return stock.in(supply.id, tank) + (supply.waterParts > 0 ? stock.in(waterId, tank) : Amount{0});
}

std::vector<Movement> bookingsOf(const RunLog& run, Books& books) {
    const Machine* machine = findMachine(books.centre, run.machine);
    if (!machine || run.result == RunResult::Void || books.supplies.empty()) return {};
    Booking booking(books, run.id, headerOf(MovementSource::Run, run.id, run.person, run.time.end));
    std::vector<Entry> entries;
    for (int product = 0; product < products; ++product) {
        if (const Supply* supply = keptFor(books, *machine, product))
            useFromTank(entries, *supply, tankPlace(*machine, product), usedBy(books, *machine, run, product));
    }
    move(entries, wasteId, {Place::Kind::Lane, {}, 0}, wasteTankOf(*machine), amountOf(run.use.waste));
    booking.add(MovementKind::Used, std::move(entries));
    bookPerLane(booking, run);
    return booking.take();
}

std::vector<Movement> bookingsOf(const LevelReading& reading, Books& books) {
    const Machine* machine = findMachine(books.centre, reading.levels.machine);
    if (!machine || books.supplies.empty()) return {};
    Booking booking(books, reading.id, headerOf(MovementSource::Level, reading.id, reading.person, reading.levels.at));
    for (int product = 0; product < products; ++product) {
        const Supply* supply = keptFor(books, *machine, product);
        if (!supply) continue;
        std::optional<Microlitres> poured;
        if (reading.poured)
            poured = product == cleanerProduct ? reading.poured->cleaner : reading.poured->conditioner[size_t(product)];
        bookLevel(booking, *supply, tankPlace(*machine, product), poured, levelOf(reading.levels, product));
    }
    bookWaste(booking, *machine, reading.levels.waste);
    return booking.take();
}

std::vector<Movement> bookingsOf(const StockCount& count, Books& books) {
    Booking booking(books, count.id, headerOf(MovementSource::Count, count.id, count.person, count.at));
    for (const CountLine& line : count.lines) {
        const Amount found = line.counted - books.stock.at(line.key);
        booking.add(MovementKind::Counted, {{line.key, found}, {{line.key.supply, {Place::Kind::Loss, {}, 0}, {}, {}}, -found}});
    }
    return booking.take();
}

std::vector<Movement> bookingsOf(const ServiceRecord& record, Books& books) {
    Booking booking(books, record.id, headerOf(MovementSource::Service, record.id, record.person, record.at));
    for (const PartUsed& part : record.parts) {
        const Supply* supply = findSupply(books.supplies, part.supply);
        if (!supply || record.result == ServiceResult::Withdrawn) continue;
        std::vector<Entry> entries = Taking(booking, *supply).take(part.amount);
        entries.push_back({{supply->id, {Place::Kind::Lane, {}, 0}, {}, {}}, part.amount});
        booking.add(MovementKind::Used, std::move(entries));
    }
    return booking.take();
}

std::vector<Movement> takenBack(const std::vector<Movement>& earlier, const Correction& by, Books& books) {
    std::vector<Movement> counters;
    for (const Movement& movement : earlier) {
        const auto names = [&](const Movement& other) { return other.corrects == movement.id; };
        if (movement.corrects || std::any_of(earlier.begin(), earlier.end(), names)) continue;
        Movement counter = counterOf(movement);
        counter.id = {
            QUuid::createUuidV5(bookingSpace, by.id.value + "/back/" + movement.id.value).toString(QUuid::WithoutBraces)};
        counter.person = by.person;
        counter.at = movement.at;
        counter.recordedAt = by.at;
        counter.flagged = overdraws(counter, books.stock);
        books.stock.add(counter);
        counters.push_back(std::move(counter));
    }
    return counters;
}

std::vector<Movement> openingOf(const Supply& supply, const std::vector<MachineLevels>& levels, Books& books) {
    std::vector<Movement> all;
    for (const MachineLevels& level : levels) {
        const Machine* machine = findMachine(books.centre, level.machine);
        for (int product = 0; machine && product < products; ++product) {
            if (productName(*machine, product) != supply.name) continue;
            const OperationId record{supply.id.value + '/' + machine->id.value + '/' + QString::number(product)};
            Booking booking(books, record, headerOf(MovementSource::Person, record, {}, level.at));
            const Place tank = tankPlace(*machine, product);
            const Mixture there = mixtureOf(supply, amountOf(levelOf(level, product)));
            std::vector<Entry> entries;
            move(entries, supply.id, {Place::Kind::Opening, {}, 0}, tank, there.concentrate);
            move(entries, waterId, {Place::Kind::Opening, {}, 0}, tank, there.water);
            booking.add(MovementKind::Counted, std::move(entries));
            for (Movement& movement : booking.take())
                all.push_back(std::move(movement));
        }
    }
    return all;
}

std::vector<Finding> doubtsOf(const StockCount& count, const Books& books) {
    std::vector<Finding> doubts;
    for (const CountLine& line : count.lines) {
        const Supply* supply = findSupply(books.supplies, line.key.supply);
        if (!supply) continue;
        const Amount before = books.stock.at(line.key);
        if (!isFarOff(line, before.value, std::max<std::int64_t>(supply->container.value, 0))) continue;
        const BaseUnit unit = unitOf(supply->kind);
        doubts.push_back(
            {Severity::Warning, "count.far-off", supply->name, {valueOfAmount(before, unit), valueOfAmount(line.counted, unit)}});
    }
    return doubts;
}

}  // namespace laneward
