// Plans a season beside the window and hands back its figures: the newest question wins, and the window never waits.
//
//     connect(&asker, &SeasonAsker::answered, this, &SeasonPanel::showSeason);
//     asker.ask(session.planningState(), session.now(), days);
#pragma once

#include "core/season/season_figures.h"

#include <QObject>

#include <memory>

namespace laneward {

class SeasonAsker : public QObject {
    Q_OBJECT

public:
    explicit SeasonAsker(QObject* parent = nullptr);
    ~SeasonAsker() override;

    /// Cancels what is under way. The answer comes on this thread, later.
    void ask(State state, Instant now, const DateRange& days);
    /// No answer is wanted any more.
    void leave();
    bool isBusy() const { return m_work != nullptr; }

Q_SIGNALS:
    void answered(const laneward::SeasonFigures& season);

private:
    struct Work;

    std::shared_ptr<Work> m_work;  ///< under way
};

}  // namespace laneward
