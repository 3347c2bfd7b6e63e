#include "app/paper/paper_block.h"

#include <QPainterPath>
#include <QTextLayout>

#include <cmath>

namespace laneward {

namespace {

constexpr double pointsPerInch = 72.0;

double pointSize(PaperStyle style) {
    switch (style) {
        case PaperStyle::Title:
            return 17;
        case PaperStyle::Section:
            return 11.5;
        case PaperStyle::Body:
        case PaperStyle::Strong:
            return 11;
        case PaperStyle::Small:
            return 9.5;
        case PaperStyle::Fine:
            return 8;
    }
    return 11;
}

bool isBold(PaperStyle style) {
    return style == PaperStyle::Title || style == PaperStyle::Section || style == PaperStyle::Strong;
}

/// Lays the text out in lines of `width` and returns its height; device pixels.
double layOut(QTextLayout& layout, double width) {
    double y = 0;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition(QPointF(0, y));
        y += line.height();
    }
    layout.endLayout();
    return y;
}

QTextOption options(bool rightToLeft, bool atEnd) {
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setTextDirection(rightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
    option.setAlignment(atEnd == rightToLeft ? Qt::AlignLeft | Qt::AlignAbsolute : Qt::AlignRight | Qt::AlignAbsolute);
    return option;
}

void paintCaution(QPainter& painter, const QRectF& box) {
    QPainterPath triangle(QPointF(box.center().x(), box.top()));
    triangle.lineTo(box.bottomRight());
    triangle.lineTo(box.bottomLeft());
    triangle.closeSubpath();
    painter.drawPath(triangle);
    const double x = box.center().x();
    painter.drawLine(QPointF(x, box.top() + box.height() * 0.38), QPointF(x, box.top() + box.height() * 0.66));
    painter.drawPoint(QPointF(x, box.top() + box.height() * 0.82));
}

}  // namespace

Paper::Paper(const QPagedPaintDevice& device, bool rightToLeft)
    : m_device(device),
      m_rightToLeft(rightToLeft),
      m_scale(device.logicalDpiX() / pointsPerInch),
      m_width(device.width() / m_scale),
      m_height(device.height() / m_scale) {}

QFont Paper::font(PaperStyle style) const {
    QFont font;
    // The first of these that is installed; they are narrower than most defaults, and have figures of one width.
    font.setFamilies({"Noto Sans", "Liberation Sans", "Open Sans", "DejaVu Sans Condensed", font.family()});
    font.setPointSizeF(pointSize(style));
    font.setBold(isBold(style));
    return font;
}

double Paper::heightOf(const QString& text, PaperStyle style, double width) const {
    QTextLayout layout(text, font(style), &m_device);
    layout.setTextOption(options(m_rightToLeft, false));
    return layOut(layout, width * m_scale) / m_scale;
}

double Paper::widthOf(const QString& text, PaperStyle style) const {
    QTextLayout layout(text, font(style), &m_device);
    layout.setTextOption(options(m_rightToLeft, false));
    layOut(layout, 1e6);
    return layout.lineCount() == 0 ? 0 : std::ceil(layout.lineAt(0).naturalTextWidth() / m_scale) + 1;
}

double Paper::put(PaperBlock& block, const PaperSpot& spot, const QString& text, PaperStyle style) const {
    const double height = heightOf(text, style, spot.width);
    block.texts.push_back({QRectF(spot.x, spot.y, spot.width, height), text, style, false});
    return height;
}

QRectF Paper::onDevice(const QRectF& box, double top) const {
    const double x = m_rightToLeft ? m_width - box.right() : box.x();
    return {x * m_scale, (box.y() + top) * m_scale, box.width() * m_scale, box.height() * m_scale};
}

void Paper::paintText(QPainter& painter, const PaperText& text, double top) const {
    const QRectF box = onDevice(text.box, top);
    QTextLayout layout(text.text, font(text.style), &m_device);
    layout.setTextOption(options(m_rightToLeft, text.atEnd));
    layOut(layout, box.width());
    layout.draw(&painter, box.topLeft());
}

void Paper::paintMark(QPainter& painter, const PaperMark& mark, double top) const {
    const QRectF box = onDevice(mark.box, top);
    const double thin = mark.kind == PaperMark::Kind::Blank ? 0.6 : 1.0;
    painter.setPen(QPen(Qt::black, thin * m_scale));
    painter.setBrush(Qt::NoBrush);
    switch (mark.kind) {
        case PaperMark::Kind::TickBox:
        case PaperMark::Kind::Frame:
            painter.drawRect(box);
            break;
        case PaperMark::Kind::Ticked:
            painter.drawRect(box);
            painter.drawPolyline(QPolygonF({QPointF(box.left(), box.center().y()), QPointF(box.center().x(), box.bottom()),
                                            QPointF(box.right(), box.top())}));
            break;
        case PaperMark::Kind::TornBox:
            painter.drawRect(box);
            painter.drawLine(box.bottomLeft(), box.topRight());
            break;
        case PaperMark::Kind::Blank:
            painter.drawLine(box.bottomLeft(), box.bottomRight());
            break;
        case PaperMark::Kind::Rule:
            painter.drawLine(box.topLeft(), box.topRight());
            break;
        case PaperMark::Kind::Caution:
            paintCaution(painter, box);
            break;
    }
}

void Paper::paint(QPainter& painter, const PaperBlock& block, double top) const {
    for (const PaperMark& mark : block.marks)
        paintMark(painter, mark, top);
    painter.setPen(Qt::black);
    for (const PaperText& text : block.texts)
        paintText(painter, text, top);
}

}  // namespace laneward
