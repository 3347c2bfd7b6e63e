// What is serviced: parts of machines, packs and chargers, and what is not of a machine (approaches, gutters). Plain values.
//
// An item has duties; a duty falls due by meters and by the calendar, whichever comes first. Every number is the centre's: the
// machine's own instructions decide.
#pragma once

#include "core/base/finding.h"
#include "core/base/ids.h"
#include "core/base/money.h"
#include "core/service/pack_charge.h"

#include <QDate>

#include <optional>
#include <vector>

namespace laneward {

enum class ItemKind {
    CushionBrush,
    BufferBrush,
    Squeegee,
    Cloth,
    WasteTank,
    Filter,
    Nozzles,  ///< and lines
    Wheels,   ///< and belts
    Pack,
    Charger,
    Approach,
    Gutter,
    Other
};
enum class DutyKind { Inspect, Clean, Turn, Replace, Empty, Calibrate };

/// What is counted between two services.
enum class MeterKind {
    Lanes,    ///< lanes treated
    Runs,     ///< jobs run
    Minutes,  ///< of the machine at work
    Volume,   ///< microlitres of conditioner and cleaner through it
    Days      ///< of the calendar
};

/// Due after so many since the last time.
struct Trigger {
    MeterKind meter = MeterKind::Days;
    std::int64_t every = 0;
    friend bool operator==(const Trigger&, const Trigger&) = default;
};

enum class Skill { Anyone, Lead, Licensed };

/// What a duty takes from stock.
struct PartNeed {
    SupplyId supply;
    Amount amount;
    friend bool operator==(const PartNeed&, const PartNeed&) = default;
};

struct Duty {
    DutyId id;  ///< unique in the centre
    DutyKind kind = DutyKind::Inspect;
    QString name;
    std::vector<Trigger> triggers;  ///< whichever comes first; one of each meter at most
    std::vector<QDate> dates;       ///< and on these
    std::vector<QString> steps;     ///< in the order in which they are done
    int minutes = 10;               ///< of work
    bool opensUp = false;           ///< the machine must be opened for it, as for others of it at the same time
    std::vector<PartNeed> parts;
    Skill skill = Skill::Anyone;
    std::vector<QByteArray> cautions;  ///< "caution.…"
    Money planned;                     ///< cost when it is done in time, and …
    Money failed;                      ///< … when it has failed first; of replacements. Nothing = not known
    friend bool operator==(const Duty&, const Duty&) = default;
};

struct ServiceItem {
    ItemId id;
    MachineId machine;  ///< empty = the centre's
    ItemKind kind = ItemKind::Other;
    QString name;
    std::vector<Duty> duties;
    QString note;
    bool retired = false;
    std::int64_t version = 0;
    std::optional<PackLimits> pack;  ///< of a pack: what it is, and the volts that its machine asks of it
    friend bool operator==(const ServiceItem&, const ServiceItem&) = default;
};

const ServiceItem* findItem(const std::vector<ServiceItem>& items, const ItemId& id);
const Duty* findDuty(const ServiceItem& item, const DutyId& id);

/// What cannot be ("service.…"): no name, a duty that never falls due, meters of a machine where there is none, one meter twice,
/// intervals and minutes beyond reason, money of another currency than the centre's. Empty when sound.
std::vector<Finding> faultsOf(const ServiceItem& item, const QByteArray& currency);

}  // namespace laneward
