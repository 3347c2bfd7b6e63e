#include "app/pages/service/last_done_model.h"

#include "app/widgets/decimal_text.h"
#include "app/widgets/quantity_box.h"
#include "core/documents/item_words.h"
#include "core/documents/stock_words.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double minutesPerHour = 60;
constexpr double mostSince = 1e15;
constexpr std::int64_t noonAfterDawn = 7;  // hours from the centre's morning

MeterKind meterOf(int column) { return MeterKind(column - LastDoneModel::Lanes); }

bool counts(const Duty& duty, MeterKind meter) {
    return std::any_of(duty.triggers.begin(), duty.triggers.end(), [&](const Trigger& t) { return t.meter == meter; });
}

void take(Meters& meters, MeterKind meter, std::int64_t since) {
    if (meter == MeterKind::Lanes) meters.lanes -= since;
    if (meter == MeterKind::Runs) meters.runs -= since;
    if (meter == MeterKind::Minutes) meters.work -= minutes(since);
    if (meter == MeterKind::Volume) meters.volume -= Microlitres{since};
}

}  // namespace

bool LastDoneModel::Row::isEmpty() const {
    return std::all_of(cells.begin() + Day, cells.end(), [](const QString& cell) { return cell.isEmpty(); });
}

void LastDoneModel::show(std::vector<Asked> duties, const Centre& centre, const Speech& speech) {
    beginResetModel();
    m_centre = centre;
    m_speech = speech;
    m_rows.clear();
    for (Asked& asked : duties) {
        Row row;
        row.cells[What] = shown(asked.duty.name);
        row.asked = std::move(asked);
        m_rows.push_back(std::move(row));
    }
    endResetModel();
}

bool LastDoneModel::isCounted(int row, int column) const {
    return column < Lanes || counts(m_rows[size_t(row)].asked.duty, meterOf(column));
}

std::optional<QDate> LastDoneModel::dayOf(const QString& typed) const {
    QDate day = QDate::fromString(typed, Qt::ISODate);
    if (!day.isValid()) day = m_speech.locale.toDate(typed, QLocale::ShortFormat);
    if (day.isValid() && day.year() < 1970) day = day.addYears(100);  // "12.11.26" of a short format
    return day.isValid() ? std::optional(day) : std::nullopt;
}

std::optional<std::int64_t> LastDoneModel::sinceOf(const Row& row, int column) const {
    const std::optional<double> typed = decimalOf(row.cells[size_t(column)], m_speech.locale);
    if (!typed || *typed < 0) return std::nullopt;
    double unit = 1;
    if (meterOf(column) == MeterKind::Minutes) unit = minutesPerHour;
    if (meterOf(column) == MeterKind::Volume) unit = quantityUnit(SupplyKind::Conditioner, m_speech.units).size;
    return *typed * unit > mostSince ? std::nullopt : std::optional(std::int64_t{std::llround(*typed * unit)});
}

std::vector<ServiceRecord> LastDoneModel::records(const Meters& now, Instant at) const {
    std::vector<ServiceRecord> records;
    for (const Row& row : m_rows) {
        const std::optional<QDate> day = dayOf(row.cells[Day]);
        if (!day) continue;
        ServiceRecord record;
        record.at = laneward::dayOf(m_centre, *day).begin + hours(noonAfterDawn);
        if (*day == dateOf(m_centre, at)) record.at = std::min(record.at, at);
        record.item = row.asked.item.id;
        record.duty = row.asked.duty.id;
        record.meters = row.asked.item.machine.isEmpty() ? Meters{} : now;
        for (int column = Lanes; column < ColumnCount; ++column) {
            const auto since = counts(row.asked.duty, meterOf(column)) ? sinceOf(row, column) : std::nullopt;
            if (since) take(record.meters, meterOf(column), *since);
        }
        records.push_back(std::move(record));
    }
    return records;
}

std::vector<Finding> LastDoneModel::faults() const {
    std::vector<Finding> found;
    for (const Row& row : m_rows) {
        if (row.isEmpty()) continue;
        const QString& name = row.asked.duty.name;
        const auto say = [&](const char* rule, std::vector<Value> values) {
            found.push_back({Severity::Fault, rule, name, std::move(values)});
        };
        if (row.cells[Day].isEmpty())
            say("service.date-missing", {});
        else if (!dayOf(row.cells[Day]))
            say("service.date-unreadable", {row.cells[Day], m_speech.locale.toString(QDate(2026, 11, 30), QLocale::ShortFormat)});
        for (int column = Lanes; column < ColumnCount; ++column) {
            if (!counts(row.asked.duty, meterOf(column))) continue;
            const QString& cell = row.cells[size_t(column)];
            if (cell.isEmpty())
                say("service.since-missing", {text(meterOf(column))});
            else if (!sinceOf(row, column))
                say("service.since-unreadable", {cell});
        }
    }
    return found;
}

int LastDoneModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }

int LastDoneModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QVariant LastDoneModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = m_rows[size_t(index.row())];
    const bool isOpen = isCounted(index.row(), index.column());
    switch (role) {
        case Qt::DisplayRole:
            return isOpen ? row.cells[size_t(index.column())] : QStringLiteral("-");
        case Qt::EditRole:
            return row.cells[size_t(index.column())];
        case Qt::TextAlignmentRole:
            return int((index.column() >= Lanes ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
        case Qt::AccessibleTextRole:
            return tr("%1, %2: %3", "duty, column, value")
                .arg(row.cells[What], headerData(index.column(), Qt::Horizontal).toString(), row.cells[size_t(index.column())]);
        default:
            return {};
    }
}

bool LastDoneModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable)) return false;
    QString& cell = m_rows[size_t(index.row())].cells[size_t(index.column())];
    const QString typed = value.toString().trimmed();
    if (cell == typed) return true;
    cell = typed;
    Q_EMIT dataChanged(index, index);
    Q_EMIT edited();
    return true;
}

QVariant LastDoneModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case What:
            return tr("Duty");
        case Day:
            return tr("Last done on");
        case Lanes:
            return tr("Lanes since");
        case Runs:
            return tr("Runs since");
        case Hours:
            return tr("Hours since");
        default:
            return tr("%1 since", "litres").arg(quantityUnit(SupplyKind::Conditioner, m_speech.units).name);
    }
}

Qt::ItemFlags LastDoneModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return {};
    const bool editable = index.column() > What && isCounted(index.row(), index.column());
    return editable ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable : Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

}  // namespace laneward
