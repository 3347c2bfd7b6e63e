// What a change of the calendar does to stock and service, worked out beside the window and beside the planning of 'what if': a
// thread of its own, so that the next question never waits for history to be read. The newest question wins.
//
// The past is learned from once and kept until other things are recorded; the outlook without the change is kept as long as the
// questions start from the same state.
//
//     runner.ask(before, changed, [this](const SupplyDifference& change) { … });   // on this thread, later; never after leave()
#pragma once

#include "app/edits/session.h"
#include "app/edits/supply_past.h"
#include "core/season/service_difference.h"
#include "core/season/supply_difference.h"

#include <QObject>
#include <QThreadPool>

namespace laneward {

/// What a question starts from.
struct StockBase {
    State state;
    SeasonState season;
    Location location;
    Instant now;
};

struct StockAnswer {
    SupplyDifference difference;
    std::vector<DutyShift> service;
    ProductCost cost;    ///< after less before, of stockDays
    UseFactors factors;  ///< real over nominal use, as learned
};

class StockRunner : public QObject {
    Q_OBJECT

public:
    using Answered = std::function<void(const StockAnswer&)>;

    explicit StockRunner(QObject* parent = nullptr);
    ~StockRunner() override;

    void ask(std::shared_ptr<const StockBase> base, std::shared_ptr<const State> changed, Answered answered);
    /// No answer is wanted any more.
    void leave();
    bool isBusy() const { return m_busy; }
    static QThreadPool& threads();  ///< that all runners work on

private:
    struct Ahead;
    struct Question;
    struct Work;

    void take(quint64 question, const StockAnswer& answer, const Answered& answered);

    std::shared_ptr<Work> m_work;
    quint64 m_asked = 0;
    bool m_busy = false;
};

}  // namespace laneward
