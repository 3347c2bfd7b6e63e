// How much the program accepts from a file. Each limit is far above real use and far below what would hurt.
#pragma once

#include <cstdint>

namespace laneward::limits {

inline constexpr std::int64_t importBytes = 20'000'000;         ///< .ics and .csv
inline constexpr std::int64_t importRows = 100'000;             ///< records in one .ics or .csv
inline constexpr std::int64_t importLineBytes = 1'000'000;      ///< one unfolded line or field
inline constexpr int importDepth = 8;                           ///< nested components
inline constexpr std::int64_t centreFileBytes = 2'000'000'000;  ///< .json, streamed
inline constexpr int occurrencesPerRule = 10'000;               ///< in one expansion
inline constexpr int occurrencesAtOnce = 500'000;               ///< of all series together
inline constexpr int conflictsAtOnce = 10'000;                  ///< listed for one range
inline constexpr int expansionYears = 11;                       ///< longest range that is expanded at once
inline constexpr int lanes = 200;                               ///< in one centre
inline constexpr int nameLength = 200;                          ///< characters in a title or name
inline constexpr int noteLength = 10'000;                       ///< characters in a note
inline constexpr std::int64_t doseMicrolitres = 10'000;         ///< per board and lap
inline constexpr int laps = 100;                                ///< of one stroke
inline constexpr std::int64_t stockAmount = 1'000'000'000'000;  ///< of one supply: 1,000 m³, 1,000,000 km, so many pieces
inline constexpr std::int64_t moneyMinor = 100'000'000'000;     ///< of one price or freight
inline constexpr int packs = 1'000'000;                         ///< in one line of an order or price list
inline constexpr int priceBreaks = 100;                         ///< of one offer
inline constexpr int stockLines = 1'000;                        ///< of one movement, count or order

}  // namespace laneward::limits
