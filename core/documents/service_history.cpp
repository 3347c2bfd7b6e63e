#include "core/documents/keys.h"
#include "core/documents/service_words.h"
#include "core/documents/stock_words.h"
#include "core/documents/text_page.h"
#include "core/documents/writers.h"

#include <QCoreApplication>
#include <QJsonArray>

#include <array>
#include <map>

namespace laneward {

namespace {

constexpr std::array resultKeys{"done", "failed", "found", "withdrawn"};

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

/// What an item or duty was called may be gone by now; its id is not.
QString itemName(const ServiceRecord& record, const SeasonState& season) {
    const ServiceItem* item = findItem(season.items, record.item);
    return item ? itemText(*item, season) : shown(record.item.value);
}

QString dutyName(const ServiceRecord& record, const SeasonState& season) {
    const ServiceItem* item = findItem(season.items, record.item);
    const Duty* duty = item ? findDuty(*item, record.duty) : nullptr;
    return shown(duty ? duty->name : record.duty.value);
}

MachineId machineOf(const ServiceRecord& record, const SeasonState& season) {
    const ServiceItem* item = findItem(season.items, record.item);
    return item ? item->machine : MachineId{};
}

struct Totals {
    int failures = 0;
    std::int64_t minutes = 0;
    Money cost;
    std::map<SupplyId, Amount> parts;
};

Totals totalsOf(const std::vector<ServiceRecord>& records, const SeasonState& season) {
    Totals totals;
    totals.cost.currency = season.centre.facts.settings.currency;
    for (const ServiceRecord& record : records) {
        totals.failures += record.result == ServiceResult::Failed;
        totals.minutes += record.minutes;
        totals.cost.minor += record.cost.minor;
        for (const PartUsed& part : record.parts)
            totals.parts[part.supply] += part.amount;
    }
    return totals;
}

QString amountKey(const SupplyId& id, const SeasonState& season) {
    const Supply* supply = findSupply(season.supplies, id);
    return "amount_" + (supply ? unitKey(supply->kind) : QStringLiteral("pieces"));
}

QString partText(const SupplyId& id, Amount amount, const SeasonState& season, const Speech& speech) {
    const Supply* supply = findSupply(season.supplies, id);
    return supply ? shown(supply->name) + ' ' + amountText(amount, supply->kind, speech) : shown(id.value);
}

QStringList partTexts(const ServiceRecord& record, const SeasonState& season, const Speech& speech) {
    QStringList parts;
    for (const PartUsed& part : record.parts)
        parts += partText(part.supply, part.amount, season, speech);
    return parts;
}

QJsonObject recordJson(const ServiceRecord& record, const SeasonState& season, const Speech& speech) {
    QJsonArray parts;
    for (const PartUsed& part : record.parts) {
        parts.append(QJsonObject{
            {"supply", part.supply.value}, {"lot", part.lot}, {amountKey(part.supply, season), qint64(part.amount.value)}});
    }
    const MachineId machine = machineOf(record, season);
    return {{"id", record.id.value},
            {"happened_at", isoTime(record.at, speech.zone)},
            {"person", record.person.value},
            {"item", record.item.value},
            {"duty", record.duty.isEmpty() ? QJsonValue() : QJsonValue(record.duty.value)},
            {"machine", machine.isEmpty() ? QJsonValue() : QJsonValue(machine.value)},
            {"result", resultKeys.at(size_t(record.result))},
            {"meters", QJsonObject{{"lanes", qint64(record.meters.lanes)},
                                   {"runs", qint64(record.meters.runs)},
                                   {"minutes", qint64(record.meters.work.value / 60)},
                                   {"volume_ul", qint64(record.meters.volume.value)}}},
            {"parts", parts},
            {"cost_minor", qint64(record.cost.minor)},
            {"minutes", record.minutes},
            {"finding", record.finding},
            {"note", record.note},
            {"corrects", record.corrects ? QJsonValue(record.corrects->value) : QJsonValue()}};
}

}  // namespace

QString historyText(const std::vector<ServiceRecord>& records, const SeasonState& season, const Speech& speech) {
    QString out;
    for (const ServiceRecord& record : records) {
        out += wrapped(dateTimeText(record.at, speech) + "  " + itemName(record, season), 0);
        QStringList facts;
        if (!record.duty.isEmpty()) facts += dutyName(record, season);
        facts += text(record.result);
        if (!machineOf(record, season).isEmpty()) facts += metersText(record.meters, speech);
        facts += partTexts(record, season, speech);
        out += wrapped(facts.join(", "), 4);
        for (const QString& words : {record.finding, record.note})
            if (!words.isEmpty()) out += wrapped(shown(words), 4);
    }
    const Totals totals = totalsOf(records, season);
    QStringList sums{say(QT_TRANSLATE_NOOP("wording", "Services: %1")).arg(speech.locale.toString(qlonglong(records.size()))),
                     say(QT_TRANSLATE_NOOP("wording", "had failed first: %1")).arg(speech.locale.toString(totals.failures)),
                     durationText(minutes(totals.minutes), speech)};
    if (!totals.cost.isZero()) sums += moneyText(totals.cost, speech);
    for (const auto& [supply, amount] : totals.parts)
        sums += partText(supply, amount, season, speech);
    return out + "\n" + wrapped(sums.join(", "), 0);
}

QJsonObject historyJson(const std::vector<ServiceRecord>& records, const SeasonState& season, const Speech& speech) {
    QJsonArray list;
    for (const ServiceRecord& record : records)
        list.append(recordJson(record, season, speech));
    const Totals totals = totalsOf(records, season);
    QJsonArray parts;
    for (const auto& [supply, amount] : totals.parts)
        parts.append(QJsonObject{{"supply", supply.value}, {amountKey(supply, season), qint64(amount.value)}});
    return {{"records", list},
            {"totals", QJsonObject{{"records", qint64(records.size())},
                                   {"failures", totals.failures},
                                   {"minutes", qint64(totals.minutes)},
                                   {"cost_minor", qint64(totals.cost.minor)},
                                   {"parts", parts}}}};
}

QByteArray historyCsv(const std::vector<ServiceRecord>& records, const SeasonState& season, const Speech& speech) {
    std::vector<CsvField> header;
    for (const char* name : {"happened_at", "person", "machine", "item", "duty", "result", "lanes", "runs", "minutes_of_machine",
                             "parts", "minutes", "cost_minor", "finding", "note", "id", "corrects"})
        header.push_back({name, false});
    QByteArray out = csvRecord(header);
    for (const ServiceRecord& record : records) {
        out += csvRecord({{isoTime(record.at, speech.zone), false},
                          {record.person.value, false},
                          {machineOf(record, season).value, false},
                          {itemName(record, season), false},
                          {dutyName(record, season), false},
                          {resultKeys.at(size_t(record.result)), false},
                          {QString::number(record.meters.lanes), true},
                          {QString::number(record.meters.runs), true},
                          {QString::number(record.meters.work.value / 60), true},
                          {partTexts(record, season, speech).join("; "), false},
                          {QString::number(record.minutes), true},
                          {QString::number(record.cost.minor), true},
                          {record.finding, false},
                          {record.note, false},
                          {record.id.value, false},
                          {record.corrects ? record.corrects->value : QString(), false}});
    }
    return out;
}

}  // namespace laneward
