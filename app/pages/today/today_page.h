// Today: what do I do now, and can the machine finish it?
//
// The jobs in order of work, everything about the selected one below them; at the side what is not ready as asked, what the
// machines hold against what tonight takes, and the notes between shifts. Runs, incidents and slips are recorded here, in the
// page.
#pragma once

#include "app/edits/page.h"
#include "app/models/job_model.h"
#include "core/season/follow_ups.h"
#include "core/season/recording.h"

class QAction;
class QCheckBox;
class QHBoxLayout;
class QPushButton;
class QSortFilterProxyModel;
class QScrollArea;
class QStackedWidget;
class QTableView;
class QTimer;
class QVBoxLayout;

namespace laneward {

class FollowUpList;
class IncidentForm;
class JobDetails;
class JobMarkDelegate;
class NotesPanel;
class ReadinessCard;
class RunForm;
class ShortfallList;
class SlipPanel;

class TodayPage : public Page {
    Q_OBJECT

public:
    explicit TodayPage(Session& session, QWidget* parent = nullptr);

    QString title() const override;
    QString iconName() const override { return "today"; }
    QString question() const override;
    QString headline() const override;
    void refresh() override;
    void showJob(const JobId& job) override;

    /// The selected job; the next open one after a change.
    std::optional<Job> selectedJob() const;

    void recordAsPlanned();
    void recordWithChanges();
    void recordUnplanned();
    void recordIncident();
    void beginJob();
    void guide();

private:
    enum Panel { DetailsPanel, RunPanel, IncidentPanel };

    void buildActions();
    QAction* addTool(const QString& name, const QKeySequence& keys, void (TodayPage::*slot)());
    void buildTable(QVBoxLayout* column);
    void buildTopRow(QVBoxLayout* column);
    void buildJobRow(QVBoxLayout* column);
    void buildPanels(QVBoxLayout* column);
    QWidget* buildSide();
    RunForm& runForm();
    IncidentForm& incidentForm();
    QPushButton* buttonFor(QAction* action, const QString& name);
    void saveCsv(const QByteArray& csv);
    void connectPanels();
    void refreshSide();
    void fitCards();
    void fitColumns();
    void selectRow(int sourceRow);
    void showSelected();
    void tellAboutSelected();
    void finishRun(const RunAccount& account, const std::optional<Incident>& incident);
    void finishIncident(const Incident& incident, const std::optional<Outage>& outage);
    void followUp(const FollowUp& open);
    void showDetails();
    const JobRow* rowAt(const QModelIndex& proxyIndex) const;

    JobSheet m_sheet;
    JobModel* m_model = nullptr;
    QSortFilterProxyModel* m_proxy = nullptr;
    QTableView* m_table = nullptr;
    JobMarkDelegate* m_marks = nullptr;
    QCheckBox* m_onlyOpen = nullptr;
    QStackedWidget* m_panels = nullptr;
    JobDetails* m_details = nullptr;
    QTimer* m_tellSoon = nullptr;
    QScrollArea* m_runRoom = nullptr;
    QScrollArea* m_incidentRoom = nullptr;
    RunForm* m_run = nullptr;            ///< once it was wanted
    IncidentForm* m_incident = nullptr;  ///< likewise
    SlipPanel* m_slip = nullptr;
    ShortfallList* m_shortfalls = nullptr;
    FollowUpList* m_followUps = nullptr;
    std::vector<FollowUp> m_open;  ///< what wants an answer
    QVBoxLayout* m_cardColumn = nullptr;
    std::vector<ReadinessCard*> m_cards;
    NotesPanel* m_notes = nullptr;
    QAction* m_asPlanned = nullptr;
    QAction* m_changed = nullptr;
    QAction* m_begin = nullptr;
    QAction* m_unplanned = nullptr;
    QAction* m_incidentAction = nullptr;
    QAction* m_guide = nullptr;
    QAction* m_print = nullptr;
    std::optional<OperationId> m_correcting;  ///< the run that the open form puts right
    bool m_selectedPlanned = true;
};

}  // namespace laneward
