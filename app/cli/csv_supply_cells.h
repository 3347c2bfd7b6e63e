// What rows about supplies have in common. Internal to this room.
#pragma once

#include "app/cli/csv_cells.h"
#include "core/season/season.h"

namespace laneward::cli {

/// The row whose id or, whatever its case, whose name stands in the cell; a fault when there is none.
template <class T>
const T* named(CsvCells& cells, const QString& key, const std::vector<T>& rows) {
    const QString text = cells.value(key);
    for (const T& row : rows)
        if (row.id.value == text) return &row;
    for (const T& row : rows)
        if (row.name.compare(text, Qt::CaseInsensitive) == 0) return &row;
    cells.refuse(text.isEmpty() ? "csv.cell-empty" : "csv.name-unknown", key);
    return nullptr;
}

/// The number in `key` in the unit that stands in `unitKey`: ul, ml, l, floz, gal; mm, cm, m, ft; pieces, or nothing for them.
std::optional<Amount> amountIn(CsvCells& cells, const QString& key, const QString& unitKey, BaseUnit base);

/// The finding as one of a row.
Finding atRow(const CsvCells& cells, Finding finding);

}  // namespace laneward::cli
