// What is on each lane now, and at any time: the house view with the reasons beside it.
#pragma once

#include "app/edits/page.h"
#include "app/widgets/house_view.h"

class QSplitter;

namespace laneward {

class DateBar;
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

private:
    void build() override;
    void connectParts();
    void loadDays();
    void loadHeads();
    void say();
    void showWhy(int index);
    void activate(int index);
    void openMenu(int index, const QPoint& global);
    void chooseMoment(qint64 seconds);
    void chooseLevel(int level);
    void step(int direction);
    DateRange range() const;
    HouseSource source() const;
    Instant headsAt() const;
    const Occurrence* chosenOccurrence() const;

    DateBar* m_bar = nullptr;
    HouseView* m_view = nullptr;
    WhyPanel* m_why = nullptr;
    QDate m_day;
    std::optional<Instant> m_moment;  ///< chosen for the heads; none = now
    bool m_scrolled = false;
    Speech m_speech;
    QString m_headline;
};

}  // namespace laneward
