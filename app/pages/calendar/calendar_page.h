// What is booked, and what it asks of the lanes: month, week and day, with the event editor beside them.
#pragma once

#include "app/edits/page.h"
#include "app/edits/what_if_runner.h"
#include "app/pages/calendar/diary_view.h"

class QLabel;
class QPushButton;
class QSplitter;
class QStackedWidget;

namespace laneward {

class AskBar;
class CopySeasonPanel;
class DateBar;
class EventEditor;
class EventMover;
class MonthView;
class StaffPanel;
class WeekView;

class CalendarPage : public Page {
    Q_OBJECT

public:
    enum class Level { Month, Week, Day };

    explicit CalendarPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Calendar"); }
    QString iconName() const override { return QStringLiteral("calendar"); }
    QString question() const override { return tr("What is booked, and what does it ask of the lanes?"); }
    QString headline() const override { return m_headline; }
    void refresh() override;
    void showDay(QDate day) override;
    void showOccurrence(const SeriesId& series, const LocalTime& original) override;

    Level level() const;
    void setLevel(Level level);
    void createAt(const LocalTime& start);
    void editSeries(const SeriesId& id);
    void copySeason(const SeriesId& chosen);
    void showStaffHours();  ///< of the days shown

protected:
    void hideEvent(QHideEvent* event) override;
    bool isHolding() const override;

private:
    void build() override;
    void buildBar();
    void buildViews();
    void buildSide();
    void buildMover();
    EventEditor& editor();
    CopySeasonPanel& seasons();
    StaffPanel& staff();
    void connectView(DiaryView* view);
    void loadDays();
    void say();
    DateRange range() const;
    DiaryView* view() const;
    void step(int direction);
    void open(int index);
    void openMenu(int index, const QPoint& global);
    void showStatus(const QString& words);
    void closeSide();
    void showSide(QWidget* panel);

    const Occurrence* occurrenceOf(const QString& key) const;
    const Occurrence* occurrenceAt(int index) const;
    const Series* seriesOf(const SeriesId& id) const;
    void considerMove(const Ghost& ghost);
    void askMove(const Ghost& ghost);
    void showReply(const WhatIfReply& reply);
    void askRemove(int index);
    bool change(const QString& name, Series before, const std::optional<Series>& after);
    void copyEvent(const SeriesId& id);
    void cancelDate(const SeriesId& id, const LocalTime& original);
    void remove(const SeriesId& id);

    DateBar* m_bar = nullptr;
    QPushButton* m_new = nullptr;
    QPushButton* m_copy = nullptr;
    QPushButton* m_hours = nullptr;
    AskBar* m_ask = nullptr;
    EventMover* m_mover = nullptr;
    QSplitter* m_split = nullptr;
    QStackedWidget* m_views = nullptr;
    MonthView* m_month = nullptr;
    WeekView* m_week = nullptr;
    QStackedWidget* m_side = nullptr;
    EventEditor* m_editor = nullptr;
    CopySeasonPanel* m_seasons = nullptr;
    StaffPanel* m_staff = nullptr;
    QLabel* m_status = nullptr;
    QDate m_day;
    Speech m_speech;
    QString m_headline;
    bool m_scroll = true;
};

}  // namespace laneward
