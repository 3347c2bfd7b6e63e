#include "app/pages/patterns/geometry_model.h"

#include "core/documents/film_words.h"

#include <QFont>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double micrometresPerInch = 25'400;  // exactly, 16 CFR 500.19
constexpr double micrometresPerMillimetre = 1'000;

double perUnit(UnitSystem units) { return units == UnitSystem::Metric ? micrometresPerMillimetre : micrometresPerInch; }

}  // namespace

std::optional<WorstDeparture> worstOf(const Inspection& inspection, GeometryFeature feature) {
    std::optional<WorstDeparture> worst;
    for (const GeometryResult& result : checkInspection(inspection)) {
        const GeometryValue& value = result.value;
        if (value.feature != feature) continue;
        if (worst && std::abs(value.departure.value) <= std::abs(worst->departure.value)) continue;
        worst = WorstDeparture{inspection.at, inspection.id, value.departure, value.distance, result.holds};
    }
    return worst;
}

const GeometryTolerance& toleranceOf(GeometryFeature feature) {
    const auto all = geometryTolerances();
    return *std::find_if(all.begin(), all.end() - 1, [feature](const GeometryTolerance& t) { return t.feature == feature; });
}

double departureNumber(Micrometres departure, UnitSystem units) { return double(departure.value) / perUnit(units); }
Micrometres departureOf(double number, UnitSystem units) { return {std::llround(number * perUnit(units))}; }
int departureDecimals(UnitSystem units) { return units == UnitSystem::Metric ? 2 : 3; }

QString departureText(Micrometres departure, const Speech& speech) {
    const QString number = speech.locale.toString(departureNumber(departure, speech.units), 'f', departureDecimals(speech.units));
    return speech.units == UnitSystem::Metric ? GeometryModel::tr("%1 mm").arg(number) : GeometryModel::tr("%1 in").arg(number);
}

void GeometryModel::show(int lanes, const std::vector<Inspection>& inspections, const Speech& speech) {
    beginResetModel();
    m_speech = speech;
    m_rows.assign(size_t(std::max(0, lanes)), {});
    for (const Inspection& inspection : inspections) {
        if (inspection.lane < 1 || inspection.lane > lanes) continue;
        Row& row = m_rows[size_t(inspection.lane - 1)];
        row.inspected = std::max(row.inspected.value_or(inspection.at), inspection.at);
        for (const GeometryFeature feature : allFeatures) {
            std::optional<WorstDeparture>& worst = row.worst[size_t(feature)];
            const std::optional<WorstDeparture> seen = worstOf(inspection, feature);
            if (seen && (!worst || worst->at <= seen->at)) worst = seen;
        }
    }
    endResetModel();
}

const std::optional<WorstDeparture>& GeometryModel::worst(int row, GeometryFeature feature) const {
    return m_rows[size_t(row)].worst[size_t(feature)];
}

std::optional<GeometryFeature> GeometryModel::featureOf(int column) {
    if (column < FirstFeature || column >= Inspected) return std::nullopt;
    return allFeatures[column - FirstFeature];
}

int GeometryModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }
int GeometryModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QString GeometryModel::cell(const Row& row, int lane, int column) const {
    if (column == Lane) return m_speech.locale.toString(lane);
    if (column == Inspected)
        return row.inspected ? m_speech.locale.toString(m_speech.zone.toLocal(*row.inspected).date, QLocale::ShortFormat)
                             : tr("never");
    const std::optional<WorstDeparture>& worst = row.worst[size_t(*featureOf(column))];
    if (!worst) return row.inspected ? tr("not measured") : QString();
    const QString size = departureText(worst->departure, m_speech);
    return worst->holds ? tr("%1 ✓ ok").arg(size) : tr("%1 ! beyond").arg(size);
}

QVariant GeometryModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = m_rows[size_t(index.row())];
    const std::optional<GeometryFeature> feature = featureOf(index.column());
    const std::optional<WorstDeparture> worst = feature ? row.worst[size_t(*feature)] : std::nullopt;
    if (role == Qt::DisplayRole) return cell(row, index.row() + 1, index.column());
    if (role == SortRole) {
        if (index.column() == Lane) return index.row();
        if (index.column() == Inspected) return qlonglong(row.inspected.value_or(Instant{-1}).seconds);
        return worst ? qlonglong(std::abs(worst->departure.value)) : qlonglong(-1);
    }
    if (role == Qt::TextAlignmentRole)
        return int((index.column() == Inspected ? Qt::AlignLeading : Qt::AlignTrailing) | Qt::AlignVCenter);
    if (role == Qt::FontRole && worst && !worst->holds) {
        QFont font;
        font.setBold(true);
        return font;
    }
    if (role == Qt::AccessibleTextRole) {
        return tr("Lane %1, %2: %3")
            .arg(m_speech.locale.toString(index.row() + 1),
                 headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                 cell(row, index.row() + 1, index.column()));
    }
    return {};
}

QVariant GeometryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return int((section == Inspected ? Qt::AlignLeading : Qt::AlignTrailing) | Qt::AlignVCenter) | int(Qt::TextWordWrap);
    if (role != Qt::DisplayRole) return {};
    if (section == Lane) return tr("Lane");
    if (section == Inspected) return tr("Last inspected");
    return text(*featureOf(section));
}

}  // namespace laneward
