// One tank, the waste room or the charge as a bar: what is there, and inside it, hatched, what tonight takes.
#pragma once

#include <QString>
#include <QWidget>

class QPainter;

namespace laneward {

struct Level {
    QString name;
    QString words;       ///< "1.4 L, tonight takes 302 mL"
    double full = 1;     ///< capacity, in any unit
    double now = 0;      ///< what is in it
    double tonight = 0;  ///< what goes out of it, or into it where it fills up
    bool fillsUp = false;
    bool helped = false;  ///< the plan has a refill, an emptying or a swap for it
};

class LevelBar : public QWidget {
    Q_OBJECT

public:
    explicit LevelBar(QWidget* parent = nullptr);

    void show(const Level& level);
    bool isShort() const;  ///< tonight takes more than there is
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintBar(QPainter& painter, const QRectF& bar);

    Level m_level;
};

}  // namespace laneward
