#include "app/window/message_bar.h"

#include "app/edits/plain_label.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QToolButton>

namespace laneward {

MessageBar::MessageBar(QWidget* parent) : QFrame(parent), m_text(proseLabel({}, this)) {
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    m_text->setForegroundRole(QPalette::ToolTipText);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* close = new QToolButton(this);
    close->setText(tr("✕", "button that closes a message"));
    close->setAccessibleName(tr("Close the message"));
    close->setAutoRaise(true);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 4, 4, 4);
    auto* mark = headingLabel(tr("!", "mark of a problem"), this);
    mark->setForegroundRole(QPalette::ToolTipText);
    row->addWidget(mark);
    row->addWidget(m_text, 1);
    row->addWidget(close);
    connect(close, &QToolButton::clicked, this, &QWidget::hide);
    hide();
}

void MessageBar::show(const QString& line) {
    m_text->setText(line);
    QWidget::show();
    QAccessibleEvent spoken(m_text, QAccessible::Alert);
    QAccessible::updateAccessibility(&spoken);
}

QString MessageBar::text() const { return isVisible() ? m_text->text() : QString(); }

}  // namespace laneward
