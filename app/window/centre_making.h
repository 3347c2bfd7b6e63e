// Making a new centre file: the demo, a centre that somebody set up, or the content of a centre file.
#pragma once

#include "core/storage/centre_file.h"

namespace laneward {

/// Fills a new file with `content`; a file that could not be filled is removed again. Refuses an existing one ("store.exists").
Outcome makeCentre(const Location& location, const CentreFile& content, Instant now);

/// Where a user's own centre and the demo are kept unless they say otherwise.
QString ownCentrePath();
QString demoCentrePath();

/// The centre that was opened last, if its file is still there; the demo is not kept.
std::optional<Location> keptCentre();
void keepCentre(const Location& location);

/// Where the daily backups of a centre in a file go; none for the demo, and for a server, whose administrator backs it up.
std::optional<QString> backupFolderOf(const Location& location);

}  // namespace laneward
