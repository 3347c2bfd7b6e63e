// One pattern being written: name, end, strokes and totals, with undo for everything that is typed. Keeping it is one edit of the
// centre and makes the pattern's next version; until then nothing is stored.
#pragma once

#include "app/edits/session.h"
#include "app/pages/patterns/stroke_rows.h"

#include <QUndoStack>
#include <QWidget>

class QCheckBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QToolButton;

namespace laneward {

class StrokesModel;
class StrokesTable;

class PatternEditor : public QWidget {
    Q_OBJECT

public:
    explicit PatternEditor(Session& session, QWidget* parent = nullptr);

    /// Shows a stored pattern; what was typed on another and not kept is still there when that one is shown again.
    void show(const Pattern& pattern);
    /// The centre's state is another: what has been typed stays.
    void refresh();
    bool isChanged() const;
    const PatternDraft& draft() const { return m_draft; }
    /// What the film is computed from: the draft, as far as it is right.
    std::optional<Pattern> shownPattern() const;

Q_SIGNALS:
    void edited();  ///< the draft is another

private:
    void buildFields();
    void buildTable();
    void buildRowButtons();
    void buildFoot();
    QToolButton* addButton(const QString& text, const QString& tip, void (PatternEditor::*slot)());
    void change(const QString& name, PatternDraft after);
    void setDraft(const PatternDraft& draft);
    void showFields();
    void showTotals();
    void fieldTyped();
    void addOut();
    void addBack();
    void addStroke(Direction direction);
    void duplicateStroke();
    void removeStroke();
    void moveUp();
    void moveDown();
    void moveStroke(int by);
    void keep();
    void discard();
    int currentRow() const;
    void select(int row);
    const Pattern* stored() const;

    Session& m_session;
    Speech m_speech;
    PatternDraft m_draft;
    std::vector<PatternDraft> m_left;  ///< changed drafts of other patterns
    QUndoStack m_steps;
    StrokesModel* m_model = nullptr;
    StrokesTable* m_table = nullptr;
    QLineEdit* m_name = nullptr;
    QLineEdit* m_end = nullptr;
    QLabel* m_endUnit = nullptr;
    QCheckBox* m_clean = nullptr;
    QLineEdit* m_note = nullptr;
    QLabel* m_totals = nullptr;
    QLabel* m_fault = nullptr;
    QPushButton* m_keep = nullptr;
    QPushButton* m_discard = nullptr;
    QList<QToolButton*> m_rowButtons;
    QHBoxLayout* m_rowBar = nullptr;
};

}  // namespace laneward
