#include "app/pages/service/machine_rows.h"

#include "core/documents/item_words.h"
#include "core/documents/service_words.h"
#include "core/documents/stock_words.h"
#include "core/documents/waste_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace laneward {

namespace {

constexpr qlonglong farDay = 10'000'000;
const QString itemMark = QStringLiteral("item:");

QString say(const char* source) { return QCoreApplication::translate("laneward::MachinesPanel", source); }

const DutyDue* dueOf(const ServiceOutlook* outlook, const DutyId& duty) {
    if (!outlook) return nullptr;
    const auto found =
        std::find_if(outlook->due.begin(), outlook->due.end(), [&](const DutyDue& due) { return due.duty == duty; });
    return found == outlook->due.end() ? nullptr : &*found;
}

QString itemName(const ServiceItem& item) {
    const QString name = shown(item.name);
    return item.retired ? say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "%1 (retired)")).arg(name) : name;
}

struct Known {
    std::map<DutyId, LastDone> lasts;
    DueQuestion now;
};

PlainRow rowOf(const ServiceItem& item, const Duty& duty, const MachineSheet& sheet, const Known& known, const Speech& speech) {
    using namespace machine_columns;
    PlainRow row;
    row.id = duty.id.value;
    for (int column = 0; column < Count; ++column) {
        row.texts << QString();
        row.sort << QVariant();
    }
    const auto last = known.lasts.find(duty.id);
    const auto done = last == known.lasts.end() ? std::nullopt : std::optional(last->second);
    row.texts[Item] = itemName(item);
    row.texts[What] = shown(duty.name);
    row.texts[Every] = triggersText(duty, speech);
    row.texts[Last] =
        done ? dayWithWeekday(done->day, speech) : say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "never recorded"));
    row.texts[Since] = sinceText(duty, done, known.now, speech);
    row.texts[Parts] = partsText(duty, sheet.season, speech);
    row.sort[Last] = done ? qlonglong(done->at.seconds) : qlonglong{0};
    row.sort[Next] = farDay;
    if (item.retired) {
        row.texts[Next] = QStringLiteral("-");
    } else if (const DutyDue* due = dueOf(sheet.outlook, duty.id)) {
        row.texts[Next] = likelyText(due->due, known.now.today, speech);
        if (due->due.likely) row.sort[Next] = qlonglong(due->due.likely->toJulianDay());
    } else {
        row.texts[Next] = QStringLiteral("…");
    }
    return row;
}

PlainRow bareRow(const ServiceItem& item) {
    PlainRow row;
    row.id = itemMark + item.id.value;
    row.texts << itemName(item) << say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "no duty yet"));
    while (row.texts.size() < machine_columns::Count)
        row.texts << QString();
    return row;
}

}  // namespace

QStringList machineTitles() {
    return {say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "Item")),
            say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "Duty")),
            say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "Due after")),
            say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "Last done")),
            say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "Since then")),
            say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "Next due")),
            say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "Takes from stock"))};
}

std::vector<PlainRow> machineRows(const MachineSheet& sheet, const Speech& speech) {
    const Meters meters = sheet.machine.isEmpty() ? Meters{} : metersNow(sheet.season, sheet.machine, sheet.now);
    const Known known{lastDone(sheet.season), {meters, nullptr, dateOf(sheet.season.centre, sheet.now)}};
    std::vector<PlainRow> rows;
    for (const ServiceItem& item : sheet.season.items) {
        if (item.machine != sheet.machine || (item.retired && !sheet.withRetired)) continue;
        if (item.duties.empty()) rows.push_back(bareRow(item));
        for (const Duty& duty : item.duties)
            rows.push_back(rowOf(item, duty, sheet, known, speech));
    }
    return rows;
}

QString metersLine(const MachineSheet& sheet, const Speech& speech) {
    if (sheet.machine.isEmpty()) return {};
    const Meters meters = metersNow(sheet.season, sheet.machine, sheet.now);
    QStringList parts;
    for (const MeterKind kind : {MeterKind::Lanes, MeterKind::Runs, MeterKind::Minutes, MeterKind::Volume}) {
        QString part = meterText(double(valueOf(meters, kind)), kind, speech);
        const MeterReading* last = nullptr;
        for (const MeterReading& reading : sheet.season.counters) {
            if (reading.machine == sheet.machine && reading.meter == kind && (!last || last->at < reading.at)) last = &reading;
        }
        if (last)
            part = say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "%1 (counter %2 on %3)"))
                       .arg(part, meterText(double(last->shown), kind, speech),
                            dayWithWeekday(dateOf(sheet.season.centre, last->at), speech));
        if (kind == MeterKind::Volume) part = say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "%1 through it")).arg(part);
        parts << part;
    }
    return parts.join(QStringLiteral("   "));
}

QString wasteLine(const MachineSheet& sheet, const Plan& plan, const Speech& speech) {
    for (const WasteLine& line : wasteOutlook(sheet.season, plan, sheet.now)) {
        if (line.machine != sheet.machine) continue;
        QString said = say(QT_TRANSLATE_NOOP("laneward::MachinesPanel", "Waste tank: %1")).arg(wasteLevelText(line, speech));
        if (const QString tonight = wasteTonightText(line, speech); !tonight.isEmpty()) said += QStringLiteral("; ") + tonight;
        if (hasWaste(line)) said += u'\n' + text(Finding{Severity::Warning, "caution.waste", {}, {}}, speech);
        return said;
    }
    return {};
}

const ServiceItem* itemOfRow(const std::vector<ServiceItem>& items, const QString& rowId) {
    for (const ServiceItem& item : items) {
        if (itemMark + item.id.value == rowId || findDuty(item, {rowId})) return &item;
    }
    return nullptr;
}

}  // namespace laneward
