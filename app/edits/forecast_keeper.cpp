#include "app/edits/forecast_keeper.h"

#include <QTimer>

namespace laneward {

ForecastKeeper::ForecastKeeper(Session& session, std::chrono::milliseconds after, QObject* parent)
    : QObject(parent), m_session(session), m_after(after) {
    connect(&m_asker, &SupplyAsker::kept, this, &ForecastKeeper::kept);
    connect(&m_asker, &SupplyAsker::settled, this, &ForecastKeeper::looked);
    connect(&m_asker, &SupplyAsker::failed, this, &ForecastKeeper::looked);
    connect(&session, &Session::changed, this, [this] {
        if (m_day.isValid() && m_day != m_session.today()) wait();
    });
    wait();
}

void ForecastKeeper::wait() {
    m_day = {};
    QTimer::singleShot(m_after, this, &ForecastKeeper::look);
}

void ForecastKeeper::look() {
    const QDate today = m_session.today();
    if (!m_session.hasRead() || m_day == today) return;
    m_day = today;
    const bool mayKeep = !m_session.isReadOnly() && !m_session.season().supplies.empty();
    const Result<std::vector<KeptForecast>> known =
        mayKeep ? m_session.store().keptForecasts({today, today}) : std::vector<KeptForecast>(1);
    if (known && known->empty())
        m_asker.ask(m_session);
    else
        Q_EMIT looked();
}

}  // namespace laneward
