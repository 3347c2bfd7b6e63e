// Backups that are made by themselves, in a folder of their own: which there are, and which have been overtaken by later ones.
//
//     for (const KeptBackup& old : overtaken(backupsIn(folder))) QFile::remove(old.path);
#pragma once

#include "core/base/quantities.h"

#include <QString>

#include <vector>

namespace laneward {

struct KeptBackup {
    QString path;
    Instant made;  ///< as its name says
    friend bool operator==(const KeptBackup&, const KeptBackup&) = default;
};

inline constexpr int dailyBackups = 10;
inline constexpr int weeklyBackups = 8;

/// Files that Store::backup() has named, the newest first. What has another name is none.
std::vector<KeptBackup> backupsIn(const QString& folder);

/// All but the newest of each of the last ten days, and of each of the last eight weeks, that have any. Days and weeks (from
/// Monday, ISO 8601) are those of UTC, as in the names. `backups` the newest first.
std::vector<KeptBackup> overtaken(const std::vector<KeptBackup>& backups);

}  // namespace laneward
