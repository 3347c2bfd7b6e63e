// Where everything in the day and week views stands: one column a day, wall time down, events side by side where they overlap,
// jobs in a strip at the column's trailing edge. Pure geometry in content coordinates; y = 0 is the beginning of the centre's
// day.
//
// Wall time is used on purpose: all columns of a week agree on where 19:00 is, whatever the clocks did in between.
#pragma once

#include "app/widgets/house_data.h"

#include <QRectF>

namespace laneward {

struct WeekMetrics {
    double width = 900;
    double gutter = 56;
    double jobStrip = 14;  ///< width kept for jobs in each column
    double hourHeight = 44;
    double lineHeight = 16;
    bool mirrored = false;  ///< days run from right to left
};

class WeekLayout {
public:
    struct Placed {
        std::vector<QRectF> parts;  ///< one per day that it touches
        bool background = false;    ///< closures and outages lie under the rest
    };

    WeekLayout() = default;
    WeekLayout(const HouseData& data, const DateRange& days, QTime dayBegins, const WeekMetrics& metrics);

    double height() const { return 24 * m_metrics.hourHeight; }
    QRectF column(int day) const;  ///< the whole column, as high as the day
    double y(const LocalTime& wall, int day) const;
    /// Wall time at a point, to the minute; dates of times after midnight are the next day's.
    LocalTime timeAt(const QPointF& point) const;
    int dayAt(double x) const;                                      ///< clamped to the columns
    int dayOf(const LocalTime& wall) const;                         ///< may lie outside the columns
    QRectF rectOf(const LocalTime& start, Seconds duration) const;  ///< a whole column wide
    /// Where a job that is not among the items would stand: the whole job strip and a little more, one part per day.
    std::vector<QRectF> markRects(const HouseItem& job, const Zone& zone) const;
    const std::vector<Placed>& items() const { return m_items; }
    const DateRange& days() const { return m_days; }
    QTime dayBegins() const { return m_begins; }
    double hourHeight() const { return m_metrics.hourHeight; }

private:
    struct Cluster;

    void place(const HouseData& data);
    void pack(const HouseData& data, std::vector<size_t>& members, const QRectF& room, double least);
    void spread(const Cluster& cluster, const QRectF& room);
    static int freeTrack(Cluster& cluster, const QRectF& rect);
    QRectF stripOf(int day) const;
    double leastJob() const;
    std::optional<QRectF> spanOf(const HouseItem& item, const Zone& zone, int day) const;

    WeekMetrics m_metrics;
    DateRange m_days;
    QTime m_begins{5, 0};
    std::vector<Placed> m_items;
};

}  // namespace laneward
