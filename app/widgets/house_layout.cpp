#include "app/widgets/house_layout.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace laneward {

namespace {

constexpr double pairGapPart = 0.22;  // of a lane's width, between pairs
constexpr double secondsPerDay = 86'400;

std::vector<std::pair<int, int>> runsOf(const LaneSet& lanes) {
    std::vector<std::pair<int, int>> runs;
    for (int lane : lanes.lanes()) {
        if (!runs.empty() && runs.back().second + 1 == lane)
            runs.back().second = lane;
        else
            runs.emplace_back(lane, lane);
    }
    return runs;
}

/// Hours between two lines, so that they keep at least 26 pixels apart.
int hoursBetweenTicks(double hourHeight) {
    for (int hours : {1, 2, 3, 6, 12}) {
        if (hours * hourHeight >= 26) return hours;
    }
    return 24;
}

/// Items of one day row: each takes the first track that is free on its lanes.
int trackOf(const LaneSet& lanes, std::vector<LaneSet>& tracks) {
    for (size_t i = 0; i < tracks.size(); ++i) {
        if (tracks[i].intersects(lanes)) continue;
        tracks[i] = tracks[i] | lanes;
        return int(i);
    }
    tracks.push_back(lanes);
    return int(tracks.size()) - 1;
}

}  // namespace

double dayHeightFor(HouseZoom zoom, double viewportHeight) {
    switch (zoom) {
        case HouseZoom::Evening:
            return viewportHeight * 24 / 8;
        case HouseZoom::Day:
            return viewportHeight;
        case HouseZoom::Week:
            return std::max(viewportHeight / 7, HouseLayout::rowHeight);
        case HouseZoom::Month:
            return std::clamp(viewportHeight / 31, 24.0, HouseLayout::rowHeight - 1);
        case HouseZoom::Season:
            break;
    }
    return std::clamp(viewportHeight / 91, 12.0, 23.0);
}

HouseZoom zoomOf(double dayHeight, double viewportHeight) {
    HouseZoom best = HouseZoom::Evening;
    double bestDistance = 1e9;
    for (HouseZoom zoom : {HouseZoom::Evening, HouseZoom::Day, HouseZoom::Week, HouseZoom::Month, HouseZoom::Season}) {
        const double distance = std::abs(std::log(dayHeight / dayHeightFor(zoom, viewportHeight)));
        if (distance < bestDistance) {
            bestDistance = distance;
            best = zoom;
        }
    }
    return best;
}

HouseLayout::HouseLayout(const HouseData& data, const HouseMetrics& metrics, double dayHeight)
    : m_dayHeight(dayHeight), m_lineHeight(metrics.lineHeight), m_range(data.range) {
    placeLanes(data.lanes, metrics);
    m_size = {std::max(metrics.width, lastLane() + (metrics.mirrored ? metrics.gutter : metrics.trailing)), y(data.range.end)};
    placeTicks(data);
    if (isRows())
        placeInRows(data);
    else
        placeItems(data);
}

double HouseLayout::y(Instant t) const { return double((t - m_range.begin).value) / secondsPerDay * m_dayHeight; }

Instant HouseLayout::timeAt(double y) const {
    return m_range.begin + Seconds{std::int64_t(std::llround(y / m_dayHeight * secondsPerDay))};
}

void HouseLayout::placeLanes(int lanes, const HouseMetrics& metrics) {
    const int pairs = (lanes + 1) / 2;
    const double room = metrics.width - metrics.gutter - metrics.trailing;
    const int wholePairs = lanes / 2;
    const double units = lanes + wholePairs * 0.04 + (pairs - 1) * pairGapPart;
    m_laneWidth = lanes > 0 ? std::clamp(room / units, metrics.leastLane, 160.0) : 0;
    double x = metrics.mirrored ? metrics.trailing : metrics.gutter;
    for (int lane = 1; lane <= lanes; ++lane) {
        m_left.push_back(x);
        x += m_laneWidth * (1 + (lane % 2 == 1 ? 0.04 : pairGapPart));
    }
}

QRectF HouseLayout::across(int first, int last) const {
    return {laneLeft(first), 0, laneLeft(last) + m_laneWidth - laneLeft(first), 0};
}

int HouseLayout::laneAt(double x) const {
    for (size_t i = 0; i < m_left.size(); ++i) {
        if (x >= m_left[i] && x < m_left[i] + m_laneWidth) return int(i) + 1;
    }
    return 0;
}

void HouseLayout::placeTicks(const HouseData& data) {
    const int step = hoursBetweenTicks(m_dayHeight / 24);
    for (size_t i = 0; i < data.days.size(); ++i) {
        m_ticks.push_back({y(data.days[i]), data.days[i], true});
        const Instant end = i + 1 < data.days.size() ? data.days[i + 1] : data.range.end;
        for (Instant t = data.days[i] + hours(1); step < 24 && t < end; t = t + hours(1)) {
            if (data.zone.toLocal(t).time.hour() % step == 0 && y(t) - m_ticks.back().y > 13) m_ticks.push_back({y(t), t, false});
        }
    }
}

HouseLayout::Placed HouseLayout::placed(const LaneSet& lanes, double top, double bottom, double outset) const {
    Placed result;
    for (const auto& [first, last] : runsOf(lanes)) {
        QRectF part = across(first, last).adjusted(-outset, 0, outset, 0);
        part.setTop(top);
        part.setBottom(bottom);
        result.parts.push_back(part);
        if (part.width() > result.rect.width()) result.rect = part;
    }
    return result;
}

HouseLayout::Placed HouseLayout::placedInTime(const HouseItem& item) const {
    const double leastJob = m_dayHeight / 24 > 12 ? m_lineHeight + 4 : 9;
    double top = std::max(0.0, y(item.time.begin));
    double bottom = std::min(m_size.height(), y(item.time.end));
    const bool low = item.kind == HouseItem::Kind::Job || item.kind == HouseItem::Kind::Shortfall;
    const double missing = (low ? leastJob : 3) - (bottom - top);
    if (missing > 0) {
        top -= missing / 2;
        bottom += missing / 2;
    }
    return placed(item.lanes, top, bottom, low ? 0 : -1);
}

HouseLayout::Placed HouseLayout::placeOf(const HouseItem& item, const HouseData& data) const {
    if (!isRows()) return placedInTime(item);
    const auto next = std::upper_bound(data.days.begin(), data.days.end(), item.time.begin);
    const auto day = std::max<std::ptrdiff_t>(0, next - data.days.begin() - 1);
    const double top = y(data.days[size_t(day)]);
    return item.kind == HouseItem::Kind::Job ? placed(item.lanes, top + 1, top + m_dayHeight * 0.58, 0)
                                             : placed(item.lanes, top + m_dayHeight * 0.64, top + m_dayHeight * 0.94, 0);
}

void HouseLayout::placeItems(const HouseData& data) {
    for (const HouseItem& item : data.items) {
        Placed place = placedInTime(item);
        if (item.conflict) {
            // The later of two that claim the same lanes steps aside, so that both can be seen.
            for (size_t i = 0; i < m_items.size(); ++i) {
                const bool covered = data.items[i].conflict && m_items[i].rect.intersects(place.rect);
                if (covered) place.rect.setLeft(place.rect.left() + std::min(10.0, place.rect.width() / 4));
            }
            if (place.parts.size() == 1) place.parts.front() = place.rect;
        }
        m_items.push_back(std::move(place));
    }
}

void HouseLayout::placeInRows(const HouseData& data) {
    struct Row {
        std::vector<LaneSet> tracks;
    };
    std::map<std::pair<std::ptrdiff_t, bool>, Row> rows;
    std::vector<std::pair<std::pair<std::ptrdiff_t, bool>, int>> where;
    for (const HouseItem& item : data.items) {
        const auto next = std::upper_bound(data.days.begin(), data.days.end(), item.time.begin);
        const auto day = std::max<std::ptrdiff_t>(0, next - data.days.begin() - 1);
        const bool upper = item.kind == HouseItem::Kind::Job || item.kind == HouseItem::Kind::Shortfall;
        const std::pair key{day, upper};
        where.emplace_back(key, trackOf(item.lanes, rows[key].tracks));
    }
    for (size_t i = 0; i < data.items.size(); ++i) {
        const auto& [key, track] = where[i];
        const double top = y(data.days[size_t(key.first)]) + (key.second ? 1 : m_dayHeight * 0.64);
        const double height = key.second ? m_dayHeight * 0.58 : m_dayHeight * 0.30;
        const double share = height / double(rows[key].tracks.size());
        const bool outage = data.items[i].kind == HouseItem::Kind::Outage;
        const double bottom = outage ? y(data.items[i].time.end) : top + (track + 1) * share - 1;
        m_items.push_back(placed(data.items[i].lanes, outage ? y(data.items[i].time.begin) : top + track * share, bottom, 0));
    }
}

}  // namespace laneward
