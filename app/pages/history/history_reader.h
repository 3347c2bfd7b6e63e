// Reads years of records beside the window and makes them ready for searching: the newest question wins, and the window never
// waits. A thread of its own keeps a second store open on the same centre, read-only, and reads year by year.
//
//     connect(&reader, &HistoryReader::answered, this, &HistoryPage::take);
//     reader.read(session, session.today().addYears(-1));
#pragma once

#include "app/edits/session.h"
#include "core/documents/history_index.h"

#include <QThread>

#include <atomic>

namespace laneward {

/// All records since a day; the index's entries name their places in the slice.
struct HistoryReading {
    QDate from;
    HistorySlice slice;
    HistoryIndex index;
};

class HistoryReader : public QObject {
    Q_OBJECT

public:
    explicit HistoryReader(QObject* parent = nullptr);
    ~HistoryReader() override;

    /// Cancels what is under way. The answer comes on this thread, later.
    void read(Session& session, QDate from);
    /// No answer is wanted any more.
    void leave();
    bool isBusy() const { return m_busy; }

Q_SIGNALS:
    void answered(const std::shared_ptr<const laneward::HistoryReading>& reading);
    void failed(const laneward::Error& why);
    void progressed(double done);  ///< 0 to 1, after each year

private:
    class Worker;
    struct Question;

    void take(quint64 question, const std::shared_ptr<const HistoryReading>& reading);
    void takeFailure(quint64 question, const Error& why);

    QThread m_thread;
    Worker* m_worker;  ///< lives there
    std::atomic<quint64> m_newest = 0;
    bool m_busy = false;
};

}  // namespace laneward
