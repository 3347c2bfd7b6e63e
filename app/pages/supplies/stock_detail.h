// One supply: where it lies, its stock ahead as a fan, what of it is really used with the fills behind it, and how well past
// forecasts held.
#pragma once

#include "app/edits/supply_asker.h"

#include <QWidget>

class QLabel;
class QListWidget;
class QVBoxLayout;

namespace laneward {

class FanChart;
struct FanDelivery;

class StockDetail : public QWidget {
    Q_OBJECT

public:
    explicit StockDetail(Session& session, QWidget* parent = nullptr);

    /// `answer` may be null: not known yet.
    void show(const SupplyId& supply, const SupplyAnswer* answer);

private:
    QWidget* buildAhead();
    QWidget* buildUse();
    void showFan(const Supply& supply, const SupplyAnswer* answer);
    void showHeld(const Supply& supply, const SupplyAnswer* answer);
    void showUse(const Supply& supply, const SupplyAnswer* answer);
    std::vector<FanDelivery> deliveriesOf(const Supply& supply, const SupplyOutlook& outlook) const;
    QStringList usesOf(const Supply& supply, const SupplyAnswer& answer) const;
    QString machineUse(const ProductUsage& usage) const;
    QString countedUse(const Usage& usage) const;
    void listFills(const Supply& supply, const SupplyAnswer* answer);
    void showDay(int day);

    Session& m_session;
    SupplyId m_supply;
    QLabel* m_title = nullptr;
    QLabel* m_where = nullptr;
    FanChart* m_fan = nullptr;
    QLabel* m_day = nullptr;
    QLabel* m_use = nullptr;
    QLabel* m_heldTitle = nullptr;
    QLabel* m_held = nullptr;
    QLabel* m_fillsTitle = nullptr;
    QListWidget* m_fills = nullptr;
};

}  // namespace laneward
