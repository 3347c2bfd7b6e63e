// What is on each lane now, and at any time: the house view with the reasons beside it.
#pragma once

#include "app/edits/page.h"
#include "app/edits/what_if_runner.h"
#include "app/widgets/house_view.h"

class QSplitter;

namespace laneward {

class AskBar;
class DateBar;
class EventMover;
class SeasonPanel;
class WhyPanel;

class LanesPage : public Page {
    Q_OBJECT

public:
    explicit LanesPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Lanes"); }
    QString iconName() const override { return QStringLiteral("lanes"); }
    QString question() const override { return tr("What is on each lane now, and at any time?"); }
    QString headline() const override { return m_headline; }
    void refresh() override;

    void showDay(QDate day) override;
    void showOccurrence(const SeriesId& series, const LocalTime& original) override;
    void showJob(const JobId& job) override;
    void showLane(int lane) override;

protected:
    void hideEvent(QHideEvent* event) override;
    bool isHolding() const override;

private:
    void build() override;
    void connectParts();
    void connectGhost();
    void loadDays();
    void loadHeads();
    void say();
    void showWhy(int index);
    void showWhyJob(const Job& job);
    void activate(int index);
    void openMenu(int index, const QPoint& global);
    void chooseMoment(qint64 seconds);
    void chooseLevel(int level);
    bool isYear() const;
    void showYear(bool year);
    void goTo(QDate day);
    void step(int direction);
    DateRange range() const;
    HouseSource source() const;
    Instant headsAt() const;
    const Occurrence* chosenOccurrence() const;

    void considerMove(const Ghost& ghost);
    void askMove(const Ghost& ghost);
    std::optional<Job> movedJob(const Ghost& ghost) const;
    void considerJob(const Job& moved);
    void dropJob();
    void springBack(QString why);
    void awaitReply(const QString& title);
    void showReply(const WhatIfReply& reply);
    void leaveMove();

    DateBar* m_bar = nullptr;
    QWidget* m_house = nullptr;     ///< the view and why, side by side
    SeasonPanel* m_year = nullptr;  ///< in its place; made when it is first wanted
    HouseView* m_view = nullptr;
    WhyPanel* m_why = nullptr;
    AskBar* m_ask = nullptr;
    EventMover* m_mover = nullptr;
    DifferenceText m_difference;          ///< what the panel shows while something is dragged
    std::optional<Job> m_moved;           ///< a dragged job at the place that was asked about last
    std::optional<QStringList> m_faults;  ///< what stands in its way, once that is known
    bool m_dropped = false;               ///< let go, and waiting for that
    QDate m_day;
    std::optional<Instant> m_moment;  ///< chosen for the heads; none = now
    bool m_scrolled = false;
    Speech m_speech;
    QString m_headline;
};

}  // namespace laneward
