// Reads years of records beside the window and makes them ready for searching: the newest question wins, and the window never
// waits. It is read year by year (beside.h).
//
//     connect(&reader, &HistoryReader::answered, this, &HistoryPage::take);
//     reader.read(session, session.today().addYears(-1));
#pragma once

#include "app/edits/beside.h"
#include "app/edits/session.h"
#include "core/documents/history_index.h"

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
    void leave() { m_beside.leave(); }
    bool isBusy() const { return m_beside.isBusy(); }

Q_SIGNALS:
    void answered(const std::shared_ptr<const laneward::HistoryReading>& reading);
    void failed(const laneward::Error& why);
    void progressed(double done);  ///< 0 to 1, after each year

private:
    struct Question;

    void answer(const Question& question, const Beside::Question& asked);
    Outcome readYears(const Question& question, const Beside::Question& asked, HistorySlice& slice);

    Beside m_beside;
};

}  // namespace laneward
