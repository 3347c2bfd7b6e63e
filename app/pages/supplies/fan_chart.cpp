#include "app/pages/supplies/fan_chart.h"

#include "app/pages/supplies/supply_texts.h"
#include "app/widgets/date_axis.h"
#include "app/widgets/shades.h"
#include "app/widgets/time_formats.h"
#include "core/documents/stock_words.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr int week = 7;
constexpr double steps = 4;

/// 1, 2 or 5 times a power of ten, so that `most` has at most four of them.
double roundStep(double most) {
    const double power = std::pow(10, std::floor(std::log10(most / steps)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (most <= steps * factor * power) return factor * power;
    }
    return 10 * power;
}

}  // namespace

FanChart::FanChart(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setLayoutDirection(Qt::LeftToRight);
    setAccessibleName(tr("Stock ahead; arrow keys walk from day to day, the page keys from week to week"));
}

void FanChart::showNothing() {
    m_content = {};
    m_day = -1;
    setAccessibleDescription({});
    update();
}

void FanChart::show(FanContent content, const Speech& speech) {
    m_content = std::move(content);
    m_speech = speech;
    double most = std::max(1.0, double(m_content.onHand.value));
    for (int day = 0; day < days(); ++day)
        most = std::max(most, at(day, 0.95));
    const bool pieces = unitOf(m_content.kind) == BaseUnit::Piece;
    m_step = pieces ? std::max(1.0, roundStep(most)) : roundStep(most);
    m_most = m_step * std::ceil(most / m_step);
    m_day = std::min(m_day, days() - 1);
    setAccessibleDescription(dayText(m_day));
    update();
}

void FanChart::setDay(int day) {
    day = std::clamp(day, -1, days() - 1);
    if (day == m_day) return;
    m_day = day;
    setAccessibleDescription(dayText(day));
    QAccessibleEvent said(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&said);
    update();
    Q_EMIT dayChosen(day);
}

/// A stock below nothing is what is missing: the shelf is empty then.
double FanChart::at(int day, double level) const {
    const StockForecast& forecast = m_content.forecast;
    size_t nearest = 0;
    for (size_t n = 1; n < forecast.levels.size(); ++n) {
        if (std::abs(forecast.levels[n] - level) < std::abs(forecast.levels[nearest] - level)) nearest = n;
    }
    return std::max(0.0, forecast.stock[size_t(day)][nearest]);
}

QString FanChart::amount(double value) const { return amountText(Amount{std::llround(value)}, m_content.kind, m_speech); }

QString FanChart::dayText(int day) const {
    if (day < 0 || day >= days()) return {};
    const QString date = shortDay(m_content.today.addDays(day), m_speech.locale);
    QString line = tr("%1, end of day: %2 to %3 (90 %), most likely %4; %5 that it has run out by then.")
                       .arg(date, amount(at(day, 0.05)), amount(at(day, 0.95)), amount(at(day, 0.5)),
                            chanceText(m_content.forecast.outBy[size_t(day)], m_speech));
    for (const FanDelivery& delivery : m_content.deliveries) {
        if (delivery.day == m_content.today.addDays(day)) line += QLatin1Char(' ') + delivery.words;
    }
    return line;
}

QRectF FanChart::area() const {
    const QFontMetricsF metrics(font());
    double labels = 0;
    for (double value = 0; value <= m_most * 1.001; value += m_step)
        labels = std::max(labels, metrics.horizontalAdvance(amount(value)));
    return QRectF(rect()).adjusted(labels + 10, metrics.height() * 0.6 + 2, -12, -metrics.height() - 6);
}

double FanChart::xOf(int day) const {
    const QRectF room = area();
    return room.left() + (day + 1) * room.width() / std::max(1, days());
}

double FanChart::yOf(double amount) const {
    const QRectF room = area();
    return room.bottom() - std::clamp(amount / m_most, 0.0, 1.0) * room.height();
}

void FanChart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Shades shades = shadesOf(palette());
    painter.fillRect(rect(), shades.base);
    if (days() > 0) {
        paintScale(painter);
        paintBand(painter, 0.05, 0.95, mixed(shades.base, shades.job, 0.2));
        paintBand(painter, 0.25, 0.75, mixed(shades.base, shades.job, 0.42));
        paintMedian(painter);
        paintDeliveries(painter);
        paintChosen(painter);
    }
    if (!hasFocus()) return;
    painter.setPen(QPen(shades.focus, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

void FanChart::paintScale(QPainter& painter) const {
    const Shades shades = shadesOf(palette());
    const QRectF room = area();
    const QFontMetricsF metrics(font());
    for (double value = 0; value <= m_most * 1.001; value += m_step) {
        const double y = yOf(value);
        painter.setPen(QPen(value == 0 ? shades.edge : shades.line, value == 0 ? 1.5 : 1));
        painter.drawLine(QPointF(room.left(), y), QPointF(room.right(), y));
        painter.setPen(shades.quiet);
        painter.drawText(QRectF(0, y - metrics.height() / 2, room.left() - 6, metrics.height()),
                         Qt::AlignRight | Qt::AlignVCenter, amount(value));
    }
    double free = 0;
    QList<int> labelled{-1};
    labelled += monthsOnAxis(m_content.today, days());
    for (const int day : std::as_const(labelled)) {
        const QDate date = m_content.today.addDays(std::max(0, day));
        const QString words = m_speech.locale.toString(date, QStringLiteral("d MMM"));
        const double width = metrics.horizontalAdvance(words);
        const double x = xOf(day < 0 ? -1 : day - 1);
        painter.setPen(QPen(shades.line, 1));
        if (day >= 0) painter.drawLine(QPointF(x, room.top()), QPointF(x, room.bottom()));
        const double left = std::min(std::max(room.left(), x - width / 2), room.right() - width);
        if (left < free) continue;
        painter.setPen(shades.quiet);
        painter.drawText(QRectF(left, room.bottom() + 3, width + 2, metrics.height()), Qt::AlignLeft | Qt::AlignTop, words);
        free = left + width + 10;
    }
}

void FanChart::paintBand(QPainter& painter, double low, double high, const QColor& fill) const {
    QPolygonF outline{{xOf(-1), yOf(double(m_content.onHand.value))}};
    for (int day = 0; day < days(); ++day)
        outline << QPointF(xOf(day), yOf(at(day, high)));
    for (int day = days() - 1; day >= 0; --day)
        outline << QPointF(xOf(day), yOf(at(day, low)));
    painter.setPen(QPen(shadesOf(palette()).job, 0.6));
    painter.setBrush(fill);
    painter.drawPolygon(outline);
}

void FanChart::paintMedian(QPainter& painter) const {
    QPolygonF line{{xOf(-1), yOf(double(m_content.onHand.value))}};
    for (int day = 0; day < days(); ++day)
        line << QPointF(xOf(day), yOf(at(day, 0.5)));
    painter.setPen(QPen(shadesOf(palette()).job, 2.2));
    painter.drawPolyline(line);
}

void FanChart::paintDeliveries(QPainter& painter) const {
    const Shades shades = shadesOf(palette());
    const QRectF room = area();
    const QFontMetricsF metrics(font());
    double top = room.top();
    for (const FanDelivery& delivery : m_content.deliveries) {
        const int day = int(m_content.today.daysTo(delivery.day));
        if (day < 0 || day >= days()) continue;
        const double x = xOf(day - 1);
        painter.setPen(QPen(shades.now, 1.4, Qt::DashLine));
        painter.drawLine(QPointF(x, room.top()), QPointF(x, room.bottom()));
        const double width = metrics.horizontalAdvance(delivery.words);
        const double left = x + 5 + width <= room.right() ? x + 5 : std::max(room.left(), x - 5 - width);
        painter.setPen(shades.now);
        painter.drawText(QRectF(left, top, room.right() - left, metrics.height()), Qt::AlignLeft | Qt::AlignTop, delivery.words);
        top += metrics.height();  // two that come soon after each other stay readable
    }
}

void FanChart::paintChosen(QPainter& painter) const {
    if (m_day < 0) return;
    const Shades shades = shadesOf(palette());
    const QRectF room = area();
    const double x = xOf(m_day);
    painter.setPen(QPen(shades.focus, 1));
    painter.drawLine(QPointF(x, room.top()), QPointF(x, room.bottom()));
    painter.setPen(QPen(shades.base, 1));
    painter.setBrush(shades.focus);
    painter.drawEllipse(QPointF(x, yOf(at(m_day, 0.5))), 4, 4);
}

void FanChart::mouseMoveEvent(QMouseEvent* event) {
    const QRectF room = area();
    if (days() > 0) setDay(std::clamp(int((event->position().x() - room.left()) / room.width() * days()), 0, days() - 1));
}

void FanChart::mousePressEvent(QMouseEvent* event) { mouseMoveEvent(event); }

void FanChart::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
            return setDay(std::max(0, m_day - 1));
        case Qt::Key_Right:
            return setDay(m_day + 1);
        case Qt::Key_PageUp:
            return setDay(std::max(0, m_day - week));
        case Qt::Key_PageDown:
            return setDay(std::max(0, m_day) + week);
        case Qt::Key_Home:
            return setDay(0);
        case Qt::Key_End:
            return setDay(days() - 1);
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace laneward
