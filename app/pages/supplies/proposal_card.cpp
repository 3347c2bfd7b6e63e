#include "app/pages/supplies/proposal_card.h"

#include "app/edits/plain_label.h"
#include "app/pages/supplies/order_deeds.h"
#include "app/pages/supplies/supply_texts.h"
#include "core/documents/stock_words.h"
#include "core/documents/supply_words.h"

#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace laneward {

ProposalCard::ProposalCard(Session& session, const SupplyOutlook& outlook, size_t next, QWidget* parent)
    : QFrame(parent), m_session(session), m_planned(outlook.plan.orders[outlook.plan.next[next].order]) {
    setFrameShape(QFrame::StyledPanel);
    const SeasonState& season = session.season();
    const Speech speech = session.speech();
    m_supplier = supplierName(m_planned.supplier, season);
    const PurchaseOrder order = purchaseOrder(season, draftOf(m_planned, season, outlook.today));
    auto* column = new QVBoxLayout(this);
    QLabel* title = headingLabel(tr("Proposed order, %1", "supplier").arg(m_supplier), this);
    title->setWordWrap(true);
    column->addWidget(title);
    const QDate by = outlook.plan.next[next].orderBy;
    if (by.isValid()) column->addWidget(proseLabel(tr("Order by: %1", "date").arg(orderByText(by, outlook.today, speech)), this));
    buildLines(column, order);
    column->addWidget(proseLabel(orderReasons(outlook, next, season, speech).join(u'\n'), this));
    buildButtons(column);
}

void ProposalCard::buildLines(QVBoxLayout* column, const PurchaseOrder& order) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(2);
    grid->setColumnStretch(0, 1);
    const Speech speech = m_session.speech();
    for (const PurchaseLine& line : order.lines) {
        addRow(grid, {shown(line.supply), packsText(line.packs, line.pack, line.kind, speech), moneyText(line.total, speech)},
               false);
    }
    addRow(grid, {tr("Freight"), QString(), moneyText(order.freight, speech)}, false);
    addRow(grid, {tr("Total"), QString(), moneyText(order.total, speech)}, true);
    column->addLayout(grid);
}

void ProposalCard::addRow(QGridLayout* grid, const QStringList& cells, bool strong) {
    const int row = grid->rowCount();
    for (int c = 0; c < int(cells.size()); ++c) {
        QLabel* label = strong ? headingLabel(cells[c], this) : c == 0 ? proseLabel(cells[c], this) : plainLabel(cells[c], this);
        grid->addWidget(label, row, c, c == 2 ? Qt::AlignTrailing | Qt::AlignTop : Qt::Alignment());
    }
}

QPushButton* ProposalCard::button(const QString& text, const char* name, const QString& spoken) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(name);
    made->setAccessibleName(spoken);
    return made;
}

void ProposalCard::buildButtons(QVBoxLayout* column) {
    const auto called = [this](const QString& deed) { return tr("%1: %2", "what is done, supplier").arg(deed, m_supplier); };
    QPushButton* placing = button(tr("Place order"), "placeOrder", called(tr("Place order")));
    QPushButton* drafting = button(tr("Save draft"), "saveDraft", called(tr("Save draft")));
    QPushButton* printing = button(tr("Print…"), "printOrder", called(tr("Print order")));
    QPushButton* pdf = button(tr("PDF…"), "orderPdf", called(tr("Save order as PDF")));
    QPushButton* csv = button(tr("CSV…"), "orderCsv", called(tr("Save order as CSV")));
    m_storing = {placing, drafting};
    m_writing = {printing, pdf, csv};
    placing->setToolTip(tr("Keeps it as placed today, with the next number; it can be undone"));
    for (const auto* row : {&m_storing, &m_writing}) {
        auto* line = new QHBoxLayout;
        for (QPushButton* one : *row)
            line->addWidget(one);
        line->addStretch();
        column->addLayout(line);
    }
    connect(placing, &QPushButton::clicked, this, [this] { store(OrderState::Placed); });
    connect(drafting, &QPushButton::clicked, this, [this] { store(OrderState::Draft); });
    const auto draft = [this] { return newOrder(m_planned, OrderState::Draft, m_session); };
    connect(printing, &QPushButton::clicked, this, [this, draft] { printOrder(draft(), m_session, this); });
    connect(pdf, &QPushButton::clicked, this, [this, draft] { askWhereForPdf(draft(), m_session, this); });
    connect(csv, &QPushButton::clicked, this, [this, draft] { askWhereForCsv(draft(), m_session, this); });
}

void ProposalCard::setCurrent(bool current) {
    for (QPushButton* one : m_storing)
        one->setEnabled(current && !m_session.isReadOnly());
    for (QPushButton* one : m_writing)
        one->setEnabled(current);
}

void ProposalCard::store(OrderState state) {
    const Order order = newOrder(m_planned, state, m_session);
    const QString name = state == OrderState::Placed ? tr("Place order %1 with %2") : tr("Draft order %1 to %2");
    m_session.apply(name.arg(shown(order.number), m_supplier), {RowChange<Order>{std::nullopt, order}});
}

}  // namespace laneward
