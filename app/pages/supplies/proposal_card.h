// A proposed order of one supplier: what, how much, what it costs, why, and what can be done with it.
#pragma once

#include "app/edits/session.h"
#include "core/season/supply_outlook.h"

#include <QFrame>

class QGridLayout;
class QPushButton;
class QVBoxLayout;

namespace laneward {

struct PurchaseOrder;

class ProposalCard : public QFrame {
    Q_OBJECT

public:
    /// `next` is an index of outlook.plan.next.
    ProposalCard(Session& session, const SupplyOutlook& outlook, size_t next, QWidget* parent);

    /// While another outlook is worked out nothing is placed by what may be old.
    void setCurrent(bool current);

private:
    void buildLines(QVBoxLayout* column, const PurchaseOrder& order);
    void addRow(QGridLayout* grid, const QStringList& cells, bool strong);
    void buildButtons(QVBoxLayout* column);
    QPushButton* button(const QString& text, const char* name, const QString& spoken);
    void store(OrderState state);

    Session& m_session;
    PlannedOrder m_planned;
    QString m_supplier;
    std::vector<QPushButton*> m_storing;
    std::vector<QPushButton*> m_writing;
};

}  // namespace laneward
