#include "app/pages/guide/guide_list.h"

#include "core/documents/guide_words.h"

#include <QKeyEvent>

namespace laneward {

GuideList::GuideList(QWidget* parent) : QListWidget(parent) {
    setObjectName("guideList");
    setAccessibleName(tr("All steps of the evening"));
    setWordWrap(true);
    setSelectionMode(QAbstractItemView::NoSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::TabFocus);
    setSpacing(1);
    setResizeMode(QListView::Adjust);
}

void GuideList::add(const QString& mark, const QString& word, const QString& line) {
    auto* item = new QListWidgetItem(tr("%1 %2: %3", "mark, done or now, step").arg(mark, word, line), this);
    item->setData(Qt::AccessibleTextRole, tr("%1: %2", "done or now, step").arg(word, line));
}

void GuideList::show(const Guide& guide, const JobSheet& sheet, int now, const Speech& speech) {
    clear();
    for (const GuideTick& tick : guide.done) {
        add(tick.isLeftOut ? QStringLiteral("–") : QStringLiteral("✓"), tick.isLeftOut ? tr("left out") : tr("done"),
            lineOf(tick, sheet, speech));
    }
    for (const GuideStep& step : guide.ahead) {
        const bool works = step.deed == GuideDeed::Run && sheet.jobs[*step.step.job].state == JobState::UnderWay;
        const QString line = titleOf(step, sheet, speech);
        if (&step == &guide.ahead.front())
            add(QStringLiteral("▶"), tr("now"), line);
        else if (works)
            add(QStringLiteral("◐"), tr("under way"), line);
        else
            add(QStringLiteral("○"), tr("to come"), line);
    }
    if (QListWidgetItem* shownNow = item(now)) {
        QFont bold = font();
        bold.setBold(true);
        shownNow->setFont(bold);
        setCurrentItem(shownNow);
        scrollToItem(shownNow, QAbstractItemView::PositionAtCenter);
    }
}

/// Space and Backspace go on and back wherever the keyboard is.
void GuideList::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space || event->key() == Qt::Key_Backspace || event->key() == Qt::Key_Escape)
        event->ignore();
    else
        QListWidget::keyPressEvent(event);
}

}  // namespace laneward
