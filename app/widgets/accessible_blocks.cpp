#include "app/widgets/accessible_blocks.h"

#include "app/widgets/block_view.h"

#include <QAccessibleActionInterface>
#include <QAccessibleWidget>
#include <QPointer>

#include <vector>

namespace laneward {

namespace {

class BlockItem final : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    BlockItem(BlockView* view, int index) : m_view(view), m_index(index) {}

    bool isValid() const override { return m_view && m_index < m_view->blockCount(); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(m_view); }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::ListItem; }
    void setText(QAccessible::Text, const QString&) override {}
    QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Name && isValid() ? m_view->block(m_index).spoken : QString();
    }
    QRect rect() const override {
        if (!isValid()) return {};
        const QRect rect = m_view->blockRect(m_index);
        return {m_view->viewport()->mapToGlobal(rect.topLeft()), rect.size()};
    }
    QAccessible::State state() const override {
        QAccessible::State state;
        state.focusable = true;
        state.selectable = true;
        state.invalid = !isValid();
        if (!isValid()) return state;
        state.focused = m_view->hasFocus() && m_view->current() == m_index;
        state.selected = m_view->current() == m_index;
        state.offscreen = !m_view->blockRect(m_index).intersects(m_view->viewport()->rect());
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
    }
    QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
    void doAction(const QString& name) override {
        if (!isValid()) return;
        if (name == setFocusAction()) m_view->setFocus();
        m_view->setCurrent(m_index);
        if (name == pressAction()) m_view->activate(m_index);
    }
    QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    QPointer<BlockView> m_view;
    int m_index;
};

class BlockList final : public QAccessibleWidget {
public:
    explicit BlockList(BlockView* view) : QAccessibleWidget(view, QAccessible::List), m_view(view) {}
    ~BlockList() override {
        for (QAccessible::Id id : m_items)
            QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return m_view->blockCount(); }
    QAccessibleInterface* child(int index) const override {
        if (index < 0 || index >= childCount()) return nullptr;
        while (int(m_items.size()) <= index)
            m_items.push_back(QAccessible::registerAccessibleInterface(new BlockItem(m_view, int(m_items.size()))));
        return QAccessible::accessibleInterface(m_items[size_t(index)]);
    }
    int indexOfChild(const QAccessibleInterface* item) const override {
        for (size_t i = 0; i < m_items.size(); ++i) {
            if (QAccessible::accessibleInterface(m_items[i]) == item) return int(i);
        }
        return -1;
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        return child(m_view->blockAt(m_view->viewport()->mapFromGlobal(QPoint(x, y))));
    }
    QAccessibleInterface* focusChild() const override { return m_view->hasFocus() ? child(m_view->current()) : nullptr; }

private:
    BlockView* m_view;
    mutable std::vector<QAccessible::Id> m_items;  // made when first asked for
};

QAccessibleInterface* describe(const QString&, QObject* object) {
    auto* view = qobject_cast<BlockView*>(object);
    return view ? new BlockList(view) : nullptr;
}

}  // namespace

void installBlockAccessibility() { QAccessible::installFactory(describe); }

}  // namespace laneward
