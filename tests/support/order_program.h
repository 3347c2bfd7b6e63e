// A problem of joint orders as a mixed integer linear program in LP format, for a general solver. Written from the problem
// statement alone: of the code under test it knows only the values.
//
// For supply i, period t, offer o and price tier k: p whole packs bought at that tier, b whether the tier is used (its packs then
// lie between the tier's first and the most that could be wanted), one tier an offer and order; y units bought by t; z an order
// that pays freight, w one that does not.
#pragma once

#include "core/supplies/joint_orders.h"

#include <QJsonObject>

namespace support {

struct OrderCase {
    std::vector<std::vector<laneward::ordering::PackOffer>> offers;  ///< by supply
    laneward::ordering::JointProblem problem;
    std::vector<laneward::ordering::Cost> orderCosts;  ///< by period, on top of the terms; empty = none
};

struct OrderProgram {
    QString rows;
    QJsonObject objective;
};

OrderProgram programOf(const OrderCase& given);

}  // namespace support
