// One evening in a small house: 12 lanes, a machine, two people, open play until 16:30, a league at 18:30.
#pragma once

#include "core/base/clock.h"
#include "core/storage/store.h"

#include <QTemporaryDir>

#include <memory>

namespace support {

/// Thursday 2026-11-12, 16:43 in London.
inline constexpr laneward::Instant eveningNow{1'794'501'780};

laneward::SeasonState eveningSeason();

/// A centre file with that evening; for sessions on it see evening_session.h.
class Evening {
public:
    Evening();

    laneward::FixedClock clock{eveningNow};
    QString path() const { return m_directory.filePath("evening.laneward"); }
    laneward::Location location() const { return {laneward::Location::Kind::Sqlite, path(), {}}; }
    std::unique_ptr<laneward::Store> store(laneward::Access access = laneward::Access::ReadWrite) const;

private:
    QTemporaryDir m_directory;
};

}  // namespace support
