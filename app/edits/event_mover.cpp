#include "app/edits/event_mover.h"

#include "app/edits/ask_bar.h"
#include "app/edits/series_edits.h"

#include <algorithm>

namespace laneward {

namespace {

Zone zoneOf(const Series& series, const Zone& fallback) {
    const Result<Zone> zone = Zone::load(series.zone);
    return zone ? *zone : fallback;
}

State withSeries(State state, const Series& after) {
    for (Series& series : state.series) {
        if (series.id == after.id) series = after;
    }
    return state;
}

}  // namespace

/// The edits that a place stands for.
struct EventMover::Edits {
    QString title;
    Span time;
    Series before;
    Series once;
    std::optional<Series> whole;  ///< nothing when it does not come again, or its rule cannot follow
};

EventMover::EventMover(Session& session, AskBar& bar, QObject* parent)
    : QObject(parent), m_session(session), m_bar(bar), m_runner(session) {
    connect(&session, &Session::changed, this, [this] { m_considered.reset(); });
}

std::optional<EventMover::Edits> EventMover::editsFor(const Place& place) const {
    const std::vector<Series>& all = m_session.season().series;
    const auto series = std::find_if(all.begin(), all.end(), [&](const Series& s) { return s.id == place.occurrence.series; });
    if (series == all.end() || m_session.isReadOnly()) return std::nullopt;
    const Instant begin = m_session.zone().toInstant(place.start);
    // The place is in the centre's wall time, the series may keep that of another zone.
    const Move move{place.occurrence.original, zoneOf(*series, m_session.zone()).toLocal(begin), place.duration};
    Edits edits{shown(series->title), {begin, begin + place.duration}, *series, movedOnce(*series, move), {}};
    if (isRecurring(*series)) edits.whole = movedWhole(*series, move);
    return edits;
}

void EventMover::ask(const Edits& edits, const Series& after) {
    if (m_considered == after) return;
    m_considered = after;
    const Speech speech = m_session.speech();
    m_title = tr("What if %1 plays %2 to %3?")
                  .arg(edits.title, dateTimeText(edits.time.begin, speech), clockTime(edits.time.end, speech));
    if (isRecurring(edits.before) && edits.whole == after)
        m_title = tr("What if %1 always plays %2 to %3?")
                      .arg(edits.title, dateTimeText(edits.time.begin, speech), clockTime(edits.time.end, speech));
    m_runner.ask(m_shown, withSeries(m_session.planningState(), after));
    Q_EMIT asked();
}

void EventMover::consider(const Place& place, const DateRange& shown) {
    m_shown = shown;
    if (const std::optional<Edits> edits = editsFor(place)) ask(*edits, edits->once);
}

void EventMover::drop(const Place& place, const DateRange& shown) {
    m_shown = shown;
    const std::optional<Edits> edits = editsFor(place);
    if (!edits) {
        leave();
        Q_EMIT settling();
        return;
    }
    if (!isRecurring(edits->before)) return keep(*edits, edits->once);
    std::vector<AskBar::Answer> answers;
    answers.push_back(
        {tr("This date only"), [this, edits] { keep(*edits, edits->once); }, [this, edits] { ask(*edits, edits->once); }});
    if (edits->whole) {
        answers.push_back({tr("The whole series"), [this, edits] { keep(*edits, *edits->whole); },
                           [this, edits] { ask(*edits, *edits->whole); }});
    }
    const QString when = dateTimeText(edits->time.begin, m_session.speech());
    m_bar.ask(tr("Move %1 to %2?").arg(edits->title, when), std::move(answers));
}

void EventMover::keep(Edits kept, Series next) {
    // By value: what the session and the bar hold goes away while they reload.
    leave();
    Q_EMIT settling();
    if (next != kept.before)
        m_session.apply(tr("Move %1").arg(kept.title), {RowChange<Series>{std::move(kept.before), std::move(next)}});
    Q_EMIT settled();
}

void EventMover::leave() {
    m_considered.reset();
    m_title.clear();
    m_bar.hide();
    m_runner.leave();
}

}  // namespace laneward
