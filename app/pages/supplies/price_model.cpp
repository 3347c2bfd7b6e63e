#include "app/pages/supplies/price_model.h"

#include "app/widgets/decimal_text.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double mostPacks = 1e9;
constexpr double mostMoney = 1e12;

}  // namespace

PriceModel::PriceModel(QObject* parent) : QAbstractTableModel(parent) {}

void PriceModel::show(const std::vector<PriceBreak>& prices, const QByteArray& currency, const Speech& speech) {
    beginResetModel();
    m_currency = currency;
    m_speech = speech;
    m_rows.clear();
    for (const PriceBreak& price : prices) {
        Row row;
        const int digits = minorDigits(price.each.currency.isEmpty() ? currency : price.each.currency);
        row.cells[FromPacks] = QString::number(price.packs);
        row.cells[Each] = speech.locale.toString(double(price.each.minor) / std::pow(10.0, digits), 'f', digits);
        row.cells[Each].remove(speech.locale.groupSeparator());
        row.kept = price.each;
        m_rows.push_back(row);
    }
    m_rows.emplace_back();
    endResetModel();
}

/// Fractions of the smallest coin are no price.
std::optional<PriceBreak> PriceModel::read(const Row& row) const {
    const std::optional<double> packs = decimalOf(row.cells[FromPacks], m_speech.locale);
    const std::optional<double> each = decimalOf(row.cells[Each], m_speech.locale);
    if (!packs || *packs != std::floor(*packs) || std::abs(*packs) > mostPacks) return std::nullopt;
    if (row.kept) return PriceBreak{int(*packs), *row.kept};
    if (!each || std::abs(*each) > mostMoney) return std::nullopt;
    const double minor = *each * std::pow(10.0, minorDigits(m_currency));
    if (std::abs(minor - std::round(minor)) > 1e-6 * std::max(1.0, std::abs(minor))) return std::nullopt;
    return PriceBreak{int(*packs), {std::llround(minor), m_currency}};
}

std::vector<PriceBreak> PriceModel::prices() const {
    std::vector<PriceBreak> prices;
    for (const Row& row : m_rows) {
        if (const std::optional<PriceBreak> price = row.isEmpty() ? std::nullopt : read(row)) prices.push_back(*price);
    }
    return prices;
}

std::vector<int> PriceModel::unreadable() const {
    std::vector<int> rows;
    for (size_t n = 0; n < m_rows.size(); ++n) {
        if (!m_rows[n].isEmpty() && !read(m_rows[n])) rows.push_back(int(n) + 1);
    }
    return rows;
}

int PriceModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }

int PriceModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QVariant PriceModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = m_rows[size_t(index.row())];
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
            return row.cells[index.column()];
        case Qt::TextAlignmentRole:
            return int(Qt::AlignTrailing | Qt::AlignVCenter);
        case Qt::AccessibleTextRole:
            return tr("%1, row %2: %3", "column, number, value")
                .arg(headerData(index.column(), Qt::Horizontal).toString(), QString::number(index.row() + 1),
                     row.cells[index.column()]);
        default:
            return {};
    }
}

bool PriceModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || role != Qt::EditRole) return false;
    const QString typed = value.toString().trimmed();
    const auto n = size_t(index.row());
    if (m_rows[n].cells[index.column()] == typed) return true;
    m_rows[n].cells[index.column()] = typed;
    if (index.column() == Each) m_rows[n].kept.reset();
    Q_EMIT dataChanged(index, index);
    if (!m_rows.back().isEmpty()) {
        beginInsertRows({}, rowCount(), rowCount());
        m_rows.emplace_back();
        endInsertRows();
    } else if (m_rows[n].isEmpty() && n + 1 < m_rows.size()) {
        beginRemoveRows({}, int(n), int(n));
        m_rows.erase(m_rows.begin() + std::ptrdiff_t(n));
        endRemoveRows();
    }
    Q_EMIT edited();
    return true;
}

QVariant PriceModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return section == FromPacks ? tr("From packs") : tr("Each pack, %1", "currency").arg(QString::fromLatin1(m_currency));
}

Qt::ItemFlags PriceModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable : Qt::ItemFlags();
}

}  // namespace laneward
