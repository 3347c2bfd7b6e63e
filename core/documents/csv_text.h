// What the writer and the reader of CSV agree on. Internal to this room.
#pragma once

#include <QString>

namespace laneward {

/// Whether `text` gets an apostrophe in front when it is written; the reader takes it away from what this is true of without it.
bool needsApostrophe(const QString& text);

}  // namespace laneward
