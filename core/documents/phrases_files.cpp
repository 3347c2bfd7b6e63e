#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"cli.option-not-here", QT_TRANSLATE_NOOP("wording", "'%1' is not an option of %2; see --help")},
    {"file.cannot-read", QT_TRANSLATE_NOOP("wording", "%1: cannot be read: %2")},
    {"file.cannot-write", QT_TRANSLATE_NOOP("wording", "%1: cannot be written: %2")},
    {"file.unreadable", QT_TRANSLATE_NOOP("wording", "%1: cannot be read: %2")},
    {"file.no-directory", QT_TRANSLATE_NOOP("wording", "%1: there is no such folder")},
    {"file.not-a-file", QT_TRANSLATE_NOOP("wording", "%1: not a file")},
    {"import.pattern-unknown", QT_TRANSLATE_NOOP("wording", "%1: %2 asks for the pattern '%3', which does not exist")},
    {"csv.too-large", QT_TRANSLATE_NOOP("wording", "%1: too large; nothing was imported")},
    {"csv.not-utf8", QT_TRANSLATE_NOOP("wording", "%1: neither UTF-8 nor UTF-16; save the file as UTF-8")},
    {"csv.unclosed-quote", QT_TRANSLATE_NOOP("wording", "%1: a quotation mark is never closed")},
    {"csv.ragged", QT_TRANSLATE_NOOP("wording", "%1: %2 fields, where the first record has %3")},
    {"csv.text-after-quote", QT_TRANSLATE_NOOP("wording", "%1: text after a closing quotation mark")},
    {"csv.nul", QT_TRANSLATE_NOOP("wording", "%1: a NUL character")},
    {"csv.empty", QT_TRANSLATE_NOOP("wording", "%1: has no records")},
    {"csv.column-missing", QT_TRANSLATE_NOOP("wording", "%1: there is no column '%2'")},
    {"csv.bad-value", QT_TRANSLATE_NOOP("wording", "%1: '%3' cannot be used as %2")},
    {"csv.end-before-start", QT_TRANSLATE_NOOP("wording", "%1: ends before it starts")},
    {"csv.lane-unknown", QT_TRANSLATE_NOOP("wording", "%1: names a lane that the centre does not have: %2")},
    {"csv.pattern-unknown", QT_TRANSLATE_NOOP("wording", "%1: there is no pattern '%2'")},
    {"csv.cell-empty", QT_TRANSLATE_NOOP("wording", "%1, column '%2': empty")},
    {"csv.film",
     QT_TRANSLATE_NOOP("wording", "%1, column '%2': '%3' where film in units from 0 to %4 is expected, with a decimal point")},
    {"csv.distance", QT_TRANSLATE_NOOP("wording", "%1, column '%2': '%3' where feet from the foul line, 0 to %4, are expected")},
    {"csv.whole", QT_TRANSLATE_NOOP("wording", "%1, column '%2': '%3' where a whole number from %4 to %5 is expected")},
    {"csv.decimal-comma",
     QT_TRANSLATE_NOOP("wording",
                       "%1, column '%2': '%3' has a comma where a decimal point is expected; a mapping may say decimal: comma")},
    {"csv.decimal-point",
     QT_TRANSLATE_NOOP("wording", "%1, column '%2': '%3' has a point where the mapping says that decimals have a comma")},
    {"csv.instant",
     QT_TRANSLATE_NOOP("wording", "%1, column '%2': '%3' where a time with its offset is expected, as 2026-11-12T18:30:00Z")},
    {"csv.date", QT_TRANSLATE_NOOP("wording", "%1, column '%2': '%3' where a date is expected, written as %4")},
    {"csv.time", QT_TRANSLATE_NOOP("wording", "%1, column '%2': '%3' where a time of day is expected, written as %4")},
    {"csv.word", QT_TRANSLATE_NOOP("wording", "%1, column '%2': '%3' where one of %4 is expected")},
    {"csv.name-unknown", QT_TRANSLATE_NOOP("wording", "%1, column '%2': the centre has no '%3'")},
    {"csv.board-unknown", QT_TRANSLATE_NOOP("wording", "%1: the column '%2' is no board of the lane; boards run from b1 to b39")},
    {"csv.nothing-measured", QT_TRANSLATE_NOOP("wording", "%1: no board has film")},
    {"mapping.unreadable", QT_TRANSLATE_NOOP("wording", "%1: cannot be read as a mapping: %2")},
    {"file.not-read", QT_TRANSLATE_NOOP("wording", "%1: cannot be read: %2")},
    {"file.not-written", QT_TRANSLATE_NOOP("wording", "%1: cannot be written: %2")},
    {"import.nothing-new", QT_TRANSLATE_NOOP("wording", "%1: nothing to import")},
    {"import.unsound", QT_TRANSLATE_NOOP("wording", "%1: %2")},
    {"cli.unknown-command", QT_TRANSLATE_NOOP("wording", "unknown command '%1'; see --help")},
    {"cli.unknown-option", QT_TRANSLATE_NOOP("wording", "%1; see --help")},
    {"cli.missing-argument", QT_TRANSLATE_NOOP("wording", "%1 needs %2; see --help")},
    {"cli.too-many-arguments", QT_TRANSLATE_NOOP("wording", "'%1' is one argument too many; see --help")},
    {"cli.bad-date", QT_TRANSLATE_NOOP("wording", "'%1' is not a date; write YYYY-MM-DD")},
    {"cli.bad-time", QT_TRANSLATE_NOOP("wording", "'%1' is not a time; write YYYY-MM-DDTHH:MM")},
    {"cli.bad-days", QT_TRANSLATE_NOOP("wording", "'%1' is not a number of days from 1 to %2")},
    {"cli.bad-format", QT_TRANSLATE_NOOP("wording", "'%1' is not a format of this command; it has %2")},
    {"cli.bad-extension", QT_TRANSLATE_NOOP("wording", "%1: the name must end in %2")},
    {"cli.pattern-unknown", QT_TRANSLATE_NOOP("wording", "there is no pattern '%1'")},
    {"cli.machine-unknown", QT_TRANSLATE_NOOP("wording", "there is no machine '%1'")},
    {"cli.bad-lane", QT_TRANSLATE_NOOP("wording", "'%1' is not a number of lanes from 1 to %2")},
    {"cli.bad-until", QT_TRANSLATE_NOOP("wording", "%1: give a day from today on, %2 days ahead at most")},
    {"cli.unknown-rows", QT_TRANSLATE_NOOP("wording", "there are no rows '%1' of a plan; there are jobs, costs and staff-hours")},
    {"cli.pdf-of-staff-hours",
     QT_TRANSLATE_NOOP("wording", "of a plan only --kind staff-hours has a --pdf; the day's sheet has one too")},
    {"cli.supplier-unknown", QT_TRANSLATE_NOOP("wording", "there is no supplier '%1'")},
    {"cli.nothing-to-order", QT_TRANSLATE_NOOP("wording", "there is nothing to order, so no page was written")},
    {"cli.bad-kind", QT_TRANSLATE_NOOP("wording", "'%1' is not a kind of row; there are %2")},
};

}  // namespace

std::span<const Phrase> filePhrases() { return phrases; }

}  // namespace laneward
