// What a rule has to say, as data: the words are made, in the reader's language, by documents/wording.h.
//
//     Finding{Severity::Warning, "demand.unmet", "Thursday Fours", {std::int64_t{3}, minutes(12)}}
#pragma once

#include "core/base/quantities.h"

#include <QByteArray>
#include <QDate>
#include <QString>

#include <compare>
#include <variant>
#include <vector>

namespace laneward {

enum class Severity { Note, Warning, Fault };

/// A number, amount, time or name inside a finding; its type decides how it is printed.
using Value = std::variant<std::int64_t, Seconds, Microlitres, Micrometres, Millivolts, Instant, QDate, QString>;

struct Finding {
    Severity severity = Severity::Note;
    QByteArray rule;            ///< stable dotted id, for example "ics.unknown-zone"; the key of its wording
    QString subject;            ///< what it is about: a file and line, a series, a machine, a lane
    std::vector<Value> values;  ///< in the order in which the wording names them (%1 is the subject, %2 the first value)

    friend bool operator==(const Finding&, const Finding&) = default;
};

}  // namespace laneward
