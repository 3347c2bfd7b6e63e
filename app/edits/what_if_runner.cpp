#include "app/edits/what_if_runner.h"

#include <QThreadPool>

#include <algorithm>
#include <atomic>
#include <mutex>

namespace laneward {

namespace {

constexpr int leastDays = 28;
constexpr std::int64_t nodesForViolations = 2'000;  // what stands in the way of a job does not wait for the proof of its day

/// Hard constraints that the change breaks and that were kept before it.
std::vector<Finding> newViolations(const State& before, const State& changed, Instant now, QDate day,
                                   const Cancelled& cancelled) {
    const auto broken = [&](const State& state) {
        return violationsOf(state, plan(state, now, {day, day}, nodesForViolations, cancelled));
    };
    const std::vector<Finding> known = broken(before);
    std::vector<Finding> fresh;
    for (const Finding& finding : broken(changed)) {
        const bool old = std::find(known.begin(), known.end(), finding) != known.end();
        if (!old && std::find(fresh.begin(), fresh.end(), finding) == fresh.end()) fresh.push_back(finding);
    }
    return fresh;
}

}  // namespace

/// What the questions start from.
struct WhatIfRunner::Base {
    State state;
    Instant now;
    DateRange days;
};

struct WhatIfRunner::Question {
    quint64 number = 0;
    std::shared_ptr<const Base> base;
    std::shared_ptr<const State> changed;  ///< nothing: only plan the season
    std::optional<QDate> violationsOn;
};

/// Shared with the thread, which may outlive the runner by as long as one step takes.
struct WhatIfRunner::Work {
    std::mutex mutex;
    WhatIfRunner* owner = nullptr;  ///< null when nobody listens any more
    std::optional<Question> next;
    bool running = false;
    std::atomic<quint64> newest = 0;
    // The thread's own while it runs.
    std::shared_ptr<const Base> planned;
    std::optional<WhatIf> season;

    static void run(const std::shared_ptr<Work>& work);
    std::optional<Question> takeNext();
    void answer(const Question& question);
    bool deliver(WhatIfReply reply, const Question& question);
};

void WhatIfRunner::Work::run(const std::shared_ptr<Work>& work) {
    while (const std::optional<Question> question = work->takeNext()) {
        if (work->planned != question->base) {
            work->season.reset();
            work->season.emplace(question->base->state, question->base->now, question->base->days);
            work->planned = question->base;
        }
        if (question->changed) work->answer(*question);
    }
}

std::optional<WhatIfRunner::Question> WhatIfRunner::Work::takeNext() {
    const std::scoped_lock lock(mutex);
    std::optional<Question> question;
    std::swap(question, next);
    running = question && owner;
    return running ? question : std::nullopt;
}

void WhatIfRunner::Work::answer(const Question& question) {
    const Cancelled cancelled = [this, &question] { return newest.load(std::memory_order_relaxed) != question.number; };
    std::vector<Finding> violations;
    if (question.violationsOn && !cancelled()) {
        violations =
            newViolations(question.base->state, *question.changed, question.base->now, *question.violationsOn, cancelled);
    }
    for (const Effort effort : {Effort::First, Effort::Proven}) {
        if (cancelled()) return;
        WhatIfReply reply{question.number, effort, question.base->days, season->ask(*question.changed, effort, cancelled),
                          violations};
        if (reply.answer.cancelled) return;
        const bool last = reply.answer.proven;
        if (!deliver(std::move(reply), question) || last) return;
    }
}

/// Posted under the lock, so that the owner cannot go away meanwhile; what is posted to it goes with it.
bool WhatIfRunner::Work::deliver(WhatIfReply reply, const Question& question) {
    const std::scoped_lock lock(mutex);
    if (!owner || newest != question.number) return false;
    WhatIfRunner* to = owner;
    QMetaObject::invokeMethod(
        to, [to, reply = std::move(reply)] { to->take(reply); }, Qt::QueuedConnection);
    return true;
}

WhatIfRunner::WhatIfRunner(Session& session, QObject* parent)
    : QObject(parent), m_session(session), m_work(std::make_shared<Work>()) {
    m_work->owner = this;
    connect(&session, &Session::changed, this, &WhatIfRunner::forget);
}

WhatIfRunner::~WhatIfRunner() {
    const std::scoped_lock lock(m_work->mutex);
    m_work->owner = nullptr;
    m_work->next.reset();
    m_work->newest = 0;
}

DateRange WhatIfRunner::daysAround(const DateRange& shown, QDate today) {
    const QDate least = today.addDays(leastDays - 1);
    if (shown.first > least) return {shown.first, std::max(shown.last, shown.first.addDays(leastDays - 1))};
    return {today, std::max(shown.last, least)};
}

std::shared_ptr<const WhatIfRunner::Base> WhatIfRunner::base(const DateRange& shown) {
    const DateRange days = daysAround(shown, m_session.today());
    if (!m_base || m_base->days != days) {
        m_base = std::make_shared<const Base>(Base{m_session.planningState(), m_session.now(), days});
    }
    return m_base;
}

void WhatIfRunner::prepare(const DateRange& shown) {
    const std::shared_ptr<const Base> had = m_base;
    if (base(shown) == had) return;
    m_stock.leave();
    hand({++m_asked, m_base, {}, {}});
}

quint64 WhatIfRunner::ask(const DateRange& shown, State changed, std::optional<QDate> violationsOn) {
    m_stock.leave();
    m_changed = std::make_shared<const State>(std::move(changed));
    hand({++m_asked, base(shown), m_changed, violationsOn});
    return m_asked;
}

void WhatIfRunner::hand(Question question) {
    const std::scoped_lock lock(m_work->mutex);
    m_work->newest = question.number;
    m_work->next = std::move(question);
    if (m_work->running) return;
    m_work->running = true;
    QThreadPool::globalInstance()->start([work = m_work] { Work::run(work); });
}

void WhatIfRunner::leave() {
    m_stock.leave();
    m_changed.reset();
    const std::scoped_lock lock(m_work->mutex);
    m_work->newest = ++m_asked;
    if (m_work->next) m_work->next->changed.reset();  // the season is worth planning all the same
}

void WhatIfRunner::forget() {
    m_stock.leave();
    m_stockBase.reset();
    m_changed.reset();
    m_base.reset();
    const std::scoped_lock lock(m_work->mutex);
    m_work->newest = ++m_asked;
    m_work->next.reset();
    if (m_work->running) return;
    m_work->season.reset();
    m_work->planned.reset();
}

void WhatIfRunner::take(const WhatIfReply& reply) {
    if (reply.question != m_asked) return;
    const bool last = reply.answer.proven || reply.effort == Effort::Proven;
    Q_EMIT answered(reply);
    if (last && reply.question == m_asked) askStock(reply);
}

void WhatIfRunner::askStock(const WhatIfReply& reply) {
    if (!m_changed || !m_base || (m_session.season().supplies.empty() && m_session.season().items.empty())) return;
    if (!m_stockBase) {
        m_stockBase = std::make_shared<const StockBase>(
            StockBase{m_base->state, m_session.season(), m_session.store().location(), m_base->now});
    }
    m_stock.ask(m_stockBase, m_changed, [this, reply](const StockAnswer& answer) {
        WhatIfReply more = reply;
        more.besides =
            ChangeBesides{answer.difference, answer.service, costOf(reply.answer.difference, m_session.season(), answer.factors)};
        Q_EMIT stockAnswered(more);
    });
}

}  // namespace laneward
