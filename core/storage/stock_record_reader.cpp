#include "core/storage/stock_record_reader.h"

#include "core/supplies/ledger.h"

namespace laneward {
namespace {

/// In the order of BaseUnit.
constexpr std::array amountKeys{"amount_ul", "amount_mm", "pieces"};

constexpr std::array optionalInCount{"corrects", "note"};
constexpr std::array optionalInReceipt{"order", "note", "recorded_at"};
constexpr std::array optionalInService{"duty", "meters", "result", "cost_minor", "minutes", "finding", "note", "corrects"};
constexpr std::array optionalInLine{"place", "machine", "slot", "container", "lot", "amount_ul", "amount_mm", "pieces"};

}  // namespace

bool StockRecordReader::refused(const char* rule, const JsonPath& at, std::vector<Value> values) {
    m_values = std::move(values);
    return m_fault.set(rule, at);
}

bool StockRecordReader::amount(const std::array<std::optional<Amount>, 3>& amounts, const JsonPath& at, CountLine& line) {
    const Supply* supply = findSupply(m_supplies, line.key.supply);
    const size_t own = supply ? size_t(unitOf(supply->kind)) : size_t(BaseUnit::Microlitre);
    const QLatin1StringView ownKey(amountKeys.at(own));
    for (size_t i = 0; i < amounts.size(); ++i)
        if (i != own && amounts.at(i))
            return refused("record.wrong-unit", {&at, QLatin1StringView(amountKeys.at(i))},
                           {supply ? supply->name : line.key.supply.value, QString(ownKey)});
    if (!amounts.at(own)) return m_fault.set("json.missing-key", {&at, ownKey});
    line.counted = *amounts.at(own);
    return true;
}

bool StockRecordReader::line(const QJsonObject& object, const JsonPath& at, bool counted, CountLine& line) {
    JsonReader reader(object, at, m_fault, optionalInLine);
    std::array<std::optional<Amount>, 3> amounts;
    reader("supply", line.key.supply);
    reader("container", line.key.container);
    reader("lot", line.key.lot);
    for (size_t i = 0; i < amounts.size(); ++i)
        reader(amountKeys.at(i), amounts.at(i));
    if (counted) {
        reader("place", line.key.place.kind);
        reader("machine", line.key.place.machine);
        reader("slot", line.key.place.slot);
    }
    if (!reader.finish()) return false;
    const bool known = counted ? isKept(line.key.supply, m_supplies) : findSupply(m_supplies, line.key.supply) != nullptr;
    if (!known)
        return refused("record.unknown-supply", {&at, QLatin1StringView("supply")},
                       {line.key.supply.value.left(limits::nameLength)});
    return amount(amounts, at, line);
}

bool StockRecordReader::lines(QJsonObject& object, const JsonPath& at, bool counted, std::vector<CountLine>& lines) {
    const JsonPath list{&at, QLatin1StringView("lines")};
    if (!object.contains(list.key)) return m_fault.set("json.missing-key", list);
    const QJsonValue json = object.take(list.key);
    if (!json.isArray()) return m_fault.set("json.bad-value", list);
    return this->list(json.toArray(), list, counted, lines);
}

bool StockRecordReader::list(const QJsonArray& array, const JsonPath& at, bool counted, std::vector<CountLine>& lines) {
    for (qsizetype i = 0; i < array.size(); ++i) {
        const JsonPath here{&at, {}, i};
        if (!array.at(i).isObject()) return m_fault.set("json.bad-value", here);
        if (!line(array.at(i).toObject(), here, counted, lines.emplace_back())) return false;
    }
    return true;
}

std::optional<Record> StockRecordReader::count(QJsonObject object, const JsonPath& at) {
    StockCount count;
    if (!lines(object, at, true, count.lines)) return std::nullopt;
    JsonReader reader(object, at, m_fault, optionalInCount);
    reader("id", count.id);
    reader("happened_at", count.at);
    reader("person", count.person);
    reader("note", count.note);
    reader("corrects", count.corrects);
    return reader.finish() ? std::optional<Record>(std::move(count)) : std::nullopt;
}

std::optional<Record> StockRecordReader::receipt(QJsonObject object, const JsonPath& at) {
    std::vector<CountLine> received;
    if (!lines(object, at, false, received)) return std::nullopt;
    Movement movement;
    OrderId order;
    JsonReader reader(object, at, m_fault, optionalInReceipt);
    reader("id", movement.id);
    reader("happened_at", movement.at);
    movement.recordedAt = movement.at;
    reader("person", movement.person);
    reader("order", order);
    reader("note", movement.reason);
    reader("recorded_at", movement.recordedAt);
    if (!reader.finish()) return std::nullopt;
    movement.source = order.isEmpty() ? MovementSource::Person : MovementSource::Order;
    movement.sourceId = order.value;
    for (const CountLine& line : received) {
        movement.entries.push_back({line.key, line.counted});
        movement.entries.push_back({{line.key.supply, {Place::Kind::Supplier, {}, 0}, {}, {}}, -line.counted});
    }
    return movement;
}

std::optional<Record> StockRecordReader::service(QJsonObject object, const JsonPath& at) {
    std::vector<CountLine> taken;
    const JsonPath partsAt{&at, QLatin1StringView("parts")};
    const QJsonValue parts = object.take(partsAt.key);
    if (!parts.isUndefined() && !parts.isArray()) {
        m_fault.set("json.bad-value", partsAt);
        return std::nullopt;
    }
    if (!list(parts.toArray(), partsAt, false, taken)) return std::nullopt;
    ServiceRecord record;
    JsonReader reader(object, at, m_fault, optionalInService);
    reader("id", record.id);
    reader("happened_at", record.at);
    reader("person", record.person);
    reader("item", record.item);
    reader("duty", record.duty);
    reader("meters", record.meters);
    reader("result", record.result);
    reader("cost_minor", record.cost.minor);
    reader("minutes", record.minutes);
    reader("finding", record.finding);
    reader("note", record.note);
    reader("corrects", record.corrects);
    if (!reader.finish()) return std::nullopt;
    for (const CountLine& line : taken)
        record.parts.push_back({line.key.supply, line.counted, line.key.lot});
    return record;
}

}  // namespace laneward
