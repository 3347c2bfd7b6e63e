#include "app/widgets/date_bar.h"

#include "app/widgets/time_formats.h"

#include <QButtonGroup>
#include <QDateEdit>
#include <QHBoxLayout>
#include <QLocale>
#include <QShortcut>
#include <QSignalBlocker>
#include <QStyle>
#include <QToolButton>

namespace laneward {

DateBar::DateBar(const QStringList& levels, QWidget* parent) : QWidget(parent), m_row(new QHBoxLayout(this)) {
    m_row->setContentsMargins(0, 0, 0, 0);
    buildDay();
    buildLevels(levels);
    m_row->addStretch(1);
}

QToolButton* DateBar::button(const QString& text, const QString& name) {
    auto* result = new QToolButton(this);
    result->setText(text);
    result->setAccessibleName(name);
    result->setToolTip(name);
    result->setMinimumSize(28, 28);
    result->setAutoRaise(false);
    m_row->addWidget(result);
    return result;
}

void DateBar::buildDay() {
    QToolButton* back = button(QString(), tr("Earlier"));
    back->setArrowType(layoutDirection() == Qt::RightToLeft ? Qt::RightArrow : Qt::LeftArrow);
    back->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_PageUp));
    connect(back, &QToolButton::clicked, this, [this] { Q_EMIT stepAsked(-1); });
    QToolButton* today = button(tr("T&oday"), tr("Go to today"));
    connect(today, &QToolButton::clicked, this, [this] { Q_EMIT dayChosen(m_today); });
    QToolButton* onward = button(QString(), tr("Later"));
    onward->setArrowType(layoutDirection() == Qt::RightToLeft ? Qt::LeftArrow : Qt::RightArrow);
    onward->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_PageDown));
    connect(onward, &QToolButton::clicked, this, [this] { Q_EMIT stepAsked(1); });
    m_edit = new QDateEdit(this);
    m_edit->setCalendarPopup(true);
    m_edit->setKeyboardTracking(false);
    m_edit->setAccessibleName(tr("Day"));
    m_edit->setMinimumHeight(28);
    connect(m_edit, &QDateEdit::dateChanged, this, &DateBar::dayChosen);
    m_row->addWidget(m_edit);
}

void DateBar::buildLevels(const QStringList& levels) {
    m_levels = new QButtonGroup(this);
    m_row->addSpacing(12);
    for (int i = 0; i < levels.size(); ++i) {
        QToolButton* level = button(levels[i], QString(levels[i]).remove(u'&'));
        level->setCheckable(true);
        level->setChecked(i == 0);
        m_levels->addButton(level, i);
    }
    connect(m_levels, &QButtonGroup::idClicked, this, &DateBar::levelChosen);
}

QDate DateBar::day() const { return m_edit->date(); }

void DateBar::setDay(QDate day) {
    const QSignalBlocker quiet(m_edit);
    m_edit->setDate(day);
}

int DateBar::level() const { return m_levels->checkedId(); }

void DateBar::setLevel(int level) {
    if (QAbstractButton* chosen = m_levels->button(level)) chosen->setChecked(true);
}

void DateBar::setSpeechLocale(const QLocale& locale) {
    m_edit->setLocale(locale);
    m_edit->setDisplayFormat(dayFieldFormat(locale));
    const QString widest = locale.toString(QDate(2028, 9, 27), m_edit->displayFormat());
    m_edit->setMinimumWidth(m_edit->fontMetrics().horizontalAdvance(widest) + 56);  // the arrow and the frame
}

void DateBar::addWidget(QWidget* widget) { m_row->addWidget(widget); }

}  // namespace laneward
