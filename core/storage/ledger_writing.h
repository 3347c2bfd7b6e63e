// Movements and counts on their way into the ledger: what is asked of them, and the balances they leave.
#pragma once

#include "core/storage/rows.h"

#include <optional>

namespace laneward {

/// For one transaction: supplies and balances are read when the first movement or count comes, then kept up to date.
class LedgerWriting {
public:
    LedgerWriting(Database& database, CentreId centre) : m_database(database), m_centre(std::move(centre)) {}

    /// Whether it may be stored: sound in itself, covered by what is there, of a known source, and the opposite of what it takes
    /// back.
    Outcome mayBook(const Movement& movement);
    Outcome mayBook(const StockCount& count);
    /// The movement was stored: its balances follow.
    Outcome booked(const Movement& movement);

private:
    Outcome prepare();
    Outcome sourceExists(const Movement& movement);
    Outcome isOpposite(const Movement& movement);

    Database& m_database;
    CentreId m_centre;
    std::optional<std::vector<Supply>> m_supplies;
    Balances m_stock;
};

}  // namespace laneward
