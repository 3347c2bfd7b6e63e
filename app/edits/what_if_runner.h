// Asks 'what if' beside the window: the newest question wins, and the window never waits for an answer.
//
// One question is worked on at a time, on a thread of the application's pool. It is answered twice: at once with what a first
// look finds, then with the proof; a first answer that is already proven is the only one. Behind the last of them follows what
// the change does to stock and cost, where supplies are kept (stock_runner.h). A newer question, leave() and the end of the
// runner cancel what is under way, and nothing is answered after them. The season that the questions start from is planned there
// too, and is kept until the session changes.
//
//     connect(&runner, &WhatIfRunner::answered, this, &CalendarPage::showAnswer);
//     runner.ask(days, changed);
#pragma once

#include "app/edits/stock_runner.h"
#include "core/documents/supply_difference_words.h"
#include "core/season/what_if.h"

namespace laneward {

struct WhatIfReply {
    quint64 question = 0;  ///< as ask() has returned it
    Effort effort = Effort::First;
    DateRange days;  ///< that were planned
    WhatIfAnswer answer;
    std::vector<Finding> violations;       ///< hard constraints that the change would break, when they were asked for
    std::optional<ChangeBesides> besides;  ///< of stockAnswered() only; its cost is of the days that were planned
};

class WhatIfRunner : public QObject {
    Q_OBJECT

public:
    explicit WhatIfRunner(Session& session, QObject* parent = nullptr);
    ~WhatIfRunner() override;

    /// Four weeks from today, and the days shown when those are ahead; far ahead, four weeks from the first day shown.
    static DateRange daysAround(const DateRange& shown, QDate today);

    /// Plans the season already: a question is to be expected.
    void prepare(const DateRange& shown);
    /// `changed` is the session's planning state with an edit in it. With `violationsOn` the reply tells which hard constraints
    /// the change would break on that day. Returns the question's number.
    quint64 ask(const DateRange& shown, State changed, std::optional<QDate> violationsOn = {});
    /// No answer is wanted any more.
    void leave();

Q_SIGNALS:
    void answered(const laneward::WhatIfReply& reply);
    void stockAnswered(const laneward::WhatIfReply& reply);  ///< the last reply once more, with what it does to stock

private:
    struct Base;
    struct Question;
    struct Work;

    std::shared_ptr<const Base> base(const DateRange& shown);
    void hand(Question question);
    void take(const WhatIfReply& reply);
    void askStock(const WhatIfReply& reply);
    void forget();

    Session& m_session;
    std::shared_ptr<const Base> m_base;
    std::shared_ptr<Work> m_work;
    quint64 m_asked = 0;
    StockRunner m_stock;
    std::shared_ptr<const StockBase> m_stockBase;  ///< of m_base
    std::shared_ptr<const State> m_changed;        ///< what was asked about last
};

}  // namespace laneward
