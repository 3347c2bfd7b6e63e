// The rows that templates are made of. Internal to this room.
#pragma once

#include "core/service/service_item.h"

namespace laneward {

struct DutyRow {
    const char* word;  ///< for its id
    DutyKind kind;
    const char* name;  ///< texts are translated in the context "service"
    std::vector<Trigger> triggers;
    int minutes;
    bool opensUp;
    std::vector<const char*> steps;
    std::vector<const char*> cautions;  ///< without "caution."
    Skill skill = Skill::Anyone;
};

struct ItemRow {
    const char* word;
    ItemKind kind;
    const char* name;
    std::vector<DutyRow> duties;
};

std::vector<ItemRow> brushRows();
std::vector<ItemRow> tankRows();
std::vector<ItemRow> driveRows();
std::vector<ItemRow> centreRows();

}  // namespace laneward
