// Loss functions: how much of a demand is expected to remain unserved by a stock, or of a stock to be left.
//
// Sources: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., appendix C (definitions as in the tests of the library
// stockpyl, from memory).
//
//     normalLoss(1.3)        // 0.0455: E[(Z - 1.3)+], Z standard normal
#pragma once

namespace laneward {

double normalQuantile(double p);  ///< 0 < p < 1

/// E[(Z - k)+], Z standard normal: density(k) - k P(Z > k). E[(k - Z)+] is k more.
double normalLoss(double k);
/// The k whose loss is `loss` (above 0), error below 1e-12 (1 + |k|).
double normalLossInverse(double loss);

double poissonBelow(int x, double mean);  ///< P(N <= x), N Poisson
/// E[(N - x)+]; mean above 0, x 0 or more. E[(x - N)+] is x - mean more.
double poissonLoss(int x, double mean);

}  // namespace laneward
