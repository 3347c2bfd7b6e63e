// Lanes by geometry features: the worst departure of the newest inspection that measured it, against the tolerance.
#pragma once

#include "core/documents/wording.h"
#include "core/patterns/reading_checks.h"

#include <QAbstractTableModel>

namespace laneward {

inline constexpr GeometryFeature allFeatures[] = {GeometryFeature::Level, GeometryFeature::Tilt, GeometryFeature::Crown,
                                                  GeometryFeature::Depression};

/// The largest departure either way of one feature in one inspection.
struct WorstDeparture {
    Instant at;
    OperationId inspection;
    Micrometres departure;
    Micrometres distance;
    bool holds = true;  ///< within the tolerance
};
std::optional<WorstDeparture> worstOf(const Inspection& inspection, GeometryFeature feature);
const GeometryTolerance& toleranceOf(GeometryFeature feature);

/// "1.05 mm" or "0.041 in".
QString departureText(Micrometres departure, const Speech& speech);
double departureNumber(Micrometres departure, UnitSystem units);  ///< millimetres or inches
Micrometres departureOf(double number, UnitSystem units);
int departureDecimals(UnitSystem units);

class GeometryModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Lane, FirstFeature, Inspected = FirstFeature + 4, ColumnCount };
    enum Role { SortRole = Qt::UserRole };

    using QAbstractTableModel::QAbstractTableModel;

    /// Inspections that stand, in any order.
    void show(int lanes, const std::vector<Inspection>& inspections, const Speech& speech);
    const std::optional<WorstDeparture>& worst(int row, GeometryFeature feature) const;
    /// Of a column; none for the columns that are no feature.
    static std::optional<GeometryFeature> featureOf(int column);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        std::array<std::optional<WorstDeparture>, 4> worst;
        std::optional<Instant> inspected;
    };
    QString cell(const Row& row, int lane, int column) const;

    std::vector<Row> m_rows;
    Speech m_speech;
};

}  // namespace laneward
