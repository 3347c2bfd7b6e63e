#include "core/planning/ground.h"

#include <algorithm>

namespace laneward::planning {

Spans merged(Spans spans) {
    std::erase_if(spans, [](const Span& s) { return s.isEmpty(); });
    // Most are in order already.
    if (!std::is_sorted(spans.begin(), spans.end())) std::sort(spans.begin(), spans.end());
    Spans result;
    result.reserve(spans.size());
    for (const Span& s : spans) {
        if (!result.empty() && s.begin <= result.back().end) {
            result.back().end = std::max(result.back().end, s.end);
        } else {
            result.push_back(s);
        }
    }
    return result;
}

Spans without(const Spans& from, const Spans& taken) {
    Spans left;
    size_t next = 0;
    for (Span s : from) {
        while (next < taken.size() && taken[next].end <= s.begin)
            ++next;
        for (size_t i = next; i < taken.size() && taken[i].begin < s.end; ++i) {
            if (s.begin < taken[i].begin) left.push_back({s.begin, taken[i].begin});
            s.begin = std::max(s.begin, taken[i].end);
        }
        if (!s.isEmpty()) left.push_back(s);
    }
    return left;
}

Spans common(const Spans& a, const Spans& b) {
    Spans both;
    for (size_t i = 0, j = 0; i < a.size() && j < b.size();) {
        const Span part{std::max(a[i].begin, b[j].begin), std::min(a[i].end, b[j].end)};
        if (!part.isEmpty()) both.push_back(part);
        (a[i].end < b[j].end ? i : j)++;
    }
    return both;
}

}  // namespace laneward::planning
