// One tape reading across the lane, read as points and computed as a line. Board 1 is at the right, as from the approach,
// whichever way the language runs. A board is chosen by the mouse or by the arrow keys.
#pragma once

#include "core/documents/wording.h"
#include "core/patterns/film.h"
#include "core/patterns/tape_reading.h"

#include <QWidget>

namespace laneward {

class ReadingChart : public QWidget {
    Q_OBJECT

public:
    explicit ReadingChart(QWidget* parent = nullptr);

    void show(const TapeValues& read, const std::optional<BoardValues>& computed, const QLocale& locale);
    int board() const { return m_board; }
    void setBoard(int board);  ///< 1..39
    /// "board 12: read 31.2, computed 30.4, 0.8 more".
    QString boardText(int board) const;
    QPointF pointOf(int board, double units) const;  ///< where it is painted
    QSize sizeHint() const override { return {420, 240}; }
    QSize minimumSizeHint() const override { return {240, 140}; }

Q_SIGNALS:
    void boardChosen(int board);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QRectF area() const;
    void paintScale(QPainter& painter) const;
    void paintFilm(QPainter& painter) const;
    void paintLegend(QPainter& painter) const;
    void chooseAt(double x);

    TapeValues m_read;
    std::optional<BoardValues> m_computed;
    QLocale m_locale;
    double m_most = 1;
    double m_step = 1;
    int m_board = 20;
};

}  // namespace laneward
