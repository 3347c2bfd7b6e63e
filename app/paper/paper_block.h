// A page is laid out as a list of blocks that are never torn apart. All measures are points (1/72 inch) from the top and from
// the side on which reading begins; turning the page for right-to-left languages happens when it is painted.
#pragma once

#include <QFont>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QRectF>
#include <QString>

#include <vector>

namespace laneward {

enum class PaperStyle { Body, Strong, Small, Fine, Section, Title };

struct PaperText {
    QRectF box;
    QString text;
    PaperStyle style = PaperStyle::Body;
    bool atEnd = false;  ///< aligned to the side on which reading ends
};

struct PaperMark {
    enum class Kind { TickBox, Ticked, TornBox, Blank, Rule, Caution, Frame };
    Kind kind = Kind::Rule;
    QRectF box;
};

struct PaperBlock {
    double height = 0;
    std::vector<PaperText> texts;
    std::vector<PaperMark> marks;
    bool keepWithNext = false;
};

/// Where a text begins, and the width it may take.
struct PaperSpot {
    double x = 0;
    double y = 0;
    double width = 0;
};

/// Measures and paints text on one device.
class Paper {
public:
    Paper(const QPagedPaintDevice& device, bool rightToLeft);

    double width() const { return m_width; }
    double height() const { return m_height; }
    double heightOf(const QString& text, PaperStyle style, double width) const;
    double widthOf(const QString& text, PaperStyle style) const;
    /// Puts text into a block at (x, y) and says how high it became.
    double put(PaperBlock& block, const PaperSpot& spot, const QString& text, PaperStyle style) const;

    void paint(QPainter& painter, const PaperBlock& block, double top) const;

private:
    QFont font(PaperStyle style) const;
    QRectF onDevice(const QRectF& box, double top) const;
    void paintText(QPainter& painter, const PaperText& text, double top) const;
    void paintMark(QPainter& painter, const PaperMark& mark, double top) const;

    const QPagedPaintDevice& m_device;
    bool m_rightToLeft = false;
    double m_scale = 1;  ///< device pixels a point
    double m_width = 0;
    double m_height = 0;
};

}  // namespace laneward
