// What is usually serviced on a lane machine and in a centre, to begin with: items and duties that the centre then owns and
// changes. Texts are in the reader's language, once: they are data from then on.
//
// All intervals, minutes and skills are common practice, no source; each item's note says so. The machine's own instructions
// decide.
//
//     std::vector<ServiceItem> items = templatesFor(machine, [](const QString&) { return newUuid(); });
#pragma once

#include "core/centre/machine.h"
#include "core/service/service_item.h"

#include <functional>
#include <map>

namespace laneward {

/// Makes an id out of a readable word such as "heron-squeegee-replace", or takes no notice of it.
using NewId = std::function<QString(const QString& word)>;

/// What replacing an item of that kind takes from stock.
using TemplateParts = std::map<ItemKind, PartNeed>;

std::vector<ServiceItem> templatesFor(const Machine& machine, const NewId& newId, const TemplateParts& parts = {});
/// Of what belongs to no machine: approaches and gutters.
std::vector<ServiceItem> templatesForCentre(const NewId& newId);

}  // namespace laneward
