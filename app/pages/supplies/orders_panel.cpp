#include "app/pages/supplies/orders_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/pages/supplies/order_deeds.h"
#include "app/pages/supplies/proposal_card.h"
#include "app/pages/supplies/receive_form.h"
#include "app/pages/supplies/supply_texts.h"
#include "core/documents/stock_words.h"

#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr int wordsAir = 22;    // beside whole words in a column
constexpr int daysShown = 400;  // orders placed before are shown while they are open

}  // namespace

void OrdersPanel::show(const std::shared_ptr<const SupplyAnswer>& answer, bool current) {
    if (answer != m_answer || m_proof->text().isEmpty()) {
        m_answer = answer;
        showProposals();
    }
    for (ProposalCard* card : m_cards)
        card->setCurrent(current);
}

void OrdersPanel::showProposals() {
    for (ProposalCard* card : m_cards) {
        card->hide();
        card->deleteLater();
    }
    m_cards.clear();
    if (!m_answer) return m_proof->setText(tr("What to order is being worked out…"));
    const SupplyOutlook& outlook = m_answer->outlook;
    for (size_t n = 0; n < outlook.plan.next.size(); ++n) {
        m_cards.push_back(new ProposalCard(m_session, outlook, n, m_proof->parentWidget()));
        m_proposals->insertWidget(int(n), m_cards.back());
    }
    m_proof->setText(proofText(outlook.plan));
}

/// How good the plan is known to be, and what it could not keep.
QString OrdersPanel::proofText(const OrderPlan& plan) const {
    const SeasonState& season = m_session.season();
    const Speech speech = m_session.speech();
    QStringList lines;
    if (season.suppliers.empty() || season.offers.empty()) {
        lines << tr("There is nobody to order from yet: enter suppliers and their price lists first.");
    } else if (plan.orders.empty()) {
        lines << tr("Nothing has to be ordered in the months ahead.");
    } else if (plan.proven) {
        lines << tr("Proven: no orders of the months ahead cost less in goods, freight and holding together (%1).")
                     .arg(moneyText(plan.total, speech));
    } else {
        const Money gap{plan.total.minor - plan.lowerBound.minor, plan.total.currency};
        lines << tr("The orders of the months ahead cost %1 in goods, freight and holding; at most %2 of that could be saved.")
                     .arg(moneyText(plan.total, speech), moneyText(gap, speech));
    }
    for (const Finding& finding : plan.findings)
        lines << text(finding, speech);
    return lines.join(u'\n');
}

std::vector<TrackedOrder> OrdersPanel::tracked() {
    std::vector<TrackedOrder> all;
    const QDate first = m_session.today().addDays(-daysShown);
    for (const Order& order : m_session.season().orders) {
        if (order.state == OrderState::Closed && order.placedOn && *order.placedOn < first) continue;
        std::vector<Movement> receipts;
        if (order.state != OrderState::Draft) {
            Result<std::vector<Movement>> read = m_session.store().movementsFrom(MovementSource::Order, order.id.value);
            if (!read) {
                Q_EMIT m_session.problem(text(read.error(), m_session.speech()));
                return all;
            }
            receipts = *std::move(read);
        }
        TrackedOrder one{order, progressOf(order, receipts), receivedOf(order, receipts)};
        for (size_t n = 0; n < order.lines.size(); ++n)
            one.missing[n] = std::max(Amount{}, order.lines[n].pack * order.lines[n].packs - one.missing[n]);
        all.push_back(std::move(one));
    }
    return all;
}

void OrdersPanel::refresh() {
    const TrackedOrder* before = chosen();
    const OrderId kept = before ? before->order.id : OrderId{};
    std::vector<TrackedOrder> now = tracked();
    // What was just made is what one goes on with.
    OrderId fresh;
    for (const TrackedOrder& order : now) {
        if (m_model->rowCount() > 0 && m_model->rowOf(order.order.id) < 0) fresh = order.order.id;
    }
    m_filling = true;
    m_model->show(std::move(now), m_session.season(), m_session.speech());
    fitColumns(*m_list, wordsAir);
    const int row = m_model->rowOf(fresh.isEmpty() ? kept : fresh);
    if (row >= 0) chooseRow(*m_list, row);
    if (!chosen() && m_model->rowCount() > 0) m_list->setCurrentIndex(m_list->model()->index(0, 0));
    m_filling = false;
    const bool any = m_model->rowCount() > 0;
    m_list->setVisible(any);
    m_empty->setVisible(!any);
    const TrackedOrder* order = chosen();
    m_form->refresh(order && order->order.id == kept ? order : nullptr);
    showChosen();
}

const TrackedOrder* OrdersPanel::chosen() const {
    const int row = chosenRow(*m_list);
    return row < 0 ? nullptr : &m_model->at(row);
}

QString OrdersPanel::linesText(const TrackedOrder& tracked) const {
    const SeasonState& season = m_session.season();
    const Speech speech = m_session.speech();
    QStringList lines;
    for (const OrderLine& line : tracked.order.lines) {
        const SupplyKind kind = supplyKind(line.supply, season);
        lines << tr("%1: %2, %3", "supply, packs, money")
                     .arg(supplyName(line.supply, season), packsText(line.packs, line.pack, kind, speech),
                          moneyText(line.each * line.packs, speech));
    }
    return lines.join(u'\n');
}

void OrdersPanel::showChosen() {
    const TrackedOrder* order = chosen();
    const bool writable = !m_session.isReadOnly() && m_form->isHidden();
    const bool placed = order && order->order.state == OrderState::Placed;
    const bool draft = order && order->order.state == OrderState::Draft;
    m_lines->setVisible(order);
    m_buttons->setVisible(order);
    if (!order) return;
    m_lines->setText(linesText(*order));
    m_receive->setVisible(placed);
    m_close->setVisible(placed);
    m_place->setVisible(draft);
    m_drop->setVisible(draft);
    for (QPushButton* button : {m_receive, m_close, m_place, m_drop})
        button->setEnabled(writable);
}

bool OrdersPanel::change(const QString& name, const Order& before, const std::optional<Order>& after) {
    return m_session.apply(name.arg(shown(before.number)), {RowChange<Order>{before, after}});
}

void OrdersPanel::placeDraft() {
    const TrackedOrder* order = chosen();
    if (!order) return;
    const Order before = order->order;
    Order after = before;
    place(after, m_session);
    change(tr("Place order %1"), before, after);
}

void OrdersPanel::dropDraft() {
    if (const TrackedOrder* order = chosen()) change(tr("Delete draft %1"), Order(order->order), std::nullopt);
}

void OrdersPanel::closeOrder() {
    const TrackedOrder* order = chosen();
    if (!order) return;
    const Order before = order->order;
    Order after = before;
    after.state = OrderState::Closed;
    change(tr("Close order %1"), before, after);
}

}  // namespace laneward
