#include "app/pages/supplies/count_model.h"

#include "app/pages/supplies/supply_texts.h"
#include "app/widgets/decimal_text.h"
#include "core/documents/stock_words.h"

#include <algorithm>

namespace laneward {

namespace {

constexpr double exampleNumber = 12.5;

}  // namespace

CountModel::CountModel(Session& session, QObject* parent) : QAbstractTableModel(parent), m_session(session) {}

/// The places of now with what was typed at them. What was typed at a place that is no longer there stays with nothing in it.
std::vector<CountModel::Row> CountModel::merged() const {
    std::vector<Row> rows;
    for (const CountRow& row : rowsToCount(m_session.season())) {
        Row fresh;
        fresh.count = row;
        rows.push_back(fresh);
    }
    for (const Row& before : m_rows) {
        const auto same = std::find_if(rows.begin(), rows.end(), [&](const Row& r) { return r.count.key == before.count.key; });
        if (same != rows.end() && !before.twice) {
            const CountRow now = same->count;
            *same = before;
            same->count = now;
            same->added = false;
        } else if (before.added || !before.typed.isEmpty()) {
            const auto last = std::find_if(rows.rbegin(), rows.rend(), [&](const Row& r) {
                return r.count.key.supply == before.count.key.supply && r.count.key.place == before.count.key.place;
            });
            Row kept = before;
            kept.count.books = {};
            rows.insert(last.base() == rows.begin() ? rows.end() : last.base(), kept);
        }
    }
    return rows;
}

bool CountModel::wouldReset() const {
    const std::vector<Row> next = merged();
    return !std::equal(next.begin(), next.end(), m_rows.begin(), m_rows.end(),
                       [](const Row& a, const Row& b) { return a.count.key == b.count.key && a.added == b.added; });
}

bool CountModel::refresh() {
    m_speech = m_session.speech();
    const bool resets = wouldReset();
    if (resets) beginResetModel();
    m_rows = merged();
    for (Row& row : m_rows)
        judge(row);
    judgeLots();
    if (resets)
        endResetModel();
    else
        tellFigures();
    return resets;
}

/// What is typed is told cell by cell: an open editor would take over what stands in its cell.
void CountModel::tellFigures() {
    if (m_rows.empty()) return;
    for (const auto& [first, last] : {std::pair{Name, Where}, {BooksSay, BooksSay}, {Unit, Remark}})
        Q_EMIT dataChanged(index(0, first), index(rowCount() - 1, last));
}

void CountModel::judge(Row& row) const {
    row.amount = row.typed.isEmpty() ? std::nullopt : unitOfRow(row).amountOf(row.typed, m_speech.locale);
    row.faults.clear();
    row.doubts.clear();
    if (!row.amount) return;
    const SeasonState& season = m_session.season();
    const StockCount count{{}, {}, {}, linesOf(row.count, *row.amount), {}, {}};
    row.faults = faultsOf(count, season.supplies);
    if (row.faults.empty())
        row.doubts = doubtsOf(count, Books{season.centre, season.supplies, season.patterns, season.stock, {}});
}

/// A lot that is typed may be that of another row.
void CountModel::judgeLots() {
    for (Row& row : m_rows) {
        row.twice = row.added && std::any_of(m_rows.begin(), m_rows.end(), [&](const Row& other) {
                        return &other != &row && other.count.key == row.count.key && (!other.added || &other < &row);
                    });
    }
}

CountModel::State CountModel::stateAt(int n) const {
    const Row& row = m_rows[size_t(n)];
    if (row.typed.isEmpty()) return State::Empty;
    if (!row.amount || !row.faults.empty() || row.twice) return State::Wrong;
    return row.doubts.empty() || row.sure ? State::Ready : State::Asked;
}

int CountModel::countOf(State state) const {
    int count = 0;
    for (int row = 0; row < rowCount(); ++row)
        count += stateAt(row) == state;
    return count;
}

int CountModel::firstOf(State state) const {
    for (int row = 0; row < rowCount(); ++row) {
        if (stateAt(row) == state) return row;
    }
    return -1;
}

std::vector<CountLine> CountModel::lines() const {
    std::vector<CountLine> lines;
    for (int row = 0; row < rowCount(); ++row) {
        if (stateAt(row) != State::Ready) continue;
        for (CountLine& line : linesOf(rowAt(row), *m_rows[size_t(row)].amount))
            lines.push_back(std::move(line));
    }
    return lines;
}

int CountModel::addLot(int row) {
    Row added;
    added.count = rowAt(row);
    added.count.key.container.clear();
    added.count.key.lot.clear();
    added.count.books = {};
    added.added = true;
    beginInsertRows({}, row + 1, row + 1);
    m_rows.insert(m_rows.begin() + row + 1, added);
    judgeLots();
    endInsertRows();
    return row + 1;
}

void CountModel::clear() {
    beginResetModel();
    m_rows.clear();
    endResetModel();
    refresh();
    Q_EMIT typed();
}

QString CountModel::remarkOf(const Row& row) const {
    if (row.twice) return tr("! This lot stands in another row.");
    if (row.typed.isEmpty()) return {};
    const QuantityUnit unit = unitOfRow(row);
    if (!row.amount)
        return unit.decimals == 0
                   ? tr("! Not a whole number.")
                   : tr("! Not a number; it is written as %1.", "example").arg(decimalText(exampleNumber, 1, m_speech.locale));
    if (!row.faults.empty()) return QStringLiteral("! ") + text(row.faults.front(), m_speech);
    const QString found = amountText(*row.amount, row.count.kind, m_speech);
    const QString known = amountText(row.count.books, row.count.kind, m_speech);
    if (!row.doubts.empty()) return tr("? %1, the books have %2. Tick if it is so.").arg(found, known);
    if (row.then != row.count.books)
        return tr("The books had %1 when this was typed.").arg(amountText(row.then, row.count.kind, m_speech));
    return {};
}

QString CountModel::cell(int n, Column column) const {
    const Row& row = m_rows[size_t(n)];
    const SeasonState& season = m_session.season();
    const QuantityUnit unit = unitOfRow(row);
    switch (column) {
        case Name:
            return supplyName(row.count.key.supply, season);
        case Where: {
            const QString place = placeText({row.count.key.supply, row.count.key.place, {}, {}}, season);
            return row.count.waterParts > 0 ? tr("%1 (as mixed)", "place").arg(place) : place;
        }
        case Lot: {
            QStringList parts{shown(row.count.key.container), shown(row.count.key.lot)};
            parts.removeAll(QString());
            return parts.join(tr(", "));
        }
        case BooksSay:
            return unit.text(row.count.books, m_speech.locale);
        case Counted:
            return row.typed;
        case Unit:
            return unit.name;
        case Difference: {
            if (!row.amount) return {};
            const Amount difference = *row.amount - row.count.books;
            const QString number = unit.text(difference, m_speech.locale);
            return difference > Amount{0} ? m_speech.locale.positiveSign() + number : number;
        }
        case Remark:
            return remarkOf(row);
        case ColumnCount:
            break;
    }
    return {};
}

int CountModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }

int CountModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QVariant CountModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = m_rows[size_t(index.row())];
    const auto column = Column(index.column());
    const bool number = column == BooksSay || column == Counted || column == Difference;
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
            return cell(index.row(), column);
        case Qt::ToolTipRole:
            return column == Remark && !remarkOf(row).isEmpty()
                       ? QVariant(QStringLiteral("<qt>%1</qt>").arg(remarkOf(row).toHtmlEscaped()))
                       : QVariant();
        case Qt::AccessibleTextRole:
            return column == Counted ? tr("%1, %2 %3: counted", "supply, place, lot")
                                           .arg(cell(index.row(), Name), cell(index.row(), Where), cell(index.row(), Lot))
                                     : cell(index.row(), column);
        case Qt::TextAlignmentRole:
            return int((number ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
        case Qt::CheckStateRole:
            return column == Remark && !row.doubts.empty() ? QVariant(row.sure ? Qt::Checked : Qt::Unchecked) : QVariant();
        default:
            return {};
    }
}

bool CountModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!(flags(index) & (Qt::ItemIsEditable | Qt::ItemIsUserCheckable))) return false;
    Row& row = m_rows[size_t(index.row())];
    if (role == Qt::CheckStateRole && index.column() == Remark) {
        row.sure = value.toInt() == Qt::Checked;
    } else if (role == Qt::EditRole && index.column() == Lot) {
        row.count.key.lot = value.toString().trimmed().left(limits::nameLength);
        judgeLots();
    } else if (role == Qt::EditRole && index.column() == Counted) {
        const QString text = value.toString().trimmed();
        if (text == row.typed) return true;
        row.typed = text;
        row.sure = false;
        row.then = row.count.books;
    } else {
        return false;
    }
    judge(row);
    Q_EMIT dataChanged(index, index);
    tellFigures();
    Q_EMIT typed();
    return true;
}

QVariant CountModel::headerData(int section, Qt::Orientation orientation, int role) const {
    const bool number = section == BooksSay || section == Counted || section == Difference;
    if (role == Qt::TextAlignmentRole)
        return int((number ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter) | int(Qt::TextWordWrap);
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Name:
            return tr("Supply");
        case Where:
            return tr("Place");
        case Lot:
            return tr("Lot, container");
        case BooksSay:
            return tr("Books");
        case Counted:
            return tr("Counted");
        case Unit:
            return tr("Unit");
        case Difference:
            return tr("Difference");
        case Remark:
            return tr("Remark");
        default:
            return {};
    }
}

Qt::ItemFlags CountModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return {};
    const Row& row = m_rows[size_t(index.row())];
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (m_session.isReadOnly()) return flags;
    if (index.column() == Counted || (index.column() == Lot && row.added)) flags |= Qt::ItemIsEditable;
    if (index.column() == Remark && !row.doubts.empty()) flags |= Qt::ItemIsUserCheckable;
    return flags;
}

}  // namespace laneward
