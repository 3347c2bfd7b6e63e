#include "app/pages/patterns/inspection_model.h"

#include "app/widgets/decimal_text.h"
#include "core/documents/film_words.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr int usualFeet[] = {20, 35, 50};  // common practice, no source

double distancePerUnit(UnitSystem units) { return units == UnitSystem::Metric ? 1e6 : double(feet(1).value); }

}  // namespace

void InspectionModel::fill(Cell& cell, Micrometres length, bool isDistance) {
    const double number =
        isDistance ? double(length.value) / distancePerUnit(m_speech.units) : departureNumber(length, m_speech.units);
    const int decimals = isDistance ? 3 : departureDecimals(m_speech.units) + 1;
    cell.typed = cell.filled = decimalText(number, decimals, m_speech.locale);
    cell.length = cell.set = length;
}

void InspectionModel::read(Cell& cell, const QString& text, bool isDistance) {
    cell.typed = text.trimmed();
    cell.length.reset();
    if (cell.typed.isEmpty()) return;
    if (cell.typed == cell.filled) {
        cell.length = cell.set;
        return;
    }
    const std::optional<double> number = decimalOf(cell.typed, m_speech.locale);
    if (!number || std::abs(*number) > 1e6) return;
    cell.length =
        isDistance ? Micrometres{std::llround(*number * distancePerUnit(m_speech.units))} : departureOf(*number, m_speech.units);
}

void InspectionModel::begin(const std::vector<GeometryValue>& values, const Speech& speech) {
    beginResetModel();
    m_speech = speech;
    m_rows = {};
    std::vector<Micrometres> distances;
    for (const GeometryValue& value : values)
        distances.push_back(value.distance);
    if (distances.empty()) {
        for (const int ft : usualFeet)
            distances.push_back(feet(ft));
    }
    std::sort(distances.begin(), distances.end());
    distances.erase(std::unique(distances.begin(), distances.end()), distances.end());
    for (size_t r = 0; r < std::min(distances.size(), m_rows.size()); ++r) {
        fill(m_rows[r][Distance], distances[r], true);
        for (const GeometryValue& value : values) {
            if (value.distance == distances[r]) fill(m_rows[r][FirstFeature + size_t(value.feature)], value.departure, false);
        }
    }
    endResetModel();
}

/// Empty when the row can be read.
QString InspectionModel::wrong(const Row& row) const {
    const bool measured =
        std::any_of(row.begin() + FirstFeature, row.end(), [](const Cell& cell) { return !cell.typed.isEmpty(); });
    const Cell& distance = row[Distance];
    if (!distance.typed.isEmpty() && !distance.length) return tr("the distance is not a number");
    if (distance.length && (*distance.length < Micrometres{0} || *distance.length > laneLength))
        return tr("the distance is not on the lane (0 to %1)").arg(lengthText(laneLength, m_speech));
    if (measured && !distance.length) return tr("at which distance?");
    for (const GeometryFeature feature : allFeatures) {
        const Cell& cell = row[FirstFeature + size_t(feature)];
        if (cell.typed.isEmpty()) continue;
        if (!cell.length) return tr("%1 is not a number").arg(text(feature));
        if (*cell.length > mostDeparture || *cell.length < -mostDeparture)
            return tr("%1 beyond %2 cannot be").arg(text(feature), departureText(mostDeparture, m_speech));
    }
    return {};
}

std::vector<GeometryValue> InspectionModel::values() const {
    std::vector<GeometryValue> values;
    for (const Row& row : m_rows) {
        if (!wrong(row).isEmpty()) continue;
        for (const GeometryFeature feature : allFeatures) {
            const Cell& cell = row[FirstFeature + size_t(feature)];
            if (cell.length) values.push_back({feature, *row[Distance].length, *cell.length});
        }
    }
    return values;
}

int InspectionModel::firstBad() const {
    const auto bad = std::find_if(m_rows.begin(), m_rows.end(), [this](const Row& row) { return !wrong(row).isEmpty(); });
    return bad == m_rows.end() ? -1 : int(bad - m_rows.begin());
}

QString InspectionModel::remark(int row) const { return wrong(m_rows[size_t(row)]); }

int InspectionModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows; }
int InspectionModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QVariant InspectionModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = m_rows[size_t(index.row())];
    const bool isRemark = index.column() == Remark;
    const QString mark = isRemark ? wrong(row) : QString();
    const QString shownText = !isRemark        ? row[size_t(index.column())].typed
                              : mark.isEmpty() ? QString()
                                               : QStringLiteral("! ") + mark;
    if (role == Qt::DisplayRole || role == Qt::EditRole) return shownText;
    if (role == Qt::TextAlignmentRole) return int((isRemark ? Qt::AlignLeading : Qt::AlignTrailing) | Qt::AlignVCenter);
    if (role == Qt::AccessibleTextRole) {
        return tr("%1, row %2: %3")
            .arg(headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                 m_speech.locale.toString(index.row() + 1), shownText);
    }
    return {};
}

bool InspectionModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || index.column() >= Remark) return false;
    const QStringList cells = pastedCells(value.toString());
    for (qsizetype n = 0; n < cells.size() && index.column() + n < Remark; ++n)
        read(m_rows[size_t(index.row())][size_t(index.column() + n)], cells[n], index.column() + n == Distance);
    Q_EMIT dataChanged(index.siblingAtColumn(0), index.siblingAtColumn(Remark));
    return true;
}

QVariant InspectionModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) return {};
    if (orientation == Qt::Vertical) return m_speech.locale.toString(section + 1);
    const bool metric = m_speech.units == UnitSystem::Metric;
    if (section == Distance) return metric ? tr("Distance, m") : tr("Distance, ft");
    if (section == Remark) return tr("Remark");
    const QString feature = text(allFeatures[section - FirstFeature]);
    return metric ? tr("%1, mm").arg(feature) : tr("%1, in").arg(feature);
}

Qt::ItemFlags InspectionModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    return index.column() < Remark ? flags | Qt::ItemIsEditable : flags;
}

}  // namespace laneward
