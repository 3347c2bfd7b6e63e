#include "app/pages/patterns/film_view.h"

#include "core/documents/film_words.h"

#include <QMouseEvent>
#include <QPainter>

namespace laneward {

namespace {

constexpr double apart = 12;
constexpr int stepsPerFoot = 2;

}  // namespace

FilmView::FilmView(QWidget* parent) : QWidget(parent) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Film map"));
}

QSize FilmView::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 32, fontMetrics().height() * 14}; }

QSize FilmView::sizeHint() const { return {fontMetrics().averageCharWidth() * 48, fontMetrics().height() * 26}; }

void FilmView::setFilms(std::vector<ShownFilm> films, const Speech& speech) {
    m_films = std::move(films);
    m_speech = speech;
    forget();
    setAccessibleDescription(readout());
}

void FilmView::forget() {
    m_maps = {};
    update();
}

void FilmView::setCursorAt(int board, Micrometres distance) {
    board = std::clamp(board, 1, boards);
    distance = std::clamp(distance, Micrometres{0}, laneLength);
    if (board == m_board && distance == m_distance) return;
    m_board = board;
    m_distance = distance;
    setAccessibleDescription(readout());
    update();
    Q_EMIT cursorMoved(m_board, m_distance);
}

QString FilmView::readout() const {
    QStringList values;
    for (const ShownFilm& shown : m_films) {
        const int cell = shown.film.cellAt(m_distance);
        const double units = shown.film.units(m_board, cell);
        const QString micrometres = m_speech.locale.toString(shown.film.micrometres(m_board, cell), 'f', 2);
        values << tr("%1: %2 units, %3 µm", "pattern, film").arg(shown.title, unitsText(units, m_speech), micrometres);
    }
    return tr("Board %1, %2: %3").arg(m_speech.locale.toString(m_board), lengthText(m_distance, m_speech), values.join(tr("; ")));
}

/// Side by side in their order, whichever way the language runs: lanes never mirror.
QRectF FilmView::areaOf(size_t film) const {
    const double each = (width() - apart * double(m_films.size() - 1)) / double(m_films.size());
    const double title = fontMetrics().height() + 4;
    return {(each + apart) * double(film), title, each, height() - title};
}

FilmFrame FilmView::frameOf(size_t film) const { return filmFrame(areaOf(film), QFontMetricsF(font())); }

void FilmView::paintMaps() {
    m_maps = QPixmap(size() * devicePixelRatioF());
    m_maps.setDevicePixelRatio(devicePixelRatioF());
    m_maps.fill(Qt::transparent);
    QPainter painter(&m_maps);
    painter.setFont(font());
    const FilmLook look{shadesOf(palette()), m_speech};
    const FilmColours colours(look.shades.base);
    const Film* amounts[2] = {nullptr, nullptr};
    for (const ShownFilm& shown : m_films) {
        if (!shown.isDifference) (amounts[0] ? amounts[1] : amounts[0]) = &shown.film;
    }
    for (size_t i = 0; i < m_films.size(); ++i) {
        const ShownFilm& shown = m_films[i];
        const FilmScale scale = shown.isDifference ? differenceScale(shown.film) : scaleFor(*amounts[0], amounts[1]);
        paintFilm(painter, frameOf(i), filmImage(shown.film, scale, colours), scale, look);
        painter.setPen(look.shades.text);
        const QRectF area = areaOf(i);
        const QRectF place(area.left(), 0, area.width(), area.top());
        painter.drawText(place, Qt::AlignHCenter | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(shown.title, Qt::ElideRight, int(place.width())));
    }
}

void FilmView::paintEvent(QPaintEvent*) {
    if (m_films.empty()) return;
    if (m_maps.isNull()) paintMaps();
    QPainter painter(this);
    painter.drawPixmap(0, 0, m_maps);
    const Shades shades = shadesOf(palette());
    for (size_t i = 0; i < m_films.size(); ++i) {
        const FilmFrame frame = frameOf(i);
        const QRectF strip = frame.boardRect(m_board);
        const double y = frame.yOf(m_distance);
        // Light and dark beside each other stand out on every colour of the map.
        for (const auto& [colour, width] : {std::pair(shades.base, 3.0), std::pair(shades.text, 1.0)}) {
            painter.setPen(QPen(colour, width));
            painter.drawLine(QPointF(frame.lane.left(), y), QPointF(frame.lane.right(), y));
            painter.drawLine(QPointF(strip.center().x(), frame.lane.top()), QPointF(strip.center().x(), frame.lane.bottom()));
        }
    }
    if (hasFocus()) {
        painter.setPen(QPen(shades.focus, 2));
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void FilmView::resizeEvent(QResizeEvent*) { forget(); }

void FilmView::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) forget();
    QWidget::changeEvent(event);
}

void FilmView::follow(const QPointF& place) {
    for (size_t i = 0; i < m_films.size(); ++i) {
        const FilmFrame frame = frameOf(i);
        if (!frame.lane.contains(place)) continue;
        setCursorAt(frame.boardAt(place.x()), frame.distanceAt(place.y()));
    }
}

void FilmView::mouseMoveEvent(QMouseEvent* event) { follow(event->position()); }

void FilmView::mousePressEvent(QMouseEvent* event) { follow(event->position()); }

/// Board 1 lies at the right, the head pin at the top.
void FilmView::keyPressEvent(QKeyEvent* event) {
    const Micrometres step{feet(event->modifiers() & Qt::ShiftModifier ? 5 : 1).value / stepsPerFoot};
    switch (event->key()) {
        case Qt::Key_Left:
            return setCursorAt(m_board + 1, m_distance);
        case Qt::Key_Right:
            return setCursorAt(m_board - 1, m_distance);
        case Qt::Key_Up:
            return setCursorAt(m_board, m_distance + step);
        case Qt::Key_Down:
            return setCursorAt(m_board, m_distance - step);
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace laneward
