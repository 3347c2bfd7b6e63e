#include "app/edits/session.h"

#include "app/edits/undoable_step.h"

#include <QTimer>
#include <QUuid>

#include <algorithm>
#include <map>

namespace laneward {

struct Session::Memo {
    using Days = std::pair<QDate, QDate>;
    struct Known {
        Plan plan;
        bool isLast = false;
    };
    std::map<Days, Known> plans;
    std::vector<Days> wanted;  ///< to be searched for, newest last
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
        for (const Job& job : found->second.plan.jobs)
            stale |= job.state == JobState::Proposed && job.time.begin < now();
    }
    // A proposed job cannot begin in the past; what is confirmed stays where it is and turns late on the page.
    if (!stale || now() - m_memo->asOf < minutes(1)) return;
    forget();
    Q_EMIT changed();
}

void Session::forget() {
    stopSearching();
    *m_memo = Memo{};
    m_memo->asOf = now();
}

bool Session::isReadOnly() const { return m_store->isReadOnly(); }

QDate Session::today() const { return dateOf(m_season.centre, now()); }

Speech Session::speech() const { return {QLocale(), m_zone, m_season.centre.facts.settings.units}; }

const Plan& Session::planOf(const DateRange& range) {
    const Memo::Days key{range.first, range.last};
    const auto found = m_memo->plans.find(key);
    if (found != m_memo->plans.end() && found->second.isLast) return found->second.plan;
    stopSearching();
    Plan last;
    {
        const std::scoped_lock lock(m_atSearched);
        const Instant at = found == m_memo->plans.end() ? now() : found->second.plan.now;
        last = plan(PlanTask{planningState(), at, range}, m_searched);
    }
    learn(range, std::move(last));
    QMetaObject::invokeMethod(this, &Session::searchNext, Qt::QueuedConnection);  // what was left for this
    return m_memo->plans.at(key).plan;
}

/// While the search beside the window is at its memo, the first answer does without.
const Plan& Session::planAtOnce(const DateRange& range) {
    const Memo::Days key{range.first, range.last};
    auto found = m_memo->plans.find(key);
    if (found != m_memo->plans.end()) return found->second.plan;
    const std::unique_lock lock(m_atSearched, std::try_to_lock);
    Plan first = firstPlan(PlanTask{planningState(), now(), range}, m_first, lock.owns_lock() ? &m_searched : nullptr);
    const bool isLast = isLastWord(first);
    found = m_memo->plans.emplace(key, Memo::Known{std::move(first), isLast}).first;
    if (!isLast) {
        m_memo->wanted.push_back(key);
        QTimer::singleShot(0, this, &Session::searchNext);  // once this one is shown: timers come after what is to be painted
    }
    return found->second.plan;
}

bool Session::isSearching() const {
    return m_beside.isBusy() || std::any_of(m_memo->wanted.begin(), m_memo->wanted.end(),
                                            [this](const Memo::Days& days) { return !m_memo->plans.at(days).isLast; });
}

void Session::searchNext() {
    if (m_beside.isBusy()) return;  // what is wanted comes after that
    while (!m_memo->wanted.empty() && m_memo->plans.at(m_memo->wanted.back()).isLast)
        m_memo->wanted.pop_back();
    if (m_memo->wanted.empty()) return stopSearching();
    const DateRange range{m_memo->wanted.back().first, m_memo->wanted.back().second};
    const Instant at = m_memo->plans.at(m_memo->wanted.back()).plan.now;
    m_beside.ask([this, range, at, state = planningState()](const Beside::Question& question) {
        const Cancelled late = [&question] { return question.isLate(); };
        const std::scoped_lock lock(m_atSearched);
        auto last = std::make_shared<Plan>(plan(PlanTask{state, at, range, defaultNodeLimit, late}, m_searched));
        question.answer([this, range, last] {
            learn(range, std::move(*last));
            searchNext();
        });
    });
    Q_EMIT searching(true);
}

void Session::stopSearching() {
    m_beside.leave();
    Q_EMIT searching(false);
}

/// Who shows the first plan hears of another one only where it is another.
void Session::learn(const DateRange& range, Plan last) {
    const Memo::Days key{range.first, range.last};
    const auto found = m_memo->plans.find(key);
    if (found == m_memo->plans.end()) {
        m_memo->plans.emplace(key, Memo::Known{std::move(last), true});
        return;
    }
    const bool isOther = last != found->second.plan;
    found->second = {std::move(last), true};
    if (isOther) QMetaObject::invokeMethod(this, &Session::planned, Qt::QueuedConnection);
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
