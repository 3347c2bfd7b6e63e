#include "app/pages/lanes/lanes_page.h"
#include "app/pages/lanes/why_panel.h"

#include <QMenu>

#include <algorithm>

namespace laneward {

const Occurrence* LanesPage::chosenOccurrence() const {
    const HouseItem* item = m_view->itemOf(m_view->current());
    if (!item) return nullptr;
    const Plan& plan = source().plan;
    if (item->kind == HouseItem::Kind::Event) return &plan.occupancy.occurrences[item->index];
    if (item->kind != HouseItem::Kind::Shortfall) return nullptr;
    const Shortfall& lack = plan.unmet[item->index];
    const auto found = std::find_if(plan.occupancy.occurrences.begin(), plan.occupancy.occurrences.end(),
                                    [&](const Occurrence& o) { return o.series == lack.series && o.original == lack.original; });
    return found == plan.occupancy.occurrences.end() ? nullptr : &*found;
}

void LanesPage::showWhy(int index) {
    const HouseSource from = source();
    if (const LaneBand* band = m_view->bandOf(index)) {
        m_why->show(whyLanes(from, *band, headsAt()));
        m_why->setActions(false, false);
        return;
    }
    const HouseItem* item = m_view->itemOf(index);
    if (!item) return m_why->showNothing();
    bool record = false;
    switch (item->kind) {
        case HouseItem::Kind::Event:
            m_why->show(whyEvent(from, from.plan.occupancy.occurrences[item->index]));
            break;
        case HouseItem::Kind::Shortfall:
            m_why->show(whyShortfall(from, from.plan.unmet[item->index]));
            break;
        case HouseItem::Kind::Outage:
            m_why->show(whyOutage(from, from.season.centre.outages[item->index]));
            break;
        case HouseItem::Kind::Job:
            if (item->log)
                m_why->show(whyRun(from, from.season.runs[item->index]));
            else
                showWhyJob(from.plan.jobs[item->index]);
            record = !item->log && item->state != JobState::Done && item->state != JobState::CutShort &&
                     item->state != JobState::Dropped;
            break;
    }
    m_why->setActions(chosenOccurrence() != nullptr && !session().isReadOnly(), record && !session().isReadOnly());
}

void LanesPage::showWhyJob(const Job& job) {
    const HouseSource from = source();
    const std::vector<JobMove> moves = movesOf(session().planningState(), from.plan, job);
    m_why->show(whyJob(from, job, readinessOf(from.season, from.plan, session().now()), moves));
}

void LanesPage::activate(int index) {
    const HouseItem* item = m_view->itemOf(index);
    if (!item) return;
    if (item->kind == HouseItem::Kind::Job && !item->log) {
        Q_EMIT recordWanted(source().plan.jobs[item->index].id);
    } else if (const Occurrence* chosen = chosenOccurrence()) {
        Q_EMIT eventWanted(chosen->series, chosen->original);
    }
}

void LanesPage::openMenu(int index, const QPoint& global) {
    const HouseItem* item = m_view->itemOf(index);
    if (!item) return;
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    const bool job = item->kind == HouseItem::Kind::Job && !item->log;
    if (job) menu->addAction(tr("&Record…"), this, [this, index] { activate(index); });
    if (chosenOccurrence()) menu->addAction(tr("&Edit event…"), this, [this, index] { activate(index); });
    menu->addAction(tr("&Print sheet…"), this, [this] { Q_EMIT sheetWanted(m_day); });
    menu->popup(global);
}

}  // namespace laneward
