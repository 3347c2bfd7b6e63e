#include "app/edits/session.h"

#include "app/edits/undoable_step.h"

#include <QUuid>

#include <map>

namespace laneward {

struct Session::Memo {
    using Days = std::pair<QDate, QDate>;
    std::map<Days, Plan> plans;
    std::map<Days, Occupancy> occupancies;
    std::optional<State> state;
    Instant asOf;
};

Session::Session(std::unique_ptr<Store> store, const Clock& clock, QObject* parent)
    : QObject(parent), m_store(std::move(store)), m_clock(clock), m_memo(std::make_unique<Memo>()) {
    m_undo.setUndoLimit(500);
    if (const Outcome read = reload(); !read) m_refusal = read.error().kind;
}

Session::~Session() = default;

Outcome Session::reload() {
    Result<SeasonState> season = m_store->load(now());
    if (!season) return season.error();
    m_season = *std::move(season);
    m_season.incidents = standing(std::move(m_season.incidents));
    m_season.handOvers = standing(std::move(m_season.handOvers));
    m_season.readings = standing(std::move(m_season.readings));
    m_zone = zoneOf(m_season.centre);
    if (const Result<std::int64_t> counter = m_store->changeCounter()) m_counter = *counter;
    forget();
    Q_EMIT changed();
    return Nothing{};
}

void Session::lookForOthers() {
    if (const std::optional<Error> damage = m_damageSaid ? std::nullopt : m_store->damage()) {
        m_damageSaid = true;
        refuse(*damage);
    }
    const Result<std::int64_t> counter = m_store->changeCounter();
    if (!counter || *counter == m_counter) return;
    if (const Outcome read = reload(); !read) return refuse(read.error());
    Q_EMIT said(tr("The centre was changed on another computer; you now see the latest."));
}

void Session::tick() {
    const QDate day = dateOf(m_season.centre, m_memo->asOf);
    bool stale = day != today();
    const auto found = m_memo->plans.find({day, day});
    if (found != m_memo->plans.end()) {
        for (const Job& job : found->second.jobs)
            stale |= job.state == JobState::Proposed && job.time.begin < now();
    }
    // A proposed job cannot begin in the past; what is confirmed stays where it is and turns late on the page.
    if (!stale || now() - m_memo->asOf < minutes(1)) return;
    forget();
    Q_EMIT changed();
}

void Session::forget() {
    *m_memo = Memo{};
    m_memo->asOf = now();
}

bool Session::isReadOnly() const { return m_store->isReadOnly(); }

QDate Session::today() const { return dateOf(m_season.centre, now()); }

Speech Session::speech() const { return {QLocale(), m_zone, m_season.centre.facts.settings.units}; }

const Plan& Session::planOf(QDate day) { return planOf(DateRange{day, day}); }

const Plan& Session::planOf(const DateRange& range) {
    const Memo::Days key{range.first, range.last};
    auto found = m_memo->plans.find(key);
    if (found == m_memo->plans.end())
        found = m_memo->plans.emplace(key, plan(PlanTask{planningState(), now(), range}, m_planned)).first;
    return found->second;
}

const Occupancy& Session::occupancyOf(const DateRange& range) {
    const Memo::Days key{range.first, range.last};
    auto found = m_memo->occupancies.find(key);
    if (found == m_memo->occupancies.end()) {
        found = m_memo->occupancies.emplace(key, laneward::occupancyOf(m_season.series, m_season.centre, range)).first;
    }
    return found->second;
}

const State& Session::planningState() {
    if (!m_memo->state) m_memo->state = laneward::planningState(m_season, now());
    return *m_memo->state;
}

OperationId Session::newOperation() const { return {QUuid::createUuid().toString(QUuid::WithoutBraces)}; }

void Session::refuse(const Error& error) {
    m_refusal = error.kind;
    Q_EMIT problem(text(error, speech()));
}

void Session::settled() {
    m_savedAt = now();
    if (const Outcome read = reload(); !read) refuse(read.error());
}

}  // namespace laneward
