#include "core/documents/keys.h"
#include "core/documents/pack_words.h"
#include "core/documents/service_words.h"
#include "core/documents/waste_words.h"
#include "core/documents/writers.h"

#include <QJsonArray>

#include <algorithm>
#include <array>

namespace laneward {

namespace {

// In the order of their enumerations.
constexpr std::array dutyKeys{"inspect", "clean", "turn", "replace", "empty", "calibrate"};
constexpr std::array meterKeys{"lanes", "runs", "minutes", "volume", "days"};
constexpr std::array skillKeys{"anyone", "lead", "licensed"};

QJsonValue dateJson(const std::optional<QDate>& date) { return date ? QJsonValue(date->toString(Qt::ISODate)) : QJsonValue(); }

QString dateCell(const std::optional<QDate>& date) { return date ? date->toString(Qt::ISODate) : QString(); }

QJsonArray needsJson(const std::vector<PartNeed>& needs, const SeasonState& season) {
    QJsonArray list;
    for (const PartNeed& need : needs) {
        const Supply* supply = findSupply(season.supplies, need.supply);
        const QString unit = supply ? unitKey(supply->kind) : QStringLiteral("pieces");
        list.append(QJsonObject{{"supply", need.supply.value}, {"amount_" + unit, qint64(need.amount.value)}});
    }
    return list;
}

QJsonObject dutyJson(const DutyDue& due, const SeasonState& season) {
    const ServiceItem& item = *findItem(season.items, due.item);
    const Duty& duty = *findDuty(item, due.duty);
    return {{"item", item.id.value},
            {"item_name", item.name},
            {"duty", duty.id.value},
            {"name", duty.name},
            {"kind", dutyKeys.at(size_t(duty.kind))},
            {"machine", item.machine.isEmpty() ? QJsonValue() : QJsonValue(item.machine.value)},
            {"due_early", dateJson(due.due.early)},
            {"due_likely", dateJson(due.due.likely)},
            {"due_late", dateJson(due.due.late)},
            {"never_done", due.due.neverDone},
            {"used_permille", qint64(std::clamp(due.due.used, -1e9, 1e9) * 1'000)},
            {"by", meterKeys.at(size_t(due.due.by))},
            {"left", qint64(due.due.left)},
            {"minutes", duty.minutes},
            {"skill", skillKeys.at(size_t(duty.skill))},
            {"missing", needsJson(due.missing, season)}};
}

QJsonObject visitJson(const ServiceVisit& visit, const Speech& speech) {
    QJsonArray duties;
    for (const DutyId& duty : visit.duties)
        duties.append(duty.value);
    return {{"machine", visit.machine.isEmpty() ? QJsonValue() : QJsonValue(visit.machine.value)},
            {"begin", isoTime(visit.time.begin, speech.zone)},
            {"end", isoTime(visit.time.end, speech.zone)},
            {"late", visit.isLate},
            {"duties", duties}};
}

}  // namespace

QJsonObject serviceJson(const ServiceList& list, const Speech& speech) {
    QJsonArray duties;
    QJsonArray visits;
    for (const DutyDue& due : dueBy(list.outlook, list.until))
        duties.append(dutyJson(due, list.season));
    for (const ServiceVisit& visit : list.outlook.visits)
        visits.append(visitJson(visit, speech));
    return {{"duties", duties},
            {"visits", visits},
            {"packs", packsJson(list.packs, list.season, speech)},
            {"charging", turnsJson(list.packs, speech)},
            {"waste", wasteJson(list.waste)},
            {"findings", findingsJson(list.outlook.findings, speech)}};
}

QByteArray serviceCsv(const ServiceList& list) {
    std::vector<CsvField> header;
    for (const char* name : {"machine", "item", "duty", "kind", "due_early", "due_likely", "due_late", "left", "by", "minutes",
                             "skill", "parts_missing"})
        header.push_back({name, false});
    QByteArray out = csvRecord(header);
    for (const DutyDue& due : dueBy(list.outlook, list.until)) {
        const ServiceItem& item = *findItem(list.season.items, due.item);
        const Duty& duty = *findDuty(item, due.duty);
        out += csvRecord({{item.machine.value, false},
                          {item.name, false},
                          {duty.name, false},
                          {dutyKeys.at(size_t(duty.kind)), false},
                          {dateCell(due.due.early), false},
                          {dateCell(due.due.likely), false},
                          {dateCell(due.due.late), false},
                          {QString::number(due.due.left), true},
                          {meterKeys.at(size_t(due.due.by)), false},
                          {QString::number(duty.minutes), true},
                          {skillKeys.at(size_t(duty.skill)), false},
                          {QString::number(due.missing.size()), true}});
    }
    return out;
}

}  // namespace laneward
