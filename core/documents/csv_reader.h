// CSV in, by RFC 4180, with the separators and encodings that people really send.
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QStringList>

namespace laneward {

struct CsvRecord {
    int line = 0;  ///< where it begins, 1..
    QStringList fields;
};

struct CsvTable {
    std::vector<CsvRecord> records;
    char separator = ',';
};

/// UTF-8 (with or without BOM), UTF-16 with BOM; ',', ';' or tab, told apart by the first record. Strips the apostrophe that
/// csvRecord() put before formula characters.
/// Errors (Invalid): "csv.too-large", "csv.not-utf8", "csv.unclosed-quote", "csv.ragged", "csv.text-after-quote", "csv.nul";
/// subject "name:line".
Result<CsvTable> readCsv(const QByteArray& bytes, const QString& name);

}  // namespace laneward
