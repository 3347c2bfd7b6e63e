// A page of the window: it answers one question in its top line, and shows what the answer rests on.
//
// The frame shows headline() above the page and the title in the rail. A page refreshes itself when it is shown and when the
// session changes while it is visible; refresh() must keep what the person is typing. Everything that another page or the frame
// has to do is asked for by a signal.
//
//     class LanesPage : public Page { ... QString title() const override { return tr("Lanes"); } ... };
#pragma once

#include "app/edits/session.h"

#include <QPointer>
#include <QWidget>

namespace laneward {

class Page : public QWidget {
    Q_OBJECT

public:
    explicit Page(Session& session, QWidget* parent = nullptr);

    virtual QString title() const = 0;     ///< one word, for the rail
    virtual QString iconName() const = 0;  ///< "today", "calendar", "lanes"; see app/window/glyphs.h
    virtual QString question() const = 0;  ///< what the page answers: shown as the headline's tool tip
    virtual QString headline() const = 0;  ///< the answer, one sentence
    virtual void refresh() = 0;            ///< the session's state is another, or time has passed

    /// Goes to a day, where the page has days; used by the search.
    virtual void showDay(QDate /*day*/) {}
    /// Selects an event or a job where the page shows them.
    virtual void showOccurrence(const SeriesId& /*series*/, const LocalTime& /*original*/) {}
    virtual void showJob(const JobId& /*job*/) {}
    virtual void showLane(int /*lane*/) {}

    /// Makes the page's parts before they are used for the first time: most sittings never open every page.
    void wake();
    void setVisible(bool visible) override;
    /// Calls refresh() now when the page is visible, else when it is shown next.
    void refreshSoon();

Q_SIGNALS:
    void headlineChanged();
    void sheetWanted(QDate day);                                          ///< print preview of that day's sheet
    void guideWanted();                                                   ///< the evening step by step
    void recordWanted(const JobId& job);                                  ///< the Today page records it
    void eventWanted(const SeriesId& series, const LocalTime& original);  ///< the Calendar page shows or edits it

protected:
    void showEvent(QShowEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    /// Where the keyboard begins when the page is opened. A focus proxy would make Tab pass by what stands before it.
    void startAt(QWidget* part) { m_start = part; }
    Session& session() const { return m_session; }
    virtual void build() {}

    /// The page shows plans: it refreshes itself when a better one was found, as soon as nothing is in the person's hand.
    void followPlans();
    /// Whether a refresh would take something out of the person's hand.
    virtual bool isHolding() const { return false; }
    /// Something was let go.
    void letGo();

private:
    Session& m_session;
    QPointer<QWidget> m_start;
    bool m_awake = false;
    bool m_stale = true;
    bool m_planWaits = false;
};

}  // namespace laneward
