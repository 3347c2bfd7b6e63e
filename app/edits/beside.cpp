#include "app/edits/beside.h"

namespace laneward {

class Beside::There : public QObject {
public:
    std::unique_ptr<Store> store;
};

Beside::Beside() : m_there(new There) {
    m_there->moveToThread(&m_thread);
    QObject::connect(&m_thread, &QThread::finished, m_there, &QObject::deleteLater);
}

/// The store is closed by the thread that has opened it.
Beside::~Beside() {
    leave();
    const bool ran = m_thread.isRunning();
    m_thread.quit();
    m_thread.wait();
    if (!ran) delete m_there;
}

void Beside::ask(Work work) {
    m_busy = true;
    if (!m_thread.isRunning()) m_thread.start(QThread::LowPriority);
    const Question question(*this, *m_there, ++m_newest);
    QMetaObject::invokeMethod(m_there, [question, work = std::move(work)] {
        if (!question.isLate()) work(question);
    });
}

void Beside::leave() {
    ++m_newest;
    m_busy = false;
}

/// Hearing comes last: whoever hears may ask again, or go away.
void Beside::hear(quint64 number, bool isAnswer, const Heard& heard) {
    if (number != m_newest) return;
    if (isAnswer) m_busy = false;
    heard();
}

void Beside::Question::post(Heard heard, bool isAnswer) const {
    QMetaObject::invokeMethod(&m_owner.m_here, [owner = &m_owner, number = m_number, isAnswer, heard = std::move(heard)] {
        owner->hear(number, isAnswer, heard);
    });
}

Result<Store*> Beside::Question::store(const Location& location) const {
    if (!m_there.store) {
        Result<std::unique_ptr<Store>> opened = Store::open(location, Access::ReadOnly, Examination::Elsewhere);
        if (!opened) return opened.error();
        m_there.store = *std::move(opened);
    }
    return m_there.store.get();
}

void Beside::Question::closeStore() const { m_there.store.reset(); }

}  // namespace laneward
