// Film maps under one cursor: a pattern, another beside it, or their difference. The mouse or the arrow keys move the cursor; the
// maps are painted once and kept, so that following the mouse costs a cross of lines.
#pragma once

#include "app/widgets/film_painter.h"

#include <QPixmap>
#include <QWidget>

namespace laneward {

struct ShownFilm {
    QString title;
    Film film;
    bool isDifference = false;
};

class FilmView : public QWidget {
    Q_OBJECT

public:
    explicit FilmView(QWidget* parent = nullptr);

    /// Left to right; amounts share one scale.
    void setFilms(std::vector<ShownFilm> films, const Speech& speech);
    const std::vector<ShownFilm>& films() const { return m_films; }

    int board() const { return m_board; }
    Micrometres distance() const { return m_distance; }
    void setCursorAt(int board, Micrometres distance);
    /// The cursor and what lies there, in words.
    QString readout() const;

    QSize minimumSizeHint() const override;
    QSize sizeHint() const override;

Q_SIGNALS:
    void cursorMoved(int board, laneward::Micrometres distance);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void forget();
    void paintMaps();
    QRectF areaOf(size_t film) const;
    FilmFrame frameOf(size_t film) const;
    void follow(const QPointF& place);

    std::vector<ShownFilm> m_films;
    Speech m_speech;
    QPixmap m_maps;  ///< painted when it is first needed
    int m_board = 20;
    Micrometres m_distance = feet(15);
};

}  // namespace laneward
