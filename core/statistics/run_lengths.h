// Average run lengths: how many values a control chart takes, on average, until it signals.
//
// Shifts are in sigmas of a single value; the values are independent and normal; a chart begins at its centre (zero state).
// Errors below 1e-6 of the result for the charts in use (k 0.25..2, h up to 8; weights from 0.03 on).
//
//     runLengthOfCusum({0.5, 5}, 1)      // 10.4 values until a shift of one sigma is seen
#pragma once

#include "core/statistics/control_charts.h"

namespace laneward {

/// 1 / P(a value is beyond +- width), from the normal distribution.
double runLengthOfLimits(double width, double shift);
/// One side only, `shift` towards it: the integral equation of Page (1954), solved at Gauss-Legendre nodes.
double runLengthOfOneSidedCusum(const CusumRule& rule, double shift);
/// Both sides: the reciprocals of the sides add (Kemp 1961).
double runLengthOfCusum(const CusumRule& rule, double shift);
/// With limits of the steady state: the integral equation of Crowder (1987), solved likewise.
double runLengthOfEwma(const EwmaRule& rule, double shift);
/// The h (error below 1e-6) with which a two-sided CUSUM of slack k signals falsely once in `runLength` (2..1e6) values.
double cusumLimitFor(double runLength, double k);

}  // namespace laneward
