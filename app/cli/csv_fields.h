// Fields of the tables that commands write.
#pragma once

#include "core/documents/writers.h"

namespace laneward::cli {

inline CsvField words(const QString& text) { return {text, false}; }
inline CsvField number(std::int64_t n) { return {QString::number(n), true}; }

inline QByteArray header(const QStringList& names) {
    std::vector<CsvField> fields;
    for (const QString& name : names)
        fields.push_back(words(name));
    return csvRecord(fields);
}

}  // namespace laneward::cli
