#include "app/pages/patterns/reading_chart.h"

#include "app/widgets/decimal_text.h"
#include "app/widgets/shades.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double radius = 3.5;

/// 1, 2 or 5 times a power of ten, so that `most` has at most six of them.
double roundStep(double most) {
    const double power = std::pow(10, std::floor(std::log10(most / 6)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (most <= 6 * factor * power) return factor * power;
    }
    return 10 * power;
}

}  // namespace

ReadingChart::ReadingChart(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("Film read and computed, board 1 at the right; arrow keys walk from board to board"));
}

void ReadingChart::show(const TapeValues& read, const std::optional<BoardValues>& computed, const QLocale& locale) {
    m_read = read;
    m_computed = computed;
    m_locale = locale;
    double most = 1;
    for (size_t b = 0; b < m_read.size(); ++b)
        most = std::max({most, double(m_read[b].value_or(0)) / 1'000, m_computed ? (*m_computed)[b] : 0.0});
    m_step = roundStep(most);
    m_most = m_step * std::ceil(most / m_step);
    setAccessibleDescription(boardText(m_board));
    update();
}

void ReadingChart::setBoard(int board) {
    board = std::clamp(board, 1, boards);
    if (board == m_board) return;
    m_board = board;
    setAccessibleDescription(boardText(board));
    QAccessibleEvent said(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&said);
    update();
    Q_EMIT boardChosen(board);
}

QString ReadingChart::boardText(int board) const {
    const auto units = [this](double value) { return m_locale.toString(value, 'f', 1); };
    const std::optional<std::int64_t> film = m_read[size_t(board - 1)];
    const QString name = m_locale.toString(board);
    if (!m_computed) {
        return film ? tr("Board %1: read %2 units").arg(name, units(double(*film) / 1'000)) : tr("Board %1: not read").arg(name);
    }
    const double expected = (*m_computed)[size_t(board - 1)];
    if (!film) return tr("Board %1: not read, computed %2 units").arg(name, units(expected));
    const double read = double(*film) / 1'000;
    const double off = read - expected;
    const QString both = tr("Board %1: read %2 units, computed %3").arg(name, units(read), units(expected));
    if (std::abs(off) < 0.05) return tr("%1, the same").arg(both);
    return off > 0 ? tr("%1, %2 more than computed").arg(both, units(off))
                   : tr("%1, %2 less than computed").arg(both, units(-off));
}

QRectF ReadingChart::area() const {
    const QFontMetricsF metrics(font());
    const double left = metrics.horizontalAdvance(m_locale.toString(m_most, 'f', m_step < 1 ? 1 : 0)) + 14;
    const double line = metrics.lineSpacing();
    return QRectF(rect()).adjusted(left, line + 10, -12, -2 * line - 12);
}

QPointF ReadingChart::pointOf(int board, double units) const {
    const QRectF field = area();
    return {field.left() + (boards - board + 0.5) / boards * field.width(), field.bottom() - units / m_most * field.height()};
}

void ReadingChart::paintScale(QPainter& painter) const {
    const Shades shades = shadesOf(palette());
    const QRectF field = area();
    const double line = QFontMetricsF(font()).lineSpacing();
    painter.fillRect(rect(), shades.base);
    for (double units = 0; units <= m_most + m_step / 2; units += m_step) {
        const double y = pointOf(1, units).y();
        painter.setPen(shades.line);
        painter.drawLine(QPointF(field.left(), y), QPointF(field.right(), y));
        painter.setPen(shades.quiet);
        painter.drawText(QRectF(0, y - line / 2, field.left() - 6, line), Qt::AlignRight | Qt::AlignVCenter,
                         m_locale.toString(units, 'f', m_step < 1 ? 1 : 0));
    }
    painter.setPen(shades.edge);
    painter.drawLine(field.bottomLeft(), field.bottomRight());
    painter.setPen(shades.quiet);
    for (const int board : {1, 5, 10, 15, 20, 25, 30, 35, 39}) {
        const double x = pointOf(board, 0).x();
        painter.drawText(QRectF(x - 30, field.bottom() + 3, 60, line), Qt::AlignHCenter, m_locale.toString(board));
    }
    painter.drawText(QRectF(field.left(), field.bottom() + 4 + line, field.width(), line), Qt::AlignHCenter,
                     tr("board, from the right as seen from the approach"));
}

void ReadingChart::paintFilm(QPainter& painter) const {
    const Shades shades = shadesOf(palette());
    const QRectF field = area();
    const double half = field.width() / boards / 2;
    const double at = pointOf(m_board, 0).x();
    painter.fillRect(QRectF(at - half, field.top(), 2 * half, field.height()), mixed(shades.base, shades.text, 0.12));
    if (m_computed) {
        QPainterPath path;
        for (int board = boards; board >= 1; --board) {
            const QPointF middle = pointOf(board, (*m_computed)[size_t(board - 1)]);
            const QPointF begin = middle - QPointF(half, 0);
            board == boards ? path.moveTo(begin) : path.lineTo(begin);
            path.lineTo(middle + QPointF(half, 0));
        }
        painter.setPen(QPen(shades.job, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(path);
    }
    painter.setPen(QPen(shades.base, 1));
    painter.setBrush(shades.text);
    for (int board = 1; board <= boards; ++board) {
        const std::optional<std::int64_t> film = m_read[size_t(board - 1)];
        if (film) painter.drawEllipse(pointOf(board, double(*film) / 1'000), radius, radius);
    }
}

void ReadingChart::paintLegend(QPainter& painter) const {
    const Shades shades = shadesOf(palette());
    const QFontMetricsF metrics(font());
    const double middle = 5 + metrics.lineSpacing() / 2;
    const auto word = [&](double x, const QString& text) {
        painter.setPen(shades.text);
        painter.drawText(QPointF(x, middle + metrics.ascent() / 2 - 1), text);
        return x + metrics.horizontalAdvance(text) + 18;
    };
    double x = word(6, tr("units of film"));
    painter.setPen(QPen(shades.base, 1));
    painter.setBrush(shades.text);
    painter.drawEllipse(QPointF(x, middle), radius, radius);
    x = word(x + 10, tr("read"));
    if (!m_computed) return;
    painter.setPen(QPen(shades.job, 2));
    painter.drawLine(QPointF(x, middle), QPointF(x + 22, middle));
    word(x + 28, tr("computed"));
}

void ReadingChart::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setLayoutDirection(Qt::LeftToRight);
    paintScale(painter);
    paintFilm(painter);
    paintLegend(painter);
    if (!hasFocus()) return;
    painter.setPen(QPen(shadesOf(palette()).focus, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

void ReadingChart::chooseAt(double x) {
    const QRectF field = area();
    setBoard(boards - int(std::floor((x - field.left()) / field.width() * boards)));
}

void ReadingChart::mouseMoveEvent(QMouseEvent* event) { chooseAt(event->position().x()); }
void ReadingChart::mousePressEvent(QMouseEvent* event) { chooseAt(event->position().x()); }

void ReadingChart::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
            return setBoard(m_board + 1);
        case Qt::Key_Right:
            return setBoard(m_board - 1);
        case Qt::Key_Home:
            return setBoard(boards);
        case Qt::Key_End:
            return setBoard(1);
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace laneward
