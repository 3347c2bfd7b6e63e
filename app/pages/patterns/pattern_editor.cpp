#include "app/pages/patterns/pattern_editor.h"

#include "app/edits/plain_label.h"
#include "app/pages/patterns/strokes_model.h"
#include "app/pages/patterns/strokes_table.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>
#include <QUndoCommand>
#include <QVBoxLayout>

#include <algorithm>
#include <functional>

namespace laneward {

namespace {

/// One change of the draft: the whole of it before and after.
class DraftStep : public QUndoCommand {
public:
    DraftStep(const QString& name, PatternDraft before, PatternDraft after, std::function<void(const PatternDraft&)> show)
        : QUndoCommand(name), m_before(std::move(before)), m_after(std::move(after)), m_show(std::move(show)) {}

    void undo() override { m_show(m_before); }
    void redo() override { m_show(m_after); }

private:
    PatternDraft m_before;
    PatternDraft m_after;
    std::function<void(const PatternDraft&)> m_show;
};

QString percentText(Microlitres part, Microlitres whole, const Speech& speech) {
    const double share = whole.value > 0 ? 100.0 * double(part.value) / double(whole.value) : 0;
    return speech.locale.toString(share, 'f', 0);
}

}  // namespace

PatternEditor::PatternEditor(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    buildFields();
    buildTable();
    buildRowButtons();
    buildFoot();
}

void PatternEditor::buildFields() {
    auto* form = new QFormLayout;
    form->setVerticalSpacing(4);
    m_name = new QLineEdit(this);
    m_end = new QLineEdit(this);
    m_end->setFixedWidth(fontMetrics().horizontalAdvance(QStringLiteral("000000000")));
    m_end->setAlignment(Qt::AlignTrailing);
    m_endUnit = plainLabel({}, this);
    m_clean = new QCheckBox(tr("The cle&an covers the whole lane"), this);
    m_note = new QLineEdit(this);
    m_name->setObjectName("patternName");
    m_end->setObjectName("patternEnd");
    m_note->setObjectName("patternNote");
    auto* ends = new QHBoxLayout;
    ends->addWidget(m_end);
    ends->addWidget(m_endUnit);
    ends->addStretch();
    addField(form, tr("&Name"), m_name);
    addField(form, tr("End&s at"), ends, m_end);
    addField(form, tr("N&ote"), m_note);
    form->addRow(QString(), m_clean);
    qobject_cast<QVBoxLayout*>(layout())->addLayout(form);
    for (QLineEdit* field : {m_name, m_end, m_note})
        connect(field, &QLineEdit::textEdited, this, &PatternEditor::fieldTyped);
    connect(m_clean, &QCheckBox::clicked, this, &PatternEditor::fieldTyped);
}

void PatternEditor::buildTable() {
    m_model = new StrokesModel(this);
    m_table = new StrokesTable(m_model, this);
    qobject_cast<QVBoxLayout*>(layout())->addWidget(m_table, 1);
    connect(m_model, &StrokesModel::rowTyped, this, [this](int row, const StrokeRow& after) {
        PatternDraft draft = m_draft;
        draft.rows[size_t(row)] = after;
        change(tr("Stroke %1").arg(m_speech.locale.toString(row + 1)), draft);
    });
    connect(m_table, &StrokesTable::undoAsked, &m_steps, &QUndoStack::undo);
    connect(m_table, &StrokesTable::redoAsked, &m_steps, &QUndoStack::redo);
}

QToolButton* PatternEditor::addButton(const QString& text, const QString& tip, void (PatternEditor::*slot)()) {
    auto* button = new QToolButton(this);
    button->setText(text);
    button->setToolTip(tip);
    m_rowBar->addWidget(button);
    connect(button, &QToolButton::clicked, this, slot);
    return button;
}

void PatternEditor::buildRowButtons() {
    m_rowBar = new QHBoxLayout;
    addButton(tr("Stroke out"), tr("A new stroke away from the foul line"), &PatternEditor::addOut);
    addButton(tr("Stroke back"), tr("A new stroke towards the foul line"), &PatternEditor::addBack);
    auto* rows = qobject_cast<QVBoxLayout*>(layout());
    QHBoxLayout* first = m_rowBar;
    rows->addLayout(first);
    rows->addLayout(m_rowBar = new QHBoxLayout);
    m_rowButtons << addButton(tr("Copy"), tr("The same stroke once more"), &PatternEditor::duplicateStroke)
                 << addButton(tr("Remove"), tr("Take the stroke out"), &PatternEditor::removeStroke)
                 << addButton(tr("Earlier"), tr("Lay it before the one above"), &PatternEditor::moveUp)
                 << addButton(tr("Later"), tr("Lay it after the one below"), &PatternEditor::moveDown);
    m_rowBar->addStretch();
    auto* undo = new QToolButton(this);
    undo->setText(tr("Undo"));
    undo->setEnabled(false);
    auto* redo = new QToolButton(this);
    redo->setText(tr("Redo"));
    redo->setEnabled(false);
    first->addStretch();
    first->addWidget(undo);
    first->addWidget(redo);
    connect(undo, &QToolButton::clicked, &m_steps, &QUndoStack::undo);
    connect(redo, &QToolButton::clicked, &m_steps, &QUndoStack::redo);
    connect(&m_steps, &QUndoStack::canUndoChanged, undo, &QWidget::setEnabled);
    connect(&m_steps, &QUndoStack::canRedoChanged, redo, &QWidget::setEnabled);
}

void PatternEditor::buildFoot() {
    m_totals = proseLabel({}, this);
    m_totals->setObjectName("patternTotals");
    m_fault = proseLabel({}, this);
    m_fault->setObjectName("patternFault");
    auto* buttons = new QHBoxLayout;
    m_keep = new QPushButton(this);
    m_discard = new QPushButton(tr("&Leave it as it was"), this);
    buttons->addWidget(m_keep);
    buttons->addWidget(m_discard);
    buttons->addStretch();
    auto* column = qobject_cast<QVBoxLayout*>(layout());
    column->addWidget(m_totals);
    column->addWidget(m_fault);
    column->addLayout(buttons);
    connect(m_keep, &QPushButton::clicked, this, &PatternEditor::keep);
    connect(m_discard, &QPushButton::clicked, this, &PatternEditor::discard);
}

const Pattern* PatternEditor::stored() const { return findPattern(m_session.season().patterns, m_draft.kept.id); }

bool PatternEditor::isChanged() const { return m_draft != draftOf(m_draft.kept, m_speech); }

std::optional<Pattern> PatternEditor::shownPattern() const {
    if (const std::optional<Pattern> sound = patternOf(m_draft, m_speech)) return sound;
    return soundPart(m_draft, m_speech);
}

void PatternEditor::show(const Pattern& pattern) {
    m_speech = m_session.speech();
    std::erase_if(m_left, [&](const PatternDraft& d) { return d.kept.id == m_draft.kept.id; });
    if (!m_draft.kept.id.isEmpty() && isChanged()) m_left.push_back(m_draft);
    m_steps.clear();
    const auto left = std::find_if(m_left.begin(), m_left.end(), [&](const PatternDraft& d) { return d.kept.id == pattern.id; });
    setDraft(left == m_left.end() ? draftOf(pattern, m_speech) : PatternDraft(*left));
    if (m_model->rowCount() > 0) m_table->setCurrentIndex(m_model->index(0, StrokesModel::FirstBoard));
}

void PatternEditor::refresh() {
    m_speech = m_session.speech();
    std::array<QString, conditionerSlots> names;
    for (const Machine& machine : m_session.season().centre.machines) {
        for (size_t slot = 0; slot < names.size(); ++slot) {
            if (names[slot].isEmpty()) names[slot] = machine.conditioners[slot];
        }
    }
    m_model->setConditioners(names);
    m_model->setReadOnly(m_session.isReadOnly());
    const Pattern* now = stored();
    if (now && !isChanged() && *now != m_draft.kept) {
        m_steps.clear();
        return setDraft(draftOf(*now, m_speech));
    }
    setDraft(PatternDraft(m_draft));
}

void PatternEditor::change(const QString& name, PatternDraft after) {
    if (after == m_draft) return;
    m_steps.push(new DraftStep(name, m_draft, std::move(after), [this](const PatternDraft& draft) { setDraft(draft); }));
}

void PatternEditor::setDraft(const PatternDraft& draft) {
    m_draft = draft;
    m_model->setDraft(m_draft, m_speech);
    showFields();
    showTotals();
    Q_EMIT edited();
}

void PatternEditor::showFields() {
    const auto set = [](QLineEdit* field, const QString& text) {
        if (field->text() != text) field->setText(text);
    };
    set(m_name, m_draft.name);
    set(m_end, m_draft.end);
    set(m_note, m_draft.note);
    m_clean->setChecked(m_draft.cleanWholeLane);
    m_endUnit->setText(m_speech.units == UnitSystem::Metric ? tr("m from the foul line") : tr("ft from the foul line"));
    const bool writable = !m_session.isReadOnly();
    for (QWidget* field : std::initializer_list<QWidget*>{m_name, m_end, m_note, m_clean})
        field->setEnabled(writable);
    for (QToolButton* button : m_rowButtons)
        button->setEnabled(writable && !m_draft.rows.empty());
}

/// What it takes, what is wrong with it, and what can be done.
void PatternEditor::showTotals() {
    const std::optional<Pattern> sound = patternOf(m_draft, m_speech);
    const std::optional<Pattern> part = shownPattern();
    if (part) {
        const Volumes v = volumes(*part);
        QStringList slots_;
        for (int slot = 0; slot < conditionerSlots; ++slot) {
            if (v.bySlot[size_t(slot)].value > 0)
                slots_ << tr("%1: %2", "conditioner, amount")
                              .arg(m_model->conditionerText(slot), amountText(v.bySlot[size_t(slot)], m_speech));
        }
        const int lanes = m_session.season().centre.facts.lanes;
        m_totals->setText(tr("%1 a lane: %2 out (%3 %), %4 back. %5. All %6 lanes take %7.")
                              .arg(amountText(v.lane, m_speech), amountText(v.out, m_speech),
                                   percentText(v.out, v.lane, m_speech), amountText(v.back, m_speech), slots_.join(tr(", ")),
                                   m_speech.locale.toString(lanes), amountText(v.lane * lanes, m_speech)));
    } else {
        m_totals->setText(tr("Nothing is laid yet."));
    }
    const QStringList faults = faultsOf(m_draft, m_speech);
    QString line = faults.isEmpty() ? QString() : tr("Not kept yet: %1.").arg(faults.front());
    if (faults.size() > 1) line += tr(" And %n more.", nullptr, int(faults.size()) - 1);
    const Pattern* now = stored();
    if (isChanged() && now && now->version != m_draft.kept.version)
        line += tr(" Somebody has changed the stored pattern meanwhile; leaving it as it was shows theirs.");
    m_fault->setText(line.trimmed());
    m_fault->setVisible(!line.isEmpty());
    const bool same = sound && sameRecipe(*sound, m_draft.kept);
    const auto next = m_draft.kept.edition + 1;
    m_keep->setText(tr("&Keep as version %1").arg(m_speech.locale.toString(qlonglong(next))));
    m_keep->setEnabled(sound && !same && !m_session.isReadOnly());
    m_discard->setEnabled(isChanged());
}

void PatternEditor::fieldTyped() {
    PatternDraft after = m_draft;
    after.name = m_name->text();
    after.end = m_end->text();
    after.note = m_note->text();
    after.cleanWholeLane = m_clean->isChecked();
    change(tr("Pattern"), after);
}

int PatternEditor::currentRow() const {
    const int row = m_table->currentIndex().row();
    return row >= 0 && row < int(m_draft.rows.size()) ? row : int(m_draft.rows.size()) - 1;
}

void PatternEditor::select(int row) {
    if (row < 0 || row >= m_model->rowCount()) return;
    const int column = std::max(int(StrokesModel::FirstBoard), m_table->currentIndex().column());
    m_table->setCurrentIndex(m_model->index(row, column));
    m_table->scrollTo(m_table->currentIndex());
}

void PatternEditor::addOut() { addStroke(Direction::Out); }

void PatternEditor::addBack() { addStroke(Direction::Back); }

/// A new stroke stands behind the one at the cursor and begins as a copy of it, so that little is left to type.
void PatternEditor::addStroke(Direction direction) {
    PatternDraft after = m_draft;
    const int row = currentRow();
    StrokeRow stroke{direction, 0, {"2", "38", "1", "40", "0", m_draft.end}, {}, m_draft.kept.end};
    if (row >= 0) stroke = after.rows[size_t(row)];
    stroke.direction = direction;
    after.rows.insert(after.rows.begin() + row + 1, stroke);
    change(tr("Add stroke"), after);
    select(row + 1);
    m_table->setFocus();
}

void PatternEditor::duplicateStroke() {
    const int row = currentRow();
    if (row < 0) return;
    PatternDraft after = m_draft;
    after.rows.insert(after.rows.begin() + row + 1, StrokeRow(after.rows[size_t(row)]));
    change(tr("Copy stroke"), after);
    select(row + 1);
}

void PatternEditor::removeStroke() {
    const int row = currentRow();
    if (row < 0) return;
    PatternDraft after = m_draft;
    after.rows.erase(after.rows.begin() + row);
    change(tr("Remove stroke"), after);
    select(std::min(row, int(m_draft.rows.size()) - 1));
}

void PatternEditor::moveUp() { moveStroke(-1); }

void PatternEditor::moveDown() { moveStroke(1); }

void PatternEditor::moveStroke(int by) {
    const int row = currentRow();
    const int to = row + by;
    if (row < 0 || to < 0 || to >= int(m_draft.rows.size())) return;
    PatternDraft after = m_draft;
    std::swap(after.rows[size_t(row)], after.rows[size_t(to)]);
    change(tr("Move stroke"), after);
    select(to);
}

void PatternEditor::keep() {
    const std::optional<Pattern> sound = patternOf(m_draft, m_speech);
    if (!sound) return;
    const Pattern* now = stored();
    const QString name = tr("Change %1", "pattern").arg(shown(sound->name));
    RowChange<Pattern> row{m_draft.kept, sound};
    if (now && now->version == m_draft.kept.version) row.before = *now;
    const PatternDraft typed = m_draft;
    // Once stored it is what is kept; until then every letter stays.
    m_draft = draftOf(*sound, m_speech);
    if (!m_session.apply(name, {row})) return setDraft(typed);
    m_steps.clear();
    if (const Pattern* kept = stored()) setDraft(draftOf(*kept, m_speech));
}

void PatternEditor::discard() {
    const Pattern* now = stored();
    change(tr("Leave as it was"), draftOf(now ? *now : m_draft.kept, m_speech));
}

}  // namespace laneward
