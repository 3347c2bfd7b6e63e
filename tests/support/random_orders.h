// Random problems of joint orders, small enough for a general solver.
#pragma once

#include "tests/support/order_program.h"

namespace support {

struct OrderSize {
    int supplies = 1;
    int periods = 6;
    int packs = 12;  ///< about as many are needed of each supply
};

/// Reproducible. Some have no plan. Costs are tens, so that a solver's tolerances of less cannot hide a better plan. Packs of
/// several sizes only where the value of an order does not matter: a general solver would buy dearer packs to reach a value.
OrderCase randomOrders(unsigned seed, const OrderSize& size);

}  // namespace support
