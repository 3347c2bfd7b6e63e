#include "app/widgets/block_view.h"

#include "app/widgets/accessible_blocks.h"

#include <QAccessible>
#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QScrollBar>
#include <QToolTip>

#include <limits>

namespace laneward {

BlockView::BlockView(QWidget* parent) : QAbstractScrollArea(parent) {
    installBlockAccessibility();
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    viewport()->setMouseTracking(true);
}

QString BlockView::currentKey() const { return m_current < 0 ? QString() : block(m_current).key; }

QRectF BlockView::toViewport(const QRectF& content) const {
    return content.translated(-horizontalScrollBar()->value(), -verticalScrollBar()->value());
}

QRect BlockView::blockRect(int index) const { return toViewport(block(index).rect).toAlignedRect(); }

int BlockView::blockAt(const QPoint& point) const {
    for (int i = blockCount() - 1; i >= 0; --i) {
        if (toViewport(block(i).rect).contains(point)) return i;
    }
    return -1;
}

void BlockView::setBlocks(std::vector<Block> blocks) {
    const QString key = currentKey();
    m_blocks = std::move(blocks);
    m_current = -1;
    m_hovered = -1;
    for (int i = 0; i < blockCount() && !key.isEmpty(); ++i) {
        if (block(i).key == key) m_current = i;
    }
    viewport()->update();
}

void BlockView::setCurrent(int index) {
    if (index == m_current || index >= blockCount()) return;
    m_current = index;
    if (index >= 0) reveal(index);
    viewport()->update();
    announce();
    Q_EMIT currentChanged(index);
}

bool BlockView::setCurrentKey(const QString& key) {
    for (int i = 0; i < blockCount(); ++i) {
        if (block(i).key != key) continue;
        setCurrent(i);
        return true;
    }
    return false;
}

void BlockView::reveal(int index) {
    const QRectF rect = toViewport(block(index).rect);
    const QRect seen = viewport()->rect();
    const auto shift = [](QScrollBar* bar, double low, double high, int size) {
        if (low < 0 || high - low > size)
            bar->setValue(bar->value() + int(low) - 8);
        else if (high > size)
            bar->setValue(bar->value() + int(high) - size + 8);
    };
    shift(verticalScrollBar(), rect.top(), rect.bottom(), seen.height());
    shift(horizontalScrollBar(), rect.left(), rect.right(), seen.width());
}

int BlockView::neighbour(int key) const {
    if (m_current < 0) return blockCount() > 0 ? 0 : -1;
    const QRectF from = block(m_current).rect;
    const bool vertical = key == Qt::Key_Up || key == Qt::Key_Down;
    const int sign = key == Qt::Key_Down || key == Qt::Key_Right ? 1 : -1;
    int best = m_current;
    double bestCost = std::numeric_limits<double>::max();
    for (int i = 0; i < blockCount(); ++i) {
        const QRectF to = block(i).rect;
        const QPointF way = vertical ? QPointF(to.left() - from.left(), to.top() - from.top())
                                     : QPointF(to.top() - from.top(), to.left() - from.left());
        const double ahead = way.y() * sign;
        if (i == m_current || ahead <= 0.5) continue;
        const double cost = ahead + 3 * qAbs(way.x());  // straight on is nearer than sideways
        if (cost < bestCost) {
            bestCost = cost;
            best = i;
        }
    }
    return best;
}

void BlockView::keyPressEvent(QKeyEvent* event) {
    // Arrows follow the picture and may pass by a block that is hidden behind another; Ctrl walks through every one.
    if (event->modifiers() == Qt::ControlModifier && (event->key() == Qt::Key_Down || event->key() == Qt::Key_Up)) {
        const int step = event->key() == Qt::Key_Down ? 1 : -1;
        setCurrent(qBound(qMin(0, blockCount() - 1), m_current + step, blockCount() - 1));
        return;
    }
    switch (event->modifiers() == Qt::NoModifier || event->modifiers() == Qt::KeypadModifier ? event->key() : 0) {
        case Qt::Key_Up:
        case Qt::Key_Down:
        case Qt::Key_Left:
        case Qt::Key_Right:
            setCurrent(neighbour(event->key()));
            return;
        case Qt::Key_Home:
            setCurrent(blockCount() > 0 ? 0 : -1);
            return;
        case Qt::Key_End:
            setCurrent(blockCount() - 1);
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (m_current >= 0) Q_EMIT activated(m_current);
            return;
        default:
            QAbstractScrollArea::keyPressEvent(event);
    }
}

void BlockView::mouseReleaseEvent(QMouseEvent* event) { event->accept(); }

void BlockView::mousePressEvent(QMouseEvent* event) { setCurrent(blockAt(event->position().toPoint())); }

void BlockView::mouseMoveEvent(QMouseEvent* event) {
    const int under = blockAt(event->position().toPoint());
    if (under == m_hovered) return;
    m_hovered = under;
    viewport()->update();
}

void BlockView::mouseDoubleClickEvent(QMouseEvent* event) {
    const int under = blockAt(event->position().toPoint());
    if (under >= 0) Q_EMIT activated(under);
}

void BlockView::contextMenuEvent(QContextMenuEvent* event) {
    const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
    const int index = byKey ? m_current : blockAt(event->pos());
    if (index < 0) return;
    setCurrent(index);
    Q_EMIT menuAsked(index, byKey ? viewport()->mapToGlobal(blockRect(index).center()) : event->globalPos());
}

bool BlockView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::Leave && m_hovered >= 0) {
        m_hovered = -1;
        viewport()->update();
    }
    if (event->type() != QEvent::ToolTip) return QAbstractScrollArea::viewportEvent(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const int under = blockAt(help->pos());
    if (under < 0) {
        QToolTip::hideText();
        return true;
    }
    const QString tip = block(under).tip.isEmpty() ? block(under).spoken : block(under).tip;
    // A tool tip guesses whether it is markup; escaped markup leaves it nothing to guess.
    const QString plain = QStringLiteral("<qt>%1</qt>").arg(tip.toHtmlEscaped().replace(u'\n', QStringLiteral("<br>")));
    QToolTip::showText(help->globalPos(), plain, viewport(), blockRect(under));
    return true;
}

void BlockView::focusInEvent(QFocusEvent* event) {
    if (m_current < 0 && event->reason() != Qt::MouseFocusReason) setCurrent(blockCount() > 0 ? 0 : -1);
    viewport()->update();
    announce();
}

void BlockView::focusOutEvent(QFocusEvent*) { viewport()->update(); }

void BlockView::announce() {
    if (!hasFocus() || m_current < 0) return;
    QAccessibleEvent spoken(this, QAccessible::Focus);
    spoken.setChild(m_current);
    QAccessible::updateAccessibility(&spoken);
}

}  // namespace laneward
