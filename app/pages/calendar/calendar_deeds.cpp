#include "app/edits/ask_bar.h"
#include "app/edits/event_mover.h"
#include "app/edits/series_edits.h"
#include "app/pages/calendar/calendar_page.h"
#include "app/pages/calendar/copy_season_panel.h"
#include "app/pages/calendar/event_editor.h"
#include "app/pages/calendar/month_view.h"
#include "app/widgets/time_formats.h"
#include "core/documents/supply_difference_words.h"

#include <QMenu>
#include <QStackedWidget>

#include <algorithm>

namespace laneward {

const Series* CalendarPage::seriesOf(const SeriesId& id) const {
    const std::vector<Series>& all = session().season().series;
    const auto found = std::find_if(all.begin(), all.end(), [&](const Series& s) { return s.id == id; });
    return found == all.end() ? nullptr : &*found;
}

const Occurrence* CalendarPage::occurrenceOf(const QString& key) const {
    const Plan& plan = session().planAtOnce(range());
    const std::vector<Occurrence>& all = plan.occupancy.occurrences;
    const auto found = std::find_if(all.begin(), all.end(), [&](const Occurrence& o) { return keyOf(o) == key; });
    return found == all.end() ? nullptr : &*found;
}

const Occurrence* CalendarPage::occurrenceAt(int index) const {
    const HouseItem* item = view()->itemOf(index);
    return item && item->kind == HouseItem::Kind::Event ? occurrenceOf(item->key) : nullptr;
}

bool CalendarPage::change(const QString& name, Series before, const std::optional<Series>& after) {
    // `before` is a copy: the session's own goes away while it reloads.
    view()->clearGhost();
    m_ask->hide();
    if (after && *after == before) return true;
    const bool done = session().apply(name, {RowChange<Series>{std::move(before), after}});
    view()->setFocus();
    return done;
}

void CalendarPage::hideEvent(QHideEvent* event) {
    if (m_bar) view()->clearGhost();
    Page::hideEvent(event);
}

void CalendarPage::considerMove(const Ghost& ghost) {
    if (const Occurrence* occurrence = occurrenceOf(ghost.key))
        m_mover->consider({*occurrence, ghost.start, ghost.duration}, range());
}

void CalendarPage::askMove(const Ghost& ghost) {
    if (const Occurrence* occurrence = occurrenceOf(ghost.key))
        m_mover->drop({*occurrence, ghost.start, ghost.duration}, range());
    else
        view()->clearGhost();
}

void CalendarPage::showReply(const WhatIfReply& reply) {
    const SeasonState& season = session().season();
    const PlanDifference& change = reply.answer.difference;
    DifferenceText text{m_mover->title(), differenceWords(reply.answer, reply.effort, reply.days, season.patterns, m_speech), {}};
    if (reply.besides) addBesides(text.words, *reply.besides, season, m_speech);
    view()->showDifference(text, differenceMarks(change, season, m_speech));
}

void CalendarPage::askRemove(int index) {
    const Occurrence* occurrence = occurrenceAt(index);
    const Series* series = occurrence ? seriesOf(occurrence->series) : nullptr;
    if (!series || session().isReadOnly()) return;
    const SeriesId id = series->id;
    const LocalTime original = occurrence->original;
    if (!isRecurring(*series)) return remove(id);
    const QString day = shortDay(startOf(*series, original).date, m_speech.locale);
    m_ask->ask(tr("Take %1 away?").arg(shown(series->title)),
               {{tr("Cancel only %1").arg(day), [this, id, original] { cancelDate(id, original); }},
                {tr("Delete the whole series"), [this, id] { remove(id); }}});
}

void CalendarPage::cancelDate(const SeriesId& id, const LocalTime& original) {
    if (const Series* series = seriesOf(id)) {
        const QString day = shortDay(startOf(*series, original).date, m_speech.locale);
        change(tr("Cancel %1 on %2").arg(shown(series->title), day), *series, cancelledOnce(*series, original));
    }
}

void CalendarPage::remove(const SeriesId& id) {
    if (const Series* series = seriesOf(id)) change(tr("Delete %1").arg(shown(series->title)), *series, std::nullopt);
}

void CalendarPage::open(int index) {
    if (const Occurrence* occurrence = occurrenceAt(index)) return editSeries(occurrence->series);
    const HouseItem* item = view()->itemOf(index);
    if (item && item->kind == HouseItem::Kind::Shortfall) {
        const Plan& plan = session().planAtOnce(range());
        return editSeries(plan.unmet[item->index].series);
    }
    const QDate day = level() == Level::Month ? m_month->dayOfBlock(index) : QDate();
    if (item || !day.isValid()) return;
    showDay(day);
    setLevel(Level::Day);
}

void CalendarPage::editSeries(const SeriesId& id) {
    const Series* series = seriesOf(id);
    if (!series) return;
    showSide(&editor());
    if (m_editor->isDirty() && m_editor->editing() == id) return;  // what was typed goes on
    m_editor->edit(*series);
}

void CalendarPage::createAt(const LocalTime& start) {
    if (session().isReadOnly()) return;
    const CentreFacts& facts = session().season().centre.facts;
    Series draft;
    draft.id = SeriesId{session().newOperation().value};
    draft.uid = draft.id.value;
    draft.kind = EventKind::League;
    draft.zone = facts.zone;
    draft.start = start;
    draft.settle = facts.settings.settle;
    draft.clearing = facts.settings.clearing;
    SurfaceDemand demand;
    demand.kind = DemandKind::Fresh;
    demand.longestAge = facts.settings.longestAge;
    draft.demands = {demand};
    showSide(&editor());
    m_editor->create(draft);
}

void CalendarPage::copyEvent(const SeriesId& id) {
    const Series* series = seriesOf(id);
    if (!series) return;
    Series copy = *series;
    copy.id = SeriesId{session().newOperation().value};
    copy.uid = copy.id.value;
    copy.version = 0;
    copy.title = tr("%1 (copy)").arg(series->title);
    showSide(&editor());
    m_editor->create(copy);
}

void CalendarPage::copySeason(const SeriesId& chosen) {
    if (session().isReadOnly()) return;
    showSide(&seasons());
    m_seasons->open(chosen);
}

void CalendarPage::openMenu(int index, const QPoint& global) {
    const Occurrence* occurrence = occurrenceAt(index);
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    if (!occurrence) {
        const LocalTime start = view()->proposedStart();
        menu->addAction(tr("&New event"), this, [this, start] { createAt(start); });
        menu->popup(global);
        return;
    }
    const SeriesId id = occurrence->series;
    const bool editable = !session().isReadOnly();
    menu->addAction(tr("&Edit…"), this, [this, id] { editSeries(id); });
    menu->addAction(tr("Make a &copy…"), this, [this, id] { copyEvent(id); })->setEnabled(editable);
    const Series* series = seriesOf(id);
    if (series && isRecurring(*series)) {
        menu->addAction(tr("Copy to a new &season…"), this, [this, id] { copySeason(id); })->setEnabled(editable);
    }
    menu->addAction(tr("&Take away…"), this, [this, index] { askRemove(index); })->setEnabled(editable);
    menu->popup(global);
}

}  // namespace laneward
