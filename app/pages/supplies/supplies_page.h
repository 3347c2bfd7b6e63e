// What will run out, what must be ordered by when, what is under way, what is really there, and what moved.
#pragma once

#include "app/edits/page.h"
#include "app/edits/supply_asker.h"

class QTabWidget;

namespace laneward {

class BusyBar;
class CountPanel;
class LedgerPanel;
class OrdersPanel;
class PricePanel;
class StockPanel;

class SuppliesPage : public Page {
    Q_OBJECT

public:
    explicit SuppliesPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Supplies"); }
    QString iconName() const override { return QStringLiteral("supplies"); }
    QString question() const override { return tr("What will run out, and what must I order by when?"); }
    QString headline() const override { return m_headline; }
    void refresh() override;
    bool isBusy() const { return m_asker.isBusy(); }  ///< working the outlook out

protected:
    void hideEvent(QHideEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build() override;
    void ask();
    void stop();
    void take(const std::shared_ptr<const SupplyAnswer>& answer);
    void takeFailure(const Error& why);
    void showAll();
    void say();

    SupplyAsker m_asker;
    std::shared_ptr<const SupplyAnswer> m_answer;
    bool m_current = false;  ///< the answer is that of the state
    QString m_headline;
    BusyBar* m_busy = nullptr;
    QTabWidget* m_tabs = nullptr;
    StockPanel* m_stock = nullptr;
    OrdersPanel* m_orders = nullptr;
    CountPanel* m_count = nullptr;
    PricePanel* m_prices = nullptr;
    LedgerPanel* m_ledger = nullptr;
};

}  // namespace laneward
