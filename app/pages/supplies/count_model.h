// The count sheet as a table: a row for every place, what is typed beside what the books say, and what is odd about it.
//
// What is typed is kept as it is until it is booked, also what cannot be read and what is hardly meant.
#pragma once

#include "app/edits/session.h"
#include "app/widgets/quantity_box.h"
#include "core/season/count_rows.h"

#include <QAbstractTableModel>

namespace laneward {

class CountModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Name, Where, Lot, BooksSay, Counted, Unit, Difference, Remark, ColumnCount };

    /// How a row stands.
    enum class State {
        Empty,  ///< nothing is typed: it is not counted
        Ready,
        Wrong,  ///< cannot be
        Asked,  ///< hardly meant, and not confirmed
    };

    explicit CountModel(Session& session, QObject* parent = nullptr);

    /// The places as they are now; true when rows came or went, which takes an open editor away.
    bool refresh();
    bool wouldReset() const;

    State stateAt(int row) const;
    int countOf(State state) const;
    int firstOf(State state) const;  ///< row, -1 = none
    const CountRow& rowAt(int row) const { return m_rows[size_t(row)].count; }
    QString cell(int row, Column column) const;
    /// What is ready, as lines of a count.
    std::vector<CountLine> lines() const;
    /// Another lot of the row's supply at the row's place; returns the new row.
    int addLot(int row);
    bool isAdded(int row) const { return m_rows[size_t(row)].added; }
    /// Booked: everything that was typed goes.
    void clear();

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    void typed();

private:
    struct Row {
        CountRow count;
        QString typed;
        bool sure = false;
        bool added = false;
        Amount then;  ///< what the books said when it was typed
        std::optional<Amount> amount;
        bool twice = false;  ///< another row stands for the same lot
        std::vector<Finding> faults;
        std::vector<Finding> doubts;
    };

    std::vector<Row> merged() const;
    void judge(Row& row) const;
    void judgeLots();
    void tellFigures();
    QString remarkOf(const Row& row) const;
    QuantityUnit unitOfRow(const Row& row) const { return quantityUnit(row.count.kind, m_speech.units); }

    Session& m_session;
    Speech m_speech;
    std::vector<Row> m_rows;
};

}  // namespace laneward
