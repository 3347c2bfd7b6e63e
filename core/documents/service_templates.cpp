#include "core/documents/service_templates.h"

#include "core/documents/template_rows.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("service", source); }

Duty dutyOf(const DutyRow& row, const QString& id) {
    Duty duty;
    duty.id = {id};
    duty.kind = row.kind;
    duty.name = say(row.name);
    duty.triggers = row.triggers;
    for (const char* step : row.steps)
        duty.steps.push_back(say(step));
    duty.minutes = row.minutes;
    duty.opensUp = row.opensUp;
    duty.skill = row.skill;
    for (const char* caution : row.cautions)
        duty.cautions.push_back(QByteArray("caution.") + caution);
    return duty;
}

ServiceItem itemOf(const ItemRow& row, const QString& prefix, const NewId& newId) {
    const QString word = prefix + QLatin1String(row.word);
    ServiceItem item;
    item.id = {newId(word)};
    item.kind = row.kind;
    item.name = say(row.name);
    item.note =
        say(QT_TRANSLATE_NOOP("service", "Intervals: common practice, no source. The machine's own instructions decide."));
    for (const DutyRow& duty : row.duties)
        item.duties.push_back(dutyOf(duty, newId(word + '-' + QLatin1String(duty.word))));
    return item;
}

}  // namespace

std::vector<ServiceItem> templatesFor(const Machine& machine, const NewId& newId, const TemplateParts& parts) {
    std::vector<ServiceItem> items;
    for (const std::vector<ItemRow>& rows : {brushRows(), tankRows(), driveRows()}) {
        for (const ItemRow& row : rows) {
            ServiceItem item = itemOf(row, machine.id.value + '-', newId);
            item.machine = machine.id;
            const auto part = parts.find(item.kind);
            for (Duty& duty : item.duties)
                if (duty.kind == DutyKind::Replace && part != parts.end()) duty.parts = {part->second};
            items.push_back(std::move(item));
        }
    }
    return items;
}

std::vector<ServiceItem> templatesForCentre(const NewId& newId) {
    std::vector<ServiceItem> items;
    for (const ItemRow& row : centreRows())
        items.push_back(itemOf(row, {}, newId));
    return items;
}

}  // namespace laneward
