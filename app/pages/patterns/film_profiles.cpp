#include "app/pages/patterns/film_profiles.h"

#include "core/documents/film_words.h"

#include <QPainter>
#include <QPainterPath>

namespace laneward {

namespace {

/// The first film is a full line, what is beside it dashed, a difference dotted: told apart without colour.
Qt::PenStyle styleOf(size_t film, bool isDifference) {
    if (isDifference) return Qt::DotLine;
    return film == 0 ? Qt::SolidLine : Qt::DashLine;
}

}  // namespace

FilmProfiles::FilmProfiles(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Film across the boards and along a board"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

QSize FilmProfiles::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 26, fontMetrics().height() * 12}; }

void FilmProfiles::setFilms(const std::vector<ShownFilm>* films, const Speech& speech) {
    m_films = films;
    m_speech = speech;
    m_least = 0;
    m_most = 0;
    for (const ShownFilm& shown : *films) {
        const FilmScale scale = shown.isDifference ? differenceScale(shown.film) : scaleFor(shown.film);
        if (scale.most > m_most) {
            m_most = scale.most;
            m_step = scale.step;
        }
        if (shown.isDifference) m_least = std::min(m_least, -scale.most);
    }
    update();
}

void FilmProfiles::setCursorAt(int board, Micrometres distance) {
    m_board = board;
    m_distance = distance;
    update();
}

FilmProfiles::Plot FilmProfiles::plot(const QRectF& area) const {
    const QFontMetricsF metrics(font());
    const double left = metrics.horizontalAdvance("-00.0") + 6;
    return {area.adjusted(left, metrics.height() + 4, -6, -metrics.height() - 4), m_least, m_most, m_step};
}

void FilmProfiles::paintFrame(QPainter& painter, const Plot& plot, const QString& title) const {
    const Shades shades = shadesOf(palette());
    const double height = painter.fontMetrics().height();
    for (double units = plot.least; units <= plot.most + plot.step / 2; units += plot.step) {
        painter.setPen(shades.line);
        painter.drawLine(QPointF(plot.area.left(), plot.y(units)), QPointF(plot.area.right(), plot.y(units)));
        painter.setPen(shades.quiet);
        painter.drawText(QRectF(0, plot.y(units) - height / 2, plot.area.left() - 4, height), Qt::AlignRight | Qt::AlignVCenter,
                         unitsText(units, m_speech));
    }
    painter.setPen(shades.text);
    const QRectF head(plot.area.left(), plot.area.top() - height - 4, plot.area.width(), height + 2);
    painter.drawText(head, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(title, Qt::ElideRight, int(head.width())));
    painter.setPen(shades.edge);
    painter.drawRect(plot.area);
}

void FilmProfiles::paintAcross(QPainter& painter, const Plot& plot) const {
    const Shades shades = shadesOf(palette());
    const double width = plot.area.width() / boards;
    const auto right = [&](int board) { return plot.area.right() - width * (board - 1); };
    for (size_t i = 0; i < m_films->size(); ++i) {
        const ShownFilm& shown = (*m_films)[i];
        const BoardValues values = crossSection(shown.film, m_distance);
        QPainterPath path;
        for (int board = 1; board <= boards; ++board) {
            const double y = plot.y(values[size_t(board - 1)]);
            board == 1 ? path.moveTo(right(board), y) : path.lineTo(right(board), y);
            path.lineTo(right(board) - width, y);
        }
        painter.setPen(QPen(i == 0 ? shades.text : shades.job, 2, styleOf(i, shown.isDifference)));
        painter.drawPath(path);
    }
    painter.setPen(shades.quiet);
    for (int board : boardMarks(width, painter.fontMetrics())) {
        const QRectF place(right(board) - width / 2 - 20, plot.area.bottom() + 2, 40, painter.fontMetrics().height());
        painter.drawText(place, Qt::AlignHCenter | Qt::AlignTop, m_speech.locale.toString(board));
    }
    painter.setPen(QPen(shades.focus, 1, Qt::DashLine));
    const double x = right(m_board) - width / 2;
    painter.drawLine(QPointF(x, plot.area.top()), QPointF(x, plot.area.bottom()));
}

void FilmProfiles::paintAlong(QPainter& painter, const Plot& plot) const {
    const Shades shades = shadesOf(palette());
    const auto x = [&](Micrometres at) {
        return plot.area.left() + plot.area.width() * double(at.value) / double(laneLength.value);
    };
    for (size_t i = 0; i < m_films->size(); ++i) {
        const ShownFilm& shown = (*m_films)[i];
        const std::vector<double> values = boardProfile(shown.film, m_board);
        QPainterPath path;
        for (int cell = 0; cell < shown.film.cells; ++cell) {
            const double y = plot.y(values[size_t(cell)]);
            cell == 0 ? path.moveTo(x(shown.film.begin(cell)), y) : path.lineTo(x(shown.film.begin(cell)), y);
            path.lineTo(x(shown.film.end(cell)), y);
        }
        painter.setPen(QPen(i == 0 ? shades.text : shades.job, 2, styleOf(i, shown.isDifference)));
        painter.drawPath(path);
    }
    painter.setPen(shades.quiet);
    const bool metric = m_speech.units == UnitSystem::Metric;
    Micrometres step = metric ? Micrometres{3'000'000} : feet(10);
    while (x(step) - x({}) < 1.4 * painter.fontMetrics().horizontalAdvance(lengthText(laneLength, m_speech)))
        step = step * 2;
    for (Micrometres at; at <= laneLength; at += step) {
        const QRectF place(x(at) - 30, plot.area.bottom() + 2, 60, painter.fontMetrics().height());
        painter.drawText(place, Qt::AlignHCenter | Qt::AlignTop, lengthText(at, m_speech));
    }
    painter.setPen(QPen(shades.focus, 1, Qt::DashLine));
    painter.drawLine(QPointF(x(m_distance), plot.area.top()), QPointF(x(m_distance), plot.area.bottom()));
}

void FilmProfiles::paintEvent(QPaintEvent*) {
    if (!m_films || m_films->empty()) return;
    QPainter painter(this);
    painter.setLayoutDirection(Qt::LeftToRight);
    painter.setRenderHint(QPainter::Antialiasing);
    const double half = height() / 2.0;
    const Plot across = plot({0, 0, double(width()), half});
    const Plot along = plot({0, half, double(width()), half});
    paintFrame(painter, across, tr("Across, at %1").arg(lengthText(m_distance, m_speech)));
    paintAcross(painter, across);
    paintFrame(painter, along, tr("Along board %1").arg(m_speech.locale.toString(m_board)));
    paintAlong(painter, along);
}

}  // namespace laneward
