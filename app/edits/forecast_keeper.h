// Keeps the forecast of each centre day at the first start of that day, whatever page is open: a while after the start, and again
// when the day turns. Nobody waits for it and nothing is said; a centre that is only read keeps none.
#pragma once

#include "app/edits/supply_asker.h"

#include <chrono>

namespace laneward {

class ForecastKeeper : public QObject {
    Q_OBJECT

public:
    explicit ForecastKeeper(Session& session, std::chrono::milliseconds after = std::chrono::seconds(8),
                            QObject* parent = nullptr);

    bool isBusy() const { return m_asker.isBusy(); }

Q_SIGNALS:
    void kept(QDate day);
    void looked();  ///< the day was looked at, whatever came of it

private:
    void wait();
    void look();

    Session& m_session;
    std::chrono::milliseconds m_after;
    SupplyAsker m_asker;
    QDate m_day;  ///< looked at last
};

}  // namespace laneward
