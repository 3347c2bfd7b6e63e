// A small panel beside a ghost: what was asked, what it would do, and how sure that is. It takes no clicks. So that it
// does not jump it keeps its width, changes sides only when it must, and says how sure it is above what changes in length.
#pragma once

#include "app/widgets/difference_marks.h"

#include <QFrame>

class QLabel;

namespace laneward {

class DifferencePanel : public QFrame {
    Q_OBJECT

public:
    explicit DifferencePanel(QWidget* parent = nullptr);

    void await(const QString& title);
    void show(const DifferenceText& text);
    void leave();
    /// Beside `ghost`, on the side with more room, inside `room`; both in the parent's coordinates.
    void standBeside(const QRect& ghost, const QRect& room);
    /// Under or over `ghost`, where what lies beside it belongs to the answer.
    void standUnder(const QRect& ghost, const QRect& room);
    QString allText() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void fit();

    QLabel* m_title;
    QLabel* m_sentence;
    QLabel* m_lines;
    QLabel* m_proof;
    bool m_right = true;  ///< of the ghost
};

/// The lines as they are shown: a sign before each that says what it is, and no more of them than are read at a glance.
QString differenceLines(const DifferenceText& text);
/// How sure the answer is, or that it cannot be done; `waiting`: that it is still looked for.
QString differenceProof(const DifferenceText& text, bool waiting);

}  // namespace laneward
