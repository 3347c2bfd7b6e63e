#include "app/pages/calendar/week_layout.h"

#include <algorithm>

namespace laneward {

namespace {

constexpr double daySeconds = 86'400;
constexpr double leastEvent = 18;
constexpr double leastMark = 7;
constexpr double leastSecond = 11;  // the second layer's marks differ by more than a fill
constexpr double secondOverhang = 9;

bool isBackground(const HouseItem& item) {
    return item.kind == HouseItem::Kind::Outage || (item.kind == HouseItem::Kind::Event && item.event == EventKind::Closure);
}

}  // namespace

/// Blocks that overlap in time, in as few parallel tracks as they need.
struct WeekLayout::Cluster {
    std::vector<size_t> members;
    std::vector<double> trackEnds;
    std::vector<int> tracks;
    double end = 0;
};

int WeekLayout::freeTrack(Cluster& cluster, const QRectF& rect) {
    for (size_t track = 0; track < cluster.trackEnds.size(); ++track) {
        if (cluster.trackEnds[track] > rect.top() + 0.5) continue;
        cluster.trackEnds[track] = rect.bottom();
        return int(track);
    }
    cluster.trackEnds.push_back(rect.bottom());
    return int(cluster.trackEnds.size()) - 1;
}

WeekLayout::WeekLayout(const HouseData& data, const DateRange& days, QTime dayBegins, const WeekMetrics& metrics)
    : m_metrics(metrics), m_days(days), m_begins(dayBegins), m_items(data.items.size()) {
    place(data);
}

QRectF WeekLayout::column(int day) const {
    const double width = (m_metrics.width - m_metrics.gutter) / qMax(1, m_days.days());
    const int place = m_metrics.mirrored ? m_days.days() - 1 - day : day;
    return {(m_metrics.mirrored ? 0 : m_metrics.gutter) + place * width, 0, width, height()};
}

double WeekLayout::y(const LocalTime& wall, int day) const {
    const QDate date = m_days.first.addDays(day);
    const double seconds = double(date.daysTo(wall.date)) * daySeconds + m_begins.secsTo(wall.time);
    return seconds / 3'600 * m_metrics.hourHeight;
}

int WeekLayout::dayOf(const LocalTime& wall) const {
    const QDate date = wall.time < m_begins ? wall.date.addDays(-1) : wall.date;
    return int(m_days.first.daysTo(date));
}

int WeekLayout::dayAt(double x) const {
    const double width = column(0).width();
    const int place = int((x - (m_metrics.mirrored ? 0 : m_metrics.gutter)) / width);
    return qBound(0, m_metrics.mirrored ? m_days.days() - 1 - place : place, m_days.days() - 1);
}

LocalTime WeekLayout::timeAt(const QPointF& point) const {
    const std::int64_t minute = std::clamp<std::int64_t>(std::int64_t(point.y() / m_metrics.hourHeight * 60), 0, 24 * 60 - 1);
    return shifted({m_days.first.addDays(dayAt(point.x())), m_begins}, minutes(minute));
}

QRectF WeekLayout::rectOf(const LocalTime& start, Seconds duration) const {
    const int day = dayOf(start);
    QRectF rect = column(day).adjusted(2, 0, -m_metrics.jobStrip - 2, 0);
    rect.setTop(y(start, day));
    rect.setHeight(double(duration.value) / 3'600 * m_metrics.hourHeight);
    return rect;
}

std::optional<QRectF> WeekLayout::spanOf(const HouseItem& item, const Zone& zone, int day) const {
    const double top = std::max(0.0, y(zone.toLocal(item.time.begin), day));
    const double bottom = std::min(height(), y(zone.toLocal(item.time.end), day));
    if (bottom <= 0 || top >= height() || bottom <= top) return std::nullopt;
    QRectF rect = column(day).adjusted(1, 0, -1, 0);
    rect.setTop(top);
    rect.setBottom(bottom);
    return rect;
}

QRectF WeekLayout::stripOf(int day) const {
    const QRectF whole = column(day);
    const double strip = m_metrics.jobStrip;
    return m_metrics.mirrored ? QRectF(whole.left() + 1, 0, strip - 2, 0) : QRectF(whole.right() - strip + 1, 0, strip - 2, 0);
}

double WeekLayout::leastJob() const { return m_metrics.jobStrip > 60 ? m_metrics.lineHeight + 3 : leastMark; }

std::vector<QRectF> WeekLayout::markRects(const HouseItem& job, const Zone& zone) const {
    std::vector<QRectF> rects;
    for (int day = 0; day < m_days.days(); ++day) {
        const std::optional<QRectF> span = spanOf(job, zone, day);
        if (!span) continue;
        QRectF rect =
            stripOf(day).adjusted(m_metrics.mirrored ? 0 : -secondOverhang, 0, m_metrics.mirrored ? secondOverhang : 0, 0);
        const double missing = std::max(0.0, std::max(leastJob(), leastSecond) - span->height());
        rect.setTop(span->top() - missing / 2);
        rect.setBottom(span->bottom() + missing / 2);
        rects.push_back(rect);
    }
    return rects;
}

void WeekLayout::place(const HouseData& data) {
    for (int day = 0; day < m_days.days(); ++day) {
        std::vector<size_t> events;
        std::vector<size_t> jobs;
        for (size_t i = 0; i < data.items.size(); ++i) {
            const std::optional<QRectF> rect = spanOf(data.items[i], data.zone, day);
            if (!rect) continue;
            m_items[i].background = isBackground(data.items[i]);
            m_items[i].parts.push_back(*rect);
            if (!m_items[i].background) (data.items[i].kind == HouseItem::Kind::Event ? events : jobs).push_back(i);
        }
        const QRectF whole = column(day);
        const double strip = m_metrics.jobStrip;
        const double left = m_metrics.mirrored ? strip : 0;
        pack(data, events, whole.adjusted(left + 2, 0, left - strip - 2, 0), leastEvent);
        pack(data, jobs, stripOf(day), leastJob());
    }
}

void WeekLayout::pack(const HouseData& data, std::vector<size_t>& members, const QRectF& room, double least) {
    for (size_t i : members) {
        QRectF& rect = m_items[i].parts.back();
        const double missing = std::max(0.0, least - rect.height());
        rect.adjust(0, -missing / 2, 0, missing / 2);
    }
    std::stable_sort(members.begin(), members.end(), [&](size_t a, size_t b) {
        const double topA = m_items[a].parts.back().top();
        const double topB = m_items[b].parts.back().top();
        return topA != topB ? topA < topB : data.items[a].lanes.first() < data.items[b].lanes.first();
    });
    std::vector<Cluster> clusters;
    for (size_t i : members) {
        const QRectF& rect = m_items[i].parts.back();
        if (clusters.empty() || rect.top() >= clusters.back().end - 0.5) clusters.emplace_back();
        Cluster& cluster = clusters.back();
        cluster.members.push_back(i);
        cluster.tracks.push_back(freeTrack(cluster, rect));
        cluster.end = std::max(cluster.end, rect.bottom());
    }
    for (const Cluster& cluster : clusters)
        spread(cluster, room);
}

void WeekLayout::spread(const Cluster& cluster, const QRectF& room) {
    const double width = room.width() / double(cluster.trackEnds.size());
    for (size_t i = 0; i < cluster.members.size(); ++i) {
        QRectF& rect = m_items[cluster.members[i]].parts.back();
        const double track = m_metrics.mirrored ? double(cluster.trackEnds.size()) - 1 - cluster.tracks[i] : cluster.tracks[i];
        rect.setLeft(room.left() + track * width);
        rect.setWidth(width - (cluster.trackEnds.size() > 1 ? 2 : 0));
    }
}

}  // namespace laneward
