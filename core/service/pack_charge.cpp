#include "core/service/pack_charge.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <span>

namespace laneward {

namespace {

struct Rested {
    double share;
    double volts;  ///< of 12 V
};

constexpr double tableVolts = 12;
constexpr double doubt = 0.1;  // volts of 12 V, either way

// Sources and status: the header.
constexpr Rested flooded[] = {{0, 11.89}, {0.25, 12.06}, {0.5, 12.24}, {0.75, 12.45}, {1, 12.65}};
constexpr Rested sealed[] = {{0, 12.09}, {0.25, 12.26}, {0.5, 12.44}, {0.75, 12.65}, {1, 12.85}};
constexpr Rested lithium[] = {{0, 10.0},   {0.1, 12.0}, {0.2, 12.8}, {0.3, 12.9}, {0.4, 13.0},
                              {0.5, 13.1}, {0.7, 13.2}, {0.9, 13.3}, {1, 13.6}};

std::span<const Rested> tableOf(Chemistry chemistry) {
    switch (chemistry) {
        case Chemistry::FloodedLeadAcid:
            return flooded;
        case Chemistry::Agm:
        case Chemistry::Gel:
            return sealed;
        case Chemistry::LithiumIronPhosphate:
            return lithium;
        case Chemistry::Other:
            return {};
    }
    return {};
}

// For 12 V, from memory: 2.45 V a lead-acid cell and 3.65 V a lithium cell are the most that chargers give; 1.75 V and 2.5 V are
// what a cell may be drawn down to under load.
double mostWhenCharged(Chemistry chemistry) { return chemistry == Chemistry::LithiumIronPhosphate ? 14.6 : 14.7; }
double leastUnderLoad(Chemistry chemistry) { return chemistry == Chemistry::LithiumIronPhosphate ? 10.0 : 10.5; }

/// The y of x on straight lines between points, x ascending; that of the nearest end outside.
template <class X, class Y>
double interpolated(std::span<const Rested> table, double x, X xOf, Y yOf) {
    if (x <= xOf(table.front())) return yOf(table.front());
    for (size_t i = 1; i < table.size(); ++i) {
        const double x0 = xOf(table[i - 1]);
        const double x1 = xOf(table[i]);
        if (x <= x1) return yOf(table[i - 1]) + (yOf(table[i]) - yOf(table[i - 1])) * (x - x0) / (x1 - x0);
    }
    return yOf(table.back());
}

double shareAt(std::span<const Rested> table, double volts) {
    return interpolated(
        table, volts, [](const Rested& r) { return r.volts; }, [](const Rested& r) { return r.share; });
}
double voltsAt(std::span<const Rested> table, double share) {
    return interpolated(
        table, share, [](const Rested& r) { return r.share; }, [](const Rested& r) { return r.volts; });
}

bool isAccepted(Millivolts volts) { return volts >= Millivolts{0} && volts <= mostVolts; }
bool isNominal(Millivolts nominal) { return nominal > Millivolts{0} && nominal <= mostVolts; }

double toTable(const PackKind& kind, Millivolts volts) { return double(volts.value) / double(kind.nominal.value) * tableVolts; }
Millivolts fromTable(const PackKind& kind, double volts) {
    return {std::llround(volts / tableVolts * double(kind.nominal.value))};
}

/// Collects what is to be said about a centre's limits.
class Judge {
public:
    Judge(const PackLimits& limits, const QString& subject) : m_limits(limits), m_subject(subject) {}

    std::vector<Finding> findings() {
        for (const VoltLimit* one : {&m_limits.full, &m_limits.fit, &m_limits.spareBelow})
            if (!isAccepted(one->at)) say(Severity::Fault, "pack.volts", {one->at});
        if (!isNominal(m_limits.kind.nominal)) say(Severity::Fault, "pack.nominal", {m_limits.kind.nominal});
        if (!m_said.empty()) return m_said;
        judgeOrder();
        if (tableOf(m_limits.kind.chemistry).empty()) {
            say(Severity::Note, "pack.no-table", {});
            return m_said;
        }
        judgeReach(m_limits.full, "pack.full-unreachable");
        judgeReach(m_limits.fit, "pack.fit-unreachable");
        judgeFull();
        judgeEmpty(m_limits.fit, "pack.fit-empty");
        judgeEmpty(m_limits.spareBelow, "pack.spare-empty");
        const Chemistry chemistry = m_limits.kind.chemistry;
        if (chemistry == Chemistry::Agm || chemistry == Chemistry::Gel) say(Severity::Note, "pack.assumed-table", {});
        return m_said;
    }

private:
    void say(Severity severity, const char* rule, std::vector<Value> values) {
        m_said.push_back({severity, rule, m_subject, std::move(values)});
    }
    void warn(const char* rule, Millivolts limit, Millivolts other) { say(Severity::Warning, rule, {limit, other}); }

    // Volts of a charge that lasts fall from just charged over rested to under load: only then must limits do the same.
    void judgeOrder() {
        const auto& [kind, full, fit, spare] = m_limits;
        if (full.state <= fit.state && full.at < fit.at) warn("pack.order-full", full.at, fit.at);
        if (spare.state >= fit.state && spare.at > fit.at) warn("pack.order-spare", spare.at, fit.at);
    }

    void judgeReach(const VoltLimit& limit, const char* rule) {
        const Chemistry chemistry = m_limits.kind.chemistry;
        const bool charged = limit.state == VoltageState::JustCharged;
        const double most = charged ? mostWhenCharged(chemistry) : voltsAt(tableOf(chemistry), 1) + doubt;
        if (toTable(m_limits.kind, limit.at) > most) warn(rule, limit.at, fromTable(m_limits.kind, most));
    }

    void judgeFull() {
        const VoltLimit& full = m_limits.full;
        const double least = voltsAt(tableOf(m_limits.kind.chemistry), 0.75);
        if (full.state != VoltageState::UnderLoad && toTable(m_limits.kind, full.at) < least - doubt)
            warn("pack.full-low", full.at, fromTable(m_limits.kind, least));
    }

    void judgeEmpty(const VoltLimit& limit, const char* rule) {
        const Chemistry chemistry = m_limits.kind.chemistry;
        const double empty = limit.state == VoltageState::UnderLoad ? leastUnderLoad(chemistry) : voltsAt(tableOf(chemistry), 0);
        if (toTable(m_limits.kind, limit.at) < empty) warn(rule, limit.at, fromTable(m_limits.kind, empty));
    }

    const PackLimits& m_limits;
    const QString& m_subject;
    std::vector<Finding> m_said;
};

}  // namespace

Result<std::optional<Charge>> chargeOf(const PackKind& kind, Millivolts volts, VoltageState state) {
    if (!isAccepted(volts)) return fault(ErrorKind::Invalid, "pack.volts", {}, {volts});
    if (!isNominal(kind.nominal)) return fault(ErrorKind::Invalid, "pack.nominal", {}, {kind.nominal});
    const std::span<const Rested> table = tableOf(kind.chemistry);
    if (table.empty()) return std::optional<Charge>();
    const double v = toTable(kind, volts);
    Charge charge{shareAt(table, v), {shareAt(table, v - doubt), shareAt(table, v + doubt)}};
    if (state == VoltageState::JustCharged) charge.likely.low = 0;
    if (state == VoltageState::UnderLoad) charge.likely.high = 1;
    return std::optional(charge);
}

std::optional<Millivolts> restedVolts(const PackKind& kind, double share) {
    const std::span<const Rested> table = tableOf(kind.chemistry);
    if (table.empty()) return {};
    return fromTable(kind, voltsAt(table, share));
}

std::vector<Finding> findingsOf(const PackLimits& limits, const QString& subject) { return Judge(limits, subject).findings(); }

std::vector<Finding> voltsFindings(Millivolts volts, const QString& subject) {
    if (isAccepted(volts)) return {};
    return {{Severity::Fault, "pack.volts", subject, {volts}}};
}

double peukertHours(const OneHourCapacity& capacity, double amperes, double exponent) {
    assert(capacity.ampereHours > 0 && amperes > 0);
    return capacity.ampereHours / std::pow(amperes, exponent);
}

double peukertHours(const RatedCapacity& capacity, double amperes, double exponent) {
    assert(capacity.ampereHours > 0 && capacity.hours > 0 && amperes > 0);
    return capacity.hours * std::pow(capacity.ampereHours / (amperes * capacity.hours), exponent);
}

}  // namespace laneward
