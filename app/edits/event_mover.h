// Moving an event in a page: what it would do while it moves, and the one undoable edit when it is let go. An event that comes
// again is asked about first: this date only, or the whole series.
//
//     mover.consider({*occurrence, start, duration}, range());   // as often as the mouse moves
//     mover.drop({*occurrence, start, duration}, range());
#pragma once

#include "app/edits/what_if_runner.h"

namespace laneward {

class AskBar;

class EventMover : public QObject {
    Q_OBJECT

public:
    /// Where an occurrence would play, in the centre's wall time.
    struct Place {
        const Occurrence& occurrence;
        LocalTime start;
        Seconds duration;
    };

    EventMover(Session& session, AskBar& bar, QObject* parent = nullptr);

    WhatIfRunner& runner() { return m_runner; }
    /// Asks what this date there would do. `shown` is what the page shows.
    void consider(const Place& place, const DateRange& shown);
    void drop(const Place& place, const DateRange& shown);
    /// Esc: nothing is asked any more.
    void leave();
    /// "What if Thursday Fours plays on Fri 13 Nov, 19:00 to 22:00?", of the question that was asked last.
    QString title() const { return m_title; }

Q_SIGNALS:
    void asked();     ///< another question than before: what is shown is not its answer
    void settling();  ///< the edit comes next: take the ghost away
    void settled();

private:
    struct Edits;

    std::optional<Edits> editsFor(const Place& place) const;
    void ask(const Edits& edits, const Series& after);
    void keep(Edits kept, Series next);

    Session& m_session;
    AskBar& m_bar;
    WhatIfRunner m_runner;
    DateRange m_shown;
    QString m_title;
    std::optional<Series> m_considered;
};

}  // namespace laneward
