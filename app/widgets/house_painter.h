// The marks of the house view. Shape says what colour says: fill tells the kind of treatment (full = clean and condition, lower
// half = condition only, outline = clean only), the edge tells its state (dashed = proposed, solid = confirmed, a moving edge =
// under way, a tick = done, torn = cut short, struck through = dropped), a notch with words tells that it is late.
#pragma once

#include "app/widgets/house_layout.h"
#include "app/widgets/shades.h"

#include <QPainter>
#include <QStaticText>

namespace laneward {

/// Text of one item, cut to its width once and drawn many times.
struct ItemText {
    QStaticText title;
    QStaticText detail;
    QStaticText late;
};

enum class Look { Plain, Hovered, Current };

struct HouseInk {
    Shades shades;
    QFont font;
    QFont bold;
    bool mirrored = false;  ///< text is aligned to the right
    Instant now;            ///< how far the moving edge of a job under way has come
};

class HousePainter {
public:
    HousePainter(QPainter& painter, const HouseInk& ink) : m_painter(painter), m_ink(ink) {}

    void item(const HouseItem& item, const HouseLayout::Placed& place, const ItemText& text, Look look);
    void frame(const QRectF& rect, bool focused);

private:
    void event(const HouseItem& item, const HouseLayout::Placed& place, const ItemText& text, Look look);
    void job(const HouseItem& item, const HouseLayout::Placed& place, const ItemText& text);
    void jobFill(Treatment treatment, const QRectF& rect);
    void jobEdge(const HouseItem& item, const QRectF& rect);
    void movingEdge(const HouseItem& item, const QRectF& rect);
    void jobText(const HouseItem& item, const QRectF& rect, const ItemText& text);
    void tornEdge(const QRectF& rect);
    void lateNotch(const QRectF& rect, const ItemText& text);
    void shortfall(const HouseLayout::Placed& place, const ItemText& text);
    void outage(const HouseLayout::Placed& place, const ItemText& text);
    void line(const QRectF& room, const QStaticText& text, const QFont& font, const QColor& colour);

    QPainter& m_painter;
    const HouseInk& m_ink;
};

/// Prepares the text of an item for the room it has.
ItemText itemText(const HouseItem& item, const QRectF& rect, const HouseInk& ink);

}  // namespace laneward
