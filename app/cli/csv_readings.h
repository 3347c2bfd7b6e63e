// Tape readings and inspections as CSV, in and out; the columns are documented in resources/schemas/csv.md.
//
//     const ReadRows<TapeReading> read = tapesFromCsv(*rows, {centre, patterns});
//     if (!read.faults.empty()) show(read.faults);        // nothing may be taken then
#pragma once

#include "app/cli/csv_cells.h"
#include "core/patterns/inspection.h"
#include "core/patterns/tape_reading.h"

namespace laneward::cli {

/// All rows of a file, or what is wrong in its cells: each fault has file and line as its subject, then the column's title, what
/// stands there and what was expected.
template <class T>
struct ReadRows {
    std::vector<T> records;
    std::vector<Finding> faults;
};

/// Kinds of rows that export knows; import knows those of csv_supplies.h too.
inline QStringList csvKinds() { return {"series", "strokes", "readings", "inspections"}; }

/// Columns that csvRows() must find.
QStringList tapeColumns();
QStringList inspectionColumns();

ReadRows<TapeReading> tapesFromCsv(const CsvRows& rows, const KnownNames& known);
/// Rows of one id that follow each other are one inspection.
ReadRows<Inspection> inspectionsFromCsv(const CsvRows& rows, const KnownNames& known);

/// All of them, corrected ones before what corrects them.
QByteArray tapesToCsv(std::vector<TapeReading> readings);
QByteArray inspectionsToCsv(std::vector<Inspection> inspections);

}  // namespace laneward::cli
