#include "app/pages/supplies/ledger_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/pages/supplies/ledger_model.h"
#include "app/pages/supplies/list_paper.h"
#include "app/pages/supplies/supply_texts.h"
#include "app/widgets/time_formats.h"
#include "core/base/limits.h"

#include <QComboBox>
#include <QDateEdit>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr int wordsAir = 22;  // beside whole words in a column
constexpr int daysAtFirst = 28;
constexpr int piecesLookedBack = 13;  // about a year, until there is something
constexpr size_t rowsAtOnce = 500;

}  // namespace

LedgerPanel::LedgerPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session), m_most(rowsAtOnce) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    buildChoices(column);
    buildList(column);
    buildCorrection(column);
}

void LedgerPanel::buildChoices(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    m_supply = new QComboBox(this);
    m_supply->setObjectName("ledgerSupply");
    m_supply->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* label = plainLabel(tr("&Supply:"), this);
    label->setBuddy(m_supply);
    row->addWidget(label);
    row->addWidget(m_supply);
    const auto dateField = [&](const QString& name, const QString& spoken, const char* id) {
        auto* field = new QDateEdit(this);
        field->setObjectName(id);
        field->setDisplayFormat(dayFieldFormat(QLocale()));
        field->setCalendarPopup(true);
        field->setAccessibleName(spoken);
        auto* head = plainLabel(name, this);
        head->setBuddy(field);
        row->addWidget(head);
        row->addWidget(field);
        connect(field, &QDateEdit::dateChanged, this, &LedgerPanel::readAfresh);
        return field;
    };
    m_from = dateField(tr("&from"), tr("Ledger from"), "ledgerFrom");
    m_to = dateField(tr("&to"), tr("Ledger to"), "ledgerTo");
    row->addStretch();
    auto* print = new QPushButton(tr("Print &list…"), this);
    print->setObjectName("printLedger");
    row->addWidget(print);
    column->addLayout(row);
    connect(m_to, &QDateEdit::dateChanged, this, [this] {
        if (!m_filling) m_followsToday = m_to->date() == m_session.today();
    });
    connect(m_supply, &QComboBox::currentIndexChanged, this, &LedgerPanel::readAfresh);
    connect(print, &QPushButton::clicked, this,
            [this] { printList(tr("Ledger of %1").arg(supplyName(current(), m_session.season())), *m_list, m_session, this); });
}

void LedgerPanel::buildList(QVBoxLayout* column) {
    m_model = new LedgerModel(this);
    m_list = listOf(m_model, QStringLiteral("supplies/ledger"), tr("ledger.csv"), m_session, this);
    m_list->setAccessibleName(tr("Movements, the newest first"));
    m_list->sortByColumn(LedgerModel::Time, Qt::DescendingOrder);
    m_list->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(m_list, 1);
    auto* row = new QHBoxLayout;
    row->addWidget(m_notes = proseLabel({}, this), 1);
    m_earlier = new QPushButton(tr("Show &earlier"), this);
    m_earlier->setObjectName("showEarlier");
    row->addWidget(m_earlier);
    column->addLayout(row);
    connect(m_earlier, &QPushButton::clicked, this, &LedgerPanel::showEarlier);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!m_filling) showChosen();
    });
}

void LedgerPanel::buildCorrection(QVBoxLayout* column) {
    m_correction = new QWidget(this);
    auto* row = new QHBoxLayout(m_correction);
    row->setContentsMargins(0, 0, 0, 0);
    m_reason = new QLineEdit(m_correction);
    m_reason->setObjectName("takeBackReason");
    m_reason->setMaxLength(limits::nameLength);
    m_reason->setPlaceholderText(tr("Why it was wrong, for example: written down twice"));
    auto* label = plainLabel(tr("&Reason:"), m_correction);
    label->setBuddy(m_reason);
    m_back = new QPushButton(tr("Ta&ke back"), m_correction);
    m_back->setObjectName("takeBack");
    m_back->setToolTip(tr("Books the chosen movement the other way; both stay in the ledger"));
    row->addWidget(label);
    row->addWidget(m_reason, 1);
    row->addWidget(m_back);
    column->addWidget(m_correction);
    connect(m_reason, &QLineEdit::textChanged, this, &LedgerPanel::showChosen);
    connect(m_reason, &QLineEdit::returnPressed, this, &LedgerPanel::takeBack);
    connect(m_back, &QPushButton::clicked, this, &LedgerPanel::takeBack);
}

void LedgerPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) refresh();
}

void LedgerPanel::refresh() {
    m_stale = !isVisible();
    if (m_stale) return;
    m_filling = true;
    fillSupplies();
    const QDate today = m_session.today();
    if (m_followsToday && m_lastToday != today) {
        m_to->setDate(today);
        if (!m_lastToday.isValid()) m_from->setDate(today.addDays(1 - daysAtFirst));
        m_lastToday = today;
    }
    m_filling = false;
    read();
}

void LedgerPanel::fillSupplies() {
    const SupplyId before = m_wanted.isEmpty() ? current() : m_wanted;
    m_supply->clear();
    const SeasonState& season = m_session.season();
    for (const Supply& supply : season.supplies)
        m_supply->addItem(supply.retired ? tr("%1 (retired)", "supply").arg(shown(supply.name)) : shown(supply.name),
                          supply.id.value);
    if (!season.supplies.empty()) {
        for (const SupplyId& own : {waterId, wasteId})
            m_supply->addItem(supplyName(own, season), own.value);
    }
    m_supply->setCurrentIndex(std::max(0, m_supply->findData(before.value)));
}

SupplyId LedgerPanel::current() const { return {m_supply->currentData().toString()}; }

void LedgerPanel::select(const SupplyId& supply) {
    m_wanted = supply;
    const int index = m_supply->findData(supply.value);
    if (index >= 0) m_supply->setCurrentIndex(index);
}

DateRange LedgerPanel::days() const { return {std::min(m_from->date(), m_to->date()), m_to->date()}; }

void LedgerPanel::readAfresh() {
    if (m_filling) return;
    m_most = rowsAtOnce;
    m_wanted = current();
    if (isVisible()) read();
}

void LedgerPanel::read() {
    const LedgerRow* before = chosen();
    const OperationId kept = before ? before->movement.id : OperationId{};
    LedgerReading reading = current().isEmpty() ? LedgerReading{} : readLedger(m_session, current(), days(), m_most);
    if (reading.why) Q_EMIT m_session.problem(text(*reading.why, m_session.speech()));
    m_whole = reading.isWhole;
    const int rows = int(reading.rows.size());
    m_filling = true;
    m_model->show(std::move(reading.rows), current(), m_session.season(), m_session.speech());
    fitColumns(*m_list, wordsAir);
    const int row = m_model->rowOf(kept);
    if (row >= 0)
        chooseRow(*m_list, row);
    else if (rows > 0)
        m_list->setCurrentIndex(m_list->model()->index(0, 0));
    m_filling = false;
    const QString since = current().isEmpty() ? QString() : shortDay(reading.from, m_session.speech().locale);
    if (current().isEmpty())
        m_notes->setText(tr("No supplies are kept yet, so nothing has moved."));
    else if (rows == 0)
        m_notes->setText(tr("Nothing moved since %1.").arg(since));
    else
        m_notes->setText(tr("%n movement(s) since %1.", nullptr, rows).arg(since));
    m_earlier->setEnabled(!current().isEmpty());
    showChosen();
}

/// More of the range where it was not read to its end, else further back, until there is something.
void LedgerPanel::showEarlier() {
    if (!m_whole) {
        m_most += rowsAtOnce;
        return read();
    }
    const int rows = m_model->rowCount();
    for (int piece = 0; piece < piecesLookedBack && m_model->rowCount() == rows && m_whole; ++piece) {
        m_filling = true;
        m_from->setDate(m_from->date().addDays(-daysAtFirst));
        m_filling = false;
        read();
    }
}

const LedgerRow* LedgerPanel::chosen() const {
    const int row = chosenRow(*m_list);
    return row < 0 ? nullptr : &m_model->at(row);
}

void LedgerPanel::showChosen() {
    const LedgerRow* row = chosen();
    m_correction->setVisible(row);
    if (!row) return;
    const bool open = !row->back && !row->movement.corrects && !m_session.isReadOnly();
    m_reason->setEnabled(open);
    m_back->setEnabled(open && !m_reason->text().trimmed().isEmpty());
}

void LedgerPanel::takeBack() {
    const LedgerRow* row = chosen();
    if (!row || !m_back->isEnabled()) return;
    Movement counter = counterOf(row->movement);
    counter.reason = m_reason->text().trimmed();
    counter.recordedAt = m_session.now();
    counter.flagged = overdraws(counter, m_session.season().stock);
    const QString name = tr("Take back: %1 of %2")
                             .arg(m_model->index(chosenRow(*m_list), LedgerModel::What).data().toString(),
                                  supplyName(current(), m_session.season()));
    if (m_session.record(name, {counter})) m_reason->clear();
}

}  // namespace laneward
