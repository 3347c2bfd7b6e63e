// A scrolling page of painted blocks that behaves like a list: arrows walk from block to block, Enter opens one, the Menu key
// asks for its menu, and a screen reader hears every block by its spoken name.
//
// Subclasses lay out their data, hand the blocks over by setBlocks() and paint them. Rectangles are in content coordinates;
// toViewport() says where they stand at the moment.
#pragma once

#include <QAbstractScrollArea>
#include <QRectF>
#include <QString>

#include <vector>

namespace laneward {

struct Block {
    QString key;  ///< names what it stands for, so that the current block survives new data
    QRectF rect;
    QString spoken;  ///< whole sentence for a screen reader
    QString tip;     ///< plain text; empty = spoken
};

class BlockView : public QAbstractScrollArea {
    Q_OBJECT

public:
    explicit BlockView(QWidget* parent = nullptr);

    int blockCount() const { return int(m_blocks.size()); }
    const Block& block(int index) const { return m_blocks[size_t(index)]; }
    int current() const { return m_current; }  ///< -1 = none
    QString currentKey() const;
    void setCurrent(int index);
    bool setCurrentKey(const QString& key);
    void activate(int index) { Q_EMIT activated(index); }
    int hovered() const { return m_hovered; }
    QRect blockRect(int index) const;  ///< on the viewport
    /// The topmost block under a point of the viewport, or -1.
    int blockAt(const QPoint& point) const;
    virtual QRectF toViewport(const QRectF& content) const;

Q_SIGNALS:
    void currentChanged(int index);
    void activated(int index);
    void menuAsked(int index, const QPoint& global);

protected:
    void setBlocks(std::vector<Block> blocks);
    /// Scrolls until the block can be seen.
    virtual void reveal(int index);
    /// The block that an arrow key leads to from the current one.
    int neighbour(int key) const;

    bool viewportEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void announce();

    std::vector<Block> m_blocks;
    int m_current = -1;
    int m_hovered = -1;
};

}  // namespace laneward
