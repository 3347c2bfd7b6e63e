// A month as a grid of days: events as lines of text, jobs as small marks beside the date, '+n more' where they do not fit.
#pragma once

#include "app/pages/calendar/diary_view.h"

namespace laneward {

class MonthView : public DiaryView {
    Q_OBJECT

public:
    explicit MonthView(QWidget* parent = nullptr);

    /// The whole weeks that contain the month of `day`.
    static DateRange weeksOf(QDate day, Qt::DayOfWeek firstDay);
    void setMonth(QDate day) { m_month = day; }
    /// The day that a block stands for: of a day, of '+n more', or of an event.
    QDate dayOfBlock(int index) const;
    LocalTime proposedStart() const override;

protected:
    void prepare() override;
    Grip gripAt(int, const QPoint&) const override { return Grip::Whole; }
    LocalTime timeAt(const QPoint& point) const override;
    QRectF ghostRect() const override;
    bool keepsSidesFree() const override { return true; }
    void paintEvent(QPaintEvent* event) override;

private:
    struct Day {
        QRectF rect;
        std::vector<size_t> events;
        std::vector<size_t> jobs;
        bool lacks = false;  ///< something on it cannot be met
        int shown = 0;       ///< how many events have room
    };

    double headHeight() const;
    QRectF cell(int day) const;
    QRectF lineRect(const Day& day, int line) const;
    void sortItems();
    void prepareBlocks();
    QString spokenDay(int day) const;
    void paintDay(QPainter& painter, int day);
    void paintJobs(QPainter& painter, const Day& day);
    void paintLine(QPainter& painter, const QRectF& rect, size_t item);
    void paintGhost(QPainter& painter);
    void paintDifference(QPainter& painter);

    QDate m_month;
    std::vector<Day> m_cells;
    std::vector<QDate> m_blockDays;
};

}  // namespace laneward
