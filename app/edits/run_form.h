// Recording a run that was not as planned, or that nobody planned. Everything is filled in with the likeliest answer; with the
// keyboard alone: type the lanes, press Enter.
#pragma once

#include "app/edits/session.h"
#include "core/season/recording.h"

#include <QFrame>

class QComboBox;
class QLabel;
class QLineEdit;
class QTimeEdit;

namespace laneward {

class RunForm : public QFrame {
    Q_OBJECT

public:
    explicit RunForm(Session& session, QWidget* parent = nullptr);

    /// For a planned job, or none for an unplanned run.
    void begin(std::optional<Job> job);
    void refresh();  ///< keeps what has been typed

Q_SIGNALS:
    /// `account` is sound; `incident` has a text when something happened.
    void finished(const RunAccount& account, const std::optional<Incident>& incident);
    void cancelled();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildFields();
    void buildIncident();
    void buildButtons();
    void fillChoices();
    void fillFrom(const Job& job);
    void fillUnplanned();
    void lanesEdited();
    void guessBegin();
    void submit();
    std::optional<RunAccount> account(QString& problem) const;
    std::optional<Incident> incident(const RunAccount& account) const;
    Instant instantOf(const QTime& time) const;

    Session& m_session;
    std::optional<Job> m_job;
    QLabel* m_title = nullptr;
    QLineEdit* m_lanes = nullptr;
    QComboBox* m_lastLane = nullptr;
    QComboBox* m_machine = nullptr;
    QComboBox* m_treatment = nullptr;
    QComboBox* m_pattern = nullptr;
    QTimeEdit* m_begin = nullptr;
    QTimeEdit* m_end = nullptr;
    QLineEdit* m_note = nullptr;
    QComboBox* m_incident = nullptr;
    QLineEdit* m_incidentText = nullptr;
    QLabel* m_problem = nullptr;
    bool m_beginGuessed = true;
};

}  // namespace laneward
