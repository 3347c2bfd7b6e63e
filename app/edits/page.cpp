#include "app/edits/page.h"

#include <QFocusEvent>
#include <QShowEvent>

namespace laneward {

Page::Page(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    connect(&session, &Session::changed, this, &Page::refreshSoon);
}

void Page::wake() {
    if (m_awake) return;
    m_awake = true;
    build();
}

void Page::setVisible(bool visible) {
    if (visible) wake();
    QWidget::setVisible(visible);
}

void Page::followPlans() {
    connect(&m_session, &Session::planned, this, [this] {
        if (isVisible() && isHolding())
            m_planWaits = true;
        else
            refreshSoon();
    });
}

void Page::letGo() {
    if (!m_planWaits) return;
    const auto look = [this] {
        if (m_planWaits && !isHolding()) refreshSoon();
    };
    QMetaObject::invokeMethod(this, look, Qt::QueuedConnection);  // what comes of it may refresh the page anyway
}

void Page::refreshSoon() {
    m_planWaits = false;
    m_stale = !isVisible();
    if (m_stale) return;
    refresh();
    Q_EMIT headlineChanged();
}

void Page::focusInEvent(QFocusEvent* event) {
    if (m_start && m_start->isVisibleTo(this))
        m_start->setFocus(event->reason());
    else
        focusNextChild();
}

void Page::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!m_stale) return;
    m_stale = false;
    refresh();
    Q_EMIT headlineChanged();
}

}  // namespace laneward
