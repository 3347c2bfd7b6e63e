// The supplies that are kept as a table: what is there, what a week takes, and, once that is worked out, how long it lasts.
//
// Before the outlook is known, and while another is worked out, what is on hand is told already. Painted columns have their words
// as texts, for copies, print and screen readers.
#pragma once

#include "app/widgets/date_axis.h"
#include "core/documents/wording.h"
#include "core/season/supply_outlook.h"

#include <QAbstractTableModel>

namespace laneward {

/// What the sparkline and the range of a row show; days from today, -1 = none within the horizon.
struct StockMarks {
    QList<double> stock;  ///< median at the end of each day, as a part of the largest; empty = not known
    int early = -1;
    int likely = -1;
    int late = -1;
    int orderBy = -1;
    bool isKnown = false;
};

class StockModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Name, Kind, OnHand, Sealed, Open, InTanks, AWeek, Stock, RunsOut, OrderBy, ColumnCount };
    static constexpr int SortRole = Qt::UserRole;
    static constexpr int GroupRole =
        Qt::UserRole + 1;  ///< number of its SupplyGroup as text, or that it is retired; for the filter
    static constexpr int MarksRole = Qt::UserRole + 2;
    static constexpr int UrgentRole = Qt::UserRole + 3;  ///< to be ordered today or before
    static constexpr int sparkDays = 90;
    static QString retiredGroup() { return QStringLiteral("retired"); }
    static QString keptGroups() { return QStringLiteral("^\\d+$"); }  ///< expression for all others

    explicit StockModel(QObject* parent = nullptr);

    /// `outlook` may be null: not known yet. Both are copied from.
    void show(const SeasonState& season, const SupplyOutlook* outlook, const Speech& speech);
    SupplyId idAt(int row) const { return m_rows[size_t(row)].id; }
    int rowOf(const SupplyId& id) const;  ///< -1 = not there
    /// Days that the common axis of the ranges spans, from today on.
    int axisDays() const { return m_axisDays; }
    QDate today() const { return m_today; }
    DateSpan axis() const { return {m_today, m_axisDays}; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    struct Row {
        SupplyId id;
        QString texts[ColumnCount];
        QVariant sort[ColumnCount];
        QString tip;
        QString group;
        StockMarks marks;
        bool urgent = false;
    };

    Row rowFor(const Supply& supply, const SeasonState& season, const SupplyLine* line) const;
    void tell(Row& row, const Supply& supply, const SupplyLine& line) const;
    QString rangeText(const SupplyLine& line) const;

    std::vector<Row> m_rows;
    Speech m_speech;
    QDate m_today;
    int m_axisDays = sparkDays;
};

}  // namespace laneward

Q_DECLARE_METATYPE(laneward::StockMarks)
