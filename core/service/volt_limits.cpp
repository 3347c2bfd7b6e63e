#include "core/service/volt_limits.h"

namespace laneward {

namespace {

/// The more, the more volts the same pack shows.
int heightOf(VoltageState state) {
    switch (state) {
        case VoltageState::UnderLoad:
            return 0;
        case VoltageState::Rested:
            return 1;
        case VoltageState::JustCharged:
            break;
    }
    return 2;
}

}  // namespace

VoltRule voltRule(const Machine& machine, const ServiceItem* pack) {
    const bool hasSpare = machine.capacity.sparePacks > 0;
    if (pack && pack->pack) return {pack->id, pack->pack->full, pack->pack->fit, pack->pack->spareBelow, hasSpare};
    return {{}, {machine.fullAt, VoltageState::Rested}, {}, {machine.attachSpareAt, VoltageState::Rested}, hasSpare};
}

Against against(Millivolts volts, VoltageState state, const VoltLimit& limit) {
    const int measured = heightOf(state);
    const int asked = heightOf(limit.state);
    if (volts < limit.at) return measured >= asked ? Against::Below : Against::Unknown;
    return measured <= asked ? Against::AtLeast : Against::Unknown;
}

std::vector<Finding> voltFindings(const MeasuredVolts& measured, const VoltRule& rule, const QString& machine) {
    const auto one = [&](Severity severity, const char* name, const VoltLimit& limit) -> std::vector<Finding> {
        return {{severity, name, machine, {measured.volts, limit.at}}};
    };
    const auto asked = [&](const VoltLimit& limit) { return against(measured.volts, measured.state, limit); };
    const Against spare = asked(rule.spareBelow);
    const Against fit = rule.fit ? asked(*rule.fit) : spare;
    const Against full = asked(rule.full);
    if (spare == Against::Below)
        return one(Severity::Warning, rule.hasSpare ? "readiness.attach-spare" : "readiness.charge-first", rule.spareBelow);
    if (fit == Against::Below) return one(Severity::Warning, "readiness.not-fit", rule.fit.value_or(rule.spareBelow));
    if (full == Against::AtLeast) return {};
    if (fit == Against::Unknown) return one(Severity::Note, "readiness.other-state", rule.fit.value_or(rule.spareBelow));
    if (full == Against::Below) return one(Severity::Note, "readiness.not-full", rule.full);
    return {};
}

}  // namespace laneward
