#include "app/pages/history/history_reader.h"

namespace laneward {

namespace {

constexpr double readShare = 0.7;  // of the work; the rest is putting it into words

Instant timeOf(const RunLog& run) { return run.time.end; }
Instant timeOf(const LevelReading& reading) { return reading.levels.at; }
template <class T>
Instant timeOf(const T& record) {
    return record.at;
}

/// What a store hands out for one span goes behind what is there. Records of other spans come along when they correct one of
/// this span: later ones are read with their own, and those before `first` are taken once.
template <class T>
void append(std::vector<T> more, const Span& span, Instant first, std::vector<T>& to) {
    for (T& record : more) {
        const Instant at = timeOf(record);
        const auto same = [&](const T& other) { return other.id == record.id; };
        if (span.contains(at) || (at < first && std::none_of(to.begin(), to.end(), same))) to.push_back(std::move(record));
    }
}

void append(HistorySlice more, const Span& span, Instant first, HistorySlice& to) {
    append(std::move(more.runs), span, first, to.runs);
    append(std::move(more.readings), span, first, to.readings);
    append(std::move(more.services), span, first, to.services);
    append(std::move(more.counters), span, first, to.counters);
    append(std::move(more.packReadings), span, first, to.packReadings);
    append(std::move(more.incidents), span, first, to.incidents);
    append(std::move(more.handOvers), span, first, to.handOvers);
    append(std::move(more.tapes), span, first, to.tapes);
    append(std::move(more.inspections), span, first, to.inspections);
    append(std::move(more.counts), span, first, to.counts);
    append(std::move(more.movements), span, first, to.movements);
}

}  // namespace

struct HistoryReader::Question {
    quint64 number = 0;
    Location location;
    SeasonState season;
    Speech speech;
    QDate from;
    QDate today;
};

class HistoryReader::Worker : public QObject {
public:
    explicit Worker(HistoryReader& owner) : m_owner(owner) {}

    void answer(const Question& question) {
        if (isLate(question)) return;
        auto reading = std::make_shared<HistoryReading>();
        reading->from = question.from;
        if (const Outcome read = readYears(question, reading->slice); !read) {
            m_store.reset();  // after a server was away it is opened again
            QMetaObject::invokeMethod(&m_owner,
                                      [this, number = question.number, why = read.error()] { m_owner.takeFailure(number, why); });
            return;
        }
        if (isLate(question)) return;
        reading->index = HistoryIndex(historyEntries(reading->slice, question.season, question.speech));
        QMetaObject::invokeMethod(&m_owner, [this, number = question.number, reading] { m_owner.take(number, reading); });
    }

private:
    bool isLate(const Question& question) const { return m_owner.m_newest.load(std::memory_order_relaxed) != question.number; }

    Outcome readYears(const Question& question, HistorySlice& slice) {
        if (!m_store) {
            Result<std::unique_ptr<Store>> store = Store::open(question.location, Access::ReadOnly, Examination::Elsewhere);
            if (!store) return store.error();
            m_store = *std::move(store);
        }
        const Centre& centre = question.season.centre;
        const Instant first = dayOf(centre, question.from).begin;
        for (QDate day = question.from; day <= question.today && !isLate(question); day = day.addYears(1)) {
            const QDate next = day.addYears(1);
            const Instant end = next > question.today ? allRecords.end : dayOf(centre, next).begin;
            const Span span{dayOf(centre, day).begin, end};
            Result<HistorySlice> year = m_store->deeds(span);
            if (!year) return year.error();
            append(*std::move(year), span, first, slice);
            tell(question, readShare * double(question.from.daysTo(next)) / double(question.from.daysTo(question.today) + 1));
        }
        return Nothing{};
    }

    void tell(const Question& question, double done) {
        QMetaObject::invokeMethod(&m_owner, [this, number = question.number, done = std::min(done, readShare)] {
            if (m_owner.m_newest == number && m_owner.m_busy) Q_EMIT m_owner.progressed(done);
        });
    }

    HistoryReader& m_owner;
    std::unique_ptr<Store> m_store;
};

HistoryReader::HistoryReader(QObject* parent) : QObject(parent), m_worker(new Worker(*this)) {
    m_worker->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
}

/// Waits for the step under way; what was posted here goes with it.
HistoryReader::~HistoryReader() {
    leave();
    const bool ran = m_thread.isRunning();
    m_thread.quit();
    m_thread.wait();
    if (!ran) delete m_worker;
}

void HistoryReader::read(Session& session, QDate from) {
    m_busy = true;
    auto question = std::make_shared<Question>(
        Question{++m_newest, session.store().location(), session.season(), session.speech(), from, session.today()});
    if (!m_thread.isRunning()) m_thread.start(QThread::LowPriority);
    QMetaObject::invokeMethod(m_worker, [worker = m_worker, question] { worker->answer(*question); });
}

void HistoryReader::leave() {
    ++m_newest;
    m_busy = false;
}

void HistoryReader::take(quint64 question, const std::shared_ptr<const HistoryReading>& reading) {
    if (question != m_newest) return;
    m_busy = false;
    Q_EMIT answered(reading);
}

void HistoryReader::takeFailure(quint64 question, const Error& why) {
    if (question != m_newest) return;
    m_busy = false;
    Q_EMIT failed(why);
}

}  // namespace laneward
