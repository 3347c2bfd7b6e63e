// Patterns: a recipe of conditioner on a lane as a list of strokes, and the volumes it takes.
//
// Boards are counted 1..39 from the right gutter as seen from the approach; distances run from the foul line (0) to the
// head pin (60 ft) in micrometres; doses are microlitres per board and lap.
//
//     Volume of a stroke = laps x (last - first + 1) x dose                     (definition)
//
// Limits: see base/limits.h; volumes() may be called on any pattern that faultsOf() accepts.
#pragma once

#include "core/base/ids.h"
#include "core/base/result.h"
#include "core/centre/machine.h"

#include <array>
#include <vector>

namespace laneward {

inline constexpr int boards = 39;
inline constexpr Micrometres laneLength = feet(60);

enum class Direction { Out, Back };

struct Stroke {
    Direction direction = Direction::Out;
    int firstBoard = 1;  ///< 1..39
    int lastBoard = 39;  ///< firstBoard..39
    int laps = 1;
    Microlitres dose;  ///< per board and lap
    Micrometres from;  ///< nearer end, measured from the foul line
    Micrometres to;    ///< farther end
    int slot = 0;      ///< which of the machine's conditioners, 0..conditionerSlots-1
    friend bool operator==(const Stroke&, const Stroke&) = default;
};

struct Pattern {
    PatternId id;
    QString name;
    std::vector<Stroke> strokes;  ///< in working order
    Micrometres end = feet(40);   ///< forward end of the pattern
    bool cleanWholeLane = true;
    QString note;
    bool retired = false;      ///< kept for the records, no longer offered
    std::int64_t edition = 0;  ///< which of its versions this is, from 1; given when it is stored, 0 = not stored yet
    std::int64_t version = 0;  ///< of the row
    friend bool operator==(const Pattern&, const Pattern&) = default;
};

/// A pattern as it once was; `pattern.edition` is the number of this version. Versions are kept for ever.
struct PatternVersion {
    Pattern pattern;
    Instant since;    ///< when it was stored
    PersonId person;  ///< by whom; empty = not known
    friend bool operator==(const PatternVersion&, const PatternVersion&) = default;
};

struct Volumes {
    Microlitres out;
    Microlitres back;
    Microlitres lane;  ///< out + back
    std::array<Microlitres, conditionerSlots> bySlot;
    friend bool operator==(const Volumes&, const Volumes&) = default;
};

Microlitres volume(const Stroke& stroke);
Volumes volumes(const Pattern& pattern);
/// Boards outside 1..39, ends outside the lane or reversed, doses or laps out of range, no name. Empty when sound.
std::vector<Finding> faultsOf(const Pattern& pattern);
const Pattern* findPattern(const std::vector<Pattern>& patterns, const PatternId& id);
/// Whether both say the same: name, strokes, end, clean and note. Being retired is no other version.
bool sameRecipe(const Pattern& a, const Pattern& b);

}  // namespace laneward
