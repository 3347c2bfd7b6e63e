#include "app/pages/patterns/board_model.h"

#include "app/widgets/decimal_text.h"

#include <cmath>

namespace laneward {

namespace {

constexpr double mostUnits = double(mostMilliUnits) / 1'000;

}  // namespace

void BoardModel::begin(const TapeValues& values, const QLocale& locale) {
    beginResetModel();
    m_locale = locale;
    m_values = values;
    m_wrong = {};
    for (size_t b = 0; b < m_typed.size(); ++b)
        m_typed[b] = values[b] ? decimalText(double(*values[b]) / 1'000, 3, locale) : QString();
    endResetModel();
    Q_EMIT edited();
}

void BoardModel::setComputed(const std::optional<BoardValues>& computed) {
    m_computed = computed;
    Q_EMIT dataChanged(index(0, Computed), index(boards - 1, Error));
}

void BoardModel::read(int row, const QString& text) {
    const size_t b = size_t(row);
    m_typed[b] = text.trimmed();
    m_wrong[b].clear();
    m_values[b].reset();
    if (m_typed[b].isEmpty()) return;
    const std::optional<double> units = decimalOf(m_typed[b], m_locale);
    if (!units)
        m_wrong[b] = tr("not a number");
    else if (*units < 0)
        m_wrong[b] = tr("film cannot be below nothing");
    else if (*units > mostUnits)
        m_wrong[b] = tr("more than %1 units cannot be").arg(m_locale.toString(mostUnits, 'f', 0));
    else
        m_values[b] = std::llround(*units * 1'000);
}

void BoardModel::paste(int first, const QStringList& cells) {
    int row = first - 1;
    for (qsizetype n = 0; n < cells.size() && row < boards; ++n, ++row)
        read(row, cells[n]);
    if (const qsizetype over = first - 1 + cells.size() - boards; over > 0) {
        m_wrong[boards - 1] = tr("%n more value(s) were pasted than there are boards", nullptr, int(over));
        m_values[boards - 1].reset();
    }
    Q_EMIT dataChanged(index(first - 1, 0), index(boards - 1, ColumnCount - 1));
    Q_EMIT edited();
}

int BoardModel::firstBad() const {
    for (size_t b = 0; b < m_wrong.size(); ++b) {
        if (!m_wrong[b].isEmpty()) return int(b) + 1;
    }
    return 0;
}

QString BoardModel::remark(int board) const { return m_wrong[size_t(board - 1)]; }

int BoardModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : boards; }
int BoardModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QString BoardModel::display(int row, int column) const {
    const size_t b = size_t(row);
    if (column == Read) return m_typed[b];
    if (column == Remark) return m_wrong[b].isEmpty() ? QString() : QStringLiteral("! ") + m_wrong[b];
    if (!m_computed) return {};
    if (column == Computed) return m_locale.toString((*m_computed)[b], 'f', 1);
    if (!m_values[b]) return {};
    const double exact = double(*m_values[b]) / 1'000 - (*m_computed)[b];
    const double off = std::abs(exact) < 0.05 ? 0 : exact;  // never "-0.0"
    return (off >= 0.05 ? QString(m_locale.positiveSign()) : QString()) + m_locale.toString(off, 'f', 1);
}

QVariant BoardModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    if (role == Qt::DisplayRole || role == Qt::EditRole) return display(index.row(), index.column());
    if (role == Qt::ToolTipRole && index.column() == Read) return m_wrong[size_t(index.row())];
    if (role == Qt::TextAlignmentRole)
        return int((index.column() == Remark ? Qt::AlignLeading : Qt::AlignTrailing) | Qt::AlignVCenter);
    if (role == Qt::AccessibleTextRole) {
        QString spoken =
            tr("Board %1, %2: %3")
                .arg(m_locale.toString(index.row() + 1), headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                     display(index.row(), index.column()));
        if (index.column() == Read && !m_wrong[size_t(index.row())].isEmpty())
            spoken += QStringLiteral(", ") + m_wrong[size_t(index.row())];
        return spoken;
    }
    return {};
}

bool BoardModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || index.column() != Read) return false;
    const QStringList cells = pastedCells(value.toString());
    if (cells.size() > 1) {
        paste(index.row() + 1, cells);
        return true;
    }
    read(index.row(), value.toString());
    Q_EMIT dataChanged(index, index.siblingAtColumn(ColumnCount - 1));
    Q_EMIT edited();
    return true;
}

QVariant BoardModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) return {};
    if (orientation == Qt::Vertical) return m_locale.toString(section + 1);
    const QString names[] = {tr("Read, units"), tr("Computed"), tr("Difference"), tr("Remark")};
    return names[section];
}

Qt::ItemFlags BoardModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    return index.column() == Read ? flags | Qt::ItemIsEditable : flags;
}

}  // namespace laneward
