#include "app/pages/patterns/reading_model.h"

#include "app/widgets/decimal_text.h"

#include <algorithm>
#include <cmath>

namespace laneward {

const Pattern* recipeOf(const TapeReading& reading, const std::vector<PatternVersion>& versions) {
    const PatternVersion* inForce = nullptr;
    for (const PatternVersion& version : versions) {
        if (reading.patternVersion != 0 && version.pattern.edition == reading.patternVersion) return &version.pattern;
        if (version.since <= reading.at && (!inForce || inForce->since <= version.since)) inForce = &version;
    }
    if (reading.patternVersion != 0 || versions.empty()) return nullptr;
    return inForce ? &inForce->pattern : &versions.front().pattern;
}

int boardsRead(const TapeReading& reading) {
    return int(std::count_if(reading.milliUnits.begin(), reading.milliUnits.end(), [](const auto& film) { return bool(film); }));
}

void ReadingModel::show(std::vector<ReadingRow> rows, const Speech& speech) {
    beginResetModel();
    m_rows = std::move(rows);
    m_seen.assign(m_rows.size(), {});
    m_speech = speech;
    endResetModel();
}

const ReadingRow* ReadingModel::row(int row) const {
    return row >= 0 && size_t(row) < m_rows.size() ? &m_rows[size_t(row)] : nullptr;
}

int ReadingModel::rowOf(const OperationId& id) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const ReadingRow& r) { return r.reading.id == id; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

const std::optional<ReadingComparison>& ReadingModel::compared(int row) const {
    Seen& seen = m_seen[size_t(row)];
    const ReadingRow& one = m_rows[size_t(row)];
    if (!seen.done && one.pattern) seen.comparison = compare(one.reading, *one.pattern, one.carry);
    seen.done = true;
    return seen.comparison;
}

int ReadingModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }
int ReadingModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

/// Figures with decimals; none = there is no such figure.
std::optional<double> ReadingModel::figure(int row, int column) const {
    const std::optional<ReadingComparison>& seen = compared(row);
    if (!seen) return std::nullopt;
    switch (column) {
        case MeanError:
            return seen->meanError;
        case LargestError:
            return seen->largest;
        case Unlikeness:
            return seen->read.unlikeness;
        case Track:
            return seen->read.trackRatio;
        case Lowest:
            return seen->read.lowest;
        default:
            return std::nullopt;
    }
}

QString ReadingModel::cell(int row, int column) const {
    const ReadingRow& one = m_rows[size_t(row)];
    const QLocale& locale = m_speech.locale;
    switch (column) {
        case When:
            return dateTimeText(one.reading.at, m_speech);
        case Lane:
            return locale.toString(one.reading.lane);
        case MachineName:
            return one.machine;
        case Distance:
            return lengthText(one.reading.distance, m_speech);
        case Version:
            return one.reading.patternVersion ? locale.toString(qlonglong(one.reading.patternVersion)) : tr("not known");
        case Count:
            return locale.toString(boardsRead(one.reading));
        case Board:
            return compared(row) && compared(row)->largestBoard ? locale.toString(compared(row)->largestBoard) : QString();
        case Note:
            return shown(one.reading.note);
        default:
            break;
    }
    std::optional<double> value = figure(row, column);
    if (!value) return QString();
    if (std::abs(*value) < 0.05 && column != Track) value = 0;  // never "-0.0"
    const bool isError = column == MeanError || column == LargestError;
    const QString plus = isError && *value >= 0.05 ? QString(locale.positiveSign()) : QString();
    return plus + locale.toString(*value, 'f', column == Track ? 2 : 1);
}

QVariant ReadingModel::sortKey(int row, int column) const {
    const TapeReading& reading = m_rows[size_t(row)].reading;
    switch (column) {
        case When:
            return qlonglong(reading.at.seconds);
        case Lane:
            return reading.lane;
        case Distance:
            return qlonglong(reading.distance.value);
        case Version:
            return qlonglong(reading.patternVersion);
        case Count:
            return boardsRead(reading);
        case Board:
            return compared(row) ? compared(row)->largestBoard : 0;
        case MachineName:
        case Note:
            return cell(row, column);
        default:
            break;
    }
    const double value = figure(row, column).value_or(-1e9);
    return column == MeanError || column == LargestError ? std::abs(value) : value;
}

QVariant ReadingModel::data(const QModelIndex& index, int role) const {
    if (!row(index.row())) return {};
    if (role == Qt::DisplayRole) return cell(index.row(), index.column());
    if (role == SortRole) return sortKey(index.row(), index.column());
    const bool words = index.column() == When || index.column() == MachineName || index.column() == Note;
    if (role == Qt::TextAlignmentRole) return int((words ? Qt::AlignLeading : Qt::AlignTrailing) | Qt::AlignVCenter);
    if (role == Qt::AccessibleTextRole) {
        return tr("%1: %2").arg(headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                                cell(index.row(), index.column()));
    }
    return {};
}

QVariant ReadingModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    const QString names[] = {tr("When"),
                             tr("Lane"),
                             tr("Machine"),
                             tr("Distance"),
                             tr("Version"),
                             tr("Boards read"),
                             tr("Mean error, units"),
                             tr("Largest error, units"),
                             tr("On board"),
                             tr("Left-right unlikeness, units"),
                             tr("Track ratio"),
                             tr("Lowest, units"),
                             tr("Note")};
    static_assert(std::size(names) == size_t(ColumnCount));
    if (role == Qt::DisplayRole) return names[section];
    if (role == Qt::TextAlignmentRole) {
        const bool words = section == When || section == MachineName || section == Note;
        return int((words ? Qt::AlignLeading : Qt::AlignTrailing) | Qt::AlignVCenter) | int(Qt::TextWordWrap);
    }
    return {};
}

}  // namespace laneward
