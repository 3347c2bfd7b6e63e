// Where everything in the house view stands: pure geometry, no painting, no widget.
//
// Lanes run across, lane 1 at the left in every language, pairs close together with a wider gap between pairs; time runs down.
// Units are device-independent pixels in content coordinates: x counts from the left edge of the viewport, y from the first
// moment of the range. Below `rowHeight` a day is one row: events share its lower part, jobs its upper part.
//
//     HouseLayout layout(data, metrics, dayHeightFor(HouseZoom::Day, metrics.height));
#pragma once

#include "app/widgets/house_data.h"

#include <QRectF>
#include <QSizeF>

namespace laneward {

enum class HouseZoom { Evening, Day, Week, Month, Season };

struct HouseMetrics {
    double width = 900;      ///< of the viewport
    double height = 500;     ///< of the viewport below the heads
    double lineHeight = 16;  ///< of the text
    double gutter = 60;      ///< for the hours, at the leading side
    double trailing = 12;    ///< kept free at the other side
    bool mirrored = false;   ///< the hours stand at the right; lanes never turn round
    double leastLane = 11;   ///< narrowest lane before the view scrolls sideways
};

class HouseLayout {
public:
    struct Placed {
        QRectF rect;                ///< around the widest run of adjacent lanes
        std::vector<QRectF> parts;  ///< every run, `rect` among them
    };
    struct Tick {
        double y = 0;
        Instant at;
        bool day = false;  ///< a centre's day begins
    };

    static constexpr double rowHeight = 60;  ///< a day lower than this is a row

    HouseLayout() = default;
    HouseLayout(const HouseData& data, const HouseMetrics& metrics, double dayHeight);

    QSizeF size() const { return m_size; }
    bool isRows() const { return m_dayHeight < rowHeight; }
    double dayHeight() const { return m_dayHeight; }
    double y(Instant t) const;
    Instant timeAt(double y) const;
    double laneLeft(int lane) const { return m_left[size_t(lane - 1)]; }
    double laneWidth() const { return m_laneWidth; }
    /// From the left of `first` to the right of `last`.
    QRectF across(int first, int last) const;
    /// The lane at `x`, 0 outside or between pairs.
    int laneAt(double x) const;
    double firstLane() const { return m_left.empty() ? 0 : m_left.front(); }
    double lastLane() const { return m_left.empty() ? 0 : m_left.back() + m_laneWidth; }
    /// Where an item that is not among the data's would stand by itself.
    Placed placeOf(const HouseItem& item, const HouseData& data) const;
    const std::vector<Placed>& items() const { return m_items; }
    const std::vector<Tick>& ticks() const { return m_ticks; }

private:
    void placeLanes(int lanes, const HouseMetrics& metrics);
    void placeTicks(const HouseData& data);
    void placeItems(const HouseData& data);
    Placed placedInTime(const HouseItem& item) const;
    void placeInRows(const HouseData& data);
    Placed placed(const LaneSet& lanes, double top, double bottom, double outset) const;

    std::vector<double> m_left;
    double m_laneWidth = 0;
    double m_dayHeight = 1;
    double m_lineHeight = 16;
    Span m_range;
    QSizeF m_size;
    std::vector<Placed> m_items;
    std::vector<Tick> m_ticks;
};

/// Height of 24 hours so that the level just fits the viewport (rows of a month and a season have a least height).
double dayHeightFor(HouseZoom zoom, double viewportHeight);
/// The level whose day height is nearest.
HouseZoom zoomOf(double dayHeight, double viewportHeight);

}  // namespace laneward
