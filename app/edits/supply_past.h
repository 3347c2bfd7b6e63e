// What stock questions need of the past, read and learned once for many of them: by the thread that asks first, and again only
// when what is recorded is other than before. For several threads, one at a time; the store is opened for the reading alone.
#pragma once

#include "core/season/supply_outlook.h"
#include "core/storage/store.h"

#include <memory>
#include <mutex>

namespace laneward {

struct SupplyPast {
    SupplyLearning learned;
    std::vector<Movement> receipts;  ///< of orders
};

class SupplyPastReader {
public:
    /// Null when it cannot be read.
    std::shared_ptr<const SupplyPast> read(const Location& location, const SeasonState& season, Instant now);

private:
    struct Key;

    std::mutex m_mutex;
    std::shared_ptr<const Key> m_key;
    std::shared_ptr<const SupplyPast> m_past;
};

/// A plan ahead as far as stock is looked at, by few nodes: what treatments take hardly depends on their order.
inline constexpr int stockDays = 182;
inline constexpr std::int64_t stockNodes = 8 * nodesFor;

}  // namespace laneward
