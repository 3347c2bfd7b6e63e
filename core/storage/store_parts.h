// What a Store holds: shared by the files that make it up, seen by nobody else.
#pragma once

#include "core/storage/database.h"
#include "core/storage/store.h"

namespace laneward {

struct Store::Parts {
    std::unique_ptr<Database> database;
    Location location;
};

}  // namespace laneward
