#include "app/cli/csv_supply_cells.h"

#include "core/base/limits.h"

#include <cmath>

namespace laneward::cli {

namespace {

struct UnitWord {
    const char* word;
    BaseUnit base;
    double size;  ///< base units
};

// Fluid ounce and gallon: NIST Handbook 44, appendix C, from memory; foot: exactly, 16 CFR 500.19.
constexpr UnitWord unitWords[] = {{"ul", BaseUnit::Microlitre, 1},
                                  {"ml", BaseUnit::Microlitre, 1'000},
                                  {"l", BaseUnit::Microlitre, 1'000'000},
                                  {"floz", BaseUnit::Microlitre, 29'573.5295625},
                                  {"gal", BaseUnit::Microlitre, 3'785'411.784},
                                  {"mm", BaseUnit::Millimetre, 1},
                                  {"cm", BaseUnit::Millimetre, 10},
                                  {"m", BaseUnit::Millimetre, 1'000},
                                  {"ft", BaseUnit::Millimetre, 304.8},
                                  {"pieces", BaseUnit::Piece, 1}};

QStringList wordsOf(BaseUnit base) {
    QStringList words;
    for (const UnitWord& unit : unitWords)
        if (unit.base == base) words << QString::fromLatin1(unit.word);
    return words;
}

}  // namespace

std::optional<Amount> amountIn(CsvCells& cells, const QString& key, const QString& unitKey, BaseUnit base) {
    if (!cells.has(key)) {
        cells.refuse("csv.cell-empty", key);
        return std::nullopt;
    }
    if (base == BaseUnit::Piece && !cells.has(unitKey)) return Amount{cells.whole(key, 0, limits::stockAmount)};
    const QStringList words = wordsOf(base);
    if (!words.contains(cells.value(unitKey).toLower())) {
        cells.refuse(cells.has(unitKey) ? "csv.word" : "csv.unit-missing", unitKey, {words.join(", ")});
        return std::nullopt;
    }
    double size = 1;
    for (const UnitWord& unit : unitWords)
        if (cells.value(unitKey).toLower() == QLatin1String(unit.word)) size = unit.size;
    if (base == BaseUnit::Piece) return Amount{cells.whole(key, 0, limits::stockAmount)};
    const std::optional<double> number = cells.decimal(key, "csv.number", double(limits::stockAmount) / size);
    return number ? std::optional(Amount{std::llround(*number * size)}) : std::nullopt;
}

Finding atRow(const CsvCells& cells, Finding finding) {
    finding.subject = finding.subject.isEmpty() ? cells.where() : cells.where() + ": " + finding.subject;
    return finding;
}

}  // namespace laneward::cli
