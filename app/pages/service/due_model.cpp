#include "app/pages/service/due_model.h"

#include "app/widgets/time_formats.h"
#include "core/documents/history_index.h"
#include "core/documents/service_words.h"

#include <algorithm>

namespace laneward {

namespace {

constexpr int later = 1'000'000;  // sorts behind every day
constexpr int axisDays = 90;
constexpr int soonDays = 28;

int daysUntil(QDate today, const std::optional<QDate>& date) { return date ? int(today.daysTo(*date)) : -1; }

const ServiceVisit* visitOf(const ServiceOutlook& outlook, const DutyId& duty) {
    const auto found = std::find_if(outlook.visits.begin(), outlook.visits.end(), [&](const ServiceVisit& visit) {
        return std::find(visit.duties.begin(), visit.duties.end(), duty) != visit.duties.end();
    });
    return found == outlook.visits.end() ? nullptr : &*found;
}

}  // namespace

DueModel::DueModel(QObject* parent) : QAbstractTableModel(parent) {}

void DueModel::show(const SeasonState& season, const ServiceOutlook* outlook, const Speech& speech) {
    beginResetModel();
    m_rows.clear();
    m_today = outlook ? outlook->today : QDate();
    m_days = axisDays;
    for (const DutyDue& due : outlook ? outlook->due : std::vector<DutyDue>{})
        m_rows.push_back(rowFor(due, season, *outlook, speech));
    endResetModel();
}

DueModel::Row DueModel::rowFor(const DutyDue& due, const SeasonState& season, const ServiceOutlook& outlook,
                               const Speech& speech) const {
    Row row;
    row.due = due;
    const ServiceItem* item = findItem(season.items, due.item);
    const Duty* duty = item ? findDuty(*item, due.duty) : nullptr;
    if (!duty) return row;
    row.marks = {daysUntil(m_today, due.due.early), daysUntil(m_today, due.due.likely), daysUntil(m_today, due.due.late), -1};
    row.urgent = due.due.isDue(m_today);
    row.soon = due.due.isDue(m_today.addDays(soonDays));
    row.texts[What] = shown(duty->name);
    row.texts[Item] = itemText(*item, season);
    row.texts[Due] = dueText(due.due, m_today, speech);
    row.texts[Left] = leftText(due.due, speech);
    row.texts[Missing] = missingText(due.missing, season, speech);
    row.texts[Visit] = QStringLiteral("-");
    for (const Column column : {What, Item, Missing})
        row.sort[column] = row.texts[column].toCaseFolded();
    // On one day the one that is furthest over comes first.
    row.sort[Due] = (row.marks.likely < 0 ? later : row.marks.likely) - std::clamp(due.due.used, 0.0, 9.0) / 10;
    row.sort[Left] = 1 - due.due.used;
    row.sort[Visit] = qlonglong{later} * later;
    if (const ServiceVisit* visit = visitOf(outlook, due.duty)) {
        const LocalTime at = speech.zone.toLocal(visit->time.begin);
        row.texts[Visit] = tr("%1, %2", "day, time").arg(shortDay(at.date, speech.locale), clockTime(visit->time.begin, speech));
        row.sort[Visit] = qlonglong(visit->time.begin.seconds);
        row.marks.flag = int(m_today.daysTo(at.date));
    }
    return row;
}

int DueModel::rowOf(const DutyId& duty) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& row) { return row.due.duty == duty; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int DueModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }

int DueModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QVariant DueModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = m_rows[size_t(index.row())];
    const int column = index.column();
    switch (role) {
        case Qt::DisplayRole:
            return row.texts[column];
        case Qt::ToolTipRole:
            return QStringLiteral("<qt>%1</qt>").arg(row.texts[column].toHtmlEscaped());
        case Qt::AccessibleTextRole:
            return tr("%1: %2", "column: value").arg(headerData(column, Qt::Horizontal).toString(), row.texts[column]);
        case Qt::TextAlignmentRole:
            return int((column == Left ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
        case SortRole:
            return row.sort[column];
        case MarksRole:
            return QVariant::fromValue(row.marks);
        case UrgentRole:
            return row.urgent;
        case FilterRole:
            return QString((row.soon ? QLatin1StringView("soon ") : QLatin1StringView("later ")) +
                           folded(row.texts[What] + u' ' + row.texts[Item] + u' ' + row.texts[Missing]));
        default:
            return {};
    }
}

QVariant DueModel::headerData(int section, Qt::Orientation orientation, int role) const {
    const auto height = section == Due ? Qt::AlignTop : Qt::AlignVCenter;  // the axis stands below that title
    if (role == Qt::TextAlignmentRole)
        return int((section == Left ? Qt::AlignTrailing : Qt::AlignLeading) | height) | int(Qt::TextWordWrap);
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    switch (section) {
        case What:
            return tr("Duty");
        case Item:
            return tr("Of what");
        case Due:
            return tr("Falls due");
        case Left:
            return tr("Left");
        case Missing:
            return tr("Parts");
        default:
            return tr("Fits");
    }
}

}  // namespace laneward
