#include "app/edits/supply_asker.h"

#include "core/storage/booked.h"

#include <QElapsedTimer>

namespace laneward {

namespace {

constexpr std::int64_t fewNodes = 8 * nodesFor;
constexpr int progressEvery = 60;        // ms
constexpr double historyShare = 0.15;    // of the whole work, about
constexpr double planShare = 0.35;       // until then
constexpr double forecastsShare = 0.85;  // and then; the orders are the rest

}  // namespace

struct SupplyAsker::Question {
    quint64 number = 0;
    Location location;
    SeasonState season;
    State state;
    Instant now;
    bool mayKeep = false;
    Wanted wanted = Wanted::All;
};

class SupplyAsker::Worker : public QObject {
public:
    explicit Worker(SupplyAsker& owner) : m_owner(owner) {}

    void answer(const Question& question) {
        if (isLate(question)) return;
        m_since.start();
        if (question.wanted == Wanted::Service) return answerService(question);
        const Result<SupplyHistory> history = past(question);
        if (!history) {
            QMetaObject::invokeMethod(
                &m_owner, [this, number = question.number, why = history.error()] { m_owner.takeFailure(number, why); });
            return;
        }
        tell(question, historyShare);
        auto answer = std::make_shared<SupplyAnswer>();
        const std::optional<Plan> ahead = isLate(question) ? std::nullopt : work(question, *history, *answer);
        if (!ahead || isLate(question)) return;
        hand(question, answer);
        if (question.mayKeep) keep(question, {question.season, *ahead, answer->learned, history->stock.movements, question.now});
        QMetaObject::invokeMethod(&m_owner, [this, number = question.number] {
            if (m_owner.m_newest == number) Q_EMIT m_owner.settled();
        });
    }

private:
    bool isLate(const Question& question) const { return m_owner.m_newest.load(std::memory_order_relaxed) != question.number; }

    void answerService(const Question& question) {
        const std::optional<Plan> ahead = planAhead(question);
        if (!ahead) return;
        auto answer = std::make_shared<SupplyAnswer>();
        answer->service = serviceOutlook({question.season, *ahead, question.now}, {});
        answer->packs = packOutlook(question.season, *ahead, question.now);
        if (!answer->packs.packs.empty()) answer->packYear = packYear(question);
        hand(question, answer);
    }

    /// Nothing when it cannot be read: the open window is in memory, and the page lives without the rest.
    std::vector<PackState> packYear(const Question& question) {
        constexpr int days = 366;
        if (!openStore(question)) return {};
        const Result<PackHistory> history = m_store->packs({question.now - hours(24) * days, question.now + Seconds{1}});
        if (!history) {
            m_store.reset();
            return {};
        }
        return packStates(question.season.items, standing(history->readings), history->work, question.now);
    }

    /// The store stays open: making the connection takes longer than asking.
    Outcome openStore(const Question& question) {
        if (m_store) return Nothing{};
        Result<std::unique_ptr<Store>> store = Store::open(question.location, Access::ReadOnly, Examination::Elsewhere);
        if (!store) return store.error();
        m_store = *std::move(store);
        return Nothing{};
    }

    void hand(const Question& question, const std::shared_ptr<const SupplyAnswer>& answer) {
        QMetaObject::invokeMethod(&m_owner, [this, number = question.number, answer] { m_owner.take(number, answer); });
    }

    /// Nothing when it was cancelled.
    std::optional<Plan> planAhead(const Question& question) const {
        const QDate today = dateOf(question.season.centre, question.now);
        Plan ahead = plan(question.state, question.now, {today, today.addDays(OutlookRule().days - 1)}, fewNodes,
                          [this, &question] { return isLate(question); });
        return isLate(question) ? std::nullopt : std::optional(std::move(ahead));
    }

    Result<SupplyHistory> past(const Question& question) {
        if (const Outcome opened = openStore(question); !opened) return opened.error();
        Result<SupplyHistory> history = supplyHistory(*m_store, question.season, question.now);
        if (!history) m_store.reset();  // after a server was away it is opened again
        return history;
    }

    /// The plan ahead; nothing when it was cancelled.
    std::optional<Plan> work(const Question& question, const SupplyHistory& history, SupplyAnswer& answer) {
        const auto cancelled = [this, &question] { return isLate(question); };
        answer.learned = learnSupplies(question.season, history);
        for (const ProductUsage& usage : answer.learned.machines) {
            if (cancelled()) return std::nullopt;
            const Machine* machine = findMachine(question.season.centre, usage.machine);
            if (machine)
                answer.fills.push_back({usage.machine, usage.product, fillPoints(history.drift, *machine, usage.product).points});
        }
        if (const auto past = m_store->keptForecasts(history.days)) answer.scores = scoresOf(question.season, history, *past);
        std::optional<Plan> ahead = planAhead(question);
        if (!ahead) return std::nullopt;
        tell(question, planShare);
        const auto heard = [&](double done) { tell(question, planShare + done * (forecastsShare - planShare)); };
        std::optional<SupplyOutlook> outlook = supplyOutlook(
            {question.season, *ahead, answer.learned, history.stock.movements, question.now}, {}, {cancelled, heard});
        if (!outlook) return std::nullopt;
        answer.outlook = *std::move(outlook);
        return ahead;
    }

    /// Once a day; what fails now is tried behind the next answer.
    void keep(const Question& question, const OutlookQuestion& asked) {
        const QDate today = dateOf(question.season.centre, question.now);
        if (m_keptOn == today) return;
        const auto known = m_store->keptForecasts({today, today});
        if (!known) return;
        if (known->empty()) {
            const auto forecast = forecastToKeep(asked, keptRule(), [this, &question] { return isLate(question); });
            if (!forecast) return;
            const Result<std::unique_ptr<Store>> store = Store::open(question.location, Access::ReadWrite);
            if (!store || !(*store)->keepForecast(*forecast)) return;
            QMetaObject::invokeMethod(&m_owner, [this, today] { Q_EMIT m_owner.kept(today); });
        }
        m_keptOn = today;
    }

    void tell(const Question& question, double done) {
        if (m_since.elapsed() < progressEvery) return;
        m_since.restart();
        QMetaObject::invokeMethod(&m_owner, [this, number = question.number, done] {
            if (m_owner.m_newest == number && m_owner.m_busy) Q_EMIT m_owner.progressed(done);
        });
    }

    SupplyAsker& m_owner;
    std::unique_ptr<Store> m_store;
    QDate m_keptOn;
    QElapsedTimer m_since;
};

SupplyAsker::SupplyAsker(QObject* parent) : QObject(parent), m_worker(new Worker(*this)) {
    m_worker->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
}

/// Waits for the step under way; what was posted here goes with it.
SupplyAsker::~SupplyAsker() {
    leave();
    const bool ran = m_thread.isRunning();
    m_thread.quit();
    m_thread.wait();
    if (!ran) delete m_worker;
}

void SupplyAsker::ask(Session& session, Wanted wanted) {
    m_busy = true;
    auto question = std::make_shared<Question>(Question{++m_newest, session.store().location(), session.season(),
                                                        session.planningState(), session.now(), !session.isReadOnly(), wanted});
    if (!m_thread.isRunning()) m_thread.start(QThread::LowPriority);
    QMetaObject::invokeMethod(m_worker, [worker = m_worker, question] { worker->answer(*question); });
}

void SupplyAsker::leave() {
    ++m_newest;
    m_busy = false;
}

void SupplyAsker::take(quint64 question, const std::shared_ptr<const SupplyAnswer>& answer) {
    if (question != m_newest) return;
    m_busy = false;
    Q_EMIT answered(answer);
}

void SupplyAsker::takeFailure(quint64 question, const Error& why) {
    if (question != m_newest) return;
    m_busy = false;
    Q_EMIT failed(why);
}

}  // namespace laneward
