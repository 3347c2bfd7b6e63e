#include "app/pages/today/level_bar.h"

#include "app/models/list_tools.h"
#include "app/widgets/shades.h"

#include <QPainter>

#include <algorithm>

namespace laneward {

namespace {

constexpr int barHeight = 12;

}  // namespace

LevelBar::LevelBar(QWidget* parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed); }

void LevelBar::show(const Level& level) {
    m_level = level;
    const QString spoken = tr("%1: %2", "tank: how much").arg(level.name, level.words);
    setAccessibleName(spoken);
    setToolTip(plainTip(spoken));
    updateGeometry();
    update();
}

bool LevelBar::isShort() const {
    if (m_level.helped) return false;
    return m_level.fillsUp ? m_level.now + m_level.tonight > m_level.full : m_level.tonight > m_level.now;
}

QSize LevelBar::sizeHint() const { return {220, fontMetrics().height() + barHeight + 6}; }

QSize LevelBar::minimumSizeHint() const { return {120, sizeHint().height()}; }

void LevelBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Shades shades = shadesOf(palette());
    const int line = fontMetrics().height();
    const QRect textRoom(0, 0, width(), line);
    const QString mark = isShort() ? tr("! ", "before a level that does not do") : QString();
    const int nameWidth = fontMetrics().horizontalAdvance(mark + m_level.name) + 8;
    painter.setPen(isShort() ? readable(shades.bad, palette().color(QPalette::Window), textContrast)
                             : palette().color(QPalette::WindowText));
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    painter.drawText(textRoom, Qt::AlignVCenter | Qt::AlignLeft, mark + m_level.name);  // the painter mirrors sides itself
    const QRect wordsRoom = mirrored ? textRoom.adjusted(0, 0, -nameWidth, 0) : textRoom.adjusted(nameWidth, 0, 0, 0);
    painter.drawText(wordsRoom, Qt::AlignVCenter | Qt::AlignRight,
                     fontMetrics().elidedText(m_level.words, Qt::ElideRight, wordsRoom.width()));
    paintBar(painter, QRectF(0.5, line + 2.5, width() - 1, barHeight - 1));
}

void LevelBar::paintBar(QPainter& painter, const QRectF& bar) {
    const Shades shades = shadesOf(palette());
    const auto part = [this, &bar](double amount) {
        return bar.width() * std::clamp(m_level.full > 0 ? amount / m_level.full : 0.0, 0.0, 1.0);
    };
    const double until = part(m_level.now);
    const double after = part(m_level.fillsUp ? m_level.now + m_level.tonight : std::max(0.0, m_level.now - m_level.tonight));
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    const auto rect = [&](double from, double to) {
        return mirrored ? QRectF(bar.right() - to, bar.top(), to - from, bar.height())
                        : QRectF(bar.left() + from, bar.top(), to - from, bar.height());
    };
    painter.fillRect(bar, shades.base);
    painter.fillRect(rect(0, std::min(until, after)), shades.job);
    const QRectF tonight = rect(std::min(until, after), std::max(until, after));
    const QColor hatch = isShort() ? shades.bad : shades.job;
    painter.fillRect(tonight, QBrush(hatch, Qt::BDiagPattern));
    painter.setPen(QPen(hatch, 1));
    if (tonight.width() > 1) painter.drawRect(tonight);
    painter.setPen(QPen(shades.edge, 1));
    painter.drawRect(bar);
}

}  // namespace laneward
