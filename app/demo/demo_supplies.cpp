#include "app/demo/demo_parts.h"

#include "core/season/bookings.h"
#include "core/season/output_drift.h"

#include <algorithm>
#include <map>

namespace laneward::demo {

namespace {

constexpr std::uint64_t seed = 0x5a11;
constexpr int countEvery = 4;  // weeks
constexpr std::int64_t approachPerDay = 310'000;
const PersonId manager{"rowan"};

Money pounds(std::int64_t minor) { return {minor, "GBP"}; }

Supply liquid(const char* id, const QString& name, SupplyKind kind, std::int64_t containerLitres) {
    Supply supply{{id}, name, kind};
    supply.container = Amount{containerLitres * 1'000'000};
    return supply;
}

Supply part(const char* id, const QString& name) {
    Supply supply{{id}, name, SupplyKind::Part};
    supply.basis = UseBasis::WhenServiced;
    supply.container = Amount{1};
    return supply;
}

std::vector<Supply> supplies() {
    Supply wash = liquid("reedwash", "Reedwash", SupplyKind::Cleaner, 10);
    wash.waterParts = 4;
    Supply approach = liquid("plainboard", "Plainboard", SupplyKind::ApproachCleaner, 5);
    approach.basis = UseBasis::PerDay;
    approach.usualUse = Amount{300'000};
    Supply cloth{{"sedge"}, "Sedge cloth", SupplyKind::Cloth};
    cloth.basis = UseBasis::PerLaneCleaned;
    cloth.usualUse = Amount{160};
    cloth.container = Amount{45'000};
    Supply amber = liquid("amber", "Tideglass Amber", SupplyKind::Conditioner, 5);
    amber.rules.storageLimit = Amount{60'000'000};
    amber.rules.shelfLifeDays = 540;
    std::vector<Supply> all{amber,
                            liquid("clear", "Tideglass Clear", SupplyKind::Conditioner, 5),
                            wash,
                            approach,
                            cloth,
                            part("blades", "Squeegee blade set"),
                            part("belt", "Drive belt"),
                            part("brush", "Cushion brush"),
                            part("filter", "Waste filter")};
    std::sort(all.begin(), all.end(), [](const Supply& a, const Supply& b) { return a.id < b.id; });
    return all;
}

std::vector<Supplier> suppliers() {
    Supplier fen{{"fenmark"}, "Fenmark Trade", "Unit 4, Osier Yard\nQuillmarsh"};
    fen.freight = pounds(1'450);
    fen.freeFreightFrom = pounds(50'000);
    fen.minimumOrder = pounds(5'000);
    fen.usualLeadDays = 6;
    Supplier withy{{"withy"}, "Withy Parts", "12 Sluice Lane\nNether Quill"};
    withy.freight = pounds(690);
    withy.minimumOrder = pounds(0);
    withy.orderWeekdays = 0x09;  // Mondays and Thursdays
    withy.usualLeadDays = 9;
    return {fen, withy};
}

Offer offer(const char* supplier, const char* supply, const QString& article, Amount pack, std::vector<PriceBreak> prices) {
    return {{QString(supplier) + '-' + supply}, {supplier}, {supply}, article, pack, std::move(prices), false, 0};
}

std::vector<Offer> offers() {
    constexpr Amount litre{1'000'000};
    return {offer("fenmark", "amber", "TA-5", litre * 5, {{1, pounds(8'950)}, {4, pounds(8'400)}, {8, pounds(7'900)}}),
            offer("fenmark", "clear", "TC-5", litre * 5, {{1, pounds(9'900)}, {4, pounds(9'300)}}),
            offer("fenmark", "plainboard", "PB-5", litre * 5, {{1, pounds(2'150)}, {6, pounds(1'900)}}),
            offer("fenmark", "reedwash", "RW-10", litre * 10, {{1, pounds(6'400)}, {3, pounds(5'900)}}),
            offer("withy", "belt", "5102", Amount{1}, {{1, pounds(4'650)}}),
            offer("withy", "blades", "4410", Amount{1}, {{1, pounds(5'350)}}),
            offer("withy", "brush", "2207", Amount{1}, {{1, pounds(14'800)}}),
            offer("withy", "filter", "3120", Amount{2}, {{1, pounds(2'260)}, {5, pounds(1'980)}}),
            offer("withy", "sedge", "1045", Amount{45'000}, {{1, pounds(3'700)}, {6, pounds(3'300)}})};
}

/// The manager's rule of thumb in the time behind: below `low` fill up to `high`.
struct Thumb {
    Amount low;
    Amount high;
};

Thumb thumbOf(const Supply& supply) {
    switch (supply.kind) {
        case SupplyKind::Conditioner:
            return supply.id.value == "amber" ? Thumb{Amount{12'000'000}, Amount{40'000'000}}
                                              : Thumb{Amount{4'000'000}, Amount{15'000'000}};
        case SupplyKind::Cleaner:
            return {Amount{10'000'000}, Amount{40'000'000}};
        case SupplyKind::ApproachCleaner:
            return {Amount{5'000'000}, Amount{25'000'000}};
        case SupplyKind::Cloth:
            return {Amount{90'000}, Amount{270'000}};
        case SupplyKind::Part:
        case SupplyKind::Pack:
            break;
    }
    return {Amount{2}, Amount{3}};
}

Amount opening(const Supply& supply) {
    const Amount wanted = thumbOf(supply).high;
    return {wanted.value / supply.container.value * supply.container.value};
}

struct Delivery {
    QDate on;
    Order order;
};

/// Stock since the ledger began: opened, used, counted once a month, ordered on Mondays by a rule of thumb.
class StockBook {
public:
    StockBook(SeasonState& season, HistorySlice& records)
        : m_season(season), m_records(records), m_books{season.centre, season.supplies, season.patterns, {}, {}}, m_dice(seed) {}

    void run(QDate first, QDate today) {
        begin(first);
        m_books.factors = factorsBy(m_season, m_records, dayOf(m_season.centre, first).begin);
        m_lastMorning = dayOf(m_season.centre, today).begin;
        m_runs = ordered(m_records.runs, [](const RunLog& r) { return r.time.end; });
        m_readings = ordered(m_records.readings, [](const LevelReading& r) { return r.levels.at; });
        skipUntil(dayOf(m_season.centre, first).begin);
        for (QDate date = first; date < today; date = date.addDays(1)) {
            deliver(date);
            if (date.dayOfWeek() == 1) monday(date, date.daysTo(today) / 7 % countEvery == 0);
            serve(date);
            work(dayOf(m_season.centre, date).end);
            m_approach += Amount{approachPerDay + 1'000 * m_dice.below(81) - 40'000};
        }
        work(dayOf(m_season.centre, today).end);
        for (const Delivery& open : m_deliveries)
            m_season.orders.push_back(open.order);
        std::sort(m_season.orders.begin(), m_season.orders.end(), [](const Order& a, const Order& b) { return a.id < b.id; });
    }

private:
    template <class T, class Time>
    static std::vector<T*> ordered(std::vector<T>& all, Time time) {
        std::vector<T*> sorted;
        for (T& one : all)
            sorted.push_back(&one);
        std::stable_sort(sorted.begin(), sorted.end(), [&](const T* a, const T* b) { return time(*a) < time(*b); });
        return sorted;
    }

    Instant at(QDate date, int hour, int minute) const { return zoneOf(m_season.centre).toInstant({date, QTime(hour, minute)}); }

    void keep(std::vector<Movement> movements) {
        std::move(movements.begin(), movements.end(), std::back_inserter(m_records.movements));
    }

    void move(const QString& name, MovementKind kind, Instant when, std::vector<Entry> entries, const Order* order = nullptr) {
        Movement movement;
        movement.id = operation(name);
        movement.kind = kind;
        movement.at = when;
        movement.person = manager;
        movement.recordedAt = when;
        if (order) movement.source = MovementSource::Order;
        if (order) movement.sourceId = order->id.value;
        movement.entries = std::move(entries);
        m_books.stock.add(movement);
        m_records.movements.push_back(std::move(movement));
    }

    void begin(QDate first) {
        const Instant when = at(first, 6, 0);
        const auto& machines = m_season.centre.machines;
        std::vector<MachineLevels> levels;
        for (const Machine& machine : machines)
            levels.push_back(fullLevels(machine, limitsFromSettings(machine), when));
        for (const Supply& supply : m_season.supplies) {
            move("opening " + supply.id.value, MovementKind::Counted, when,
                 {{{supply.id, {Place::Kind::Opening, {}, 0}, {}, {}}, -opening(supply)},
                  {{supply.id, {Place::Kind::Shelf, {}, 0}, {}, lotOf(first)}, opening(supply)}});
            std::vector<Movement> tanks = openingOf(supply, levels, m_books);
            for (size_t n = 0; n < tanks.size(); ++n)
                tanks[n].id = operation(QString("opening tank %1 %2").arg(supply.id.value).arg(n));
            keep(std::move(tanks));
        }
    }

    static QString lotOf(QDate date) { return QString("L%1").arg(date.toString("yyMM")); }

    /// What happened before the ledger began is not in it.
    void skipUntil(Instant begin) {
        while (m_run < m_runs.size() && m_runs[m_run]->time.end < begin)
            ++m_run;
        while (m_reading < m_readings.size() && m_readings[m_reading]->levels.at < begin)
            ++m_reading;
    }

    void work(Instant until) {
        while (m_run < m_runs.size() || m_reading < m_readings.size()) {
            const RunLog* run = m_run < m_runs.size() ? m_runs[m_run] : nullptr;
            LevelReading* reading = m_reading < m_readings.size() ? m_readings[m_reading] : nullptr;
            const bool isRun = run && (!reading || run->time.end <= reading->levels.at);
            if ((isRun ? run->time.end : reading->levels.at) >= until) return;
            if (isRun)
                keepRun(*run);
            else
                keepReading(*reading);
            ++(isRun ? m_run : m_reading);
        }
    }

    /// A morning's levels are those that the ledger has; on the last morning they are what the story says.
    void keepReading(LevelReading& reading) {
        const Machine* machine = findMachine(m_season.centre, reading.levels.machine);
        if (machine && !reading.poured && reading.levels.at < m_lastMorning) {
            for (int slot = 0; slot < conditionerSlots; ++slot)
                reading.levels.conditioner[size_t(slot)] = {inTank(*machine, slot).value};
            reading.levels.cleaner = {inTank(*machine, cleanerProduct).value};
        }
        keep(bookingsOf(reading, m_books));
    }

    /// Mixed liquid, within what the tank holds.
    Amount inTank(const Machine& machine, int product) const {
        const Place tank{Place::Kind::Tank, machine.id, product};
        const Supply* supply = supplyNamed(m_season.supplies, productName(machine, product));
        if (!supply) return {};
        const Amount there = m_books.stock.in(supply->id, tank) + m_books.stock.in(waterId, tank);
        const Microlitres room =
            product == cleanerProduct ? machine.capacity.cleaner : machine.capacity.conditioner[size_t(product)];
        return std::clamp(there, Amount{0}, Amount{room.value});
    }

    /// Cloth is put in when there is none open.
    void keepRun(const RunLog& run) {
        for (const Supply& supply : m_season.supplies) {
            const Place open{Place::Kind::Open, {}, 0};
            const Amount takes = supply.usualUse * run.use.laneRuns;
            if (supply.basis == UseBasis::PerLaneCleaned && m_books.stock.in(supply.id, open) < takes)
                openOne(supply, run.time.begin, "roll for " + run.id.value);
        }
        keep(bookingsOf(run, m_books));
    }

    /// False when there is none left.
    bool openOne(const Supply& supply, Instant when, const QString& name) {
        for (const auto& [key, amount] : m_books.stock.all()) {
            if (key.supply != supply.id || key.place.kind != Place::Kind::Shelf || amount <= Amount{0}) continue;
            const Amount one = std::min(amount, supply.container);
            const StockKey from = key;
            move(name, MovementKind::Opened, when, {{from, -one}, {{supply.id, {Place::Kind::Open, {}, 0}, {}, {}}, one}});
            return true;
        }
        return false;
    }

    void monday(QDate date, bool counts) {
        m_books.factors = factorsBy(m_season, m_records, dayOf(m_season.centre, date).begin);
        if (counts) count(date);
        std::map<SupplierId, Order> wanted;
        for (const Offer& offer : m_season.offers) {
            const Supply& supply = *findSupply(m_season.supplies, offer.supply);
            const Thumb thumb = thumbOf(supply);
            const Amount there = m_books.stock.onHand(supply.id) + underWay(supply.id);
            if (there >= thumb.low) continue;
            const int packs = int(std::max<std::int64_t>(1, (thumb.high - there).value / offer.pack.value));
            wanted[offer.supplier].lines.push_back(
                {supply.id, offer.id, offer.article, offer.pack, packs, priceOf(offer, packs)});
        }
        for (auto& [supplier, order] : wanted)
            place(supplier, std::move(order), date);
    }

    /// Parts that services took.
    void serve(QDate date) {
        const Instant end = dayOf(m_season.centre, date).end;
        for (; m_service < m_records.services.size() && m_records.services[m_service].at < end; ++m_service) {
            const ServiceRecord& record = m_records.services[m_service];
            if (record.at >= dayOf(m_season.centre, date).begin) keep(bookingsOf(record, m_books));
        }
    }

    static Money priceOf(const Offer& offer, int packs) {
        Money each;
        for (const PriceBreak& step : offer.prices) {
            if (packs >= step.packs) each = step.each;
        }
        return each;
    }

    Amount underWay(const SupplyId& supply) const {
        Amount sum;
        for (const Delivery& delivery : m_deliveries) {
            for (const OrderLine& line : delivery.order.lines) {
                if (line.supply == supply) sum += line.pack * line.packs;
            }
        }
        return sum;
    }

    void place(const SupplierId& id, Order order, QDate date) {
        const auto supplier =
            std::find_if(m_season.suppliers.begin(), m_season.suppliers.end(), [&](const Supplier& s) { return s.id == id; });
        ++m_orders;
        order.id = {QString("order-%1").arg(m_orders, 3, 10, QChar('0'))};
        order.supplier = id;
        order.number = QString("QB-%1").arg(100 + m_orders);
        order.state = OrderState::Placed;
        order.person = manager;
        order.placedOn = date;
        Money goods;
        for (const OrderLine& line : order.lines)
            goods = goods + line.each * line.packs;
        const bool free = supplier->freeFreightFrom && goods.minor >= supplier->freeFreightFrom->minor;
        order.freight = free ? pounds(0) : supplier->freight;
        m_deliveries.push_back({date.addDays(supplier->usualLeadDays - 2 + m_dice.below(6)), std::move(order)});
    }

    void deliver(QDate date) {
        for (Delivery& delivery : m_deliveries) {
            if (delivery.on > date) continue;
            for (const OrderLine& line : delivery.order.lines) {
                const Amount amount = line.pack * line.packs;
                move("receipt " + delivery.order.id.value + ' ' + line.supply.value, MovementKind::Received, at(date, 11, 0),
                     {{{line.supply, {Place::Kind::Supplier, {}, 0}, {}, {}}, -amount},
                      {{line.supply, {Place::Kind::Shelf, {}, 0}, {}, lotOf(date)}, amount}},
                     &delivery.order);
            }
            delivery.order.state = OrderState::Closed;
            m_season.orders.push_back(delivery.order);
        }
        std::erase_if(m_deliveries, [&](const Delivery& delivery) { return delivery.on <= date; });
    }

    /// What nobody writes down is found when stock is counted: approach cleaner by use, the rest by a spill here and there.
    void count(QDate date) {
        StockCount count{operation("count " + date.toString(Qt::ISODate)), at(date, 9, 30), manager, {}, {}, {}};
        for (const Supply& supply : m_season.supplies) {
            const bool approach = supply.basis == UseBasis::PerDay;
            for (int can = 1; approach && m_books.stock.in(supply.id, {Place::Kind::Open, {}, 0}) < m_approach; ++can) {
                const QString name = QString("can %1 %2").arg(can).arg(date.toString(Qt::ISODate));
                if (!openOne(supply, count.at - minutes(10), name)) break;
            }
            for (const auto& [key, amount] : m_books.stock.all()) {
                if (key.supply != supply.id || key.place.kind > Place::Kind::Open) continue;
                const bool isOpen = key.place.kind == Place::Kind::Open;
                const Amount lost = !isOpen || unitOf(supply.kind) != BaseUnit::Microlitre ? Amount{0}
                                    : approach                                             ? m_approach
                                                                                           : Amount{10'000 * m_dice.below(6)};
                count.lines.push_back({key, std::max(Amount{0}, amount - lost)});
            }
            if (approach) m_approach = {};
        }
        keep(bookingsOf(count, m_books));
        m_records.counts.push_back(std::move(count));
    }

    SeasonState& m_season;
    HistorySlice& m_records;
    Books m_books;
    Dice m_dice;
    std::vector<RunLog*> m_runs;
    std::vector<LevelReading*> m_readings;
    size_t m_run = 0;
    size_t m_reading = 0;
    size_t m_service = 0;
    std::vector<Delivery> m_deliveries;
    Instant m_lastMorning;
    int m_orders = 0;
    Amount m_approach;  ///< used since the last count
};

}  // namespace

void addSupplies(SeasonState& season, HistorySlice& records, QDate today) {
    season.supplies = supplies();
    season.suppliers = suppliers();
    season.offers = offers();
    StockBook(season, records).run(today.addDays(-ledgerDays), today);
}

}  // namespace laneward::demo
