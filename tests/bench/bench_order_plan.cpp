// The order plan of a large centre: 20 supplies, 4 suppliers, 52 weeks; freight, free from a value, minimum orders, price breaks,
// limits of the store and of age, and some supplies that two suppliers sell. Limit: 200 ms.
#include "tests/bench/ratio.h"
#include "tests/support/order_questions.h"

using namespace laneward;

namespace {

constexpr double limitMs = 200;

void orderPlan(benchmark::State& state) {
    const OrderQuestion question = support::yearOfOrders(1, 0);
    for (auto step : state)
        benchmark::DoNotOptimize(planOrders(question, usualOrderEffort, {}).total.minor);
}

void orderPlanWithChoices(benchmark::State& state) {
    const OrderQuestion question = support::yearOfOrders(1, 3);
    for (auto step : state)
        benchmark::DoNotOptimize(planOrders(question, usualOrderEffort, {}).total.minor);
}

BENCHMARK(orderPlan)->Unit(benchmark::kMillisecond);
BENCHMARK(orderPlanWithChoices)->Unit(benchmark::kMillisecond);

/// What the plan is worth: the gap that is left, over ten such years.
void printGaps(int doubles) {
    double sum = 0, widest = 0;
    int proven = 0;
    for (unsigned seed = 1; seed <= 10; ++seed) {
        const OrderPlan plan = planOrders(support::yearOfOrders(seed, doubles), usualOrderEffort, {});
        const double gap = 100 * double(plan.total.minor - plan.lowerBound.minor) / double(plan.total.minor);
        sum += gap;
        widest = std::max(widest, gap);
        proven += plan.proven ? 1 : 0;
    }
    std::printf(
        "bench order plan, %d of 20 supplies sold by two: gap %.2f %% of the cost on average, %.2f %% at most, %d of 10 proven\n",
        doubles, sum / 10, widest, proven);
}

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    printGaps(0);
    printGaps(3);
    const bool plain = bench::withinLimit(times, "orderPlan", limitMs);
    const bool choices = bench::withinLimit(times, "orderPlanWithChoices", limitMs);
    return plain && choices ? 0 : 1;
}
