// The strokes table: one row a stroke in working order, each cell as it was typed. What is wrong says so at its cell.
#pragma once

#include "app/pages/patterns/stroke_rows.h"

#include <QAbstractTableModel>

namespace laneward {

class StrokesModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { DirectionColumn, FirstBoard, LastBoard, Laps, Dose, From, To, Volume, Conditioner, ColumnCount };

    explicit StrokesModel(QObject* parent = nullptr);

    void setDraft(const PatternDraft& draft, const Speech& speech);
    /// Names of the conditioners, by slot; an empty one is told by its number.
    void setConditioners(const std::array<QString, conditionerSlots>& names);
    void setReadOnly(bool readOnly) { m_readOnly = readOnly; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

    static std::optional<StrokeField> fieldOf(int column);
    QString directionText(Direction direction) const;
    QString conditionerText(int slot) const;

Q_SIGNALS:
    /// Somebody typed: the owner makes it so, and can undo it.
    void rowTyped(int row, const laneward::StrokeRow& after);

private:
    QVariant shownAt(size_t row, int column) const;
    QString volumeText(size_t row) const;
    QString headTip(int section) const;

    PatternDraft m_draft;
    Speech m_speech;
    std::array<QString, conditionerSlots> m_conditioners;
    bool m_readOnly = false;
};

}  // namespace laneward
