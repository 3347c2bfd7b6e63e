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
    Location location;
    SeasonState season;
    State state;
    Instant now;
    bool mayKeep = false;
    Wanted wanted = Wanted::All;
};

/// One question, on the thread beside the window.
class SupplyAsker::Answering {
public:
    Answering(SupplyAsker& owner, const Question& question, const Beside::Question& asked)
        : m_owner(owner), m_question(question), m_asked(asked) {
        m_since.start();
    }

    void run() {
        if (m_question.wanted == Wanted::Service) return answerService();
        const Result<SupplyHistory> history = past();
        if (!history) return m_asked.answer([to = &m_owner, why = history.error()] { Q_EMIT to->failed(why); });
        tell(historyShare);
        auto answer = std::make_shared<SupplyAnswer>();
        const std::optional<Plan> ahead = m_asked.isLate() ? std::nullopt : work(*history, *answer);
        if (!ahead || m_asked.isLate()) return;
        hand(answer);
        if (m_question.mayKeep) keep({m_question.season, *ahead, answer->learned, history->stock.movements, m_question.now});
        m_asked.tell([to = &m_owner] { Q_EMIT to->settled(); });
    }

private:
    void answerService() {
        const std::optional<Plan> ahead = planAhead();
        if (!ahead) return;
        auto answer = std::make_shared<SupplyAnswer>();
        answer->service = serviceOutlook({m_question.season, *ahead, m_question.now}, {});
        answer->packs = packOutlook(m_question.season, *ahead, m_question.now);
        if (!answer->packs.packs.empty()) answer->packYear = packYear();
        hand(answer);
    }

    /// Nothing when it cannot be read: the open window is in memory, and the page lives without the rest.
    std::vector<PackState> packYear() {
        constexpr int days = 366;
        const Result<Store*> store = m_asked.store(m_question.location);
        if (!store) return {};
        const Result<PackHistory> history = (*store)->packs({m_question.now - hours(24) * days, m_question.now + Seconds{1}});
        if (!history) {
            m_asked.closeStore();
            return {};
        }
        return packStates(m_question.season.items, standing(history->readings), history->work, m_question.now);
    }

    void hand(const std::shared_ptr<const SupplyAnswer>& answer) {
        m_asked.answer([to = &m_owner, answer] { Q_EMIT to->answered(answer); });
    }

    /// Nothing when it was cancelled.
    std::optional<Plan> planAhead() const {
        const QDate today = dateOf(m_question.season.centre, m_question.now);
        Plan ahead = plan(m_question.state, m_question.now, {today, today.addDays(OutlookRule().days - 1)}, fewNodes,
                          [this] { return m_asked.isLate(); });
        return m_asked.isLate() ? std::nullopt : std::optional(std::move(ahead));
    }

    Result<SupplyHistory> past() const {
        const Result<Store*> store = m_asked.store(m_question.location);
        if (!store) return store.error();
        Result<SupplyHistory> history = supplyHistory(**store, m_question.season, m_question.now);
        if (!history) m_asked.closeStore();
        return history;
    }

    /// The plan ahead; nothing when it was cancelled.
    std::optional<Plan> work(const SupplyHistory& history, SupplyAnswer& answer) {
        const auto cancelled = [this] { return m_asked.isLate(); };
        answer.learned = learnSupplies(m_question.season, history);
        for (const ProductUsage& usage : answer.learned.machines) {
            if (cancelled()) return std::nullopt;
            const Machine* machine = findMachine(m_question.season.centre, usage.machine);
            if (machine)
                answer.fills.push_back({usage.machine, usage.product, fillPoints(history.drift, *machine, usage.product).points});
        }
        if (const Result<Store*> store = m_asked.store(m_question.location)) {
            if (const auto past = (*store)->keptForecasts(history.days))
                answer.scores = scoresOf(m_question.season, history, *past);
        }
        std::optional<Plan> ahead = planAhead();
        if (!ahead) return std::nullopt;
        tell(planShare);
        const auto heard = [&](double done) { tell(planShare + done * (forecastsShare - planShare)); };
        std::optional<SupplyOutlook> outlook = supplyOutlook(
            {m_question.season, *ahead, answer.learned, history.stock.movements, m_question.now}, {}, {cancelled, heard});
        if (!outlook) return std::nullopt;
        answer.outlook = *std::move(outlook);
        return ahead;
    }

    /// Once a day; what fails now is tried behind the next answer.
    void keep(const OutlookQuestion& asked) {
        const QDate today = dateOf(m_question.season.centre, m_question.now);
        const Result<Store*> store = m_asked.store(m_question.location);
        if (m_owner.m_keptOn == today || !store) return;
        const auto known = (*store)->keptForecasts({today, today});
        if (!known) return;
        if (known->empty()) {
            const auto forecast = forecastToKeep(asked, keptRule(), [this] { return m_asked.isLate(); });
            if (!forecast) return;
            const Result<std::unique_ptr<Store>> writing = Store::open(m_question.location, Access::ReadWrite);
            if (!writing || !(*writing)->keepForecast(*forecast)) return;
            QMetaObject::invokeMethod(&m_owner, [to = &m_owner, today] { Q_EMIT to->kept(today); });
        }
        m_owner.m_keptOn = today;
    }

    void tell(double done) {
        if (m_since.elapsed() < progressEvery) return;
        m_since.restart();
        m_asked.tell([to = &m_owner, done] { Q_EMIT to->progressed(done); });
    }

    SupplyAsker& m_owner;
    const Question& m_question;
    const Beside::Question& m_asked;
    QElapsedTimer m_since;
};

SupplyAsker::SupplyAsker(QObject* parent) : QObject(parent) {}

SupplyAsker::~SupplyAsker() = default;

void SupplyAsker::ask(Session& session, Wanted wanted) {
    auto question = std::make_shared<const Question>(Question{
        session.store().location(), session.season(), session.planningState(), session.now(), !session.isReadOnly(), wanted});
    m_beside.ask([this, question](const Beside::Question& asked) { Answering(*this, *question, asked).run(); });
}

}  // namespace laneward
