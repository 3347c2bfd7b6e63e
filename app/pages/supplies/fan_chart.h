// The stock ahead as a fan: the middle 50 % and 90 % of what it may be, its median, and deliveries with their day. A day is
// chosen by the mouse or by the arrow keys (a week by the page keys). Time runs to the right in every language.
#pragma once

#include "core/documents/wording.h"
#include "core/season/supply_outlook.h"

#include <QWidget>

namespace laneward {

struct FanDelivery {
    QDate day;
    QString words;
};

struct FanContent {
    QDate today;
    SupplyKind kind = SupplyKind::Part;
    Amount onHand;
    StockForecast forecast;
    std::vector<FanDelivery> deliveries;  ///< by day
};

class FanChart : public QWidget {
    Q_OBJECT

public:
    explicit FanChart(QWidget* parent = nullptr);

    void show(FanContent content, const Speech& speech);
    void showNothing();
    int days() const { return int(m_content.forecast.stock.size()); }
    int day() const { return m_day; }  ///< chosen, from today on; -1 = none
    void setDay(int day);
    /// "Wed 2 Dec: 1.2 L to 3.4 L (90 %), most likely 2.1 L; 3 % that it has run out by then."
    QString dayText(int day) const;
    double xOf(int day) const;  ///< where it is painted
    QSize sizeHint() const override { return {520, 220}; }
    QSize minimumSizeHint() const override { return {260, 130}; }

Q_SIGNALS:
    void dayChosen(int day);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QRectF area() const;
    double yOf(double amount) const;
    double at(int day, double level) const;
    QString amount(double value) const;
    void paintBand(QPainter& painter, double low, double high, const QColor& fill) const;
    void paintMedian(QPainter& painter) const;
    void paintScale(QPainter& painter) const;
    void paintDeliveries(QPainter& painter) const;
    void paintChosen(QPainter& painter) const;

    FanContent m_content;
    Speech m_speech;
    double m_most = 1;  ///< top of the scale, base units
    double m_step = 1;
    int m_day = -1;
};

}  // namespace laneward
