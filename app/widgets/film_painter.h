// The film map: the lane seen from above with the foul line below and board 1 on the right, as from the approach, whichever way
// the language runs; and its legend in units.
//
//     const FilmScale scale = scaleFor(film);
//     const FilmFrame frame = filmFrame(rect(), painter.fontMetrics());
//     paintFilm(painter, frame, filmImage(film, scale, colours), scale, look);      // keep the image while the film stays
//     frame.boardAt(x), frame.distanceAt(y)                  // of the cursor
#pragma once

#include "app/widgets/film_colours.h"
#include "app/widgets/shades.h"
#include "core/documents/wording.h"
#include "core/patterns/film.h"

#include <QFontMetricsF>
#include <QImage>
#include <QRectF>

class QPainter;

namespace laneward {

/// What the ends of the colours stand for.
struct FilmScale {
    double most = 1;  ///< units; a round number above the largest value
    bool isDifference = false;
    double step = 0.5;  ///< between the legend's figures
};

/// Round, so that the legend has four to eleven figures. `other` shares the scale of a film beside it.
FilmScale scaleFor(const Film& film, const Film* other = nullptr);
FilmScale differenceScale(const Film& difference);

/// One pixel a cell: 39 wide, foul line in the lowest row.
QImage filmImage(const Film& film, const FilmScale& scale, const FilmColours& colours);

/// Where the parts of a map lie, and what lies at a place.
struct FilmFrame {
    QRectF lane;
    QRectF legend;

    int boardAt(double x) const;             ///< 1..39, the nearest
    Micrometres distanceAt(double y) const;  ///< 0 to 60 ft, the nearest
    QRectF boardRect(int board) const;       ///< the whole length of a board
    double yOf(Micrometres distance) const;
};
FilmFrame filmFrame(const QRectF& area, const QFontMetricsF& metrics);
/// Boards whose numbers have room beside each other.
std::vector<int> boardMarks(double boardWidth, const QFontMetricsF& metrics);

/// How it is painted.
struct FilmLook {
    Shades shades;
    Speech speech;
};
/// Map, figures at its sides and legend. `image` as filmImage() made it.
void paintFilm(QPainter& painter, const FilmFrame& frame, const QImage& image, const FilmScale& scale, const FilmLook& look);

/// A picture of its own for files: title, map and legend on white. Needs a QGuiApplication (for fonts).
QByteArray filmPng(const Film& film, const QString& title, const Speech& speech);

}  // namespace laneward
