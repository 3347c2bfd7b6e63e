#include "app/models/job_model.h"

#include "app/models/list_tools.h"
#include "core/documents/sheet_words.h"

#include <algorithm>

namespace laneward {

namespace {

QString oneLine(QString text) { return text.replace(QChar::LineFeed, QStringLiteral(", ")); }

JobRow rowOf(const RunLog& run, const SeasonState& season) {
    JobRow row;
    row.planned = false;
    row.job.id = {run.id.value};
    row.job.state = run.result == RunResult::CutShort ? JobState::CutShort : JobState::Done;
    row.job.machine = run.machine;
    row.job.time = run.time;
    row.job.treatment = run.treatment;
    row.job.pattern = run.pattern;
    row.job.lanes = run.lanes;
    row.job.use = run.use;
    row.job.person = run.person;
    const Machine* machine = findMachine(season.centre, run.machine);
    row.machine = machine ? machine->name : run.machine.value;
    const Pattern* pattern = run.pattern ? findPattern(season.patterns, *run.pattern) : nullptr;
    row.pattern = pattern ? pattern->name : QString();
    return row;
}

}  // namespace

std::vector<JobRow> jobRows(const JobSheet& sheet, const SeasonState& season) {
    std::vector<JobRow> rows;
    for (size_t i = 0; i < sheet.jobs.size(); ++i) {
        rows.push_back({sheet.jobs[i], sheet.machineNames[i], sheet.patternNames[i], true});
    }
    const Span day = dayOf(season.centre, sheet.date);
    for (const RunLog& run : standing(season.runs)) {
        if (!day.contains(run.time.begin)) continue;
        const bool planned =
            std::any_of(sheet.jobs.begin(), sheet.jobs.end(), [&run](const Job& job) { return job.id == run.job; });
        if (!planned) rows.push_back(rowOf(run, season));
    }
    std::stable_sort(rows.begin(), rows.end(),
                     [](const JobRow& a, const JobRow& b) { return a.job.time.begin < b.job.time.begin; });
    return rows;
}

void JobModel::show(std::vector<JobRow> rows, const Speech& speech, Instant now) {
    beginResetModel();
    m_rows = std::move(rows);
    m_speech = speech;
    m_now = now;
    endResetModel();
}

const JobRow* JobModel::row(int row) const { return row >= 0 && size_t(row) < m_rows.size() ? &m_rows[size_t(row)] : nullptr; }

int JobModel::rowOf(const JobId& id) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&id](const JobRow& row) { return row.job.id == id; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int JobModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }

int JobModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QString JobModel::spareText(const Job& job) const {
    if (!isAhead(job)) return text(job.state);
    if (job.late > Seconds{0}) return tr("%1 late").arg(durationText(job.late, m_speech));
    if (job.slack < Seconds{0}) return tr("%1 tight").arg(durationText(-job.slack, m_speech));
    if (job.slack < minutes(1)) return tr("none", "no time to spare");
    return durationText(minutes(job.slack.value / 60), m_speech);
}

QString JobModel::cell(const JobRow& row, int column) const {
    const Job& job = row.job;
    switch (column) {
        case StartBy:
            return clockTime(job.time.begin, m_speech);
        case ReadyAt:
            return clockTime(job.time.end, m_speech, true);
        case Lanes:
            return laneNumbers(job.laneSet(), m_speech);
        case What:
            return whatText(row);
        case Conditioner:
            return conditions(job.treatment) ? amountText(job.use.conditionerTotal(), m_speech) : QString();
        case Spare:
            return spareText(job);
        case Machine:
            return shown(row.machine);
        default:
            return {};
    }
}

/// Two lines: what is laid down, and for whom.
QString JobModel::whatText(const JobRow& row) const {
    const QString treatment = text(row.job.treatment);
    const QString what = row.pattern.isEmpty() ? treatment : shown(row.pattern) + QStringLiteral(", ") + treatment;
    const QString why = row.planned ? neededByText(row.job, m_speech) : tr("unplanned");
    return why.isEmpty() ? what : what + QChar::LineFeed + why;
}

QVariant JobModel::sortKey(const JobRow& row, int column) const {
    switch (column) {
        case Mark:
            return int(row.job.state);
        case StartBy:
            return qlonglong(row.job.time.begin.seconds);
        case ReadyAt:
            return qlonglong(row.job.time.end.seconds);
        case Lanes:
            return row.job.laneSet().first();
        case Conditioner:
            return qlonglong(row.job.use.conditionerTotal().value);
        case Spare:
            return qlonglong(isAhead(row.job) ? row.job.slack.value : std::numeric_limits<std::int64_t>::max());
        default:
            return cell(row, column);
    }
}

QString JobModel::spoken(const JobRow& row) const {
    return tr("%1: %2, lanes %3, start by %4, ready at %5")
        .arg(text(row.job.state), oneLine(cell(row, What)), cell(row, Lanes), cell(row, StartBy), cell(row, ReadyAt));
}

QVariant JobModel::data(const QModelIndex& index, int role) const {
    const JobRow* row = this->row(index.row());
    if (!row) return {};
    const int column = index.column();
    const bool number = column == StartBy || column == ReadyAt || column == Conditioner || column == Spare;
    switch (role) {
        case Qt::DisplayRole:
            return cell(*row, column);
        case Qt::AccessibleTextRole:
            return column == Mark ? spoken(*row) : oneLine(cell(*row, column));
        case Qt::ToolTipRole:
            return plainTip(column == Mark ? spoken(*row) : cell(*row, column));
        case Qt::TextAlignmentRole:
            return int(Qt::AlignVCenter | (number ? Qt::AlignTrailing : Qt::AlignLeading));
        case SortRole:
            return sortKey(*row, column);
        case OpenRole:
            return isAhead(row->job);
        default:
            return {};
    }
}

QVariant JobModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        const bool number = section == StartBy || section == ReadyAt || section == Conditioner || section == Spare;
        return int(Qt::AlignVCenter | (number ? Qt::AlignTrailing : Qt::AlignLeading));
    }
    if (role == Qt::AccessibleTextRole && section == Mark) return tr("State");
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case StartBy:
            return tr("Start by");
        case ReadyAt:
            return tr("Ready at");
        case Lanes:
            return tr("Lanes");
        case What:
            return tr("What");
        case Conditioner:
            return tr("Conditioner");
        case Spare:
            return tr("Spare");
        case Machine:
            return tr("Machine");
        default:
            return {};
    }
}

}  // namespace laneward
