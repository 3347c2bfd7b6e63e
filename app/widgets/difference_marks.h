// What a change would do to the jobs, as a quiet second layer above the others, told apart by shape: a job that would go is
// struck out with a cross, one that would move leaves a dotted frame with an arrow to its new bar, one that would come carries
// a plus.
#pragma once

#include "app/widgets/house_painter.h"
#include "core/documents/difference_wording.h"

namespace laneward {

struct DifferenceMark {
    enum class Kind {
        Removed,
        MovedFrom,  ///< the next mark is where it moves to
        MovedTo,
        Added,
    };
    Kind kind = Kind::Added;
    HouseItem item;
};

std::vector<DifferenceMark> differenceMarks(const PlanDifference& change, const SeasonState& season, const Speech& speech);

/// What stands beside the ghost.
struct DifferenceText {
    QString title;  ///< what was asked
    DifferenceWords words;
    QStringList faults;  ///< why it could not be done at all
};

class DifferencePainter {
public:
    DifferencePainter(QPainter& painter, const HouseInk& ink) : m_painter(painter), m_ink(ink) {}

    void mark(const DifferenceMark& mark, const HouseLayout::Placed& place);
    /// From the old bar of a moved job to its new one.
    void arrow(const QRectF& from, const QRectF& to);

private:
    void gone(const QRectF& rect, bool crossed);
    void plus(const QRectF& rect);

    QPainter& m_painter;
    const HouseInk& m_ink;
};

/// Paints the ghost of a dragged block with its times.
void paintGhostBlock(QPainter& painter, const QRectF& rect, const HouseInk& ink, const QString& words);

}  // namespace laneward
