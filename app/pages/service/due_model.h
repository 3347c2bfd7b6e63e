// The duties that fall due as a table: what, of which machine, when as a range on one date axis, what is left, what is missing,
// and the visit in which it is to be done.
#pragma once

#include "app/widgets/date_axis.h"
#include "core/documents/wording.h"
#include "core/season/service_outlook.h"

#include <QAbstractTableModel>

namespace laneward {

class DueModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { What, Item, Due, Left, Missing, Visit, ColumnCount };
    static constexpr int SortRole = Qt::UserRole;
    static constexpr int MarksRole = Qt::UserRole + 1;
    static constexpr int UrgentRole = Qt::UserRole + 2;  ///< due today or overdue
    static constexpr int FilterRole = Qt::UserRole + 3;  ///< "soon" (due within four weeks) or "later", and its words, folded

    explicit DueModel(QObject* parent = nullptr);

    void show(const SeasonState& season, const ServiceOutlook* outlook, const Speech& speech);
    const DutyDue* at(int row) const { return row >= 0 && row < int(m_rows.size()) ? &m_rows[size_t(row)].due : nullptr; }
    int rowOf(const DutyId& duty) const;  ///< -1 = not there
    DateSpan axis() const { return {m_today, m_days}; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    struct Row {
        DutyDue due;
        QString texts[ColumnCount];
        QVariant sort[ColumnCount];
        RangeMarks marks;
        bool urgent = false;
        bool soon = false;
    };

    Row rowFor(const DutyDue& due, const SeasonState& season, const ServiceOutlook& outlook, const Speech& speech) const;

    std::vector<Row> m_rows;
    QDate m_today;
    int m_days = 90;
};

}  // namespace laneward

Q_DECLARE_METATYPE(laneward::RangeMarks)
