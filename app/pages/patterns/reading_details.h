// One tape reading beside the computed film: the picture across the boards, its figures, and the named checks.
#pragma once

#include "core/documents/wording.h"
#include "core/patterns/reading_checks.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QVBoxLayout;

namespace laneward {

class ReadingChart;
struct ReadingRow;

/// A check of a reading in two lines. A suspended rule is told as history: it is never broken.
struct CheckLines {
    QString verdict;
    QString source;  ///< and status
};
CheckLines linesOf(const CheckResult& result, const QLocale& locale);

class ReadingDetails : public QWidget {
    Q_OBJECT

public:
    explicit ReadingDetails(QWidget* parent = nullptr);

    void clear(const QString& why);
    void show(const ReadingRow& row, const std::optional<ReadingComparison>& compared, const ReadingLimits& own,
              const Speech& speech);
    QString allText() const;  ///< as a screen reader finds it

private:
    void showFigures(const ReadingComparison& compared, const QLocale& locale);
    void showChecks(const ReadingComparison& compared, const ReadingLimits& own, const QLocale& locale);
    void dropRows();

    QLabel* m_title;
    ReadingChart* m_chart;
    QLabel* m_board;
    QLabel* m_error;
    QWidget* m_figures = nullptr;
    QVBoxLayout* m_rows;
};

}  // namespace laneward
