// A list of the history as people and spreadsheets read it.
//
// CSV: happened_at, kind, machine, lanes, person, item_or_product, what, meter, minutes, cost_minor, stands (1 or 0), id,
// corrects; times ISO 8601 with the centre's offset, names as they are shown.
#pragma once

#include "core/documents/history_index.h"

#include <QHash>

#include <span>

namespace laneward {

/// What is listed: rows of an index in their order.
struct HistoryList {
    const HistoryIndex& index;
    const std::vector<HistoryRow>& rows;
};

QString title(HistoryColumn column);

/// What stands in the cells; numbers and words that come again are made once.
class HistoryCells {
public:
    HistoryCells(const QByteArray& currency, const Speech& speech);
    /// Of an entry that does not stand, the kind says so.
    const QString& text(const HistoryEntry& entry, HistoryColumn column) const;

private:
    const QString& numberText(std::int64_t number) const;
    const QString& moneyText(std::int64_t minor) const;

    QByteArray m_currency;
    Speech m_speech;
    QStringList m_kinds;
    QStringList m_fallen;  ///< kinds of entries that do not stand
    mutable QHash<std::int64_t, QString> m_numbers;
    mutable QHash<std::int64_t, QString> m_money;
};

/// A list made ready for paper.
struct HistorySheet {
    QString title;
    QString headline;
    std::vector<HistoryColumn> columns;
    QStringList headings;
    std::vector<QString> cells;  ///< row after row
    QStringList sums;
    QString footer;

    size_t rowCount() const { return columns.empty() ? 0 : cells.size() / columns.size(); }
    std::span<const QString> row(size_t n) const { return std::span(cells).subspan(n * columns.size(), columns.size()); }
};
/// Headings and rows of the columns; the rest is left to the caller.
HistorySheet historySheet(const HistoryList& list, const std::vector<HistoryColumn>& columns, const HistoryCells& cells);

QByteArray historyListCsv(const HistoryList& list, const Speech& speech);
/// Columns padded to one width, what was done last.
QString historyListText(const HistoryList& list, const HistoryCells& cells);

}  // namespace laneward
