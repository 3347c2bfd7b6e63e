// An inspection as it is typed: a row a distance, a column a feature. A cell keeps what was typed until it can be read; the last
// column says what is wrong.
#pragma once

#include "app/pages/patterns/geometry_model.h"

namespace laneward {

class InspectionModel : public QAbstractTableModel {
    Q_OBJECT

public:
    static constexpr int rows = 12;
    enum Column { Distance, FirstFeature, Remark = FirstFeature + 4, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void begin(const std::vector<GeometryValue>& values, const Speech& speech);
    /// What can be read, row by row.
    std::vector<GeometryValue> values() const;
    int firstBad() const;  ///< row, -1 = all can be read
    QString remark(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Cell {
        QString typed;
        std::optional<Micrometres> length;  ///< what was typed
        Micrometres set;                    ///< what it was filled with, given back while nobody types over it
        QString filled;
    };
    using Row = std::array<Cell, Remark>;

    void fill(Cell& cell, Micrometres length, bool isDistance);
    void read(Cell& cell, const QString& text, bool isDistance);
    QString wrong(const Row& row) const;

    std::array<Row, rows> m_rows;
    Speech m_speech;
};

}  // namespace laneward
