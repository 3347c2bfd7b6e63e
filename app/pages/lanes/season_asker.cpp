#include "app/pages/lanes/season_asker.h"

#include <QThreadPool>

#include <atomic>
#include <mutex>

namespace laneward {

/// Shared with the thread, which may outlive the asker by as long as one step takes.
struct SeasonAsker::Work {
    State state;
    Instant now;
    DateRange days;
    std::atomic<bool> left = false;
    std::mutex mutex;
    SeasonAsker* owner = nullptr;  ///< null when nobody listens any more

    static void run(const std::shared_ptr<Work>& work);
};

void SeasonAsker::Work::run(const std::shared_ptr<Work>& work) {
    if (work->left) return;
    const Plan planned = plan(work->state, work->now, work->days, defaultNodeLimit, [&work] { return work->left.load(); });
    if (work->left) return;
    const SeasonFigures season = seasonFigures(work->state, planned);
    // Posted under the lock, so that the owner cannot go away meanwhile; what is posted to it goes with it.
    const std::scoped_lock lock(work->mutex);
    SeasonAsker* to = work->owner;
    if (!to) return;
    QMetaObject::invokeMethod(
        to,
        [to, work, season] {
            if (to->m_work != work) return;
            to->m_work.reset();
            Q_EMIT to->answered(season);
        },
        Qt::QueuedConnection);
}

SeasonAsker::SeasonAsker(QObject* parent) : QObject(parent) {}

SeasonAsker::~SeasonAsker() { leave(); }

void SeasonAsker::leave() {
    if (!m_work) return;
    const std::shared_ptr<Work> work = std::move(m_work);  // outlives the lock on it
    work->left = true;
    const std::scoped_lock lock(work->mutex);
    work->owner = nullptr;
}

void SeasonAsker::ask(State state, Instant now, const DateRange& days) {
    leave();
    m_work = std::make_shared<Work>();
    m_work->state = std::move(state);
    m_work->now = now;
    m_work->days = days;
    m_work->owner = this;
    QThreadPool::globalInstance()->start([work = m_work] { Work::run(work); });
}

}  // namespace laneward
