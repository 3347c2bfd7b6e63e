#include "app/pages/supplies/ledger_model.h"

#include "app/models/list_tools.h"
#include "app/pages/supplies/supply_texts.h"
#include "core/documents/stock_words.h"

#include <algorithm>

namespace laneward {

LedgerModel::LedgerModel(QObject* parent) : QAbstractTableModel(parent) {}

void LedgerModel::show(std::vector<LedgerRow> rows, const SupplyId& supply, const SeasonState& season, const Speech& speech) {
    beginResetModel();
    m_rows = std::move(rows);
    m_texts.clear();
    for (const LedgerRow& row : m_rows)
        m_texts.push_back(textsOf(row, supply, season, speech));
    endResetModel();
}

LedgerModel::Texts LedgerModel::textsOf(const LedgerRow& row, const SupplyId& supply, const SeasonState& season,
                                        const Speech& speech) const {
    const Movement& movement = row.movement;
    const SupplyKind kind = supplyKind(supply, season);
    QStringList from;
    QStringList to;
    for (const Entry& entry : movement.entries) {
        if (entry.key.supply != supply || entry.amount == Amount{}) continue;
        QStringList& side = entry.amount > Amount{} ? to : from;
        const QString place = placeText(entry.key, season);
        if (!side.contains(place)) side << place;
    }
    const QString sign = row.change > Amount{} ? QStringLiteral("+") : row.change < Amount{} ? QStringLiteral("−") : QString();
    const Person* person = findPerson(season.centre, movement.person);
    Texts texts;
    texts.cells[Time] = dateTimeText(movement.at, speech);
    texts.cells[What] = text(movement.kind);
    texts.cells[From] = from.join(QStringLiteral("; "));
    texts.cells[To] = to.join(QStringLiteral("; "));
    texts.cells[Moved] = sign + amountText(row.moved, kind, speech);
    texts.cells[OnHand] = amountText(row.onHand, kind, speech);
    texts.cells[Mark] = markText(row);
    texts.cells[Why] = whyText(movement, season);
    texts.cells[By] = shown(person ? person->name : movement.person.value);
    return texts;
}

QString LedgerModel::whyText(const Movement& movement, const SeasonState& season) const {
    if (!movement.reason.isEmpty()) return shown(movement.reason);
    switch (movement.source) {
        case MovementSource::Person:
            return {};
        case MovementSource::Run:
            return tr("run");
        case MovementSource::Level:
            return tr("level read or tank filled");
        case MovementSource::Count:
            return tr("count of stock");
        case MovementSource::Service:
            return tr("service");
        case MovementSource::Order:
            break;
    }
    const Order* order = findOrder(season.orders, {movement.sourceId});
    return order ? tr("order %1").arg(shown(order->number)) : tr("an order");
}

QString LedgerModel::markText(const LedgerRow& row) const {
    QStringList marks;
    if (row.movement.flagged) marks << tr("! more than was there");
    if (row.back) marks << tr("taken back");
    if (row.movement.corrects) marks << tr("takes back");
    return marks.join(QStringLiteral(", "));
}

QVariant LedgerModel::sortKey(int row, int column) const {
    const LedgerRow& one = m_rows[size_t(row)];
    switch (column) {
        case Time:
            return -row;  // as read: what was booked later stands above at the same time
        case Moved:
            return qlonglong(one.moved.value);
        case OnHand:
            return qlonglong(one.onHand.value);
        default:
            return m_texts[size_t(row)].cells[column].toCaseFolded();
    }
}

int LedgerModel::rowOf(const OperationId& id) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const LedgerRow& r) { return r.movement.id == id; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int LedgerModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }

int LedgerModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QVariant LedgerModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const QString& cell = m_texts[size_t(index.row())].cells[index.column()];
    const bool number = index.column() == Moved || index.column() == OnHand;
    switch (role) {
        case Qt::DisplayRole:
            return cell;
        case Qt::ToolTipRole:
            return plainTip(cell);
        case Qt::TextAlignmentRole:
            return int((number ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
        case Qt::UserRole:
            return sortKey(index.row(), index.column());
        default:
            return {};
    }
}

QVariant LedgerModel::headerData(int section, Qt::Orientation orientation, int role) const {
    const bool number = section == Moved || section == OnHand;
    if (role == Qt::TextAlignmentRole)
        return int((number ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter) | int(Qt::TextWordWrap);
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    switch (section) {
        case Time:
            return tr("Time");
        case What:
            return tr("What");
        case From:
            return tr("From");
        case To:
            return tr("To");
        case Moved:
            return tr("Amount");
        case OnHand:
            return tr("On hand");
        case Mark:
            return tr("Note");
        case Why:
            return tr("Why");
        default:
            return tr("By");
    }
}

}  // namespace laneward
