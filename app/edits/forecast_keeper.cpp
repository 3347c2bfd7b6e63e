#include "app/edits/forecast_keeper.h"

#include <QTimer>

namespace laneward {

ForecastKeeper::ForecastKeeper(Session& session, std::chrono::milliseconds after, QObject* parent)
    : QObject(parent), m_session(session), m_after(after) {
    connect(&m_asker, &SupplyAsker::kept, this, &ForecastKeeper::kept);
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
    if (m_session.isReadOnly() || m_session.season().supplies.empty()) return;
    const auto known = m_session.store().keptForecasts({today, today});
    if (known && known->empty()) m_asker.ask(m_session);
}

}  // namespace laneward
