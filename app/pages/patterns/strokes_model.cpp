#include "app/pages/patterns/strokes_model.h"

#include "app/models/list_tools.h"

#include <QApplication>
#include <QStyle>

namespace laneward {

StrokesModel::StrokesModel(QObject* parent) : QAbstractTableModel(parent) {}

void StrokesModel::setDraft(const PatternDraft& draft, const Speech& speech) {
    const bool sameRows = draft.rows.size() == m_draft.rows.size();
    if (!sameRows) beginResetModel();
    m_draft = draft;
    m_speech = speech;
    if (!sameRows) return endResetModel();
    if (!m_draft.rows.empty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void StrokesModel::setConditioners(const std::array<QString, conditionerSlots>& names) { m_conditioners = names; }

int StrokesModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_draft.rows.size()); }

int StrokesModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

std::optional<StrokeField> StrokesModel::fieldOf(int column) {
    if (column < FirstBoard || column > To) return std::nullopt;
    return StrokeField(column - FirstBoard);
}

QString StrokesModel::directionText(Direction direction) const {
    return direction == Direction::Out ? tr("out", "direction of a stroke") : tr("back", "direction of a stroke");
}

QString StrokesModel::conditionerText(int slot) const {
    const QString name = slot >= 0 && slot < conditionerSlots ? m_conditioners[size_t(slot)] : QString();
    const QString number = m_speech.locale.toString(slot + 1);
    return name.isEmpty() ? number : tr("%1 %2", "number and name of a conditioner").arg(number, shown(name));
}

QString StrokesModel::volumeText(size_t row) const {
    PatternDraft alone = m_draft;
    alone.name = QStringLiteral("one");
    alone.rows = {m_draft.rows[row]};
    alone.kept.id = {QStringLiteral("one")};
    const std::optional<Pattern> pattern = patternOf(alone, m_speech);
    return pattern ? amountText(volumes(*pattern).lane, m_speech) : tr("–", "no amount yet");
}

QVariant StrokesModel::shownAt(size_t row, int column) const {
    const StrokeRow& stroke = m_draft.rows[row];
    if (column == DirectionColumn) return directionText(stroke.direction);
    if (column == Conditioner) return conditionerText(stroke.slot);
    if (column == Volume) return volumeText(row);
    return stroke.field(*fieldOf(column));
}

QVariant StrokesModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const size_t row = size_t(index.row());
    const std::optional<StrokeField> field = fieldOf(index.column());
    const QString fault = field ? faultOf(m_draft, row, *field, m_speech) : QString();
    switch (role) {
        case Qt::DisplayRole:
            return shownAt(row, index.column());
        case Qt::EditRole:
            if (index.column() == DirectionColumn) return int(m_draft.rows[row].direction);
            if (index.column() == Conditioner) return m_draft.rows[row].slot;
            return shownAt(row, index.column());
        case Qt::TextAlignmentRole:
            return int((field || index.column() == Volume ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
        case Qt::DecorationRole:
            return fault.isEmpty() ? QVariant() : QVariant(QApplication::style()->standardIcon(QStyle::SP_MessageBoxWarning));
        case Qt::ToolTipRole:
            return fault.isEmpty() ? QString() : plainTip(fault);
        case Qt::AccessibleTextRole:
            return fault.isEmpty() ? shownAt(row, index.column())
                                   : QVariant(tr("%1, wrong: %2").arg(shownAt(row, index.column()).toString(), fault));
        default:
            return {};
    }
}

QVariant StrokesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical)
        return role == Qt::DisplayRole ? QVariant(m_speech.locale.toString(section + 1)) : QVariant();
    if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole) return headTip(section);
    if (role != Qt::DisplayRole) return {};
    const bool metric = m_speech.units == UnitSystem::Metric;
    switch (section) {
        case DirectionColumn:
            return tr("Way");
        case FirstBoard:
            return tr("Boards");
        case LastBoard:
            return tr("to", "last board of a stroke");
        case Laps:
            return tr("Laps");
        case Dose:
            return tr("µL");
        case From:
            return metric ? tr("From, m") : tr("From, ft");
        case To:
            return metric ? tr("To, m") : tr("To, ft");
        case Conditioner:
            return tr("Conditioner");
        default:
            return tr("Volume");
    }
}

QString StrokesModel::headTip(int section) const {
    switch (section) {
        case DirectionColumn:
            return tr("Out from the foul line, or back to it");
        case FirstBoard:
            return tr("First board, counted from the right gutter");
        case LastBoard:
            return tr("Last board, counted from the right gutter");
        case Laps:
            return tr("How often the stroke is laid");
        case Dose:
            return tr("Dose for each board and lap, in microlitres");
        case From:
            return tr("Nearer end, from the foul line");
        case To:
            return tr("Farther end, from the foul line");
        case Conditioner:
            return tr("Which of the machine's conditioners");
        default:
            return tr("Laps x boards x dose");
    }
}

Qt::ItemFlags StrokesModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    return m_readOnly || index.column() == Volume ? flags : flags | Qt::ItemIsEditable;
}

bool StrokesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !index.isValid()) return false;
    StrokeRow after = m_draft.rows[size_t(index.row())];
    if (index.column() == DirectionColumn) {
        after.direction = value.toInt() == int(Direction::Back) ? Direction::Back : Direction::Out;
    } else if (index.column() == Conditioner) {
        after.slot = std::clamp(value.toInt(), 0, conditionerSlots - 1);
    } else if (const std::optional<StrokeField> field = fieldOf(index.column())) {
        after.field(*field) = value.toString();
    }
    if (after == m_draft.rows[size_t(index.row())]) return false;
    Q_EMIT rowTyped(index.row(), after);
    return true;
}

}  // namespace laneward
