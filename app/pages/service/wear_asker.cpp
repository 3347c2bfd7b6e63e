#include "app/pages/service/wear_asker.h"

namespace laneward {

class WearAsker::Worker : public QObject {
public:
    explicit Worker(WearAsker& owner) : m_owner(owner) {}

    void answer(quint64 number, const Location& location) {
        if (m_owner.m_newest != number) return;
        const Result<Records> records = read(location);
        QMetaObject::invokeMethod(&m_owner, [this, number, records] { m_owner.take(number, records); });
    }

private:
    /// The store stays open; after a failure, such as a server that was away, it is opened again.
    Result<Records> read(const Location& location) {
        if (!m_store) {
            Result<std::unique_ptr<Store>> store = Store::open(location, Access::ReadOnly, Examination::Elsewhere);
            if (!store) return store.error();
            m_store = *std::move(store);
        }
        Result<std::vector<ServiceRecord>> records = m_store->services(allRecords);
        if (!records) {
            m_store.reset();
            return records.error();
        }
        return Records(std::make_shared<const std::vector<ServiceRecord>>(*std::move(records)));
    }

    WearAsker& m_owner;
    std::unique_ptr<Store> m_store;
};

WearAsker::WearAsker(QObject* parent) : QObject(parent), m_worker(new Worker(*this)) {
    m_worker->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
}

/// Waits for the reading under way; what was posted here goes with it.
WearAsker::~WearAsker() {
    leave();
    const bool ran = m_thread.isRunning();
    m_thread.quit();
    m_thread.wait();
    if (!ran) delete m_worker;
}

void WearAsker::ask(const Location& location) {
    m_busy = true;
    const quint64 number = ++m_newest;
    if (!m_thread.isRunning()) m_thread.start(QThread::LowPriority);
    QMetaObject::invokeMethod(m_worker, [worker = m_worker, number, location] { worker->answer(number, location); });
}

void WearAsker::leave() {
    ++m_newest;
    m_busy = false;
}

void WearAsker::take(quint64 question, const Result<Records>& records) {
    if (question != m_newest) return;
    m_busy = false;
    if (records)
        Q_EMIT answered(*records);
    else
        Q_EMIT failed(records.error());
}

}  // namespace laneward
