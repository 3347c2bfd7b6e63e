#include "app/pages/patterns/carry_asker.h"

#include <QThreadPool>

#include <atomic>
#include <mutex>

namespace laneward {

/// Shared with the thread, which may outlive the asker by as long as one fit takes.
struct CarryAsker::Work {
    std::vector<CarryQuestion> questions;
    std::atomic<bool> left = false;
    std::mutex mutex;
    CarryAsker* owner = nullptr;  ///< null when nobody listens any more

    static void run(const std::shared_ptr<Work>& work);
};

void CarryAsker::Work::run(const std::shared_ptr<Work>& work) {
    std::vector<CarryAnswer> answers;
    for (const CarryQuestion& question : work->questions) {
        if (work->left) return;
        const Result<CarryFit> fit = fitCarry(question.measured);
        CarryAnswer answer{question.machine, int(question.measured.size()), {}, {}};
        if (fit)
            answer.fit = *fit;
        else
            answer.why = fit.error().finding;
        answers.push_back(std::move(answer));
    }
    // Posted under the lock, so that the owner cannot go away meanwhile; what is posted to it goes with it.
    const std::scoped_lock lock(work->mutex);
    CarryAsker* to = work->owner;
    if (!to) return;
    QMetaObject::invokeMethod(
        to,
        [to, work, answers] {
            if (to->m_work != work) return;
            to->m_work.reset();
            Q_EMIT to->answered(answers);
        },
        Qt::QueuedConnection);
}

CarryAsker::CarryAsker(QObject* parent) : QObject(parent) {}

CarryAsker::~CarryAsker() { leave(); }

void CarryAsker::leave() {
    if (!m_work) return;
    const std::shared_ptr<Work> work = std::move(m_work);
    work->left = true;
    const std::scoped_lock lock(work->mutex);
    work->owner = nullptr;
}

void CarryAsker::ask(std::vector<CarryQuestion> questions) {
    leave();
    m_work = std::make_shared<Work>();
    m_work->questions = std::move(questions);
    m_work->owner = this;
    QThreadPool::globalInstance()->start([work = m_work] { Work::run(work); });
}

}  // namespace laneward
