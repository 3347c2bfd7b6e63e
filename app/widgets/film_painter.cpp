#include "app/widgets/film_painter.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr int wantedFigures = 5;
constexpr double gap = 6;
constexpr double legendWidth = 18;
constexpr QSize pictureSize{640, 960};

/// 1, 2 or 5 times a power of ten, at least `least`.
double roundStep(double least) {
    const double power = std::pow(10, std::floor(std::log10(least)));
    for (double factor : {1.0, 2.0, 5.0}) {
        if (factor * power >= least * (1 - 1e-9)) return factor * power;
    }
    return 10 * power;
}

FilmScale scaleTo(double largest, bool isDifference) {
    FilmScale scale;
    scale.isDifference = isDifference;
    scale.step = roundStep(std::max(largest, 0.05) / wantedFigures);
    scale.most = std::ceil(std::max(largest, 0.05) / scale.step - 1e-9) * scale.step;
    return scale;
}

QString figure(double units, const FilmScale& scale, const Speech& speech) {
    const int digits = std::clamp(int(-std::floor(std::log10(scale.step) + 1e-9)), 0, 3);
    return (scale.isDifference && units > scale.step / 2 ? QString("+") : QString()) + speech.locale.toString(units, 'f', digits);
}

/// Every 10 ft, or every 3 m.
std::vector<Micrometres> distanceMarks(UnitSystem units) {
    const Micrometres step = units == UnitSystem::Metric ? Micrometres{3'000'000} : feet(10);
    std::vector<Micrometres> marks;
    for (Micrometres at; at <= laneLength; at += step)
        marks.push_back(at);
    return marks;
}

void paintDistances(QPainter& painter, const FilmFrame& frame, const FilmLook& look) {
    const double height = painter.fontMetrics().height();
    for (const Micrometres& mark : distanceMarks(look.speech.units)) {
        const double y = frame.yOf(mark);
        painter.setPen(look.shades.edge);
        painter.drawLine(QPointF(frame.lane.left() - gap / 2, y), QPointF(frame.lane.left(), y));
        painter.setPen(look.shades.text);
        const QRectF place(0, y - height / 2, frame.lane.left() - gap, height);
        painter.drawText(place, Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip, lengthText(mark, look.speech));
    }
}

}  // namespace

std::vector<int> boardMarks(double boardWidth, const QFontMetricsF& metrics) {
    const double place = 1.5 * metrics.horizontalAdvance("39");
    if (4 * boardWidth > place) return {1, 5, 10, 15, 20, 25, 30, 35, 39};
    if (9 * boardWidth > place) return {1, 10, 20, 30, 39};
    return {1, 20, 39};
}

namespace {

void paintBoards(QPainter& painter, const FilmFrame& frame, const FilmLook& look) {
    painter.setPen(look.shades.text);
    for (int board : boardMarks(frame.boardRect(1).width(), painter.fontMetrics())) {
        const QRectF strip = frame.boardRect(board);
        const QRectF place(strip.center().x() - 20, frame.lane.bottom() + gap / 2, 40, painter.fontMetrics().height());
        painter.drawText(place, Qt::AlignHCenter | Qt::AlignTop | Qt::TextDontClip, look.speech.locale.toString(board));
    }
}

void paintLegend(QPainter& painter, const FilmFrame& frame, const FilmScale& scale, const FilmLook& look) {
    const FilmColours colours(look.shades.base);
    QImage bar(1, FilmColours::steps, QImage::Format_RGB32);
    for (int y = 0; y < bar.height(); ++y) {
        const double part = 1 - double(y) / (bar.height() - 1);
        bar.setPixel(0, y, scale.isDifference ? colours.difference(2 * part - 1) : colours.amount(part));
    }
    painter.drawImage(frame.legend, bar);
    painter.setPen(look.shades.edge);
    painter.drawRect(frame.legend);
    const double least = scale.isDifference ? -scale.most : 0;
    const double height = painter.fontMetrics().height();
    for (double units = least; units <= scale.most + scale.step / 2; units += scale.step) {
        const double y = frame.legend.bottom() - frame.legend.height() * (units - least) / (scale.most - least);
        painter.setPen(look.shades.edge);
        painter.drawLine(QPointF(frame.legend.right(), y), QPointF(frame.legend.right() + gap / 2, y));
        painter.setPen(look.shades.text);
        painter.drawText(QRectF(frame.legend.right() + gap, y - height / 2, 60, height),
                         Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, figure(units, scale, look.speech));
    }
    const QRectF name(frame.legend.left(), frame.legend.top() - 1.6 * height, 100, height);
    painter.drawText(name, Qt::AlignLeft | Qt::AlignBottom | Qt::TextDontClip, QCoreApplication::translate("film", "Units"));
}

}  // namespace

FilmScale scaleFor(const Film& film, const Film* other) {
    return scaleTo(std::max(film.most(), other ? other->most() : 0), false);
}

FilmScale differenceScale(const Film& difference) {
    double largest = 0;
    for (const FilmRow& row : difference.rows) {
        for (double value : row)
            largest = std::max(largest, std::abs(value));
    }
    return scaleTo(largest, true);
}

QImage filmImage(const Film& film, const FilmScale& scale, const FilmColours& colours) {
    QImage image(boards, std::max(1, film.cells), QImage::Format_RGB32);
    for (int cell = 0; cell < film.cells; ++cell) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(film.cells - 1 - cell));
        for (int board = 1; board <= boards; ++board) {
            const double part = film.units(board, cell) / scale.most;
            line[boards - board] = scale.isDifference ? colours.difference(part) : colours.amount(part);
        }
    }
    return image;
}

int FilmFrame::boardAt(double x) const {
    return std::clamp(int(std::floor((lane.right() - x) / lane.width() * boards)) + 1, 1, boards);
}

Micrometres FilmFrame::distanceAt(double y) const {
    const double part = std::clamp((lane.bottom() - y) / lane.height(), 0.0, 1.0);
    return {std::llround(part * double(laneLength.value))};
}

QRectF FilmFrame::boardRect(int board) const {
    const double width = lane.width() / boards;
    return {lane.right() - board * width, lane.top(), width, lane.height()};
}

double FilmFrame::yOf(Micrometres distance) const {
    return lane.bottom() - lane.height() * double(distance.value) / double(laneLength.value);
}

FilmFrame filmFrame(const QRectF& area, const QFontMetricsF& metrics) {
    const double left = metrics.horizontalAdvance("00.0 m") + 2 * gap;
    const double right = 4 * gap + legendWidth + metrics.horizontalAdvance("+00.0") + gap;
    const double edge = metrics.height();
    FilmFrame frame;
    frame.lane = area.adjusted(left, edge, -right, -edge - gap);
    frame.legend = QRectF(frame.lane.right() + 3 * gap, frame.lane.top() + 2 * edge, legendWidth, frame.lane.height() / 2);
    return frame;
}

void paintFilm(QPainter& painter, const FilmFrame& frame, const QImage& image, const FilmScale& scale, const FilmLook& look) {
    painter.save();
    painter.setLayoutDirection(Qt::LeftToRight);
    painter.setRenderHint(QPainter::SmoothPixmapTransform, false);
    painter.setRenderHint(QPainter::LosslessImageRendering);  // edges of cells stay sharp on paper
    painter.drawImage(frame.lane, image);
    painter.setPen(look.shades.edge);
    painter.drawRect(frame.lane);
    paintDistances(painter, frame, look);
    paintBoards(painter, frame, look);
    paintLegend(painter, frame, scale, look);
    painter.restore();
}

QByteArray filmPng(const Film& film, const QString& title, const Speech& speech) {
    const FilmLook look{paperShades(), speech};
    QImage picture(pictureSize, QImage::Format_RGB32);
    picture.fill(look.shades.base);
    QPainter painter(&picture);
    const double top = 2 * painter.fontMetrics().height();
    const FilmFrame frame = filmFrame(QRectF(picture.rect()).adjusted(gap, top, -gap, -gap), painter.fontMetrics());
    const FilmScale scale = scaleFor(film);
    painter.setPen(look.shades.text);
    painter.drawText(QRectF(gap, gap, picture.width() - 2 * gap, top), Qt::AlignHCenter | Qt::TextSingleLine, title);
    paintFilm(painter, frame, filmImage(film, scale, FilmColours(look.shades.base)), scale, look);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    picture.save(&buffer, "PNG");
    return bytes;
}

}  // namespace laneward
