// The pack of one 24 V machine as its operators set it: full at 26.8 V straight off the charger, fit to run at 25.4 V, the spare
// pack goes on under 20 V. Common practice, no source; no default of the program.
#pragma once

#include "core/service/service_item.h"

namespace support {

inline laneward::ServiceItem practisedPack(const char* id, const QString& name, const char* machine = "m1") {
    using namespace laneward;
    ServiceItem item{{id}, {machine}, ItemKind::Pack, name};
    item.pack = PackLimits{{Chemistry::FloodedLeadAcid, Millivolts{24'000}},
                           {Millivolts{26'800}, VoltageState::JustCharged},
                           {Millivolts{25'400}, VoltageState::JustCharged},
                           {Millivolts{20'000}, VoltageState::UnderLoad}};
    return item;
}

}  // namespace support
