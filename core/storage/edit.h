// Edits and records: the two ways in which a centre changes.
//
// An edit replaces rows and can be undone: one transaction with the row versions it read; applying it gives back the counter-edit
// with the versions it wrote. A record is appended for ever; undoing one appends its counter-record.
#pragma once

#include "core/season/season.h"
#include "core/service/attachment.h"

#include <variant>

namespace laneward {

/// `before` empty = a new row, `after` empty = the row goes away. `before->version` must still be the stored version.
template <class T>
struct RowChange {
    std::optional<T> before;
    std::optional<T> after;
};

using Change = std::variant<RowChange<CentreFacts>, RowChange<Machine>, RowChange<Person>, RowChange<Shift>, RowChange<Outage>,
                            RowChange<Pattern>, RowChange<Series>, RowChange<Job>, RowChange<Supply>, RowChange<Supplier>,
                            RowChange<Offer>, RowChange<Order>, RowChange<ServiceItem>>;

struct Edit {
    OperationId id;  ///< a UUID; applying the same id twice is refused as already done
    PersonId person;
    Instant at;
    QString name;  ///< "Move Thursday Fours", for the history
    std::vector<Change> changes;
};

using Record = std::variant<RunLog, Incident, HandOver, LevelReading, TapeReading, Inspection, Movement, StockCount,
                            ServiceRecord, MeterReading, PackReading, Attachment>;

OperationId operationOf(const Record& record);

}  // namespace laneward
