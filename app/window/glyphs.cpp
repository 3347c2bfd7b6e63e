#include "app/window/glyphs.h"

#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPalette>

namespace laneward {

namespace {

// All drawn on a field of 24 x 24.
QPainterPath todayPath() {
    QPainterPath path;
    path.addEllipse(QRectF(3, 3, 18, 18));
    path.moveTo(12, 7);
    path.lineTo(12, 12);
    path.lineTo(16, 14.5);
    return path;
}

QPainterPath calendarPath() {
    QPainterPath path;
    path.addRoundedRect(QRectF(3, 5, 18, 16), 2, 2);
    path.moveTo(3, 10);
    path.lineTo(21, 10);
    for (double x : {8.0, 16.0}) {
        path.moveTo(x, 2.5);
        path.lineTo(x, 6.5);
    }
    path.addRect(QRectF(7, 13.5, 3.5, 3.5));
    return path;
}

/// Two pairs of lanes as one sees them from the approach, with a treatment across one of them.
QPainterPath lanesPath() {
    QPainterPath path;
    for (double x : {3.0, 7.5, 14.0, 18.5})
        path.addRect(QRectF(x, 3, 3, 18));
    path.moveTo(2, 14);
    path.lineTo(11.5, 14);
    return path;
}

/// A drum with what is left in it.
QPainterPath suppliesPath() {
    QPainterPath path;
    path.addEllipse(QRectF(5, 2.5, 14, 5));
    path.moveTo(5, 5);
    path.lineTo(5, 19);
    path.arcTo(QRectF(5, 16.5, 14, 5), 180, 180);
    path.lineTo(19, 5);
    path.moveTo(5, 13);
    path.arcTo(QRectF(5, 10.5, 14, 5), 180, 180);
    return path;
}

/// A gauge with its needle.
QPainterPath servicePath() {
    QPainterPath path;
    path.arcMoveTo(QRectF(2.5, 4, 19, 19), 200);
    path.arcTo(QRectF(2.5, 4, 19, 19), 200, -220);
    path.moveTo(12, 13.5);
    path.lineTo(16.5, 8);
    path.addEllipse(QRectF(10.8, 12.3, 2.4, 2.4));
    path.moveTo(6, 20.5);
    path.lineTo(18, 20.5);
    return path;
}

/// A lane with strokes of different widths across it.
QPainterPath patternsPath() {
    QPainterPath path;
    path.addRect(QRectF(6, 2.5, 12, 19));
    for (const auto& [y, reach] : {std::pair(18.0, 5.0), std::pair(14.0, 4.0), std::pair(10.0, 2.5), std::pair(6.0, 1.0)}) {
        path.moveTo(12 - reach, y);
        path.lineTo(12 + reach, y);
    }
    return path;
}

/// A page with lines that are ticked off.
QPainterPath historyPath() {
    QPainterPath path;
    path.addRoundedRect(QRectF(4, 2.5, 16, 19), 2, 2);
    for (double y : {7.5, 12.0, 16.5}) {
        path.moveTo(6.5, y);
        path.lineTo(7.7, y + 1.3);
        path.lineTo(9.7, y - 1.5);
        path.moveTo(12, y);
        path.lineTo(17.5, y);
    }
    return path;
}

QPainterPath markPath() {
    QPainterPath path;
    path.addRoundedRect(QRectF(2, 2, 20, 20), 4, 4);
    for (double x : {6.5, 10.5, 15.0}) {
        path.moveTo(x, 5.5);
        path.lineTo(x, 18.5);
    }
    path.moveTo(5, 13);
    path.lineTo(17, 13);
    return path;
}

QPainterPath pathOf(const QString& name) {
    if (name == u"today") return todayPath();
    if (name == u"calendar") return calendarPath();
    if (name == u"lanes") return lanesPath();
    if (name == u"supplies") return suppliesPath();
    if (name == u"service") return servicePath();
    if (name == u"patterns") return patternsPath();
    if (name == u"history") return historyPath();
    if (name == u"laneward") return markPath();
    QPainterPath path;
    path.addRect(QRectF(5, 5, 14, 14));
    return path;
}

class GlyphEngine : public QIconEngine {
public:
    explicit GlyphEngine(QString name) : m_name(std::move(name)) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        const QPalette palette = QGuiApplication::palette();
        const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
        const auto role = mode == QIcon::Selected ? QPalette::HighlightedText : QPalette::WindowText;
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const double side = qMin(rect.width(), rect.height());
        painter->translate(rect.center().x() + 0.5 - side / 2, rect.center().y() + 0.5 - side / 2);
        painter->scale(side / 24.0, side / 24.0);
        painter->setPen(QPen(palette.color(group, role), 1.7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter->drawPath(pathOf(m_name));
        painter->restore();
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap pixmap(size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return pixmap;
    }

    QIconEngine* clone() const override { return new GlyphEngine(m_name); }

private:
    QString m_name;
};

}  // namespace

QIcon glyph(const QString& name) { return QIcon(new GlyphEngine(name)); }

}  // namespace laneward
