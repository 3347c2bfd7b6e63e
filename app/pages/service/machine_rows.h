// What belongs to a machine, or to the centre, a row for each duty; and its meters in words.
#pragma once

#include "app/models/plain_rows.h"
#include "core/documents/wording.h"
#include "core/season/service_outlook.h"

namespace laneward {

struct MachineSheet {
    const SeasonState& season;
    MachineId machine;  ///< empty = what belongs to no machine
    Instant now;
    const ServiceOutlook* outlook = nullptr;  ///< null: not known yet
    bool withRetired = false;
};

namespace machine_columns {
enum Column { Item, What, Every, Last, Since, Next, Parts, Count };
}

QStringList machineTitles();
/// The id of a row is that of its duty; of an item without duties, "item:" and its own.
std::vector<PlainRow> machineRows(const MachineSheet& sheet, const Speech& speech);
/// "41,230 lanes (counter 41,210 on Sun 8 Nov), 512 runs, 310.5 h, 61.2 L through it"; empty for the centre.
QString metersLine(const MachineSheet& sheet, const Speech& speech);
/// "Waste tank: about 3.1 L of 9 L; …; tonight …" with its caution; empty for the centre.
QString wasteLine(const MachineSheet& sheet, const Plan& plan, const Speech& speech);
/// The item that a row is about; null when it is gone.
const ServiceItem* itemOfRow(const std::vector<ServiceItem>& items, const QString& rowId);

}  // namespace laneward
