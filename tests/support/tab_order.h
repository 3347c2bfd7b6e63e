// Whether everything on a page is reached by the Tab key.
#pragma once

#include <QApplication>
#include <QSet>
#include <QTest>
#include <QWidget>
#include <QWindow>

namespace support {

inline QString nameOf(const QWidget& widget) {
    return widget.objectName().isEmpty() ? QString::fromLatin1(widget.metaObject()->className()) : widget.objectName();
}

/// Widgets of `page` that can be seen and take the focus from the Tab key, but are passed by when one goes through the window.
inline QStringList passedByTab(QWidget& page) {
    QSet<const QWidget*> reached;
    page.setFocus();
    for (int n = 0; n < 300; ++n) {
        if (QApplication::focusWidget()) reached.insert(QApplication::focusWidget());
        QTest::keyClick(page.window()->windowHandle(), Qt::Key_Tab);
    }
    QStringList passed;
    for (const QWidget* widget : page.findChildren<QWidget*>()) {
        const bool takes = (widget->focusPolicy() & Qt::TabFocus) && widget->isVisible() && widget->isEnabled();
        if (takes && !widget->focusProxy() && !reached.contains(widget)) passed << nameOf(*widget);
    }
    return passed;
}

}  // namespace support
