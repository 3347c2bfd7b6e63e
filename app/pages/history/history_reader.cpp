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
    Location location;
    SeasonState season;
    Speech speech;
    QDate from;
    QDate today;
};

/// On the thread beside the window.
Outcome HistoryReader::readYears(const Question& question, const Beside::Question& asked, HistorySlice& slice) {
    const Result<Store*> store = asked.store(question.location);
    if (!store) return store.error();
    const Centre& centre = question.season.centre;
    const Instant first = dayOf(centre, question.from).begin;
    for (QDate day = question.from; day <= question.today && !asked.isLate(); day = day.addYears(1)) {
        const QDate next = day.addYears(1);
        const Instant end = next > question.today ? allRecords.end : dayOf(centre, next).begin;
        const Span span{dayOf(centre, day).begin, end};
        Result<HistorySlice> year = (*store)->deeds(span);
        if (!year) {
            asked.closeStore();
            return year.error();
        }
        append(*std::move(year), span, first, slice);
        const double done = readShare * double(question.from.daysTo(next)) / double(question.from.daysTo(question.today) + 1);
        asked.tell([this, done = std::min(done, readShare)] { Q_EMIT progressed(done); });
    }
    return Nothing{};
}

void HistoryReader::answer(const Question& question, const Beside::Question& asked) {
    auto reading = std::make_shared<HistoryReading>();
    reading->from = question.from;
    if (const Outcome read = readYears(question, asked, reading->slice); !read)
        return asked.answer([this, why = read.error()] { Q_EMIT failed(why); });
    if (asked.isLate()) return;
    reading->index = HistoryIndex(historyEntries(reading->slice, question.season, question.speech));
    asked.answer([this, reading] { Q_EMIT answered(reading); });
}

HistoryReader::HistoryReader(QObject* parent) : QObject(parent) {}

HistoryReader::~HistoryReader() = default;

void HistoryReader::read(Session& session, QDate from) {
    auto question = std::make_shared<const Question>(
        Question{session.store().location(), session.season(), session.speech(), from, session.today()});
    m_beside.ask([this, question](const Beside::Question& asked) { answer(*question, asked); });
}

}  // namespace laneward
