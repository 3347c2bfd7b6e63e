// When each duty was last done before the program came, being typed: a day, and how much was done since by each meter that the
// duty counts. What cannot be read stays as it was typed, and is told by faults().
#pragma once

#include "core/documents/wording.h"
#include "core/season/service_state.h"

#include <QAbstractTableModel>

#include <array>

namespace laneward {

class LastDoneModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { What, Day, Lanes, Runs, Hours, Volume, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    struct Asked {
        ServiceItem item;
        Duty duty;
    };
    void show(std::vector<Asked> duties, const Centre& centre, const Speech& speech);
    /// One for each row in which a day stands; meters are `now` less what was done since.
    std::vector<ServiceRecord> records(const Meters& now, Instant at) const;
    std::vector<Finding> faults() const;
    bool isCounted(int row, int column) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    void edited();

private:
    struct Row {
        Asked asked;
        std::array<QString, ColumnCount> cells;
        bool isEmpty() const;
    };

    std::optional<QDate> dayOf(const QString& typed) const;
    std::optional<std::int64_t> sinceOf(const Row& row, int column) const;

    std::vector<Row> m_rows;
    Centre m_centre;
    Speech m_speech;
};

}  // namespace laneward
