#include "core/documents/cautions.h"

#include <algorithm>

namespace laneward {

namespace {

constexpr Caution all[] = {
    {"caution.battery", "29 CFR 1910.178(g)(2), (10)-(12) and 1926.441, US", "read in copies and a reproduction"},
    {"caution.lifting", "NIOSH 94-110, US", "section 1.2 read second-hand"},
    {"caution.slippery", "ANSI A326.3", "read second-hand; the standard itself was not opened"},
    {"caution.moving-parts", "common practice, no source", ""},
    {"caution.chemicals", "29 CFR 1910.1200(g)(8) and 1910.151(c), US", "the first from memory, the second read in a quotation"},
    {"caution.waste", "40 CFR 403.5(b)(6), US", "read in the identical text of a state; the federal page was not opened"},
};

}  // namespace

std::span<const Caution> cautions() { return all; }

Caution cautionOf(QByteArray rule) {
    if (rule.endsWith("-again")) rule.chop(int(sizeof("-again")) - 1);
    if (rule.startsWith("lifting.")) rule = "caution.lifting";  // the weight of one machine against the same source
    const auto found = std::find_if(std::begin(all), std::end(all), [&rule](const Caution& c) { return rule == c.rule; });
    return found == std::end(all) ? Caution{"", "", ""} : *found;
}

}  // namespace laneward
