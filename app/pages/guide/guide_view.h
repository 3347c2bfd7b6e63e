// The guided evening: tonight's sheet one step at a time, by Space and Backspace or by two big buttons.
//
// It takes the place of the page while it is open. What is ticked stays ticked for that evening (guide_memory.h); what is typed
// is recorded like in the forms of the page Today, each step as one undoable deed. When the plan changes meanwhile, what is done
// stays done and the rest follows, with one line that says so. Where nothing may be written steps are ticked and nothing is
// recorded.
#pragma once

#include "app/edits/session.h"
#include "core/documents/guide.h"
#include "core/season/recording.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace laneward {

class GuideList;
class GuideStepPanel;
class RunForm;

class GuideView : public QWidget {
    Q_OBJECT

public:
    explicit GuideView(Session& session, QWidget* parent = nullptr);

    const Guide& guide() const { return m_guide; }
    /// The step that is shown: the one that comes now, or one that is looked at again; none at the end.
    const GuideStep* shownStep() const;

    void goOn();
    void goBack();
    void leaveOut();
    void recordOtherwise();

Q_SIGNALS:
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void build();
    QWidget* buildHead();
    QWidget* buildStep();
    QWidget* buildButtons();
    void follow();
    void read();
    void showStep();
    void showButtons();
    void showEnd();
    void ask(const GuideStep* step);
    void focusStep();
    int shownRow() const { return int(m_guide.done.size()) - m_back; }
    void tick(const GuideStep& step, bool leftOut, const OperationId& record);
    bool perform(const GuideStep& step, OperationId& record);
    void goOnFromBehind();
    void finishRun(const RunAccount& account, const std::optional<Incident>& incident);
    void closeForm();
    void settle(bool announce);
    void say(const QString& line);

    Session& m_session;
    QDate m_day;
    JobSheet m_sheet;
    Guide m_guide;
    std::vector<GuideStep> m_expected;  ///< what was ahead when the person last did something
    int m_back = 0;                     ///< so many ticks back
    QByteArray m_asked;                 ///< key of the step whose blanks are shown
    QString m_doubts;                   ///< on what was typed at the step before: said until the next one
    bool m_acting = false;
    QLabel* m_heading = nullptr;
    QLabel* m_notice = nullptr;
    QStackedWidget* m_stack = nullptr;
    GuideStepPanel* m_step = nullptr;
    RunForm* m_run = nullptr;
    QWidget* m_buttons = nullptr;
    QPushButton* m_close = nullptr;
    QPushButton* m_goBack = nullptr;
    QPushButton* m_leaveOut = nullptr;
    QPushButton* m_otherwise = nullptr;
    QPushButton* m_goOn = nullptr;
    GuideList* m_list = nullptr;
};

}  // namespace laneward
