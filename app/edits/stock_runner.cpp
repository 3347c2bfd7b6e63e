#include "app/edits/stock_runner.h"

#include <atomic>
#include <condition_variable>

namespace laneward {

/// How long stock lasts, when duties fall due, and the jobs that both come of.
struct StockRunner::Ahead {
    SupplyOutlook outlook;
    ServiceOutlook service;
    std::vector<Job> jobs;
};

struct StockRunner::Question {
    quint64 number = 0;
    std::shared_ptr<const StockBase> base;
    std::shared_ptr<const State> changed;
    Answered answered;
};

/// Shared with the thread. The runner waits for the step under way: the database is gone soon after the window is.
struct StockRunner::Work {
    std::mutex mutex;
    std::condition_variable idle;  ///< whenever `running` ends
    StockRunner* owner = nullptr;  ///< null when nobody listens any more
    std::optional<Question> next;
    bool running = false;
    std::atomic<quint64> newest = 0;
    // The thread's own while it runs.
    SupplyPastReader past;
    PlanMemo memo;
    std::shared_ptr<const StockBase> beforeOf;  ///< what `before` was made from
    std::optional<Ahead> before;                ///< without any change

    static void run(const std::shared_ptr<Work>& work);
    std::optional<Question> takeNext();
    void answer(const Question& question);
    std::optional<Ahead> lookAhead(const State& state, const StockBase& base, const SupplyPast& known,
                                   const Cancelled& cancelled);
    void deliver(const Question& question, StockAnswer answer);
};

void StockRunner::Work::run(const std::shared_ptr<Work>& work) {
    while (const std::optional<Question> question = work->takeNext())
        work->answer(*question);
}

std::optional<StockRunner::Question> StockRunner::Work::takeNext() {
    const std::scoped_lock lock(mutex);
    std::optional<Question> question;
    std::swap(question, next);
    running = question && owner;
    if (!running) idle.notify_all();
    return running ? question : std::nullopt;
}

/// Days that the change leaves alone are known from the plan before it.
std::optional<StockRunner::Ahead> StockRunner::Work::lookAhead(const State& state, const StockBase& base, const SupplyPast& known,
                                                               const Cancelled& cancelled) {
    const QDate today = dateOf(base.season.centre, base.now);
    const DateRange days{today, today.addDays(stockDays - 1)};
    Plan ahead = plan(PlanTask{state, base.now, days, stockNodes, cancelled}, memo);
    if (cancelled()) return std::nullopt;
    auto outlook = supplyOutlook({base.season, ahead, known.learned, known.receipts, base.now}, {}, {cancelled, {}});
    if (!outlook) return std::nullopt;
    return Ahead{*std::move(outlook), serviceOutlook({base.season, ahead, base.now}, {}), std::move(ahead.jobs)};
}

void StockRunner::Work::answer(const Question& question) {
    const Cancelled cancelled = [this, &question] { return newest.load(std::memory_order_relaxed) != question.number; };
    const StockBase& base = *question.base;
    if (cancelled()) return;
    const std::shared_ptr<const SupplyPast> known = past.read(base.location, base.season, base.now);
    if (!known || cancelled()) return;
    if (beforeOf != question.base) {
        before = lookAhead(base.state, base, *known, cancelled);
        beforeOf = before ? question.base : nullptr;
    }
    if (!before) return;
    const std::optional<Ahead> after = lookAhead(*question.changed, base, *known, cancelled);
    if (!after) return;
    const UseFactors factors = factorsOf(known->learned.machines);
    PlanDifference whole;
    whole.removed = before->jobs;
    whole.added = after->jobs;
    deliver(question, {supplyDifference(before->outlook, after->outlook), serviceDifference(before->service, after->service),
                       costOf(whole, base.season, factors), factors});
}

/// Posted under the lock, so that the owner cannot go away meanwhile; what is posted to it goes with it.
void StockRunner::Work::deliver(const Question& question, StockAnswer answer) {
    const std::scoped_lock lock(mutex);
    if (!owner || newest != question.number) return;
    StockRunner* to = owner;
    QMetaObject::invokeMethod(
        to,
        [to, number = question.number, answer = std::move(answer), answered = question.answered] {
            to->take(number, answer, answered);
        },
        Qt::QueuedConnection);
}

QThreadPool& StockRunner::threads() {
    static QThreadPool pool;
    return pool;
}

StockRunner::StockRunner(QObject* parent) : QObject(parent), m_work(std::make_shared<Work>()) { m_work->owner = this; }

StockRunner::~StockRunner() {
    std::unique_lock lock(m_work->mutex);
    m_work->owner = nullptr;
    m_work->next.reset();
    m_work->newest = 0;
    m_work->idle.wait(lock, [this] { return !m_work->running; });
}

void StockRunner::ask(std::shared_ptr<const StockBase> base, std::shared_ptr<const State> changed, Answered answered) {
    const std::scoped_lock lock(m_work->mutex);
    m_work->newest = ++m_asked;
    m_busy = true;
    m_work->next = Question{m_asked, std::move(base), std::move(changed), std::move(answered)};
    if (m_work->running) return;
    m_work->running = true;
    threads().start([work = m_work] { Work::run(work); });
}

void StockRunner::leave() {
    const std::scoped_lock lock(m_work->mutex);
    m_work->newest = ++m_asked;
    m_work->next.reset();
    m_busy = false;
}

void StockRunner::take(quint64 question, const StockAnswer& answer, const Answered& answered) {
    if (question != m_asked) return;
    m_busy = false;
    answered(answer);
}

}  // namespace laneward
