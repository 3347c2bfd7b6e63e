#include "core/service/wear.h"

#include <cmath>

namespace laneward {

namespace {

void add(WearAnswer& answer, const QString& item, Error error) {
    error.finding.subject = item;
    answer.findings.push_back(std::move(error.finding));
}

void note(WearAnswer& answer, const QString& item, const char* rule, std::vector<Value> values = {}) {
    answer.findings.push_back({Severity::Note, rule, item, std::move(values)});
}

void addBest(WearAnswer& answer, const WearQuestion& question) {
    Result<AgeCosts> costs = AgeCosts::of(answer.fit->law, question.costs);
    if (!costs) return add(answer, question.item, costs.error());
    answer.costs = *costs;
    answer.best = costs->best();
    if (question.ageNow) answer.costNow = costs->at(*question.ageNow);
    answer.bestInterval =
        profileOf(question.lives, *answer.fit, [&](double shape) { return bestAgePerScale(shape, question.costs); });
    if (question.costs.failed <= question.costs.planned)
        note(answer, question.item, "wear.no-gain");
    else if (answer.best->never)
        note(answer, question.item, "wear.never");
    else if (std::isinf(answer.bestInterval.high))
        note(answer, question.item, "wear.unsure");
}

}  // namespace

WearAnswer wearOf(const WearQuestion& question) {
    WearAnswer answer;
    if (const Outcome ages = checkAges(question.lives); !ages) {
        add(answer, question.item, ages.error());
        return answer;
    }
    answer.parts = int(question.lives.size());
    answer.failures = failuresAmong(question.lives);
    answer.points = plotPoints(question.lives);
    answer.moreNeeded = std::max(0, leastFailures - answer.failures);
    if (answer.moreNeeded > 0) {
        note(answer, question.item, "wear.too-few", {std::int64_t{answer.failures}, std::int64_t{answer.moreNeeded}});
        return answer;
    }
    if (question.ageNow && !(std::isfinite(*question.ageNow) && *question.ageNow > 0)) {
        add(answer, question.item, fault(ErrorKind::Invalid, "wear.age-now", {}));
        return answer;
    }
    const Result<WeibullFit> fit = fitWeibull(question.lives);
    if (!fit) {
        add(answer, question.item, fit.error());
        return answer;
    }
    answer.fit = *fit;
    addBest(answer, question);
    return answer;
}

}  // namespace laneward
