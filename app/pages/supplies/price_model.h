// The price breaks of an offer being typed: from so many packs on, each costs so much. The last row is empty: typing there makes
// another one; emptying a row takes it out.
#pragma once

#include "core/documents/wording.h"
#include "core/supplies/supply.h"

#include <QAbstractTableModel>

#include <array>

namespace laneward {

class PriceModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { FromPacks, Each, ColumnCount };

    explicit PriceModel(QObject* parent = nullptr);

    void show(const std::vector<PriceBreak>& prices, const QByteArray& currency, const Speech& speech);
    /// As they stand; rows that cannot be read are left out, and told by unreadable().
    std::vector<PriceBreak> prices() const;
    std::vector<int> unreadable() const;  ///< rows from 1

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
        std::array<QString, ColumnCount> cells;
        std::optional<Money> kept;  ///< as it was stored, until it is typed over
        bool isEmpty() const { return cells[FromPacks].isEmpty() && cells[Each].isEmpty(); }
    };

    std::optional<PriceBreak> read(const Row& row) const;
    QByteArray m_currency;
    Speech m_speech;
    std::vector<Row> m_rows;
};

}  // namespace laneward
