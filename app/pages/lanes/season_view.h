// A season at a glance: a row for each week, a cell for each day, and in it a bar as long as the time that the day has to spare.
//
// Short bars are the hard days. A tight day says '!' and is hatched, a day with unmet demands is a hollow frame with '!', a late
// one has a notch; the number stands in words beside them. Arrows walk over the days, Enter or a double click opens one.
//
//     view.setSeason(figures, speech);
#pragma once

#include "app/widgets/block_view.h"
#include "app/widgets/shades.h"
#include "core/documents/season_words.h"

namespace laneward {

class SeasonView : public BlockView {
    Q_OBJECT

public:
    explicit SeasonView(QWidget* parent = nullptr);

    void setSeason(SeasonFigures season, const Speech& speech);
    const SeasonFigures& season() const { return m_season; }
    QDate dayOf(int index) const;  ///< of a block
    bool setCurrentDay(QDate day);
    QRectF toViewport(const QRectF& content) const override;
    QSize minimumSizeHint() const override { return {420, 240}; }

    /// Every figure of a day, one to a line.
    static QStringList figuresOf(const SeasonDay& day, const Speech& speech);

protected:
    void reveal(int index) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void prepare();
    double headHeight() const;
    QRectF cell(int row, int column) const;
    QRectF inner(const QRectF& cell) const;
    int aligned(bool leading) const;
    int rowOf(QDate day) const;
    int columnOf(QDate day) const;
    void paintHead(QPainter& painter) const;
    void paintScale(QPainter& painter, const QRectF& cell) const;
    void paintWeek(QPainter& painter, int row) const;
    void paintDay(QPainter& painter, size_t day) const;
    void paintBar(QPainter& painter, const QRectF& cell, const WorkFigures& work) const;
    QString cellText(const WorkFigures& work) const;

    SeasonFigures m_season;
    Speech m_speech;
    Shades m_shades;
    QDate m_firstRow;  ///< first day of the first week
    double m_gutter = 60;
    double m_rowHeight = 26;
    double m_columnWidth = 60;
};

}  // namespace laneward
