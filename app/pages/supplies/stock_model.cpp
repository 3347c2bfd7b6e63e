#include "app/pages/supplies/stock_model.h"

#include "app/pages/supplies/supply_texts.h"
#include "app/widgets/time_formats.h"
#include "core/documents/stock_words.h"
#include "core/documents/supply_words.h"

#include <algorithm>

namespace laneward {

namespace {

constexpr double likelyLevel = 0.5;
constexpr int later = 1'000'000;  ///< sorts behind every day

/// The column of the forecast's quantiles at a level.
size_t levelAt(const StockForecast& forecast, double level) {
    const auto found = std::min_element(forecast.levels.begin(), forecast.levels.end(),
                                        [level](double a, double b) { return std::abs(a - level) < std::abs(b - level); });
    return size_t(found - forecast.levels.begin());
}

double medianAt(const StockForecast& forecast, size_t day) {
    return std::max(0.0, forecast.stock[std::min(day, forecast.stock.size() - 1)][levelAt(forecast, likelyLevel)]);
}

int daysUntil(QDate today, const std::optional<QDate>& date) { return date ? int(today.daysTo(*date)) : -1; }

StockMarks marksOf(const SupplyLine& line, QDate today) {
    StockMarks marks;
    marks.isKnown = true;
    marks.early = daysUntil(today, line.outEarly);
    marks.likely = daysUntil(today, line.outLikely);
    marks.late = daysUntil(today, line.outLate);
    marks.orderBy = line.orderBy ? int(today.daysTo(*line.orderBy)) : -1;
    double most = std::max(1.0, double(line.onHand().value));
    marks.stock.append(double(line.onHand().value));
    for (int day = 0; day < std::min(StockModel::sparkDays, int(line.forecast.stock.size())); ++day) {
        marks.stock.append(medianAt(line.forecast, size_t(day)));
        most = std::max(most, marks.stock.back());
    }
    for (double& value : marks.stock)
        value = std::max(0.0, value / most);
    return marks;
}

}  // namespace

StockModel::StockModel(QObject* parent) : QAbstractTableModel(parent) {}

void StockModel::show(const SeasonState& season, const SupplyOutlook* outlook, const Speech& speech) {
    beginResetModel();
    m_speech = speech;
    m_rows.clear();
    m_today = outlook ? outlook->today : QDate();
    m_axisDays = sparkDays;
    const auto lineOf = [outlook](const SupplyId& id) -> const SupplyLine* {
        if (!outlook) return nullptr;
        const auto found =
            std::find_if(outlook->lines.begin(), outlook->lines.end(), [&](const SupplyLine& l) { return l.supply == id; });
        return found == outlook->lines.end() ? nullptr : &*found;
    };
    for (const Supply& supply : season.supplies) {
        m_rows.push_back(rowFor(supply, season, lineOf(supply.id)));
        const StockMarks& marks = m_rows.back().marks;
        m_axisDays = std::max({m_axisDays, marks.late + 7, marks.likely + 14});
    }
    if (outlook) m_axisDays = std::min(m_axisDays, std::max(outlook->days, sparkDays));
    endResetModel();
}

StockModel::Row StockModel::rowFor(const Supply& supply, const SeasonState& season, const SupplyLine* line) const {
    Row row;
    row.id = supply.id;
    row.group = supply.retired ? retiredGroup() : QString::number(int(groupOf(supply.kind)));
    row.tip = whereText(supply.id, season, m_speech);
    Amount parts[3];
    for (const auto& [key, amount] : season.stock.all()) {
        if (key.supply != supply.id) continue;
        parts[key.place.kind == Place::Kind::Shelf ? 0 : key.place.kind == Place::Kind::Open ? 1 : 2] += amount;
    }
    const auto put = [&](Column column, Amount amount) {
        row.texts[column] = amountText(amount, supply.kind, m_speech);
        row.sort[column] = qlonglong(amount.value);
    };
    row.texts[Name] = shown(supply.name);
    row.sort[Name] = supply.name.toCaseFolded();
    row.texts[Kind] = text(supply.kind);
    row.sort[Kind] = int(supply.kind);
    put(OnHand, parts[0] + parts[1] + parts[2]);
    put(Sealed, parts[0]);
    put(Open, parts[1]);
    put(InTanks, parts[2]);
    for (const Column column : {AWeek, Stock, RunsOut, OrderBy}) {
        row.texts[column] = supply.retired ? QStringLiteral("-") : QStringLiteral("…");
        row.sort[column] = later;
    }
    if (line) tell(row, supply, *line);
    return row;
}

void StockModel::tell(Row& row, const Supply& supply, const SupplyLine& line) const {
    row.marks = marksOf(line, m_today);
    row.texts[AWeek] = weekText(line, supply.kind, m_speech);
    row.sort[AWeek] = line.aWeek == Amount{} ? 7 * line.chancePerDay : double(line.aWeek.value);
    const auto inDays = [&](size_t day) {
        return amountText(Amount{std::llround(medianAt(line.forecast, day - 1))}, supply.kind, m_speech);
    };
    row.texts[Stock] = tr("%1 in 30 days, %2 in 60, %3 in 90", "amounts").arg(inDays(30), inDays(60), inDays(90));
    row.sort[Stock] = medianAt(line.forecast, sparkDays - 1) / std::max(1.0, double(line.onHand().value));
    row.texts[RunsOut] = rangeText(line);
    row.sort[RunsOut] = row.marks.early < 0 ? later : row.marks.early;
    row.texts[OrderBy] = orderByText(line.orderBy, m_today, m_speech);
    row.sort[OrderBy] = line.orderBy ? int(m_today.daysTo(*line.orderBy)) : later;
    row.urgent = line.orderBy && *line.orderBy <= m_today;
}

/// "Wed 2 Dec to Mon 21 Dec, half by Thu 10 Dec".
QString StockModel::rangeText(const SupplyLine& line) const {
    const QString afterAll = tr("later", "than the days that are looked at");
    if (!line.outEarly) return afterAll;
    const auto day = [&](const std::optional<QDate>& date) { return date ? shortDay(*date, m_speech.locale) : afterAll; };
    if (!line.outLikely) return tr("%1 or later", "date").arg(day(line.outEarly));
    return tr("%1 to %2, most likely %3", "dates").arg(day(line.outEarly), day(line.outLate), day(line.outLikely));
}

int StockModel::rowOf(const SupplyId& id) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& row) { return row.id == id; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int StockModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }

int StockModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QVariant StockModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = m_rows[size_t(index.row())];
    const int column = index.column();
    const bool number = (OnHand <= column && column <= AWeek) || column == OrderBy;
    switch (role) {
        case Qt::DisplayRole:
            return row.texts[column];
        case Qt::ToolTipRole:
            return QStringLiteral("<qt>%1</qt>")
                .arg((column == Stock || column == RunsOut ? row.texts[column] : row.tip).toHtmlEscaped());
        case Qt::AccessibleTextRole:
            return column == Name
                       ? QVariant(row.texts[Name])
                       : QVariant(
                             tr("%1: %2", "column: value").arg(headerData(column, Qt::Horizontal).toString(), row.texts[column]));
        case Qt::TextAlignmentRole:
            return int((number ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
        case SortRole:
            return row.sort[column];
        case GroupRole:
            return row.group;
        case MarksRole:
            return QVariant::fromValue(row.marks);
        case UrgentRole:
            return row.urgent;
        default:
            return {};
    }
}

QVariant StockModel::headerData(int section, Qt::Orientation orientation, int role) const {
    const bool number = (OnHand <= section && section <= AWeek) || section == OrderBy;
    const auto height = section == RunsOut ? Qt::AlignTop : Qt::AlignVCenter;  // the axis stands below that title
    if (role == Qt::TextAlignmentRole)
        return int((number ? Qt::AlignTrailing : Qt::AlignLeading) | height) | int(Qt::TextWordWrap);
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    switch (section) {
        case Name:
            return tr("Supply");
        case Kind:
            return tr("Kind");
        case OnHand:
            return tr("On hand");
        case Sealed:
            return tr("Sealed");
        case Open:
            return tr("Open", "containers");
        case InTanks:
            return tr("In tanks");
        case AWeek:
            return tr("A week");
        case Stock:
            return tr("Stock, next 90 days");
        case RunsOut:
            return tr("Runs out");
        default:
            return tr("Order by");
    }
}

}  // namespace laneward
