// Work beside the window: one question at a time on a thread of its own. The newest question wins, and the window never waits.
//
// A question is a function that runs on that thread. What it hands back is run on the thread that asked, unless a newer question
// was asked meanwhile, none is wanted any more or the asker has gone. The thread keeps a second store open on the centre,
// read-only: making the connection takes longer than asking. Going away waits for the step under way, so that nothing uses the
// database, or what the question refers to, afterwards: declare a Beside as the last member.
//
//     m_beside.ask([this, location](const Beside::Question& question) {
//         const Result<Store*> store = question.store(location);
//         …
//         question.answer([this, found] { Q_EMIT answered(found); });
//     });
#pragma once

#include "core/storage/store.h"

#include <QThread>

#include <atomic>
#include <functional>
#include <memory>

namespace laneward {

class Beside {
public:
    class Question;
    using Work = std::function<void(const Question&)>;
    using Heard = std::function<void()>;

    Beside();
    ~Beside();
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;

    /// Cancels what is under way.
    void ask(Work work);
    /// No answer is wanted any more.
    void leave();
    bool isBusy() const { return m_busy; }  ///< until the newest question is answered

private:
    class There;

    void hear(quint64 number, bool isAnswer, const Heard& heard);

    std::atomic<quint64> m_newest = 0;
    bool m_busy = false;
    QObject m_here;  ///< what is posted to it goes with it
    There* m_there;  ///< lives on the thread
    QThread m_thread;
};

/// As the work sees it.
class Beside::Question {
public:
    /// The work had better end: nobody waits for it.
    bool isLate() const { return m_owner.m_newest.load(std::memory_order_relaxed) != m_number; }
    /// Runs on the thread that asked, in the order in which they were told.
    void tell(Heard heard) const { post(std::move(heard), false); }
    /// As tell(), and ends being busy.
    void answer(Heard heard) const { post(std::move(heard), true); }

    /// Open as long as the thread lives.
    Result<Store*> store(const Location& location) const;
    /// After a failure, such as a server that was away: it is opened again when it is needed next.
    void closeStore() const;

private:
    friend class Beside;
    Question(Beside& owner, There& there, quint64 number) : m_owner(owner), m_there(there), m_number(number) {}
    void post(Heard heard, bool isAnswer) const;

    Beside& m_owner;
    There& m_there;
    quint64 m_number;
};

}  // namespace laneward
