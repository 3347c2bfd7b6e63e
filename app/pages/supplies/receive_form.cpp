#include "app/pages/supplies/receive_form.h"

#include "app/edits/plain_label.h"
#include "app/pages/supplies/supply_texts.h"
#include "app/widgets/quantity_box.h"
#include "core/base/limits.h"
#include "core/documents/stock_words.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace laneward {

ReceiveForm::ReceiveForm(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    setFrameShape(QFrame::StyledPanel);
    m_column = new QVBoxLayout(this);
    m_column->addWidget(m_title = headingLabel({}, this));
    m_title->setWordWrap(true);
    m_column->addWidget(m_problem = proseLabel({}, this));
    m_problem->setObjectName("receiveProblem");
    auto* row = new QHBoxLayout;
    m_book = new QPushButton(tr("&Book receipt"), this);
    m_book->setObjectName("bookReceipt");
    auto* cancel = new QPushButton(tr("Leave it"), this);
    cancel->setObjectName("leaveReceipt");
    row->addWidget(m_book);
    row->addWidget(cancel);
    row->addStretch();
    m_column->addLayout(row);
    connect(m_book, &QPushButton::clicked, this, &ReceiveForm::book);
    connect(cancel, &QPushButton::clicked, this, &ReceiveForm::leave);
    hide();
}

void ReceiveForm::open(const TrackedOrder& order) {
    m_order = order;
    fill();
    show();
    m_book->setFocus();
}

void ReceiveForm::leave() {
    if (isHidden()) return;
    hide();
    Q_EMIT left();
}

void ReceiveForm::refresh(const TrackedOrder* order) {
    if (isHidden()) return;
    const bool open = order && order->order.state == OrderState::Placed;
    if (!open) return leave();
    const bool same = order->missing == m_order.missing && order->order.lines == m_order.order.lines;
    m_order = *order;
    if (!same) fill();
}

void ReceiveForm::fill() {
    delete m_fields;
    m_lines.clear();
    m_problem->hide();
    m_title->setText(tr("Receive order %1", "number").arg(shown(m_order.order.number)));
    m_fields = new QWidget(this);
    auto* grid = new QGridLayout(m_fields);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setColumnStretch(0, 1);
    for (size_t n = 0; n < m_order.order.lines.size(); ++n)
        addLine(grid, n);
    m_column->insertWidget(1, m_fields);
    QWidget* before = m_fields;
    for (const Line& line : m_lines) {
        setTabOrder(before, line.amount);
        setTabOrder(line.amount, line.lot);
        before = line.lot;
    }
    setTabOrder(before, m_book);
}

void ReceiveForm::addLine(QGridLayout* grid, size_t n) {
    const SeasonState& season = m_session.season();
    const Speech speech = m_session.speech();
    const OrderLine& line = m_order.order.lines[n];
    const SupplyKind kind = supplyKind(line.supply, season);
    const QString name = supplyName(line.supply, season);
    const QString ordered =
        tr("%1: %2 ordered, %3 still to come", "supply, packs, amount")
            .arg(name, packsText(line.packs, line.pack, kind, speech), amountText(m_order.missing[n], kind, speech));
    grid->addWidget(proseLabel(ordered, m_fields), int(n), 0);
    auto* amount = new QuantityBox(kind, speech.units, m_fields);
    amount->setObjectName("receivedAmount");
    amount->setAccessibleName(tr("%1: amount that arrived", "supply").arg(name));
    amount->setAmount(m_order.missing[n]);
    auto* lot = new QLineEdit(m_fields);
    lot->setObjectName("receivedLot");
    lot->setAccessibleName(tr("%1: lot", "supply").arg(name));
    lot->setPlaceholderText(tr("Lot, if it has one"));
    lot->setMaxLength(limits::nameLength);
    lot->setMinimumWidth(fontMetrics().horizontalAdvance(lot->placeholderText()) + 20);
    grid->addWidget(amount, int(n), 1);
    grid->addWidget(lot, int(n), 2);
    m_lines.push_back({amount, lot});
}

void ReceiveForm::refuse(const QString& why, QWidget* where) {
    m_problem->setText(why);
    m_problem->show();
    if (where) where->setFocus();
}

void ReceiveForm::book() {
    std::vector<Record> receipts;
    for (size_t n = 0; n < m_lines.size(); ++n) {
        const OrderLine& line = m_order.order.lines[n];
        const Amount amount = m_lines[n].amount->amount();
        if (amount < Amount{}) {
            const SupplyKind kind = supplyKind(line.supply, m_session.season());
            return refuse(tr("Nothing was booked: %1 of %2 cannot arrive. To take a receipt back, use undo or the ledger.",
                             "amount, supply")
                              .arg(amountText(amount, kind, m_session.speech()), supplyName(line.supply, m_session.season())),
                          m_lines[n].amount);
        }
        if (amount == Amount{}) continue;
        Movement receipt = receiptOf(m_order.order, line, amount, m_lines[n].lot->text().trimmed(), m_session.now());
        receipt.recordedAt = m_session.now();
        receipts.push_back(std::move(receipt));
    }
    if (receipts.empty()) {
        return refuse(tr("Nothing was booked: no line has an amount."), m_lines.empty() ? nullptr : m_lines.front().amount);
    }
    const QString name = tr("Receive order %1", "number").arg(shown(m_order.order.number));
    if (m_session.record(name, std::move(receipts))) leave();
}

void ReceiveForm::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    auto* focused = enter ? qobject_cast<QPushButton*>(focusWidget()) : nullptr;
    if (event->key() == Qt::Key_Escape)
        leave();
    else if (focused)
        focused->click();
    else if (enter)
        book();
    else
        QFrame::keyPressEvent(event);
}

}  // namespace laneward
