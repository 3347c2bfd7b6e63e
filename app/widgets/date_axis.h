// One date axis for all rows of a list and its header: days from today, as ranges and marks. Time runs to the right in every
// language.
//
// A range is a bar from its early to its late day with a tick at the likely one, open at the end when it goes on beyond the axis;
// a small triangle is a day by which something must be done.
#pragma once

#include <QDate>
#include <QHeaderView>
#include <QLocale>
#include <QPalette>

#include <functional>

namespace laneward {

/// Days that an axis shows.
struct DateSpan {
    QDate today;
    int days = 1;
};

/// Where days lie across a cell.
class DayAxis {
public:
    DayAxis(const QRectF& cell, int days);
    double x(double day) const;
    double right() const { return m_right; }

private:
    double m_left;
    double m_right;
    int m_days;
};

/// Days from today, -1 = none within what is looked at.
struct RangeMarks {
    int early = -1;
    int likely = -1;
    int late = -1;
    int flag = -1;
};

/// The firsts of the months on the axis, as days from today.
QList<int> monthsOnAxis(QDate today, int days);
/// The ink of marks: on a chosen row they stand on its highlight.
QColor markInk(const QPalette& palette, bool chosen, const QColor& usual);
/// Where and how a row is painted.
struct RowLook {
    QRectF cell;
    QPalette palette;
    bool chosen = false;
};
void paintRange(QPainter& painter, const RangeMarks& marks, const DateSpan& span, const RowLook& row);

/// With the dates of the axis below the title of its column.
class AxisHeader : public QHeaderView {
    Q_OBJECT

public:
    AxisHeader(int column, std::function<DateSpan()> span, QWidget* parent);

    QSize sizeHint() const override;

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;

private:
    int m_column;
    std::function<DateSpan()> m_span;
};

}  // namespace laneward
