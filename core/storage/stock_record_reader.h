// Counts, receipts and the parts of services for `laneward record`: amounts are in the unit that their key ends with, amount_ul,
// amount_mm or pieces, and it must be the unit of the supply.
#pragma once

#include "core/storage/edit.h"
#include "core/storage/json_values.h"

namespace laneward {

class StockRecordReader {
public:
    /// `values` takes what the wording of a fault names besides its place.
    StockRecordReader(const std::vector<Supply>& supplies, JsonFault& fault, std::vector<Value>& values)
        : m_supplies(supplies), m_fault(fault), m_values(values) {}

    /// Without its "kind". Nothing where `fault` was set.
    std::optional<Record> count(QJsonObject object, const JsonPath& at);
    /// A movement from the supplier to the shelf.
    std::optional<Record> receipt(QJsonObject object, const JsonPath& at);
    /// A service; `object` may lack its meters, which are then nothing.
    std::optional<Record> service(QJsonObject object, const JsonPath& at);

private:
    bool list(const QJsonArray& array, const JsonPath& at, bool counted, std::vector<CountLine>& lines);
    bool lines(QJsonObject& object, const JsonPath& at, bool counted, std::vector<CountLine>& lines);
    bool line(const QJsonObject& object, const JsonPath& at, bool counted, CountLine& line);
    bool amount(const std::array<std::optional<Amount>, 3>& amounts, const JsonPath& at, CountLine& line);
    bool refused(const char* rule, const JsonPath& at, std::vector<Value> values);

    const std::vector<Supply>& m_supplies;
    JsonFault& m_fault;
    std::vector<Value>& m_values;
};

}  // namespace laneward
