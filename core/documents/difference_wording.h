// What a change would do, in words: an answer to 'what if' for the window and for the command line.
//
//     const DifferenceWords words = differenceWords(season.ask(changed, effort), effort, days, patterns, speech);
//     out << words.sentence;
//     for (const DifferenceLine& line : words.lines) out << "  " << line.words;
#pragma once

#include "core/documents/wording.h"
#include "core/season/what_if.h"

namespace laneward {

struct DifferenceLine {
    enum class Kind {
        Missed,   ///< a demand that would be unmet or late
        Removed,  ///< a job that would no longer be needed
        Moved,    ///< a job that would run at another time, on another machine or in another order
        Added,
        Amounts,  ///< treatments, conditioner and cleaner over the whole range, signed
        Stock,    ///< something would run out, or have to be ordered, on another day
        Service,  ///< a duty would fall due on another day
        Cost,     ///< of products, signed
        Proof,    ///< how sure the answer is
    };
    Kind kind = Kind::Amounts;
    QString words;
    bool bad = false;  ///< something would be worse for those who play
    friend bool operator==(const DifferenceLine&, const DifferenceLine&) = default;
};

/// Whether the line is about a job or a demand: of those there may be many.
bool isAboutJobs(DifferenceLine::Kind kind);

struct DifferenceWords {
    QString sentence;                   ///< all of it in one: jobs, minutes late, unmet
    std::vector<DifferenceLine> lines;  ///< in the order of Kind, jobs by time
    friend bool operator==(const DifferenceWords&, const DifferenceWords&) = default;
};

/// `days` is the range that was asked about, `effort` what the answer was asked with.
DifferenceWords differenceWords(const WhatIfAnswer& answer, Effort effort, const DateRange& days,
                                const std::vector<Pattern>& patterns, const Speech& speech);

}  // namespace laneward
