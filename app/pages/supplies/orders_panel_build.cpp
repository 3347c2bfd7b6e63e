#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/pages/supplies/list_paper.h"
#include "app/pages/supplies/order_deeds.h"
#include "app/pages/supplies/orders_panel.h"
#include "app/pages/supplies/receive_form.h"

#include <QHeaderView>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace laneward {

OrdersPanel::OrdersPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->setChildrenCollapsible(false);
    split->addWidget(buildProposals());
    split->addWidget(buildOrders());
    split->setStretchFactor(0, 2);
    split->setStretchFactor(1, 3);
    split->setSizes({460, 640});
    column->addWidget(split, 1);
}

QWidget* OrdersPanel::buildProposals() {
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setMinimumWidth(340);
    auto* inside = new QWidget(scroll);
    m_proposals = new QVBoxLayout(inside);
    m_proposals->setContentsMargins(0, 0, 8, 0);
    m_proposals->addWidget(m_proof = proseLabel({}, inside));
    m_proposals->addStretch(1);
    scroll->setWidget(inside);
    scroll->setAccessibleName(tr("Proposed orders"));
    return scroll;
}

QWidget* OrdersPanel::buildOrders() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(8, 0, 0, 0);
    auto* head = new QHBoxLayout;
    head->addWidget(headingLabel(tr("Orders"), side), 1);
    auto* print = new QPushButton(tr("Print &list…"), side);
    print->setObjectName("printOrders");
    head->addWidget(print);
    column->addLayout(head);
    m_empty = proseLabel(tr("No order is kept yet: place a proposed one, and it stands here until it has arrived."), side);
    column->addWidget(m_empty);
    m_model = new OrderModel(this);
    m_list = listOf(m_model, QStringLiteral("supplies/orders"), tr("orders.csv"), m_session, side);
    m_list->setAccessibleName(tr("Orders"));
    m_list->sortByColumn(OrderModel::PlacedOn, Qt::DescendingOrder);
    m_list->horizontalHeader()->setSectionResizeMode(OrderModel::Missing, QHeaderView::Stretch);
    column->addWidget(m_list, 1);
    column->addWidget(m_lines = proseLabel({}, side));
    buildButtons(column);
    column->addWidget(m_form = new ReceiveForm(m_session, side));
    column->addStretch(0);
    connect(print, &QPushButton::clicked, this, [this] { printList(tr("Orders"), *m_list, m_session, this); });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (m_filling) return;
        m_form->leave();
        showChosen();
    });
    connect(m_form, &ReceiveForm::left, this, [this] {
        showChosen();
        m_list->setFocus();
    });
    return side;
}

void OrdersPanel::buildButtons(QVBoxLayout* column) {
    m_buttons = new QWidget(this);
    auto* row = new QHBoxLayout(m_buttons);
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& text, const char* name) {
        auto* button = new QPushButton(text, m_buttons);
        button->setObjectName(name);
        row->addWidget(button);
        return button;
    };
    m_receive = add(tr("&Receive"), "receiveOrder");
    m_place = add(tr("&Place order"), "placeDraft");
    m_close = add(tr("&Close order"), "closeOrder");
    m_drop = add(tr("&Delete draft"), "dropDraft");
    m_close->setToolTip(tr("Nothing more is expected of it"));
    QPushButton* print = add(tr("Print…"), "printChosen");
    print->setAccessibleName(tr("Print the chosen order"));
    QPushButton* pdf = add(tr("PDF…"), "pdfChosen");
    pdf->setAccessibleName(tr("Save the chosen order as PDF"));
    QPushButton* csv = add(tr("CSV…"), "csvChosen");
    csv->setAccessibleName(tr("Save the chosen order as CSV"));
    row->addStretch();
    column->addWidget(m_buttons);
    connect(m_receive, &QPushButton::clicked, this, [this] {
        if (const TrackedOrder* order = chosen()) m_form->open(*order);
        showChosen();
    });
    connect(m_place, &QPushButton::clicked, this, &OrdersPanel::placeDraft);
    connect(m_close, &QPushButton::clicked, this, &OrdersPanel::closeOrder);
    connect(m_drop, &QPushButton::clicked, this, &OrdersPanel::dropDraft);
    connect(print, &QPushButton::clicked, this, [this] {
        if (const TrackedOrder* order = chosen()) printOrder(order->order, m_session, this);
    });
    connect(pdf, &QPushButton::clicked, this, [this] {
        if (const TrackedOrder* order = chosen()) askWhereForPdf(order->order, m_session, this);
    });
    connect(csv, &QPushButton::clicked, this, [this] {
        if (const TrackedOrder* order = chosen()) askWhereForCsv(order->order, m_session, this);
    });
}

}  // namespace laneward
