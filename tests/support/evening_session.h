// A window's session on the evening of evening.h, with its first person at the desk.
#pragma once

#include "app/edits/session.h"
#include "tests/support/evening.h"

namespace support {

inline std::unique_ptr<laneward::Session> sessionOn(const Evening& evening) {
    auto session = std::make_unique<laneward::Session>(evening.store(), evening.clock);
    session->setPerson({"ada"});
    return session;
}

}  // namespace support
