#include "app/window/rail.h"

#include "app/window/glyphs.h"

#include <QButtonGroup>
#include <QShortcut>
#include <QToolButton>
#include <QVBoxLayout>

namespace laneward {

Rail::Rail(QWidget* parent) : QFrame(parent), m_column(new QVBoxLayout(this)), m_buttons(new QButtonGroup(this)) {
    m_column->setContentsMargins(6, 10, 6, 10);
    m_column->setSpacing(6);
    m_column->addStretch();
    setAccessibleName(tr("Pages"));
    connect(m_buttons, &QButtonGroup::idClicked, this, &Rail::pageWanted);
}

void Rail::addPage(const QString& title, const QString& iconName) {
    auto* button = new QToolButton(this);
    const int page = int(m_buttons->buttons().size());
    button->setText(title);
    button->setIcon(glyph(iconName));
    button->setIconSize({22, 22});
    button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button->setCheckable(true);
    button->setAutoRaise(true);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setMinimumHeight(40);
    // A button's own shortcut clicks with a delay that is only for the eye.
    auto* keys = new QShortcut(QKeySequence(Qt::CTRL | Qt::Key(int(Qt::Key_1) + page)), this);
    connect(keys, &QShortcut::activated, this, [this, page] { Q_EMIT pageWanted(page); });
    button->setToolTip(keys->key().toString(QKeySequence::NativeText));
    button->setObjectName("page" + iconName);
    m_buttons->addButton(button, page);
    m_column->insertWidget(page, button);
}

void Rail::setCurrent(int page) {
    if (QAbstractButton* button = m_buttons->button(page)) button->setChecked(true);
}

}  // namespace laneward
