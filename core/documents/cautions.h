// The usual cautions, the general source that each follows, and how far that source was read.
//
//     cautionOf("caution.waste").source   // "40 CFR 403.5(b)(6), US"
#pragma once

#include <QByteArray>

#include <span>

namespace laneward {

struct Caution {
    const char* rule;    ///< "caution.…", the key of its wording
    const char* source;  ///< citation, or "common practice, no source"
    const char* read;    ///< what was read of it when the caution was written
};

std::span<const Caution> cautions();
/// Also for the reminders "caution.…-again" and for what a machine weighs ("lifting.…"). An unknown rule has an empty source.
Caution cautionOf(QByteArray rule);

}  // namespace laneward
