// What to order, and what is under way: the proposed order of each supplier, and the centre's own orders with how far they came.
#pragma once

#include "app/edits/supply_asker.h"
#include "app/pages/supplies/order_model.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace laneward {

class ProposalCard;
class ReceiveForm;

class OrdersPanel : public QWidget {
    Q_OBJECT

public:
    explicit OrdersPanel(Session& session, QWidget* parent = nullptr);

    /// `answer` may be null: not known yet. While it is not `current`, another is being worked out.
    void show(const std::shared_ptr<const SupplyAnswer>& answer, bool current);
    /// The orders as they are stored now.
    void refresh();

private:
    QWidget* buildProposals();
    QWidget* buildOrders();
    void buildButtons(QVBoxLayout* column);
    void showProposals();
    QString proofText(const OrderPlan& plan) const;
    std::vector<TrackedOrder> tracked();
    const TrackedOrder* chosen() const;
    void showChosen();
    QString linesText(const TrackedOrder& tracked) const;
    void placeDraft();
    void dropDraft();
    void closeOrder();
    bool change(const QString& name, const Order& before, const std::optional<Order>& after);

    Session& m_session;
    std::shared_ptr<const SupplyAnswer> m_answer;
    std::vector<ProposalCard*> m_cards;
    QVBoxLayout* m_proposals = nullptr;
    QLabel* m_proof = nullptr;
    OrderModel* m_model = nullptr;
    QTableView* m_list = nullptr;
    QLabel* m_empty = nullptr;
    QLabel* m_lines = nullptr;
    QWidget* m_buttons = nullptr;
    ReceiveForm* m_form = nullptr;
    QPushButton* m_receive = nullptr;
    QPushButton* m_place = nullptr;
    QPushButton* m_close = nullptr;
    QPushButton* m_drop = nullptr;
    bool m_filling = false;
};

}  // namespace laneward
