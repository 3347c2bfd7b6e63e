// The 39 boards of a tape reading as they are typed: each cell keeps what was typed until it can be read, and says what is wrong.
//
// A row or column pasted from a spreadsheet fills the boards from the one it is pasted on, board by board.
#pragma once

#include "core/patterns/film.h"
#include "core/patterns/tape_reading.h"

#include <QAbstractTableModel>
#include <QLocale>

namespace laneward {

class BoardModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Read, Computed, Error, Remark, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void begin(const TapeValues& values, const QLocale& locale);
    void setComputed(const std::optional<BoardValues>& computed);
    /// From board `first` on; what goes beyond board 39 is kept in the last cell's remark.
    void paste(int first, const QStringList& cells);

    const TapeValues& values() const { return m_values; }  ///< cells that cannot be read have none
    int firstBad() const;                                  ///< board, 0 = all can be read
    QString remark(int board) const;                       ///< what is wrong there

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    void edited();

private:
    void read(int row, const QString& text);
    QString display(int row, int column) const;

    std::array<QString, size_t(boards)> m_typed;
    std::array<QString, size_t(boards)> m_wrong;
    TapeValues m_values;
    std::optional<BoardValues> m_computed;
    QLocale m_locale;
};

}  // namespace laneward
