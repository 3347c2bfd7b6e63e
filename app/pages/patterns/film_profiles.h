// Two plots that follow the cursor of the film maps: the film across the boards at its distance, and along its board.
#pragma once

#include "app/pages/patterns/film_view.h"

namespace laneward {

class FilmProfiles : public QWidget {
    Q_OBJECT

public:
    explicit FilmProfiles(QWidget* parent = nullptr);

    /// `films` as the view shows them; they are kept by the caller while they are shown.
    void setFilms(const std::vector<ShownFilm>* films, const Speech& speech);
    void setCursorAt(int board, Micrometres distance);

    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Plot {
        QRectF area;
        double least = 0;
        double most = 1;
        double step = 1;
        double y(double units) const { return area.bottom() - area.height() * (units - least) / (most - least); }
    };
    Plot plot(const QRectF& area) const;
    void paintFrame(QPainter& painter, const Plot& plot, const QString& title) const;
    void paintAcross(QPainter& painter, const Plot& plot) const;
    void paintAlong(QPainter& painter, const Plot& plot) const;

    const std::vector<ShownFilm>* m_films = nullptr;
    Speech m_speech;
    double m_least = 0;
    double m_most = 1;
    double m_step = 1;
    int m_board = 20;
    Micrometres m_distance = feet(15);
};

}  // namespace laneward
