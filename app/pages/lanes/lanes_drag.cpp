#include "app/edits/ask_bar.h"
#include "app/edits/event_mover.h"
#include "app/edits/job_move.h"
#include "app/pages/lanes/lanes_page.h"
#include "app/pages/lanes/why_panel.h"
#include "core/documents/supply_difference_words.h"

#include <algorithm>

namespace laneward {

void LanesPage::connectGhost() {
    connect(m_view, &HouseView::held, this, [this] { m_mover->runner().prepare(range()); });
    connect(m_view, &HouseView::ghostMoved, this, &LanesPage::considerMove);
    connect(m_view, &HouseView::moveAsked, this, &LanesPage::askMove);
    connect(m_view, &HouseView::letGo, this, &LanesPage::letGo);
    connect(m_view, &HouseView::ghostCleared, this, [this] {
        leaveMove();
        showWhy(m_view->current());
    });
    connect(m_ask, &AskBar::left, this, [this] {
        m_view->clearGhost();
        m_view->setFocus();
        letGo();
    });
    connect(m_mover, &EventMover::asked, this, [this] { awaitReply(m_mover->title()); });
    connect(m_mover, &EventMover::settling, m_view, &HouseView::clearGhost);
    connect(m_mover, &EventMover::settled, this, [this] { m_view->setFocus(); });
    connect(&m_mover->runner(), &WhatIfRunner::answered, this, &LanesPage::showReply);
    connect(&m_mover->runner(), &WhatIfRunner::stockAnswered, this, &LanesPage::showReply);
}

void LanesPage::hideEvent(QHideEvent* event) {
    if (m_view) m_view->clearGhost();
    Page::hideEvent(event);
}

/// Also before new data is shown: nothing of the ghost stays.
void LanesPage::leaveMove() {
    m_mover->leave();
    m_difference = {};
    m_moved.reset();
    m_faults.reset();
    m_dropped = false;
}

void LanesPage::considerMove(const Ghost& ghost) {
    if (const std::optional<Job> moved = movedJob(ghost)) return considerJob(*moved);
    if (const Occurrence* occurrence = chosenOccurrence(); occurrence && keyOf(*occurrence) == ghost.key) {
        m_mover->consider({*occurrence, ghost.start, ghost.duration}, range());
    }
}

void LanesPage::askMove(const Ghost& ghost) {
    if (movedJob(ghost)) return dropJob();
    const Occurrence* occurrence = chosenOccurrence();
    if (occurrence && keyOf(*occurrence) == ghost.key)
        m_mover->drop({*occurrence, ghost.start, ghost.duration}, range());
    else
        m_view->clearGhost();
}

/// The dragged job as it would be confirmed at the ghost's place; nothing when an event is dragged.
std::optional<Job> LanesPage::movedJob(const Ghost& ghost) const {
    const HouseItem* item = m_view->itemOf(m_view->current());
    if (!item || item->key != ghost.key || item->kind != HouseItem::Kind::Job || item->log) return std::nullopt;
    const Seconds by = session().zone().toInstant(ghost.start) - item->time.begin;
    return confirmedElsewhere(source().plan.jobs[item->index], by, session().planningState());
}

void LanesPage::considerJob(const Job& moved) {
    m_moved = moved;
    m_faults.reset();
    State changed = session().planningState();
    changed.committed.push_back(moved);
    m_mover->runner().ask(range(), std::move(changed), moved.date);
    const QString begin = dateTimeText(moved.time.begin, m_speech);
    awaitReply(tr("What if the job on lanes %1 starts %2?").arg(moved.laneSet().text(), begin));
}

/// A job may only be let go where it is known to be possible; the answer may still be on its way.
void LanesPage::dropJob() {
    m_dropped = true;
    if (!m_faults || !m_moved) return;
    if (!m_faults->isEmpty()) return springBack(m_faults->front());
    const Job moved = *m_moved;
    m_view->clearGhost();
    session().confirmJob(moved);
    m_view->setFocus();
}

void LanesPage::springBack(QString why) {
    m_view->clearGhost();
    m_why->show({tr("The job stays where it was"), {{{}, {{{}, std::move(why), true}}}}});
    m_why->setActions(false, false);
}

void LanesPage::awaitReply(const QString& title) {
    m_difference.title = title;
    m_why->show(whyDifference(m_difference, true));
    m_why->setActions(false, false);
}

void LanesPage::showReply(const WhatIfReply& reply) {
    const SeasonState& season = session().season();
    m_difference.words = differenceWords(reply.answer, reply.effort, reply.days, season.patterns, m_speech);
    if (reply.besides) addBesides(m_difference.words, *reply.besides, season, m_speech);
    m_difference.faults.clear();
    for (const Finding& finding : reply.violations)
        m_difference.faults << text(finding, m_speech);
    if (m_moved && m_moved->time.begin < session().now()) m_difference.faults.prepend(tr("That time has passed."));
    m_why->show(whyDifference(m_difference, false));
    m_why->setActions(false, false);
    m_view->showDifference(differenceMarks(reply.answer.difference, season, m_speech));
    if (!m_moved) return;
    m_faults = m_difference.faults;
    if (m_dropped) dropJob();
}

}  // namespace laneward
