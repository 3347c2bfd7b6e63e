// Names of rows: one type per kind of thing, so that a machine's id is never taken for a pattern's.
//
// An id is a non-empty text, unique within its centre and never reused: a UUID for what people make, a readable word in
// the demo. Ids order by code point, which makes results independent of the order of the input.
#pragma once

#include <QHashFunctions>
#include <QString>

#include <compare>

namespace laneward {

template <class Tag>
struct Id {
    QString value;

    bool isEmpty() const { return value.isEmpty(); }
    /// Copies share their text, which is quicker to see than that it is equal.
    friend bool operator==(const Id& a, const Id& b) {
        const bool shared = a.value.constData() == b.value.constData() && a.value.size() == b.value.size();
        return shared || a.value == b.value;
    }
    friend std::strong_ordering operator<=>(const Id& a, const Id& b) { return a.value.compare(b.value) <=> 0; }
    friend size_t qHash(const Id& id, size_t seed = 0) noexcept { return ::qHash(id.value, seed); }
};

using CentreId = Id<struct CentreTag>;
using MachineId = Id<struct MachineTag>;
using PersonId = Id<struct PersonTag>;
using ShiftId = Id<struct ShiftTag>;
using OutageId = Id<struct OutageTag>;
using PatternId = Id<struct PatternTag>;
using SeriesId = Id<struct SeriesTag>;
using JobId = Id<struct JobTag>;
using SupplyId = Id<struct SupplyTag>;
using SupplierId = Id<struct SupplierTag>;
using OfferId = Id<struct OfferTag>;
using OrderId = Id<struct OrderTag>;
using ItemId = Id<struct ItemTag>;
using DutyId = Id<struct DutyTag>;
using OperationId = Id<struct OperationTag>;  ///< of one recorded operation; a UUID, unique in the database

}  // namespace laneward
