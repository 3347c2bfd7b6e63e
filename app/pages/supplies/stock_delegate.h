// Paints what the list of supplies shows instead of words: a line of the stock ahead, and the range in which it runs out on one
// date axis that all rows and the header share. Time runs to the right in every language.
//
// The range is a bar from 5 % to 95 % with a tick at 50 %; open at the end when it goes on beyond the axis; a small triangle is
// the day by which it must be ordered.
#pragma once

#include <QDate>
#include <QHeaderView>
#include <QLocale>
#include <QStyledItemDelegate>

namespace laneward {

class StockModel;
struct StockMarks;

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

class StockDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    StockDelegate(const StockModel& model, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void paintLine(QPainter& painter, const QRectF& cell, const StockMarks& marks, const QPalette& palette, bool chosen) const;
    void paintRange(QPainter& painter, const QRectF& cell, const StockMarks& marks, const QPalette& palette, bool chosen) const;

    const StockModel& m_model;
};

/// With the dates of the axis below the title of its column.
class StockHeader : public QHeaderView {
    Q_OBJECT

public:
    StockHeader(const StockModel& model, QWidget* parent);

    QSize sizeHint() const override;

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;

private:
    const StockModel& m_model;
};

/// The firsts of the months on the axis, as days from today.
QList<int> monthsOnAxis(QDate today, int days);

}  // namespace laneward
